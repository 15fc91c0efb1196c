//! Facts about sizes, shared by every judgement.

use crate::evidence::Text;
use crate::fact::{closed_words, facts};

facts! {
    /// What is found of a size.
    SizeFact {
        /// A size held against its limits; the numbers stand in the finding.
        Against { of: Text, count: usize },
    }
}

closed_words! {
    /// What makes a finding doubtful: paint, or a size that nobody prints.
    ///
    /// ```
    /// use framegauge::judge::Doubt;
    /// assert_ne!(Doubt::Hidden, Doubt::NotSaid);
    /// ```
    Doubt {
        /// Nothing is shown until it is off.
        Hidden,
        /// What is within reads so on paint; the metal has another size.
        Within,
        /// It was read over paint, and that changes nothing.
        Same,
        /// Nobody said whether it was, and paint would explain it.
        NotSaid,
        /// The fit was read over paint on a part.
        Fit,
        /// It is not what the tables print, and no tolerance is published.
        NotPrinted,
    }
}
