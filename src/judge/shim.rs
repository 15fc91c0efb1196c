//! A shim between a tube and a post.

use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict};
use super::wall::ends;
use super::{BoreAsk, BoreFact, Finding, Fit, MemberOf};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, decide, settled_cmp};
use crate::quantity::{Length, not_negative, positive};
use crate::read::{Inside, Outside, form};
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
        let (bore, post) = (ends("bore", &self.bore)?, ends("post", &self.post)?);
        let press = self
            .interference
            .map(|l| not_negative("interference", l))
            .transpose()?;
        let joint = self.joint.unwrap_or(Joint::Seatpost);
        let hold = self.hold.unwrap_or(joint.hold());
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
        let presses = hold == Hold::Press;
        let gap = if presses {
            bore.1.less(&post.0)
        } else {
            bore.0.less(&post.1)
        };
        let room = settled_cmp(gap.value(), NOTHING).is_gt();
        let wanted = if presses { press } else { Some(NOTHING) };
        let wall = wanted
            .filter(|_| room)
            .map(|wanted| gap.shifted(wanted).scaled(0.5));
        let wall = wall.filter(|wall| settled_cmp(wall.value(), NOTHING).is_gt());
        said.worked.retain(|w| w.what != "shim wall");
        if let Some(wall) = wall.map(|wall| wall.value()) {
            said.findings
                .push(Finding::of(BoreFact::ShimWall { wall, presses }));
        } else if presses && room {
            said = said.then(NextStep::of(BoreAsk::PressWanted));
        } else {
            said.findings.push(Finding::of(BoreFact::NoGap));
        }
        let how = if presses {
            "(gap + wanted interference) / 2"
        } else {
            "gap / 2"
        };
        said = said.lengths([
            ("shim wall", wall.map(|wall| wall.value()), how),
            ("gap on diameter", Some(gap.value()), "bore - part"),
        ]);
        if let Some(sheet) = &self.sheet {
            positive("sheet", sheet.value())?;
            said = self.with_sheet(said, sheet, &wall.unwrap_or_else(|| gap.scaled(0.5)))?;
        }
        if wall.is_some() && (self.sheet.is_none() || said.outcome != Outcome::ConformityShown) {
            said = said.then(NextStep::of(BoreAsk::SheetThickness));
        }
        Ok(said.minding(BoreFact::ShimLength))
    }

    /// Whether this sheet goes into the gap; the fit as found then stands beside.
    fn with_sheet(&self, fit: Verdict, sheet: &Reading, wall: &Reading) -> Result<Verdict, Error> {
        let none = Limits::at_most(NOTHING, Grade::Derived)?;
        let apart = sheet.less(wall);
        let decision = decide(&apart, &none, self.rule.unwrap_or_default());
        let goes_in = decision.outcome;
        let (sheet, wall, leaves) = (sheet.value(), wall.value(), apart.value() * -2.0);
        let fact = BoreFact::Sheet {
            sheet,
            adds: sheet * 2.0,
            wall,
            leaves,
            goes_in,
        };
        let found = Finding {
            outcome: Some(goes_in),
            readings: self.sheet.into_iter().collect(),
            limits: Limits::at_most(wall, Grade::Derived).ok(),
            decision: Some(decision),
            owner: String::from("the two diameters"),
            grade: Some(Grade::Derived),
            ..Finding::of(fact)
        };
        let mut said = Verdict {
            beside: fit.findings,
            worked: fit.worked,
            out: fit.out,
            cures: fit.cures,
            next: fit.next,
            cautions: fit.cautions,
            ..Verdict::from_findings("shim", Vec::from([found]))
        };
        said.beside.extend(fit.beside);
        if goes_in == Outcome::NonconformityShown
            && settled_cmp(wall, NOTHING).is_gt()
            && !said.cures.iter().any(|c| c.by == Remedy::Shim)
        {
            said = said.cured(Curing::by(Remedy::Shim).sized(wall));
        }
        Ok(said)
    }
}
