//! The width of a shell: half widths, spindle, believed parts, its window and what may come off.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::draft::Draft;
use super::plan::InterfaceReport;
use super::sheet::ShellSheet;
use crate::evidence::Grade;
use crate::face::{CutLimit, LimitKind};
use crate::judge::{Finding, extremes, sizes_against};
use crate::measure::{Limits, Reading, settled_below};
use crate::quantity::{in_mm, mm, settled_mm};
use crate::standard::{Shell, ShellWindow};
use crate::thread::PitchDrift;

pub(super) fn halves(sheet: &ShellSheet, shell: &Shell, report: &mut InterfaceReport) {
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
    report.findings.push(Finding {
        readings: Vec::from([drive, other]),
        ..Finding::stated("half widths", words)
    });
    for row in shell.half_widths.iter() {
        for (side, reading, figure) in [
            ("drive side", drive, &row.drive),
            ("non-drive side", other, &row.non_drive),
        ] {
            if let Some(nominal) = figure.nominal()
                && settled_below((reading.value() - nominal).abs(), mm(2.0))
            {
                let off = reading.value() - nominal;
                report.findings.push(
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

pub(super) fn spindle(sheet: &ShellSheet, report: &mut InterfaceReport) {
    let (Some(made_for), Some(width)) = (sheet.made_for, sheet.width.first()) else {
        return;
    };
    let short = width.value() - made_for;
    let words = if settled_below(mm(0.5), short) {
        format!(
            "made for a shell of {}: {} short, the cup would end up inside the face. Use one made for {:.0} mm",
            in_mm(made_for),
            in_mm(short),
            settled_mm(width.value())
        )
    } else if settled_below(short, mm(-0.5)) {
        format!(
            "made for a shell of {}: {} too long, spacers or another one",
            in_mm(made_for),
            in_mm(-short)
        )
    } else {
        format!(
            "made for a shell of {}, this one reads {}",
            in_mm(made_for),
            in_mm(width.value())
        )
    };
    report
        .findings
        .push(Finding::stated("spindle or kit at hand", words));
}

/// Whether parts of the pattern that was believed would go into the thread whose pitch was read.
pub(super) fn believed_parts(draft: &Draft<'_>, sheet: &ShellSheet, report: &mut InterfaceReport) {
    let believed = sheet
        .common
        .believed
        .as_deref()
        .and_then(|name| draft.tables.find::<Shell>(name).ok());
    let (Some(shell), Some(pitch)) = (believed, sheet.pitch) else {
        return;
    };
    let Some(size) = shell.thread.as_ref().and_then(|t| t.value()) else {
        return;
    };
    if pitch.same_as(size.pitch()) {
        return;
    }
    let drift = PitchDrift::between(size.pitch(), pitch);
    let half = drift.turns_to_half_pitch().unwrap_or_default();
    report.findings.push(Finding::stated(
        format!("parts for {}", shell.code),
        format!(
            "do not go in: {} is not {pitch}, {} a turn apart, half a pitch after {half:.0} turns; they start and then bind",
            size.pitch(),
            in_mm(drift.per_turn)
        ),
    ));
}

/// The crank maker's window, where the sheet names one; others are shown only as what they are.
pub(super) fn width_window(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
    shell: &Shell,
    report: &mut InterfaceReport,
) {
    if sheet.width.is_empty() {
        return;
    }
    for limit in sheet.common.limits.iter().filter(|l| l.what == "width") {
        report.findings.push(sizes_against(
            "width",
            &sheet.width,
            &limit.limits,
            &limit.owner,
            None,
            draft.rule,
        ));
    }
    if let Some(window) = sheet
        .window
        .as_deref()
        .and_then(|code| draft.tables.find::<ShellWindow>(code).ok())
    {
        if window.shell != shell.code {
            report.findings.push(Finding::stated(
                "width window",
                format!(
                    "the window {} is for another shell ({})",
                    window.code, window.shell
                ),
            ));
            return;
        }
        let limits = Limits::of_size(&window.window);
        report.findings.push(sizes_against(
            "width",
            &sheet.width,
            &limits,
            &window.owner,
            window.window.evidence(),
            draft.rule,
        ));
    }
}

/// What limits a cut on a face of this shell.
pub(super) fn cut_limits(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
) -> (Vec<CutLimit>, Vec<crate::evidence::Citation>) {
    let Some(width) = extremes(&sheet.width).first().copied() else {
        let unknown = CutLimit::unknown(
            LimitKind::MinimumWidth,
            "width of the shell",
            "measure the width at three places",
        )
        .ok();
        return (unknown.into_iter().collect(), Vec::new());
    };
    let maker = sheet
        .common
        .limits
        .iter()
        .find(|l| l.what == "width")
        .and_then(|l| {
            Some((
                l.limits.lower().known()?,
                l.owner.clone(),
                Grade::Shop,
                Vec::new(),
            ))
        });
    let window = sheet
        .window
        .as_deref()
        .and_then(|code| draft.tables.find::<ShellWindow>(code).ok())
        .and_then(|w| {
            let sources = w
                .window
                .evidence()
                .map(|e| e.sources().to_vec())
                .unwrap_or_default();
            Some((
                w.window.lower()?,
                String::from(w.owner.as_ref()),
                w.window.grade()?,
                sources,
            ))
        });
    let Some((least, owner, grade, sources)) = maker.or(window) else {
        let unknown = CutLimit::unknown(
            LimitKind::MinimumWidth,
            "least width of the shell",
            "ask the crank or frame maker for the width window, and name it in the sheet (`window`, or a limit on `width`)",
        )
        .ok();
        return (unknown.into_iter().collect(), Vec::new());
    };
    // Both faces share what the width can lose; half each is planned, the rest is measured again.
    let spare = width
        .less(&Reading::exact(least).unwrap_or(width))
        .scaled(0.5);
    let what = format!("least width {} ({owner}), half of it a side", in_mm(least));
    draft.weak_figure(what.clone(), grade);
    (
        CutLimit::new(LimitKind::MinimumWidth, what, spare, grade)
            .ok()
            .into_iter()
            .collect(),
        sources,
    )
}
