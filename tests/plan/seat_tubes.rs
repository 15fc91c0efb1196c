//! Seat tubes: paint, size, limits, what was reamed, the post.

use framegauge::plan::Operation::{Clean, Ream, Refer};
use framegauge::plan::State;
use framegauge::plan::State::{Leave, Open, Out, ToDo};

use super::{Case, hold, planned, said};

/// A coat on both walls hides no more than the tables say; a size is believed only as far as the readings go.
#[test]
fn paint_and_size() {
    hold(&[
        Case(
            "overspray, 27.2 believed, deep readings bare: reamed to 27.2",
            "seat_tube",
            ToDo,
            &[Ream],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.02 mm", "10 mm deep, 90 deg: 27.08 mm +/- 0.02 mm", "90 mm deep, 0 deg: 27.19 mm +/- 0.02 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "26.82 believed 27.2: no coat is 0.19 a side",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.confirmed"],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "painted"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 26.82 mm +/- 0.02 mm", "10 mm deep, 90 deg: 26.84 mm +/- 0.02 mm", "90 mm deep, 0 deg: 26.82 mm +/- 0.02 mm", "90 mm deep, 90 deg: 26.83 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "0.38 a side called powder: no coat is so thick",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.confirmed"],
            r#"material = "aluminium"
[seat_tube]
believed = "31.6"
coating = "powder_coated"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 30.84 mm +/- 0.02 mm", "10 mm deep, 90 deg: 30.85 mm +/- 0.02 mm", "90 mm deep, 0 deg: 30.86 mm +/- 0.02 mm", "90 mm deep, 90 deg: 30.86 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "spread over two steps of the series: no size may be named",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.bore"],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "painted"
bore = ["10 mm deep, 0 deg: 26.70 mm +/- 0.02 mm", "10 mm deep, 90 deg: 27.18 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "bare and nowhere below its size: left",
            "seat_tube",
            Leave,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "bare"
bore = ["10 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.23 mm +/- 0.01 mm"]"#,
        ),
        Case(
            "carbon under overspray: by hand, never reamed",
            "seat_tube",
            ToDo,
            &[Clean],
            &[],
            r#"material = "carbon"
[seat_tube]
believed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 27.12 mm +/- 0.02 mm", "10 mm deep, 90 deg: 27.13 mm +/- 0.02 mm", "90 mm deep, 0 deg: 27.21 mm +/- 0.02 mm", "90 mm deep, 90 deg: 27.21 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "nobody said what it is made of",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.material"],
            r#"[seat_tube]
believed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 27.12 mm +/- 0.02 mm", "10 mm deep, 90 deg: 27.13 mm +/- 0.02 mm", "90 mm deep, 0 deg: 27.21 mm +/- 0.02 mm", "90 mm deep, 90 deg: 27.21 mm +/- 0.02 mm"]"#,
        ),
        Case(
            "nothing was measured",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.bore"],
            "material = \"steel\"\n[seat_tube]\nbelieved = \"27.2\"",
        ),
    ]);
}

/// Limits of the maker: the tightest caps the reamer.
#[test]
fn limits() {
    const BORE: &str = r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
outside = ["28.60 mm +/- 0.01 mm"]
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.08 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.19 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
"#;
    let with = |limits: &str| planned(&format!("{BORE}limits = [{limits}]"));
    let wall = |least: &str| {
        format!("{{ what = \"wall\", lower = \"{least}\", owner = \"builder (invented)\" }}")
    };
    let bore = |most: &str| {
        format!("{{ what = \"bore\", upper = \"{most}\", owner = \"builder (invented)\" }}")
    };
    for (limits, cut) in [
        // 28.60 outside and 27.20 bore leave 0.70.
        (wall("0.60 mm"), true),
        (wall("0.75 mm"), false),
        (bore("27.30 mm"), true),
        (bore("27.10 mm"), false),
        (format!("{}, {}", bore("27.30 mm"), wall("0.75 mm")), false),
        (format!("{}, {}", bore("27.10 mm"), wall("0.60 mm")), false),
    ] {
        let plan = with(&limits);
        let reams = plan.steps.iter().any(|s| s.operation == Ream);
        assert_eq!(reams, cut, "{limits}\n{}", said(&plan, "seat_tube"));
        assert!(
            said(&plan, "seat_tube").contains("builder (invented)"),
            "{limits} is heard"
        );
        if !cut {
            let refused = plan.steps.iter().any(|s| s.operation == Refer);
            assert!(refused || !plan.questions.is_empty(), "{limits}");
        }
    }
}

