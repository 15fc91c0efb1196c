//! The forms that the contract pins, and figures whose source is not this library.

use serde_json::json;

use crate::reply;

/// ISO 965-1:1998 by way of ISO 724 basic sizes: the limits of M10x1-6H as every table of limits prints them.
#[test]
fn thread_limits() {
    let answer = &reply(r#"{"id":1,"ask":"thread_limits","thread":"M10x1-6H"}"#)["answer"];
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
    assert_eq!(answer["evidence"]["grade"], "standard");
    assert!(answer["sources"][0].as_str().unwrap().contains("965-1"));
}

/// ISO 286-2: N7 over 30 up to 50 mm is -8/-33 micrometres.
#[test]
fn fit_limits() {
    let text = framegauge::ask::answer_line(
        r#"{"id":2,"ask":"fit_limits","nominal":"42 mm","class":"N7"}"#,
        &framegauge::ask::Context::default(),
    )
    .json;
    let start =
        r#"{"id":2,"answer":{"lower_um":-33,"upper_um":-8,"min_mm":41.967,"max_mm":41.992,"#;
    assert!(text.starts_with(start), "{text}");
}

#[test]
fn identify() {
    let answer = &reply(
        r#"{"id":3,"ask":"identify","place":"shell","readings":{"bore":"33.7 +/- 0.05 mm","width":"68.1 +/- 0.1 mm"}}"#,
    )["answer"];
    let outcome = answer["outcome"].as_str().unwrap();
    assert!(["identified", "ambiguous", "unlisted", "cannot_tell"].contains(&outcome));
    let candidates = answer["candidates"].as_array().unwrap();
    assert!(
        candidates
            .iter()
            .all(|c| c["code"].is_string() && c["share"].is_number())
    );
    let next = answer["next"].as_array().unwrap();
    assert!(
        next.iter()
            .all(|n| n["measure"].is_string() && n["separates"].is_array())
    );
    // DIN ISO 6696 names the two 1.37 in threads as interchangeable.
    assert_eq!(answer["between"], json!(["iso_6696", "bsc"]));
    assert_eq!(answer["interchange"], true);
}

#[test]
fn hand() {
    let answer = &reply(r#"{"id":4,"ask":"hand","shell":"bsc","side":"drive"}"#)["answer"];
    let got = ["hand", "tighten", "loosen"].map(|field| answer[field].as_str().unwrap());
    assert_eq!(got, ["left", "counter-clockwise", "clockwise"]);
}

#[test]
fn errors_have_four_parts() {
    let json = reply(r#"{"id":9,"ask":"fit_limits","nominal":42,"class":"N7"}"#);
    assert_eq!(json["id"], 9);
    let parts: Vec<&String> = json["error"].as_object().unwrap().keys().collect();
    assert_eq!(parts, ["field", "kind", "message", "remedy"]);
}

/// A textbook of the trade: 25.4 mm to the inch; a shim's wall is half the difference of the diameters.
#[test]
fn plain_arithmetic() {
    assert_eq!(
        reply(r#"{"ask":"convert","length":"1 3/8 in"}"#)["answer"]["mm"],
        34.925
    );
    let shim = reply(
        r#"{"ask":"shim","bore":["27.40 +/- 0.02 mm"],"post":["27.00 +/- 0.02 mm"],"nominal":"27.2 mm","clearance":"0 mm to 0.1 mm"}"#,
    );
    assert_eq!(shim["answer"]["numbers"]["shim_wall_mm"], 0.2);
    assert_eq!(shim["answer"]["out"], "both");
}

/// Practitioners' case D14 (trade rule, one author): 90 mm where the weld ends at 50 mm, 105 mm where it ends at 80 mm.
#[test]
fn insertion_of_a_post() {
    for (weld, depth) in [(50, 90.0), (80, 105.0)] {
        let line = format!(r#"{{"ask":"insertion","post":"27.2 mm","weld":"{weld} mm"}}"#);
        let numbers = &reply(&line)["answer"]["numbers"];
        assert_eq!(numbers["weld_rule_mm"], json!(depth));
        // Whoever asks most rules: 100 mm by a retailer's general rule, where the weld rule asks less.
        assert_eq!(numbers["depth_mm"], json!(f64::max(depth, 100.0)));
    }
}

/// A reading takes its uncertainty from the budget of the instrument it names; both at once contradict each other.
#[test]
fn a_reading_by_its_instrument() {
    let line = |reading: &str| {
        format!(r#"{{"ask":"conform","readings":["{reading}"],"limits":"30.00 mm to 30.10 mm"}}"#)
    };
    let answer = &reply(&line("30.05 mm by micrometer_outside"))["answer"];
    let stated = framegauge::measure::instrument("micrometer_outside")
        .unwrap()
        .reading(framegauge::mm(30.05))
        .unwrap();
    assert_eq!(
        answer["findings"][0]["readings"][0],
        serde_json::to_value(stated).unwrap()
    );
    assert_eq!(answer["outcome"], "conformity_shown");
    let both = reply(&line("30.05 mm +/- 0.01 mm by micrometer_outside"));
    assert_eq!(both["error"]["kind"], "contradiction");
    let unknown = reply(&line("30.05 mm by ruler_of_thumb"));
    assert_eq!(unknown["error"]["kind"], "unknown_name");
}

/// Practitioners' case C15: bore and cup are asked for first, and burrs are flagged as a last resort.
#[test]
fn burrs_wait_for_the_gap() {
    let stand = |line: &str| {
        let answer = reply(line);
        let options = answer["answer"]["rescue"]["options"].as_array().unwrap();
        let burrs = options.iter().find(|o| o["step"] == "peen").unwrap();
        burrs["stand"].as_str().unwrap().to_owned()
    };
    assert_eq!(
        stand(r#"{"ask":"rescue","damage":"loose","joint":"head_cup"}"#),
        "needs_measurement"
    );
    assert_eq!(
        stand(
            r#"{"ask":"rescue","damage":"loose","joint":"head_cup","hole":["34.06 +/- 0.01 mm"],"shaft":"34.00 +/- 0.01 mm"}"#
        ),
        "allowed"
    );
}

/// What stands beside the readings counts: a thread at hand, and that a head tube is not yet reamed.
#[test]
fn identify_takes_what_is_said_besides() {
    let outcome = |line: &str| reply(line)["answer"]["outcome"].clone();
    // 8.5 mm is no M10x1 (6H: 8.917 to 9.153 mm) and suits M10x1.5 (8.376 to 8.676 mm), ISO 965-1.
    let hole = |also: &str| {
        outcome(&format!(
            r#"{{"ask":"identify","place":"hanger","readings":{{"bore":"8.5 +/- 0.05 mm"}}{also}}}"#
        ))
    };
    assert_eq!(hole(""), "unlisted");
    assert_eq!(hole(r#","also":["M10x1.5"]"#), "identified");
    // 33.6 mm is 0.3 mm under EC34 (33.90 to 33.95 mm): no seat, or one with stock left for the reamer (common practice).
    let tube = |unfinished: &str| {
        outcome(&format!(
            r#"{{"ask":"identify","place":"head_tube.upper","readings":{{"bore":"33.6 +/- 0.02 mm"}}{unfinished}}}"#
        ))
    };
    assert_eq!(tube(""), tube(r#","unfinished":false"#));
    assert_ne!(tube(""), tube(r#","unfinished":true"#));
}
