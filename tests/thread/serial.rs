//! Serialized answers: units in the field names, settled numbers, evidence with every answer.

use framegauge::thread::{
    BasicDiameters, Designation, Member, MinimumMaterial, ShellThreads, Side, caliper_shows,
    chasing, engagement_group, hand_pattern, insert_sizes, limits_of_size, mismatch, retap,
    turning,
};
use framegauge::{mm, mpa};
use serde_json::{Value, json, to_value};

fn read(text: &str) -> Designation {
    text.parse().unwrap()
}

/// The form that the scripting contract pins.
#[test]
fn limits_of_a_hanger() {
    let asked = read("M10x1-6H");
    let limits = limits_of_size(&asked.size, &asked.class_for(Member::Internal).unwrap()).unwrap();
    let answer = to_value(limits).unwrap();
    assert_eq!(
        answer["pitch_diameter_mm"],
        json!({"min": 9.35, "max": 9.5})
    );
    assert_eq!(
        answer["minor_diameter_mm"],
        json!({"min": 8.917, "max": 9.153})
    );
    assert_eq!(
        answer["major_diameter_mm"],
        json!({"min": 10.0, "max": null})
    );
    assert_eq!(answer["grade"], "standard");
    assert_eq!(answer["thread"], "M10x1");
    assert!(!answer["evidence"]["sources"].as_array().unwrap().is_empty());
    assert!(answer.get("other_pitch_diameter_mm").is_none());

    let t47 =
        to_value(limits_of_size(&read("M47x1").size, &"6H".parse().unwrap()).unwrap()).unwrap();
    assert_eq!(t47["other_pitch_diameter_mm"]["max"], 46.53);
    assert_eq!(t47["evidence"]["grade"], "derived");
}

#[test]
fn designations_and_shells_come_back() {
    for text in ["M10x1-6H", "1.370 in x 24 tpi BSC LH", "36 mm x 24 tpi"] {
        let there = serde_json::to_string(&read(text)).unwrap();
        assert_eq!(there, format!("\"{text}\""));
        assert_eq!(
            serde_json::from_str::<Designation>(&there).unwrap(),
            read(text)
        );
    }
    assert!(serde_json::from_str::<Designation>("\"1.370-24\"").is_err());
    let english = ShellThreads::of_pattern(read("1.370-24 BSC").size, hand_pattern("bsc").unwrap());
    let hybrid = english.retapped(Side::Drive, read("36 mm x 24 tpi"));
    let back: ShellThreads = serde_json::from_value(to_value(hybrid).unwrap()).unwrap();
    assert_eq!(back, hybrid);
}

/// No number in any answer carries binary noise: none has more than six decimals.
fn settled(value: &Value, path: &str) {
    match value {
        Value::Number(number) => {
            let text = number.to_string();
            let decimals = text.split_once('.').map_or(0, |(_, d)| d.len());
            assert!(decimals <= 6 && !text.contains('e'), "{path}: {text}");
        }
        Value::Array(all) => all.iter().for_each(|v| settled(v, path)),
        Value::Object(all) => all
            .iter()
            .for_each(|(k, v)| settled(v, &format!("{path}.{k}"))),
        _ => {}
    }
}

#[test]
fn every_answer_is_settled() {
    let size = read("M10x1").size;
    let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
    let bsc = read("1.370-24 BSC LH");
    for (name, value) in [
        ("limits", to_value(of("6g"))),
        (
            "inch limits",
            to_value(limits_of_size(&read("9/16-20 UN").size, &"2A".parse().unwrap()).unwrap()),
        ),
        ("basic", to_value(BasicDiameters::of(&bsc.size).unwrap())),
        ("mismatch", to_value(mismatch(&bsc, &read("M35x1")))),
        (
            "turning",
            to_value(turning(hand_pattern("t47").unwrap(), Side::NonDrive).unwrap()),
        ),
        (
            "caliper",
            to_value(caliper_shows(&bsc.size, Member::External).unwrap()),
        ),
        (
            "engagement",
            to_value(engagement_group(&size, mm(8.0)).unwrap()),
        ),
        (
            "stripping",
            to_value(
                pair.stripping(mm(7.3), None, mpa(480.0), mpa(170.0))
                    .unwrap(),
            ),
        ),
        (
            "retap",
            to_value(retap(&bsc, &read("36 mm x 24 tpi"), Some(mm(39.1))).unwrap()),
        ),
        ("insert", to_value(insert_sizes(&size).unwrap())),
        ("chasing", to_value(chasing())),
    ] {
        settled(&value.unwrap(), name);
    }
    let cut = to_value(retap(&bsc, &read("36 mm x 24 tpi"), None).unwrap()).unwrap();
    assert_eq!(cut["stock_removed_mm"], 0.601);
    assert_eq!(cut["wall_left_mm"], Value::Null);
    let turn = to_value(turning(hand_pattern("t47").unwrap(), Side::NonDrive).unwrap()).unwrap();
    assert_eq!(turn["tighten"], "clockwise");
    assert_eq!(turn["evidence"]["grade"], "memory");
}
