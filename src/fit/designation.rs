//! Designations as drawings print them: `27.2 H8`, `42 N7/h6`. By ISO 286-1 the number is millimetres.

use core::fmt;
use core::str::FromStr;

use super::class::{Feature, FitClass};
use super::deviation::{LimitDeviations, limit_deviations};
use crate::measure::Limits;
use crate::quantity::{Length, decimal, mm, parse_length, settled_mm};
use crate::{Error, ErrorKind};

/// A nominal size with one class: `27.2 H8`.
///
/// ```
/// use framegauge::fit::SizeClass;
/// let bore: SizeClass = "27.2 H8".parse().unwrap();
/// assert_eq!(bore.limits().unwrap().to_string(), "27.200 to 27.233 mm");
/// assert_eq!(bore.to_string(), "27.2 H8");
/// assert_eq!("Ø27,2H8".parse::<SizeClass>().unwrap(), bore);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeClass {
    nominal: Length,
    class: FitClass,
}

impl SizeClass {
    /// A size and a class.
    ///
    /// # Errors
    /// As [`limit_deviations`].
    pub fn new(nominal: Length, class: FitClass) -> Result<Self, Error> {
        limit_deviations(nominal, class)?;
        Ok(Self { nominal, class })
    }
    /// The nominal size.
    #[must_use]
    pub const fn nominal(&self) -> Length {
        self.nominal
    }
    /// The class.
    #[must_use]
    pub const fn class(&self) -> FitClass {
        self.class
    }
    /// The limit deviations.
    ///
    /// # Errors
    /// As [`limit_deviations`].
    ///
    /// ```
    /// use framegauge::fit::SizeClass;
    /// // ISO 286-2: 40 H7 is 0 to +25 µm.
    /// let seat: SizeClass = "40 H7".parse().unwrap();
    /// assert_eq!(seat.deviations().unwrap().upper_um(), 25.0);
    /// ```
    pub fn deviations(&self) -> Result<LimitDeviations, Error> {
        limit_deviations(self.nominal, self.class)
    }
    /// The limits of size.
    ///
    /// # Errors
    /// As [`limit_deviations`].
    pub fn limits(&self) -> Result<Limits, Error> {
        self.deviations()?.around(self.nominal)
    }
}

/// A nominal size with the classes of both members: `42 N7/h6`, hole first.
///
/// ```
/// use framegauge::fit::FitDesignation;
/// let fit: FitDesignation = "42 N7/h6".parse().unwrap();
/// assert_eq!(fit.hole().class().to_string(), "N7");
/// assert_eq!(fit.to_string(), "42 N7/h6");
/// assert!("42 h6/N7".parse::<FitDesignation>().unwrap_err().remedy().contains("hole first"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitDesignation {
    hole: SizeClass,
    shaft: SizeClass,
}

impl FitDesignation {
    /// A fit of two classes at one nominal size.
    ///
    /// # Errors
    /// `Contradiction` unless the first class is a hole's and the second a shaft's; else as [`limit_deviations`].
    ///
    /// ```
    /// use framegauge::{ErrorKind, fit::FitDesignation, mm};
    /// let (hole, shaft) = ("N7".parse().unwrap(), "h6".parse().unwrap());
    /// assert_eq!(FitDesignation::new(mm(42.0), hole, shaft).unwrap().to_string(), "42 N7/h6");
    /// assert_eq!(FitDesignation::new(mm(42.0), shaft, hole).unwrap_err().kind(), ErrorKind::Contradiction);
    /// ```
    pub fn new(nominal: Length, hole: FitClass, shaft: FitClass) -> Result<Self, Error> {
        if hole.feature() != Feature::Hole || shaft.feature() != Feature::Shaft {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "fit",
                alloc::format!("{hole}/{shaft}"),
                "a fit needs one hole class and one shaft class",
                "write the hole first, in capitals: `42 N7/h6`",
            ));
        }
        Ok(Self {
            hole: SizeClass::new(nominal, hole)?,
            shaft: SizeClass::new(nominal, shaft)?,
        })
    }
    /// The hole.
    #[must_use]
    pub const fn hole(&self) -> SizeClass {
        self.hole
    }
    /// The shaft.
    #[must_use]
    pub const fn shaft(&self) -> SizeClass {
        self.shaft
    }
}

/// Splits `27.2 H8` into size and classes; the size is millimetres, with or without the unit.
fn split(text: &str) -> Result<(Length, &str), Error> {
    let refuse = |problem: &'static str| {
        Error::new(
            ErrorKind::Text,
            "designation",
            text,
            problem,
            "write e.g. `27.2 H8` or `42 N7/h6`",
        )
    };
    let trimmed = text.trim();
    let trimmed = trimmed
        .strip_prefix(['Ø', 'ø', '⌀'])
        .unwrap_or(trimmed)
        .trim_start();
    let end = trimmed
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))
        .unwrap_or(trimmed.len());
    let (number, rest) = trimmed.split_at(end);
    if number.is_empty() {
        return Err(refuse("no nominal size stands in front"));
    }
    if number.len() > 16 || text.len() > 64 {
        return Err(refuse("too long for a designation"));
    }
    let rest = rest.trim_start();
    if let Some(class) = rest.strip_prefix("mm") {
        let nominal = parse_length(&alloc::format!("{number} mm"));
        return Ok((nominal.map_err(|e| e.within("designation"))?, class.trim()));
    }
    let nominal = decimal(number).map_err(|e| e.within("designation"))?;
    Ok((mm(nominal), rest))
}

impl FromStr for SizeClass {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        let (nominal, class) = split(text)?;
        if class.contains('/') {
            return Err(Error::new(
                ErrorKind::Text,
                "designation",
                text,
                "two classes stand there where one is asked",
                "write e.g. `27.2 H8`",
            ));
        }
        Self::new(nominal, class.parse()?)
    }
}

impl FromStr for FitDesignation {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        let (nominal, classes) = split(text)?;
        let Some((hole, shaft)) = classes.split_once('/') else {
            return Err(Error::new(
                ErrorKind::Text,
                "designation",
                text,
                "a fit has two classes",
                "write e.g. `42 N7/h6`",
            ));
        };
        Self::new(nominal, hole.parse()?, shaft.parse()?)
    }
}

impl fmt::Display for SizeClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", settled_mm(self.nominal), self.class)
    }
}

impl fmt::Display for FitDesignation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.hole, self.shaft.class)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for SizeClass {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for FitDesignation {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
