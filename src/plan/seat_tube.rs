//! The seat tube: it comes first, so that the frame can be held by a post.

use alloc::vec::Vec;

use super::answer::Stop;
use super::bore_now;
use super::caution::Caution;
use super::facts::{Found, RoundFact, SeatTubeAsk, SeatTubeFact, SeatTubeTask};
use super::round_place::{RoundPlace, cap, read};
use super::seat_post;
use super::seat_size::{self, HALF_STEP_MM, Sized};
use super::sheet::{Limited, SeatTubeSheet};
use super::site::{Site, tool};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::{CutLimit, LimitKind};
use crate::fit::{Caution as FitCaution, MaterialKind, Shape};
use crate::judge::{Instrument, sizes};
use crate::measure::{Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Cutting, CuttingRule, Place};
use crate::thread::Turn;

/// Beyond this spread no size may be named.
/// Common practice: the series steps by 0.2 mm, so a spread of two steps fits three sizes.
const NO_SIZE_SPREAD_MM: f64 = 0.4;

/// Less than this is not worth saying of a shape.
const SEEN_MM: f64 = 0.001;

/// What is asked where nobody said how deep a reamer may go.
const CLEAR: &str = "seat_tube.clear_depth";

pub(super) fn plan(site: &Site<'_>, tube: &SeatTubeSheet) -> PlaceWork {
    let mut work = PlaceWork::new(Place::SeatTube);
    work.cautions.push(Caution::Seatpost);
    work.notes.extend(tube.note.clone());
    let notes = tube.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    work.hear(&tube.limits);
    let passes = tube.passes.iter().map(Into::into);
    let now = bore_now::of(&tube.bore, &tube.after, passes, tube.coating, false);
    work.measured = !tube.bore.is_empty();
    work.worked = now.worked;
    let mut at = RoundPlace {
        site: *site,
        work: &mut work,
        path: "seat_tube",
        common: tube.common(),
        first: &tube.bore,
        now,
        outside: &tube.outside,
        part: tube.post.as_ref(),
        fit: Answers {
            reading: "seat_tube.post.outside",
            trial: "seat_tube.passes",
            written: "seat_tube.limits",
        },
    };
    if at.now.bore.is_empty() {
        at.work.ask("seat_tube.bore", SeatTubeAsk::Bore);
    } else if let Ok(shape) = sizes(&at.now.bore).and_then(|sizes| Shape::of(&sizes)) {
        shapes(&mut at, &shape);
        clear(&mut at, tube);
        one_size(
            &mut at,
            tube,
            shape.largest().value() - shape.smallest().value(),
        );
    }
    work
}

/// The bore that is one size: its wall, its post, what it is reamed to.
fn one_size(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, over: Length) {
    if settled_below(mm(NO_SIZE_SPREAD_MM), over) {
        at.work.settled(SeatTubeFact::Spread { over });
        at.work.ask("seat_tube.bore", SeatTubeAsk::BoreClean);
        return;
    }
    at.wall();
    let sized = seat_size::of(at, tube);
    seat_post::fit(at, tube, sized.as_ref());
    seat_post::insertion(at, tube, sized.as_ref());
    if let Some(sized) = sized {
        ream(at, tube, &sized);
    }
}

fn shapes(at: &mut RoundPlace<'_>, shape: &Shape) {
    let readings = at.now.readings();
    let (after_work, count) = (at.now.worked, readings.len());
    let bore = RoundFact::Bore { after_work, count };
    at.work.settled(read(bore, &readings));
    let seen = |length: Option<Reading>| {
        let length = length.map(|r| r.value());
        length.filter(|l| settled_cmp(l.abs(), mm(SEEN_MM)).is_ge())
    };
    let (out_of_round, taper) = (seen(shape.ovality()), seen(shape.taper()));
    if out_of_round.or(taper).is_some() {
        at.work.settled(SeatTubeFact::Shape {
            out_of_round,
            taper,
        });
    }
    at.came_off();
    if shape.cautions().contains(&FitCaution::ShapeAtLeast) {
        at.work.ask("seat_tube.bore", SeatTubeAsk::Bore);
    }
}

/// A bore read below the depth to which the tube is said to be clear.
fn clear(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet) {
    let depths = tube.bore.iter().filter_map(|p| p.depth);
    let deepest = depths.max_by(|a, b| settled_cmp(*a, *b));
    if let (Some(read), Some(clear)) = (deepest, tube.clear_depth)
        && settled_below(clear, read)
    {
        let below = SeatTubeFact::BelowClear { read, clear };
        at.work.contradicts(below, CLEAR, Instrument::Depth);
    }
}

