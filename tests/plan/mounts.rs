//! Brake mounts: the tilt that matters, what covers them, what was cut, the bolt, the axle that guides.

use framegauge::plan::Operation::{Check, Clean, Face, Refer};
use framegauge::plan::State::{Done, Leave, Open, Out, ToDo};
use framegauge::plan::{Operation, Plan, State};

use super::{Case, hold, never_unsafe, operations, planned, said, state};

/// Heights at four corners, 74 mm by 10 mm: how much it rises across and along.
fn corners(across: f64, along: f64, u: f64) -> String {
    let at = |x: f64, y: f64| {
        format!(
            "\"{x} mm along, {y} mm across: {:.4} mm +/- {u} mm\"",
            along * (x + 37.0) / 74.0 + across * (y + 5.0) / 10.0
        )
    };
    format!(
        "points = [{}, {}, {}, {}]",
        at(-37.0, -5.0),
        at(-37.0, 5.0),
        at(37.0, -5.0),
        at(37.0, 5.0)
    )
}

const PADS: &str = "pad_clearance = \"0.25 mm\"\npad_length = \"30 mm\"";

fn mount(frame: &str, fields: &str) -> Plan {
    let plan = planned(&format!("{frame}\n[brake.rear]\n{fields}"));
    never_unsafe(&plan, fields);
    plan
}

const STEEL: &str = "material = \"steel\"";
const DEPTH: &str = "limits = [{ what = \"depth\", upper = \"0.5 mm\", owner = \"frame maker\" }]";

/// Bare and out of square is never left with nothing said: a step, a question, or out.
#[test]
fn bare_and_out_of_square() {
    // 0.28 over 10 is 1.6 deg; 0.25 a side over 30 bears 0.95.
    let tilted = corners(0.28, 0.0, 0.01);
    let field = |limits: &str, material: &str| {
        let plan = mount(
            material,
            &format!("system = \"pm\"\ncoating = \"bare\"\n{PADS}\n{tilted}\n{limits}"),
        );
        (
            state(&plan, "brake.rear"),
            operations(&plan, "brake.rear"),
            plan,
        )
    };
    let (out, steps, plan) = field("", STEEL);
    assert_eq!((out, steps), (Out, vec![]));
    assert!(
        plan.questions
            .iter()
            .any(|q| q.answer == "brake.rear.limits")
    );
    assert!(!plan.acceptable());
    assert_eq!(field(DEPTH, STEEL).1, [Face]);
    assert_eq!(field(DEPTH, "material = \"carbon\"").1, [Refer]);
    assert_eq!(field(DEPTH, "").0, Out);
    // Square enough for the caliper: left, and said so.
    let square = mount(
        STEEL,
        &format!(
            "system = \"pm\"\ncoating = \"bare\"\n{PADS}\n{}",
            corners(0.05, 0.3, 0.01)
        ),
    );
    assert_eq!(
        (
            state(&square, "brake.rear"),
            operations(&square, "brake.rear")
        ),
        (Leave, vec![])
    );
    // Not stated is not bare.
    let unsaid = mount(
        STEEL,
        &format!("system = \"pm\"\n{PADS}\n{}", corners(0.05, 0.3, 0.01)),
    );
    assert_eq!(state(&unsaid, "brake.rear"), Open);
    assert!(
        unsaid
            .questions
            .iter()
            .any(|q| q.answer == "brake.rear.coating")
    );
    // Without the pads nothing bounds the tilt: asked.
    let padless = mount(
        STEEL,
        &format!("system = \"pm\"\ncoating = \"bare\"\n{tilted}"),
    );
    assert_eq!(state(&padless, "brake.rear"), Open);
    assert!(
        padless
            .questions
            .iter()
            .any(|q| q.answer == "brake.rear.pad_clearance")
    );
}

