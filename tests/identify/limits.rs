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
            Kind::HeadTube(HeadTubeEnd::Upper),
            &seen,
            &Options::default(),
        );
        excluded_by(&answer.unwrap(), "is_th")
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
    let answer = ask(Kind::Shell, &[width, ("threaded", "no")]);
    assert_eq!(answer.outcome, Outcome::CannotTell, "{}", answer.sentence);
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
        ask(Kind::Shell, &readings).belief
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
        excluded_by(&ask(Kind::SeatTube, &words), "27.2")
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
        ask(Kind::SeatTube, &words)
    };
    let (low, high, mid) = (
        "27.12 +/- 0.07 mm",
        "27.28 +/- 0.07 mm",
        "27.20 +/- 0.07 mm",
    );
    let answer = bores(&[low, high, mid]);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert_eq!(answer.doubts[0].kind, DoubtKind::Scatter);
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
    let before = odds(&ask(Kind::Shell, &[bore, ("threaded", "yes")]));
    let after = odds(&ask(Kind::Shell, &[bore, ("hand_drive", "left")]));
    assert!((after / before - 1.98).abs() < 1e-9, "{after} {before}");
}

/// A size that is written with its unit names the post of that size and no other (the codes of the seatpost table).
#[test]
fn a_written_size_is_the_name_of_a_post() {
    let with = |label: &str| {
        ask(
            Kind::Seatpost,
            &[("outside_diameter", "27.20 +/- 0.01 mm"), ("label", label)],
        )
        .belief
    };
    assert_eq!(with("27.20 mm"), Some(Belief::Confirmed));
    assert_eq!(with("27.0 mm"), Some(Belief::Contradicted));
    assert_eq!(with("27.4 mm"), Some(Belief::Contradicted));
}