/// After the work: what was taken off does not come back, and the post is the last word.
#[test]
fn after_the_work() {
    hold(&[
        Case(
            "reamed 0.2 too far: out, with what can still be done",
            "seat_tube",
            Out,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
passes = [{ bore = ["10 mm deep, 0 deg: 27.40 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.41 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.40 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.40 mm +/- 0.01 mm"] }]"#,
        ),
        Case(
            "reamed to size, the post slides with a light drag: done",
            "seat_tube",
            State::Done,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"] }
passes = [{ part = "fits", bore = ["10 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"] }]"#,
        ),
        Case(
            "reamed to size, and nobody tried the post: the windows disagree, so it is tried",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.passes"],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"] }
passes = [{ bore = ["10 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"] }]"#,
        ),
        Case(
            "to size, and the post knocks: out",
            "seat_tube",
            Out,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"] }
passes = [{ part = "loose", bore = ["10 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.21 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"] }]"#,
        ),
        Case(
            "the last pass tore it: no third one by us",
            "seat_tube",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "aluminium"
[seat_tube]
confirmed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
passes = [{ marks = "torn", bore = ["10 mm deep, 0 deg: 27.12 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.12 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.20 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"] }]"#,
        ),
        Case(
            "a bore that got narrower: two readings that cannot both be",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.passes"],
            r#"material = "aluminium"
[seat_tube]
confirmed = "27.2"
coating = "overspray"
clear_depth = "200 mm"
bore = ["10 mm deep, 0 deg: 27.15 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]
passes = [{ bore = ["10 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.05 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.05 mm +/- 0.01 mm"] }]"#,
        ),
    ]);
}

/// The post: insertion and room are consequences, not remarks.
#[test]
fn the_post() {
    hold(&[
        Case(
            "in 60, and even the least demanding rule asks more: out",
            "seat_tube",
            Out,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "bare"
weld_depth = "48 mm"
bore = ["10 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"], insertion = "40 mm" }"#,
        ),
        Case(
            "clear to 60, the post is to go in 150: out",
            "seat_tube",
            Out,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "bare"
clear_depth = "60 mm"
bore = ["10 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "50 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "50 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"], insertion = "150 mm" }"#,
        ),
        Case(
            "read deeper than the tube is said to be clear",
            "seat_tube",
            Open,
            &[],
            &["seat_tube.clear_depth"],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "overspray"
clear_depth = "60 mm"
bore = ["10 mm deep, 0 deg: 27.10 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.12 mm +/- 0.01 mm", "80 mm deep, 0 deg: 27.20 mm +/- 0.01 mm", "80 mm deep, 90 deg: 27.20 mm +/- 0.01 mm"]"#,
        ),
        Case(
            "the frame maker asks 100 and it is in 95: out",
            "seat_tube",
            Out,
            &[],
            &[],
            r#"material = "steel"
[seat_tube]
believed = "27.2"
coating = "bare"
bore = ["10 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "10 mm deep, 90 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 0 deg: 27.22 mm +/- 0.01 mm", "90 mm deep, 90 deg: 27.22 mm +/- 0.01 mm"]
post = { name = "post", outside = ["27.15 mm +/- 0.005 mm"], insertion = "95 mm" }
limits = [{ what = "insertion", lower = "100 mm", owner = "frame maker (invented)" }]"#,
        ),
    ]);
}
