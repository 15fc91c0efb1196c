//! Sheets that cannot be read as they stand: every defect is told at once, each with its path and what would be right.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::plan::{FrameSheet, prepare};
use framegauge::read::{MOST_DEFECTS, Tree};
use framegauge::standard::Tables;
use framegauge::{Error, ErrorKind};

const HEAD: &str = "format = 1\nframe = \"invented\"\n";

fn read(sheet: &str) -> Result<FrameSheet, Vec<Error>> {
    let whole = format!("{HEAD}{sheet}");
    let tree: Tree = toml::from_str(&whole).unwrap_or_else(|e| panic!("{whole}: {e}"));
    FrameSheet::from_tree(&tree, Tables::ours())
}

fn json(sheet: &str) -> Result<FrameSheet, Vec<Error>> {
    let tree: Tree = serde_json::from_str(sheet).unwrap();
    FrameSheet::from_tree(&tree, Tables::ours())
}

/// What was refused: where, of what kind, and a word that the problem or the remedy must hold.
fn refused(sheet: &str, expected: &[(&str, ErrorKind, &str)]) {
    let errors = read(sheet).expect_err(sheet);
    let told: Vec<String> = errors
        .iter()
        .map(|e| {
            format!(
                "{} [{:?}] {} | {}",
                e.field(),
                e.kind(),
                e.problem(),
                e.remedy()
            )
        })
        .collect();
    assert_eq!(errors.len(), expected.len(), "{sheet}\n{}", told.join("\n"));
    for (field, kind, word) in expected {
        let found = errors
            .iter()
            .find(|e| e.field() == *field && e.kind() == *kind);
        let found =
            found.unwrap_or_else(|| panic!("{field} {kind:?}\n{sheet}\n{}", told.join("\n")));
        let said = format!("{} | {}", found.problem(), found.remedy());
        assert!(said.contains(word), "{field}: {word}\n{said}");
        assert!(
            !found.problem().is_empty() && !found.remedy().is_empty(),
            "{told:?}"
        );
    }
}

#[test]
fn words_that_are_not_in_their_list() {
    refused(
        "[[thread]]\nplace = \"bottle_bos\"",
        &[("thread[0].place", ErrorKind::UnknownName, "bottle_boss")],
    );
    refused(
        "material = \"wood\"",
        &[("material", ErrorKind::UnknownName, "aluminium")],
    );
    refused(
        "[shell]\ncoating = \"rusty\"",
        &[("shell.coating", ErrorKind::UnknownName, "powder_coated")],
    );
    refused(
        "[shell.drive]\nstate = \"fine\"",
        &[("shell.drive.state", ErrorKind::UnknownName, "stripped")],
    );
    refused(
        "[shell.drive]\ngo = \"yes\"",
        &[("shell.drive.go", ErrorKind::UnknownName, "failed")],
    );
    refused(
        "[shell.drive]\nhand = \"both\"",
        &[("shell.drive.hand", ErrorKind::UnknownName, "left")],
    );
    refused(
        "[brake.rear]\nsystem = \"disc\"",
        &[("brake.rear.system", ErrorKind::UnknownName, "pm")],
    );
    refused(
        "[head_tube.upper]\npart = { fitted = \"perhaps\" }",
        &[(
            "head_tube.upper.part.fitted",
            ErrorKind::UnknownName,
            "stuck",
        )],
    );
    refused(
        "rule = \"2018\"",
        &[("rule", ErrorKind::UnknownName, "2017")],
    );
    refused(
        "[shell]\nwindow = \"nonsense\"",
        &[("shell.window", ErrorKind::UnknownName, "")],
    );
}

#[test]
fn a_word_is_read_in_any_case() {
    let sheet =
        read("material = \"Aluminium\"\n[[thread]]\nplace = \"Bottle Boss\"\nstate = \"SOUND\"")
            .unwrap();
    assert_eq!(sheet.thread.len(), 1);
    assert_eq!(
        sheet.material,
        Some(framegauge::fit::MaterialKind::Aluminium)
    );
}

#[test]
fn fields_that_are_not_there() {
    refused(
        "[seat_tube]\nbroe = [\"27.2 mm +/- 0.1 mm\"]",
        &[("seat_tube.broe", ErrorKind::UnknownField, "bore")],
    );
    refused(
        "[shell]\nbread = \"68 mm\"",
        &[("shell.bread", ErrorKind::UnknownField, "nearest")],
    );
    refused(
        "[head_tube.middle]\nbelieved = \"EC34\"",
        &[("head_tube.middle", ErrorKind::UnknownField, "upper")],
    );
    refused(
        "[boss.down_tube]\nhandd = \"left\"",
        &[("boss.down_tube.handd", ErrorKind::UnknownField, "hand")],
    );
    refused(
        "[saddle]\nnote = \"soft\"",
        &[("saddle", ErrorKind::UnknownField, "")],
    );
}

