//! A width, with its spacers, against the window that a unit or a maker wants.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::held::{FigureName, OwnLimits, held, tightest};
use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked};
use super::{from_to, sizes_against};
use crate::Error;
use crate::measure::{DecisionRule, Outcome, Reading, settled_below};
use crate::quantity::{in_mm, not_negative};
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
        let mut stack: Option<Reading> = None;
        for (field, readings) in [("width", &self.width), ("spacers", &self.spacers)] {
            for (index, reading) in readings.iter().enumerate() {
                not_negative("", reading.value())
                    .map_err(|e| e.within(&format!("{field}[{index}]")))?;
            }
        }
        for spacer in &self.spacers {
            stack = Some(stack.map_or(*spacer, |s| s.plus(spacer)));
        }
        let over_all: Vec<Reading> = self
            .width
            .iter()
            .map(|w| stack.map_or(*w, |s| w.plus(&s)))
            .collect();
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
        let mut said = Verdict::from_findings("width", findings)
            .saying(format!(
                "{} over all, wanted {limits}.",
                from_to(low.value(), high.value())
            ))
            .with(Worked::length(
                "over all",
                high.value(),
                "widest place and spacers added",
            ));
        if let Some(most) = limits.upper().known()
            && settled_below(most, high.value())
        {
            let by = high.value() - most;
            said = said.with(Worked::length(
                "too wide by",
                by,
                "widest place less the upper limit",
            ));
            if said.outcome == Outcome::NonconformityShown {
                let face = most - stack.map_or(crate::quantity::mm(0.0), |s| s.value());
                said = said.cured(Curing::by(Remedy::Face).sized(face));
            }
        }
        if let Some(least) = limits.lower().known()
            && settled_below(low.value(), least)
        {
            let by = least - low.value();
            said = said.with(Worked::length(
                "too narrow by",
                by,
                "lower limit less the narrowest place",
            ));
            if said.outcome == Outcome::NonconformityShown {
                said.words()
                    .push_str(&format!(" {} is missing; do not face it.", in_mm(by)));
                said = said.cured(Curing::by(Remedy::Spacer).sized(by));
            }
        }
        if said.outcome == Outcome::Undecided {
            said = said.then(NextStep::new(
                String::from("the width at four places, with a finer tool"),
                "too close to a limit for this one",
                "outside micrometer, or caliper set by gauge blocks",
            ));
        }
        Ok(said)
    }
}
