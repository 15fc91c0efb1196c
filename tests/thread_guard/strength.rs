//! What bears: percents, worn pairs, wires, areas, stripping.

use framegauge::measure::Reading;
use framegauge::thread::*;
use framegauge::{Area, BoreDiameter, Error, Length, Ratio, ShaftDiameter, mm, mpa, newton, to_mm};
use strum::IntoEnumIterator;

use super::{Page, answered, fine, number, size};

fn shaft(v: f64) -> ShaftDiameter {
    ShaftDiameter::new(mm(v)).unwrap()
}

fn bore(v: f64) -> BoreDiameter {
    BoreDiameter::new(mm(v)).unwrap()
}

fn square(area: Area) -> String {
    format!("{:.4}", area.value * 1e6)
}

/// Screw and bore of each form: new, worn, on the bounds.
const WORN: &[(&str, f64, f64)] = &[
    ("M10x1", 9.974, 8.917),
    ("M10x1", 9.794, 9.153),
    ("M10x1", 10.0, 8.91747),
    ("M10x1", 10.0, 8.91746),
    ("M10x1", 10.0, 8.5),
    ("M10x1", 9.6, 9.6),
    ("M10x1", 9.6, 9.599),
    ("M10x1", 9.5, 9.6),
    ("M5x0.8", 4.83, 4.31),
    ("M35x1", 34.8, 34.4),
    ("1.375-24 ISO", 34.7, 33.95),
    ("9/16-20 UN", 14.11, 13.1),
    ("1.370-24 BSC", 34.6, 33.9),
    ("1/4-20 BSW", 6.2, 4.9),
    ("36 mm x 24 tpi", 35.8, 34.9),
];

#[test]
fn percents() {
    let mut page = Page::new();
    page.title("screw and bore in mm: percent by each convention, depth and basic height, percent that bears");
    for (text, screw, hole) in WORN {
        let thread = size(text);
        let percent =
            |convention| match thread_percent(&thread, shaft(*screw), bore(*hole), convention) {
                Ok(percent) => number(percent),
                Err(error) => format!("({}, {})", error.kind(), error.field()),
            };
        let bears = flank_engagement(&thread, shaft(*screw), bore(*hole)).map(|f| {
            format!(
                "{} {} {}",
                fine(f.depth),
                fine(f.basic_height),
                number(f.percent_of_basic_height)
            )
        });
        let said = bears.map(|bears| {
            format!(
                "{} {} | {bears}",
                percent(PercentConvention::BasicHeight),
                percent(PercentConvention::TapDrillTable)
            )
        });
        answered(&mut page, &format!("{text} {screw} in {hole}"), said);
    }
    let caution = flank_engagement(&size("M10x1"), shaft(9.9), bore(9.1))
        .unwrap()
        .caution;
    page.line(&format!("caution: {caution}"));
    page.title("bore for a percent");
    for text in [
        "M10x1",
        "M5x0.8",
        "9/16-20 UN",
        "1.375-24 ISO",
        "1.370-24 BSC",
        "1/4-20 BSW",
        "36 mm x 24 tpi",
    ] {
        for convention in PercentConvention::iter() {
            for percent in [1.0, 75.0, 110.0] {
                let found = bore_for_percent(
                    &size(text),
                    shaft(to_mm(size(text).major()) - 0.03),
                    percent,
                    convention,
                )
                .map(fine);
                answered(
                    &mut page,
                    &format!("{text} {convention} {percent} %"),
                    found,
                );
            }
        }
    }
    for percent in [f64::NAN, f64::INFINITY, -75.0, 0.999, 110.001] {
        let found = bore_for_percent(
            &size("M10x1"),
            shaft(10.0),
            percent,
            PercentConvention::BasicHeight,
        )
        .map(fine);
        answered(&mut page, &format!("M10x1 {percent} %"), found);
    }
    page.check("thread_guard/percents.txt");
}

