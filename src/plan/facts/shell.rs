//! Facts, questions and tasks of the bottom-bracket shell.

use crate::fact::facts;
use crate::judge::Instrument;

facts! {
    /// What is found, left or could cure at the bottom-bracket shell.
    ShellFact {
    }
    /// What is asked at the bottom-bracket shell.
    ShellAsk {
    }
    /// What is to be done at the bottom-bracket shell.
    ShellTask {
    }
}

impl ShellAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
