//! Bottom-bracket shells: two threads, two faces, one width.

use framegauge::plan::Operation::{Chase, Face, Refer};
use framegauge::plan::State;
use framegauge::plan::State::{Leave, Open, Out, ToDo};

use super::{Case, hold, operations, planned, said, state};

/// Hands as every English shell has them are no fault; hands that no pattern has are.
#[test]
fn hands_of_an_english_shell() {
    hold(&[
        Case(
            "read left and right, no minor: an ordinary English shell",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "painted"
pitch = "24 tpi"
width = ["68.1 mm +/- 0.05 mm"]
drive = { hand = "left", state = "fouled" }
non_drive = { hand = "right", state = "fouled" }"#,
        ),
        Case(
            "73 wide, only the non-drive side fouled",
            "shell.non_drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "aluminium"
[shell]
believed = "bsc"
coating = "bare"
pitch = "24 tpi"
width = ["73.0 mm +/- 0.05 mm"]
drive = { hand = "left", state = "sound", go = "passed" }
non_drive = { hand = "right", state = "fouled", go = "failed" }"#,
        ),
        Case(
            "unlisted width 69.5: still an English thread",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "painted"
pitch = "24 tpi"
width = ["69.5 mm +/- 0.05 mm"]
drive = { hand = "left", state = "fouled" }
non_drive = { hand = "right", state = "fouled" }"#,
        ),
        Case(
            "back to front: held until it is cleared",
            "shell",
            Open,
            &[],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "painted"
pitch = "24 tpi"
width = ["68.1 mm +/- 0.05 mm"]
drive = { hand = "right", state = "fouled" }
non_drive = { hand = "left", state = "fouled" }"#,
        ),
        Case(
            "two left hands: no pattern has them",
            "shell",
            Open,
            &[],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "painted"
pitch = "24 tpi"
width = ["68.1 mm +/- 0.05 mm"]
drive = { hand = "left", minor = ["33.75 mm +/- 0.02 mm"], state = "fouled" }
non_drive = { hand = "left", minor = ["33.75 mm +/- 0.02 mm"], state = "fouled" }"#,
        ),
        Case(
            "Italian by its label, one hand left: held",
            "shell",
            Open,
            &[],
            &[],
            r#"material = "steel"
[shell]
believed = "italian"
coating = "bare"
pitch = "24 tpi"
width = ["70.0 mm +/- 0.05 mm"]
drive = { hand = "left", minor = ["34.75 mm +/- 0.02 mm"], state = "fouled" }
non_drive = { hand = "left", minor = ["34.76 mm +/- 0.02 mm"], state = "fouled" }"#,
        ),
    ]);
}

/// Over paint a minor diameter is a lower bound: it rules out no larger thread.
#[test]
fn painted_minors() {
    hold(&[
        Case(
            "French M35x1, painted minor 33.80 (bare 33.917 to 34.153, ISO 965-1)",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[shell]
believed = "french"
coating = "painted"
pitch = "1 mm"
width = ["68.2 mm +/- 0.05 mm"]
drive = { hand = "right", minor = ["33.80 mm +/- 0.05 mm"], state = "fouled" }
non_drive = { hand = "right", minor = ["33.80 mm +/- 0.05 mm"], state = "fouled" }"#,
        ),
        Case(
            "Italian, painted 34.60",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[shell]
believed = "italian"
coating = "painted"
pitch = "24 tpi"
width = ["70.0 mm +/- 0.05 mm"]
drive = { hand = "right", minor = ["34.60 mm +/- 0.05 mm"], state = "fouled" }
non_drive = { hand = "right", minor = ["34.62 mm +/- 0.05 mm"], state = "fouled" }"#,
        ),
        Case(
            "English, thick powder, 33.45",
            "shell.non_drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "aluminium"
[shell]
believed = "bsc"
coating = "powder_coated"
pitch = "24 tpi"
width = ["73.2 mm +/- 0.05 mm"]
drive = { hand = "left", minor = ["33.45 mm +/- 0.05 mm"], state = "fouled" }
non_drive = { hand = "right", minor = ["33.47 mm +/- 0.05 mm"], state = "fouled" }"#,
        ),
        Case(
            "taken for English, painted 34.6: paint widens no bore, so it is not that",
            "shell",
            Open,
            &[],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "painted"
pitch = "24 tpi"
width = ["70.0 mm +/- 0.05 mm"]
drive = { hand = "right", minor = ["34.60 mm +/- 0.05 mm"], state = "fouled" }
non_drive = { hand = "right", minor = ["34.62 mm +/- 0.05 mm"], state = "fouled" }"#,
        ),
    ]);
    let plan = planned(
        "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwidth = [\"70.0 mm +/- 0.05 mm\"]\ndrive = { hand = \"right\", minor = [\"34.60 mm +/- 0.05 mm\"], state = \"fouled\" }\nnon_drive = { hand = \"right\", minor = [\"34.62 mm +/- 0.05 mm\"], state = \"fouled\" }",
    );
    assert!(
        plan.steps
            .iter()
            .all(|s| !s.words().contains("1.370") && !s.words().contains("1.375")),
        "no English chaser in an Italian shell"
    );
}

