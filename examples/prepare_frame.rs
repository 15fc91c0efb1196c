//! Plans the preparation of a frame from its sheet.
//!
//! `cargo run --example prepare_frame -- examples/frames/painted_steel.toml [--json]`; `-` reads from standard input.
//! `--record text` or `--record markdown` prints the before-and-after record instead, `--pictures DIR` draws the faces, and
//! `--rows FILE` brings a shop's own rows (TOML or JSON, in the words of `data/`).
//! The sheet is TOML or JSON. Exit 0: nothing is open or refused; 1: the plan asks, refers or waits; 2: bad sheet.
#[path = "support/rows.rs"]
mod rows;
mod support;

use std::io::Read;
use std::path::Path;
use std::process::ExitCode;

use framegauge::prep::{
    Operation, Picture, Progress, WrittenSheet, pictures, prepare_with, record,
};
use framegauge::standard::{ShopRows, Tables};
use framegauge::{Error, ErrorKind};
use support::{Answer, Words, answer};

/// A frame sheet is a page; a larger file is something else.
const LARGEST: u64 = 1 << 20;

fn main() -> ExitCode {
    answer(run)
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["record", "pictures", "rows"], &[])?;
    let path = words.at(
        0,
        "sheet",
        "prepare_frame examples/frames/painted_steel.toml",
    )?;
    let shop = match words.named("rows") {
        Some(file) => rows::read(file)?,
        None => ShopRows::default(),
    };
    let tables = Tables::with(&shop)?;
    let text = read(path)?;
    let written: WrittenSheet = parse(&text)?;
    let sheet = written
        .read_with(tables)
        .map_err(|errors| all_of(errors, &text))?;
    let plan = prepare_with(&sheet, tables);
    if let Some(folder) = words.named("pictures") {
        draw(Path::new(folder), &pictures(&sheet, tables))?;
    }
    let open =
        !plan.questions.is_empty() || plan.steps.iter().any(|s| s.operation == Operation::Refer);
    match words.named("record") {
        None => Ok(Answer::new(&plan, plan.to_string(), !open)),
        Some(form) => {
            let record = record(&sheet, tables);
            let text = match form {
                "text" => record.to_string(),
                "markdown" => record.markdown(),
                other => {
                    return Err(Error::new(
                        ErrorKind::UnknownName,
                        "--record",
                        other,
                        "no such form",
                        "text or markdown",
                    ));
                }
            };
            let finished = record
                .entries
                .iter()
                .all(|e| matches!(e.progress, Progress::Done | Progress::Nothing));
            Ok(Answer::new(&record, text, finished))
        }
    }
}

fn draw(folder: &Path, pictures: &[Picture]) -> Result<(), Error> {
    let fail = |e: std::io::Error| {
        Error::new(
            ErrorKind::Missing,
            "--pictures",
            folder.display(),
            e.to_string(),
            "name a folder that can be written",
        )
    };
    std::fs::create_dir_all(folder).map_err(fail)?;
    for picture in pictures {
        std::fs::write(folder.join(format!("{}.svg", picture.name)), &picture.svg).map_err(fail)?;
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

fn parse<T: serde::de::DeserializeOwned>(text: &str) -> Result<T, Error> {
    let remedy = "see examples/frames/ for the form of a sheet";
    if text.trim_start().starts_with('{') {
        return serde_json::from_str(text).map_err(|e| {
            Error::new(kind_of(&e.to_string()), "sheet", "", e.to_string(), remedy)
                .at_line(e.line())
        });
    }
    toml::from_str(text).map_err(|e| {
        let line = e.span().map_or(1, |span| line_at(text, span.start));
        Error::new(
            kind_of(e.message()),
            "sheet",
            "",
            e.message().to_owned(),
            remedy,
        )
        .at_line(line)
    })
}

fn kind_of(message: &str) -> ErrorKind {
    if message.contains("unknown field") {
        ErrorKind::UnknownField
    } else if message.contains("expected a text with a unit") {
        ErrorKind::Unit
    } else {
        ErrorKind::Text
    }
}

/// The line on which a byte stands; the first is 1.
fn line_at(text: &str, byte: usize) -> usize {
    text.bytes().take(byte).filter(|b| *b == b'\n').count() + 1
}

/// Every defect in one message, each with its line where it can be found.
fn all_of(errors: Vec<Error>, text: &str) -> Error {
    let lines: Vec<String> = errors
        .iter()
        .map(|e| {
            line_of(e.field(), text)
                .map_or_else(|| e.to_string(), |line| e.clone().at_line(line).to_string())
        })
        .collect();
    let first = errors.into_iter().next();
    match (lines.as_slice(), first) {
        ([only], Some(error)) => line_of(error.field(), text).map_or_else(
            || error.clone(),
            |line| {
                let _ = only;
                error.clone().at_line(line)
            },
        ),
        (_, Some(error)) => Error::new(
            error.kind(),
            "sheet",
            "",
            format!("{} defects:\n{}", lines.len(), lines.join("\n")),
            "mend them all",
        ),
        (_, None) => Error::new(ErrorKind::Text, "sheet", "", "unreadable", "mend it"),
    }
}

/// The line on which a field of a TOML sheet stands.
fn line_of(field: &str, text: &str) -> Option<usize> {
    let mut table = toml::de::DeTable::parse(text).ok()?.into_inner();
    let mut start = None;
    let mut parts = field.split('.').peekable();
    while let Some(part) = parts.next() {
        let (name, index) = part.split_once('[').map_or((part, None), |(n, i)| {
            (n, i.trim_end_matches(']').parse::<usize>().ok())
        });
        let Some((_, value)) = table.into_iter().find(|(key, _)| key.get_ref() == name) else {
            break;
        };
        start = Some(value.span().start);
        let mut inner = value.into_inner();
        if let (Some(index), toml::de::DeValue::Array(items)) = (index, &inner) {
            let item = items.get(index)?.clone();
            start = Some(item.span().start);
            inner = item.into_inner();
        }
        match inner {
            toml::de::DeValue::Table(next) if parts.peek().is_some() => table = next,
            _ => break,
        }
    }
    start.map(|at| line_at(text, at))
}
