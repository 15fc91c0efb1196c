//! Facts, questions and tasks of threads.

use crate::fact::facts;
use crate::judge::Instrument;

facts! {
    /// What is found, left or could cure at threads.
    ThreadFact {
    }
    /// What is asked at threads.
    ThreadAsk {
    }
    /// What is to be done at threads.
    ThreadTask {
    }
}

impl ThreadAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
