//! Pads of a mount and the tilt of a caliper on them, against planes worked out by hand (geometry).

use super::*;

fn at(pad: &'static str, x: f64, y: f64, z: f64) -> PadPoint {
    PadPoint {
        pad: pad.into(),
        point: Point::new(mm(x), mm(y), mm(z)).unwrap(),
    }
}

/// Four corners at ±30 along and ±8 across on the plane z = 0.7 + 0.004 x − 0.003 y, moved off the origin by (5, 2).
fn corners() -> PadSurvey {
    let z = |x: f64, y: f64| 0.7 + 0.004 * x - 0.003 * y;
    let all = [(-25.0, -6.0), (-25.0, 10.0), (35.0, -6.0), (35.0, 10.0)]
        .map(|(x, y)| at(if x < 0.0 { "upper" } else { "lower" }, x, y, z(x, y)));
    PadSurvey::new("wheel axle", all, mm(0.006)).unwrap()
}

/// Slope s over a pad of length L: rise L s/√(1 + s²), touching at twice the clearance. The slope across four corners at
/// ±8 is uncertain by u/√(4 · 8²), along by u/√(4 · 30²): the worst of all directions is the one across.
#[test]
fn rise_angle_and_uncertainty_over_a_pad() {
    let across: f64 = 0.003;
    let any: f64 = 0.005; // 3 : 4 : 5
    for (kind, slope) in [(MountKind::Posts, across), (MountKind::Tab, any)] {
        let tilt = corners()
            .caliper_tilt(kind, mm(28.0), mm(0.09), DecisionRule::default())
            .unwrap();
        let rise = 28.0 * slope / (1.0 + slope * slope).sqrt();
        assert!((to_mm(tilt.rise.value()) - rise).abs() < 1e-12, "{kind}");
        let u = 28.0 * 0.006 / 16.0;
        assert!((to_mm(tilt.rise.standard_uncertainty()) - u).abs() < 1e-12);
        assert!((tilt.angle.value - slope.atan()).abs() < 1e-12);
        assert!((to_mm(tilt.allowed_rise) - 0.18).abs() < 1e-12);
        assert!((tilt.allowed_angle.value - (0.18_f64 / 28.0).asin()).abs() < 1e-12);
        assert_eq!(tilt.pads.len(), 2);
    }
    assert!((to_mm(corners().flatness().unwrap().along_axis)).abs() < 1e-12);
    // √2 u for two extreme readings.
    let zone = corners().flatness().unwrap().zone;
    assert!((to_mm(zone.standard_uncertainty()) - 0.006 * 2.0_f64.sqrt()).abs() < 1e-12);
}

/// Where the corners are not square to each other, the slope across is uncertain by u √(Sxx/(Sxx Syy − Sxy²)): variance of a
/// slope in a fit with two slopes (any handbook of regression).
#[test]
fn slanting_corners_cost_certainty() {
    let all =
        [(-9.0, -4.0), (9.0, 4.0), (-3.0, 5.0), (3.0, -5.0)].map(|(x, y)| at("pad", x, y, 0.0));
    let mount = PadSurvey::new("axle", all, mm(0.01)).unwrap();
    // Sxx = 2 · 81 + 2 · 9 = 180, Syy = 2 · 16 + 2 · 25 = 82, Sxy = 2 · 36 − 2 · 15 = 42.
    let det = 180.0 * 82.0 - 42.0 * 42.0_f64;
    let (posts, tab) = (0.01 * (180.0 / det).sqrt(), {
        // The smaller root of the spread: (262 − √(98² + 84²))/2.
        let least = (262.0 - (98.0_f64.powi(2) + 84.0_f64.powi(2)).sqrt()) / 2.0;
        0.01 / least.sqrt()
    });
    for (kind, slope_u) in [(MountKind::Posts, posts), (MountKind::Tab, tab)] {
        let tilt = mount
            .caliper_tilt(kind, mm(25.0), mm(0.2), DecisionRule::default())
            .unwrap();
        let u = to_mm(tilt.rise.standard_uncertainty());
        assert!((u - 25.0 * slope_u).abs() < 1e-12, "{kind}: {u}");
    }
    assert!(posts < tab);
}

