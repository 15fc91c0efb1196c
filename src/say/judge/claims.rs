//! Facts and questions of `judge::ClaimFact` and `judge::ClaimAsk` in words.

use core::fmt;

use crate::fact::Worded;
use crate::judge::{ClaimAsk, ClaimFact};

impl fmt::Display for ClaimFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ClaimFact {}

impl fmt::Display for ClaimAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ClaimAsk {}
