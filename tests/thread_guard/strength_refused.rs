//! Pairs, lengths, strengths and forces that are none.

use framegauge::thread::*;
use framegauge::{Ratio, mm, mpa, newton};

use super::strength::pair;
use super::{Page, refusal, size};

#[test]
fn refusals() {
    let mut page = Page::new();
    let limits =
        |text: &str, class: &str| limits_of_size(&size(text), &class.parse().unwrap()).unwrap();
    page.title("pairs");
    for (name, error) in [
        (
            "two sizes",
            MinimumMaterial::of_limits(&limits("M10x1", "6g"), &limits("M10x1.25", "6H"))
                .unwrap_err(),
        ),
        ("wrong way round", pair("M10x1", "6H", "6g").unwrap_err()),
        ("two holes", pair("M10x1", "6H", "6H").unwrap_err()),
        ("two screws", pair("M10x1", "6g", "6g").unwrap_err()),
    ] {
        page.line(&format!("{name}: {}", refusal(&error)));
    }
    for (text, [a, b, c, d]) in [
        ("36 mm x 24 tpi", [35.9, 35.3, 35.5, 35.0]),
        ("M10x1", [12.001, 9.3, 9.5, 9.0]),
        ("M10x1", [7.999, 9.3, 9.5, 9.0]),
        ("M10x1", [9.9, 12.001, 9.5, 9.0]),
        ("M10x1", [9.9, 9.3, 7.999, 9.0]),
        ("M10x1", [9.9, 9.3, 9.5, 99.0]),
        ("M10x1", [f64::NAN, 9.3, 9.5, 9.0]),
        ("M10x1", [9.9, 9.3, 9.5, -9.0]),
    ] {
        let error = MinimumMaterial::measured(&size(text), mm(a), mm(b), mm(c), mm(d)).unwrap_err();
        page.line(&format!("{text} {a} {b} {c} {d}: {}", refusal(&error)));
    }
    page.title("lengths, strengths and forces");
    let ten = pair("M10x1", "6g", "6H").unwrap();
    for (length, hole) in [
        (8.001, Some(8.0)),
        (0.0, None),
        (f64::NAN, None),
        (5.0, Some(0.0)),
        (5.0, Some(f64::NAN)),
    ] {
        page.line(&format!(
            "{length} in {hole:?}: {}",
            refusal(&ten.shear_areas(mm(length), hole.map(mm)).unwrap_err())
        ));
    }
    for bad in [0.0, -5.0, 5000.1, f64::NAN, f64::INFINITY] {
        let strips = |screw, hole| {
            ten.stripping(mm(8.0), None, mpa(screw), mpa(hole))
                .unwrap_err()
        };
        page.line(&format!(
            "screw {bad} MPa: {}",
            refusal(&strips(bad, 100.0))
        ));
        page.line(&format!("hole {bad} MPa: {}", refusal(&strips(100.0, bad))));
        let area = stress_area(&size("M10x1"), StressAreaRule::Iso898).unwrap();
        page.line(&format!(
            "equal {bad} MPa: {}",
            refusal(
                &ten.engagement_for_equal_strength(area, mpa(bad), mpa(9.0))
                    .unwrap_err()
            )
        ));
        page.line(&format!(
            "force at {bad} MPa: {}",
            refusal(
                &ten.engagement_for_force(newton(9.0), Member::External, mpa(bad))
                    .unwrap_err()
            )
        ));
    }
    assert!(
        ten.stripping(mm(8.0), None, mpa(5000.0), mpa(5000.0))
            .is_ok()
    );
    for bad in [0.0, -9.0, f64::NAN, f64::INFINITY] {
        page.line(&format!(
            "{bad} N: {}",
            refusal(
                &ten.engagement_for_force(newton(bad), Member::External, mpa(100.0))
                    .unwrap_err()
            )
        ));
        let area = mm(1.0) * mm(bad);
        page.line(&format!(
            "{bad} mm2: {}",
            refusal(
                &ten.engagement_for_equal_strength(area, mpa(100.0), mpa(100.0))
                    .unwrap_err()
            )
        ));
    }
    let gone =
        MinimumMaterial::measured(&size("M10x1"), mm(9.6), mm(9.2), mm(10.0), mm(9.7)).unwrap();
    let area = stress_area(&size("M10x1"), StressAreaRule::Iso898).unwrap();
    page.line(&format!(
        "no overlap, force: {}",
        refusal(
            &gone
                .engagement_for_force(newton(9.0), Member::External, mpa(100.0))
                .unwrap_err()
        )
    ));
    page.line(&format!(
        "no overlap, equal: {}",
        refusal(
            &gone
                .engagement_for_equal_strength(area, mpa(100.0), mpa(100.0))
                .unwrap_err()
        )
    ));
    let strips = ten
        .stripping(mm(8.0), None, mpa(380.0), mpa(170.0))
        .unwrap();
    for factor in [0.049, 0.601, -0.2, f64::NAN] {
        page.line(&format!(
            "nut factor {factor}: {}",
            refusal(&strips.torque(&size("M10x1"), Ratio(factor)).unwrap_err())
        ));
    }
    for factor in [0.05, 0.6] {
        assert!(strips.torque(&size("M10x1"), Ratio(factor)).is_ok());
    }
    page.title("areas");
    for (text, rule) in [
        ("M10x1", StressAreaRule::FedStdH28),
        ("9/16-20 UN", StressAreaRule::Iso898),
        ("1.370-24 BSC", StressAreaRule::Iso898),
    ] {
        page.line(&format!(
            "{text}: {}",
            refusal(&stress_area(&size(text), rule).unwrap_err())
        ));
    }
    page.line(&refusal(
        &high_strength_stress_area(&size("M10x1"), mm(9.3)).unwrap_err(),
    ));
    page.line(&refusal(
        &high_strength_stress_area(&size("1/2-20 UN"), mm(-9.3)).unwrap_err(),
    ));
    page.line(&refusal(
        &rough_shear_areas(&size("36 mm x 24 tpi"), mm(8.0)).unwrap_err(),
    ));
    page.line(&refusal(
        &rough_shear_areas(&size("M10x1"), mm(f64::INFINITY)).unwrap_err(),
    ));
    page.check("thread_guard/strength_refused.txt");
}
