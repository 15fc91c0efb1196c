//! Whether a bore has one size at all.

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked};
use super::{sizes_against, spread};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{Shape, SizeReading};
use crate::measure::{DecisionRule, Limits, Outcome, Reading};
use crate::quantity::{Length, in_mm, positive};

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
    let apart = shape.largest().less(&shape.smallest());
    let all: Vec<Reading> = readings.iter().map(SizeReading::size).collect();
    let limits = Limits::at_most(step, Grade::Derived)?;
    let mut found = sizes_against(
        "spread of the readings",
        &[apart],
        &limits,
        "one step of the sizes it could be",
        None,
        DecisionRule::default(),
    );
    if readings.len() < 2 && found.outcome == Some(Outcome::ConformityShown) {
        found.outcome = Some(Outcome::Undecided);
        found.reworded("one reading shows no shape");
    }
    let outcome = found.outcome;
    let sentence = match outcome {
        Some(Outcome::NonconformityShown) => format!(
            "{}: a spread of {} is not a size; the bore is pinched, bulged, burred or worn, and no size may be named before it is round.",
            spread(&all),
            in_mm(apart.value())
        ),
        Some(Outcome::ConformityShown) => format!(
            "{}: one size within its step; no roundness limit is published.",
            spread(&all)
        ),
        _ => format!(
            "{}: not enough to tell whether it is one size.",
            spread(&all)
        ),
    };
    let mut said = Verdict::from_findings(place, Vec::from([found]))
        .saying(sentence)
        .with(Worked::length(
            "spread",
            apart.value(),
            "largest less smallest reading",
        ))
        .with(Worked::length(
            "smallest",
            shape.smallest().value(),
            "smallest reading",
        ))
        .with(Worked::length(
            "largest",
            shape.largest().value(),
            "largest reading",
        ));
    if let Some(oval) = shape.ovality() {
        said = said.with(Worked::length(
            "ovality",
            oval.value(),
            "largest less smallest at one depth",
        ));
    }
    if said.outcome != Outcome::ConformityShown {
        said = said.then(NextStep::new(
            "the bore on two axes at the mouth, at the lug and below",
            "tells a pinched mouth from a bulge and from wear",
            "telescoping gauge and micrometer",
        ));
    }
    for caution in shape.cautions() {
        said.cautions.push(caution.words().into());
    }
    Ok(said)
}
