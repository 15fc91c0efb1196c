//! Widths across a shell or a head tube: two faces read at once with a caliper or micrometer.

use alloc::vec::Vec;

use super::clock::Clock;
use super::report::report;
use crate::measure::Reading;
use crate::quantity::{Length, Width, mm, to_mm};
use crate::{Error, ErrorKind};

/// A width at a clock angle.
///
/// ```
/// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
/// # let at = |angle, w| WidthReading { at: Clock::new(deg(angle)).unwrap(), width: Reading::new(mm(w), mm(0.01)).unwrap() };
/// assert_eq!(at(120.0, 68.1).width.to_string(), "68.100 ± 0.020 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WidthReading {
    /// Direction, seen from outside one end; the same end for all.
    pub at: Clock,
    /// The width there.
    pub width: Reading,
}

/// Widths around a shell.
///
/// ```
/// use framegauge::{deg, face::{Clock, WidthReading, WidthSurvey}, in_mm, measure::Reading, mm};
/// let at = |angle, width| WidthReading { at: Clock::new(deg(angle)).unwrap(), width: Reading::new(mm(width), mm(0.01)).unwrap() };
/// let shell = WidthSurvey::new([at(0.0, 68.21), at(120.0, 68.15), at(240.0, 68.09)]).unwrap().shape();
/// assert_eq!(in_mm(shell.least.value()).to_string(), "68.090 mm");
/// assert_eq!(in_mm(shell.parallelism.value()).to_string(), "0.120 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct WidthSurvey {
    readings: Vec<WidthReading>,
}

report! {
    /// What the widths say.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, w| WidthReading { at: Clock::new(deg(angle)).unwrap(), width: Reading::new(mm(w), mm(0.01)).unwrap() };
    /// let shape = WidthSurvey::new([at(0.0, 68.2), at(180.0, 68.1)]).unwrap().shape();
    /// assert_eq!(in_mm(shape.mean.value()).to_string(), "68.150 mm");
    /// assert_eq!(shape.narrowest_at.degrees(), 180.0);
    /// ```
    WidthShape {
        /// The narrowest place: what a minimum width is held against.
        least: Reading as own least,
        /// The widest place.
        most: Reading as own most,
        /// Mean, with the uncertainty of the mean as if the readings were independent.
        mean: Reading as own mean,
        /// Range of the widths: parallelism of the two faces as far as the readings saw it, so "at least".
        parallelism: Reading as own parallelism_at_least,
        /// Where it is narrowest.
        narrowest_at: Clock as own narrowest_at,
    }
}

impl WidthSurvey {
    /// A survey from widths at distinct angles.
    ///
    /// # Errors
    /// `Missing` for no reading at all; `Contradiction` for an angle read twice; `OutOfRange` for a width that is none.
    pub fn new(readings: impl Into<Vec<WidthReading>>) -> Result<Self, Error> {
        let readings = readings.into();
        if readings.is_empty() {
            return Err(Error::new(
                ErrorKind::Missing,
                "widths",
                "",
                "no width was read",
                "read the width at three places or more",
            ));
        }
        for (index, reading) in readings.iter().enumerate() {
            let field = || alloc::format!("widths.{index}");
            Width::new(reading.width.value()).map_err(|e| e.within(&field()))?;
            let again = readings
                .iter()
                .take(index)
                .any(|r| r.at.apart(reading.at).value < crate::deg(0.01).value);
            if again {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    field(),
                    reading.at,
                    "this angle was already read",
                    "pool repeated readings of one place first",
                ));
            }
        }
        Ok(Self { readings })
    }
    /// The readings, in the order given.
    #[must_use]
    pub fn readings(&self) -> &[WidthReading] {
        &self.readings
    }
    /// Least, most, mean and range.
    #[must_use]
    pub fn shape(&self) -> WidthShape {
        let by_width = |a: &&WidthReading, b: &&WidthReading| {
            to_mm(a.width.value()).total_cmp(&to_mm(b.width.value()))
        };
        // Not empty by construction; the fallback is never read.
        let nothing = WidthReading {
            at: Clock::top(),
            width: Reading::zero(),
        };
        let least = self
            .readings
            .iter()
            .min_by(by_width)
            .copied()
            .unwrap_or(nothing);
        let most = self
            .readings
            .iter()
            .max_by(by_width)
            .copied()
            .unwrap_or(nothing);
        #[expect(clippy::cast_precision_loss, reason = "a count")]
        let n = self.readings.len() as f64;
        let sum = self
            .readings
            .iter()
            .fold(Reading::zero(), |sum, r| sum.plus(&r.width));
        WidthShape {
            least: least.width,
            most: most.width,
            mean: sum.scaled(1.0 / n),
            parallelism: most.width.less(&least.width),
            narrowest_at: least.at,
        }
    }
    /// What is left of the narrowest width after so much comes off each end: W' = W − left − right.
    ///
    /// # Errors
    /// `OutOfRange` for a negative depth.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, w| WidthReading { at: Clock::new(deg(angle)).unwrap(), width: Reading::new(mm(w), mm(0.01)).unwrap() };
    /// let shell = WidthSurvey::new([at(0.0, 68.2), at(180.0, 68.1)]).unwrap();
    /// let cut = Reading::exact(mm(0.05)).unwrap();
    /// assert_eq!(in_mm(shell.remaining(&cut, &cut).unwrap().value()).to_string(), "68.000 mm");
    /// ```
    pub fn remaining(&self, one_end: &Reading, other_end: &Reading) -> Result<Reading, Error> {
        for (field, depth) in [("one end", one_end), ("other end", other_end)] {
            if depth.value() < mm(0.0) {
                return Err(Error::new(
                    ErrorKind::OutOfRange,
                    field,
                    crate::in_mm(depth.value()),
                    "a cut takes nothing negative",
                    "count depths inwards",
                ));
            }
        }
        Ok(self.shape().least.less(one_end).less(other_end))
    }
    /// Largest and smallest difference a length may show, for the record.
    #[must_use]
    pub fn range(&self) -> Length {
        self.shape().parallelism.value()
    }
}
