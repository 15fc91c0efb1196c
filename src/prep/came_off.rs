//! What a pass over a face took off, and what its limits leave.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::plan::InterfaceReport;
use crate::face::{CutLimit, RingSurvey};
use crate::judge::{Finding, extremes};
use crate::measure::{Reading, settled_below};
use crate::quantity::in_mm;

/// What is left of the limits after a cut, from readings before it; a limit that was passed is said so. A cut of unknown
/// depth leaves unknown amounts.
pub(super) fn left_after(
    limits: Vec<CutLimit>,
    off: Option<Reading>,
    report: &mut InterfaceReport,
) -> Vec<CutLimit> {
    limits
        .into_iter()
        .filter_map(|limit| {
            let Some(off) = off else {
                return CutLimit::unknown(
                    limit.kind(),
                    String::from(limit.what()),
                    "measure what is left: the two surveys do not tell what came off",
                )
                .ok();
            };
            let left = limit.after_cutting(&off);
            if let Some(over) = left.may_come_off()
                && over.sure_sign().is_lt()
            {
                report.leave.push(format!(
                    "the face: nothing more may come off because of {}, {} too much is off already",
                    left.what(),
                    in_mm(-over.value())
                ));
            }
            Some(left)
        })
        .collect()
}

/// What a pass took off, place by place where both surveys have the same places; the most of it.
pub(super) fn compare(
    before: &RingSurvey,
    now: &RingSurvey,
    report: &mut InterfaceReport,
) -> Option<Reading> {
    let removed: Vec<Reading> = before
        .probes()
        .iter()
        .filter_map(|b| {
            let a = now
                .probes()
                .iter()
                .find(|a| (a.at.degrees() - b.at.degrees()).abs() < 0.5)?;
            Some(b.height.less(&a.height))
        })
        .collect();
    told(removed, report)
}

/// Tells what came off at the places that were read both times; the most of it, where the surveys agree with each other.
pub(super) fn told(removed: Vec<Reading>, report: &mut InterfaceReport) -> Option<Reading> {
    let ends = extremes(&removed);
    let mut deepest = None;
    let words = match (ends.first(), ends.last()) {
        (Some(least), Some(most))
            if most.sure_sign().is_lt()
                || settled_below(least.value(), -least.expanded_uncertainty() * 2.0) =>
        {
            format!(
                "the face stands {} higher than before in one place: the two surveys do not share a datum, or something lies under the indicator",
                in_mm(-least.value())
            )
        }
        (Some(least), Some(most)) => {
            deepest = Some(*most);
            format!(
                "{} to {} ± {}",
                in_mm(least.value()),
                in_mm(most.value()),
                in_mm(most.expanded_uncertainty())
            )
        }
        _ => String::from("the two surveys share no places: nothing can be said of what came off"),
    };
    report.findings.push(Finding {
        readings: removed,
        ..Finding::stated("what came off", words)
    });
    deepest
}
