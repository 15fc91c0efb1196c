//! Minimum zone and least squares against a linear-programming crate and a bare loop: `cargo bench --bench face`.
//!
//! Allocations are counted too: none up to 64 points (none at all, in fact). Before anything is timed, both minimum zones are
//! held against each other: they must be equally wide to 1e-9 mm at every size. Ours brings the proof of its width as well.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{AllocProfiler, Bencher, black_box};
use framegauge::face::{Point, least_squares, least_squares_tangent, minimum_zone, seat_plane};
use framegauge::mm;
use microlp::{ComparisonOp, OptimizationDirection, Problem};

#[global_allocator]
static ALLOC: AllocProfiler = AllocProfiler::system();

const SIZES: [usize; 4] = [8, 16, 64, 10_000];

fn main() {
    for n in SIZES {
        let ours = minimum_zone(&points(n)).unwrap().zone().value * 1e3;
        let theirs = 2.0 * half_width_by_microlp(&ring(n));
        assert!(
            (ours - theirs).abs() < 1e-9,
            "{n} points: {ours} mm against {theirs} mm by linear programme"
        );
    }
    divan::main();
}

/// A tilted, wavy ring with scatter, always the same.
fn ring(n: usize) -> Vec<(f64, f64, f64)> {
    let mut state = 0x9E37_79B9_7F4A_7C15_u64;
    let mut noise = || {
        state ^= state >> 12;
        state ^= state << 25;
        state ^= state >> 27;
        (state.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 11) as f64 / (1_u64 << 53) as f64 - 0.5
    };
    (0..n)
        .map(|i| {
            let t = i as f64 * std::f64::consts::TAU / n as f64;
            let r = if n > 1000 { 20.0 + 3.0 * noise() } else { 20.0 };
            (
                r * t.cos(),
                r * t.sin(),
                0.05 * (t - 0.7).cos() + 0.01 * (2.0 * t).cos() + 0.02 * noise(),
            )
        })
        .collect()
}

fn points(n: usize) -> Vec<Point> {
    ring(n)
        .into_iter()
        .map(|(x, y, z)| Point::new(mm(x), mm(y), mm(z)).unwrap())
        .collect()
}

#[divan::bench(args = SIZES, sample_size = 16)]
fn zone(bencher: Bencher, n: usize) {
    let points = points(n);
    bencher.bench(|| minimum_zone(black_box(&points)).unwrap());
}

/// Half the width of the thinnest slab along the axis, in mm: the plane is free, every point lies within the half width.
fn half_width_by_microlp(ring: &[(f64, f64, f64)]) -> f64 {
    let mut lp = Problem::new(OptimizationDirection::Minimize);
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    let (a, b, c) = (
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
    );
    let e = lp.add_var(1.0, (0.0, f64::INFINITY));
    for (x, y, z) in ring {
        let plane = [(a, *x), (b, *y), (c, 1.0)];
        let [above, below] = [1.0, -1.0].map(|sign| plane.into_iter().chain([(e, sign)]));
        lp.add_constraint(above, ComparisonOp::Ge, *z);
        lp.add_constraint(below, ComparisonOp::Le, *z);
    }
    lp.solve().unwrap().into_solution().unwrap().objective()
}

/// One run with ten thousand points takes 50 ms, so the time is limited, not the number of runs.
#[divan::bench(args = SIZES, max_time = 1)]
fn zone_by_microlp(bencher: Bencher, n: usize) {
    let ring = ring(n);
    bencher.bench(|| half_width_by_microlp(black_box(&ring)));
}

#[divan::bench(args = SIZES, sample_size = 16)]
fn seat(bencher: Bencher, n: usize) {
    let points = points(n);
    bencher.bench(|| seat_plane(black_box(&points), mm(0.0), mm(0.0)).unwrap());
}

#[divan::bench(args = SIZES, sample_size = 16)]
fn tangent(bencher: Bencher, n: usize) {
    let points = points(n);
    bencher.bench(|| least_squares_tangent(black_box(&points)).unwrap());
}

#[divan::bench(args = SIZES, sample_size = 16)]
fn plane_by_least_squares(bencher: Bencher, n: usize) {
    let points = points(n);
    bencher.bench(|| least_squares(black_box(&points)).unwrap());
}

/// What the least-squares plane, its range and its rms cost at the least: two passes for the fit, one for the residuals.
#[divan::bench(args = SIZES, sample_size = 16)]
fn plane_by_bare_loop(bencher: Bencher, n: usize) {
    let ring = ring(n);
    bencher.bench(|| {
        let ring = black_box(&ring);
        let n = ring.len() as f64;
        let (mut mx, mut my, mut mz) = (0.0, 0.0, 0.0);
        for (x, y, z) in ring {
            mx += x;
            my += y;
            mz += z;
        }
        (mx, my, mz) = (mx / n, my / n, mz / n);
        let (mut sxx, mut sxy, mut syy, mut sxz, mut syz) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (x, y, z) in ring {
            let (x, y, z) = (x - mx, y - my, z - mz);
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
            sxz += x * z;
            syz += y * z;
        }
        let det = sxx * syy - sxy * sxy;
        let (a, b) = ((sxz * syy - syz * sxy) / det, (syz * sxx - sxz * sxy) / det);
        let c = mz - a * mx - b * my;
        let (mut low, mut high, mut squares) = (f64::INFINITY, f64::NEG_INFINITY, 0.0);
        for (x, y, z) in ring {
            let r = z - a * x - b * y - c;
            low = if r < low { r } else { low };
            high = if r > high { r } else { high };
            squares += r * r;
        }
        (a, b, c, high - low, (squares / n).sqrt())
    });
}
