//! Two surveys or two faces: before and after, square to each other, to a caliper, to a pilot with play.

use super::*;

#[test]
fn before_and_after() {
    let shape = |t: f64| 0.06 * (t - 0.5).cos();
    let before = survey(ring_of(7, 18.5, shape));
    let record = |cut: &dyn Fn(f64) -> f64| {
        let after = survey(ring_of(7, 18.5, |t| f64::min(shape(t), cut(t))));
        before
            .compare(&after, &goal(), DecisionRule::default())
            .unwrap()
    };
    let square = record(&|_| -0.05);
    assert_eq!(square.ran_square.unwrap().outcome, Outcome::ConformityShown);
    assert!(
        !square.zero_moved && square.cut >= 5 && square.words.contains("ran square"),
        "{}",
        square.words
    );
    let askew = record(&|t| -0.05 + 0.05 * (t - 2.0).cos());
    assert_eq!(
        askew.ran_square.unwrap().outcome,
        Outcome::NonconformityShown
    );
    assert!(askew.words.contains("did not run square"));
    let little = record(&|_| 0.045);
    assert!(little.ran_square.is_none() && little.cut < 3);
    let risen = survey(ring_of(7, 18.5, |t| shape(t) + 0.05));
    assert!(
        before
            .compare(&risen, &goal(), DecisionRule::default())
            .unwrap()
            .zero_moved
    );
    let elsewhere = survey(ring_of(5, 18.5, |t| shape(t + 0.2)));
    assert_eq!(
        before
            .compare(&elsewhere, &goal(), DecisionRule::default())
            .unwrap_err()
            .kind(),
        ErrorKind::Missing
    );
    let other = RingSurvey::new(face(), "other end", ring_of(7, 18.5, shape)).unwrap();
    assert_eq!(
        before
            .compare(&other, &goal(), DecisionRule::default())
            .unwrap_err()
            .kind(),
        ErrorKind::Contradiction
    );
}

#[test]
fn dish_tilt_and_saddle_are_told_apart() {
    let z = |r: f64, t: f64| {
        0.02 * (r - 18.5) / 3.0
            + 0.03 * (t - 1.0).cos() * r / 18.5
            + 0.015 * (2.0 * (t - 0.4)).cos()
    };
    let mut probes = ring_of(7, 17.2, |t| z(17.2, t));
    probes.extend(ring_of(7, 19.8, |t| z(19.8, t)));
    let form = survey(probes).form(mm(37.0)).unwrap();
    assert!((to_mm(form.dish.unwrap()) - 0.02).abs() < 1e-9);
    assert!((to_mm(form.tilt.value) - 0.06).abs() < 1e-9);
    assert!((to_mm(form.saddle.unwrap()) - 0.03).abs() < 1e-9);
    assert!((form.saddle_high_at.unwrap().degrees() - 0.4_f64.to_degrees()).abs() < 1e-4);
    assert!(form.rest < mm(1e-9));
    // A cone has no run-out on any circle, yet it is not flat, and it does not rock.
    let mut probes = ring_of(7, 17.2, |_| 0.0);
    probes.extend(ring_of(7, 19.8, |_| 0.03));
    let cone = survey(probes);
    assert!(cone.circular_run_out().iter().all(|r| r.value < mm(1e-12)));
    assert!((to_mm(cone.squareness(mm(40.0)).unwrap().at_probes) - 0.03).abs() < 1e-12);
    assert!(
        cone.seat()
            .unwrap()
            .rock(mm(40.0), mm(0.0), mm(0.004))
            .unwrap()
            .is_none_or(|r| !r.shown)
    );
    // Vertical and square-on flatness differ by cos(tilt): 8e-5 at 0.5 mm run-out over 40 mm.
    let steep = survey(ring_of(8, 18.5, |t| {
        0.25 * 18.5 / 20.0 * t.cos() + 0.02 * (2.0 * t).cos()
    }));
    let flat = steep.flatness().unwrap();
    assert!((1.0 - to_mm(flat.zone.value()) / to_mm(flat.along_axis) - 7.8e-5).abs() < 1e-6);
}

