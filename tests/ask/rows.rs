//! A shop's own rows: found, graded `shop`, and refused by name where they clash.

#[path = "../../examples/support/rows.rs"]
mod load;

use framegauge::ErrorKind;
use framegauge::ask::{Context, answer_line};
use serde_json::Value;

/// Invented rows of an invented shop.
const OWN: &str = r#"
[[shell]]
code = "own_40"
name = "Invented 40 mm shell"
bore = { lower = "39.95 mm", upper = "40.00 mm", from = ["our drawing 12 @ sheet 1"] }
widths = [{ nominal = "73 mm", from = ["our drawing 12"] }]
located_by = { value = "seat", from = ["our drawing 12"] }

[[seatpost]]
code = "own_28_9"
diameter = { nominal = "28.9 mm", from = ["our post"] }
"#;

fn ask(rows: &framegauge::standard::ShopRows, line: &str) -> Value {
    let context = Context::with_rows(rows).unwrap();
    serde_json::from_str(&answer_line(line, &context).json).unwrap()
}

fn own() -> framegauge::standard::ShopRows {
    load::parse(OWN).unwrap_or_else(|e| panic!("{e}"))
}

#[test]
fn own_rows_are_found_and_graded_shop() {
    let rows = own();
    let told = ask(&rows, r#"{"ask":"standard","code":"own_40"}"#);
    assert_eq!(told["answer"]["family"], "shell");
    assert_eq!(told["answer"]["evidence"]["grade"], "shop");
    assert_eq!(told["answer"]["sources"][0], "our drawing 12, sheet 1");
    let without = answer_line(r#"{"ask":"standard","code":"own_40"}"#, &Context::default());
    assert!(!without.answered);
}

#[test]
fn own_rows_take_part_in_every_question() {
    let rows = own();
    let held = ask(
        &rows,
        r#"{"ask":"conform","readings":["39.97 +/- 0.005 mm"],"figure":{"family":"shell","code":"own_40","field":"bore"}}"#,
    );
    assert_eq!(held["answer"]["outcome"], "conformity_shown");
    let named = ask(
        &rows,
        r#"{"ask":"identify","place":"shell","readings":{"bore":"39.97 +/- 0.01 mm","width":"73.0 +/- 0.1 mm"}}"#,
    );
    assert_eq!(named["answer"]["code"], "own_40", "{named}");
    assert_eq!(named["answer"]["evidence"]["grade"], "shop");
    let posts = ask(
        &rows,
        r#"{"ask":"seatpost_for_tube","bore":["28.95 +/- 0.01 mm"],"clearance":"0 mm to 0.1 mm"}"#,
    );
    let first = posts["answer"]["findings"][0].to_string();
    assert!(first.contains("own_28_9"), "{first}");
}

/// With rows beside them, our own answers stay what they were.
#[test]
fn own_rows_change_no_other_answer() {
    let rows = own();
    let context = Context::with_rows(&rows).unwrap();
    for line in [
        r#"{"ask":"standard","code":"bb30","family":"shell"}"#,
        r#"{"ask":"fit_limits","nominal":"42 mm","class":"N7"}"#,
        r#"{"ask":"hand","shell":"bsc","side":"drive"}"#,
        r#"{"ask":"seatpost_for_tube","bore":["27.24 +/- 0.02 mm"],"clearance":"0 mm to 0.1 mm"}"#,
    ] {
        assert_eq!(
            answer_line(line, &context),
            answer_line(line, &Context::default()),
            "{line}"
        );
    }
}

#[test]
fn clashes_are_refused_by_name() {
    // By code, by alias, in another letter case, and among the shop's own.
    for (text, name) in [
        (
            "[[seatpost]]\ncode = \"27.2\"\ndiameter = { nominal = \"27.3 mm\" }",
            "seatpost.27.2",
        ),
        (
            "[[seatpost]]\ncode = \"a\"\ndiameter = { nominal = \"27.3 mm\" }\n[[seatpost]]\ncode = \"A\"\ndiameter = { nominal = \"27.4 mm\" }",
            "seatpost.A",
        ),
        (
            "[[shell]]\ncode = \"BSA\"\nname = \"ours\"\nlocated_by = { unknown = \"\" }",
            "shell.BSA",
        ),
        (
            "[[shell]]\ncode = \"own\"\naliases = [\"bb30\"]\nname = \"ours\"\nlocated_by = { unknown = \"\" }",
            "shell.own",
        ),
    ] {
        let rows = load::parse(text).unwrap_or_else(|e| panic!("{e}"));
        let error = Context::with_rows(&rows).unwrap_err();
        assert_eq!((error.kind(), error.field()), (ErrorKind::NameTaken, name));
    }
    let nameless =
        load::parse("[[seatpost]]\ncode = \" \"\ndiameter = { nominal = \"27.3 mm\" }").unwrap();
    assert_eq!(
        Context::with_rows(&nameless).unwrap_err().kind(),
        ErrorKind::Missing
    );
}

#[test]
fn defects_name_their_line() {
    let error = load::parse(
        "[[seatpost]]\ncode = \"own\"\ncolour = \"red\"\ndiameter = { nominal = \"28.9 mm\" }",
    )
    .unwrap_err();
    assert_eq!(error.kind(), ErrorKind::UnknownField);
    assert!(error.line().is_some());
    assert!(load::parse("[[seatpost]]\ncode = \"own\"\ndiameter = { nominal = 28.9 }").is_err());
    assert!(load::parse("[[saddle]]\ncode = \"own\"").is_err());
    let json = load::parse(
        r#"{"seatpost":[{"code":"own","diameter":{"nominal":"28.9 mm","from":["our post"]}}]}"#,
    );
    assert_eq!(json.unwrap().seatpost.len(), 1);
}
