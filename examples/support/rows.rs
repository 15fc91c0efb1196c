//! Loads a shop's own rows from a TOML or JSON file. No math lives here.
#![allow(dead_code, reason = "each example uses a part")]

use std::io::Read;

use framegauge::read::MOST_DEFECTS;
use framegauge::standard::ShopRows;
use framegauge::{Error, ErrorKind};

/// A shop's rows are a few pages; a larger file is something else.
const LARGEST: u64 = 1 << 20;

/// Reads the rows of a file and refuses names that are taken. The rows have the words of `data/`, each figure a text with
/// its unit; whatever grade they claim, they are graded `shop`.
pub fn read(path: &str) -> Result<ShopRows, Error> {
    let field = || format!("--rows {path}");
    let mut text = String::new();
    std::fs::File::open(path)
        .and_then(|file| file.take(LARGEST + 1).read_to_string(&mut text))
        .map_err(|e| {
            Error::new(
                ErrorKind::Missing,
                field(),
                "",
                format!("cannot be read: {e}"),
                "name a TOML or JSON file in UTF-8",
            )
        })?;
    if text.len() as u64 > LARGEST {
        return Err(Error::new(
            ErrorKind::TooLarge,
            field(),
            "",
            "larger than 1 MB",
            "keep the rows that the shop needs",
        ));
    }
    let rows = parse(&text).map_err(|e| e.within(&field()))?;
    let defects = rows.defects();
    if defects.is_empty() {
        Ok(rows)
    } else {
        Err(together(&field(), &defects))
    }
}

/// Every defect in one message; the list itself says when it was cut short.
pub fn together(field: &str, defects: &[Error]) -> Error {
    match defects {
        [only] => only.clone().within(field),
        [first, ..] => {
            let count = match defects.len() {
                many if many > MOST_DEFECTS => format!("more than {MOST_DEFECTS}"),
                few => few.to_string(),
            };
            let words: Vec<String> = defects.iter().map(ToString::to_string).collect();
            Error::new(
                first.kind(),
                field.to_owned(),
                "",
                format!("{count} defects:\n{}", words.join("\n")),
                "mend them all",
            )
        }
        [] => Error::new(
            ErrorKind::Text,
            field.to_owned(),
            "",
            "unreadable",
            "mend it",
        ),
    }
}

/// Rows from text: JSON where it starts with `{`, else TOML.
pub fn parse(text: &str) -> Result<ShopRows, Error> {
    let refuse = |message: &str, line: usize| {
        let kind = if message.contains("unknown field") {
            ErrorKind::UnknownField
        } else {
            ErrorKind::Text
        };
        Error::new(
            kind,
            "",
            "",
            message.trim().to_owned(),
            "write the rows as in data/, see README",
        )
        .at_line(line)
    };
    if text.trim_start().starts_with('{') {
        return serde_json::from_str(text).map_err(|e| refuse(&e.to_string(), e.line()));
    }
    toml::from_str(text).map_err(|e| {
        let line = e.span().map_or(1, |span| {
            text.get(..span.start)
                .map_or(1, |before| before.matches('\n').count() + 1)
        });
        refuse(e.message(), line)
    })
}
