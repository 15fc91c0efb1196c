//! Cautions. They defer to makers' written limits, local rules and qualified practice.

/// A caution, by what can go wrong.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, strum::Display, strum::EnumIter,
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum Caution {
    /// Makers' written limits come first.
    MakersLimits,
    /// Cutting cannot be undone.
    Cutting,
    /// Carbon is not cut.
    Carbon,
    /// Metal insert in carbon.
    BondedInsert,
    /// Titanium.
    Titanium,
    /// Brakes.
    Brakes,
    /// Steering.
    Steering,
    /// Seatposts.
    Seatpost,
    /// A carbon post in a reamed tube.
    CarbonPost,
    /// Turning a cutter.
    TurnOneWay,
    /// Paint dust and chips.
    Dust,
    /// Figures from memory.
    WeakFigures,
}
