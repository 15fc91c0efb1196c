//! A brake tab on a sliding dropout.

use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked};
use super::{ClaimAsk, ClaimFact, Finding};
use crate::Error;
use crate::measure::settled_below;
use crate::quantity::{Angle, Length, mm, positive};

/// Straying less than this is none.
const PARALLEL: Length = mm(0.001);

/// A brake tab on a sliding dropout: how far a point of the caliper moves from where it should stand against the axle.
///
/// The axle slides along the dropout slot by `travel`; the caliper slides along a slot of its own, at another angle perhaps.
/// In a parallel slot nothing changes against the axle.
///
/// # Errors
/// `NotFinite` and `OutOfRange` for angles and lengths that are none.
///
/// ```
/// use framegauge::{deg, judge::sliding_tab, measure::Outcome, mm};
/// let along = sliding_tab(deg(26.0), deg(26.0), mm(15.0)).unwrap();
/// assert_eq!(along.outcome, Outcome::ConformityShown);
/// let flat = sliding_tab(deg(26.0), deg(0.0), mm(15.0)).unwrap();
/// assert_eq!(flat.outcome, Outcome::NonconformityShown);
/// ```
pub fn sliding_tab(dropout_slot: Angle, tab_slot: Angle, travel: Length) -> Result<Verdict, Error> {
    for (name, angle) in [("dropout slot", dropout_slot), ("tab slot", tab_slot)] {
        if !angle.value.is_finite() {
            return Err(Error::new(
                crate::ErrorKind::NotFinite,
                name,
                angle.value,
                "an angle must be finite",
                "give it in degrees from horizontal",
            ));
        }
    }
    let travel = positive("travel", travel)?;
    // The tab moves as far along its slot as the axle along its own; what is left is the chord between the two directions.
    let apart = tab_slot.value - dropout_slot.value;
    let by = travel * (2.0 * libm::fabs(libm::sin(apart / 2.0)));
    let parallel = settled_below(by, PARALLEL);
    let fact = if parallel {
        ClaimFact::SlotsAlong { at: dropout_slot }
    } else {
        ClaimFact::Strays { travel, by }
    };
    let found = Vec::from([Finding::derived(parallel, fact)]);
    Ok(Verdict::from_findings("sliding brake tab", found)
        .with(Worked::length("strays by", by, "2 travel sin(angle / 2)"))
        .then(NextStep::of(ClaimAsk::StayClearance))
        .minding(ClaimFact::TabForBuilder))
}
