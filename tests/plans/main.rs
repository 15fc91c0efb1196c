//! Plans of small invented sheets, one branch each: which steps have to be there and which must not, by hand and with the
//! reason; the plan as it is read at the bench stands in the `*.txt` files beside.
//!
//! `UPDATE_PINNED=1 cargo test --test plans` rewrites these: read the difference as the mechanic would before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod brakes;
#[path = "../committed/mod.rs"]
mod committed;
mod fork;
mod head;
mod seat;
mod shell;
mod threads;

use framegauge::prep::{Operation, WrittenSheet, prepare};

/// A case: title; steps that have to be there; steps that must not; why; the sheet without its head.
struct Case(
    &'static str,
    &'static [Operation],
    &'static [Operation],
    &'static str,
    &'static str,
);

/// Cutting: nothing that takes metal off.
const CUTS: &[Operation] = &[
    Operation::Ream,
    Operation::Chase,
    Operation::Tap,
    Operation::Face,
];

fn hold(name: &str, cases: &[Case]) {
    let mut text = String::new();
    for Case(title, needed, never, because, sheet) in cases {
        let whole = format!("format = 1\nframe = \"invented\"\ninvented = true\n{sheet}");
        let sheet: WrittenSheet = toml::from_str(&whole).unwrap_or_else(|e| panic!("{title}: {e}"));
        let plan = prepare(&sheet.read().unwrap_or_else(|e| panic!("{title}: {e:?}")));
        let there = |operation: &Operation| plan.steps.iter().any(|s| s.operation == *operation);
        for operation in *needed {
            assert!(
                there(operation),
                "{title}: no {operation}; {because}\n{plan}"
            );
        }
        for operation in *never {
            assert!(!there(operation), "{title}: {operation}; {because}\n{plan}");
        }
        text.push_str(&format!("== {title}\n   {because}\n{plan}\n"));
    }
    committed::same_as_committed(&format!("plans/{name}.txt"), &text);
}
