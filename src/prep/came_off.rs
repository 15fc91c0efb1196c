//! What a pass over a face took off, and what its limits leave.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::plan::InterfaceReport;
use crate::face::{CutLimit, RingSurvey};
use crate::judge::Finding;
use crate::measure::{Reading, settled_below};
use crate::quantity::{in_mm, mm};

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
                && settled_below(over.value() + over.expanded_uncertainty(), mm(0.0))
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
    let mut deepest = None;
    let words = match crate::judge::extremes(&removed).as_slice() {
        [least, most]
            if most.value() + most.expanded_uncertainty() < mm(0.0)
                || least.value() < -least.expanded_uncertainty() * 2.0 =>
        {
            format!(
                "the face stands {} higher than before in one place: the two surveys do not share a datum, or something lies under the indicator",
                in_mm(-least.value())
            )
        }
        [least, most] => {
            deepest = Some(*most);
            format!(
                "removed {} to {} ± {}",
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
