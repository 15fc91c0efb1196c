//! What stands in the place of a value: nothing, a bare number, one too many; and how the defects are told.

use framegauge::ask::{Question, schema};
use framegauge::read::Tree;
use framegauge::standard::Tables;
use serde::Deserialize as _;
use serde::de::value::{BytesDeserializer, Error as Plain};
use serde_json::{Value, json};

use crate::{refused, reply};

fn sheet(frame: &str, crown: &str) -> String {
    format!(
        r#"{{"ask":"prepare","sheet":{{"format":1,"frame":{frame},"crown":{{"seat":["26.45 mm +/- 0.02 mm"]{crown}}}}}}}"#
    )
}

/// A number where words belong is quoted, whatever its sign and size; only where a quantity belongs does it lack a unit.
#[test]
fn a_number_in_the_place_of_words_is_quoted() {
    for number in ["7", "-7", "7.5", "18446744073709551615"] {
        let line = sheet(number, "");
        assert_eq!(refused(&line), ("text".into(), "sheet.frame".into()));
        let message = reply(&line)["error"]["message"].to_string();
        assert!(
            message.ends_with(&format!("stands here, got `{number}`\"")),
            "{message}"
        );
    }
    let race = |value: &str| refused(&sheet("\"x\"", &format!(r#","race":[{value}]"#)));
    assert_eq!(race("26"), ("unit".into(), "sheet.crown.race[0]".into()));
    assert_eq!(race("true"), ("text".into(), "sheet.crown.race[0]".into()));
    assert_eq!(
        race(r#""26.38 mm +/- 0.02 mm","26.38 mm +/- 0.02 mm",26.4"#),
        ("unit".into(), "sheet.crown.race[2]".into())
    );
}

/// Nothing in the place of a value says as much as no field at all, in a question, in a sheet inside it, and as `id`.
#[test]
fn null_is_as_good_as_absent() {
    let without = reply(&sheet("\"x\"", ""));
    assert!(without["answer"].is_object(), "{without}");
    assert_eq!(reply(&sheet("\"x\"", r#","believed":null"#)), without);
    let plain = r#""ask":"convert","length":"1 in"}"#;
    let answer = reply(&format!("{{{plain}"));
    assert_eq!(reply(&format!(r#"{{"id":null,{plain}"#)), answer);
    assert_eq!(reply(&format!(r#"{{"pitch":null,{plain}"#)), answer);
    assert_eq!(answer["answer"]["mm"], 25.4);
}

/// The longest list and the most kinds of observation that are read are those that the remedy names.
#[test]
fn as_many_as_the_remedy_says() {
    let list = |count: usize| {
        let readings = vec!["27.2 +/- 0.02 mm"; count];
        json!({ "ask": "conform", "readings": readings, "limits": "1 mm to 30 mm" }).to_string()
    };
    let error = &reply(&list(2001))["error"];
    assert_eq!(error["remedy"], "at most 2000");
    assert_eq!(reply(&list(2000))["answer"]["outcome"], "conformity_shown");
    let kinds = |count: usize| {
        let many: serde_json::Map<String, Value> = (0..count)
            .map(|i| (format!("bore{i}"), "1 mm".into()))
            .collect();
        json!({ "ask": "identify", "place": "shell", "readings": many }).to_string()
    };
    let error = &reply(&kinds(65))["error"];
    assert_eq!(error["remedy"], "at most 64");
    // One fewer is looked at one by one: the first is no feature.
    assert_eq!(refused(&kinds(64)).0, "unknown_field");
}

/// A sheet with several defects tells each of them: one a line for a person, under `also` in JSON.
#[test]
fn each_defect_of_a_sheet_is_told() {
    let line = r#"{"ask":"prepare","sheet":{"format":1,"frame":"x","material":"gold","crown":{"seat":["26.45 mm"],"race":["-26.38 mm +/- 0.02 mm"]}}}"#;
    let tree: Tree<'_> = serde_json::from_str(line).unwrap();
    let refusal = Question::from_tree(tree, Tables::ours()).unwrap_err();
    let fields: Vec<&str> = refusal.also().iter().map(|e| e.field()).collect();
    assert_eq!(refusal.first().field(), "sheet.material");
    assert_eq!(fields, ["sheet.crown.seat[0]", "sheet.crown.race[0]"]);
    let text = refusal.to_string();
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines.len(), 3, "{text}");
    assert_eq!(lines[0], refusal.first().to_string());
    assert_eq!(lines[2], refusal.also()[1].to_string());
    assert!(lines[1].contains("sheet.crown.seat[0]"), "{text}");
    let told = reply(line);
    assert_eq!(told["error"]["also"][1]["field"], "sheet.crown.race[0]");
}

/// A format with values that no question has says what was looked for.
#[test]
fn bytes_are_no_question() {
    let error = Tree::deserialize(BytesDeserializer::<Plain>::new(&[1, 2])).unwrap_err();
    assert!(error.to_string().contains("expected a question"), "{error}");
}

/// A pattern is one of the known hands; a shell may also be a row. The row of Chater-Lea in the shell table states left for
/// the drive side, and no pattern has that name.
#[test]
fn a_row_is_a_shell_and_no_pattern() {
    let row = &reply(r#"{"ask":"hand","shell":"chater_lea","side":"drive"}"#)["answer"];
    assert_eq!(
        (&row["hand"], &row["tap_marked"]),
        (&json!("left"), &json!("LH"))
    );
    let line = r#"{"ask":"hand","pattern":"chater_lea","side":"drive"}"#;
    assert_eq!(refused(line), ("unknown_name".into(), "pattern".into()));
}

/// A part exactly as long as its bore is deep leaves nothing, and is not proud.
#[test]
fn a_part_that_just_fits_is_not_proud() {
    let words = |part: &str| {
        let line = format!(
            r#"{{"ask":"depth","bore_depth":"12.0 +/- 0.1 mm","insertion":"{part} +/- 0.1 mm"}}"#
        );
        reply(&line)["answer"]["words"].as_str().unwrap().to_owned()
    };
    assert!(!words("12.0").contains("proud"));
    assert!(
        words("12.2").contains("0.200 mm proud"),
        "{}",
        words("12.2")
    );
}

/// A class says what a size should be, its readings what it is: 42 h6 may be 41.984 to 42.000 mm (ISO 286-2), this shaft is
/// 41.990 mm, so in 42 H7 (42.000 to 42.025 mm) it has 0.010 to 0.035 mm.
#[test]
fn readings_go_before_the_class_they_are_held_against() {
    let fit = |shaft: &str| {
        let line = format!(
            r#"{{"ask":"mate","hole":{{"class":"42 H7"}},"shaft":{{"class":"42 h6"{shaft}}}}}"#
        );
        let numbers = &reply(&line)["answer"]["numbers"];
        [
            numbers["least_clearance_mm"].clone(),
            numbers["greatest_clearance_mm"].clone(),
        ]
    };
    assert_eq!(fit(""), [json!(0.0), json!(0.041)]);
    let measured = fit(r#","readings":["41.990 +/- 0.002 mm"]"#);
    assert_eq!(measured, [json!(0.01), json!(0.035)]);
}

/// 45 mm with +0.10 and -0.05 mm lies from 44.95 to 45.10 mm.
#[test]
fn limits_as_a_size_with_its_tolerance() {
    let line = r#"{"ask":"conform","readings":["45 +/- 0.01 mm"],"limits":"45 +0.10/-0.05 mm"}"#;
    let limits = &reply(line)["answer"]["findings"][0]["limits"];
    assert_eq!(
        (&limits["lower_mm"], &limits["upper_mm"]),
        (&json!(44.95), &json!(45.1))
    );
}

/// A window says what is wanted, so the end that it does not print is open: a headset maker's page prints at most 0.075 mm
/// for the faces of a head tube, and faces that are parallel to 0.050 mm keep it.
#[test]
fn a_window_with_one_end_is_open_at_the_other() {
    let line = r#"{"ask":"conform","readings":["0.050 +/- 0.002 mm"],"figure":{"family":"facing_rule","code":"end_face_parallelism","field":"window"}}"#;
    let answer = &reply(line)["answer"];
    let limits = &answer["findings"][0]["limits"];
    assert_eq!(
        (&limits["lower"], &limits["upper_mm"]),
        (&json!("none"), &json!(0.075))
    );
    assert_eq!(answer["outcome"], "conformity_shown");
}

/// What is wrong with a press names the side that it is wrong with.
#[test]
fn the_side_of_a_press_is_named() {
    let press = |rest: &str| {
        refused(&format!(
            r#"{{"ask":"press","hole":{{"readings":["43.98 +/- 0.005 mm"]}},"shaft":{{"readings":["44.05 +/- 0.005 mm"]}},"length":"10 mm","friction":{{"holding":0.06,"pressing":0.15}},{rest}}}"#
        ))
    };
    let metal = r#""hub_material":"al_6061_t6","shaft_material":"al_6061_t6""#;
    for (rest, kind, field) in [
        (
            format!(r#""hub_outside":"44 mm",{metal}"#),
            "contradiction",
            "hub_outside",
        ),
        (
            format!(r#""hub_outside":"50 mm","shaft_bore":"45 mm",{metal}"#),
            "contradiction",
            "shaft_bore",
        ),
        (
            r#""hub_outside":"50 mm","hub_material":"cfrp_ud","shaft_material":"al_6061_t6""#
                .into(),
            "not_applicable",
            "hub_material",
        ),
        (
            r#""hub_outside":"50 mm","hub_material":"al_6061_t6","shaft_material":"cfrp_ud""#
                .into(),
            "not_applicable",
            "shaft_material",
        ),
    ] {
        assert_eq!(press(&rest), (kind.into(), field.into()), "{rest}");
    }
}

/// What belongs to a joint is refused where a thread or a symptom is asked about, each field by its name.
#[test]
fn what_belongs_to_a_joint_is_no_part_of_a_thread() {
    for (field, value) in [
        ("hole", r#"["34.06 +/- 0.01 mm"]"#),
        ("shaft", r#""34.00 +/- 0.01 mm""#),
        ("wanted_interference", r#""0.05 mm""#),
        ("compound_gap", r#""0.10 mm""#),
        ("sizes", r#"["34.2 mm"]"#),
    ] {
        for about in [
            r#""damage":"worn","thread":"M10x1""#,
            r#""symptom":"rotor_rubs""#,
        ] {
            let line = format!(r#"{{"ask":"rescue",{about},"{field}":{value}}}"#);
            assert_eq!(
                refused(&line),
                ("contradiction".into(), field.into()),
                "{line}"
            );
        }
    }
}

/// A class of the screw beside the thread is a class of the screw, not of the hole. ISO 965-1 for a pitch of 1 mm: position e
/// lies 0.060 mm below the basic size, g 0.026 mm, so the screw of 6e has less to shear; 6g is what is taken without one.
#[test]
fn a_thread_class_counts_for_its_own_member() {
    let areas = |thread: &str| {
        let line = format!(
            r#"{{"ask":"strip","thread":"{thread}","engagement":"8 mm","screw_shear_strength":"480 MPa","hole_shear_strength":"180 MPa"}}"#
        );
        let areas = reply(&line)["answer"]["strips"]["areas"].clone();
        ["screw_mm2", "hole_mm2"].map(|name| areas[name].as_f64().unwrap())
    };
    let usual = areas("M10x1");
    assert_eq!(areas("M10x1-6g"), usual);
    assert_eq!(areas("M10x1-6H"), usual);
    let loose = areas("M10x1-6e");
    assert!(
        loose[0] < usual[0] && loose[1] < usual[1],
        "{loose:?} {usual:?}"
    );
    // 7H: a wider hole, so that the screw is sheared farther out.
    assert!(areas("M10x1-7H")[0] < usual[0]);
}

/// The schema says of a field what it means and how its text is written; of plain words there is nothing more to say.
#[test]
fn the_schema_tells_what_a_field_is() {
    let schema = serde_json::to_value(schema()).unwrap();
    let told = |of: &str, field: &str| {
        schema["$defs"][of]["properties"][field]["description"]
            .as_str()
            .unwrap_or_else(|| panic!("{of} {field}"))
            .to_owned()
    };
    assert_eq!(
        told("convert_question", "length"),
        "A length: a length with its unit, such as `27.2 mm` or `1 3/8 in`"
    );
    let length = &schema["$defs"]["convert_question"]["properties"]["length"];
    assert_eq!(length["type"], "string");
    assert_eq!(
        told("convert_answer", "text_mm"),
        "In millimetres as printed."
    );
    assert!(
        told("pitch_mismatch_answer", "grounds").ends_with(": true where the threads differ in it")
    );
}

/// Limits of one's own may be about a deviation, which has a sign; a size has none (see the refusals).
#[test]
fn a_deviation_has_a_sign() {
    let line = r#"{"ask":"conform","readings":["-0.02 +/- 0.001 mm"],"limits":"0 mm to 0.10 mm"}"#;
    assert_eq!(reply(line)["answer"]["outcome"], "nonconformity_shown");
}
