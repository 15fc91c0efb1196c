//! A bore or post is not one number: sizes taken on several axes and depths, and what they say about its shape.

use alloc::vec::Vec;
use core::cmp::Ordering;

use super::caution::{Caution, note};
use crate::measure::Reading;
use crate::quantity::{Angle, Length, deg, nanometres};
use crate::{Error, ErrorKind};

/// More readings than this of one bore are a mistake, not a survey.
const MOST_READINGS: usize = 1000;

/// A diameter with the place where it was taken.
///
/// ```
/// use framegauge::{deg, fit::SizeReading, mm};
/// let size = SizeReading::new("27.25 +/- 0.02 mm".parse().unwrap()).across(deg(90.0)).unwrap().at_depth(mm(40.0)).unwrap();
/// assert_eq!(size.depth(), Some(mm(40.0)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeReading {
    size: Reading,
    axis: Option<Angle>,
    depth: Option<Length>,
}

impl SizeReading {
    /// A diameter without a known place.
    #[must_use]
    pub const fn new(size: Reading) -> Self {
        Self {
            size,
            axis: None,
            depth: None,
        }
    }

    /// The same, measured across this direction (0° to 180°; 190° is the same axis as 10°).
    ///
    /// # Errors
    /// `NotFinite`.
    pub fn across(mut self, axis: Angle) -> Result<Self, Error> {
        if !axis.value.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "axis",
                axis.value,
                "a direction must be finite",
                "give it in degrees from any mark on the part",
            ));
        }
        self.axis = Some(axis);
        Ok(self)
    }

    /// The same, measured this deep from the mouth (for a post: from its lower end).
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` below 0 mm or beyond 3 m.
    pub fn at_depth(mut self, depth: Length) -> Result<Self, Error> {
        // Depths are lengths along the frame, so they share the bounds of readings.
        let checked = Reading::exact(depth).map_err(|e| e.within("depth"))?;
        if checked.value() < crate::quantity::mm(0.0) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "depth",
                crate::quantity::in_mm(depth),
                "a depth is counted inwards from the mouth",
                "give 0 mm at the mouth",
            ));
        }
        self.depth = Some(depth);
        Ok(self)
    }

    /// The diameter.
    #[must_use]
    pub const fn size(&self) -> Reading {
        self.size
    }
    /// The direction, where known.
    #[must_use]
    pub const fn axis(&self) -> Option<Angle> {
        self.axis
    }
    /// The depth, where known.
    #[must_use]
    pub const fn depth(&self) -> Option<Length> {
        self.depth
    }

    /// Direction in whole millidegrees within half a turn: a diameter has no front.
    fn axis_key(&self) -> Option<i64> {
        #[expect(clippy::cast_possible_truncation, reason = "below half a turn")]
        self.axis.map(|axis| {
            let key = libm::fmod(libm::round(axis.value / deg(0.001).value), 180_000.0);
            (key as i64).rem_euclid(180_000)
        })
    }
    fn depth_key(&self) -> Option<i64> {
        self.depth.and_then(nanometres)
    }
}

/// What a set of diameters says about a bore or post.
///
/// ```
/// use framegauge::{deg, fit::{Caution, Shape, SizeReading}, in_mm, mm};
/// let at = |text: &str, axis: f64, depth: f64| {
///     SizeReading::new(text.parse().unwrap()).across(deg(axis)).unwrap().at_depth(mm(depth)).unwrap()
/// };
/// let bore = Shape::of(&[
///     at("27.22 +/- 0.01 mm", 0.0, 5.0), at("27.26 +/- 0.01 mm", 90.0, 5.0),
///     at("27.20 +/- 0.01 mm", 0.0, 80.0), at("27.20 +/- 0.01 mm", 90.0, 80.0),
/// ]).unwrap();
/// assert_eq!(in_mm(bore.ovality().unwrap().value()).to_string(), "0.040 mm");
/// assert_eq!(in_mm(bore.taper().unwrap().value()).to_string(), "-0.040 mm");
/// assert!(!bore.cautions().contains(&Caution::ShapeAtLeast));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Shape {
    smallest: Reading,
    largest: Reading,
    mean: Reading,
    ovality: Option<Reading>,
    taper: Option<Reading>,
    axes: usize,
    depths: usize,
    cautions: Vec<Caution>,
}

