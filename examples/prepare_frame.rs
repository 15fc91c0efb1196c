//! Plans the preparation of a frame from its sheet.
//!
//! `cargo run --example prepare_frame -- examples/frames/aluminium_trekking.toml [--json]`; `-` reads from standard input.
//! Prints the bench page: one page with boxes. `--why` prints the whole plan with reasons, findings and grades, `--measure`
//! what to measure with which instrument, `--record text|markdown|html` the letter to the customer, in HTML with the
//! photographs that the sheet names. `--page FILE.html` writes the bench page for printing, with the drawings, and the
//! reasons behind it; `--pictures DIR` writes the drawings.
//! `--blank "seat_tube, shell"` prints an empty sheet for these places. `--rows FILE` brings a shop's own rows (TOML or JSON, in
//! the words of `data/`). The sheet is TOML or JSON. Exit 0: nothing is open or refused; 1: the plan asks, refers or waits, or a place is out; 2: bad sheet.
#[path = "support/photos.rs"]
mod photos;
#[path = "support/rows.rs"]
mod rows;
mod support;

use std::io::Read;
use std::path::Path;
use std::process::ExitCode;

use framegauge::plan::{FrameSheet, prepare_with, record};
use framegauge::read::Tree;
use framegauge::say::{self, Picture, pictures};
use framegauge::standard::{Place, ShopRows, Tables};
use framegauge::{Error, ErrorKind};
use support::{Answer, Words, answer};

/// A frame sheet is a page; a larger file is something else.
const LARGEST: u64 = 1 << 20;

fn main() -> ExitCode {
    answer(run)
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(
        &["record", "pictures", "rows", "page", "blank"],
        &["why", "measure"],
    )?;
    if let Some(places) = words.named("blank") {
        return blank(places);
    }
    let path = words.at(
        0,
        "sheet",
        "prepare_frame examples/frames/aluminium_trekking.toml",
    )?;
    let shop = match words.named("rows") {
        Some(file) => rows::read(file)?,
        None => ShopRows::default(),
    };
    let tables = Tables::with(&shop)?;
    let text = read(path)?;
    let tree = tree(&text)?;
    let sheet = FrameSheet::from_tree(&tree, tables).map_err(|errors| all_of(errors, &text))?;
    let plan = prepare_with(&sheet, tables);
    if let Some(folder) = words.named("pictures") {
        draw(Path::new(folder), &pictures(&sheet, tables))?;
    }
    if let Some(file) = words.named("page") {
        let page = say::page(&plan, &pictures(&sheet, tables));
        std::fs::write(file, page).map_err(|e| unwritten("--page", file, &e))?;
    }
    let Some(form) = words.named("record") else {
        let text = if words.flag("why") {
            say::plan(&plan)
        } else if words.flag("measure") {
            say::measure(&plan)
        } else {
            say::bench(&plan)
        };
        return Ok(Answer::new(&plan, text, plan.acceptable()));
    };
    let record = record(&sheet, tables);
    let text = match form {
        "text" => say::record(&record),
        "markdown" => say::markdown(&record),
        "html" => say::letter(
            &record,
            &pictures(&sheet, tables),
            &photos::read(path, &record),
        ),
        other => {
            return Err(Error::new(
                ErrorKind::UnknownName,
                "--record",
                other,
                "no such form",
                "text, markdown or html",
            ));
        }
    };
    Ok(Answer::new(&record, text, record.finished()))
}

/// An empty sheet for the places that are named, separated by commas or blanks.
fn blank(places: &str) -> Result<Answer, Error> {
    let places = places
        .split([',', ' '])
        .filter(|name| !name.is_empty())
        .map(str::parse)
        .collect::<Result<Vec<Place>, Error>>()
        .map_err(|e| e.within("--blank"))?;
    let text = say::blank(&places)?;
    Ok(Answer::new(&text, text.clone(), true))
}

fn unwritten(option: &'static str, path: &str, e: &std::io::Error) -> Error {
    let remedy = "name a place that can be written";
    Error::new(ErrorKind::Missing, option, path, e.to_string(), remedy)
}

fn draw(folder: &Path, pictures: &[Picture]) -> Result<(), Error> {
    let fail = |e: std::io::Error| unwritten("--pictures", &folder.display().to_string(), &e);
    std::fs::create_dir_all(folder).map_err(fail)?;
    for picture in pictures {
        let file = folder.join(format!("{}.svg", picture.name));
        std::fs::write(file, &picture.svg).map_err(fail)?;
    }
    Ok(())
}

