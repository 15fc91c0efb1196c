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
use super::sheet_passes::tried;
use super::shell_press;
use super::shell_width::{believed_parts, cut_limits, halves, spindle, width_window};
use super::thread_work::{self, OnBench};
use crate::evidence::Grade;
use crate::judge::{Finding, spread};
use crate::standard::{LocatedBy, Shell};
use crate::thread::Side;

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
    if settled.is_none()
        && let Some(code) = super::identity::turned_shell(draft, sheet)
    {
        report.findings.push(Finding::stated(
            "hands",
            format!("those of {code} with the sides exchanged: the shell is in back to front, or was tapped so; cups of {code} go in only on the wrong sides, where riding can loosen them"),
        ));
        do_not_chase(draft);
    }
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
    let tried = |side: &ShellSide| tried(side.go_after, side.not_go_after);
    if shell.after.is_empty() && !tried(&shell.drive) && !tried(&shell.non_drive) {
        return None;
    }
    let mut now = shell.clone();
    now.common.coating = Coating::Bare;
    if !shell.after.is_empty() {
        now.bore.clone_from(&shell.after);
    }
    for side in [&mut now.drive, &mut now.non_drive] {
        if tried(side) {
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

fn do_not_chase(draft: &mut Draft<'_>) {
    draft.step(DraftStep::new(
        HERE,
        Stage::Thread,
        Operation::Refer,
        "Do not chase: the hands are not those of the pattern",
        "a chaser of the wrong hand destroys the thread; the frame maker decides",
    ));
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
    let mut look_first: Vec<(Side, usize)> = Vec::new();
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
                let remembered = shell
                    .hand_fact(side)
                    .is_none_or(|f| f.grade().is_none_or(|g| g <= Grade::Memory));
                if (disputed || remembered) && here.hand.is_none() {
                    let question = draft.ask(
                        Interface::ShellSide(side),
                        format!(
                            "{}: which hand is the thread? Look at its slope",
                            side_words(side)
                        ),
                        if disputed {
                            "sources disagree on the hand of this pattern"
                        } else {
                            "the hand of this side is remembered, not read"
                        },
                        "eye, light",
                    );
                    look_first.push((side, question));
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
        do_not_chase(draft);
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
            waits_for: look_first
                .iter()
                .filter(|(s, _)| *s == side)
                .map(|(_, question)| *question)
                .collect(),
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
