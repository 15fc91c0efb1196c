//! Threads: identified by pitch and size, then chased, tapped, left or referred.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::draft::Draft;
use super::identity;
use super::plan::{Interface, InterfaceReport};
use super::sheet::{Coating, ThreadSheet, ThreadState};
use super::sheet_passes::tried;
use super::thread_work::{self, OnBench};
use crate::judge::Finding;
use crate::standard::{ThreadUse, ThreadedPart};
use crate::thread::{Hand, ThreadSize};

pub(super) fn plan(draft: &mut Draft<'_>, index: usize, measured: &ThreadSheet) {
    let now = after_work(measured);
    let sheet = now.as_ref().unwrap_or(measured);
    let interface = Interface::Thread(index);
    let mut report = InterfaceReport {
        interface,
        title: sheet.name.clone(),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    let size = size_of(draft, interface, sheet, &mut report);
    if let Some(size) = size {
        let hand = sheet.hand.unwrap_or(Hand::Right);
        report
            .findings
            .push(Finding::stated("thread", settled_by(sheet, &size)));
        let bench = OnBench {
            interface,
            end: sheet.end,
            name: sheet.name.clone(),
            size,
            hand,
            material: sheet.common.material,
            coating: sheet.common.coating,
            state: sheet.state,
            go: sheet.go,
            not_go: sheet.not_go,
            minor: &sheet.minor,
            pilot: String::from("the thread itself, started by hand from its good end"),
            proof: proof_of(sheet.place),
            waits_for: Vec::new(),
        };
        thread_work::work(draft, bench, &mut report);
    }
    draft.report(report);
}

/// The thread as it is after the work: what its gauges did then, on metal.
fn after_work(thread: &ThreadSheet) -> Option<ThreadSheet> {
    if !tried(thread.go_after, thread.not_go_after) {
        return None;
    }
    let mut now = thread.clone();
    now.common.coating = Coating::Bare;
    now.go = thread.go_after;
    now.not_go = thread.not_go_after;
    now.state = super::shell::state_after(now.go, now.state);
    Some(now)
}

/// What the thread rests on, in words.
fn settled_by(sheet: &ThreadSheet, size: &ThreadSize) -> String {
    let mut by: Vec<&str> = Vec::new();
    if sheet.pitch.is_some() {
        by.push("the pitch gauge");
    }
    if sheet.mate.is_some() {
        by.push("the mating part");
    }
    if sheet.common.believed.is_some() {
        by.push("what it was taken for");
    }
    if by.is_empty() {
        return format!("{size}: the only listed thread of this place");
    }
    format!("{size}, by {}", by.join(" and "))
}

fn proof_of(place: ThreadedPart) -> String {
    String::from(match place {
        ThreadedPart::Axle => {
            "the axle screws in by hand over its whole thread and seats without play"
        }
        ThreadedPart::Hanger => "the derailleur bolt screws in by hand to its shoulder",
        _ => "its screw goes in by hand over the whole thread",
    })
}

/// Which thread it is. A stated thread whose pitch was read stands; a mating part at hand stands; else it is identified.
fn size_of(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &ThreadSheet,
    report: &mut InterfaceReport,
) -> Option<ThreadSize> {
    let believed = sheet
        .common
        .believed
        .as_deref()
        .and_then(|b| b.parse::<ThreadSize>().ok());
    let stated = sheet.mate.or(believed);
    match (stated, sheet.pitch) {
        (Some(size), Some(pitch)) if pitch.same_as(size.pitch()) => return Some(size),
        (Some(size), Some(pitch)) => {
            report.findings.push(Finding::stated(
                "pitch",
                format!(
                    "the pitch gauge says {pitch}, the sheet says {size}: the gauge is believed"
                ),
            ));
        }
        (Some(size), None) if sheet.mate.is_some() || sheet.state == ThreadState::Uncut => {
            return Some(size);
        }
        _ => {}
    }
    let settled = identity::thread(draft, interface, sheet, report)?;
    draft
        .tables
        .find::<ThreadUse>(&settled.code)
        .ok()
        .and_then(|row| row.thread.value().copied())
}
