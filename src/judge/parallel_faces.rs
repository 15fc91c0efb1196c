//! The two end faces of a head tube, by their parallelism, by a wear pattern, or by nothing.

use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked};
use super::{Finding, SquareAsk, SquareFact, sizes_against};
use crate::Error;
use crate::measure::{DecisionRule, Limits, Outcome, Reading};
use crate::quantity::not_negative;
use crate::read::form;
use crate::standard::{FacingRule, Tables};

form! {
    /// The two end faces of a head tube. A wear pattern proves nothing: a bent steerer wears the races in the same place.
    ///
    /// ```
    /// use framegauge::{judge::ParallelFaces, measure::Outcome, standard::Tables};
    /// let worn = ParallelFaces { wear_pattern: Some(true), ..ParallelFaces::default() }.answer(Tables::ours()).unwrap();
    /// assert_eq!((worn.outcome, worn.millimetres("ceiling")), (Outcome::Undecided, Some(0.075)));
    /// let cut = ParallelFaces { parallelism: Some("0.12 +/- 0.02 mm".parse().unwrap()), ..ParallelFaces::default() };
    /// assert_eq!(cut.answer(Tables::ours()).unwrap().outcome, Outcome::NonconformityShown);
    /// ```
    #[derive(Default)]
    ParallelFaces {
        /// How far the faces are from parallel, over their diameter.
        parallelism: Option<Reading>,
        /// The races wear on one side.
        wear_pattern: Option<bool>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl ParallelFaces {
    /// The verdict.
    ///
    /// # Errors
    /// `OutOfRange` for a parallelism below zero.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let stated = self.parallelism.map(|reading| reading.value());
        stated
            .map(|by| not_negative("parallelism", by))
            .transpose()?;
        let row = tables.find::<FacingRule>("end_face_parallelism")?;
        let readings: Vec<Reading> = self.parallelism.into_iter().collect();
        let limits = Limits::of_requirement(&row.window);
        let (evidence, rule) = (row.window.evidence(), self.rule.unwrap_or_default());
        let owner = "a headset maker";
        let found = sizes_against(row.what.clone(), &readings, &limits, owner, evidence, rule);
        let mut findings = Vec::from([found]);
        if self.wear_pattern == Some(true) {
            findings.push(Finding::of(SquareFact::WearPattern));
        }
        let mut said = Verdict::from_findings("head-tube faces", findings);
        said = match said.outcome {
            Outcome::Undecided => said
                .then(NextStep::of(SquareAsk::InkBothFaces))
                .then(NextStep::of(SquareAsk::SteererStraight)),
            Outcome::ConformityShown => said,
            Outcome::NonconformityShown => said
                .cured(Curing::by(Remedy::Face))
                .cured(Curing::by(Remedy::Refer)),
        };
        let most = limits.upper().known();
        let ceiling = most.map(|most| Worked::length("ceiling", most, "as printed"));
        said.worked.extend(ceiling);
        Ok(said.minding(SquareFact::Steering))
    }
}
