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
pub(crate) use instrument::asks;
pub use sizes::{Doubt, SizeFact};
pub use squares::{SquareAsk, SquareFact};
pub use threads::{Contradiction, ThreadAsk, ThreadFact};

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
        }
    }
}

#[cfg(feature = "serde")]
mod values {
    use crate::evidence::Grade;
    use crate::fact::values_as_they_are;
    use crate::fit::MaterialKind;
    use crate::measure::{Limits, Outcome, Reading};
    use crate::read::{Shape, Told, known_words, told};
    use crate::standard::Place;
    use crate::thread::{Hand, Side};

    told! {
        /// value_mm, expanded_uncertainty_mm (k = 2)
        Reading: Report,
        /// lower_mm, upper_mm, each `stated`, `none` or `unknown`, and their grade
        Limits: Report,
        /// the code of a place, such as `shell.drive`
        Place: Text,
    }

    told! {
        Grade => Shape::Word(known_words::<Grade>),
        Outcome => Shape::Word(known_words::<Outcome>),
        Hand => Shape::Word(known_words::<Hand>),
        Side => Shape::Word(known_words::<Side>),
        MaterialKind => Shape::Word(known_words::<MaterialKind>),
    }
    values_as_they_are! {
        Grade => <Grade as Told>::SHAPE,
        Reading => <Reading as Told>::SHAPE,
        Limits => <Limits as Told>::SHAPE,
        Outcome => <Outcome as Told>::SHAPE,
        Place => <Place as Told>::SHAPE,
        Hand => <Hand as Told>::SHAPE,
        Side => <Side as Told>::SHAPE,
        MaterialKind => <MaterialKind as Told>::SHAPE,
    }
}
