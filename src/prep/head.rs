//! The head tube: bores before faces, a cup that will not come out stays, and the lower end has a crown below it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::{self, Facing};
use super::plan::{Amount, Interface, InterfaceReport, Operation, Stop, Tool};
use super::press;
use super::sheet::{Coating, Fitted, HeadEnd, JointMaterial};
use crate::evidence::{Citation, Grade};
use crate::face::{CutLimit, LimitKind};
use crate::judge::{Finding, sizes_against, spread};
use crate::measure::{Limits, Outcome, Reading};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{FacingRule, HeadSeat, HeadsetBearing, Row, SeatKind, find};
use crate::thread::Turn;

pub(super) fn plan(draft: &mut Draft<'_>, interface: Interface, end: &HeadEnd) {
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
    let seat = super::identity::head(draft, interface, end, &mut report)
        .and_then(|code| find::<HeadSeat>(&code).ok());
    bore(draft, interface, end, seat, &mut report);
    depth(draft, interface, end, seat, &mut report);
    let slip = seat.is_some_and(|s| s.kind == SeatKind::Integrated);
    if seat.is_some() {
        press::part_in_bore(
            draft,
            interface,
            end.part.as_ref(),
            &end.bore,
            if slip {
                &["integrated bearing in head tube"]
            } else {
                &["cup in head tube"]
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

fn bore(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    seat: Option<&HeadSeat>,
    report: &mut InterfaceReport,
) {
    let readings: Vec<Reading> = end.bore.iter().map(|p| p.reading).collect();
    if let Some(outside) = end.outside.first()
        && let Some(widest) = readings
            .iter()
            .copied()
            .reduce(|a, b| if b.value() > a.value() { b } else { a })
    {
        let wall = outside.less(&widest).scaled(0.5);
        report.findings.push(Finding::stated(
            "wall",
            format!("{} now, by outside less bore, halved", in_mm(wall.value())),
        ));
    }
    if readings.is_empty() {
        if seat.is_some() {
            draft.ask(
                interface,
                format!("{interface}: bore in two directions"),
                "a seat is known by measuring, not by its label",
                "three-point internal micrometer or inside caliper",
            );
        }
        return;
    }
    let maker = end.common.limits.iter().find(|l| l.what == "bore");
    let (finding, limits) = match (maker, seat) {
        (Some(limit), _) => (
            sizes_against(
                "bore",
                &readings,
                &limit.limits,
                &limit.owner,
                None,
                draft.rule,
            ),
            Some(limit.limits),
        ),
        (None, Some(seat)) if seat.bore.is_known() => {
            let limits = Limits::of_size(&seat.bore);
            (
                sizes_against(
                    "bore",
                    &readings,
                    &limits,
                    &format!("{}, {}", seat.code, seat.name),
                    seat.bore.evidence(),
                    draft.rule,
                ),
                Some(limits),
            )
        }
        (None, Some(seat)) => (
            Finding::stated(
                "bore",
                format!(
                    "{}; {}: {}",
                    spread(&readings),
                    seat.code,
                    seat.bore.reason()
                ),
            ),
            None,
        ),
        (None, None) => (Finding::stated("bore", spread(&readings)), None),
    };
    let finding = if covered(end.common.coating) {
        finding.read_on_paint(true)
    } else {
        finding
    };
    let outcome = finding.outcome;
    let sources = finding.sources.clone();
    let owner = finding.owner.clone();
    report.findings.push(finding);
    if outcome == Some(Outcome::Undecided) {
        draft.ask(
            interface,
            format!("{interface}: bore with a three-point gauge, after cleaning"),
            "the instrument used cannot show so narrow a tolerance",
            "three-point internal micrometer",
        );
    }
    if let (Some(Outcome::NonconformityShown), Some(limits)) = (outcome, limits) {
        let integrated = seat.is_some_and(|s| s.kind == SeatKind::Integrated);
        correct(
            draft,
            interface,
            end,
            &readings,
            &limits,
            (sources, owner),
            integrated,
        );
    } else if covered(end.common.coating)
        && seat.is_some_and(|s| s.kind != SeatKind::Integrated)
        && end.common.material != JointMaterial::Carbon
    {
        let mut step = DraftStep::new(
            interface,
            Stage::Clean,
            Operation::Clean,
            format!("Take the paint out of the {interface} by hand, down to metal"),
            "a cup pressed on paint sits neither square nor tight",
        );
        step.checks
            .push(String::from("bore again in two directions, on metal"));
        draft.step(step);
    }
}

fn covered(coating: Coating) -> bool {
    facing::covered(coating)
}

/// A bore shown out of limits.
fn correct(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    readings: &[Reading],
    limits: &Limits,
    (sources, owner): (Vec<Citation>, String),
    integrated: bool,
) {
    let (Some(low), Some(smallest)) = (
        limits.lower().known(),
        readings
            .iter()
            .map(Reading::value)
            .reduce(|a, b| if b < a { b } else { a }),
    ) else {
        return;
    };
    if end.common.material == JointMaterial::Carbon || integrated {
        let why = if integrated {
            "an integrated seat is cut by the frame maker only: its angle and depth belong together"
        } else {
            "carbon is not reamed here"
        };
        let mut step = DraftStep::new(
            interface,
            Stage::Bore,
            Operation::Refer,
            format!("Refer the {interface}: its bore is out of limits"),
            why,
        );
        step.waits_for.extend(covered(end.common.coating).then(|| {
            draft.ask(
                interface,
                format!("{interface}: bore again after cleaning, on metal"),
                "paint narrows a seat",
                "three-point internal micrometer",
            )
        }));
        if end.common.material == JointMaterial::Carbon {
            step.cautions = Vec::from([Caution::Carbon]);
        }
        draft.step(step);
        return;
    }
    let Some(high) = limits.upper().known() else {
        return;
    };
    if smallest >= low {
        let mut step = DraftStep::new(
            interface,
            Stage::Bore,
            Operation::Refer,
            format!("Do not cut the {interface}: the bore is too large"),
            "a loose cup is cured by another cup or by frame repair, never by filing or by a punch",
        );
        step.cautions = Vec::from([Caution::Steering]);
        draft.step(step);
        return;
    }
    let mut step = DraftStep::new(
        interface,
        Stage::Bore,
        Operation::Ream,
        format!(
            "Ream the {interface} to between {} and {}",
            in_mm(low),
            in_mm(high)
        ),
        "the bore is too small for the cup it is meant for",
    );
    step.tool = Some(Tool {
        cutter: format!("head-tube reamer that finishes inside {limits}"),
        hand: None,
        turn: Turn::Clockwise,
        pilot: String::from("centred in the opposite bore, so that both stay in line"),
    });
    step.amount = Some(Amount {
        least: low - smallest,
        most: high - smallest,
        counted: "on diameter",
    });
    step.stop = Some(Stop {
        limit: format!("upper limit {} ({owner})", in_mm(high)),
        left: Some(high - smallest),
        grade: Some(limits.grade()),
        sources,
    });
    if let Some(outside) = end.outside.first() {
        let wall = (outside.value() - high) / 2.0;
        step.checks.push(format!("wall left: {} by outside less bore, halved; builders use 0.9 to 1.1 mm, a least wall is not published", in_mm(wall)));
    } else {
        step.waits_for.push(draft.ask(
            interface,
            format!("{interface}: outside diameter"),
            "the wall that is left decides whether reaming is allowed",
            "outside caliper",
        ));
    }
    step.checks.push(String::from(
        "bore again in two directions: a reamed tube springs back oval",
    ));
    step.checks
        .push(String::from("entry chamfered lightly, chips and oil out"));
    step.proof = String::from(
        "the cup presses in square with steady force and sits on its shoulder all round",
    );
    step.cautions = Vec::from([Caution::Steering]);
    draft.step(step);
}

/// Is the bore deep enough for what goes in?
fn depth(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    seat: Option<&HeadSeat>,
    report: &mut InterfaceReport,
) {
    let insertion = end.part.as_ref().and_then(|p| p.insertion);
    let Some(depth) = end.bore_depth else {
        if insertion.is_some() {
            draft.ask(
                interface,
                format!("{interface}: depth of the bore to its shoulder"),
                "a cup longer than its bore stands proud",
                "depth rod",
            );
        }
        return;
    };
    if let Some(least) = seat.and_then(|s| s.bore_depth.as_ref()) {
        let limits = Limits::of_requirement(least);
        report.findings.push(sizes_against(
            "depth of the bore",
            &[depth],
            &limits,
            "least depth by the seat's guide",
            least.evidence(),
            draft.rule,
        ));
    }
    let Some(insertion) = insertion else { return };
    let Ok(limits) = Limits::at_least(insertion, Grade::Shop) else {
        return;
    };
    let found = sizes_against(
        "depth against the cup",
        &[depth],
        &limits,
        "insertion of the cup",
        None,
        draft.rule,
    );
    let short = insertion - depth.value();
    let outcome = found.outcome;
    report.findings.push(found);
    if outcome == Some(Outcome::NonconformityShown) {
        report.findings.push(Finding::stated(
            "cup",
            format!(
                "would stand {} proud of the face: no-go as it is",
                in_mm(short)
            ),
        ));
        too_shallow(draft, interface, end, seat, short);
    }
}

fn too_shallow(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    seat: Option<&HeadSeat>,
    short: Length,
) {
    let cut = end.common.material != JointMaterial::Carbon
        && end.common.material != JointMaterial::Unknown;
    let mut step = DraftStep::new(
        interface,
        Stage::Bore,
        if cut {
            Operation::Ream
        } else {
            Operation::Refer
        },
        format!(
            "Deepen the bore of the {interface} by {}, or have the cup shortened by as much",
            in_mm(short)
        ),
        "the cup is longer than its bore; a shortened cup has less length to press on",
    );
    step.amount = Some(Amount {
        least: short,
        most: short + mm(0.5),
        counted: "of depth",
    });
    step.stop = Some(Stop {
        limit: match seat
            .and_then(|s| s.clear_below.as_ref())
            .and_then(crate::evidence::Figure::lower)
        {
            Some(clear) => format!(
                "what lies below: the bore must stay clear to at least {}",
                in_mm(clear)
            ),
            None => String::from(
                "what lies below the bore: butt, gusset or bonded part; ask the frame maker",
            ),
        },
        left: None,
        grade: None,
        sources: Vec::new(),
    });
    step.waits_for.push(draft.ask(
        interface,
        format!("{interface}: what lies below the bore, and may it be deepened?"),
        "the cut goes where the tube may be butted or a part bonded",
        "light, depth rod, frame maker",
    ));
    step.checks.push(String::from(
        "depth again all round; the cup's insertion again",
    ));
    step.proof = String::from("the cup sits on its shoulder all round");
    step.cautions = Vec::from([Caution::Steering]);
    draft.step(step);
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
    for bearing in HeadsetBearing::table()
        .iter()
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
    let rule = FacingRule::table()
        .iter()
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
    let mut moves = Vec::from([String::from(
        "stack height is shorter by what comes off: steerer length and spacers again",
    )]);
    if interface == Interface::HeadLower {
        moves.push(String::from("gap between crown and head tube again"));
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
