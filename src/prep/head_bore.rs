//! The bore of a head-tube end: size, paint, depth.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::covered;
use super::plan::{Amount, Interface, InterfaceReport, Operation, Stop};
use super::press;
use super::sheet::{HeadEnd, JointMaterial};
use crate::evidence::{Citation, Figure, Grade};
use crate::judge::{Finding, extremes, sizes_against, spread};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{HeadSeat, SeatKind};

pub(super) fn bore(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    (seat, doubt): (Option<&HeadSeat>, Option<usize>),
    report: &mut InterfaceReport,
) {
    let readings: Vec<Reading> = end.bore.iter().map(|p| p.reading).collect();
    if let Some(outside) = end.outside.first()
        && let Some(widest) = extremes(&readings).last()
    {
        let wall = outside.less(widest).scaled(0.5);
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
        // A bore that nobody publishes shows nothing either way.
        (None, Some(seat)) => {
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
        (None, None) => (Finding::stated("bore", spread(&readings)), None),
    };
    let finding = if covered(end.common.coating) {
        finding.read_on_paint(true, draft.tables)
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
            (integrated, doubt),
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

/// A bore shown out of limits.
fn correct(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    readings: &[Reading],
    limits: &Limits,
    (sources, owner): (Vec<Citation>, String),
    (integrated, doubt): (bool, Option<usize>),
) {
    let (Some(low), Some(smallest)) = (
        limits.lower().known(),
        extremes(readings).first().map(Reading::value),
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
    if !settled_below(smallest, low) {
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
    let words = (
        format!(
            "Ream the {interface} to between {} and {}",
            in_mm(low),
            in_mm(high)
        ),
        "the bore is too small for the cup it is meant for",
    );
    let tool = (
        format!("head-tube reamer that finishes inside {limits}"),
        "the opposite bore, in which it is centred, so that both stay in line",
    );
    let Some(mut step) = press::ream(interface, words, tool, smallest, limits, (sources, &owner))
    else {
        return;
    };
    step.waits_for.extend(doubt);
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
pub(super) fn depth(
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
    if let Some(least) = seat
        .and_then(|s| s.bore_depth.as_ref())
        .filter(|f| f.is_known())
    {
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
            .and_then(Figure::lower)
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
