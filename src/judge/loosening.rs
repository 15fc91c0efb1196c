//! Which way a thread loosens while several patterns are still possible.

use super::Finding;
use super::threads::{pattern_threads, side_words};
use super::verdict::{NextStep, Verdict};
use crate::Error;
use crate::measure::Outcome;
use crate::standard::Shell;
use crate::thread::Side;
use alloc::format;
use alloc::string::ToString;
use alloc::vec::Vec;

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
/// assert!(open.cautions[0].contains("no more torque"));
/// assert!(loosening(&[of("bsc"), of("swiss")], Side::Drive).unwrap().words().contains("clockwise"));
/// ```
pub fn loosening(possible: &[&Shell], side: Side) -> Result<Verdict, Error> {
    let mut turns = Vec::new();
    let mut findings = Vec::new();
    for shell in possible {
        let threads = pattern_threads(shell)?;
        let Some(thread) = threads.side(side) else {
            continue;
        };
        turns.push(thread.hand);
        findings.push(
            Finding::stated(
                shell.name.to_string(),
                format!("{}-hand: loosens {}", thread.hand, thread.hand.loosen()),
            )
            .resting_on(shell.hand_fact(side).and_then(|f| f.evidence())),
        );
    }
    let Some(first) = turns.first().copied() else {
        return Err(Error::new(
            crate::ErrorKind::Missing,
            "shells",
            "",
            "no pattern to choose from",
            "name at least one",
        ));
    };
    let label = side_words(side);
    if turns.iter().all(|h| *h == first) {
        findings = findings
            .into_iter()
            .map(|f| Finding {
                outcome: Some(Outcome::ConformityShown),
                ..f
            })
            .collect();
        return Ok(
            Verdict::from_findings("direction to loosen", findings).saying(format!(
                "{}: every pattern that is possible loosens {}, seen facing that side.",
                super::words::capital(label),
                first.loosen()
            )),
        );
    }
    Ok(Verdict::from_findings("direction to loosen", findings)
        .saying(format!("{}: cannot tell the hand yet; the patterns that are possible turn opposite ways.", super::words::capital(label)))
        .then(NextStep::new("a known cup tried in the other side, once it is out", "an English cup rattles in a French shell, and a French cup does not enter an English one", "known cups"))
        .then(NextStep::new("pitch and hand of the thread where it shows", "flats, labels and the country only make one more likely", "leaf, lamp"))
        .minding("no more torque until the hand is known: the wrong way tightens it and tears the shell"))
}
