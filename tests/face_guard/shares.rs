//! How much of a ring a depth touches, how deep a share needs, what probes see, how a clock reads.

use super::*;

#[test]
fn shares_and_depths() {
    let mut page = Page::new();
    for (name, survey) in super::rings::rings() {
        page.title(name);
        for depth in [0.0, 0.003, 0.011, 0.026, 0.04, 0.07, 0.101, 0.14, 0.2, 1.5] {
            let [arc, area] = [
                survey.touched_arc(mm(depth)).unwrap(),
                survey.touched_area(mm(depth)).unwrap(),
            ];
            page.line(&format!("{depth} mm: arc {arc:.6}, area {area:.6}"));
        }
        for share in [0.01, 0.1, 0.37, 0.5, 0.82, 0.95, 1.0] {
            page.line(&format!(
                "{share} of the face: {} mm",
                rounded(survey.depth_for_share(share).unwrap())
            ));
        }
    }
    page.title("a tilted ring, no other error");
    for depth in [0.0, 0.07, 0.1, 0.31, 0.5, 0.66, 0.93, 1.0] {
        let wide = Annulus::new(radius(8.0), radius(20.9)).unwrap();
        let [a, b] = [face(), wide].map(|r| tilted_ring_touched(depth, r).unwrap());
        page.line(&format!("{depth} of the depth: {a:.9} and {b:.9}"));
    }
    page.check("face_guard/shares.txt");
}

#[test]
fn probes_and_clocks() {
    let mut page = Page::new();
    page.title("what probes can see");
    for probes in [3, 4, 5, 6, 7, 8, 9, 10, 11, 24, 999, 1000] {
        page.said(&probes.to_string(), sampling(probes));
    }
    for undulations in [0, 1, 2, 3, 7, u32::MAX] {
        page.line(&format!(
            "{undulations} undulations: {}",
            probes_for(undulations)
        ));
    }
    page.title("clock angles");
    for angle in [
        0.0, 1.2, 1.3, 29.9, 44.0, 179.6, 185.0, 271.25, 345.1, 358.7, 358.8, 359.999,
    ] {
        let at = clock(angle);
        let apart = |other: f64| at.apart(clock(other)).value.to_degrees();
        page.line(&format!(
            "{at}; {:.6} and {:.6} deg from 10 and 200 deg",
            apart(10.0),
            apart(200.0)
        ));
        page.said("    written", Ok(at));
    }
    page.title("high points of planes");
    for (x, y) in [
        (0.0, 0.001),
        (0.002, 0.001),
        (0.001, -0.003),
        (-0.002, -0.001),
        (-0.0005, 0.004),
        (0.0, 0.0),
    ] {
        page.said(&format!("{x}, {y}"), Plane::new(x, y, mm(0.25)));
    }
    page.check("face_guard/probes.txt");
}
