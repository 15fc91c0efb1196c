//! A hub in its dropouts: its width over the end caps.

use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Doubt, Finding, SquareAsk, SquareFact, sizes_against};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below};
use crate::quantity::mm;
use crate::read::{Outside, form};
use crate::standard::{Axle, Tables};
use crate::{Error, ErrorKind};

form! {
    /// A hub after work on it: width over the end caps against what the axle pattern wants. Any shortfall moves the rotor;
    /// nothing at the mount cures it.
    ///
    /// ```
    /// use framegauge::{judge::HubWidth, measure::Outcome, standard::Tables};
    /// let mut hub = HubWidth { pattern: "ta_12x142".into(), over_caps: None, rule: None };
    /// let open = hub.answer(Tables::ours()).unwrap();
    /// assert_eq!(open.outcome, Outcome::Undecided);
    /// assert!(open.next[0].measure().contains("142.000 mm over the end caps"));
    /// hub.over_caps = Some("139.4 +/- 0.1 mm".parse().unwrap());
    /// assert_eq!(hub.answer(Tables::ours()).unwrap().outcome, Outcome::NonconformityShown);
    /// ```
    HubWidth {
        /// Code of the axle pattern, such as `ta_12x142`.
        pattern: String,
        /// Width over the end caps or locknuts.
        over_caps: Option<Reading> => Outside,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl HubWidth {
    /// The verdict.
    ///
    /// # Errors
    /// `UnknownName` for a pattern that is none; `OutOfRange` for a width that is none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let row = tables
            .find::<Axle>(&self.pattern)
            .map_err(|e| e.named("pattern"))?;
        let wanted = row.over_locknut.nominal().ok_or_else(|| {
            let problem = "no hub width is published for it";
            let pattern = self.pattern.clone();
            Error::new(
                ErrorKind::NotTabulated,
                "pattern",
                pattern,
                problem,
                "ask the frame maker",
            )
        })?;
        let short = self.over_caps.map(|reading| wanted - reading.value());
        let mut findings = Vec::from([Finding::of(SquareFact::OverCaps { wanted, short })]);
        if let Some(reading) = &self.over_caps {
            size_reading("over_caps", reading)?;
            let grade = row.over_locknut.grade().unwrap_or(Grade::Memory);
            let grade = grade.weaker(Grade::CommonPractice);
            // A whole cap or spacer is missing when a millimetre is (common practice).
            let limits = Limits::between(wanted - mm(1.0), wanted + mm(1.0), grade)?;
            let (evidence, rule) = (row.over_locknut.evidence(), self.rule.unwrap_or_default());
            let owner = "a cap or spacer";
            let mut found = sizes_against("end caps", &[*reading], &limits, owner, evidence, rule);
            // No tolerance is published: what the reading shows to differ from the nominal is a difference.
            let differs = |by| settled_below(reading.expanded_uncertainty(), by);
            if found.outcome == Some(Outcome::ConformityShown)
                && short.is_some_and(|by| differs(by.abs()))
            {
                found.outcome = Some(Outcome::Undecided);
                found.doubt = Some(Doubt::NotPrinted);
            }
            findings.push(found);
        }
        let mut said = Verdict::from_findings("hub in its dropouts", findings);
        said.worked
            .push(Worked::length("wanted width", wanted, "as printed"));
        said.worked
            .extend(short.map(|by| Worked::length("short by", by, "wanted - found")));
        if said.outcome == Outcome::NonconformityShown {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(wanted));
        }
        if self.over_caps.is_none() {
            said = said.then(NextStep::of(SquareAsk::EndCaps { wanted }));
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::of(SquareAsk::RotorToHubEnd));
        }
        Ok(said.minding(SquareFact::RotorOff))
    }
}
