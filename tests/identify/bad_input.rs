use super::*;

fn kind_of(seen: &[Observation]) -> ErrorKind {
    identify(Kind::Shell, seen, &Options::default())
        .unwrap_err()
        .kind()
}

#[test]
fn uncertainty_must_make_sense() {
    let reading = |v, u| framegauge::measure::Reading::new(mm(v), mm(u)).unwrap();
    assert_eq!(
        kind_of(&[Observation::size(Feature::Bore, reading(34.0, 0.0))]),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind_of(&[Observation::size(Feature::Bore, reading(3.0, 5.0))]),
        ErrorKind::Contradiction
    );
    assert_eq!(
        kind_of(&[Observation::size(Feature::Bore, reading(-34.0, 0.05))]),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind_of(&[Observation::size(Feature::Bore, reading(2000.0, 0.05))]),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind_of(&[Observation::size(Feature::Hand, reading(34.0, 0.05))]),
        ErrorKind::Unit
    );
}

#[test]
fn absurd_spreads_are_refused() {
    for (spread, kind) in [
        (-0.1, ErrorKind::OutOfRange),
        (60.0, ErrorKind::OutOfRange),
        (f64::NAN, ErrorKind::NotFinite),
    ] {
        let assumptions = Assumptions {
            seat_tube: mm(spread),
            ..Assumptions::default()
        };
        let options = Options {
            assumptions,
            ..Options::default()
        };
        assert_eq!(
            identify(Kind::SeatTube, &[], &options).unwrap_err().kind(),
            kind
        );
    }
}

#[test]
fn contradictions_are_refused() {
    let both = [
        Observation::hand(Side::Drive, Hand::Left),
        Observation::hand(Side::Drive, Hand::Right),
    ];
    assert_eq!(kind_of(&both), ErrorKind::Contradiction);
    let none = [
        Observation::Threaded(false),
        Observation::Pitch(Pitch::tpi(24).unwrap()),
    ];
    assert_eq!(kind_of(&none), ErrorKind::Contradiction);
}

#[test]
fn names_that_name_nothing_offer_the_nearest() {
    let error = identify(
        Kind::Shell,
        &[Observation::label("bsq")],
        &Options::default(),
    )
    .unwrap_err();
    assert_eq!(error.kind(), ErrorKind::UnknownName);
    assert!(error.remedy().contains("bsc"), "{error}");
    assert_eq!(kind_of(&[Observation::label("")]), ErrorKind::UnknownName);
    assert_eq!(
        kind_of(&[Observation::label("é".repeat(300))]),
        ErrorKind::UnknownName
    );
}

#[test]
fn text_forms() {
    for (key, value, kind) in [
        ("hand_left", "left", ErrorKind::Text),
        ("hand", "clockwise", ErrorKind::Text),
        ("threaded", "perhaps", ErrorKind::Text),
        ("bore", "33.7 mm", ErrorKind::Missing),
        (
            "bore",
            "NaN mm with caliper_digital_inside",
            ErrorKind::NotFinite,
        ),
        ("boar", "33.7 +/- 0.05 mm", ErrorKind::UnknownField),
        ("pitch", "24", ErrorKind::Unit),
    ] {
        assert_eq!(
            Observation::read(key, value).unwrap_err().kind(),
            kind,
            "{key} = {value}"
        );
    }
    assert!(
        "shel"
            .parse::<Kind>()
            .unwrap_err()
            .remedy()
            .contains("shell")
    );
}
