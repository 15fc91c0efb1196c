//! The width of a shell: what it is now, whose window it must meet, and what may come off its faces.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::face_now;
use super::facts::{Found, ShellAsk, ShellFact};
use super::round_place::cap;
use super::sheet::ShellSheet;
use super::shell::{SIDES, side_of};
use super::shell_window::{Limit, limits, too_wide};
use super::site::{Site, covered};
use super::work::{Answers, PlaceWork};
use crate::face::{CutLimit, LimitKind};
use crate::judge::{SpindleWidth, extremes};
use crate::measure::{Reading, settled_below};
use crate::quantity::mm;
use crate::standard::Shell;
use crate::thread::Side;

/// The width of a shell as far as its faces are concerned.
#[derive(Debug, Clone, Default)]
pub(super) struct Widths {
    /// What each side may lose in all, before any work.
    first: Vec<CutLimit>,
    /// What may still come off, by a width read after the work.
    now: Vec<CutLimit>,
    /// What must come off a side so that the width comes under its upper limit.
    excess: Option<(Reading, String)>,
    /// The width is shown to be over its upper limit, and there are faces that can bring it back.
    pub too_wide: bool,
}

impl Widths {
    pub(super) fn limits(&self, _: Side) -> Vec<CutLimit> {
        self.first.clone()
    }
    pub(super) fn limits_now(&self) -> Vec<CutLimit> {
        self.now.clone()
    }
    pub(super) fn besides(&self, _: Side) -> Option<(Reading, String)> {
        self.excess.clone()
    }
}

/// The faces of the sheet that a cut may be asked of.
pub(super) fn faces(sheet: &ShellSheet) -> Vec<Side> {
    let spoken_of = |side: &Side| {
        let here = side_of(sheet, *side);
        here.face.is_some() || covered(here.coating.or(sheet.coating))
    };
    SIDES.into_iter().filter(spoken_of).collect()
}

/// What came off the faces so far.
fn taken(sheet: &ShellSheet) -> impl Iterator<Item = Reading> {
    SIDES.into_iter().filter_map(|side| {
        let here = side_of(sheet, side);
        let face = here.face.as_ref()?;
        let coating = face.coating.or(here.coating).or(sheet.coating);
        face_now::now(face, coating).deepest()
    })
}

/// The readings of the width after the last pass that read it.
fn read_after(sheet: &ShellSheet) -> Option<&[Reading]> {
    let mut passes = sheet.passes.iter().rev();
    let last = passes.find(|p| !p.width.is_empty());
    last.map(|p| p.width.as_slice())
}

/// The width as it is now: read after the work, or the first width less what came off both faces.
fn now(sheet: &ShellSheet) -> Vec<Reading> {
    if let Some(after) = read_after(sheet) {
        return after.to_vec();
    }
    let less = |width: &Reading| taken(sheet).fold(*width, |w, off| w.less(&off));
    sheet.width.iter().map(less).collect()
}

/// A limit that nobody knows yet.
fn unknown(ask: &ShellAsk) -> Option<CutLimit> {
    let what = ShellFact::WidthNotKnown.to_string();
    CutLimit::unknown(LimitKind::MinimumWidth, what, ask.to_string()).ok()
}

/// What may come off before the width is at its least.
fn least(limit: &Limit<'_>, what: ShellFact, left: Reading) -> Option<CutLimit> {
    let amount = (left, limit.grade);
    cap(LimitKind::MinimumWidth, what, amount, limit.evidence)
}

