//! The seat tube: it comes first, so that the frame can be held by a post. How the post fits is judged elsewhere and heard here.

use alloc::vec::Vec;

use super::answer::Stop;
use super::bore_now;
use super::caution::Caution;
use super::facts::{CutLimit, Found, RoundFact, SeatTubeAsk, SeatTubeFact, SeatTubeTask};
use super::round_place::{RoundPlace, cap, placed, read, torn};
use super::seat_size::{self, HALF_STEP_MM, Sized, row};
use super::sheet::{Limited, PartDid, SeatTubeSheet};
use super::site::{Site, tool};
use super::tried::{self, GoesIn};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::LimitKind;
use crate::fit::{Caution as FitCaution, MaterialKind, Shape};
use crate::judge::{Fit, Insertion, Instrument, Shim, WrittenDepth, sizes};
use crate::measure::{Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Cutting, CuttingRule, Joint, Place};
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
    post(at, tube, sized.as_ref());
    insertion(at, tube, sized.as_ref());
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
    let (oval, taper) = (seen(shape.ovality()), seen(shape.taper()));
    if oval.or(taper).is_some() {
        at.work.settled(SeatTubeFact::Shape { oval, taper });
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
    if torn(at.now.marks, at.work) {
        return;
    }
    let stops = stops(at, tube, sized);
    // The depth is asked for only where a reamer goes in.
    let clear_unknown = stops.len() == 1;
    let caps = caps(at, &smallest);
    let permit = at.permit(sized.known.clone(), (short, caps), |request| {
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
        let too_far = Found::practice(Outcome::NonconformityShown, fact);
        at.work.fact(too_far);
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

/// The post in the tube as it is, and whether the shim at hand helps.
fn post(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, sized: Option<&Sized<'_>>) {
    let Some(post) = at.part else { return };
    if post.material == Some(MaterialKind::Carbon) {
        at.work.cautions.push(Caution::CarbonPost);
    }
    if at.known_part().is_none() {
        return;
    }
    // A tube that is still to be reamed or cleaned is not judged by the fit of today.
    let smallest = at.now.smallest();
    let most = smallest.map(|r| r.value() + r.expanded_uncertainty());
    let too_small = matches!((sized, most), (Some(s), Some(m)) if settled_below(m, s.size));
    let unfinished = at.now.covered || too_small;
    tried::heard(at.work, at.now.part, GoesIn::Slides, !unfinished);
    if unfinished {
        return;
    }
    let believed = tube.believed.as_deref();
    let believed = believed.and_then(|name| row(&at.site, name)?.diameter.nominal());
    let sold_as = sized.map(|s| s.size).or(believed);
    let asked = Fit {
        joint: Some(Joint::Seatpost),
        sold_as,
        ..Fit::default()
    };
    let Some(said) = at.fits(post, asked) else {
        return;
    };
    // Where published windows disagree the post itself decides, once it was tried.
    if at.now.part == Some(PartDid::Fits) && said.outcome == Outcome::Undecided {
        at.work.found(&said);
    } else {
        at.judged(&said, at.fit.reading);
    }
    let Some(sheet) = tube.shim.and_then(|s| Reading::exact(s).ok()) else {
        return;
    };
    let asked = Shim {
        bore: at.now.bore.clone(),
        post: placed(post),
        nominal: sold_as,
        clearance: at.heard(Limited::Clearance).map(|h| h.limits),
        sheet: Some(sheet),
        rule: Some(at.site.rule),
        ..Shim::default()
    };
    if let Ok(said) = asked.answer(at.site.tables) {
        at.judged(&said, "seat_tube.shim");
    }
}

/// How deep the post must go in, and whether it does.
fn insertion(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, sized: Option<&Sized<'_>>) {
    let read = at.part.and_then(|p| p.outside.first().map(Reading::value));
    let limits = tube.limits.iter().filter(|l| l.what == Limited::Insertion);
    let written = limits.filter_map(|l| {
        let (owner, depth) = (l.owner.clone(), l.limits.lower().known()?);
        Some(WrittenDepth { owner, depth })
    });
    let inserted = at.part.and_then(|p| Reading::exact(p.insertion?).ok());
    let asked = Insertion {
        post: sized.map(|s| s.size).or(read),
        weld: tube.weld_depth,
        written: written.collect(),
        inserted,
        clear: tube.clear_depth,
        rule: Some(at.site.rule),
    };
    let Ok(said) = asked.answer(at.site.tables) else {
        return;
    };
    if inserted.is_none() {
        at.work.found(&said);
        return;
    }
    let reading = match tube.weld_depth {
        None => "seat_tube.weld_depth",
        Some(_) => "seat_tube.post.insertion",
    };
    at.judged(&said, reading);
}
