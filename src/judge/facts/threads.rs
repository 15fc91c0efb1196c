//! Facts and questions of a thread, a bolt.

use super::Instrument;
use crate::fact::facts;

facts! {
    /// What is found of a thread, a bolt.
    ThreadFact {
    }
    /// What is asked of a thread, a bolt.
    ThreadAsk {
    }
}

impl ThreadAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
