//! Each warning by itself, just within and just beyond its bound.

use super::*;

fn at(angles: &[f64]) -> RingSurvey {
    let probes: Vec<Probe> = angles.iter().map(|a| probe(*a, 18.5, 0.0)).collect();
    survey(probes)
}

/// The axis lies among the probes only while no gap between neighbours reaches half a turn (geometry).
#[test]
fn half_a_turn_without_a_probe_leaves_the_axis_outside() {
    for (angles, outside) in [
        (&[0.0, 90.0, 180.0][..], true),
        (&[0.0, 90.0, 181.0], false),
        (&[0.0, 90.0, 179.0], true),
        (&[10.0, 20.0, 30.0], true),
        (&[340.0, 100.0, 150.0], true),
        (&[340.0, 100.0, 161.0], false),
        (&[30.0, 211.0, 350.0], true),
        (&[30.0, 209.0, 350.0], false),
    ] {
        let ring = at(angles);
        assert_eq!(
            ring.warnings().contains(&Warning::AxisOutside),
            outside,
            "{angles:?}"
        );
        // Without the axis among the probes there is no seat; on their edge there is just one.
        let on_the_edge = angles[0] + 180.0 == angles[2];
        assert_eq!(ring.seat().is_err(), outside && !on_the_edge, "{angles:?}");
    }
}

#[test]
fn even_counts_are_named_only_when_evenly_spaced() {
    let even = |ring: &RingSurvey| {
        ring.warnings()
            .iter()
            .any(|w| matches!(w, Warning::EvenCount { .. }))
    };
    assert!(even(&at(&[20.0, 80.0, 140.0, 200.0, 260.0, 320.0])));
    // Half a degree off its place still counts as evenly spaced, seven tenths do not.
    assert!(even(&at(&[20.5, 80.0, 140.0, 200.0, 260.0, 320.0])));
    assert!(!even(&at(&[20.7, 80.0, 140.0, 200.0, 260.0, 320.0])));
    assert!(!even(&at(&[0.0, 72.0, 144.0, 216.0, 288.0])));
    // Two circles: the larger count is named, and one uneven circle is enough to break the pattern.
    let two = |turned: f64| {
        let mut probes = ring_of(6, 17.5, |_| 0.0);
        probes.extend([0.0, 90.0, 180.0, 270.0 + turned].map(|a| probe(a, 19.5, 0.0)));
        survey(probes)
    };
    assert!(
        two(0.0)
            .warnings()
            .contains(&Warning::EvenCount { probes: 6 })
    );
    assert!(!even(&two(3.0)));
    assert!(
        !two(0.0)
            .warnings()
            .iter()
            .any(|w| matches!(w, Warning::Few { .. }))
    );
    assert!(
        at(&[0.0, 90.0, 181.0, 300.0])
            .warnings()
            .contains(&Warning::Few { probes: 4 })
    );
    assert!(
        !at(&[0.0, 72.0, 145.0, 216.0, 288.0])
            .warnings()
            .contains(&Warning::Few { probes: 5 })
    );
}

/// A reading stands apart when it lies ten times as far from the middle as every other and ten times its own uncertainty
/// (u = 4 µm: 40 µm), high or low; three readings are too few to say so.
#[test]
fn one_reading_that_stands_apart() {
    let with = |heights: &[f64]| {
        let k = heights.len() as f64;
        let probes: Vec<Probe> = heights
            .iter()
            .enumerate()
            .map(|(i, z)| probe(360.0 * i as f64 / k, 18.5, *z))
            .collect();
        survey(probes).warnings().into_iter().find_map(|w| match w {
            Warning::Suspect { probe, .. } => Some(probe),
            _ => None,
        })
    };
    // The middle of the others is 0.010, their spread 0.004: beyond 0.040 from it.
    for (odd, found) in [
        (0.049, None),
        (0.051, Some(2)),
        (-0.029, None),
        (-0.031, Some(2)),
    ] {
        assert_eq!(with(&[0.010, 0.014, odd, 0.009, 0.010]), found, "{odd}");
    }
    // A wider spread of the others, 0.010 from their middle 0.020: beyond 0.100.
    for (odd, found) in [
        (0.119, None),
        (0.121, Some(0)),
        (-0.079, None),
        (-0.081, Some(0)),
    ] {
        assert_eq!(with(&[odd, 0.010, 0.020, 0.020, 0.022]), found, "{odd}");
    }
    // Others that agree entirely: the uncertainty alone counts.
    assert_eq!(with(&[0.0, 0.0, 0.039, 0.0]), None);
    assert_eq!(with(&[0.0, 0.0, 0.041, 0.0]), Some(2));
    assert_eq!(with(&[0.0, 0.0, 5.0]), None);
}

