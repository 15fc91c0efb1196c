//! Named warnings that a result carries: true things that the numbers alone do not say.

/// A warning that stands beside a result.
///
/// ```
/// use framegauge::fit::Caution;
/// assert_eq!(Caution::PlasticCreeps.to_string(), "plastic_creeps");
/// assert!(Caution::PlasticCreeps.words().contains("falls with time"));
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, strum::Display, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum Caution {
    /// Fewer than two axes or two depths were measured.
    ShapeAtLeast,
    /// Repeated readings differ by more than their uncertainties allow.
    ScatterExceedsUncertainty,
    /// A size was taken as exact because nothing else was given.
    NominalOnly,
    /// A size is possible, not measured.
    NotMeasured,
    /// The kind of fit lies within the uncertainty of the readings.
    KindWithinUncertainty,
    /// The result rests on a remembered figure.
    FromMemory,
    /// A plastic part relaxes.
    PlasticCreeps,
    /// A wall thinner than a twentieth of its diameter.
    ThinShell,
    /// A joint shorter than its diameter.
    ShorterThanDiameter,
    /// The hub yields at this interference.
    HubYields,
    /// The shaft yields at this interference.
    ShaftYields,
    /// No strength is known, so first yield is not judged.
    StrengthUnknown,
    /// The roughness takes the whole interference at the loose end.
    NoGrip,
    /// The bearing may run without internal clearance.
    ClearanceUsedUp,
    /// The grip formula ignores the force that closes the tube.
    GripUpperBound,
    /// The part is safety relevant and the maker's written limit goes first.
    MakerFirst,
    /// The next size up of the series would fit as well.
    NextSizeFits,
    /// A named coefficient of expansion is an average over a wide range.
    ExpansionAverage,
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

/// Adds a caution once.
pub(super) fn note(cautions: &mut alloc::vec::Vec<Caution>, caution: Caution) {
    if !cautions.contains(&caution) {
        cautions.push(caution);
    }
}
