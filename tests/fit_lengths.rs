//! Stacks, temperature, clamps, slides and lengths.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod fit_support;

use core::f64::consts::PI;

use fit_support::published;
use framegauge::fit::{
    Caution, ClampModel, Link, Material, MaterialKind, SizeReading, SlitClamp, Temperature,
    at_reference, at_reference_with_gauge, bolt_force, clearance_change, engagement_left,
    gap_between_flanges, post_insertion, slide, stack, steerer_length, strap_tension,
};
use framegauge::measure::{DecisionRule, Limits, Outcome, Reading};
use framegauge::{
    Depth, ErrorKind, Grade, Pitch, Ratio, ShaftDiameter, Width, deg, gpa, in_mm, mm, newton,
    newton_metre, per_kelvin, to_mm,
};
use proptest::prelude::*;

const RULE: DecisionRule = DecisionRule::Iso14253Of2017;

fn read(text: &str) -> Reading {
    text.parse().unwrap()
}

#[test]
fn published_stacks() {
    for row in published("stack_examples.csv") {
        let links: Vec<Link> = row
            .text("tolerances_mm")
            .split(';')
            .map(|t| Link::new(mm(10.0), mm(t.parse().unwrap()), 1.0).unwrap())
            .collect();
        let sum = stack(&links).unwrap();
        let within =
            |got, column| (to_mm(got) - row.number(column)).abs() <= row.number("step_mm") / 2.0;
        assert!(
            within(sum.worst_case, "worst_case_mm"),
            "{row}: {:?}",
            sum.worst_case
        );
        assert!(
            within(sum.root_sum, "root_sum_mm"),
            "{row}: {:?}",
            sum.root_sum
        );
    }
    // A sensitivity of 2 doubles a link's share.
    let sum = stack(&[Link::new(mm(10.0), mm(0.1), -2.0).unwrap()]).unwrap();
    assert_eq!(
        (
            in_mm(sum.nominal).to_string(),
            in_mm(sum.worst_case).to_string()
        ),
        ("-20.000 mm".to_owned(), "0.200 mm".to_owned())
    );
    assert_eq!(stack(&[]).unwrap_err().kind(), ErrorKind::Missing);
    assert!(
        Link::new(mm(1.0), mm(-0.1), 1.0).is_err()
            && Link::new(mm(1.0), mm(0.1), f64::NAN).is_err()
    );
    assert!(Link::of_limits(&Limits::at_most(mm(1.0), Grade::Shop).unwrap(), 1.0).is_err());
}

fn of(alpha: f64) -> Material {
    Material::new(
        "check material",
        MaterialKind::Metal,
        gpa(100.0),
        Ratio(0.3),
    )
    .unwrap()
    .with_expansion(per_kelvin(alpha))
    .unwrap()
}

/// A national physical laboratory's example: 500.035 mm of steel at 23.7 °C, 11.7e-6/K, is 500.013 mm at 20 °C.
#[test]
fn temperature_to_twenty_degrees() {
    let warm = Temperature::celsius(23.7).unwrap();
    let rod = at_reference(&read("500.035 +/- 0.002 mm"), &of(11.7e-6), warm).unwrap();
    assert!((to_mm(rod.value()) - 500.013).abs() < 0.0005);
    // With a gauge of the same material nothing is left to correct.
    let same = at_reference_with_gauge(&read("42 +/- 0.002 mm"), &of(11.7e-6), &of(11.7e-6), warm)
        .unwrap();
    assert_eq!(same.value(), mm(42.0));
    // At 20 °C nothing changes.
    let cool = Temperature::celsius(20.0).unwrap();
    assert_eq!(
        at_reference(&read("42 +/- 0.002 mm"), &of(23.6e-6), cool)
            .unwrap()
            .value(),
        mm(42.0)
    );
    assert!(
        clearance_change(
            mm(42.0),
            &of(23.6e-6),
            &of(11.5e-6),
            Temperature::celsius(-10.0).unwrap()
        )
        .unwrap()
            < mm(0.0)
    );
    for bad in [-273.2, f64::NAN, f64::INFINITY, 501.0] {
        assert!(Temperature::celsius(bad).is_err(), "{bad}");
    }
    let unknown =
        Material::new("some steel", MaterialKind::Metal, gpa(205.0), Ratio(0.29)).unwrap();
    assert_eq!(
        at_reference(&read("42 +/- 0.002 mm"), &unknown, warm)
            .unwrap_err()
            .kind(),
        ErrorKind::Missing
    );
}

