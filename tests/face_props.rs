//! What must hold for any face.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::face::{
    Annulus, Clock, Point, Probe, RingSurvey, least_squares, least_squares_tangent,
    minimax_tangent, minimum_zone, seat_plane,
};
use framegauge::measure::Reading;
use framegauge::{Radius, deg, mm, to_mm};
use proptest::prelude::*;

fn point(x: f64, y: f64, z: f64) -> Point {
    Point::new(mm(x), mm(y), mm(z)).unwrap()
}

fn xyz(p: &Point) -> (f64, f64, f64) {
    (to_mm(p.x()), to_mm(p.y()), to_mm(p.z()))
}

fn radius(v: f64) -> Radius {
    Radius::new(mm(v)).unwrap()
}

/// Heights at increasing angles all round, never all on one side.
fn ring_heights() -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(-0.2..0.2, 4..20)
}

fn ring_points(heights: &[f64], turned: f64) -> Vec<Point> {
    let step = std::f64::consts::TAU / heights.len() as f64;
    let at = |i: usize| step * i as f64 + turned;
    heights
        .iter()
        .enumerate()
        .map(|(i, z)| point(20.0 * at(i).cos(), 20.0 * at(i).sin(), *z))
        .collect()
}

fn survey(heights: &[f64], turned_deg: f64) -> RingSurvey {
    let step = 360.0 / heights.len() as f64;
    let probes: Vec<Probe> = heights
        .iter()
        .enumerate()
        .map(|(i, z)| Probe {
            at: Clock::new(deg((step * i as f64 + turned_deg).rem_euclid(360.0))).unwrap(),
            radius: radius(20.0),
            height: Reading::new(mm(*z), mm(0.004)).unwrap(),
        })
        .collect();
    RingSurvey::new(
        Annulus::new(radius(17.0), radius(21.0)).unwrap(),
        "thread",
        probes,
    )
    .unwrap()
}

fn scattered() -> impl Strategy<Value = Vec<Point>> {
    prop::collection::vec((-30.0..30.0, -30.0..30.0, -0.2..0.2), 4..30)
        .prop_map(|all| all.into_iter().map(|(x, y, z)| point(x, y, z)).collect())
}

