//! A hub in its dropouts: its width over the end caps.

use alloc::string::String;
use alloc::vec::Vec;

use super::held::as_printed;
use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, SquareAsk, SquareFact, sizes_against};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading};
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
        let row = tables.find::<Axle>(&self.pattern);
        let printed = &row.map_err(|e| e.named("pattern"))?.over_locknut;
        let Some(wanted) = printed.nominal() else {
            return Err(Error::new(
                ErrorKind::NotTabulated,
                "pattern",
                self.pattern.clone(),
                "no hub width is published for it",
                "ask the frame maker",
            ));
        };
        let short = self.over_caps.map(|reading| wanted - reading.value());
        let mut findings = Vec::from([Finding::of(SquareFact::OverCaps { wanted, short })]);
        if let Some(reading) = &self.over_caps {
            size_reading("over_caps", reading)?;
            let grade = printed.grade().unwrap_or(Grade::Memory);
            let grade = grade.weaker(Grade::CommonPractice);
            // A whole cap or spacer is missing when a millimetre is (common practice).
            let limits = Limits::between(wanted - mm(1.0), wanted + mm(1.0), grade)?;
            let (evidence, rule) = (printed.evidence(), self.rule.unwrap_or_default());
            let owner = "less than a cap";
            let found = sizes_against("end caps", &[*reading], &limits, owner, evidence, rule);
            // No tolerance is published: what the reading shows to differ from the nominal is a difference.
            findings.push(as_printed(found, reading, wanted));
        }
        let mut said = Verdict::from_findings("hub width", findings);
        said = said.with(Worked::length("wanted width", wanted, "as printed"));
        let short = short.map(|by| Worked::length("short by", by, "wanted - found"));
        said.worked.extend(short);
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
