//! What can be said of a joint that was felt and not measured.

use alloc::vec::Vec;

use super::fit::{Asked, Felt};
use super::verdict::{NextStep, Verdict};
use super::{Finding, FitAsk, FitFact};
use crate::measure::Outcome;
use crate::standard::Hold;

impl Asked<'_> {
    pub(super) fn unmeasured(&self, hole_known: bool, shaft_known: bool) -> Verdict {
        let joint = self.joint;
        let mut findings: Vec<Finding> = self.question.felt.iter().map(|f| self.feel(*f)).collect();
        if findings.is_empty() {
            findings.push(Finding::of(FitFact::NotKnown { joint }));
        }
        if self.hold == Some(Hold::Slip) {
            findings.push(Finding::of(FitFact::SlipByDesign { joint }));
        }
        let mut said = Verdict::from_findings(joint.words(), findings);
        if !hole_known {
            said = said.then(NextStep::of(FitAsk::Bore));
        }
        if !shaft_known {
            said = said.then(NextStep::of(FitAsk::Outside));
        }
        said
    }

    /// A press fit that gives way is shown to hold nothing; of a slip fit a feel shows no size.
    fn feel(&self, felt: Felt) -> Finding {
        let press = self.hold == Some(Hold::Press);
        let outcome = if press && felt != Felt::NeedsForce {
            Outcome::NonconformityShown
        } else {
            Outcome::Undecided
        };
        let joint = self.joint;
        Finding::practice(outcome, FitFact::Felt { joint, felt, press })
    }
}
