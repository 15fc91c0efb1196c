//! Points, planes and the least-squares plane.

use super::clock::Clock;
use super::kernel::{Abc, lsq};
use super::report::report;
use crate::quantity::{Angle, Length, deg, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// A point of a face: x towards 3 o'clock, y towards 12 o'clock, z outwards along the pilot axis.
///
/// ```
/// use framegauge::{face::Point, mm};
/// assert!(Point::new(mm(20.0), mm(0.0), mm(0.05)).is_ok());
/// assert!(Point::new(mm(f64::NAN), mm(0.0), mm(0.05)).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    // Bare millimetres: the kernels work on these directly.
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) z: f64,
}

/// Beyond this a coordinate is no point of a bicycle.
const ABSURD_MM: f64 = 3000.0;

impl Point {
    /// A point from its coordinates.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` beyond ±3 m.
    pub fn new(x: Length, y: Length, z: Length) -> Result<Self, Error> {
        for (name, value) in [("x", x), ("y", y), ("z", z)] {
            if !value.value.is_finite() {
                return Err(Error::new(
                    ErrorKind::NotFinite,
                    name,
                    value.value,
                    "a coordinate must be finite",
                    "measure again",
                ));
            }
            if to_mm(value).abs() > ABSURD_MM {
                return Err(Error::new(
                    ErrorKind::OutOfRange,
                    name,
                    in_mm(value),
                    "is larger than a bicycle",
                    "check the unit",
                ));
            }
        }
        Ok(Self {
            x: to_mm(x),
            y: to_mm(y),
            z: to_mm(z),
        })
    }

    /// Distance to the right of the axis.
    #[must_use]
    pub const fn x(&self) -> Length {
        mm(self.x)
    }
    /// Distance above the axis.
    #[must_use]
    pub const fn y(&self) -> Length {
        mm(self.y)
    }
    /// Height outwards.
    #[must_use]
    pub const fn z(&self) -> Length {
        mm(self.z)
    }
}

/// Checks that a plane can be laid through these points at all.
pub(crate) fn check_points(points: &[Point], field: &'static str) -> Result<(), Error> {
    if points.len() < 3 {
        return Err(too_few(points.len(), field));
    }
    Ok(())
}

pub(crate) fn too_few(count: usize, field: &'static str) -> Error {
    Error::new(
        ErrorKind::Missing,
        field,
        count,
        "a plane needs at least 3 points",
        "take 5, 7 or 9 readings spread around the face",
    )
}

pub(crate) fn on_one_line(field: &'static str) -> Error {
    Error::new(
        ErrorKind::NotApplicable,
        field,
        "",
        "all points lie on one line, so nothing is known of the tilt across it",
        "add a reading well off that line",
    )
}

/// A plane over the face, z = slope in x · x + slope in y · y + height on the axis.
///
/// ```
/// use framegauge::{face::Plane, in_mm, mm};
/// // 0.0025 mm per mm to the right: 0.1 mm over 40 mm, high at 3 o'clock.
/// let plane = Plane::new(0.0025, 0.0, mm(0.0)).unwrap();
/// assert_eq!(in_mm(plane.run_out(mm(40.0)).unwrap().value).to_string(), "0.100 mm");
/// assert_eq!(plane.high_point().unwrap().to_string(), "90 deg (3:00)");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane(pub(crate) Abc);

