//! The two faces of a shell together: how wide it is, whose window that must meet, what may come off, how parallel they are.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::facts::{CutLimit, Fact, Found, ShellAsk, ShellFact};
use super::round_place::{cap, read};
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell::{SIDES, face_of, side_of};
use super::shell_name::weighed;
use super::site::{Site, covered};
use super::work::{Answers, PlaceWork};
use crate::Error;
use crate::evidence::{Evidence, Figure, Grade};
use crate::face::LimitKind;
use crate::judge::{Instrument, SpindleWidth, extremes, sizes_against};
use crate::measure::{Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Place, Shell, ShellWindow};
use crate::thread::Side;

/// The width of a shell as far as its faces are concerned.
#[derive(Debug, Clone, Default)]
pub(super) struct Widths {
    /// What each side may lose in all, before any work.
    pub first: Vec<CutLimit>,
    /// What may still come off, by a width read after the work.
    pub now: Vec<CutLimit>,
    /// What must come off a side so that the width comes under its upper limit.
    pub excess: Option<(Reading, Fact)>,
    /// The width is shown to be over its upper limit, and there are faces that can bring it back.
    pub too_wide: bool,
}

/// Limits with whose they are and where they were read.
type Offer<'a> = (Heard, Option<&'a Evidence>);

/// The tightest limit of one side.
struct Limit<'a> {
    at: Reading,
    by: String,
    grade: Grade,
    evidence: Option<&'a Evidence>,
}

impl<'a> Limit<'a> {
    /// The tightest: the greatest lower one, or the smallest upper one.
    fn tightest(all: &[Offer<'a>], lower: bool) -> Option<Self> {
        let ends = all.iter().filter_map(|(heard, evidence)| {
            let (end, by) = if lower {
                (heard.limits.lower(), &heard.lower_owner)
            } else {
                (heard.limits.upper(), &heard.upper_owner)
            };
            Some(Self {
                at: Reading::exact(end.known()?).ok()?,
                by: by.clone(),
                grade: heard.limits.grade(),
                evidence: *evidence,
            })
        });
        ends.reduce(|a, b| {
            let order = settled_cmp(a.at.value(), b.at.value());
            let keep = if lower { order.is_ge() } else { order.is_le() };
            if keep { a } else { b }
        })
    }

    /// What may come off before the width is at its least.
    fn leaves(&self, what: ShellFact, left: Reading) -> Option<CutLimit> {
        let amount = (left, self.grade);
        cap(LimitKind::MinimumWidth, what, amount, self.evidence)
    }
}

/// Limits that a row prints, with whose they are.
pub(super) fn printed(figure: &Figure, owner: &str) -> Heard {
    Heard {
        on: Limited::Width,
        limits: Limits::of_size(figure),
        lower_owner: owner.into(),
        upper_owner: owner.into(),
    }
}

/// The window that the sheet names.
pub(super) fn window<'a>(site: &Site<'a>, sheet: &ShellSheet) -> Option<&'a ShellWindow> {
    site.tables.get::<ShellWindow>(sheet.window.as_deref()?)
}

/// Whether a shell takes the parts, and so the window, of a pattern: the same, or one pitch and hardly another diameter.
pub(super) fn takes(site: &Site<'_>, row: &Shell, window: &ShellWindow) -> bool {
    let of = site.tables.get::<Shell>(&window.shell);
    let size = |row: &Shell| row.thread.as_ref().and_then(|t| t.value().copied());
    row.code == window.shell
        || size(row).zip(of.and_then(size)).is_some_and(|(a, b)| {
            a.pitch().same_as(b.pitch()) && settled_below((a.major() - b.major()).abs(), mm(0.2))
        })
}

/// What the window allows that the sheet names, unless it is for another shell.
fn of_window<'a>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: Option<&Shell>,
) -> Option<Offer<'a>> {
    let window = window(site, sheet)?;
    // Where only the window says which shell it is, that is asked and not held against the readings.
    let answer = work.identification.as_ref();
    let asked = answer.is_some_and(|answer| weighed(sheet, answer, window));
    let Some(row) = row.filter(|row| !asked && !takes(site, row, window)) else {
        let heard = printed(&window.window, &window.owner);
        return Some((heard, window.window.evidence()));
    };
    let (window, of) = (window.code.to_string(), window.shell.to_string());
    let this = row.code.to_string();
    let other = ShellFact::OtherWindow { window, of, this };
    work.contradicts(other, "shell.window", Instrument::Sheet);
    None
}

/// The faces of the sheet that a cut may be asked of.
fn faces(sheet: &ShellSheet) -> usize {
    let spoken_of = |side: &Side| {
        let here = side_of(sheet, *side);
        here.face.is_some() || covered(here.coating.or(sheet.coating))
    };
    SIDES.into_iter().filter(spoken_of).count()
}

/// What came off the faces so far.
fn taken(sheet: &ShellSheet) -> impl Iterator<Item = Reading> {
    let off = |side| face_of(sheet, side)?.1.off.deepest();
    SIDES.into_iter().filter_map(off)
}

/// The readings of the width after the last pass that read it.
fn read_after(sheet: &ShellSheet) -> Option<&[Reading]> {
    let mut passes = sheet.passes.iter().rev();
    let last = passes.find(|p| !p.width.is_empty());
    last.map(|p| p.width.as_slice())
}

