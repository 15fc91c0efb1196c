//! Budgets, guard bands and instruments at their edges; every expected value is worked by hand beside it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use framegauge::measure::{
    Budget, Contribution, DecisionRule, Freedom, GuardFactor, Limits, Outcome, Reading, Shape,
    SumShape, acceptance_zone, coverage_factor, decide, instrument,
};
use framegauge::{ErrorKind, Grade, in_mm, mm, um};

fn line(name: &'static str, micrometres: f64, shape: Shape) -> Contribution {
    Contribution::new(name, um(micrometres), shape).unwrap()
}

/// One line of one degree of freedom has one degree, whatever its size: k is 12.71 (GUM table G.2, memory) and never the 1.96
/// of a figure that is known exactly.
#[test]
fn one_line_keeps_its_degrees() {
    for thousandths in 1..1000 {
        let scatter = line("two readings", f64::from(thousandths), Shape::Normal)
            .known_by(Freedom::new(1.0).unwrap());
        let coverage = Budget::new([scatter]).unwrap().coverage();
        assert_eq!(coverage.freedom.degrees(), 1.0, "u {thousandths} µm");
        assert!((coverage.factor - 12.706).abs() < 1e-3);
    }
}

/// Two rectangles of ± 50 µm have u = 28.87 µm each, together 40.82 µm; beside them 20 µm are left, more than the three tenths
/// (12.2 µm) up to which EA-4/02 lets the rest be left out: no trapezoid, k = 1.96.
#[test]
fn a_rest_that_is_not_negligible_makes_no_trapezoid() {
    let budget = Budget::new([
        line("a", 50.0, Shape::Rectangular),
        line("b", 50.0, Shape::Rectangular),
        line("c", 20.0, Shape::Normal),
    ])
    .unwrap();
    let coverage = budget.coverage();
    assert_eq!(coverage.shape, SumShape::Student);
    assert!((coverage.factor - 1.960).abs() < 1e-3);
}

/// A rectangle of u = 10 µm beside one of 3.1 µm and a normal part of 3.1 µm: the rest of 3.1 µm is less than three tenths of
/// √(10² + 3.1²) = 10.47 µm, so two rectangles dominate (EA-4/02), in whatever order the lines are written.
#[test]
fn the_order_of_the_lines_does_not_matter() {
    let root_three = 3.0_f64.sqrt();
    let large = line("large", 10.0 * root_three, Shape::Rectangular);
    let small = line("small", 3.1 * root_three, Shape::Rectangular);
    let normal = line("normal", 3.1, Shape::Normal);
    for lines in [
        [large.clone(), small.clone(), normal.clone()],
        [large.clone(), normal.clone(), small.clone()],
        [normal, small, large],
    ] {
        let coverage = Budget::new(lines).unwrap().coverage();
        assert_eq!(coverage.shape, SumShape::Trapezoid);
    }
}

/// The budget of EA-4/02 supplement 2, example S10. By hand: 25 / √3 = 14.43 µm, 0.8 / √3 = 0.46 µm, 50 / √3 = 28.87 µm and 2 µm
/// make √(14.43² + 0.46² + 28.87² + 2²) = 32.3 µm, times 1.83 = 59.2 µm (printed, rounded up: 0.033 mm, 1.83, 0.06 mm).
#[test]
fn a_budget_is_printed_line_by_line() {
    let budget = Budget::new([
        line("resolution", 25.0, Shape::Rectangular),
        line("gauge block", 0.8, Shape::Rectangular),
        line("mechanical effects", 50.0, Shape::Rectangular),
        line("temperature", 2.0, Shape::Normal),
    ])
    .unwrap();
    assert_eq!(
        budget.to_string(),
        "resolution: 0.014 mm (rectangular)\ngauge block: 0.000 mm (rectangular)\nmechanical effects: 0.029 mm \
         (rectangular)\ntemperature: 0.002 mm (normal)\nu 0.032 mm, U 0.059 mm (95 %, k 1.83)"
    );
}