fn zone(points: &[Point]) -> f64 {
    to_mm(minimum_zone(points).unwrap().zone())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, ..ProptestConfig::default() })]

    #[test]
    fn adding_a_plane_changes_no_flatness(points in scattered(), a in -0.02..0.02, b in -0.02..0.02, c in -5.0..5.0) {
        let moved: Vec<Point> = points.iter().map(xyz).map(|(x, y, z)| point(x, y, z + a * x + b * y + c)).collect();
        prop_assert!((zone(&points) - zone(&moved)).abs() < 1e-11);
        let range = |p: &[Point]| to_mm(least_squares(p).unwrap().range());
        prop_assert!((range(&points) - range(&moved)).abs() < 1e-11);
    }

    #[test]
    fn stretching_the_places_changes_no_flatness(points in scattered(), sx in 0.3..3.0, sy in 0.3..3.0) {
        let moved: Vec<Point> = points.iter().map(xyz).map(|(x, y, z)| point(x * sx, y * sy, z)).collect();
        prop_assert!((zone(&points) - zone(&moved)).abs() < 1e-11);
    }

    #[test]
    fn rotating_the_ring_rotates_the_answer(heights in ring_heights(), turned in 0.0..360.0) {
        let (still, turned_by) = (survey(&heights, 0.0), survey(&heights, turned));
        let flat = |s: &RingSurvey| to_mm(s.flatness().unwrap().along_axis);
        prop_assert!((flat(&still) - flat(&turned_by)).abs() < 1e-11);
        let (one, other) = (still.tilt(mm(40.0)).unwrap(), turned_by.tilt(mm(40.0)).unwrap());
        let run_out = |t: &framegauge::face::Tilt| to_mm(t.run_out.value());
        prop_assert!((run_out(&one) - run_out(&other)).abs() < 1e-11);
        if run_out(&one) > 1e-6 {
            let moved = (other.high_at.unwrap().degrees() - one.high_at.unwrap().degrees() - turned).rem_euclid(360.0);
            prop_assert!(moved.min(360.0 - moved) < 1e-3, "high point moved by {moved} deg off the turn");
        }
        let height = |s: &RingSurvey| to_mm(s.seat().unwrap().height());
        prop_assert!((height(&still) - height(&turned_by)).abs() < 1e-11);
    }

    #[test]
    fn adding_a_point_never_lowers_the_zone(points in scattered(), x in -30.0..30.0, y in -30.0..30.0, z in -0.3..0.3) {
        let mut more = points.clone();
        more.push(point(x, y, z));
        prop_assert!(zone(&more) >= zone(&points) - 1e-12);
    }

    #[test]
    fn the_zone_is_at_most_the_least_squares_range(points in scattered()) {
        let found = minimum_zone(&points).unwrap();
        prop_assert!(found.zone() <= least_squares(&points).unwrap().range() + mm(1e-12));
        prop_assert!(found.zone_normal() <= found.zone());
        prop_assert!(found.certificate().holds(&points));
    }

    #[test]
    fn far_off_narrow_and_steep_sets_are_proven_too(
        points in scattered(), x in -900.0..900.0, y in -900.0..900.0, narrow in 0.002..1.0, a in -3.0..3.0, b in -3.0..3.0,
    ) {
        let moved: Vec<Point> = points
            .iter()
            .map(xyz)
            .map(|(px, py, pz)| point(x + px, y + py * narrow, pz + a * px + b * py))
            .collect();
        let found = minimum_zone(&moved).unwrap();
        prop_assert!(found.certificate().holds(&moved));
        prop_assert!((to_mm(found.zone()) - zone(&points)).abs() < 1e-8);
        prop_assert!((to_mm(least_squares(&moved).unwrap().range()) - to_mm(least_squares(&points).unwrap().range())).abs() < 1e-8);
        prop_assert!(least_squares_tangent(&moved).unwrap().plane().supports(&moved));
    }

    #[test]
    fn no_plane_beats_the_zone(points in scattered(), a in -0.02..0.02, b in -0.02..0.02) {
        // Any other slope needs at least as thick a slab.
        let all = points.iter().map(xyz).map(|(x, y, z)| z - a * x - b * y);
        let (low, high) = all.fold((f64::MAX, f64::MIN), |(l, h), v| (l.min(v), h.max(v)));
        prop_assert!(high - low >= zone(&points) - 1e-12);
    }

    #[test]
    fn a_false_certificate_is_refused(points in scattered(), lift in 0.01..0.1) {
        let proof = minimum_zone(&points).unwrap().certificate();
        let mut moved = points.clone();
        let (x, y, z) = xyz(&moved[proof.upper().next().unwrap().0]);
        moved[proof.upper().next().unwrap().0] = point(x, y, z + lift);
        prop_assert!(!proof.holds(&moved));
    }

    #[test]
    fn the_touched_share_grows_with_depth(heights in ring_heights(), first in 0.0..0.4, more in 0.0..0.2) {
        let survey = survey(&heights, 0.0);
        for share in [RingSurvey::touched_area, RingSurvey::touched_arc] {
            let (less, most) = (share(&survey, mm(first)).unwrap(), share(&survey, mm(first + more)).unwrap());
            prop_assert!(less <= most + 1e-12 && (0.0..=1.0).contains(&less) && most <= 1.0);
        }
        let clean = survey.clean_up();
        prop_assert!((survey.touched_arc(clean.at_probes).unwrap() - 1.0).abs() < 1e-9);
        prop_assert!((survey.touched_area(clean.at_outer_edge).unwrap() - 1.0).abs() < 1e-9);
        prop_assert!(clean.at_probes <= clean.at_outer_edge + mm(1e-12) && clean.at_outer_edge <= clean.upper);
    }

    #[test]
    fn seat_and_tangents_support_every_point(heights in ring_heights(), turned in 0.0..6.0) {
        let points = ring_points(&heights, turned);
        let seat = seat_plane(&points, mm(0.0), mm(0.0)).unwrap();
        for plane in seat.positions().into_iter().chain([seat.plane()]) {
            prop_assert!(plane.supports(&points));
            prop_assert!((to_mm(plane.height()) - to_mm(seat.height())).abs() < 1e-12);
        }
        let load: f64 = seat.contacts().map(|c| c.1).sum();
        prop_assert!((load - 1.0).abs() < 1e-9);
        let (minimax, squares) = (minimax_tangent(&points).unwrap(), least_squares_tangent(&points).unwrap());
        prop_assert!(minimax.plane().supports(&points) && squares.plane().supports(&points));
        prop_assert!(squares.contacts().count() >= 1);
        // The seat is lowest of all supporting planes at the axis; the tangent by squares has the least sum.
        for other in [minimax.plane(), squares.plane()] {
            prop_assert!(to_mm(other.height()) >= to_mm(seat.height()) - 1e-12);
        }
        let sum = |plane: framegauge::face::Plane| points.iter().map(|p| to_mm(plane.gap_to(p)).powi(2)).sum::<f64>();
        for other in [minimax.plane(), seat.plane()] {
            prop_assert!(sum(squares.plane()) <= sum(other) + 1e-12);
        }
    }

    #[test]
    fn any_numbers_give_an_answer_or_an_error(raw in prop::collection::vec((any::<f64>(), any::<f64>(), any::<f64>()), 0..12)) {
        let points: Vec<Point> = raw.iter().filter_map(|(x, y, z)| Point::new(mm(*x), mm(*y), mm(*z)).ok()).collect();
        let _ = least_squares(&points);
        let _ = minimum_zone(&points);
        let _ = minimax_tangent(&points);
        let _ = least_squares_tangent(&points);
        let _ = seat_plane(&points, mm(0.0), mm(0.0));
    }
}

proptest! {
    // Each case halves its way to a depth, so fewer of them.
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn the_depth_for_a_share_reaches_it(heights in ring_heights(), wanted in 0.05..1.0) {
        let survey = survey(&heights, 0.0);
        let depth = survey.depth_for_share(wanted).unwrap();
        prop_assert!(survey.touched_area(depth).unwrap() >= wanted - 1e-9);
        if depth > mm(1e-4) {
            prop_assert!(survey.touched_area(depth - mm(1e-4)).unwrap() <= wanted + 1e-9);
        }
    }
}
