//! Reading and printing quantities as text. A bare number is refused; a form that reads two ways is refused.

use alloc::format;
use core::fmt;

use super::{
    Angle, Expansion, Length, Pressure, Torque, deg, inch, mm, mpa, newton_metre, per_kelvin,
    settled_mm,
};
use crate::{Error, ErrorKind};

/// Longest text that can be one quantity; anything longer is not a measurement.
const LONGEST: usize = 64;

/// A quantity that tables print: how its text is read and in which unit it is serialized.
pub trait Printed: Copy + PartialOrd + fmt::Debug + 'static {
    /// The unit, as printed after a number.
    const UNIT: &'static str;
    /// The unit, as it ends a serialized field name.
    const SUFFIX: &'static str;
    /// The bare number in [`Self::UNIT`], free of binary noise.
    fn in_unit(self) -> f64;
    /// Reads the quantity from text with its unit.
    ///
    /// # Errors
    /// `Text`, `Unit` or `NotFinite`, naming the text.
    fn parse(text: &str) -> Result<Self, Error>;
}

/// A pure number: a ratio, a coefficient of friction, Poisson's number, a count of diameters.
///
/// ```
/// use framegauge::{Printed, Ratio};
/// assert_eq!(Ratio::parse("2.5").unwrap(), Ratio(2.5));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Ratio(pub f64);

/// Twelve significant digits: finer than any source prints, coarser than binary noise.
fn tidy(value: f64) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let exponent = libm::floor(libm::log10(libm::fabs(value)));
    let scale = libm::pow(10.0, 11.0 - libm::fmin(exponent, 0.0));
    libm::round(value * scale) / scale
}

impl Printed for Length {
    const UNIT: &'static str = "mm";
    const SUFFIX: &'static str = "mm";
    fn in_unit(self) -> f64 {
        settled_mm(self)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        parse_length(text)
    }
}
impl Printed for Angle {
    const UNIT: &'static str = "deg";
    const SUFFIX: &'static str = "deg";
    fn in_unit(self) -> f64 {
        tidy(self.value / deg(1.0).value)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        parse_with(text, "angle", &[("deg", 1.0), ("°", 1.0)]).map(deg)
    }
}
impl Printed for Torque {
    const UNIT: &'static str = "N m";
    const SUFFIX: &'static str = "n_m";
    fn in_unit(self) -> f64 {
        tidy(self.value)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        parse_with(text, "torque", &[("N m", 1.0), ("N·m", 1.0), ("Nm", 1.0)]).map(newton_metre)
    }
}
impl Printed for Pressure {
    const UNIT: &'static str = "MPa";
    const SUFFIX: &'static str = "mpa";
    fn in_unit(self) -> f64 {
        tidy(self.value / 1e6)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        parse_with(
            text,
            "stress",
            &[("MPa", 1.0), ("GPa", 1e3), ("N/mm2", 1.0)],
        )
        .map(mpa)
    }
}
impl Printed for Expansion {
    const UNIT: &'static str = "1e-6/K";
    const SUFFIX: &'static str = "um_per_m_k";
    fn in_unit(self) -> f64 {
        tidy(self.value * 1e6)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        let micro = parse_with(text, "expansion", &[("1e-6/K", 1.0)])?;
        Ok(per_kelvin(micro / 1e6))
    }
}
impl Printed for Ratio {
    const UNIT: &'static str = "1";
    const SUFFIX: &'static str = "ratio";
    fn in_unit(self) -> f64 {
        tidy(self.0)
    }
    fn parse(text: &str) -> Result<Self, Error> {
        decimal(text.trim()).map(Ratio)
    }
}

fn parse_with(text: &str, field: &'static str, units: &[(&str, f64)]) -> Result<f64, Error> {
    check_length_of(text)?;
    let trimmed = text.trim();
    for (unit, factor) in units {
        if let Some(number) = trimmed.strip_suffix(unit) {
            return Ok(decimal(number.trim())? * factor);
        }
    }
    let wanted = units.first().map_or("", |(unit, _)| unit);
    Err(Error::new(
        ErrorKind::Unit,
        field,
        text,
        "no unit that fits",
        format!("write a number and `{wanted}`"),
    ))
}