/// r = -1 of ILAC-G8:09/2019 widens the limits by U: a value beyond them by less is accepted, one inside is, and only beyond
/// them by more than U is it rejected. U = 2 x 0.01 mm.
#[test]
fn a_negative_guard_factor_widens_the_limits() {
    let rule = DecisionRule::GuardBand(GuardFactor::new(-1.0).unwrap());
    let limits = Limits::at_most(mm(34.0), Grade::Published).unwrap();
    let held = |value: f64| {
        let reading = Reading::new(mm(value), mm(0.01)).unwrap();
        decide(&reading, &limits, rule).outcome
    };
    assert_eq!(held(33.99), Outcome::ConformityShown);
    assert_eq!(held(34.02), Outcome::ConformityShown);
    assert_eq!(held(34.03), Outcome::NonconformityShown);
}

/// What is known exactly may lie on its limits, also where both are one; what is no uncertainty has no zone.
#[test]
fn zones_at_the_edge_of_sense() {
    let zone = |low: f64, high: f64, u: f64, rule| {
        let limits = Limits::between(mm(low), mm(high), Grade::Published).unwrap();
        acceptance_zone(&limits, mm(u), rule).map(|zone| zone.to_string())
    };
    let rule = DecisionRule::default();
    assert_eq!(zone(34.0, 34.05, 0.0, rule).unwrap(), "34.000 to 34.050 mm");
    assert_eq!(zone(34.0, 34.0, 0.0, rule).unwrap(), "34.000 to 34.000 mm");
    let one_sided = Limits::at_most(mm(34.0), Grade::Published).unwrap();
    for rule in [
        rule,
        DecisionRule::Iso14253Of1998,
        DecisionRule::SimpleAcceptance,
    ] {
        assert!(zone(34.0, 34.05, -0.01, rule).is_none(), "{rule}");
        assert!(acceptance_zone(&one_sided, mm(-0.01), rule).is_none());
    }
    for none in [f64::NAN, f64::INFINITY] {
        assert!(zone(34.0, 34.05, none, rule).is_none());
        assert!(acceptance_zone(&one_sided, mm(none), rule).is_none());
    }
}

/// Nothing and everything are no coverage.
#[test]
fn a_coverage_lies_between_nothing_and_everything() {
    for share in [0.0, 1.0, -0.5, f64::NAN] {
        let error = coverage_factor(share, Freedom::EXACT).unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, "coverage")
        );
    }
}

/// The digital caliper is tabulated up to 100 mm and from over 300 mm (`caliper_digital_outside`, second hand): 300 mm itself is
/// not, and a depth read below its zero counts by its size.
#[test]
fn a_gap_in_the_permissible_errors_is_no_figure() {
    let caliper = instrument("caliper_digital_outside").unwrap();
    let error = |size: f64| caliper.permissible_error(mm(size));
    assert_eq!(in_mm(error(100.0).unwrap()).to_string(), "0.020 mm");
    for untold in [100.1, 300.0] {
        assert_eq!(error(untold).unwrap_err().kind(), ErrorKind::NotTabulated);
    }
    assert_eq!(in_mm(error(300.1).unwrap()).to_string(), "0.030 mm");
    assert_eq!(error(-50.0), error(50.0));
}

/// A reading has one uncertainty: two deviations are a tolerance and refused.
#[test]
fn two_deviations_are_no_uncertainty() {
    let error = "27.2 +0.1/-0.05 mm".parse::<Reading>().unwrap_err();
    assert_eq!((error.kind(), error.field()), (ErrorKind::Text, "reading"));
    let reading: Reading = "27.2 +/- 0.1 mm".parse().unwrap();
    assert_eq!(
        in_mm(reading.expanded_uncertainty()).to_string(),
        "0.100 mm"
    );
}
