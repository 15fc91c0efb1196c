//! Two faces of one shell or head tube: parallelism, what a cup's tilt costs at the bearing, and what pilot play leaves.

use super::clock::Clock;
use super::compare::same_place;
use super::plane::{Plane, RunOut, diameter};
use super::report::report;
use super::ring::RingSurvey;
use super::seat::{SeatPlane, seat_plane};
use crate::measure::Reading;
use crate::quantity::{Angle, Clearance, Length, deg, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

report! {
    /// Parallelism of two faces that were read along one axis, each seen from its own outside.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let wedge = ring(&[0.05, 0.0, -0.05, 0.0]);
    /// let shell = wedge.parallelism(&wedge, mm(40.0)).unwrap();
    /// // Both ends are high at the top: the widths differ by 0.2 mm.
    /// assert_eq!(in_mm(shell.run_out.value()).to_string(), "0.200 mm");
    /// assert_eq!(in_mm(shell.at_probes.unwrap()).to_string(), "0.200 mm");
    /// ```
    Parallelism {
        /// Difference in width across the diameter, from both fitted tilts.
        run_out: Reading as own run_out,
        /// The diameter it is stated over.
        over: Length as mm over_mm,
        /// Where the shell is widest, seen from outside the first face.
        widest_at: Option<Clock> as own widest_at,
        /// Angle between the two faces.
        angle: Angle as degrees angle_deg,
        /// Range of the summed heights over stations probed on both faces; `None` when fewer than three were.
        at_probes: Option<Length> as mm_or_null at_probes_mm,
    }
}

report! {
    /// What tilted faces do to the cups and bearings on them.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let (here, there) = (ring(&[0.0, 0.05, 0.0, -0.05]), ring(&[0.0, 0.05, 0.0, -0.05]));
    /// // High at 3 o'clock here and there: seen from one side the two slopes cancel, and the cups are in line.
    /// assert!(here.misalignment(&there).unwrap().between.value < 1e-12);
    /// ```
    Misalignment {
        /// Tilt of the seat of each cup against the common axis; where a seat rocks, of its worse position.
        cups: [CupTilt; 2] as own cups,
        /// Largest angle between the two cups' axes: what the bearings see.
        between: Angle as degrees between_deg,
    }
}

report! {
    /// The tilt of one seated cup.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let face = ring(&[0.05, 0.0, -0.05, 0.0]);
    /// let cup = &face.misalignment(&face).unwrap().cups[0];
    /// assert_eq!(in_mm(cup.run_out.value).to_string(), "0.105 mm"); // over the outer diameter of 42 mm
    /// ```
    CupTilt {
        /// Angle of the cup's axis against the pilot axis.
        angle: Angle as degrees angle_deg,
        /// Rise over the face's outer diameter.
        run_out: RunOut as own run_out,
    }
}

/// A plane as seen from the other end: left and right change places.
fn mirrored(plane: Plane) -> (f64, f64) {
    (-plane.slope_x(), plane.slope_y())
}

fn angle_of(slope: f64) -> Angle {
    deg(libm::atan(slope) / deg(1.0).value)
}

impl RingSurvey {
    /// Parallelism to the face at the other end. Both must have been read along the same axis; the top must be the same
    /// direction for both, and each is seen from its own outside, so 3 o'clock here is 9 o'clock there.
    ///
    /// # Errors
    /// `Contradiction` when the data differ; `OutOfRange` for a diameter that is none.
    pub fn parallelism(&self, other: &Self, over: Length) -> Result<Parallelism, Error> {
        self.same_datum(other)?;
        let over = diameter(over)?;
        let plane = Plane(self.fit.plane);
        let (x, y) = mirrored(Plane(other.fit.plane));
        let sum = Plane::new(plane.slope_x() + x, plane.slope_y() + y, mm(0.0))?;
        let spread = libm::hypot(
            self.fit.worst_slope_u(self.u_mm()),
            other.fit.worst_slope_u(other.u_mm()),
        );
        let run_out = Reading::new(mm(sum.slope() * to_mm(over)), mm(spread * to_mm(over)))
            .map_err(|e| e.within("parallelism"))?;
        Ok(Parallelism {
            run_out,
            over,
            widest_at: sum.high_point(),
            angle: sum.tilt(),
            at_probes: self.summed_range(other),
        })
    }

    fn summed_range(&self, other: &Self) -> Option<Length> {
        let (mut low, mut high, mut stations) = (f64::INFINITY, f64::NEG_INFINITY, 0);
        for here in &self.points {
            // The same place seen from the other end has its x turned round.
            let there = other
                .points
                .iter()
                .find(|p| same_place((-p.x, p.y), (here.x, here.y)));
            if let Some(there) = there {
                let sum = here.z + there.z;
                (low, high, stations) = (f64::min(low, sum), f64::max(high, sum), stations + 1);
            }
        }
        (stations >= 3).then(|| mm(high - low))
    }

    /// The seat plane of a cup pressed along the pilot axis.
    ///
    /// # Errors
    /// `Contradiction` when the axis lies outside the probed ring.
    pub fn seat(&self) -> Result<SeatPlane, Error> {
        seat_plane(&self.points, mm(0.0), mm(0.0))
    }

    /// How a cup on this face and one on the other end stand to the axis and to each other.
    ///
    /// # Errors
    /// `Contradiction` when the data differ or an axis lies outside its ring.
    pub fn misalignment(&self, other: &Self) -> Result<Misalignment, Error> {
        self.same_datum(other)?;
        let (here, there) = (self.seat()?, other.seat()?);
        let mut widest = 0.0_f64;
        for one in here.positions() {
            for two in there.positions() {
                let (x, y) = mirrored(two);
                // Outward normals point apart, so the cups' axes are parallel when the slopes cancel.
                widest = widest.max(libm::hypot(one.slope_x() + x, one.slope_y() + y));
            }
        }
        let cup = |survey: &Self, seat: &SeatPlane| -> Result<CupTilt, Error> {
            let [a, b] = seat.positions();
            Ok(CupTilt {
                angle: angle_of(f64::max(a.slope(), b.slope())),
                run_out: seat.worst_run_out(survey.face().outer().length() * 2.0)?,
            })
        };
        Ok(Misalignment {
            cups: [cup(self, &here)?, cup(other, &there)?],
            between: angle_of(widest),
        })
    }
}

/// The run-out that the play of a pilot can leave on a faced ring: over the diameter D, up to D · c / L for a diametral
/// clearance c over a guided length L. Facing cannot be shown squarer than this, however sharp the cutter.
///
/// # Errors
/// `OutOfRange` for a negative clearance, a guided length or a diameter that is none.
///
/// ```
/// use framegauge::{Clearance, face::pilot_play, in_mm, mm};
/// let left = pilot_play(Clearance::new(mm(0.05)).unwrap(), mm(60.0), mm(40.0)).unwrap();
/// assert_eq!(in_mm(left.value).to_string(), "0.033 mm");
/// ```
pub fn pilot_play(clearance: Clearance, guided: Length, over: Length) -> Result<RunOut, Error> {
    let over = diameter(over)?;
    if clearance.length() < mm(0.0) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "clearance",
            clearance,
            "a pilot with interference does not turn",
            "give bore less pilot, zero or more",
        ));
    }
    let guided = crate::quantity::Depth::new(guided).map_err(|e| {
        Error::new(
            e.kind(),
            "guided length",
            e.value(),
            "is no length to guide a cutter",
            "give the length over which the pilot is guided",
        )
    })?;
    let value = to_mm(over) * to_mm(clearance.length()) / to_mm(guided.length());
    if value > to_mm(over) {
        return Err(Error::new(
            ErrorKind::Contradiction,
            "clearance",
            in_mm(clearance.length()),
            "is more than the guided length, so nothing guides the cutter",
            "check both",
        ));
    }
    Ok(RunOut {
        value: mm(value),
        over,
    })
}
