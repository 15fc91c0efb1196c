//! Checks the rows of `data/*.toml` and renders them. Every defect of every file is reported in one run.

mod values;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::path::Path;

use framegauge::{Grade, Printed, Ratio, Span};
use toml::{Table, Value};

use crate::Rendered;
use crate::rust::{self, Hoist};
use crate::schema::{FAMILIES, Family, Field, Kind, Unit};
use values::*;

/// What the checks need to know of the whole of `data/`.
pub struct Checks {
    sources: BTreeMap<String, usize>,
    used: BTreeSet<String>,
    pub problems: Vec<String>,
}

/// Where a problem is.
#[derive(Clone)]
struct At {
    file: &'static str,
    row: String,
    field: String,
}

impl Checks {
    fn problem(&mut self, at: &At, what: impl std::fmt::Display) {
        self.problems.push(format!(
            "data/{}.toml: {}: {}: {what}",
            at.file, at.row, at.field
        ));
    }

    /// Where a source stands in the table of sources.
    pub fn index_of(&self, source: &str) -> Option<usize> {
        self.sources.get(source).copied()
    }

    /// A citation that other tables make.
    pub fn cite_in_grid(&mut self, file: &str, source: &str) {
        if self.sources.contains_key(source) {
            self.used.insert(source.to_owned());
        } else {
            self.problems
                .push(format!("{file}: unknown source `{source}`"));
        }
    }
}

