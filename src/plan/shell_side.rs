//! One threaded side of a shell, and its hand.

use alloc::format;
use alloc::string::ToString;

use super::facts::{Found, ShellAsk, ShellFact};
use super::permit::Identity;
use super::sheet::{ShellSheet, ShellSide};
use super::shell::{SIDES, Whole, side_of, side_words};
use super::site::{Joint, Site};
use super::thread::{self, Bench};
use super::work::PlaceWork;
use crate::evidence::Grade;
use crate::judge::{Instrument, extremes, pattern_threads};
use crate::standard::{Place, Shell};
use crate::thread::{Hand, Side};

/// A side that was found to have another hand than its pattern.
pub(super) fn other_hand(sheet: &ShellSheet, row: &Shell, side: Side) -> Option<ShellFact> {
    let (found, wanted) = (side_of(sheet, side).hand?, row.hand(side)?);
    (found != wanted).then(|| ShellFact::OtherHand {
        side,
        found,
        wanted,
        pattern: row.name.to_string(),
    })
}

/// Which way each side turns.
pub(super) fn hands(work: &mut PlaceWork, sheet: &ShellSheet, row: &Shell) {
    for side in SIDES {
        if let Some(other) = other_hand(sheet, row, side) {
            // Told where the pattern was settled, unless that was settled in spite of it.
            if work.contradictions.is_empty() {
                work.contradicts(other, format!("shell.{side}.hand"), Instrument::Eye);
            }
        } else if let Some(hand) = row.hand(side) {
            let evidence = row.hand_fact(side).and_then(|f| f.evidence());
            work.settled(Found::of(ShellFact::Turns { side, hand }).resting_on(evidence));
        }
    }
}

/// The hand that a side is worked with: read, or printed without dispute for its pattern.
fn hand_for(work: &mut PlaceWork, whole: &Whole<'_>, side: Side) -> Option<Hand> {
    let fact = whole.row.and_then(|row| row.hand_fact(side));
    let sure = fact
        .filter(|f| f.dissent().is_empty() && f.grade().is_some_and(|g| g > Grade::Memory))
        .and_then(|f| f.value().copied());
    let hand = side_of(whole.sheet, side).hand.or(sure);
    if hand.is_none() {
        work.ask(format!("shell.{side}.hand"), ShellAsk::Hand);
    }
    hand
}

/// One threaded side.
pub(super) fn side(site: &Site<'_>, whole: &Whole<'_>, side: Side) -> Option<PlaceWork> {
    let here = side_of(whole.sheet, side);
    let size = whole.size?;
    let mut work = begin(side, here);
    let now = whole.sides.get(side).clone();
    work.worked = now.worked;
    work.measured = here.state.is_some() || here.go.is_some() || !here.minor.is_empty();
    let Some(hand) = hand_for(&mut work, whole, side) else {
        return Some(work);
    };
    let both = SIDES.iter().all(|s| whole.sides.get(*s).guides());
    let threads = whole.row.and_then(|row| pattern_threads(row).ok());
    let bench = Bench {
        place: Place::ShellSide(side),
        path: format!("shell.{side}"),
        what: format!("shell, {}", side_words(side)),
        size,
        alike: &whole.alike,
        hand,
        joint: joint(site, whole.sheet, here),
        joint_path: "shell",
        limits: &here.limits,
        now,
        identity: if whole.contradicted {
            Identity::Open
        } else {
            whole.identity.clone()
        },
        outside: extremes(&whole.sheet.outside).first().copied(),
        shell: threads.map(|threads| (threads, side)),
        guided: both.then(|| ShellFact::BothChasers.to_string().into()),
        proof: None,
        replaceable: false,
    };
    thread::work(site, &mut work, &bench);
    if whole.contradicted {
        work.held = true;
    }
    Some(work)
}

/// Material and consent of one side.
pub(super) fn joint<'a>(site: &Site<'a>, sheet: &'a ShellSheet, side: &'a ShellSide) -> Joint<'a> {
    let mut common = sheet.common();
    common.material = side.material.or(common.material);
    site.joint(&common)
}

/// A side with what the sheet says of it: its notes and every limit.
pub(super) fn begin(side: Side, here: &ShellSide) -> PlaceWork {
    let mut work = PlaceWork::new(Place::ShellSide(side));
    work.notes.extend(here.note.clone());
    let notes = here.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    work.hear(&here.limits);
    work
}

/// Whether the sheet says anything of a side besides its face.
pub(super) fn spoken_of(here: &ShellSide) -> bool {
    let face = here.face.clone();
    *here
        != ShellSide {
            face,
            ..ShellSide::default()
        }
}
