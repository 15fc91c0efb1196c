//! At and beside its limits: the smallest change of a reading that changes what is said.

use super::*;
use framegauge::quantity::deg;

/// A bearing of 36 degrees (a headset tutorial of 2009, 36 x 36 family) may read 1.5 degrees off (the assumed spread) and
/// two standard uncertainties more: with 0.1 degrees up to 37.7.
#[test]
fn a_seat_angle_counts_up_to_its_spread_and_two_uncertainties() {
    let at = |angle: f64| {
        let seen = [Observation::SeatAngle {
            angle: deg(angle),
            standard_uncertainty: deg(0.1),
        }];
        let answer = identify(
            Place::HeadTube(HeadTubeEnd::Upper),
            &seen,
            &Options::default(),
        );
        excluded_by(&answer.unwrap(), "is_36_36")
    };
    assert_eq!(at(37.69), None);
    assert_eq!(at(37.71), Some(Feature::SeatAngle));
    assert_eq!(at(34.31), None);
    assert_eq!(at(34.29), Some(Feature::SeatAngle));
}

/// A width names nothing, not even that the shell is in no table: no row without a thread is this wide, and a bore has to
/// be read before that is said.
#[test]
fn a_width_of_no_shell_names_nothing() {
    let width = ("width", "250 +/- 0.1 mm");
    let answer = ask(Place::Shell, &[width, ("threaded", "no")]);
    assert_eq!(answer.outcome, Outcome::CannotTell, "{}", answer.words());
    assert!(answer.doubts.is_empty(), "{:?}", answer.doubts);
    assert_eq!(excluded_by(&answer, "pf30"), Some(Feature::Width));
}

/// The first word of an alias means its row as that of a name does: "Euro BMX" is an alias of `bsc` in the shell table.
#[test]
fn the_beginning_of_an_alias_is_a_belief() {
    let with = |label: &str| {
        let readings = [
            ("minor_diameter", "33.8 +/- 0.05 mm"),
            ("pitch", "24 tpi"),
            ("hand_drive", "left"),
            ("label", label),
        ];
        ask(Place::Shell, &readings).belief
    };
    assert_eq!(with("Euro"), Some(Belief::Confirmed));
    assert_eq!(with("Chater"), Some(Belief::Contradicted));
}

/// An instrument that is not in the tables repeats 0.8 of its variance (memory, stated with the assumptions): two readings
/// of u = 0.05 mm have sqrt(0.8 + 0.2 / 2) u = 0.0474 mm together, so a seat tube 27.2 ± 0.10 mm is ruled out from
/// 27.3 + 2 * 0.0474 = 27.3949 mm on; one reading rules it out from 27.4 mm on.
#[test]
fn two_readings_of_one_unknown_instrument_are_a_little_better_than_one() {
    let read = |size: &str, times: usize| {
        let value = format!("{size} +/- 0.1 mm with the_old_caliper");
        let words = vec![("bore", value.as_str()); times];
        excluded_by(&ask(Place::SeatTube, &words), "27.2")
    };
    assert_eq!(read("27.394", 2), None);
    assert_eq!(read("27.396", 2), Some(Feature::Bore));
    assert_eq!(read("27.399", 1), None);
    assert_eq!(read("27.401", 1), Some(Feature::Bore));
}

/// Two readings 0.16 mm apart contradict each other at u = 0.035 mm (three standard uncertainties of the difference are
/// 0.148 mm): a third between them does not mend that, though four, for three readings, are 0.198 mm.
#[test]
fn a_third_reading_does_not_mend_two_that_contradict() {
    let bores = |readings: &[&'static str]| {
        let words: Vec<(&str, &str)> = readings.iter().map(|r| ("bore", *r)).collect();
        ask(Place::SeatTube, &words)
    };
    let (low, high, mid) = (
        "27.12 +/- 0.07 mm",
        "27.28 +/- 0.07 mm",
        "27.20 +/- 0.07 mm",
    );
    let answer = bores(&[low, high, mid]);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert!(scattered(&answer.doubts[0]));
    assert_eq!(bores(&[low, "27.26 +/- 0.07 mm"]).doubts, []);
}

