//! The log of real questions, answered: right, wrong, or undecidable by us and why.
//!
//! `cases`, or `cases A09 C08` for some of them with what the library says. Exit 0 when none is wrong.
#![allow(clippy::indexing_slicing)]

#[path = "support/cases/mod.rs"]
mod cases;
mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::{Error, ErrorKind};
use support::{Answer, Words, answer};

fn main() -> ExitCode {
    answer(|| {
        let words = Words::read(&[], &[])?;
        let mut text = String::new();
        let mut json = Vec::new();
        let mut counts = [0; 3];
        let all = cases::all();
        for wanted in words.plain() {
            if !all.iter().any(|(case, _)| case.id == *wanted) {
                return Err(Error::new(
                    ErrorKind::UnknownName,
                    "case",
                    wanted,
                    "no such case",
                    "leave it out for the whole table",
                ));
            }
        }
        for (case, runner) in all {
            if !words.plain().is_empty() && !words.plain().contains(&case.id) {
                continue;
            }
            let run = cases::run(runner);
            let result = run.result();
            counts[match result {
                "right" => 0,
                "wrong" => 1,
                _ => 2,
            }] += 1;
            let _ = writeln!(
                text,
                "{:<4} {:<5} {result:<11} {} | {}",
                case.id, case.tier, case.topic, case.expected_verdict
            );
            for (what, held) in &run.checks {
                if !held {
                    let _ = writeln!(text, "       wrong: {what}");
                }
            }
            if let Some(open) = run.open.first() {
                let _ = writeln!(text, "       open: {open}");
            }
            if let Some(differs) = run.log_differs {
                let _ = writeln!(text, "       the log differs: {differs}");
            }
            if !words.plain().is_empty() {
                for line in &run.says {
                    let _ = writeln!(text, "       {line}");
                }
            }
            json.push(serde_json::json!({ "case": case, "result": result, "run": run }));
        }
        let _ = writeln!(
            text,
            "{} right, {} wrong, {} undecidable by us as they stand",
            counts[0], counts[1], counts[2]
        );
        Ok(Answer::new(&json, text, counts[1] == 0))
    })
}
