//! The one text form of a reading, of limits and of a decision rule. Sheets, questions, shop rows and programs read these.

use core::str::FromStr;

use super::{Bound, DecisionRule, GuardFactor, Limits, Reading, instrument};
use crate::evidence::Grade;
use crate::quantity::{Length, decimal, parse_length, parse_toleranced, settled_mm};
use crate::{Error, ErrorKind};

/// The size and the instrument of `33.9 mm by caliper_digital_inside`; `with` is read as `by`.
pub(crate) fn split_instrument(text: &str) -> (&str, Option<&str>) {
    for word in [" by ", " with "] {
        if let Some((size, tool)) = text.split_once(word) {
            return (size, Some(tool.trim()));
        }
    }
    (text, None)
}

impl FromStr for Reading {
    type Err = Error;

    /// Reads `33.9 +/- 0.05 mm` (U, k = 2) or `33.9 mm by caliper_digital_inside`. A bare value is refused: nobody can
    /// judge a reading without knowing how sure it is.
    fn from_str(text: &str) -> Result<Self, Error> {
        let (size, tool) = split_instrument(text);
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

/// Whether a reading says itself how sure it is.
pub(crate) fn says_how_sure(text: &str) -> bool {
    let (size, tool) = split_instrument(text);
    tool.is_some() || matches!(parse_toleranced(size), Ok((_, Some(_))))
}

/// A length whose unit may stand behind the other one of a pair.
fn with_unit_of(text: &str, other: &str) -> Result<Length, Error> {
    let text = text.trim();
    if !text.ends_with(|c: char| c.is_ascii_digit()) {
        return parse_length(text);
    }
    let unit = other.trim().trim_start_matches(|c: char| {
        c.is_ascii_digit() || c.is_whitespace() || matches!(c, '.' | ',' | '/' | '-' | '+')
    });
    parse_length(&alloc::format!("{text} {unit}"))
}

impl FromStr for Limits {
    type Err = Error;

    /// Reads `27.1 to 27.3 mm`, `27.1 mm to 27.3 mm`, `46 +0.05/-0 mm`, `at most 27.2 mm` or `at least 68 mm`. Limits that
    /// somebody writes down are graded as the asker's own.
    ///
    /// ```
    /// use framegauge::measure::Limits;
    /// let bore: Limits = "27.1 to 27.3 mm".parse().unwrap();
    /// assert_eq!(bore.to_string(), "27.100 to 27.300 mm");
    /// assert_eq!("at most 27.2 mm".parse::<Limits>().unwrap().to_string(), "at most 27.200 mm");
    /// assert!("27.2 mm".parse::<Limits>().is_err());
    /// ```
    fn from_str(text: &str) -> Result<Self, Error> {
        let text = text.trim();
        if let Some((low, high)) = text.split_once(" to ") {
            let (low, high) = (with_unit_of(low, high)?, parse_length(high)?);
            return Self::new(Bound::At(low), Bound::At(high), Grade::Shop);
        }
        if let Some(high) = text.strip_prefix("at most") {
            return Self::at_most(parse_length(high)?, Grade::Shop);
        }
        if let Some(low) = text.strip_prefix("at least") {
            return Self::at_least(parse_length(low)?, Grade::Shop);
        }
        match parse_toleranced(text)? {
            (nominal, Some(t)) => Self::between(nominal + t.lower, nominal + t.upper, Grade::Shop),
            (_, None) => Err(Error::new(
                ErrorKind::Text,
                "limits",
                text,
                "one length is no pair of limits",
                "write `43.95 to 44.00 mm`, `at most 0.10 mm` or `at least 68 mm`",
            )),
        }
    }
}

impl FromStr for DecisionRule {
    type Err = Error;

    /// Reads `iso_14253_1_2017` or `2017`, `iso_14253_1_1998` or `1998`, `simple_acceptance` or `simple`, and `guard 0.5`.
    ///
    /// ```
    /// use framegauge::measure::DecisionRule;
    /// assert_eq!("1998".parse::<DecisionRule>().unwrap(), "iso_14253_1_1998".parse().unwrap());
    /// assert!("guard 0.5".parse::<DecisionRule>().is_ok());
    /// ```
    fn from_str(text: &str) -> Result<Self, Error> {
        match text.trim().to_ascii_lowercase().as_str() {
            "2017" | "iso_14253_1_2017" => Ok(Self::Iso14253Of2017),
            "1998" | "iso_14253_1_1998" => Ok(Self::Iso14253Of1998),
            "simple" | "simple_acceptance" => Ok(Self::SimpleAcceptance),
            other => match other.strip_prefix("guard ") {
                Some(factor) => GuardFactor::new(decimal(factor.trim())?).map(Self::GuardBand),
                None => Err(Error::new(
                    ErrorKind::UnknownName,
                    "rule",
                    text,
                    "no such decision rule",
                    "one of iso_14253_1_2017 (2017), iso_14253_1_1998 (1998), simple_acceptance (simple), guard 0.5",
                )),
            },
        }
    }
}
