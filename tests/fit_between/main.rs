//! The fit between two members: kinds named by ANSI B4.2, bearing seats, restated cases, and properties.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod kinds;
mod parts;
mod shapes;

#[path = "../fit_support/mod.rs"]
mod fit_support;

use fit_support::published;
use framegauge::fit::{
    Caution, ClearanceGroup, DeviationLetter, Fit, FitClass, FitDesignation, FitKind, HoleMember,
    Out, RingClass, RingSize, ShaftMember, SizeReading, ToleranceGrade, Wanted, fit_between,
    internal_clearance, ring_tolerance,
};
use framegauge::measure::{Bound, DecisionRule, Limits, Outcome, Reading, Why};
use framegauge::{ErrorKind, Evidence, Figure, Grade, Span, deg, in_mm, inch, mm, nanometres, um};
use proptest::prelude::*;

const RULE: DecisionRule = DecisionRule::Iso14253Of2017;

fn read(text: &str) -> Reading {
    text.parse().unwrap()
}

fn of_designation(text: &str) -> Fit {
    let fit: FitDesignation = text.parse().unwrap();
    let hole = HoleMember::of_class(fit.hole().nominal(), fit.hole().class()).unwrap();
    let shaft = ShaftMember::of_class(fit.shaft().nominal(), fit.shaft().class()).unwrap();
    fit_between(&hole, &shaft, RULE).unwrap()
}

fn class(is_hole: bool, letter: usize, grade: u8) -> FitClass {
    use strum::IntoEnumIterator;
    let letter = DeviationLetter::iter().nth(letter).unwrap();
    let grade = ToleranceGrade::new(grade).unwrap();
    if is_hole {
        FitClass::hole(letter, grade)
    } else {
        FitClass::shaft(letter, grade)
    }
}

proptest! {
    /// Interference is the negative of clearance, whichever way a window is written.
    #[test]
    fn interference_is_minus_clearance(hole in 20.0..60.0_f64, off in -0.3..0.3_f64, u in 0.0..0.05_f64, low in -0.3..0.3_f64, width in 0.0..0.3_f64) {
        let fit = fit_between(
            &HoleMember::of_reading(Reading::new(mm(hole), mm(u)).unwrap()).unwrap(),
            &ShaftMember::of_reading(Reading::new(mm(hole + off), mm(u)).unwrap()).unwrap(),
            RULE,
        ).unwrap();
        let as_press = fit.against(&Wanted::interference(Limits::between(mm(low), mm(low + width), Grade::Shop).unwrap(), "")).unwrap();
        let as_gap = fit.against(&Wanted::clearance(Limits::between(mm(-low - width), mm(-low), Grade::Shop).unwrap(), "")).unwrap();
        prop_assert_eq!(as_press.outcome, as_gap.outcome);
        prop_assert_eq!(as_press.probability, as_gap.probability);
        let (least, most) = fit.press_range().unwrap();
        prop_assert!(nanometres(least.length()) <= nanometres(mm(off)) && nanometres(mm(off)) <= nanometres(most.length()));
    }

    /// Hole basis and shaft basis mirror each other: the same letters swapped give the same clearances (letters a to h).
    #[test]
    fn swapping_the_basis_leaves_the_fit(nominal in 3.1..120.0_f64, letter in 0..11_usize, a in 5_u8..12, b in 5_u8..12) {
        let fit = |hole: FitClass, shaft: FitClass| -> Option<Fit> {
            let hole = HoleMember::of_class(mm(nominal), hole).ok()?;
            let shaft = ShaftMember::of_class(mm(nominal), shaft).ok()?;
            fit_between(&hole, &shaft, RULE).ok()
        };
        let on_hole = fit(class(true, 10, a), class(false, letter, b));
        let on_shaft = fit(class(true, letter, b), class(false, 10, a));
        prop_assert_eq!(on_hole.as_ref().map(span_um), on_shaft.as_ref().map(span_um));
        prop_assert_eq!(on_hole.map(|f| f.kind()), on_shaft.map(|f| f.kind()));
    }

    /// A wider tolerance never narrows the interval of a fit.
    #[test]
    fn wider_tolerance_never_narrows(nominal in 3.1..120.0_f64, letter in 0..28_usize, grade in 5_u8..11, shaft_grade in 5_u8..11) {
        let width = |grade| -> Option<i64> {
            let hole = HoleMember::of_class(mm(nominal), class(true, letter, grade)).ok()?;
            let shaft = ShaftMember::of_class(mm(nominal), class(false, 10, shaft_grade)).ok()?;
            let fit = fit_between(&hole, &shaft, RULE).ok()?;
            nanometres(fit.loosest().value() - fit.tightest().value())
        };
        if let (Some(fine), Some(coarse)) = (width(grade), width(grade + 1)) {
            prop_assert!(coarse > fine);
        }
    }

    /// A finer instrument never turns a shown outcome into the opposite one.
    #[test]
    fn finer_readings_do_not_flip(gap in -0.3..0.3_f64, u in 0.001..0.05_f64, high in 0.01..0.2_f64) {
        let window = Wanted::clearance(Limits::between(mm(0.0), mm(high), Grade::Shop).unwrap(), "");
        let with = |u: f64| {
            let hole = HoleMember::of_reading(Reading::new(mm(30.0 + gap), mm(u)).unwrap()).unwrap();
            let shaft = ShaftMember::of_reading(Reading::new(mm(30.0), mm(0.0)).unwrap()).unwrap();
            fit_between(&hole, &shaft, RULE).unwrap().against(&window).unwrap().outcome
        };
        let (coarse, fine) = (with(u), with(u / 10.0));
        prop_assert!(coarse == Outcome::Undecided || fine == coarse, "{:?} {:?}", coarse, fine);
    }
}

fn span_um(fit: &Fit) -> (i64, i64) {
    let um = |r: Reading| nanometres(r.value()).unwrap() / 1000;
    (um(fit.tightest()), um(fit.loosest()))
}
