//! Seats: height, load, and how far they rock.

use super::*;
use microlp::{ComparisonOp, OptimizationDirection, Problem};

/// min c with a x + b y + c ≥ z, about the axis: no bound when the axis lies outside the points.
fn lowest(points: &[Point], axis: (f64, f64)) -> Option<f64> {
    let mut lp = Problem::new(OptimizationDirection::Minimize);
    let free = (f64::NEG_INFINITY, f64::INFINITY);
    let (a, b, c) = (
        lp.add_var(0.0, free),
        lp.add_var(0.0, free),
        lp.add_var(1.0, free),
    );
    for p in points {
        let [x, y, z] = xyz(p);
        lp.add_constraint(
            [(a, x - axis.0), (b, y - axis.1), (c, 1.0)],
            ComparisonOp::Ge,
            z,
        );
    }
    Some(lp.solve().ok()?.into_solution().ok()?.objective())
}

/// The seat and its load: together they carry the height, and their centre is the axis.
fn check(points: &[Point], axis: (f64, f64)) -> bool {
    let wanted = lowest(points, axis);
    let Ok(seat) = seat_plane(points, mm(axis.0), mm(axis.1)) else {
        assert!(
            wanted.is_none() || least_squares(points).is_err(),
            "refused about {axis:?}: {points:?}"
        );
        return false;
    };
    let wanted = wanted.unwrap_or_else(|| panic!("a seat outside of {points:?}: {axis:?}"));
    assert!(
        (to_mm(seat.height()) - wanted).abs() < 1e-9,
        "{} not {wanted}",
        to_mm(seat.height())
    );
    let (mut load, mut x, mut y, mut z) = (0.0, 0.0, 0.0, 0.0);
    for (index, share) in seat.contacts() {
        let p = xyz(&points[index]);
        load += share;
        x += share * p[0];
        y += share * p[1];
        z += share * p[2];
        assert!(share >= 0.0);
    }
    assert!((load - 1.0).abs() < 1e-9);
    assert!((x - axis.0).abs() < 1e-7 && (y - axis.1).abs() < 1e-7);
    assert!((z - wanted).abs() < 1e-9);
    for plane in seat.positions() {
        assert!(plane.supports(points));
    }
    true
}

#[test]
fn seats_about_any_axis_against_the_lp() {
    let mut dice = Dice(0x9E37_79B9_7F4A_7C15);
    let mut seated = 0;
    for _ in 0..1500 {
        let n = dice.whole(3, 9);
        let points = cloud(&mut dice, n);
        let axis = (dice.between(-25.0, 25.0), dice.between(-15.0, 15.0));
        seated += usize::from(check(&points, axis));
    }
    assert!((500..1400).contains(&seated), "{seated}");
}

/// Whole places: the axis often lies on a point, on an edge, or among points in line.
#[test]
fn seats_on_points_and_edges_against_the_lp() {
    let mut dice = Dice(0xD1B5_4A32_D192_ED03);
    let mut seated = 0;
    for _ in 0..3000 {
        let n = dice.whole(3, 7);
        let whole = |dice: &mut Dice| dice.whole(0, 4) as f64 - 2.0;
        let points: Vec<Point> = (0..n)
            .map(|_| point(whole(&mut dice), whole(&mut dice), whole(&mut dice)))
            .collect();
        if least_squares(&points).is_err() {
            continue;
        }
        let axis = (whole(&mut dice), whole(&mut dice));
        seated += usize::from(check(&points, axis));
    }
    assert!(seated > 1000, "{seated}");
}

fn through(p: [&Point; 3]) -> Option<(f64, f64)> {
    let [a, b, c] = p.map(xyz);
    let det = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    let side = |i: usize, j: usize| (b[i] - a[i]) * (c[j] - a[j]) - (b[j] - a[j]) * (c[i] - a[i]);
    // Slopes of the plane through three points, by Cramer's rule.
    (det.abs() > 1e-6).then(|| (-side(1, 2) / det, -side(2, 0) / det))
}

/// How far the part tips over each edge of its contacts: to the other plane through that edge that supports every point.
fn jumps(points: &[Point], on: [usize; 3]) -> Vec<f64> {
    let Some(seat) = through(on.map(|i| &points[i])) else {
        return Vec::new();
    };
    let [i, j, k] = on;
    let mut found = Vec::new();
    for (a, b) in [(i, j), (j, k), (k, i)] {
        let others = (0..points.len()).filter(|l| !on.contains(l));
        for l in others {
            let Some(slopes) = through([&points[a], &points[b], &points[l]]) else {
                continue;
            };
            let [x, y, z] = xyz(&points[a]);
            let plane =
                Plane::new(slopes.0, slopes.1, mm(z - slopes.0 * x - slopes.1 * y)).unwrap();
            if plane.supports(points) {
                found.push((slopes.0 - seat.0).hypot(slopes.1 - seat.1));
            }
        }
    }
    found
}

