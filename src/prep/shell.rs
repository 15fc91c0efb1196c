//! The bottom-bracket shell: both threads before either face; a press shell is measured, seldom cut.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::{self, Facing};
use super::plan::{Interface, InterfaceReport, Operation};
use super::press;
use super::sheet::{Coating, GaugeResult, JointMaterial, ShellSheet, ShellSide, ThreadState};
use super::shell_press;
use super::thread_work::{self, OnBench};
use crate::evidence::Grade;
use crate::face::{CutLimit, LimitKind};
use crate::judge::{Finding, sizes_against, spread};
use crate::measure::{Limits, Reading, settled_below};
use crate::quantity::{in_mm, mm, settled_mm};
use crate::standard::{LocatedBy, Shell, ShellWindow};
use crate::thread::{PitchDrift, Side};

const HERE: Interface = Interface::Shell;

pub(super) fn plan(draft: &mut Draft<'_>, measured: &ShellSheet) {
    let now = after_work(measured);
    let sheet = now.as_ref().unwrap_or(measured);
    let mut report = InterfaceReport {
        interface: HERE,
        title: String::from("bottom-bracket shell"),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    if !measured.after.is_empty() {
        press::came_off(&measured.bore, &measured.after, &mut report);
    }
    let settled = super::identity::shell(draft, sheet, &mut report);
    if !sheet.width.is_empty() {
        report.findings.push(Finding {
            readings: sheet.width.clone(),
            ..Finding::stated("width", spread(&sheet.width))
        });
    }
    spindle(sheet, &mut report);
    believed_parts(draft, sheet, &mut report);
    if let Some((shell, doubt)) =
        settled.and_then(|s| Some((draft.tables.find::<Shell>(&s.code).ok()?, s.doubt)))
    {
        halves(sheet, shell, &mut report);
        width_window(draft, sheet, shell, &mut report);
        if shell.thread.as_ref().is_some_and(|t| t.value().is_some()) {
            threaded(draft, sheet, shell, &mut report);
        } else {
            shell_press::pressed(draft, sheet, (shell, doubt), &mut report);
            faces(draft, sheet, shell, &mut report);
        }
    }
    draft.report(report);
}

/// The shell as it is after the work: later readings stand for earlier ones, on metal.
fn after_work(shell: &ShellSheet) -> Option<ShellSheet> {
    let tried = |side: &ShellSide| {
        side.go_after != GaugeResult::Untried || side.not_go_after != GaugeResult::Untried
    };
    if shell.after.is_empty() && !tried(&shell.drive) && !tried(&shell.non_drive) {
        return None;
    }
    let mut now = shell.clone();
    now.common.coating = Coating::Bare;
    if !shell.after.is_empty() {
        now.bore.clone_from(&shell.after);
    }
    for side in [&mut now.drive, &mut now.non_drive] {
        if side.go_after != GaugeResult::Untried || side.not_go_after != GaugeResult::Untried {
            side.go = side.go_after;
            side.not_go = side.not_go_after;
            side.state = state_after(side.go, side.state);
        }
    }
    Some(now)
}

/// A thread that takes its gauge by hand is sound, whatever it was before.
pub(super) fn state_after(go: GaugeResult, before: ThreadState) -> ThreadState {
    match (go, before) {
        (
            GaugeResult::Passed,
            ThreadState::Fouled | ThreadState::Rough | ThreadState::Uncut | ThreadState::Unstated,
        ) => ThreadState::Sound,
        (_, other) => other,
    }
}

fn halves(sheet: &ShellSheet, shell: &Shell, report: &mut InterfaceReport) {
    let (Some(drive), Some(other)) = (sheet.half_drive, sheet.half_non_drive) else {
        return;
    };
    let lean = drive.less(&other);
    let words = if lean.value() < -lean.expanded_uncertainty() {
        format!(
            "{} further out on the non-drive side: a kit for a symmetrical shell of the same width does not fit",
            in_mm(-lean.value())
        )
    } else if lean.value() > lean.expanded_uncertainty() {
        format!("{} further out on the drive side", in_mm(lean.value()))
    } else {
        String::from("equally far from the middle plane on both sides")
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
                && (reading.value() - nominal).abs() < mm(2.0)
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

fn spindle(sheet: &ShellSheet, report: &mut InterfaceReport) {
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
fn believed_parts(draft: &Draft<'_>, sheet: &ShellSheet, report: &mut InterfaceReport) {
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
fn width_window(
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
fn cut_limits(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
) -> (Vec<CutLimit>, Vec<crate::evidence::Citation>) {
    let Some(width) = sheet
        .width
        .iter()
        .copied()
        .reduce(|a, b| if b.value() < a.value() { b } else { a })
    else {
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

fn threaded(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
    shell: &Shell,
    report: &mut InterfaceReport,
) {
    let Some(size) = shell.thread.as_ref().and_then(|t| t.value().copied()) else {
        return;
    };
    if let Some(evidence) = shell.thread.as_ref().and_then(|t| t.evidence()) {
        report
            .findings
            .push(Finding::stated("thread", format!("{size}")).resting_on(Some(evidence)));
    }
    let mut swapped = false;
    for side in [Side::Drive, Side::NonDrive] {
        let here = side_of(sheet, side);
        match (here.hand, shell.hand(side)) {
            (Some(found), Some(wanted)) if found != wanted => {
                swapped = true;
                report.findings.push(
                    Finding::stated(
                        format!("hand, {}", side_words(side)),
                        format!("{found}-hand found, {wanted}-hand by the pattern: the shell is in back to front, retapped, or another pattern"),
                    )
                    .resting_on(shell.hand_fact(side).and_then(|f| f.evidence())),
                );
            }
            (_, Some(wanted)) => {
                let disputed = shell
                    .hand_fact(side)
                    .is_some_and(|f| !f.dissent().is_empty());
                let words = format!(
                    "{wanted}-hand: tightens {}, loosens {}, seen from that side{}",
                    wanted.tighten(),
                    wanted.loosen(),
                    if disputed {
                        "; sources disagree, so look at the thread before turning"
                    } else {
                        ""
                    }
                );
                report.findings.push(
                    Finding::stated(format!("hand, {}", side_words(side)), words)
                        .resting_on(shell.hand_fact(side).and_then(|f| f.evidence())),
                );
                if disputed && here.hand.is_none() {
                    draft.ask(
                        Interface::ShellSide(side),
                        format!(
                            "{}: which hand is the thread? Look at its slope",
                            side_words(side)
                        ),
                        "sources disagree on the hand of this pattern",
                        "eye, light",
                    );
                }
            }
            (_, None) => {
                draft.ask(
                    Interface::ShellSide(side),
                    format!(
                        "{}: which hand is the thread? Look at its slope",
                        side_words(side)
                    ),
                    "no source states the hand of this pattern",
                    "eye, light",
                );
            }
        }
    }
    if swapped {
        draft.step(DraftStep::new(
            HERE,
            Stage::Thread,
            Operation::Refer,
            "Do not chase: the hands are not those of the pattern",
            "a chaser of the wrong hand destroys the thread; the frame maker decides",
        ));
        return;
    }
    for side in [Side::Drive, Side::NonDrive] {
        let here = side_of(sheet, side);
        let Some(hand) = here.hand.or_else(|| shell.hand(side)) else {
            continue;
        };
        let bench = OnBench {
            interface: Interface::ShellSide(side),
            end: crate::standard::End::Both,
            name: format!("shell, {}", side_words(side)),
            size,
            hand,
            material: sheet.common.material,
            coating: sheet.common.coating,
            state: here.state,
            go: here.go,
            not_go: here.not_go,
            minor: &here.minor,
            pilot: String::from(
                "the chaser of the other side: both are started by hand and guide each other",
            ),
            proof: String::from("a cup screws in by hand to its shoulder and does not rock"),
            waits_for: Vec::new(),
        };
        thread_work::work(draft, bench, report);
    }
    faces(draft, sheet, shell, report);
}

fn faces(draft: &mut Draft<'_>, sheet: &ShellSheet, shell: &Shell, report: &mut InterfaceReport) {
    let threaded = shell.thread.is_some();
    if sheet.common.material == JointMaterial::Carbon {
        if sheet.drive.face.is_some() || sheet.non_drive.face.is_some() {
            draft.caution(Caution::Carbon);
            report.leave.push(String::from(
                "the faces: carbon is not faced; take paint off by hand and ask the frame maker",
            ));
        }
        return;
    }
    match shell.located_by.value() {
        Some(LocatedBy::Groove) => {
            report.leave.push(String::from("the faces: a ring in a groove locates the bearing, so facing moves nothing but the shield gap"));
            return;
        }
        Some(LocatedBy::Seat) => {
            report.leave.push(String::from(
                "the faces: a seat inside the bore locates the bearing, so facing moves nothing",
            ));
            return;
        }
        _ => {}
    }
    let (limits, sources) = cut_limits(draft, sheet);
    for side in [Side::Drive, Side::NonDrive] {
        let Some(face) = &side_of(sheet, side).face else {
            continue;
        };
        let moves = match side {
            Side::Drive => "the chainline moves inboard by what comes off",
            Side::NonDrive => "its bearing moves inboard by what comes off; the chainline stays",
        };
        let facing = Facing {
            interface: Interface::ShellSide(side),
            face,
            cutter: String::from("shell facing cutter, its blades wider than the ring"),
            pilot: if threaded {
                format!(
                    "the chased thread, {}, held by both sides",
                    side_words(side)
                )
            } else {
                String::from("the bore, by a close bush in both sides")
            },
            square: None,
            limits: limits.clone(),
            moves: Vec::from([
                (HERE, moves, true),
                (
                    HERE,
                    "the shell is narrower: width again, and with it the spacers of the crank maker",
                    true,
                ),
            ]),
            proof: String::from("the cup sits on metal all round and does not rock"),
            sources: sources.clone(),
        };
        facing::plan(draft, facing, report);
    }
}

const fn side_of(sheet: &ShellSheet, side: Side) -> &ShellSide {
    match side {
        Side::Drive => &sheet.drive,
        Side::NonDrive => &sheet.non_drive,
    }
}

const fn side_words(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive side",
        Side::NonDrive => "non-drive side",
    }
}