/// With eight probes the run-out over the probed diameter is as uncertain as one reading: 2 u √(2/k).
#[test]
fn uncertainty_of_tilt_and_depth() {
    for k in [3_u32, 5, 8, 12] {
        let tilt = survey(ring_of(k, 18.5, |t| 0.05 * t.cos()))
            .tilt(mm(37.0))
            .unwrap();
        let wanted = 2.0 * 0.004 * (2.0 / f64::from(k)).sqrt();
        assert!((to_mm(tilt.run_out.standard_uncertainty()) - wanted).abs() < 1e-12);
        assert!((to_mm(tilt.run_out.value()) - 0.1).abs() < 1e-12);
    }
    let clean = survey(ring_of(8, 18.5, |t| 0.05 * t.cos())).clean_up();
    assert!((to_mm(clean.at_outer_edge) - 0.1 * 20.0 / 18.5).abs() < 1e-12);
    assert!((to_mm(clean.range_bias) - 2.847 * 0.004).abs() < 1e-5);
    assert_eq!(clean.first_touch.unwrap().degrees(), 0.0);
}

#[test]
fn two_faces() {
    let common = |z: &dyn Fn(f64) -> f64| {
        RingSurvey::new(face(), "through bar", ring_of(7, 18.5, z)).unwrap()
    };
    // Both ends cut along one slanting direction: high at 3 o'clock here is low at 9 o'clock there.
    let here = common(&|t| 0.05 * t.sin());
    let there = common(&|t| 0.05 * t.sin());
    let parallel = here.parallelism(&there, mm(37.0)).unwrap();
    assert!(parallel.run_out.value() < mm(1e-12), "{parallel:?}");
    assert!(here.misalignment(&there).unwrap().between.value < 1e-12);
    // Both high at the top: the shell is widest there, by the sum.
    let (here, there) = (common(&|t| 0.05 * t.cos()), common(&|t| 0.05 * t.cos()));
    let wedge = here.parallelism(&there, mm(37.0)).unwrap();
    assert!((to_mm(wedge.run_out.value()) - 0.2).abs() < 1e-12);
    assert_eq!(wedge.widest_at.unwrap().degrees(), 0.0);
    let cups = here.misalignment(&there).unwrap();
    assert!((cups.between.value - 2.0 * cups.cups[0].angle.value).abs() < 1e-6);
    // Range of the summed heights over the stations that both ends share.
    let summed = to_mm(wedge.at_probes.unwrap());
    assert!((0.19..0.2).contains(&summed), "{summed}");
    let other = survey(ring_of(7, 18.5, |_| 0.0));
    assert_eq!(
        here.parallelism(&other, mm(37.0)).unwrap_err().kind(),
        ErrorKind::Contradiction
    );
    // 0.075 mm over a 44 mm bore is 0.098 deg, over 34 mm 0.126 deg (a headset maker's limit of parallelism, derived).
    for (over, angle) in [(44.0, 0.098), (34.0, 0.126)] {
        let plane = Plane::new(0.075 / over, 0.0, mm(0.0)).unwrap();
        assert!((plane.tilt().value.to_degrees() - angle).abs() < 5e-4);
    }
}

#[test]
fn pilot_play_bounds_the_squareness() {
    let clearance = |v| Clearance::new(mm(v)).unwrap();
    assert_eq!(
        in_mm(
            pilot_play(clearance(0.05), mm(60.0), mm(40.0))
                .unwrap()
                .value
        )
        .to_string(),
        "0.033 mm"
    );
    assert!(pilot_play(clearance(-0.01), mm(60.0), mm(40.0)).is_err());
    assert!(pilot_play(clearance(0.05), mm(0.0), mm(40.0)).is_err());
    assert!(pilot_play(clearance(70.0), mm(60.0), mm(40.0)).is_err());
}

