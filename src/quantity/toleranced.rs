//! Reading a length with its deviations.

use super::text::{Unit, check_length_of, number_in, split_unit, unit_missing};
use super::{Length, mm, parse_length};
use crate::{Error, ErrorKind};

/// A length with what stands after `+/-`, or with unequal deviations.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Toleranced {
    /// The length itself.
    pub nominal: Length,
    /// Upper deviation, as written; positive above the nominal.
    pub upper: Length,
    /// Lower deviation, as written; negative below the nominal.
    pub lower: Length,
}

/// Reads `33.9 +/- 0.05 mm`, `33.9 mm ± 0.05 mm` or `41.96 +0.025/-0 mm`; a plain length has no deviations (`None`).
///
/// # Errors
/// As [`parse_length`]; also `Contradiction` when the upper deviation lies below the lower one, and `Unit` for a nominal value
/// without its unit before a deviation in micrometres.
///
/// ```
/// use framegauge::{in_mm, parse_toleranced};
/// let (nominal, Some(t)) = parse_toleranced("41.96 +0.025/-0 mm").unwrap() else { panic!() };
/// assert_eq!(in_mm(nominal + t.upper).to_string(), "41.985 mm");
/// assert_eq!(in_mm(nominal + t.lower).to_string(), "41.960 mm");
/// assert!(parse_toleranced("68 mm").unwrap().1.is_none());
/// ```
pub fn parse_toleranced(text: &str) -> Result<(Length, Option<Toleranced>), Error> {
    check_length_of(text).map_err(|e| e.within("length"))?;
    for mark in ["+/-", "±", "+-"] {
        if let Some((front, back)) = text.split_once(mark) {
            let (half_text, unit) = split_unit(back).ok_or_else(|| unit_missing(text))?;
            let half = number_in(half_text, unit)?;
            if half < mm(0.0) {
                return Err(Error::new(
                    ErrorKind::OutOfRange,
                    "uncertainty",
                    text,
                    "what stands after +/- has no sign",
                    "write e.g. `33.9 +/- 0.05 mm`",
                ));
            }
            let nominal = nominal(text, front, unit)?;
            return Ok((
                nominal,
                Some(Toleranced {
                    nominal,
                    upper: half,
                    lower: -half,
                }),
            ));
        }
    }
    if let Some((front, lower_text)) = text.rsplit_once('/')
        && let Some((nominal_text, upper_text)) = front.trim().rsplit_once(' ')
        && upper_text.starts_with(['+', '-', '0'])
        && lower_text.trim_start().starts_with(['+', '-', '−', '0'])
    {
        let (lower_text, unit) = split_unit(lower_text).ok_or_else(|| unit_missing(text))?;
        let nominal = nominal(text, nominal_text, unit)?;
        let upper = number_in(upper_text.trim(), unit)?;
        let lower = number_in(lower_text, unit)?;
        if upper < lower {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "tolerance",
                text,
                "the upper deviation lies below the lower one",
                "write the upper deviation first",
            ));
        }
        return Ok((
            nominal,
            Some(Toleranced {
                nominal,
                upper,
                lower,
            }),
        ));
    }
    parse_length(text).map(|nominal| (nominal, None))
}

/// The nominal value, in the unit at the end unless it has its own. Micrometres at the end are meant for the deviations alone
/// (`33.9 mm +/- 50 um`), so a nominal value before them must say what it is in.
fn nominal(text: &str, front: &str, at_the_end: Unit) -> Result<Length, Error> {
    match (split_unit(front), at_the_end) {
        (Some((number, unit)), _) => number_in(number, unit),
        (None, Unit::Micrometre) => Err(Error::new(
            ErrorKind::Unit,
            "length",
            text,
            "a nominal value without its unit before a deviation in micrometres",
            "write both units, e.g. `33.9 mm +/- 50 um`",
        )),
        (None, unit) => number_in(front.trim(), unit),
    }
}
