//! Where a rigid, axially pressed cup comes to rest, and whether it can rock there.

use super::kernel::{Abc, Scale, seat};
use super::plane::{Plane, Point, RunOut, check_points, diameter, on_one_line};
use super::report::report;
use crate::measure::Reading;
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// The seat plane of a rigid part pressed along an axis: the upper hull of the points, at the axis.
///
/// Elastic seating under bolt-up or press load is not in it. It equals neither tangent plane of the standards.
///
/// ```
/// # use framegauge::{face::*, in_mm, mm};
/// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let seat = seat_plane(&saddle, mm(0.0), mm(0.0)).unwrap();
/// // It stands on two points; the middle of all its positions is square, the extremes are not.
/// assert_eq!(seat.contacts().filter(|c| c.1 > 0.0).count(), 2);
/// assert!(seat.plane().slope() < 1e-12 && seat.positions()[0].slope() > 0.002);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeatPlane {
    found: seat::Seat,
    edges: [seat::Edge; 3],
    axis: (f64, f64),
    on_the_line: f64,
}

report! {
    /// How far a seated part can rock about the line of two contacts.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
    /// let seat = seat_plane(&saddle, mm(0.0), mm(0.0)).unwrap();
    /// // Readings good to 0.1 mm do not show this rock.
    /// assert!(!seat.rock(mm(40.0), mm(0.0), mm(0.1)).unwrap().unwrap().shown);
    /// ```
    Rock {
        /// Rise over the diameter between its two resting positions, with the uncertainty that the readings give it.
        amplitude: Reading as own amplitude,
        /// The diameter.
        over: Length as mm over_mm,
        /// The two points it rocks on, by place in the list.
        about: [usize; 2] as own about_points,
        /// Distance of the axis from their line: zero when the load stands exactly on it.
        axis_from_line: Length as mm axis_from_line_mm,
        /// Whether the amplitude is larger than its expanded uncertainty (k = 2). If not, the readings do not show a rock.
        shown: bool as own shown,
    }
}

/// An axis nearer than this share of the probed size to a line of contacts stands on it.
const ON_THE_LINE: f64 = 1e-9;

impl SeatPlane {
    /// The plane. Where the axis stands exactly on a line between two contacts the seat is not unique; this is then the
    /// middle of all positions, which no choice of the solver can move.
    #[must_use]
    pub fn plane(&self) -> Plane {
        let [one, other] = self.positions();
        let middle = |a: f64, b: f64| f64::midpoint(a, b);
        Plane(Abc {
            a: middle(one.0.a, other.0.a),
            b: middle(one.0.b, other.0.b),
            c: middle(one.0.c, other.0.c),
        })
    }
    /// The two extreme positions between which the part can lie; the same twice when the seat is unique.
    #[must_use]
    pub fn positions(&self) -> [Plane; 2] {
        let first = self.found.plane;
        let second = self.widest(0.0).map_or(first, |edge| {
            let (a, b) = (
                first.a - edge.jump * edge.down.0,
                first.b - edge.jump * edge.down.1,
            );
            // It turns about the axis, which stands on the line of contacts.
            let (x, y) = self.axis;
            Abc {
                a,
                b,
                c: first.at(x, y) - a * x - b * y,
            }
        });
        [Plane(first), Plane(second)]
    }
    /// Points that touch, by place in the list, with the share of the load each carries (the shares add up to 1).
    pub fn contacts(&self) -> impl Iterator<Item = (usize, f64)> {
        self.found.on.into_iter().zip(self.found.weight)
    }
    /// Height of the seat where the axis passes: unique even where the plane is not.
    #[must_use]
    pub fn height(&self) -> Length {
        let (x, y) = self.axis;
        mm(self.found.plane.at(x, y))
    }
    /// The rock about each line of contacts that passes within `wander` of the axis (the load may stand off the axis by
    /// so much: half the clearance of the cup), widest first; `None` where there is none.
    ///
    /// Even numbers of evenly spaced probes put the axis exactly on lines between opposite probes; a real face is
    /// continuous, so a rock that the readings do not show beyond their uncertainty is an artefact of the probing.
    ///
    /// # Errors
    /// `OutOfRange`, `NotFinite` for a diameter or a wander that is none.
    pub fn rock(
        &self,
        over: Length,
        wander: Length,
        reading_uncertainty: Length,
    ) -> Result<Option<Rock>, Error> {
        let over = diameter(over)?;
        let (wander, u) = (to_mm(wander), to_mm(reading_uncertainty));
        if !(wander >= 0.0 && wander.is_finite()) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "wander",
                wander,
                "how far the load stands off the axis is zero or more",
                "half the clearance of the cup, or 0 mm",
            ));
        }
        let Some(edge) = self.widest(wander) else {
            return Ok(None);
        };
        let amplitude = Reading::new(
            mm(edge.jump * to_mm(over)),
            mm(edge.jump_u * u * to_mm(over)),
        )
        .map_err(|e| e.within("rock"))?;
        Ok(Some(Rock {
            amplitude,
            over,
            about: [edge.from, edge.to],
            axis_from_line: mm(edge.away),
            shown: amplitude.value() > amplitude.expanded_uncertainty(),
        }))
    }
    /// The line of contacts within `wander` of the axis that the part tips widest about, the first of equals.
    fn widest(&self, wander: f64) -> Option<&seat::Edge> {
        let within = self
            .edges
            .iter()
            .filter(|e| e.away <= wander + self.on_the_line && e.jump.is_finite() && e.jump > 0.0);
        within.fold(None, |best: Option<&seat::Edge>, e| match best {
            Some(b) if b.jump >= e.jump => Some(b),
            _ => Some(e),
        })
    }
    /// Tilt of the seated part against the axis, as run-out over a diameter: the larger of its extreme positions.
    ///
    /// # Errors
    /// `OutOfRange` for a diameter that is none.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, mm};
    /// # let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
    /// let saddle = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
    /// let seat = seat_plane(&saddle, mm(0.0), mm(0.0)).unwrap();
    /// assert_eq!(in_mm(seat.worst_run_out(mm(40.0)).unwrap().value).to_string(), "0.120 mm");
    /// ```
    pub fn worst_run_out(&self, over: Length) -> Result<RunOut, Error> {
        let [one, other] = self.positions();
        if one.slope() >= other.slope() {
            one.run_out(over)
        } else {
            other.run_out(over)
        }
    }
}