pub fn load(root: &Path, file: &str) -> Table {
    let path = root.join("data").join(format!("{file}.toml"));
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    text.parse()
        .unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// Renders every family. Returns the files and the problems found.
pub fn render(root: &Path) -> (Vec<Rendered>, Checks) {
    let mut checks = Checks {
        sources: BTreeMap::new(),
        used: BTreeSet::new(),
        problems: Vec::new(),
    };
    let sources = render_sources(root, &mut checks);
    let mut out = vec![sources];
    let files: BTreeSet<&'static str> = FAMILIES.iter().map(|f| f.file).collect();
    let mut codes: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    let mut loaded: BTreeMap<&str, Table> = files.iter().map(|f| (*f, load(root, f))).collect();
    merge_torques(&mut loaded);
    for family in &FAMILIES {
        let set = codes.entry(family.array).or_default();
        for row in rows(&loaded[family.file], family) {
            let code = row
                .get("code")
                .and_then(Value::as_str)
                .unwrap_or_default()
                .to_owned();
            if !set.insert(code.clone()) {
                checks.problems.push(format!(
                    "data/{}.toml: {} `{code}`: code: used twice",
                    family.file, family.array
                ));
            }
        }
    }
    for file in files {
        let mut hoist = Hoist::default();
        let mut tables = String::new();
        for array in loaded[file].keys() {
            if !FAMILIES.iter().any(|f| f.file == file && f.array == array) {
                checks
                    .problems
                    .push(format!("data/{file}.toml: unknown family `{array}`"));
            }
        }
        for family in FAMILIES.iter().filter(|f| f.file == file) {
            let rendered: Vec<String> = rows(&loaded[file], family)
                .iter()
                .map(|row| {
                    references(family, row, &codes, &mut checks);
                    let code = row
                        .get("code")
                        .and_then(Value::as_str)
                        .unwrap_or("(no code)");
                    let at = At {
                        file: family.file,
                        row: format!("{} `{code}`", family.array),
                        field: String::new(),
                    };
                    render_row(
                        family.row_type,
                        family.fields,
                        row,
                        &at,
                        &mut hoist,
                        &mut checks,
                    )
                })
                .collect();
            writeln!(
                tables,
                "pub(crate) static {}: [{}; {}] = [{}];",
                family.table,
                family.row_type,
                rendered.len(),
                rendered.join(", ")
            )
            .unwrap();
        }
        let (path, uses) = home(file);
        let text = format!(
            "// @generated from data/{file}.toml by tests/tables. Do not edit; see DEVELOPERS.md.\n#![allow(unused_imports, reason = \"one prelude for all generated files\")]\n\nuse alloc::borrow::Cow;\n\nuse crate::evidence::tables::SOURCES;\nuse crate::evidence::{{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text}};\nuse crate::quantity::*;\n{uses}\n\n{}\n{tables}",
            hoist.into_text()
        );
        out.push(Rendered { path, text });
    }
    (out, checks)
}

/// Sources that nothing cites are dead weight; run after all citations are known.
pub fn unused_sources(checks: &mut Checks) {
    let unused: Vec<String> = checks
        .sources
        .keys()
        .filter(|id| !checks.used.contains(*id))
        .cloned()
        .collect();
    for id in unused {
        checks.problems.push(format!(
            "data/sources.toml: source `{id}`: nothing cites it"
        ));
    }
}

/// Torques stand beside the parts they belong to, in more than one file, and make one table.
fn merge_torques(loaded: &mut BTreeMap<&str, Table>) {
    let moved = loaded.get_mut("brakes").and_then(|t| t.remove("torque"));
    if let (Some(Value::Array(mut moved)), Some(Value::Array(home))) = (
        moved,
        loaded.get_mut("axles").and_then(|t| t.get_mut("torque")),
    ) {
        home.append(&mut moved);
    }
}

fn home(file: &str) -> (&'static str, &'static str) {
    match file {
        "instruments" => (
            "src/measure/tables/instruments.rs",
            "use crate::measure::{ErrorLimit, Instrument, Measures};",
        ),
        other => {
            let path = match other {
                "shells" => "src/standard/tables/shells.rs",
                "head_tube" => "src/standard/tables/head_tube.rs",
                "crown" => "src/standard/tables/crown.rs",
                "cutting" => "src/standard/tables/cutting.rs",
                "seatposts" => "src/standard/tables/seatposts.rs",
                "axles" => "src/standard/tables/axles.rs",
                "brakes" => "src/standard/tables/brakes.rs",
                "bearings" => "src/standard/tables/bearings.rs",
                "materials" => "src/standard/tables/materials.rs",
                "work" => "src/standard/tables/work.rs",
                unknown => panic!("data/{unknown}.toml has no home under src/"),
            };
            (
                path,
                "use crate::standard::*;\nuse crate::thread::{Hand, ThreadForm, ThreadSize};",
            )
        }
    }
}

fn rows(table: &Table, family: &Family) -> Vec<Table> {
    table
        .get(family.array)
        .and_then(Value::as_array)
        .map(|rows| rows.iter().filter_map(Value::as_table).cloned().collect())
        .unwrap_or_default()
}

/// Codes that a row points at must exist.
fn references(
    family: &Family,
    row: &Table,
    codes: &BTreeMap<&str, BTreeSet<String>>,
    checks: &mut Checks,
) {
    let code = row.get("code").and_then(Value::as_str).unwrap_or_default();
    let mut need = |field: &str, target: &str, homes: &[&str]| {
        if !target.is_empty() && !homes.iter().any(|home| codes[home].contains(target)) {
            checks.problems.push(format!(
                "data/{}.toml: {} `{code}`: {field}: no row `{target}`",
                family.file, family.array
            ));
        }
    };
    for entry in row
        .get("confused_with")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
    {
        let target = entry
            .get("code")
            .and_then(Value::as_str)
            .unwrap_or_default();
        need(
            "confused_with",
            target,
            &[family.array, "shell", "head_seat", "thread_use", "axle"],
        );
    }
    for target in row
        .get("same_bore_as")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
    {
        need(
            "same_bore_as",
            target.as_str().unwrap_or_default(),
            &["head_seat"],
        );
    }
    for target in row
        .get("crown_seat")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
    {
        need(
            "crown_seat",
            target.as_str().unwrap_or_default(),
            &["crown_seat"],
        );
    }
    for (field, homes) in [
        ("shell", &["shell"][..]),
        ("joint", &["shell", "head_seat"][..]),
        ("seat", &["head_seat"][..]),
    ] {
        // `joint` of a fit window is words, `seat` of a crown seat a figure.
        if family.array != "fit_window"
            && let Some(target) = row.get(field).and_then(Value::as_str)
        {
            need(field, target, homes);
        }
    }
}

fn render_row(
    kind: &str,
    fields: &[Field],
    row: &Table,
    at: &At,
    hoist: &mut Hoist,
    checks: &mut Checks,
) -> String {
    for key in row.keys() {
        if !fields.iter().any(|f| f.name == key) {
            checks.problem(
                &At {
                    field: key.clone(),
                    ..at.clone()
                },
                "no such field",
            );
        }
    }
    let mut out = format!("{kind} {{ ");
    for field in fields {
        // Nested rows have no note unless they list one.
        let at = At {
            field: field.name.to_owned(),
            ..at.clone()
        };
        let value = row.get(field.name);
        if value.is_none() && !field.optional {
            checks.problem(&at, "missing");
            continue;
        }
        let rendered = render_field(field, value, &at, hoist, checks);
        write!(out, "{}: {rendered}, ", field.name).unwrap();
    }
    out + "}"
}

fn render_field(
    field: &Field,
    value: Option<&Value>,
    at: &At,
    hoist: &mut Hoist,
    checks: &mut Checks,
) -> String {
    let list = || value.and_then(Value::as_array).cloned().unwrap_or_default();
    match field.kind {
        Kind::Text => rust::text(as_text(value, at, checks)),
        Kind::Texts => {
            let items: Vec<String> = list()
                .iter()
                .map(|v| rust::text(as_text(Some(v), at, checks)))
                .collect();
            hoist.cow("Text", &items)
        }
        Kind::Count => value
            .and_then(Value::as_integer)
            .filter(|n| (0..=255).contains(n))
            .map(|n| n.to_string())
            .unwrap_or_else(|| {
                checks.problem(at, "not a small whole number");
                String::new()
            }),
        Kind::Length => length(as_text(value, at, checks), at, checks),
        Kind::Word(kind) => rust::word(kind, as_text(value, at, checks)),
        Kind::Words(kind) => {
            let items: Vec<String> = list()
                .iter()
                .map(|v| rust::word(kind, as_text(Some(v), at, checks)))
                .collect();
            hoist.cow(kind, &items)
        }
        Kind::Figures(unit) => {
            let items: Vec<String> = list()
                .iter()
                .map(|v| figure(unit, v, at, hoist, checks))
                .collect();
            hoist.cow(figure_type(unit), &items)
        }
        Kind::Threads => {
            let items: Vec<String> = list()
                .iter()
                .map(|v| fact("ThreadSize", &thread, v, at, hoist, checks))
                .collect();
            hoist.cow("Fact<ThreadSize>", &items)
        }
        Kind::Nested(kind, fields) => {
            let mut items = Vec::new();
            for (index, entry) in list().iter().enumerate() {
                let inner = At {
                    field: format!("{}[{index}]", at.field),
                    ..at.clone()
                };
                match entry.as_table() {
                    Some(table) => {
                        items.push(render_row(kind, fields, table, &inner, hoist, checks))
                    }
                    None => checks.problem(&inner, "not a table"),
                }
            }
            hoist.cow(kind, &items)
        }
        Kind::Figure(_) | Kind::Fact(_) | Kind::FactText | Kind::Thread => {
            let Some(value) = value else {
                return "None".to_owned();
            };
            let inner = match field.kind {
                Kind::Figure(unit) => figure(unit, value, at, hoist, checks),
                Kind::Fact(kind) => fact(
                    kind,
                    &|v, at, checks| Some(rust::word(kind, as_text(v.get("value"), at, checks))),
                    value,
                    at,
                    hoist,
                    checks,
                ),
                Kind::FactText => fact(
                    "Text",
                    &|v, at, checks| Some(rust::text(as_text(v.get("value"), at, checks))),
                    value,
                    at,
                    hoist,
                    checks,
                ),
                _ => fact("ThreadSize", &thread, value, at, hoist, checks),
            };
            if field.optional {
                format!("Some({inner})")
            } else {
                inner
            }
        }
    }
}

fn render_sources(root: &Path, checks: &mut Checks) -> Rendered {
    let table = load(root, "sources");
    let mut rendered = Vec::new();
    for source in table
        .get("source")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
    {
        let part = |key: &str| source.get(key).and_then(Value::as_str).unwrap_or_default();
        let (id, title, edition, kind) = (part("id"), part("title"), part("edition"), part("kind"));
        if id.is_empty() || title.is_empty() || kind.parse::<framegauge::SourceKind>().is_err() {
            checks.problems.push(format!(
                "data/sources.toml: source `{id}`: id, title and a known kind are needed"
            ));
        }
        if checks
            .sources
            .insert(id.to_owned(), rendered.len())
            .is_some()
        {
            checks
                .problems
                .push(format!("data/sources.toml: source `{id}`: listed twice"));
        }
        rendered.push(format!(
            "Source {{ id: {}, title: {}, edition: {}, kind: {} }}",
            rust::text(id),
            rust::text(title),
            rust::text(edition),
            rust::word("SourceKind", kind)
        ));
    }
    Rendered {
        path: "src/evidence/tables/sources.rs",
        text: format!(
            "// @generated from data/sources.toml by tests/tables. Do not edit; see DEVELOPERS.md.\n\nuse alloc::borrow::Cow;\n\nuse crate::evidence::{{Source, SourceKind}};\n\npub(crate) static SOURCES: [Source; {}] = [{}];\n",
            rendered.len(),
            rendered.join(", ")
        ),
    }
}
