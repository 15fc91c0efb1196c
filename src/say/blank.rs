//! An empty sheet to fill in: each field with what to measure, with which tool, how often. It is a valid sheet as it stands.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::text::Paper;
use crate::plan::FrameSheet;
use crate::read::{Field, Form, Shape};
use crate::standard::Place;
use crate::{Error, ErrorKind};

/// How a field is filled in: its name, a value with gaps for the readings, the tool and how often. Common practice.
const FILLED: &[(&str, &str, &str)] = &[
    (
        "bore",
        r#"["10 mm deep, 0 deg:  mm", "10 mm deep, 90 deg:  mm", "60 mm deep, 0 deg:  mm", "60 mm deep, 90 deg:  mm"]"#,
        "three-point bore gauge or telescoping gauge; two directions at two depths, four readings",
    ),
    (
        "seat",
        r#"["0 deg:  mm", "90 deg:  mm"]"#,
        "outside micrometer; two directions, bare metal",
    ),
    (
        "race",
        r#"["  mm", "  mm"]"#,
        "inside micrometer; two directions",
    ),
    (
        "outside",
        r#"["  mm", "  mm"]"#,
        "outside caliper or micrometer; two directions",
    ),
    (
        "width",
        r#"["  mm", "  mm", "  mm"]"#,
        "caliper over the faces; three places around",
    ),
    (
        "minor",
        r#"["  mm"]"#,
        "inside caliper or plug over the crests; once",
    ),
    (
        "pitch",
        r#""  mm""#,
        "thread pitch gauge; once, with the leaf that shows no light",
    ),
    (
        "bore_depth",
        r#""  mm""#,
        "depth caliper, from the face to the shoulder; the shallowest of four places",
    ),
    (
        "crown_gap",
        r#""  mm""#,
        "feeler gauge or caliper, fork fitted; the narrowest place",
    ),
    (
        "length",
        r#""  mm""#,
        "steel rule or caliper, to half a millimetre; once",
    ),
    (
        "stack",
        r#"["  mm", "  mm", "  mm", "  mm", "  mm"]"#,
        "caliper; every part once, stem on the spacers",
    ),
    (
        "half_drive",
        r#""  mm""#,
        "rule and straightedge from the middle plane; once",
    ),
    (
        "half_non_drive",
        r#""  mm""#,
        "rule and straightedge from the middle plane; once",
    ),
    (
        "thickness",
        r#""  mm""#,
        "outside caliper at the bolt hole; once",
    ),
    (
        "clear_depth",
        r#""  mm""#,
        "marked rod, to the first thing that it meets; once",
    ),
    (
        "weld_depth",
        r#""  mm""#,
        "steel rule, from the top of the tube; once",
    ),
    (
        "made_for",
        r#""  mm""#,
        "maker's sheet of the spindle or kit",
    ),
    (
        "probe_radius",
        r#""  mm""#,
        "steel rule, from the middle of the bore to the probe",
    ),
    ("outer_radius", r#""  mm""#, "caliper over the flat, halved"),
    (
        "inner_radius",
        r#""  mm""#,
        "caliper over the inner edge of the flat, halved",
    ),
    (
        "probes",
        r#"["0 deg:  mm", "45 deg:  mm", "90 deg:  mm", "135 deg:  mm", "180 deg:  mm", "225 deg:  mm", "270 deg:  mm", "315 deg:  mm"]"#,
        "dial gauge turned about the pilot; eight places, clockwise from twelve o'clock as seen from outside, outwards is plus",
    ),
    (
        "points",
        r#"["0 mm along, -5 mm across:  mm", "0 mm along, 5 mm across:  mm", "74 mm along, -5 mm across:  mm", "74 mm along, 5 mm across:  mm"]"#,
        "dial gauge on a bar held by the axle; both edges at both ends, outwards is plus",
    ),
    ("bolt", r#""  mm""#, "steel rule, under the head; once"),
    (
        "pad_clearance",
        r#""  mm""#,
        "feeler gauge, wheel and caliper fitted",
    ),
    ("pad_length", r#""  mm""#, "steel rule"),
    (
        "insertion",
        r#""  mm""#,
        "caliper, the length that goes in; once",
    ),
    ("hand", "", "by which way it tightens"),
    ("state", "", "eye and light"),
    ("go", "", "GO gauge or a known good part, by hand"),
    ("not_go", "", "NOT GO gauge, from either end"),
    (
        "limits",
        r#"[{ what = "", upper = "  mm", owner = "" }]"#,
        "frame maker's or component maker's sheet; who wrote it and where is the owner",
    ),
];

/// What belongs to a second filling-in.
const LATER: &[&str] = &[
    "after",
    "passes",
    "go_after",
    "not_go_after",
    "place",
    "end",
];

/// An empty sheet for these places.
///
/// # Errors
/// `UnknownName` for a place that no sheet has.
///
/// ```
/// use framegauge::{say, standard::Place};
/// let sheet = say::blank(&[Place::SeatTube]).unwrap();
/// assert!(sheet.contains("[seat_tube]") && sheet.contains("# bore = [\"10 mm deep, 0 deg:  mm\""));
/// ```
pub fn blank(places: &[Place]) -> Result<String, Error> {
    let mut page = Paper::default();
    page.line(
        "# Take the # away where you write something; what you cannot measure stays as it is.",
    );
    page.line("format = 1");
    page.line("frame = \"name or number of the frame\"");
    page.line("# date = \"\"");
    for name in ["material", "note"] {
        let field = FrameSheet::FIELDS.iter().find(|f| f.name == name);
        field.iter().for_each(|f| one(&mut page, f));
    }
    page.line("");
    page.line("[instruments]");
    page.remark(
        "# ",
        "What reads inside, outside, depth and height where a reading names nothing else, such as:",
    );
    page.line("# inside = \"three_point_gauge\"");
    page.line("# outside = \"caliper_digital_outside\"");
    page.line("# depth = \"caliper_digital_depth\"");
    page.line("# height = \"dial_indicator\"");
    for place in places {
        let path = place.to_string();
        let form = form_of(&path).ok_or_else(|| {
            Error::new(
                ErrorKind::UnknownName,
                "place",
                &path,
                "no field of a sheet",
                "a whole place, such as `seat_tube`, `shell`, `head_tube.upper`, `axle.rear` or `brake.rear`",
            )
        })?;
        table(&mut page, &path, form, "");
    }
    Ok(page.done())
}

/// The form at a path of the sheet.
fn form_of(path: &str) -> Option<&'static Form> {
    let mut fields = FrameSheet::FIELDS;
    let mut found = None;
    for part in path.split('.') {
        let shape = fields.iter().find(|f| f.name == part).map(|f| f.shape);
        let form = match shape {
            Some(shape) => form_in(shape)?,
            // A boss by its name.
            None => found?,
        };
        found = Some(form);
        fields = form.fields;
    }
    found
}

fn form_in(shape: Shape) -> Option<&'static Form> {
    match shape {
        Shape::Form(form) => Some(form),
        Shape::OrNull(inner) | Shape::Named(inner) => form_in(*inner),
        Shape::Either(several) => several.iter().copied().find_map(form_in),
        _ => None,
    }
}

/// A table of the sheet with its fields, then the tables in it; what need not be there stays behind a mark.
fn table(page: &mut Paper, path: &str, form: &'static Form, mark: &str) {
    page.line("");
    page.line(&format!("{mark}[{path}]"));
    let mut inner: Vec<(&Field, &'static Form)> = Vec::new();
    for field in form.fields.iter().filter(|f| !LATER.contains(&f.name)) {
        match form_in(field.shape) {
            Some(form) => inner.push((field, form)),
            None => one(page, field),
        }
    }
    for (field, form) in inner {
        let mark = if matches!(field.name, "drive" | "non_drive") {
            mark
        } else {
            "# "
        };
        table(page, &format!("{path}.{}", field.name), form, mark);
    }
}

/// One field: what it is, with which tool, how often, and the line to fill in.
fn one(page: &mut Paper, field: &Field) {
    let known = FILLED.iter().find(|(name, ..)| *name == field.name);
    let mut words = field.words.trim().trim_end_matches('.').replace('`', "");
    if let Some((_, _, how)) = known {
        words = format!("{words}. {how}");
    }
    if let Some(list) = words_of(field.shape) {
        words = format!("{words}: {}", list.join(", "));
    }
    page.remark("# ", &format!("{words}."));
    let value = known.map(|(_, value, _)| *value).filter(|v| !v.is_empty());
    // What must be there stands without a mark.
    match words_of(field.shape)
        .filter(|_| field.name == "system")
        .as_deref()
    {
        Some([first, ..]) => page.line(&format!("{} = \"{first}\"", field.name)),
        _ => page.line(&format!("# {} = {}", field.name, value.unwrap_or("\"\""))),
    }
}

fn words_of(shape: Shape) -> Option<Vec<String>> {
    match shape {
        Shape::Word(words) => Some(words()),
        Shape::OrNull(inner) | Shape::List(inner) => words_of(*inner),
        Shape::YesNo => Some(Vec::from(["true".to_string(), "false".to_string()])),
        _ => None,
    }
}