/// Tabs are tilted by any slope, posts only by the slope across.
#[test]
fn the_slope_that_matters() {
    // 1.77 over 74 is 1.37 deg.
    for (system, across, along, wanted) in [
        ("is", 0.0, 1.77, Out),
        ("pm", 0.0, 1.77, Leave),
        ("is", 0.28, 0.0, Out),
        ("fm", 0.28, 0.0, Out),
        ("is", 0.05, 0.1, Leave),
    ] {
        let extra = if system == "fm" {
            "thickness = \"25.0 mm +/- 0.05 mm\""
        } else {
            ""
        };
        let plan = mount(
            STEEL,
            &format!(
                "system = \"{system}\"\ncoating = \"bare\"\n{PADS}\n{extra}\n{}",
                corners(across, along, 0.01)
            ),
        );
        assert_eq!(
            state(&plan, "brake.rear"),
            wanted,
            "{system} {across} {along}\n{}",
            said(&plan, "brake.rear")
        );
    }
    // On the limit of 0.95 deg: 0.1667 over 10. Too close to tell is asked, by the heights.
    for u in [0.01, 0.05] {
        let plan = mount(
            STEEL,
            &format!(
                "system = \"pm\"\ncoating = \"bare\"\n{PADS}\n{}",
                corners(0.166, 0.0, u)
            ),
        );
        assert_eq!(state(&plan, "brake.rear"), Open);
        assert!(
            plan.questions
                .iter()
                .any(|q| q.answer == "brake.rear.points")
        );
    }
    // The same heights read finer decide.
    let plan = mount(
        STEEL,
        &format!(
            "system = \"pm\"\ncoating = \"bare\"\n{PADS}\n{}",
            corners(0.160, 0.0, 0.001)
        ),
    );
    assert_eq!(state(&plan, "brake.rear"), Leave);
}

/// What the last pass left.
#[test]
fn passes() {
    let first = "points = [\"-37 mm along, -5 mm across: 0.10 mm +/- 0.008 mm\", \"-37 mm along, 5 mm across: 0.05 mm +/- 0.008 mm\", \"37 mm along, -5 mm across: 0.08 mm +/- 0.008 mm\", \"37 mm along, 5 mm across: 0.00 mm +/- 0.008 mm\"]";
    let after = |heights: [f64; 4], more: &str| {
        let [a, b, c, d] = heights;
        let pass = format!(
            "passes = [{{ points = [\"-37 mm along, -5 mm across: {a} mm +/- 0.008 mm\", \"-37 mm along, 5 mm across: {b} mm +/- 0.008 mm\", \"37 mm along, -5 mm across: {c} mm +/- 0.008 mm\", \"37 mm along, 5 mm across: {d} mm +/- 0.008 mm\"]{more} }}]"
        );
        let plan = mount(
            STEEL,
            &format!("system = \"is\"\ncoating = \"painted\"\n{PADS}\n{DEPTH}\n{first}\n{pass}"),
        );
        (state(&plan, "brake.rear"), operations(&plan, "brake.rear"))
    };
    // One corner untouched still carries its paint.
    assert_eq!(after([0.04, 0.04, 0.04, 0.00], ""), (ToDo, vec![Face]));
    // Every corner cut.
    assert_eq!(after([-0.03, -0.03, -0.03, -0.03], ""), (Done, vec![]));
    // Somebody looked: traces in the chamfer, or paint that remains.
    assert_eq!(
        after([0.04, 0.04, 0.04, 0.00], ", coating_left = \"traces\"").0,
        Done
    );
    assert_eq!(
        after([-0.03, -0.03, -0.03, -0.03], ", coating_left = \"remains\""),
        (ToDo, vec![Face])
    );
    // One corner where 0.006 came off, read to 0.011: nobody can tell.
    assert_eq!(after([-0.03, -0.03, -0.03, -0.006], ""), (Open, vec![]));
    // A mount that grew.
    assert_eq!(after([0.30, -0.03, -0.03, -0.03], ""), (Open, vec![]));
    assert_eq!(
        after(
            [-0.03, -0.03, -0.03, -0.03],
            ", marks = \"torn\", coating_left = \"remains\""
        ),
        (State::Refer, vec![Refer])
    );
}

