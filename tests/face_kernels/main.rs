//! Seats, tangents and certificates against what defines them: a linear programme, every triangle in turn, small changes of
//! every height, planes a little beside.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod certificates;
mod seats;
mod tangents;

use framegauge::face::{
    ContactPattern, Plane, Point, least_squares, least_squares_tangent, minimum_zone, seat_plane,
};
use framegauge::{mm, to_mm};

/// A small generator with a fixed start (xorshift64*, Vigna 2016).
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * ((self.next() >> 11) as f64 / (1_u64 << 53) as f64)
    }
    fn whole(&mut self, low: u64, high: u64) -> u64 {
        low + (self.next() >> 33) % (high - low + 1)
    }
}

fn point(x: f64, y: f64, z: f64) -> Point {
    Point::new(mm(x), mm(y), mm(z)).unwrap()
}

fn xyz(p: &Point) -> [f64; 3] {
    [to_mm(p.x()), to_mm(p.y()), to_mm(p.z())]
}

fn at(plane: &Plane, p: &Point) -> f64 {
    to_mm(plane.height_at(p.x(), p.y()))
}

fn cloud(dice: &mut Dice, n: u64) -> Vec<Point> {
    (0..n)
        .map(|_| {
            point(
                dice.between(-30.0, 30.0),
                dice.between(-20.0, 20.0),
                dice.between(-0.2, 0.2),
            )
        })
        .collect()
}
