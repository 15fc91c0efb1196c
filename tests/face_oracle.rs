//! Planes of a face against a linear-programming crate (microlp 0.7) and against every four points tried in turn.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::face::{Point, minimum_zone, seat_plane};
use framegauge::{mm, to_mm};
use microlp::{ComparisonOp, OptimizationDirection, Problem};

/// A small generator with a fixed start, so that every run sees the same faces (xorshift64*, Vigna 2016).
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }
    /// 0 to below 1.
    fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }
    fn whole(&mut self, low: usize, high: usize) -> usize {
        low + (self.share() * (high - low + 1) as f64) as usize
    }
}

fn point(x: f64, y: f64, z: f64) -> Point {
    Point::new(mm(x), mm(y), mm(z)).unwrap()
}

fn xyz(p: &Point) -> (f64, f64, f64) {
    (to_mm(p.x()), to_mm(p.y()), to_mm(p.z()))
}

/// min 2 e, |z − a x − b y − c| ≤ e.
fn zone_by_lp(points: &[Point]) -> f64 {
    let mut lp = Problem::new(OptimizationDirection::Minimize);
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    let (a, b, c) = (
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
    );
    let e = lp.add_var(1.0, (0.0, f64::INFINITY));
    for p in points {
        let (x, y, z) = xyz(p);
        lp.add_constraint([(a, x), (b, y), (c, 1.0), (e, 1.0)], ComparisonOp::Ge, z);
        lp.add_constraint([(a, x), (b, y), (c, 1.0), (e, -1.0)], ComparisonOp::Le, z);
    }
    2.0 * lp.solve().unwrap().into_solution().unwrap().objective()
}

/// min c, a x + b y + c ≥ z: the seat height on the axis.
fn seat_by_lp(points: &[Point]) -> f64 {
    let mut lp = Problem::new(OptimizationDirection::Minimize);
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    let (a, b, c) = (
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
        lp.add_var(1.0, free),
    );
    for p in points {
        let (x, y, z) = xyz(p);
        lp.add_constraint([(a, x), (b, y), (c, 1.0)], ComparisonOp::Ge, z);
    }
    lp.solve().unwrap().into_solution().unwrap().objective()
}

/// The highest level among all four points (Helly: the zone of a set is that of its worst four).
fn zone_by_brute_force(points: &[Point]) -> f64 {
    let p: Vec<_> = points.iter().map(xyz).collect();
    let cross = |a: usize, b: usize, c: usize| {
        (p[b].0 - p[a].0) * (p[c].1 - p[a].1) - (p[b].1 - p[a].1) * (p[c].0 - p[a].0)
    };
    let mut most: f64 = 0.0;
    for i in 0..p.len() {
        for j in i + 1..p.len() {
            for k in j + 1..p.len() {
                for l in k + 1..p.len() {
                    let areas = [
                        cross(j, k, l),
                        -cross(i, k, l),
                        cross(i, j, l),
                        -cross(i, j, k),
                    ];
                    let whole: f64 = areas.iter().map(|a| a.abs()).sum();
                    if whole > 1e-9 {
                        let level: f64 = areas
                            .iter()
                            .zip([i, j, k, l])
                            .map(|(a, at)| a * p[at].2)
                            .sum();
                        most = most.max(level.abs() / whole);
                    }
                }
            }
        }
    }
    2.0 * most
}

#[test]
fn ten_thousand_rings_against_the_lp() {
    let mut dice = Dice(0x9E37_79B9_7F4A_7C15);
    for run in 0..10_000 {
        let k = dice.whole(4, 16);
        let radius = dice.between(10.0, 30.0);
        let (tilt, high) = (dice.between(0.0, 0.01), dice.between(0.0, 6.3));
        let even = run % 2 == 0;
        let points: Vec<Point> = (0..k)
            .map(|i| {
                let slack = if even { 0.0 } else { dice.between(-0.4, 0.4) };
                let t = (i as f64 + slack) * std::f64::consts::TAU / k as f64;
                let z = tilt * radius * (t - high).cos() + dice.between(-0.05, 0.05);
                point(radius * t.cos(), radius * t.sin(), z)
            })
            .collect();
        let zone = minimum_zone(&points).unwrap();
        assert!(zone.certificate().holds(&points), "run {run}: no proof");
        assert!(
            !zone.fell_back(),
            "run {run}: distinct angles of one circle never stall"
        );
        let lp = zone_by_lp(&points);
        assert!(
            (to_mm(zone.zone()) - lp).abs() < 1e-9,
            "run {run}: {} but the LP says {lp}",
            to_mm(zone.zone())
        );
        let seat = seat_plane(&points, mm(0.0), mm(0.0)).unwrap();
        assert!(
            seat.plane().supports(&points),
            "run {run}: a point sticks through the seat"
        );
        if run % 4 == 0 {
            let lp = seat_by_lp(&points);
            assert!(
                (to_mm(seat.height()) - lp).abs() < 1e-9,
                "run {run}: {} but the LP says {lp}",
                to_mm(seat.height())
            );
        }
    }
}

