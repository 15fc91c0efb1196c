//! Exact minimum zone: the Chebyshev plane min over (a, b, c) of max |z − a x − b y − c|.
//!
//! Single-point exchange on a reference of four points (the simplex method on the dual): the reference is levelled,
//! the worst residual enters, the ratio test says who leaves. The level never falls. A reference can stall when three
//! of its points lie on one line or two share a place; then the rule of smallest index (Bland 1977) takes over, which
//! cannot cycle, and for few points every reference can be tried.

use super::{Abc, P};

/// A reference point: which one, on which side of the mid-plane it lies, and its share in holding the zone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Held {
    pub(crate) index: usize,
    /// +1 touches the upper plane, −1 the lower.
    pub(crate) side: f64,
    /// Weight, 0 to 1/2 on each side; the four add up to 1.
    pub(crate) weight: f64,
}

/// The minimum zone with the reference that proves it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Zone {
    /// Mid-plane.
    pub(crate) plane: Abc,
    /// Half of the zone that the reference forces on any plane: a lower bound.
    pub(crate) level: f64,
    /// Half of the zone that this plane reaches: an upper bound.
    pub(crate) reached: f64,
    pub(crate) held: [Held; 4],
    /// Exchange steps taken.
    pub(crate) steps: u32,
    /// How it was found.
    pub(crate) by: By,
}

/// Which rule ended the search.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum By {
    Exchange,
    SmallestIndex,
    EveryReference,
}

#[derive(Clone, Copy)]
struct Slot {
    p: P,
    index: usize,
    side: f64,
}

/// A levelled reference.
struct Level {
    plane: Abc,
    height: f64,
    weight: [f64; 4],
    /// The slot left out of the widest triangle, and that triangle's barycentric frame.
    spare: usize,
}

fn cross(a: &P, b: &P, c: &P) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// Signed areas whose sum over (1, x, y) vanishes: the affine dependence of the four places.
fn dependence(s: &[Slot; 4]) -> [f64; 4] {
    let [a, b, c, d] = s;
    [
        cross(&b.p, &c.p, &d.p),
        -cross(&a.p, &c.p, &d.p),
        cross(&a.p, &b.p, &d.p),
        -cross(&a.p, &b.p, &c.p),
    ]
}

fn widest(areas: &[f64; 4]) -> usize {
    let mut best = (0, -1.0);
    for (i, area) in areas.iter().enumerate() {
        if area.abs() > best.1 {
            best = (i, area.abs());
        }
    }
    best.0
}

/// The three slots beside `spare`.
fn others(slots: &[Slot; 4], spare: usize) -> [Slot; 3] {
    let [a, b, c, d] = *slots;
    match spare {
        0 => [b, c, d],
        1 => [a, c, d],
        2 => [a, b, d],
        _ => [a, b, c],
    }
}

