//! The width of a shell: what it is now, whose window it must meet, and what may come off its faces.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::face_now;
use super::facts::CutLimit;
use super::sheet::ShellSheet;
use super::shell::{SIDES, side_of};
use super::shell_window::{Over, holds, limits};
use super::site::{Site, covered};
use super::work::{Answers, PlaceWork};
use crate::face::LimitKind;
use crate::judge::{Finding, SpindleWidth, extremes, spread};
use crate::measure::{Reading, settled_below};
use crate::quantity::{in_mm, mm, settled_mm};
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
    face_now::now(face, coating).off.deepest()
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
        work.ask_plain(
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
        work.ask_plain(
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
