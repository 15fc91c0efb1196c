//! A shim in a gap.

use super::Finding;
use super::tube::wall_implied;
use super::verdict::{NOTHING, NextStep, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide};
use crate::quantity::{in_mm, positive};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// A shim in a gap: the wall it needs is **half** the difference of the diameters.
///
/// # Errors
/// As [`wall_implied`] when there is no gap.
///
/// ```
/// use framegauge::{judge::shim, measure::Outcome, mm};
/// let sheet = "0.2 +/- 0.01 mm".parse().unwrap();
/// let said = shim(&"27.0 +/- 0.02 mm".parse().unwrap(), &"26.8 +/- 0.02 mm".parse().unwrap(), Some(&sheet)).unwrap();
/// assert_eq!(said.millimetres("shim wall"), Some(0.1));
/// assert_eq!(said.outcome, Outcome::NonconformityShown); // 0.2 of wall would not enter
/// ```
pub fn shim(hole: &Reading, shaft: &Reading, sheet: Option<&Reading>) -> Result<Verdict, Error> {
    let wall = wall_implied(hole, shaft)?;
    let limits = Limits::at_most(wall.value(), Grade::Derived)?;
    let mut findings = Vec::new();
    let mut sentence = format!(
        "The gap of {} on diameter takes a shim of {} wall: half of it, because the shim lies on both sides.",
        in_mm(wall.value() * 2.0),
        in_mm(wall.value())
    );
    if let Some(sheet) = sheet {
        positive("shim", sheet.value())?;
        let apart = sheet.less(&wall);
        let none = Limits::at_most(NOTHING, Grade::Derived)?;
        let decision = decide(&apart, &none, DecisionRule::default());
        let words = match decision.outcome {
            Outcome::NonconformityShown => format!(
                "a sheet of {} adds {} on diameter and will not enter; if it did go in, it is not that thick, or the difference was taken for the wall",
                in_mm(sheet.value()),
                in_mm(sheet.value() * 2.0)
            ),
            Outcome::ConformityShown => format!(
                "a sheet of {} goes in and leaves {} on diameter",
                in_mm(sheet.value()),
                in_mm(-apart.value() * 2.0)
            ),
            Outcome::Undecided => format!(
                "a sheet of {} is a push fit within these readings",
                in_mm(sheet.value())
            ),
        };
        sentence.push_str(&format!(" {}.", super::words::capital(&words)));
        findings.push(Finding {
            outcome: Some(decision.outcome),
            readings: Vec::from([*sheet]),
            limits: Some(limits),
            decision: Some(decision),
            owner: String::from("the two diameters"),
            grade: Some(Grade::Derived),
            ..Finding::stated("shim", words)
        });
    }
    let mut said = Verdict::from_findings("shim", findings)
        .saying(sentence)
        .with(Worked::length("shim wall", wall.value(), "(hole - shaft) / 2"))
        .with(Worked::length("gap on diameter", wall.value() * 2.0, "hole less shaft"))
        .minding("a shim at least as long as the insertion, slot on slot (common practice; no length is published)");
    if sheet.is_none() || said.outcome != Outcome::ConformityShown {
        said = said.then(NextStep::new(
            "thickness of the sheet",
            "a wall counts twice on diameter",
            "micrometer",
        ));
    }
    Ok(said)
}