/// The three models, each against its own pressure summed numerically around the circumference.
#[test]
fn clamp_models_sum_up() {
    let (d, height, force, friction) = (27.2, 15.0, 5000.0, 0.1);
    let clamp = SlitClamp::new(
        ShaftDiameter::new(mm(d)).unwrap(),
        Width::new(mm(height)).unwrap(),
    );
    let grip = |model| clamp.grip(newton(force), friction, model).unwrap();
    // Scale each distribution so that one half is pulled by twice the bolt force, then sum pressure times area.
    let summed = |shape: fn(f64) -> f64| {
        let steps = 20_000;
        let angle = |i: i32| -PI / 2.0 + PI * (f64::from(i) + 0.5) / f64::from(steps);
        let step = PI / f64::from(steps) * d / 2.0 * height;
        let pull: f64 = (0..steps)
            .map(|i| shape(angle(i)) * angle(i).cos() * step)
            .sum();
        let press: f64 = (0..steps).map(|i| shape(angle(i)) * step).sum();
        2.0 * friction * press * 2.0 * force / pull
    };
    assert!((grip(ClampModel::Uniform).axial.value / summed(|_| 1.0) - 1.0).abs() < 1e-6);
    assert!((grip(ClampModel::Cosine).axial.value / summed(f64::cos) - 1.0).abs() < 1e-6);
    // A line is the limit of an ever narrower band.
    let line = summed(|a| if a.abs() < 0.01 { 1.0 } else { 0.0 });
    assert!((grip(ClampModel::Line).axial.value / line - 1.0).abs() < 1e-3);
    let even = grip(ClampModel::Uniform);
    assert!((even.mean_pressure.value / 1e6 - 24.5).abs() < 0.05);
    assert!((even.torque.value - even.axial.value * 0.0136).abs() < 1e-9);
    assert!(even.cautions.contains(&Caution::GripUpperBound));
    for friction in [0.0, 2.0, -0.1, f64::NAN] {
        assert!(clamp.grip(newton(1.0), friction, ClampModel::Line).is_err());
        assert!(strap_tension(friction).is_err());
    }
    assert!((strap_tension(0.15).unwrap() - 0.80).abs() < 0.005);
    assert!(
        bolt_force(newton_metre(5.0), mm(5.0), 2.0).is_err()
            && bolt_force(newton_metre(-5.0), mm(5.0), 0.2).is_err()
    );
    let nothing = clamp.grip(newton(0.0), 0.1, ClampModel::Line).unwrap();
    assert!(
        clamp
            .used(&nothing, newton(1.0), newton_metre(0.0))
            .is_err()
    );
}

#[test]
fn slide_depth_by_depth() {
    let at = |text: &str, axis: f64, depth: f64| {
        SizeReading::new(read(text))
            .across(deg(axis))
            .unwrap()
            .at_depth(mm(depth))
            .unwrap()
    };
    let bore = [
        at("27.30 +/- 0.01 mm", 0.0, 5.0),
        at("27.24 +/- 0.01 mm", 270.0, 5.0),
        at("27.22 +/- 0.01 mm", 0.0, 90.0),
        at("27.21 +/- 0.01 mm", 90.0, 90.0),
    ];
    let post = [SizeReading::new(read("27.15 +/- 0.01 mm"))];
    let sits = slide(&bore, &post, Depth::new(mm(100.0)).unwrap(), Some(mm(0.2))).unwrap();
    assert_eq!(sits.depths.len(), 2);
    assert_eq!(
        in_mm(sits.depths[0].loosest.value()).to_string(),
        "0.150 mm"
    );
    assert_eq!(in_mm(sits.tightest.value()).to_string(), "0.060 mm");
    assert_eq!(
        in_mm(sits.bore.ovality().unwrap().value()).to_string(),
        "0.060 mm"
    );
    assert_eq!(
        in_mm(sits.bore.taper().unwrap().value()).to_string(),
        "-0.055 mm"
    );
    assert!(!sits.cautions.contains(&Caution::NextSizeFits));
    // 0.0925 mm of mean gap over 100 mm is 0.053 degrees.
    assert!((sits.lean.value / deg(1.0).value - 0.053).abs() < 0.0005);
    // A tube read only below the post, and a tube not read at all, are cured by different readings.
    let refused = |bore: &[SizeReading]| {
        let error = slide(bore, &post, Depth::new(mm(2.0)).unwrap(), None).unwrap_err();
        error.problem().to_owned()
    };
    assert_eq!(
        refused(&bore),
        "no reading of the tube lies where the post sits"
    );
    assert_eq!(refused(&[]), "no reading given");
    // 190 degrees is the same axis as 10 degrees: no second axis, so the shape is "at least".
    let one_axis = [
        at("27.3 +/- 0.01 mm", 10.0, 5.0),
        at("27.3 +/- 0.01 mm", 190.0, 9.0),
    ];
    let sits = slide(&one_axis, &post, Depth::new(mm(50.0)).unwrap(), None).unwrap();
    assert!(sits.cautions.contains(&Caution::ShapeAtLeast) && sits.bore.ovality().is_none());
}

