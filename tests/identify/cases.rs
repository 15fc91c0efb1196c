//! Real questions from practice, restated; letter and number are those of `examples/support/cases`.

use super::*;

/// A01: M35 x 1, right-hand both sides; an English cup was believed to fit.
#[test]
fn a01_french_shell() {
    let answer = ask(
        Place::Shell,
        &[
            ("pitch", "1 mm"),
            ("minor_diameter", "34.0 +/- 0.05 mm"),
            ("hand_drive", "right"),
            ("hand_non_drive", "right"),
            ("hearsay", "BSA"),
        ],
    );
    assert_eq!(answer.outcome.identified(), Some("french"));
    assert_eq!(answer.belief, Some(Belief::Contradicted));
}

/// A03: 26 tpi, 71 wide.
#[test]
fn a03_nottingham_shell() {
    let answer = ask(
        Place::Shell,
        &[
            ("pitch", "26 tpi"),
            ("width", "71 +/- 0.2 mm"),
            ("label", "BSA"),
        ],
    );
    assert_eq!(answer.outcome.identified(), Some("raleigh_26"));
    assert_eq!(answer.belief, Some(Belief::Contradicted));
    assert_eq!(excluded_by(&answer, "bsc"), Some(Feature::Pitch));
}

/// A05: only the country is known: nothing is told, French leads, no force in either direction.
#[test]
fn a05_country_alone() {
    let answer = ask(Place::Shell, &[("country", "french")]);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert_eq!(answer.belief, Some(Belief::NotTested));
    assert_eq!(answer.candidates[0].code, "french");
    assert!(answer.candidates[0].share < 0.1);
    assert!(answer.notes.contains(&Note::HandOpen));
    assert!(!answer.next.is_empty());
}

/// B07: 46 x 79, 34 + 45 from the centre; a symmetric 79 is refused; the name also stands for a 41.96 bore.
#[test]
fn b07_asymmetric_shell() {
    let shell = |drive: &str, non: &str| {
        ask(
            Place::Shell,
            &[
                ("bore", "46.0 +/- 0.05 mm"),
                ("width", "79 +/- 0.2 mm"),
                ("half_width_drive", drive),
                ("half_width_non_drive", non),
                ("label", "BBright"),
            ],
        )
    };
    let answer = shell("34 +/- 0.5 mm", "45 +/- 0.5 mm");
    assert_eq!(answer.outcome.identified(), Some("bbright_pf"));
    assert_eq!(excluded_by(&answer, "bb386"), Some(Feature::Width));
    assert_eq!(excluded_by(&answer, "pf30"), Some(Feature::Width));
    assert_eq!(excluded_by(&answer, "bbright_df"), Some(Feature::Bore));
    assert_eq!(
        shell("39.5 +/- 0.5 mm", "39.5 +/- 0.5 mm").outcome,
        Outcome::Unlisted
    );
}

/// C08: 31.7 outside, 1.0 wall: 29.70 inside, to be reamed to a 1 in seat, not 1-1/8.
#[test]
fn c08_head_tube_stock() {
    let answer = ask(
        UPPER,
        &[
            ("outside_diameter", "31.7 +/- 0.05 mm"),
            ("wall", "1.0 +/- 0.05 mm"),
        ],
    );
    assert_eq!(left(&answer), ["EC29", "EC30"]);
    assert_eq!(excluded_by(&answer, "EC34"), Some(Feature::Bore));
    assert!(answer.notes.iter().any(
        |n| matches!(n, Note::WorkedOut { size, .. } if in_mm(*size).to_string() == "29.700 mm")
    ));
}

/// C10: a steerer thread reading 25.0: French probably, the pitch must confirm.
#[test]
fn c10_steerer_thread() {
    let crest = ("crest_diameter", "25.0 +/- 0.05 mm");
    let answer = ask(Place::Steerer, &[crest]);
    assert!(left(&answer).contains(&"1in_iso_threaded"));
    assert_eq!(answer.candidates[0].code, "french_threaded");
    assert!(answer.candidates[0].share > 0.5);
    assert_eq!(first_next(&answer), Some(Feature::Pitch));
    assert_eq!(
        ask(Place::Steerer, &[crest, ("pitch", "1 mm")])
            .outcome
            .identified(),
        Some("french_threaded")
    );
}

/// D02: bore 27.40 by telescoping gauge, nominal 27.2.
#[test]
fn d02_oversize_bore() {
    let answer = ask(
        Place::SeatTube,
        &[
            ("bore", "27.40 mm with telescoping_gauge"),
            ("label", "27.2"),
        ],
    );
    assert_eq!(answer.outcome.identified(), Some("27.4"));
    assert_eq!(answer.belief, Some(Belief::Contradicted));
    let post = ask(
        Place::Seatpost,
        &[("outside_diameter", "27.00 mm with caliper_digital_outside")],
    );
    assert_eq!(post.outcome.identified(), Some("27.0"));
    // A post stamped 27.2 was once read at 27.03: the stamp is worth a look.
    assert!(
        ask(
            Place::Seatpost,
            &[("outside_diameter", "27.04 mm with caliper_digital_outside")]
        )
        .notes
        .iter()
        .any(|n| matches!(n, Note::StampedLow { .. }))
    );
}

