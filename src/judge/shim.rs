//! A shim between a tube and a post.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked};
use super::{Finding, Fit, MemberOf};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, decide, settled_cmp};
use crate::quantity::{Length, in_mm, not_negative, positive};
use crate::read::{Inside, Outside, form, missing};
use crate::standard::{Hold, Joint, Tables};

form! {
    /// A shim in the gap of a tube and a post: the wall it needs is **half** the difference of the diameters. With the sheet at
    /// hand the verdict is whether that goes in; without, whether the post does as it is.
    ///
    /// ```
    /// use framegauge::{judge::Shim, measure::Outcome, standard::Tables};
    /// let read = |text: &str| vec![text.parse().unwrap()];
    /// let asked = Shim {
    ///     bore: read("27.0 +/- 0.02 mm"), post: read("26.8 +/- 0.02 mm"), sheet: Some("0.2 +/- 0.01 mm".parse().unwrap()),
    ///     ..Shim::default()
    /// };
    /// let said = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.millimetres("shim wall"), Some(0.1));
    /// assert_eq!(said.outcome, Outcome::NonconformityShown); // 0.2 of wall would not enter
    /// ```
    #[derive(Default)]
    Shim {
        /// Bore of the tube.
        bore: Vec<Placed> => Inside,
        /// Outside of the post.
        post: Vec<Placed> => Outside,
        /// The joint, where it is not a post in its tube.
        joint: Option<Joint>,
        /// How it is meant to hold, where that differs from the usual.
        hold: Option<Hold>,
        /// Interference that is wanted with the shim in, on diameter, for a part that presses.
        interference: Option<Length>,
        /// Nominal size that both are sold as.
        nominal: Option<Length>,
        /// Clearance that is wanted; every published window unless stated.
        clearance: Option<Limits>,
        /// Thickness of the sheet at hand.
        sheet: Option<Reading> => Outside,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl Shim {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a bore or a post; those of the fit; `OutOfRange` and `NotFinite` for a sheet that is none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        if self.bore.is_empty() {
            return Err(missing("bore"));
        }
        if self.post.is_empty() {
            return Err(missing("post"));
        }
        let joint = self.joint.unwrap_or(Joint::Seatpost);
        let hold = self.hold.unwrap_or(joint.hold());
        let press = self
            .interference
            .map(|l| not_negative("interference", l))
            .transpose()?;
        let fit = Fit {
            joint: Some(joint),
            hold: Some(hold),
            hole: MemberOf::placed(self.bore.clone()),
            shaft: MemberOf::placed(self.post.clone()),
            sold_as: self.nominal,
            clearance: self.clearance.into_iter().collect(),
            rule: self.rule,
            ..Fit::default()
        };
        let mut said = fit.answer(tables).map_err(|e| {
            let field = match e.field() {
                f if f.starts_with("hole") => "bore",
                f if f.starts_with("shaft") => "post",
                "sold_as" => "nominal",
                "interference" => "interference",
                _ => "clearance",
            };
            e.named(field)
        })?;
        said.place = String::from("shim");
        // A part that slides has to pass the tightest place; one that presses has to press at the loosest.
        let ends = (hold == Hold::Press, press);
        let (gap, wall) = match ends {
            (true, Some(press)) => {
                let gap = self.gap(false).ok_or_else(|| missing("bore"))?;
                (gap, Some(gap.shifted(press).scaled(0.5)))
            }
            (true, None) => (self.gap(false).ok_or_else(|| missing("bore"))?, None),
            (false, _) => {
                let gap = self.gap(true).ok_or_else(|| missing("bore"))?;
                (gap, Some(gap.scaled(0.5)))
            }
        };
        let tight = self.gap(true).ok_or_else(|| missing("bore"))?;
        let room = |wall: &Reading| {
            settled_cmp(wall.value(), NOTHING).is_gt()
                && !(hold == Hold::Press && settled_cmp(gap.value(), NOTHING).is_le())
                && (hold == Hold::Press || settled_cmp(tight.value(), NOTHING).is_gt())
        };
        let wall = wall.filter(|wall| room(wall));
        said.worked.retain(|w| w.what != "shim wall");
        match &wall {
            Some(wall) => {
                let how = if hold == Hold::Press {
                    "(gap + wanted interference) / 2"
                } else {
                    "half the gap on diameter"
                };
                said = said.with(Worked::length("shim wall", wall.value(), how));
                said.words().push_str(&format!(
                    " A shim has a wall of {}: {how}, because it lies on both sides.",
                    in_mm(wall.value())
                ));
            }
            None if hold == Hold::Press && settled_cmp(gap.value(), NOTHING).is_gt() => {
                said = said.then(NextStep::new(
                    "interference that the maker of the part wants",
                    "wall = (gap + interference) / 2",
                    "part maker",
                ));
            }
            None => said.words().push_str(" There is no gap to fill."),
        }
        said = said.with(Worked::length(
            "gap on diameter",
            gap.value(),
            "bore less part",
        ));
        let some = wall.is_some();
        let wall = wall.unwrap_or_else(|| gap.scaled(0.5));
        if let Some(sheet) = &self.sheet {
            positive("sheet", sheet.value())?;
            said = self.with_sheet(said, sheet, &wall)?;
        }
        if some && (self.sheet.is_none() || said.outcome != Outcome::ConformityShown) {
            said = said.then(NextStep::new(
                "thickness of the sheet",
                "a wall counts twice on diameter",
                "micrometer",
            ));
        }
        Ok(said.minding("a shim at least as long as the insertion, slot on slot (common practice; no length is published)"))
    }

    /// Smallest bore less largest post, or the largest less the smallest.
    fn gap(&self, tightest: bool) -> Option<Reading> {
        let end = |placed: &[Placed], first: bool| {
            let all: Vec<Reading> = placed.iter().map(|p| p.reading).collect();
            let ends = super::extremes(&all);
            if first {
                ends.first().copied()
            } else {
                ends.last().copied()
            }
        };
        Some(end(&self.bore, tightest)?.less(&end(&self.post, !tightest)?))
    }

    /// Whether this sheet goes into the gap; the fit as found then stands beside.
    fn with_sheet(&self, fit: Verdict, sheet: &Reading, wall: &Reading) -> Result<Verdict, Error> {
        let none = Limits::at_most(NOTHING, Grade::Derived)?;
        let apart = sheet.less(wall);
        let decision = decide(&apart, &none, self.rule.unwrap_or_default());
        let words = match decision.outcome {
            Outcome::NonconformityShown => format!(
                "a sheet of {} adds {} on diameter and will not enter; if it did go in, it is not that thick, or the difference was taken for the wall",
                in_mm(sheet.value()),
                in_mm(sheet.value() * 2.0)
            ),
            Outcome::ConformityShown => format!(
                "a sheet of {} goes in and leaves {} on diameter",
                in_mm(sheet.value()),
                in_mm(-apart.value() * 2.0)
            ),
            Outcome::Undecided => format!(
                "a sheet of {} is a push fit within these readings",
                in_mm(sheet.value())
            ),
        };
        let found = Finding {
            outcome: Some(decision.outcome),
            readings: Vec::from([*sheet]),
            limits: Limits::at_most(wall.value(), Grade::Derived).ok(),
            decision: Some(decision),
            owner: String::from("the two diameters"),
            grade: Some(Grade::Derived),
            ..Finding::stated("sheet", words.clone())
        };
        let mut said = Verdict::from_findings("shim", Vec::from([found])).saying(format!(
            "{} {}.",
            fit.sentence,
            super::words::capital(&words)
        ));
        said.beside = fit.findings;
        said.beside.extend(fit.beside);
        said.worked = fit.worked;
        said.out = fit.out;
        said.cures = fit.cures;
        said.next = fit.next;
        said.cautions = fit.cautions;
        if said.outcome == Outcome::NonconformityShown
            && settled_cmp(wall.value(), NOTHING).is_gt()
            && !said.cures.iter().any(|c| c.by == Remedy::Shim)
        {
            said = said.cured(Curing::by(Remedy::Shim).sized(wall.value()));
        }
        Ok(said)
    }
}
