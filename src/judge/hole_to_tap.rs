//! A hole before it is tapped.

use alloc::format;
use alloc::vec::Vec;

use super::gauging::minor_held;
use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{OwnLimits, sizes_against};
use crate::Error;
use crate::measure::{DecisionRule, Outcome, Placed, Reading, Surface, settled_below};
use crate::quantity::{Length, in_mm, settled_mm};
use crate::read::{Inside, form, missing};
use crate::standard::Tables;
use crate::thread::ThreadSize;

form! {
    /// A hole before it is tapped, against the minor diameter of the thread it is to get.
    ///
    /// ```
    /// use framegauge::{judge::HoleToTap, measure::Outcome, standard::Tables};
    /// let for_thread = |thread: &str| HoleToTap {
    ///     thread: thread.parse().unwrap(), hole: vec!["8.5 +/- 0.05 mm".parse().unwrap()], limits: None, rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(for_thread("M10x1").outcome, Outcome::NonconformityShown);
    /// assert_eq!(for_thread("M10x1").millimetres("to enlarge by, least"), Some(0.417));
    /// assert_eq!(for_thread("M10x1.5").outcome, Outcome::ConformityShown);
    /// ```
    HoleToTap {
        /// The thread that it is to get.
        thread: ThreadSize,
        /// The hole.
        hole: Vec<Placed> => Inside,
        /// What its maker writes of the hole; it decides before what is published.
        limits: Option<OwnLimits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl HoleToTap {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a reading; `OutOfRange` and `NotFinite` for holes that are none; those of the thread.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let size = &self.thread;
        for (index, placed) in self.hole.iter().enumerate() {
            size_reading("", &placed.reading).map_err(|e| e.within(&format!("hole[{index}]")))?;
        }
        let readings: Vec<Reading> = self.hole.iter().map(|p| p.reading).collect();
        let ends = super::extremes(&readings);
        let (Some(low), Some(high)) = (ends.first(), ends.last()) else {
            return Err(missing("hole"));
        };
        let place = format!("hole for {size}");
        let Some(held) = minor_held(size, None, self.limits.as_ref())? else {
            return Ok(Verdict::from_findings(place, Vec::new())
                .saying(format!(
                    "No hole size is published for {size}: the mating part decides."
                ))
                .then(NextStep::new(
                    "the hole that the tap's maker names",
                    "no limits are published for this thread",
                    "tap maker's list",
                )));
        };
        let limits = held.limits;
        let rule = self.rule.unwrap_or_default();
        let mut found = sizes_against("hole", &readings, &limits, &held.owner, held.evidence, rule);
        if self.hole.iter().any(|p| p.surface == Surface::OverPaint) {
            found = found.read_on_paint(true, tables);
        }
        let mut said = Verdict::from_findings(place, Vec::from([found]));
        let (least, most) = (limits.lower().known(), limits.upper().known());
        let over = most
            .map(|m| high.value() - m)
            .filter(|by| settled_below(Length::default(), *by));
        let under = least
            .map(|l| l - low.value())
            .filter(|by| settled_below(Length::default(), *by));
        let sentence = match (said.outcome, over, under) {
            (Outcome::NonconformityShown, Some(over), _) => {
                said = said
                    .with(Worked::length("too large by", over, "hole less greatest minor diameter"))
                    .cured(Curing::by(Remedy::Sleeve))
                    .minding("too little thread would be left: an insert or another size, by the frame maker or a qualified builder");
                format!("The hole is {} too large for {size}.", in_mm(over))
            }
            (Outcome::NonconformityShown, None, Some(by)) => {
                let up_to = most.map_or(by, |m| m - low.value());
                said = said
                    .with(Worked::length(
                        "to enlarge by, least",
                        by,
                        "least minor diameter less hole",
                    ))
                    .with(Worked::length(
                        "to enlarge by, most",
                        up_to,
                        "greatest minor diameter less hole",
                    ))
                    .minding("cutting cannot be undone: enlarge in steps and measure");
                if let Some(least) = least {
                    said = said.cured(Curing::by(Remedy::Ream).sized(least));
                }
                format!(
                    "The hole is too small for {size}: enlarge it by {:.3} to {}, to {}, before tapping; the tap would jam or break.",
                    settled_mm(by),
                    in_mm(up_to),
                    limits
                )
            }
            (Outcome::ConformityShown, ..) => format!("The hole suits {size}."),
            _ => {
                said = said.then(NextStep::new(
                    "the hole in two directions",
                    "too close to a limit for this tool, or read over paint",
                    "plug of known size, or small-hole gauge",
                ));
                format!("Whether the hole suits {size} the reading does not tell.")
            }
        };
        for (what, limit) in [("least hole", least), ("greatest hole", most)] {
            if let Some(limit) = limit {
                said = said.with(Worked::length(what, limit, "minor diameter limit"));
            }
        }
        Ok(said.saying(sentence))
    }
}
