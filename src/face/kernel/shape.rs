//! Least squares of a ring's heights over tilt, dish and saddle at once.

use super::P;

/// Terms: height, slope in x, slope in y, rise per unit of radius, cos 2θ and sin 2θ of the clock angle.
pub(crate) const TERMS: usize = 6;

/// Coefficients of the terms that were asked for; those left out are zero. `None` when the probes cannot tell the
/// terms apart.
pub(crate) fn fit(points: &[P], unit: f64, dish: bool, saddle: bool) -> Option<[f64; TERMS]> {
    let wanted = [true, true, true, dish, saddle, saddle];
    let mut m = [[0.0; TERMS + 1]; TERMS];
    for p in points {
        let row = terms(p, unit);
        for ((line, term), want) in m.iter_mut().zip(row).zip(wanted) {
            if !want {
                continue;
            }
            for ((cell, other), used) in line
                .iter_mut()
                .zip(row.iter().chain([&p.z]))
                .zip(wanted.iter().chain([&true]))
            {
                if *used {
                    *cell += term * other;
                }
            }
        }
    }
    for ((index, line), want) in m.iter_mut().enumerate().zip(wanted) {
        if !want && let Some(diagonal) = line.get_mut(index) {
            *diagonal = 1.0;
        }
    }
    solve(m)
}

/// The terms at a point; slopes are taken per `unit`, a radius of the face, so that all terms are of one size.
pub(crate) fn terms(p: &P, unit: f64) -> [f64; TERMS] {
    let r2 = p.x * p.x + p.y * p.y;
    let (cos2, sin2) = if r2 > 0.0 {
        ((p.y * p.y - p.x * p.x) / r2, 2.0 * p.x * p.y / r2)
    } else {
        (0.0, 0.0)
    };
    [
        1.0,
        p.x / unit,
        p.y / unit,
        libm::sqrt(r2) / unit - 1.0,
        cos2,
        sin2,
    ]
}

/// Gauss with row pivots; a pivot that has all but vanished means that the terms cannot be told apart.
fn solve(mut m: [[f64; TERMS + 1]; TERMS]) -> Option<[f64; TERMS]> {
    let at = |row: &[f64; TERMS + 1], col: usize| row.get(col).copied().unwrap_or(0.0);
    let mut largest = 0.0_f64;
    for (index, row) in m.iter().enumerate() {
        largest = largest.max(at(row, index).abs());
    }
    for col in 0..TERMS {
        let (pivot, _) = m
            .iter()
            .enumerate()
            .skip(col)
            .max_by(|a, b| at(a.1, col).abs().total_cmp(&at(b.1, col).abs()))?;
        m.swap(col, pivot);
        let head = *m.get(col)?;
        if at(&head, col).abs() <= 1e-9 * largest {
            return None;
        }
        for row in m.iter_mut().skip(col + 1) {
            let factor = at(row, col) / at(&head, col);
            for (cell, above) in row.iter_mut().zip(head) {
                *cell -= factor * above;
            }
        }
    }
    let mut x = [0.0; TERMS];
    for row in (0..TERMS).rev() {
        let line = m.get(row)?;
        let known: f64 = line.iter().zip(x).skip(row + 1).map(|(c, v)| c * v).sum();
        *x.get_mut(row)? = (at(line, TERMS) - known) / at(line, row);
    }
    Some(x)
}
