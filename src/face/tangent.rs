//! Tangent planes of the standards, and the plane a cutter leaves.

use super::kernel::{Abc, Scale, lsq, tangent};
use super::plane::{Plane, Point, check_points, on_one_line};
use super::zone::{MinimumZone, minimum_zone};
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// The default datum plane of ISO 5459: outside the material, largest distance to the points as small as can be. It is
/// the mid-plane of the minimum zone, moved outwards by half the zone.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// assert!(minimax_tangent(&saddle).unwrap().plane().supports(&saddle));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MinimaxTangent {
    zone: MinimumZone,
}

impl MinimaxTangent {
    /// The plane.
    #[must_use]
    pub fn plane(&self) -> Plane {
        self.zone.plane().lifted(self.zone.zone() / 2.0)
    }
    /// The zone it was found by.
    #[must_use]
    pub const fn minimum_zone(&self) -> MinimumZone {
        self.zone
    }
}

/// The tangent plane by minimax: ISO 5459:2011 and 2024, default association of a datum plane.
///
/// # Errors
/// As [`minimum_zone`].
///
/// ```
/// use framegauge::{face::{Point, minimax_tangent}, in_mm, mm};
/// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let face = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// assert_eq!(in_mm(minimax_tangent(&face).unwrap().plane().height()).to_string(), "0.060 mm");
/// ```
pub fn minimax_tangent(points: &[Point]) -> Result<MinimaxTangent, Error> {
    Ok(MinimaxTangent {
        zone: minimum_zone(points)?,
    })
}

/// The default datum plane of ASME Y14.5.1-2019: outside the material, sum of squared distances as small as can be.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// assert!(least_squares_tangent(&saddle).unwrap().contacts().count() >= 1);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastSquaresTangent {
    plane: Abc,
    on: [usize; 3],
}

impl LeastSquaresTangent {
    /// The plane.
    #[must_use]
    pub const fn plane(&self) -> Plane {
        Plane(self.plane)
    }
    /// The points that it touches, by place in the list: one to three.
    pub fn contacts(&self) -> impl Iterator<Item = usize> {
        self.on.into_iter().filter(|i| *i != usize::MAX)
    }
}

/// The tangent plane by constrained least squares, heights along the axis: ASME Y14.5.1-2019, default.
///
/// # Errors
/// `Missing` for fewer than three points, `NotApplicable` when all lie on one line.
///
/// ```
/// use framegauge::{face::{Point, least_squares_tangent}, mm};
/// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let face = [p(20.0, 0.0, 0.05), p(0.0, 20.0, 0.0), p(-20.0, 0.0, -0.01), p(0.0, -20.0, 0.0)];
/// let tangent = least_squares_tangent(&face).unwrap();
/// assert!(face.iter().all(|q| tangent.plane().height_at(q.x(), q.y()) - q.z() > mm(-1e-12)));
/// ```
pub fn least_squares_tangent(points: &[Point]) -> Result<LeastSquaresTangent, Error> {
    check_points(points, "points")?;
    let fit = lsq::fit(points).ok_or_else(|| on_one_line("points"))?;
    let (plane, on) = tangent::tangent(points, &fit).ok_or_else(|| {
        Error::new(
            ErrorKind::NotApplicable,
            "points",
            points.len(),
            "rounding defeats the search among points so nearly in line",
            "add a reading well off that line",
        )
    })?;
    Ok(LeastSquaresTangent { plane, on })
}

/// The plane that a cutter square to the pilot leaves, at a depth after first touch.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let cutter = cutter_plane(&saddle, mm(0.02)).unwrap();
/// assert_eq!(in_mm(cutter.taken_at(&saddle[0])).to_string(), "0.020 mm");
/// assert_eq!(in_mm(cutter.taken_at(&saddle[1])).to_string(), "0.000 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CutterPlane {
    height: f64,
}

impl CutterPlane {
    /// The plane: square to the pilot axis.
    #[must_use]
    pub const fn plane(&self) -> Plane {
        Plane(Abc {
            a: 0.0,
            b: 0.0,
            c: self.height,
        })
    }
    /// How much the cutter has taken off at a point; zero where it has not touched.
    #[must_use]
    pub fn taken_at(&self, point: &Point) -> Length {
        mm(libm::fmax(point.z - self.height, 0.0))
    }
    /// The places of the points that it has touched.
    pub fn touched<'a>(&'a self, points: &'a [Point]) -> impl Iterator<Item = usize> + 'a {
        // Whole nanometres: a point exactly at the level is touched.
        points
            .iter()
            .enumerate()
            .filter(|(_, p)| p.z >= self.height - 5e-7)
            .map(|(i, _)| i)
    }
}

/// The cutter's plane at this depth after first touch on the highest point.
///
/// # Errors
/// `Missing` for no points at all; `NotFinite`, `OutOfRange` for a negative depth.
///
/// ```
/// use framegauge::{face::{Point, cutter_plane}, in_mm, mm};
/// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let face = [p(20.0, 0.0, 0.05), p(0.0, 20.0, 0.0), p(-20.0, 0.0, -0.05)];
/// let cutter = cutter_plane(&face, mm(0.05)).unwrap();
/// assert_eq!(in_mm(cutter.plane().height()).to_string(), "0.000 mm");
/// assert_eq!(cutter.touched(&face).collect::<Vec<_>>(), [0, 1]);
/// ```
pub fn cutter_plane(points: &[Point], depth: Length) -> Result<CutterPlane, Error> {
    let depth = super::depth::checked_depth(depth)?;
    let highest = points.iter().map(|p| p.z).fold(f64::NEG_INFINITY, f64::max);
    if !highest.is_finite() {
        return Err(super::plane::too_few(points.len(), "points"));
    }
    Ok(CutterPlane {
        height: highest - depth,
    })
}

impl Plane {
    /// Distance of a point below this plane, along the axis; negative above it.
    ///
    /// ```
    /// use framegauge::{face::{Plane, Point}, in_mm, mm};
    /// let plane = Plane::new(0.0, 0.0, mm(0.05)).unwrap();
    /// assert_eq!(in_mm(plane.gap_to(&Point::new(mm(1.0), mm(2.0), mm(0.01)).unwrap())).to_string(), "0.040 mm");
    /// ```
    #[must_use]
    pub fn gap_to(&self, point: &Point) -> Length {
        self.height_at(point.x(), point.y()) - mm(point.z)
    }
    /// Whether the plane lies on or above every point, but for rounding.
    #[must_use]
    pub fn supports(&self, points: &[Point]) -> bool {
        let scale = Scale::of(points, (0.0, 0.0));
        // A picometre, or what rounding makes of a height over a steep plane.
        let slack = 1e-9 + 10.0 * scale.rounding(&self.0);
        points.iter().all(|p| to_mm(self.gap_to(p)) >= -slack)
    }
}
