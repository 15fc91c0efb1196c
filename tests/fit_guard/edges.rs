//! What is said in words, and sizes exactly at their bounds.

use super::*;
use framegauge::{ErrorKind, Interference, Ratio, gpa, mpa};
use strum::IntoEnumIterator;

#[test]
fn every_kind_and_caution_is_told_in_its_own_words() {
    let kinds = FitKind::iter().map(FitKind::words);
    let out = Out::iter().map(Out::words);
    let cautions = Caution::iter().map(Caution::words);
    let all: Vec<&str> = kinds.chain(out).chain(cautions).collect();
    for (at, words) in all.iter().enumerate() {
        assert!(!words.is_empty() && !all[..at].contains(words), "{words}");
    }
}

/// The tables of classes held here run above 0 and up to 120 mm.
#[test]
fn sizes_at_the_ends_of_the_tables() {
    let it7 = |d: f64| standard_tolerance(mm(d), "IT7".parse().unwrap());
    assert!(it7(120.0).is_ok() && it7(0.001).is_ok());
    assert_eq!(it7(120.001).unwrap_err().kind(), ErrorKind::NotTabulated);
    assert!(it7(0.0).is_err() && it7(-1.0).is_err());
    // A range holds its upper bound, not its lower one (ISO 286-1: over 30 up to and including 50).
    let of = |d: f64| to_mm(it7(d).unwrap());
    assert_eq!(
        [of(30.0), of(30.001), of(50.0), of(50.001)].map(|t| (t * 1e3).round()),
        [21.0, 25.0, 25.0, 30.0]
    );
}

/// One interference, known exactly, is a range of no width; the pressure is then one.
#[test]
fn a_press_of_one_size() {
    let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3))
        .unwrap()
        .with_strength(mpa(250.0))
        .unwrap();
    let shape = JointShape {
        diameter: mm(30.0),
        shaft_bore: None,
        hub_outside: mm(42.0),
        length: mm(40.0),
    };
    let joint = PressJoint::new(shape, &steel, &steel).unwrap();
    let at = |v: f64| Interference::new(mm(v)).unwrap();
    let report = |low: f64, high: f64| {
        joint.report(
            at(low),
            at(high),
            Friction::new(0.1, 0.1).unwrap(),
            RoughnessLoss::None,
        )
    };
    let one = report(0.02, 0.02).unwrap();
    assert!((one.pressure_low.value / one.stresses.pressure.value - 1.0).abs() < 1e-12);
    assert!((one.holding_force.value / one.push_in_force.value - 1.0).abs() < 1e-12);
    // Solid shaft of the hub's own material: p = E δ/d (1 − Q²)/2, Q = 30/42 (Lamé; any handbook of machine elements).
    let q2 = (30.0_f64 / 42.0).powi(2);
    let wanted = 210e9 * 0.02 / 30.0 * (1.0 - q2) / 2.0;
    assert!((one.pressure_low.value / wanted - 1.0).abs() < 1e-9);
    // It holds μ p π d L and, as a torque, half a diameter of that.
    let force = 0.1 * wanted * std::f64::consts::PI * 0.030 * 0.040;
    assert!((one.holding_force.value / force - 1.0).abs() < 1e-9);
    assert!((one.slip_torque.value / (force * 0.015) - 1.0).abs() < 1e-9);
    assert_eq!(
        report(0.020_001, 0.02).unwrap_err().kind(),
        ErrorKind::Contradiction
    );
}

/// Invented steel for the joints below.
fn steel() -> Material {
    Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap()
}

