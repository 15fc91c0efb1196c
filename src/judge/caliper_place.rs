//! Where the caliper sits over its rotor.

use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{Finding, SquareAsk, SquareFact};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{Length, mm, positive};
use crate::read::form;
use crate::standard::{BrakeFigure, End, Tables};

form! {
    /// A caliper on a mount with an adapter. Rotor sizes and adapter names are **diameters**; the caliper moves by half of them. A
    /// rear adapter on a front mount of the tab kind suits a rotor 20 mm larger (two pages agree, one says the reverse).
    ///
    /// ```
    /// use framegauge::{judge::CaliperPlace, measure::Outcome, mm, standard::{End, Tables}};
    /// // A 160 mm rotor where the mount alone gives 160; the adapter is turned to its +20 side.
    /// let place = CaliperPlace { native: mm(160.0), adapter: Some(mm(20.0)), rotor: mm(160.0), made_for: None, on: None };
    /// let said = place.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::NonconformityShown);
    /// assert_eq!(said.millimetres("too high by"), Some(10.0));
    /// let rear_on_front = CaliperPlace { adapter: None, rotor: mm(180.0), made_for: Some(End::Rear), on: Some(End::Front), ..place };
    /// assert_eq!(rear_on_front.answer(Tables::ours()).unwrap().outcome, Outcome::ConformityShown);
    /// ```
    CaliperPlace {
        /// Rotor that the mount takes without an adapter, at the end that the adapter was made for.
        native: Length,
        /// What the adapter adds to the rotor as it is turned now; none unless stated.
        adapter: Option<Length>,
        /// The rotor that is fitted.
        rotor: Length,
        /// The end the adapter was made for, if that is known.
        made_for: Option<End>,
        /// The end it is on.
        on: Option<End>,
    }
}

impl CaliperPlace {
    /// The verdict: rotor that this mounting suits, and how far the caliper is off, on radius.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let native = positive("native", self.native)?;
        let rotor = positive("rotor", self.rotor)?;
        let adapter = Reading::exact(self.adapter.unwrap_or(NOTHING));
        let adapter = adapter.map_err(|e| e.named("adapter"))?.value();
        let row = tables.find::<BrakeFigure>("is_front_rear_step")?;
        let step = row.figure.as_ref();
        let twenty = step.and_then(crate::Figure::nominal).unwrap_or(NOTHING);
        let moved = match (self.made_for, self.on) {
            (Some(End::Rear), Some(End::Front)) => Some(twenty),
            (Some(End::Front), Some(End::Rear)) => Some(-twenty),
            _ => None,
        };
        let at_this_end = native + moved.unwrap_or(NOTHING);
        let (suits, needed) = (at_this_end + adapter, rotor - at_this_end);
        let high = (suits - rotor) / 2.0;
        let outcome = if settled_cmp(high, NOTHING).is_eq() {
            Outcome::ConformityShown
        } else if settled_cmp(high.abs(), mm(1.5)).is_le() {
            Outcome::Undecided
        } else {
            Outcome::NonconformityShown
        };
        let fact = SquareFact::Caliper {
            suits,
            rotor,
            high,
            needed,
            adapter,
        };
        let found = Finding {
            outcome: Some(outcome),
            grade: Some(Grade::Derived),
            owner: String::from("rotor diameters"),
            ..Finding::of(fact)
        };
        let found = found.resting_on(moved.and_then(|_| step?.evidence()));
        let mut said = Verdict::from_findings("caliper on mount", Vec::from([found]));
        said.worked = Vec::from([
            Worked::length("suits a rotor of", suits, "native rotor + adapter"),
            Worked::length("too high by", high, "(suits - rotor) / 2"),
            Worked::length("adapter needed", needed, "rotor - native rotor"),
        ]);
        if outcome != Outcome::ConformityShown {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(needed));
            said = said.then(NextStep::of(SquareAsk::PadOverlap));
        }
        Ok(said.minding(SquareFact::PadOverhangs))
    }
}
