//! Each feature of each kind of place: the row that has it is named, the one that has another size is ruled out by it.

use super::*;

fn named(kind: Place, words: &[(&str, &str)], code: &str) -> Identification {
    let answer = ask(kind, words);
    assert_eq!(
        answer.outcome.identified(),
        Some(code),
        "{words:?}: {}",
        answer.words()
    );
    answer
}

/// The outside of a screw lies over its crests: 1/2 in is 12.70 mm, 9/16 in 14.29 mm, and so says the thread table.
#[test]
fn the_outside_of_a_screw_is_its_crest() {
    let words = [
        ("outside_diameter", "12.6 +/- 0.05 mm"),
        ("pitch", "20 tpi"),
    ];
    let answer = named(Place::Pedal(None), &words, "pedal_1_2");
    let by = excluded_by(&answer, "pedal_9_16");
    assert_eq!(by, Some(Feature::OutsideDiameter));
}

/// Cups of the headset tables: 34.0 mm for EC34, 37.0 mm for EC37.
#[test]
fn a_cup_that_came_out_names_its_seat() {
    let answer = named(UPPER, &[("part_outside", "34.0 +/- 0.05 mm")], "EC34");
    assert_eq!(excluded_by(&answer, "EC37"), Some(Feature::PartOutside));
    named(UPPER, &[("part_outside", "37.0 +/- 0.05 mm")], "EC37");
}

/// Crown-race seats of the steerer table: 26.4 mm on a 1 in ISO steerer, 27.0 mm on a JIS one, either on old BMX ones.
#[test]
fn the_race_seat_tells_two_inch_steerers_apart() {
    let seat = |size: &str| {
        ask(
            Place::Steerer,
            &[
                ("crest_diameter", "25.3 +/- 0.05 mm"),
                ("pitch", "24 tpi"),
                ("seat_diameter", size),
            ],
        )
    };
    let jis = seat("27.0 +/- 0.05 mm");
    assert_eq!(left(&jis), ["1in_jis_threaded", "bmx_1in_threaded"]);
    let by = excluded_by(&jis, "1in_iso_threaded");
    assert_eq!(by, Some(Feature::SeatDiameter));
    let iso = seat("26.4 +/- 0.05 mm");
    assert!(left(&iso).contains(&"1in_iso_threaded"));
    assert!(left(&iso).contains(&"bmx_1in_threaded"));
    let by = excluded_by(&iso, "1in_jis_threaded");
    assert_eq!(by, Some(Feature::SeatDiameter));
}

/// A straight steerer may widen towards its race: 28.6 mm with a 30.0 mm seat, ± 0.15 mm (assumed), so up to 30.15 mm.
#[test]
fn a_straight_steerer_has_a_shoulder_up_to_its_seat() {
    let at_the_crown = |size: &str| {
        ask(
            Place::Steerer,
            &[
                ("threaded", "no"),
                ("outside_diameter", "28.6 +/- 0.04 mm"),
                ("lower_diameter", size),
            ],
        )
    };
    let straight = "1_1_8_threadless";
    for size in ["28.6 +/- 0.04 mm", "29.4 +/- 0.04 mm", "30.1 +/- 0.04 mm"] {
        assert_eq!(
            at_the_crown(size).outcome.identified(),
            Some(straight),
            "{size}"
        );
    }
    for size in ["28.3 +/- 0.04 mm", "30.3 +/- 0.04 mm"] {
        let by = excluded_by(&at_the_crown(size), straight);
        assert_eq!(by, Some(Feature::LowerDiameter), "{size}");
    }
}

/// The bore of a tube is that of the post; the bore inside a post is not.
#[test]
fn the_inside_of_a_post_says_nothing_about_its_size() {
    let words = [
        ("outside_diameter", "27.20 +/- 0.02 mm"),
        ("bore", "24.0 +/- 0.05 mm"),
    ];
    named(Place::Seatpost, &words, "27.2");
    named(Place::SeatTube, &[("bore", "27.20 +/- 0.02 mm")], "27.2");
}

