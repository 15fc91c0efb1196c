//! Crown-race seat and steerer.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::covered;
use super::plan::{Interface, InterfaceReport, Operation};
use super::press;
use super::sheet::{CrownSheet, SteererSheet};
use crate::fit::{HoleMember, ShaftMember, SizeReading, fit_between, steerer_length};
use crate::judge::{Finding, fit_words, sizes_against, spread};
use crate::measure::{Limits, Outcome};
use crate::quantity::in_mm;
use crate::standard::{CrownSeat, FitWindow, Steerer, SteererRule};

pub(super) fn crown(draft: &mut Draft<'_>, sheet: &CrownSheet) {
    let interface = Interface::Crown;
    let mut report = InterfaceReport {
        interface,
        title: String::from("crown-race seat"),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    draft.caution(Caution::Steering);
    let on_metal = !covered(sheet.common.coating);
    let seat = on_metal
        .then(|| super::identity::crown(draft, sheet, &mut report))
        .flatten()
        .and_then(|settled| draft.tables.find::<CrownSeat>(&settled.code).ok());
    if covered(sheet.common.coating) {
        report.findings.push(Finding::stated("coating", "the seat is coated: a reading includes the coating on both sides, so no verdict before it is off"));
        let mut step = DraftStep::new(
            interface,
            Stage::Clean,
            Operation::Clean,
            "Take the coating off the crown-race seat by hand, down to metal",
            "a race forced over paint cracks or sits crooked",
        );
        step.checks.push(String::from(
            "diameter of the seat again in two directions, on metal",
        ));
        step.checks.push(String::from("bore of the race"));
        step.proof = String::from("the race seats on its shoulder all round with the setting tool");
        step.cautions = Vec::from([Caution::Steering]);
        draft.step(step);
    }
    if let Some(seat) = seat
        && !sheet.seat.is_empty()
    {
        let limits = Limits::of_size(&seat.seat);
        report.findings.push(sizes_against(
            "seat",
            &sheet.seat,
            &limits,
            &seat.name,
            seat.seat.evidence(),
            draft.rule,
        ));
    } else if !sheet.seat.is_empty() {
        report
            .findings
            .push(Finding::stated("seat", spread(&sheet.seat)));
    }
    race(draft, interface, sheet, &mut report);
    report.leave.push(String::from(
        "the seat itself: cutting it is for the fork maker or a qualified builder",
    ));
    draft.report(report);
}

fn race(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &CrownSheet,
    report: &mut InterfaceReport,
) {
    let sizes = |readings: &[crate::measure::Reading]| {
        readings
            .iter()
            .map(|r| SizeReading::new(*r))
            .collect::<Vec<_>>()
    };
    let (Ok(race), Ok(seat)) = (
        HoleMember::measured_only(&sizes(&sheet.race)),
        ShaftMember::measured_only(&sizes(&sheet.seat)),
    ) else {
        if !sheet.seat.is_empty() || !sheet.race.is_empty() {
            draft.ask(
                interface,
                "diameter of the seat and bore of the race, both on metal",
                "the fit cannot be judged without both",
                "outside micrometer, inside caliper",
            );
        }
        return;
    };
    let Ok(fit) = fit_between(&race, &seat, draft.rule) else {
        return;
    };
    report.findings.push(Finding::stated(
        "race on its seat",
        format!("{} on diameter", fit_words(&fit)),
    ));
    let windows = draft
        .tables
        .all::<FitWindow>()
        .filter(|w| w.joint == crate::standard::Joint::CrownRace);
    let held: Vec<Finding> = windows
        .filter_map(|window| press::held(&fit, "race on its seat", window))
        .map(|found| {
            if covered(sheet.common.coating) {
                found.through_paint()
            } else {
                found
            }
        })
        .collect();
    let none_outside = held
        .iter()
        .all(|f| f.outcome != Some(Outcome::NonconformityShown));
    report.findings.extend(held);
    if fit.tightest().sure_sign().is_gt() {
        let mut step = DraftStep::new(
            interface,
            Stage::Check,
            Operation::Refer,
            "Do not fit the race: it is loose on its seat",
            "no interference is a fault here; race or seat is worn, both must be measured",
        );
        step.cautions = Vec::from([Caution::Steering]);
        draft.step(step);
    } else if !none_outside {
        report.findings.push(Finding::stated("windows", "the published windows disagree; none is a standard, the headset maker's own figure decides"));
    }
}

pub(super) fn steerer(draft: &mut Draft<'_>, sheet: &SteererSheet) {
    let interface = Interface::Steerer;
    let mut report = InterfaceReport {
        interface,
        title: String::from("steerer"),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    draft.caution(Caution::Steering);
    if let Some(row) = super::identity::steerer(draft, sheet, &mut report)
        .and_then(|settled| draft.tables.find::<Steerer>(&settled.code).ok())
    {
        if let Some(thread) = &row.thread
            && let Some(size) = thread.value()
        {
            report
                .findings
                .push(Finding::stated("thread", format!("{size}")).resting_on(thread.evidence()));
            report.leave.push(String::from("the steerer thread: chase it only with its own form; Italian and English steerers share size and pitch and differ in flank angle"));
        }
        if let Some(quill) = &row.quill {
            report
                .findings
                .push(Finding::stated("quill", format!("{quill}")).resting_on(quill.evidence()));
        }
    }
    length(draft, sheet, &mut report);
    draft.report(report);
}

/// Length against what stands on the steerer: its end stays a little below the top of the stem.
fn length(draft: &mut Draft<'_>, sheet: &SteererSheet, report: &mut InterfaceReport) {
    if sheet.stack.is_empty() {
        return;
    }
    let rule = draft
        .tables
        .all::<SteererRule>()
        .find(|r| r.code == "steerer_below_stack");
    let Some((rule, below)) =
        rule.and_then(|r| Some((r, r.window.nominal().or_else(|| r.window.lower())?)))
    else {
        return;
    };
    let Ok(wanted) = steerer_length(&sheet.stack, below) else {
        return;
    };
    let mut words = format!(
        "{} wanted: what stands on it, less {} below the top",
        in_mm(wanted.value()),
        in_mm(below)
    );
    if let Some(length) = sheet.length {
        let spare = length.less(&wanted);
        let off = spare.value();
        words.push_str(&match spare.sure_sign() {
            Ordering::Greater => format!(
                "; it is {} longer: cut only after the head-tube faces are finished",
                in_mm(off)
            ),
            Ordering::Less => format!(
                "; it is {} too short: fewer spacers or another stem, never less grip",
                in_mm(-off)
            ),
            Ordering::Equal => String::from("; it has that length as far as the readings tell"),
        });
    }
    report
        .findings
        .push(Finding::stated("steerer length", words).resting_on(rule.window.evidence()));
}