/// The two sides are two threads: what happened to one says nothing of the other, and what guides a cutter must be there.
#[test]
fn one_side_is_gone() {
    const ITALIAN: &str = r#"material = "steel"
[shell]
believed = "italian"
coating = "painted"
pitch = "24 tpi"
width = ["70.0 mm +/- 0.05 mm"]
limits = [{ what = "width", lower = "69.5 mm", owner = "builder (invented)" }]
[shell.drive]
hand = "right"
minor = ["35.3 mm +/- 0.05 mm"]
state = "stripped"
not_go = "failed"
[shell.drive.face]
inner_radius = "18.4 mm"
outer_radius = "20.4 mm"
probe_radius = "19.4 mm"
probes = ["0 deg: 0.00 mm +/- 0.01 mm", "120 deg: 0.10 mm +/- 0.01 mm", "240 deg: 0.05 mm +/- 0.01 mm"]
[shell.non_drive]
hand = "right"
minor = ["34.70 mm +/- 0.05 mm"]
state = "fouled"
"#;
    let plan = planned(ITALIAN);
    assert_eq!(state(&plan, "shell.drive"), State::Refer);
    assert_eq!(operations(&plan, "shell.drive"), [Refer]);
    assert_eq!(operations(&plan, "shell.non_drive"), [Chase]);
    assert!(operations(&plan, "shell.drive.face").is_empty());
    assert!(!state(&plan, "shell.drive.face").is_clear());
    let chase = plan.steps.iter().find(|s| s.operation == Chase).unwrap();
    let pilot = chase.pilot.as_ref().unwrap().to_string();
    assert!(
        !pilot.contains("other side"),
        "a thread that is gone guides nothing: {pilot}"
    );
    assert!(said(&plan, "shell.drive").contains("insert"));
    hold(&[
        Case(
            "two sound sides that read apart by 0.03: both left, no spread",
            "shell.drive",
            Leave,
            &[],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "bare"
pitch = "24 tpi"
width = ["68.0 mm +/- 0.05 mm"]
drive = { hand = "left", minor = ["33.72 mm +/- 0.01 mm"], state = "sound", go = "passed" }
non_drive = { hand = "right", minor = ["33.75 mm +/- 0.01 mm"], state = "sound", go = "passed" }"#,
        ),
        Case(
            "a crossed side of a shell: followed from its good end",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "bare"
pitch = "24 tpi"
width = ["68.0 mm +/- 0.05 mm"]
drive = { hand = "left", state = "crossed" }
non_drive = { hand = "right", state = "sound", go = "passed" }"#,
        ),
        Case(
            "NOT GO runs in on one side: that side is referred",
            "shell.non_drive",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[shell]
believed = "bsc"
coating = "bare"
pitch = "24 tpi"
width = ["68.0 mm +/- 0.05 mm"]
drive = { hand = "left", state = "sound", go = "passed" }
non_drive = { hand = "right", state = "takes_part", go = "passed", not_go = "failed" }"#,
        ),
    ]);
}

const PROBES: &str = "inner_radius = \"17.6 mm\"\nouter_radius = \"20.5 mm\"\nprobe_radius = \"19.5 mm\"\nprobes = [\"0 deg: 0.00 mm +/- 0.01 mm\", \"72 deg: 0.04 mm +/- 0.01 mm\", \"144 deg: 0.08 mm +/- 0.01 mm\", \"216 deg: 0.05 mm +/- 0.01 mm\", \"288 deg: 0.01 mm +/- 0.01 mm\"]\n";

/// A painted English shell with both faces surveyed alike.
fn faced(width: &str, limits: &str, material: &str) -> framegauge::plan::Plan {
    planned(&format!(
        "material = \"{material}\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwidth = [\"{width} +/- 0.02 mm\"]\nlimits = [{limits}]\n[shell.drive]\nhand = \"left\"\nstate = \"fouled\"\n[shell.drive.face]\n{PROBES}[shell.non_drive]\nhand = \"right\"\nstate = \"fouled\"\n[shell.non_drive.face]\n{PROBES}"
    ))
}