/// First bolts of the mount table: 1.80, 6.80, 11.80 and 16.80 mm from the axle for rotors of 140, 160, 180 and 200 mm.
#[test]
fn the_first_bolt_tells_the_rotor() {
    let words = [
        ("bolt_spacing", "74.0 +/- 0.3 mm"),
        ("first_bolt", "11.5 +/- 0.5 mm"),
    ];
    let answer = named(Place::Brake(End::Rear), &words, "pm_180");
    for other in ["pm_160", "pm_200"] {
        assert_eq!(excluded_by(&answer, other), Some(Feature::FirstBolt));
    }
}

/// Slots of the axle table: 8.5 mm on an old folding bicycle, 10 mm for a quick release, none for a thru-axle.
#[test]
fn a_slot_names_its_dropout() {
    let slot = [("slot", "8.5 +/- 0.1 mm")];
    let answer = named(Place::Dropout(End::Rear, None), &slot, "folding_rear_old");
    for other in ["qr_rear_130", "ta_12x142"] {
        assert_eq!(excluded_by(&answer, other), Some(Feature::Slot));
    }
}

/// 12 x 148 axles are made in three pitches (axle table): the one that is read is the one that is named.
#[test]
fn each_pitch_of_an_axle_counts() {
    let hub = ("over_locknut", "148 +/- 0.2 mm");
    for pitch in ["1 mm", "1.5 mm", "1.75 mm"] {
        let answer = named(
            Place::Dropout(End::Rear, None),
            &[hub, ("pitch", pitch)],
            "ta_12x148",
        );
        let thread = answer.candidate("ta_12x148").unwrap().thread.unwrap();
        assert_eq!(thread.pitch(), pitch.parse().unwrap());
    }
    let other = ask(
        Place::Dropout(End::Rear, None),
        &[hub, ("pitch", "1.25 mm")],
    );
    assert_eq!(excluded_by(&other, "ta_12x148"), Some(Feature::Pitch));
}

/// A quick-release axle is threaded, so one without a thread is none; of a row that names no thread nothing is known.
#[test]
fn an_axle_without_a_thread_is_no_quick_release() {
    let words = [("over_locknut", "130 +/- 0.2 mm"), ("threaded", "no")];
    let answer = ask(Place::Dropout(End::Rear, None), &words);
    assert_eq!(excluded_by(&answer, "qr_rear_130"), Some(Feature::Threaded));
    let words = [("over_locknut", "141 +/- 0.2 mm"), ("threaded", "no")];
    named(Place::Dropout(End::Rear, None), &words, "qr_rear_141");
}

/// What a pitch rests on is the thread of the row: two sources agree on M10 x 1 for rear axles and on M6 x 1 for post mounts.
#[test]
fn a_pitch_is_worth_what_its_thread_is() {
    for (kind, size, code) in [
        (
            Place::Dropout(End::Rear, None),
            ("over_locknut", "130 +/- 0.2 mm"),
            "qr_rear_130",
        ),
        (
            Place::Brake(End::Rear),
            ("bolt_spacing", "74 +/- 0.3 mm"),
            "pm",
        ),
    ] {
        let answer = ask(kind, &[size, ("pitch", "1 mm")]);
        let grade = answer.candidate(code).unwrap().grade;
        assert_eq!(grade, Some(framegauge::Grade::Agreeing), "{code}");
    }
}

/// The outside of a tube names no bore: without the wall nothing is told, and nothing is called unlisted.
#[test]
fn the_outside_of_a_tube_names_nothing() {
    for kind in [Place::SeatTube, UPPER] {
        let answer = ask(kind, &[("outside_diameter", "31.8 +/- 0.05 mm")]);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{}", answer.words());
    }
}

/// Taps at hand are weighed where there are threads, and nowhere else.
#[test]
fn taps_at_hand_count_where_there_are_threads() {
    let tap = [ThreadSize::new(
        ThreadForm::IsoMetric,
        mm(33.0),
        Pitch::millimetres(1.0).unwrap(),
    )
    .unwrap()];
    let options = Options {
        also: &tap,
        ..Options::default()
    };
    for kind in identifiable() {
        let answer = identify(kind.clone(), &[], &options).unwrap();
        let threads = kind.is_thread() || matches!(kind.whole(), Place::Shell | Place::Steerer);
        assert_eq!(answer.candidate("M33x1").is_some(), threads, "{kind}");
    }
}

