//! Each answer once, as it is serialized.

use framegauge::measure::Reading;
use framegauge::thread::*;
use framegauge::{BoreDiameter, ShaftDiameter, mm, mpa};
use serde_json::{Value, to_value};

use super::{Page, size, thread};

/// A field a line; long lists and objects are split.
fn split(page: &mut Page, before: &str, value: &Value) {
    let line = value.to_string();
    match value {
        Value::Object(fields) if line.len() > 130 => {
            for (key, inner) in fields {
                split(page, &format!("{before}.{key}"), inner);
            }
        }
        Value::Array(all) if line.len() > 130 => {
            for (index, inner) in all.iter().enumerate() {
                split(page, &format!("{before}.{index}"), inner);
            }
        }
        _ => page.line(&format!("{before}: {line}")),
    }
}

#[test]
fn answers() {
    let mut page = Page::new();
    let (hanger, bsc) = (size("M10x1"), thread("1.370-24 BSC LH"));
    let of =
        |size: ThreadSize, class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    let pair = MinimumMaterial::of_limits(&of(hanger, "6g"), &of(hanger, "6H")).unwrap();
    let (screw, hole) = (
        ShaftDiameter::new(mm(9.8)).unwrap(),
        BoreDiameter::new(mm(9.13)).unwrap(),
    );
    let english = ShellThreads::of_pattern(bsc.size, hand_pattern("bsc").unwrap());
    let area = stress_area(&hanger, StressAreaRule::Iso898).unwrap();
    let gauging = Gauging {
        go_passes: Some(false),
        not_go_turns: Some(1.25),
        plain_go_passes: None,
        plain_not_go_enters: Some(false),
    };
    let reading = Reading::expanded(mm(10.66), mm(0.01)).unwrap();
    for (name, value) in [
        ("size", to_value(hanger)),
        ("designation", to_value(bsc)),
        ("class", to_value(usual_class(&hanger, Member::Internal))),
        ("basic", to_value(BasicDiameters::of(&hanger).unwrap())),
        (
            "basic bsc",
            to_value(BasicDiameters::of(&bsc.size).unwrap()),
        ),
        ("hole", to_value(of(hanger, "6H"))),
        ("t47", to_value(of(size("M47x1"), "6H"))),
        ("screw", to_value(of(size("9/16-20 UN"), "2A"))),
        (
            "engagement",
            to_value(engagement_group(&hanger, mm(8.0)).unwrap()),
        ),
        (
            "flanks",
            to_value(flank_engagement(&hanger, screw, hole).unwrap()),
        ),
        ("mismatch", to_value(mismatch(&bsc, &thread("M35x1")))),
        ("mates", to_value(mismatch(&bsc, &bsc))),
        (
            "drift",
            to_value(PitchDrift::between(hanger.pitch(), bsc.size.pitch())),
        ),
        ("shell", to_value(english)),
        (
            "shell turned",
            to_value(english.back_to_front().against(&english)),
        ),
        (
            "retap",
            to_value(retap(&bsc, &thread("36 mm x 24 tpi"), Some(mm(39.1))).unwrap()),
        ),
        ("insert", to_value(insert_sizes(&hanger).unwrap())),
        (
            "caliper",
            to_value(caliper_shows(&bsc.size, Member::External).unwrap()),
        ),
        (
            "candidates",
            to_value(candidates_by_bore(&[size("M12x1.25"), size("M12x1.5")], &reading).unwrap()),
        ),
        ("areas", to_value(pair.shear_areas(mm(7.3), None).unwrap())),
        (
            "stripping",
            to_value(
                pair.stripping(mm(7.3), None, mpa(480.0), mpa(170.0))
                    .unwrap(),
            ),
        ),
        (
            "equal strength",
            to_value(
                pair.engagement_for_equal_strength(area, mpa(830.0), mpa(270.0))
                    .unwrap(),
            ),
        ),
        ("gauging", to_value(gauging)),
        (
            "gauging verdict",
            to_value(judge_gauging(&gauging).unwrap()),
        ),
        ("gauge", to_value(Gauge::PlainNotGo)),
        (
            "gauge means",
            to_value(Gauge::NotGo.meaning(Member::External)),
        ),
        ("chasing", to_value(chasing())),
        (
            "turning",
            to_value(turning(hand_pattern("swiss").unwrap(), Side::Drive).unwrap()),
        ),
        ("pattern", to_value(hand_pattern("freewheel").unwrap())),
    ] {
        page.title(name);
        split(&mut page, "", &value.unwrap());
    }
    page.check("thread_guard/answers.txt");
}
