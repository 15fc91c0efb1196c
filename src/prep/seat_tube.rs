//! The seat tube: it comes first, so that the frame can be held by a post.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::plan::{Amount, Interface, InterfaceReport, Operation, Stop, Tool};
use super::press;
use super::sheet::{JointMaterial, PlacedReading, SeatTubeSheet};
use super::{facing, identity, seat_post, seat_size};
use crate::fit::{Caution as FitCaution, Shape};
use crate::judge::{Finding, extremes, spread};
use crate::measure::{Reading, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::{CuttingRule, Seatpost};
use crate::thread::Turn;

const HERE: Interface = Interface::SeatTube;

/// Beyond this spread no size may be named; half of it is the step of the seatpost series.
/// Common practice: the series steps by 0.2 mm, so a spread of two steps fits three sizes.
const NO_SIZE_SPREAD_MM: f64 = 0.4;

pub(super) fn plan(draft: &mut Draft<'_>, tube: &SeatTubeSheet) {
    let mut report = InterfaceReport {
        interface: HERE,
        title: String::from("seat tube"),
        identification: None,
        findings: Vec::new(),
        leave: Vec::new(),
    };
    draft.caution(Caution::Seatpost);
    let readings = if tube.after.is_empty() {
        &tube.bore
    } else {
        &tube.after
    };
    if readings.is_empty() {
        draft.ask(
            HERE,
            "bore of the seat tube at two depths and two directions",
            "no size can be named and nothing cut before it is measured",
            "telescoping gauge or inside caliper",
        );
        draft.report(report);
        return;
    }
    let Ok(shape) = Shape::of(&press::sizes(readings)) else {
        draft.report(report);
        return;
    };
    report.findings.push(shape_finding(&shape, readings));
    if shape.cautions().contains(&FitCaution::ShapeAtLeast) {
        draft.ask(
            HERE,
            "bore again: two directions at each of two depths",
            "a bore is not one number; a pinched or oval tube looks sound in one direction",
            "telescoping gauge or inside caliper",
        );
    }
    let spread = shape.largest().value() - shape.smallest().value();
    if settled_below(mm(NO_SIZE_SPREAD_MM), spread) {
        report.findings.push(Finding::stated(
            "size",
            format!("no size may be named: the readings spread over {}. The tube is pinched, burred, thick with paint, or one reading is of something else", in_mm(spread)),
        ));
        draft.ask(
            HERE,
            "clean the bore, look for pinched ears and burrs, then measure it again",
            "the spread is larger than any step of the seatpost series",
            "brush, light, inside caliper",
        );
        draft.report(report);
        return;
    }
    if !tube.after.is_empty() {
        press::came_off(&tube.bore, &tube.after, &mut report);
    }
    // After the reamer there is no paint left to hide anything.
    let size = if facing::covered(tube.common.coating) && tube.after.is_empty() {
        seat_size::painted_size(draft, tube, &shape, &mut report)
    } else {
        identity::seat_tube(draft, tube, &mut report).and_then(|settled| {
            Some((
                draft
                    .tables
                    .find::<Seatpost>(&settled.code)
                    .ok()?
                    .diameter
                    .nominal()?,
                settled.doubt,
            ))
        })
    };
    outside_and_wall(tube, &mut report);
    let nominal = size.map(|(size, _)| size);
    seat_post::post_and_shim(draft, tube, nominal, &mut report);
    if let Some(size) = size {
        cut(draft, tube, size, &shape, &mut report);
    }
    seat_post::insertion(draft, tube, nominal, &mut report);
    draft.report(report);
}

fn shape_finding(shape: &Shape, readings: &[PlacedReading]) -> Finding {
    let plain: Vec<Reading> = readings.iter().map(|p| p.reading).collect();
    let mut words = spread(&plain);
    let worth_saying = |length: Length| length.abs() >= mm(0.001);
    if let Some(oval) = shape.ovality().filter(|o| worth_saying(o.value())) {
        words.push_str(&format!(
            "; out of round by at least {}",
            in_mm(oval.value())
        ));
    }
    if let Some(taper) = shape.taper().filter(|t| worth_saying(t.value())) {
        words.push_str(&format!(
            "; {} {} towards the bottom",
            in_mm(taper.value().abs()),
            if taper.value() < mm(0.0) {
                "narrower"
            } else {
                "wider"
            }
        ));
    }
    Finding {
        readings: extremes(&plain),
        ..Finding::stated("bore as found", words)
    }
}

fn outside_and_wall(tube: &SeatTubeSheet, report: &mut InterfaceReport) {
    let Some(outside) = tube.outside.first() else {
        return;
    };
    let bores: Vec<Reading> = tube.bore.iter().map(|p| p.reading).collect();
    let ends = extremes(&bores);
    let Some(widest) = ends.last() else {
        return;
    };
    let wall = outside.less(widest).scaled(0.5);
    report.findings.push(Finding::stated(
        "wall",
        format!("{} by outside less bore, halved; no published least wall, ask the frame maker before any cut beyond the paint", in_mm(wall.value())),
    ));
}

/// Reams, cleans or leaves.
fn cut(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    (size, doubt): (Length, Option<usize>),
    shape: &Shape,
    report: &mut InterfaceReport,
) {
    let target = Reading::exact(size).unwrap_or(shape.largest());
    let short = target.less(&shape.smallest());
    let u = short.expanded_uncertainty();
    if !settled_below(u, short.value()) {
        let words = if short.value() > mm(0.0) {
            format!(
                "the bore is within {} of {}, less than these readings can tell: leave it, try the post",
                in_mm(short.value()),
                in_mm(size)
            )
        } else {
            format!("the bore is nowhere below {}: nothing to ream", in_mm(size))
        };
        report.leave.push(words);
        return;
    }
    if tube.common.material == JointMaterial::Carbon {
        draft.caution(Caution::Carbon);
        let mut step = DraftStep::new(
            HERE,
            Stage::Clean,
            Operation::Clean,
            "Take paint out of the seat tube by hand, touch no laminate",
            "a carbon tube is not reamed",
        );
        step.checks
            .push(String::from("the post enters by hand, without force"));
        step.proof = String::from(
            "the post slides to its minimum mark by hand; if not, the frame maker decides",
        );
        step.cautions = Vec::from([Caution::Carbon]);
        draft.step(step);
        return;
    }
    let most = short.value() + u;
    let stock = stock_limit(draft);
    if settled_cmp(short.value() - u, stock).is_gt() {
        let mut step = DraftStep::new(
            HERE,
            Stage::Bore,
            Operation::Refer,
            format!(
                "Do not ream: {} would have to come off",
                in_mm(short.value())
            ),
            format!(
                "that is more than the {} that any text gives for hand reaming: it is no paint, and probably no {}",
                in_mm(stock),
                in_mm(size)
            ),
        );
        step.waits_for.push(draft.ask(
            HERE,
            "is it really this size? Bore below the paint, outside diameter and wall",
            "so much metal is not overspray",
            "telescoping gauge, outside micrometer",
        ));
        draft.step(step);
        return;
    }
    let mut step = DraftStep::new(
        HERE,
        Stage::Bore,
        Operation::Ream,
        format!("Ream the seat tube to {:.1}", in_mm(size)),
        "high points must go, a mirror is not wanted; it comes first so that the frame can be held by a post",
    );
    step.tool = Some(Tool {
        cutter: format!("{:.1} reamer", in_mm(size)),
        hand: None,
        turn: Turn::Clockwise,
        pilot: String::from(
            "the bore itself: a reamer follows the hole, it does not straighten it",
        ),
    });
    step.amount = Some(Amount {
        least: short.value(),
        most,
        counted: "on diameter",
    });
    step.stop = Some(Stop {
        limit: match tube.clear_depth {
            Some(depth) => format!(
                "depth, the bore is clear to {:.1}; and the size, {:.1}",
                in_mm(depth),
                in_mm(size)
            ),
            None => format!("the size, {:.1}; depth unknown", in_mm(size)),
        },
        left: None,
        grade: None,
        sources: draft
            .tables
            .find::<Seatpost>(&format!("{:.1}", settled_mm(size)))
            .ok()
            .and_then(|p| p.diameter.evidence())
            .map(|e| e.sources().to_vec())
            .unwrap_or_default(),
    });
    step.waits_for.extend(doubt);
    if tube.clear_depth.is_none() {
        step.waits_for.push(draft.ask(
            HERE,
            "how deep the bore is clear, to the first boss, butt or sleeve",
            "the reamer must stop before it",
            "depth rod or a marked rod",
        ));
    }
    step.checks
        .push(String::from("bore again at two depths and two directions"));
    step.checks.push(String::from(
        "entry and slot ends rounded by hand, all chips out",
    ));
    step.proof = String::from(
        "the post slides in by hand with a light drag over the whole insertion and does not rock",
    );
    step.cautions = Vec::from([Caution::Seatpost]);
    if tube.common.material == JointMaterial::Titanium {
        step.cautions.push(Caution::Titanium);
    }
    draft.step(step);
}

/// The greatest stock that any text prints.
fn stock_limit(draft: &Draft<'_>) -> Length {
    draft
        .tables
        .all::<CuttingRule>()
        .filter(|r| r.code.starts_with("ream_stock"))
        .filter_map(|r| r.window.upper())
        .fold(mm(0.0), Length::max)
}
