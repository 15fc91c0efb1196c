//! Numbers that became others on the way.

use super::*;

#[test]
fn each_slip_is_named() {
    for (kind, words, expected) in [
        (
            Place::Seatpost,
            ("outside_diameter", "13.6 +/- 0.05 mm"),
            "radius",
        ),
        (
            Place::Seatpost,
            ("outside_diameter", "85.5 +/- 0.5 mm"),
            "circumference",
        ),
        (Place::Shell, ("bore", "1.33 +/- 0.002 mm"), "inches"),
        (
            Place::SeatTube,
            ("bore", "690.9 +/- 1 mm"),
            "millimetres read as inches",
        ),
        (
            Place::Crown,
            ("outside_diameter", "25.4 +/- 0.05 mm"),
            "steerer",
        ),
        (Place::Shell, ("bore", "68.0 +/- 0.1 mm"), "width"),
    ] {
        let answer = ask(kind, &[words]);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{words:?}");
        assert!(
            answer.words().contains(expected),
            "{words:?}: {}",
            answer.words()
        );
    }
}

#[test]
fn two_contradictory_readings_name_no_size() {
    let answer = ask(
        Place::SeatTube,
        &[("bore", "27.2 +/- 0.05 mm"), ("bore", "26.8 +/- 0.05 mm")],
    );
    assert_eq!(answer.outcome, Outcome::CannotTell);
    let pitches = ask(Place::Shell, &[("pitch", "24 tpi"), ("pitch", "1 mm")]);
    assert_eq!(pitches.outcome, Outcome::CannotTell);
}

/// Of several sizes that a slip may mean, the nearest is named, wherever it stands in the table; of widths that several
/// shells share, the first.
#[test]
fn the_nearest_size_is_offered() {
    let words = |kind: Place, feature: &str, size: &str| ask(kind, &[(feature, size)]).words();
    for (radius, code) in [("13.62", "27.2"), ("13.53", "27.0"), ("13.68", "27.4")] {
        let size = format!("{radius} +/- 0.1 mm");
        let said = words(Place::Seatpost, "outside_diameter", &size);
        assert!(said.contains(&format!("would be {code}")), "{said}");
    }
    let said = words(Place::Shell, "bore", "68.0 +/- 0.1 mm");
    assert!(said.contains("the width of the shell (BSA"), "{said}");
}

/// A slip is offered within two standard uncertainties and a thousandth of the size. The largest post, 35.0 ± 0.10 mm, taken
/// by its radius to u = 0.005 mm: 35.10 + 2 * 0.010 + 0.0352 = 35.155 mm, so up to 17.577 mm.
#[test]
fn a_slip_is_offered_where_it_fits() {
    let said = |radius: &str| {
        let size = format!("{radius} +/- 0.01 mm");
        ask(Place::Seatpost, &[("outside_diameter", &size)]).words()
    };
    assert!(said("17.576").contains("radius"), "{}", said("17.576"));
    assert!(!said("17.579").contains("radius"), "{}", said("17.579"));
}

/// Each place is confused with its neighbours, not with what is far away: a crown seat with a steerer, a post with none.
#[test]
fn a_post_is_not_taken_for_a_fork() {
    let words = ("outside_diameter", "39.8 +/- 0.05 mm");
    let post = ask(Place::Seatpost, &[words]);
    assert_eq!(post.outcome, Outcome::CannotTell);
    assert!(!post.words().contains("steerer") && !post.words().contains("crown"));
    let steerer = ask(Place::Steerer, &[("bore", "33.92 +/- 0.02 mm")]);
    assert!(
        steerer.words().contains("the bore of the head tube (EC34)"),
        "{}",
        steerer.words()
    );
}
