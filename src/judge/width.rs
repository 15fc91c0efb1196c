//! A width, with its spacers, against the window that a unit or a maker wants.

use alloc::format;
use alloc::vec::Vec;

use super::held::{FigureName, OwnLimits, held, tightest};
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{SquareAsk, SquareFact, sizes_against};
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
        let stack = self
            .spacers
            .iter()
            .copied()
            .reduce(|all, one| all.plus(&one));
        let stacked = |width: &Reading| stack.map_or(*width, |stack| width.plus(&stack));
        let over_all: Vec<Reading> = self.width.iter().map(stacked).collect();
        let all = held(&self.wanted, self.figure.as_ref(), tables)?;
        let Some(limits) = tightest(&all, "wanted")? else {
            return Err(missing("wanted"));
        };
        let rule = self.rule.unwrap_or_default();
        let findings = all
            .iter()
            .map(|h| sizes_against("width", &over_all, &h.limits, &h.owner, h.evidence, rule))
            .collect();
        let extremes = super::extremes(&over_all);
        let (Some(low), Some(high)) = (extremes.first(), extremes.last()) else {
            return Err(missing("width"));
        };
        let (low, high) = (low.value(), high.value());
        let mut said = Verdict::from_findings("width", findings);
        said.worked
            .push(Worked::length("over all", high, "widest place + spacers"));
        let out = said.outcome == Outcome::NonconformityShown;
        if let Some(most) = limits
            .upper()
            .known()
            .filter(|most| settled_below(*most, high))
        {
            let by = high - most;
            said.worked.push(Worked::length(
                "too wide by",
                by,
                "widest place - upper limit",
            ));
            if out {
                let face = most - stack.map_or(NOTHING, |stack| stack.value());
                said = said.cured(Curing::by(Remedy::Face).sized(face));
            }
        }
        if let Some(least) = limits
            .lower()
            .known()
            .filter(|least| settled_below(low, *least))
        {
            let by = least - low;
            said.worked.push(Worked::length(
                "too narrow by",
                by,
                "lower limit - narrowest place",
            ));
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