#[test]
fn rocks_reach_the_next_plane_that_supports_every_point() {
    let mut dice = Dice(0xA076_1D64_78BD_642F);
    let (mut rocked, mut still) = (0, 0);
    for _ in 0..1500 {
        let n = dice.whole(4, 9);
        let points = cloud(&mut dice, n);
        let Ok(seat) = seat_plane(&points, mm(1.0), mm(-2.0)) else {
            continue;
        };
        let on: Vec<usize> = seat.contacts().map(|c| c.0).collect();
        let found = jumps(&points, [on[0], on[1], on[2]]);
        let widest = found.iter().copied().fold(0.0, f64::max);
        // A point that all but lies on the edge makes the amplitude too uncertain to tell.
        let Ok(rock) = seat.rock(mm(37.0), mm(1000.0), mm(0.003)) else {
            continue;
        };
        let Some(rock) = rock else {
            assert!(found.is_empty(), "{found:?}");
            still += 1;
            continue;
        };
        rocked += 1;
        assert!(
            (to_mm(rock.amplitude.value()) - 37.0 * widest).abs() < 1e-9 * 37.0,
            "{rock:?}, wanted {widest}"
        );
        let [a, b] = rock.about.map(|i| xyz(&points[i]));
        let length = (b[0] - a[0]).hypot(b[1] - a[1]);
        let away = ((b[0] - a[0]) * (-2.0 - a[1]) - (b[1] - a[1]) * (1.0 - a[0])).abs() / length;
        assert!((to_mm(rock.axis_from_line) - away).abs() < 1e-9);
        // Only a load that wanders so far meets it.
        let within = |wander: f64| {
            let met = seat.rock(mm(37.0), mm(wander), mm(0.003)).unwrap();
            met.is_some_and(|r| r.about == rock.about)
        };
        assert!(within(away + 1e-6) && !within(away - 1e-6));
        // By how much a small change of each height changes the amplitude (root of the sum of squares).
        let step = 1e-6;
        let squares: f64 = (0..points.len())
            .map(|i| {
                let mut moved = points.clone();
                let [x, y, z] = xyz(&points[i]);
                moved[i] = point(x, y, z + step);
                let again = jumps(&moved, [on[0], on[1], on[2]]);
                let nearest = again.iter().copied().fold(f64::MAX, |best: f64, jump| {
                    if (jump - widest).abs() < (best - widest).abs() {
                        jump
                    } else {
                        best
                    }
                });
                ((nearest - widest) / step).powi(2)
            })
            .sum();
        let wanted = 37.0 * squares.sqrt() * 0.003;
        let u = to_mm(rock.amplitude.standard_uncertainty());
        assert!((u / wanted - 1.0).abs() < 1e-4, "{u} not {wanted}");
    }
    assert!(rocked > 300 && still > 10, "{rocked} {still}");
}

/// Where the axis stands on the line of two contacts, the part lies anywhere between two planes, and both are meant.
#[test]
fn two_positions_on_a_line_of_contacts() {
    // A roof along the line from (−12, −9) to (20, 15), which passes the origin; low corners on both sides.
    let points = [
        point(20.0, 15.0, 0.08),
        point(-12.0, -9.0, 0.05),
        point(-9.0, 12.0, 0.01),
        point(12.0, -16.0, -0.02),
    ];
    let seat = seat_plane(&points, mm(0.0), mm(0.0)).unwrap();
    // 20/32 of the way along: 0.05 · 20/32 + 0.08 · 12/32.
    assert!((to_mm(seat.height()) - 0.061_25).abs() < 1e-12);
    let [one, other] = seat.positions();
    let wanted = [[0, 1, 2], [0, 1, 3]].map(|t| through(t.map(|i| &points[i])).unwrap());
    let same = |plane: &Plane, slopes: (f64, f64)| {
        (plane.slope_x() - slopes.0).abs() < 1e-12 && (plane.slope_y() - slopes.1).abs() < 1e-12
    };
    assert!(
        (same(&one, wanted[0]) && same(&other, wanted[1]))
            || (same(&one, wanted[1]) && same(&other, wanted[0]))
    );
    let middle = seat.plane();
    assert!((middle.slope_x() - f64::midpoint(one.slope_x(), other.slope_x())).abs() < 1e-15);
    assert!((to_mm(middle.height()) - 0.061_25).abs() < 1e-12);
    let steepest = one.slope().max(other.slope());
    let worst = seat.worst_run_out(mm(31.0)).unwrap();
    assert!((to_mm(worst.value) - 31.0 * steepest).abs() < 1e-12);
    assert!(seat.rock(mm(31.0), mm(-0.1), mm(0.003)).is_err());
    assert!(seat.rock(mm(31.0), mm(f64::INFINITY), mm(0.003)).is_err());
    assert!(seat.rock(mm(31.0), mm(0.0), mm(0.003)).unwrap().is_some());
}
