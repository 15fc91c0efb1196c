//! Which seatpost size a seat tube is for.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::bore_now::BoreNow;
use super::identity::{self, belief, observed};
use super::permit::Identity;
use super::seat_tube::{CONFIRM, doubtful};
use super::sheet::SeatTubeSheet;
use super::site::Site;
use super::work::PlaceWork;
use crate::identify::Feature;
use crate::judge::{Finding, from_to};
use crate::measure::{Reading, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Cutting, CuttingRule, Place, Seatpost};

/// A size to work to, and how sure it is.
#[derive(Debug, Clone)]
pub(super) struct Sized {
    pub size: Length,
    pub identity: Identity,
}

/// A bore may be this far off its size and still be it. Common practice: half a step of the series.
const HALF_STEP_MM: f64 = 0.1;

/// The row that a name stands for.
fn row<'a>(site: &Site<'a>, name: &str) -> Option<&'a Seatpost> {
    site.tables
        .get::<Seatpost>(name.trim().trim_end_matches("mm").trim())
}

/// The size to work to.
pub(super) fn of(
    site: &Site<'_>,
    work: &mut PlaceWork,
    tube: &SeatTubeSheet,
    now: &BoreNow,
) -> Option<Sized> {
    if let Some(proved) = tube.confirmed.as_deref() {
        return confirmed(site, work, now, proved);
    }
    if now.worked {
        // The work was done to a size; the belief that it was done to is what the readings are held against.
        if let Some(size) = tube
            .believed
            .as_deref()
            .and_then(|name| row(site, name))
            .and_then(|row| row.diameter.nominal())
        {
            return Some(Sized {
                size,
                identity: Identity::Known,
            });
        }
    }
    if now.covered {
        return painted(site, work, tube, now);
    }
    let mut seen = observed(Feature::Bore, &now.readings());
    seen.extend(observed(Feature::OutsideDiameter, &tube.outside));
    seen.extend(belief(tube.believed.as_deref()));
    let settled = identity::settle(
        site,
        work,
        (&Place::SeatTube, "seat_tube"),
        &seen,
        (tube.believed.as_deref(), None),
        false,
    )?;
    let size = site
        .tables
        .get::<Seatpost>(&settled.code)?
        .diameter
        .nominal()?;
    label(site, work, tube, size);
    Some(Sized {
        size,
        identity: settled.identity,
    })
}

/// A size that a plug or the post proved.
fn confirmed(site: &Site<'_>, work: &mut PlaceWork, now: &BoreNow, proved: &str) -> Option<Sized> {
    let Some(row) = row(site, proved) else {
        work.contradicts(
            format!("{proved} was proved there, and no seatpost of that size is listed"),
            CONFIRM,
            "the post itself, outside micrometer",
        );
        return None;
    };
    let size = row.diameter.nominal()?;
    work.settled(
        Finding::stated("size", format!("{} mm, proved by a post or plug", row.code))
            .resting_on(row.diameter.evidence()),
    );
    let largest = now.largest()?;
    // A bore that is larger all over than the post that proves it shows another size.
    let smallest = now.smallest()?;
    if settled_below(
        size + mm(2.0 * HALF_STEP_MM) + smallest.expanded_uncertainty(),
        smallest.value(),
    ) && !now.worked
    {
        work.contradicts(
            format!(
                "{} mm was proved there, and the bore is nowhere below {}",
                row.code,
                from_to(smallest.value(), largest.value())
            ),
            CONFIRM,
            "the post itself, outside micrometer",
        );
        return None;
    }
    let identity = if paint_explains(site, size, now) || !now.covered {
        Identity::Known
    } else {
        no_paint(work, size, now);
        doubtful()
    };
    Some(Sized { size, identity })
}

/// The thickest coat of the tables, on both walls.
fn thickest_coat(site: &Site<'_>) -> Length {
    CuttingRule::greatest(Cutting::Coat, site.tables)
        .map_or(mm(0.0), |(one_side, _)| one_side * 2.0)
}

/// Whether the thickest coat can hide what is missing to the size at the narrowest place.
fn paint_explains(site: &Site<'_>, size: Length, now: &BoreNow) -> bool {
    now.smallest().is_none_or(|smallest| {
        !settled_below(
            thickest_coat(site) + smallest.expanded_uncertainty(),
            size - smallest.value(),
        )
    })
}

fn no_paint(work: &mut PlaceWork, size: Length, now: &BoreNow) {
    if let Some(smallest) = now.smallest() {
        work.settled(Finding {
            readings: Vec::from([smallest]),
            ..Finding::stated(
                "paint",
                format!(
                    "{} would be missing on diameter: no coat is so thick, so it is no paint, or not this size",
                    crate::quantity::in_mm(size - smallest.value())
                ),
            )
        });
    }
}