/// A limit says what it limits by a word of its place; there is no other.
#[test]
fn limits_of_a_kind_that_the_place_has_not() {
    let limit = |place: &str, what: &str| {
        format!(
            "[{place}]\nlimits = [{{ what = \"{what}\", upper = \"1 mm\", owner = \"maker\" }}]"
        )
    };
    for (place, word, list) in [
        (
            "seat_tube",
            "interference",
            "bore, wall, insertion, depth, clearance",
        ),
        (
            "shell",
            "depth",
            "bore, width, wall, interference, parallelism",
        ),
        (
            "head_tube.lower",
            "width",
            "bore, wall, interference, clearance, bore_depth, crown_gap, parallelism",
        ),
        ("shell.drive.face", "width", "depth, squareness"),
        ("crown", "bore", "seat, interference"),
        ("steerer", "depth", "length"),
        ("axle.rear", "bore", "minor, depth"),
        ("dropout.rear.drive", "bore", "depth, thickness"),
    ] {
        let field = format!("{place}.limits[0].what");
        refused(
            &limit(place, word),
            &[(&field, ErrorKind::UnknownName, list)],
        );
    }
    let mount = "[brake.rear]\nsystem = \"pm\"\nlimits = [{ what = \"wall\", lower = \"1 mm\", owner = \"maker\" }]";
    refused(
        mount,
        &[(
            "brake.rear.limits[0].what",
            ErrorKind::UnknownName,
            "depth, thickness, squareness",
        )],
    );
    // Blanks and capitals are no other word.
    let sheet = read("[head_tube.lower]\nlimits = [{ what = \"Bore depth\", lower = \"12 mm\", owner = \"maker\" }]").unwrap();
    assert_eq!(
        sheet.head_tube.lower.unwrap().limits[0].what.to_string(),
        "bore_depth"
    );
}

#[test]
fn limits_without_a_value_an_owner_or_sense() {
    let depth =
        |rest: &str| format!("[shell.drive.face]\nlimits = [{{ what = \"depth\", {rest} }}]");
    refused(
        &depth("owner = \"maker\""),
        &[("shell.drive.face.limits[0]", ErrorKind::Missing, "upper")],
    );
    refused(
        &depth("upper = \"0.2 mm\", owner = \" \""),
        &[(
            "shell.drive.face.limits[0].owner",
            ErrorKind::Missing,
            "drawing",
        )],
    );
    refused(
        &depth("upper = \"0.2 mm\""),
        &[("shell.drive.face.limits[0].owner", ErrorKind::Missing, "")],
    );
    refused(
        &depth("upper = \"-0.2 mm\", owner = \"maker\""),
        &[("shell.drive.face.limits[0]", ErrorKind::OutOfRange, "")],
    );
    refused(
        &depth("lower = \"0.3 mm\", upper = \"0.2 mm\", owner = \"maker\""),
        &[("shell.drive.face.limits[0]", ErrorKind::Contradiction, "")],
    );
    refused(
        &depth("limits = \"at most 0.2 mm\", upper = \"0.2 mm\", owner = \"maker\""),
        &[(
            "shell.drive.face.limits[0]",
            ErrorKind::Contradiction,
            "leave",
        )],
    );
    refused(
        &depth("upper = 0.2, owner = \"maker\""),
        &[("shell.drive.face.limits[0].upper", ErrorKind::Unit, "unit")],
    );
}

/// Two limits of one kind that no size meets together: which holds is for the makers to say, never for us.
#[test]
fn two_limits_that_cannot_both_be_met() {
    refused(
        "[shell]\nlimits = [{ what = \"width\", lower = \"68.5 mm\", owner = \"crank maker\" }, { what = \"width\", upper = \"68.2 mm\", owner = \"frame maker\" }]",
        &[("shell.limits", ErrorKind::Contradiction, "crank maker")],
    );
    // Either order, and words of two kinds do not meet.
    refused(
        "[shell]\nlimits = [{ what = \"width\", upper = \"68.2 mm\", owner = \"frame maker\" }, { what = \"width\", lower = \"68.5 mm\", owner = \"crank maker\" }]",
        &[("shell.limits", ErrorKind::Contradiction, "frame maker")],
    );
    let two = read(
        "[shell]\nlimits = [{ what = \"width\", lower = \"68.0 mm\", owner = \"a\" }, { what = \"width\", upper = \"68.0 mm\", owner = \"b\" }, { what = \"bore\", upper = \"46 mm\", owner = \"c\" }]",
    );
    assert_eq!(
        two.unwrap().shell.unwrap().limits.len(),
        3,
        "a size of just 68.0 meets both"
    );
}

