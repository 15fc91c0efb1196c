//! The whole-frame plan: order, stops, honesty, and sheets that make no sense.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::ErrorKind;
use framegauge::measure::Outcome;
use framegauge::prep::{
    Interface, Operation, Plan, Progress, Record, WrittenSheet, pictures, prepare, prepare_with,
    record,
};
use framegauge::standard::{End, ShopRows, Tables};
use framegauge::thread::{Hand, Side, Turn};
use framegauge::{in_mm, mm, settled_mm};
use proptest::prelude::*;

fn sheet(text: &str) -> WrittenSheet {
    toml::from_str(text).unwrap_or_else(|e| panic!("{e}"))
}

fn plan(text: &str) -> Plan {
    prepare(&sheet(text).read().unwrap_or_else(|e| panic!("{e:?}")))
}

fn frame(name: &str) -> String {
    std::fs::read_to_string(format!(
        "{}/examples/frames/{name}.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

fn words_of(plan: &Plan, interface: Interface) -> String {
    let report = plan
        .interfaces
        .iter()
        .find(|i| i.interface == interface)
        .unwrap();
    report
        .findings
        .iter()
        .map(|f| format!("{}: {}\n", f.what, f.words))
        .collect()
}

fn step(plan: &Plan, interface: Interface, operation: Operation) -> &framegauge::prep::Step {
    plan.steps
        .iter()
        .find(|s| s.interface == interface && s.operation == operation)
        .unwrap_or_else(|| panic!("no {operation} at {interface}:\n{plan}"))
}

fn order_holds(plan: &Plan) {
    let numbers: Vec<usize> = plan.steps.iter().map(|s| s.number).collect();
    assert_eq!(numbers, (1..=plan.steps.len()).collect::<Vec<_>>());
    for edge in &plan.order {
        assert!(
            edge.before < edge.after,
            "{} before {}: {}",
            edge.before,
            edge.after,
            edge.reason
        );
    }
    for step in &plan.steps {
        for question in &step.waits_for {
            assert!(
                plan.questions.iter().any(|q| q.number == *question),
                "step {} waits for nothing",
                step.number
            );
        }
        // Nothing is cut beyond what stops the cut.
        if let (Some(amount), Some(left)) = (&step.amount, step.stop.as_ref().and_then(|s| s.left))
        {
            assert!(
                amount.least <= left + mm(1e-9),
                "{}: {} of {}",
                step.title,
                in_mm(amount.least),
                in_mm(left)
            );
        }
    }
}

#[test]
fn the_painted_frame() {
    let plan = plan(&frame("painted_steel"));
    order_holds(&plan);
    assert!(plan.invented);
    let first = &plan.steps[0];
    assert_eq!(
        (first.interface, first.operation),
        (Interface::SeatTube, Operation::Ream)
    );
    // 27.2 less the narrowest reading of 27.02 mm.
    assert_eq!(settled_mm(first.amount.as_ref().unwrap().least), 0.18);
    assert!(
        !first.waits_for.is_empty(),
        "27.4 is possible as well, so the reamer waits"
    );

    let drive = step(&plan, Interface::ShellSide(Side::Drive), Operation::Chase);
    let tool = drive.tool.as_ref().unwrap();
    assert_eq!(
        (tool.hand, tool.turn),
        (Some(Hand::Left), Turn::CounterClockwise)
    );
    let other = step(
        &plan,
        Interface::ShellSide(Side::NonDrive),
        Operation::Chase,
    );
    assert_eq!(other.tool.as_ref().unwrap().turn, Turn::Clockwise);
    let face = step(&plan, Interface::ShellSide(Side::Drive), Operation::Face);
    assert!(face.number > drive.number && face.number > other.number);
    // (68.38 - 67.2) / 2 with the narrowest width.
    assert_eq!(settled_mm(face.stop.as_ref().unwrap().left.unwrap()), 0.59);
    assert!(!face.stop.as_ref().unwrap().sources.is_empty());

    let lower = plan
        .interfaces
        .iter()
        .find(|i| i.interface == Interface::HeadLower)
        .unwrap();
    assert!(
        lower
            .findings
            .iter()
            .all(|f| f.outcome != Some(Outcome::NonconformityShown)),
        "a reading on paint shows nothing"
    );
    assert!(
        plan.steps
            .iter()
            .all(|s| s.interface != Interface::HeadUpper),
        "the stuck cup stays"
    );

    let rear = step(&plan, Interface::Brake(0), Operation::Face);
    let axle = plan
        .steps
        .iter()
        .find(|s| s.interface == Interface::Thread(0))
        .unwrap();
    assert!(
        axle.number < rear.number,
        "the facing tool pilots on the axle"
    );
    assert!(step(&plan, Interface::Brake(0), Operation::Check).number > rear.number);
    assert!(
        !step(&plan, Interface::Brake(1), Operation::Face)
            .waits_for
            .is_empty(),
        "nobody said how much may come off"
    );
}

#[test]
fn the_carbon_frame_is_not_cut() {
    let plan = plan(&frame("carbon_press"));
    order_holds(&plan);
    assert!(
        plan.steps.iter().all(|s| matches!(
            s.operation,
            Operation::Clean | Operation::Refer | Operation::Check
        )),
        "{plan}"
    );
    let shell = words_of(&plan, Interface::Shell);
    assert!(
        shell.contains("nobody publishes limits for this bore"),
        "{shell}"
    );
    assert!(words_of(&plan, Interface::HeadLower).contains("another bearing"));
}

#[test]
fn the_old_frame_is_measured_before_it_is_touched() {
    let plan = plan(&frame("old_steel"));
    assert!(plan.steps.is_empty(), "{plan}");
    for (interface, ask) in [
        (Interface::Shell, "pitch"),
        (Interface::Steerer, "pitch"),
        (Interface::Thread(0), "pitch"),
    ] {
        assert!(
            plan.questions
                .iter()
                .any(|q| q.interface == interface && q.ask.contains(ask)),
            "{interface}"
        );
    }
    assert!(words_of(&plan, Interface::SeatTube).contains("contradict"));
}

/// Answers as the practitioners' log gives them, its figures checked against the tables.
#[test]
fn real_frames() {
    let narrow = plan(&frame("case_narrow_press_shell"));
    let words = words_of(&narrow, Interface::Shell);
    assert!(
        words.contains("0.150 mm under the lower limit")
            && words.contains("interference 0.200 to 0.250 mm"),
        "{words}"
    );
    assert_eq!(
        settled_mm(
            step(&narrow, Interface::Shell, Operation::Ream)
                .amount
                .as_ref()
                .unwrap()
                .least
        ),
        0.15
    );

    let wide = plan(&frame("case_wide_asymmetric_shell"));
    let report = wide
        .interfaces
        .iter()
        .find(|i| i.interface == Interface::Shell)
        .unwrap();
    assert_eq!(
        report.identification.as_ref().unwrap().outcome.identified(),
        Some("bbright_pf")
    );
    assert!(
        words_of(&wide, Interface::Shell).contains("11.000 mm further out on the non-drive side")
    );

    let old = words_of(&plan(&frame("case_26_tpi_shell")), Interface::Shell);
    assert!(
        old.contains("0.081 mm a turn apart, half a pitch after 6 turns")
            && old.contains("3.000 mm short"),
        "{old}"
    );

    let shallow = plan(&frame("case_shallow_head_tube"));
    assert!(words_of(&shallow, Interface::HeadLower).contains("3.000 mm proud"));

    let shim = words_of(&plan(&frame("case_post_and_shim")), Interface::SeatTube);
    assert!(
        shim.contains("takes a wall of 0.100 mm") && shim.contains("will not enter"),
        "{shim}"
    );

    let faults = words_of(&plan(&frame("case_two_faults")), Interface::SeatTube);
    assert!(
        faults.contains("both are off")
            && faults.contains("a post of 27.4 mm")
            && faults.contains("wall 0.200 mm"),
        "{faults}"
    );

    let hanger = plan(&frame("case_hanger_hole"));
    order_holds(&hanger);
    // ISO 965-2: M10x1-6H minor 8.917 to 9.153 mm.
    assert_eq!(
        settled_mm(
            step(&hanger, Interface::Thread(0), Operation::Ream)
                .amount
                .as_ref()
                .unwrap()
                .least
        ),
        0.417
    );
    assert_eq!(
        step(&hanger, Interface::Thread(0), Operation::Tap).number,
        2
    );
}

#[test]
fn a_second_pass_is_judged_by_its_own_readings() {
    let face = |after: &str| {
        let text = format!(
            "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[instruments]\nheight = \"dial_indicator\"\n[shell]\nbelieved = \"bsc\"\npitch = \"24 tpi\"\nwindow = \"bsc_half_axle_68\"\nwidth = [\"68.3 mm +/- 0.02 mm\"]\n[shell.drive]\nminor = [\"33.75 mm +/- 0.05 mm\"]\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nstate = \"sound\"\ngo = \"passed\"\n[shell.drive.face]\ncoating = \"painted\"\ninner_radius = \"17.6 mm\"\nouter_radius = \"20.5 mm\"\nprobe_radius = \"19.5 mm\"\nprobes = [\"0 deg: 0.10 mm\", \"72 deg: 0.06 mm\", \"144 deg: 0.02 mm\", \"216 deg: 0.03 mm\", \"288 deg: 0.08 mm\"]\n{after}"
        );
        plan(&text)
    };
    let before = face("");
    assert!(before.steps.iter().any(|s| s.operation == Operation::Face));
    let done = face(
        "after = [\"0 deg: 0.000 mm\", \"72 deg: -0.002 mm\", \"144 deg: 0.001 mm\", \"216 deg: 0.000 mm\", \"288 deg: -0.001 mm\"]\n",
    );
    let words = words_of(&done, Interface::Shell);
    assert!(words.contains("removed 0.019 mm to 0.100 mm"), "{words}");
    assert!(
        done.steps.iter().all(|s| s.operation != Operation::Face),
        "no limit says that it must be cut again"
    );
    let grown = face(
        "after = [\"0 deg: 0.30 mm\", \"72 deg: 0.26 mm\", \"144 deg: 0.22 mm\", \"216 deg: 0.23 mm\", \"288 deg: 0.28 mm\"]\n",
    );
    assert!(words_of(&grown, Interface::Shell).contains("higher than before"));
}

/// Each defect by itself: kind, field, and a remedy.
#[test]
fn sheets_that_make_no_sense() {
    let head = "format = 1\nframe = \"f\"\n";
    for (body, kind, field) in [
        (
            "[seat_tube]\nbore = [\"27.2\"]\n",
            ErrorKind::Unit,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm\"]\n",
            ErrorKind::Missing,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"NaN mm +/- 0.1 mm\"]\n",
            ErrorKind::NotFinite,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"-27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::OutOfRange,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm +/- 0.1 mm\"]\noutside = \"27.0 mm +/- 0.1 mm\"\n",
            ErrorKind::Contradiction,
            "seat_tube.bore",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm by eyeball\"]\n",
            ErrorKind::UnknownName,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"left: 27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::Text,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nafter = [\"27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::Missing,
            "seat_tube.bore",
        ),
        (
            "[seat_tube]\ncoating = \"pretty\"\n",
            ErrorKind::UnknownName,
            "seat_tube.coating",
        ),
        (
            "[shell]\nwindow = \"none_such\"\n",
            ErrorKind::UnknownName,
            "shell.window",
        ),
        (
            "[shell]\npitch = \"240 tpi\"\n",
            ErrorKind::OutOfRange,
            "shell.pitch",
        ),
        (
            "[shell.drive]\nhand = \"rider's left\"\n",
            ErrorKind::UnknownName,
            "shell.drive.hand",
        ),
        (
            "[shell]\nwidth = \"79 mm +/- 0.1 mm\"\nhalf_drive = \"34 mm +/- 0.1 mm\"\nhalf_non_drive = \"34 mm +/- 0.1 mm\"\n",
            ErrorKind::Contradiction,
            "shell.half_drive",
        ),
        (
            "[shell.drive.face]\ninner_radius = \"21 mm\"\nouter_radius = \"17 mm\"\n",
            ErrorKind::Contradiction,
            "shell.drive.face.inner_radius",
        ),
        (
            "[shell.drive.face]\nprobes = [\"0.03 mm +/- 0.01 mm\"]\n",
            ErrorKind::Missing,
            "shell.drive.face.probes[0]",
        ),
        (
            "[shell.drive.face]\nafter = [\"0 deg: 0.03 mm +/- 0.01 mm\"]\n",
            ErrorKind::Missing,
            "shell.drive.face.probes",
        ),
        (
            "[[thread]]\nplace = \"saddle\"\n",
            ErrorKind::UnknownName,
            "thread[0].place",
        ),
        (
            "[[thread]]\nplace = \"axle\"\nmate = \"M10x10\"\n",
            ErrorKind::OutOfRange,
            "thread[0].mate",
        ),
        (
            "[[brake]]\nsystem = \"fm\"\nend = \"top\"\n",
            ErrorKind::UnknownName,
            "brake[0].end",
        ),
        (
            "[seat_tube]\nlimits = [{ what = \"bore\", owner = \"drawing\" }]\n",
            ErrorKind::Missing,
            "seat_tube.limits[0]",
        ),
        (
            "[seat_tube]\nlimits = [{ what = \"bore\", owner = \"drawing\", lower = \"2 mm\", upper = \"1 mm\" }]\n",
            ErrorKind::Contradiction,
            "seat_tube.limits[0]",
        ),
    ] {
        let errors = sheet(&format!("{head}{body}")).read().unwrap_err();
        let error = &errors[0];
        assert_eq!(error.kind(), kind, "{body}: {error}");
        assert!(error.field().starts_with(field), "{body}: {error}");
        assert!(!error.remedy().is_empty(), "{body}");
    }
    for (text, kind) in [
        ("frame = \"f\"\n", ErrorKind::Missing),
        ("format = 2\nframe = \"f\"\n", ErrorKind::OutOfRange),
        ("format = 1\n", ErrorKind::Missing),
    ] {
        assert_eq!(sheet(text).read().unwrap_err()[0].kind(), kind, "{text}");
    }
    // Structure: unknown fields and bare numbers are refused where they are read.
    for text in [
        "format = 1\nframe = \"f\"\nsaddle = 3\n",
        "format = 1\nframe = \"f\"\n[seat_tube]\nbore = 27.2\n",
        "format = 1\nframe = \"f\"\n[seat_tube]\nbore = [27.2]\n",
    ] {
        assert!(toml::from_str::<WrittenSheet>(text).is_err(), "{text}");
    }
    // All defects come at once.
    let errors = sheet(&format!("{head}[seat_tube]\nbore = [\"27.2\", \"x mm\", \"27 mm +/- 0.1 mm\"]\ncoating = \"pretty\"\n")).read().unwrap_err();
    assert_eq!(errors.len(), 3, "{errors:?}");
}

#[test]
fn nothing_measured_means_nothing_cut() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"27.2\"\n[shell]\nbelieved = \"bsc\"\n[head_tube.lower]\nbelieved = \"EC34\"\n[crown]\n[steerer]\n[[thread]]\nplace = \"hanger\"\n[[brake]]\nsystem = \"fm\"\nend = \"rear\"\ncoating = \"painted\"\n",
    );
    assert!(
        plan.steps.iter().all(|s| !matches!(
            s.operation,
            Operation::Ream | Operation::Face | Operation::Tap
        ) || !s.waits_for.is_empty()),
        "{plan}"
    );
    assert!(plan.questions.len() >= 5);
}

#[test]
fn everything_printed_can_be_traced() {
    for name in ["painted_steel", "carbon_press", "old_steel"] {
        let plan = plan(&frame(name));
        let json = serde_json::to_value(&plan).unwrap();
        for interface in json["interfaces"].as_array().unwrap() {
            for finding in interface["findings"].as_array().unwrap() {
                let grade = finding["grade"].as_str();
                let published = matches!(
                    grade,
                    Some("standard" | "agreeing" | "published" | "second_hand")
                );
                let owned = !finding["owner"].as_str().unwrap().is_empty();
                let cited = !finding["sources"].as_array().unwrap().is_empty();
                // The identification names its rows; their sources are asked for by code.
                let named = finding["what"] == "which standard";
                assert!(!published || cited || owned || named, "{name}: {finding}");
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// More paint never makes a verdict better, and never makes the reamer take less.
    #[test]
    fn paint_never_helps(narrowing in 0.0f64..0.25) {
        let text = |bore: f64| format!(
            "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"27.2\"\ncoating = \"painted\"\nclear_depth = \"200 mm\"\nbore = [\"10 mm deep, 0 deg: {bore:.3} mm +/- 0.02 mm\", \"10 mm deep, 90 deg: 27.20 mm +/- 0.02 mm\", \"80 mm deep, 0 deg: 27.21 mm +/- 0.02 mm\", \"80 mm deep, 90 deg: 27.21 mm +/- 0.02 mm\"]\n"
        );
        let off = |plan: &Plan| plan.steps.iter().filter_map(|s| s.amount.as_ref()).map(|a| settled_mm(a.least)).fold(0.0, f64::max);
        prop_assert!(off(&plan(&text(27.2 - narrowing))) >= off(&plan(&text(27.2))));
    }

    /// A tighter width window never turns a stop into a cut.
    #[test]
    fn a_tighter_window_never_allows_more(least in 67.0f64..68.4, slack in 0.0f64..0.5) {
        let text = |least: f64| frame("painted_steel").replace(
            "window = \"bsc_half_axle_68\"",
            &format!("limits = [{{ what = \"width\", lower = \"{least:.3} mm\", owner = \"crank maker (invented)\" }}]"),
        );
        let faced = |least: f64| plan(&text(least)).steps.iter().filter(|s| s.operation == Operation::Face && matches!(s.interface, Interface::ShellSide(_)) && s.waits_for.is_empty()).count();
        prop_assert!(faced(least + slack) <= faced(least));
    }

    /// Any sheet that reads is planned: order kept, nothing panics.
    #[test]
    fn any_sheet_is_planned(bore in 20.0f64..60.0, width in 60.0f64..130.0, believed in prop::sample::select(vec!["bsc", "pf30", "italian", "BB86", "nonsense"]), material in prop::sample::select(vec!["steel", "carbon", "titanium", "unknown"])) {
        let text = format!(
            "format = 1\nframe = \"f\"\nmaterial = \"{material}\"\n[shell]\nbelieved = \"{believed}\"\nwidth = \"{width:.2} mm +/- 0.1 mm\"\nbore = [\"{bore:.2} mm +/- 0.05 mm\"]\n[head_tube.upper]\nbelieved = \"EC34\"\nbore = [\"{bore:.2} mm +/- 0.05 mm\"]\n[seat_tube]\nbore = [\"{bore:.2} mm +/- 0.05 mm\", \"{bore:.2} mm +/- 0.05 mm\"]\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nminor = [\"{bore:.2} mm +/- 0.05 mm\"]\n"
        );
        order_holds(&plan(&text));
    }
}

#[test]
fn ends_are_kept_apart() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[[thread]]\nplace = \"axle\"\nend = \"front\"\nmate = \"M12x1\"\ncoating = \"painted\"\n",
    );
    assert_eq!(plan.interfaces[0].title, "front axle");
    assert_eq!(End::Front.to_string(), "front");
}

fn job(text: &str) -> Record {
    let tables = Tables::ours();
    record(
        &sheet(text)
            .read_with(tables)
            .unwrap_or_else(|e| panic!("{e:?}")),
        tables,
    )
}

fn progress(record: &Record, interface: Interface) -> (Progress, String) {
    let entry = record
        .entries
        .iter()
        .find(|e| e.interface == interface)
        .unwrap();
    (entry.progress, entry.words.clone())
}

/// The frame after a first pass: what is done, what needs one more pass, what waits, what came off beyond the plan.
#[test]
fn the_record_of_a_first_pass() {
    let record = job(&frame("painted_steel_after"));
    for (interface, expected) in [
        (Interface::SeatTube, Progress::Done),
        (Interface::Shell, Progress::OneMorePass),
        (Interface::HeadUpper, Progress::Nothing),
        (Interface::HeadLower, Progress::Done),
        (Interface::Crown, Progress::Planned),
        (Interface::Brake(0), Progress::Done),
        (Interface::Brake(1), Progress::Planned),
    ] {
        assert_eq!(progress(&record, interface).0, expected, "{interface:?}");
    }
    // Narrowest place before 27.02 mm, after 27.21 mm: readings of the sheet, subtracted.
    let tube = record
        .entries
        .iter()
        .find(|e| e.interface == Interface::SeatTube)
        .unwrap();
    assert!((settled_mm(tube.removed[0].value()) - 0.19).abs() < 1e-9);
    // Highest probe before 0.055 mm, after -0.102 mm; the plan asked for less.
    let (_, words) = progress(&record, Interface::Brake(0));
    assert!(
        words.contains("more came off than was planned (0.157 mm"),
        "{words}"
    );
    let page = record.markdown();
    assert!(
        page.contains("Invented data") && page.contains("| seat tube | done |"),
        "{page}"
    );
    assert!(
        record
            .entries
            .iter()
            .all(|e| e.progress != Progress::Planned || e.after.is_empty())
    );
}

/// Without readings after it nothing is called done, and equal readings say that nothing came off.
#[test]
fn nothing_is_done_by_itself() {
    let before = job(&frame("painted_steel"));
    assert!(
        before
            .entries
            .iter()
            .all(|e| e.progress != Progress::Done && e.after.is_empty())
    );
    let bore = "\"10 mm deep, 0 deg: 27.10 mm\", \"60 mm deep, 0 deg: 27.12 mm\"";
    let text = format!(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[instruments]\ninside = \"telescoping_gauge\"\n[seat_tube]\nbelieved = \"27.2\"\ncoating = \"overspray\"\nclear_depth = \"210 mm\"\nbore = [{bore}]\nafter = [{bore}]\n"
    );
    let same = job(&text);
    let tube = &same.entries[0];
    assert!(
        tube.after.iter().any(|f| f
            .words
            .contains("nothing that these readings can see came off")),
        "{tube:#?}"
    );
    assert_ne!(tube.progress, Progress::Done);
}

/// A picture of every face that was surveyed, before and after; names that are file names.
#[test]
fn every_surveyed_face_is_drawn() {
    let sheet = sheet(&frame("painted_steel_after")).read().unwrap();
    let drawn = pictures(&sheet, Tables::ours());
    let names: Vec<&str> = drawn.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(
        names,
        [
            "shell_drive_before",
            "shell_drive_after",
            "shell_non_drive_before",
            "brake_1_rear_before",
            "brake_1_rear_after",
            "brake_2_front_before"
        ]
    );
    assert!(
        drawn
            .iter()
            .all(|p| p.svg.starts_with("<svg") && p.svg.trim_end().ends_with("</svg>"))
    );
}

/// A shop's row is believed like ours, keeps the grade `shop`, and never displaces a name of ours.
#[test]
fn a_shops_own_row_reaches_the_plan() {
    let rows = std::fs::read_to_string(format!(
        "{}/examples/rows/shop.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap();
    let shop: ShopRows = toml::from_str(&rows).unwrap();
    let tables = Tables::with(&shop).unwrap();
    let text = "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"shop_26_1\"\ncoating = \"bare\"\nbore = [\"10 mm deep, 0 deg: 26.10 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 26.11 mm +/- 0.01 mm\"]\n";
    let read = sheet(text).read_with(tables).unwrap();
    let plan = prepare_with(&read, tables);
    let words = words_of(&plan, Interface::SeatTube);
    assert!(words.contains("This can be `shop_26_1`"), "{words}");
    let ours = self::plan(text);
    let words = words_of(&ours, Interface::SeatTube);
    assert!(!words.contains("This can be `shop_26_1`"), "{words}");
    let clash: ShopRows = toml::from_str(&rows.replace("shop_26_1", "27.2")).unwrap();
    let refused = Tables::with(&clash).unwrap_err();
    assert!(refused.to_string().contains("27.2"), "{refused}");
}

/// A thread that takes its gauge by hand is left alone even in a painted shell; the other side is chased.
#[test]
fn a_gauge_that_goes_through_leaves_the_thread_alone() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\n[shell.drive]\nhand = \"left\"\nminor = [\"33.72 mm +/- 0.03 mm\"]\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nhand = \"right\"\nstate = \"fouled\"\ngo = \"failed\"\n",
    );
    let chased: Vec<Interface> = plan
        .steps
        .iter()
        .filter(|s| s.operation == Operation::Chase)
        .map(|s| s.interface)
        .collect();
    assert_eq!(chased, [Interface::ShellSide(Side::NonDrive)], "{plan}");
}

/// A post that is to go deeper than the tube is clear is told, and a window that speaks of one size only is not used for
/// another.
#[test]
fn a_post_needs_room_and_its_own_window() {
    let text = |insertion: u32| {
        format!(
            "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"31.6\"\ncoating = \"bare\"\nclear_depth = \"180 mm\"\nbore = [\"10 mm deep, 0 deg: 31.66 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 31.67 mm +/- 0.01 mm\"]\npost = {{ name = \"post\", outside = [\"31.56 mm +/- 0.005 mm\"], material = \"aluminium\", insertion = \"{insertion} mm\" }}\n"
        )
    };
    let room = |insertion: u32| {
        let plan = plan(&text(insertion));
        assert!(!plan.to_string().contains("reamed 27.2 hole"), "{plan}");
        let tube = plan
            .interfaces
            .iter()
            .find(|i| i.interface == Interface::SeatTube)
            .unwrap();
        tube.findings
            .iter()
            .find(|f| f.what == "room for the post")
            .unwrap()
            .outcome
    };
    assert_eq!(room(150), Some(Outcome::ConformityShown));
    assert_eq!(room(200), Some(Outcome::NonconformityShown));
}

/// Paint in a metal press shell comes out before anything is judged; a painted axle hole is asked for its pitch, once.
#[test]
fn paint_comes_out_of_a_press_shell_first() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"painted\"\nbore = [\"10 mm deep, 0 deg: 45.90 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 45.91 mm +/- 0.01 mm\", \"55 mm deep, 0 deg: 45.90 mm +/- 0.01 mm\", \"55 mm deep, 90 deg: 45.91 mm +/- 0.01 mm\"]\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\ncoating = \"painted\"\nminor = [\"10.6 mm +/- 0.05 mm\"]\n",
    );
    let shell = step(&plan, Interface::Shell, Operation::Clean);
    assert!(shell.title.contains("paint"), "{plan}");
    assert!(
        plan.steps.iter().all(|s| s.operation != Operation::Ream),
        "a reading on paint shows nothing: {plan}"
    );
    let axle: Vec<&str> = plan
        .questions
        .iter()
        .filter(|q| q.interface == Interface::Thread(0))
        .map(|q| q.ask.as_str())
        .collect();
    assert_eq!(axle.len(), 1, "{axle:?}");
    assert!(axle[0].contains("pitch"), "{axle:?}");
}

