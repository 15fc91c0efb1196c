//! The head tube: bores before faces, a cup that will not come out stays, and the lower end has a crown below it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::{self, Facing, covered};
use super::head_bore;
use super::plan::{Interface, InterfaceReport, Operation};
use super::press;
use super::sheet::{Coating, Fitted, HeadEnd, JointMaterial};
use crate::evidence::Grade;
use crate::face::{CutLimit, LimitKind};
use crate::judge::Finding;
use crate::measure::{Limits, settled_below};
use crate::quantity::{in_mm, mm};
use crate::standard::Joint;
use crate::standard::{FacingRule, HeadSeat, HeadsetBearing, SeatKind};

pub(super) fn plan(draft: &mut Draft<'_>, interface: Interface, measured: &HeadEnd) {
    let now = after_work(measured);
    let end = now.as_ref().unwrap_or(measured);
    let mut report = InterfaceReport {
        interface,
        title: format!("{interface}"),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    draft.caution(Caution::Steering);
    if let Some(part) = end.part.as_ref().filter(|p| p.fitted == Fitted::Stuck) {
        let name = if part.name.is_empty() {
            "the cup"
        } else {
            &part.name
        };
        report.leave.push(format!("{name}: pressed in and does not come out with a reasonable effort; it stays, and its bore and face with it"));
        report.findings.push(Finding::stated("fitted part", format!("{name} stays: forcing it out costs more than it is worth. Mask it, and check that its bearing turns")));
        draft.report(report);
        return;
    }
    if now.is_some() {
        press::came_off(&measured.bore, &measured.after, &mut report);
    }
    let settled = super::identity::head(draft, interface, end, &mut report);
    let doubt = settled.as_ref().and_then(|s| s.doubt);
    let seat = settled.and_then(|s| draft.tables.find::<HeadSeat>(&s.code).ok());
    head_bore::bore(draft, interface, end, (seat, doubt), &mut report);
    head_bore::depth(draft, interface, end, seat, &mut report);
    let slip = seat.is_some_and(|s| s.kind == SeatKind::Integrated);
    if seat.is_some() {
        press::part_in_bore(
            draft,
            interface,
            end.part.as_ref(),
            &end.bore,
            if slip {
                &[Joint::IntegratedBearing]
            } else {
                &[Joint::HeadCup]
            },
            slip,
            &mut report,
        );
    }
    if slip {
        integrated(draft, interface, end, seat, &mut report);
    }
    face(draft, interface, end, slip, &mut report);
    draft.report(report);
}

/// The end as it is after the work: its later readings, on metal.
fn after_work(end: &HeadEnd) -> Option<HeadEnd> {
    if end.after.is_empty() {
        return None;
    }
    let mut now = end.clone();
    now.bore.clone_from(&end.after);
    now.common.coating = Coating::Bare;
    Some(now)
}

/// An integrated seat: cleaned, never cut here. The outer angle of the bearing belongs to the frame.
fn integrated(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    seat: Option<&HeadSeat>,
    report: &mut InterfaceReport,
) {
    let Some(seat) = seat else { return };
    let read = end.part.as_ref().and_then(|p| p.outside.first());
    if let (Some(read), Some(listed)) = (
        read,
        seat.bearing_outside.as_ref().and_then(|f| f.nominal()),
    ) && settled_below(
        mm(0.1) + read.expanded_uncertainty(),
        (read.value() - listed).abs(),
    ) {
        report.findings.push(
            Finding::stated(
                "bearing",
                format!("reads {} outside, this seat is listed for {}: another bearing; a bearing in its seat must not rock", in_mm(read.value()), in_mm(listed)),
            )
            .resting_on(seat.bearing_outside.as_ref().and_then(|f| f.evidence())),
        );
        draft.ask(
            interface,
            format!("{interface}: which bearing was the frame made for?"),
            "bearings of the same trade name differ by 0.2 mm outside",
            "frame maker's sheet, micrometer",
        );
    }
    for bearing in draft
        .tables
        .all::<HeadsetBearing>()
        .filter(|b| b.seat == seat.code)
    {
        report.findings.push(
            Finding::stated(
                "bearing",
                format!(
                    "{}: {} x {} x {}, inner {} (race), outer {} (frame seat)",
                    bearing.code,
                    bearing.bore,
                    bearing.outside,
                    bearing.height,
                    bearing.inner_angle,
                    bearing.outer_angle
                ),
            )
            .resting_on(bearing.outside.evidence()),
        );
    }
    report.leave.push(String::from(
        "the seat itself: it is not reamed or faced here, its angle and depth belong together",
    ));
    if covered(end.common.coating) {
        let mut step = DraftStep::new(
            interface,
            Stage::Clean,
            Operation::Clean,
            format!(
                "Take the paint off the seat of the {interface} by hand: wood, plastic or a fine cloth"
            ),
            "paint under a bearing lets it rock; scraping the seat does the same",
        );
        step.checks = Vec::from([
            String::from("bore of the seat again in two directions, on metal or laminate"),
            String::from("ink the bearing, turn it in its seat: the mark must be an unbroken ring"),
        ]);
        step.proof = String::from(
            "the bearing drops in by hand and does not rock under a finger on any side",
        );
        step.cautions = Vec::from([Caution::Steering]);
        draft.step(step);
    }
}

fn face(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    integrated: bool,
    report: &mut InterfaceReport,
) {
    let Some(face) = &end.face else { return };
    if end.common.material == JointMaterial::Carbon {
        draft.caution(Caution::Carbon);
        report.leave.push(String::from(
            "the face: carbon is not faced; take paint off by hand",
        ));
        return;
    }
    if integrated {
        report.leave.push(String::from("the face: nothing is clamped against it, the cover only passes it; cutting it eats the gap of the cover"));
        return;
    }
    let rule = draft
        .tables
        .all::<FacingRule>()
        .find(|r| r.code == "end_face_parallelism");
    let square = rule.and_then(|r| {
        let limits = Limits::of_requirement(&r.window);
        limits.upper().known()?;
        Some((
            limits,
            String::from("a headset maker's ceiling for both end faces together"),
            r.window
                .evidence()
                .map(|e| e.sources().to_vec())
                .unwrap_or_default(),
        ))
    });
    let mut limits = Vec::new();
    if interface == Interface::HeadLower {
        match end.crown_gap {
            Some(gap) => limits.extend(
                CutLimit::leaving(
                    LimitKind::Clearance,
                    "gap between crown and head tube, half of it",
                    &gap.scaled(0.5),
                    mm(0.0),
                    Grade::CommonPractice,
                )
                .ok(),
            ),
            None => limits.extend(
                CutLimit::unknown(
                    LimitKind::Clearance,
                    "gap between crown and lower face",
                    "fit the fork and measure the gap with a feeler or caliper",
                )
                .ok(),
            ),
        }
    }
    if let (Some(depth), Some(part)) = (end.bore_depth, end.part.as_ref())
        && let Some(insertion) = part.insertion
    {
        limits.extend(
            CutLimit::leaving(
                LimitKind::SeatDepth,
                "depth of the bore left for the cup",
                &depth,
                insertion,
                Grade::Shop,
            )
            .ok(),
        );
    } else {
        limits.extend(
            CutLimit::unknown(
                LimitKind::SeatDepth,
                "depth of the bore against the cup's insertion",
                "measure the depth of the bore and how long the cup goes in",
            )
            .ok(),
        );
    }
    let mut moves = Vec::from([(
        Interface::Steerer,
        "the stack is lower by what comes off: steerer length and spacers again",
        true,
    )]);
    if interface == Interface::HeadLower {
        moves.push((
            Interface::Crown,
            "the crown comes closer by what comes off: gap again",
            true,
        ));
    }
    let facing = Facing {
        interface,
        face,
        cutter: String::from("head-tube facing cutter"),
        pilot: String::from("the bore just finished, with the pilot centred in the opposite bore"),
        square,
        limits,
        moves,
        proof: String::from("the cup sits on its shoulder all round, no light under it"),
        sources: Vec::new(),
    };
    facing::plan(draft, facing, report);
}
