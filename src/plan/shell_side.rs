//! One threaded side of a shell, and its hand.

use alloc::format;

use super::permit::Identity;
use super::sheet::{ShellSheet, ShellSide};
use super::shell::{SIDES, Whole, side_of, side_words};
use super::site::{Joint, Site};
use super::thread::{self, Bench};
use super::work::PlaceWork;
use crate::evidence::Grade;
use crate::judge::{Finding, extremes, pattern_threads};
use crate::standard::{Place, Shell};
use crate::thread::{Hand, Side};

/// Which way each side turns, and what is not known of it.
pub(super) fn hands(work: &mut PlaceWork, sheet: &ShellSheet, row: &Shell) {
    for side in SIDES {
        let here = side_of(sheet, side);
        let fact = row.hand_fact(side);
        match (here.hand, row.hand(side)) {
            (Some(found), Some(wanted)) if found != wanted => {
                // Told where the pattern was settled, unless that was settled in spite of it.
                if work.contradictions.is_empty() {
                    work.contradicts(
                        format!(
                            "{}: {found}-hand found, {wanted}-hand by the pattern: in back to front, retapped, or another pattern",
                            side_words(side)
                        ),
                        format!("shell.{side}.hand"),
                        "eye, light: which way does the thread rise?",
                    );
                }
            }
            (_, Some(wanted)) => {
                let words = format!(
                    "{wanted}-hand: tightens {}, loosens {}, seen from that side",
                    wanted.tighten(),
                    wanted.loosen()
                );
                work.settled(
                    Finding::stated(format!("hand, {}", side_words(side)), words)
                        .resting_on(fact.and_then(|f| f.evidence())),
                );
            }
            (_, None) => {}
        }
    }
}

/// The hand that a side is worked with: read, or printed without dispute for its pattern.
fn hand_for(work: &mut PlaceWork, whole: &Whole<'_>, side: Side) -> Option<Hand> {
    if let Some(found) = side_of(whole.sheet, side).hand {
        return Some(found);
    }
    let fact = whole.row.and_then(|row| row.hand_fact(side));
    let printed = fact
        .filter(|f| f.dissent().is_empty() && f.grade().is_some_and(|g| g > Grade::Memory))
        .and_then(|f| f.value().copied());
    if printed.is_none() {
        work.ask_plain(
            format!("shell.{side}.hand"),
            "which hand is the thread? Look at its slope",
            match fact {
                Some(f) if !f.dissent().is_empty() => {
                    "sources disagree on the hand of this pattern"
                }
                Some(f) if f.value().is_some() => "the hand of this side is remembered, not read",
                _ => "no source states the hand of this pattern",
            },
            "eye, light",
        );
    }
    printed
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
    let both = [Side::Drive, Side::NonDrive]
        .iter()
        .all(|s| whole.sides.get(*s).guides());
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
        shell: whole
            .row
            .and_then(|row| pattern_threads(row).ok())
            .map(|threads| (threads, side)),
        both_guide: both,
        part: None,
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
    work.notes
        .extend(here.passes.iter().filter_map(|p| p.note.clone()));
    work.hear(&here.limits);
    work
}

/// Whether the sheet says anything of a side besides its face.
pub(super) fn spoken_of(here: &ShellSide) -> bool {
    *here
        != ShellSide {
            face: here.face.clone(),
            ..ShellSide::default()
        }
}
