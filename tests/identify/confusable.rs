//! Pairs that are easily confused: shells, axles, threads.

use super::*;

/// "readings 34.6-34.7 vs 34.8, overlap within caliper error; pitch separates".
#[test]
fn bsa_and_french_cups() {
    let cup = ("crest_diameter", "34.75 +/- 0.1 mm");
    let answer = ask(Place::Shell, &[cup, ("width", "68.0 +/- 0.1 mm")]);
    for code in ["bsc", "iso_6696", "french", "swiss"] {
        assert!(
            left(&answer).contains(&code),
            "{code} in {:?}",
            left(&answer)
        );
    }
    assert_eq!(
        first_next(&answer),
        Some(Feature::Pitch),
        "{:?}",
        answer.next
    );
    assert_eq!(
        left(&ask(Place::Shell, &[cup, ("pitch", "24 tpi")])),
        ["bsc", "iso_6696"]
    );
    assert_eq!(
        left(&ask(Place::Shell, &[cup, ("pitch", "1 mm")])),
        ["french", "swiss"]
    );
}

/// "10 turns advance 10.58 vs 10.00 mm".
#[test]
fn ten_turns_tell_bsa_from_french() {
    for (advance, expected) in [
        ("10.58 +/- 0.1 mm", ["bsc", "iso_6696"]),
        ("10.0 +/- 0.1 mm", ["french", "swiss"]),
    ] {
        let seen = [
            Observation::advance(10, advance.parse().unwrap()).unwrap(),
            Observation::read("crest_diameter", "34.75 +/- 0.1 mm").unwrap(),
        ];
        let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
        assert_eq!(left(&answer), expected);
    }
}

/// "identical thread; drive-side hand only".
#[test]
fn french_and_swiss() {
    let thread = [("minor_diameter", "34.0 +/- 0.05 mm"), ("pitch", "1 mm")];
    let open = ask(Place::Shell, &thread);
    assert_eq!(left(&open), ["french", "swiss"]);
    assert!(!open.interchange);
    let next = &open.next[0];
    assert_eq!(
        (next.measure, next.separates.len()),
        (Feature::HandDrive, 1)
    );
    assert!((next.bits - 1.0).abs() < 0.01);
    assert!(open.notes.contains(&Note::HandOpen), "{:?}", open.notes);
    for (hand, code, other) in [("right", "french", "swiss"), ("left", "swiss", "french")] {
        let mut words = thread.to_vec();
        words.push(("hand_drive", hand));
        let told = ask(Place::Shell, &words);
        assert_eq!(told.outcome.identified(), Some(code));
        assert_eq!(excluded_by(&told, other), Some(Feature::HandDrive));
    }
}

/// "same diameter class; pitch (10.58 vs 9.77 mm per 10 turns), width 71/76".
#[test]
fn bsa_and_raleigh() {
    let minor = ("minor_diameter", "33.9 +/- 0.05 mm");
    let by_pitch = ask(Place::Shell, &[minor, ("pitch", "26 tpi")]);
    assert_eq!(by_pitch.outcome.identified(), Some("raleigh_26"));
    assert_eq!(excluded_by(&by_pitch, "bsc"), Some(Feature::Pitch));
    let by_width = ask(Place::Shell, &[minor, ("width", "71.2 +/- 0.1 mm")]);
    assert_eq!(by_width.outcome.identified(), Some("raleigh_26"));
    assert_eq!(excluded_by(&by_width, "bsc"), Some(Feature::Width));
}

/// "nothing: same thread".
#[test]
fn bsa_and_iso_are_one_thread() {
    let answer = ask(
        Place::Shell,
        &[
            ("minor_diameter", "33.8 +/- 0.05 mm"),
            ("pitch", "24 tpi"),
            ("hand_drive", "left"),
            ("width", "68 +/- 0.1 mm"),
        ],
    );
    assert_eq!(left(&answer), ["bsc", "iso_6696"]);
    assert!(answer.interchange);
    assert!(answer.next.is_empty() && !answer.inseparable);
    assert!(
        answer.words().contains("does not matter"),
        "{}",
        answer.words()
    );
}

