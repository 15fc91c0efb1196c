//! What is told twice, and what is asked after it was told: readings that only seem to disagree, and where an answer is written.
//! Every figure is an invented reading; what is right was decided by hand.

use framegauge::plan::{Plan, State};

use super::{never_unsafe, planned, state};

fn asks(plan: &Plan, field: &str) -> bool {
    plan.questions.iter().any(|q| q.answer == field)
}

fn contradicted(plan: &Plan, place: &str) -> bool {
    let place = place.parse().unwrap();
    !plan.place(&place).unwrap().contradictions.is_empty()
}

/// Metal does not come on. But a bore that is read across another direction is another reading, and of two readings at one
/// place whose uncertainties meet one is the smaller by chance.
#[test]
fn a_bore_or_seat_after_the_work_is_held_against_the_same_place() {
    let bore = |place: &str, before: &str, after: &str| {
        planned(&format!(
            "material = \"steel\"\n[{place}]\nbore = [{before}]\nafter = [{after}]"
        ))
    };
    for place in ["head_tube.upper", "head_tube.lower", "seat_tube", "shell"] {
        let told = |before: &str, after: &str| contradicted(&bore(place, before, after), place);
        let before = r#""5 mm deep, 90 deg: 41.171 mm +/- 0.002 mm""#;
        let elsewhere = r#""5 mm deep, 0 deg: 41.165 mm +/- 0.002 mm""#;
        let meets = r#""5 mm deep, 90 deg: 41.168 mm +/- 0.002 mm""#;
        let narrower = r#""5 mm deep, 90 deg: 41.165 mm +/- 0.002 mm""#;
        let one_of_two = r#""5 mm deep, 0 deg: 41.30 mm +/- 0.002 mm", "5 mm deep, 90 deg: 41.165 mm +/- 0.002 mm""#;
        if place != "shell" {
            // A shell is named before its bore is looked at.
            assert!(told(before, narrower), "{place}");
            assert!(told(before, one_of_two), "{place}");
        }
        assert!(!told(before, elsewhere), "{place}");
        assert!(!told(before, meets), "{place}");
    }
    // A crown seat is an outside: metal that came on makes it larger.
    let seat = |before: &str, after: &str| {
        let sheet = format!("material = \"steel\"\n[crown]\nseat = [{before}]\nafter = [{after}]");
        contradicted(&planned(&sheet), "crown")
    };
    let before = r#""0 deg: 26.40 mm +/- 0.01 mm""#;
    assert!(!seat(before, r#""90 deg: 26.45 mm +/- 0.01 mm""#));
    assert!(!seat(before, r#""0 deg: 26.41 mm +/- 0.01 mm""#));
    assert!(seat(before, r#""0 deg: 26.45 mm +/- 0.01 mm""#));
}

/// Whatever risk its owner takes with a limit: a thread that was called sound and a bore that is over its limit by less than its
/// reading is sure of do not contradict each other.
#[test]
fn a_sound_thread_is_not_contradicted_by_a_reading_that_is_not_sure() {
    let hanger = |minor: &str| {
        planned(&format!(
            "material = \"aluminium\"\nrule = \"simple\"\n[hanger.rear]\nmate = \"M10x1\"\npitch = \"1 mm\"\nhand = \"right\"\ncoating = \"bare\"\nstate = \"sound\"\nminor = [\"{minor}\"]"
        ))
    };
    // M10 x 1, 6H: the bore is 9.153 mm at most (ISO 965-1, as the library's tables give it).
    for (minor, wanted) in [
        ("9.16 mm +/- 0.02 mm", false),
        ("9.25 mm +/- 0.02 mm", true),
    ] {
        let plan = hanger(minor);
        assert_eq!(contradicted(&plan, "hanger.rear"), wanted, "{minor}");
        assert!(!plan.steps.iter().any(framegauge::plan::Step::cuts));
        never_unsafe(&plan, minor);
    }
}

/// A gauge that was tried before the work says nothing of the thread after it: it is asked for where the last work is told, and
/// told there it is not asked for again.
#[test]
fn a_gauge_after_the_work_is_asked_for_where_the_work_is_told() {
    let thread = |more: &str| {
        planned(&format!(
            "material = \"aluminium\"\n[hanger.rear]\nmate = \"M10x1\"\npitch = \"1 mm\"\nhand = \"right\"\ncoating = \"bare\"\n{more}"
        ))
    };
    for (told, field, answer) in [
        ("", "hanger.rear.go", "go = \"passed\""),
        (
            "go = \"failed\"\nnot_go_after = \"passed\"",
            "hanger.rear.go_after",
            "go_after = \"passed\"",
        ),
        (
            "go = \"failed\"\npasses = [{ not_go = \"passed\" }]",
            "hanger.rear.passes[0].go",
            "",
        ),
        (
            "go = \"failed\"\npasses = [{ not_go = \"passed\" }, { not_go = \"passed\" }]",
            "hanger.rear.passes[1].go",
            "",
        ),
    ] {
        let plan = thread(told);
        assert!(asks(&plan, field), "{field}");
        assert_eq!(state(&plan, "hanger.rear"), State::Open, "{field}");
        let answered = match answer {
            "" => told.replace(
                "not_go = \"passed\" }]",
                "go = \"passed\", not_go = \"passed\" }]",
            ),
            answer => format!("{told}\n{answer}"),
        };
        let plan = thread(&answered);
        let gauge = plan.questions.iter().any(|q| q.answer.contains(".go"));
        assert!(!gauge && state(&plan, "hanger.rear").is_clear(), "{field}");
    }
}

/// Once it is said whose unit it is and how long, only a finer reading tells more.
#[test]
fn what_was_told_is_asked_for_again_only_finer() {
    // That maker allows 67.2 to 68.8 mm (the table of windows).
    let shell = |window: &str| {
        planned(&format!(
            "material = \"steel\"\n[shell]\nmade_for = \"68 mm\"\nwidth = [\"68.826 mm +/- 0.1 mm\"]\n{window}"
        ))
    };
    assert!(asks(&shell(""), "shell.window"));
    let named = shell("window = \"bsc_half_axle_68\"");
    assert!(!asks(&named, "shell.window") && asks(&named, "shell.width"));
    // A length that is not there, and one that is too close to its limit, are two questions.
    let steerer = |length: &str| {
        let plan = planned(&format!(
            "material = \"steel\"\n[steerer]\n{length}\nlimits = [{{ what = \"length\", lower = \"225 mm\", owner = \"fork maker\" }}]"
        ));
        let asked = plan.questions.iter().find(|q| q.answer == "steerer.length");
        asked.unwrap().measure()
    };
    assert_ne!(steerer(""), steerer("length = \"225.1 mm +/- 0.5 mm\""));
}

/// The order in which a bore was read is no property of the bore.
#[test]
fn readings_in_another_order_are_the_same_readings() {
    let mut readings = [
        "10 mm deep, 0 deg: 31.318 mm +/- 0.1357 mm",
        "10 mm deep, 90 deg: 31.348 mm +/- 0.1357 mm",
        "60 mm deep, 0 deg: 31.347 mm +/- 0.1357 mm",
        "60 mm deep, 90 deg: 31.413 mm +/- 0.1357 mm",
        "150 mm deep, 0 deg: 31.524 mm +/- 0.1357 mm",
        "150 mm deep, 90 deg: 31.511 mm +/- 0.1357 mm",
    ];
    let tube = |readings: &[&str]| {
        let plan = planned(&format!("[seat_tube]\nbore = {readings:?}"));
        let asked: Vec<String> = plan.questions.iter().map(|q| q.answer.clone()).collect();
        (state(&plan, "seat_tube"), asked)
    };
    let first = tube(&readings);
    for turned in 0..readings.len() {
        readings.rotate_left(1);
        assert_eq!(tube(&readings), first, "turned {turned}");
        readings.swap(0, 3);
        assert_eq!(tube(&readings), first, "swapped {turned}");
    }
}
