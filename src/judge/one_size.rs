//! Whether a bore has one size at all.

use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked};
use super::{Finding, FitAsk, FitFact, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{Shape, SizeReading};
use crate::measure::{DecisionRule, Limits, Outcome};
use crate::quantity::{Length, positive};

/// Whether a bore has one size at all: readings that spread by more than the step of the sizes it could be name none of them.
///
/// No roundness limit is published for head tubes, seat tubes or shells; the step of the series is what can be held against.
///
/// # Errors
/// As [`Shape::of`]; `OutOfRange` for a step that is none.
///
/// ```
/// use framegauge::{fit::SizeReading, judge::one_size, measure::Outcome, mm};
/// let at = |text: &str| SizeReading::new(text.parse().unwrap());
/// let said = one_size("seat tube", &[at("26.14 +/- 0.03 mm"), at("27.15 +/- 0.03 mm")], mm(0.2)).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("spread"), Some(1.01));
/// ```
pub fn one_size(place: &str, readings: &[SizeReading], step: Length) -> Result<Verdict, Error> {
    let step = positive("step of sizes", step)?;
    let shape = Shape::of(readings)?;
    let (smallest, largest) = (shape.smallest(), shape.largest());
    let apart = largest.less(&smallest);
    let spread = apart.value();
    let limits = Limits::at_most(step, Grade::Derived)?;
    let rule = DecisionRule::default();
    let mut held = sizes_against("spread", &[apart], &limits, "one size step", None, rule);
    if readings.len() < 2 && held.outcome == Some(Outcome::ConformityShown) {
        held.outcome = Some(Outcome::Undecided);
        held.fact = FitFact::OneReading.into();
    }
    let mut said = Verdict::from_findings(place, Vec::from([held]));
    match said.outcome {
        Outcome::NonconformityShown => said.findings.push(Finding::of(FitFact::NoSize { spread })),
        Outcome::ConformityShown => said.findings.push(Finding::of(FitFact::OneSize { spread })),
        Outcome::Undecided => {}
    }
    let oval = shape.ovality().map(|oval| ("ovality", oval.value()));
    let numbers = [
        ("spread", spread),
        ("smallest", smallest.value()),
        ("largest", largest.value()),
    ];
    for (what, length) in numbers.into_iter().chain(oval) {
        said = said.with(Worked::length(what, length, ""));
    }
    if said.outcome != Outcome::ConformityShown {
        said = said.then(NextStep::of(FitAsk::Shape));
    }
    for caution in shape.cautions() {
        said = said.minding(FitFact::Mind { caution: *caution });
    }
    Ok(said)
}
