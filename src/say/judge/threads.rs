//! Facts and questions of `judge::ThreadFact` and `judge::ThreadAsk` in words.

use core::fmt;

use crate::fact::Worded;
use crate::judge::{ThreadAsk, ThreadFact};

impl fmt::Display for ThreadFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ThreadFact {}

impl fmt::Display for ThreadAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ThreadAsk {}
