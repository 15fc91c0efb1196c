//! Least squares from one side: the plane above all points with the least sum of squared distances to them (the
//! default datum plane of ASME Y14.5.1-2019). A small convex problem: at most three points hold it.

use super::{Abc, P, Scale, lsq::Fit, most_steps};

/// u minimising |u|² subject to g·u ≥ r for the held points, in a frame where the sum of squares is |u|².
type V3 = [f64; 3];

fn dot(a: &V3, b: &V3) -> f64 {
    let ([a0, a1, a2], [b0, b1, b2]) = (a, b);
    a0 * b0 + a1 * b1 + a2 * b2
}

#[derive(Clone, Copy)]
struct Constraint {
    g: V3,
    r: f64,
    index: usize,
}

/// The solution of the constraints as equalities, with their multipliers; `None` when they are dependent or a
/// multiplier is negative.
fn held(by: &[Constraint]) -> Option<V3> {
    let multipliers: V3 = match by {
        [] => return Some([0.0; 3]),
        [a] => {
            let aa = dot(&a.g, &a.g);
            [a.r / aa, 0.0, 0.0]
        }
        [a, b] => {
            let (aa, ab, bb) = (dot(&a.g, &a.g), dot(&a.g, &b.g), dot(&b.g, &b.g));
            let det = aa * bb - ab * ab;
            if det <= 1e-13 * aa * bb {
                return None;
            }
            [
                (a.r * bb - b.r * ab) / det,
                (b.r * aa - a.r * ab) / det,
                0.0,
            ]
        }
        [a, b, c, ..] => {
            let (aa, ab, ac) = (dot(&a.g, &a.g), dot(&a.g, &b.g), dot(&a.g, &c.g));
            let (bb, bc, cc) = (dot(&b.g, &b.g), dot(&b.g, &c.g), dot(&c.g, &c.g));
            let (m0, m1, m2) = (bb * cc - bc * bc, ac * bc - ab * cc, ab * bc - ac * bb);
            let det = aa * m0 + ab * m1 + ac * m2;
            if det <= 1e-13 * aa * bb * cc {
                return None;
            }
            let (m3, m4, m5) = (aa * cc - ac * ac, ab * ac - aa * bc, aa * bb - ab * ab);
            [
                (m0 * a.r + m1 * b.r + m2 * c.r) / det,
                (m1 * a.r + m3 * b.r + m4 * c.r) / det,
                (m2 * a.r + m4 * b.r + m5 * c.r) / det,
            ]
        }
    };
    if multipliers.iter().any(|m| *m < -1e-12) {
        return None;
    }
    let mut u = [0.0; 3];
    for (constraint, multiplier) in by.iter().zip(multipliers) {
        for (component, g) in u.iter_mut().zip(constraint.g) {
            *component += multiplier * g;
        }
    }
    Some(u)
}

/// The best of all choices of at most three out of the four, that meets all four.
fn resolve(
    four: &[Constraint; 4],
    count: usize,
    tolerance: f64,
) -> Option<(V3, [Constraint; 3], usize)> {
    let mut best: Option<(f64, V3, [Constraint; 3], usize)> = None;
    for mask in 0_u32..16 {
        if mask.count_ones() > 3 || (mask >> count) != 0 {
            continue;
        }
        let mut chosen = [Constraint {
            g: [0.0; 3],
            r: 0.0,
            index: usize::MAX,
        }; 3];
        let mut slots = chosen.iter_mut();
        for (bit, constraint) in four.iter().take(count).enumerate() {
            if mask & (1 << bit) != 0
                && let Some(slot) = slots.next()
            {
                *slot = *constraint;
            }
        }
        let size = mask.count_ones() as usize;
        let Some(u) = held(chosen.get(..size)?) else {
            continue;
        };
        if four
            .iter()
            .take(count)
            .any(|c| dot(&c.g, &u) < c.r - tolerance)
        {
            continue;
        }
        let norm = dot(&u, &u);
        if best.is_none_or(|(least, ..)| norm < least) {
            best = Some((norm, u, chosen, size));
        }
    }
    best.map(|(_, u, chosen, size)| (u, chosen, size))
}

/// The plane and the points that hold it (`usize::MAX` where fewer than three do).
pub(crate) fn tangent(points: &[P], fit: &Fit) -> Option<(Abc, [usize; 3])> {
    let frame = fit.frame();
    let tolerance = 5.0 * Scale::of(points, (0.0, 0.0)).rounding(&fit.plane);
    let constraint = |index: usize, p: &P| Constraint {
        g: frame.row(p.x, p.y),
        r: fit.plane.residual(p),
        index,
    };
    let nobody = Constraint {
        g: [0.0; 3],
        r: 0.0,
        index: usize::MAX,
    };
    let mut u = [0.0; 3];
    let (mut basis, mut size) = ([nobody; 3], 0);
    // Every step lifts |u|, so no choice of points returns.
    for _ in 0..most_steps(points) {
        let mut worst: Option<(f64, Constraint)> = None;
        for (index, p) in points.iter().enumerate() {
            let c = constraint(index, p);
            let short = c.r - dot(&c.g, &u);
            if short > tolerance && worst.is_none_or(|(most, _)| short > most) {
                worst = Some((short, c));
            }
        }
        let Some((_, enters)) = worst else {
            let [da, db, dc] = frame.slopes(&u);
            let plane = Abc {
                a: fit.plane.a + da,
                b: fit.plane.b + db,
                c: fit.plane.c + dc,
            };
            // Nothing stood above: all of them lie on the plane, so the first three touch it.
            let on = if size == 0 {
                [0, 1, 2]
            } else {
                basis.map(|c| c.index)
            };
            return Some((plane, on));
        };
        let [a, b, c] = basis;
        let mut four = [a, b, c, nobody];
        *four.get_mut(size)? = enters;
        (u, basis, size) = resolve(&four, size + 1, tolerance)?;
    }
    None
}
