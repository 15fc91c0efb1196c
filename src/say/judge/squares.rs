//! Facts and questions of `judge::SquareFact` and `judge::SquareAsk` in words.

use core::fmt;

use crate::fact::Worded;
use crate::judge::{SquareAsk, SquareFact};

impl fmt::Display for SquareFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for SquareFact {}

impl fmt::Display for SquareAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for SquareAsk {}
