//! A guard against change, no evidence: fits, presses, clamps, decisions and budgets of invented parts, as they were read
//! through once. Where a figure should be is said by `fit_iso286`, `fit_press`, `fit_lengths`, `fit_between` and
//! `face_measure`.
//!
//! `UPDATE_PINNED=1 cargo test --test fit_guard` rewrites the files: read the difference before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "../guard_support/mod.rs"]
mod guard_support;

mod edges;
mod fits;
mod measures;
mod presses;

use framegauge::fit::*;
use framegauge::measure::{Bound, DecisionRule, Limits, Reading};
use framegauge::{Grade, Length, deg, mm, to_mm, um};
use guard_support::{Page, bare, flat, refused};

fn read(v: f64, u: f64) -> Reading {
    Reading::new(mm(v), mm(u)).unwrap()
}

fn between(low: f64, high: f64) -> Limits {
    Limits::between(mm(low), mm(high), Grade::Published).unwrap()
}

fn json(value: impl serde::Serialize) -> String {
    flat(&bare(serde_json::to_value(value).unwrap()))
}

fn in_um(length: Length) -> String {
    format!("{:.3} um", to_mm(length) * 1e3 + 0.0)
}
