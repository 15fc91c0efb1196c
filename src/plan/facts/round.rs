//! Facts, questions and tasks of a bore that takes a part: seat tube, press shell, head-tube seat.

use alloc::string::String;

use crate::fact::facts;
use crate::measure::Reading;
use crate::quantity::Length;
use crate::standard::Place;

facts! {
    /// What is found of a bore that takes a part.
    RoundFact {
        /// The bore as it was read, so many times; after the work, or before.
        Bore { after_work: bool, count: usize },
        /// So much came off on diameter by the readings.
        CameOff { off: Reading },
        /// After the work it reads as if metal had come on.
        Grew { by: Length },
        /// A maker's greatest bore, which stops a cut.
        AtMost { most: Length, by: String },
        /// What is to be written down when a coating was taken out by hand.
        CoatingLeft,
    }
    /// What is to be done at a bore that takes a part.
    RoundTask {
        /// The coating is taken out of it by hand.
        Clean { at: Place, laminate: bool },
        /// It is not reamed again: the last pass tore it.
        Torn { at: Place },
    }
}
