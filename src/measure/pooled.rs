//! Repeated readings: mean, scatter, and scatter pooled over several places (type A, GUM 4.2).

use super::{Freedom, Reading};
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// Readings of one place with one instrument: their mean, their scatter and how many there were.
///
/// ```
/// use framegauge::{in_mm, measure::Repeated, mm};
/// let width = Repeated::of(&[mm(68.02), mm(68.05), mm(68.03), mm(68.06)]).unwrap();
/// assert_eq!(in_mm(width.mean()).to_string(), "68.040 mm");
/// assert_eq!(in_mm(width.deviation()).to_string(), "0.018 mm");
/// assert_eq!(in_mm(width.uncertainty_of_mean()).to_string(), "0.009 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repeated {
    mean: f64,
    squares: f64,
    n: f64,
}

impl Repeated {
    /// Mean and scatter of readings.
    ///
    /// # Errors
    /// `Missing` for fewer than two; those of [`Reading::new`] for a reading that is none.
    pub fn of(readings: &[Length]) -> Result<Self, Error> {
        if readings.len() < 2 {
            return Err(Error::new(
                ErrorKind::Missing,
                "repeated readings",
                readings.len(),
                "one reading says nothing of its own scatter",
                "read the place again, at least twice",
            ));
        }
        for (index, value) in readings.iter().enumerate() {
            Reading::exact(*value).map_err(|e| e.within(&alloc::format!("readings.{index}")))?;
        }
        #[expect(clippy::cast_precision_loss, reason = "a count")]
        let n = readings.len() as f64;
        let mean = readings.iter().map(|v| to_mm(*v)).sum::<f64>() / n;
        let squares = readings
            .iter()
            .map(|v| to_mm(*v) - mean)
            .map(|d| d * d)
            .sum();
        Ok(Self { mean, squares, n })
    }
    /// Their mean.
    #[must_use]
    pub const fn mean(&self) -> Length {
        mm(self.mean)
    }
    /// How many there were.
    #[must_use]
    pub const fn count(&self) -> f64 {
        self.n
    }
    /// Experimental standard deviation s (GUM 4.2.2).
    #[must_use]
    pub fn deviation(&self) -> Length {
        mm(libm::sqrt(self.squares / (self.n - 1.0)))
    }
    /// s/√n (GUM 4.2.3).
    #[must_use]
    pub fn uncertainty_of_mean(&self) -> Length {
        mm(to_mm(self.deviation()) / libm::sqrt(self.n))
    }
    /// n − 1.
    #[must_use]
    pub fn freedom(&self) -> Freedom {
        Freedom::new(self.n - 1.0).unwrap_or(Freedom::EXACT)
    }
    /// The mean as a reading: scatter of the mean and the instrument's own uncertainty (type B) in squares.
    ///
    /// The scatter is the pooled one where it is given, since s of two or three readings is hardly known.
    ///
    /// # Errors
    /// Those of [`Reading::new`].
    pub fn reading(&self, instrument: Length, pooled: Option<&Pooled>) -> Result<Reading, Error> {
        let s = pooled.map_or_else(|| to_mm(self.deviation()), |p| to_mm(p.deviation()));
        Reading::new(
            mm(self.mean),
            mm(libm::hypot(s / libm::sqrt(self.n), to_mm(instrument))),
        )
    }
}

/// Scatter pooled over several places read by one hand with one instrument: s² = Σ ν s² / Σ ν (GUM 4.2.4).
///
/// ```
/// use framegauge::{in_mm, measure::{Pooled, Repeated}, mm};
/// let places = [
///     Repeated::of(&[mm(0.050), mm(0.054)]).unwrap(),
///     Repeated::of(&[mm(0.010), mm(0.016)]).unwrap(),
///     Repeated::of(&[mm(0.030), mm(0.030)]).unwrap(),
/// ];
/// let pooled = Pooled::over(&places).unwrap();
/// assert_eq!(pooled.freedom().degrees(), 3.0);
/// assert_eq!(in_mm(pooled.deviation()).to_string(), "0.003 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pooled {
    variance: f64,
    freedom: Freedom,
}

impl Pooled {
    /// Pools the scatter of several places.
    ///
    /// # Errors
    /// `Missing` for no place at all.
    pub fn over(places: &[Repeated]) -> Result<Self, Error> {
        let nu: f64 = places.iter().map(|p| p.n - 1.0).sum();
        let freedom = Freedom::new(nu).map_err(|_| {
            Error::new(
                ErrorKind::Missing,
                "repeated readings",
                "",
                "nothing to pool",
                "read some places twice",
            )
        })?;
        Ok(Self {
            variance: places.iter().map(|p| p.squares).sum::<f64>() / nu,
            freedom,
        })
    }
    /// Pooled standard deviation of a single reading.
    #[must_use]
    pub fn deviation(&self) -> Length {
        mm(libm::sqrt(self.variance))
    }
    /// Sum of the degrees of freedom.
    #[must_use]
    pub const fn freedom(&self) -> Freedom {
        self.freedom
    }
    /// Uncertainty of the mean of n readings, n ≥ 1.
    #[must_use]
    pub fn uncertainty_of_mean(&self, n: u32) -> Length {
        mm(libm::sqrt(self.variance / f64::from(n.max(1))))
    }
}
