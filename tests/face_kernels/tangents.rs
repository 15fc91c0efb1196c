//! The tangent plane by least squares: convex, so no plane a little beside it may have a smaller sum.

use super::*;

/// The sum of squares of the lowest plane of these slopes that supports every point.
fn sum(points: &[Point], slopes: (f64, f64)) -> f64 {
    let residual = |p: &Point| {
        let [x, y, z] = xyz(p);
        z - slopes.0 * x - slopes.1 * y
    };
    let height = points.iter().map(residual).fold(f64::MIN, f64::max);
    points.iter().map(|p| (height - residual(p)).powi(2)).sum()
}

#[test]
fn no_plane_beside_the_tangent_is_closer() {
    let mut dice = Dice(0x1234_5678_9ABC_DEF1);
    let mut held = [0; 4];
    for _ in 0..1500 {
        let n = dice.whole(3, 14);
        let points = cloud(&mut dice, n);
        let Ok(tangent) = least_squares_tangent(&points) else {
            continue;
        };
        let plane = tangent.plane();
        assert!(plane.supports(&points));
        let best = sum(&points, (plane.slope_x(), plane.slope_y()));
        let own: f64 = points.iter().map(|p| to_mm(plane.gap_to(p)).powi(2)).sum();
        assert!((own - best).abs() < 1e-12, "{own} {best}");
        for step in [1e-3, 1e-5] {
            for turn in 0..12 {
                let t = f64::from(turn) * std::f64::consts::TAU / 12.0;
                let beside = (
                    plane.slope_x() + step * t.cos(),
                    plane.slope_y() + step * t.sin(),
                );
                assert!(sum(&points, beside) >= best - 1e-13, "{points:?}");
            }
        }
        let on: Vec<usize> = tangent.contacts().collect();
        held[on.len()] += 1;
        for index in on {
            assert!(to_mm(plane.gap_to(&points[index])).abs() < 1e-9);
        }
    }
    // All ways of being held occur.
    assert!(
        held[0] == 0 && held[1..].iter().all(|n| *n > 50),
        "{held:?}"
    );
}