/// The size to work to under paint. Paint only narrows a bore: the true size lies at or above the largest reading less its
/// uncertainty, and no further above the smallest than a coat on both walls can hide.
fn painted(
    site: &Site<'_>,
    work: &mut PlaceWork,
    tube: &SeatTubeSheet,
    now: &BoreNow,
) -> Option<Sized> {
    let (small, large) = (now.smallest()?, now.largest()?);
    let hidden = thickest_coat(site);
    let reach = |r: &Reading| r.expanded_uncertainty() + mm(HALF_STEP_MM);
    let fits: Vec<&Seatpost> = site
        .tables
        .all::<Seatpost>()
        .filter(|post| {
            post.diameter.nominal().is_some_and(|d| {
                settled_cmp(d, large.value() - reach(&large)).is_ge()
                    && settled_cmp(d, large.value() + reach(&large) + hidden).is_le()
                    && settled_cmp(d, small.value() + small.expanded_uncertainty() + hidden).is_le()
            })
        })
        .collect();
    let names = |posts: &[&Seatpost]| {
        posts
            .iter()
            .map(|p| p.code.as_ref())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let believed = tube.believed.as_deref().and_then(|name| row(site, name));
    if let Some(name) = tube.believed.as_deref()
        && believed.is_none()
    {
        work.settled(Finding::stated(
            "belief",
            format!("no seatpost of the size {name} is listed"),
        ));
    }
    let others: Vec<&Seatpost> = fits
        .iter()
        .copied()
        .filter(|p| believed.is_none_or(|b| b.code != p.code))
        .collect();
    match (believed, fits.as_slice()) {
        (Some(post), _) if fits.iter().any(|p| p.code == post.code) => {
            let words = if others.is_empty() {
                format!(
                    "{} mm, as believed: no other size agrees with the readings",
                    post.code
                )
            } else {
                format!(
                    "{} mm as believed is possible, and so is {}",
                    post.code,
                    names(&others)
                )
            };
            work.settled(Finding::stated("size", words).resting_on(post.diameter.evidence()));
            let identity = if others.is_empty() {
                Identity::Known
            } else {
                work.ask_plain(
                    CONFIRM,
                    format!("is it really {}? Try a post of known size, and measure the bore below the paint", post.code),
                    format!("the readings allow {} as well, and a reamer cannot put metal back", names(&others)),
                    "post or plug of known size",
                );
                doubtful()
            };
            return post.diameter.nominal().map(|size| Sized { size, identity });
        }
        (None, [only]) => {
            work.settled(
                Finding::stated("size", format!("{} mm by its bore", only.code))
                    .resting_on(only.diameter.evidence()),
            );
            return only.diameter.nominal().map(|size| Sized {
                size,
                identity: Identity::Known,
            });
        }
        (Some(post), _) => {
            if let Some(size) = post.diameter.nominal()
                && !paint_explains(site, size, now)
            {
                no_paint(work, size, now);
            }
            work.settled(Finding::stated(
                "size",
                format!(
                    "the sheet says {} mm, the readings say {}: {}. The readings are believed, the label is not",
                    post.code,
                    from_to(small.value(), large.value()),
                    if fits.is_empty() {
                        String::from("no listed size agrees")
                    } else {
                        format!("that is {}", names(&fits))
                    }
                ),
            ));
        }
        (None, []) => work.settled(Finding::stated(
            "size",
            "no listed seatpost size agrees with the bore",
        )),
        (None, several) => work.settled(Finding::stated(
            "size",
            format!(
                "one of {}: the bore alone does not say which",
                names(several)
            ),
        )),
    }
    work.ask_plain(
        CONFIRM,
        "which post goes in below the paint? Measure the bore there, and try a post or plug of known size",
        "the readings do not name the size that was believed, and paint hides the rest",
        "post or plug of known size, telescoping gauge",
    );
    None
}

/// A label that says another size than the readings.
fn label(site: &Site<'_>, work: &mut PlaceWork, tube: &SeatTubeSheet, size: Length) {
    let Some(name) = tube.believed.as_deref() else {
        return;
    };
    match row(site, name).and_then(|row| row.diameter.nominal()) {
        Some(said) if settled_cmp(said, size).is_ne() => work.settled(Finding::stated(
            "belief",
            format!(
                "the sheet says {name}, the readings say {:.1}: the readings are believed, the label is not",
                crate::quantity::in_mm(size)
            ),
        )),
        _ => {}
    }
}