/// What was cut can only be told by what was there before.
#[test]
fn passes_without_a_first_reading() {
    let bore = "[\"10 mm deep, 0 deg: 27.2 mm +/- 0.02 mm\"]";
    for (sheet, field) in [
        (format!("[seat_tube]\nafter = {bore}"), "seat_tube.bore"),
        (format!("[seat_tube]\npasses = [{{ bore = {bore} }}]"), "seat_tube.bore"),
        (format!("[head_tube.upper]\npasses = [{{ bore = {bore} }}]"), "head_tube.upper.bore"),
        (format!("[shell]\npasses = [{{ bore = {bore} }}]"), "shell.bore"),
        ("[shell]\npasses = [{ width = [\"68.2 mm +/- 0.02 mm\"] }]".to_owned(), "shell.width"),
        ("[shell.drive.face]\npasses = [{ probes = [\"0 deg: 0.02 mm +/- 0.01 mm\"] }]".to_owned(), "shell.drive.face.probes"),
        ("[head_tube.lower.face]\nafter = [\"0 deg: 0.02 mm +/- 0.01 mm\"]".to_owned(), "head_tube.lower.face.probes"),
        ("[crown]\nafter = [\"30.0 mm +/- 0.01 mm\"]".to_owned(), "crown.seat"),
        (
            "[brake.rear]\nsystem = \"pm\"\npasses = [{ points = [\"0 mm along, 5 mm across: 0.02 mm +/- 0.01 mm\"] }]".to_owned(),
            "brake.rear.points",
        ),
    ] {
        refused(&sheet, &[(field, ErrorKind::Missing, "before")]);
    }
    // A pass that tells only what the post did needs no reading before it.
    assert!(read("[seat_tube]\npasses = [{ part = \"fits\" }]").is_ok());
}

/// A name that stands for no instrument is one defect, not one for each reading that relies on it.
#[test]
fn a_spoilt_instrument_is_told_once() {
    let bore = "[seat_tube]\nbore = [\"27.1 mm\", \"27.2 mm\", \"27.15 mm\"]";
    refused(
        &format!("[instruments]\ninside = \"telescopic_gauge\"\n{bore}"),
        &[(
            "instruments.inside",
            ErrorKind::UnknownName,
            "telescoping_gauge",
        )],
    );
    refused(
        &format!("instruments = \"caliper\"\n{bore}"),
        &[("instruments", ErrorKind::Text, "")],
    );
    // Nobody named one: every reading lacks it.
    let missing: Vec<String> = (0..3).map(|i| format!("seat_tube.bore[{i}]")).collect();
    let expected: Vec<_> = missing
        .iter()
        .map(|field| (field.as_str(), ErrorKind::Missing, "inside"))
        .collect();
    refused(bore, &expected);
    assert!(
        read(&format!(
            "[instruments]\ninside = \"telescoping_gauge\"\n{bore}"
        ))
        .is_ok()
    );
}

#[test]
fn several_defects_at_once() {
    refused(
        "material = \"wood\"\n[seat_tube]\nbore = [\"27.2\", \"10 mm deep: 27.2 mm +/- 0.02 mm\", \"upstairs: 27.2 mm +/- 0.02 mm\"]\nclear_depth = \"0 mm\"\n\
         [shell]\nwdith = \"68 mm\"\npitch = \"fine\"\n[shell.drive]\nhand = \"up\"\n[brake.rear]\npoints = [\"10 mm along: 0.03 mm +/- 0.01 mm\"]",
        &[
            ("material", ErrorKind::UnknownName, ""),
            ("seat_tube.bore[0]", ErrorKind::Unit, "mm"),
            ("seat_tube.bore[2]", ErrorKind::Text, "deep"),
            ("seat_tube.clear_depth", ErrorKind::OutOfRange, ""),
            ("shell.wdith", ErrorKind::UnknownField, "width"),
            ("shell.pitch", ErrorKind::Unit, ""),
            ("shell.drive.hand", ErrorKind::UnknownName, ""),
            ("brake.rear.points[0]", ErrorKind::Missing, "across"),
        ],
    );
}

