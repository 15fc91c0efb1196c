//! Facts, questions and tasks of a plan in words.

mod common;
mod head;
mod mount;
mod round;
mod seat_tube;
mod shell;
mod thread;

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use core::fmt;

use crate::fact::Worded;
use crate::plan::{Question, Step, WeakFigure};

impl fmt::Display for Question {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.name, self.ask)
    }
}

impl fmt::Display for WeakFigure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.name, self.what.about())?;
        if !self.owner.is_empty() {
            write!(f, " ({})", self.owner)?;
        }
        Ok(())
    }
}

impl Question {
    /// What to measure, look at or ask.
    #[must_use]
    pub fn measure(&self) -> String {
        self.ask.to_string()
    }
    /// Why it matters.
    #[must_use]
    pub fn why(&self) -> Cow<'static, str> {
        self.ask.why()
    }
    /// With what.
    #[must_use]
    pub fn instrument(&self) -> String {
        self.ask.with().to_string()
    }
    /// The question in one line.
    #[must_use]
    pub fn words(&self) -> String {
        self.to_string()
    }
}

impl Step {
    /// The step in one line.
    #[must_use]
    pub fn words(&self) -> String {
        self.task.to_string()
    }
    /// Why it is done.
    #[must_use]
    pub fn why(&self) -> Cow<'static, str> {
        self.task.why()
    }
}