/// A hand read off the thread is wrong once in a hundred (memory, stated with the assumptions); of a shell in no table
/// each hand is as likely. So the right hand raises a shell 0.99 / 0.5 times over the unlisted one.
#[test]
fn a_hand_that_agrees_doubles_the_odds_nearly() {
    let odds = |answer: &Identification| {
        answer.candidate("bsc").unwrap().share / answer.candidate(UNLISTED).unwrap().share
    };
    let bore = ("minor_diameter", "33.8 +/- 0.05 mm");
    let before = odds(&ask(Place::Shell, &[bore, ("threaded", "yes")]));
    let after = odds(&ask(Place::Shell, &[bore, ("hand_drive", "left")]));
    assert!((after / before - 1.98).abs() < 1e-9, "{after} {before}");
}

/// A size that is written with its unit names the post of that size and no other (the codes of the seatpost table).
#[test]
fn a_written_size_is_the_name_of_a_post() {
    let with = |label: &str| {
        ask(
            Place::Seatpost,
            &[("outside_diameter", "27.20 +/- 0.01 mm"), ("label", label)],
        )
        .belief
    };
    assert_eq!(with("27.20 mm"), Some(Belief::Confirmed));
    assert_eq!(with("27.0 mm"), Some(Belief::Contradicted));
    assert_eq!(with("27.4 mm"), Some(Belief::Contradicted));
}

/// A row without a thread has neither pitch nor crests: whoever reads them rules it out, by an advance over turns as by a
/// leaf. The bore alone would leave five press shells beside M47 x 1 (all 46 mm, the table of shells).
#[test]
fn a_pitch_rules_out_what_has_no_thread() {
    let seen = [
        Observation::read("bore", "46.0 +/- 0.05 mm").unwrap(),
        Observation::advance(10, "10.0 +/- 0.1 mm".parse().unwrap()).unwrap(),
    ];
    let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
    assert_eq!(answer.outcome.identified(), Some("t47"));
    for code in ["pf30", "pf30a", "osbb61", "bbright_pf", "bb386"] {
        assert_eq!(excluded_by(&answer, code), Some(Feature::Pitch), "{code}");
    }
    let diameter = "28.5 +/- 0.05 mm";
    let crest = [("crest_diameter", diameter), ("outside_diameter", diameter)];
    let answer = ask(Place::Steerer, &crest);
    assert_eq!(answer.outcome.identified(), Some("1_1_8_threaded"));
    let plain = excluded_by(&answer, "1_1_8_threadless");
    assert_eq!(plain, Some(Feature::CrestDiameter));
}

/// A row that lists several widths is ruled out by the nearest of them: 80 mm lies 2.2 mm from 83 ± 0.8 mm and 6.2 mm
/// from 73 ± 0.8 mm (widths of the shell table).
#[test]
fn the_nearest_width_is_named_where_none_suits() {
    let bore = ("minor_diameter", "33.8 +/- 0.05 mm");
    let answer = ask(Place::Shell, &[bore, ("width", "80.0 +/- 0.1 mm")]);
    let shell = answer.candidate("bsc").unwrap();
    let Standing::Excluded(out) = shell.standing else {
        panic!("no such width")
    };
    assert_eq!(out.by, Feature::Width);
    assert!((out.against.unwrap().lower - 82.2).abs() < 1e-9);
    assert_eq!(shell.width, Some(mm(83.0)));
}

/// Of two readings that rule out alike the first that was stated is named.
#[test]
fn the_first_of_two_that_rule_out_alike_is_named() {
    // 0.1 mm beyond 34.00 mm and the 0.2 mm that a worn thread may be wider: some four standard uncertainties.
    let size = "34.30 +/- 0.05 mm";
    for (first, second, by) in [
        ("bore", "minor_diameter", Feature::Bore),
        ("minor_diameter", "bore", Feature::MinorDiameter),
    ] {
        let answer = ask(Place::Shell, &[(first, size), (second, size)]);
        assert_eq!(excluded_by(&answer, "bsc"), Some(by));
    }
}

