//! The bottom-bracket shell: two threads and two faces, or two bores; both threads before either face.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::face::{self};
use super::permit::Identity;
use super::sheet::{ShellSheet, ShellSide};
use super::shell_press;
use super::shell_side::{begin, spoken_of};
use super::shell_width::{self};
use super::site::Site;
use super::thread_now::{self, Now, Stated};
use super::work::PlaceWork;
use super::{ranking, shell_face, shell_name, shell_side};
use crate::evidence::Grade;
use crate::judge::Finding;
use crate::standard::{Place, Shell};
use crate::thread::{Side, ThreadSize};

pub(super) const SIDES: [Side; 2] = [Side::Drive, Side::NonDrive];

pub(super) const fn side_of(sheet: &ShellSheet, side: Side) -> &ShellSide {
    match side {
        Side::Drive => &sheet.drive,
        Side::NonDrive => &sheet.non_drive,
    }
}

pub(super) const fn other(side: Side) -> Side {
    match side {
        Side::Drive => Side::NonDrive,
        Side::NonDrive => Side::Drive,
    }
}

pub(super) const fn side_words(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive side",
        Side::NonDrive => "non-drive side",
    }
}

/// Both sides of a shell as they are now.
pub(super) struct Sides {
    drive: Now,
    non_drive: Now,
}

impl Sides {
    fn of(sheet: &ShellSheet) -> Self {
        let now = |side: &ShellSide| {
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
        };
        Self {
            drive: now(&sheet.drive),
            non_drive: now(&sheet.non_drive),
        }
    }

    pub(super) const fn get(&self, side: Side) -> &Now {
        match side {
            Side::Drive => &self.drive,
            Side::NonDrive => &self.non_drive,
        }
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &ShellSheet) -> Vec<PlaceWork> {
    let mut shell = PlaceWork::new(Place::Shell);
    shell.notes.extend(sheet.note.clone());
    shell
        .notes
        .extend(sheet.passes.iter().filter_map(|p| p.note.clone()));
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
    let mut works = Vec::new();
    let threaded = row
        .and_then(|row| row.thread.as_ref())
        .and_then(|t| t.value().copied());
    match (row, settled, threaded) {
        (Some(row), Some(settled), Some(size)) => {
            if let Some(evidence) = row.thread.as_ref().and_then(|t| t.evidence()) {
                shell.settled(
                    Finding::stated("thread", size.to_string()).resting_on(Some(evidence)),
                );
            }
            shell_side::hands(&mut shell, sheet, row);
            let alike = if sheet.believed.is_some() || sheet.confirmed.is_some() {
                Vec::new()
            } else {
                ranking::alike(site.tables, shell.identification.as_ref(), &settled.code)
            };
            let whole = Whole {
                sheet,
                row: Some(row),
                size: Some(size),
                alike,
                identity: settled.identity,
                contradicted: !shell.contradictions.is_empty(),
                sides: &sides,
            };
            works.extend(
                SIDES
                    .map(|side| shell_side::side(site, &whole, side))
                    .into_iter()
                    .flatten(),
            );
            works.extend(shell_face::faces(site, &whole, &widths, &works));
        }
        (Some(row), Some(settled), None) => {
            shell_press::plan(site, &mut shell, sheet, row, &settled);
            works.extend(without_thread(sheet, &shell));
            let whole = Whole {
                sheet,
                row: Some(row),
                size: None,
                alike: Vec::new(),
                identity: settled.identity,
                contradicted: !shell.contradictions.is_empty(),
                sides: &sides,
            };
            works.extend(shell_face::faces(site, &whole, &widths, &works));
        }
        _ => {
            // Not named yet: its sides and faces are told, nothing is planned there.
            let whole = Whole {
                sheet,
                row: None,
                size: None,
                alike: Vec::new(),
                identity: Identity::Open,
                contradicted: true,
                sides: &sides,
            };
            works.extend(unnamed(&whole));
        }
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

/// Sides of a shell that has no thread, where the sheet speaks of them.
fn without_thread(sheet: &ShellSheet, shell: &PlaceWork) -> Vec<PlaceWork> {
    SIDES
        .into_iter()
        .filter(|side| spoken_of(side_of(sheet, *side)))
        .map(|side| {
            let mut work = begin(side, side_of(sheet, side));
            work.leave(String::from("there is no thread in this pattern"));
            work.held = !shell.contradictions.is_empty();
            work
        })
        .collect()
}

/// Sides and faces of a shell that is not named.
fn unnamed(whole: &Whole<'_>) -> Vec<PlaceWork> {
    let mut works = Vec::new();
    for side in SIDES {
        let here = side_of(whole.sheet, side);
        let now = whole.sides.get(side);
        if spoken_of(here) {
            let mut work = begin(side, here);
            work.measured = true;
            work.worked = now.worked;
            if now.lost() {
                work.settled(Finding {
                    outcome: Some(crate::measure::Outcome::NonconformityShown),
                    grade: Some(Grade::CommonPractice),
                    ..Finding::stated(
                        "thread",
                        "worn or torn out; which thread it was is not settled",
                    )
                });
                work.out = true;
            }
            work.hold("the thread, until the shell is named");
            works.push(work);
        }
        if let Some(face) = &here.face {
            let mut work = face::begin(Place::ShellFace(side), face);
            work.measured = true;
            work.hold("the face, until the shell is named");
            works.push(work);
        }
    }
    works
}
