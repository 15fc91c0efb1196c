//! Numbers that became others on the way.

use super::*;

#[test]
fn each_slip_is_named() {
    for (kind, words, expected) in [
        (
            Kind::Seatpost,
            ("outside_diameter", "13.6 +/- 0.05 mm"),
            "radius",
        ),
        (
            Kind::Seatpost,
            ("outside_diameter", "85.5 +/- 0.5 mm"),
            "circumference",
        ),
        (Kind::Shell, ("bore", "1.33 +/- 0.002 mm"), "inches"),
        (
            Kind::SeatTube,
            ("bore", "690.9 +/- 1 mm"),
            "millimetres read as inches",
        ),
        (
            Kind::CrownSeat,
            ("outside_diameter", "25.4 +/- 0.05 mm"),
            "steerer",
        ),
        (Kind::Shell, ("bore", "68.0 +/- 0.1 mm"), "width"),
    ] {
        let answer = ask(kind, &[words]);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{words:?}");
        assert!(
            answer.sentence.contains(expected),
            "{words:?}: {}",
            answer.sentence
        );
    }
}

#[test]
fn two_contradictory_readings_name_no_size() {
    let answer = ask(
        Kind::SeatTube,
        &[("bore", "27.2 +/- 0.05 mm"), ("bore", "26.8 +/- 0.05 mm")],
    );
    assert_eq!(answer.outcome, Outcome::CannotTell);
    let pitches = ask(Kind::Shell, &[("pitch", "24 tpi"), ("pitch", "1 mm")]);
    assert_eq!(pitches.outcome, Outcome::CannotTell);
}
