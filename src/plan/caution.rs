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

impl Caution {
    /// The caution in words.
    ///
    /// ```
    /// use framegauge::plan::Caution;
    /// assert!(Caution::Carbon.words().contains("frame maker"));
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::MakersLimits => {
                "The frame and component maker's written limits, local rules and qualified practice come before anything here."
            }
            Self::Cutting => {
                "What is cut does not come back: measure twice, stop early, cut again only after measuring."
            }
            Self::Carbon => {
                "Do not ream, tap or face carbon laminate. Work only on metal inserts, and only with the frame maker's written consent."
            }
            Self::BondedInsert => {
                "A metal insert in carbon or titanium may be bonded: heat, force and cutting can part it. Ask the frame maker first."
            }
            Self::Titanium => {
                "Titanium: sharp cutter, slow, plenty of lubricant, and stop when it squeals."
            }
            Self::Brakes => {
                "Brakes: after any work at a mount, test the brake at walking pace and torque the bolts to the brake maker's figure. When in doubt, hand over to a qualified workshop."
            }
            Self::Steering => {
                "Steering: a cup, race or steerer that is not shown to fit must not be ridden. When in doubt, hand over to a qualified workshop."
            }
            Self::Seatpost => {
                "Seatpost: insert to the deepest of all minimum marks, those of post and frame; a loose or short post can break the tube and hurt the rider."
            }
            Self::CarbonPost => {
                "A carbon post must meet no edge: round the entry and the slot ends by hand, and use no grease, only assembly paste."
            }
            Self::TurnOneWay => {
                "A reamer or facing cutter turns only its own way, on the way out too, and tension comes off before the tool does. A tap or chaser is turned back to break the chip, and unscrewed to come out."
            }
            Self::Dust => {
                "Keep paint dust off the lungs and chips out of the frame: mask, extract, clean every tube before assembly."
            }
            Self::WeakFigures => {
                "Some limits here are from memory, common practice or our own arithmetic; they are listed, check them before you rely on them."
            }
        }
    }
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
