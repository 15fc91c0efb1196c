//! Both faces of a shell against a limit on their parallelism.

use alloc::format;

use super::face_now;
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell::{SIDES, side_of};
use super::site::Site;
use super::work::PlaceWork;
use crate::judge::{Finding, sizes_against};
use crate::measure::Outcome;
use crate::quantity::in_mm;
use crate::standard::Place;
use crate::thread::Side;

/// A maker's limit of parallelism that cannot be held against anything yet: it is heard by asking for what it needs.
fn unsurveyed(sheet: &ShellSheet, heard: &Heard, works: &mut [PlaceWork]) {
    let Some(work) = works.iter_mut().find(|w| w.place == Place::Shell) else {
        return;
    };
    for side in [Side::Drive, Side::NonDrive] {
        let face = side_of(sheet, side).face.as_ref();
        if face.is_none_or(|f| f.probes.is_empty()) {
            work.ask_plain(
                format!("shell.{side}.face.probes"),
                "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
                format!("{} limits how far the two faces may be out of parallel", heard.owner()),
                "dial indicator turned about the pilot",
            );
        }
    }
}

/// Both faces against a maker's limit on their parallelism.
pub(super) fn parallel(site: &Site<'_>, sheet: &ShellSheet, works: &mut [PlaceWork]) {
    let Some(heard) = Heard::of(&sheet.limits, Limited::Parallelism) else {
        return;
    };
    let survey = |side: Side| {
        let here = side_of(sheet, side);
        let face = here.face.as_ref()?;
        let coating = face.coating.or(here.coating).or(sheet.coating);
        face_now::survey(face, face_now::now(face, coating).probes, "shell").ok()
    };
    let (Some(drive), Some(other)) = (survey(Side::Drive), survey(Side::NonDrive)) else {
        unsurveyed(sheet, &heard, works);
        return;
    };
    let over = drive.face().outer().length() * 2.0;
    let Ok(found) = drive.parallelism(&other, over) else {
        return;
    };
    let held = sizes_against(
        "parallelism of both faces",
        &[found.run_out],
        &heard.limits,
        &heard.owner(),
        None,
        site.rule,
    );
    let faces = || SIDES.map(Place::ShellFace);
    // A face that is cut is another one afterwards: both are surveyed again then.
    let will_change = works
        .iter()
        .any(|w| faces().contains(&w.place) && w.steps.iter().any(|s| s.operation().cuts()));
    for work in works.iter_mut().filter(|w| faces().contains(&w.place)) {
        match held.outcome {
            Some(Outcome::NonconformityShown) if !will_change => work.ask_plain(
                format!("{}.limits", work.place),
                format!("how square must this face be? The two are out of parallel by {}", in_mm(found.run_out.value())),
                "the faces are out of parallel by more than their maker allows; facing both would cure it",
                "frame maker",
            ),
            Some(Outcome::Undecided) if !will_change => work.ask_plain(
                format!("{}.probes", work.place),
                "heights of both faces again, finer",
                "whether the two faces are parallel enough is not shown either way",
                "dial indicator turned about the pilot",
            ),
            _ => {}
        }
        work.settled(Finding {
            outcome: held
                .outcome
                .filter(|_| !will_change || !work.steps.is_empty()),
            ..held.clone()
        });
    }
}
