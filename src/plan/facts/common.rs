//! Facts, questions and tasks that any place can have.

use alloc::boxed::Box;
use alloc::string::String;

use super::Fact;
use crate::evidence::Text;
use crate::fact::facts;
use crate::judge::Instrument;
use crate::measure::Limits;
use crate::plan::sheet::Limited;

facts! {
    /// What is found, left or could cure at any place.
    CommonFact {
        /// In words only; to be given a name of its own.
        Plain { what: Text, plain: Text },
        /// What a maker wrote as a limit, and whose it is.
        MakersLimit { on: Limited, is: Limits, by: String },
    }
    /// What is asked at any place.
    CommonAsk {
        /// In words only; to be given a name of its own.
        Plain { plain: Text, reason: Text, tool: Text },
        /// Two statements of the sheet cannot both be true: which of them is?
        WhichIsSo { of: Box<Fact>, with: Instrument },
    }
    /// What is to be done at any place.
    CommonTask {
        /// In words only; to be given a name of its own.
        Plain { plain: Text, reason: Text },
    }
}

impl CommonAsk {
    /// With what it is answered.
    #[must_use]
    pub fn with(&self) -> Instrument {
        match self {
            Self::Plain { tool, .. } => Instrument::Other(tool.clone()),
            Self::WhichIsSo { with, .. } => with.clone(),
        }
    }
}