/// The width as it is now: read after the work, or the first width less what came off both faces.
fn now(sheet: &ShellSheet) -> Vec<Reading> {
    let less = |width: &Reading| taken(sheet).fold(*width, |w, off| w.less(&off));
    let reckoned = || sheet.width.iter().map(less).collect();
    read_after(sheet).map_or_else(reckoned, <[Reading]>::to_vec)
}

pub(super) fn of(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: Option<&Shell>,
) -> Widths {
    halves(sheet, row, work);
    let now = now(sheet);
    let after_work = now != sheet.width;
    if !now.is_empty() {
        let count = now.len();
        let width = ShellFact::Width { after_work, count };
        work.settled(read(width, &now));
        spindle(site, work, sheet, &now);
    }
    let heard = Heard::of(&sheet.limits, Limited::Width);
    let mut all: Vec<Offer<'_>> = heard.map(|h| (h, None)).into_iter().collect();
    all.extend(of_window(site, work, sheet, row));
    let (lower, upper) = (Limit::tightest(&all, true), Limit::tightest(&all, false));
    let mut breaks = |limit: &Option<Limit<'_>>, of: fn(Length, Grade) -> Result<Limits, Error>| {
        let limit = limit.as_ref().filter(|_| !now.is_empty())?;
        let limits = of(limit.at.value(), limit.grade).ok()?;
        let found = sizes_against("width", &now, &limits, &limit.by, limit.evidence, site.rule);
        let outcome = found.outcome;
        if outcome == Some(Outcome::Undecided) {
            let limit = limit.at.value();
            work.ask("shell.width", ShellAsk::FinerWidth { limit });
        }
        work.settled(found);
        outcome.filter(|o| *o == Outcome::NonconformityShown)
    };
    let too_narrow = breaks(&lower, Limits::at_least).is_some();
    let too_wide = breaks(&upper, Limits::at_most).is_some();
    if too_narrow {
        work.out = true;
        work.cure(ShellFact::TooNarrow);
    }
    let mut widths = Widths::default();
    // Both faces share what the width can lose: half each is planned, the rest is measured again.
    let (shared, share) = match faces(sheet) {
        0 if too_wide => {
            work.ask("shell.drive.face.probes", ShellAsk::Heights);
            return widths;
        }
        0 => return widths,
        1 => (false, 1.0),
        _ => (true, 0.5),
    };
    widths.too_wide = too_wide;
    let narrowest = |readings: &[Reading]| extremes(readings).first().copied();
    let (Some(first), Some(lower)) = (narrowest(&sheet.width), lower) else {
        let (field, ask) = if sheet.width.is_empty() {
            ("shell.width", ShellAsk::Width)
        } else {
            ("shell.window", ShellAsk::Crank)
        };
        let unknown = CutLimit::unknown(
            LimitKind::MinimumWidth,
            ShellFact::WidthNotKnown,
            ask.clone(),
        );
        widths.first.extend(unknown);
        work.ask(field, ask);
        return widths;
    };
    let (least, by) = (lower.at.value(), lower.by.clone());
    // A side that took more than its half leaves less to the other.
    if let Some(last) = narrowest(&now).filter(|_| after_work) {
        let by = by.clone();
        let what = ShellFact::LeastWidthNow { least, by };
        widths.now.extend(lower.leaves(what, last.less(&lower.at)));
    }
    // What was read last counts: with what came off added, it says how wide the shell was.
    let after = read_after(sheet).and_then(narrowest);
    let before = |after: Reading| taken(sheet).fold(after, |w, off| w.plus(&off));
    let left = after.map_or(first, before).less(&lower.at).scaled(share);
    let what = ShellFact::LeastWidth { least, by, shared };
    widths.first.extend(lower.leaves(what, left));
    if let Some(upper) = upper.filter(|_| too_wide)
        && let Some(widest) = extremes(&now).last()
    {
        let (excess, most, by) = (widest.less(&upper.at), upper.at.value(), upper.by);
        let over = excess.value();
        let why = ShellFact::TooWide { over, most, by };
        widths.excess = Some((excess.scaled(share), why.into()));
    }
    widths
}

/// The spindle or unit at hand against the width.
fn spindle(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet, now: &[Reading]) {
    if sheet.made_for.is_none() {
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
fn halves(sheet: &ShellSheet, row: Option<&Shell>, work: &mut PlaceWork) {
    let (Some(drive), Some(other), Some(row)) = (sheet.half_drive, sheet.half_non_drive, row)
    else {
        return;
    };
    let lean = drive.less(&other);
    let sure = lean.sure_sign().is_ne();
    let drive_side_out_by = if sure { lean.value() } else { mm(0.0) };
    let lean = ShellFact::Lean { drive_side_out_by };
    work.settled(read(lean, &[drive, other]));
    for listed in row.half_widths.iter() {
        let sides = [
            (Side::Drive, drive, &listed.drive),
            (Side::NonDrive, other, &listed.non_drive),
        ];
        for (side, half, figure) in sides {
            let read = half.value();
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
        super::face_now::survey(face, now.probes, "shell").ok()
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
        let mut found = held.clone();
        found.outcome = held.outcome.filter(|_| decides);
        work.settled(found);
    }
}
