//! Facts and questions of a bore, a post, a tube, a wall.

use super::Instrument;
use crate::fact::facts;

facts! {
    /// What is found of a bore, a post, a tube, a wall.
    BoreFact {
    }
    /// What is asked of a bore, a post, a tube, a wall.
    BoreAsk {
    }
}

impl BoreAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
