//! Facts and questions of two parts that fit, or do not.

use super::Instrument;
use crate::fact::facts;

facts! {
    /// What is found of two parts that fit, or do not.
    FitFact {
    }
    /// What is asked of two parts that fit, or do not.
    FitAsk {
    }
}

impl FitAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
