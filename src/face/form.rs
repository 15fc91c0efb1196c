//! What kind of error a face has: tilt, dish, saddle, or something else.

use super::clock::Clock;
use super::kernel::{P, shape};
use super::pads::PadSurvey;
use super::plane::{LeastSquaresPlane, Plane, RunOut, diameter};
use super::report::report;
use super::ring::RingSurvey;
use super::zone::minimum_zone;
use crate::Error;
use crate::measure::Reading;
use crate::quantity::{Length, mm, to_mm};

report! {
    /// The parts of a face's error. Tilt is removed by a square cut; dish makes a cup bear on one edge; a saddle rocks.
    Form {
        /// Tilt over the diameter asked for.
        tilt: RunOut as own tilt,
        /// Where it is high.
        tilt_high_at: Option<Clock> as own tilt_high_at,
        /// Outer edge of the face higher than the inner by so much (negative: lower); `None` with one circle of probes,
        /// which is blind to it.
        dish: Option<Length> as mm_or_null dish_mm,
        /// Height of the saddle, hump to hollow; `None` with fewer than five probes to a circle, which cannot tell it.
        saddle: Option<Length> as mm_or_null saddle_mm,
        /// One of the two directions in which the saddle stands high; the other lies opposite.
        saddle_high_at: Option<Clock> as own saddle_high_at,
        /// Range of what none of these explains.
        rest: Length as mm rest_mm,
    }
}

report! {
    /// Flatness, both ways, and by least squares for comparison.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let flat = ring(&[0.06, 0.0, 0.06, 0.0]).flatness().unwrap();
    /// assert_eq!(in_mm(flat.along_axis).to_string(), "0.060 mm");
    /// assert!(flat.along_axis <= flat.least_squares + mm(1e-9));
    /// ```
    Flatness {
        /// Thinnest zone, square to its planes (ISO 1101): the flatness, with the uncertainty of its extreme readings.
        zone: Reading as own zone,
        /// The same measured along the pilot axis.
        along_axis: Length as mm along_axis_mm,
        /// Range about the least-squares plane; larger than the zone by up to some 40 %.
        least_squares: Length as mm least_squares_mm,
        /// Root mean square about the least-squares plane.
        rms: Length as mm rms_mm,
    }
}

report! {
    /// Squareness of the whole face to the pilot axis.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let square = ring(&[0.10, 0.05, 0.0, 0.05]).squareness(mm(40.0)).unwrap();
    /// assert_eq!(in_mm(square.at_probes).to_string(), "0.100 mm");
    /// assert_eq!(in_mm(square.tilt.value).to_string(), "0.100 mm");
    /// ```
    Squareness {
        /// Thickness of the zone square to the axis that holds all probes: perpendicularity, total axial run-out and
        /// clean-up depth at the probes are this one number.
        at_probes: Length as mm at_probes_mm,
        /// What the fitted tilt alone makes of the diameter.
        tilt: RunOut as own tilt,
        /// Standard uncertainty of the tilt over that diameter.
        standard_uncertainty: Length as mm standard_uncertainty_mm,
    }
}

impl Flatness {
    fn of(points: &[P], fit: &LeastSquaresPlane, u: f64) -> Result<Self, Error> {
        let zone = minimum_zone(points)?;
        // Two extreme readings make it, so √2 u.
        let reading = Reading::new(zone.zone_normal(), mm(u * libm::sqrt(2.0)))
            .map_err(|e| e.within("flatness"))?;
        Ok(Self {
            zone: reading,
            along_axis: zone.zone(),
            least_squares: fit.range(),
            rms: fit.rms(),
        })
    }
}

impl PadSurvey {
    /// The flatness of all pads together, both ways.
    ///
    /// # Errors
    /// Those of [`minimum_zone`].
    ///
    /// ```
    /// use framegauge::{face::{PadPoint, PadSurvey, Point}, in_mm, mm};
    /// let at = |x, y, z| PadPoint { pad: "pad".into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// let pads = PadSurvey::new("axle", [at(0.0, 0.0, 0.02), at(30.0, 0.0, 0.0), at(30.0, 12.0, 0.02), at(0.0, 12.0, 0.0)], mm(0.004));
    /// assert_eq!(in_mm(pads.unwrap().flatness().unwrap().along_axis).to_string(), "0.020 mm");
    /// ```
    pub fn flatness(&self) -> Result<Flatness, Error> {
        Flatness::of(&self.points, &self.least_squares(), to_mm(self.u))
    }
}