pub(super) fn of(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: Option<&Shell>,
) -> Widths {
    if let Some(row) = row {
        halves(sheet, row, work);
    }
    let now = now(sheet);
    let cut = now != sheet.width;
    if !now.is_empty() {
        work.settled(Found {
            readings: extremes(&now),
            ..Found::of(ShellFact::Width {
                after_work: cut,
                count: now.len(),
            })
        });
    }
    spindle(site, work, sheet, &now);
    let (lower, upper) = limits(site, work, sheet, row);
    let over = too_wide(site, work, sheet, &now, (lower.as_ref(), upper.as_ref()));
    let mut widths = Widths::default();
    // Both faces share what the width can lose: half each is planned, the rest is measured again.
    let (shared, share) = match faces(sheet).len() {
        0 => return widths,
        1 => (false, 1.0),
        _ => (true, 0.5),
    };
    widths.too_wide = over;
    let (width, lower) = match (extremes(&sheet.width).first().copied(), lower) {
        (Some(width), Some(lower)) => (width, lower),
        (width, _) => {
            let (field, ask) = if width.is_none() {
                ("shell.width", ShellAsk::Width)
            } else {
                ("shell.window", ShellAsk::Crank)
            };
            widths.first.extend(unknown(&ask));
            work.ask(field, ask);
            return widths;
        }
    };
    // What was read last counts: with what came off added, it says how wide the shell was.
    let after = read_after(sheet).and_then(|after| extremes(after).first().copied());
    let width = after.map_or(width, |after| {
        taken(sheet).fold(after, |w, off| w.plus(&off))
    });
    let Ok(bound) = Reading::exact(lower.at) else {
        return widths;
    };
    let (at, by) = (lower.at, lower.by.clone());
    let what = ShellFact::LeastWidth {
        least: at,
        by: by.clone(),
        shared,
    };
    let left = width.less(&bound).scaled(share);
    widths.first.extend(least(&lower, what, left));
    // A side that took more than its half leaves less to the other.
    if let Some(last) = extremes(&now).first().filter(|_| cut) {
        let what = ShellFact::LeastWidthNow { least: at, by };
        widths.now.extend(least(&lower, what, last.less(&bound)));
    }
    if over
        && let Some(upper) = upper
        && let Some(widest) = extremes(&now).last()
        && let Ok(most) = Reading::exact(upper.at)
    {
        let why = ShellFact::TooWide {
            over: widest.value() - upper.at,
            most: upper.at,
            by: upper.by,
            shared,
        };
        widths.excess = Some((widest.less(&most).scaled(share), why.to_string()));
    }
    widths
}

/// The spindle or unit at hand against the width.
fn spindle(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet, now: &[Reading]) {
    if sheet.made_for.is_none() || now.is_empty() {
        return;
    }
    let asked = SpindleWidth {
        width: now.to_vec(),
        made_for: sheet.made_for,
        window: sheet.window.clone(),
        rule: Some(site.rule),
    };
    let answers = Answers {
        reading: "shell.width",
        trial: "shell.passes",
        written: "shell.window",
    };
    if let Ok(said) = asked.answer(site.tables) {
        work.judged(&said, answers);
    }
}

/// How far each face lies from the middle plane, beside what its pattern lists.
fn halves(sheet: &ShellSheet, row: &Shell, work: &mut PlaceWork) {
    let (Some(drive), Some(other)) = (sheet.half_drive, sheet.half_non_drive) else {
        return;
    };
    let lean = drive.less(&other);
    let sure = lean.sure_sign().is_ne();
    let drive_side_out_by = if sure { lean.value() } else { mm(0.0) };
    work.settled(Found {
        readings: Vec::from([drive, other]),
        ..Found::of(ShellFact::Lean { drive_side_out_by })
    });
    for listed in row.half_widths.iter() {
        let sides = [
            (Side::Drive, drive, &listed.drive),
            (Side::NonDrive, other, &listed.non_drive),
        ];
        for (side, read, figure) in sides {
            let read = read.value();
            // Beyond two millimetres it is another width of the pattern that is meant (common practice).
            if let Some(listed) = figure.nominal()
                && settled_below((read - listed).abs(), mm(2.0))
            {
                let half = ShellFact::HalfWidth { side, read, listed };
                work.settled(Found::of(half).resting_on(figure.evidence()));
            }
        }
    }
}
