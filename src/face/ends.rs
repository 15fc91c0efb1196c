//! Both ends of a tube: their bores compared, and the offset of their axes.

use super::bore::{BoreShape, Size};
use super::report::report;
use crate::measure::Reading;
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

report! {
    /// The bores of two ends against each other.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
    /// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
    /// let end = |d| BoreSurvey::new([at(0.0, 5.0, d)]).unwrap().shape().unwrap();
    /// assert!(!end(33.95).against_other_end(&end(33.955)).unwrap().shown);
    /// ```
    EndComparison {
        /// Mean of the first less mean of the second.
        difference: Reading as own difference,
        /// Whether it is larger than its expanded uncertainty (k = 2).
        shown: bool as own shown,
        /// Whether each bore has a size at all; a difference of bores without size is only one of means.
        both_have_a_size: bool as own both_have_a_size,
    }
}

impl BoreShape {
    /// Mean diameter over all sections, with the uncertainty of one reading.
    fn mean(&self) -> Result<Reading, Error> {
        match &self.size {
            Size::One { diameter } => Ok(*diameter),
            Size::None { .. } => {
                #[expect(clippy::cast_precision_loss, reason = "a count")]
                let n = self.sections.len() as f64;
                let value = self
                    .sections
                    .iter()
                    .map(|s| to_mm(s.mean.value()))
                    .sum::<f64>()
                    / n;
                let u = self
                    .sections
                    .iter()
                    .map(|s| to_mm(s.mean.standard_uncertainty()))
                    .fold(0.0, f64::max);
                Reading::new(mm(value), mm(u))
            }
        }
    }

    /// This end against the other.
    ///
    /// # Errors
    /// Those of [`Reading::new`].
    ///
    /// ```
    /// use framegauge::{deg, face::{BoreReading, BoreSurvey, Clock, Gauge}, in_mm, measure::Reading, mm};
    /// let end = |d: f64| BoreSurvey::new([BoreReading { at: Clock::new(deg(0.0)).unwrap(), depth: mm(5.0),
    ///     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::ThreePoint }]).unwrap().shape().unwrap();
    /// let both = end(33.95).against_other_end(&end(33.90)).unwrap();
    /// assert_eq!(in_mm(both.difference.value()).to_string(), "0.050 mm");
    /// assert!(both.shown);
    /// ```
    pub fn against_other_end(&self, other: &Self) -> Result<EndComparison, Error> {
        let difference = self.mean()?.less(&other.mean()?);
        Ok(EndComparison {
            difference,
            shown: to_mm(difference.value()).abs() > to_mm(difference.expanded_uncertainty()),
            both_have_a_size: matches!(
                (&self.size, &other.size),
                (Size::One { .. }, Size::One { .. })
            ),
        })
    }
}

/// The axis of a bore, from its centre at two depths along a common datum: x to the right, y up, z along the tube.
///
/// ```
/// use framegauge::{face::{BoreAxis, Point}, in_mm, mm};
/// let at = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let upper = BoreAxis::new(at(0.0, 0.0, 0.0), at(0.0, 0.0, 10.0), mm(0.0)).unwrap();
/// let lower = BoreAxis::new(at(0.05, 0.0, 110.0), at(0.06, 0.0, 120.0), mm(0.0)).unwrap();
/// // The lower bore leaves the line of the upper one by 0.06 mm: coaxiality 0.12 mm on diameter.
/// assert_eq!(in_mm(upper.coaxiality(&lower).unwrap().diameter.value()).to_string(), "0.120 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoreAxis {
    near: super::Point,
    far: super::Point,
    u: f64,
}

report! {
    /// Offset of one bore from the axis of another.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// let upper = BoreAxis::new(p(0.0, 0.0, 0.0), p(0.0, 0.0, 10.0), mm(0.01)).unwrap();
    /// let lower = BoreAxis::new(p(0.1, 0.0, 100.0), p(0.1, 0.0, 110.0), mm(0.01)).unwrap();
    /// let offset = upper.coaxiality(&lower).unwrap();
    /// assert!(offset.extrapolation > 13.0); // an axis 10 mm long, extended to 100 mm
    /// ```
    Coaxiality {
        /// Diameter of the cylinder about the first axis that holds the second over its length: twice its largest distance.
        diameter: Reading as own diameter,
        /// By how much the distance multiplies the uncertainty of a centre, because the first axis is extended so far.
        extrapolation: f64 as share extrapolation,
    }
}

impl BoreAxis {
    /// An axis from two centres and the standard uncertainty of a centre in x and in y.
    ///
    /// # Errors
    /// `Contradiction` when the centres lie less than 1 mm apart along the tube; those of [`Reading::new`] for the
    /// uncertainty.
    pub fn new(
        near: super::Point,
        far: super::Point,
        standard_uncertainty: Length,
    ) -> Result<Self, Error> {
        let u = Reading::new(mm(0.0), standard_uncertainty)?;
        if (far.z - near.z).abs() < 1.0 {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "centres",
                in_mm(mm(far.z - near.z)),
                "two centres so near in depth give no direction",
                "find the centre at the two ends of the bore",
            ));
        }
        Ok(Self {
            near,
            far,
            u: to_mm(u.standard_uncertainty()),
        })
    }

    /// Centre of this axis, extended to a depth, and the factors of its two centres there.
    fn at(&self, z: f64) -> (f64, f64, [f64; 2]) {
        let t = (z - self.near.z) / (self.far.z - self.near.z);
        let along = |a: f64, b: f64| a + (b - a) * t;
        (
            along(self.near.x, self.far.x),
            along(self.near.y, self.far.y),
            [1.0 - t, t],
        )
    }

    /// How far another bore lies off this axis, over the other's length.
    ///
    /// # Errors
    /// Those of [`Reading::new`] for an uncertainty beyond any use.
    pub fn coaxiality(&self, other: &Self) -> Result<Coaxiality, Error> {
        let mut worst = (-1.0, 0.0, 0.0);
        for centre in [other.near, other.far] {
            let (x, y, factors) = self.at(centre.z);
            let distance = libm::hypot(centre.x - x, centre.y - y);
            let [first, second] = factors;
            let factor = libm::hypot(first, second);
            if distance > worst.0 {
                worst = (distance, factor, libm::hypot(factor * self.u, other.u));
            }
        }
        let (distance, extrapolation, u) = worst;
        Ok(Coaxiality {
            diameter: Reading::new(mm(2.0 * distance), mm(2.0 * u))?,
            extrapolation,
        })
    }
}
