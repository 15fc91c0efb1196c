//! Facts, questions and tasks of brake mounts and faces in words.

use core::fmt;

use crate::fact::Worded;
use crate::plan::{MountAsk, MountFact, MountTask};

impl fmt::Display for MountFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for MountFact {}

impl fmt::Display for MountAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for MountAsk {}

impl fmt::Display for MountTask {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for MountTask {}
