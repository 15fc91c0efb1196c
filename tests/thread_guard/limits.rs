//! Basic diameters, limits of size and groups of engagement.

use framegauge::measure::{Bound, Limits};
use framegauge::thread::{BasicDiameters, Member, ThreadLimits, engagement_group, limits_of_size};
use framegauge::{in_mm, mm, to_mm};

use super::{Page, answered, fine, refusal, size};

#[rustfmt::skip]
const FORMS: &[&str] = &[
    "M1x0.25", "M2.5x0.45", "M5x0.8", "M10x1", "M10x1.25", "M10x1.5", "M12x1.75", "M35x1", "M47x1", "M100x6", "M300x8", "1.375-24 ISO", "1.45-26 ISO",
    "9/16-20 ISO", "1.370-24 BSC", "9/16-20 BSC", "3/8-26 BSC", "5/16-26 BSC", "1 3/8-26 BSC", "31/32-30 BSC", "9/16-20 UN", "1/4-20 UN", "1/2-13 UN",
    "#10-32 UN", "1-8 UN", "1/4-20 BSW", "3/16-24 BSW", "1 5/8-11 BSW", "1/2-12 BSW", "36 mm x 24 tpi", "10 mm x 26 tpi", "1.29-24 unknown form",
];

#[test]
fn basic_diameters() {
    let mut page = Page::new();
    page.title(
        "major, pitch diameter, minor, rounded root, engaged depth in mm; what they rest on",
    );
    for text in FORMS {
        let found = BasicDiameters::of(&size(text)).map(|basic| {
            format!(
                "{} {} {} {} {} | {}",
                fine(basic.major),
                fine(basic.pitch_diameter),
                fine(basic.minor),
                basic.rounded_root.map_or("-".into(), fine),
                fine(basic.engaged_depth),
                basic.evidence().worth(),
            )
        });
        answered(&mut page, text, found);
    }
    page.check("thread_guard/basic.txt");
}

fn span(limits: Limits) -> String {
    let side = |bound: Bound| match bound {
        Bound::At(length) => format!("{:.4}", to_mm(length)),
        Bound::Open => String::new(),
        Bound::Unknown => "?".into(),
    };
    format!("{}..{}", side(limits.lower()), side(limits.upper()))
}

/// Major, pitch and minor diameter, what each rests on (once where it is the same), and the other pitch diameter.
fn shown(found: &ThreadLimits) -> String {
    let all = [found.major, found.pitch_diameter, found.minor];
    let mut rests: Vec<String> = all.iter().map(|l| l.grade().to_string()).collect();
    rests.extend([
        found.grade().to_string(),
        found.evidence().worth().to_string(),
    ]);
    if rests.iter().all(|grade| *grade == rests[0]) {
        rests.truncate(1);
    }
    let mut out: Vec<String> = all.into_iter().map(span).collect();
    out.extend(rests);
    let other = found.other_pitch_diameter;
    out.extend(other.map(|other| format!("or {}", span(other))));
    out.join(" ")
}

fn limits(page: &mut Page, text: &str, classes: &[&str]) {
    let thread = size(text);
    page.line(text);
    for class in classes {
        let said = match limits_of_size(&thread, &class.parse().unwrap()) {
            Ok(found) => {
                let screw = class.contains(|c: char| c == 'A' || c.is_lowercase());
                assert_eq!(found.member == Member::External, screw, "{text} {class}");
                shown(&found)
            }
            Err(error) => refusal(&error),
        };
        page.line(&format!(" {class} {said}"));
    }
}

const HOLES: &[&str] = &["4H", "5H", "6H", "7H", "8H", "6G", "5H6H", "4H5H", "7H6H"];
const SCREWS: &[&str] = &[
    "3h4h", "4h", "5g6g", "6g", "6e", "6f", "6h", "7g6g", "8g", "9g8g", "9h6h",
];

#[test]
fn iso() {
    let mut page = Page::new();
    page.title("sizes of the tables, every grade and position");
    for text in [
        "M1.2x0.25",
        "M2x0.4",
        "M3x0.5",
        "M5x0.8",
        "M10x1",
        "M12x1.25",
        "M30x2",
        "M35x1",
        "M64x6",
    ] {
        limits(&mut page, text, HOLES);
        limits(&mut page, text, SCREWS);
    }
    page.title("at the edges of the diameter ranges, and pitches the tables leave out");
    for text in [
        "M1.4x0.3",
        "M1.401x0.35",
        "M2.8x0.45",
        "M2.801x0.5",
        "M5.6x0.75",
        "M5.601x0.75",
        "M11.2x1",
        "M11.201x1",
        "M22.4x1",
        "M22.401x1",
        "M45x1",
        "M45.001x1",
        "M45x1.5",
        "M90x2",
        "M90.001x2",
        "M180x3",
        "M180.001x3",
        "M300x8",
        "M8x1.01",
        "M8x1.1",
        "M8x0.95",
        "M34.7x1",
        "M34.6996x1",
        "M34.7004x1",
        "M46x1",
        "M48x1",
        "M47x1.1",
        "M12x0.75",
    ] {
        limits(&mut page, text, &["6H", "6g"]);
    }
    page.check("thread_guard/limits_iso.txt");
}