/// A pass takes off what lies beyond the uncertainty of both readings, U = 2 √2 · 4 µm = 11.3 µm; a zero has moved when
/// the face seems to have grown by more.
#[test]
fn what_a_pass_took_off_is_shown_beyond_its_uncertainty() {
    let before = survey(ring_of(5, 18.5, |_| 0.0));
    let after = |off: f64| {
        let after = survey(ring_of(5, 18.5, |t| if t < 3.0 { -off } else { 0.0 }));
        before
            .compare(&after, &goal(), DecisionRule::default())
            .unwrap()
    };
    // Probes at 0, 72 and 144 degrees lie below 3 rad.
    assert_eq!((after(0.0113).cut, after(0.0114).cut), (0, 3));
    assert!(after(0.0113).cutter.is_none() && after(0.0114).cutter.is_some());
    assert!(!after(-0.0113).zero_moved && after(-0.0114).zero_moved);
    let record = after(0.05);
    // Three of five places: 0.03 mm on the mean, known √5 times as well.
    assert!((to_mm(record.mean.value()) - 0.03).abs() < 1e-12);
    let u = 0.004 * 2.0_f64.sqrt();
    assert!((to_mm(record.most.standard_uncertainty()) - u).abs() < 1e-12);
    assert!((to_mm(record.mean.standard_uncertainty()) - u / 5.0_f64.sqrt()).abs() < 1e-12);
    assert_eq!(
        (record.most.value(), record.least.value()),
        (mm(0.05), mm(0.0))
    );
    assert_eq!(record.stations, 5);
    // Places up to half a millimetre away are the same: 1.5 degrees on a radius of 18.5 are 0.484 mm, 1.6 are 0.517.
    let turned = |by: f64| {
        let probes: Vec<Probe> = (0..5)
            .map(|i| probe(72.0 * f64::from(i) + by, 18.5, 0.0))
            .collect();
        before.compare(&survey(probes), &goal(), DecisionRule::default())
    };
    assert_eq!(turned(1.5).unwrap().stations, 5);
    assert_eq!(turned(1.6).unwrap_err().kind(), ErrorKind::Missing);
}

/// What is left under a limit, for certain: value less U; the first of equals is named.
#[test]
fn allowances_count_what_is_certain() {
    let limit = |name: &'static str, v: f64, u: f64| {
        CutLimit::new(
            LimitKind::Wall,
            name,
            Reading::new(mm(v), mm(u)).unwrap(),
            Grade::Shop,
        )
        .unwrap()
    };
    let left = |v: f64, u: f64| Allowance::new([limit("a", v, u)]).leaves_something();
    assert!(left(0.021, 0.01) && !left(0.02, 0.01) && !left(0.0, 0.0) && !left(-0.01, 0.0));
    let equal = Allowance::new([
        limit("a", 0.3, 0.05),
        limit("b", 0.2, 0.0),
        limit("c", 0.4, 0.0),
    ]);
    assert_eq!(equal.nearest().unwrap().what(), "a");
    let unknown = CutLimit::unknown(LimitKind::Maker, "maker", "ask").unwrap();
    assert!(!Allowance::new([limit("a", 0.3, 0.0), unknown.clone()]).leaves_something());
    assert!(!Allowance::new([unknown.clone()]).leaves_something());
    assert!(Allowance::new([unknown.clone()]).nearest().is_none());
    assert_eq!(
        (
            unknown.measure(),
            unknown.grade(),
            limit("a", 0.3, 0.0).measure()
        ),
        (Some(&"ask".into()), Grade::Shop, None)
    );
    // A cut of 0.12 known to 0.03 leaves 0.18, known to the root of the squares.
    let off = Reading::new(mm(0.12), mm(0.03)).unwrap();
    let after = equal.after(&off);
    let first = after.limits()[0].may_come_off().unwrap();
    assert!((to_mm(first.value()) - 0.18).abs() < 1e-12);
    assert!((to_mm(first.standard_uncertainty()) - 0.05_f64.hypot(0.03)).abs() < 1e-12);
    assert_eq!(limit("a", 0.3, 0.05).after_cutting(&off), after.limits()[0]);
    let leaving = CutLimit::leaving(
        LimitKind::MinimumWidth,
        "shell",
        &off,
        mm(0.05),
        Grade::Memory,
    )
    .unwrap();
    assert!((to_mm(leaving.may_come_off().unwrap().value()) - 0.07).abs() < 1e-12);
    // A sign too many would let the whole width come off.
    let width = |measured: f64, least: f64| {
        let measured = Reading::new(mm(measured), mm(0.01)).unwrap();
        let kind = LimitKind::MinimumWidth;
        CutLimit::leaving(kind, "shell", &measured, mm(least), Grade::Memory)
    };
    for (limit, field) in [
        (width(68.4, -68.0), "least"),
        (width(-68.4, 68.0), "measured"),
    ] {
        let error = limit.unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
    assert!(width(0.3, 0.0).is_ok());
}
