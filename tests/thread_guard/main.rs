//! A guard against change, no evidence: what the thread room answers to a sweep of sizes, classes, pairs and findings, as it
//! was read through once and found in order. Where a figure should be is said by `thread`.
//!
//! `UPDATE_PINNED=1 cargo test --test thread_guard` rewrites the files: read the difference before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod answers;
#[path = "../committed/mod.rs"]
mod committed;
mod hands;
mod limits;
mod names;
mod pairs;
mod refused;
mod strength;
mod strength_refused;

use framegauge::thread::{Designation, ThreadSize};
use framegauge::{Error, Length, to_mm};

fn size(text: &str) -> ThreadSize {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

fn thread(text: &str) -> Designation {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

/// Millimetres to a hundredth of a micrometre, without a minus before nothing.
fn fine(length: Length) -> String {
    format!("{:.5}", to_mm(length) + 0.0)
}

fn number(value: f64) -> String {
    format!("{:.4}", value + 0.0)
}

/// A refusal: kind, field and value, then what is wrong and what to do.
fn refusal(error: &Error) -> String {
    format!(
        "{} / {} / {} / {} / {}",
        error.kind(),
        error.field(),
        error.value(),
        error.problem(),
        error.remedy()
    )
}

/// The file a topic is written to.
struct Page(String);

impl Page {
    fn new() -> Self {
        Self("# A guard against change, no evidence. Rewritten by UPDATE_PINNED=1.\n".into())
    }
    fn title(&mut self, words: &str) {
        self.0.push_str(&format!("\n== {words}\n"));
    }
    fn line(&mut self, words: &str) {
        self.0.push_str(words.trim_end());
        self.0.push('\n');
    }
    /// What was asked and the answer, or the refusal.
    fn said(&mut self, asked: &str, said: Result<String, Error>) {
        let answer = said.unwrap_or_else(|error| format!("REFUSED {}", refusal(&error)));
        self.line(&format!("{asked}: {answer}"));
    }
    /// Compares with the committed file, or rewrites it.
    fn check(self, name: &str) {
        committed::same_as_committed(&format!("thread_guard/{name}"), &self.0);
    }
}
