//! Threads of an interface: hole against part, side by side.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked};
use super::{Finding, ThreadAsk, ThreadFact};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::Outcome;
use crate::standard::Shell;
use crate::thread::{Designation, Mates, Mismatch, ShellThreads, Side, mismatch};

/// A part with this thread in a hole with that one.
///
/// ```
/// use framegauge::{judge::thread_pair, measure::Outcome};
/// let said = thread_pair(&"M35x1".parse().unwrap(), &"1.370 in x 24 tpi BSC LH".parse().unwrap());
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.findings.len(), 3); // diameter, pitch and hand, each a ground by itself
/// ```
#[must_use]
pub fn thread_pair(hole: &Designation, part: &Designation) -> Verdict {
    let found = mismatch(hole, part);
    let findings = grounds(None, hole, part, &found);
    let mut said = Verdict::from_findings(format!("{part} in {hole}"), findings);
    said.worked = numbers(None, &found);
    if found.mates == Mates::No {
        said = said.minding(ThreadFact::DoNotForce);
    }
    open(said)
}

/// A part with two threaded sides in a shell, each side by itself.
///
/// ```
/// use framegauge::{judge::{Fact, ThreadFact, shell_and_part}, measure::Outcome, thread::{ShellThreads, Side, hand_pattern}};
/// let french = ShellThreads::of_pattern("M35x1".parse().unwrap(), hand_pattern("french").unwrap());
/// let english = ShellThreads::of_pattern("1.370 in x 24 tpi BSC".parse().unwrap(), hand_pattern("bsc").unwrap());
/// let said = shell_and_part(&french, &english);
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// let by_hand = |f: &framegauge::judge::Finding| match f.fact { Fact::Thread(ThreadFact::Hands { on, .. }) => on, _ => None };
/// let sides: Vec<Side> = said.findings.iter().filter_map(by_hand).collect();
/// assert_eq!(sides, [Side::Drive]); // the other side is right-hand in both
/// ```
#[must_use]
pub fn shell_and_part(shell: &ShellThreads, part: &ShellThreads) -> Verdict {
    let mut findings = Vec::new();
    let mut worked = Vec::new();
    for on in [Side::Drive, Side::NonDrive] {
        match (shell.side(on), part.side(on)) {
            (Some(hole), Some(cup)) => {
                let found = mismatch(&hole, &cup);
                findings.extend(grounds(Some(on), &hole, &cup, &found));
                worked.extend(numbers(Some(on), &found));
            }
            (None, None) => {}
            _ => findings.push(out(ThreadFact::OneThreaded { on })),
        }
    }
    if shell.against(part).swapped {
        findings.push(out(ThreadFact::HandsSwapped));
    }
    let mut said = Verdict::from_findings("part in shell", findings);
    said.worked = worked;
    if shell.is_hybrid() {
        said = said.minding(ThreadFact::Hybrid);
    }
    open(said)
}

/// Out by a rule of the trade.
fn out(fact: ThreadFact) -> Finding {
    Finding::practice(Outcome::NonconformityShown, fact)
}

/// Where nothing stands against it and nothing proves it, the form of a thread is not known.
fn open(said: Verdict) -> Verdict {
    if said.outcome == Outcome::Undecided {
        said.then(NextStep::of(ThreadAsk::PitchDiameter))
    } else {
        said
    }
}

/// A shell held against the pattern it is believed to be, before it is brazed in or before assembly: hands and sizes per side.
///
/// # Errors
/// `Missing` when the row has no thread or no hands.
///
/// ```
/// use framegauge::{judge::{pattern_threads, shell_orientation}, measure::Outcome, standard::{Shell, find}};
/// let bsc = find::<Shell>("bsc").unwrap();
/// let turned = pattern_threads(bsc).unwrap().back_to_front();
/// let said = shell_orientation(&turned, bsc).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert!(said.words().contains("swapped"));
/// ```
pub fn shell_orientation(found: &ShellThreads, pattern: &Shell) -> Result<Verdict, Error> {
    let mut said = shell_and_part(found, &pattern_threads(pattern)?);
    said.place = format!("shell as {}", pattern.name);
    let hands = [&pattern.hand_drive, &pattern.hand_non_drive];
    let worth = hands.into_iter().flatten().filter_map(|f| f.evidence());
    said.weakest = worth.map(|e| e.worth()).chain(said.weakest).min();
    Ok(said)
}

