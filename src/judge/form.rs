//! Is the form good enough? Scatter of a bore, faces of a head tube, mount faces, dropouts, two bearing bores on one axis.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against, spread};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{Shape, SizeReading};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::standard::{FacingRule, find};

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
        found.words = String::from("one reading shows no shape");
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

/// The two end faces of a head tube, by their parallelism, by a wear pattern, or by nothing.
///
/// A wear pattern proves nothing: a bent steerer wears the races in the same place.
///
/// # Errors
/// `OutOfRange` for a parallelism below zero.
///
/// ```
/// use framegauge::{judge::parallel_faces, measure::Outcome};
/// let worn = parallel_faces(None, true).unwrap();
/// assert_eq!(worn.outcome, Outcome::Undecided);
/// assert_eq!(worn.millimetres("ceiling"), Some(0.075));
/// let cut = parallel_faces(Some(&"0.12 +/- 0.02 mm".parse().unwrap()), false).unwrap();
/// assert_eq!(cut.outcome, Outcome::NonconformityShown);
/// ```
pub fn parallel_faces(parallelism: Option<&Reading>, wear_pattern: bool) -> Result<Verdict, Error> {
    if let Some(reading) = parallelism
        && settled_cmp(reading.value(), NOTHING).is_lt()
    {
        size_reading("parallelism", reading)?;
    }
    let row = find::<FacingRule>("end_face_parallelism")?;
    let readings: Vec<Reading> = parallelism.copied().into_iter().collect();
    let limits = Limits::of_requirement(&row.window);
    let mut findings = Vec::from([sizes_against(
        row.what.clone(),
        &readings,
        &limits,
        "a headset maker's technical page",
        row.window.evidence(),
        DecisionRule::default(),
    )]);
    if wear_pattern {
        findings.push(Finding::stated("wear pattern", "shows where the races were loaded, not why: faces out of parallel, a bent steerer and a crooked crown seat all wear one side"));
    }
    let ceiling = limits.upper().known();
    let mut said = Verdict::from_findings("head-tube faces", findings);
    let words = ceiling.map(|c| format!("{}", in_mm(c))).unwrap_or_default();
    said = match said.outcome {
        Outcome::Undecided => {
            let sentence = if wear_pattern {
                format!(
                    "The wear alone decides nothing; one headset maker's ceiling between the faces is {words}."
                )
            } else {
                let why = if parallelism.is_some() {
                    "Too close to tell"
                } else {
                    "Not enough data"
                };
                format!("{why}: one headset maker's ceiling between the faces is {words}.")
            };
            said.saying(sentence)
                .then(NextStep::new("ink on both faces, then the first light cut, pilot centred in the opposite bore", "a face that was parallel loses its ink all round at once; a shop can hardly measure this otherwise", "marking ink, facing tool"))
                .then(NextStep::new("straightness of the steerer and run-out of the crown seat", "a bent steerer gives the same sign", "V-blocks and dial indicator"))
        }
        Outcome::ConformityShown => said.saying(format!("The faces are parallel within {words}.")),
        Outcome::NonconformityShown => said.saying(format!(
            "The faces are out of parallel by more than {words}: face both ends, or refer."
        )),
    };
    if let Some(ceiling) = ceiling {
        said = said.with(Worked::length("ceiling", ceiling, "as printed"));
    }
    Ok(said.minding("steering: when in doubt, hand over to a qualified workshop"))
}
