//! Which way a thread loosens while several patterns are still possible.

use alloc::vec::Vec;

use super::threads::pattern_threads;
use super::verdict::{NextStep, Verdict};
use super::{ClaimAsk, ClaimFact, Finding};
use crate::Error;
use crate::measure::Outcome;
use crate::standard::Shell;
use crate::thread::Side;

/// Which way a side loosens when several patterns are still possible. If they disagree, nothing may be forced: the wrong way
/// tightens.
///
/// # Errors
/// `Missing` for an empty list or a row without a thread.
///
/// ```
/// use framegauge::{judge::loosening, measure::Outcome, standard::{Shell, find}, thread::Side};
/// let of = |code| find::<Shell>(code).unwrap();
/// let open = loosening(&[of("french"), of("swiss"), of("bsc")], Side::Drive).unwrap();
/// assert_eq!(open.outcome, Outcome::Undecided);
/// assert!(open.cautions[0].to_string().contains("no more torque"));
/// assert!(loosening(&[of("bsc"), of("swiss")], Side::Drive).unwrap().words().contains("clockwise"));
/// ```
pub fn loosening(possible: &[&Shell], side: Side) -> Result<Verdict, Error> {
    let mut turns = Vec::new();
    for shell in possible {
        if let Some(thread) = pattern_threads(shell)?.side(side) {
            turns.push((*shell, thread.hand));
        }
    }
    let Some((_, first)) = turns.first().copied() else {
        return Err(Error::new(
            crate::ErrorKind::Missing,
            "shells",
            "",
            "no pattern to choose from",
            "name at least one",
        ));
    };
    let alike = turns.iter().all(|(_, hand)| *hand == first);
    let findings = turns.into_iter().map(|(shell, hand)| {
        let pattern = shell.name.clone();
        let turns = Finding::of(ClaimFact::Turns {
            pattern,
            side,
            hand,
        });
        let figure = shell.hand_fact(side);
        Finding {
            outcome: alike.then_some(Outcome::ConformityShown),
            ..turns.resting_on(figure.and_then(|f| f.evidence()))
        }
    });
    let said = Verdict::from_findings("direction to loosen", findings.collect());
    if alike {
        return Ok(said);
    }
    let said = said.then(NextStep::of(ClaimAsk::OtherSide));
    let said = said.then(NextStep::of(ClaimAsk::PitchAndHand));
    Ok(said.minding(ClaimFact::NoMoreTorque))
}
