//! What a coating does to a reading.

use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, size_reading};
use super::{BoreAsk, BoreFact, Finding};
use crate::fit::Feature;
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{Length, positive};
use crate::read::form;
use crate::standard::{Cutting, CuttingRule, Tables};
use crate::{Error, ErrorKind};

form! {
    /// A size read over a coating: it counts on both sides, so an outside reads large and a bore small by twice its thickness.
    ///
    /// The thickness of a powder coat is remembered (0.06 to 0.12 mm a side), so what lies below is a span, and no verdict stands
    /// before the coating is off. `expected` is the bare size, if one is known: the difference is then the coat.
    ///
    /// ```
    /// use framegauge::{fit::Feature, judge::Coating, measure::Outcome, mm, standard::Tables};
    /// let over = Coating { member: Feature::Shaft, reading: Some("28.83 +/- 0.02 mm".parse().unwrap()), expected: Some(mm(28.6)) };
    /// let said = over.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// assert_eq!(said.millimetres("coat a side"), Some(0.115));
    /// assert!(said.words().contains("as a powder coat is"));
    /// ```
    Coating {
        /// A hole or a shaft.
        member: Feature,
        /// The size over the coating.
        reading: Option<Reading>,
        /// The bare size, if one is known.
        expected: Option<Length>,
    }
}

impl Coating {
    /// The verdict.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let member = self.member;
        let (Some((thin, _)), Some((thick, row))) = (
            CuttingRule::smallest(Cutting::Coat, tables),
            CuttingRule::greatest(Cutting::Coat, tables),
        ) else {
            return Err(Error::new(
                ErrorKind::NotTabulated,
                "coating",
                "coat",
                "no thickness of a coat is held",
                "add a row about it to your own rows",
            ));
        };
        let grade = row.window.grade();
        let fact = BoreFact::OverCoat {
            member,
            thin,
            thick,
            grade,
        };
        let found = Finding {
            outcome: Some(Outcome::Undecided),
            readings: self.reading.into_iter().collect(),
            ..Finding::of(fact)
        };
        let found = Vec::from([found.resting_on(row.window.evidence())]);
        let twice = |coat: Length| Some(coat * 2.0);
        let said = Verdict::from_findings("size under a coating", found)
            .then(NextStep::of(BoreAsk::BareMetal))
            .minding(BoreFact::MaskBefore)
            .lengths([
                ("least error", twice(thin), "two coats, thin"),
                ("greatest error", twice(thick), "two coats, thick"),
            ]);
        let Some(reading) = &self.reading else {
            return Ok(said);
        };
        size_reading("reading", reading)?;
        // A coat makes a shaft larger and a hole smaller.
        let outward = |by: Length| if member == Feature::Shaft { by } else { -by };
        let below = |coat: Length| Some(reading.value() - outward(coat * 2.0));
        let mut said = said.lengths([
            ("below a thick coat", below(thick), "2 coats, thick"),
            ("below a thin coat", below(thin), "2 coats, thin"),
        ]);
        if let Some(bare) = self.expected {
            let bare = positive("expected", bare)?;
            let coat = outward((reading.value() - bare) / 2.0);
            let slack = reading.expanded_uncertainty() / 2.0;
            let like =
                settled_cmp(coat, thin - slack).is_ge() && settled_cmp(coat, thick + slack).is_le();
            let reading = reading.value();
            let fact = BoreFact::CoatOnIt {
                member,
                reading,
                bare,
                coat,
                like,
            };
            said.findings.push(Finding::of(fact));
            said = said.lengths([("coat a side", Some(coat), "(reading - bare) / 2")]);
        }
        Ok(said)
    }
}
