//! The exact minimum zone and its certificate.

use super::kernel::{P, Scale, zone};
use super::plane::{Plane, Point, check_points, on_one_line};
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// The plane that lies midway in the thinnest slab that holds every point, the slab measured along the pilot axis.
///
/// Twice its half-thickness is the flatness. The value is unique; the plane need not be.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let zone = minimum_zone(&saddle).unwrap();
/// assert_eq!(in_mm(zone.zone()).to_string(), "0.060 mm");
/// assert!(!zone.fell_back());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MinimumZone {
    found: zone::Zone,
}

/// How the points hold the zone, on the upper and on the lower plane.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let hollow = [p(20.0, 0.0, 0.0), p(-10.0, 17.0, 0.0), p(-10.0, -17.0, 0.0), p(0.0, 0.0, -0.1)];
/// assert_eq!(minimum_zone(&hollow).unwrap().certificate().pattern(), ContactPattern::ThreeOne);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter, strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum ContactPattern {
    /// Three above, one below inside their triangle.
    ThreeOne,
    /// One above inside the triangle of three below.
    OneThree,
    /// Two above, two below, on lines that cross. A search over facets of the hull misses this one.
    TwoTwo,
    /// Two above, one below between them.
    TwoOne,
    /// One above between two below.
    OneTwo,
    /// One above and one below at the same place.
    OneOne,
}

/// Proof that no thinner zone exists: weighted points of the upper and of the lower plane with one common centroid.
///
/// Any plane's residuals, weighted so, add up to the same number; so no plane can hold these points closer than
/// [`Certificate::forced`].
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let proof = minimum_zone(&saddle).unwrap().certificate();
/// assert_eq!(proof.upper().count() + proof.lower().count(), 4);
/// assert_eq!(proof.upper().map(|(_, weight)| weight).sum::<f64>(), 0.5);
/// assert!(proof.holds(&saddle));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Certificate {
    held: [zone::Held; 4],
    level: f64,
    reached: f64,
    plane: Plane,
}

/// Weight below which a point only fixes the plane and holds nothing.
const NOTHING: f64 = 1e-13;

