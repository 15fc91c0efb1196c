//! Facts, questions and tasks of the bottom-bracket shell in words.

use core::fmt;

use crate::fact::Worded;
use crate::plan::{ShellAsk, ShellFact, ShellTask};

impl fmt::Display for ShellFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ShellFact {}

impl fmt::Display for ShellAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ShellAsk {}

impl fmt::Display for ShellTask {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for ShellTask {}
