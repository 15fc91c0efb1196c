//! A width, with its spacers, against the window that a unit or a maker wants.

use alloc::format;
use alloc::vec::Vec;

use super::held::{FigureName, Held, OwnLimits, held, tightest};
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{SquareAsk, SquareFact};
use crate::Error;
use crate::measure::{DecisionRule, Outcome, Reading, settled_below};
use crate::quantity::not_negative;
use crate::read::{Outside, form, missing};
use crate::standard::Tables;

form! {
    /// A width with its spacers, held against every window that is wanted of it: a maker's limits, and a row of the tables.
    /// Several windows must all be kept; the tightest end decides.
    ///
    /// ```
    /// use framegauge::{judge::WidthWindow, measure::{Limits, Outcome}, standard::Tables};
    /// let read = |text: &str| text.parse().unwrap();
    /// let stack = WidthWindow {
    ///     width: vec![read("68.1 +/- 0.05 mm")], spacers: vec![read("2.5 +/- 0.02 mm"), read("2.5 +/- 0.02 mm")],
    ///     wanted: vec!["72.5 to 73.5 mm".parse::<Limits>().unwrap().into()], ..WidthWindow::default()
    /// };
    /// let said = stack.answer(Tables::ours()).unwrap();
    /// assert_eq!((said.outcome, said.millimetres("over all")), (Outcome::ConformityShown, Some(73.1)));
    /// ```
    #[derive(Default)]
    WidthWindow {
        /// The width; several places may be given, the worst decides.
        width: Vec<Reading> => Outside,
        /// Spacers, one reading each.
        spacers: Vec<Reading> => Outside,
        /// What is wanted of it.
        wanted: Vec<OwnLimits>,
        /// The row that states what is wanted: family `shell_window`, field `window`.
        figure: Option<FigureName>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl WidthWindow {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a width or without a window; `OutOfRange` and `NotFinite` for lengths that are none; `Contradiction`
    /// for windows that no width keeps.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        if self.width.is_empty() {
            return Err(missing("width"));
        }
        for (field, readings) in [("width", &self.width), ("spacers", &self.spacers)] {
            for (index, reading) in readings.iter().enumerate() {
                not_negative("", reading.value())
                    .map_err(|e| e.within(&format!("{field}[{index}]")))?;
            }
        }
        let spacers = self.spacers.iter().copied();
        let stack = spacers.reduce(|all, one| all.plus(&one));
        let stacked = |width: &Reading| stack.map_or(*width, |stack| width.plus(&stack));
        let over_all: Vec<Reading> = self.width.iter().map(stacked).collect();
        let all = held(&self.wanted, self.figure.as_ref(), tables)?;
        let Some(limits) = tightest(&all, "wanted")? else {
            return Err(missing("wanted"));
        };
        let against = |held: &Held<'_>| held.against("width", &over_all, self.rule);
        let findings = all.iter().map(against).collect();
        let extremes = super::extremes(&over_all);
        let (Some(low), Some(high)) = (extremes.first(), extremes.last()) else {
            return Err(missing("width"));
        };
        let (low, high) = (low.value(), high.value());
        let mut said = Verdict::from_findings("width", findings);
        said = said.with(Worked::length("over all", high, "widest + spacers"));
        let out = said.outcome == Outcome::NonconformityShown;
        let (least, most) = (limits.lower().known(), limits.upper().known());
        if let Some(most) = most.filter(|most| settled_below(*most, high)) {
            let by = high - most;
            said = said.with(Worked::length("too wide by", by, "widest - limit"));
            if out {
                let face = most - stack.map_or(NOTHING, |stack| stack.value());
                said = said.cured(Curing::by(Remedy::Face).sized(face));
            }
        }
        if let Some(least) = least.filter(|least| settled_below(low, *least)) {
            let by = least - low;
            said = said.with(Worked::length("too narrow by", by, "limit - narrowest"));
            if out {
                said = said
                    .minding(SquareFact::TooNarrow { by })
                    .cured(Curing::by(Remedy::Spacer).sized(by));
            }
        }
        if said.outcome == Outcome::Undecided {
            said = said.then(NextStep::of(SquareAsk::WidthFiner));
        }
        Ok(said)
    }
}