/// "47 vs 48; pitch 1 vs 1.5".
#[test]
fn t47_and_isis_overdrive() {
    let t47 = ask(
        Place::Shell,
        &[
            ("minor_diameter", "46.0 +/- 0.05 mm"),
            ("pitch", "1 mm"),
            ("width", "86.5 +/- 0.1 mm"),
        ],
    );
    assert_eq!(t47.outcome.identified(), Some("t47"));
    let isis = ask(
        Place::Shell,
        &[("minor_diameter", "46.5 +/- 0.05 mm"), ("pitch", "1.5 mm")],
    );
    assert_eq!(isis.outcome.identified(), Some("isis_overdrive"));
}

/// "T47 minor bore vs PF30 bore: 45.92-46.15 vs 46.0; thread present or not".
#[test]
fn t47_and_pf30() {
    let bore = [("bore", "46.0 +/- 0.05 mm"), ("width", "73 +/- 0.1 mm")];
    let open = ask(Place::Shell, &bore);
    assert_eq!(left(&open), ["pf30", "pf30a", "t47"]);
    let look = open
        .next
        .iter()
        .find(|n| n.measure == Feature::Threaded)
        .expect("a look is offered");
    assert_eq!((look.cost, look.instrument.as_deref()), (0, None));
    let with = |is| {
        let mut words = bore.to_vec();
        words.push(("threaded", is));
        ask(Place::Shell, &words)
    };
    assert_eq!(with("yes").outcome.identified(), Some("t47"));
    assert_eq!(left(&with("no")), ["pf30", "pf30a"]);
}

/// "BB30 / BBright direct vs PF41: 41.96 vs 41.0".
#[test]
fn bb30_and_pf41() {
    let answer = ask(
        Place::Shell,
        &[("bore", "41.97 +/- 0.05 mm"), ("width", "68 +/- 0.1 mm")],
    );
    assert_eq!(answer.outcome.identified(), Some("bb30"));
    assert_eq!(excluded_by(&answer, "bb86"), Some(Feature::Bore));
}

/// "PF30 68 vs BBright 79 vs BB386 86.5 vs OSBB 61 vs PF30A 73/83: all 46 bore; width and which side carries the
/// extra".
#[test]
fn the_46_mm_bores() {
    for (width, code) in [("68.0", "pf30"), ("79.0", "bbright_pf"), ("61.0", "osbb61")] {
        let width = format!("{width} +/- 0.1 mm");
        let answer = ask(
            Place::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("width", &width),
                ("threaded", "no"),
            ],
        );
        assert_eq!(answer.outcome.identified(), Some(code));
    }
    let answer = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("width", "86.5 +/- 0.1 mm"),
            ("threaded", "no"),
        ],
    );
    assert_eq!(answer.outcome.identified(), Some("bb386"));
    let open = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("width", "73.0 +/- 0.1 mm"),
            ("threaded", "no"),
        ],
    );
    assert_eq!(left(&open), ["pf30", "pf30a"]);
    assert!(matches!(
        first_next(&open),
        Some(Feature::HalfWidthDrive | Feature::HalfWidthNonDrive)
    ));
    let even = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("half_width_drive", "36.5 +/- 0.5 mm"),
            ("half_width_non_drive", "36.5 +/- 0.5 mm"),
            ("threaded", "no"),
        ],
    );
    assert_eq!(even.outcome.identified(), Some("pf30"));
    let uneven = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("half_width_drive", "34 +/- 0.5 mm"),
            ("half_width_non_drive", "39 +/- 0.5 mm"),
            ("threaded", "no"),
        ],
    );
    assert_eq!(uneven.outcome.identified(), Some("pf30a"));
}

/// "BB30 '42': nominal 42, bore 41.96; trade name is the bearing outside diameter". A hidden-headset seat of
/// 41.95 is a head-tube matter and does not appear here.
#[test]
fn a_42_mm_shell_bore_is_bb30() {
    let answer = ask(
        Place::Shell,
        &[("bore", "42.0 +/- 0.05 mm"), ("width", "68 +/- 0.1 mm")],
    );
    assert_eq!(answer.outcome.identified(), Some("bb30"));
}

