//! The whole-frame plan, after parsing.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{Bencher, black_box};
use framegauge::prep::{FrameSheet, WrittenSheet, prepare};

fn main() {
    divan::main();
}

fn sheet(name: &str) -> FrameSheet {
    let path = format!("{}/examples/frames/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    let written: WrittenSheet = toml::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    written.read().unwrap()
}

#[divan::bench(args = ["painted_steel", "carbon_press", "old_steel", "case_hanger_hole"])]
fn plan(bencher: Bencher, name: &str) {
    let sheet = sheet(name);
    bencher.bench_local(|| prepare(black_box(&sheet)));
}

/// Growth with the number of interfaces: bosses one after another.
#[divan::bench(args = [1, 4, 16, 64])]
fn bosses(bencher: Bencher, count: usize) {
    let mut sheet = sheet("painted_steel");
    let boss = sheet.threads.last().unwrap().clone();
    sheet.threads = vec![boss; count];
    sheet.shell = None;
    sheet.brakes.clear();
    bencher.bench_local(|| prepare(black_box(&sheet)));
}