/// Reams, or leaves.
fn ream(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, sized: &Sized<'_>) {
    let size = sized.size;
    let (Some(smallest), Ok(target)) = (at.now.smallest(), Reading::exact(size)) else {
        return;
    };
    let short = target.less(&smallest);
    if !settled_below(short.expanded_uncertainty(), short.value()) {
        nothing_to_ream(at, short, size);
        return;
    }
    if at.torn() {
        return;
    }
    let stops = stops(at, tube, sized);
    // The depth is asked for only where a reamer goes in.
    let clear_unknown = stops.len() == 1;
    let caps = caps(at, &smallest);
    let permit = at.permit(sized.identity.clone(), (short, caps), |request| {
        request.to_size = true;
        request.stops = stops;
        request.waits.extend(clear_unknown.then(|| CLEAR.into()));
    });
    let Some(permit) = permit else { return };
    if clear_unknown {
        at.work.ask(CLEAR, SeatTubeAsk::ClearDepth);
    }
    let mut draft = Draft::cut(permit, SeatTubeTask::Ream { size })
        .with(tool("reamer", SeatTubeFact::Reamer { size }))
        .turned(Turn::Clockwise)
        .minding(Caution::Seatpost);
    if at.joint().material == Some(MaterialKind::Titanium) {
        draft = draft.minding(Caution::Titanium);
    }
    if at.part.and_then(|post| post.material) == Some(MaterialKind::Carbon) {
        draft = draft
            .minding(Caution::CarbonPost)
            .checking(SeatTubeFact::NoEdge);
    }
    at.work.steps.push(draft);
}

/// Large enough; and what is above its size after the work was reamed too far, and nothing cuts it back.
fn nothing_to_ream(at: &mut RoundPlace<'_>, short: Reading, size: Length) {
    let by = short.value();
    let too_far = mm(HALF_STEP_MM) + short.expanded_uncertainty();
    if !at.now.worked {
        at.work.leave(if settled_below(mm(0.0), by) {
            SeatTubeFact::AboutThere { by, size }
        } else {
            SeatTubeFact::LargeEnough { size }
        });
    } else if settled_below(too_far, -by) {
        let fact = SeatTubeFact::ReamedTooFar { by: -by, size };
        at.work.fact(Found {
            readings: at.now.readings(),
            ..Found::practice(Outcome::NonconformityShown, fact)
        });
        at.work.cure(SeatTubeFact::LargerPostOrShim);
    }
}

/// What may come off on diameter: what makers limit, and the stock that any text gives for a reamer.
fn caps(at: &RoundPlace<'_>, smallest: &Reading) -> Vec<CutLimit> {
    let mut caps = at.caps(smallest, (at.heard(Limited::Bore).as_ref(), None));
    if let Some((most, row)) = CuttingRule::greatest(Cutting::ReamStock, at.site.tables)
        && let (Ok(off), Some(grade)) = (Reading::exact(most), row.window.grade())
    {
        let (what, from) = (SeatTubeFact::Stock { most }, row.window.evidence());
        caps.extend(cap(LimitKind::Other, what, (off, grade), from));
    }
    caps
}

/// What the reamer stops at: the size, a depth that is written, the clear depth.
fn stops(at: &RoundPlace<'_>, tube: &SeatTubeSheet, sized: &Sized<'_>) -> Vec<Stop> {
    let stop = |limit: SeatTubeFact, grade, evidence: Option<&Evidence>| Stop {
        limit: limit.into(),
        to_go: None,
        grade,
        sources: evidence.map_or_else(Vec::new, |e| e.sources().to_vec()),
    };
    let figure = &sized.row.diameter;
    let size = SeatTubeFact::ToSize { size: sized.size };
    let written = at.heard(Limited::Depth).and_then(|heard| {
        let (depth, by) = (heard.limits.upper().known()?, heard.upper_owner);
        Some(SeatTubeFact::DepthAtMost { depth, by })
    });
    let clear = tube.clear_depth;
    let clear = clear.map(|depth| SeatTubeFact::ClearTo { depth });
    let mut stops = Vec::from([stop(size, figure.grade(), figure.evidence())]);
    stops.extend(written.map(|depth| stop(depth, Some(Grade::Shop), None)));
    stops.extend(clear.map(|depth| stop(depth, None, None)));
    stops
}
