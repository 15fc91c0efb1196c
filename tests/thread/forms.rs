//! Closed forms worked by hand from the printed formulas, on sizes that no table holds.

use framegauge::thread::{
    BasicDiameters, MinimumMaterial, ThreadLimits, ThreadSize, engagement_group, limits_of_size,
};
use framegauge::{Length, mm, settled_mm, to_mm};

fn size(text: &str) -> ThreadSize {
    text.parse().unwrap()
}

fn of(text: &str, class: &str) -> ThreadLimits {
    limits_of_size(&size(text), &class.parse().unwrap()).unwrap()
}

fn ends(limits: framegauge::measure::Limits) -> (f64, Option<f64>) {
    (
        settled_mm(limits.lower().known().unwrap()),
        limits.upper().known().map(settled_mm),
    )
}

/// ISO 965-1, clause 13: EI G = 15 + 11 P, es e = 50 + 11 P, es f = 30 + 11 P (f from memory). At 24 tpi P = 1.058333 mm, so
/// 26.64, 61.64 and 41.64 um are rounded to 27, 62 and 42.
#[test]
fn positions_lift_by_their_formula() {
    let major = |class: &str| ends(of("1.375-24 ISO", class).major);
    assert_eq!(major("6G").0, 34.952);
    assert_eq!(major("6g").1, Some(34.898));
    assert_eq!(major("6e").1, Some(34.863));
    assert_eq!(major("6f").1, Some(34.883));
    assert_eq!(major("6h").1, Some(34.925));
}

/// ISO 965-1, clause 12: S up to 2.24 P d^0.2 and N up to 6.7 P d^0.2, d the lower edge of the diameter range.
#[test]
fn lengths_of_engagement_by_their_formula() {
    for (text, edge, pitch) in [
        ("M47x1", 45.0f64, 1.0),
        ("1.375-24 ISO", 22.4, 25.4 / 24.0),
        ("9/16-20 ISO", 11.2, 1.27),
        ("M8x1.1", 5.6, 1.1),
    ] {
        let found = engagement_group(&size(text), mm(5.0)).unwrap();
        let tenth = |value: f64| (value * 10.0).round() / 10.0;
        assert_eq!(
            settled_mm(found.short_up_to),
            tenth(2.24 * pitch * edge.powf(0.2)),
            "{text}"
        );
        assert_eq!(
            settled_mm(found.normal_up_to),
            tenth(6.7 * pitch * edge.powf(0.2)),
            "{text}"
        );
    }
}

/// ASME B1.1, clauses 5 and 8, by hand for 9/16-20: t = 0.0015 cbrt(0.5625) + 0.0015 sqrt(9/20) + 0.015 cbrt(1/20)^2
/// = 0.001238 + 0.001006 + 0.002036 = 0.004280 in. Allowance 0.3 t = 0.0013, basic pitch diameter 0.5300 in.
#[test]
fn a_unified_size_by_hand() {
    let pitch = |class: &str| {
        let limits = of("9/16-20 UN", class).pitch_diameter;
        let inches = |l: Option<Length>| (to_mm(l.unwrap()) / 25.4 * 1e4).round() / 1e4;
        (
            inches(limits.lower().known()),
            inches(limits.upper().known()),
        )
    };
    assert_eq!(pitch("1A"), (0.5223, 0.5287)); // 1.5 t = 0.0064
    assert_eq!(pitch("2A"), (0.5244, 0.5287)); // t = 0.0043
    assert_eq!(pitch("3A"), (0.5268, 0.5300)); // 0.75 t = 0.0032, no allowance
    assert_eq!(pitch("1B"), (0.5300, 0.5383)); // 1.95 t = 0.0083
    assert_eq!(pitch("2B"), (0.5300, 0.5356)); // 1.3 t = 0.0056
    assert_eq!(pitch("3B"), (0.5300, 0.5342)); // 0.975 t = 0.0042
    // A diameter that ends in half of the last place printed goes up: 9/32 in = 0.28125 in.
    let major = of("9/32-32 UN", "3A").major.upper().known().unwrap();
    assert_eq!((to_mm(major) / 25.4 * 1e4).round(), 2813.0);
}

/// ISO 68-1: d3 = D - 17/12 H, with H = P sqrt(3)/2. At 16 tpi P = 1.5875 mm: 12.7 - 1.947655 = 10.752345 mm.
#[test]
fn the_rounded_root_lies_a_sixth_of_the_triangle_deeper() {
    let root = |text: &str| BasicDiameters::of(&size(text)).unwrap().rounded_root;
    assert!((to_mm(root("1/2-16 UN").unwrap()) - 10.752_345).abs() < 1e-6);
    assert_eq!(settled_mm(root("1/2-16 ISO").unwrap()), 10.752);
    assert!(root("1/2-16 BSC").is_none() && root("1/2-16 BSW").is_none());
}

/// FED-STD-H28/2B on a worn pair of each flank angle: screw pi LE D1 [1/2 + tan(a/2) (d2 - D1)/P], hole
/// pi LE d [1/2 + tan(a/2) (d - D2)/P].
#[test]
fn shear_areas_of_measured_pairs() {
    for (text, half_angle, pitch, [d, d2, big_d2, big_d1]) in [
        ("M10x1", 30.0f64, 1.0, [9.81, 9.21, 9.52, 9.16]),
        ("1.370-24 BSC", 30.0, 25.4 / 24.0, [34.6, 34.1, 34.3, 33.8]),
        ("3/16-24 BSW", 27.5, 25.4 / 24.0, [4.7, 4.0, 4.15, 3.6]),
    ] {
        let tan = half_angle.to_radians().tan();
        let area =
            |at: f64, height: f64| std::f64::consts::PI * 7.3 * at * (0.5 + tan * height / pitch);
        let pair =
            MinimumMaterial::measured(&size(text), mm(d), mm(d2), mm(big_d2), mm(big_d1)).unwrap();
        let found = pair.shear_areas(mm(7.3), None).unwrap();
        for (ours, by_hand) in [
            (found.screw, area(big_d1, d2 - big_d1)),
            (found.hole, area(d, d - big_d2)),
        ] {
            assert!(
                (ours.value * 1e6 / by_hand - 1.0).abs() < 1e-12,
                "{text}: {ours:?} {by_hand}"
            );
        }
    }
}

/// Two sizes are one only when form, diameter and pitch are, and the pitch is given in the same unit.
#[test]
fn sizes_differ_by_any_part() {
    let same = |a: &str, b: &str| size(a) == size(b);
    assert!(same("M10x1", "m 10 x 1,0"));
    assert!(same("0.5625-20 BSC", "9/16-20 BSC"));
    assert!(!same("M10x1", "10 mm x 1 mm"), "form");
    assert!(!same("9/16-20 BSC", "9/16-20 UN"), "form");
    assert!(!same("M10x1", "M10.001x1"), "diameter");
    assert!(!same("M10x1", "M10x1.25"), "pitch");
    assert!(
        !same("9/16-20 unknown form", "9/16 in x 1.27 mm unknown form"),
        "unit of the pitch"
    );
}
