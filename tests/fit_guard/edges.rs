//! What is said in words, and sizes exactly at their bounds.

use super::*;
use framegauge::{ErrorKind, Interference, Ratio, gpa, mpa};
use strum::IntoEnumIterator;

#[test]
fn words_of_kinds_and_cautions() {
    let mut page = Page::new();
    page.title("kinds of fit");
    for kind in FitKind::iter() {
        page.line(&format!("{kind}: {}", kind.words()));
    }
    page.title("what is out");
    for out in Out::iter() {
        page.line(&format!("{out}: {}", out.words()));
    }
    page.title("cautions");
    for caution in Caution::iter() {
        page.line(&format!("{caution}: {}", caution.words()));
    }
    page.check("fit_guard/words.txt");
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
