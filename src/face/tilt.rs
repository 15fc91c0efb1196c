//! Tilt of a face: run-out over a stated diameter, and where it stands high.

use super::clock::Clock;
use super::plane::{Plane, diameter};
use super::report::report;
use super::ring::RingSurvey;
use crate::Error;
use crate::measure::Reading;
use crate::quantity::{Angle, Length, mm, to_mm};

report! {
    /// Fitted tilt of a face against the pilot axis.
    ///
    /// The run-out over a diameter and the squareness over the same diameter are one number, not half of it; "per
    /// radius" quoting halves it, so the diameter travels with the value.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let tilt = ring(&[0.10, 0.05, 0.0, 0.05]).tilt(mm(40.0)).unwrap();
    /// assert_eq!(tilt.run_out.to_string(), "0.100 ± 0.011 mm");
    /// assert_eq!(tilt.high_at.unwrap().to_string(), "0 deg (12:00)");
    /// ```
    Tilt {
        /// Rise across the diameter, with its standard uncertainty.
        run_out: Reading as own run_out,
        /// The diameter it is stated over.
        over: Length as mm over_mm,
        /// Where the face stands high, seen from outside; `None` when it is exactly square.
        high_at: Option<Clock> as own high_at,
        /// Angle between the face and one square to the pilot.
        angle: Angle as degrees angle_deg,
    }
}

impl RingSurvey {
    /// The tilt by least squares, as run-out over a diameter. Its uncertainty is that of the fitted slope; for k evenly
    /// spaced probes read with u it is 2 u √(2/k) over the probed diameter.
    ///
    /// # Errors
    /// `OutOfRange` for a diameter that is none.
    pub fn tilt(&self, over: Length) -> Result<Tilt, Error> {
        let over = diameter(over)?;
        let plane = Plane(self.fit.plane);
        let u = self.fit.worst_slope_u(self.u_mm()) * to_mm(over);
        Ok(Tilt {
            run_out: Reading::new(mm(plane.slope() * to_mm(over)), mm(u))
                .map_err(|e| e.within("run-out"))?,
            over,
            high_at: plane.high_point(),
            angle: plane.tilt(),
        })
    }
}
