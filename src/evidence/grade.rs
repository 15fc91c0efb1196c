//! How sure a figure is.

/// How sure a figure is, strongest last so that `a < b` reads "weaker than".
///
/// ```
/// use framegauge::Grade;
/// assert!(Grade::Memory < Grade::Published);
/// assert_eq!(Grade::Published.weaker(Grade::CommonPractice), Grade::CommonPractice);
/// assert_eq!("second_hand".parse::<Grade>().unwrap(), Grade::SecondHand);
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Grade {
    /// A shop's own row: as sure as the shop.
    Shop,
    /// Recalled, not found in any text.
    Memory,
    /// A rule of the trade without a single source.
    CommonPractice,
    /// Our arithmetic on graded inputs.
    Derived,
    /// A publication quoted by another.
    SecondHand,
    /// One publication.
    Published,
    /// Two or more independent publications.
    Agreeing,
    /// Read in the standard, or in a transcription that agrees with a second one.
    Standard,
}

impl Grade {
    /// The weaker of two grades.
    #[must_use]
    pub fn weaker(self, other: Self) -> Self {
        self.min(other)
    }
}