#[test]
fn each_pad_by_itself() {
    // Rise over the pad's own readings by least squares: at y = 1, 2, 6 the heights 0.1, 0.3, 0.5 give
    // Syz/Syy = (−2 · −0.2 + −1 · 0 + 3 · 0.2)/14 = 1/14, over 5 mm.
    let pads = PadSurvey::new(
        "axle",
        [
            at("low", -30.0, 1.0, 0.1),
            at("high", 40.0, 3.0, 1.9),
            at("low", -31.0, 2.0, 0.3),
            at("high", 41.0, 3.5, 2.0),
            at("low", -32.0, 6.0, 0.5),
        ],
        mm(0.004),
    )
    .unwrap();
    let shapes = pads.pad_shapes();
    assert_eq!(
        shapes.iter().map(|s| &*s.pad).collect::<Vec<_>>(),
        ["low", "high"]
    );
    assert!((to_mm(shapes[0].rise_across.unwrap()) - 5.0 / 14.0).abs() < 1e-12);
    assert!((to_mm(shapes[0].height) - 0.3).abs() < 1e-12);
    assert!((to_mm(shapes[0].range) - 0.4).abs() < 1e-12);
    // Readings 0.5 mm apart across, no more, are one line along the mount.
    assert_eq!(shapes[1].rise_across, None);
    assert!(
        (to_mm(shapes[1].range) - 0.1).abs() < 1e-12
            && (to_mm(shapes[1].height) - 1.95).abs() < 1e-12
    );
    assert!((to_mm(pads.range()) - 1.9).abs() < 1e-12);
}

#[test]
fn a_clearance_of_half_the_pad_is_none() {
    let asked = |length: f64, clearance: f64| {
        corners().caliper_tilt(
            MountKind::Posts,
            mm(length),
            mm(clearance),
            DecisionRule::default(),
        )
    };
    // Exactly half, and a micrometre less.
    assert_eq!(
        asked(24.0, 12.0).unwrap_err().kind(),
        ErrorKind::Contradiction
    );
    assert!(asked(24.0, 11.999).is_ok());
    for (length, clearance, field, kind) in [
        (0.0, 0.2, "pad length", ErrorKind::OutOfRange),
        (-1.0, 0.2, "pad length", ErrorKind::OutOfRange),
        (25.0, 0.0, "clearance", ErrorKind::OutOfRange),
        (25.0, f64::INFINITY, "clearance", ErrorKind::NotFinite),
        (f64::NAN, 0.2, "pad length", ErrorKind::NotFinite),
    ] {
        let error = asked(length, clearance).unwrap_err();
        assert_eq!(
            (error.field(), error.kind()),
            (field, kind),
            "{length} {clearance}"
        );
    }
}

#[test]
fn one_place_is_read_once() {
    let pads = |second: (f64, f64)| {
        PadSurvey::new(
            "axle",
            [
                at("a", 0.0, 0.0, 0.0),
                at("a", second.0, second.1, 0.1),
                at("b", 30.0, 9.0, 0.2),
            ],
            mm(0.004),
        )
    };
    // A hundredth of a millimetre apart is another place, nine thousandths the same.
    assert!(pads((0.01, 0.0)).is_ok() && pads((0.0, 0.01)).is_ok());
    let again = pads((0.0, 0.009)).unwrap_err();
    assert_eq!(
        (again.kind(), again.field()),
        (ErrorKind::Contradiction, "pads.1")
    );
    assert_eq!(
        PadSurvey::new(" ", [at("a", 0.0, 0.0, 0.0)], mm(0.004))
            .unwrap_err()
            .field(),
        "datum"
    );
    assert_eq!(
        PadSurvey::new("axle", [at("a", 0.0, 0.0, 0.0)], mm(0.004))
            .unwrap_err()
            .kind(),
        ErrorKind::Missing
    );
}
