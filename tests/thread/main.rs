//! The thread room against outside figures, and its properties. Every file of `tests/published/` names its source in
//! its last column; none of its values fed `data/`.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod basic;
mod bearing;
mod designation;
mod forms;
mod limits;
mod mended;
#[cfg(feature = "serde")]
mod serial;
mod sides;

use std::collections::BTreeMap;

/// Rows of a published file, by column name.
fn published(file: &str) -> Vec<BTreeMap<String, String>> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/published")
        .join(file);
    csv::Reader::from_path(path)
        .unwrap()
        .deserialize()
        .map(|row| row.unwrap())
        .collect()
}

/// A cell as a number; `None` when the source prints nothing there.
fn cell(row: &BTreeMap<String, String>, column: &str) -> Option<f64> {
    let text = row
        .get(column)
        .unwrap_or_else(|| panic!("no column {column}"));
    (!text.is_empty()).then(|| text.parse().unwrap())
}
