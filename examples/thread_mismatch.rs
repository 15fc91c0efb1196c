//! Does this go into that?
//!
//! `cargo run --example thread_mismatch -- "M35x1" "1.370 in x 24 tpi BSC LH"`
//! `cargo run --example thread_mismatch -- M10x1 "10 mm x 26 tpi" --clearance "0.15 mm" --json`

mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::thread::{Designation, Mates, Mismatch, VISIBLE_DRIFT, mismatch};
use framegauge::{Error, in_mm, parse_length};
use serde::Serialize;
use support::{Answer, Words, answer};

#[derive(Serialize)]
struct Report {
    first: Designation,
    second: Designation,
    #[serde(flatten)]
    mismatch: Mismatch,
    threads_under_a_leaf: Option<u32>,
    turns_at_this_clearance: Option<f64>,
}

fn main() -> ExitCode {
    answer(run)
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["clearance"], &[])?;
    let first: Designation = words.at(0, "first thread", "M35x1")?.parse()?;
    let second: Designation = words
        .at(1, "second thread", "\"1.370 in x 24 tpi BSC\"")?
        .parse()?;
    let result = mismatch(&first, &second);
    let turns_at_this_clearance = match words.named("clearance") {
        Some(text) => result
            .drift
            .turns_until_binding(parse_length(text)?, first.size.form())?,
        None => None,
    };
    let report = Report {
        first,
        second,
        mismatch: result,
        threads_under_a_leaf: result.drift.threads_under_leaf(VISIBLE_DRIFT)?,
        turns_at_this_clearance: turns_at_this_clearance.map(|t| (t * 100.0).round() / 100.0),
    };
    let text = text(&report);
    Ok(Answer::new(&report, text, result.mates == Mates::Yes))
}

fn text(report: &Report) -> String {
    let mut text = format!(
        "{} against {}: {}.\n",
        report.first, report.second, report.mismatch
    );
    if let Some(threads) = report.threads_under_a_leaf {
        let _ = writeln!(
            text,
            "To see it: lay a pitch leaf over {threads} threads or more; the drift is then {} or more.",
            in_mm(VISIBLE_DRIFT)
        );
    }
    if let Some(turns) = report.turns_at_this_clearance {
        let _ = writeln!(
            text,
            "With that much play it binds after about {turns:.1} turns."
        );
    }
    if report.mismatch.mates == Mates::No {
        text.push_str("Do not force it: a crossed thread does not come back.\n");
    }
    text
}
