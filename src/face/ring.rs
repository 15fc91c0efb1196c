//! Ring surveys: heights of a face at known clock angles, read along the axis of the pilot.

use alloc::vec::Vec;

use super::clock::Clock;
use super::kernel::lsq;
use super::plane::{LeastSquaresPlane, Point, on_one_line, too_few};
use crate::evidence::Text;
use crate::measure::{Pooled, Reading, Repeated};
use crate::quantity::{Length, Radius, deg, mm, to_mm};
use crate::{Error, ErrorKind};

/// The face as a ring: inner and outer radius about the pilot axis.
///
/// ```
/// use framegauge::{Radius, face::Annulus, mm};
/// let r = |v| Radius::new(mm(v)).unwrap();
/// assert!(Annulus::new(r(17.0), r(20.0)).is_ok());
/// assert!(Annulus::new(r(20.0), r(17.0)).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Annulus {
    inner: Radius,
    outer: Radius,
}

impl Annulus {
    /// A ring from its radii.
    ///
    /// # Errors
    /// `Contradiction` unless the inner radius is the smaller by at least 0.01 mm.
    pub fn new(inner: Radius, outer: Radius) -> Result<Self, Error> {
        if outer.length() - inner.length() < mm(0.01) {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "face",
                alloc::format!("inner {inner}, outer {outer}"),
                "the inner radius must be smaller than the outer",
                "measure the face again, and check radius against diameter",
            ));
        }
        Ok(Self { inner, outer })
    }
    /// Inner radius.
    #[must_use]
    pub const fn inner(&self) -> Radius {
        self.inner
    }
    /// Outer radius.
    #[must_use]
    pub const fn outer(&self) -> Radius {
        self.outer
    }
}

/// One probed place of a ring.
///
/// ```
/// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
/// # let r = |v| Radius::new(mm(v)).unwrap();
/// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
/// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
/// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
/// let probe = Probe { at: Clock::new(deg(90.0)).unwrap(), radius: r(20.0), height: Reading::new(mm(0.05), mm(0.004)).unwrap() };
/// assert_eq!(probe.at.to_string(), "90 deg (3:00)");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Probe {
    /// Direction, seen from outside.
    pub at: Clock,
    /// Distance from the axis.
    pub radius: Radius,
    /// Height along the pilot axis, positive outwards, with its uncertainty.
    pub height: Reading,
}

/// Heights at one radius, by angle.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Circle {
    pub(crate) radius: f64,
    /// Index of each probe, in the order of its angle.
    pub(crate) order: Vec<usize>,
}

/// Two angles nearer than this are one place: a hundredth of a degree.
const SAME_ANGLE: f64 = 0.01;
/// Two radii nearer than this are one circle.
const SAME_RADIUS_MM: f64 = 0.01;

/// A ring survey: heights at distinct angles on one or two radii, along the pilot axis, positive outwards.
///
/// ```
/// use framegauge::{Radius, deg, face::{Annulus, Clock, Probe, RingSurvey}, in_mm, measure::Reading, mm};
/// let r = |v| Radius::new(mm(v)).unwrap();
/// let heights = [0.050, 0.062, 0.041, 0.018, 0.004, 0.010, 0.022, 0.037];
/// let probes: Vec<Probe> = heights.iter().enumerate().map(|(i, z)| Probe {
///     at: Clock::new(deg(45.0 * i as f64)).unwrap(),
///     radius: r(20.0),
///     height: Reading::new(mm(*z), mm(0.004)).unwrap(),
/// }).collect();
/// let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "shell thread, drive side", probes).unwrap();
/// assert_eq!(in_mm(survey.clean_up().at_probes).to_string(), "0.058 mm");
/// assert_eq!(in_mm(survey.tilt(mm(40.0)).unwrap().run_out.value()).to_string(), "0.053 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct RingSurvey {
    face: Annulus,
    datum: Text,
    probes: Vec<Probe>,
    pub(crate) points: Vec<Point>,
    pub(crate) circles: Vec<Circle>,
    pub(crate) fit: lsq::Fit,
}

