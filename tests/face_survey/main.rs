//! Surveys, facing decisions, comparisons, bores: against tables, closed forms and brute force.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod bores;
mod compare;
mod decide;
mod edges;
mod few;
mod nothing;
mod pads;
mod refuse;
mod warnings;

use framegauge::face::*;
use framegauge::measure::{DecisionRule, Limits, Outcome, Reading, Why};
use framegauge::say::Sight;
use framegauge::{Clearance, ErrorKind, Grade, Length, Radius, deg, in_mm, mm, to_mm};

fn radius(v: f64) -> Radius {
    Radius::new(mm(v)).unwrap()
}

fn clock(v: f64) -> Clock {
    Clock::new(deg(v)).unwrap()
}

fn probe(angle: f64, r: f64, z: f64) -> Probe {
    Probe {
        at: clock(angle),
        radius: radius(r),
        height: Reading::new(mm(z), mm(0.004)).unwrap(),
    }
}

fn face() -> Annulus {
    Annulus::new(radius(17.0), radius(20.0)).unwrap()
}

/// Evenly spaced heights from a function of the clock angle in radians.
fn ring_of(k: u32, r: f64, z: impl Fn(f64) -> f64) -> Vec<Probe> {
    (0..k)
        .map(|i| 360.0 * f64::from(i) / f64::from(k))
        .map(|a| probe(a, r, z(a.to_radians())))
        .collect()
}

fn survey(probes: Vec<Probe>) -> RingSurvey {
    RingSurvey::new(face(), "shell thread", probes).unwrap()
}

fn rows(file: &str) -> Vec<csv::StringRecord> {
    let path = format!("{}/tests/published/{file}", env!("CARGO_MANIFEST_DIR"));
    csv::Reader::from_path(path)
        .unwrap()
        .records()
        .map(Result::unwrap)
        .collect()
}

fn goal() -> FacingGoal {
    FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap()
}

fn allow(name: &'static str, off: f64) -> Allowance {
    let off = Reading::new(mm(off), mm(0.005)).unwrap();
    Allowance::new([CutLimit::new(LimitKind::MinimumWidth, name, off, Grade::Published).unwrap()])
}

fn step(survey: &RingSurvey, allowance: &Allowance) -> FacingStep {
    survey
        .decide_facing(&goal(), allowance, DecisionRule::default())
        .unwrap()
        .step
}

fn two_point(angle: f64, depth: f64, d: f64) -> BoreReading {
    BoreReading {
        at: clock(angle),
        depth: mm(depth),
        diameter: Reading::new(mm(d), mm(0.005)).unwrap(),
        gauge: Gauge::TwoPoint,
    }
}

fn bore(readings: Vec<BoreReading>) -> BoreShape {
    BoreSurvey::new(readings).unwrap().shape().unwrap()
}
