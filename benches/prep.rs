//! The whole-frame plan, after parsing, and how it grows with the number of interfaces.
//!
//! `cargo bench --bench prep`.
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

#[divan::bench(sample_size = 4, args = ["painted_steel", "carbon_press", "old_steel", "case_hanger_hole"])]
fn plan(bencher: Bencher, name: &str) {
    let sheet = sheet(name);
    bencher.bench_local(|| prepare(black_box(&sheet)));
}

/// The sheet with its first `count` interfaces, in the order of work, and nothing else.
fn first(full: &FrameSheet, count: usize) -> FrameSheet {
    let mut sheet = FrameSheet {
        frame: full.frame.clone(),
        invented: full.invented,
        material: full.material,
        rule: full.rule,
        ..FrameSheet::default()
    };
    let mut wanted = count;
    let mut more = || {
        let one = wanted > 0;
        wanted -= usize::from(one);
        one
    };
    sheet.seat_tube = full.seat_tube.clone().filter(|_| more());
    sheet.shell = full.shell.clone().filter(|_| more());
    sheet.head_upper = full.head_upper.clone().filter(|_| more());
    sheet.head_lower = full.head_lower.clone().filter(|_| more());
    sheet.steerer = full.steerer.clone().filter(|_| more());
    sheet.crown = full.crown.clone().filter(|_| more());
    sheet.threads = full
        .threads
        .iter()
        .take_while(|_| more())
        .cloned()
        .collect();
    sheet.brakes = full.brakes.iter().take_while(|_| more()).cloned().collect();
    assert_eq!(wanted, 0, "the frame has fewer interfaces");
    sheet
}

/// The painted frame's interfaces one after another: seat tube; shell; both ends of the head tube; crown, two axles, hanger,
/// bosses, two brake mounts. They differ in cost: the shell with its two faces is the dearest.
#[divan::bench(args = [1, 2, 4, 11], sample_size = 4)]
fn interfaces(bencher: Bencher, count: usize) {
    let full = sheet("painted_steel");
    let sheet = first(&full, count);
    assert!(count < 11 || sheet == full, "eleven are the whole frame");
    bencher.bench_local(|| prepare(black_box(&sheet)));
}

/// Equal interfaces: the painted frame's bottle bosses so many times, and nothing else.
#[divan::bench(args = [1, 4, 16, 64], sample_size = 4)]
fn bosses(bencher: Bencher, count: usize) {
    let full = sheet("painted_steel");
    let mut sheet = first(&full, 0);
    sheet.threads = vec![full.threads.last().unwrap().clone(); count];
    assert_eq!(prepare(&sheet).interfaces.len(), count);
    bencher.bench_local(|| prepare(black_box(&sheet)));
}
