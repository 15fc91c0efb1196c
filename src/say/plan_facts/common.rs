//! Facts, questions and tasks of any place in words.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use crate::fact::Worded;
use crate::plan::{CommonAsk, CommonFact, CommonTask};

impl fmt::Display for CommonFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Plain { plain, .. } => f.write_str(plain),
            Self::MakersLimit { is, by, .. } => write!(f, "{is} ({by})"),
        }
    }
}

impl Worded for CommonFact {
    fn about(&self) -> Cow<'static, str> {
        match self {
            Self::Plain { what, .. } => what.clone(),
            Self::MakersLimit { on, .. } => format!("maker's limit on {on}").into(),
        }
    }
}

impl fmt::Display for CommonAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Plain { plain, .. } => f.write_str(plain),
            Self::WhichIsSo { of, .. } => write!(f, "which of the two is so? {of}"),
        }
    }
}

impl Worded for CommonAsk {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::Plain { reason, .. } => reason.clone(),
            Self::WhichIsSo { .. } => "two statements of the sheet cannot both be true; nothing is cut here before it is cleared".into(),
        }
    }
}

impl fmt::Display for CommonTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Plain { plain, .. } => f.write_str(plain),
        }
    }
}

impl Worded for CommonTask {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::Plain { reason, .. } => reason.clone(),
        }
    }
}
