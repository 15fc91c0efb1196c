//! Reads the check files of `tests/published/`: figures from outside, each with its source beside it.
#![allow(dead_code, reason = "each test file uses a part")]

use std::collections::HashMap;

/// A row of a check file, by column name.
pub struct Row {
    file: String,
    line: usize,
    cells: HashMap<String, String>,
}

impl Row {
    pub fn text(&self, column: &str) -> &str {
        self.cells
            .get(column)
            .unwrap_or_else(|| panic!("{}: no column {column}", self.file))
    }
    pub fn number(&self, column: &str) -> f64 {
        self.text(column)
            .parse()
            .unwrap_or_else(|_| panic!("{self}: {column} is no number"))
    }
    /// A number, or nothing where the cell is blank.
    pub fn optional(&self, column: &str) -> Option<f64> {
        (!self.text(column).is_empty()).then(|| self.number(column))
    }
}

impl std::fmt::Display for Row {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(
            f,
            "{} line {} ({})",
            self.file,
            self.line,
            self.text("source")
        )
    }
}

/// Every row of a check file. An empty file is a fault: a check that checks nothing cannot fail.
pub fn published(name: &str) -> Vec<Row> {
    let path = format!("{}/tests/published/{name}", env!("CARGO_MANIFEST_DIR"));
    let mut reader = csv::Reader::from_path(&path).unwrap();
    let header = reader.headers().unwrap().clone();
    let rows: Vec<Row> = reader
        .records()
        .enumerate()
        .map(|(index, record)| Row {
            file: name.to_owned(),
            line: index + 2,
            cells: header
                .iter()
                .map(str::to_owned)
                .zip(record.unwrap().iter().map(str::to_owned))
                .collect(),
        })
        .collect();
    assert!(!rows.is_empty(), "{name} is empty");
    for row in &rows {
        assert!(
            !row.text("source").is_empty(),
            "{name} line {}: no source",
            row.line
        );
    }
    rows
}
