//! The sheets on which the first edition was found wrong, as they were written.

use framegauge::plan::{Operation, State};

use super::{never_unsafe, operations, planned, state};

/// What is right at a place: its state, and the only step there, if there is one.
type Right = (&'static str, State, Option<Operation>);

fn reported(sheet: &str, right: &[Right], asks: &[&str]) {
    let plan = planned(sheet);
    for (place, wanted, step) in right {
        assert_eq!(state(&plan, place), *wanted, "{place}\n{sheet}");
        let steps: Vec<Operation> = step.iter().copied().collect();
        assert_eq!(operations(&plan, place), steps, "{place}\n{sheet}");
    }
    for field in asks {
        assert!(
            plan.questions.iter().any(|q| q.answer == *field),
            "{field}\n{sheet}"
        );
    }
    assert!(!plan.acceptable());
    never_unsafe(&plan, sheet);
}

/// The upper cup stays: nothing is centred in its bore.
#[test]
fn m_13_upper_cup_stuck_lower_cut() {
    reported(
        r#"material = "aluminium"
[instruments]
inside = "three_point_gauge"
outside = "micrometer_outside"
depth = "caliper_digital_depth"
height = "dial_indicator"
[head_tube.upper]
believed = "ZS44"
part = { name = "upper cup", fitted = "stuck" }
[head_tube.lower]
believed = "EC44"
coating = "bare"
outside = "50.0 mm"
bore = ["0 deg: 43.90 mm", "90 deg: 43.91 mm"]
bore_depth = "15 mm"
crown_gap = "0.4 mm"
part = { name = "lower cup", outside = ["44.04 mm"], insertion = "12 mm" }
[head_tube.lower.face]
coating = "painted"
inner_radius = "22 mm"
outer_radius = "25 mm"
probe_radius = "23.5 mm"
probes = ["0 deg: 0.00 mm", "72 deg: 0.15 mm", "144 deg: 0.25 mm", "216 deg: 0.12 mm", "288 deg: 0.00 mm"]"#,
        &[
            ("head_tube.upper", State::Leave, None),
            ("head_tube.lower", State::Out, None),
            ("head_tube.lower.face", State::Open, None),
        ],
        &["head_tube.lower.confirmed"],
    );
}

/// Bare and 1.60 deg against 0.95: out, and the frame maker is asked.
#[test]
fn m_16_post_mount_bare_tilted() {
    reported(
        r#"material = "aluminium"
[instruments]
height = "dial_indicator"
[[brake]]
system = "pm"
end = "rear"
coating = "bare"
pad_clearance = "0.25 mm"
pad_length = "30 mm"
points = ["0 mm along, -5 mm across: 0.0 mm", "0 mm along, 5 mm across: 0.3 mm", "74 mm along, -5 mm across: 0.02 mm", "74 mm along, 5 mm across: 0.28 mm"]"#,
        &[("brake.rear", State::Out, None)],
        &["brake[0].limits"],
    );
}

/// 0.30 needed, 0.20 allowed: refused.
#[test]
fn m_17_post_mount_limit_below_need() {
    reported(
        r#"material = "aluminium"
[instruments]
height = "dial_indicator"
[[brake]]
system = "pm"
end = "rear"
coating = "painted"
limits = [{ what = "depth", upper = "0.2 mm", owner = "maker" }]
pad_clearance = "0.25 mm"
pad_length = "30 mm"
points = ["0 mm along, -5 mm across: 0.0 mm", "0 mm along, 5 mm across: 0.3 mm", "74 mm along, -5 mm across: 0.02 mm", "74 mm along, 5 mm across: 0.28 mm"]"#,
        &[("brake.rear", State::Refer, Some(Operation::Refer))],
        &[],
    );
}

/// Laminate is not deepened.
#[test]
fn x_ch() {
    reported(
        r#"material = "carbon"
[instruments]
inside = "three_point_gauge"
outside="micrometer_outside"
depth="caliper_digital_depth"
[head_tube.lower]
believed = "EC34"
bore = ["0 deg: 33.92 mm +/- 0.003 mm", "90 deg: 33.92 mm +/- 0.003 mm"]
bore_depth = "10 mm +/- 0.1 mm"
part = { name = "lower cup", outside = ["34.02 mm +/- 0.003 mm"], insertion = "12.0 mm" }"#,
        &[("head_tube.lower", State::Refer, Some(Operation::Refer))],
        &[],
    );
}

/// Nobody says what it is made of, nor what covers it.
#[test]
fn x_un() {
    reported(
        r#"[instruments]
inside = "three_point_gauge"
outside="micrometer_outside"
depth="caliper_digital_depth"
[head_tube.lower]
believed = "EC34"
bore = ["0 deg: 33.80 mm +/- 0.003 mm", "90 deg: 33.80 mm +/- 0.003 mm"]
bore_depth = "10 mm +/- 0.1 mm"
part = { name = "lower cup", outside = ["34.02 mm +/- 0.003 mm"], insertion = "12.0 mm" }"#,
        &[("head_tube.lower", State::Out, None)],
        &["head_tube.lower.material", "head_tube.lower.coating"],
    );
}

/// 12.0 in 12.1 read to 0.1.
#[test]
fn x_cup() {
    reported(
        r#"material = "steel"
[instruments]
inside = "three_point_gauge"
outside="micrometer_outside"
depth="caliper_digital_depth"
[head_tube.lower]
believed = "EC34"
bore = ["0 deg: 33.92 mm +/- 0.003 mm", "90 deg: 33.92 mm +/- 0.003 mm"]
bore_depth = "12.1 mm +/- 0.1 mm"
part = { name = "lower cup", outside = ["34.02 mm +/- 0.003 mm"], insertion = "12.0 mm" }"#,
        &[("head_tube.lower", State::Open, None)],
        &["head_tube.lower.bore_depth"],
    );
}

/// 33 is listed for 20, 35 is at hand.
#[test]
fn x_fm() {
    reported(
        r#"material = "aluminium"
[instruments]
outside = "micrometer_outside"
height = "dial_indicator"
[[brake]]
system = "fm"
end = "rear"
thickness = "20.0 mm +/- 0.1 mm"
bolt = "35 mm""#,
        &[("brake.rear", State::Open, None)],
        &["brake[0].bolt"],
    );
}

/// Tabs lean 1.37 deg along, 0.92 is what the pads bear.
#[test]
fn x_tilt() {
    reported(
        r#"material = "steel"
[[brake]]
system = "is"
end = "rear"
pad_clearance = "0.2 mm"
pad_length = "25 mm"
points = [
 "-25 mm along, -6 mm across: 0.00 mm +/- 0.02 mm", "-25 mm along, 6 mm across: 0.00 mm +/- 0.02 mm",
 "25 mm along, -6 mm across: 1.20 mm +/- 0.02 mm", "25 mm along, 6 mm across: 1.20 mm +/- 0.02 mm",
]"#,
        &[("brake.rear", State::Out, None)],
        &["brake[0].limits", "brake[0].coating"],
    );
}

/// 0.91 against 0.92, read to 0.05.
#[test]
fn x_tilt2() {
    reported(
        r#"material = "steel"
[[brake]]
system = "pm"
end = "rear"
pad_clearance = "0.2 mm"
pad_length = "25 mm"
points = [
 "-25 mm along, -6 mm across: 0.00 mm +/- 0.05 mm", "-25 mm along, 6 mm across: 0.19 mm +/- 0.05 mm",
 "25 mm along, -6 mm across: 0.00 mm +/- 0.05 mm", "25 mm along, 6 mm across: 0.19 mm +/- 0.05 mm",
]"#,
        &[("brake.rear", State::Open, None)],
        &["brake[0].points"],
    );
}

/// 0.02 allowed, 0.04 ± 0.03 needed.
#[test]
fn h_bad2() {
    reported(
        r#"material = "steel"
[[brake]]
system = "fm"
end = "rear"
coating = "painted"
pad_clearance = "0.2 mm"
pad_length = "25 mm"
thickness = "25.1 mm +/- 0.02 mm"
bolt = "38 mm"
points = ["0 mm along, -6 mm across: 0.0635 mm +/- 0.02 mm", "0 mm along, 6 mm across: 0.0401 mm +/- 0.02 mm", "34 mm along, -6 mm across: 0.0234 mm +/- 0.02 mm", "34 mm along, 6 mm across: 0.0458 mm +/- 0.02 mm"]
limits = [{ what = "depth", upper = "0.020 mm", owner = "frame maker" }]"#,
        &[("brake.rear", State::Open, None)],
        &["brake[0].points"],
    );
}

/// A painted fork.
#[test]
fn m_12b_alu_fork() {
    reported(
        r#"material = "aluminium"

[instruments]
inside = "telescoping_gauge"
outside = "micrometer_outside"
depth = "caliper_digital_depth"
height = "dial_indicator"

[crown]
believed = "39.8"
coating = "painted"
seat = ["40.00 mm", "39.98 mm"]
race = ["39.75 mm by caliper_digital_inside"]

[steerer]
believed = "1-1/8"
outside = ["28.60 mm", "28.58 mm"]
length = "300 mm by steel_rule"
stack = ["8 mm by steel_rule", "150 mm by steel_rule", "15 mm by steel_rule", "20 mm by steel_rule", "40 mm by steel_rule"]

[[thread]]
place = "axle"
end = "front"
mate = "M12x1.5"
pitch = "1.5 mm"
coating = "overspray"
state = "fouled"
note = "bonded aluminium insert in the carbon dropout"

[[brake]]
system = "fm"
end = "front"
coating = "painted"
pad_clearance = "0.25 mm"
pad_length = "25 mm"
points = ["0 mm along, -6 mm across: 0.05 mm", "0 mm along, 6 mm across: 0.01 mm", "70 mm along, -6 mm across: 0.06 mm", "70 mm along, 6 mm across: 0.00 mm"]"#,
        &[
            ("crown", State::ToDo, Some(Operation::Clean)),
            ("steerer", State::ToDo, Some(Operation::Check)),
            ("brake.front", State::Open, None),
        ],
        &["brake[0].limits"],
    );
}
