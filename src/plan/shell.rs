//! The bottom-bracket shell: two threads and two faces, or two bores; both threads before either face.

use alloc::format;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::facts::{Found, ShellAsk, ShellFact};
use super::permit::Identity;
use super::sheet::{Face, ShellSheet, ShellSide};
use super::site::{Joint, Site};
use super::thread::{self, Bench};
use super::thread_now::{self, Now, Stated};
use super::work::PlaceWork;
use super::{face, face_now, ranking, shell_face, shell_name, shell_press, shell_width};
use crate::evidence::Grade;
use crate::judge::{Instrument, extremes, pattern_threads};
use crate::measure::Outcome;
use crate::standard::{Place, Shell};
use crate::thread::{Hand, Side, ThreadSize};

pub(super) const SIDES: [Side; 2] = [Side::Drive, Side::NonDrive];

pub(super) const fn side_of(sheet: &ShellSheet, side: Side) -> &ShellSide {
    match side {
        Side::Drive => &sheet.drive,
        Side::NonDrive => &sheet.non_drive,
    }
}

/// A face as it is now.
pub(super) fn face_of(sheet: &ShellSheet, side: Side) -> Option<(&Face, face_now::Now<'_>)> {
    let here = side_of(sheet, side);
    let face = here.face.as_ref()?;
    let coating = face.coating.or(here.coating).or(sheet.coating);
    Some((face, face_now::now(face, coating)))
}

/// Both sides of a shell as they are now.
pub(super) struct Sides([Now; 2]);

impl Sides {
    fn of(sheet: &ShellSheet) -> Self {
        Self(SIDES.map(|side| {
            let side = side_of(sheet, side);
            thread_now::now(&Stated {
                state: side.state,
                go: side.go,
                not_go: side.not_go,
                go_after: side.go_after,
                not_go_after: side.not_go_after,
                minor: &side.minor,
                passes: &side.passes,
                coating: side.coating.or(sheet.coating),
            })
        }))
    }

    pub(super) const fn get(&self, side: Side) -> &Now {
        let [drive, non_drive] = &self.0;
        match side {
            Side::Drive => drive,
            Side::NonDrive => non_drive,
        }
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &ShellSheet) -> Vec<PlaceWork> {
    let mut shell = PlaceWork::new(Place::Shell);
    shell.notes.extend(sheet.note.clone());
    let notes = sheet.passes.iter().filter_map(|p| p.note.clone());
    shell.notes.extend(notes);
    shell.worked = !sheet.after.is_empty() || !sheet.passes.is_empty();
    shell.measured = !sheet.width.is_empty() || !sheet.bore.is_empty() || sheet.pitch.is_some();
    shell.hear(&sheet.limits);
    let sides = Sides::of(sheet);
    let settled = shell_name::identify_shell(site, &mut shell, sheet, &sides);
    let row = settled
        .as_ref()
        .and_then(|s| site.tables.get::<Shell>(&s.code));
    let widths = shell_width::of(site, &mut shell, sheet, row);
    shell_name::believed_parts(site, &mut shell, sheet);
    let thread = row.and_then(|row| row.thread.as_ref());
    let size = thread.and_then(|t| t.value().copied());
    let mut alike = Vec::new();
    match (row, &settled, size) {
        (Some(row), Some(settled), Some(size)) => {
            let thread_as = size.to_string();
            let fact = ShellFact::Thread { thread: thread_as };
            let evidence = thread.and_then(|t| t.evidence());
            shell.settled(Found::of(fact).resting_on(evidence));
            hands(&mut shell, sheet, row);
            if sheet.believed.is_none() && sheet.confirmed.is_none() {
                let answer = shell.identification.as_ref();
                alike = ranking::alike(site.tables, answer, &settled.code);
            }
        }
        (Some(row), Some(settled), None) => {
            shell_press::plan(site, &mut shell, sheet, row, settled);
        }
        _ => {}
    }
    let whole = Whole {
        sheet,
        row,
        size,
        alike,
        identity: settled.map_or(Identity::Open, |s| s.identity),
        contradicted: row.is_none() || !shell.contradictions.is_empty(),
        sides: &sides,
    };
    let mut works = Vec::new();
    for side in SIDES {
        works.extend(match size {
            Some(_) => threaded(site, &whole, side),
            None => idle(&whole, side),
        });
    }
    if row.is_some() {
        works.extend(shell_face::faces(site, &whole, &widths, &works));
    } else {
        works.extend(SIDES.into_iter().filter_map(|side| unnamed(sheet, side)));
    }
    if widths.too_wide {
        shell_face::faced_to_width(&mut shell, &works);
    }
    works.insert(0, shell);
    works
}

/// The shell as far as it is known.
pub(super) struct Whole<'a> {
    pub sheet: &'a ShellSheet,
    pub row: Option<&'a Shell>,
    pub size: Option<ThreadSize>,
    /// Threads that nothing on the sheet tells apart from it.
    pub alike: Vec<ThreadSize>,
    pub identity: Identity,
    pub contradicted: bool,
    pub sides: &'a Sides,
}

/// A side of a shell that has no thread, or is not named, where the sheet speaks of it.
fn idle(whole: &Whole<'_>, side: Side) -> Option<PlaceWork> {
    let here = side_of(whole.sheet, side);
    if !spoken_of(here) {
        return None;
    }
    let mut work = begin(side, here);
    if whole.row.is_some() {
        work.leave(ShellFact::NoThread);
        work.held = whole.contradicted;
        return Some(work);
    }
    let now = whole.sides.get(side);
    work.measured = true;
    work.worked = now.worked;
    if now.lost() {
        let lost = ShellFact::ThreadLost;
        work.fact(Found::practice(Outcome::NonconformityShown, lost));
    }
    work.hold(ShellFact::UntilNamed);
    Some(work)
}

/// A face of a shell that is not named.
fn unnamed(sheet: &ShellSheet, side: Side) -> Option<PlaceWork> {
    let face = side_of(sheet, side).face.as_ref()?;
    let mut work = face::begin(Place::ShellFace(side), face);
    work.measured = true;
    work.hold(ShellFact::UntilNamed);
    Some(work)
}

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
fn hands(work: &mut PlaceWork, sheet: &ShellSheet, row: &Shell) {
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
fn threaded(site: &Site<'_>, whole: &Whole<'_>, side: Side) -> Option<PlaceWork> {
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
        what: format!("shell, {}", side.words()),
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
fn begin(side: Side, here: &ShellSide) -> PlaceWork {
    let mut work = PlaceWork::new(Place::ShellSide(side));
    work.notes.extend(here.note.clone());
    let notes = here.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    work.hear(&here.limits);
    work
}

/// Whether the sheet says anything of a side besides its face.
fn spoken_of(here: &ShellSide) -> bool {
    let mut bare = here.clone();
    bare.face = None;
    bare != ShellSide::default()
}