/// A pass that went too far is stopped, never done: a bore beyond its size, a face beyond the width window, a mount beyond
/// the builder's depth. The amounts are the readings of the sheet, subtracted.
#[test]
fn what_was_cut_too_far_is_not_done() {
    let text = frame("painted_steel_after");
    // The bore after the work 0.4 mm larger, the mount 0.3 mm deeper (limit 0.30 mm in all).
    let tube = text.replace("after = [\n  \"10 mm deep, 0 deg: 27.21 mm\",\n  \"10 mm deep, 90 deg: 27.22 mm\",\n  \"60 mm deep, 0 deg: 27.21 mm\",\n  \"60 mm deep, 90 deg: 27.21 mm\",\n  \"150 mm deep, 0 deg: 27.22 mm\",\n  \"150 mm deep, 90 deg: 27.22 mm\",\n]", "after = [\"10 mm deep, 0 deg: 27.61 mm\", \"10 mm deep, 90 deg: 27.62 mm\", \"60 mm deep, 0 deg: 27.61 mm\", \"150 mm deep, 0 deg: 27.62 mm\"]");
    assert_ne!(tube, text);
    let (state, words) = progress(&job(&tube), Interface::SeatTube);
    assert_eq!(state, Progress::Stopped, "{words}");
    let mount = text.replace(": -0.10", ": -0.40");
    assert_ne!(mount, text);
    let (state, words) = progress(&job(&mount), Interface::Brake(0));
    assert_eq!(state, Progress::Stopped, "{words}");
    assert!(words.contains("too much is off already"), "{words}");
    // The drive face 2.0 mm deeper than found, with 0.59 mm to go a side.
    let face = text.replace(
        "\"0 deg: 0.004 mm\", \"40 deg: 0.007 mm\", \"80 deg: 0.006 mm\", \"120 deg: 0.005 mm\", \"160 deg: 0.002 mm\",\n  \"200 deg: 0.000 mm\", \"240 deg: -0.003 mm\", \"280 deg: -0.002 mm\", \"320 deg: 0.001 mm\",",
        "\"0 deg: -2.000 mm\", \"40 deg: -2.001 mm\", \"80 deg: -2.000 mm\", \"120 deg: -2.001 mm\", \"160 deg: -2.000 mm\",",
    );
    assert_ne!(face, text);
    let (state, words) = progress(&job(&face), Interface::Shell);
    assert_eq!(state, Progress::Stopped, "{words}");
}
