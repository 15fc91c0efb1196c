//! Which member is off, what would cure it, and what to measure next.

use super::Joint;
use super::mating::FitQuestion;
use super::verdict::{NextStep, Verdict, Worked};
use crate::fit::{Fit, MemberFinding};
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{in_mm, mm, settled_mm};
use crate::standard::{Hold, Row, Seatpost};
use alloc::format;
use alloc::string::String;

impl FitQuestion {
    /// Which member is off the size that both are sold as.
    pub(super) fn blame(&self, mut said: Verdict, fit: &Fit, sentence: &mut String) -> Verdict {
        let Some(nominal) = self.nominal else {
            return said;
        };
        let step = mm(0.1);
        let off = |m: &MemberFinding, reading: Reading| {
            let by = reading.value() - nominal;
            let sure = by.abs() - reading.expanded_uncertainty();
            m.measured
                .then_some(by)
                .filter(|_| settled_cmp(sure, step).is_gt())
        };
        let (hole, shaft) = (
            off(fit.hole(), fit.hole().smallest),
            off(fit.shaft(), fit.shaft().largest),
        );
        for (what, by) in [
            ("hole off the size it is sold as", hole),
            ("inner part off the size it is sold as", shaft),
        ] {
            if let Some(by) = by {
                said = said.with(Worked::length(what, by, "reading less the size sold"));
            }
        }
        let which = match (hole, shaft) {
            (Some(_), Some(_)) => "both members are off",
            (Some(_), None) => "the hole is off",
            (None, Some(_)) => "the inner part is off",
            (None, None) => return said,
        };
        sentence.push_str(&format!(" Against {} as sold, {which}.", in_mm(nominal)));
        said
    }

    /// A post that is too loose: the next size of the series, or a shim for this one.
    pub(super) fn fill_the_gap(
        &self,
        mut said: Verdict,
        fit: &Fit,
        sentence: &mut String,
    ) -> Verdict {
        let gap = fit.tightest().value();
        if self.joint == Joint::Seatpost && said.outcome == Outcome::NonconformityShown {
            said = said.with(Worked::length(
                "shim wall",
                gap / 2.0,
                "half the gap on diameter",
            ));
            let fits = fit.hole().smallest;
            let largest = Seatpost::table()
                .iter()
                .filter_map(|p| p.diameter.nominal())
                .filter(|d| settled_cmp(*d, fits.value() + fits.expanded_uncertainty()).is_le())
                .max_by(|a, b| settled_cmp(*a, *b));
            if let Some(size) = largest
                && settled_cmp(
                    size,
                    fit.shaft().largest.value() + fit.shaft().largest.expanded_uncertainty(),
                )
                .is_gt()
            {
                sentence.push_str(&format!(
                    " Try a post of {:.1} mm first, which leaves {} by its nominal size.",
                    settled_mm(size),
                    in_mm(fits.value() - size)
                ));
                said = said
                    .with(Worked::length(
                        "post size to try first",
                        size,
                        "largest size of the series that the smallest bore admits",
                    ))
                    .with(Worked::length(
                        "clearance with that post",
                        fits.value() - size,
                        "smallest bore less its nominal size",
                    ));
            }
            sentence.push_str(&format!(
                " For the present post a shim has a wall of {}: half the gap.",
                in_mm(gap / 2.0)
            ));
        }
        said
    }

    /// The next measurement.
    pub(super) fn open(&self, mut said: Verdict, fit: &Fit, named: bool) -> Verdict {
        if said.outcome == Outcome::Undecided && !named {
            said = said.then(NextStep::new(
                "the fit that the maker of the part wants",
                "no limit is published for this joint",
                "part maker, frame maker",
            ));
        }
        if said.outcome == Outcome::Undecided
            || fit.cautions().contains(&crate::fit::Caution::ShapeAtLeast)
        {
            let unsure = [fit.hole().smallest, fit.shaft().largest]
                .into_iter()
                .any(|r| settled_cmp(r.expanded_uncertainty(), mm(0.008)).is_gt());
            if self.hold == Hold::Press && unsure {
                said = said.then(NextStep::new(
                    "the bore with a bore gauge and the outside with a micrometer, two axes at two depths",
                    "a caliper cannot settle a press fit, and one diameter says nothing of shape",
                    "bore gauge, outside micrometer",
                ));
            } else if said.outcome == Outcome::Undecided {
                said = said.then(NextStep::new(
                    "largest and smallest diameter of both members",
                    "the gap at its widest decides, and the maker's own limit",
                    "bore gauge, outside micrometer",
                ));
            }
        }
        if self.coated.contains(&true) {
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