/// A wall below a twentieth of the joint's diameter is thin: 1.5 mm at 30 mm, on either part; a solid shaft never is. A joint
/// is short below its own diameter, not at it.
#[test]
fn thin_walls_and_short_joints() {
    let cautions = |outside: f64, bore: Option<f64>, length: f64| {
        let shape = JointShape {
            diameter: mm(30.0),
            shaft_bore: bore.map(mm),
            hub_outside: mm(outside),
            length: mm(length),
        };
        PressJoint::new(shape, &steel(), &steel())
            .unwrap()
            .cautions()
    };
    let thin = |outside, bore| cautions(outside, bore, 40.0).contains(&Caution::ThinShell);
    assert!(thin(32.8, None) && !thin(33.2, None));
    assert!(thin(42.0, Some(27.2)) && !thin(42.0, Some(26.8)));
    assert!(!thin(42.0, None));
    let short = |length| cautions(42.0, None, length).contains(&Caution::ShorterThanDiameter);
    assert!(short(29.9) && !short(30.0));
}

/// Bounds that still hold: absolute zero (-273.15 °C by definition of the unit) and 500 °C, a roughness of 1 mm, and the
/// ends of the ranges of a material as its documentation gives them.
#[test]
fn what_lies_on_a_bound_is_taken() {
    assert!(Temperature::celsius(-273.15).is_ok() && Temperature::celsius(-273.16).is_err());
    assert!(Temperature::celsius(500.0).is_ok() && Temperature::celsius(500.01).is_err());
    let loss = |rz: f64| {
        RoughnessLoss::Din7190 {
            shaft_rz: um(rz),
            hub_rz: um(0.0),
        }
        .amount()
    };
    assert!(loss(1000.0).is_ok());
    for rz in [1001.0, 2000.0] {
        assert_eq!(loss(rz).unwrap_err().field(), "roughness", "{rz}");
    }
    let of = |e, nu| Material::new("any", MaterialKind::Metal, e, Ratio(nu));
    assert!(of(mpa(1.0), 0.0).is_ok() && of(gpa(1000.0), 0.5).is_ok());
    assert!(of(mpa(0.99), 0.3).is_err() && of(gpa(1001.0), 0.3).is_err());
    assert!(of(gpa(70.0), -0.01).is_err() && of(gpa(70.0), 0.51).is_err());
    assert!(steel().with_strength(mpa(5000.0)).is_ok());
    assert!(steel().with_strength(mpa(5001.0)).is_err());
}

/// A press that takes exactly so much has no range; one that takes more at least than at most is a slip of the pen. 20 µm
/// less 5 leave 15, 5 less 5 leave none.
#[test]
fn what_a_press_takes_off_a_bearing() {
    let before = Limits::between(um(5.0), um(20.0), Grade::Agreeing).unwrap();
    let left = |low: f64, high: f64| clearance_left(before, &[(um(low), um(high))]);
    let one = left(5.0, 5.0).unwrap();
    assert_eq!(
        [in_um(one.least), in_um(one.most)],
        ["0.000 um", "15.000 um"]
    );
    let swapped = left(6.0, 5.0).unwrap_err();
    assert_eq!(
        (swapped.kind(), swapped.field()),
        (ErrorKind::Contradiction, "change")
    );
}

/// The clamp nearest to the tube: 0.05 mm over lies nearer than 0.1 mm under.
#[test]
fn the_nearest_clamp_is_taken() {
    let window = between(-0.1, 0.3);
    let sizes = |all: [f64; 3]| clamp_for_tube(mm(30.0), &all.map(mm), &window);
    assert_eq!(sizes([29.9, 30.05, 30.2]), Some(mm(30.05)));
    assert_eq!(sizes([29.95, 30.1, 30.2]), Some(mm(29.95)));
}

/// Where both parts yield at one pressure the outer one is named.
#[test]
fn the_outer_part_is_named_when_both_yield_at_once() {
    let of = |hub: f64, shaft: f64| {
        let limits = YieldPressure {
            rule: YieldRule::VonMises,
            hub: Some(mpa(hub)),
            shaft: Some(mpa(shaft)),
        };
        limits.first().unwrap().0
    };
    assert_eq!(
        [of(40.0, 40.0), of(40.0, 39.0), of(39.0, 40.0)],
        [Feature::Hole, Feature::Shaft, Feature::Hole]
    );
}
