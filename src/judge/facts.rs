//! What judgements find and ask, as facts: codes and numbers. Their sentences stand in `say`.

mod bores;
mod claims;
mod fits;
mod instrument;
mod sizes;
mod squares;
mod threads;

pub use bores::{BoreAsk, BoreFact};
pub use claims::{ClaimAsk, ClaimFact};
pub use fits::{FitAsk, FitFact};
pub use instrument::Instrument;
pub use sizes::{Doubt, PlainAsk, SizeFact};
pub use squares::{SquareAsk, SquareFact};
pub use threads::{ThreadAsk, ThreadFact};

use crate::fact::fact_kinds;

fact_kinds! {
    /// What a judgement found.
    Fact {
        /// A size against its limits.
        Size(SizeFact),
        /// Two parts that fit, or do not.
        Fit(FitFact),
        /// A bore, a post, a tube, a wall.
        Bore(BoreFact),
        /// A thread, a bolt.
        Thread(ThreadFact),
        /// Squareness, parallel faces, widths, depths.
        Square(SquareFact),
        /// What somebody claimed.
        Claim(ClaimFact),
    }
    /// What a judgement asks next.
    Ask {
        /// Of a fit.
        Fit(FitAsk),
        /// Of a bore, a post, a tube, a wall.
        Bore(BoreAsk),
        /// Of a thread, a bolt.
        Thread(ThreadAsk),
        /// Of squareness, parallel faces, widths, depths.
        Square(SquareAsk),
        /// Of a claim.
        Claim(ClaimAsk),
        /// In words only.
        Plain(PlainAsk),
    }
}

impl Ask {
    /// With what it is answered.
    #[must_use]
    pub fn with(&self) -> Instrument {
        match self {
            Self::Fit(ask) => ask.with(),
            Self::Bore(ask) => ask.with(),
            Self::Thread(ask) => ask.with(),
            Self::Square(ask) => ask.with(),
            Self::Claim(ask) => ask.with(),
            Self::Plain(PlainAsk::Plain { tool, .. }) => Instrument::Other(tool.clone()),
        }
    }
}

#[cfg(feature = "serde")]
use crate::read::{Shape, known_words};
#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(
    crate::evidence::Grade => Shape::Word(known_words::<crate::evidence::Grade>),
    crate::measure::Reading => Shape::Report { what: "value_mm, expanded_uncertainty_mm (k = 2)" },
    crate::measure::Limits => Shape::Report { what: "lower_mm, upper_mm, each `stated`, `none` or `unknown`, and their grade" },
    crate::measure::Outcome => Shape::Word(known_words::<crate::measure::Outcome>),
    crate::standard::Place => Shape::Text { what: "the code of a place, such as `shell.drive`" },
    crate::thread::Hand => Shape::Word(known_words::<crate::thread::Hand>),
    crate::thread::Side => Shape::Word(known_words::<crate::thread::Side>),
    crate::fit::MaterialKind => Shape::Word(known_words::<crate::fit::MaterialKind>),
);

impl From<&'static str> for Fact {
    fn from(words: &'static str) -> Self {
        Self::Size(SizeFact::Plain {
            what: "".into(),
            plain: words.into(),
        })
    }
}

impl From<alloc::string::String> for Fact {
    fn from(words: alloc::string::String) -> Self {
        Self::Size(SizeFact::Plain {
            what: "".into(),
            plain: words.into(),
        })
    }
}
