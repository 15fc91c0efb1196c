//! What limits the width of a shell: its maker, and the window of the crank.

use alloc::format;
use alloc::string::String;

use super::sheet::{Heard, Limited, ShellSheet};
use super::shell_name::weighed;
use super::shell_width::faces;
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::Evidence;
use crate::judge::sizes_against;
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{Shell, ShellWindow};

/// A limit of the width, with whose it is and where it was read.
pub(super) struct Limit<'a> {
    pub at: Length,
    pub words: String,
    pub limits: Limits,
    pub evidence: Option<&'a Evidence>,
}

/// Which limit a width is shown to break.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Over {
    Lower,
    Upper,
}

/// The tightest limits of the width: the maker's that the sheet states, and the window that it names.
pub(super) fn limits<'a>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: Option<&Shell>,
) -> (Option<Limit<'a>>, Option<Limit<'a>>) {
    let mut lower: Option<Limit<'a>> = None;
    let mut upper: Option<Limit<'a>> = None;
    let mut offer = |limits: Limits, owner: (&str, &str), evidence: Option<&'a Evidence>| {
        if let Some(at) = limits.lower().known()
            && lower.as_ref().is_none_or(|l| settled_below(l.at, at))
        {
            let words = format!("least width {} ({})", in_mm(at), owner.0);
            lower = Some(Limit {
                at,
                words,
                limits,
                evidence,
            });
        }
        if let Some(at) = limits.upper().known()
            && upper.as_ref().is_none_or(|u| settled_below(at, u.at))
        {
            let words = format!("greatest width {} ({})", in_mm(at), owner.1);
            upper = Some(Limit {
                at,
                words,
                limits,
                evidence,
            });
        }
    };
    if let Some(heard) = Heard::of(&sheet.limits, Limited::Width) {
        offer(heard.limits, (&heard.lower_owner, &heard.upper_owner), None);
    }
    if let Some(window) = window(site, sheet) {
        // Where only the window says which shell it is, that is asked and not held against the readings.
        let asked = work
            .identification
            .as_ref()
            .is_some_and(|answer| weighed(sheet, answer, window));
        match row {
            Some(row) if !takes(site, row, window) && !asked => {
                work.contradicts(
                    format!(
                        "the window {} is for another shell ({}), this one is {}",
                        window.code, window.shell, row.code
                    ),
                    "shell.window",
                    "crank maker's sheet",
                );
            }
            _ => offer(
                Limits::of_size(&window.window),
                (&window.owner, &window.owner),
                window.window.evidence(),
            ),
        }
    }
    (lower, upper)
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
    match (size(row), of.and_then(size)) {
        (Some(a), Some(b)) => {
            a.pitch().same_as(b.pitch()) && settled_below((a.major() - b.major()).abs(), mm(0.2))
        }
        _ => false,
    }
}

/// Holds the width against its limits; tells which one it breaks.
pub(super) fn holds(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    now: &[Reading],
    lower: Option<&Limit<'_>>,
    upper: Option<&Limit<'_>>,
) -> Option<Over> {
    if now.is_empty() {
        return None;
    }
    let mut broken = None;
    for (limit, over, which) in [(lower, Over::Lower, true), (upper, Over::Upper, false)] {
        let Some(limit) = limit else { continue };
        let one_side = if which {
            Limits::at_least(limit.at, limit.limits.grade())
        } else {
            Limits::at_most(limit.at, limit.limits.grade())
        };
        let Ok(one_side) = one_side else { continue };
        let found = sizes_against(
            "width",
            now,
            &one_side,
            &limit.words,
            limit.evidence,
            site.rule,
        );
        match found.outcome {
            Some(Outcome::NonconformityShown)
                if over == Over::Upper && !faces(sheet).is_empty() =>
            {
                broken = Some(over);
                work.settled(found);
            }
            Some(Outcome::NonconformityShown) => {
                broken = Some(over);
                if over == Over::Upper {
                    work.ask_plain(
                        "shell.drive.face.probes",
                        "heights of both faces, and what covers them",
                        "the shell is wider than its unit takes: it would be faced to a width",
                        "dial indicator turned about the pilot",
                    );
                    work.settled(found);
                } else {
                    work.cure(String::from(
                        "narrower than its window: nothing more may come off; spacers or another unit, by the crank maker's sheet",
                    ));
                    work.fact(found);
                }
            }
            Some(Outcome::Undecided) => {
                work.ask_plain(
                    "shell.width",
                    format!("width again, finer: it lies too close to {}", limit.words),
                    "whether the unit fits is not shown either way",
                    "micrometer",
                );
                work.settled(found);
            }
            _ => work.settled(found),
        }
    }
    broken
}
