//! What presses leave of the clearance inside a bearing.

use alloc::vec::Vec;

use super::caution::{Caution, note};
use super::press::non_negative;
use crate::measure::Limits;
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// What presses leave of the clearance inside a bearing.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ClearanceLeft {
    /// Radial internal clearance before mounting.
    pub before: Limits,
    /// Least clearance left: least before less most taken. Negative means preload.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "least_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub least: Length,
    /// Most clearance left.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "most_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub most: Length,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

/// Clearance left after raceways have moved: each change is (least, most) on diameter, from [`bore_shrink`](super::PressJoint::bore_shrink) of the
/// outer ring and [`outside_growth`](super::PressJoint::outside_growth) of the inner ring.
///
/// # Errors
/// `Missing` when the clearance before has an unknown side; `OutOfRange` for a negative change, `Contradiction` for one out of order.
///
/// ```
/// use framegauge::{fit::{Caution, ClearanceGroup, clearance_left, internal_clearance}, in_mm, mm, um};
/// let (before, _) = internal_clearance(mm(30.0), ClearanceGroup::CN).unwrap();
/// let left = clearance_left(before, &[(um(0.0), um(11.0))]).unwrap();
/// assert_eq!(in_mm(left.least).to_string(), "-0.006 mm");
/// assert!(left.cautions.contains(&Caution::ClearanceUsedUp));
/// ```
pub fn clearance_left(
    before: Limits,
    changes: &[(Length, Length)],
) -> Result<ClearanceLeft, Error> {
    let (Some(low), Some(high)) = (before.lower().known(), before.upper().known()) else {
        return Err(Error::new(
            ErrorKind::Missing,
            "clearance",
            before,
            "the clearance before mounting is not known on both sides",
            "take the bearing's clearance group",
        ));
    };
    let (mut least, mut most) = (to_mm(low), to_mm(high));
    for (small, large) in changes {
        let small = non_negative("change", to_mm(*small))?;
        let large = non_negative("change", to_mm(*large))?;
        if small > large {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "change",
                alloc::format!("{small} to {large} mm"),
                "the least change is above the most",
                "give the least first",
            ));
        }
        least -= large;
        most -= small;
    }
    let (least, most) = (mm(least), mm(most));
    let mut cautions = Vec::new();
    if crate::measure::settled_cmp(least, mm(0.0)).is_le() {
        note(&mut cautions, Caution::ClearanceUsedUp);
    }
    Ok(ClearanceLeft {
        before,
        least,
        most,
        cautions,
    })
}