/// What comes off the faces comes off the width: the two share what its limit leaves, and a shell too wide is faced to its width.
#[test]
fn the_width() {
    let window = |low: &str, high: &str| {
        format!(
            "{{ what = \"width\", lower = \"{low}\", upper = \"{high}\", owner = \"crank maker (invented)\" }}"
        )
    };
    // 0.08 and a little must come off each side.
    let wide = faced("73.2 mm", &window("72.5 mm", "73.5 mm"), "aluminium");
    for face in ["shell.drive.face", "shell.non_drive.face"] {
        assert_eq!(state(&wide, face), ToDo, "{}", said(&wide, face));
        assert_eq!(operations(&wide, face), [Face]);
    }
    let most: f64 = wide
        .steps
        .iter()
        .filter(|s| s.operation == Face)
        .map(|s| framegauge::in_mm(s.off.unwrap().most).to_string())
        .map(|t| t.trim_end_matches(" mm").parse::<f64>().unwrap())
        .sum();
    assert!(most <= 0.7, "both together never pass the width: {most}");
    // Nothing is left: not faced.
    let narrow = faced("72.5 mm", &window("72.5 mm", "73.5 mm"), "aluminium");
    assert!(narrow.steps.iter().all(|s| s.operation != Face));
    assert!(!narrow.acceptable());
    // Under its least width already: out, and surely not faced.
    let under = faced("66.9 mm", &window("67.5 mm", "68.5 mm"), "steel");
    assert_eq!(state(&under, "shell"), Out, "{}", said(&under, "shell"));
    assert!(under.steps.iter().all(|s| s.operation != Face));
    // 73.5 where 72.8 to 73.2 is wanted: what the faces need is less than what the width needs, and that is said.
    let over = faced("73.5 mm", &window("72.8 mm", "73.2 mm"), "aluminium");
    let faces: Vec<_> = over.steps.iter().filter(|s| s.operation == Face).collect();
    let least: f64 = faces
        .iter()
        .map(|s| framegauge::in_mm(s.off.unwrap().least).to_string())
        .map(|t| t.trim_end_matches(" mm").parse::<f64>().unwrap())
        .sum();
    assert!(
        !over.acceptable() || least >= 0.3,
        "faced to a width, or asked: {least}\n{}",
        said(&over, "shell")
    );
    // No window and no limit: how narrow it may become is asked.
    let open = faced("68.2 mm", "", "steel");
    assert!(open.steps.iter().all(|s| s.operation != Face));
    assert!(open.questions.iter().any(|q| q.answer == "shell.window"));
}

/// A limit has one citation wherever it is told: the builder's depth is his, the window's width its maker's.
#[test]
fn each_stop_cites_its_own() {
    let plan = planned(&format!(
        "material = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwindow = \"bsc_half_axle_68\"\nwidth = [\"68.4 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nstate = \"fouled\"\n[shell.drive.face]\n{PROBES}limits = [{{ what = \"depth\", upper = \"0.2 mm\", owner = \"builder (invented)\" }}]\n[shell.non_drive]\nhand = \"right\"\nstate = \"fouled\"\n"
    ));
    let step = plan.steps.iter().find(|s| s.operation == Face).unwrap();
    assert!(step.stops.len() >= 2, "{:?}", step.stops);
    for stop in &step.stops {
        if stop.limit.to_string().contains("builder (invented)") {
            assert!(stop.sources.is_empty(), "{stop:?}");
        } else {
            assert!(!stop.sources.is_empty(), "{stop:?}");
        }
    }
}

/// A pressed bore that is over at one end is cured by no reamer, however small it is at the other.
#[test]
fn press_bores() {
    hold(&[
        Case(
            "BB30 (42 mm): over at one end, under at the other",
            "shell",
            Out,
            &[],
            &[],
            r#"material = "aluminium"
[shell]
believed = "bb30"
coating = "bare"
width = ["68.0 mm +/- 0.02 mm"]
bore = ["5 mm deep, 0 deg: 41.90 mm +/- 0.003 mm", "5 mm deep, 90 deg: 41.90 mm +/- 0.003 mm", "60 mm deep, 0 deg: 42.06 mm +/- 0.003 mm", "60 mm deep, 90 deg: 42.06 mm +/- 0.003 mm"]"#,
        ),
        Case(
            "a maker's interference that the cup misses by far",
            "shell",
            Out,
            &[],
            &[],
            r#"material = "aluminium"
[shell]
believed = "pf30"
coating = "bare"
width = ["68.0 mm +/- 0.02 mm"]
bore = ["5 mm deep, 0 deg: 45.97 mm +/- 0.003 mm", "5 mm deep, 90 deg: 45.97 mm +/- 0.003 mm", "60 mm deep, 0 deg: 45.97 mm +/- 0.003 mm", "60 mm deep, 90 deg: 45.97 mm +/- 0.003 mm"]
part = { name = "cup", outside = ["45.80 mm +/- 0.003 mm", "45.80 mm +/- 0.003 mm"] }
limits = [{ what = "interference", lower = "0.02 mm", upper = "0.10 mm", owner = "cup maker (invented)" }]"#,
        ),
    ]);
}

