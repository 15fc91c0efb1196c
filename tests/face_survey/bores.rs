//! Shapes of bores, and what two ends say of an axis.

use super::*;

#[test]
fn bores() {
    // An ellipse at 45 degrees: two axes see nothing, three diameters solve it.
    let oval = |angle: f64| 44.0 + 0.05 * (2.0 * (angle - 45.0).to_radians()).cos();
    let two = bore([0.0, 90.0].map(|a| two_point(a, 5.0, oval(a))).to_vec());
    assert!(two.sections[0].spread < mm(1e-9) && two.sections[0].ellipse.is_none());
    assert!(
        two.sections[0]
            .blind_to
            .iter()
            .any(|b| b.contains("ellipse"))
    );
    let three = bore(
        [0.0, 60.0, 120.0]
            .map(|a| two_point(a, 5.0, oval(a)))
            .to_vec(),
    );
    let ellipse = three.sections[0].ellipse.clone().unwrap();
    assert!(
        (to_mm(ellipse.ovality) - 0.1).abs() < 1e-9 && (to_mm(ellipse.mean) - 44.0).abs() < 1e-9
    );
    assert!((to_mm(ellipse.out_of_round) - 0.05).abs() < 1e-9);
    assert!((ellipse.long_at.unwrap().degrees() - 45.0).abs() < 1e-4);
    // The same by the closed form for 0, 60, 120 degrees.
    let d = [0.0, 60.0, 120.0].map(oval);
    let (c, s) = (
        (d[0] - (d[1] + d[2]) / 2.0) * 2.0 / 3.0,
        (d[1] - d[2]) * 3.0_f64.sqrt() / 3.0,
    );
    assert!((2.0 * c.hypot(s) - to_mm(ellipse.ovality)).abs() < 1e-9);
    // Three lobes of any height read the same across any two contacts.
    let lobed = |a: f64, e: f64| {
        let r = |t: f64| 22.0 + e * (3.0 * t).cos();
        r(a.to_radians()) + r(a.to_radians() + std::f64::consts::PI)
    };
    let round = bore(
        [0.0, 45.0, 90.0, 135.0]
            .map(|a| two_point(a, 5.0, lobed(a, 0.1)))
            .to_vec(),
    );
    assert!(round.sections[0].spread < mm(1e-9) && matches!(round.size, Size::One { .. }));
    assert!(
        round.sections[0]
            .blind_to
            .iter()
            .any(|b| b.contains("odd lobes"))
    );
    // A three-contact gauge on the lobes gives it away.
    let mut both: Vec<BoreReading> = [0.0, 90.0]
        .map(|a| two_point(a, 5.0, lobed(a, 0.1)))
        .to_vec();
    both.push(BoreReading {
        gauge: Gauge::ThreePoint,
        ..two_point(0.0, 5.0, 44.2)
    });
    assert!(bore(both).lobes_suspected);
    // A production frame measured 43.8 by 44.0 (a shop's reading): no size.
    assert!(matches!(
        bore(vec![two_point(0.0, 5.0, 43.8), two_point(90.0, 5.0, 44.0)]).size,
        Size::None { .. }
    ));
    assert!(matches!(
        bore(vec![
            two_point(0.0, 5.0, 43.97),
            two_point(90.0, 5.0, 43.98)
        ])
        .size,
        Size::One { .. }
    ));
    // Taper over 10 mm, at two axes and two depths.
    let taper = bore(vec![
        two_point(0.0, 2.0, 44.00),
        two_point(90.0, 2.0, 44.01),
        two_point(0.0, 12.0, 43.95),
        two_point(90.0, 12.0, 43.96),
    ]);
    let found = taper.taper.clone().unwrap();
    assert!((to_mm(found.difference.value()) - 0.05).abs() < 1e-9 && found.shown && taper.complete);
    assert_eq!(in_mm(found.over).to_string(), "10.000 mm");
    assert!(!three.complete);
    // Bad places and sizes.
    let refused = |readings: Vec<BoreReading>| BoreSurvey::new(readings).unwrap_err();
    assert_eq!(refused(vec![]).kind(), ErrorKind::Missing);
    assert_eq!(
        refused(vec![two_point(0.0, 5.0, 44.0), two_point(180.0, 5.0, 44.0)]).kind(),
        ErrorKind::Contradiction
    );
    assert_eq!(
        refused(vec![two_point(0.0, -5.0, 44.0)]).field(),
        "diameters.0.depth"
    );
    assert_eq!(
        refused(vec![two_point(0.0, 5.0, 0.0)]).kind(),
        ErrorKind::OutOfRange
    );
}

/// Extending an axis ten times its length multiplies the uncertainty of its centres about ten times.
#[test]
fn coaxiality_pays_for_the_distance() {
    let at = |x, z| Point::new(mm(x), mm(0.0), mm(z)).unwrap();
    let upper = BoreAxis::new(at(0.0, 0.0), at(0.0, 10.0), mm(0.01)).unwrap();
    let lower = BoreAxis::new(at(0.1, 100.0), at(0.1, 110.0), mm(0.01)).unwrap();
    let offset = upper.coaxiality(&lower).unwrap();
    assert_eq!(in_mm(offset.diameter.value()).to_string(), "0.200 mm");
    assert!((offset.extrapolation - (9.0_f64.powi(2) + 10.0_f64.powi(2)).sqrt()).abs() < 1e-12);
    assert!(BoreAxis::new(at(0.0, 0.0), at(0.0, 0.5), mm(0.01)).is_err());
}
