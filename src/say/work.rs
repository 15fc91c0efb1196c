//! Operations, turning and cautions in words.

use crate::plan::Caution;
use crate::standard::{Operation, Turning};

impl Operation {
    /// What it is called.
    ///
    /// ```
    /// assert_eq!(framegauge::standard::Operation::Ream.verb(), "ream");
    /// ```
    #[must_use]
    pub const fn verb(self) -> &'static str {
        match self {
            Self::Clean => "clean",
            Self::Ream => "ream",
            Self::Deepen => "deepen",
            Self::Chase => "chase",
            Self::Tap => "tap",
            Self::Face => "face",
            Self::Check => "check",
            Self::Replace => "replace",
            Self::Refer => "cut",
        }
    }
}

impl Turning {
    /// How it is turned, in words.
    ///
    /// ```
    /// assert!(framegauge::standard::Turning::BackAndForth.words().contains("turn back"));
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::OneWay => {
                "only its own way, on the way out too; tension comes off before the tool does"
            }
            Self::BackAndForth => {
                "half a turn back each turn, to break the chip; unscrewed to come out"
            }
        }
    }
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