impl RingSurvey {
    /// A survey of this face; `datum` names what the heights were read along, such as "shell thread, drive side".
    ///
    /// # Errors
    /// `Missing` for fewer than 3 probes or an unnamed datum; `Contradiction` for two probes at one place or a probe off
    /// the face; `OutOfRange` for more than two radii; `NotApplicable` when all probes lie on one line.
    pub fn new(
        face: Annulus,
        datum: impl Into<Text>,
        probes: impl Into<Vec<Probe>>,
    ) -> Result<Self, Error> {
        let (datum, probes) = (datum.into(), probes.into());
        if datum.trim().is_empty() {
            return Err(Error::new(
                ErrorKind::Missing,
                "datum",
                "",
                "the survey does not say what the heights were read along",
                "name the pilot, e.g. `shell thread, drive side`",
            ));
        }
        if probes.len() < 3 {
            return Err(too_few(probes.len(), "probes"));
        }
        let mut points = Vec::with_capacity(probes.len());
        let mut circles: Vec<Circle> = Vec::new();
        for (index, probe) in probes.iter().enumerate() {
            let radius = to_mm(probe.radius.length());
            if radius < to_mm(face.inner.length()) - SAME_RADIUS_MM
                || radius > to_mm(face.outer.length()) + SAME_RADIUS_MM
            {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    alloc::format!("probes.{index}.radius"),
                    probe.radius,
                    alloc::format!(
                        "lies off the face, which runs from {} to {}",
                        face.inner,
                        face.outer
                    ),
                    "give the radius from the axis, not the diameter",
                ));
            }
            let angle = probe.at.radians();
            points.push(Point {
                x: radius * libm::sin(angle),
                y: radius * libm::cos(angle),
                z: to_mm(probe.height.value()),
            });
            match circles
                .iter_mut()
                .find(|c| (c.radius - radius).abs() < SAME_RADIUS_MM)
            {
                Some(circle) => circle.order.push(index),
                None => circles.push(Circle {
                    radius,
                    order: alloc::vec![index],
                }),
            }
        }
        if circles.len() > 2 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "probes",
                circles.len(),
                "more than two radii",
                "probe on one circle, or on an inner and an outer one",
            ));
        }
        circles.sort_by(|a, b| a.radius.total_cmp(&b.radius));
        for circle in &mut circles {
            let angle = |i: &usize| probes.get(*i).map_or(0.0, |p| p.at.radians());
            circle.order.sort_by(|a, b| angle(a).total_cmp(&angle(b)));
            check_distinct(&circle.order, &probes)?;
        }
        let fit = lsq::fit(&points).ok_or_else(|| on_one_line("probes"))?;
        Ok(Self {
            face,
            datum,
            probes,
            points,
            circles,
            fit,
        })
    }

    /// A survey from repeated readings of each place: means, with the scatter pooled over all places and the
    /// instrument's own standard uncertainty (type B) in squares. Places read once take the pooled scatter too.
    ///
    /// # Errors
    /// `Missing` when no place was read twice; then as [`Self::new`].
    ///
    /// ```
    /// use framegauge::{Radius, deg, face::{Annulus, Clock, RingSurvey}, in_mm, mm};
    /// let r = |v| Radius::new(mm(v)).unwrap();
    /// let at = |angle| Clock::new(deg(angle)).unwrap();
    /// let turns = [(at(0.0), r(20.0), &[mm(0.050), mm(0.054)][..]), (at(120.0), r(20.0), &[mm(0.010), mm(0.016)][..]),
    ///     (at(240.0), r(20.0), &[mm(0.030)][..])];
    /// let survey = RingSurvey::from_repeats(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", &turns, mm(0.002)).unwrap();
    /// assert_eq!(in_mm(survey.probes()[1].height.value()).to_string(), "0.013 mm");
    /// ```
    pub fn from_repeats(
        face: Annulus,
        datum: impl Into<Text>,
        places: &[(Clock, Radius, &[Length])],
        instrument: Length,
    ) -> Result<Self, Error> {
        let repeated = places
            .iter()
            .filter(|p| p.2.len() > 1)
            .map(|p| Repeated::of(p.2));
        let pooled = Pooled::over(&repeated.collect::<Result<Vec<_>, _>>()?)?;
        let mut probes = Vec::with_capacity(places.len());
        for (index, (at, radius, heights)) in places.iter().enumerate() {
            let height = match heights {
                [] => Err(Error::new(
                    ErrorKind::Missing,
                    "heights",
                    "",
                    "this place was not read",
                    "read it, or leave it out",
                )),
                [one] => Reading::new(
                    *one,
                    mm(libm::hypot(to_mm(pooled.deviation()), to_mm(instrument))),
                ),
                more => Repeated::of(more).and_then(|r| r.reading(instrument, Some(&pooled))),
            };
            let height = height.map_err(|e| e.within(&alloc::format!("probes.{index}")))?;
            probes.push(Probe {
                at: *at,
                radius: *radius,
                height,
            });
        }
        Self::new(face, datum, probes)
    }

    /// The face.
    #[must_use]
    pub const fn face(&self) -> Annulus {
        self.face
    }
    /// What the heights were read along.
    #[must_use]
    pub fn datum(&self) -> &str {
        &self.datum
    }
    /// The probes, in the order given.
    #[must_use]
    pub fn probes(&self) -> &[Probe] {
        &self.probes
    }
    /// The probed points in space, in the order given.
    #[must_use]
    pub fn points(&self) -> &[Point] {
        &self.points
    }
    /// Standard uncertainty of one height: root mean square over the probes.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// assert_eq!(in_mm(survey.reading_uncertainty()).to_string(), "0.004 mm");
    /// ```
    #[must_use]
    pub fn reading_uncertainty(&self) -> Length {
        mm(self.u_mm())
    }
    pub(crate) fn u_mm(&self) -> f64 {
        let squares: f64 = self
            .probes
            .iter()
            .map(|p| to_mm(p.height.standard_uncertainty()))
            .map(|u| u * u)
            .sum();
        libm::sqrt(squares / self.fit.n)
    }
    /// The least-squares plane.
    #[must_use]
    pub fn least_squares(&self) -> LeastSquaresPlane {
        LeastSquaresPlane::of(self.fit, &self.points)
    }

    /// Both surveys as one: the same face on the same datum, probed at further places.
    ///
    /// # Errors
    /// `Contradiction` when the faces or the data differ; then as [`Self::new`].
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// // The same places again are refused: pool them instead.
    /// assert!(survey.joined(&survey).is_err());
    /// ```
    pub fn joined(&self, other: &Self) -> Result<Self, Error> {
        self.same_datum(other)?;
        if self.face != other.face {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "face",
                "",
                "the two surveys are of different faces",
                "join surveys of one face only",
            ));
        }
        let mut probes = self.probes.clone();
        probes.extend_from_slice(&other.probes);
        Self::new(self.face, self.datum.clone(), probes)
    }

    pub(crate) fn same_datum(&self, other: &Self) -> Result<(), Error> {
        if self.datum == other.datum {
            return Ok(());
        }
        Err(Error::new(
            ErrorKind::Contradiction,
            "datum",
            alloc::format!("`{}` and `{}`", self.datum, other.datum),
            "heights read along different pilots cannot be compared",
            "read both surveys along the same pilot",
        ))
    }
}

fn check_distinct(order: &[usize], probes: &[Probe]) -> Result<(), Error> {
    let wrapped = order.iter().cycle().skip(1);
    for (a, b) in order
        .iter()
        .zip(wrapped)
        .take(if order.len() > 1 { order.len() } else { 0 })
    {
        if let (Some(first), Some(second)) = (probes.get(*a), probes.get(*b))
            && first.at.apart(second.at).value < deg(SAME_ANGLE).value
        {
            return Err(Error::new(
                ErrorKind::Contradiction,
                alloc::format!("probes.{b}.angle"),
                second.at,
                "this angle was already read on this circle",
                "pool repeated readings of one place first, or give the right angle",
            ));
        }
    }
    Ok(())
}