#[test]
fn five_thousand_scattered_sets_against_the_lp() {
    let mut dice = Dice(0xD1B5_4A32_D192_ED03);
    for run in 0..5_000 {
        let n = dice.whole(4, 40);
        let points: Vec<Point> = (0..n)
            .map(|_| {
                point(
                    dice.between(-40.0, 40.0),
                    dice.between(-15.0, 15.0),
                    dice.between(-0.2, 0.2),
                )
            })
            .collect();
        let zone = minimum_zone(&points).unwrap();
        assert!(zone.certificate().holds(&points), "run {run}: no proof");
        let lp = zone_by_lp(&points);
        assert!(
            (to_mm(zone.zone()) - lp).abs() < 1e-9,
            "run {run}: {} but the LP says {lp}",
            to_mm(zone.zone())
        );
    }
}

#[test]
fn many_points_against_the_lp() {
    let mut dice = Dice(0x1234_5678_9ABC_DEF1);
    for run in 0..10 {
        let points: Vec<Point> = (0..1000)
            .map(|_| {
                let (t, r) = (
                    dice.between(0.0, std::f64::consts::TAU),
                    dice.between(17.0, 21.0),
                );
                point(
                    r * t.cos(),
                    r * t.sin(),
                    0.05 * (2.0 * t).cos() + dice.between(-0.01, 0.01),
                )
            })
            .collect();
        let zone = minimum_zone(&points).unwrap();
        assert!(
            zone.certificate().holds(&points) && !zone.fell_back(),
            "run {run}"
        );
        let lp = zone_by_lp(&points);
        assert!(
            (to_mm(zone.zone()) - lp).abs() < 1e-9,
            "run {run}: {} but the LP says {lp}",
            to_mm(zone.zone())
        );
    }
}

#[test]
fn every_four_points_up_to_twenty_four() {
    let mut dice = Dice(0xA076_1D64_78BD_642F);
    for k in 4..=24 {
        for run in 0..4 {
            let points: Vec<Point> = (0..k)
                .map(|_| {
                    point(
                        dice.between(-20.0, 20.0),
                        dice.between(-20.0, 20.0),
                        dice.between(-0.1, 0.1),
                    )
                })
                .collect();
            let (got, wanted) = (
                to_mm(minimum_zone(&points).unwrap().zone()),
                zone_by_brute_force(&points),
            );
            assert!(
                (got - wanted).abs() < 1e-13,
                "k {k}, run {run}: {got} but brute force says {wanted}"
            );
        }
    }
}

/// Whole-number places and heights, with repeats and points in line: the exchange alone cycles on some of these.
#[test]
fn integer_grids_end_with_proof() {
    let mut dice = Dice(0x2545_F491_4F6C_DD1D);
    let (mut fell_back, mut answered) = (0, 0);
    for run in 0..20_000 {
        let n = dice.whole(4, if run % 10 == 0 { 60 } else { 14 });
        let (width, tall) = (dice.whole(1, 4), dice.whole(1, 4));
        let points: Vec<Point> = (0..n)
            .map(|_| {
                point(
                    dice.whole(0, width) as f64,
                    dice.whole(0, width) as f64,
                    dice.whole(0, tall) as f64,
                )
            })
            .collect();
        let Ok(zone) = minimum_zone(&points) else {
            // Only points in line may be refused, and then least squares refuses them too.
            assert!(
                framegauge::face::least_squares(&points).is_err(),
                "run {run}: refused {points:?}"
            );
            continue;
        };
        answered += 1;
        fell_back += usize::from(zone.fell_back());
        assert!(zone.certificate().holds(&points), "run {run}: no proof");
        if n <= 12 {
            let wanted = zone_by_brute_force(&points);
            assert!(
                (to_mm(zone.zone()) - wanted).abs() < 1e-12,
                "run {run}: {} not {wanted}",
                to_mm(zone.zone())
            );
        }
        // The seat at every whole place that lies inside must support the points and match the LP.
        if run % 20 == 0 {
            let (x, y) = (dice.whole(0, width) as f64, dice.whole(0, width) as f64);
            if let Ok(seat) = seat_plane(&points, mm(x), mm(y)) {
                assert!(
                    seat.plane().supports(&points),
                    "run {run}: a point sticks through the seat"
                );
                let moved: Vec<Point> = points
                    .iter()
                    .map(xyz)
                    .map(|p| point(p.0 - x, p.1 - y, p.2))
                    .collect();
                let lp = seat_by_lp(&moved);
                assert!(
                    (to_mm(seat.height()) - lp).abs() < 1e-9,
                    "run {run}: {} not {lp}",
                    to_mm(seat.height())
                );
            }
        }
    }
    assert!(
        answered > 15_000 && fell_back < answered / 5,
        "{fell_back} of {answered} fell back"
    );
    println!("{fell_back} of {answered} integer grids needed the fall-back");
}
