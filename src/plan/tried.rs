//! The part, tried by hand in its place: the cheapest proof there is, and the last word on a fit that no figure settles.

use super::facts::{CommonFact, Found};
use super::sheet::PartDid;
use super::work::PlaceWork;
use crate::measure::Outcome;

pub(super) use super::facts::GoesIn;

/// Whether it is out, by what the part did and how it goes in. Common practice.
const fn is_out(did: PartDid, part: GoesIn) -> bool {
    match did {
        PartDid::Fits => false,
        PartDid::Tight => !matches!(part, GoesIn::Presses),
        PartDid::Loose => !matches!(part, GoesIn::Lies),
        PartDid::Rocks => true,
    }
}

/// Hears what the part did. Under a coating that is still there, or before a cut that is planned, it decides nothing yet.
pub(super) fn heard(work: &mut PlaceWork, did: Option<PartDid>, part: GoesIn, decides: bool) {
    let Some(did) = did else { return };
    let out = is_out(did, part);
    let found = Found {
        outcome: out.then_some(Outcome::NonconformityShown),
        ..Found::of(CommonFact::Tried { did, part })
    };
    if !decides {
        return work.settled(found);
    }
    work.fact(found);
    if out {
        work.cure(CommonFact::LookFirst);
    }
}