/// The cutter is guided by the axle.
#[test]
fn the_axle_guides() {
    let painted = format!(
        "system = \"pm\"\ncoating = \"painted\"\n{PADS}\n{DEPTH}\n{}",
        corners(0.05, 0.05, 0.005)
    );
    let with = |axle: &str| {
        let plan = mount(STEEL, &format!("{painted}\n{axle}"));
        operations(&plan, "brake.rear").contains(&Operation::Face)
    };
    assert!(with(""));
    assert!(with("[axle.rear]\nmate = \"M12x1.5\"\nstate = \"sound\""));
    assert!(!with(
        "[axle.rear]\nmate = \"M12x1.5\"\nstate = \"stripped\""
    ));
    assert!(!with(
        "[axle.rear]\nmate = \"M12x1.5\"\nstate = \"crossed\""
    ));
    assert!(!with(
        "[[thread]]\nplace = \"axle\"\nend = \"rear\"\nmate = \"M12x1.5\"\nstate = \"loose\""
    ));
    // The other wheel's axle guides nothing here.
    assert!(with(
        "[axle.front]\nmate = \"M12x1.5\"\nstate = \"stripped\""
    ));
    let plan = mount(
        STEEL,
        &format!("{painted}\n[axle.rear]\nmate = \"M12x1.5\"\nstate = \"stripped\""),
    );
    assert!(!state(&plan, "brake.rear").is_clear());
    assert!(said(&plan, "brake.rear").contains("axle"));
}

/// By what it is made of.
#[test]
fn by_material() {
    let painted = format!(
        "system = \"pm\"\ncoating = \"painted\"\n{PADS}\n{DEPTH}\n{}",
        corners(0.05, 0.05, 0.005)
    );
    for (frame, joint, wanted, steps, asks) in [
        (STEEL, "", ToDo, &[Face][..], ""),
        ("", "", Open, &[], "brake.rear.material"),
        ("material = \"carbon\"", "", ToDo, &[Clean], ""),
        (
            "material = \"carbon\"",
            "material = \"aluminium\"",
            Open,
            &[],
            "brake.rear.consent",
        ),
        (
            "material = \"carbon\"",
            "material = \"aluminium\"\nconsent = \"frame maker, drawing 3\"",
            ToDo,
            &[Face],
            "",
        ),
    ] {
        let plan = mount(frame, &format!("{joint}\n{painted}"));
        assert_eq!(
            (state(&plan, "brake.rear"), operations(&plan, "brake.rear")),
            (wanted, steps.to_vec()),
            "{frame} {joint}"
        );
        assert!(asks.is_empty() || plan.questions.iter().any(|q| q.answer == asks));
    }
}

/// The bolt follows the thickness that is there now.
#[test]
fn flat_mount_bolts() {
    let bolt = |thickness: &str, bolt: &str, more: &str| {
        let plan = mount(
            "material = \"aluminium\"",
            &format!(
                "system = \"fm\"\ncoating = \"bare\"\nthickness = \"{thickness}\"\nbolt = \"{bolt}\"\n{more}"
            ),
        );
        (state(&plan, "brake.rear"), plan)
    };
    // 20 and 13 is 33: the list has it.
    assert_eq!(bolt("20.0 mm +/- 0.1 mm", "33 mm", "").0, Leave);
    let (long, plan) = bolt("20.0 mm +/- 0.1 mm", "38 mm", "");
    assert_eq!(long, Out);
    assert!(said(&plan, "brake.rear").contains("33.000 mm"));
    assert_eq!(bolt("20.0 mm +/- 0.1 mm", "28 mm", "").0, Out);
    let (close, plan) = bolt("20.0 mm +/- 0.1 mm", "35 mm", "");
    assert_eq!(close, Open);
    assert!(plan.questions.iter().any(|q| q.answer == "brake.rear.bolt"));
    // 25.1 takes what is listed for 25.
    assert_eq!(bolt("25.1 mm +/- 0.02 mm", "38 mm", "").0, Leave);
    // After a pass it is another mount: 20.0 faced to 15.2 takes 28.
    assert_eq!(
        bolt(
            "20.0 mm +/- 0.1 mm",
            "33 mm",
            "passes = [{ thickness = \"15.2 mm +/- 0.1 mm\", coating_left = \"all_off\" }]"
        )
        .0,
        Out
    );
    // A mount that will be faced: the bolt is chosen anew after it.
    let plan = mount(
        STEEL,
        &format!(
            "system = \"fm\"\ncoating = \"painted\"\nthickness = \"25.0 mm +/- 0.05 mm\"\nbolt = \"38 mm\"\n{PADS}\n{DEPTH}\n{}",
            corners(0.05, 0.02, 0.005)
        ),
    );
    assert_eq!(operations(&plan, "brake.rear"), [Face, Check]);
}

