//! Thread pitch, which remembers whether it was given in millimetres or in threads per inch.

use core::fmt;

use super::{Length, mm, settled_mm, to_mm};
use crate::{Error, ErrorKind};

/// The axial distance between neighbouring threads.
///
/// Threads per inch stay a whole number: 24 tpi is 25.4/24 mm, which is no whole number of nanometres.
///
/// ```
/// use framegauge::{Pitch, to_mm};
/// assert_eq!(Pitch::tpi(24).unwrap().to_string(), "24 tpi");
/// assert_eq!(to_mm(Pitch::tpi(20).unwrap().length()), 1.27);
/// assert_eq!(Pitch::millimetres(1.0).unwrap().to_string(), "1 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pitch(Given);

#[derive(Debug, Clone, Copy, PartialEq)]
enum Given {
    Millimetres(f64),
    PerInch(u16),
}

/// Finest and coarsest pitch that ISO 965-1 tabulates, in mm: outside it a pitch is a slip of the pen.
const FINEST: f64 = 0.2;
const COARSEST: f64 = 8.0;

impl Pitch {
    /// A pitch in millimetres.
    ///
    /// # Errors
    /// `NotFinite` for NaN and infinities; `OutOfRange` outside 0.2 to 8 mm, the span that ISO 965-1 tabulates.
    ///
    /// ```
    /// use framegauge::{ErrorKind, Pitch};
    /// assert_eq!(Pitch::millimetres(10.0).unwrap_err().kind(), ErrorKind::OutOfRange);
    /// ```
    pub fn millimetres(pitch: f64) -> Result<Self, Error> {
        if !pitch.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "pitch",
                pitch,
                "a pitch must be a finite number",
                "give it in mm, e.g. 1.0",
            ));
        }
        if !(FINEST..=COARSEST).contains(&pitch) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "pitch",
                alloc::format!("{pitch} mm"),
                "a pitch lies between 0.2 mm and 8 mm",
                "read it again with a pitch gauge; threads per inch are written `24 tpi`",
            ));
        }
        Ok(Self(Given::Millimetres(pitch)))
    }

    /// A pitch in whole threads per inch.
    ///
    /// # Errors
    /// `OutOfRange` outside 4 to 127 threads per inch (0.2 to 6.35 mm).
    ///
    /// ```
    /// assert!(framegauge::Pitch::tpi(0).is_err());
    /// ```
    pub fn tpi(threads_per_inch: u16) -> Result<Self, Error> {
        if !(4..=127).contains(&threads_per_inch) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "pitch",
                alloc::format!("{threads_per_inch} tpi"),
                "threads per inch lie between 4 and 127",
                "count the threads along one inch",
            ));
        }
        Ok(Self(Given::PerInch(threads_per_inch)))
    }

    /// For generated tables, whose values are checked by the generator.
    pub(crate) const fn from_table_mm(pitch: f64) -> Self {
        Self(Given::Millimetres(pitch))
    }

    /// For generated tables, whose values are checked by the generator.
    pub(crate) const fn from_table_tpi(threads_per_inch: u16) -> Self {
        Self(Given::PerInch(threads_per_inch))
    }

    /// The pitch as a length.
    ///
    /// ```
    /// use framegauge::{Pitch, in_mm};
    /// assert_eq!(in_mm(Pitch::tpi(24).unwrap().length()).to_string(), "1.058 mm");
    /// ```
    #[must_use]
    pub const fn length(self) -> Length {
        match self.0 {
            Given::Millimetres(pitch) => mm(pitch),
            Given::PerInch(tpi) => mm(25.4 / tpi as f64),
        }
    }

    /// Threads per inch, if it was given so.
    ///
    /// ```
    /// assert_eq!(framegauge::Pitch::tpi(26).unwrap().threads_per_inch(), Some(26));
    /// ```
    #[must_use]
    pub const fn threads_per_inch(self) -> Option<u16> {
        match self.0 {
            Given::Millimetres(_) => None,
            Given::PerInch(tpi) => Some(tpi),
        }
    }

    /// The pitch in millimetres as a bare number, for the private kernels.
    pub(crate) const fn to_mm(self) -> f64 {
        match self.0 {
            Given::Millimetres(pitch) => pitch,
            Given::PerInch(tpi) => 25.4 / tpi as f64,
        }
    }

    /// Whether two pitches are the same thread spacing, however they were given.
    ///
    /// ```
    /// use framegauge::Pitch;
    /// assert!(Pitch::tpi(20).unwrap().same_as(Pitch::millimetres(1.27).unwrap()));
    /// assert!(!Pitch::tpi(24).unwrap().same_as(Pitch::millimetres(1.0).unwrap()));
    /// ```
    #[must_use]
    pub fn same_as(self, other: Self) -> bool {
        settled_mm(self.length()) == settled_mm(other.length())
    }
}

impl fmt::Display for Pitch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            Given::Millimetres(_) => write!(f, "{} mm", settled_mm(mm(to_mm(self.length())))),
            Given::PerInch(tpi) => write!(f, "{tpi} tpi"),
        }
    }
}

impl core::str::FromStr for Pitch {
    type Err = Error;

    /// Reads `24 tpi`, `1.0 mm` or `1,0 mm`.
    fn from_str(text: &str) -> Result<Self, Error> {
        let trimmed = text.trim();
        if let Some(count) = trimmed
            .strip_suffix("tpi")
            .or_else(|| trimmed.strip_suffix("TPI"))
        {
            let tpi = count.trim().parse::<u16>().map_err(|_| {
                Error::new(
                    ErrorKind::Text,
                    "pitch",
                    text,
                    "threads per inch are a whole number",
                    "write e.g. `24 tpi` or `0.8 mm`",
                )
            })?;
            return Self::tpi(tpi);
        }
        let length = super::parse_length(trimmed).map_err(|e| {
            Error::new(
                e.kind(),
                "pitch",
                text,
                "is no pitch: threads per inch, or a length with its unit",
                "write e.g. `24 tpi` or `0.8 mm`",
            )
        })?;
        Self::millimetres(settled_mm(length))
    }
}
