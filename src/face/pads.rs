//! Pads of a brake mount and other faces that are no ring: free points.

use alloc::vec::Vec;

use super::kernel::lsq;
use super::plane::{LeastSquaresPlane, Point, on_one_line, too_few};
use crate::evidence::Text;
use crate::measure::Reading;
use crate::quantity::{Length, mm};
use crate::{Error, ErrorKind};

/// A reading on a pad: which pad, and where. Height along the pilot, positive outwards.
///
/// ```
/// # use framegauge::{face::*, in_mm, measure::DecisionRule, mm};
/// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
/// let mount = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
///     at("lower", 37.0, -6.0, 0.3), at("lower", 37.0, 6.0, 0.38)], mm(0.004)).unwrap();
/// assert_eq!(mount.pads()[0].pad, "upper");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct PadPoint {
    /// Which pad, such as "upper" and "lower".
    pub pad: Text,
    /// The point: x along the line that joins the pads, y across it, z outwards along the pilot.
    pub point: Point,
}

/// A survey of the pads of a mount, all heights on one datum.
///
/// ```
/// use framegauge::{face::{PadPoint, PadSurvey, Point}, in_mm, mm};
/// let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
/// let survey = PadSurvey::new("wheel axle", [
///     at("upper", -37.0, -6.0, 0.00), at("upper", -37.0, 6.0, 0.08),
///     at("lower", 37.0, -6.0, 0.00), at("lower", 37.0, 6.0, 0.08),
/// ], mm(0.004)).unwrap();
/// assert_eq!(in_mm(survey.range()).to_string(), "0.080 mm");
/// assert!((survey.least_squares().plane().slope_y() - 0.08 / 12.0).abs() < 1e-12);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct PadSurvey {
    datum: Text,
    pub(crate) pads: Vec<PadPoint>,
    pub(crate) points: Vec<Point>,
    pub(crate) u: Length,
    pub(crate) fit: lsq::Fit,
}

impl PadSurvey {
    /// A survey of free points with one standard uncertainty per height.
    ///
    /// # Errors
    /// `Missing` for fewer than 3 points or an unnamed datum; `NotApplicable` when all lie on one line;
    /// `Contradiction` for two readings at one place; those of [`Reading::new`] for the uncertainty.
    pub fn new(
        datum: impl Into<Text>,
        pads: impl Into<Vec<PadPoint>>,
        standard_uncertainty: Length,
    ) -> Result<Self, Error> {
        let (datum, pads) = (datum.into(), pads.into());
        Reading::new(mm(0.0), standard_uncertainty)?;
        if datum.trim().is_empty() {
            return Err(Error::new(
                ErrorKind::Missing,
                "datum",
                "",
                "the survey does not say what the heights were read along",
                "name it, e.g. `wheel axle`",
            ));
        }
        let points: Vec<Point> = pads.iter().map(|p| p.point).collect();
        if points.len() < 3 {
            return Err(too_few(points.len(), "pads"));
        }
        for (index, point) in points.iter().enumerate() {
            let twin = points
                .iter()
                .take(index)
                .any(|p| libm::hypot(p.x - point.x, p.y - point.y) < 0.01);
            if twin {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    alloc::format!("pads.{index}"),
                    alloc::format!("{:.3}, {:.3} mm", point.x, point.y),
                    "this place was already read",
                    "pool repeated readings of one place first",
                ));
            }
        }
        let fit = lsq::fit(&points).ok_or_else(|| on_one_line("pads"))?;
        Ok(Self {
            datum,
            pads,
            points,
            u: standard_uncertainty,
            fit,
        })
    }
    /// What the heights were read along.
    #[must_use]
    pub fn datum(&self) -> &str {
        &self.datum
    }
    /// The points with the pad each lies on, in the order given.
    #[must_use]
    pub fn pads(&self) -> &[PadPoint] {
        &self.pads
    }
    /// The points, in the order given.
    #[must_use]
    pub fn points(&self) -> &[Point] {
        &self.points
    }
    /// Standard uncertainty of one height.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// let mount = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    ///     at("lower", 37.0, -6.0, 0.3), at("lower", 37.0, 6.0, 0.38)], mm(0.004)).unwrap();
    /// assert_eq!(in_mm(mount.reading_uncertainty()).to_string(), "0.004 mm");
    /// ```
    #[must_use]
    pub const fn reading_uncertainty(&self) -> Length {
        self.u
    }
    /// The least-squares plane through all pads.
    #[must_use]
    pub fn least_squares(&self) -> LeastSquaresPlane {
        LeastSquaresPlane::of(self.fit, &self.points)
    }
    /// Highest less lowest reading: the clean-up depth of a cutter square to the datum, at the probed places.
    #[must_use]
    pub fn range(&self) -> Length {
        let heights = self.points.iter().map(|p| p.z);
        let (low, high) = heights.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), z| {
            (l.min(z), h.max(z))
        });
        mm(high - low)
    }
}
