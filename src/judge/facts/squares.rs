//! Facts and questions of squareness, parallel faces, widths, depths.

use super::Instrument;
use crate::fact::facts;

facts! {
    /// What is found of squareness, parallel faces, widths, depths.
    SquareFact {
    }
    /// What is asked of squareness, parallel faces, widths, depths.
    SquareAsk {
    }
}

impl SquareAsk {
    /// With what it is answered.
    #[must_use]
    pub const fn with(&self) -> Instrument {
        match *self {}
    }
}
