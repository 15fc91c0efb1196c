//! Which listed seatposts go into a tube.

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked};
use super::{BoreAsk, BoreFact, Finding, Fit, MemberOf};
use crate::Error;
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, settled_cmp};
use crate::quantity::{Length, mm};
use crate::read::{Inside, form, missing};
use crate::standard::{Joint, Seatpost, Tables};

form! {
    /// Which listed seatposts go into this tube, each taken at its nominal size: those whose fit is not shown out.
    ///
    /// ```
    /// use framegauge::{judge::SeatpostForTube, mm, standard::Tables};
    /// let asked = SeatpostForTube {
    ///     bore: vec!["27.24 +/- 0.02 mm".parse().unwrap()], clearance: Some("0 to 0.1 mm".parse().unwrap()), rule: None,
    /// };
    /// let said = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.cures[0].size, Some(mm(27.2)));
    /// ```
    #[derive(Default)]
    SeatpostForTube {
        /// Bore of the tube, paint off.
        bore: Vec<Placed> => Inside,
        /// Clearance that is wanted; every published window unless stated. No clearance is published for all posts.
        clearance: Option<Limits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl SeatpostForTube {
    /// The verdict: within where a post is shown to fit, out where every listed post is shown not to.
    ///
    /// # Errors
    /// `Missing` without a bore; those of the fit.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        if self.bore.is_empty() {
            return Err(missing("bore"));
        }
        let mut left: Vec<(&Seatpost, Length, Verdict)> = Vec::new();
        for row in tables.all::<Seatpost>() {
            let Some(size) = row.diameter.nominal() else {
                continue;
            };
            let fit = Fit {
                joint: Some(Joint::Seatpost),
                hole: MemberOf::placed(self.bore.clone()),
                shaft: MemberOf::read(Reading::exact(size)?),
                clearance: self.clearance.into_iter().collect(),
                rule: self.rule,
                ..Fit::default()
            };
            let of_hole = |e: &Error| e.field().starts_with("hole");
            let said = fit.answer(tables).map_err(|e| {
                let field = if of_hole(&e) { "bore" } else { "clearance" };
                e.named(field)
            })?;
            if said.outcome != Outcome::NonconformityShown {
                left.push((row, size, said));
            }
        }
        left.sort_by(|a, b| settled_cmp(b.1, a.1));
        let findings = left
            .iter()
            .map(|(row, _, said)| of_post(row, said))
            .collect();
        let mut out = Verdict::from_findings("seatpost for a tube", findings);
        // One post that fits is enough.
        out.outcome = if left.is_empty() {
            out.findings.push(Finding::of(BoreFact::NoPostFits));
            Outcome::NonconformityShown
        } else if left
            .iter()
            .any(|(_, _, s)| s.outcome == Outcome::ConformityShown)
        {
            Outcome::ConformityShown
        } else {
            Outcome::Undecided
        };
        for (row, size, said) in &left {
            if let Some(gap) = said.number("least clearance") {
                let what = format!("least clearance of {}", row.code).into();
                out = out.with(Worked {
                    what,
                    ..gap.clone()
                });
            }
            out = out.cured(Curing::by(Remedy::OtherPart).sized(*size));
        }
        if out.outcome != Outcome::ConformityShown {
            out = out.then(NextStep::of(BoreAsk::BoreAndPost));
        }
        Ok(out.minding(BoreFact::NominalPosts))
    }
}

/// One post: its fit, and what it rests on.
fn of_post(row: &Seatpost, said: &Verdict) -> Finding {
    let gap = |what: &str| said.millimetres(what).map(mm);
    let mut found = Finding {
        outcome: Some(said.outcome),
        grade: said.weakest,
        readings: said
            .findings
            .first()
            .map_or_else(Vec::new, |first| first.readings.clone()),
        ..Finding::of(BoreFact::PostFits {
            post: row.code.clone(),
            least: gap("least clearance"),
            most: gap("greatest clearance"),
        })
    };
    for source in said.sources() {
        if !found.sources.contains(source) {
            found.sources.push(source.clone());
        }
    }
    found.resting_on(row.diameter.evidence())
}
