//! The part, tried by hand in its place: the cheapest proof there is, and the last word on a fit that no figure settles.

use alloc::string::String;

use super::sheet::PartDid;
use super::work::PlaceWork;
use crate::judge::Finding;
use crate::measure::Outcome;

/// How the part is meant to go in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum GoesIn {
    /// It slides and is clamped: a post.
    Slides,
    /// It is laid in by hand: the bearing of an integrated seat.
    Lies,
    /// It is pressed in: a cup.
    Presses,
}

/// What the trial says, by what the part did and how it goes in. Common practice.
const fn said(did: PartDid, goes_in: GoesIn) -> (bool, &'static str) {
    match (did, goes_in) {
        (PartDid::Fits, GoesIn::Slides) => (false, "it slides with a light drag, without a knock"),
        (PartDid::Fits, _) => (false, "it started as it should"),
        (PartDid::Tight, GoesIn::Presses) => (false, "it needs force, as a pressed part does"),
        (PartDid::Tight, GoesIn::Slides) => (
            true,
            "it does not go in by hand: paint, a burr, a pinched tube, or another size; never drive it in",
        ),
        (PartDid::Tight, GoesIn::Lies) => (
            true,
            "it does not drop in: paint, a burr, or another bearing",
        ),
        (PartDid::Loose, GoesIn::Presses) => (
            true,
            "it goes in with play: nothing presses, it must not be ridden",
        ),
        (PartDid::Loose, GoesIn::Slides) => (
            true,
            "it goes in with play: a clamp that closes a gap breaks the post or the tube",
        ),
        (PartDid::Loose, GoesIn::Lies) => (false, "it drops in, as it should; it must not rock"),
        (PartDid::Rocks, _) => (true, "it rocks: it does not sit on its seat all round"),
    }
}

/// Hears what the part did. Under a coating that is still there, or before a cut that is planned, it decides nothing yet.
pub(super) fn heard(work: &mut PlaceWork, did: Option<PartDid>, goes_in: GoesIn, decides: bool) {
    let Some(did) = did else { return };
    let (out, words) = said(did, goes_in);
    let finding = Finding {
        outcome: out.then_some(Outcome::NonconformityShown),
        ..Finding::stated("part, tried after the last pass", words)
    };
    if !decides {
        work.settled(finding);
        return;
    }
    work.fact(finding);
    if out {
        work.cure(String::from(
            "look for paint, chips and burrs first; then bore and part again by measurement",
        ));
    }
}
