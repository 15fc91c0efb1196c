//! Threads of an interface: hole against part, side by side; holes before tapping; which way to loosen; gauges.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NextStep, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::Outcome;
use crate::quantity::{in_mm, to_mm};
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
    let mut said =
        Verdict::from_findings(format!("{part} in {hole}"), grounds("", hole, part, &found))
            .saying(words(&found));
    said = numbers(said, "", &found);
    if found.mates == Mates::CannotTell {
        said = said.then(NextStep::new(
            "pitch diameter",
            "the form of one thread is not known",
            "three wires and a micrometer",
        ));
    }
    if found.mates == Mates::No {
        said = said.minding(
            "do not force it: a crossed thread does not come back, and is then spoilt, not fitting",
        );
    }
    said
}

/// A part with two threaded sides in a shell, each side by itself.
///
/// ```
/// use framegauge::{judge::shell_and_part, measure::Outcome, thread::{ShellThreads, hand_pattern}};
/// let french = ShellThreads::of_pattern("M35x1".parse().unwrap(), hand_pattern("french").unwrap());
/// let english = ShellThreads::of_pattern("1.370 in x 24 tpi BSC".parse().unwrap(), hand_pattern("bsc").unwrap());
/// let said = shell_and_part(&french, &english);
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert!(said.findings.iter().any(|f| f.what() == "drive side, hand"));
/// assert!(!said.findings.iter().any(|f| f.what() == "non-drive side, hand")); // right-hand in both
/// ```
#[must_use]
pub fn shell_and_part(shell: &ShellThreads, part: &ShellThreads) -> Verdict {
    let mut findings = Vec::new();
    let mut said_of = Vec::new();
    let mut compared_sides = Vec::new();
    for side in [Side::Drive, Side::NonDrive] {
        let label = side_words(side);
        match (shell.side(side), part.side(side)) {
            (Some(hole), Some(cup)) => {
                let found = mismatch(&hole, &cup);
                findings.extend(grounds(label, &hole, &cup, &found));
                said_of.push(format!(
                    "{}: {}",
                    super::words::capital(label),
                    words(&found)
                ));
                compared_sides.push((label, found));
            }
            (None, None) => {}
            _ => {
                let words = "one has a thread here, the other has none";
                said_of.push(format!("{}: {words}.", super::words::capital(label)));
                findings.push(Finding {
                    outcome: Some(Outcome::NonconformityShown),
                    grade: Some(Grade::CommonPractice),
                    ..Finding::stated(format!("{label}, thread"), words)
                });
            }
        }
    }
    let compared = shell.against(part);
    let mut sentence = said_of.join(" ");
    if compared.swapped {
        sentence.push_str(
            " The hands are swapped: the shell sits back to front, or the part is turned round.",
        );
        findings.push(Finding {
            outcome: Some(Outcome::NonconformityShown),
            grade: Some(Grade::CommonPractice),
            ..Finding::stated("hands", "both sides have the right thread of the wrong hand: swapped; reject before assembly")
        });
    }
    let mut said = Verdict::from_findings("part in shell", findings).saying(sentence);
    for (label, found) in &compared_sides {
        said = numbers(said, label, found);
    }
    if shell.is_hybrid() {
        said = said.minding("a hybrid shell: each side needs its own cup; write both threads and both hands on the frame");
    }
    if said.outcome == Outcome::Undecided {
        said = said.then(NextStep::new(
            "pitch diameter of the thread whose form is not known",
            "nothing stands against it, nothing proves it",
            "three wires and a micrometer",
        ));
    }
    said
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
    let meant = pattern_threads(pattern)?;
    let mut said = shell_and_part(found, &meant);
    said.place = format!("shell as {}", pattern.name);
    for fact in [pattern.hand_drive.as_ref(), pattern.hand_non_drive.as_ref()]
        .into_iter()
        .flatten()
    {
        if let Some(evidence) = fact.evidence() {
            said.weakest = Some(
                said.weakest
                    .map_or(evidence.worth(), |w| w.weaker(evidence.worth())),
            );
        }
    }
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

pub(crate) const fn side_words(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive side",
        Side::NonDrive => "non-drive side",
    }
}

fn words(found: &Mismatch) -> String {
    let mut text = super::words::capital(&found.to_string());
    text.push('.');
    text
}

/// One finding a ground.
fn grounds(label: &str, hole: &Designation, part: &Designation, found: &Mismatch) -> Vec<Finding> {
    let name = |what: &str| {
        if label.is_empty() {
            String::from(what)
        } else {
            format!("{label}, {what}")
        }
    };
    let basic = |outcome: Outcome, what: &str, words: String| Finding {
        outcome: Some(outcome),
        grade: Some(Grade::Derived),
        owner: String::from("basic sizes of both threads"),
        ..Finding::stated(name(what), words)
    };
    let mut out = Vec::new();
    if found.grounds.diameter {
        out.push(basic(Outcome::NonconformityShown, "diameter", format!("{} against {}: pitch diameters {} apart, allowance {}; equal-looking crests prove nothing", in_mm(hole.size.major()), in_mm(part.size.major()), in_mm(found.apart_min), in_mm(found.allowance))));
    }
    if found.grounds.pitch {
        out.push(basic(
            Outcome::NonconformityShown,
            "pitch",
            format!(
                "{} against {}: {} a turn, {:.2} mm over ten",
                hole.size.pitch(),
                part.size.pitch(),
                in_mm(found.drift.per_turn),
                to_mm(found.drift.per_turn) * 10.0
            ),
        ));
    }
    if found.grounds.form {
        out.push(basic(
            Outcome::NonconformityShown,
            "flank angle",
            String::from("the flanks meet on a line, not on a face"),
        ));
    }
    if found.grounds.hand {
        out.push(basic(
            Outcome::NonconformityShown,
            "hand",
            format!(
                "{}-hand hole, {}-hand part: it only starts by cutting its own way",
                hole.hand, part.hand
            ),
        ));
    }
    if out.is_empty() {
        let (outcome, text) = match found.mates {
            Mates::CannotTell => (Outcome::Undecided, "the form of one thread is not known"),
            _ => (Outcome::ConformityShown, "same pitch, hand and form"),
        };
        out.push(basic(outcome, "thread", String::from(text)));
    }
    out
}

fn numbers(said: Verdict, label: &str, found: &Mismatch) -> Verdict {
    let name = |what: &str| {
        if label.is_empty() {
            String::from(what)
        } else {
            format!("{label}, {what}")
        }
    };
    let mut said = said
        .with(Worked::length(
            name("pitch diameters apart"),
            found.apart_min,
            "difference of the basic pitch diameters",
        ))
        .with(Worked::length(
            name("drift a turn"),
            found.drift.per_turn,
            "difference of the pitches",
        ));
    if let Some(turns) = found.turns_until_binding {
        said = said.with(Worked::plain(
            name("turns until binding"),
            turns,
            "slack in the pitch diameter / (drift x cotangent of half the flank angle)",
        ));
    }
    if let Some(turns) = found.drift.turns_to_half_pitch() {
        said = said.with(Worked::plain(
            name("turns to half a pitch"),
            turns,
            "half the finer pitch / drift",
        ));
    }
    said
}