/// Any thread: every thread of the tables once with each pair of hands, whatever place it is listed for. M5 x 0.8 is listed
/// for bottle bosses, rotor bolts, racks and binders; M35 x 1 is French and, with the other hand, Swiss.
#[test]
fn any_thread_lists_each_thread_once() {
    let answer = ask(Place::Thread, &[]);
    let of = |name: &str| {
        let size = name.parse::<ThreadSize>().unwrap();
        let held = answer.candidates.iter().filter(|c| c.thread == Some(size));
        let mut codes: Vec<&str> = held.map(|c| c.code.as_ref()).collect();
        codes.sort_unstable();
        codes
    };
    assert_eq!(of("M5x0.8"), ["bottle_boss"]);
    assert_eq!(of("M35x1"), ["french", "swiss"]);
    // The same thread in a shell, left on the drive side, and on a freewheel, right.
    assert_eq!(of("1.370 in x 24 tpi BSC"), ["bsc", "freewheel_british"]);
    assert_eq!(of("1 in x 24 tpi BSC"), ["1in_iso_threaded"]);
    // M10 x 1 on an axle, of no stated hand, and right-handed in a hanger.
    assert_eq!(of("M10x1"), ["axle_m10", "hanger_m10"]);
}

/// Where a source prints another bore within 0.3 mm, a part made to it is not ruled out: the one-piece shell is printed with
/// 51.3 and 51.4 mm (± 0.05 mm, assumed). The same below, in an invented row of an invented shop.
#[cfg(feature = "serde")]
#[test]
fn a_printed_size_that_disagrees_stays_possible() {
    let rows: framegauge::standard::ShopRows = toml::from_str(
        "[[shell]]\ncode = \"own\"\nname = \"own\"\nlocated_by = { unknown = \"\" }\nbore = { nominal = \"54.0 mm\", dissent = [{ nominal = \"53.8 mm\", from = [\"our old drawing\"] }, { nominal = \"53.5 mm\", from = [\"a misprint\"] }] }\n",
    )
    .unwrap();
    let options = Options {
        shop: Some(&rows),
        ..Options::default()
    };
    let out = |bore: &str, code: &str| {
        let seen = see(&[("bore", &format!("{bore} +/- 0.01 mm"))]);
        excluded_by(&identify(Place::Shell, &seen, &options).unwrap(), code)
    };
    for (bore, code) in [
        ("51.26", "opc"),
        ("51.44", "opc"),
        ("53.76", "own"),
        ("54.04", "own"),
    ] {
        assert_eq!(out(bore, code), None, "{bore}");
    }
    for (bore, code) in [
        ("51.23", "opc"),
        ("51.47", "opc"),
        ("53.73", "own"),
        ("54.07", "own"),
    ] {
        assert_eq!(out(bore, code), Some(Feature::Bore), "{bore}");
    }
}

/// Left at the drive side of an English shell, right at the other; left at the left pedal (`shells.toml`, `axles.toml`, agreeing).
/// A hand that is told at a side is that side's: without a side it could be the other one's.
#[test]
fn a_hand_told_at_a_side_is_that_sides() {
    let right = [("bore", "33.7 +/- 0.05 mm"), ("hand", "right")];
    assert_eq!(excluded_by(&ask(Place::Shell, &right), "bsc"), None);
    let drive = ask(Place::ShellSide(Side::Drive), &right);
    assert_eq!(excluded_by(&drive, "bsc"), Some(Feature::HandDrive));
    assert_eq!(drive.place, Place::ShellSide(Side::Drive));
    let other = ask(Place::ShellFace(Side::NonDrive), &right);
    assert_eq!(excluded_by(&other, "bsc"), None);

    let right = [("pitch", "20 tpi"), ("hand", "right")];
    for (side, by) in [
        (LeftRight::Left, Some(Feature::HandNonDrive)),
        (LeftRight::Right, None),
    ] {
        let pedal = ask(Place::Pedal(Some(side)), &right);
        assert_eq!(excluded_by(&pedal, "pedal_9_16"), by, "{side}");
    }
}
