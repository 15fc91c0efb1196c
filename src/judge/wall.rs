//! The wall of a tube, and what reaming takes off and leaves.

use alloc::format;
use alloc::vec::Vec;

use super::held::{Held, OwnLimits, held};
use super::tube::wall_implied;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{BoreAsk, BoreFact, Finding, extremes};
use crate::measure::{DecisionRule, Outcome, Placed, Reading, Surface, settled_cmp};
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

impl Verdict {
    /// With these lengths worked out, where they are known: name, length, formula.
    pub(super) fn lengths<const N: usize>(
        mut self,
        all: [(&'static str, Option<Length>, &'static str); N],
    ) -> Self {
        let known = |(what, length, formula)| Some(Worked::length(what, length?, formula));
        self.worked.extend(all.into_iter().filter_map(known));
        self
    }
}

/// Smallest and largest of the readings in this field.
pub(super) fn ends(field: &'static str, placed: &[Placed]) -> Result<(Reading, Reading), Error> {
    for (index, placed) in placed.iter().enumerate() {
        size_reading("", &placed.reading).map_err(|e| e.within(&format!("{field}[{index}]")))?;
    }
    let readings: Vec<Reading> = placed.iter().map(|p| p.reading).collect();
    let ends = extremes(&readings);
    let ends = ends.first().zip(ends.last());
    ends.map(|(low, high)| (*low, *high))
        .ok_or_else(|| missing(field))
}

fn implied(outside: &Reading, bore: &Reading) -> Result<Reading, Error> {
    wall_implied(outside, bore).map_err(|e| match e.field() {
        "bore" => e,
        _ => e.named("outside"),
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
        .map(|h| h.against("wall", &[wall], rule))
        .collect();
    if findings.is_empty() {
        findings.push(Finding {
            outcome: Some(Outcome::Undecided),
            readings: Vec::from([wall]),
            ..Finding::of(BoreFact::WallUnlimited { wall: wall.value() })
        });
    }
    let mut said = Verdict::from_findings(place, findings);
    let head_tube = of.is_none_or(|place| matches!(place, Place::HeadTube(_)));
    if head_tube && let Ok(row) = tables.find::<FacingRule>("head_tube_wall") {
        let held = Held::of_row(&row.window, "builders, none required");
        said.beside
            .push(held.against(row.what.clone(), &[wall], rule));
    }
    match said.outcome {
        Outcome::Undecided => said.next.push(NextStep::of(BoreAsk::ThinnestWall)),
        Outcome::NonconformityShown => said.cures.push(Curing::by(Remedy::Refer)),
        Outcome::ConformityShown => {}
    }
    Ok(said)
}

impl Wall {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a bore; `OutOfRange` and `NotFinite` for sizes that are none; `Contradiction` for a bore that is not
    /// smaller than the outside.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (_, widest) = ends("bore", &self.bore)?;
        let wall = implied(&self.outside, &widest)?;
        let rule = self.rule.unwrap_or_default();
        let of = (tables, self.place.as_ref());
        let mut said = judged("wall", wall, &self.least, rule, of)?;
        // Paint in the bore makes the wall look thicker than it is: only what is too thin even so is shown.
        let painted = self.bore.iter().any(|p| p.surface == Surface::OverPaint);
        if painted && said.outcome == Outcome::ConformityShown {
            let findings = said.findings.into_iter();
            said.findings = findings.map(Finding::through_paint).collect();
            said.outcome = Outcome::Undecided;
        }
        let wall = Some(wall.value());
        Ok(said.lengths([("wall", wall, "(outside - largest bore) / 2")]))
    }
}

impl Ream {
    /// The verdict.
    ///
    /// # Errors
    /// As [`Wall::answer`]; `NotApplicable` when the bore is already as large.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (narrowest, _) = ends("bore", &self.bore)?;
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
        let place = "tube to ream";
        let (left, mut said) = if let Some(outside) = &self.outside {
            implied(outside, &narrowest)?;
            let left = implied(outside, &Reading::exact(to).map_err(|e| e.named("to"))?)?;
            (
                Some(left.value()),
                judged(place, left, &self.least, rule, (tables, None))?,
            )
        } else {
            let said = Verdict::from_findings(place, Vec::new());
            (None, said.then(NextStep::of(BoreAsk::OutsideThere)))
        };
        for row in CuttingRule::about(Cutting::ReamStock, tables) {
            let held = Held::of_row(&row.window, "a machining text");
            said.beside
                .push(held.against(row.what.clone(), &[stock], rule));
        }
        let (from, takes, leaves) = (narrowest.value(), stock.value(), left);
        said.findings.push(Finding::of(BoreFact::Reaming {
            from,
            to,
            takes,
            leaves,
        }));
        let said = said.lengths([
            ("stock on diameter", Some(takes), "after - smallest before"),
            ("wall left", leaves, "(outside - bore after) / 2"),
        ]);
        Ok(said.minding(BoreFact::CutOnce))
    }
}