impl Shape {
    /// Smallest, largest and mean diameter, out-of-round and taper.
    ///
    /// The mean carries the mean uncertainty of its readings, not a smaller one: one instrument errs the same way each time.
    ///
    /// # Errors
    /// `Missing` for an empty set, `TooLarge` beyond 1000 readings, `OutOfRange` for a size at or below 0 mm.
    pub fn of(readings: &[SizeReading]) -> Result<Self, Error> {
        let sizes = || readings.iter().map(|r| r.size);
        let (Some(smallest), Some(largest)) = (smallest(sizes()), largest(sizes())) else {
            return Err(Error::new(
                ErrorKind::Missing,
                "readings",
                "",
                "no reading given",
                "measure at least two axes at two depths",
            ));
        };
        if readings.len() > MOST_READINGS {
            return Err(Error::new(
                ErrorKind::TooLarge,
                "readings",
                readings.len(),
                "more than 1000 readings of one size",
                "give one row of readings per axis and depth",
            ));
        }
        if let Some(bad) = readings.iter().find(|r| r.size.value().value <= 0.0) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "size",
                bad.size,
                "must be above 0 mm",
                "measure again; a size has no sign",
            ));
        }
        let axes = distinct(readings, |r| r.axis_key());
        let depths = distinct(readings, |r| r.depth_key());
        let mut cautions = Vec::new();
        if axes.len() < 2 || depths.len() < 2 {
            note(&mut cautions, Caution::ShapeAtLeast);
        }
        if scattered(readings) {
            note(&mut cautions, Caution::ScatterExceedsUncertainty);
        }
        Ok(Self {
            smallest,
            largest,
            mean: mean(sizes())?,
            ovality: ovality(readings),
            taper: taper(readings, &depths)?,
            axes: axes.len(),
            depths: depths.len(),
            cautions,
        })
    }

    /// The smallest diameter read.
    #[must_use]
    pub const fn smallest(&self) -> Reading {
        self.smallest
    }
    /// The largest diameter read.
    #[must_use]
    pub const fn largest(&self) -> Reading {
        self.largest
    }
    /// The mean of the diameters: the two-point average that bearing tolerances are meant for.
    #[must_use]
    pub const fn mean(&self) -> Reading {
        self.mean
    }
    /// Largest less smallest diameter at one depth, the worst depth; `None` when no depth has two axes.
    #[must_use]
    pub const fn ovality(&self) -> Option<Reading> {
        self.ovality
    }
    /// Mean diameter at the deepest place less that at the shallowest: negative narrows inwards. `None` below two depths.
    #[must_use]
    pub const fn taper(&self) -> Option<Reading> {
        self.taper
    }
    /// Warnings about the readings.
    #[must_use]
    pub fn cautions(&self) -> &[Caution] {
        &self.cautions
    }
}

fn distinct(readings: &[SizeReading], key: impl Fn(&SizeReading) -> Option<i64>) -> Vec<i64> {
    let mut keys: Vec<i64> = readings.iter().filter_map(key).collect();
    keys.sort_unstable();
    keys.dedup();
    keys
}

/// Repeats of one place differing by more than the root sum of their expanded uncertainties (E_n above 1, ISO 13528).
/// Readings without a place count as repeats of one place.
fn scattered(readings: &[SizeReading]) -> bool {
    readings.iter().enumerate().any(|(index, a)| {
        readings.iter().take(index).any(|b| {
            let same = a.axis_key() == b.axis_key() && a.depth_key() == b.depth_key();
            let apart = a.size.less(&b.size);
            let allowed = nanometres(apart.expanded_uncertainty());
            same && nanometres(apart.value()).map(i64::abs) > allowed
        })
    })
}

/// Mean of readings with the mean of their uncertainties.
fn mean(sizes: impl Iterator<Item = Reading>) -> Result<Reading, Error> {
    let (mut count, mut value, mut u) = (0.0, Length::default(), Length::default());
    for size in sizes {
        count += 1.0;
        value += size.value();
        u += size.standard_uncertainty();
    }
    Reading::new(value / count, u / count)
}

/// By value; of equal readings the less certain one stands further out, so that their order changes no answer.
fn by_value(a: &Reading, b: &Reading) -> Ordering {
    a.value().value.total_cmp(&b.value().value)
}
fn by_doubt(a: &Reading, b: &Reading) -> Ordering {
    let of = |r: &Reading| r.standard_uncertainty().value;
    of(a).total_cmp(&of(b))
}
fn smallest(sizes: impl Iterator<Item = Reading>) -> Option<Reading> {
    sizes.min_by(|a, b| by_value(a, b).then_with(|| by_doubt(b, a)))
}
fn largest(sizes: impl Iterator<Item = Reading>) -> Option<Reading> {
    sizes.max_by(|a, b| by_value(a, b).then_with(|| by_doubt(a, b)))
}

fn ovality(readings: &[SizeReading]) -> Option<Reading> {
    let across = |a: &SizeReading, b: &SizeReading| {
        a.depth_key() == b.depth_key()
            && a.axis_key().is_some()
            && b.axis_key().is_some()
            && a.axis_key() != b.axis_key()
    };
    largest(readings.iter().flat_map(|a| {
        let others = readings.iter().filter(move |b| across(a, b));
        others.map(|b| a.size.less(&b.size))
    }))
}

fn taper(readings: &[SizeReading], depths: &[i64]) -> Result<Option<Reading>, Error> {
    let (Some(mouth), Some(deep)) = (depths.first(), depths.last()) else {
        return Ok(None);
    };
    if mouth == deep {
        return Ok(None);
    }
    let at = |depth: i64| {
        mean(
            readings
                .iter()
                .filter(move |r| r.depth_key() == Some(depth))
                .map(|r| r.size),
        )
    };
    Ok(Some(at(*deep)?.less(&at(*mouth)?)))
}
