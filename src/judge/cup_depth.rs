//! Is a bore deep enough for the cup or part that goes in?

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::sizes_against;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, not_negative};
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
        not_negative("insertion", self.insertion.value())?;
        for (index, depth) in self.bore_depth.iter().enumerate() {
            not_negative("", depth.value())
                .map_err(|e| e.within(&format!("bore_depth[{index}]")))?;
        }
        let shallowest = self
            .bore_depth
            .iter()
            .min_by(|a, b| settled_cmp(a.value(), b.value()))
            .ok_or_else(|| missing("bore_depth"))?;
        let rooms: Vec<Reading> = self
            .bore_depth
            .iter()
            .map(|depth| depth.less(&self.insertion))
            .collect();
        let room = shallowest.less(&self.insertion);
        let grade = if self.room.is_some() {
            Grade::Shop
        } else {
            Grade::CommonPractice
        };
        let limits = Limits::at_least(wanted, grade)?;
        let owner = "the bore must be at least as deep as what goes in";
        let mut found = sizes_against(
            "room below",
            &rooms,
            &limits,
            owner,
            None,
            self.rule.unwrap_or_default(),
        );
        found.reworded(format!(
            "bore {} deep, {} goes in: {}",
            in_mm(shallowest.value()),
            in_mm(self.insertion.value()),
            in_mm(room.value())
        ));
        let short = wanted - room.value();
        let proud = -room.value();
        let stands = settled_cmp(proud, NOTHING).is_gt();
        let mut said =
            Verdict::from_findings("part in its bore", Vec::from([found])).with(Worked::length(
                "room below",
                room.value(),
                "shallowest bore depth less insertion",
            ));
        if stands {
            said = said.with(Worked::length(
                "stands proud",
                proud,
                "insertion less bore depth",
            ));
        }
        Ok(match said.outcome {
            Outcome::NonconformityShown => said
                .saying(format!(
                    "{}: no go. Deepen the bore by {} if the wall below allows it, or shorten the cup, which leaves less length to press.",
                    if stands {
                        format!("The cup bottoms and stands {} proud", in_mm(proud))
                    } else {
                        format!("Only {} is left below the part, and {} is wanted", in_mm(room.value()), in_mm(wanted))
                    },
                    in_mm(short)
                ))
                .with(Worked::length("deepen by", short, "room wanted less room found"))
                .cured(Curing::by(Remedy::OtherPart).sized(self.insertion.value() - short))
                .cured(Curing::by(Remedy::Deepen).sized(shallowest.value() + short))
                .then(NextStep::new("the inside below the bore, and the wall there", "deepening needs wall to cut in, and a shoulder to stop at", "caliper, wall gauge"))
                .minding("cutting cannot be undone; a shortened cup needs a new chamfer and its maker's consent"),
            Outcome::ConformityShown => said
                .saying(format!("The cup seats with {} to spare.", in_mm(room.value()))),
            Outcome::Undecided => said
                .saying(String::from("Too close to tell: the cup may bottom before it seats."))
                .then(NextStep::new("bore depth at four places and the length of the cup below its flange", "the shallowest place decides", "depth caliper")),
        })
    }
}
