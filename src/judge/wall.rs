//! The wall of a tube, and what reaming takes off and leaves.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::held::{OwnLimits, held};
use super::tube::wall_implied;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{Finding, sizes_against};
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, Surface, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::read::{Inside, Outside, form, missing};
use crate::standard::{Cutting, CuttingRule, FacingRule, Place, Tables};
use crate::{Error, ErrorKind};

form! {
    /// The wall that an outside diameter and a bore leave, against the least that a maker allows. No least wall is published; what
    /// builders use stands beside.
    ///
    /// ```
    /// use framegauge::{judge::Wall, measure::{Limits, Outcome}, standard::Tables};
    /// let head = Wall {
    ///     place: None,
    ///     outside: "36.0 +/- 0.02 mm".parse().unwrap(), bore: vec!["33.95 +/- 0.01 mm".parse().unwrap()],
    ///     least: vec!["at least 1.1 mm".parse::<Limits>().unwrap().into()], rule: None,
    /// };
    /// let said = head.answer(Tables::ours()).unwrap();
    /// assert_eq!((said.outcome, said.millimetres("wall")), (Outcome::NonconformityShown, Some(1.025)));
    /// ```
    Wall {
        /// Where it is: what builders use of one place is not held against another.
        place: Option<Place>,
        /// Outside diameter.
        outside: Reading => Outside,
        /// The bore; the largest reading leaves the least wall.
        bore: Vec<Placed> => Inside,
        /// The least wall that somebody allows.
        least: Vec<OwnLimits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }

    /// Reaming a tube to a larger bore: what it takes off, what wall it leaves, and whether that is allowed. No least wall is
    /// published, so without a maker's nothing is shown.
    ///
    /// ```
    /// use framegauge::{judge::Ream, measure::Outcome, mm, standard::Tables};
    /// let cut = Ream {
    ///     outside: Some("31.7 +/- 0.02 mm".parse().unwrap()), bore: vec!["29.7 +/- 0.02 mm".parse().unwrap()], to: mm(30.2),
    ///     least: vec![], rule: None,
    /// };
    /// let said = cut.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.millimetres("stock on diameter"), Some(0.5));
    /// assert_eq!(said.millimetres("wall left"), Some(0.75));
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// ```
    Ream {
        /// Outside diameter.
        outside: Option<Reading> => Outside,
        /// The bore as it is; the smallest reading gives the most stock.
        bore: Vec<Placed> => Inside,
        /// The bore after reaming.
        to: Length,
        /// The least wall that somebody allows.
        least: Vec<OwnLimits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// Smallest and largest reading of a bore.
fn ends(bore: &[Placed]) -> Result<(Reading, Reading), Error> {
    for (index, placed) in bore.iter().enumerate() {
        positive("", placed.reading.value()).map_err(|e| e.within(&format!("bore[{index}]")))?;
    }
    let readings: Vec<Reading> = bore.iter().map(|p| p.reading).collect();
    let ends = super::extremes(&readings);
    match (ends.first(), ends.last()) {
        (Some(low), Some(high)) => Ok((*low, *high)),
        _ => Err(missing("bore")),
    }
}

fn implied(outside: &Reading, bore: &Reading) -> Result<Reading, Error> {
    wall_implied(outside, bore).map_err(|e| {
        let field = if e.field() == "bore" {
            "bore"
        } else {
            "outside"
        };
        e.named(field)
    })
}

/// A wall against the least that is allowed, with what builders use beside.
fn judged(
    place: &str,
    wall: Reading,
    least: &[OwnLimits],
    rule: DecisionRule,
    (tables, of): (Tables<'_>, Option<&Place>),
) -> Result<Verdict, Error> {
    let mut findings: Vec<Finding> = held(least, None, tables)?
        .iter()
        .map(|h| sizes_against("wall", &[wall], &h.limits, &h.owner, h.evidence, rule))
        .collect();
    if findings.is_empty() {
        findings.push(Finding {
            outcome: Some(Outcome::Undecided),
            readings: Vec::from([wall]),
            ..Finding::stated(
                "wall",
                format!("{}; no least wall is published", in_mm(wall.value())),
            )
        });
    }
    let mut said = Verdict::from_findings(place, findings);
    let head_tube = of.is_none_or(|place| matches!(place, Place::HeadTube(_)));
    if head_tube && let Ok(row) = tables.find::<FacingRule>("head_tube_wall") {
        said.beside.push(sizes_against(
            row.what.clone(),
            &[wall],
            &Limits::of_requirement(&row.window),
            "builder practice, not a required minimum",
            row.window.evidence(),
            rule,
        ));
    }
    if said.outcome == Outcome::Undecided {
        said = said.then(NextStep::new(
            "wall at the thinnest place",
            "the tube may be butted or eccentric, and the reamer follows the bore",
            "wall gauge, or micrometer with a ball anvil",
        ));
    }
    Ok(said)
}

fn says(outcome: Outcome, least: &[OwnLimits]) -> &'static str {
    match outcome {
        Outcome::ConformityShown => "as much as is asked",
        Outcome::NonconformityShown => "less than is asked",
        Outcome::Undecided if least.is_empty() => {
            "no least wall is published, the frame maker decides"
        }
        Outcome::Undecided => "too close to what is asked to tell",
    }
}

impl Wall {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a bore; `OutOfRange` and `NotFinite` for sizes that are none; `Contradiction` for a bore that is not
    /// smaller than the outside.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (_, widest) = ends(&self.bore)?;
        let wall = implied(&self.outside, &widest)?;
        let rule = self.rule.unwrap_or_default();
        let mut said = judged(
            "wall",
            wall,
            &self.least,
            rule,
            (tables, self.place.as_ref()),
        )?;
        // Paint in the bore makes the wall look thicker than it is: only what is too thin even so is shown.
        if self.bore.iter().any(|p| p.surface == Surface::OverPaint)
            && said.outcome == Outcome::ConformityShown
        {
            said.findings = said
                .findings
                .into_iter()
                .map(Finding::through_paint)
                .collect();
            said.outcome = Outcome::Undecided;
        }
        let words = says(said.outcome, &self.least);
        let said = said
            .saying(format!("A wall of {}: {words}.", in_mm(wall.value())))
            .with(Worked::length(
                "wall",
                wall.value(),
                "(outside - largest bore) / 2",
            ));
        Ok(if said.outcome == Outcome::NonconformityShown {
            said.cured(Curing::by(Remedy::Refer))
        } else {
            said
        })
    }
}

impl Ream {
    /// The verdict.
    ///
    /// # Errors
    /// As [`Wall::answer`]; `NotApplicable` when the bore is already as large.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (narrowest, _) = ends(&self.bore)?;
        let to = positive("to", self.to)?;
        let rule = self.rule.unwrap_or_default();
        let stock = narrowest.scaled(-1.0).shifted(to);
        if settled_cmp(stock.value(), NOTHING).is_le() {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "to",
                in_mm(to),
                format!("the bore is {} already", in_mm(narrowest.value())),
                "nothing to ream; a bore cannot be made smaller",
            ));
        }
        let place = "tube to be reamed";
        let left = self
            .outside
            .as_ref()
            .map(|outside| {
                implied(outside, &narrowest)?;
                implied(outside, &Reading::exact(to).map_err(|e| e.named("to"))?)
            })
            .transpose()?;
        let mut said = match left {
            Some(left) => judged(place, left, &self.least, rule, (tables, None))?,
            None => Verdict::from_findings(place, Vec::new()).then(NextStep::new(
                "outside diameter around the bore, or the wall itself",
                "nothing is cut before it is known what wall it leaves",
                "outside micrometer, wall gauge",
            )),
        };
        for row in CuttingRule::about(Cutting::ReamStock, tables) {
            said.beside.push(sizes_against(
                row.what.clone(),
                &[stock],
                &Limits::of_requirement(&row.window),
                "a machining text",
                row.window.evidence(),
                rule,
            ));
        }
        let leaves = left.map_or_else(
            || String::from("the wall it leaves is not known"),
            |left| {
                format!(
                    "leaves a wall of {}: {}",
                    in_mm(left.value()),
                    says(said.outcome, &self.least)
                )
            },
        );
        said = said
            .saying(format!(
                "Reaming from {} to {} takes {} on diameter ({} a side) and {leaves}.",
                in_mm(narrowest.value()),
                in_mm(to),
                in_mm(stock.value()),
                in_mm(stock.value() / 2.0)
            ))
            .with(Worked::length(
                "stock on diameter",
                stock.value(),
                "bore after less smallest bore before",
            ));
        if let Some(left) = left {
            said = said.with(Worked::length(
                "wall left",
                left.value(),
                "(outside - bore after) / 2",
            ));
        }
        if said.outcome == Outcome::NonconformityShown {
            said = said.cured(Curing::by(Remedy::Refer));
        }
        Ok(said.minding("cutting cannot be undone; never ream carbon"))
    }
}