/// 0.2 mm to a side over a 25 mm pad touches at 0.92 deg, 0.1 mm at 0.46 deg; 0.1 mm across 15 mm is 0.38 deg.
#[test]
fn caliper_tilt() {
    let at = |pad: &'static str, x, y, z| PadPoint {
        pad: pad.into(),
        point: Point::new(mm(x), mm(y), mm(z)).unwrap(),
    };
    let pads = |across: f64, step: f64| {
        let all = [
            at("upper", -37.0, -7.5, 0.0),
            at("upper", -37.0, 7.5, across),
            at("lower", 37.0, -7.5, step),
            at("lower", 37.0, 7.5, across + step),
        ];
        PadSurvey::new("wheel axle", all, mm(0.004)).unwrap()
    };
    let tilt = |s: &PadSurvey, kind, c| {
        s.caliper_tilt(kind, mm(25.0), mm(c), DecisionRule::default())
            .unwrap()
    };
    let slope = tilt(&pads(0.1, 0.0), MountKind::Posts, 0.1);
    assert!((slope.angle.value.to_degrees() - 0.38).abs() < 0.005);
    assert!((slope.allowed_angle.value.to_degrees() - 0.46).abs() < 0.005);
    assert_eq!(slope.decision.outcome, Outcome::ConformityShown);
    assert!(
        (tilt(&pads(0.1, 0.0), MountKind::Posts, 0.2)
            .allowed_angle
            .value
            .to_degrees()
            - 0.92)
            .abs()
            < 0.005
    );
    assert_eq!(
        tilt(&pads(0.3, 0.0), MountKind::Posts, 0.1)
            .decision
            .outcome,
        Outcome::NonconformityShown
    );
    // A step between the posts pitches the caliper in the plane of the rotor: no rub. On a tab it tilts it.
    let stepped = pads(0.0, 0.4);
    assert!(tilt(&stepped, MountKind::Posts, 0.1).angle.value < 1e-12);
    assert!(
        (tilt(&stepped, MountKind::Tab, 0.1).angle.value.to_degrees()
            - (0.4_f64 / 74.0).atan().to_degrees())
        .abs()
            < 1e-9
    );
    let shapes = stepped.pad_shapes();
    assert_eq!(shapes.len(), 2);
    assert_eq!(in_mm(shapes[1].height).to_string(), "0.400 mm");
    assert!(
        stepped
            .caliper_tilt(
                MountKind::Posts,
                mm(25.0),
                mm(13.0),
                DecisionRule::default()
            )
            .is_err()
    );
    assert!(
        stepped
            .caliper_tilt(
                MountKind::Posts,
                mm(f64::NAN),
                mm(0.1),
                DecisionRule::default()
            )
            .is_err()
    );
}

#[test]
fn widths() {
    let at = |a, w| WidthReading {
        at: clock(a),
        width: Reading::new(mm(w), mm(0.01)).unwrap(),
    };
    let shell = WidthSurvey::new([at(0.0, 68.21), at(120.0, 68.15), at(240.0, 68.09)]).unwrap();
    assert_eq!(shell.shape().narrowest_at.degrees(), 240.0);
    let cut = |v| Reading::new(mm(v), mm(0.0)).unwrap();
    assert_eq!(
        in_mm(shell.remaining(&cut(0.05), &cut(0.04)).unwrap().value()).to_string(),
        "68.000 mm"
    );
    assert!(shell.remaining(&cut(-0.05), &cut(0.0)).is_err());
    assert_eq!(WidthSurvey::new([]).unwrap_err().kind(), ErrorKind::Missing);
    assert_eq!(
        WidthSurvey::new([at(0.0, 68.0), at(0.0, 68.1)])
            .unwrap_err()
            .kind(),
        ErrorKind::Contradiction
    );
}

#[test]
fn repeated_readings_are_pooled() {
    let turn = |a: f64, heights: &'static [Length]| (clock(a), radius(18.5), heights);
    const A: [Length; 2] = [mm(0.050), mm(0.054)];
    const B: [Length; 2] = [mm(0.010), mm(0.016)];
    const C: [Length; 1] = [mm(0.030)];
    let survey = RingSurvey::from_repeats(
        face(),
        "thread",
        &[turn(0.0, &A), turn(120.0, &B), turn(240.0, &C)],
        mm(0.002),
    )
    .unwrap();
    // s² = (2·0.002² + 2·0.003²)/2, one degree of freedom each; means of two carry s/√2 and the instrument's own.
    let s2 = 0.002_f64.powi(2) + 0.003_f64.powi(2);
    let u = |i: usize| to_mm(survey.probes()[i].height.standard_uncertainty());
    assert!((u(0) - (s2 / 2.0 + 0.002_f64.powi(2)).sqrt()).abs() < 1e-12);
    assert!((u(2) - (s2 + 0.002_f64.powi(2)).sqrt()).abs() < 1e-12);
    assert!(RingSurvey::from_repeats(face(), "thread", &[turn(0.0, &C)], mm(0.002)).is_err());
}
