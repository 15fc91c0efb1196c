//! Which member is off, what would cure it, and what to measure next.

use super::fit::Asked;
use super::fit_measured::DISAGREE;
use super::verdict::{Curing, NextStep, Remedy, SettledBy, Verdict, Worked};
use crate::evidence::Grade;
use crate::fit::{Fit, MemberFinding, Out};
use crate::measure::{Limits, Outcome, Reading, decide, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::{Hold, Joint, Seatpost};
use alloc::format;
use alloc::string::String;

/// Half a step of the seatpost series, 0.2 mm: further off, and another size is nearer (common practice).
const HALF_STEP: Length = mm(0.1);

impl Asked<'_> {
    /// Which member is off: by its own limits where it has any, else by the size that both are sold as. A member is off when it
    /// is shown to lie more than half a step of the sizes from there; what the readings do not show stays open.
    pub(super) fn blame(&self, mut said: Verdict, fit: &Fit, sentence: &mut String) -> Verdict {
        said.out = Some(fit.out());
        // What is read over paint says nothing of which member was made wrong.
        let Some(nominal) = self.nominal.filter(|_| !self.painted.contains(&true)) else {
            return said;
        };
        let Ok(step) = Limits::between(
            nominal - HALF_STEP,
            nominal + HALF_STEP,
            Grade::CommonPractice,
        ) else {
            return said;
        };
        let stands = |m: &MemberFinding, reading: Reading| {
            m.measured
                .then(|| decide(&reading, &step, self.rule).outcome)
        };
        let hole = (stands(fit.hole(), fit.hole().smallest), fit.hole().smallest);
        let shaft = (
            stands(fit.shaft(), fit.shaft().largest),
            fit.shaft().largest,
        );
        for (what, (outcome, reading)) in [
            ("hole off the size it is sold as", hole),
            ("inner part off the size it is sold as", shaft),
        ] {
            if outcome == Some(Outcome::NonconformityShown) {
                let by = reading.value() - nominal;
                said = said.with(Worked::length(what, by, "reading less the size sold"));
            }
        }
        let off = Out::of(hole.0, shaft.0);
        if fit.out() == Out::CannotTell {
            said.out = Some(off);
        }
        sentence.push_str(&match off {
            Out::Both => format!(" Against {} as sold, both members are off.", in_mm(nominal)),
            Out::Hole => format!(" Against {} as sold, the hole is off.", in_mm(nominal)),
            Out::Shaft => format!(
                " Against {} as sold, the inner part is off.",
                in_mm(nominal)
            ),
            Out::CannotTell
                if said.outcome == Outcome::NonconformityShown
                    && (hole.0.is_some() && shaft.0.is_some()) =>
            {
                format!(
                    " Which of the two is off {} these readings do not tell.",
                    in_mm(nominal)
                )
            }
            Out::Neither | Out::CannotTell => String::new(),
        });
        said
    }

    /// What would cure it: a member within its limits, the next size of the series, a shim for the part at hand.
    pub(super) fn cures(
        &self,
        mut said: Verdict,
        fit: &Fit,
        too_loose: bool,
        sentence: &mut String,
    ) -> Verdict {
        if said.outcome != Outcome::NonconformityShown {
            return said;
        }
        let below = |m: &MemberFinding| {
            let least = m.limits.and_then(|l| l.lower().known());
            least.is_some_and(|least| settled_below(m.smallest.value(), least))
        };
        match (said.out, below(fit.hole())) {
            (Some(Out::Hole | Out::Both), true) if fit.hole().outside_by().is_some() => {
                said = said.cured(Curing::by(Remedy::Ream).only_at("hole"));
            }
            (Some(Out::Hole | Out::Both), false) if fit.hole().outside_by().is_some() => {
                said = said.cured(Curing::by(Remedy::Sleeve).only_at("hole"));
            }
            (Some(Out::Shaft), _) if self.joint != Joint::Seatpost => {
                said = said.cured(Curing::by(Remedy::OtherPart).only_at("shaft"));
            }
            _ => {}
        }
        if too_loose {
            said = self.fill_the_gap(said, fit, sentence);
        }
        said
    }

    /// A post that is too loose: the next size of the series, or a shim for this one.
    fn fill_the_gap(&self, mut said: Verdict, fit: &Fit, sentence: &mut String) -> Verdict {
        let gap = fit.tightest().value();
        if self.hold == Some(Hold::Press) {
            return said.cured(Curing::by(Remedy::OtherPart));
        }
        if self.joint == Joint::Seatpost
            && let Some(size) = self.next_post(fit)
        {
            let left = fit.hole().smallest.value() - size;
            sentence.push_str(&format!(
                " Try a post of {:.1} mm first, which leaves {} by its nominal size.",
                settled_mm(size),
                in_mm(left)
            ));
            said = said
                .with(Worked::length(
                    "post size to try first",
                    size,
                    "largest size of the series that the smallest bore admits",
                ))
                .with(Worked::length(
                    "clearance with that post",
                    left,
                    "smallest bore less its nominal size",
                ))
                .cured(Curing::by(Remedy::OtherPart).sized(size));
        }
        sentence.push_str(&format!(
            " For the present {} a shim has a wall of {}: half the gap.",
            if self.joint == Joint::Seatpost {
                "post"
            } else {
                "part"
            },
            in_mm(gap / 2.0)
        ));
        said.with(Worked::length(
            "shim wall",
            gap / 2.0,
            "half the gap on diameter",
        ))
        .cured(Curing::by(Remedy::Shim).sized(gap / 2.0))
    }

    /// The largest listed post that the smallest bore admits, where it is larger than the one at hand.
    fn next_post(&self, fit: &Fit) -> Option<Length> {
        let (bore, post) = (fit.hole().smallest, fit.shaft().largest);
        let admits = bore.value() + bore.expanded_uncertainty();
        self.tables
            .all::<Seatpost>()
            .filter_map(|p| p.diameter.nominal())
            .filter(|d| settled_cmp(*d, admits).is_le())
            .max_by(|a, b| settled_cmp(*a, *b))
            .filter(|size| settled_below(post.value() + post.expanded_uncertainty(), *size))
    }

    /// The next measurement.
    pub(super) fn open(&self, mut said: Verdict, fit: &Fit, named: bool) -> Verdict {
        if said.outcome == Outcome::Undecided && !named {
            said = said.then(
                NextStep::new(
                    "the fit that the maker of the part wants",
                    "no limit is published for this joint",
                    "part maker, frame maker",
                )
                .by(SettledBy::Written),
            );
        }
        if said.outcome == Outcome::Undecided
            || fit.cautions().contains(&crate::fit::Caution::ShapeAtLeast)
        {
            let unsure = [fit.hole().smallest, fit.shaft().largest]
                .into_iter()
                .any(|r| settled_cmp(r.expanded_uncertainty(), mm(0.008)).is_gt());
            if self.hold == Some(Hold::Press) && unsure {
                said = said.then(NextStep::new(
                    "the bore with a bore gauge and the outside with a micrometer, two axes at two depths",
                    "a caliper cannot settle a press fit, and one diameter says nothing of shape",
                    "bore gauge, outside micrometer",
                ));
            } else if said.findings.iter().any(|f| f.what() == DISAGREE) {
                said = said.then(NextStep::new(
                    "try the part by hand: it slides with a light drag and does not knock; or the clearance that its maker writes",
                    "the published windows disagree, and no reading changes that",
                    "the part itself",
                ).by(SettledBy::Trial));
            } else if said.outcome == Outcome::Undecided {
                said = said.then(NextStep::new(
                    "largest and smallest diameter of both members",
                    "the gap at its widest decides, and the maker's own limit",
                    "bore gauge, outside micrometer",
                ));
            }
        }
        if self.painted.contains(&true) {
            said.next.insert(
                0,
                NextStep::new(
                    "the same size on bare metal",
                    "a coating counts on both sides",
                    "remove the coating by hand first",
                ),
            );
        }
        said
    }
}