impl Certificate {
    /// Indices of the points that touch the upper plane, each with its weight (the weights of a side add up to 1/2).
    pub fn upper(&self) -> impl Iterator<Item = (usize, f64)> {
        self.touching(1.0)
    }
    /// Indices of the points that touch the lower plane, each with its weight.
    pub fn lower(&self) -> impl Iterator<Item = (usize, f64)> {
        self.touching(-1.0)
    }
    /// Those that hold the zone on one side: +1 above, -1 below.
    fn touching(&self, side: f64) -> impl Iterator<Item = (usize, f64)> + use<> {
        self.held
            .into_iter()
            .filter(move |h| h.side == side && h.weight > NOTHING)
            .map(|h| (h.index, h.weight))
    }
    /// The zone that these points force on every plane.
    #[must_use]
    pub const fn forced(&self) -> Length {
        mm(2.0 * self.level)
    }
    /// The zone that the answer reaches. Equal to [`Self::forced`] but for rounding.
    #[must_use]
    pub const fn reached(&self) -> Length {
        mm(2.0 * self.reached)
    }
    /// How the points hold the zone.
    #[must_use]
    pub fn pattern(&self) -> ContactPattern {
        match (self.upper().count(), self.lower().count()) {
            (3, _) => ContactPattern::ThreeOne,
            (_, 3) => ContactPattern::OneThree,
            (2, 2) => ContactPattern::TwoTwo,
            (2, _) => ContactPattern::TwoOne,
            (_, 2) => ContactPattern::OneTwo,
            _ => ContactPattern::OneOne,
        }
    }
    /// Checks the proof against the points, without any search: weights that add up, one centroid above and below, a
    /// level that these points force, and a plane that holds all points within it.
    ///
    /// ```
    /// use framegauge::{face::{ContactPattern, Point, minimum_zone}, mm};
    /// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// // A saddle on four pads: two crossing edges hold it.
    /// let pads = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
    /// let proof = minimum_zone(&pads).unwrap().certificate();
    /// assert_eq!(proof.pattern(), ContactPattern::TwoTwo);
    /// assert!(proof.holds(&pads));
    /// ```
    #[must_use]
    pub fn holds(&self, points: &[Point]) -> bool {
        let scale = Scale::of(points, (0.0, 0.0));
        let height = scale.height(&self.plane.0);
        let near = |value: f64, wanted: f64, scale: f64| {
            (value - wanted).abs() <= 1e-11 * scale + f64::MIN_POSITIVE
        };
        let named = |h: &zone::Held| h.weight >= 0.0 && points.get(h.index).is_some();
        if !self.held.iter().all(named) {
            return false;
        }
        let sum = |of: fn(&Point) -> f64| -> f64 {
            let lever = |h: &zone::Held| Some(h.side * h.weight * of(points.get(h.index)?));
            self.held.iter().filter_map(lever).sum()
        };
        let weights = self.held.iter().map(|h| h.weight).sum();
        let (balance, x, y, z) = (sum(|_| 1.0), sum(|p| p.x), sum(|p| p.y), sum(|p| p.z));
        let (low, high) = self.plane.0.range(points);
        near(weights, 1.0, 1.0)
            && near(balance, 0.0, 1.0)
            && near(x, 0.0, scale.x)
            && near(y, 0.0, scale.y)
            && near(z, self.level, height)
            && high <= self.reached + 1e-11 * height
            && -low <= self.reached + 1e-11 * height
            && near(self.reached, self.level, height)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Certificate {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let indices =
            |side| -> alloc::vec::Vec<usize> { self.touching(side).map(|h| h.0).collect() };
        let mut out = serializer.serialize_struct("Certificate", 3)?;
        out.serialize_field("pattern", &self.pattern())?;
        out.serialize_field("upper_points", &indices(1.0))?;
        out.serialize_field("lower_points", &indices(-1.0))?;
        out.end()
    }
}

impl MinimumZone {
    /// The mid-plane.
    #[must_use]
    pub const fn plane(&self) -> Plane {
        Plane(self.found.plane)
    }
    /// Flatness measured along the pilot axis.
    #[must_use]
    pub const fn zone(&self) -> Length {
        mm(2.0 * self.found.reached)
    }
    /// Flatness measured square to the zone's own planes, as ISO 1101 has it: the axial value times cos(tilt). At 0.5 mm
    /// run-out over 40 mm the two differ by 8 parts in 100 000.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// // A 3-4-5 slope: the wavy square rises 3 in 4 towards 3 o'clock, so square to it everything is 4/5.
    /// let found = minimum_zone(&[p(4.0, 4.0, 3.1), p(4.0, -4.0, 2.9), p(-4.0, -4.0, -2.9), p(-4.0, 4.0, -3.1)]).unwrap();
    /// assert_eq!(in_mm(found.zone()).to_string(), "0.200 mm");
    /// assert_eq!(in_mm(found.zone_normal()).to_string(), "0.160 mm");
    /// ```
    #[must_use]
    pub fn zone_normal(&self) -> Length {
        mm(2.0 * self.found.reached * self.plane().cosine())
    }
    /// The proof that no thinner zone exists.
    #[must_use]
    pub const fn certificate(&self) -> Certificate {
        Certificate {
            held: self.found.held,
            level: self.found.level,
            reached: self.found.reached,
            plane: Plane(self.found.plane),
        }
    }
    /// Exchange steps the search took.
    #[must_use]
    pub const fn steps(&self) -> u32 {
        self.found.steps
    }
    /// Whether the plain exchange stalled on points in line or on one spot, and a slower rule had to finish.
    #[must_use]
    pub fn fell_back(&self) -> bool {
        self.found.by != zone::By::Exchange
    }
}

/// The exact minimum zone of z over (x, y): 3 + 1 and 2 + 2 contacts, and what degenerates from them.
///
/// Exchange on four-point references (the dual simplex of the linear programme min e, |z − a x − b y − c| ≤ e), without
/// allocation whatever the number of points.
///
/// # Errors
/// `Missing` for fewer than three points, `NotApplicable` when all lie on one line or when no proof of the optimum was
/// found.
///
/// ```
/// use framegauge::{face::{Point, minimum_zone}, in_mm, mm};
/// // Eight probes, one high by 0.1 mm: h (1 + cos 45°)/2.
/// let ring: Vec<Point> = (0..8).map(|i| {
///     let t = f64::from(i) * core::f64::consts::FRAC_PI_4;
///     Point::new(mm(20.0 * t.cos()), mm(20.0 * t.sin()), mm(if i == 0 { 0.1 } else { 0.0 })).unwrap()
/// }).collect();
/// let zone = minimum_zone(&ring).unwrap();
/// assert_eq!(format!("{:.6}", in_mm(zone.zone())), "0.085355 mm");
/// assert!(zone.certificate().holds(&ring));
/// ```
pub fn minimum_zone(points: &[Point]) -> Result<MinimumZone, Error> {
    check_points(points, "points")?;
    match zone::minimum_zone(points) {
        Ok(found) => Ok(MinimumZone { found }),
        Err(zone::Failure::OneLine) => Err(on_one_line("points")),
        Err(zone::Failure::NoProof) => Err(Error::new(
            ErrorKind::NotApplicable,
            "points",
            points.len(),
            "no proof of the thinnest zone was found among so many points in line or on one spot",
            "leave out repeated places",
        )),
    }
}

/// Largest deviation of the points from a plane, either way: for checks.
pub(crate) fn reach(points: &[P], plane: &Plane) -> f64 {
    let (low, high) = plane.0.range(points);
    high.max(-low)
}

impl Plane {
    /// Half the thickness of the slab about this plane that holds every point, along the axis.
    ///
    /// ```
    /// use framegauge::{face::{Plane, Point}, in_mm, mm};
    /// let points = [Point::new(mm(1.0), mm(0.0), mm(0.03)).unwrap()];
    /// let flat = Plane::new(0.0, 0.0, mm(0.0)).unwrap();
    /// assert_eq!(in_mm(flat.reach(&points)).to_string(), "0.030 mm");
    /// ```
    #[must_use]
    pub fn reach(&self, points: &[Point]) -> Length {
        mm(reach(points, self))
    }
    /// The same plane moved along the axis.
    ///
    /// ```
    /// use framegauge::{face::Plane, in_mm, mm};
    /// assert_eq!(in_mm(Plane::new(0.0, 0.0, mm(0.0)).unwrap().lifted(mm(0.03)).height()).to_string(), "0.030 mm");
    /// ```
    #[must_use]
    pub fn lifted(&self, by: Length) -> Self {
        Self(super::kernel::Abc {
            c: self.0.c + to_mm(by),
            ..self.0
        })
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn proof(points: &[Point]) -> Certificate {
        minimum_zone(points).unwrap().certificate()
    }
    fn saddle() -> [Point; 4] {
        [
            (20.0, 0.0, 0.06),
            (0.0, 20.0, 0.0),
            (-20.0, 0.0, 0.06),
            (0.0, -20.0, 0.0),
        ]
        .map(|(x, y, z)| Point::new(mm(x), mm(y), mm(z)).unwrap())
    }

    /// A level plane at this height that is said to hold every point within `level`, by (index, side, weight).
    fn forged(held: [(usize, f64, f64); 4], level: f64, height: f64) -> Certificate {
        Certificate {
            held: held.map(|(index, side, weight)| zone::Held {
                index,
                side,
                weight,
            }),
            level,
            reached: level,
            plane: Plane::new(0.0, 0.0, mm(height)).unwrap(),
        }
    }

    /// Every weight doubled "forces" twice the zone: only their sum gives it away.
    #[test]
    fn weights_must_add_up() {
        let points = saddle();
        let mut forged = proof(&points);
        assert!(forged.holds(&points));
        for held in &mut forged.held {
            held.weight *= 2.0;
        }
        (forged.level, forged.reached) = (2.0 * forged.level, 2.0 * forged.reached);
        assert!(!forged.holds(&points));
    }

    /// A flat face 5 mm up. With 7/10 of the weight above and 3/10 below the heights add up to 0.4 times 5 = 2, and a plane
    /// at 3 holds every point within 2: without balance that would pass for a proof that flat is 4 mm out.
    #[test]
    fn both_sides_must_weigh_the_same() {
        let flat = saddle().map(|p| Point::new(p.x(), p.y(), mm(5.0)).unwrap());
        let held = [
            (0, 1.0, 0.35),
            (2, 1.0, 0.35),
            (1, -1.0, 0.15),
            (3, -1.0, 0.15),
        ];
        let forged = forged(held, 2.0, 3.0);
        assert!(!forged.holds(&flat));
    }

    /// Weights of 2.25 less 1.75 make 1/2 on each side and balance, but "force" eight times what the points show: 2 · (2.25 +
    /// 1.75) · 0.01 = 0.08 mm to either side of points that lie within 0.01.
    #[test]
    fn no_weight_is_negative() {
        let points = [(10.0, 0.01), (-10.0, -0.01), (10.0, -0.01), (-10.0, 0.01)]
            .map(|(x, z)| Point::new(mm(x), mm(0.0), mm(z)).unwrap());
        let held = [
            (0, 1.0, 2.25),
            (1, 1.0, -1.75),
            (2, -1.0, 2.25),
            (3, -1.0, -1.75),
        ];
        let forged = forged(held, 0.08, 0.0);
        assert!(!forged.holds(&points));
    }
}
