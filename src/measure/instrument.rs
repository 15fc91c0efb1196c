//! Instruments: uncertainty budgets from cited permissible errors.

use super::Reading;
use crate::evidence::{Figure, List, Text};
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// What an instrument can be put to.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum Measures {
    /// Outside sizes: posts, tubes, cups, widths.
    Outside,
    /// Inside sizes: bores.
    Inside,
    /// Depths of bores and seats.
    Depth,
    /// Differences of height: faces, run-out.
    Height,
    /// Pitch of a thread, as one of a list.
    Pitch,
    /// Lengths and circumferences.
    Length,
}

/// Maximum permissible error over a range of sizes.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ErrorLimit {
    /// Sizes above this …
    #[cfg_attr(
        feature = "serde",
        serde(
            rename(serialize = "over_mm"),
            serialize_with = "crate::quantity::serial::as_mm",
            deserialize_with = "crate::quantity::serial::from_text"
        )
    )]
    pub over: Length,
    /// … up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename(serialize = "up_to_mm"),
            serialize_with = "crate::quantity::serial::as_mm",
            deserialize_with = "crate::quantity::serial::from_text"
        )
    )]
    pub up_to: Length,
    /// The permissible error, plus or minus.
    pub error: Figure,
}

/// A measuring instrument and what is published about its errors.
///
/// ```
/// use framegauge::{in_mm, measure::instrument, mm};
/// let caliper = instrument("caliper_digital_inside").unwrap();
/// let reading = caliper.reading(mm(27.2)).unwrap();
/// assert!(reading.expanded_uncertainty() > mm(0.04));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Instrument {
    /// Short name, unique.
    pub code: Text,
    /// Name for a person.
    pub name: Text,
    /// What it can be put to.
    pub measures: List<Measures>,
    /// Permissible errors by range; empty for instruments that only tell one listed thing from another.
    pub limits: List<ErrorLimit>,
    /// Smallest step it shows.
    #[cfg_attr(feature = "serde", serde(default))]
    pub resolution: Option<Figure>,
    /// Repeatability of a careful hand, one standard deviation.
    #[cfg_attr(feature = "serde", serde(default))]
    pub repeatability: Option<Figure>,
    /// Order of cost and trouble, 1 cheapest: breaks ties when the next measurement is proposed.
    pub cost: u8,
    /// What a reader should know besides.
    #[cfg_attr(feature = "serde", serde(default))]
    pub note: Text,
}

impl Instrument {
    /// Standard uncertainty of one reading of this size: permissible error and resolution as rectangular
    /// distributions (a/√3, r/√12: GUM 4.3.7), repeatability as it is, added in squares.
    ///
    /// Corrections (narrow jaws in a bore, thread crests) are offered elsewhere, never applied here.
    ///
    /// # Errors
    /// `NotTabulated` when no permissible error is known for this size.
    pub fn standard_uncertainty(&self, size: Length) -> Result<Length, Error> {
        let limit = self.permissible_error(size)?;
        let part = |figure: &Option<Figure>| {
            figure
                .as_ref()
                .and_then(|f| f.nominal().or_else(|| f.upper()))
                .map_or(0.0, to_mm)
        };
        let permissible = to_mm(limit) / libm::sqrt(3.0);
        let resolution = part(&self.resolution) / libm::sqrt(12.0);
        let hand = part(&self.repeatability);
        Ok(mm(libm::sqrt(
            permissible * permissible + resolution * resolution + hand * hand,
        )))
    }

    /// The permissible error, plus or minus, that is tabulated for this size.
    ///
    /// # Errors
    /// `NotTabulated` when none is.
    ///
    /// ```
    /// use framegauge::{ErrorKind, in_mm, measure::instrument, mm};
    /// let caliper = instrument("caliper_vernier_outside").unwrap();
    /// assert_eq!(in_mm(caliper.permissible_error(mm(27.2)).unwrap()).to_string(), "0.050 mm");
    /// assert_eq!(caliper.permissible_error(mm(2000.0)).unwrap_err().kind(), ErrorKind::NotTabulated);
    /// ```
    pub fn permissible_error(&self, size: Length) -> Result<Length, Error> {
        let magnitude = size.abs();
        self.limits
            .iter()
            .find(|l| magnitude <= l.up_to && (magnitude > l.over || l.over <= mm(0.0)))
            .and_then(|l| l.error.upper().or_else(|| l.error.nominal()))
            .ok_or_else(|| {
                Error::new(
                    ErrorKind::NotTabulated,
                    "instrument",
                    &self.code,
                    alloc::format!(
                        "no permissible error is tabulated for a size of {}",
                        in_mm(size)
                    ),
                    "state the uncertainty of the reading itself: `+/- 0.05 mm`",
                )
            })
    }

    /// A reading taken with this instrument.
    ///
    /// # Errors
    /// As [`Self::standard_uncertainty`] and [`Reading::new`].
    pub fn reading(&self, value: Length) -> Result<Reading, Error> {
        Reading::new(value, self.standard_uncertainty(value)?)
    }
}

/// Every instrument of the tables.
///
/// ```
/// assert!(framegauge::measure::instruments().iter().any(|i| i.code == "dial_indicator"));
/// ```
#[must_use]
pub fn instruments() -> &'static [Instrument] {
    &super::tables::INSTRUMENTS
}

/// The instrument of this code.
///
/// # Errors
/// `UnknownName`, with the names there are.
///
/// ```
/// let error = framegauge::measure::instrument("eyeball").unwrap_err();
/// assert!(error.remedy().contains("dial_indicator"));
/// ```
pub fn instrument(code: &str) -> Result<&'static Instrument, Error> {
    instruments()
        .iter()
        .find(|i| i.code == code)
        .ok_or_else(|| {
            let names: alloc::vec::Vec<&str> =
                instruments().iter().map(|i| i.code.as_ref()).collect();
            Error::new(
                ErrorKind::UnknownName,
                "instrument",
                code,
                "no such instrument",
                alloc::format!("one of {}", names.join(", ")),
            )
        })
}
