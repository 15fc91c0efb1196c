//! Facts, questions and tasks of a bore that takes a part, in words.

use alloc::borrow::Cow;
use core::fmt;

use crate::fact::Worded;
use crate::plan::{RoundFact, RoundTask};
use crate::quantity::in_mm;

impl fmt::Display for RoundFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bore { .. } => f.write_str("bore"),
            Self::CameOff { off } if off.sure_sign().is_eq() => {
                f.write_str("nothing that these readings can see came off")
            }
            Self::CameOff { off } => write!(f, "{off} on diameter"),
            Self::Grew { by } => write!(
                f,
                "it reads as if {} had come on in the work: measured elsewhere, or not clean",
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
            Self::CameOff { .. } | Self::Grew { .. } => "what came off",
            Self::AtMost { .. } => "bore",
            Self::CoatingLeft => "coating",
        })
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::Bore { count, .. } => Some(*count),
            Self::CameOff { .. } | Self::Grew { .. } | Self::AtMost { .. } | Self::CoatingLeft => {
                None
            }
        }
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
