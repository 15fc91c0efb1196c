//! Threads: reading a designation (budget 200 ns), limits of size (budget 20 ns from a read designation, no allocation),
//! mismatch, shear areas. Beside the limits stands a twin on bare `f64` (`bare/thread.rs`): the same tables in vectors, walked.
//!
//! `cargo bench --bench thread`. Counted with `valgrind --tool=callgrind --toggle-collect='*limits_of_size*'`, `M10x1-6H`
//! from its read designation takes about 280 instructions.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "bare/thread.rs"]
mod bare;

use divan::{AllocProfiler, Bencher, black_box};
use framegauge::measure::Limits;
use framegauge::thread::{
    Designation, Member, MinimumMaterial, ThreadSize, ToleranceClass, limits_of_size, mismatch,
};
use framegauge::{mm, to_mm};

#[global_allocator]
static ALLOCATIONS: AllocProfiler = AllocProfiler::system();

fn main() {
    let tables = bare::Iso965::read();
    for (size, pitch) in [(5.0, 0.8), (10.0, 1.0), (12.0, 1.75), (15.0, 1.0)] {
        let (of, class) = asked(&format!("M{size}x{pitch}"), "6g");
        let ours = limits_of_size(&of, &class).expect("tabulated");
        let pair = |limits: Limits| {
            let [low, high] = [limits.lower(), limits.upper()].map(|b| b.known().expect("a bolt"));
            (to_mm(low), to_mm(high))
        };
        let bare = tables.bolt_6g(size, pitch).expect("tabulated");
        for (ours, bare) in [
            (pair(ours.major), bare.major),
            (pair(ours.pitch_diameter), bare.pitch_diameter),
            (pair(ours.minor), bare.minor),
        ] {
            let off = (ours.0 - bare.0).abs().max((ours.1 - bare.1).abs());
            assert!(off < 1e-9, "M{size}x{pitch}: {ours:?} against {bare:?}");
        }
    }
    divan::main();
}

fn read(text: &str) -> Designation {
    text.parse().expect("a designation")
}

const DESIGNATIONS: [&str; 5] = [
    "M10x1-6H",
    "M8",
    "1.370 in x 24 tpi BSC LH",
    "1/2-20 UNF-2B",
    "36 mm x 24 tpi",
];

#[divan::bench(args = DESIGNATIONS, sample_size = 64)]
fn parse(text: &str) -> Option<Designation> {
    black_box(text).parse().ok()
}

fn asked(text: &str, class: &str) -> (ThreadSize, ToleranceClass) {
    (read(text).size, class.parse().expect("a class"))
}

#[divan::bench(sample_size = 256, args = [("M10x1", "6H"), ("M10x1", "6g"), ("M47x1", "6H"), ("1.375-24 ISO", "6H"), ("1/2-20 UN", "2B")])]
fn limits(bencher: Bencher<'_, '_>, question: (&str, &str)) {
    let (size, class) = asked(question.0, question.1);
    // By reference: copying the answer into the sample buffer is no part of the question.
    bencher.bench_local(|| {
        black_box(&limits_of_size(black_box(&size), black_box(&class)));
    });
}

#[divan::bench(sample_size = 256)]
fn limits_6g_bare_f64(bencher: Bencher<'_, '_>) {
    let tables = bare::Iso965::read();
    bencher.bench_local(|| {
        black_box(&black_box(&tables).bolt_6g(black_box(10.0), black_box(1.0)));
    });
}

#[divan::bench(sample_size = 256)]
fn mismatch_of_two(bencher: Bencher<'_, '_>) {
    let (a, b) = (read("M35x1"), read("1.370-24 BSC LH"));
    bencher.bench(|| mismatch(black_box(&a), black_box(&b)));
}

#[divan::bench(sample_size = 256)]
fn shear_areas(bencher: Bencher<'_, '_>) {
    let size = read("M10x1").size;
    let of = |member| {
        let class = Designation::new(size).class_for(member).expect("a class");
        limits_of_size(&size, &class).expect("limits")
    };
    let pair =
        MinimumMaterial::of_limits(&of(Member::External), &of(Member::Internal)).expect("a pair");
    bencher.bench(|| black_box(&pair).shear_areas(black_box(mm(8.0)), None));
}
