//! A hole before it is tapped.

use alloc::format;
use alloc::vec::Vec;

use super::gauging::minor_held;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, OwnLimits, ThreadAsk, ThreadFact};
use crate::Error;
use crate::measure::{DecisionRule, Outcome, Placed, Reading, Surface, settled_below};
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
    /// assert_eq!(for_thread("M10x1").millimetres("enlarge by, least"), Some(0.417));
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
        let thread = self.thread;
        for (index, placed) in self.hole.iter().enumerate() {
            size_reading("", &placed.reading).map_err(|e| e.within(&format!("hole[{index}]")))?;
        }
        let readings: Vec<Reading> = self.hole.iter().map(|p| p.reading).collect();
        let ends = super::extremes(&readings);
        let (Some(low), Some(high)) = (ends.first(), ends.last()) else {
            return Err(missing("hole"));
        };
        let place = format!("hole for {thread}");
        let Some(held) = minor_held(&thread, None, self.limits.as_ref())? else {
            let found = Finding::of(ThreadFact::NoHolePrinted { thread });
            let next = NextStep::of(ThreadAsk::HoleOfTap);
            return Ok(Verdict::from_findings(place, Vec::from([found])).then(next));
        };
        let limits = held.limits;
        let mut found = held.against("hole", &readings, self.rule);
        if self.hole.iter().any(|p| p.surface == Surface::OverPaint) {
            found = found.read_on_paint(true, tables);
        }
        let mut said = Verdict::from_findings(place, Vec::from([found]));
        let (least, most) = (limits.lower().known(), limits.upper().known());
        let over = most.map_or(NOTHING, |most| high.value() - most);
        if said.outcome == Outcome::Undecided {
            said = said.then(NextStep::of(ThreadAsk::HoleTwice));
        } else if said.outcome == Outcome::NonconformityShown && settled_below(NOTHING, over) {
            said = said
                .with(Worked::length("too large by", over, "hole - greatest"))
                .cured(Curing::by(Remedy::Sleeve))
                .minding(ThreadFact::TooLittleThread);
        } else if let Some(least) = least.filter(|_| said.outcome == Outcome::NonconformityShown) {
            let by = least - low.value();
            let up_to = most.map_or(by, |most| most - low.value());
            said = said
                .with(Worked::length("enlarge by, least", by, "least - hole"))
                .with(Worked::length("enlarge by, most", up_to, "most - hole"))
                .cured(Curing::by(Remedy::Ream).sized(least))
                .minding(ThreadFact::EnlargeInSteps);
        }
        for (what, limit) in [("least hole", least), ("greatest hole", most)] {
            let worked = limit.map(|at| Worked::length(what, at, "minor diameter limit"));
            said.worked.extend(worked);
        }
        Ok(said)
    }
}
