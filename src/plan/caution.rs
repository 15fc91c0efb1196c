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

#[cfg(feature = "serde")]
/// Its code alone.
struct Code(Caution);

#[cfg(feature = "serde")]
impl serde::Serialize for Code {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

#[cfg(feature = "serde")]
crate::read::told! { Code => crate::read::Shape::Word(crate::read::known_words::<Caution>) }

#[cfg(feature = "serde")]
crate::read::goes_out! {
    Caution(this) {
        /// which caution
        code: Code = Code(*this),
        /// the caution
        words: &str = this.words(),
    }
}
