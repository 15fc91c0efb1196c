//! Facts and questions of `judge::BoreFact` and `judge::BoreAsk` in words.

use core::fmt;

use crate::fact::Worded;
use crate::judge::{BoreAsk, BoreFact};

impl fmt::Display for BoreFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for BoreFact {}

impl fmt::Display for BoreAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for BoreAsk {}
