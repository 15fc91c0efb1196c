//! Everything a ring survey says, in one answer.

use alloc::vec::Vec;

use super::allowance::Allowance;
use super::decision::{FacingGoal, FacingReport};
use super::form::{Flatness, Form, Squareness};
use super::report::report;
use super::ring::RingSurvey;
use super::sampling::{Sampling, sampling};
use super::seat::{Rock, SeatPlane};
use super::warn::Warning;
use crate::Error;
use crate::measure::DecisionRule;
use crate::quantity::mm;

report! {
    /// Everything a ring survey says.
    FaceAnswer {
        /// What to do.
        facing: FacingReport as own facing,
        /// Squareness to the pilot.
        squareness: Squareness as own squareness,
        /// Flatness, both ways.
        flatness: Flatness as own flatness,
        /// Tilt, dish, saddle, rest.
        form: Form as own form,
        /// Where a rigid cup would rest as the face is; `None` when the probes do not go round the axis.
        seat: Option<SeatPlane> as own seat,
        /// Rock of that seat, where there is one.
        rock: Option<Rock> as own rock,
        /// What so many probes can and cannot see.
        sampling: Sampling as own sampling,
        /// What looks wrong or cannot be told.
        warnings: Vec<Warning> as own warnings,
    }
}

impl RingSurvey {
    /// Decides what to do with the face and reports everything the survey says beside it.
    ///
    /// # Errors
    /// Those of [`Self::decide_facing`], [`Self::form`] and [`Self::flatness`].
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::{Annulus, Clock, Probe, RingSurvey}, measure::Reading, mm};
    /// use framegauge::{face::{Allowance, CutLimit, FacingGoal, FacingStep, LimitKind}, measure::DecisionRule};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = [0.15, 0.11, 0.03, 0.02, 0.09].iter().enumerate().map(|(i, z)| Probe {
    /// #     at: Clock::new(deg(72.0 * i as f64)).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
    /// let width = Reading::new(mm(68.4), mm(0.01)).unwrap();
    /// let limit = CutLimit::leaving(LimitKind::MinimumWidth, "68 mm shell", &width, mm(68.0), Grade::Shop).unwrap();
    /// let answer = survey.answer(&goal, &Allowance::new([limit]), DecisionRule::default()).unwrap();
    /// assert!(matches!(answer.facing.step, FacingStep::OnePass { .. }));
    /// ```
    pub fn answer(
        &self,
        goal: &FacingGoal,
        allowance: &Allowance,
        rule: DecisionRule,
    ) -> Result<FaceAnswer, Error> {
        let probes = self
            .circles
            .iter()
            .map(|c| c.order.len())
            .max()
            .unwrap_or(0);
        let seat = self.seat().ok();
        let rock = match &seat {
            Some(seat) => seat.rock(goal.over(), mm(0.0), self.reading_uncertainty())?,
            None => None,
        };
        Ok(FaceAnswer {
            facing: self.decide_facing(goal, allowance, rule)?,
            squareness: self.squareness(goal.over())?,
            flatness: self.flatness()?,
            form: self.form(goal.over())?,
            seat,
            rock,
            sampling: sampling(u32::try_from(probes).unwrap_or(u32::MAX).clamp(3, 1000))?,
            warnings: self.warnings(),
        })
    }
}
