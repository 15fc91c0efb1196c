//! The scripting contract: pinned answers, the reviewed list of questions, bad lines, fuzz, a shop's rows, threads.
#![cfg(all(feature = "std", feature = "json"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod fuzz;
#[path = "../guard_support/mod.rs"]
mod guard_support;
mod lines;
mod pinned;
mod process;
#[path = "../random/mod.rs"]
mod random;
mod readme;
mod rows;
mod schema;
mod values;

use framegauge::ask::{Context, answer_line};
use serde_json::Value;

const QUESTIONS: &str = include_str!("questions.jsonl");

/// The reply as JSON.
fn reply(line: &str) -> Value {
    let reply = answer_line(line, &Context::default());
    let json: Value = serde_json::from_str(&reply.json).expect("a reply is JSON");
    assert_eq!(reply.answered, json.get("answer").is_some());
    assert_eq!(reply.answered, json.get("error").is_none());
    json
}

/// The error of a line: kind and field.
fn refused(line: &str) -> (String, String) {
    let json = reply(line);
    let error = json
        .get("error")
        .unwrap_or_else(|| panic!("{line} was answered: {json}"));
    for part in ["kind", "field", "message", "remedy"] {
        assert!(
            !error[part].as_str().unwrap().is_empty(),
            "{line}: no {part}"
        );
    }
    (
        error["kind"].as_str().unwrap().into(),
        error["field"].as_str().unwrap().into(),
    )
}
