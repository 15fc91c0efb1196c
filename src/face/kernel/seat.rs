//! The seat of a rigid cup pressed along an axis: the lowest plane above all points, at the axis. By duality its height
//! there is that of the upper hull: the highest mean of three points whose centroid, suitably weighted, is the axis.

use super::{Abc, P, Scale, most_steps};

/// The seat with its contacts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Seat {
    pub(crate) plane: Abc,
    /// The three points that carry it; those of weight zero carry nothing but fix the tilt.
    pub(crate) on: [usize; 3],
    pub(crate) weight: [f64; 3],
    /// Farthest point above the plane: rounding only.
    pub(crate) above: f64,
}

/// An edge of the contact triangle about which the part could rock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Edge {
    pub(crate) from: usize,
    pub(crate) to: usize,
    /// Distance of the axis from the edge.
    pub(crate) away: f64,
    /// How much the slope changes when it tips over the edge; infinite when nothing stops it.
    pub(crate) jump: f64,
    /// Standard uncertainty of that change per unit of reading uncertainty.
    pub(crate) jump_u: f64,
    /// Unit direction in which it tips down.
    pub(crate) down: (f64, f64),
}

#[derive(Clone, Copy)]
struct Slot {
    p: P,
    index: usize,
}

fn turn(a: &P, b: &P) -> f64 {
    a.x * b.y - a.y * b.x
}

/// Points about the axis: a triangle (perhaps a flat one) that holds it, found in one walk. `None` when it lies outside.
fn around(points: &[P], axis: (f64, f64)) -> Option<[Slot; 3]> {
    let from_axis = |p: &P| shifted(p, axis);
    let size = points
        .iter()
        .map(from_axis)
        .fold(0.0, |m: f64, p| m.max(p.x.abs()).max(p.y.abs()));
    let nothing = 1e-12 * size * size;
    let slot = |(index, p): (usize, &P)| Slot {
        p: shifted(p, axis),
        index,
    };
    // A point on the axis itself holds it alone.
    if let Some(here) = points
        .iter()
        .enumerate()
        .map(slot)
        .find(|s| s.p.x * s.p.x + s.p.y * s.p.y <= nothing)
    {
        let (a, b) = apart_from(points, axis, here)?;
        return Some([here, a, b]);
    }
    let start = slot(points.iter().enumerate().next()?);
    // Everything so far lies between the directions `right` and `left`, counter-clockwise, less than half a turn apart.
    let (mut right, mut left) = (start, start);
    for next in points.iter().enumerate().map(slot) {
        let (from_right, from_left) = (turn(&right.p, &next.p), turn(&left.p, &next.p));
        let opposite = |a: &P, b: &P| turn(a, b).abs() <= nothing && a.x * b.x + a.y * b.y < 0.0;
        for edge in [right, left] {
            if opposite(&edge.p, &next.p) {
                let third = off_line(points, axis, edge, next)?;
                return Some([edge, next, third]);
            }
        }
        if from_right >= 0.0 && from_left <= 0.0 && turn(&right.p, &left.p) >= 0.0 {
            continue;
        }
        if from_left > 0.0 && from_right > 0.0 {
            left = next;
        } else if from_left < 0.0 && from_right < 0.0 {
            right = next;
        } else {
            return Some([right, left, next]);
        }
    }
    None
}

fn shifted(p: &P, axis: (f64, f64)) -> P {
    P {
        x: p.x - axis.0,
        y: p.y - axis.1,
        z: p.z,
    }
}

/// The slot for which a measure is largest.
fn largest(points: &[P], axis: (f64, f64), measure: impl Fn(&P) -> f64) -> Option<(f64, Slot)> {
    let mut best: Option<(f64, Slot)> = None;
    for (index, p) in points.iter().enumerate() {
        let p = shifted(p, axis);
        let size = measure(&p);
        if best.is_none_or(|(most, _)| size > most) {
            best = Some((size, Slot { p, index }));
        }
    }
    best
}

fn off_line(points: &[P], axis: (f64, f64), a: Slot, b: Slot) -> Option<Slot> {
    let area = |p: &P| ((b.p.x - a.p.x) * (p.y - a.p.y) - (b.p.y - a.p.y) * (p.x - a.p.x)).abs();
    largest(points, axis, area).and_then(|(area, slot)| (area > 0.0).then_some(slot))
}

/// With a point that lies on the axis: the farthest from it, and one off their line.
fn apart_from(points: &[P], axis: (f64, f64), here: Slot) -> Option<(Slot, Slot)> {
    let (_, far) = largest(points, axis, |p| libm::hypot(p.x, p.y))?;
    Some((far, off_line(points, axis, here, far)?))
}

