//! The numbers of a fit that was measured, and what they mean in words.

use super::fit::Asked;
use super::fit_measured::DISAGREE;
use super::verdict::{NOTHING, Verdict, Worked};
use crate::fit::Fit;
use crate::measure::{Outcome, settled_cmp};
use crate::standard::Hold;
use alloc::format;
use alloc::string::String;

impl Asked<'_> {
    pub(super) fn numbers(&self, said: Verdict, fit: &Fit) -> Verdict {
        let (tight, loose) = (fit.tightest().value(), fit.loosest().value());
        let mut said = if self.hold == Some(Hold::Press) {
            said.with(Worked::length(
                "interference",
                -fit.mean().value(),
                "mean shaft less mean hole",
            ))
            .with(Worked::length(
                "least interference",
                -loose,
                "smallest shaft less largest hole",
            ))
            .with(Worked::length(
                "greatest interference",
                -tight,
                "largest shaft less smallest hole",
            ))
        } else {
            said.with(Worked::length(
                "clearance",
                fit.mean().value(),
                "mean hole less mean shaft",
            ))
            .with(Worked::length(
                "least clearance",
                tight,
                "smallest hole less largest shaft",
            ))
            .with(Worked::length(
                "greatest clearance",
                loose,
                "largest hole less smallest shaft",
            ))
        };
        for member in [fit.hole(), fit.shaft()] {
            if let Some(off) = member.outside_by() {
                let what = format!("{} outside its limits by", member.feature);
                said = said.with(Worked::length(
                    what,
                    off,
                    "worst reading less the nearest limit",
                ));
            }
        }
        let beyond = said
            .findings
            .iter()
            .filter(|f| f.what() == self.joint.words())
            .filter_map(|f| {
                let limits = f.limits?;
                let low = limits.lower().known().map(|l| l + loose);
                let high = limits.upper().known().map(|h| -tight - h);
                (self.hold == Some(Hold::Press)).then(|| {
                    [low, high]
                        .into_iter()
                        .flatten()
                        .find(|by| settled_cmp(*by, NOTHING).is_gt())
                })?
            })
            .max_by(|a, b| settled_cmp(*a, *b));
        match beyond {
            Some(by) => said.with(Worked::length(
                "beyond the window by",
                by,
                "value less the limit",
            )),
            None => said,
        }
    }

    pub(super) fn meaning(&self, said: &Verdict, fit: &Fit, named: bool) -> String {
        let gap = settled_cmp(fit.tightest().value(), NOTHING).is_ge();
        match (self.hold, said.outcome) {
            (_, outcome) if self.painted.contains(&true) => String::from(match outcome {
                Outcome::NonconformityShown
                    if said.findings.iter().any(|f| {
                        f.outcome == Some(outcome) && f.what() != "hole" && f.what() != "shaft"
                    }) =>
                {
                    "; read over a coating, and bare metal would be looser still."
                }
                Outcome::NonconformityShown => {
                    "; a reading over a coating is not a reading on metal, so the fit is not judged before it is off; the bare part is out of its own limits."
                }
                _ => {
                    "; a reading over a coating is not a reading on metal, so no verdict before it is off."
                }
            }),
            (Some(Hold::Slip), Outcome::ConformityShown) => {
                String::from(": as a slip fit wants it.")
            }
            (Some(Hold::Slip), Outcome::NonconformityShown)
                if settled_cmp(fit.loosest().value(), NOTHING).is_lt() =>
            {
                String::from(": meant to slide in, and it is larger than the hole.")
            }
            (Some(Hold::Slip), Outcome::NonconformityShown) if !gap => String::from(
                ": meant to slide in, and at its tightest place it is larger than the hole.",
            ),
            (Some(Hold::Screw), _) => {
                String::from(": a screwed part is held by its thread, not by this fit.")
            }
            (Some(Hold::Slip), _) if !named => String::from(
                ": a slip fit by design, so having no interference is no fault; no limit is published for its gap.",
            ),
            (Some(Hold::Press), Outcome::ConformityShown) => {
                String::from(": as this press fit wants it.")
            }
            (_, Outcome::ConformityShown) => String::from(": as it is wanted."),
            (Some(Hold::Press), Outcome::NonconformityShown) if gap => {
                String::from(": it is meant to press and does not hold.")
            }
            (_, Outcome::NonconformityShown) => String::from(": out of what is allowed."),
            (_, Outcome::Undecided) if !named => String::from(
                ": how much is right nobody publishes for this joint; the maker of the part has to say.",
            ),
            (_, Outcome::Undecided) if said.findings.iter().any(|f| f.what() == DISAGREE) => {
                String::from(".")
            }
            (_, Outcome::Undecided) => {
                String::from(": too close to a limit for these readings to settle.")
            }
        }
    }
}
