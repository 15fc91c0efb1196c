//! Bad lines: each gets an error with kind, field, message and remedy, and `id` where it can be read.

use framegauge::ask::{Context, LONGEST_LINE, answer_line};
use serde_json::{Value, json};

use crate::{refused, reply};

#[test]
fn the_path_of_the_field_is_named() {
    let cases = [
        (r#"{"ask":"thread_limits"}"#, "missing", "thread"),
        (r#"{"thread":"M10x1"}"#, "missing", "ask"),
        (r#"{"ask":7}"#, "text", "ask"),
        (r#"{"ask":"thread_limit"}"#, "unknown_name", "ask"),
        (
            r#"{"ask":"hand","ask":"hand","shell":"bsc","side":"drive"}"#,
            "contradiction",
            "ask",
        ),
        (
            r#"{"id":1,"id":2,"ask":"hand","shell":"bsc","side":"drive"}"#,
            "contradiction",
            "id",
        ),
        (
            r#"{"ask":"hand","shell":"bsc","side":"left"}"#,
            "unknown_name",
            "side",
        ),
        (
            r#"{"ask":"hand","shell":"bsc","pattern":"pedal","side":"drive"}"#,
            "contradiction",
            "pattern",
        ),
        (
            r#"{"ask":"hand","shell":"bsd","side":"drive"}"#,
            "unknown_name",
            "shell",
        ),
        (
            r#"{"ask":"thread_limits","thread":"M10x1-6H","member":"external"}"#,
            "contradiction",
            "member",
        ),
        (
            r#"{"ask":"thread_limits","thread":"1.370 in x 24 tpi BSC","member":"internal"}"#,
            "missing",
            "thread",
        ),
        (
            r#"{"ask":"thread_limits","thread":"M10x1-6H","engagement":"-8 mm"}"#,
            "out_of_range",
            "engagement",
        ),
        (
            r#"{"ask":"fit_limits","nominal":"-42 mm","class":"N7"}"#,
            "out_of_range",
            "nominal",
        ),
        (
            r#"{"ask":"fit_limits","nominal":"420 mm","class":"N7"}"#,
            "not_tabulated",
            "nominal",
        ),
        (
            r#"{"ask":"fit_limits","nominal":"nan mm","class":"N7"}"#,
            "not_finite",
            "nominal",
        ),
        (
            r#"{"ask":"conform","readings":[],"limits":"1 mm to 2 mm"}"#,
            "missing",
            "readings",
        ),
        (
            r#"{"ask":"conform","readings":["45 +/- 0.05 mm"]}"#,
            "missing",
            "limits",
        ),
        (
            r#"{"ask":"conform","readings":["45 +/- 0.05 mm"],"limits":"2 mm to 1 mm"}"#,
            "contradiction",
            "limits",
        ),
        (
            r#"{"ask":"conform","readings":["45 +/- 0.05 mm"],"limits":"45 mm"}"#,
            "text",
            "limits",
        ),
        (
            r#"{"ask":"conform","readings":["45 +/- 0.05 mm","45 mm"],"limits":"1 mm to 2 mm"}"#,
            "missing",
            "readings[1]",
        ),
        (
            r#"{"ask":"conform","readings":["45 +/- 0.05 mm"],"limits":"1 mm to 2 mm","class":"42 N7"}"#,
            "contradiction",
            "class",
        ),
        (
            r#"{"ask":"conform","readings":["9.4 +/- 0.05 mm"],"thread":"M10x1-6H"}"#,
            "missing",
            "diameter",
        ),
        (
            r#"{"ask":"conform","readings":["9.4 +/- 0.05 mm"],"limits":"1 mm to 2 mm","rule":"2018"}"#,
            "unknown_name",
            "rule",
        ),
        (
            r#"{"ask":"conform","readings":["1 +/- 0.05 mm"],"figure":{"family":"shelf","code":"bsc","field":"bore"}}"#,
            "unknown_name",
            "figure.family",
        ),
        (
            r#"{"ask":"conform","readings":["1 +/- 0.05 mm"],"figure":{"family":"shell","code":"bsx","field":"bore"}}"#,
            "unknown_name",
            "figure.code",
        ),
        (
            r#"{"ask":"conform","readings":["1 +/- 0.05 mm"],"figure":{"family":"shell","code":"bsc","field":"colour"}}"#,
            "unknown_name",
            "figure.field",
        ),
        (
            r#"{"ask":"fit","hole":{"class":"42 N7","limits":"42 to 42.1 mm"},"shaft":{"readings":["27 +/- 0.02 mm"]}}"#,
            "contradiction",
            "hole.limits",
        ),
        (
            r#"{"ask":"mate","hole":{"readings":["-27 +/- 0.02 mm"]},"shaft":{"readings":["27 +/- 0.02 mm"]}}"#,
            "out_of_range",
            "hole.readings[0]",
        ),
        (
            r#"{"ask":"fit","hole":{"readings":["-1 mm deep: 27 +/- 0.02 mm"]},"shaft":{"readings":["27 +/- 0.02 mm"]}}"#,
            "out_of_range",
            "hole.readings[0]",
        ),
        (
            r#"{"ask":"mate","hole":{"readings":["27 +/- 0.02 mm"]},"shaft":{"readings":["27 +/- 0.02 mm"]},"joint":"saddle"}"#,
            "unknown_name",
            "joint",
        ),
        (
            r#"{"ask":"face","datum":"","inner_radius":"17 mm","outer_radius":"21 mm","probe_radius":"20 mm","probes":[],"square_within":"0.05 mm","over":"40 mm"}"#,
            "missing",
            "datum",
        ),
        (
            r#"{"ask":"face","datum":"thread","inner_radius":"21 mm","outer_radius":"17 mm","probe_radius":"20 mm","probes":[],"square_within":"0.05 mm","over":"40 mm"}"#,
            "contradiction",
            "inner_radius",
        ),
        (
            r#"{"ask":"bore_shape","readings":[]}"#,
            "missing",
            "readings",
        ),
        (
            r#"{"ask":"pitch_mismatch","a":"M35x1","b":"M35x1","visible":"-1 mm"}"#,
            "out_of_range",
            "visible",
        ),
        (
            r#"{"ask":"engagement","thread":"M10x1","bore":"0 mm"}"#,
            "out_of_range",
            "bore",
        ),
        (
            r#"{"ask":"strip","thread":"M10x1","engagement":"8 mm","hole_depth":"4 mm","screw_shear_strength":"480 MPa","hole_shear_strength":"180 MPa"}"#,
            "contradiction",
            "engagement",
        ),
        (
            r#"{"ask":"strip","thread":"M10x1","engagement":"8 mm","screw_shear_strength":"480 MPa","hole_shear_strength":"0 MPa"}"#,
            "out_of_range",
            "hole_shear_strength",
        ),
        (
            r#"{"ask":"strip","thread":"M10x1","engagement":"8 mm","screw_shear_strength":"480 MPa","hole_shear_strength":"180 MPa","nut_factor":9}"#,
            "out_of_range",
            "nut_factor",
        ),
        (
            r#"{"ask":"three_wire","thread":"M10x1","wire":"3 mm"}"#,
            "out_of_range",
            "wire",
        ),
        (
            r#"{"ask":"three_wire","thread":"M10x1","over_wires":"30 +/- 0.01 mm"}"#,
            "contradiction",
            "over_wires",
        ),
        (
            r#"{"ask":"insertion","post":"27.2 mm","rules":["no_such_rule"]}"#,
            "unknown_field",
            "rules",
        ),
        (
            r#"{"ask":"insertion","post":"27.2 mm","written":[{"owner":"maker","depth":"-1 mm"}]}"#,
            "out_of_range",
            "written[0].depth",
        ),
        (
            r#"{"ask":"shim","bore":["27.40 +/- 0.02 mm"],"post":[],"clearance":"0 mm to 0.1 mm"}"#,
            "missing",
            "post",
        ),
        (
            r#"{"ask":"bolt_length","thickness":"12.4 +/- 0.1 mm","bolts":["18 mm","-1 mm"],"engaged":"10 mm to 12 mm"}"#,
            "out_of_range",
            "bolts[1]",
        ),
        (
            r#"{"ask":"conform","class":"42 N7","readings":["41.97 +/- 0.004 mm","-41.975 +/- 0.004 mm"]}"#,
            "out_of_range",
            "readings[1]",
        ),
        (
            r#"{"ask":"conform","thread":"M10x1-6H","diameter":"minor","readings":["-9.40 +/- 0.02 mm"]}"#,
            "out_of_range",
            "readings[0]",
        ),
        (
            r#"{"ask":"insertion","post":"27.2 mm","written":[{"owner":"maker","depth":"90 mm"}],"inserted":"-120 +/- 1 mm"}"#,
            "out_of_range",
            "inserted",
        ),
        (
            r#"{"ask":"depth","bore_depth":"9 +/- 0.1 mm","insertion":"-12 +/- 0.1 mm"}"#,
            "out_of_range",
            "insertion",
        ),
        (
            r#"{"ask":"depth","bore_depth":"-9 +/- 0.1 mm","insertion":"12 +/- 0.1 mm"}"#,
            "out_of_range",
            "bore_depth",
        ),
        (
            r#"{"ask":"width_stack","width":"68.1 +/- 0.1 mm","spacers":["2.5 +/- 0.1 mm","-2.5 +/- 0.1 mm"],"wanted":"72.5 mm to 73.5 mm"}"#,
            "out_of_range",
            "spacers[1]",
        ),
        (
            r#"{"ask":"bolt_length","thickness":"-2 +/- 0.1 mm","bolts":["18 mm"],"engaged":"10 mm to 12 mm"}"#,
            "out_of_range",
            "thickness",
        ),
        (
            r#"{"ask":"standard","code":"28.6"}"#,
            "contradiction",
            "code",
        ),
        (
            r#"{"ask":"standard","code":"no such row"}"#,
            "unknown_name",
            "code",
        ),
        (r#"{"ask":"rescue","thread":"M10x1"}"#, "missing", "damage"),
        (r#"{"ask":"rescue","damage":"worn"}"#, "missing", "thread"),
        (
            r#"{"ask":"rescue","damage":"worn","shell":"bsc"}"#,
            "missing",
            "side",
        ),
        (
            r#"{"ask":"rescue","damage":"worn","shell":"bb30","side":"drive"}"#,
            "missing",
            "shell",
        ),
        (
            r#"{"ask":"rescue","damage":"worn","thread":"M10x1","joint":"head_cup"}"#,
            "contradiction",
            "thread",
        ),
        (
            r#"{"ask":"rescue","damage":"worn","thread":"M10x1","gauging":{"not_go_turns":-1.0}}"#,
            "out_of_range",
            "gauging.not_go_turns",
        ),
        (
            r#"{"ask":"rescue","damage":"rusty","thread":"M10x1"}"#,
            "unknown_name",
            "damage",
        ),
        (r#"{"ask":"convert"}"#, "missing", "length"),
        (
            r#"{"ask":"identify","place":"shell","readings":{"bore":33.7}}"#,
            "unit",
            "readings.bore",
        ),
        (
            r#"{"ask":"identify","place":"shell","readings":{"bore":"33.7 mm with eyeball"}}"#,
            "unknown_name",
            "readings.bore",
        ),
        (
            r#"{"ask":"identify","place":"shell","readings":{"bore":"33.7 +/- 0.1 mm"},"tools":["eyeball"]}"#,
            "unknown_name",
            "tools",
        ),
        (r#"{"ask":"prepare","sheet":"frame.toml"}"#, "text", "sheet"),
        (
            r#"{"ask":"prepare","sheet":{"format":1,"frame":"x","shell":{"drive":{"hnad":"left"}}}}"#,
            "unknown_field",
            "sheet.shell.drive.hnad",
        ),
        (
            r#"{"ask":"prepare","sheet":{"format":1,"frame":"x","shell":{"width":[68]}}}"#,
            "unit",
            "sheet.shell.width[0]",
        ),
    ];
    for (line, kind, field) in cases {
        assert_eq!(refused(line), (kind.into(), field.into()), "{line}");
    }
}

#[test]
fn the_line_itself() {
    for line in ["", "   ", "\t"] {
        assert_eq!(refused(line), ("missing".into(), "line".into()));
    }
    for line in [
        "[]",
        "7",
        "\"hand\"",
        "null",
        "{",
        "{\"ask\":\"hand\"} trailing",
        "{\"id\":1e999}",
        "\u{feff}{}",
    ] {
        assert_eq!(refused(line).1, "line", "{line}");
    }
    let deep = "[".repeat(100_000);
    assert_eq!(refused(&deep).1, "line");
    let reply = answer_line([0xff, 0xfe, b'{'], &Context::default());
    assert!(!reply.answered && reply.json.contains("UTF-8"));
}

#[test]
fn a_line_of_a_megabyte_is_the_longest() {
    let mut line = String::from(r#"{"ask":"hand","shell":"bsc","side":"drive"}"#);
    line.push_str(&" ".repeat(LONGEST_LINE - line.len()));
    assert!(reply(&line)["answer"].is_object());
    line.push(' ');
    assert_eq!(refused(&line), ("too_large".into(), "line".into()));
}

#[test]
fn long_lists_are_refused() {
    let readings = vec!["27.2 +/- 0.02 mm"; 2001];
    let line =
        json!({ "ask": "conform", "readings": readings, "limits": "1 mm to 30 mm" }).to_string();
    assert_eq!(refused(&line), ("too_large".into(), "readings".into()));
    let many: serde_json::Map<String, Value> = (0..100)
        .map(|i| (format!("bore{i}"), "1 mm".into()))
        .collect();
    let line = json!({ "ask": "identify", "place": "shell", "readings": many }).to_string();
    assert_eq!(refused(&line), ("too_large".into(), "readings".into()));
}

#[test]
fn the_id_is_echoed_as_it_came() {
    for id in [
        "7",
        "-7",
        "\"frame 12 é\"",
        "null",
        "18446744073709551615",
        "-9223372036854775808",
        "\"\"",
    ] {
        for rest in [
            r#""ask":"convert","length":"1 in"}"#,
            r#""ask":"convert","length":1}"#,
            r#""ask":"convert""#,
        ] {
            let line = format!("{{\"id\":{id},{rest}");
            let text = answer_line(&line, &Context::default()).json;
            assert!(
                text.starts_with(&format!("{{\"id\":{id},\"")),
                "{line}: {text}"
            );
        }
    }
    for id in ["1.5", "[1]", "{}", "true", "1e30"] {
        let line = format!(r#"{{"id":{id},"ask":"convert","length":"1 in"}}"#);
        assert_eq!(refused(&line), ("text".into(), "id".into()), "{line}");
    }
    let long = json!({ "id": "x".repeat(1000), "ask": "convert", "length": "1 in" }).to_string();
    assert_eq!(refused(&long).1, "id");
}

#[test]
fn a_hostile_value_does_not_flood_the_message() {
    let line = json!({ "id": 1, "ask": "hand", "shell": "x".repeat(100_000), "side": "drive" })
        .to_string();
    assert!(answer_line(&line, &Context::default()).json.len() < 2000);
    let line = json!({ "id": 1, "ask": "hand", "y".repeat(100_000): 1 }).to_string();
    assert!(answer_line(&line, &Context::default()).json.len() < 2000);
}

/// Fifty defects are told one by one, the rest are counted.
#[test]
fn a_long_list_of_defects_ends_with_how_many_more() {
    let bores = vec!["27.2"; 60];
    let line = serde_json::json!({"ask": "seatpost_for_tube", "bore": bores}).to_string();
    let told: Value = serde_json::from_str(&answer_line(line, &Context::default()).json).unwrap();
    let also = told["error"]["also"].as_array().unwrap();
    assert_eq!(
        (told["error"]["field"].as_str(), also.len()),
        (Some("bore[0]"), 50)
    );
    assert_eq!(also[48]["field"], "bore[49]");
    assert_eq!(also[49]["message"], "and 10 more");
}