/// What was proved by its part and misses its limits by a little is put right, not doubted again.
#[test]
fn proved_and_a_little_small() {
    let plan = planned(
        r#"material = "steel"
[shell]
believed = "pf30"
confirmed = "pf30"
consent = "builder's letter of the spring (invented)"
coating = "bare"
width = ["68.0 mm +/- 0.02 mm"]
outside = ["50.5 mm +/- 0.02 mm"]
limits = [{ what = "bore", lower = "45.95 mm", upper = "46.00 mm", owner = "builder (invented)" }, { what = "wall", lower = "1.5 mm", owner = "builder (invented)" }]
bore = ["5 mm deep, 0 deg: 45.90 mm +/- 0.003 mm", "5 mm deep, 90 deg: 45.90 mm +/- 0.003 mm", "60 mm deep, 0 deg: 45.90 mm +/- 0.003 mm", "60 mm deep, 90 deg: 45.90 mm +/- 0.003 mm"]"#,
    );
    assert_eq!(
        operations(&plan, "shell"),
        [framegauge::plan::Operation::Ream],
        "{}",
        said(&plan, "shell")
    );
}

/// A reamer never opens a bore past what keeps its part: the least interference and the greatest clearance count as limits.
#[test]
fn the_part_caps_the_reamer() {
    let shell = |part: &str, limits: &str| {
        planned(&format!(
            "material = \"steel\"\n[shell]\nbelieved = \"pf30\"\nconfirmed = \"pf30\"\nconsent = \"builder's letter (invented)\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n{part}limits = [{{ what = \"bore\", lower = \"45.95 mm\", upper = \"46.00 mm\", owner = \"builder (invented)\" }}{limits}]\nbore = [\"5 mm deep, 0 deg: 45.90 mm +/- 0.003 mm\", \"5 mm deep, 90 deg: 45.90 mm +/- 0.003 mm\", \"60 mm deep, 0 deg: 45.90 mm +/- 0.003 mm\", \"60 mm deep, 90 deg: 45.90 mm +/- 0.003 mm\"]"
        ))
    };
    let most = |plan: &framegauge::plan::Plan| {
        plan.steps
            .iter()
            .find(|s| s.operation == framegauge::plan::Operation::Ream)
            .map(|s| framegauge::settled_mm(s.off.unwrap().most))
    };
    let press =
        ", { what = \"interference\", lower = \"0.05 mm\", owner = \"cup maker (invented)\" }";
    let free = most(&shell("", "")).expect("a permit");
    assert!(free > 0.05 && free <= 0.1, "{free}");
    // 46.03 less 0.05 is 45.98: 0.08 may come off, less the uncertainties.
    let cup = "part = { name = \"cup\", outside = [\"46.03 mm +/- 0.003 mm\", \"46.03 mm +/- 0.003 mm\"] }\n";
    let capped = most(&shell(cup, press)).expect("a permit");
    assert!(capped <= 0.08 && capped < free, "{capped}");
    // 45.99 less 0.05 is 45.94, below what the bore needs: not reamed.
    let small = "part = { name = \"cup\", outside = [\"45.99 mm +/- 0.003 mm\", \"45.99 mm +/- 0.003 mm\"] }\n";
    assert_eq!(most(&shell(small, press)), None);
    // Nobody read the cup: asked, not cut.
    let unread = shell("", press);
    assert_eq!(most(&unread), None);
    assert!(
        unread
            .questions
            .iter()
            .any(|q| q.answer == "shell.part.outside")
    );
}

/// A bore that was read over paint is not asked for again as it was; a name that no table has is asked for as a name.
#[test]
fn questions_that_can_be_answered() {
    let plan = planned(
        "material = \"steel\"\n[shell]\ncoating = \"painted\"\nwidth = [\"68.0 mm +/- 0.1 mm\"]\nbore = [\"5 mm deep, 0 deg: 51.3 mm +/- 0.1 mm\"]\n[steerer]\nconfirmed = \"nonesuch\"\noutside = [\"28.57 mm +/- 0.01 mm\"]",
    );
    let asked = |field: &str| {
        let found = plan.questions.iter().find(|q| q.answer == field);
        found.map_or_else(String::new, |q| q.measure().clone())
    };
    assert!(
        asked("shell.bore").contains("on bare metal"),
        "{:?}",
        plan.questions
    );
    assert!(
        asked("steerer.confirmed").starts_with("what is it called?"),
        "{:?}",
        plan.questions
    );
}
