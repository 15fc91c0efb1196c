//! Exact minimum zone: the Chebyshev plane min over (a, b, c) of max |z − a x − b y − c|.
//!
//! Single-point exchange on a reference of four points (the simplex method on the dual): the reference is levelled,
//! the worst residual enters, the ratio test says who leaves. The level never falls. A reference can stall when three
//! of its points lie on one line or two share a place; then the rule of smallest index (Bland 1977) takes over, which
//! cannot cycle, and for few points every reference can be tried.

use super::brute::{every_reference, give_sides};
use super::reference::{Level, Slot, cross, leaving, level, through};
use super::{Abc, P, Scale, most_steps};

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

/// A wide triangle (the first point, the farthest from it, the farthest from their line), and the sizes of the
/// coordinates. `None` when all points lie on one line.
fn triangle(points: &[P]) -> Option<([(usize, P); 3], Scale)> {
    let a = *points.first()?;
    let mut b = (0.0, 0, a);
    for (i, p) in points.iter().enumerate() {
        let (dx, dy) = (p.x - a.x, p.y - a.y);
        let far = dx * dx + dy * dy;
        if far > b.0 {
            b = (far, i, *p);
        }
    }
    let (length, ib, b) = b;
    let mut c = (0.0, 0, a);
    for (i, p) in points.iter().enumerate() {
        let area = cross(&a, &b, p).abs();
        if area > c.0 {
            c = (area, i, *p);
        }
    }
    let reach = libm::sqrt(length);
    let scale = Scale {
        x: a.x.abs() + reach,
        y: a.y.abs() + reach,
        z: a.z.abs().max(b.z.abs()).max(c.2.z.abs()),
    };
    // Height of the triangle against its base: the same measure of "on one line" as least squares uses.
    (c.0 > 1e-5 * length).then_some(([(0, a), (ib, b), (c.1, c.2)], scale))
}

struct Worst {
    index: usize,
    p: P,
    residual: f64,
}

