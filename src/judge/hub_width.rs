//! A hub in its dropouts: its width over the end caps.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::sizes_against;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{in_mm, mm};
use crate::read::{Outside, form};
use crate::standard::{Axle, Tables};

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
        let (pattern, over_caps) = (self.pattern.as_str(), self.over_caps.as_ref());
        let row = tables
            .find::<Axle>(pattern)
            .map_err(|e| e.named("pattern"))?;
        let Some(wanted) = row.over_locknut.nominal() else {
            return Err(Error::new(
                crate::ErrorKind::NotTabulated,
                "pattern",
                String::from(pattern),
                "no hub width is published for it",
                "ask the frame maker",
            ));
        };
        let evidence = row.over_locknut.evidence();
        let grade = row.over_locknut.grade().unwrap_or(Grade::Memory);
        let mut findings = Vec::new();
        let mut sentence = format!("The width over the end caps must be {}", in_mm(wanted));
        if let Some(reading) = over_caps {
            size_reading("over_caps", reading)?;
            // No tolerance is published: what the reading shows to differ from the nominal is a difference.
            let band = reading.expanded_uncertainty();
            let short = wanted - reading.value();
            let differs = settled_cmp(short.abs(), band).is_gt();
            // A whole cap or spacer is missing when a millimetre is.
            let limits = Limits::between(
                wanted - mm(1.0),
                wanted + mm(1.0),
                grade.weaker(Grade::CommonPractice),
            )?;
            let mut found = sizes_against(
                "width over the end caps",
                &[*reading],
                &limits,
                "within a millimetre, less than any cap or spacer (common practice; no tolerance is published)",
                evidence,
                self.rule.unwrap_or_default(),
            );
            if differs && found.outcome == Some(Outcome::ConformityShown) {
                found.outcome = Some(Outcome::Undecided);
                found.doubt = Some(super::Doubt::NotPrinted);
            }
            sentence.push_str(&format!("; it is {}", in_mm(reading.value())));
            match settled_cmp(short, NOTHING) {
                Ordering::Greater => sentence.push_str(&format!(": {} short", in_mm(short))),
                Ordering::Less => sentence.push_str(&format!(": {} over", in_mm(-short))),
                Ordering::Equal => {}
            }
            if found.outcome == Some(Outcome::NonconformityShown) {
                sentence.push_str(
                    ", so a cap or spacer is missing or wrong, and the rotor stands off by it",
                );
            }
            findings.push(found);
        }
        sentence.push_str(". Measure it before touching the mount: a rotor out of the caliper's slots is not cured by facing.");
        let mut said = Verdict::from_findings("hub in its dropouts", findings)
            .saying(sentence)
            .with(Worked::length(
                "wanted over the end caps",
                wanted,
                "as printed",
            ));
        if let Some(reading) = over_caps {
            said = said.with(Worked::length(
                "short by",
                wanted - reading.value(),
                "wanted less found",
            ));
        }
        if said.outcome == Outcome::NonconformityShown {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(wanted));
        }
        if said.outcome != Outcome::ConformityShown {
            if over_caps.is_none() {
                said = said.then(NextStep::new(
                    format!("{} over the end caps", in_mm(wanted)),
                    "a missing cap or spacer moves the rotor by its whole width",
                    "caliper",
                ));
            }
            said = said.then(NextStep::new(
                "rotor face to hub end, against the hub maker's figure",
                "tells a shifted rotor from a shifted hub",
                "depth caliper",
            ));
        }
        Ok(said.minding("brakes: do not ride with a rotor that can touch the frame"))
    }
}
