//! Facts, questions and tasks of the seat tube.

use crate::fact::facts;
use crate::judge::Instrument;

facts! {
    /// What is found, left or could cure at the seat tube.
    SeatTubeFact {
    }
    /// What is asked at the seat tube.
    SeatTubeAsk {
    }
    /// What is to be done at the seat tube.
    SeatTubeTask {
    }
}

impl SeatTubeAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
