use super::*;
use framegauge::quantity::deg;

fn kind_of(seen: &[Observation]) -> ErrorKind {
    identify(Place::Shell, seen, &Options::default())
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

/// What is wrong with a size is said: none is nil or less, none beyond a metre.
#[test]
fn a_size_lies_above_nothing_and_within_a_metre() {
    let bore = |size: f64| {
        let reading = framegauge::measure::Reading::new(mm(size), mm(0.05)).unwrap();
        let seen = [Observation::size(Feature::Bore, reading)];
        identify(Place::Shell, &seen, &Options::default())
    };
    assert!(bore(1000.0).is_ok());
    for (size, problem) in [
        (1000.01, "beyond 1000 mm"),
        (0.0, "above 0 mm"),
        (-34.0, "above 0 mm"),
    ] {
        let error = bore(size).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, "bore")
        );
        assert!(error.problem().contains(problem), "{error}");
    }
}

/// A seat angle lies above 0 and below 90 degrees, its uncertainty above 0 and below 45.
#[test]
fn a_seat_angle_is_an_angle() {
    let angle = |angle: f64, u: f64| {
        let seen = [Observation::SeatAngle {
            angle: deg(angle),
            standard_uncertainty: deg(u),
        }];
        let asked = identify(UPPER, &seen, &Options::default());
        asked
            .map(|_| ())
            .map_err(|e| (e.kind(), e.field().to_owned()))
    };
    for (size, u) in [
        (45.0, 1.0),
        (0.01, 1.0),
        (89.9, 1.0),
        (45.0, 0.01),
        (45.0, 44.9),
    ] {
        assert_eq!(angle(size, u), Ok(()), "{size} {u}");
    }
    for (size, u) in [
        (0.0, 1.0),
        (-36.0, 1.0),
        (90.0, 1.0),
        (120.0, 1.0),
        (45.0, 0.0),
        (45.0, -1.0),
        (45.0, 45.0),
        (45.0, 60.0),
        (f64::NAN, 1.0),
        (45.0, f64::NAN),
    ] {
        let error = (ErrorKind::OutOfRange, "seat_angle".to_owned());
        assert_eq!(angle(size, u), Err(error), "{size} {u}");
    }
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
            identify(Place::SeatTube, &[], &options).unwrap_err().kind(),
            kind
        );
    }
}

/// The spread of the seat angle may be ten degrees, as that of a length ten millimetres.
#[test]
fn an_absurd_spread_of_the_angle_is_refused() {
    let with = |spread: f64| {
        let assumptions = Assumptions {
            seat_angle: deg(spread),
            ..Assumptions::default()
        };
        let options = Options {
            assumptions,
            ..Options::default()
        };
        identify(UPPER, &[], &options)
            .map(|_| ())
            .map_err(|e| e.kind())
    };
    assert_eq!(with(9.9), Ok(()));
    assert_eq!(with(10.1), Err(ErrorKind::OutOfRange));
    assert_eq!(with(-0.1), Err(ErrorKind::OutOfRange));
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
        Place::Shell,
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

/// Each key means what it says: a hand has its side, a pitch may be a leaf or a measured advance, an angle is an angle.
#[test]
fn keys_mean_what_they_say() {
    let read = |key: &str, value: &str| Observation::read(key, value).unwrap();
    assert_eq!(
        read("hand_non_drive", "left"),
        Observation::hand(Side::NonDrive, Hand::Left)
    );
    assert_eq!(
        read("hand_drive", "RH"),
        Observation::hand(Side::Drive, Hand::Right)
    );
    let hand = Hand::Left;
    assert_eq!(read("hand", "left"), Observation::Hand { side: None, hand });
    let leaf = Observation::Pitch(Pitch::tpi(24).unwrap());
    assert_eq!(read("pitch", "24 tpi"), leaf);
    let measured = Observation::size(Feature::Pitch, "1.058 +/- 0.01 mm".parse().unwrap());
    assert_eq!(read("pitch", "1.058 +/- 0.01 mm"), measured);
    assert_eq!(read("pitch", "1.058 ± 0.01 mm"), measured);
    let Observation::SeatAngle { angle, .. } = read("seat_angle", "36 deg") else {
        panic!("an angle");
    };
    assert_eq!(angle, deg(36.0));
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
            .parse::<Place>()
            .unwrap_err()
            .remedy()
            .contains("shell")
    );
}

/// Nobody lists standards of a slot, a face or a tab: it is said so, and what can be identified.
#[test]
fn places_of_which_no_table_lists_standards() {
    for code in [
        "seat_tube.slot",
        "head_tube.upper.face",
        "brake.rear.underside",
        "iscg",
    ] {
        let place: Place = code.parse().unwrap();
        let error = identify(place, &[], &Options::default()).unwrap_err();
        assert_eq!(error.kind(), ErrorKind::NotApplicable, "{code}");
        assert_eq!((error.field(), error.value()), ("place", code));
        let known: Vec<&str> = error.remedy().split(", ").collect();
        assert!(
            known.contains(&"head_tube.lower") && !known.contains(&code),
            "{error}"
        );
    }
}