impl Plane {
    /// A plane from its slopes (rise over run, no unit) and its height on the axis.
    ///
    /// # Errors
    /// `NotFinite`.
    pub fn new(slope_x: f64, slope_y: f64, height: Length) -> Result<Self, Error> {
        let abc = Abc {
            a: slope_x,
            b: slope_y,
            c: to_mm(height),
        };
        if [abc.a, abc.b, abc.c].iter().all(|v| v.is_finite()) {
            Ok(Self(abc))
        } else {
            Err(Error::new(
                ErrorKind::NotFinite,
                "plane",
                alloc::format!("{slope_x}, {slope_y}, {}", abc.c),
                "slopes and height must be finite",
                "measure again",
            ))
        }
    }
    /// Rise towards 3 o'clock, per unit of length.
    ///
    /// ```
    /// # use framegauge::{face::*, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// let plane = least_squares(&[p(4.0, 0.0, 3.0), p(0.0, 4.0, 0.0), p(-4.0, 0.0, -3.0), p(0.0, -4.0, 0.0)]).unwrap().plane();
    /// assert!((plane.slope_x() - 0.75).abs() < 1e-12); // 3 mm in 4 mm, towards 3 o'clock
    /// ```
    #[must_use]
    pub const fn slope_x(&self) -> f64 {
        self.0.a
    }
    /// Rise towards 12 o'clock, per unit of length.
    #[must_use]
    pub const fn slope_y(&self) -> f64 {
        self.0.b
    }
    /// Steepest rise per unit of length: the tangent of the tilt.
    #[must_use]
    pub fn slope(&self) -> f64 {
        libm::hypot(self.0.a, self.0.b)
    }
    /// Height where the axis passes through.
    #[must_use]
    pub const fn height(&self) -> Length {
        mm(self.0.c)
    }
    /// Height over a point of the face.
    #[must_use]
    pub fn height_at(&self, x: Length, y: Length) -> Length {
        mm(self.0.at(to_mm(x), to_mm(y)))
    }
    /// Angle between this plane and one square to the axis.
    #[must_use]
    pub fn tilt(&self) -> Angle {
        deg(libm::atan(self.slope()) / deg(1.0).value)
    }
    /// Where it stands highest; `None` when it is square to the axis.
    #[must_use]
    pub fn high_point(&self) -> Option<Clock> {
        Clock::towards(self.0.a, self.0.b)
    }
    /// The rise across a diameter: what an indicator on that circle shows in one turn.
    ///
    /// # Errors
    /// `NotFinite` and `OutOfRange` for a diameter that is none.
    pub fn run_out(&self, over: Length) -> Result<RunOut, Error> {
        let over = diameter(over)?;
        Ok(RunOut {
            value: mm(self.slope() * to_mm(over)),
            over,
        })
    }
    /// Cosine of the tilt: a distance along the axis times this is the distance square to the plane.
    ///
    /// ```
    /// # use framegauge::{face::*, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// let plane = least_squares(&[p(4.0, 0.0, 3.0), p(0.0, 4.0, 0.0), p(-4.0, 0.0, -3.0), p(0.0, -4.0, 0.0)]).unwrap().plane();
    /// assert!((plane.cosine() - 0.8).abs() < 1e-12); // the 3-4-5 triangle
    /// ```
    #[must_use]
    pub fn cosine(&self) -> f64 {
        1.0 / libm::sqrt(1.0 + self.0.a * self.0.a + self.0.b * self.0.b)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Plane {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        // Nine places of a slope are a nanometre over a metre.
        let settled = |slope: f64| crate::quantity::settled(slope, 1e9);
        crate::quantity::serial::serialized!(
            serializer,
            Plane {
                slope_x_mm_per_mm: settled(self.0.a),
                slope_y_mm_per_mm: settled(self.0.b),
                height_on_axis_mm: crate::quantity::settled_mm(self.height()),
                tilt_deg: super::report::form::degrees(&self.tilt()),
                high_at: self.high_point(),
            }
        )
    }
}

/// Checks a diameter over which a tilt is stated.
pub(crate) fn diameter(over: Length) -> Result<Length, Error> {
    crate::quantity::ShaftDiameter::new(over)
        .map(|d| d.length())
        .map_err(|e| {
            Error::new(
                e.kind(),
                "diameter",
                e.value(),
                "is no diameter to state a run-out over",
                "give the diameter on which the indicator ran",
            )
        })
}

report! {
    /// A run-out or squareness with the diameter it is stated over; without that the number means nothing.
    ///
    /// ```
    /// use framegauge::{face::Plane, in_mm, mm};
    /// let plane = Plane::new(0.002, 0.0, mm(0.0)).unwrap();
    /// let run_out = plane.run_out(mm(44.0)).unwrap();
    /// assert_eq!((in_mm(run_out.value).to_string(), in_mm(run_out.over).to_string()), ("0.088 mm".into(), "44.000 mm".into()));
    /// ```
    RunOut {
        /// The rise across the diameter.
        value: Length as mm value_mm,
        /// The diameter.
        over: Length as mm over_mm,
    }
}

/// The plane that lies best among the points (vertical residuals): the estimate of tilt.
///
/// Not the flatness number and not where a cup sits.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let fit = least_squares(&saddle).unwrap();
/// assert_eq!(in_mm(fit.range()).to_string(), "0.060 mm");
/// assert_eq!(in_mm(fit.rms()).to_string(), "0.030 mm");
/// ```
#[derive(Debug, Clone, Copy)]
pub struct LeastSquaresPlane {
    pub(crate) fit: lsq::Fit,
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) rms: f64,
}

impl LeastSquaresPlane {
    pub(crate) fn of(fit: lsq::Fit, points: &[Point]) -> Self {
        // One pass for all three: a second one would show in the bench.
        let (mut low, mut high, mut squares) = (f64::INFINITY, f64::NEG_INFINITY, 0.0);
        for p in points {
            let r = fit.plane.residual(p);
            low = if r < low { r } else { low };
            high = if r > high { r } else { high };
            squares += r * r;
        }
        Self {
            fit,
            low,
            high,
            rms: libm::sqrt(squares / fit.n),
        }
    }
    /// The plane.
    #[must_use]
    pub const fn plane(&self) -> Plane {
        Plane(self.fit.plane)
    }
    /// Highest less lowest residual, along the axis. It overstates the flatness, by up to some 40 % on ring surveys.
    #[must_use]
    pub const fn range(&self) -> Length {
        mm(self.high - self.low)
    }
    /// Root mean square of the residuals (divided by the number of points).
    #[must_use]
    pub const fn rms(&self) -> Length {
        mm(self.rms)
    }
}

/// Least squares of z over (x, y), vertical residuals, after centring.
///
/// # Errors
/// `Missing` for fewer than three points, `NotApplicable` when all lie on one line.
///
/// ```
/// use framegauge::{face::{Point, least_squares}, in_mm, mm};
/// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let face = [p(20.0, 0.0, 0.05), p(0.0, 20.0, 0.0), p(-20.0, 0.0, -0.05), p(0.0, -20.0, 0.0)];
/// let plane = least_squares(&face).unwrap().plane();
/// assert_eq!(in_mm(plane.run_out(mm(40.0)).unwrap().value).to_string(), "0.100 mm");
/// ```
pub fn least_squares(points: &[Point]) -> Result<LeastSquaresPlane, Error> {
    check_points(points, "points")?;
    let fit = lsq::fit(points).ok_or_else(|| on_one_line("points"))?;
    Ok(LeastSquaresPlane::of(fit, points))
}
