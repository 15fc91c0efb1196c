//! The last resort of the minimum zone: every four points in turn (Helly: the zone of a set is that of its worst four).

use super::reference::{Level, Slot, dependence, level};
use super::zone::{By, Zone, finished, reach};
use super::{P, Scale};

/// Largest number of points for which every reference is tried.
const MOST: usize = 24;

/// An area smaller than this share of the four's sum is rounding.
const LOOSE: f64 = 1e-9;

/// Sides from the dependence of the four, turned so that the level is positive.
#[inline]
pub(crate) fn give_sides(slots: &mut [Slot; 4]) {
    let areas = dependence(slots);
    let turn: f64 = areas
        .iter()
        .zip(slots.iter())
        .map(|(area, s)| area * s.p.z)
        .sum();
    for (slot, area) in slots.iter_mut().zip(areas) {
        slot.side = if (area < 0.0) == (turn < 0.0) {
            1.0
        } else {
            -1.0
        };
    }
}

/// Four points in line but for rounding: their dependence is noise and would level to anything.
fn all_in_line(slots: &[Slot; 4]) -> bool {
    let areas: f64 = dependence(slots).iter().map(|a| a.abs()).sum();
    let [a, rest @ ..] = slots;
    let square = |s: &Slot| (s.p.x - a.p.x) * (s.p.x - a.p.x) + (s.p.y - a.p.y) * (s.p.y - a.p.y);
    areas <= 1e-12 * rest.iter().map(square).sum::<f64>()
}

struct Best {
    at: Level,
    slots: [Slot; 4],
    reached: f64,
}

/// The highest level of all references; of equals, the one whose plane holds the points closest. `None` for more than
/// [`MOST`] points.
pub(crate) fn every_reference(points: &[P], scale: &Scale) -> Option<Zone> {
    if points.len() > MOST {
        return None;
    }
    let mut best = None;
    let slot = |index: usize, p: &P| Slot {
        p: *p,
        index,
        side: 1.0,
    };
    for (i, a) in points.iter().enumerate() {
        for (j, b) in points.iter().enumerate().skip(i + 1) {
            for (k, c) in points.iter().enumerate().skip(j + 1) {
                for (l, d) in points.iter().enumerate().skip(k + 1) {
                    consider(
                        points,
                        scale,
                        [slot(i, a), slot(j, b), slot(k, c), slot(l, d)],
                        &mut best,
                    );
                }
            }
        }
    }
    best.map(|best: Best| finished(&best.at, &best.slots, best.reached, 0, By::EveryReference))
}

fn consider(points: &[P], scale: &Scale, mut slots: [Slot; 4], best: &mut Option<Best>) {
    if all_in_line(&slots) {
        return;
    }
    give_sides(&mut slots);
    let areas = dependence(&slots);
    let whole: f64 = areas.iter().map(|a| a.abs()).sum();
    // A point that carries nothing may lie on either side: it only fixes how the zone is turned.
    for turned in 0_u8..16 {
        let mut slots = slots;
        let mut bits = turned;
        let mut loose = true;
        for (slot, area) in slots.iter_mut().zip(areas) {
            if bits & 1 == 1 {
                loose &= area.abs() <= LOOSE * whole;
                slot.side = -slot.side;
            }
            bits >>= 1;
        }
        if !loose {
            continue;
        }
        let Some(at) = level(&slots) else { continue };
        let tolerance = scale.rounding(&at.plane);
        let lower = best
            .as_ref()
            .is_some_and(|b| at.height < b.at.height - tolerance);
        if lower {
            continue;
        }
        let reached = reach(points, &at.plane);
        let higher = best
            .as_ref()
            .is_none_or(|b| at.height > b.at.height + tolerance);
        if higher || best.as_ref().is_some_and(|b| reached < b.reached) {
            *best = Some(Best { at, slots, reached });
        }
    }
}
