//! A guard against change, no evidence: what the face room answers to invented, lopsided surveys, as it was read through
//! once and found in order. Where a figure should be is said by `face_planes`, `face_oracle` and `face_survey`.
//!
//! `UPDATE_PINNED=1 cargo test --test face_guard` rewrites the files: read the difference before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "../guard_support/mod.rs"]
mod guard_support;

mod bores;
mod pads;
mod pictures;
mod planes;
mod rings;
mod shares;

use framegauge::face::*;
use framegauge::measure::{DecisionRule, Limits, Reading};
use framegauge::say::Sight;
use framegauge::{Grade, Length, Radius, deg, mm, to_mm};
use guard_support::{Page, bare, flat};

fn radius(v: f64) -> Radius {
    Radius::new(mm(v)).unwrap()
}

fn clock(v: f64) -> Clock {
    Clock::new(deg(v)).unwrap()
}

fn read(v: f64, u: f64) -> Reading {
    Reading::new(mm(v), mm(u)).unwrap()
}

fn point(x: f64, y: f64, z: f64) -> Point {
    Point::new(mm(x), mm(y), mm(z)).unwrap()
}

/// A probe: angle in degrees, radius, height, standard uncertainty.
fn probe((angle, r, z, u): (f64, f64, f64, f64)) -> Probe {
    Probe {
        at: clock(angle),
        radius: radius(r),
        height: read(z, u),
    }
}

fn face() -> Annulus {
    Annulus::new(radius(17.3), radius(20.9)).unwrap()
}

fn ring(probes: &[(f64, f64, f64, f64)]) -> RingSurvey {
    let probes: Vec<Probe> = probes.iter().copied().map(probe).collect();
    RingSurvey::new(face(), "through bar", probes).unwrap()
}

fn limit(kind: LimitKind, what: &'static str, off: f64, u: f64) -> CutLimit {
    CutLimit::new(kind, what, read(off, u), Grade::Shop).unwrap()
}

fn rounded(length: Length) -> String {
    format!("{:.6}", to_mm(length) + 0.0)
}
