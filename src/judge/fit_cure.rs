//! The numbers of a fit, which member is off, what would cure it, and what to measure next.

use alloc::format;

use super::fit::Asked;
use super::fit_measured::{counted, disagree};
use super::verdict::{Curing, NOTHING, NextStep, Remedy, SettledBy, Verdict, Worked};
use super::{CuredAt, Finding, FitAsk, FitFact};
use crate::evidence::Grade;
use crate::fit::{Caution, Feature, Fit, Out};
use crate::measure::{Limits, Outcome, decide, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Hold, Joint, Seatpost};

/// Half a step of the seatpost series, 0.2 mm: further off, and another size is nearer (common practice).
const HALF_STEP: Length = mm(0.1);

/// Expanded uncertainty above which a reading settles no press fit (common practice).
const TOO_COARSE: Length = mm(0.008);

impl Asked<'_> {
    pub(super) fn numbers(&self, mut said: Verdict, fit: &Fit) -> Verdict {
        let (tight, loose) = (fit.tightest().value(), fit.loosest().value());
        let mean = fit.mean().value();
        let numbers = if self.hold == Some(Hold::Press) {
            [
                ("interference", -mean),
                ("least interference", -loose),
                ("greatest interference", -tight),
            ]
        } else {
            [
                ("clearance", mean),
                ("least clearance", tight),
                ("greatest clearance", loose),
            ]
        };
        for (what, length) in numbers {
            said = said.with(Worked::length(what, length, ""));
        }
        for member in [fit.hole(), fit.shaft()] {
            if let Some(off) = member.outside_by() {
                let what = format!("{} outside limits by", member.feature);
                said = said.with(Worked::length(what, off, ""));
            }
        }
        let windows = said.findings.iter().filter(|f| counted(f).is_some());
        let beyond = windows
            .filter_map(|f| Some(-f.decision?.margin?))
            .max_by(|a, b| settled_cmp(*a, *b))
            .filter(|by| settled_below(NOTHING, *by));
        match beyond {
            Some(by) => said.with(Worked::length("beyond window by", by, "")),
            None => said,
        }
    }

    /// Which member is off: by its own limits where it has any, else by the size that both are sold as. A member is off when it
    /// is shown to lie more than half a step of the sizes from there; what the readings do not show stays open.
    pub(super) fn blame(&self, mut said: Verdict, fit: &Fit) -> Verdict {
        said.out = Some(fit.out());
        // What is read over paint says nothing of which member was made wrong.
        let Some(sold_as) = self.nominal.filter(|_| !self.painted()) else {
            return said;
        };
        let step = (sold_as - HALF_STEP, sold_as + HALF_STEP);
        let Ok(step) = Limits::between(step.0, step.1, Grade::CommonPractice) else {
            return said;
        };
        let (hole, shaft) = (fit.hole(), fit.shaft());
        let members = [
            (hole.measured, hole.smallest, "hole off size"),
            (shaft.measured, shaft.largest, "shaft off size"),
        ];
        let stand = members.map(|(measured, reading, what)| {
            let outcome = measured.then(|| decide(&reading, &step, self.rule).outcome);
            if outcome == Some(Outcome::NonconformityShown) {
                let off = Worked::length(what, reading.value() - sold_as, "");
                said.worked.push(off);
            }
            outcome
        });
        let off = Out::of(stand[0], stand[1]);
        if fit.out() == Out::CannotTell {
            said.out = Some(off);
        }
        let both = hole.measured && shaft.measured;
        let open = off == Out::CannotTell && both && said.outcome == Outcome::NonconformityShown;
        if open || matches!(off, Out::Hole | Out::Shaft | Out::Both) {
            let fact = FitFact::OffTheSizeSold { sold_as, off };
            said.findings.push(Finding::of(fact));
        }
        said
    }

    /// What would cure it: a member within its limits, the next size of the series, a shim for the part at hand.
    pub(super) fn cures(&self, mut said: Verdict, fit: &Fit, too_loose: bool) -> Verdict {
        if said.outcome != Outcome::NonconformityShown {
            return said;
        }
        let hole = fit.hole();
        let least = hole.limits.and_then(|l| l.lower().known());
        let below = least.is_some_and(|least| settled_below(hole.smallest.value(), least));
        match said.out {
            Some(Out::Hole | Out::Both) if hole.outside_by().is_some() => {
                let by = if below { Remedy::Ream } else { Remedy::Sleeve };
                said = said.cured(Curing::by(by).only_at(CuredAt::Member(Feature::Hole)));
            }
            Some(Out::Shaft) if self.joint != Joint::Seatpost => {
                said = said
                    .cured(Curing::by(Remedy::OtherPart).only_at(CuredAt::Member(Feature::Shaft)));
            }
            _ => {}
        }
        if !too_loose {
            return said;
        }
        if self.hold == Some(Hold::Press) {
            return said.cured(Curing::by(Remedy::OtherPart));
        }
        // The next size of the series, or a shim for this part.
        if let Some(size) = self.next_post(fit) {
            let leaves = hole.smallest.value() - size;
            said.findings
                .push(Finding::of(FitFact::TryPost { size, leaves }));
            said = said
                .with(Worked::length("post to try", size, ""))
                .with(Worked::length("clearance it leaves", leaves, ""))
                .cured(Curing::by(Remedy::OtherPart).sized(size));
        }
        let (joint, wall) = (self.joint, fit.tightest().value() / 2.0);
        said.findings
            .push(Finding::of(FitFact::ShimWall { joint, wall }));
        said.with(Worked::length("shim wall", wall, "gap on diameter / 2"))
            .cured(Curing::by(Remedy::Shim).sized(wall))
    }

    /// The largest listed post that the smallest bore admits, where it is larger than the one at hand.
    fn next_post(&self, fit: &Fit) -> Option<Length> {
        let (bore, post) = (fit.hole().smallest, fit.shaft().largest);
        let admits = bore.value() + bore.expanded_uncertainty();
        let posts = self.tables.all::<Seatpost>();
        posts
            .filter(|_| self.joint == Joint::Seatpost)
            .filter_map(|p| p.diameter.nominal())
            .filter(|d| settled_cmp(*d, admits).is_le())
            .max_by(|a, b| settled_cmp(*a, *b))
            .filter(|size| settled_below(post.value() + post.expanded_uncertainty(), *size))
    }

    /// The next measurement.
    pub(super) fn open(&self, mut said: Verdict, fit: &Fit, named: bool) -> Verdict {
        let open = said.outcome == Outcome::Undecided;
        if open && !named {
            said = said.then(NextStep::of(FitAsk::MakersFit).by(SettledBy::Written));
        }
        let coarse = [fit.hole().smallest, fit.shaft().largest]
            .iter()
            .any(|r| settled_below(TOO_COARSE, r.expanded_uncertainty()));
        if open || fit.cautions().contains(&Caution::ShapeAtLeast) {
            if self.hold == Some(Hold::Press) && coarse {
                said = said.then(NextStep::of(FitAsk::Finer));
            } else if open && disagree(&said) {
                said = said.then(NextStep::of(FitAsk::TryByHand).by(SettledBy::Trial));
            } else if open {
                said = said.then(NextStep::of(FitAsk::BothMembers));
            }
        }
        let members = [Feature::Hole, Feature::Shaft].into_iter();
        let covered = members.filter(|member| self.read(*member).1);
        let bare = covered.map(|member| NextStep::of(FitAsk::BareMetal { member }));
        said.next.splice(0..0, bare);
        said
    }
}
