//! A brake tab on a sliding dropout.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NextStep, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{Outcome, settled_cmp};
use crate::quantity::{Angle, Length, Printed, in_mm, mm, positive, to_mm};

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
/// let along = sliding_tab(deg(26.0), deg(26.0), mm(15.0), mm(51.0)).unwrap();
/// assert_eq!(along.outcome, Outcome::ConformityShown);
/// let flat = sliding_tab(deg(26.0), deg(0.0), mm(15.0), mm(51.0)).unwrap();
/// assert_eq!(flat.outcome, Outcome::NonconformityShown);
/// ```
pub fn sliding_tab(
    dropout_slot: Angle,
    tab_slot: Angle,
    travel: Length,
    hole_spacing: Length,
) -> Result<Verdict, Error> {
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
    let spacing = positive("hole spacing", hole_spacing)?;
    let apart = tab_slot.value - dropout_slot.value;
    // The tab moves as far along its slot as the axle along its own; what is left is the chord between the two directions.
    let strays = mm(2.0 * to_mm(travel) * libm::fabs(libm::sin(apart / 2.0)));
    let parallel = settled_cmp(strays, mm(0.001)).is_lt();
    // One bolt in a round hole: the caliper turns about it, and the other bolt runs on an arc.
    let sweep = if to_mm(travel) <= to_mm(spacing) * 2.0 {
        Some(crate::quantity::deg(
            2.0 * libm::asin(to_mm(travel) / (2.0 * to_mm(spacing))).to_degrees(),
        ))
    } else {
        None
    };
    let outcome = if parallel {
        Outcome::ConformityShown
    } else {
        Outcome::NonconformityShown
    };
    let words = if parallel {
        format!(
            "a slot in the tab parallel to the dropout ({:.0}°) keeps the caliper where it stands against the axle",
            dropout_slot.in_unit()
        )
    } else {
        format!(
            "over {} of travel the caliper strays {} from the axle",
            in_mm(travel),
            in_mm(strays)
        )
    };
    let mut said = Verdict::from_findings("brake tab on a sliding dropout", Vec::from([Finding {
        outcome: Some(outcome),
        grade: Some(Grade::Derived),
        owner: String::from("plane geometry"),
        ..Finding::stated("slots", words.clone())
    }]))
    .saying(format!("{}.", super::words::capital(&words)))
    .with(Worked::length("strays from the axle by", strays, "2 x travel x sin(half the angle between the slots)"))
    .with(Worked::length("radius of the arc for one hole and one slot", spacing, "distance of the two bolts"))
    .then(NextStep::new("clearance of the caliper to the stay over the whole travel", "a right slot still needs room to slide", "caliper or a mock-up"))
    .minding("brakes: a tab is for a qualified builder; its position has a published tolerance of 0.1 mm");
    if let Some(sweep) = sweep {
        said = said.with(Worked::angle("arc for one hole and one slot", sweep, "2 asin(travel / 2 spacing): the caliper turns by this much about the fixed bolt, and no longer keeps its place"));
    }
    Ok(said)
}