/// Two entries for one mount are one mount, or a contradiction; never two cuts.
#[test]
fn said_twice() {
    let entry = |fields: &str| format!("[[brake]]\nend = \"rear\"\nsystem = \"pm\"\n{fields}\n");
    let points = corners(0.05, 0.05, 0.005);
    let whole = format!("coating = \"painted\"\n{PADS}\n{DEPTH}\n{points}");
    let cuts = |text: &str| {
        let plan = planned(&format!("{STEEL}\n{text}"));
        never_unsafe(&plan, text);
        let report = plan.place(&"brake.rear".parse().unwrap()).unwrap();
        (
            plan.steps.iter().filter(|s| s.cuts()).count(),
            !report.contradictions.is_empty(),
            plan.questions
                .iter()
                .map(|q| q.answer.clone())
                .collect::<Vec<_>>(),
        )
    };
    assert_eq!(cuts(&entry(&whole)).0, 1);
    assert_eq!(cuts(&(entry(&whole) + &entry(&whole))).0, 1);
    // One says the rest.
    assert_eq!(
        cuts(&(entry("coating = \"painted\"") + &entry(&format!("{PADS}\n{DEPTH}\n{points}")))).0,
        1
    );
    // They differ.
    let (count, contradicted, asked) = cuts(&(entry(&whole) + &entry("coating = \"bare\"")));
    assert_eq!((count, contradicted), (0, true));
    assert!(asked.contains(&String::from("brake[1].coating")));
    // Front and rear are two mounts.
    let front = entry(&whole).replace("rear", "front");
    let plan = planned(&format!("{STEEL}\n{}{front}", entry(&whole)));
    assert_eq!(plan.steps.iter().filter(|s| s.cuts()).count(), 2);
}

#[test]
fn without_heights() {
    hold(&[
        Case(
            "painted: heights are asked for",
            "brake.rear",
            Open,
            &[],
            &["brake.rear.points"],
            "material = \"steel\"\n[brake.rear]\nsystem = \"pm\"\ncoating = \"painted\"",
        ),
        Case(
            "nothing said",
            "brake.rear",
            Open,
            &[],
            &["brake.rear.coating"],
            "material = \"steel\"\n[brake.rear]\nsystem = \"pm\"",
        ),
        Case(
            "bare",
            "brake.rear",
            Leave,
            &[],
            &[],
            "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"bare\"",
        ),
        Case(
            "a maker's squareness needs heights",
            "brake.rear",
            Open,
            &[],
            &["brake.rear.points"],
            "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"bare\"\nlimits = [{ what = \"squareness\", upper = \"0.05 mm\", owner = \"caliper maker\" }]",
        ),
        Case(
            "two heights are no survey",
            "brake.rear",
            Open,
            &[],
            &["brake.rear.points"],
            "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"bare\"\npoints = [\"0 mm along, 0 mm across: 0 mm +/- 0.01 mm\", \"50 mm along, 0 mm across: 0 mm +/- 0.01 mm\"]",
        ),
        Case(
            "three in a line neither",
            "brake.rear",
            Open,
            &[],
            &["brake.rear.points"],
            "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"bare\"\npoints = [\"0 mm along, 0 mm across: 0 mm +/- 0.01 mm\", \"50 mm along, 0 mm across: 0 mm +/- 0.01 mm\", \"25 mm along, 0 mm across: 0 mm +/- 0.01 mm\"]",
        ),
    ]);
}
