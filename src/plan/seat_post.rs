//! The post in its tube: fit, shim, insertion. All of it is judged elsewhere and heard here.

use super::caution::Caution;
use super::round_place::{RoundPlace, placed};
use super::seat_size::{Sized, row};
use super::sheet::{Limited, PartDid, SeatTubeSheet};
use super::tried::{self, GoesIn};
use crate::fit::MaterialKind;
use crate::judge::{Fit, Insertion, Shim, WrittenDepth};
use crate::measure::{Outcome, Reading, settled_below};
use crate::standard::Joint;

/// The post in the tube as it is, and whether the shim at hand helps.
pub(super) fn fit(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, sized: Option<&Sized<'_>>) {
    let Some(post) = at.part else { return };
    if post.material == Some(MaterialKind::Carbon) {
        at.work.cautions.push(Caution::CarbonPost);
    }
    if at.known_part().is_none() {
        return;
    }
    // A tube that is still to be reamed or cleaned is not judged by the fit of today.
    let narrow = |sized: &Sized<'_>, smallest: Reading| {
        settled_below(
            smallest.value() + smallest.expanded_uncertainty(),
            sized.size,
        )
    };
    let too_small = sized
        .zip(at.now.smallest())
        .is_some_and(|(s, r)| narrow(s, r));
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
pub(super) fn insertion(at: &mut RoundPlace<'_>, tube: &SeatTubeSheet, sized: Option<&Sized<'_>>) {
    let read = at.part.and_then(|p| p.outside.first().map(Reading::value));
    let limits = tube.limits.iter().filter(|l| l.what == Limited::Insertion);
    let written = limits.filter_map(|l| {
        Some(WrittenDepth {
            owner: l.owner.clone(),
            depth: l.limits.lower().known()?,
        })
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
