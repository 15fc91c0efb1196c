//! Facts and questions of what somebody claimed.

use super::Instrument;
use crate::fact::facts;

facts! {
    /// What is found of what somebody claimed.
    ClaimFact {
    }
    /// What is asked of what somebody claimed.
    ClaimAsk {
    }
}

impl ClaimAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
