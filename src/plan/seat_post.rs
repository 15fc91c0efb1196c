//! The post in its tube: fit, shim, insertion. All of it is judged elsewhere and heard here.

use alloc::vec::Vec;

use super::bore_now::BoreNow;
use super::caution::Caution;
use super::seat_size::Sized;
use super::sheet::{Heard, Limited, PartDid, SeatTubeSheet};
use super::site::Site;
use super::tried::{self, GoesIn};
use super::work::{Answers, PlaceWork};
use crate::fit::MaterialKind;
use crate::judge::{Finding, Fit, Insertion, MemberOf, Shim, WrittenDepth};
use crate::measure::{Outcome, Placed, Reading, settled_below};
use crate::quantity::Length;
use crate::standard::{Joint, Seatpost};

/// What takes the answers to a fit that is not decided.
const FIT: Answers<'static> = Answers {
    reading: "seat_tube.post.outside",
    trial: "seat_tube.passes",
    written: "seat_tube.limits",
};

/// The post in the tube as it is, and whether the shim at hand helps.
pub(super) fn fit(
    site: &Site<'_>,
    work: &mut PlaceWork,
    tube: &SeatTubeSheet,
    now: &BoreNow,
    sized: Option<&Sized>,
) {
    let Some(post) = &tube.post else { return };
    if post.material == Some(MaterialKind::Carbon) {
        work.cautions.push(Caution::CarbonPost);
    }
    let outside: Vec<Placed> = post.outside.iter().map(|r| Placed::from(*r)).collect();
    if outside.is_empty() && post.outside_limits.is_none() {
        work.ask_plain(
            "seat_tube.post.outside",
            "outside diameter of the post where it will sit",
            "the fit cannot be judged without it",
            "outside micrometer",
        );
        return;
    }
    // A tube that is still to be reamed or cleaned is not judged by the fit of today.
    let unfinished = now.covered
        || sized.zip(now.smallest()).is_some_and(|(sized, smallest)| {
            settled_below(
                smallest.value() + smallest.expanded_uncertainty(),
                sized.size,
            )
        });
    tried::heard(work, now.part, GoesIn::Slides, !unfinished);
    if unfinished {
        return;
    }
    let sold_as = sized.map(|s| s.size).or_else(|| believed(site, tube));
    let heard = Heard::of(&tube.limits, Limited::Clearance);
    let asked = Fit {
        joint: Some(Joint::Seatpost),
        hole: MemberOf::placed(now.bore.clone()),
        shaft: MemberOf {
            readings: outside.clone(),
            limits: post.outside_limits,
            ..MemberOf::default()
        },
        sold_as,
        clearance: heard.iter().map(|h| h.limits).collect(),
        owner: heard.as_ref().map(Heard::owner),
        rule: Some(site.rule),
        ..Fit::default()
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    work.settled(Finding::stated("post in its tube", said.words()));
    // Where published windows disagree the post itself decides, once it was tried.
    let fits = now.part == Some(PartDid::Fits) && said.outcome == Outcome::Undecided;
    if fits {
        work.found(&said);
    } else {
        work.judged(&said, FIT);
    }
    let Some(sheet) = tube.shim.and_then(|s| Reading::exact(s).ok()) else {
        return;
    };
    let asked = Shim {
        bore: now.bore.clone(),
        post: outside,
        nominal: sold_as,
        clearance: heard.map(|h| h.limits),
        sheet: Some(sheet),
        rule: Some(site.rule),
        ..Shim::default()
    };
    if let Ok(said) = asked.answer(site.tables) {
        work.judged(
            &said,
            Answers {
                reading: "seat_tube.shim",
                ..FIT
            },
        );
    }
}

fn believed(site: &Site<'_>, tube: &SeatTubeSheet) -> Option<Length> {
    let row = site.tables.get::<Seatpost>(tube.believed.as_deref()?)?;
    row.diameter.nominal()
}

/// How deep the post must go in, and whether it does.
pub(super) fn insertion(
    site: &Site<'_>,
    work: &mut PlaceWork,
    tube: &SeatTubeSheet,
    sized: Option<&Sized>,
) {
    let post = sized.map(|s| s.size).or_else(|| {
        tube.post
            .as_ref()
            .and_then(|p| p.outside.first().map(Reading::value))
    });
    let written = tube
        .limits
        .iter()
        .filter(|l| l.what == Limited::Insertion)
        .filter_map(|l| {
            Some(WrittenDepth {
                owner: l.owner.clone(),
                depth: l.limits.lower().known()?,
            })
        })
        .collect();
    let inserted = tube
        .post
        .as_ref()
        .and_then(|p| p.insertion)
        .and_then(|d| Reading::exact(d).ok());
    let asked = Insertion {
        post,
        weld: tube.weld_depth,
        written,
        inserted,
        clear: tube.clear_depth,
        rule: Some(site.rule),
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    work.settled(Finding::stated("insertion", said.words()));
    if inserted.is_some() {
        let weld = tube.weld_depth.is_none();
        work.judged(
            &said,
            Answers {
                reading: if weld {
                    "seat_tube.weld_depth"
                } else {
                    "seat_tube.post.insertion"
                },
                ..FIT
            },
        );
    } else {
        work.found(&said);
    }
}
