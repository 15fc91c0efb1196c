//! The seat tube: it comes first, so that the frame can be held by a post.

use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Stop;
use super::bore_now;
use super::caution::Caution;
use super::facts::{Fact, Found, RoundFact, SeatTubeAsk, SeatTubeFact, SeatTubeTask};
use super::permit::Request;
use super::round_place::{RoundPlace, cap};
use super::seat_post;
use super::seat_size::{self, HALF_STEP_MM, Sized};
use super::sheet::{Limited, SeatTubeSheet};
use super::site::{Site, tool};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::Grade;
use crate::face::{Allowance, CutLimit, LimitKind};
use crate::fit::{Caution as FitCaution, MaterialKind, Shape};
use crate::judge::{Instrument, extremes, sizes};
use crate::measure::{Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::mm;
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
    if now.bore.is_empty() {
        work.ask("seat_tube.bore", SeatTubeAsk::Bore);
        return work;
    }
    let at = RoundPlace {
        site: *site,
        place: &Place::SeatTube,
        path: "seat_tube",
        what: "seat tube",
        common: tube.common(),
        now,
        outside: &tube.outside,
        part: tube.post.as_ref(),
        fit: Answers {
            reading: "seat_tube.post.outside",
            trial: "seat_tube.passes",
            written: "seat_tube.limits",
        },
        gauge: Instrument::InsideCaliper,
    };
    let shape = sizes(&at.now.bore).and_then(|sizes| Shape::of(&sizes));
    let Ok(shape) = shape else { return work };
    shapes(&at, &mut work, &shape);
    clear(&mut work, tube);
    let over = shape.largest().value() - shape.smallest().value();
    if settled_below(mm(NO_SIZE_SPREAD_MM), over) {
        work.settled(SeatTubeFact::Spread { over });
        work.ask("seat_tube.bore", SeatTubeAsk::BoreClean);
        return work;
    }
    at.wall(&mut work);
    let sized = seat_size::of(&at, &mut work, tube);
    seat_post::fit(&at, &mut work, tube, sized.as_ref());
    seat_post::insertion(&at, &mut work, tube, sized.as_ref());
    if let Some(sized) = sized {
        ream(&at, &mut work, tube, &sized);
    }
    work
}

fn shapes(at: &RoundPlace<'_>, work: &mut PlaceWork, shape: &Shape) {
    let readings = at.now.readings();
    work.settled(Found {
        readings: extremes(&readings),
        ..Found::of(RoundFact::Bore {
            after_work: at.now.worked,
            count: readings.len(),
        })
    });
    let seen = |length: Option<Reading>| {
        let length = length.map(|r| r.value());
        length.filter(|l| settled_cmp(l.abs(), mm(SEEN_MM)).is_ge())
    };
    let (out_of_round, taper) = (seen(shape.ovality()), seen(shape.taper()));
    if out_of_round.or(taper).is_some() {
        work.settled(SeatTubeFact::Shape {
            out_of_round,
            taper,
        });
    }
    at.came_off(work);
    if shape.cautions().contains(&FitCaution::ShapeAtLeast) {
        work.ask("seat_tube.bore", SeatTubeAsk::Bore);
    }
}

/// A bore read below the depth to which the tube is said to be clear.
fn clear(work: &mut PlaceWork, tube: &SeatTubeSheet) {
    let depths = tube.bore.iter().filter_map(|p| p.depth);
    let deepest = depths.max_by(|a, b| settled_cmp(*a, *b));
    if let (Some(read), Some(clear)) = (deepest, tube.clear_depth)
        && settled_below(clear, read)
    {
        work.contradicts(
            SeatTubeFact::BelowClear { read, clear },
            CLEAR,
            Instrument::Depth,
        );
    }
}

/// Reams, or leaves.
fn ream(at: &RoundPlace<'_>, work: &mut PlaceWork, tube: &SeatTubeSheet, sized: &Sized<'_>) {
    let (Some(smallest), Ok(target)) = (at.now.smallest(), Reading::exact(sized.size)) else {
        return;
    };
    let short = target.less(&smallest);
    if !settled_below(short.expanded_uncertainty(), short.value()) {
        nothing_to_ream(at, work, short, sized);
        return;
    }
    if at.torn(work) {
        return;
    }
    let stops = stops(at, tube, sized);
    let clear_unknown = stops.len() == 1;
    let request = Request {
        to_size: true,
        allowance: Allowance::new(caps(at, &smallest)),
        stops,
        waits: clear_unknown.then(|| CLEAR.into()).into_iter().collect(),
        ..at.request(work, sized.identity.clone(), short)
    };
    let Some(permit) = at.permit(work, request, at.now.covered) else {
        return;
    };
    // The depth is asked for only where a reamer goes in.
    if clear_unknown {
        work.ask(CLEAR, SeatTubeAsk::ClearDepth);
    }
    let size = sized.size;
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
    work.steps.push(draft);
}

/// Large enough; and what is above its size after the work was reamed too far, and nothing cuts it back.
fn nothing_to_ream(at: &RoundPlace<'_>, work: &mut PlaceWork, short: Reading, sized: &Sized<'_>) {
    let (by, size) = (short.value(), sized.size);
    let too_far = mm(HALF_STEP_MM) + short.expanded_uncertainty();
    if !at.now.worked {
        work.leave(if settled_below(mm(0.0), by) {
            SeatTubeFact::AboutThere { by, size }
        } else {
            SeatTubeFact::LargeEnough { size }
        });
    } else if settled_below(too_far, -by) {
        work.fact(Found {
            readings: at.now.readings(),
            ..Found::practice(
                Outcome::NonconformityShown,
                SeatTubeFact::ReamedTooFar { by: -by, size },
            )
        });
        work.cure(SeatTubeFact::LargerPostOrShim);
    }
}

/// What may come off on diameter: what makers limit, and the stock that any text gives for a reamer.
fn caps(at: &RoundPlace<'_>, smallest: &Reading) -> Vec<CutLimit> {
    let mut caps = at.caps(smallest, at.heard(Limited::Bore).as_ref(), None);
    if let Some((most, row)) = CuttingRule::greatest(Cutting::ReamStock, at.site.tables)
        && let (Ok(off), Some(grade)) = (Reading::exact(most), row.window.grade())
    {
        let what = SeatTubeFact::Stock { most };
        caps.extend(cap(
            LimitKind::Other,
            what,
            (off, grade),
            row.window.evidence(),
        ));
    }
    caps
}

/// What the reamer stops at: the size, a depth that is written, the clear depth.
fn stops(at: &RoundPlace<'_>, tube: &SeatTubeSheet, sized: &Sized<'_>) -> Vec<Stop> {
    let stop = |limit: SeatTubeFact, grade: Option<Grade>| Stop {
        limit: Fact::from(limit),
        to_go: None,
        grade,
        sources: Vec::new(),
    };
    let figure = &sized.row.diameter;
    let sources = figure.evidence().map(|e| e.sources().to_vec());
    let mut stops = Vec::from([Stop {
        sources: sources.unwrap_or_default(),
        ..stop(SeatTubeFact::ToSize { size: sized.size }, figure.grade())
    }]);
    if let Some(heard) = at.heard(Limited::Depth)
        && let Some(depth) = heard.limits.upper().known()
    {
        let by: String = heard.upper_owner;
        stops.push(stop(
            SeatTubeFact::DepthAtMost { depth, by },
            Some(Grade::Shop),
        ));
    }
    let clear = tube.clear_depth;
    stops.extend(clear.map(|depth| stop(SeatTubeFact::ClearTo { depth }, None)));
    stops
}
