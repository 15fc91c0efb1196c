//! Facts and questions of `judge::FitFact` and `judge::FitAsk` in words.

use core::fmt;

use crate::fact::Worded;
use crate::judge::{FitAsk, FitFact};

impl fmt::Display for FitFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for FitFact {}

impl fmt::Display for FitAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for FitAsk {}