fn read(path: &str) -> Result<String, Error> {
    let unreadable = |e: std::io::Error| {
        Error::new(
            ErrorKind::Missing,
            "sheet",
            path,
            e.to_string(),
            "name a TOML or JSON file, or - for standard input",
        )
    };
    let mut bytes = Vec::new();
    if path == "-" {
        std::io::stdin()
            .lock()
            .take(LARGEST + 1)
            .read_to_end(&mut bytes)
            .map_err(unreadable)?;
    } else {
        std::fs::File::open(path)
            .map_err(unreadable)?
            .take(LARGEST + 1)
            .read_to_end(&mut bytes)
            .map_err(unreadable)?;
    }
    if bytes.len() as u64 > LARGEST {
        return Err(Error::new(
            ErrorKind::TooLarge,
            "sheet",
            path,
            "larger than 1 MB, no sheet of one frame is",
            "one frame a file",
        ));
    }
    let text = String::from_utf8(bytes).map_err(|e| {
        Error::new(
            ErrorKind::Text,
            "sheet",
            path,
            format!("not UTF-8 at byte {}", e.utf8_error().valid_up_to()),
            "save the sheet as UTF-8",
        )
    })?;
    if text.trim().is_empty() {
        return Err(Error::new(
            ErrorKind::Missing,
            "sheet",
            path,
            "the sheet is empty",
            "start with `format = 1` and `frame = \"…\"`",
        ));
    }
    Ok(text)
}

/// The sheet as a tree, from JSON or TOML.
fn tree(text: &str) -> Result<Tree<'_>, Error> {
    let remedy = "see examples/frames/ for the form of a sheet";
    if text.trim_start().starts_with('{') {
        return serde_json::from_str(text).map_err(|e| {
            Error::new(ErrorKind::Text, "sheet", "", e.to_string(), remedy).at_line(e.line())
        });
    }
    toml::from_str(text).map_err(|e| {
        let line = e.span().map_or(1, |span| line_at(text, span.start));
        Error::new(ErrorKind::Text, "sheet", "", e.message().to_owned(), remedy).at_line(line)
    })
}

/// The line on which a byte stands; the first is 1.
fn line_at(text: &str, byte: usize) -> usize {
    text.bytes().take(byte).filter(|b| *b == b'\n').count() + 1
}

/// Every defect in one message, each with its line where it can be found. The document is read for its lines once.
fn all_of(errors: Vec<Error>, text: &str) -> Error {
    let lines = Lines::of(text);
    let told: Vec<Error> = errors
        .into_iter()
        .map(|e| match lines.find(e.field()) {
            Some(line) => e.at_line(line),
            None => e,
        })
        .collect();
    match told.as_slice() {
        [only] => only.clone(),
        several => rows::together("sheet", several),
    }
}

/// Where each field of a TOML sheet stands.
struct Lines(std::collections::BTreeMap<String, usize>);

impl Lines {
    fn of(text: &str) -> Self {
        let mut out = std::collections::BTreeMap::new();
        let starts: Vec<usize> = text.match_indices('\n').map(|(at, _)| at).collect();
        let line = |at: usize| starts.partition_point(|start| *start < at) + 1;
        if let Ok(table) = toml::de::DeTable::parse(text) {
            Self::walk("", table.into_inner(), &line, &mut out);
        }
        Self(out)
    }

    fn walk(
        path: &str,
        table: toml::de::DeTable<'_>,
        line: &impl Fn(usize) -> usize,
        out: &mut std::collections::BTreeMap<String, usize>,
    ) {
        for (key, value) in table {
            let here = if path.is_empty() {
                key.get_ref().to_string()
            } else {
                format!("{path}.{}", key.get_ref())
            };
            out.insert(here.clone(), line(value.span().start));
            Self::value(&here, value.into_inner(), line, out);
        }
    }

    fn value(
        path: &str,
        value: toml::de::DeValue<'_>,
        line: &impl Fn(usize) -> usize,
        out: &mut std::collections::BTreeMap<String, usize>,
    ) {
        match value {
            toml::de::DeValue::Table(table) => Self::walk(path, table, line, out),
            toml::de::DeValue::Array(items) => {
                for (index, item) in items.into_iter().enumerate() {
                    let here = format!("{path}[{index}]");
                    out.insert(here.clone(), line(item.span().start));
                    Self::value(&here, item.into_inner(), line, out);
                }
            }
            _ => {}
        }
    }

    /// The line of a field, or of what it would stand in.
    fn find(&self, field: &str) -> Option<usize> {
        let mut path = field;
        loop {
            if let Some(line) = self.0.get(path) {
                return Some(*line);
            }
            let end = path.rfind(['.', '['])?;
            path = &path[..end];
        }
    }
}
