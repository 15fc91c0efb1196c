//! Facts, questions and tasks of threads in words.

use core::fmt;

use crate::fact::Worded;
use crate::plan::{ThreadAsk, ThreadFact, ThreadTask};

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

impl fmt::Display for ThreadTask {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ThreadTask {}
