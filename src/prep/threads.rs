//! Threads: identified by pitch and size, then chased, tapped, left or referred.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::Draft;
use super::plan::{Interface, InterfaceReport, end_words};
use super::sheet::{ThreadSheet, ThreadState};
use super::thread_work::{self, OnBench, usual_limits};
use crate::judge::Finding;
use crate::quantity::mm;
use crate::standard::{End, Place, Row, ThreadUse, find};
use crate::thread::{Hand, ThreadSize};

pub(super) fn plan(draft: &mut Draft<'_>, index: usize, sheet: &ThreadSheet) {
    let interface = Interface::Thread(index);
    let mut report = InterfaceReport {
        interface,
        title: sheet.name.clone(),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    if sheet.place == Place::Axle || sheet.place == Place::Hanger {
        draft.caution(Caution::MakersLimits);
    }
    let candidates = candidates(sheet, &mut report);
    let waits = Vec::new();
    let size = match candidates.as_slice() {
        [only] => Some(*only),
        [] => {
            report.findings.push(Finding::stated(
                "thread",
                "no listed thread agrees with what is known",
            ));
            draft.ask(
                interface,
                format!(
                    "{}: pitch with a gauge over six threads or more, and the mating part",
                    sheet.name
                ),
                "nothing is cut before the thread is known",
                "pitch gauge",
            );
            None
        }
        several => {
            let names: Vec<String> = several.iter().map(ToString::to_string).collect();
            report.findings.push(Finding::stated(
                "thread",
                format!("one of {}: not told apart yet", names.join(", ")),
            ));
            draft.ask(
                interface,
                format!(
                    "{}: pitch, with a gauge over six threads or more",
                    sheet.name
                ),
                format!(
                    "{} share a diameter; the wrong chaser cuts a second thread across the first",
                    names.join(", ")
                ),
                "pitch gauge",
            );
            None
        }
    };
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
            waits_for: waits,
        };
        thread_work::work(draft, bench, &mut report);
    }
    draft.report(report);
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

fn proof_of(place: Place) -> String {
    String::from(match place {
        Place::Axle => "the axle screws in by hand over its whole thread and seats without play",
        Place::Hanger => "the derailleur bolt screws in by hand to its shoulder",
        _ => "its screw goes in by hand over the whole thread",
    })
}

/// Which threads the sheet allows: the mating part, the belief, the pitch and the hole, each as far as it is stated.
fn candidates(sheet: &ThreadSheet, report: &mut InterfaceReport) -> Vec<ThreadSize> {
    let mut known: Vec<ThreadSize> = Vec::new();
    let mut add = |size: ThreadSize| {
        if !known.contains(&size) {
            known.push(size);
        }
    };
    if let Some(mate) = sheet.mate {
        add(mate);
    }
    if let Some(belief) = sheet.common.believed.as_deref() {
        match belief.parse::<ThreadSize>() {
            Ok(size) => add(size),
            Err(_) => match find::<ThreadUse>(belief) {
                Ok(row) => {
                    if let Some(size) = row.thread.value() {
                        add(*size);
                    }
                }
                Err(error) => report
                    .findings
                    .push(Finding::stated("belief", error.to_string())),
            },
        }
    }
    // Every listed thread of this place, where nothing was stated or where the statement may be wrong.
    for row in ThreadUse::table()
        .iter()
        .filter(|row| row.place == sheet.place)
    {
        if let Some(size) = row.thread.value() {
            add(*size);
        }
    }
    let stated = sheet.mate.or_else(|| {
        sheet
            .common
            .believed
            .as_deref()
            .and_then(|b| b.parse().ok())
    });
    if let (Some(stated), Some(pitch)) = (stated, sheet.pitch)
        && !stated.pitch().same_as(pitch)
    {
        report.findings.push(Finding::stated(
            "pitch",
            format!("the pitch gauge says {pitch}, the sheet says {stated}: the gauge is believed"),
        ));
    }
    let uncut = sheet.state == ThreadState::Uncut;
    known.retain(|size| {
        let pitch_agrees = sheet.pitch.is_none_or(|pitch| pitch.same_as(size.pitch()));
        let hole_agrees = uncut
            || sheet.minor.iter().all(|reading| {
                usual_limits(size).is_none_or(|limits| {
                    // Paint narrows a thread and a caliper sits on crests: a wide gate, only to keep M10 from M12.
                    let margin = reading.expanded_uncertainty() + mm(0.35);
                    limits
                        .minor
                        .lower()
                        .known()
                        .is_none_or(|low| reading.value() > low - margin)
                        && limits
                            .minor
                            .upper()
                            .known()
                            .is_none_or(|high| reading.value() < high + margin)
                })
            });
        pitch_agrees && hole_agrees
    });
    // A stated thread that survives, with the pitch read or a plain statement of the mating part, settles it.
    if let Some(stated) = stated.filter(|s| known.contains(s))
        && (sheet.pitch.is_some() || sheet.mate.is_some() || uncut)
    {
        return Vec::from([stated]);
    }
    known
}

/// `rear axle`, `hanger` …
pub(super) fn name_of(place: Place, end: End) -> String {
    let place = place.to_string().replace('_', " ");
    match end_words(end) {
        "" => place,
        end => format!("{end} {place}"),
    }
}
