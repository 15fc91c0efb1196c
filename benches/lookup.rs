//! Rows by name, figures and their evidence: counted in time and in allocations.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{AllocProfiler, Bencher, black_box};
use framegauge::standard::{HeadSeat, Row, Seatpost, Shell, find};

#[global_allocator]
static ALLOC: AllocProfiler = AllocProfiler::system();

fn main() {
    divan::main();
}

/// A code, an alias in another case, and one of the last rows.
#[divan::bench(args = ["bsc", "BSA", "bb90"])]
fn shell(bencher: Bencher, name: &str) {
    bencher.bench(|| find::<Shell>(black_box(name)).unwrap().code.len());
}

/// From a name to a limit and its grade.
#[divan::bench]
fn limit_with_its_grade(bencher: Bencher) {
    bencher.bench(|| {
        let row = find::<Shell>(black_box("bb30")).unwrap();
        let bore = row.bore.as_ref().unwrap();
        (bore.lower(), bore.grade())
    });
}

/// Every row of three families, one after another.
#[divan::bench]
fn walk(bencher: Bencher) {
    bencher.bench(|| {
        Shell::table().iter().filter(|r| r.bore.is_some()).count()
            + HeadSeat::table().len()
            + Seatpost::table().len()
    });
}
