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

/// Adds a caution once.
pub(super) fn note(cautions: &mut alloc::vec::Vec<Caution>, caution: Caution) {
    if !cautions.contains(&caution) {
        cautions.push(caution);
    }
}
