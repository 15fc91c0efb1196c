//! Facts, questions and tasks of head tube, crown and steerer in words.

use core::fmt;

use crate::fact::Worded;
use crate::plan::{HeadAsk, HeadFact, HeadTask};

impl fmt::Display for HeadFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for HeadFact {}

impl fmt::Display for HeadAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for HeadAsk {}

impl fmt::Display for HeadTask {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for HeadTask {}