fn through(t: &[Slot; 3], z: [f64; 3]) -> Abc {
    let [p, q, r] = t.map(|s| s.p);
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
fn level(slots: &[Slot; 4]) -> Option<Level> {
    let areas = dependence(slots);
    let whole: f64 = areas.iter().map(|a| a.abs()).sum();
    if !(whole > 0.0) {
        return None;
    }
    let spare = widest(&areas);
    // The sides are those of the dependence, up to one common sign: take the sign of the widest.
    let flip = match (areas.get(spare), slots.get(spare)) {
        (Some(area), Some(slot)) if area * slot.side < 0.0 => -1.0,
        _ => 1.0,
    };
    let mut weight = [0.0; 4];
    let mut height = 0.0;
    for ((w, area), slot) in weight.iter_mut().zip(areas).zip(slots) {
        let share = flip * area * slot.side / whole;
        *w = if share > 0.0 { share } else { 0.0 };
        height += flip * area / whole * slot.p.z;
    }
    let triangle = others(slots, spare);
    let plane = through(&triangle, triangle.map(|s| s.p.z - s.side * height));
    Some(Level {
        plane,
        height,
        weight,
        spare,
    })
}

/// Weights of the triangle's corners whose mean is (x, y).
fn barycentric(t: &[Slot; 3], x: f64, y: f64) -> [f64; 3] {
    let [p, q, r] = t.map(|s| s.p);
    let det = cross(&p, &q, &r);
    let at = P { x, y, z: 0.0 };
    let (u, v) = (cross(&at, &q, &r) / det, cross(&p, &at, &r) / det);
    [u, v, 1.0 - u - v]
}

/// Who leaves when a point enters with a sign: the least ratio of weight to rate; of equals the one that `first` prefers.
fn leaving(
    slots: &[Slot; 4],
    at: &Level,
    enter: &P,
    sign: f64,
    smallest_index: bool,
) -> Option<usize> {
    let triangle = others(slots, at.spare);
    let [u, v, w] = barycentric(&triangle, enter.x, enter.y).map(|share| share * sign);
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

/// Rounding of a residual, from the size of the heights.
fn tolerance(points: &[P]) -> f64 {
    2e-14
        * points.iter().fold(
            0.0,
            |most: f64, p| if p.z.abs() > most { p.z.abs() } else { most },
        )
}

/// Three points of a wide triangle: far from the first, far from that, far from their line.
fn triangle(points: &[P]) -> Option<[(usize, P); 3]> {
    let origin = points.first()?;
    let mut a = (0.0, 0, *origin);
    for (i, p) in points.iter().enumerate() {
        let (dx, dy) = (p.x - origin.x, p.y - origin.y);
        let far = dx * dx + dy * dy;
        if far > a.0 {
            a = (far, i, *p);
        }
    }
    let (_, ia, a) = a;
    let mut b = (0.0, 0, *origin);
    for (i, p) in points.iter().enumerate() {
        let (dx, dy) = (p.x - a.x, p.y - a.y);
        let far = dx * dx + dy * dy;
        if far > b.0 {
            b = (far, i, *p);
        }
    }
    let (length, ib, b) = b;
    let mut c = (0.0, 0, *origin);
    for (i, p) in points.iter().enumerate() {
        let area = cross(&a, &b, p).abs();
        if area > c.0 {
            c = (area, i, *p);
        }
    }
    // Height of the triangle against its base: the same measure of "on one line" as least squares uses.
    (c.0 > 1e-5 * length).then_some([(ia, a), (ib, b), (c.1, c.2)])
}

struct Worst {
    index: usize,
    p: P,
    residual: f64,
}

/// The largest residual either way.
#[inline]
fn worst(points: &[P], plane: &Abc) -> Worst {
    let (mut most, mut at) = (-1.0, 0);
    for (i, p) in points.iter().enumerate() {
        let r = plane.residual(p).abs();
        if r > most {
            (most, at) = (r, i);
        }
    }
    let p = points.get(at).copied().unwrap_or(P {
        x: 0.0,
        y: 0.0,
        z: 0.0,
    });
    Worst {
        index: at,
        p,
        residual: plane.residual(&p),
    }
}

/// Why there is no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Failure {
    OneLine,
    NoProof,
}

/// The minimum zone of at least three points.
pub(crate) fn minimum_zone(points: &[P]) -> Result<Zone, Failure> {
    let corners = triangle(points).ok_or(Failure::OneLine)?;
    let tolerance = tolerance(points);
    let [a, b, c] = corners.map(|(index, p)| Slot {
        p,
        index,
        side: 1.0,
    });
    let first = through(&[a, b, c], [a.p.z, b.p.z, c.p.z]);
    let fourth = worst(points, &first);
    let mut slots = [
        a,
        b,
        c,
        Slot {
            p: fourth.p,
            index: fourth.index,
            side: 1.0,
        },
    ];
    if points.len() == 3 || fourth.residual.abs() <= tolerance {
        return Ok(flat(first, slots, fourth.residual.abs()));
    }
    // Sides from the dependence, turned so that the level is positive.
    let areas = dependence(&slots);
    let turn = areas
        .iter()
        .zip(&slots)
        .map(|(area, s)| area * s.p.z)
        .sum::<f64>();
    for (slot, area) in slots.iter_mut().zip(areas) {
        slot.side = if (area < 0.0) == (turn < 0.0) {
            1.0
        } else {
            -1.0
        };
    }
    exchange(points, slots, tolerance)
        .or_else(|| smallest_index(points, slots, tolerance))
        .or_else(|| every_reference(points, tolerance))
        .filter(|zone| zone.reached <= zone.level + tolerance)
        .ok_or(Failure::NoProof)
}

/// All points on one plane, as far as rounding can tell.
fn flat(plane: Abc, slots: [Slot; 4], reached: f64) -> Zone {
    let mut held = slots.map(|s| Held {
        index: s.index,
        side: 1.0,
        weight: 0.0,
    });
    if let [first, second, ..] = &mut held {
        // Any point of the plane touches both sides of a zone of no thickness.
        (first.weight, second.weight) = (0.5, 0.5);
        (second.index, second.side) = (first.index, -1.0);
    }
    Zone {
        plane,
        level: 0.0,
        reached,
        held,
        steps: 0,
        by: By::Exchange,
    }
}

fn finished(at: &Level, slots: &[Slot; 4], reached: f64, steps: u32, by: By) -> Zone {
    let mut held = [Held {
        index: 0,
        side: 1.0,
        weight: 0.0,
    }; 4];
    for ((held, slot), weight) in held.iter_mut().zip(slots).zip(at.weight) {
        *held = Held {
            index: slot.index,
            side: slot.side,
            weight,
        };
    }
    Zone {
        plane: at.plane,
        level: at.height.abs(),
        reached: reached.max(at.height.abs()),
        held,
        steps,
        by,
    }
}

/// Worst point enters. `None` when it stalls.
fn exchange(points: &[P], mut slots: [Slot; 4], tolerance: f64) -> Option<Zone> {
    const STALLED: u32 = 8;
    let (mut highest, mut stalled) = (-1.0, 0);
    for steps in 0..1000 {
        let at = level(&slots)?;
        let far = worst(points, &at.plane);
        if far.residual.abs() <= at.height + tolerance {
            return Some(finished(
                &at,
                &slots,
                far.residual.abs(),
                steps,
                By::Exchange,
            ));
        }
        if at.height > highest + tolerance {
            (highest, stalled) = (at.height, 0);
        } else {
            stalled += 1;
            if stalled > STALLED {
                return None;
            }
        }
        let side = if far.residual > 0.0 { 1.0 } else { -1.0 };
        let position = leaving(&slots, &at, &far.p, side, false)?;
        *slots.get_mut(position)? = Slot {
            p: far.p,
            index: far.index,
            side,
        };
    }
    None
}

/// The first point that sticks out enters, of equal leavers the first leaves. `None` when rounding defeats it.
fn smallest_index(points: &[P], mut slots: [Slot; 4], tolerance: f64) -> Option<Zone> {
    let limit = 200 + 20 * u32::try_from(points.len()).unwrap_or(u32::MAX / 40);
    for steps in 0..limit {
        let at = level(&slots)?;
        let out = points
            .iter()
            .enumerate()
            .find(|(_, p)| at.plane.residual(p).abs() > at.height + tolerance);
        let Some((index, p)) = out else {
            let far = worst(points, &at.plane).residual.abs();
            return Some(finished(&at, &slots, far, steps, By::SmallestIndex));
        };
        let side = if at.plane.residual(p) > 0.0 {
            1.0
        } else {
            -1.0
        };
        let position = leaving(&slots, &at, p, side, true)?;
        *slots.get_mut(position)? = Slot { p: *p, index, side };
    }
    None
}

/// Largest number of points for which every reference is tried.
pub(crate) const BRUTE: usize = 24;

/// Tries every four points: the highest level among them is the zone (Helly). For more than [`BRUTE`] points only the
/// outermost ones of a first plane would be worth it, and the caller reports that no proof was found.
pub(crate) fn every_reference(points: &[P], tolerance: f64) -> Option<Zone> {
    if points.len() > BRUTE {
        return None;
    }
    let mut best: Option<(Level, [Slot; 4])> = None;
    let slot = |index: usize, p: &P| Slot {
        p: *p,
        index,
        side: 1.0,
    };
    for (i, a) in points.iter().enumerate() {
        for (j, b) in points.iter().enumerate().skip(i + 1) {
            for (k, c) in points.iter().enumerate().skip(j + 1) {
                for (l, d) in points.iter().enumerate().skip(k + 1) {
                    let mut slots = [slot(i, a), slot(j, b), slot(k, c), slot(l, d)];
                    let areas = dependence(&slots);
                    let turn = areas
                        .iter()
                        .zip(&slots)
                        .map(|(area, s)| area * s.p.z)
                        .sum::<f64>();
                    for (slot, area) in slots.iter_mut().zip(areas) {
                        slot.side = if (area < 0.0) == (turn < 0.0) {
                            1.0
                        } else {
                            -1.0
                        };
                    }
                    let Some(at) = level(&slots) else { continue };
                    let higher = best
                        .as_ref()
                        .is_none_or(|(so_far, _)| at.height > so_far.height + tolerance);
                    // Of equals, one whose plane holds all points is the proof.
                    let equal = best.as_ref().is_some_and(|(so_far, _)| {
                        at.height > so_far.height - tolerance
                            && worst(points, &so_far.plane).residual.abs()
                                > so_far.height + tolerance
                    });
                    if higher || equal {
                        best = Some((at, slots));
                    }
                }
            }
        }
    }
    let (at, slots) = best?;
    let far = worst(points, &at.plane).residual.abs();
    Some(finished(&at, &slots, far, 0, By::EveryReference))
}
