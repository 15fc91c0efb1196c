//! Both faces of a shell against a limit on their parallelism.

use alloc::format;

use super::face_now;
use super::facts::{Found, ShellAsk};
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell::{SIDES, face_of, side_of};
use super::site::Site;
use super::work::PlaceWork;
use crate::judge::sizes_against;
use crate::measure::Outcome;
use crate::standard::Place;
use crate::thread::Side;

/// A maker's limit of parallelism that cannot be held against anything yet: it is heard by asking for what it needs.
fn unsurveyed(sheet: &ShellSheet, works: &mut [PlaceWork]) {
    let Some(work) = works.iter_mut().find(|w| w.place == Place::Shell) else {
        return;
    };
    for side in SIDES {
        let face = side_of(sheet, side).face.as_ref();
        if face.is_none_or(|f| f.probes.is_empty()) {
            work.ask(format!("shell.{side}.face.probes"), ShellAsk::Heights);
        }
    }
}

/// Both faces against a maker's limit on their parallelism.
pub(super) fn parallel(site: &Site<'_>, sheet: &ShellSheet, works: &mut [PlaceWork]) {
    let Some(heard) = Heard::of(&sheet.limits, Limited::Parallelism) else {
        return;
    };
    let survey = |side: Side| {
        let (face, now) = face_of(sheet, side)?;
        face_now::survey(face, now.probes, "shell").ok()
    };
    let (Some(drive), Some(other)) = (survey(Side::Drive), survey(Side::NonDrive)) else {
        unsurveyed(sheet, works);
        return;
    };
    let over = drive.face().outer().length() * 2.0;
    let Ok(found) = drive.parallelism(&other, over) else {
        return;
    };
    let (limits, owner) = (&heard.limits, heard.owner());
    let read = [found.run_out];
    let held = sizes_against("parallelism", &read, limits, &owner, None, site.rule);
    let is_face = |work: &PlaceWork| matches!(work.place, Place::ShellFace(_));
    // A face that is cut is another one afterwards: both are surveyed again then.
    let cuts = |work: &PlaceWork| work.steps.iter().any(|s| s.operation().cuts());
    let will_change = works.iter().any(|w| is_face(w) && cuts(w));
    for work in works.iter_mut().filter(|w| is_face(w)) {
        let place = work.place.clone();
        match held.outcome.filter(|_| !will_change) {
            Some(Outcome::NonconformityShown) => {
                let out_by = found.run_out.value();
                work.ask(format!("{place}.limits"), ShellAsk::Squareness { out_by });
            }
            Some(Outcome::Undecided) => {
                work.ask(format!("{place}.probes"), ShellAsk::FinerHeights);
            }
            _ => {}
        }
        let decides = !will_change || !work.steps.is_empty();
        let outcome = held.outcome.filter(|_| decides);
        work.settled(Found::from(crate::judge::Finding {
            outcome,
            ..held.clone()
        }));
    }
}
