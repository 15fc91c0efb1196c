//! Surveys of faces in words.

use core::fmt;

use crate::face::{Cap, LimitName};
use crate::quantity::in_mm;

impl<N: LimitName, M: LimitName> fmt::Display for Cap<N, M> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: ", self.what())?;
        match (self.may_come_off(), self.measure()) {
            (Some(left), _) => write!(f, "{} may come off", in_mm(left.value())),
            (None, Some(measure)) => write!(f, "unknown, {measure}"),
            (None, None) => Ok(()),
        }
    }
}