/// The threads that a listed shell has, side by side.
///
/// # Errors
/// `Missing` when the row has no thread or no known hand.
///
/// ```
/// use framegauge::{judge::pattern_threads, standard::{Shell, find}, thread::Hand};
/// assert_eq!(pattern_threads(find::<Shell>("italian").unwrap()).unwrap().drive.unwrap().hand, Hand::Right);
/// assert!(pattern_threads(find::<Shell>("bb30").unwrap()).is_err());
/// ```
pub fn pattern_threads(shell: &Shell) -> Result<ShellThreads, Error> {
    let size = shell.thread.as_ref().and_then(|t| t.value()).copied();
    let side = |side: Side| Some(Designation::new(size?).with_hand(shell.hand(side)?));
    let threads = ShellThreads {
        drive: side(Side::Drive),
        non_drive: side(Side::NonDrive),
    };
    if threads.drive.is_none() || threads.non_drive.is_none() {
        return Err(Error::new(
            crate::ErrorKind::Missing,
            "shell",
            shell.code.clone(),
            "no thread or no hands are known for it",
            "name a threaded shell",
        ));
    }
    Ok(threads)
}

/// One finding a ground.
fn grounds(
    on: Option<Side>,
    hole: &Designation,
    part: &Designation,
    found: &Mismatch,
) -> Vec<Finding> {
    let stands = found.grounds;
    let diameter = stands.diameter.then(|| ThreadFact::Diameter {
        on,
        hole: hole.size.major(),
        part: part.size.major(),
        apart: found.apart_min,
        allowed: found.allowance,
    });
    let pitch = stands.pitch.then(|| ThreadFact::Pitch {
        on,
        hole: hole.size.pitch(),
        part: part.size.pitch(),
        a_turn: found.drift.per_turn,
    });
    let form = stands.form.then_some(ThreadFact::FlankAngle { on });
    let hands = stands.hand.then_some(ThreadFact::Hands {
        on,
        hole: hole.hand,
        part: part.hand,
    });
    let (outcome, none) = match found.mates {
        Mates::Yes => (Outcome::ConformityShown, Some(ThreadFact::Alike { on })),
        Mates::No => (Outcome::NonconformityShown, None),
        Mates::CannotTell => (Outcome::Undecided, Some(ThreadFact::FormNotKnown { on })),
    };
    let facts = [diameter, pitch, form, hands, none];
    let held = facts.into_iter().flatten().map(|fact| Finding {
        outcome: Some(outcome),
        grade: Some(Grade::Derived),
        owner: String::from("basic sizes"),
        ..Finding::of(fact)
    });
    held.collect()
}

fn numbers(on: Option<Side>, found: &Mismatch) -> Vec<Worked> {
    let name = |what: &str| match on {
        Some(side) => format!("{}, {what}", side.words()),
        None => String::from(what),
    };
    let apart = name("pitch diameters apart");
    let (drift, half) = (found.drift, found.drift.turns_to_half_pitch());
    let half = half.map(|turns| Worked::plain(name("half-pitch turns"), turns, "half / drift"));
    let bound = found.turns_until_binding;
    let bound =
        bound.map(|turns| Worked::plain(name("turns until binding"), turns, "slack / drift"));
    let lengths = [
        Worked::length(apart, found.apart_min, "basic pitch diameters"),
        Worked::length(
            name("drift a turn"),
            drift.per_turn,
            "difference of pitches",
        ),
    ];
    lengths.into_iter().chain(bound).chain(half).collect()
}