pub(super) fn check_length_of(text: &str) -> Result<(), Error> {
    if text.len() > LONGEST {
        return Err(Error::new(
            ErrorKind::TooLarge,
            "",
            text,
            "longer than any quantity",
            "give one number and one unit",
        ));
    }
    Ok(())
}

/// Reads one number with a decimal point or a decimal comma.
///
/// # Errors
/// `Text` for anything but digits with at most one mark, for point and comma together, and for a comma before
/// exactly three digits when the reading as thousands is possible too; `NotFinite` for words such as `NaN`.
///
/// ```
/// use framegauge::decimal;
/// assert_eq!(decimal("27,2").unwrap(), 27.2);
/// assert_eq!(decimal("-0.05").unwrap(), -0.05);
/// assert!(decimal("1.370,5").is_err());
/// assert!(decimal("1,058").is_err()); // 1.058 or 1058?
/// assert!(decimal("inf").is_err());
/// ```
pub fn decimal(text: &str) -> Result<f64, Error> {
    decimal_below(text, f64::INFINITY)
}

/// As [`decimal`], where a reading as thousands above `largest` is out of the question.
fn decimal_below(text: &str, largest: f64) -> Result<f64, Error> {
    let bad = |problem: &'static str, remedy: &'static str| {
        Err(Error::new(ErrorKind::Text, "", text, problem, remedy))
    };
    let digits = text.trim_start_matches(['+', '-', '−']);
    let lower = digits.trim().to_ascii_lowercase();
    if ["nan", "inf", "infinity"].contains(&lower.as_str()) {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "",
            text,
            "not a finite number",
            "give the measured value",
        ));
    }
    if digits.is_empty()
        || !digits
            .bytes()
            .all(|b| b.is_ascii_digit() || b == b'.' || b == b',')
        || !digits.bytes().any(|b| b.is_ascii_digit())
    {
        return bad(
            "not a number",
            "write digits with one decimal point or comma",
        );
    }
    if text.chars().filter(|c| ['+', '-', '−'].contains(c)).count() > 1 {
        return bad("more than one sign", "write at most one sign");
    }
    let points = digits.matches('.').count();
    let commas = digits.matches(',').count();
    if points + commas > 1 {
        return bad(
            "more than one decimal mark",
            "write one decimal point or one decimal comma, no thousands marks",
        );
    }
    if let Some((whole, fraction)) = digits.split_once(',')
        && fraction.len() == 3
        && !whole.is_empty()
        && !whole.starts_with('0')
    {
        let thousands: f64 = format!("{whole}{fraction}")
            .parse()
            .unwrap_or(f64::INFINITY);
        if thousands <= largest {
            return bad(
                "a comma before three digits reads as decimals or as thousands",
                "write a decimal point",
            );
        }
    }
    let plain = digits.replace(',', ".");
    let magnitude: f64 = plain.parse().map_err(|_| {
        Error::new(
            ErrorKind::Text,
            "",
            text,
            "not a number",
            "write digits with one decimal mark",
        )
    })?;
    if !magnitude.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "",
            text,
            "too large for a number",
            "give the measured value",
        ));
    }
    Ok(if text.starts_with(['-', '−']) {
        -magnitude
    } else {
        magnitude
    })
}

/// The length units that are read, longest spelling first, with what they mean.
#[derive(Clone, Copy)]
pub(super) enum Unit {
    Millimetre,
    Micrometre,
    Centimetre,
    Metre,
    Inch,
}

const UNITS: [(&str, Unit); 10] = [
    ("mm", Unit::Millimetre),
    ("µm", Unit::Micrometre),
    ("μm", Unit::Micrometre),
    ("um", Unit::Micrometre),
    ("cm", Unit::Centimetre),
    ("inch", Unit::Inch),
    ("in", Unit::Inch),
    ("\"", Unit::Inch),
    ("″", Unit::Inch),
    ("m", Unit::Metre),
];

