//! Bores, both ends, axes and widths.

use super::*;

fn reading(angle: f64, depth: f64, d: f64, gauge: Gauge) -> BoreReading {
    BoreReading {
        at: clock(angle),
        depth: mm(depth),
        diameter: read(d, 0.004),
        gauge,
    }
}

fn surveys() -> Vec<(&'static str, BoreSurvey)> {
    let two = |a, depth, d| reading(a, depth, d, Gauge::TwoPoint);
    let three = |a, depth, d| reading(a, depth, d, Gauge::ThreePoint);
    let of = |all: &[BoreReading]| BoreSurvey::new(all.to_vec()).unwrap();
    vec![
        ("one reading", of(&[two(30.0, 4.0, 43.96)])),
        (
            "two axes at two depths",
            of(&[
                two(10.0, 3.0, 43.965),
                two(100.0, 3.2, 43.971),
                two(10.0, 14.0, 43.959),
                two(100.0, 14.0, 43.968),
            ]),
        ),
        (
            "oval and tapered",
            of(&[
                two(5.0, 2.0, 44.012),
                two(70.0, 2.0, 43.951),
                two(131.0, 2.0, 43.987),
                two(5.0, 15.0, 43.962),
                two(70.0, 15.0, 43.920),
                two(131.0, 15.0, 43.943),
            ]),
        ),
        (
            "two and three contacts that differ",
            of(&[
                two(0.0, 5.0, 43.97),
                two(90.0, 5.0, 43.975),
                three(20.0, 5.0, 44.01),
                three(80.0, 5.0, 44.02),
            ]),
        ),
        (
            "three contacts only",
            of(&[three(20.0, 5.0, 44.01), three(80.0, 9.0, 44.012)]),
        ),
    ]
}

#[test]
fn shapes_of_bores() {
    let mut page = Page::new();
    let limits = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
    let mut shapes = Vec::new();
    for (name, survey) in surveys() {
        page.title(name);
        let shape = survey.shape().unwrap();
        page.fields(&shape);
        page.said(
            "against 43.95 to 44",
            Ok(survey.against(&limits, DecisionRule::default())),
        );
        shapes.push((name, shape));
    }
    page.title("ends against each other");
    for (name, shape) in &shapes {
        for (other, end) in &shapes {
            if name != other {
                page.said(&format!("{name} / {other}"), shape.against_other_end(end));
            }
        }
    }
    page.title("axes");
    let axis = |a: [f64; 3], b: [f64; 3], u| {
        BoreAxis::new(point(a[0], a[1], a[2]), point(b[0], b[1], b[2]), mm(u)).unwrap()
    };
    let upper = axis([0.02, -0.01, 1.0], [0.05, 0.03, 13.0], 0.006);
    let lower = axis([0.31, -0.14, 112.0], [0.27, 0.22, 121.0], 0.009);
    page.said("upper from lower", lower.coaxiality(&upper));
    page.said("lower from upper", upper.coaxiality(&lower));
    page.said("upper from itself", upper.coaxiality(&upper));
    page.title("widths");
    let at = |a, w, u| WidthReading {
        at: clock(a),
        width: read(w, u),
    };
    let shell = WidthSurvey::new([
        at(12.0, 68.21, 0.01),
        at(131.0, 68.08, 0.02),
        at(247.0, 68.15, 0.015),
    ])
    .unwrap();
    page.fields(&shell.shape());
    page.line(&format!("range {}", rounded(shell.range())));
    page.said(
        "left",
        shell.remaining(&read(0.05, 0.01), &read(0.03, 0.02)),
    );
    page.check("face_guard/bores.txt");
}
