//! Which way does it turn?
//!
//! `cargo run --example which_hand -- bsc drive`
//! `cargo run --example which_hand -- pedal --json`
//! Without a side both are shown.

mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::thread::{Side, Turning, hand_pattern, turning};
use framegauge::{Error, ErrorKind};
use serde::Serialize;
use support::{Answer, Words, answer};

#[derive(Serialize)]
struct Report {
    turns: Vec<Turn>,
}

#[derive(Serialize)]
struct Turn {
    #[serde(flatten)]
    turning: Turning,
    why: &'static str,
}

fn main() -> ExitCode {
    answer(run)
}

fn side(text: &str) -> Result<Side, Error> {
    match text {
        "drive" | "right" => Ok(Side::Drive),
        "non-drive" | "non_drive" | "left" => Ok(Side::NonDrive),
        other => Err(Error::new(
            ErrorKind::Text,
            "side",
            other,
            "no side of a bicycle",
            "drive or non-drive (the rider's right or left)",
        )),
    }
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&[], &[])?;
    let pattern = hand_pattern(words.at(0, "pattern", "bsc")?)?;
    let sides = match words.plain().get(1) {
        Some(word) => vec![side(word)?],
        None => [Side::Drive, Side::NonDrive]
            .into_iter()
            .filter(|side| pattern.hand(*side).is_some())
            .collect(),
    };
    let mut turns = Vec::new();
    for side in sides {
        let turning = turning(pattern, side)?;
        turns.push(Turn {
            turning,
            why: turning.reason.words(),
        });
    }
    let text = text(&turns);
    Ok(Answer::new(&Report { turns }, text, true))
}

fn text(turns: &[Turn]) -> String {
    let mut text = String::new();
    for turn in turns {
        let _ = writeln!(text, "{}", turn.turning);
        let _ = writeln!(text, "  Why: {}.", turn.why);
    }
    let _ = writeln!(
        text,
        "A tap marked L cuts a left-hand thread; the letter is never the side of the frame."
    );
    for turn in turns {
        let turning = turn.turning;
        let _ = write!(
            text,
            "How sure, {}: {}",
            turning.side.words(),
            turning.evidence.worth().words()
        );
        if !turning.evidence.note().is_empty() {
            let _ = write!(text, "; {}", turning.evidence.note());
        }
        if !turning.disputed.is_empty() {
            let _ = write!(text, "; another source {}", turning.disputed);
        }
        text.push_str(".\n");
    }
    text
}
