//! What limits the width of a shell: its maker, and the window of the crank.

use alloc::string::ToString;
use alloc::vec::Vec;

use super::facts::{ShellAsk, ShellFact};
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell_name::weighed;
use super::shell_width::faces;
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::{Evidence, Figure, Grade};
use crate::judge::{Finding, Instrument, sizes_against};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, mm};
use crate::standard::{Shell, ShellWindow};

/// A limit of the width, with whose it is and where it was read.
pub(super) struct Limit<'a> {
    pub at: Length,
    pub by: alloc::string::String,
    pub grade: Grade,
    pub evidence: Option<&'a Evidence>,
}

/// Limits that a row prints, with whose they are.
pub(super) fn printed(figure: &Figure, owner: &str) -> Heard {
    Heard {
        limits: Limits::of_size(figure),
        lower_owner: owner.into(),
        upper_owner: owner.into(),
    }
}

/// The tightest limits of the width: the maker's that the sheet states, and the window that it names.
pub(super) fn limits<'a>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: Option<&Shell>,
) -> (Option<Limit<'a>>, Option<Limit<'a>>) {
    let heard = Heard::of(&sheet.limits, Limited::Width);
    let mut all: Vec<(Heard, Option<&Evidence>)> = heard.map(|h| (h, None)).into_iter().collect();
    if let Some(window) = window(site, sheet) {
        // Where only the window says which shell it is, that is asked and not held against the readings.
        let answer = work.identification.as_ref();
        let asked = answer.is_some_and(|answer| weighed(sheet, answer, window));
        if let Some(row) = row.filter(|row| !asked && !takes(site, row, window)) {
            let other = ShellFact::OtherWindow {
                window: window.code.to_string(),
                is_for: window.shell.to_string(),
                this: row.code.to_string(),
            };
            work.contradicts(other, "shell.window", Instrument::Sheet);
        } else {
            let heard = printed(&window.window, &window.owner);
            all.push((heard, window.window.evidence()));
        }
    }
    let ends = |lower: bool| {
        all.iter().filter_map(move |(heard, evidence)| {
            let limits = heard.limits;
            let (end, by) = if lower {
                (limits.lower(), &heard.lower_owner)
            } else {
                (limits.upper(), &heard.upper_owner)
            };
            Some(Limit {
                at: end.known()?,
                by: by.clone(),
                grade: limits.grade(),
                evidence: *evidence,
            })
        })
    };
    (
        ends(true).reduce(|a, b| if settled_below(a.at, b.at) { b } else { a }),
        ends(false).reduce(|a, b| if settled_below(b.at, a.at) { b } else { a }),
    )
}

/// The window that the sheet names.
pub(super) fn window<'a>(site: &Site<'a>, sheet: &ShellSheet) -> Option<&'a ShellWindow> {
    site.tables.get::<ShellWindow>(sheet.window.as_deref()?)
}

/// Whether a shell takes the parts, and so the window, of a pattern: the same, or one pitch and hardly another diameter.
pub(super) fn takes(site: &Site<'_>, row: &Shell, window: &ShellWindow) -> bool {
    if row.code == window.shell {
        return true;
    }
    let of = site.tables.get::<Shell>(&window.shell);
    let size = |row: &Shell| row.thread.as_ref().and_then(|t| t.value().copied());
    let alike = size(row).zip(of.and_then(size)).map(|(a, b)| {
        a.pitch().same_as(b.pitch()) && settled_below((a.major() - b.major()).abs(), mm(0.2))
    });
    alike == Some(true)
}

/// Holds the width against its limits; whether it is shown to be over the upper one.
pub(super) fn too_wide(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    now: &[Reading],
    (lower, upper): (Option<&Limit<'_>>, Option<&Limit<'_>>),
) -> bool {
    let mut against = |limit: Option<&Limit<'_>>, lower: bool| -> Option<Finding> {
        let limit = limit.filter(|_| !now.is_empty())?;
        let limits = if lower {
            Limits::at_least(limit.at, limit.grade)
        } else {
            Limits::at_most(limit.at, limit.grade)
        };
        let limits = limits.ok()?;
        let found = sizes_against("width", now, &limits, &limit.by, limit.evidence, site.rule);
        if found.outcome == Some(Outcome::Undecided) {
            let limit = limit.at;
            work.ask("shell.width", ShellAsk::FinerWidth { limit });
        }
        Some(found)
    };
    let out = |found: &Finding| found.outcome == Some(Outcome::NonconformityShown);
    let (narrow, wide) = (against(lower, true), against(upper, false));
    if narrow.as_ref().is_some_and(out) {
        work.cure(ShellFact::TooNarrow);
    }
    let over = wide.as_ref().is_some_and(out);
    if over && faces(sheet).is_empty() {
        work.ask("shell.drive.face.probes", ShellAsk::Heights);
    }
    narrow.into_iter().for_each(|found| work.fact(found));
    // The faces bring back what is too wide.
    wide.into_iter().for_each(|found| work.settled(found));
    over
}
