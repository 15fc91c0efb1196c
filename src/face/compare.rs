//! Before and after: what a pass really took off, and whether the cutter ran square.

use super::kernel::{P, lsq};
use super::plane::{Plane, RunOut};
use super::report::report;
use super::ring::RingSurvey;
use super::tilt::Tilt;
use crate::evidence::Text;
use crate::measure::{Decision, DecisionRule, Reading, decide};
use crate::quantity::{mm, to_mm};
use crate::{Error, ErrorKind};

report! {
    /// The record of a pass, from a survey before and one after.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let (before, after) = (ring(&[0.10, 0.04, -0.06, -0.08, 0.00]), ring(&[-0.05, -0.05, -0.06, -0.08, -0.05]));
    /// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
    /// let record = before.compare(&after, &goal, DecisionRule::default()).unwrap();
    /// assert_eq!(record.cut, 3);
    /// assert_eq!(record.words, "0.000 mm to 0.150 mm came off; the cutter ran square");
    /// ```
    PassRecord {
        /// Places probed both times.
        stations: usize as own stations,
        /// Of those, places where more came off than the readings' uncertainty (k = 2).
        cut: usize as own cut_stations,
        /// Most that came off anywhere.
        most: Reading as own removed_most,
        /// Least that came off anywhere.
        least: Reading as own removed_least,
        /// Mean over the stations.
        mean: Reading as own removed_mean,
        /// Tilt before.
        before: Tilt as own tilt_before,
        /// Tilt after.
        after: Tilt as own tilt_after,
        /// Tilt of the part that was cut: how the cutter ran; `None` when fewer than three places, or places in line, were cut.
        cutter: Option<RunOut> as own cutter_tilt,
        /// The cutter's tilt against the limit of squareness; `None` with no tilt of the cutter to judge.
        ran_square: Option<Decision> as own ran_square,
        /// The face seems to have grown somewhere: the zero of the indicator moved between the surveys, and only shapes
        /// can be compared, not amounts.
        zero_moved: bool as own zero_moved,
        /// The record in a sentence.
        words: Text as own words,
    }
}

/// Two places nearer than half a millimetre are one: no probe is set down closer.
pub(crate) fn same_place(a: (f64, f64), b: (f64, f64)) -> bool {
    libm::hypot(a.0 - b.0, a.1 - b.1) < 0.5
}

impl RingSurvey {
    /// Compares this survey (before) with one after a pass, over the places probed both times. Heights of both must have
    /// the same zero along the pilot; the cutter's tilt is held against the squareness of the goal.
    ///
    /// # Errors
    /// `Contradiction` for different data or faces; `Missing` when fewer than three places were probed both times.
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
    /// let nothing = survey.compare(&survey, &goal, DecisionRule::default()).unwrap();
    /// assert_eq!(nothing.cut, 0);
    /// ```
    pub fn compare(
        &self,
        after: &Self,
        goal: &super::FacingGoal,
        rule: DecisionRule,
    ) -> Result<PassRecord, Error> {
        self.same_datum(after)?;
        let u = libm::hypot(self.u_mm(), after.u_mm());
        let pairs = || {
            self.points.iter().filter_map(|b| {
                let a = after
                    .points
                    .iter()
                    .find(|a| same_place((a.x, a.y), (b.x, b.y)))?;
                Some((b.z - a.z, *a))
            })
        };
        let stations = pairs().count();
        if stations < 3 {
            return Err(Error::new(
                ErrorKind::Missing,
                "probes",
                stations,
                "fewer than three places were probed both times",
                "probe the same clock angles and radius before and after",
            ));
        }
        let removed = || pairs().map(|(off, _)| off);
        let least = removed().fold(f64::INFINITY, f64::min);
        let most = removed().fold(f64::NEG_INFINITY, f64::max);
        #[expect(clippy::cast_precision_loss, reason = "a count")]
        let n = stations as f64;
        let mean = removed().sum::<f64>() / n;
        let cut: alloc::vec::Vec<P> = pairs()
            .filter(|(off, _)| *off > 2.0 * u)
            .map(|(_, a)| a)
            .collect();
        let over = goal.over();
        let fit = lsq::fit(&cut);
        let cutter = match &fit {
            Some(fit) => Some(Plane(fit.plane).run_out(over)?),
            None => None,
        };
        let ran_square = match (&fit, &cutter) {
            (Some(fit), Some(run_out)) => {
                let spread = fit.worst_slope_u(after.u_mm()) * to_mm(over);
                Some(decide(
                    &Reading::new(run_out.value, mm(spread))?,
                    &goal.square(),
                    rule,
                ))
            }
            _ => None,
        };
        let zero_moved = least < -2.0 * u - 1e-6;
        let words = PassRecord::said(mm(least), mm(most), ran_square.as_ref(), zero_moved);
        Ok(PassRecord {
            stations,
            cut: cut.len(),
            most: Reading::new(mm(most), mm(u))?,
            least: Reading::new(mm(least), mm(u))?,
            mean: Reading::new(mm(mean), mm(u / libm::sqrt(n)))?,
            before: self.tilt(over)?,
            after: after.tilt(over)?,
            cutter,
            ran_square,
            zero_moved,
            words,
        })
    }
}