/// D06: 28.0 tubing calls for 26.4 to 26.6; the 25.8 post that fits proves nothing.
#[test]
fn d06_a_part_that_fits() {
    let answer = ask(
        Place::SeatTube,
        &[
            ("outside_diameter", "28.0 +/- 0.04 mm"),
            ("wall", "0.75 +/- 0.05 mm"),
            ("part_that_fits", "25.8"),
        ],
    );
    assert_eq!(left(&answer), ["26.4", "26.6"]);
    assert_eq!(answer.belief, Some(Belief::Contradicted));
    assert!(
        answer
            .notes
            .iter()
            .any(|n| matches!(n, Note::WallLeft { .. }))
    );
}

/// D08: a spread of 1.01 is no size; 28.83 is painted 28.6; the "head tube" is the steerer.
#[test]
fn d08_scatter_paint_and_a_wrong_name() {
    let tube = ask(
        Place::SeatTube,
        &[
            ("bore", "26.14 mm with caliper_digital_inside"),
            ("bore", "27.15 mm with caliper_digital_inside"),
            ("outside_diameter", "28.83 mm with caliper_digital_outside"),
        ],
    );
    assert_eq!(tube.outcome, Outcome::CannotTell);
    assert!(tube.doubts[0].words().contains("1.010"));
    assert!(
        tube.notes.iter().any(|n| *n
            == Note::PaintOnTube {
                outside: mm(28.83),
                bare: mm(28.6)
            }),
        "{:?}",
        tube.notes
    );
    let head = ask(
        UPPER,
        &[
            ("bore", "21.80 mm with caliper_digital_inside"),
            ("bore", "22.05 mm with caliper_digital_inside"),
        ],
    );
    assert_eq!(head.outcome, Outcome::CannotTell);
    assert!(
        head.doubts
            .iter()
            .any(|d| matches!(&d.kind, DoubtKind::Implausible { may_be, .. } if may_be[0].what == TakenFor::SteererBore))
    );
}

/// D10: a circumference of 82 ± 0.5: 26.10, so 26.0 or 26.2.
#[test]
fn d10_circumference() {
    let answer = ask(Place::Seatpost, &[("circumference", "82 +/- 0.5 mm")]);
    assert_eq!(left(&answer), ["26.0", "26.2"]);
    assert_eq!(first_next(&answer), Some(Feature::OutsideDiameter));
}

/// D12: 28.6 x 0.6 to 0.7 tube that takes a 25.4 post: the implied wall is 1.6.
#[test]
fn d12_doubtful_label() {
    let answer = ask(
        Place::SeatTube,
        &[
            ("outside_diameter", "28.6 +/- 0.05 mm"),
            ("wall", "0.65 +/- 0.05 mm"),
            ("part_that_fits", "25.4"),
        ],
    );
    assert_eq!(left(&answer), ["27.2", "27.4"]);
    assert_eq!(answer.belief, Some(Belief::Contradicted));
    assert!(
        answer.notes.iter().any(
            |n| matches!(n, Note::WallLeft { wall, .. } if in_mm(*wall).to_string() == "1.600 mm")
        ),
        "{:?}",
        answer.notes
    );
}

/// E02: the 6H minor diameter of M12x1.0 (10.917 to 11.153) stands clear of the coarser pitches, those overlap.
#[test]
fn e02_thru_axle_pitches() {
    let also = [ThreadSize::new(
        ThreadForm::IsoMetric,
        mm(12.0),
        Pitch::millimetres(1.25).unwrap(),
    )
    .unwrap()];
    let options = Options {
        also: &also,
        ..Options::default()
    };
    let at =
        |bore: &str| identify(Place::Axle(End::Both), &see(&[("bore", bore)]), &options).unwrap();
    let listed = ask(Place::Axle(End::Both), &[("bore", "11.05 +/- 0.05 mm")]);
    assert_eq!(listed.outcome.identified(), Some("thru_axle_m12_1_0"));
    // Beside an M12x1.25 tap it may be that thread, worn: the pitch settles it.
    let beside = at("11.05 +/- 0.05 mm");
    assert_eq!(beside.candidates[0].code, "thru_axle_m12_1_0");
    assert_eq!(first_next(&beside), Some(Feature::Pitch));
    let open = at("10.43 +/- 0.05 mm");
    assert!(
        left(&open).contains(&"thru_axle_m12_1_5") && left(&open).contains(&"thru_axle_m12_1_75")
    );
    assert_eq!(first_next(&open), Some(Feature::Pitch));
    assert!(left(&at("10.66 +/- 0.02 mm")).contains(&"M12x1.25"));
}

/// E04: a hole of 8.5 is no M10x1 (minor 8.917 to 9.153); it suits the M10x1.5 tap at hand (8.376 to 8.676).
#[test]
fn e04_hanger_hole() {
    let hole = see(&[("bore", "8.5 +/- 0.05 mm")]);
    let alone = identify(Place::Hanger(End::Both), &hole, &Options::default()).unwrap();
    assert_eq!(alone.outcome, Outcome::Unlisted);
    assert!(
        alone.words().contains("M10 x 1,") && alone.words().contains("8.917"),
        "{}",
        alone.words()
    );
    let tap = [ThreadSize::new(
        ThreadForm::IsoMetric,
        mm(10.0),
        Pitch::millimetres(1.5).unwrap(),
    )
    .unwrap()];
    let with = identify(
        Place::Hanger(End::Both),
        &hole,
        &Options {
            also: &tap,
            ..Options::default()
        },
    )
    .unwrap();
    assert_eq!(with.outcome.identified(), Some("M10x1.5"));
}
