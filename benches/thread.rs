//! Threads: reading a designation (budget 200 ns), limits of size (budget 20 ns from a read designation, no allocation),
//! mismatch, shear areas.
//!
//! `cargo bench --bench thread`. Counted with `valgrind --tool=callgrind --toggle-collect='*limits_of_size*'`, `M10x1-6H`
//! from its read designation takes about 280 instructions.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{AllocProfiler, Bencher, black_box};
use framegauge::mm;
use framegauge::thread::{
    Designation, Member, MinimumMaterial, ThreadSize, ToleranceClass, limits_of_size, mismatch,
};

#[global_allocator]
static ALLOCATIONS: AllocProfiler = AllocProfiler::system();

fn main() {
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

#[divan::bench(args = DESIGNATIONS)]
fn parse(text: &str) -> Option<Designation> {
    black_box(text).parse().ok()
}

fn asked(text: &str, class: &str) -> (ThreadSize, ToleranceClass) {
    (read(text).size, class.parse().expect("a class"))
}

#[divan::bench(args = [("M10x1", "6H"), ("M10x1", "6g"), ("M47x1", "6H"), ("1.375-24 ISO", "6H"), ("1/2-20 UN", "2B")])]
fn limits(bencher: Bencher<'_, '_>, question: (&str, &str)) {
    let (size, class) = asked(question.0, question.1);
    // By reference: copying the answer into the sample buffer is no part of the question.
    bencher.bench_local(|| {
        black_box(&limits_of_size(black_box(&size), black_box(&class)));
    });
}

#[divan::bench]
fn mismatch_of_two(bencher: Bencher<'_, '_>) {
    let (a, b) = (read("M35x1"), read("1.370-24 BSC LH"));
    bencher.bench(|| mismatch(black_box(&a), black_box(&b)));
}

#[divan::bench]
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