/// The largest residual either way.
fn worst(points: &[P], plane: &Abc) -> Worst {
    let away = |p: &P| plane.residual(p).abs();
    let larger = |a: (f64, usize), b: (f64, usize)| if b.0 > a.0 { b } else { a };
    let (mut most, mut at) = (-1.0, 0);
    let fours = points.chunks_exact(4);
    let rest = fours.remainder();
    // Four at a time, as a knock-out: a new worst is rare, so the last comparison is well foreseen.
    for (block, four) in fours.enumerate() {
        if let [a, b, c, d] = four {
            let first = larger((away(a), 0), (away(b), 1));
            let second = larger((away(c), 2), (away(d), 3));
            let (r, offset) = larger(first, second);
            if r > most {
                (most, at) = (r, block * 4 + offset);
            }
        }
    }
    for (offset, p) in rest.iter().enumerate() {
        if away(p) > most {
            (most, at) = (away(p), points.len() - rest.len() + offset);
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

/// The largest residual either way, as a bare number.
pub(crate) fn reach(points: &[P], plane: &Abc) -> f64 {
    worst(points, plane).residual.abs()
}

/// Why there is no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Failure {
    OneLine,
    NoProof,
}

/// The minimum zone of at least three points.
pub(crate) fn minimum_zone(points: &[P]) -> Result<Zone, Failure> {
    let (corners, mut scale) = triangle(points).ok_or(Failure::OneLine)?;
    if let [(_, first), (_, far), _] = &corners
        && scale.x + scale.y > FAR_OFF * ((far.x - first.x).abs() + (far.y - first.y).abs())
    {
        return recentred(points, (first.x, first.y));
    }
    let [a, b, c] = corners.map(|(index, p)| Slot {
        p,
        index,
        side: 1.0,
    });
    let first = through([&a, &b, &c], [a.p.z, b.p.z, c.p.z]);
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
    if points.len() == 3 || fourth.residual.abs() <= scale.rounding(&first) {
        return Ok(flat(first, slots, fourth.residual.abs()));
    }
    // No height is farther from the first plane than this.
    scale.z += fourth.residual.abs();
    give_sides(&mut slots);
    match exchange(points, slots, &scale) {
        Some(zone) => Ok(zone),
        None => fall_back(points, slots, &scale),
    }
}

/// Slower rules for references that stalled.
#[cold]
fn fall_back(points: &[P], slots: [Slot; 4], scale: &Scale) -> Result<Zone, Failure> {
    smallest_index(points, slots, scale)
        .or_else(|| every_reference(points, scale))
        .filter(|zone| zone.reached <= zone.level + scale.rounding(&zone.plane))
        .ok_or(Failure::NoProof)
}

/// Points whose distance from the origin is so many times their spread are moved there first: residuals of steep planes
/// would lose digits.
const FAR_OFF: f64 = 16.0;

#[cold]
fn recentred(points: &[P], origin: (f64, f64)) -> Result<Zone, Failure> {
    let moved = |p: &P| P {
        x: p.x - origin.0,
        y: p.y - origin.1,
        z: p.z,
    };
    let mut inline = [P {
        x: 0.0,
        y: 0.0,
        z: 0.0,
    }; 64];
    let found = match inline.get_mut(..points.len()) {
        Some(few) => {
            for (slot, p) in few.iter_mut().zip(points) {
                *slot = moved(p);
            }
            minimum_zone(few)
        }
        None => minimum_zone(&points.iter().map(moved).collect::<alloc::vec::Vec<P>>()),
    };
    found.map(|zone| {
        let Abc { a, b, c } = zone.plane;
        Zone {
            plane: Abc {
                a,
                b,
                c: c - a * origin.0 - b * origin.1,
            },
            ..zone
        }
    })
}

/// All points on one plane, as far as rounding can tell.
fn flat(plane: Abc, slots: [Slot; 4], reached: f64) -> Zone {
    let mut held = slots.map(|s| Held {
        index: s.index,
        side: 1.0,
        weight: 0.0,
    });
    // Any point of the plane touches both sides of a zone of no thickness.
    let [first, second, ..] = &mut held;
    (first.weight, second.weight) = (0.5, 0.5);
    (second.index, second.side) = (first.index, -1.0);
    Zone {
        plane,
        level: 0.0,
        reached,
        held,
        steps: 0,
        by: By::Exchange,
    }
}

pub(crate) fn finished(at: &Level, slots: &[Slot; 4], reached: f64, steps: u32, by: By) -> Zone {
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
fn exchange(points: &[P], mut slots: [Slot; 4], scale: &Scale) -> Option<Zone> {
    const STALLED: u32 = 8;
    let (mut highest, mut stalled) = (-1.0, 0);
    for steps in 0..1000 {
        let at = level(&slots)?;
        let far = worst(points, &at.plane);
        let tolerance = scale.rounding(&at.plane);
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
fn smallest_index(points: &[P], mut slots: [Slot; 4], scale: &Scale) -> Option<Zone> {
    for steps in 0..most_steps(points) {
        let at = level(&slots)?;
        let tolerance = scale.rounding(&at.plane);
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

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)]
    use super::*;
    use alloc::vec::Vec;

    /// The two fall-backs, called directly: plain exchange settles nearly everything, so without this they would go
    /// untested. All three must agree on grids with repeats and points in line, and a turn changes no zone (geometry).
    #[test]
    fn all_rules_agree() {
        let mut state = 0x9E37_79B9_7F4A_7C15_u64;
        let mut whole = |most: u64| {
            state ^= state >> 12;
            state ^= state << 25;
            state ^= state >> 27;
            #[expect(clippy::cast_precision_loss, reason = "small")]
            let value = ((state.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 33) % (most + 1)) as f64;
            value
        };
        let mut checked = 0;
        for _ in 0..1000 {
            let points: Vec<P> = (0..9)
                .map(|_| P {
                    x: whole(3),
                    y: whole(3),
                    z: whole(4),
                })
                .collect();
            let Ok(zone) = minimum_zone(&points) else {
                continue;
            };
            let brute = every_reference(&points, &Scale::of(&points, (0.0, 0.0))).unwrap();
            assert!((brute.level - zone.level).abs() < 1e-12, "{points:?}");
            assert!(brute.reached <= brute.level + 1e-12, "{points:?}");
            // The same on a grid that is turned, where what lies in line does so but for rounding.
            let turned: Vec<P> = points
                .iter()
                .map(|p| P {
                    x: 0.96 * p.x - 0.28 * p.y,
                    y: 0.28 * p.x + 0.96 * p.y,
                    z: p.z,
                })
                .collect();
            let scale = Scale::of(&turned, (0.0, 0.0));
            let brute = every_reference(&turned, &scale).unwrap();
            assert!((brute.level - zone.level).abs() < 1e-12, "{turned:?}");
            assert!(brute.reached <= brute.level + 1e-12, "{turned:?}");
            let (corners, scale) = triangle(&points).unwrap();
            let corners = corners.map(|(index, p)| Slot {
                p,
                index,
                side: 1.0,
            });
            let [a, b, c] = corners;
            let first = through([&a, &b, &c], corners.map(|s| s.p.z));
            let fourth = worst(&points, &first);
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
            give_sides(&mut slots);
            let bland = smallest_index(&points, slots, &scale).unwrap();
            assert!((bland.level - zone.level).abs() < 1e-12, "{points:?}");
            assert!(bland.reached <= bland.level + 1e-12);
            checked += 1;
        }
        assert!(checked > 750);
    }
}
