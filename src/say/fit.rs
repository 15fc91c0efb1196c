//! Fits in words.

use crate::fit::{Caution, FitKind, Out, RoughnessLoss};

impl RoughnessLoss {
    /// The rule by name.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Din7190 { .. } => "DIN 7190-1:2017, 0.8 (Rz + Rz)",
            Self::TenthOfDepth { .. } => "a tenth of the roughness depth, 0.2 (Rz + Rz)",
        }
    }
}

impl Caution {
    /// The warning in words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::ShapeAtLeast => {
                "measured on fewer than two axes and two depths: out-of-round and taper are at least this, and two-point \
                 readings cannot see an odd number of lobes"
            }
            Self::ScatterExceedsUncertainty => {
                "readings of one place differ by more than their stated uncertainty: state a larger one, or measure again"
            }
            Self::NominalOnly => "a nominal size was taken as the real size: measure the part",
            Self::NotMeasured => "limits say what the part may be, not what it is: measure it",
            Self::KindWithinUncertainty => {
                "the readings are not fine enough to tell press from gap"
            }
            Self::FromMemory => {
                "rests on a figure that was remembered, not read: check it before relying on it"
            }
            Self::PlasticCreeps => {
                "plastic creeps: the pressure falls with time, take it as an upper bound"
            }
            Self::ThinShell => {
                "thin wall: the tube beyond the joint stiffens it, so the real pressure at the ends is higher and the real \
                 ring is less round than the formula assumes"
            }
            Self::ShorterThanDiameter => {
                "the joint is shorter than its diameter: the real pressure is higher than the formula says"
            }
            Self::HubYields => "the outer part yields at the largest interference",
            Self::ShaftYields => "the inner part yields at the largest interference",
            Self::StrengthUnknown => "no strength is given for a part, so yield is not judged",
            Self::NoGrip => {
                "after the surfaces have bedded in nothing is left of the smallest interference"
            }
            Self::ClearanceUsedUp => {
                "the press may take all the clearance inside the bearing: it would run rough and hot, take a looser fit or a \
                 looser clearance group"
            }
            Self::GripUpperBound => {
                "upper bound: closing the tube or clamp takes a part of the bolt force, and a gap lowers the grip further"
            }
            Self::MakerFirst => {
                "a failure here can throw the rider: the written limits of frame and part maker go before this answer"
            }
            Self::NextSizeFits => {
                "the next size of the series fits too: this part is too small, not merely loose"
            }
            Self::ExpansionAverage => {
                "a handbook coefficient of expansion is an average over a wide range and can be a few percent off at room \
                 temperature"
            }
        }
    }
}

impl FitKind {
    /// The kind in words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Clearance => "clearance fit: goes in by hand",
            Self::Transition => "transition fit: gap or light press, depending on the parts",
            Self::Interference => "interference fit: has to be pressed",
        }
    }
}

impl Out {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Neither => "neither member is out",
            Self::Hole => "the hole is out",
            Self::Shaft => "the inner part is out",
            Self::Both => "both members are out",
            Self::CannotTell => "the readings do not tell which member is out",
        }
    }
}
