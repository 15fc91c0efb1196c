//! A press or slip shell: measured, seldom cut.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing;
use super::plan::{Interface, InterfaceReport, Operation};
use super::press;
use super::sheet::{JointMaterial, ShellSheet, ThreadState};
use crate::evidence::Citation;
use crate::judge::{Finding, extremes, sizes_against, spread};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::in_mm;
use crate::standard::Joint;
use crate::standard::{BoreWindow, Hold, Shell};

const HERE: Interface = Interface::Shell;

/// A press or slip shell: bore against whoever prints a limit, part against bore.
pub(super) fn pressed(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
    (shell, doubt): (&Shell, Option<usize>),
    report: &mut InterfaceReport,
) {
    if sheet.drive.state != ThreadState::Unstated || sheet.non_drive.state != ThreadState::Unstated
    {
        report.findings.push(Finding::stated(
            "thread",
            "the sheet speaks of a thread; this pattern has none",
        ));
    }
    let slip = shell
        .fit
        .as_ref()
        .and_then(|f| f.value())
        .is_some_and(|hold| *hold == Hold::Slip);
    let readings: Vec<Reading> = sheet.bore.iter().map(|p| p.reading).collect();
    let window = draft
        .tables
        .all::<BoreWindow>()
        .find(|w| w.shell == shell.code && w.window.is_known());
    let maker = sheet.common.limits.iter().find(|l| l.what == "bore");
    let mut out_of_limits = None;
    let found = match (maker, window) {
        (Some(limit), _) => Some((
            sizes_against(
                "bore",
                &readings,
                &limit.limits,
                &limit.owner,
                None,
                draft.rule,
            ),
            limit.limits,
        )),
        (None, Some(window)) => {
            let limits = Limits::of_size(&window.window);
            Some((
                sizes_against(
                    "bore",
                    &readings,
                    &limits,
                    &window.owner,
                    window.window.evidence(),
                    draft.rule,
                ),
                limits,
            ))
        }
        (None, None) => None,
    };
    match found {
        Some((finding, limits)) => {
            let finding = if facing::covered(sheet.common.coating) {
                finding.read_on_paint(true, draft.tables)
            } else {
                finding
            };
            if finding.outcome == Some(Outcome::NonconformityShown) {
                out_of_limits = Some((limits, finding.sources.clone(), finding.owner.clone()));
            }
            if finding.outcome == Some(Outcome::Undecided) {
                draft.ask(
                    HERE,
                    "bore of the shell with a three-point gauge, at both ends and in the middle",
                    "the instrument used cannot show so narrow a tolerance",
                    "three-point internal micrometer",
                );
            }
            report.findings.push(finding);
        }
        None => {
            report.findings.push(Finding::stated("bore", format!("{}; nobody publishes limits for this bore: the mating part and the frame maker decide", spread(&readings))));
            draft.ask(
                HERE,
                "bore limits from the frame maker's drawing",
                "none are published",
                "frame maker",
            );
        }
    }
    if sheet.bore.len() < 4 {
        draft.ask(
            HERE,
            "bore in two directions at each end",
            "a single narrow place may be out of round and not small",
            "three-point internal micrometer, inside caliper",
        );
    }
    if slip {
        report.findings.push(Finding::stated("fit", "a slip fit by design: no interference is no fault, but the bearing must not rock in its seat"));
    }
    press::part_in_bore(
        draft,
        HERE,
        sheet.part.as_ref(),
        &sheet.bore,
        &[Joint::PressShell, Joint::DirectBearing],
        slip,
        report,
    );
    let carbon = sheet.common.material == JointMaterial::Carbon;
    if facing::covered(sheet.common.coating) {
        let (how, bare) = if carbon {
            (
                "Take the overspray out of the shell bores by hand: wood, plastic or a fine cloth",
                "laminate",
            )
        } else {
            (
                "Take the paint out of the shell bores by hand, down to metal",
                "metal",
            )
        };
        let mut step = DraftStep::new(
            HERE,
            Stage::Clean,
            Operation::Clean,
            how,
            "a cup or bearing on paint sits neither square nor tight",
        );
        step.checks.push(format!(
            "bore again in two directions at each end, on {bare}"
        ));
        step.proof =
            String::from("the part goes in square and the bearing turns freely and does not rock");
        if carbon {
            step.cautions = Vec::from([Caution::Carbon]);
        }
        draft.step(step);
    }
    if carbon {
        draft.caution(Caution::Carbon);
        report
            .leave
            .push(String::from("the bore: carbon is not reamed"));
        if let Some((limits, _, owner)) = out_of_limits {
            let mut step = DraftStep::new(
                HERE,
                Stage::Bore,
                Operation::Refer,
                "Refer the shell to the frame maker",
                format!("its bore is out of {limits} ({owner}) and carbon is not cut here"),
            );
            step.cautions = Vec::from([Caution::Carbon]);
            draft.step(step);
        }
    } else if let Some((limits, sources, owner)) = out_of_limits {
        correct(draft, &readings, &limits, (sources, owner), doubt);
    }
}

/// A metal bore shown out of limits: too small may be reamed, too large cannot be cured by cutting.
fn correct(
    draft: &mut Draft<'_>,
    readings: &[Reading],
    limits: &Limits,
    (sources, owner): (Vec<Citation>, String),
    doubt: Option<usize>,
) {
    let (Some(low), Some(high)) = (limits.lower().known(), limits.upper().known()) else {
        return;
    };
    let Some(smallest) = extremes(readings).first().map(Reading::value) else {
        return;
    };
    if !settled_below(smallest, low) {
        draft.step(DraftStep::new(HERE, Stage::Bore, Operation::Refer, "Do not cut: the bore is too large", "cutting makes it larger; a sleeve, a thread-together unit or a retaining compound inside its published gap are for the frame maker or a qualified builder"));
        return;
    }
    let words = (
        format!(
            "Ream the shell to between {} and {}, with the frame maker's agreement",
            in_mm(low),
            in_mm(high)
        ),
        "too tight a bore squeezes cup and bearing until they run rough",
    );
    let tool = (
        format!("reamer that finishes inside {limits}"),
        "both ends in one set-up, so that the bores stay in line",
    );
    let Some(mut step) = press::ream(HERE, words, tool, smallest, limits, (sources, &owner)) else {
        return;
    };
    step.waits_for.extend(doubt);
    step.waits_for.push(draft.ask(
        HERE,
        "bore in two directions at each end",
        "a single narrow place may be out of round and not small",
        "three-point internal micrometer, inside caliper",
    ));
    step.waits_for.push(draft.ask(
        HERE,
        "does the frame maker allow the shell to be reamed, and what wall is left?",
        "the wall of a press shell is thin",
        "frame maker, outside caliper",
    ));
    step.checks
        .push(String::from("bore again in two directions at both ends"));
    step.proof =
        String::from("the cup goes in square with steady force and the bearing still turns freely");
    draft.step(step);
}
