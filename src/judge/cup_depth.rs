//! Is a bore deep enough for the cup or part that goes in?

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{SquareAsk, SquareFact, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, not_negative};
use crate::read::{Deep, form, missing};
use crate::standard::Tables;

form! {
    /// A cup or other part in its bore: the shallowest place of the bore less what goes in. What is missing is how far the part
    /// stands proud.
    ///
    /// ```
    /// use framegauge::{judge::CupDepth, measure::Outcome, standard::Tables};
    /// let depth = |text: &str| vec![text.parse().unwrap()];
    /// let cup = CupDepth { bore_depth: depth("9.0 +/- 0.1 mm"), insertion: "12.0 +/- 0.1 mm".parse().unwrap(), room: None, rule: None };
    /// let said = cup.answer(Tables::ours()).unwrap();
    /// assert_eq!((said.outcome, said.millimetres("stands proud")), (Outcome::NonconformityShown, Some(3.0)));
    /// // 0.1 mm of room, read to 0.1 mm: the cup may bottom.
    /// let close = CupDepth { bore_depth: depth("12.1 +/- 0.1 mm"), ..cup };
    /// assert_eq!(close.answer(Tables::ours()).unwrap().outcome, Outcome::Undecided);
    /// ```
    CupDepth {
        /// Depth of the bore from its face; several places may be given, the shallowest decides.
        bore_depth: Vec<Reading> => Deep,
        /// Length of the part that goes in.
        insertion: Reading => Deep,
        /// Room that must stay below it; none unless stated.
        room: Option<Length>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl CupDepth {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a depth; `OutOfRange` and `NotFinite` for lengths that are none.
    pub fn answer(&self, _: Tables<'_>) -> Result<Verdict, Error> {
        let wanted = not_negative("room", self.room.unwrap_or(NOTHING))?;
        let part = not_negative("insertion", self.insertion.value())?;
        for (index, depth) in self.bore_depth.iter().enumerate() {
            let depth = not_negative("", depth.value());
            depth.map_err(|e| e.within(&format!("bore_depth[{index}]")))?;
        }
        let depths = self.bore_depth.iter().map(Reading::value);
        let bore = depths.min_by(|a, b| settled_cmp(*a, *b));
        let bore = bore.ok_or_else(|| missing("bore_depth"))?;
        let left = bore - part;
        let room = |depth: &Reading| depth.less(&self.insertion);
        let rooms: Vec<Reading> = self.bore_depth.iter().map(room).collect();
        let grade = self.room.map_or(Grade::CommonPractice, |_| Grade::Shop);
        let limits = Limits::at_least(wanted, grade)?;
        let rule = self.rule.unwrap_or_default();
        let owner = "what goes in";
        let mut found = sizes_against("room below", &rooms, &limits, owner, None, rule);
        found.fact = SquareFact::Room { bore, part, left }.into();
        let mut said = Verdict::from_findings("part in bore", Vec::from([found]));
        said = said.with(Worked::length("room below", left, "depth - insertion"));
        if settled_below(left, NOTHING) {
            said = said.with(Worked::length("stands proud", -left, "insertion - depth"));
        }
        let short = wanted - left;
        Ok(match said.outcome {
            Outcome::NonconformityShown => said
                .with(Worked::length("deepen by", short, "wanted - found"))
                .cured(Curing::by(Remedy::OtherPart).sized(part - short))
                .cured(Curing::by(Remedy::Deepen).sized(bore + short))
                .then(NextStep::of(SquareAsk::BelowBore))
                .minding(SquareFact::Deepening),
            Outcome::ConformityShown => said,
            Outcome::Undecided => said.then(NextStep::of(SquareAsk::DepthFiner)),
        })
    }
}
