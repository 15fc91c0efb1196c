//! Several readings: of one instrument, of several, and of the same size.

use super::*;

/// Whether readings of a seat tube rule 27.2 ± 0.10 mm (the assumed spread) out.
fn rules_out(readings: &[String]) -> bool {
    let words: Vec<(&str, &str)> = readings.iter().map(|r| ("bore", r.as_str())).collect();
    excluded_by(&ask(Place::SeatTube, &words), "27.2").is_some()
}

/// Two readings of u = 0.05 mm by two instruments, or by one that is named and one that is not, are worth
/// u / √2 = 0.03536 mm: 27.3 + 2 * 0.03536 = 27.3707 mm is as far as 27.2 goes. With u = 0.05 and 0.1 mm they are worth
/// 1 / √(400 + 100) = 0.04472 mm: 27.3894 mm.
#[test]
fn two_instruments_are_two_witnesses() {
    for (size, ends, out) in [
        ("27.370", ["0.1 mm with one", "0.1 mm with another"], false),
        ("27.371", ["0.1 mm with one", "0.1 mm with another"], true),
        ("27.370", ["0.1 mm with one", "0.1 mm"], false),
        ("27.371", ["0.1 mm with one", "0.1 mm"], true),
        ("27.370", ["0.1 mm", "0.1 mm with one"], false),
        ("27.371", ["0.1 mm", "0.1 mm with one"], true),
        ("27.389", ["0.1 mm with one", "0.2 mm with another"], false),
        ("27.390", ["0.1 mm with one", "0.2 mm with another"], true),
    ] {
        let readings = ends.map(|end| format!("{size} +/- {end}"));
        assert_eq!(rules_out(&readings), out, "{readings:?}");
    }
}

/// Two readings whose instruments are not named may come from one: together they are no better than the better one.
#[test]
fn two_nameless_readings_are_one_witness() {
    for (size, out) in [("27.399", false), ("27.401", true)] {
        let readings = ["0.1 mm", "0.1 mm"].map(|end| format!("{size} +/- {end}"));
        assert_eq!(rules_out(&readings), out, "{readings:?}");
    }
}

/// An instrument that is named once shares its error with no other reading: the name alone changes nothing.
#[test]
fn an_instrument_named_once_changes_nothing() {
    let shares = |bore: &str, width: &str| -> Vec<f64> {
        let words = [
            ("bore", bore),
            ("width", width),
            ("half_width_drive", "34.2 +/- 0.5 mm"),
        ];
        let answer = ask(Place::Shell, &words);
        answer.candidates.iter().map(|c| c.share).collect()
    };
    let plain = shares("46.06 +/- 0.05 mm", "68.9 +/- 0.2 mm");
    assert_eq!(
        shares("46.06 +/- 0.05 mm with caliper", "68.9 +/- 0.2 mm"),
        plain
    );
    assert_eq!(
        shares(
            "46.06 +/- 0.05 mm with caliper",
            "68.9 +/- 0.2 mm with rule"
        ),
        plain
    );
    assert_ne!(
        shares(
            "46.06 +/- 0.05 mm with caliper",
            "68.9 +/- 0.2 mm with caliper"
        ),
        plain
    );
}

/// Two readings contradict each other beyond 3 standard uncertainties of their difference, more than two beyond 4: at
/// u = 0.035 mm the difference has 0.0495 mm, so 0.148 and 0.198 mm.
#[test]
fn more_readings_may_lie_farther_apart() {
    let scattered = |sizes: &[&str]| {
        let readings: Vec<String> = sizes.iter().map(|s| format!("{s} +/- 0.07 mm")).collect();
        let words: Vec<(&str, &str)> = readings.iter().map(|r| ("bore", r.as_str())).collect();
        let doubts = ask(Place::SeatTube, &words).doubts;
        doubts.iter().any(scattered)
    };
    assert!(!scattered(&["27.12", "27.26"]));
    assert!(scattered(&["27.12", "27.28"]));
    assert!(!scattered(&["27.12", "27.20", "27.28"]));
    assert!(!scattered(&["27.12", "27.20", "27.31"]));
    assert!(scattered(&["27.12", "27.20", "27.33"]));
}

/// Exactly at the limit they still agree: u = 0.03 and 0.04 mm differ by 0.05 mm, so three times that is 0.15 mm.
#[test]
fn at_the_limit_two_readings_agree() {
    let doubts = |second: &str| {
        let words = [("bore", "27.00 +/- 0.06 mm"), ("bore", second)];
        ask(Place::SeatTube, &words).doubts.len()
    };
    assert_eq!(doubts("27.15 +/- 0.08 mm"), 0);
    assert_eq!(doubts("27.1501 +/- 0.08 mm"), 1);
}

/// Readings that contradict each other name no size: nothing is planned on them, and no belief is confirmed by them.
#[test]
fn nothing_is_built_on_readings_that_contradict() {
    // Their mean, 27.1 mm, would leave 27.0 and 27.2 and ask for a finer reading.
    let words = [
        ("bore", "27.00 +/- 0.05 mm"),
        ("bore", "27.20 +/- 0.05 mm"),
        ("label", "27.2"),
    ];
    let answer = ask(Place::SeatTube, &words);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert!(answer.next.is_empty(), "{:?}", answer.next);
    // 27.20 mm would be 27.2 and nothing else.
    let words = [
        ("bore", "27.05 +/- 0.05 mm"),
        ("bore", "27.35 +/- 0.05 mm"),
        ("label", "27.2"),
    ];
    let answer = ask(Place::SeatTube, &words);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert_eq!(answer.belief, Some(Belief::NotTested));
}

/// Two halves are a width, and outside less two walls is a bore: 28.6 - 2 * 0.7 = 27.2 mm.
#[test]
fn what_follows_from_readings_is_said() {
    let words = [
        ("outside_diameter", "28.6 +/- 0.02 mm"),
        ("wall", "0.7 +/- 0.02 mm"),
    ];
    let answer = ask(Place::SeatTube, &words);
    assert_eq!(answer.outcome.identified(), Some("27.2"));
    let note = "The bore of 27.200 mm was worked out from other readings.";
    assert!(
        answer.notes.iter().any(|n| n.to_string() == note),
        "{:?}",
        answer.notes
    );
}

/// Two walls that fill the tube are no reading of a wall.
#[test]
fn a_wall_leaves_a_bore() {
    let with = |wall: &str| {
        let seen = see(&[("outside_diameter", "30.0 +/- 0.05 mm"), ("wall", wall)]);
        identify(Place::SeatTube, &seen, &Options::default())
    };
    assert!(with("14.9 +/- 0.05 mm").is_ok());
    for wall in ["15.0 +/- 0.05 mm", "20.0 +/- 0.05 mm"] {
        let error = with(wall).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::Contradiction, "wall")
        );
    }
}