impl RingSurvey {
    /// Splits the face into tilt over a diameter, dish, saddle and the rest.
    ///
    /// # Errors
    /// `OutOfRange` for a diameter that is none.
    ///
    /// ```
    /// # use framegauge::{Radius, deg, face::{Annulus, Clock, Probe, RingSurvey}, in_mm, measure::Reading, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = (0..8).map(|i| { let t = f64::from(i) * std::f64::consts::FRAC_PI_4; Probe {
    /// #     at: Clock::new(deg(45.0 * f64::from(i))).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(0.05 * t.cos() + 0.03 * (2.0 * t).cos()), mm(0.004)).unwrap() } }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// // Heights 0.05 cos t + 0.03 cos 2t: tilt 0.1 mm over 40 mm, saddle 0.06 mm, nothing left.
    /// let form = survey.form(mm(40.0)).unwrap();
    /// assert_eq!(in_mm(form.tilt.value).to_string(), "0.100 mm");
    /// assert_eq!(in_mm(form.saddle.unwrap()).to_string(), "0.060 mm");
    /// assert_eq!(in_mm(form.rest).to_string(), "0.000 mm");
    /// assert!(form.dish.is_none());
    /// ```
    pub fn form(&self, over: Length) -> Result<Form, Error> {
        let over = diameter(over)?;
        let unit = to_mm(self.face().outer().length());
        let two = self.circles.len() == 2;
        let five = self.circles.iter().all(|c| c.order.len() >= 5);
        // The richest set of terms that the probes can tell apart.
        let choices = [(two, five), (two, false), (false, five), (false, false)];
        let found = choices.into_iter().find_map(|(dish, saddle)| {
            shape::fit(&self.points, unit, dish, saddle).map(|terms| (terms, dish, saddle))
        });
        let plane = self.fit.plane;
        let plain = [plane.c, plane.a * unit, plane.b * unit, 0.0, 0.0, 0.0];
        let (terms, dish, saddle) = found.unwrap_or((plain, false, false));
        let [_, x, y, rise, cos2, sin2] = terms;
        let tilt = Plane::new(x / unit, y / unit, mm(0.0))?;
        let width = unit - to_mm(self.face().inner().length());
        let explained = |p: &P| {
            shape::terms(p, unit)
                .iter()
                .zip(terms)
                .map(|(t, c)| t * c)
                .sum::<f64>()
        };
        let rest = self.points.iter().map(|p| p.z - explained(p));
        let (low, high) = rest.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), r| {
            (l.min(r), h.max(r))
        });
        let height = libm::hypot(cos2, sin2);
        // cos 2(θ − φ): the hump lies at half the angle of its components.
        let hump = libm::atan2(sin2, cos2) / 2.0;
        Ok(Form {
            tilt: tilt.run_out(over)?,
            tilt_high_at: tilt.high_point(),
            dish: dish.then_some(mm(rise / unit * width)),
            saddle: saddle.then_some(mm(2.0 * height)),
            saddle_high_at: if height > 0.0 {
                Clock::towards(libm::sin(hump), libm::cos(hump))
            } else {
                None
            },
            rest: mm(high - low),
        })
    }

    /// The flatness of the probed points, both ways.
    ///
    /// # Errors
    /// Those of [`minimum_zone`].
    pub fn flatness(&self) -> Result<Flatness, Error> {
        Flatness::of(&self.points, &self.least_squares(), self.u_mm())
    }

    /// Squareness to the pilot, with the diameter the tilt is stated over.
    ///
    /// # Errors
    /// `OutOfRange` for a diameter that is none.
    pub fn squareness(&self, over: Length) -> Result<Squareness, Error> {
        let tilt = self.tilt(over)?;
        Ok(Squareness {
            at_probes: self.clean_up().at_probes,
            tilt: RunOut {
                value: tilt.run_out.value(),
                over: tilt.over,
            },
            standard_uncertainty: tilt.run_out.standard_uncertainty(),
        })
    }

    /// Circular axial run-out: the range of the readings on the inner or on the outer circle, as an indicator shows it.
    /// Blind to dish, and low by what falls between the probes.
    ///
    /// ```
    /// # use framegauge::{Radius, deg, face::{Annulus, Clock, Probe, RingSurvey}, in_mm, measure::Reading, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = [0.1, 0.05, 0.0, 0.05].iter().enumerate().map(|(i, z)| Probe {
    /// #     at: Clock::new(deg(90.0 * i as f64)).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// let [inner, outer] = survey.circular_run_out();
    /// assert_eq!(in_mm(inner.value).to_string(), "0.100 mm");
    /// assert_eq!(inner, outer); // one circle was probed
    /// ```
    #[must_use]
    pub fn circular_run_out(&self) -> [RunOut; 2] {
        let of = |circle: Option<&super::ring::Circle>| {
            let range = circle.map_or((0.0, 0.0, 0.0), |circle| {
                let heights = circle
                    .order
                    .iter()
                    .filter_map(|i| self.points.get(*i))
                    .map(|p| p.z);
                let (low, high) = heights.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), z| {
                    (l.min(z), h.max(z))
                });
                (low, high, circle.radius)
            });
            RunOut {
                value: mm(range.1 - range.0),
                over: mm(2.0 * range.2),
            }
        };
        [of(self.circles.first()), of(self.circles.last())]
    }
}
