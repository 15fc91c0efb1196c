//! A measured value with its uncertainty.

use core::cmp::Ordering;
use core::fmt;

use super::settled_below;
use crate::quantity::{Length, in_mm, mm, settled_mm, to_mm};
use crate::{Error, ErrorKind};

/// A measured value with its standard uncertainty u (one standard deviation).
///
/// In text, `33.9 +/- 0.05 mm` states the expanded uncertainty U = 2 u, the span that holds about 95 % of the values
/// that could reasonably be attributed to the reading (GUM, k = 2); `33.9 mm by caliper_digital_inside` takes it from the
/// budget of that instrument.
///
/// ```
/// use framegauge::{measure::Reading, in_mm};
/// let reading: Reading = "33.9 +/- 0.05 mm".parse().unwrap();
/// assert_eq!(in_mm(reading.standard_uncertainty()).to_string(), "0.025 mm");
/// assert_eq!(reading.to_string(), "33.900 ± 0.050 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    value: Length,
    u: Length,
}

/// Beyond this a value is no reading of a bicycle part.
const ABSURD_MM: f64 = 3000.0;

impl Reading {
    /// A value and its standard uncertainty. Signed values are allowed: an indicator reads both ways.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` beyond ±3 m or for a negative uncertainty; `Contradiction` when the uncertainty is
    /// larger than 10 mm, which measures nothing on a frame.
    ///
    /// ```
    /// use framegauge::{measure::Reading, mm};
    /// assert!(Reading::new(mm(27.2), mm(0.013)).is_ok());
    /// assert!(Reading::new(mm(27.2), mm(-0.013)).is_err());
    /// ```
    pub fn new(value: Length, standard_uncertainty: Length) -> Result<Self, Error> {
        let (v, u) = (to_mm(value), to_mm(standard_uncertainty));
        if !v.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "reading",
                v,
                "a reading must be finite",
                "measure again",
            ));
        }
        if !u.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "uncertainty",
                u,
                "an uncertainty must be finite",
                "state it, or name the instrument",
            ));
        }
        if v.abs() > ABSURD_MM {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "reading",
                in_mm(value),
                "is larger than a bicycle",
                "check the unit",
            ));
        }
        if u < 0.0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "uncertainty",
                in_mm(standard_uncertainty),
                "an uncertainty has no sign",
                "give it as a positive length",
            ));
        }
        if u > 10.0 {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "uncertainty",
                in_mm(standard_uncertainty),
                "measures nothing on a frame",
                "use a finer instrument, or check the unit",
            ));
        }
        Ok(Self {
            value,
            u: standard_uncertainty,
        })
    }

    /// A value taken as exact, such as a nominal size that only serves a comparison.
    ///
    /// # Errors
    /// As [`Reading::new`].
    pub fn exact(value: Length) -> Result<Self, Error> {
        Self::new(value, mm(0.0))
    }

    /// Exactly nothing: where a sum starts.
    pub(crate) const fn zero() -> Self {
        Self {
            value: mm(0.0),
            u: mm(0.0),
        }
    }

    /// A value with its expanded uncertainty U (k = 2).
    ///
    /// # Errors
    /// As [`Reading::new`].
    pub fn expanded(value: Length, expanded_uncertainty: Length) -> Result<Self, Error> {
        Self::new(value, expanded_uncertainty / 2.0)
    }

    /// A value known to lie anywhere within ± `half_width`, evenly: u = half width / √3 (GUM 4.3.7).
    ///
    /// # Errors
    /// As [`Reading::new`].
    ///
    /// ```
    /// use framegauge::{in_mm, measure::Reading, mm};
    /// // A rule read to half a division of 1 mm.
    /// let width = Reading::rectangular(mm(68.0), mm(0.5)).unwrap();
    /// assert_eq!(in_mm(width.standard_uncertainty()).to_string(), "0.289 mm");
    /// ```
    pub fn rectangular(value: Length, half_width: Length) -> Result<Self, Error> {
        Self::new(value, half_width / libm::sqrt(3.0))
    }

    /// The measured value.
    #[must_use]
    pub const fn value(&self) -> Length {
        self.value
    }
    /// The standard uncertainty u.
    #[must_use]
    pub const fn standard_uncertainty(&self) -> Length {
        self.u
    }
    /// The expanded uncertainty U = 2 u.
    #[must_use]
    pub fn expanded_uncertainty(&self) -> Length {
        self.u * 2.0
    }

    /// This reading less another, with independent uncertainties: u² = u₁² + u₂².
    ///
    /// ```
    /// use framegauge::{in_mm, measure::Reading, mm};
    /// let tube = Reading::new(mm(27.25), mm(0.03)).unwrap();
    /// let post = Reading::new(mm(27.15), mm(0.04)).unwrap();
    /// let gap = tube.less(&post);
    /// assert_eq!(in_mm(gap.value()).to_string(), "0.100 mm");
    /// assert_eq!(in_mm(gap.standard_uncertainty()).to_string(), "0.050 mm");
    /// ```
    #[must_use]
    pub fn less(&self, other: &Self) -> Self {
        Self {
            value: self.value - other.value,
            u: root_sum(self.u, other.u),
        }
    }

    /// This reading and another added, with independent uncertainties.
    ///
    /// ```
    /// use framegauge::{in_mm, measure::Reading, mm};
    /// let shell = Reading::new(mm(68.1), mm(0.03)).unwrap();
    /// let spacer = Reading::new(mm(2.5), mm(0.04)).unwrap();
    /// assert_eq!(in_mm(shell.plus(&spacer).value()).to_string(), "70.600 mm");
    /// assert_eq!(in_mm(shell.plus(&spacer).standard_uncertainty()).to_string(), "0.050 mm");
    /// ```
    #[must_use]
    pub fn plus(&self, other: &Self) -> Self {
        Self {
            value: self.value + other.value,
            u: root_sum(self.u, other.u),
        }
    }

    /// The same reading moved by an exact amount, such as a correction that is offered and accepted.
    #[must_use]
    pub fn shifted(&self, by: Length) -> Self {
        Self {
            value: self.value + by,
            u: self.u,
        }
    }

    /// The same reading scaled, such as a circumference divided by π.
    ///
    /// ```
    /// use framegauge::{in_mm, measure::Reading, mm};
    /// // A wall from the difference of two diameters.
    /// let wall = Reading::new(mm(1.5), mm(0.06)).unwrap().scaled(0.5);
    /// assert_eq!(in_mm(wall.value()).to_string(), "0.750 mm");
    /// assert_eq!(in_mm(wall.standard_uncertainty()).to_string(), "0.030 mm");
    /// ```
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        Self {
            value: self.value * factor,
            u: self.u * libm::fabs(factor),
        }
    }

    /// Its sign, where it is further from nothing than its expanded uncertainty.
    pub(crate) fn sure_sign(&self) -> Ordering {
        let none = mm(0.0);
        if settled_below(self.value + self.expanded_uncertainty(), none) {
            Ordering::Less
        } else if settled_below(none, self.value - self.expanded_uncertainty()) {
            Ordering::Greater
        } else {
            Ordering::Equal
        }
    }
}

fn root_sum(a: Length, b: Length) -> Length {
    mm(libm::hypot(to_mm(a), to_mm(b)))
}

impl fmt::Display for Reading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{:.3} ± {}",
            settled_mm(self.value),
            in_mm(self.expanded_uncertainty())
        )
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Reading {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("Reading", 2)?;
        out.serialize_field("value_mm", &settled_mm(self.value))?;
        out.serialize_field(
            "expanded_uncertainty_mm",
            &settled_mm(self.expanded_uncertainty()),
        )?;
        out.end()
    }
}