/// Sizes outside the tables: the formulas answer.
#[test]
fn derived() {
    let mut page = Page::new();
    page.title("M47x1");
    limits(&mut page, "M47x1", HOLES);
    limits(&mut page, "M47x1", SCREWS);
    page.title("ISO profile at an inch pitch");
    limits(&mut page, "1.375-24 ISO", HOLES);
    limits(&mut page, "1.375-24 ISO", SCREWS);
    for text in [
        "1/16-80 ISO",
        "1/16-85 ISO",
        "1/8-56 ISO",
        "1/8-57 ISO",
        "3/16-32 ISO",
        "1/4-20 ISO",
        "5/16-24 ISO",
        "7/16-14 ISO",
        "9/16-20 ISO",
        "3/4-25 ISO",
        "3/4-26 ISO",
        "1-12 ISO",
        "1 3/4-5 ISO",
        "2-4 ISO",
        "4-8 ISO",
        "8-6 ISO",
        "11-4 ISO",
    ] {
        limits(
            &mut page,
            text,
            &["6H", "7H", "4H8H", "6g", "7e6e", "5f4f", "8h"],
        );
    }
    page.title("forms and classes that do not meet");
    for (text, class) in [
        ("1.370-24 BSC", "6H"),
        ("3/16-24 BSW", "2B"),
        ("36 mm x 24 tpi", "6g"),
        ("M10x1", "2B"),
        ("1.375-24 ISO", "2A"),
        ("9/16-20 UN", "6H"),
    ] {
        limits(&mut page, text, &[class]);
    }
    page.check("thread_guard/limits_derived.txt");
}

#[test]
fn unified() {
    let mut page = Page::new();
    page.title("in mm");
    for text in [
        "#0-80 UN",
        "#1-64 UN",
        "#4-40 UN",
        "#5-40 UN",
        "#6-32 UN",
        "0.137-32 UN",
        "#8-32 UN",
        "#10-24 UN",
        "#10-32 UN",
        "0.249-28 UN",
        "1/4-20 UN",
        "1/4-28 UN",
        "1/4-32 UN",
        "9/32-32 UN",
        "5/16-18 UN",
        "3/8-16 UN",
        "7/16-14 UN",
        "1/2-13 UN",
        "1/2-12 UN",
        "1/2-20 UN",
        "9/16-20 UN",
        "9/16-18 UN",
        "5/8-11 UN",
        "15/16-20 UN",
        "1-8 UN",
        "1-12 UN",
        "1-20 UN",
        "1-24 UN",
        "1-6 UN",
        "1.001-6 UN",
        "1 1/8-8 UN",
        "1 1/2-6 UN",
        "2-4 UN",
        "2-5 UN",
        "3-8 UN",
        "0.24-13 UN",
        "0.3-10 UN",
    ] {
        limits(&mut page, text, &["1A", "2A", "3A", "1B", "2B", "3B"]);
    }
    page.check("thread_guard/limits_unified.txt");
}

#[test]
fn engagement() {
    let mut page = Page::new();
    page.title(
        "S up to, N up to, and the group of lengths on the bounds and one micrometre beyond",
    );
    for text in [
        "M1x0.2",
        "M1.6x0.35",
        "M3x0.5",
        "M5x0.8",
        "M10x1",
        "M10x1.5",
        "M12x1.25",
        "M20x2.5",
        "M35x1",
        "M45x1",
        "M47x1",
        "M46x1.1",
        "M8x1.1",
        "M12x0.75",
        "M100x6",
        "M300x8",
        "1.375-24 ISO",
        "9/16-20 ISO",
        "1/16-80 ISO",
        "2-4 ISO",
        "8-6 ISO",
        "9/16-20 UN",
        "1.370-24 BSC",
        "36 mm x 24 tpi",
    ] {
        let found = engagement_group(&size(text), mm(0.3)).map(|found| {
            let group = |length| {
                engagement_group(&size(text), length)
                    .unwrap()
                    .group
                    .letter()
            };
            let beside = |length| format!("{}{}", group(length), group(length + mm(0.001)));
            format!(
                "{} {} | {} {} | {}",
                in_mm(found.short_up_to),
                in_mm(found.normal_up_to),
                beside(found.short_up_to),
                beside(found.normal_up_to),
                found.evidence.worth(),
            )
        });
        answered(&mut page, text, found);
    }
    for bad in [f64::NAN, f64::INFINITY, 0.0, -3.0, 1e7] {
        let found = engagement_group(&size("M10x1"), mm(bad)).map(|found| found.group.to_string());
        answered(&mut page, &format!("M10x1 over {bad} mm"), found);
    }
    page.check("thread_guard/engagement.txt");
}