impl Unit {
    /// Larger than any bicycle, in this unit: above it a comma cannot mark thousands.
    const fn absurd(self) -> f64 {
        match self {
            Self::Millimetre => 3000.0,
            Self::Micrometre => 3.0e6,
            Self::Centimetre => 300.0,
            Self::Metre => 3.0,
            Self::Inch => 120.0,
        }
    }
    fn of(self, value: f64) -> Length {
        match self {
            Self::Millimetre => mm(value),
            Self::Micrometre => mm(value / 1e3),
            Self::Centimetre => mm(value * 10.0),
            Self::Metre => mm(value * 1e3),
            Self::Inch => inch(value),
        }
    }
}

pub(super) fn split_unit(text: &str) -> Option<(&str, Unit)> {
    let trimmed = text.trim();
    UNITS
        .iter()
        .find_map(|(name, unit)| trimmed.strip_suffix(name).map(|rest| (rest.trim(), *unit)))
}

pub(super) fn unit_missing(text: &str) -> Error {
    let bare = decimal(text.trim()).is_ok();
    Error::new(
        ErrorKind::Unit,
        "length",
        text,
        if bare {
            "a bare number has no unit"
        } else {
            "no length unit"
        },
        "write the unit: `27.2 mm`, `1.370 in`, `1 3/8 in`",
    )
}

/// Inches as decimals, `9/16` or `1 3/8`.
fn inches(number: &str) -> Result<Length, Error> {
    let Some((front, denominator)) = number.split_once('/') else {
        return decimal_below(number, Unit::Inch.absurd()).map(inch);
    };
    let refuse = || {
        Error::new(
            ErrorKind::Text,
            "length",
            number,
            "not an inch fraction",
            "write e.g. `9/16 in` or `1 3/8 in`",
        )
    };
    let (whole, numerator) = match front.trim().rsplit_once([' ', '-']) {
        Some((whole, numerator)) => (
            whole
                .trim()
                .trim_end_matches('-')
                .trim_end()
                .parse::<u32>()
                .map_err(|_| refuse())?,
            numerator,
        ),
        None => (0, front.trim()),
    };
    let numerator: u32 = numerator.trim().parse().map_err(|_| refuse())?;
    let denominator: u32 = denominator.trim().parse().map_err(|_| refuse())?;
    if denominator == 0 || denominator > 1024 || numerator > 1_000_000 || whole > 120 {
        return Err(refuse());
    }
    let total = u64::from(whole) * u64::from(denominator) + u64::from(numerator);
    #[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
    Ok(mm((total * 254) as f64 / (f64::from(denominator) * 10.0)))
}

pub(super) fn number_in(number: &str, unit: Unit) -> Result<Length, Error> {
    match unit {
        Unit::Inch => inches(number),
        other => decimal_below(number, other.absurd()).map(|value| other.of(value)),
    }
    .map_err(|e| {
        if e.field().is_empty() {
            e.within("length")
        } else {
            e
        }
    })
}

/// Reads a length with its unit: `34.8 mm`, `27,2 mm`, `11 um`, `1.370 in`, `9/16 in`, `1 3/8 in`.
///
/// # Errors
/// `Unit` when no unit stands there, `Text` when the number cannot be read or can be read two ways, `NotFinite`,
/// and `TooLarge` for text beyond 64 bytes.
///
/// ```
/// use framegauge::{ErrorKind, in_mm, parse_length};
/// assert_eq!(in_mm(parse_length("1 3/8 in").unwrap()).to_string(), "34.925 mm");
/// assert_eq!(in_mm(parse_length("27,2 mm").unwrap()).to_string(), "27.200 mm");
/// assert_eq!(parse_length("27.2").unwrap_err().kind(), ErrorKind::Unit);
/// ```
pub fn parse_length(text: &str) -> Result<Length, Error> {
    check_length_of(text).map_err(|e| e.within("length"))?;
    let (number, unit) = split_unit(text).ok_or_else(|| unit_missing(text))?;
    number_in(number, unit)
}
