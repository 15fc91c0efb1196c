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
    Tilt {
        /// Rise across the diameter, with its standard uncertainty.
        run_out: Reading as own "run_out",
        /// The diameter it is stated over.
        over: Length as mm "over_mm",
        /// Where the face stands high, seen from outside; `None` when it is exactly square.
        high_at: Option<Clock> as own "high_at",
        /// Angle between the face and one square to the pilot.
        angle: Angle as degrees "angle_deg",
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