#[test]
fn wires() {
    let mut page = Page::new();
    page.title("best wire, usable wires; over the wires from a pitch diameter with a thin and a thick wire, and back");
    for text in [
        "M5x0.8",
        "M10x1",
        "M35x1",
        "1.375-24 ISO",
        "9/16-20 UN",
        "1.370-24 BSC",
        "3/8-26 BSC",
        "3/16-24 BSW",
        "1 5/8-11 BSW",
    ] {
        let wires = ThreeWire::of(&size(text)).unwrap();
        assert_eq!(wires.size(), size(text));
        let usable = wires.usable_wires().unwrap();
        let (thin, thick) = (
            usable.lower().known().unwrap(),
            usable.upper().known().unwrap(),
        );
        let pitch_diameter = wires.size().major() - wires.size().pitch().length() * 0.7;
        let mut line = format!(
            "{text}: {} | {}..{} {} |",
            fine(wires.best_wire()),
            fine(thin),
            fine(thick),
            usable.grade()
        );
        for wire in [thin, wires.best_wire(), thick] {
            let over = wires.over_wires(pitch_diameter, wire).unwrap();
            line += &format!(
                " {} -> {}",
                fine(over),
                fine(wires.pitch_diameter(over, wire).unwrap())
            );
        }
        page.line(&line);
    }
    page.title("refused");
    let wires = ThreeWire::of(&size("M10x1")).unwrap();
    let said = |found: Result<Length, Error>| found.map(fine);
    // E = M - 3 W + 0.866025 P: 0.60 mm wires on M10x1 give M - 0.933975.
    for (over, wire) in [
        (10.933, 0.6),
        (10.935, 0.6),
        (8.935, 0.6),
        (8.933, 0.6),
        (10.2, 0.505),
        (10.2, 0.506),
        (10.2, 1.010),
        (11.2, 1.011),
        (-1.0, 0.6),
        (10.2, f64::NAN),
    ] {
        answered(
            &mut page,
            &format!("M10x1 {over} over {wire}"),
            said(wires.pitch_diameter(mm(over), mm(wire))),
        );
    }
    for (pitch_diameter, wire) in [
        (9.35, 0.5),
        (9.35, 1.1),
        (9.35, -0.5),
        (f64::NAN, 0.6),
        (0.0, 0.6),
    ] {
        answered(
            &mut page,
            &format!("M10x1 {pitch_diameter} under {wire}"),
            said(wires.over_wires(mm(pitch_diameter), mm(wire))),
        );
    }
    let reading: Reading = "10.18 +/- 0.01 mm".parse().unwrap();
    answered(
        &mut page,
        "M10x1 reading",
        wires
            .pitch_diameter_reading(&reading, mm(0.58))
            .map(|r| r.to_string()),
    );
    answered(
        &mut page,
        "M10x1 reading, thin wire",
        wires
            .pitch_diameter_reading(&reading, mm(0.4))
            .map(|r| r.to_string()),
    );
    answered(
        &mut page,
        "36 mm x 24 tpi",
        ThreeWire::of(&size("36 mm x 24 tpi")).map(|w| w.size().to_string()),
    );
    page.check("thread_guard/wires.txt");
}

pub fn pair(text: &str, screw: &str, hole: &str) -> Result<MinimumMaterial, Error> {
    let of = |class: &str| limits_of_size(&size(text), &class.parse().unwrap()).unwrap();
    MinimumMaterial::of_limits(&of(screw), &of(hole))
}

fn show(pair: &MinimumMaterial, text: &str, length: f64) -> String {
    let strips = pair
        .stripping(mm(length), Some(mm(length + 0.5)), mpa(380.0), mpa(170.0))
        .unwrap();
    let torque = strips.torque(&size(text), Ratio(0.17)).unwrap();
    let force = |member| match pair.engagement_for_force(newton(7300.0), member, mpa(210.0)) {
        Ok(length) => fine(length),
        Err(error) => format!("({})", error.kind()),
    };
    format!(
        "screw {} hole {} mm2 | {} {} N, {} goes first at {} N, {} N m | 7300 N needs {} {} mm | {}",
        square(strips.areas.screw),
        square(strips.areas.hole),
        number(strips.screw_force.value),
        number(strips.hole_force.value),
        strips.weaker,
        number(strips.force.value),
        number(torque.value),
        force(Member::External),
        force(Member::Internal),
        pair.grade(),
    )
}

