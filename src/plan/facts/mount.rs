//! Facts, questions and tasks of brake mounts and faces.

use crate::fact::facts;
use crate::judge::Instrument;

facts! {
    /// What is found, left or could cure at brake mounts and faces.
    MountFact {
    }
    /// What is asked at brake mounts and faces.
    MountAsk {
    }
    /// What is to be done at brake mounts and faces.
    MountTask {
    }
}

impl MountAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
