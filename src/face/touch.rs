//! How much of a surface stands at or above a level: of a sector, of a straight profile, and of a purely tilted ring.

use crate::quantity::to_mm;
use crate::{Error, ErrorKind};

/// Radius and height at the bends of the surface in one direction.
pub(crate) type Profile = [(f64, f64); 4];

/// ∫ r dr over that part of a narrow sector that stands at or above a level, from the profiles at its two sides.
pub(crate) fn sector_above(one: &Profile, other: &Profile, level: f64) -> f64 {
    /// Parts of a straight stretch, so that the weight of the radius is even enough within each.
    const PARTS: u8 = 4;
    let ([a, b, c, d], [e, f, g, h]) = (*one, *other);
    // Most sectors are wholly above or wholly below.
    let heights = [a.1, b.1, c.1, d.1, e.1, f.1, g.1, h.1];
    if heights.iter().all(|z| *z >= level) {
        return (d.0 * d.0 - a.0 * a.0) / 2.0;
    }
    if heights.iter().all(|z| *z < level) {
        return 0.0;
    }
    let mut sum = 0.0;
    for (from, to) in [((a, e), (b, f)), ((b, f), (c, g)), ((c, g), (d, h))] {
        let ((r1, z1), (r2, z2)) = (from.0, to.0);
        let (y1, y2) = (from.1.1, to.1.1);
        if r2 <= r1 {
            continue;
        }
        for part in 0..PARTS {
            let (start, end) = (
                f64::from(part) / f64::from(PARTS),
                f64::from(part + 1) / f64::from(PARTS),
            );
            let along = |low: f64, high: f64, at: f64| low + (high - low) * at;
            let (p, q) = (along(z1, z2, start), along(z1, z2, end));
            let (s, t) = (along(y1, y2, start), along(y1, y2, end));
            let (inside, outside) = (along(r1, r2, start), along(r1, r2, end));
            let weight = (outside * outside - inside * inside) / 2.0;
            sum += weight
                * f64::midpoint(
                    triangle_above([p, q, s], level),
                    triangle_above([q, s, t], level),
                );
        }
    }
    sum
}

/// Share of a flat triangle with these corner heights that stands at or above a level.
fn triangle_above(mut corners: [f64; 3], level: f64) -> f64 {
    corners.sort_by(f64::total_cmp);
    let [low, middle, high] = corners;
    let above = (high - level).max(0.0);
    if level <= low {
        1.0
    } else if level >= middle {
        above * above / ((high - middle) * (high - low)).max(f64::MIN_POSITIVE)
    } else {
        1.0 - (level - low) * (level - low) / ((high - low) * (middle - low)).max(f64::MIN_POSITIVE)
    }
}

/// The stretch of a straight profile that stands at or above a level; empty when none does.
pub(crate) fn stretch_above((r1, z1): (f64, f64), (r2, z2): (f64, f64), level: f64) -> (f64, f64) {
    match (z1 >= level, z2 >= level) {
        (true, true) => (r1, r2),
        (false, false) => (r1, r1),
        (high_first, _) => {
            let cross = r1 + (r2 - r1) * (level - z1) / (z2 - z1);
            if high_first { (r1, cross) } else { (cross, r2) }
        }
    }
}

/// Share of a straight segment that stands at or above a level.
pub(crate) fn above(from: f64, to: f64, level: f64) -> f64 {
    let (low, high) = (from.min(to), from.max(to));
    if level <= low {
        1.0
    } else {
        (high - level).max(0.0) / (high - low).max(f64::MIN_POSITIVE)
    }
}

/// Share of the area of a ring that a square cutter has touched, for a pure tilt: `depth` as a share of the clean-up
/// depth over the outer diameter. Closed form with circle segments S(R, t) = R² arccos(t/R) − t √(R² − t²).
///
/// # Errors
/// `OutOfRange` unless 0 ≤ depth ≤ 1.
///
/// ```
/// use framegauge::{Radius, face::{Annulus, tilted_ring_touched}, mm};
/// let ring = Annulus::new(Radius::new(mm(17.0)).unwrap(), Radius::new(mm(20.0)).unwrap()).unwrap();
/// assert!((tilted_ring_touched(0.5, ring).unwrap() - 0.5).abs() < 1e-12);
/// assert!((tilted_ring_touched(0.1, ring).unwrap() - 0.165_448_9).abs() < 1e-7);
/// ```
pub fn tilted_ring_touched(depth: f64, ring: super::Annulus) -> Result<f64, Error> {
    if !(0.0..=1.0).contains(&depth) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "depth",
            depth,
            "a share of the clean-up depth lies between 0 and 1",
            "divide the depth by the clean-up depth",
        ));
    }
    let (inner, outer) = (to_mm(ring.inner().length()), to_mm(ring.outer().length()));
    let from_axis = outer * (1.0 - 2.0 * depth);
    let segment = |radius: f64| {
        let t = from_axis.clamp(-radius, radius);
        radius * radius * libm::acos(t / radius) - t * libm::sqrt(radius * radius - t * t)
    };
    Ok((segment(outer) - segment(inner))
        / (core::f64::consts::PI * (outer * outer - inner * inner)))
}