#[test]
fn areas() {
    let mut page = Page::new();
    page.title("shear areas, stripping at 380 and 170 MPa, torque at K = 0.17, engagement for 7300 N at 210 MPa");
    for (text, screw, hole, length) in [
        ("M5x0.8", "6g", "6H", 5.3),
        ("M6x1", "6g", "6H", 7.0),
        ("M10x1", "6g", "6H", 8.0),
        ("M10x1", "6e", "7H", 8.0),
        ("M10x1.5", "4g6g", "6H", 11.0),
        ("M47x1", "6g", "6H", 9.0),
        ("1.375-24 ISO", "6g", "6H", 12.0),
        ("9/16-20 UN", "2A", "2B", 11.5),
        ("1/4-20 UN", "3A", "1B", 6.2),
    ] {
        page.line(&format!(
            "{text} {screw}/{hole} {length} mm: {}",
            show(&pair(text, screw, hole).unwrap(), text, length)
        ));
    }
    page.title("measured pairs: screw major and pitch diameter, hole pitch diameter and minor");
    for (text, [a, b, c, d], length) in [
        ("M10x1", [9.81, 9.21, 9.52, 9.16], 8.0),
        ("1.370-24 BSC", [34.6, 34.1, 34.3, 33.8], 11.0),
        ("3/16-24 BSW", [4.7, 4.0, 4.15, 3.6], 5.0),
        ("M10x1", [9.7, 9.2, 9.9, 9.69], 8.0),
        ("M10x1", [9.7, 9.2, 9.9, 9.7], 8.0),
        ("M10x1", [9.7, 8.4, 9.9, 9.69], 8.0),
        ("M10x1", [12.0, 8.0, 12.0, 8.0], 8.0),
    ] {
        let measured = MinimumMaterial::measured(&size(text), mm(a), mm(b), mm(c), mm(d)).unwrap();
        page.line(&format!(
            "{text} {a} {b} {c} {d}: {}",
            show(&measured, text, length)
        ));
    }
    page.title("engagement of equal strength, mm and J");
    for (screw, hole) in [
        (800.0, 800.0),
        (800.0, 275.0),
        (500.0, 650.0),
        (5000.0, 0.5),
    ] {
        for text in ["M5x0.8", "M10x1"] {
            let area = stress_area(&size(text), StressAreaRule::Iso898).unwrap();
            let found = pair(text, "6g", "6H")
                .unwrap()
                .engagement_for_equal_strength(area, mpa(screw), mpa(hole))
                .unwrap();
            page.line(&format!(
                "{text} {screw} in {hole} MPa: {} {}",
                fine(found.length),
                number(found.j)
            ));
        }
    }
    page.title("stress areas, mm2, by each rule; of very strong steel; shear areas by the short formula over 7.5 mm");
    for text in [
        "M5x0.8",
        "M6x1",
        "M10x1",
        "M10x1.5",
        "M12x1.75",
        "1.375-24 ISO",
        "1/4-20 UN",
        "1/2-13 UN",
        "9/16-20 UN",
        "1.370-24 BSC",
        "1/4-20 BSW",
        "36 mm x 24 tpi",
    ] {
        let rule = |rule| {
            stress_area(&size(text), rule).map_or_else(|e| format!("({})", e.kind()), square)
        };
        let strong = high_strength_stress_area(&size(text), size(text).major() * 0.93)
            .map_or_else(|e| format!("({})", e.kind()), square);
        let rough = rough_shear_areas(&size(text), mm(7.5)).map_or_else(
            |e| format!("({})", e.kind()),
            |a| format!("{} {}", square(a.screw), square(a.hole)),
        );
        page.line(&format!(
            "{text}: {} {} | {strong} | {rough}",
            rule(StressAreaRule::Iso898),
            rule(StressAreaRule::FedStdH28)
        ));
    }
    page.check("thread_guard/areas.txt");
}