/// A place, a pass or a part has named fields; a bare list of values in their order is refused.
#[test]
fn lists_by_position_are_refused() {
    for (sheet, field) in [
        (
            r#"{"format":1,"frame":"f","seat_tube":[null,"27.2"]}"#,
            "seat_tube",
        ),
        (
            r#"{"format":1,"frame":"f","thread":[["axle","rear"]]}"#,
            "thread[0]",
        ),
        (
            r#"{"format":1,"frame":"f","shell":{"part":["cup"]}}"#,
            "shell.part",
        ),
        (
            r#"{"format":1,"frame":"f","shell":{"limits":[["width","67 mm"]]}}"#,
            "shell.limits[0]",
        ),
        (
            r#"{"format":1,"frame":"f","seat_tube":{"passes":[["27.2 mm"]]}}"#,
            "seat_tube.passes[0]",
        ),
    ] {
        let errors = json(sheet).expect_err(sheet);
        assert!(
            errors
                .iter()
                .any(|e| e.field() == field && e.problem().contains("a list stands here")),
            "{sheet}: {errors:?}"
        );
    }
}

#[test]
fn what_stands_twice() {
    let errors =
        json(r#"{"format":1,"frame":"f","material":"steel","material":"carbon"}"#).unwrap_err();
    assert_eq!(
        (errors.len(), errors[0].field(), errors[0].kind()),
        (1, "material", ErrorKind::Contradiction)
    );
    // Two names of bosses that are one code.
    refused(
        "[boss]\n\"Down tube\" = { state = \"sound\" }\ndown_tube = { state = \"stripped\" }",
        &[("boss.Down tube", ErrorKind::Contradiction, "once")],
    );
}

#[test]
fn what_must_be_there() {
    let errors = json("{}").unwrap_err();
    let fields: Vec<&str> = errors.iter().map(Error::field).collect();
    assert_eq!(fields, ["format", "frame"]);
    assert_eq!(
        json(r#"{"format":2,"frame":"f"}"#).unwrap_err()[0].kind(),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        json(r#"{"format":1,"frame":"  "}"#).unwrap_err()[0].field(),
        "frame"
    );
    refused(
        "[[thread]]\nstate = \"sound\"",
        &[("thread[0].place", ErrorKind::Missing, "")],
    );
    refused(
        "[brake.rear]\ncoating = \"bare\"",
        &[("brake.rear.system", ErrorKind::Missing, "")],
    );
    refused(
        "[[brake]]\nsystem = \"pm\"",
        &[("brake[0]", ErrorKind::Missing, "end")],
    );
}

/// Statements of which one must be wrong.
#[test]
fn statements_that_cannot_both_be_true() {
    refused(
        "[seat_tube]\nbore = [\"28.7 mm +/- 0.02 mm\"]\noutside = \"28.6 mm +/- 0.02 mm\"",
        &[("seat_tube.bore", ErrorKind::Contradiction, "outside")],
    );
    refused(
        "[shell.drive.face]\ninner_radius = \"21 mm\"\nouter_radius = \"18 mm\"",
        &[(
            "shell.drive.face.inner_radius",
            ErrorKind::Contradiction,
            "radii",
        )],
    );
    refused(
        "[shell]\nwidth = \"68.0 mm +/- 0.1 mm\"\nhalf_drive = \"34 mm +/- 0.2 mm\"\nhalf_non_drive = \"45 mm +/- 0.2 mm\"",
        &[("shell.half_drive", ErrorKind::Contradiction, "middle")],
    );
}

/// A sheet of ten thousand defects tells the first fifty and how many more there are.
#[test]
fn ten_thousand_defects_are_capped() {
    let sheet: String = (0..10_000)
        .map(|i| format!("[[thread]]\nplace = \"boss {i}\"\n"))
        .collect();
    let errors = read(&sheet).unwrap_err();
    assert_eq!(errors.len(), MOST_DEFECTS + 1);
    assert_eq!(errors[0].field(), "thread[0].place");
    assert!(
        errors[MOST_DEFECTS].problem().contains("9950 more"),
        "{}",
        errors[MOST_DEFECTS]
    );
    // Names that are defects themselves are no longer in an error than a person reads.
    let long = "x".repeat(100_000);
    let errors = read(&format!("{long} = 1")).unwrap_err();
    assert!(
        errors[0].to_string().len() < 500,
        "{} characters",
        errors[0].to_string().len()
    );
}

/// A sheet that says nothing but its name is read, and is not acceptable.
#[test]
fn a_sheet_without_places() {
    let plan = prepare(&read("").unwrap());
    assert!(plan.steps.is_empty() && !plan.acceptable());
}