#[test]
fn lengths_are_signed_and_judged() {
    let at_least = |low: f64| Limits::at_least(mm(low), Grade::Published).unwrap();
    let wide = gap_between_flanges(
        &read("86.5 +/- 0.05 mm"),
        &read("86.9 +/- 0.05 mm"),
        &[read("0.5 +/- 0.01 mm")],
        at_least(0.0),
        RULE,
    )
    .unwrap();
    assert_eq!(
        (
            in_mm(wide.length.value()).to_string().as_str(),
            wide.decision.outcome
        ),
        ("-0.900 mm", Outcome::NonconformityShown)
    );
    // The shell's own thread can be the shorter one.
    let left = engagement_left(
        &read("14 +/- 0.1 mm"),
        &[],
        &read("9.6 +/- 0.2 mm"),
        Pitch::millimetres(1.0).unwrap(),
        at_least(8.0),
        RULE,
    )
    .unwrap();
    assert_eq!(
        (left.turns, in_mm(left.length.value()).to_string().as_str()),
        (9, "9.600 mm")
    );
    let none = engagement_left(
        &read("3 +/- 0.1 mm"),
        &[read("4 +/- 0.1 mm")],
        &read("9.6 +/- 0.2 mm"),
        Pitch::tpi(24).unwrap(),
        at_least(8.0),
        RULE,
    )
    .unwrap();
    assert_eq!(none.turns, 0);
    assert_eq!(
        steerer_length(&[], mm(3.0)).unwrap_err().kind(),
        ErrorKind::Missing
    );
    assert!(steerer_length(&[read("100 +/- 1 mm")], mm(f64::NAN)).is_err());
    let deep = post_insertion(
        &read("400 +/- 1 mm"),
        &read("600 +/- 1 mm"),
        &read("520 +/- 1 mm"),
        Limits::between(mm(75.0), mm(250.0), Grade::Shop).unwrap(),
        RULE,
    )
    .unwrap();
    assert_eq!(deep.decision.outcome, Outcome::NonconformityShown);
}

/// A length has no sign; nothing (a spacer that is not there) is a length.
#[test]
fn a_length_below_zero_is_refused_by_name() {
    let (one, below) = (read("10 +/- 0.1 mm"), read("-2 +/- 0.1 mm"));
    let wanted = Limits::at_least(mm(0.0), Grade::Shop).unwrap();
    let pitch = Pitch::tpi(24).unwrap();
    let refused = [
        (
            gap_between_flanges(&below, &one, &[], wanted, RULE).map(drop),
            "between flanges",
        ),
        (
            gap_between_flanges(&one, &below, &[], wanted, RULE).map(drop),
            "shell",
        ),
        (
            gap_between_flanges(&one, &one, &[below], wanted, RULE).map(drop),
            "spacers",
        ),
        (
            engagement_left(&below, &[], &one, pitch, wanted, RULE).map(drop),
            "cup thread",
        ),
        (
            engagement_left(&one, &[below], &one, pitch, wanted, RULE).map(drop),
            "spacers",
        ),
        (
            engagement_left(&one, &[], &below, pitch, wanted, RULE).map(drop),
            "shell thread",
        ),
        (steerer_length(&[one, below], mm(3.0)).map(drop), "parts"),
        (steerer_length(&[below], mm(3.0)).map(drop), "parts"),
        (steerer_length(&[one], mm(-3.0)).map(drop), "below top"),
        (
            post_insertion(&below, &one, &one, wanted, RULE).map(drop),
            "post",
        ),
        (
            post_insertion(&one, &below, &one, wanted, RULE).map(drop),
            "clamp height",
        ),
        (
            post_insertion(&one, &one, &below, wanted, RULE).map(drop),
            "seat tube",
        ),
    ];
    for (answer, field) in refused {
        let error = answer.unwrap_err();
        assert_eq!(
            (error.kind(), error.field()),
            (ErrorKind::OutOfRange, field)
        );
    }
}

proptest! {
    /// The root sum never exceeds the worst case, and both grow with every link.
    #[test]
    fn root_sum_within_worst_case(tolerances in prop::collection::vec((0.0..1.0_f64, -3.0..3.0_f64), 1..20)) {
        let links: Vec<Link> = tolerances.iter().map(|(t, s)| Link::new(mm(1.0), mm(*t), *s).unwrap()).collect();
        let all = stack(&links).unwrap();
        prop_assert!(to_mm(all.root_sum) <= to_mm(all.worst_case) + 1e-12);
        if links.len() > 1 {
            let fewer = stack(&links[1..]).unwrap();
            prop_assert!(to_mm(fewer.worst_case) <= to_mm(all.worst_case) + 1e-12 && to_mm(fewer.root_sum) <= to_mm(all.root_sum) + 1e-12);
        }
    }

    /// Correcting to 20 °C and heating back up again gives the reading, to the second order of α ΔT.
    #[test]
    fn temperature_and_back(size in 1.0..500.0_f64, alpha in 1e-6..30e-6_f64, celsius in -20.0..60.0_f64) {
        let at = Temperature::celsius(celsius).unwrap();
        let cold = at_reference(&Reading::new(mm(size), mm(0.001)).unwrap(), &of(alpha), at).unwrap();
        let back = to_mm(cold.value()) * (1.0 + alpha * (celsius - 20.0));
        prop_assert!((back - size).abs() <= size * (alpha * 40.0).powi(2) * 1.01);
    }
}
