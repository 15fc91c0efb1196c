//! The whole-frame plan, after reading, and how it grows with the number of places.
//!
//! `cargo bench --bench plan`.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{Bencher, black_box};
use framegauge::plan::{FrameSheet, prepare};
use framegauge::read::Tree;
use framegauge::standard::Tables;

fn main() {
    divan::main();
}

fn text(name: &str) -> String {
    let path = format!("{}/examples/frames/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).unwrap()
}

fn sheet(text: &str) -> FrameSheet {
    let tree: Tree = toml::from_str(text).unwrap();
    FrameSheet::from_tree(&tree, Tables::ours()).unwrap()
}

const FRAMES: [&str; 5] = [
    "aluminium_trekking",
    "painted_steel",
    "carbon_press",
    "old_steel",
    "case_hanger_hole",
];

#[divan::bench(sample_size = 4, args = FRAMES)]
fn plan(bencher: Bencher, name: &str) {
    let sheet = sheet(&text(name));
    bencher.bench_local(|| prepare(black_box(&sheet)));
}

/// From the tree of a sheet to its form.
#[divan::bench(sample_size = 16, args = FRAMES)]
fn read(bencher: Bencher, name: &str) {
    let text = text(name);
    let tree: Tree = toml::from_str(&text).unwrap();
    bencher.bench_local(|| FrameSheet::from_tree(black_box(&tree), Tables::ours()).unwrap());
}

/// So many bosses and nothing else: the time for each must not grow with their number.
#[divan::bench(sample_size = 1, args = [100, 1_000, 10_000])]
fn bosses(bencher: Bencher, count: usize) {
    let mut whole = String::from(
        "format = 1\nframe = \"invented: more bosses than frame\"\ninvented = true\nmaterial = \"steel\"\n",
    );
    for number in 0..count {
        whole.push_str(&format!(
            "[[thread]]\nplace = \"bottle_boss\"\nname = \"boss {number}\"\nbelieved = \"M5x0.8\"\npitch = \"0.8 mm\"\ncoating = \"painted\"\nstate = \"fouled\"\n"
        ));
    }
    let sheet = sheet(&whole);
    assert_eq!(prepare(&sheet).places.len(), count);
    bencher.bench_local(|| prepare(black_box(&sheet)));
}
