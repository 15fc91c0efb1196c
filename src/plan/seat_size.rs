//! Which seatpost size a seat tube is for.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::facts::{Found, SeatTubeAsk, SeatTubeFact};
use super::identity::{self, belief, observed};
use super::permit::Identity;
use super::round_place::{RoundPlace, read};
use super::sheet::SeatTubeSheet;
use super::site::Site;
use crate::identify::Feature;
use crate::judge::Instrument;
use crate::measure::{Reading, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Cutting, CuttingRule, Place, Seatpost};

/// A size to work to, and how sure it is.
#[derive(Debug, Clone)]
pub(super) struct Sized<'a> {
    pub size: Length,
    pub row: &'a Seatpost,
    /// How sure it is.
    pub known: Identity,
}

/// A bore may be this far off its size and still be it. Common practice: half a step of the series.
pub(super) const HALF_STEP_MM: f64 = 0.1;

/// What is asked where paint hides the size.
const CONFIRM: &str = "seat_tube.confirmed";

/// The row that a name stands for.
pub(super) fn row<'a>(site: &Site<'a>, name: &str) -> Option<&'a Seatpost> {
    let name = name.trim().trim_end_matches("mm").trim();
    site.tables.get::<Seatpost>(name)
}

fn sized(row: &Seatpost, known: Identity) -> Option<Sized<'_>> {
    let size = row.diameter.nominal()?;
    Some(Sized { size, row, known })
}

/// The identity of a size that only a post can prove.
fn doubtful() -> Identity {
    Identity::Doubtful(CONFIRM.into())
}

/// The size to work to.
pub(super) fn of<'a>(at: &mut RoundPlace<'a>, tube: &SeatTubeSheet) -> Option<Sized<'a>> {
    if let Some(proved) = tube.confirmed.as_deref() {
        return confirmed(at, proved);
    }
    let name = tube.believed.as_deref();
    let believed = name.and_then(|name| row(&at.site, name));
    // The work was done to a size; the belief that it was done to is what the readings are held against.
    let worked_to = believed.filter(|_| at.now.worked);
    if let Some(size) = worked_to.and_then(|row| sized(row, Identity::Known)) {
        return Some(size);
    }
    if at.now.covered {
        return painted(at, name, believed);
    }
    let mut seen = observed(Feature::Bore, &at.now.readings());
    seen.extend(observed(Feature::OutsideDiameter, &tube.outside));
    seen.extend(belief(name));
    let (place, names) = ((&Place::SeatTube, at.path), (name, None));
    let settled = identity::settle(&at.site, at.work, place, &seen, names, false)?;
    let found = at.site.tables.get::<Seatpost>(&settled.code)?;
    let sized = sized(found, settled.identity)?;
    // A label that says another size than the readings.
    if let (Some(name), Some(said)) = (name, believed.and_then(|row| row.diameter.nominal()))
        && settled_cmp(said, sized.size).is_ne()
    {
        let (believed, size) = (name.into(), sized.size);
        let other = SeatTubeFact::OtherThanBelieved { believed, size };
        at.work.settled(other);
    }
    Some(sized)
}

/// A size that a plug or the post proved.
fn confirmed<'a>(at: &mut RoundPlace<'a>, proved: &str) -> Option<Sized<'a>> {
    let Some(row) = row(&at.site, proved) else {
        let unlisted = SeatTubeFact::Unlisted {
            size: proved.into(),
        };
        at.work.contradicts(unlisted, CONFIRM, Instrument::Plug);
        return None;
    };
    let mut sized = sized(row, Identity::Known)?;
    let size = row.code.to_string();
    let proved = Found::of(SeatTubeFact::Proved { size: size.clone() });
    at.work.settled(proved.resting_on(row.diameter.evidence()));
    let (small, large) = (at.now.smallest()?, at.now.largest()?);
    // A bore that is larger all over than the post that proves it shows another size.
    let reach = mm(2.0 * HALF_STEP_MM) + small.expanded_uncertainty();
    if !at.now.worked && settled_below(sized.size + reach, small.value()) {
        let (low, high) = (small.value(), large.value());
        let smaller = SeatTubeFact::ProvedSmaller { size, low, high };
        at.work.contradicts(smaller, CONFIRM, Instrument::Plug);
        return None;
    }
    if at.now.covered && !paint_explains(at, sized.size) {
        sized.known = doubtful();
    }
    Some(sized)
}

/// The thickest coat of the tables, on both walls.
fn thickest_coat(site: &Site<'_>) -> Length {
    CuttingRule::greatest(Cutting::Coat, site.tables).map_or(mm(0.0), |(coat, _)| coat * 2.0)
}

/// Whether the thickest coat can hide what is missing to the size at the narrowest place; told where it cannot.
fn paint_explains(at: &mut RoundPlace<'_>, size: Length) -> bool {
    let Some(smallest) = at.now.smallest() else {
        return true;
    };
    let missing = size - smallest.value();
    let hidden = thickest_coat(&at.site) + smallest.expanded_uncertainty();
    let explained = !settled_below(hidden, missing);
    if !explained {
        let no_coat = SeatTubeFact::NoCoat { missing };
        at.work.settled(read(no_coat, &[smallest]));
    }
    explained
}

/// The size to work to under paint. Paint only narrows a bore: the true size lies at or above the largest reading less its
/// uncertainty, and no further above the smallest than a coat on both walls can hide.
fn painted<'a>(
    at: &mut RoundPlace<'a>,
    name: Option<&str>,
    believed: Option<&'a Seatpost>,
) -> Option<Sized<'a>> {
    let (small, large) = (at.now.smallest()?, at.now.largest()?);
    let hidden = thickest_coat(&at.site);
    let reach = |r: &Reading| r.expanded_uncertainty() + mm(HALF_STEP_MM);
    let agrees = |size: Length| {
        settled_cmp(size, large.value() - reach(&large)).is_ge()
            && settled_cmp(size, large.value() + reach(&large) + hidden).is_le()
            && settled_cmp(size, small.value() + small.expanded_uncertainty() + hidden).is_le()
    };
    let all = at.site.tables.all::<Seatpost>();
    let fits: Vec<&'a Seatpost> = all
        .filter(|post| post.diameter.nominal().is_some_and(agrees))
        .collect();
    if let (Some(size), None) = (name, believed) {
        at.work
            .settled(SeatTubeFact::Unlisted { size: size.into() });
    }
    let taken = match believed {
        Some(post) => fits.iter().copied().find(|p| p.code == post.code),
        None => fits.first().copied().filter(|_| fits.len() == 1),
    };
    let code = |post: &Seatpost| post.code.to_string();
    let agree: Vec<String> = fits.iter().copied().map(code).collect();
    let known = taken.is_some() && fits.len() == 1;
    if !known {
        let agree = agree.clone();
        at.work.ask(CONFIRM, SeatTubeAsk::WhichSize { agree });
    }
    let refused = believed.filter(|_| taken.is_none());
    if let Some(size) = refused.and_then(|post| post.diameter.nominal()) {
        paint_explains(at, size);
    }
    let (size, label) = (taken.map(code), believed.map(code));
    let fact = SeatTubeFact::UnderPaint { size, label, agree };
    let evidence = taken.and_then(|post| post.diameter.evidence());
    at.work.settled(Found::of(fact).resting_on(evidence));
    sized(taken?, if known { Identity::Known } else { doubtful() })
}
