//! Facts, questions and tasks of the seat tube in words.

use core::fmt;

use crate::fact::Worded;
use crate::plan::{SeatTubeAsk, SeatTubeFact, SeatTubeTask};

impl fmt::Display for SeatTubeFact {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for SeatTubeFact {}

impl fmt::Display for SeatTubeAsk {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for SeatTubeAsk {}

impl fmt::Display for SeatTubeTask {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl Worded for SeatTubeTask {}
