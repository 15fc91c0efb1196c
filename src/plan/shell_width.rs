//! The width of a shell: what it is now, whose window it must meet, and what may come off its faces.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::face;
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell::{SIDES, side_of, weighed};
use super::site::{Site, covered};
use super::work::{Answers, PlaceWork};
use crate::evidence::Evidence;
use crate::face::{CutLimit, LimitKind};
use crate::judge::{Finding, SpindleWidth, extremes, sizes_against, spread};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::{Place, Shell, ShellWindow};
use crate::thread::Side;

/// A limit of the width, with whose it is and where it was read.
struct Limit<'a> {
    at: Length,
    words: String,
    limits: Limits,
    evidence: Option<&'a Evidence>,
}

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
fn faces(sheet: &ShellSheet) -> Vec<Side> {
    SIDES
        .into_iter()
        .filter(|side| {
            let here = side_of(sheet, *side);
            here.face.is_some() || covered(here.coating.or(sheet.coating))
        })
        .collect()
}

/// What came off one face so far.
fn off(sheet: &ShellSheet, side: Side) -> Option<Reading> {
    let here = side_of(sheet, side);
    let face = here.face.as_ref()?;
    let coating = face.coating.or(here.coating).or(sheet.coating);
    face::now(face, coating).deepest()
}

/// The readings of the width after the last pass that read it.
fn read_after(sheet: &ShellSheet) -> Option<&[Reading]> {
    sheet
        .passes
        .iter()
        .rev()
        .find(|p| !p.width.is_empty())
        .map(|p| p.width.as_slice())
}

/// The width as it is now: read after the work, or the first width less what came off both faces.
pub(super) fn now(sheet: &ShellSheet) -> Vec<Reading> {
    if let Some(after) = read_after(sheet) {
        return after.to_vec();
    }
    let taken: Vec<Reading> = SIDES.into_iter().filter_map(|s| off(sheet, s)).collect();
    sheet
        .width
        .iter()
        .map(|width| taken.iter().fold(*width, |w, off| w.less(off)))
        .collect()
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
    if !now.is_empty() {
        let cut = now != sheet.width;
        work.settled(Finding {
            readings: now.clone(),
            ..Finding::stated(
                if cut { "width after the work" } else { "width" },
                spread(&now),
            )
        });
    }
    spindle(site, work, sheet, &now);
    let (lower, upper) = limits(site, work, sheet, row);
    let held = holds(site, work, sheet, &now, lower.as_ref(), upper.as_ref());
    let faces = faces(sheet);
    let mut widths = Widths {
        too_wide: held == Some(Over::Upper) && !faces.is_empty(),
        ..Widths::default()
    };
    if faces.is_empty() {
        return widths;
    }
    let Some(width) = extremes(&sheet.width).first().copied() else {
        work.ask(
            "shell.width",
            "width over the faces at three places",
            "what comes off a face comes off the width",
            "outside caliper, micrometer",
        );
        widths.first.extend(
            CutLimit::unknown(
                LimitKind::MinimumWidth,
                "width of the shell",
                "measure the width at three places",
            )
            .ok(),
        );
        return widths;
    };
    let Some(lower) = lower else {
        work.ask(
            "shell.window",
            "which crank will be fitted, and which least width does its maker or the frame's allow?",
            "facing makes the shell narrower, and only they say how narrow it may be; a limit on `width` answers it too",
            "crank maker's sheet, frame maker's drawing",
        );
        widths.first.extend(
            CutLimit::unknown(
                LimitKind::MinimumWidth,
                "least width of the shell",
                "ask the crank or frame maker",
            )
            .ok(),
        );
        return widths;
    };
    // What was read last counts: with what came off added, it says how wide the shell was.
    let taken: Vec<Reading> = SIDES.into_iter().filter_map(|s| off(sheet, s)).collect();
    let width = match read_after(sheet).and_then(|after| extremes(after).first().copied()) {
        Some(after) => taken.iter().fold(after, |w, off| w.plus(off)),
        None => width,
    };
    // Both faces share what the width can lose: half each is planned, the rest is measured again.
    let share = if faces.len() > 1 { 0.5 } else { 1.0 };
    let whose = if faces.len() > 1 {
        ", half of it a side"
    } else {
        ""
    };
    let Ok(least) = Reading::exact(lower.at) else {
        return widths;
    };
    widths.first.extend(
        CutLimit::new(
            LimitKind::MinimumWidth,
            format!("{}{whose}", lower.words),
            width.less(&least).scaled(share),
            lower.limits.grade(),
        )
        .ok()
        .map(|limit| limit.citing(lower.evidence)),
    );
    // A side that took more than its half leaves less to the other.
    if let Some(last) = extremes(&now).first().filter(|_| now != sheet.width) {
        widths.now.extend(
            CutLimit::new(
                LimitKind::MinimumWidth,
                format!("{}, by the width that is left", lower.words),
                last.less(&least),
                lower.limits.grade(),
            )
            .ok()
            .map(|limit| limit.citing(lower.evidence)),
        );
    }
    if held == Some(Over::Upper)
        && let Some(upper) = upper
        && let Some(widest) = extremes(&now).last().copied()
        && let Ok(most) = Reading::exact(upper.at)
    {
        let excess = widest.less(&most).scaled(share);
        widths.excess = Some((
            excess,
            format!(
                "the shell is {} wider than {}: it is faced to a width{}",
                in_mm(widest.value() - upper.at),
                upper.words,
                if faces.len() > 1 {
                    ", half of it a side"
                } else {
                    ""
                }
            ),
        ));
    }
    widths
}

