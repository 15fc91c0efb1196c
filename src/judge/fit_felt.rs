//! What can be said of a joint that was felt and not measured.

use super::Finding;
use super::fit::Asked;
use super::fit::Felt;
use super::verdict::{NextStep, Verdict};
use crate::evidence::Grade;
use crate::measure::Outcome;
use crate::standard::Hold;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

impl Asked<'_> {
    pub(super) fn unmeasured(&self, hole_known: bool, shaft_known: bool) -> Verdict {
        let place = self.joint.words();
        let mut findings: Vec<Finding> = self.felt.iter().map(|f| self.feel(*f)).collect();
        let mut shared = None;
        for felt in self.felt {
            match felt {
                Felt::HoleLooseWithSeveral => {
                    shared =
                        Some("the hole is the common one, so likely worn, stretched or over-cut")
                }
                Felt::ShaftLooseInSeveral => {
                    shared = Some("the inner part is the common one, so likely undersize or worn")
                }
                _ => {}
            }
        }
        if findings.is_empty() {
            findings.push(Finding::stated(place, "neither felt nor measured"));
        }
        let mut said = Verdict::from_findings(place, findings);
        let mut sentence = match (self.hold, said.outcome) {
            (Some(Hold::Slip), Outcome::Undecided) => String::from(
                "A slip fit by design: going in by hand is no fault; only its gap against the maker's limit can tell, and none is published here.",
            ),
            (_, Outcome::NonconformityShown) => {
                String::from("It is meant to press and does not hold: no interference is left.")
            }
            _ => String::from("Nothing is shown without the two diameters."),
        };
        if let Some(which) = shared {
            sentence.push_str(&format!(
                " Of the two members {which}; both readings are still needed."
            ));
        }
        if !hole_known {
            said = said.then(NextStep::new(
                "largest and smallest bore, two axes at two depths",
                "the gap decides which cure is open",
                "bore gauge, or telescoping gauge and micrometer",
            ));
        }
        if !shaft_known {
            said = said.then(NextStep::new(
                "outside diameter of the inner part, two axes",
                "tells which of the two is out",
                "outside micrometer",
            ));
        }
        said.saying(sentence)
    }

    pub(super) fn feel(&self, felt: Felt) -> Finding {
        let press = self.hold == Some(Hold::Press);
        let (outcome, words) = match felt {
            Felt::GoesByHand if press => (
                Outcome::NonconformityShown,
                "goes by hand where it must be pressed: no interference",
            ),
            Felt::GoesByHand => (
                Outcome::Undecided,
                "goes by hand, as a slip fit does by design",
            ),
            Felt::Rocks if press => (
                Outcome::NonconformityShown,
                "rocks where it must be pressed",
            ),
            Felt::Rocks => (
                Outcome::Undecided,
                "rocks: more gap than it should have, or a worn bearing; measure before naming it",
            ),
            Felt::TurnedInUse if press => (
                Outcome::NonconformityShown,
                "turned on its seat in use: proof that it slips",
            ),
            Felt::TurnedInUse => (
                Outcome::Undecided,
                "turned in use: creep of a slip fit, a cause to look for",
            ),
            Felt::NeedsForce if press => (
                Outcome::Undecided,
                "needs force, as a press fit does; how much it presses is not felt",
            ),
            Felt::NeedsForce => (
                Outcome::Undecided,
                "needs force where it should slide: dirt, burr, paint, shape or size",
            ),
            Felt::HoleLooseWithSeveral | Felt::ShaftLooseInSeveral if press => (
                Outcome::NonconformityShown,
                "loose with more than one counterpart: no interference",
            ),
            Felt::HoleLooseWithSeveral | Felt::ShaftLooseInSeveral => {
                (Outcome::Undecided, "loose with more than one counterpart")
            }
        };
        Finding {
            outcome: Some(outcome),
            grade: Some(Grade::CommonPractice),
            owner: String::from("by design of the joint"),
            ..Finding::stated(self.joint.words(), words)
        }
    }
}
