//! A guard against change, no evidence: what the thread room answers to a sweep of sizes, classes, pairs and findings, as it
//! was found in order when it was written. Where a figure should be is said by `thread`.
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
#[path = "../guard_support/mod.rs"]
mod guard_support;
mod hands;
mod limits;
mod names;
mod pairs;
mod refused;
mod strength;
mod strength_refused;

use framegauge::thread::{Designation, ThreadSize};
use framegauge::{Error, Length, to_mm};
use guard_support::{Page, refused as refusal};

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

/// What was asked and the answer, or the refusal.
fn answered(page: &mut Page, asked: &str, said: Result<String, Error>) {
    let answer = said.unwrap_or_else(|error| format!("REFUSED {}", refusal(&error)));
    page.line(&format!("{asked}: {answer}"));
}
