//! Is a bore deep enough for the part that is pressed into it?
//!
//! `depth_check --bore "9.0 +/- 0.1 mm" --cup "12.0 +/- 0.1 mm"`, with `--margin "0.5 mm"` for the room wanted below the part.

#[path = "support/members.rs"]
mod members;
mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::fit::room_below;
use framegauge::measure::{Limits, Outcome, Reading};
use framegauge::{Error, ErrorKind, Grade, in_mm, parse_length};
use support::{Answer, Words, answer};

fn reading(words: &Words, name: &'static str) -> Result<Reading, Error> {
    let text = words.named(name).ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            name,
            "",
            "is needed",
            format!("write `--{name} \"12.0 +/- 0.1 mm\"`"),
        )
    })?;
    text.parse::<Reading>().map_err(|e| e.within(name))
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["bore", "cup", "margin", "rule"], &[])?;
    let margin =
        parse_length(words.named("margin").unwrap_or("0 mm")).map_err(|e| e.within("margin"))?;
    let wanted = Limits::at_least(margin, Grade::Shop)?;
    let room = room_below(
        &reading(&words, "bore")?,
        &reading(&words, "cup")?,
        wanted,
        members::rule(words.named("rule"))?,
    )?;
    let mut text = String::new();
    let left = room.length.value();
    let _ = match room.decision.outcome {
        Outcome::ConformityShown => {
            writeln!(text, "Deep enough: {} left below the part.", in_mm(left))
        }
        Outcome::NonconformityShown if left.value < 0.0 => {
            writeln!(text, "Too shallow: the part stops {} proud.", in_mm(-left))
        }
        Outcome::NonconformityShown => writeln!(
            text,
            "Too shallow: {} left where {} is wanted.",
            in_mm(left),
            in_mm(margin)
        ),
        Outcome::Undecided => writeln!(
            text,
            "Undecided: {} left, known to ± {}. Measure the depth more finely.",
            in_mm(left),
            in_mm(room.length.expanded_uncertainty())
        ),
    };
    if room.decision.outcome == Outcome::NonconformityShown {
        text.push_str("Bore deeper only if the frame maker's limits leave the wall for it.\n");
    }
    Ok(Answer::new(
        &room,
        text,
        room.decision.outcome == Outcome::ConformityShown,
    ))
}

fn main() -> ExitCode {
    answer(run)
}