/// The wall stands behind a bore that is worked out and is in no table: reading it besides changes nothing, and a row
/// that could not be tested stays where it was.
#[test]
fn a_wall_is_no_evidence() {
    let mut weak = 0;
    let mut check = |kind: Place, words: &[(&str, &str)]| {
        let without = ask(kind.clone(), words);
        let with = ask(kind, &[words, &[("wall", "1.2 +/- 0.1 mm")]].concat());
        assert_eq!(without.candidates.len(), with.candidates.len());
        for candidate in &without.candidates {
            let other = with.candidate(&candidate.code).unwrap();
            let untested = |standing| matches!(standing, Standing::Untested);
            let same = untested(candidate.standing) == untested(other.standing);
            assert!(same, "{words:?}: {}", candidate.code);
            assert!((candidate.share - other.share).abs() < 1e-12);
            weak += u32::from(untested(candidate.standing) && candidate.grade.is_some());
        }
    };
    for row in <framegauge::standard::HeadSeat as framegauge::standard::Row>::table() {
        let Some(bore) = row.bore.nominal() else {
            continue;
        };
        let bore = format!("{} +/- 0.01 mm", framegauge::to_mm(bore));
        for angle in ["36 deg", "45 deg"] {
            check(UPPER, &[("bore", &bore), ("seat_angle", angle)]);
        }
    }
    for bore in ["46.0 +/- 0.05 mm", "41.96 +/- 0.05 mm", "33.9 +/- 0.05 mm"] {
        for width in ["68 +/- 0.1 mm", "73 +/- 0.1 mm"] {
            check(Place::Shell, &[("bore", bore), ("width", width)]);
        }
    }
    assert!(weak > 0, "nothing stood back");
}

/// A reading 0.1 nm beyond two standard uncertainties is not beyond them, one a nanometre beyond is: 27.2 ± 0.10 mm with
/// 0.05 mm reaches to 27.4 mm.
#[test]
fn less_than_half_a_nanometre_is_rounding() {
    let out = |bore: &str| excluded_by(&ask(Place::SeatTube, &[("bore", bore)]), "27.2");
    assert_eq!(out("27.4 +/- 0.1 mm"), None);
    assert_eq!(out("27.4000001 +/- 0.1 mm"), None);
    assert_eq!(out("27.400001 +/- 0.1 mm"), Some(Feature::Bore));
    assert_eq!(out("27.0 +/- 0.1 mm"), None);
    assert_eq!(out("26.999999 +/- 0.1 mm"), Some(Feature::Bore));
}

/// Beyond eight standard uncertainties a share is nil; up to there something is left of it.
#[test]
fn a_share_ends_at_eight_uncertainties() {
    let share = |bore: &str| {
        let answer = ask(Place::SeatTube, &[("bore", bore)]);
        answer.candidate("27.2").unwrap().share
    };
    // 27.2 + 0.1 + 8 * 0.05 = 27.7 mm.
    assert!(share("27.69 +/- 0.1 mm") > 0.0);
    assert_eq!(share("27.71 +/- 0.1 mm"), 0.0);
    // A leaf misfits by 0.005 mm (memory, stated with the assumptions): 8 of them are 0.04 mm.
    let share = |leaf: &str| {
        let answer = ask(Place::Axle(End::Both), &[("pitch", leaf)]);
        answer.candidate("axle_m10").unwrap().share
    };
    assert!(share("1.039 mm") > 0.0);
    assert_eq!(share("1.041 mm"), 0.0);
}

/// A thru-axle of 142 mm is cut with a pitch of 1.0, 1.5 or 1.75 mm (the table of axles). The thread that suits the leaf is
/// named; where two lie alike far off, the first that is listed.
#[test]
fn the_thread_that_suits_is_named() {
    let thread = |pitch: &str| {
        let answer = ask(Place::Dropout(End::Rear, None), &[("pitch", pitch)]);
        answer.candidate("ta_12x142").unwrap().thread.unwrap()
    };
    for (leaf, named) in [
        ("1 mm", 1.0),
        ("1.5 mm", 1.5),
        ("1.75 mm", 1.75),
        ("1.25 mm", 1.0),
        ("1.49 mm", 1.5),
        ("2 mm", 1.75),
    ] {
        let pitch = framegauge::to_mm(thread(leaf).pitch().length());
        assert!((pitch - named).abs() < 1e-9, "{leaf}: {pitch}");
    }
}