/// Which limit a width is shown to break.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Over {
    Lower,
    Upper,
}

/// The tightest limits of the width: the maker's that the sheet states, and the window that it names.
fn limits<'a>(
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
fn holds(
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
                    work.ask(
                        "shell.drive.face.probes",
                        "heights of both faces, and what covers them",
                        "the shell is wider than its unit takes: it would be faced to a width",
                        "dial indicator turned about the pilot",
                    );
                    work.settled(found);
                } else {
                    work.cures.push(String::from(
                        "narrower than its window: nothing more may come off; spacers or another unit, by the crank maker's sheet",
                    ));
                    work.fact(found);
                }
            }
            Some(Outcome::Undecided) => {
                work.ask(
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

/// The spindle or unit at hand against the width.
fn spindle(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet, now: &[Reading]) {
    let Some(made_for) = sheet.made_for else {
        return;
    };
    if now.is_empty() {
        return;
    }
    let asked = SpindleWidth {
        width: now.to_vec(),
        made_for: Some(made_for),
        window: sheet.window.clone(),
        rule: Some(site.rule),
    };
    if let Ok(said) = asked.answer(site.tables) {
        work.judged(
            &said,
            Answers {
                reading: "shell.width",
                trial: "shell.passes",
                written: "shell.window",
            },
        );
    }
}

fn halves(sheet: &ShellSheet, row: &Shell, work: &mut PlaceWork) {
    let (Some(drive), Some(other)) = (sheet.half_drive, sheet.half_non_drive) else {
        return;
    };
    let lean = drive.less(&other);
    let words = match lean.sure_sign() {
        Ordering::Less => format!(
            "{} further out on the non-drive side: a kit for a symmetrical shell of the same width does not fit",
            in_mm(-lean.value())
        ),
        Ordering::Greater => format!("{} further out on the drive side", in_mm(lean.value())),
        Ordering::Equal => String::from("equally far from the middle plane on both sides"),
    };
    work.settled(Finding {
        readings: Vec::from([drive, other]),
        ..Finding::stated("half widths", words)
    });
    for listed in row.half_widths.iter() {
        for (side, reading, figure) in [
            ("drive side", drive, &listed.drive),
            ("non-drive side", other, &listed.non_drive),
        ] {
            // Beyond two millimetres it is another width of the pattern that is meant (common practice).
            if let Some(nominal) = figure.nominal()
                && settled_below((reading.value() - nominal).abs(), mm(2.0))
            {
                let off = reading.value() - nominal;
                work.settled(
                    Finding::stated(
                        format!("half width, {side}"),
                        format!(
                            "{} read, {} by the pattern, {:+.3} mm apart",
                            in_mm(reading.value()),
                            in_mm(nominal),
                            settled_mm(off)
                        ),
                    )
                    .resting_on(figure.evidence()),
                );
            }
        }
    }
}

/// A maker's limit of parallelism that cannot be held against anything yet: it is heard by asking for what it needs.
fn unsurveyed(sheet: &ShellSheet, heard: &Heard, works: &mut [PlaceWork]) {
    let Some(work) = works.iter_mut().find(|w| w.place == Place::Shell) else {
        return;
    };
    for side in [Side::Drive, Side::NonDrive] {
        let face = side_of(sheet, side).face.as_ref();
        if face.is_none_or(|f| f.probes.is_empty()) {
            work.ask(
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
        face::survey(face, face::now(face, coating).probes, "shell").ok()
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
            Some(Outcome::NonconformityShown) if !will_change => work.ask(
                format!("{}.limits", work.place),
                format!("how square must this face be? The two are out of parallel by {}", in_mm(found.run_out.value())),
                "the faces are out of parallel by more than their maker allows; facing both would cure it",
                "frame maker",
            ),
            Some(Outcome::Undecided) if !will_change => work.ask(
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
