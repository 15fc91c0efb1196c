//! Planes through free points: least squares, thinnest zone, tangents, seat, cutter.

use super::*;

fn clouds() -> Vec<(&'static str, Vec<Point>)> {
    let from = |all: &[(f64, f64, f64)]| all.iter().map(|p| point(p.0, p.1, p.2)).collect();
    vec![
        (
            "six places about an axis",
            from(&[
                (18.3, 4.1, 0.031),
                (6.2, 17.5, -0.012),
                (-14.9, 11.7, 0.044),
                (-19.0, -5.2, 0.009),
                (-3.3, -18.8, 0.027),
                (13.1, -12.6, -0.035),
            ]),
        ),
        (
            "four corners that cross",
            from(&[
                (30.0, 1.0, 0.06),
                (2.0, 11.0, 0.01),
                (-30.0, -1.0, 0.05),
                (-2.0, -11.0, -0.02),
            ]),
        ),
        (
            "far off the axis and steep",
            from(&[
                (431.0, -207.0, 12.30),
                (449.0, -201.0, 13.55),
                (455.0, -222.0, 15.02),
                (437.0, -231.0, 14.46),
                (428.0, -219.0, 13.01),
            ]),
        ),
        (
            "whole numbers, three in line and two of one height",
            from(&[
                (0.0, 0.0, 0.0),
                (1.0, 0.0, 2.0),
                (2.0, 0.0, 1.0),
                (0.0, 1.0, 2.0),
                (2.0, 2.0, 0.0),
                (1.0, 2.0, 3.0),
            ]),
        ),
        (
            "three places",
            from(&[(3.0, 1.0, 0.2), (-2.0, 4.0, -0.1), (-1.0, -5.0, 0.4)]),
        ),
    ]
}

#[test]
fn planes_of_points() {
    let mut page = Page::new();
    for (name, points) in clouds() {
        page.title(name);
        let n = points.len() as f64;
        let axis = points.iter().fold((0.0, 0.0), |(x, y), p| {
            (x + to_mm(p.x()) / n, y + to_mm(p.y()) / n)
        });
        page.said("least squares", least_squares(&points));
        page.said("zone", minimum_zone(&points));
        let zone = minimum_zone(&points).unwrap();
        let proof = zone.certificate();
        let side = |held: Vec<(usize, f64)>| {
            held.iter()
                .map(|(i, w)| format!("{i} by {w:.6}"))
                .collect::<Vec<_>>()
                .join(", ")
        };
        page.line(&format!(
            "held above {}; below {}; {} steps",
            side(proof.upper().collect()),
            side(proof.lower().collect()),
            zone.steps()
        ));
        page.said("minimax tangent", minimax_tangent(&points));
        page.said("least-squares tangent", least_squares_tangent(&points));
        page.said("cutter at 0.02", cutter_plane(&points, mm(0.02)));
        for (x, y) in [axis, (axis.0 + 1.5, axis.1 - 0.7)] {
            let seat = seat_plane(&points, mm(x), mm(y));
            page.said(&format!("seat at {x:.3}, {y:.3}"), seat);
            let Ok(seat) = seat_plane(&points, mm(x), mm(y)) else {
                continue;
            };
            for wander in [0.0, 0.8, 6.0] {
                page.said(
                    &format!("    rock within {wander}"),
                    seat.rock(mm(31.0), mm(wander), mm(0.004)),
                );
            }
            page.said("    worst run-out", seat.worst_run_out(mm(31.0)));
        }
        let plane = least_squares(&points).unwrap().plane();
        let tangent = least_squares_tangent(&points).unwrap().plane();
        let cutter = cutter_plane(&points, mm(0.02)).unwrap();
        for (index, p) in points.iter().enumerate() {
            page.line(&format!(
                "    {index}: {} under the plane, {} under the tangent, {} cut off",
                rounded(plane.gap_to(p)),
                rounded(tangent.gap_to(p)),
                rounded(cutter.taken_at(p))
            ));
        }
        page.line(&format!(
            "reach {} and lifted by 0.3 {}; touched {:?}",
            rounded(plane.reach(&points)),
            rounded(plane.lifted(mm(0.3)).reach(&points)),
            cutter.touched(&points).collect::<Vec<_>>()
        ));
    }
    page.check("face_guard/planes.txt");
}

/// The line of two contacts passes through the axis, beside it by a little, and by more than any wander.
#[test]
fn seats_on_a_line_of_contacts() {
    let mut page = Page::new();
    let points = &clouds()[1].1;
    for (x, y) in [(0.0, 0.0), (0.4, 0.1), (-0.3, 0.9), (3.0, 0.1), (0.0, 5.0)] {
        page.title(&format!("axis at {x}, {y}"));
        let seat = seat_plane(points, mm(x), mm(y)).unwrap();
        for plane in seat.positions() {
            page.said("position", Ok(plane));
        }
        page.said("middle", Ok(seat.plane()));
        for (point, load) in seat.contacts() {
            page.line(&format!("point {point} carries {load:.6}"));
        }
        page.said("rock", seat.rock(mm(40.0), mm(1.0), mm(0.003)));
        page.said("worst", seat.worst_run_out(mm(40.0)));
    }
    page.check("face_guard/seats.txt");
}
