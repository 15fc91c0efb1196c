//! A guard against change, no evidence: what the face room answers to invented, lopsided surveys, as it was read through
//! once and found in order. Where a figure should be is said by `face_planes`, `face_oracle` and `face_survey`.
//!
//! `UPDATE_FACE_GUARD=1 cargo test --test face_guard` rewrites the files: read the difference before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod bores;
mod pads;
mod pictures;
mod planes;
mod rings;
mod shares;

use std::path::Path;

use framegauge::face::*;
use framegauge::measure::{DecisionRule, Limits, Reading};
use framegauge::{Grade, Length, Radius, deg, mm, to_mm};
use serde_json::Value;

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

/// One line of what serializes: `name { field value, field value }`, lists in square brackets.
fn flat(value: &Value) -> String {
    match value {
        Value::Null => "-".into(),
        Value::String(text) => text.clone(),
        Value::Array(all) => format!("[{}]", all.iter().map(flat).collect::<Vec<_>>().join("; ")),
        Value::Object(fields) => {
            let fields: Vec<String> = fields
                .iter()
                .map(|(k, v)| format!("{k} {}", flat(v)))
                .collect();
            format!("{{{}}}", fields.join(", "))
        }
        other => other.to_string(),
    }
}

/// The file a topic is written to.
struct Page(String);

impl Page {
    fn new() -> Self {
        Self(
            "# A guard against change, no evidence. Every survey is invented. Rewritten by UPDATE_FACE_GUARD=1.\n"
                .into(),
        )
    }
    fn title(&mut self, words: &str) {
        self.0.push_str(&format!("\n== {words}\n"));
    }
    fn line(&mut self, words: &str) {
        self.0.push_str(words);
        self.0.push('\n');
    }
    /// Every field on a line of its own; one that grows too long is split once more.
    fn fields(&mut self, of: &impl serde::Serialize) {
        self.split("", &serde_json::to_value(of).unwrap());
    }
    fn split(&mut self, before: &str, value: &Value) {
        let line = flat(value);
        match value {
            Value::Object(fields) if before.is_empty() || line.len() > 150 => {
                for (key, inner) in fields {
                    let name = if before.is_empty() {
                        key.clone()
                    } else {
                        format!("{before}.{key}")
                    };
                    self.split(&name, inner);
                }
            }
            Value::Array(all) if line.len() > 150 => {
                for (index, inner) in all.iter().enumerate() {
                    self.split(&format!("{before}.{index}"), inner);
                }
            }
            _ => self.line(&format!("{before}: {line}")),
        }
    }
    /// A value with its name, on one line; errors too.
    fn said<T: serde::Serialize>(&mut self, name: &str, said: Result<T, framegauge::Error>) {
        match said {
            Ok(value) => {
                let line = flat(&serde_json::to_value(value).unwrap());
                self.line(&format!("{name}: {line}"));
            }
            Err(error) => self.line(&format!("{name}: {error}")),
        }
    }
    fn check(self, name: &str) {
        check(name, &self.0);
    }
}

/// Compares with the committed file, or rewrites it.
fn check(name: &str, text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/face_guard")
        .join(name);
    if std::env::var_os("UPDATE_FACE_GUARD").is_some() {
        std::fs::write(&path, text).unwrap();
        return;
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default();
    for (number, (is, was)) in text.lines().zip(committed.lines()).enumerate() {
        assert_eq!(is, was, "{name}, line {}", number + 1);
    }
    assert!(text == committed, "{name} is longer or shorter than it was");
}

fn rounded(length: Length) -> String {
    format!("{:.6}", to_mm(length) + 0.0)
}
