//! How deep a cutter square to the pilot must go, and how much of the ring it has touched at a depth.

use alloc::vec::Vec;
use core::f64::consts::TAU;

use super::clock::{Clock, within_one_turn};
use super::plane::Point;
use super::report::report;
use super::ring::{Circle, RingSurvey};
use super::touch::{Profile, above, sector_above, stretch_above};
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// Two neighbouring probes of a circle, beside the fitted tilt.
#[derive(Clone, Copy)]
struct Arc {
    /// Direction of the first, radians.
    start: f64,
    /// Angle between them.
    length: f64,
    from: f64,
    to: f64,
}

report! {
    /// Clean-up depth: how far a cutter square to the pilot goes from first touch until it has touched everything.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let clean = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]).clean_up();
    /// assert!(clean.at_probes < clean.at_outer_edge && clean.at_outer_edge < clean.upper);
    /// assert_eq!(clean.first_touch.unwrap().to_string(), "0 deg (12:00)");
    /// ```
    CleanUp {
        /// Highest less lowest probe: nothing less can do.
        at_probes: Length as mm at_probes_mm,
        /// Out to the edges of the face: fitted tilt over the outer diameter, plus the range of what is left beside tilt.
        at_outer_edge: Length as mm at_outer_edge_mm,
        /// Standard uncertainty of the depth at the outer edge.
        standard_uncertainty: Length as mm standard_uncertainty_mm,
        /// Depth at the outer edge plus U (k = 2).
        upper: Length as mm upper_mm,
        /// What the range would show on a perfectly flat, square face, only because readings scatter: a correction that
        /// is offered, never applied. With u = 0.004 mm and 8 probes it is 0.011 mm.
        range_bias: Length as mm range_bias_mm,
        /// Where the cutter touches first.
        first_touch: Option<Clock> as own first_touch,
    }
}

/// Steps around the ring in which shares are summed.
const STEPS: u32 = 360;