fn area(t: &[Slot; 3]) -> f64 {
    let [a, b, c] = t.map(|s| s.p);
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

fn shares(t: &[Slot; 3], x: f64, y: f64) -> [f64; 3] {
    let [a, b, c] = t.map(|s| s.p);
    let det = area(t);
    let u = ((b.x - x) * (c.y - y) - (b.y - y) * (c.x - x)) / det;
    let v = ((c.x - x) * (a.y - y) - (c.y - y) * (a.x - x)) / det;
    [u, v, 1.0 - u - v]
}

fn through(t: &[Slot; 3]) -> Abc {
    let [p, q, r] = t.map(|s| s.p);
    let (ux, uy, uz) = (q.x - p.x, q.y - p.y, q.z - p.z);
    let (vx, vy, vz) = (r.x - p.x, r.y - p.y, r.z - p.z);
    let det = ux * vy - uy * vx;
    let a = (uz * vy - vz * uy) / det;
    let b = (ux * vz - vx * uz) / det;
    Abc {
        a,
        b,
        c: p.z - a * p.x - b * p.y,
    }
}

/// The seat at the axis; `None` when the axis lies outside the points or they lie on one line.
pub(crate) fn seat(points: &[P], axis: (f64, f64)) -> Option<Seat> {
    let mut corners = around(points, axis)?;
    let scale = Scale::of(points, axis);
    for step in 0..most_steps(points) {
        let plane = through(&corners);
        let tolerance = scale.rounding(&plane);
        // The highest point enters at first; should the walk be long, the first that sticks out (Bland), which ends.
        let outside = points.iter().enumerate().filter_map(|(i, p)| {
            let p = shifted(p, axis);
            let above = plane.residual(&p);
            (above > tolerance).then_some((i, p, above))
        });
        let enters = if step < 50 {
            outside.max_by(|a, b| a.2.total_cmp(&b.2))
        } else {
            outside.min_by_key(|o| o.0)
        };
        let weight = shares(&corners, 0.0, 0.0).map(|w| if w > 1e-13 { w } else { 0.0 });
        let Some((index, p, _)) = enters else {
            let plane = Abc {
                c: plane.c - plane.a * axis.0 - plane.b * axis.1,
                ..plane
            };
            let above = points.iter().map(|p| plane.residual(p)).fold(0.0, f64::max);
            return Some(Seat {
                plane,
                on: corners.map(|s| s.index),
                weight,
                above,
            });
        };
        let rates = shares(&corners, p.x, p.y);
        let mut best: Option<(f64, usize, usize)> = None;
        for (position, ((rate, weight), corner)) in
            rates.iter().zip(weight).zip(&corners).enumerate()
        {
            if *rate > 1e-13 {
                let ratio = weight / rate;
                if best.is_none_or(|(least, _, first)| {
                    ratio < least || (ratio == least && corner.index < first)
                }) {
                    best = Some((ratio, position, corner.index));
                }
            }
        }
        *corners.get_mut(best?.1)? = Slot { p, index };
    }
    None
}

/// The three edges of the contact triangle, each with its distance from the axis and the slope it would tip by.
pub(crate) fn edges(points: &[P], axis: (f64, f64), seat: &Seat) -> [Edge; 3] {
    let [i, j, k] = seat.on;
    let nowhere = P {
        x: 0.0,
        y: 0.0,
        z: 0.0,
    };
    let at = |index: usize| points.get(index).copied().unwrap_or(nowhere);
    let corners = [i, j, k].map(|index| Slot {
        p: at(index),
        index,
    });
    [(i, j, k), (j, k, i), (k, i, j)].map(|(from, to, opposite)| {
        let (a, b, c) = (at(from), at(to), at(opposite));
        let (dx, dy) = (b.x - a.x, b.y - a.y);
        let length = libm::hypot(dx, dy);
        // Unit normal that points away from the third contact.
        let inward = dx * (c.y - a.y) - dy * (c.x - a.x);
        let sign = if inward > 0.0 { 1.0 } else { -1.0 };
        let down = (sign * dy / length, -sign * dx / length);
        let across = |p: &P| (p.x - a.x) * down.0 + (p.y - a.y) * down.1;
        // Tipping outwards by a slope t lowers the far side by t × distance until the first point there meets it.
        let mut stop: Option<(f64, &P)> = None;
        for p in points.iter().filter(|p| across(p) > 1e-9 * length) {
            let slope = libm::fmax(-seat.plane.residual(p), 0.0) / across(p);
            if stop.is_none_or(|(least, _)| slope < least) {
                stop = Some((slope, p));
            }
        }
        let jump_u = stop.map_or(f64::INFINITY, |(_, p)| {
            let shares: f64 = shares(&corners, p.x, p.y).iter().map(|s| s * s).sum();
            libm::sqrt(1.0 + shares) / across(p)
        });
        let away = libm::fabs((axis.0 - a.x) * down.0 + (axis.1 - a.y) * down.1);
        Edge {
            from,
            to,
            away,
            jump: stop.map_or(f64::INFINITY, |s| s.0),
            jump_u,
            down,
        }
    })
}
