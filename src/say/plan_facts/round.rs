//! Facts, questions and tasks of a bore that takes a part, in words.

use alloc::borrow::Cow;
use core::fmt;

use crate::fact::Worded;
use crate::plan::{RoundAsk, RoundFact, RoundTask};
use crate::quantity::in_mm;

impl fmt::Display for RoundFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bore { .. } => f.write_str("bore"),
            Self::CameOff { off } => write!(f, "{off} on diameter at the narrowest place"),
            Self::Narrower { by } => write!(
                f,
                "the bore reads {} narrower than before the work: measured elsewhere, or not clean",
                in_mm(*by)
            ),
            Self::AtMost { most, by } => write!(f, "bore at most {} ({by})", in_mm(*most)),
            Self::CoatingLeft => f.write_str(
                "what is left of the coating, and the bore where it is off, into the sheet as a pass",
            ),
        }
    }
}

impl Worded for RoundFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Bore {
                after_work: true, ..
            } => "bore after the work",
            Self::Bore { .. } => "bore as found",
            Self::CameOff { .. } => "what came off",
            Self::Narrower { .. } | Self::AtMost { .. } => "bore",
            Self::CoatingLeft => "coating",
        })
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::Bore { count, .. } => Some(*count),
            Self::CameOff { .. }
            | Self::Narrower { .. }
            | Self::AtMost { .. }
            | Self::CoatingLeft => None,
        }
    }
}

impl fmt::Display for RoundAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::PartOutside => "outside diameter of the part where it will sit",
        })
    }
}

impl Worded for RoundAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::PartOutside => "the fit cannot be judged without it",
        })
    }
}

impl fmt::Display for RoundTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Clean { at, laminate } => {
                let how = if *laminate {
                    ": wood, plastic or a fine cloth, nothing that scrapes"
                } else {
                    ", down to metal"
                };
                write!(f, "Take the coating out of the {} by hand{how}", at.words())
            }
            Self::Torn { at } => {
                write!(f, "Do not ream the {}: the last pass tore it", at.words())
            }
        }
    }
}

impl Worded for RoundTask {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Clean { .. } => "a part on paint sits neither square nor tight",
            Self::Torn { .. } => {
                "a torn bore is reamed again only with another cutter or another hand"
            }
        })
    }
}