impl RingSurvey {
    /// The clean-up depth, three ways.
    #[must_use]
    pub fn clean_up(&self) -> CleanUp {
        let heights = self.points.iter().map(|p| p.z);
        let (low, high) = heights.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), z| {
            (l.min(z), h.max(z))
        });
        let plane = self.fit.plane;
        let slope = libm::hypot(plane.a, plane.b);
        let (least, most) = plane.range(&self.points);
        let outer = 2.0 * to_mm(self.face().outer().length());
        let u = self.u_mm();
        // Two extreme readings make the range of what is left, so √2 u for it; the slope has its own uncertainty.
        let spread = libm::hypot(self.fit.worst_slope_u(u) * outer, u * libm::sqrt(2.0));
        let depth = slope * outer + (most - least);
        let highest = self.points.iter().max_by(|a, b| a.z.total_cmp(&b.z));
        CleanUp {
            at_probes: mm(high - low),
            at_outer_edge: mm(depth),
            standard_uncertainty: mm(spread),
            upper: mm(depth + 2.0 * spread),
            range_bias: mm(super::sampling::range_bias(self.points.len()) * u),
            first_touch: highest.and_then(|p| Clock::towards(p.x, p.y)),
        }
    }

    /// Share of the probed circle (its length, 0 to 1) that a cutter has touched at this depth after first touch, with
    /// neighbouring probes joined by straight lines in angle. Over two circles, the mean by length.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a negative depth.
    ///
    /// ```
    /// # use framegauge::{Radius, deg, face::{Annulus, Clock, Probe, RingSurvey}, measure::Reading, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = [0.1, 0.05, 0.0, 0.05].iter().enumerate().map(|(i, z)| Probe {
    /// #     at: Clock::new(deg(90.0 * i as f64)).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// // Four probes of a pure tilt of 0.1 mm: half the depth has touched half the ring.
    /// assert!((survey.touched_arc(mm(0.05)).unwrap() - 0.5).abs() < 1e-7);
    /// assert_eq!(survey.touched_arc(mm(0.1)).unwrap(), 1.0);
    /// ```
    pub fn touched_arc(&self, depth: Length) -> Result<f64, Error> {
        let depth = checked_depth(depth)?;
        let highest = self
            .points
            .iter()
            .map(|p| p.z)
            .fold(f64::NEG_INFINITY, f64::max);
        // Settled to nanometres, so that the exact clean-up depth counts as reached.
        let level = highest - depth - 1e-9;
        let (mut touched, mut whole) = (0.0, 0.0);
        for circle in &self.circles {
            for (_, arc, [from, to]) in self.neighbours(circle) {
                let length = arc * circle.radius;
                whole += length;
                touched += length * above(from.z, to.z, level);
            }
        }
        Ok(touched / whole)
    }

    /// Share of the area of the face (0 to 1) that a cutter has touched at this depth after first touch.
    ///
    /// The face between and beyond the probes is taken as the fitted tilt, which grows with the radius, plus what each
    /// probe shows beside it, joined by straight lines in angle (and, over two circles, in radius).
    ///
    /// # Errors
    /// As [`Self::touched_arc`].
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// assert_eq!(survey.touched_area(survey.clean_up().at_outer_edge).unwrap(), 1.0);
    /// assert!(survey.touched_area(mm(0.02)).unwrap() < 0.4);
    /// ```
    pub fn touched_area(&self, depth: Length) -> Result<f64, Error> {
        Ok(self.share_above(self.profiles(), self.cutter_level(depth)?))
    }

    /// The depth after first touch at which this share of the area has been touched.
    ///
    /// # Errors
    /// `OutOfRange` unless the share lies above 0 and not above 1.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// let depth = survey.depth_for_share(0.9).unwrap();
    /// assert!((survey.touched_area(depth).unwrap() - 0.9).abs() < 1e-6);
    /// ```
    pub fn depth_for_share(&self, share: f64) -> Result<Length, Error> {
        let share = checked_share(share)?;
        let (lowest, highest) = self.surface_range();
        let profiles: Vec<Profile> = self.profiles().collect();
        let (mut short, mut enough) = (0.0, highest - lowest);
        // Halving 32 times leaves less than a nanometre of a face that is 4 mm out.
        for _ in 0..32 {
            let middle = f64::midpoint(short, enough);
            if self.share_above(profiles.iter().copied(), highest - middle - 1e-9) >= share {
                enough = middle;
            } else {
                short = middle;
            }
        }
        Ok(mm(enough))
    }

    /// Neighbouring probes of one circle: direction of the first, angle from it to the second, and both points. A probe that
    /// is alone is its own neighbour, a full turn on.
    pub(crate) fn neighbours<'a>(
        &'a self,
        circle: &'a Circle,
    ) -> impl Iterator<Item = (f64, f64, [&'a Point; 2])> + 'a {
        let next = circle.order.iter().cycle().skip(1);
        circle.order.iter().zip(next).filter_map(|(a, b)| {
            let (from, to) = (self.points.get(*a)?, self.points.get(*b)?);
            let start = self.probes().get(*a)?.at.radians();
            let turn = self.probes().get(*b)?.at.radians() - start;
            let length = if turn > 0.0 { turn } else { turn + TAU };
            Some((start, length, [from, to]))
        })
    }

    /// What the neighbouring probes of a circle show beside the fitted tilt.
    fn arcs<'a>(&'a self, circle: &'a Circle) -> impl Iterator<Item = Arc> + 'a {
        self.neighbours(circle)
            .map(|(start, length, [from, to])| Arc {
                start,
                length,
                from: self.fit.plane.residual(from),
                to: self.fit.plane.residual(to),
            })
    }

    /// Radius and height at the bends of the surface in one direction, inside to outside.
    fn profile(&self, angle: f64) -> Profile {
        self.profile_with(angle, |circle| beside_tilt(self.arcs(circle), angle))
    }

    fn profile_with(&self, angle: f64, mut beside: impl FnMut(&Circle) -> f64) -> Profile {
        let (inner, outer) = (
            to_mm(self.face().inner().length()),
            to_mm(self.face().outer().length()),
        );
        let plane = self.fit.plane;
        let (sine, cosine) = libm::sincos(angle);
        let rise = plane.a * sine + plane.b * cosine;
        let mut bent = |circle: &Circle| (circle.radius, beside(circle));
        let (first, last) = match self.circles.as_slice() {
            [] => ((inner, 0.0), (outer, 0.0)),
            [only] => {
                let bent = bent(only);
                (bent, bent)
            }
            [first, .., last] => (bent(first), bent(last)),
        };
        let bend = |radius: f64, beside: f64| {
            let radius = radius.clamp(inner, outer);
            (radius, plane.c + rise * radius + beside)
        };
        [
            bend(inner, first.1),
            bend(first.0, first.1),
            bend(last.0, last.1),
            bend(outer, last.1),
        ]
    }

    /// Lowest and highest point of the surface model: at a probe, or between two where the tilt balances the slope of
    /// what they show beside it.
    pub(crate) fn surface_range(&self) -> (f64, f64) {
        let (inner, outer) = (
            to_mm(self.face().inner().length()),
            to_mm(self.face().outer().length()),
        );
        let plane = self.fit.plane;
        let steepness = libm::hypot(plane.a, plane.b);
        let turned = libm::atan2(plane.b, plane.a);
        let mut range = (f64::INFINITY, f64::NEG_INFINITY);
        let bounds = [
            (self.circles.first(), Some(inner)),
            (self.circles.first(), None),
            (self.circles.last(), None),
            (self.circles.last(), Some(outer)),
        ];
        for (circle, edge) in bounds {
            let Some(circle) = circle else { continue };
            let radius = edge.unwrap_or(circle.radius).clamp(inner, outer);
            for arc in self.arcs(circle) {
                let slope = (arc.to - arc.from) / arc.length;
                let balance = -slope / (radius * steepness);
                let between = (balance.abs() <= 1.0).then(|| libm::acos(balance));
                let stationary = between
                    .into_iter()
                    .flat_map(|angle| [angle - turned, -angle - turned])
                    .map(|angle| within_one_turn(angle - arc.start))
                    .filter(|along| *along < arc.length);
                for along in [0.0, arc.length].into_iter().chain(stationary) {
                    let (sine, cosine) = libm::sincos(arc.start + along);
                    let z = plane.c
                        + radius * (plane.a * sine + plane.b * cosine)
                        + arc.from
                        + slope * along;
                    range = (range.0.min(z), range.1.max(z));
                }
            }
        }
        range
    }

    /// Mean height of the surface model across the ring in one direction.
    pub(crate) fn mean_height(&self, angle: f64) -> f64 {
        let [(_, inner), _, _, (_, outer)] = self.profile(angle);
        f64::midpoint(inner, outer)
    }

    /// The level of a cutter at this depth after first touch, on the surface model.
    pub(crate) fn cutter_level(&self, depth: Length) -> Result<f64, Error> {
        Ok(self.surface_range().1 - checked_depth(depth)? - 1e-9)
    }

    /// The stretches of radius that stand at or above a level in one direction.
    pub(crate) fn touched_strips(
        &self,
        angle: f64,
        level: f64,
    ) -> impl Iterator<Item = (f64, f64)> + use<> {
        let [a, b, c, d] = self.profile(angle);
        let strips = [(a, b), (b, c), (c, d)].map(|(from, to)| stretch_above(from, to, level));
        strips.into_iter().filter(|(from, to)| to > from)
    }

    /// Profiles in evenly spaced directions, the first again at the end.
    fn profiles(&self) -> impl Iterator<Item = Profile> {
        // The arcs of every circle, worked out once for all directions.
        let arcs: Vec<(f64, Vec<Arc>)> = self
            .circles
            .iter()
            .map(|c| (c.radius, self.arcs(c).collect()))
            .collect();
        (0..=STEPS).map(move |step| {
            let angle = f64::from(step % STEPS) * TAU / f64::from(STEPS);
            self.profile_with(angle, |circle| {
                let known = arcs.iter().find(|(radius, _)| *radius == circle.radius);
                known.map_or(0.0, |(_, arcs)| beside_tilt(arcs.iter().copied(), angle))
            })
        })
    }

    fn share_above(&self, mut profiles: impl Iterator<Item = Profile>, level: f64) -> f64 {
        let (inner, outer) = (
            to_mm(self.face().inner().length()),
            to_mm(self.face().outer().length()),
        );
        let Some(mut last) = profiles.next() else {
            return 0.0;
        };
        let mut touched = 0.0;
        for next in profiles {
            touched += sector_above(&last, &next, level);
            last = next;
        }
        (touched / (f64::from(STEPS) * (outer * outer - inner * inner) / 2.0)).clamp(0.0, 1.0)
    }
}

/// What a circle shows beside the fitted tilt in a direction.
fn beside_tilt(arcs: impl Iterator<Item = Arc>, angle: f64) -> f64 {
    for arc in arcs {
        let along = if angle >= arc.start {
            angle - arc.start
        } else {
            angle - arc.start + TAU
        };
        if along <= arc.length {
            return arc.from + (arc.to - arc.from) * (along / arc.length);
        }
    }
    0.0
}

pub(crate) fn checked_share(share: f64) -> Result<f64, Error> {
    if share > 0.0 && share <= 1.0 {
        return Ok(share);
    }
    Err(Error::new(
        ErrorKind::OutOfRange,
        "share",
        share,
        "a share of the face lies above 0 and not above 1",
        "0.9 means nine tenths of the ring",
    ))
}

pub(crate) fn checked_depth(depth: Length) -> Result<f64, Error> {
    let value = to_mm(depth);
    if !value.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "depth",
            value,
            "a depth must be finite",
            "give it in mm",
        ));
    }
    if value < 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "depth",
            in_mm(depth),
            "a depth of cut is not negative",
            "count it from first touch, inwards",
        ));
    }
    Ok(value)
}
