//! The two end faces of a head tube, by their parallelism, by a wear pattern, or by nothing.

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::in_mm;
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
        let parallelism = self.parallelism.as_ref();
        let wear_pattern = self.wear_pattern.unwrap_or_default();
        if let Some(reading) = parallelism
            && settled_cmp(reading.value(), NOTHING).is_lt()
        {
            size_reading("parallelism", reading)?;
        }
        let row = tables.find::<FacingRule>("end_face_parallelism")?;
        let readings: Vec<Reading> = parallelism.copied().into_iter().collect();
        let limits = Limits::of_requirement(&row.window);
        let mut findings = Vec::from([sizes_against(
            row.what.clone(),
            &readings,
            &limits,
            "a headset maker's technical page",
            row.window.evidence(),
            self.rule.unwrap_or_default(),
        )]);
        if wear_pattern {
            findings.push(Finding::stated("wear pattern", "shows where the races were loaded, not why: faces out of parallel, a bent steerer and a crooked crown seat all wear one side"));
        }
        let ceiling = limits.upper().known();
        let mut said = Verdict::from_findings("head-tube faces", findings);
        let words = ceiling.map(|c| format!("{}", in_mm(c))).unwrap_or_default();
        said = match said.outcome {
            Outcome::Undecided => {
                let sentence = if wear_pattern {
                    format!(
                        "The wear alone decides nothing; one headset maker's ceiling between the faces is {words}."
                    )
                } else {
                    let why = if parallelism.is_some() {
                        "Too close to tell"
                    } else {
                        "Not enough data"
                    };
                    format!("{why}: one headset maker's ceiling between the faces is {words}.")
                };
                said.saying(sentence)
                .then(NextStep::new("ink on both faces, then the first light cut, pilot centred in the opposite bore", "a face that was parallel loses its ink all round at once; a shop can hardly measure this otherwise", "marking ink, facing tool"))
                .then(NextStep::new("straightness of the steerer and run-out of the crown seat", "a bent steerer gives the same sign", "V-blocks and dial indicator"))
            }
            Outcome::ConformityShown => {
                said.saying(format!("The faces are parallel within {words}."))
            }
            Outcome::NonconformityShown => said.saying(format!(
                "The faces are out of parallel by more than {words}: face both ends, or refer."
            )),
        };
        if said.outcome == Outcome::NonconformityShown {
            said = said
                .cured(Curing::by(Remedy::Face))
                .cured(Curing::by(Remedy::Refer));
        }
        if let Some(ceiling) = ceiling {
            said = said.with(Worked::length("ceiling", ceiling, "as printed"));
        }
        Ok(said.minding("steering: when in doubt, hand over to a qualified workshop"))
    }
}