/// The seat of a rigid part pressed along the axis through (`axis_x`, `axis_y`): the lowest plane above all points, at
/// the axis. By duality its height there is the highest weighted mean of three points whose centroid is the axis.
///
/// # Errors
/// `Missing` for fewer than three points; `NotApplicable` when all lie on one line; `Contradiction` when the axis lies
/// outside the points.
///
/// ```
/// use framegauge::{face::{Point, seat_plane}, in_mm, mm};
/// let p = |x, y, z| Point::new(mm(x), mm(y), mm(z)).unwrap();
/// let face = [p(20.0, 0.0, 0.06), p(0.0, 20.0, 0.0), p(-20.0, 0.0, 0.06), p(0.0, -20.0, 0.0)];
/// let seat = seat_plane(&face, mm(0.0), mm(0.0)).unwrap();
/// assert_eq!(in_mm(seat.height()).to_string(), "0.060 mm");
/// // It stands on two points and rocks: 0.06 mm to either side over 20 mm.
/// let rock = seat.rock(mm(40.0), mm(0.0), mm(0.004)).unwrap().unwrap();
/// assert_eq!(in_mm(rock.amplitude.value()).to_string(), "0.240 mm");
/// assert!(rock.shown);
/// ```
pub fn seat_plane(points: &[Point], axis_x: Length, axis_y: Length) -> Result<SeatPlane, Error> {
    check_points(points, "points")?;
    let axis = (to_mm(axis_x), to_mm(axis_y));
    if !(axis.0.is_finite() && axis.1.is_finite()) {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "axis",
            alloc::format!("{}, {}", axis.0, axis.1),
            "the axis must be at a finite place",
            "0 mm, 0 mm for a ring about its pilot",
        ));
    }
    if super::kernel::lsq::on_one_line(points) {
        return Err(on_one_line("points"));
    }
    let found = seat::seat(points, axis).ok_or_else(|| {
        Error::new(
            ErrorKind::Contradiction,
            "axis",
            alloc::format!("{:.3}, {:.3} mm", axis.0, axis.1),
            "the axis lies outside the probed points, so where a part would rest is not known",
            "probe all round the axis",
        )
    })?;
    let scale = Scale::of(points, axis);
    Ok(SeatPlane {
        found,
        edges: seat::edges(points, axis, &found),
        axis,
        on_the_line: ON_THE_LINE * f64::max(scale.x, scale.y),
    })
}
