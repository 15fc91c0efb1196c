//! Reading a measured value as text.

use super::{Reading, instrument};
use crate::quantity::{parse_toleranced, settled_mm};
use crate::{Error, ErrorKind};

impl core::str::FromStr for Reading {
    type Err = Error;

    /// Reads `33.9 +/- 0.05 mm` (U, k = 2) or `33.9 mm by caliper_digital_inside`. A bare value is refused: nobody can
    /// judge a reading without knowing how sure it is.
    fn from_str(text: &str) -> Result<Self, Error> {
        let (size, tool) = match text.split_once(" by ") {
            Some((size, name)) => (size, Some(name.trim())),
            None => (text, None),
        };
        match (parse_toleranced(size)?, tool) {
            ((value, None), Some(name)) => instrument(name)?.reading(value),
            ((value, Some(t)), None) if settled_mm(t.upper) == settled_mm(-t.lower) => {
                Self::expanded(value, t.upper)
            }
            ((_, Some(_)), None) => Err(Error::new(
                ErrorKind::Text,
                "reading",
                text,
                "a reading has one uncertainty, not two deviations",
                "write e.g. `33.9 +/- 0.05 mm`",
            )),
            ((_, Some(_)), Some(_)) => Err(Error::new(
                ErrorKind::Contradiction,
                "uncertainty",
                text,
                "an uncertainty and an instrument, which has its own",
                "state one of them: `+/- 0.05 mm` or `by …`",
            )),
            ((_, None), None) => Err(Error::new(
                ErrorKind::Missing,
                "uncertainty",
                text,
                "a reading without an uncertainty",
                "write `+/- 0.05 mm`, or name the instrument: `by caliper_digital_outside`",
            )),
        }
    }
}
