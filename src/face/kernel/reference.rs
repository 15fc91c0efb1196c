//! References of four points: levelling them, and who leaves when another point enters.

use super::{Abc, P};

#[derive(Clone, Copy)]
pub(crate) struct Slot {
    pub(crate) p: P,
    pub(crate) index: usize,
    pub(crate) side: f64,
}

/// A levelled reference.
pub(crate) struct Level {
    pub(crate) plane: Abc,
    pub(crate) height: f64,
    pub(crate) weight: [f64; 4],
    /// The slot left out of the widest triangle, and that triangle's barycentric frame.
    pub(crate) spare: usize,
}

pub(crate) fn cross(a: &P, b: &P, c: &P) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// Signed areas whose sum over (1, x, y) vanishes: the affine dependence of the four places.
pub(crate) fn dependence(s: &[Slot; 4]) -> [f64; 4] {
    let [a, b, c, d] = s;
    let (ux, uy) = (b.p.x - a.p.x, b.p.y - a.p.y);
    let (vx, vy) = (c.p.x - a.p.x, c.p.y - a.p.y);
    let (wx, wy) = (d.p.x - a.p.x, d.p.y - a.p.y);
    let (abc, abd, acd) = (ux * vy - uy * vx, ux * wy - uy * wx, vx * wy - vy * wx);
    [acd - abd + abc, -acd, abd, -abc]
}

/// The place of the largest of four, as a knock-out.
fn widest(areas: [f64; 4]) -> usize {
    let [a, b, c, d] = areas.map(f64::abs);
    let larger = |one: (f64, usize), other: (f64, usize)| if other.0 > one.0 { other } else { one };
    larger(larger((a, 0), (b, 1)), larger((c, 2), (d, 3))).1
}

/// The three slots beside `spare`.
fn others(slots: &[Slot; 4], spare: usize) -> [&Slot; 3] {
    let [a, b, c, d] = slots;
    match spare {
        0 => [b, c, d],
        1 => [a, c, d],
        2 => [a, b, d],
        _ => [a, b, c],
    }
}

pub(crate) fn through(t: [&Slot; 3], z: [f64; 3]) -> Abc {
    let [p, q, r] = t.map(|s| &s.p);
    let [zp, zq, zr] = z;
    let (ux, uy, uz) = (q.x - p.x, q.y - p.y, zq - zp);
    let (vx, vy, vz) = (r.x - p.x, r.y - p.y, zr - zp);
    let det = ux * vy - uy * vx;
    let a = (uz * vy - vz * uy) / det;
    let b = (ux * vz - vx * uz) / det;
    Abc {
        a,
        b,
        c: zp - a * p.x - b * p.y,
    }
}

/// Levels the reference; the sides stay as they are, and a weight that rounding pushed below zero is zero.
pub(crate) fn level(slots: &[Slot; 4]) -> Option<Level> {
    let areas = dependence(slots);
    // Written out: this is the inner loop of the search.
    let ([a, b, c, d], [p, q, r, s]) = (areas, slots);
    let whole = a.abs() + b.abs() + c.abs() + d.abs();
    if whole <= 0.0 {
        return None;
    }
    let sided = [a * p.side, b * q.side, c * r.side, d * s.side];
    let [e, f, g, h] = sided;
    // The sides are those of the dependence, up to one common sign.
    let part = if e + f + g + h < 0.0 { -1.0 } else { 1.0 } / whole;
    let weight = sided.map(|share| {
        if share * part > 0.0 {
            share * part
        } else {
            0.0
        }
    });
    let height = part * (a * p.p.z + b * q.p.z + c * r.p.z + d * s.p.z);
    let spare = widest(areas);
    let triangle = others(slots, spare);
    let plane = through(triangle, triangle.map(|s| s.p.z - s.side * height));
    Some(Level {
        plane,
        height,
        weight,
        spare,
    })
}

/// Weights of the triangle's corners whose mean is at a point.
fn barycentric(t: [&Slot; 3], at: &P) -> [f64; 3] {
    let [p, q, r] = t.map(|s| &s.p);
    let det = cross(p, q, r);
    let (u, v) = (cross(at, q, r) / det, cross(p, at, r) / det);
    [u, v, 1.0 - u - v]
}

/// Who leaves when a point enters with a sign: the least ratio of weight to rate; of equals the one that `first` prefers.
pub(crate) fn leaving(
    slots: &[Slot; 4],
    at: &Level,
    enter: &P,
    sign: f64,
    smallest_index: bool,
) -> Option<usize> {
    let triangle = others(slots, at.spare);
    let [u, v, w] = barycentric(triangle, enter).map(|share| share * sign);
    let rates = match at.spare {
        0 => [0.0, u, v, w],
        1 => [u, 0.0, v, w],
        2 => [u, v, 0.0, w],
        _ => [u, v, w, 0.0],
    };
    let used: f64 = rates
        .iter()
        .zip(slots)
        .map(|(rate, slot)| rate * slot.side)
        .sum();
    let along = 1.0 - used;
    let mut best: Option<(f64, usize, usize)> = None;
    for (position, ((rate, slot), weight)) in rates.iter().zip(slots).zip(at.weight).enumerate() {
        let rate = slot.side * rate + along * weight;
        if rate > 1e-14 {
            let ratio = weight / rate;
            let better = match best {
                None => true,
                Some((least, _, index)) => {
                    ratio < least || (ratio == least && smallest_index && slot.index < index)
                }
            };
            if better {
                best = Some((ratio, position, slot.index));
            }
        }
    }
    best.map(|(_, position, _)| position)
}
