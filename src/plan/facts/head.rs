//! Facts, questions and tasks of head tube, crown and steerer.

use crate::fact::facts;
use crate::judge::Instrument;

facts! {
    /// What is found, left or could cure at head tube, crown and steerer.
    HeadFact {
    }
    /// What is asked at head tube, crown and steerer.
    HeadAsk {
    }
    /// What is to be done at head tube, crown and steerer.
    HeadTask {
    }
}

impl HeadAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
