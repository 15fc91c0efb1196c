//! Student's t: what few readings are worth.

use crate::{Error, ErrorKind};

/// Degrees of freedom: how well an uncertainty is itself known. Infinite for a figure taken from a specification.
///
/// ```
/// use framegauge::measure::Freedom;
/// assert!(Freedom::new(2.0).is_ok() && Freedom::new(0.0).is_err());
/// assert_eq!(Freedom::EXACT.degrees(), f64::INFINITY);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Freedom(f64);

impl Freedom {
    /// An uncertainty that is taken as known exactly.
    pub const EXACT: Self = Self(f64::INFINITY);

    /// Degrees of freedom; need not be whole.
    ///
    /// # Errors
    /// `NotFinite` for NaN; `OutOfRange` below 1: a single reading says nothing of its scatter.
    pub fn new(degrees: f64) -> Result<Self, Error> {
        if degrees.is_nan() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "degrees of freedom",
                degrees,
                "is no number",
                "readings less one",
            ));
        }
        if degrees < 1.0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "degrees of freedom",
                degrees,
                "a single reading says nothing of its own scatter",
                "read at least twice, or pool readings of several places",
            ));
        }
        Ok(Self(degrees))
    }
    /// The number.
    #[must_use]
    pub const fn degrees(self) -> f64 {
        self.0
    }
    /// The next lower whole number of degrees, as tables of t are entered (GUM G.4.1).
    ///
    /// ```
    /// use framegauge::measure::Freedom;
    /// assert_eq!(Freedom::new(16.7).unwrap().truncated().degrees(), 16.0);
    /// ```
    #[must_use]
    pub fn truncated(self) -> Self {
        Self(libm::floor(self.0))
    }
}

/// Share of Student's t at or below a value (regularized incomplete beta function, Abramowitz and Stegun 26.7.1, 26.5.8).
///
/// ```
/// use framegauge::measure::{Freedom, student};
/// // t 2.92 at 16 degrees of freedom leaves half a per cent above (GUM, annex G, 99 %).
/// assert!((student(2.92, Freedom::new(16.0).unwrap()) - 0.995).abs() < 2e-4);
/// assert!((student(1.96, Freedom::EXACT) - 0.975).abs() < 1e-5);
/// ```
#[must_use]
pub fn student(t: f64, freedom: Freedom) -> f64 {
    let nu = freedom.0;
    if nu > 1e6 {
        return super::phi(t);
    }
    let tail = incomplete_beta(nu / (nu + t * t), nu / 2.0, 0.5) / 2.0;
    if t > 0.0 { 1.0 - tail } else { tail }
}

/// The factor k such that ± k u holds a share of the values: 1.96 at 95 % for a well known uncertainty, 12.7 for one
/// degree of freedom, 4.30 for two.
///
/// # Errors
/// `OutOfRange` unless the share lies above 0 and below 1.
///
/// ```
/// use framegauge::measure::{Freedom, coverage_factor};
/// let k = |nu: f64| coverage_factor(0.95, Freedom::new(nu).unwrap()).unwrap();
/// assert!((k(1.0) - 12.706).abs() < 1e-3 && (k(2.0) - 4.303).abs() < 1e-3);
/// assert!((coverage_factor(0.95, Freedom::EXACT).unwrap() - 1.960).abs() < 1e-3);
/// ```
pub fn coverage_factor(share: f64, freedom: Freedom) -> Result<f64, Error> {
    if !(share > 0.0 && share < 1.0) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "coverage",
            share,
            "a coverage lies above 0 and below 1",
            "0.95 is usual",
        ));
    }
    let wanted = f64::midpoint(1.0, share);
    // Wide enough for a share of 1 - 1e-12 at one degree of freedom, halved down to less than binary noise.
    let (mut low, mut high) = (0.0, 1e12);
    for _ in 0..100 {
        let middle = f64::midpoint(low, high);
        if student(middle, freedom) < wanted {
            low = middle
        } else {
            high = middle
        }
    }
    Ok(high)
}

/// I_x(a, b) by its continued fraction (modified Lentz).
fn incomplete_beta(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    // The fraction converges fast on this side only.
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - incomplete_beta(1.0 - x, b, a);
    }
    let front = libm::exp(
        a * libm::log(x) + b * libm::log1p(-x) + libm::lgamma(a + b)
            - libm::lgamma(a)
            - libm::lgamma(b),
    );
    let guard = |v: f64| if libm::fabs(v) < 1e-300 { 1e-300 } else { v };
    let (mut c, mut d) = (1.0, 1.0 / guard(1.0 - (a + b) * x / (a + 1.0)));
    let mut fraction = d;
    for step in 1..300 {
        let m = f64::from(step);
        let before = fraction;
        for numerator in [
            m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m)),
            -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0)),
        ] {
            d = 1.0 / guard(1.0 + numerator * d);
            c = guard(1.0 + numerator / c);
            fraction *= c * d;
        }
        if fraction == before {
            break;
        }
    }
    front * fraction / a
}