/// "pedal 9/16x20 vs M14x1.25: 14.29 vs 14.0; 1.27 vs 1.25".
#[test]
fn pedals() {
    let open = ask(
        Place::Pedal(None),
        &[("crest_diameter", "14.0 +/- 0.05 mm")],
    );
    assert_eq!(left(&open), ["pedal_9_16", "pedal_french"]);
    assert_eq!(first_next(&open), Some(Feature::Pitch));
    assert_eq!(
        ask(
            Place::Pedal(None),
            &[("crest_diameter", "14.15 +/- 0.05 mm"), ("pitch", "20 tpi")]
        )
        .outcome
        .identified(),
        Some("pedal_9_16")
    );
    assert_eq!(
        ask(
            Place::Pedal(None),
            &[("crest_diameter", "13.9 +/- 0.05 mm"), ("pitch", "1.25 mm")]
        )
        .outcome
        .identified(),
        Some("pedal_french")
    );
}

/// "M10x1 vs 10 x 26: pitch 1.000 vs 0.977; pitch gauge".
#[test]
fn ten_millimetre_axles() {
    let open = ask(
        Place::Axle(End::Both),
        &[("crest_diameter", "9.9 +/- 0.05 mm")],
    );
    for code in ["axle_m10", "axle_10x26"] {
        assert!(left(&open).contains(&code), "{:?}", left(&open));
    }
    assert_eq!(first_next(&open), Some(Feature::Pitch));
    let crest = ("crest_diameter", "9.9 +/- 0.05 mm");
    assert_eq!(
        ask(Place::Axle(End::Both), &[crest, ("pitch", "1 mm")])
            .outcome
            .identified(),
        Some("axle_m10")
    );
    assert_eq!(
        left(&ask(Place::Axle(End::Both), &[crest, ("pitch", "26 tpi")])),
        ["axle_10x26"]
    );
}

/// "freewheel ISO/British/Italian (34.92/34.80/35.0 x 24) vs French 34.7 x 1".
#[test]
fn freewheels() {
    let crest = ("crest_diameter", "34.6 +/- 0.05 mm");
    let french = ask(
        Place::Thread,
        &[crest, ("pitch", "1 mm"), ("hand", "right")],
    );
    assert_eq!(left(&french), ["freewheel_french"]);
    let others = ask(
        Place::Thread,
        &[crest, ("pitch", "24 tpi"), ("hand", "right")],
    );
    assert!(!left(&others).contains(&"freewheel_french"));
    assert!(left(&others).contains(&"freewheel_british"));
}

/// "lockring 1.29 x 24 vs 33.5 x 24: 32.77 vs 33.5, both LH".
#[test]
fn lockrings() {
    let at = |crest: &str| {
        ask(
            Place::Thread,
            &[
                ("crest_diameter", crest),
                ("pitch", "24 tpi"),
                ("hand", "left"),
            ],
        )
    };
    assert_eq!(left(&at("32.6 +/- 0.04 mm")), ["lockring_1_29"]);
    assert_eq!(left(&at("33.4 +/- 0.04 mm")), ["lockring_33_5"]);
}

/// Codes that share a bore (a headset maker's guide of 2009: one 44.00 row; a frame maker's page: EC44 in it).
#[test]
fn ec44_and_zs44_share_a_bore() {
    let answer = ask(UPPER, &[("bore", "43.98 +/- 0.01 mm")]);
    assert_eq!(left(&answer), ["EC44", "ZS44"]);
    assert!(answer.interchange);
}

/// Width variants of one 41 mm bore: the width is the only thing that separates them.
#[test]
fn pf41_widths() {
    let open = ask(Place::Shell, &[("bore", "41.0 +/- 0.05 mm")]);
    for code in ["bb86", "bb92", "pf41_wide"] {
        assert!(left(&open).contains(&code));
    }
    assert!(!open.interchange);
    assert_eq!(first_next(&open), Some(Feature::Width));
    assert_eq!(
        ask(
            Place::Shell,
            &[("bore", "41.0 +/- 0.05 mm"), ("width", "91.6 +/- 0.2 mm")]
        )
        .outcome
        .identified(),
        Some("bb92")
    );
}
