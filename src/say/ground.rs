//! Limits, instruments and grades in words.

use alloc::format;
use core::fmt;

use crate::evidence::{Grade, Text};
use crate::measure::{Able, Bound, Limits};
use crate::quantity::{Length, in_mm};

impl fmt::Display for Limits {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.lower(), self.upper()) {
            (Bound::At(low), Bound::At(high)) => write!(
                f,
                "{:.3} to {}",
                crate::quantity::settled_mm(low),
                in_mm(high)
            ),
            (Bound::At(low), Bound::Open) => write!(f, "at least {}", in_mm(low)),
            (Bound::Open, Bound::At(high)) => write!(f, "at most {}", in_mm(high)),
            (Bound::At(low), Bound::Unknown) => {
                write!(f, "from {}, upper limit unknown", in_mm(low))
            }
            (Bound::Unknown, Bound::At(high)) => {
                write!(f, "up to {}, lower limit unknown", in_mm(high))
            }
            (Bound::Open, Bound::Open) => f.write_str("no limit"),
            (Bound::Unknown | Bound::Open, Bound::Unknown) | (Bound::Unknown, Bound::Open) => {
                f.write_str("limits unknown")
            }
        }
    }
}

impl Grade {
    /// The grade in words for a person.
    ///
    /// ```
    /// assert_eq!(framegauge::Grade::Memory.words(), "from memory");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Shop => "your own row",
            Self::Memory => "from memory",
            Self::CommonPractice => "common practice",
            Self::Derived => "derived",
            Self::SecondHand => "second-hand",
            Self::Published => "published once",
            Self::Agreeing => "published, two agree",
            Self::Standard => "read in the standard",
        }
    }
}

impl Able {
    /// Which can decide these limits at this size, and which cannot.
    pub(crate) fn said(can: &[Text], cannot: &[Text], limits: &Limits, size: Length) -> Text {
        match (can.first(), cannot.is_empty()) {
            (Some(best), true) => format!("{best} can decide {limits}"),
            (Some(best), false) => format!(
                "{} cannot decide {limits}; {best} can",
                cannot.join(" and ")
            ),
            (None, false) => format!(
                "none of {} can decide {limits}: a finer instrument is needed",
                cannot.join(", ")
            ),
            (None, true) => format!(
                "no instrument here measures this with a known uncertainty at {}",
                in_mm(size)
            ),
        }
        .into()
    }
}
