//! Where the caliper sits over its rotor.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, mm, positive, to_mm};
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
    /// assert_eq!(said.millimetres("caliper too high by"), Some(10.0));
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
        let adapter = Reading::exact(self.adapter.unwrap_or(NOTHING))
            .map_err(|e| e.named("adapter"))?
            .value();
        let step = tables.find::<BrakeFigure>("is_front_rear_step")?;
        let by_end = match (self.made_for, self.on) {
            (Some(End::Rear), Some(End::Front)) => 1.0,
            (Some(End::Front), Some(End::Rear)) => -1.0,
            _ => 0.0,
        };
        let twenty = step
            .figure
            .as_ref()
            .and_then(crate::Figure::nominal)
            .unwrap_or(NOTHING);
        let suits = native + adapter + twenty * by_end;
        let high = (suits - rotor) / 2.0;
        let exact = settled_cmp(high, NOTHING).is_eq();
        let small = settled_cmp(high.abs(), mm(1.5)).is_le();
        let outcome = match (exact, small) {
            (true, _) => Outcome::ConformityShown,
            (false, true) => Outcome::Undecided,
            (false, false) => Outcome::NonconformityShown,
        };
        let way = if settled_cmp(high, NOTHING).is_gt() {
            "high"
        } else {
            "low"
        };
        let words = if exact {
            format!("this mounting suits a rotor of {}, as fitted", in_mm(suits))
        } else {
            format!(
                "this mounting suits a rotor of {}; with {} the caliper sits {} too {way} (half the difference of the diameters)",
                in_mm(suits),
                in_mm(rotor),
                in_mm(high.abs())
            )
        };
        let mut sentence = super::words::capital(&words);
        sentence.push('.');
        let needed = rotor - native - twenty * by_end;
        if !exact {
            sentence.push_str(&format!(
                " The adapter has to give {:+.0} mm as it is turned, not {:+.0} mm.",
                to_mm(needed),
                to_mm(adapter)
            ));
            if small {
                sentence.push_str(" Whether that overlap will do is for the caliper maker to say.");
            }
        }
        let mut found = Finding {
            outcome: Some(outcome),
            grade: Some(Grade::Derived),
            owner: String::from("rotor sizes are diameters"),
            ..Finding::stated("caliper over rotor", words)
        };
        if by_end != 0.0 {
            found = found.resting_on(step.figure.as_ref().and_then(crate::Figure::evidence));
        }
        let mut said = Verdict::from_findings("caliper on its mount", Vec::from([found]))
            .saying(sentence)
            .with(Worked::length(
                "suits a rotor of",
                suits,
                "native rotor + adapter",
            ))
            .with(Worked::length(
                "caliper too high by",
                high,
                "(rotor it suits - rotor) / 2",
            ))
            .with(Worked::length(
                "adapter needed",
                needed,
                "rotor - native rotor",
            ));
        if outcome != Outcome::ConformityShown {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(needed));
            said = said.then(NextStep::new(
                "overlap of pad and rotor, at the outer edge",
                "the pad must lie inside the braking band of the rotor",
                "by eye, caliper",
            ));
        }
        Ok(said.minding(
            "brakes: a pad that overhangs the rotor can lock or tear off; test at walking pace",
        ))
    }
}
