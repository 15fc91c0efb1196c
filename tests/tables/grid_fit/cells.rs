//! One grid as it stands in its file, with every defect of its cells.

use super::*;

/// One CSV file, with every defect found in it.
pub(super) struct Grid {
    pub(super) file: String,
    pub(super) header: Vec<String>,
    pub(super) rows: Vec<Vec<String>>,
    pub(super) defects: Vec<String>,
}

impl Grid {
    pub(super) fn read(directory: &Path, name: &str) -> Self {
        let file = format!("data/grids/{name}");
        let mut grid = Self {
            file,
            header: Vec::new(),
            rows: Vec::new(),
            defects: Vec::new(),
        };
        match csv::Reader::from_path(directory.join(name)) {
            Err(error) => grid.defects.push(format!("{}: {error}", grid.file)),
            Ok(mut reader) => {
                match reader.headers() {
                    Ok(header) => grid.header = header.iter().map(str::to_owned).collect(),
                    Err(error) => grid.defects.push(format!("{}: {error}", grid.file)),
                }
                for record in reader.records() {
                    match record {
                        Ok(record) => grid.rows.push(record.iter().map(str::to_owned).collect()),
                        Err(error) => grid.defects.push(format!("{}: {error}", grid.file)),
                    }
                }
            }
        }
        grid
    }

    pub(super) fn defect(&mut self, row: usize, field: &str, problem: impl std::fmt::Display) {
        // Row 1 is the header, as an editor counts.
        self.defects.push(format!(
            "{}: row {}, {field}: {problem}",
            self.file,
            row + 2
        ));
    }

    pub(super) fn text(&mut self, row: usize, field: &str) -> String {
        let Some(column) = self.header.iter().position(|h| h == field) else {
            self.defect(row, field, "no such column");
            return String::new();
        };
        self.rows[row].get(column).cloned().unwrap_or_default()
    }

    /// A cell in tenths of a micrometre; blank is "no value for this range".
    pub(super) fn tenths(&mut self, row: usize, field: &str) -> Option<i64> {
        let text = self.text(row, field);
        if text.is_empty() {
            return None;
        }
        let Ok(value) = text.parse::<f64>() else {
            self.defect(row, field, format!("`{text}` is no number"));
            return None;
        };
        let tenths = value * 10.0;
        if !value.is_finite() || (tenths - tenths.round()).abs() > 1e-9 || tenths.abs() > 1e5 {
            self.defect(
                row,
                field,
                format!("`{text}` is not a plausible multiple of 0.1 um"),
            );
            return None;
        }
        if text.starts_with('+') || (text.contains('.') && text.ends_with('0')) {
            self.defect(
                row,
                field,
                format!("`{text}`: write digits without sign plus or trailing zero"),
            );
        }
        #[expect(clippy::cast_possible_truncation, reason = "bounded just above")]
        Some(tenths.round() as i64)
    }

    pub(super) fn needed(&mut self, row: usize, field: &str) -> i64 {
        let before = self.defects.len();
        let value = self.tenths(row, field);
        if value.is_none() && self.defects.len() == before {
            self.defect(row, field, "a value is missing");
        }
        value.unwrap_or(0)
    }

    /// Whole millimetres.
    pub(super) fn bound(&mut self, row: usize, field: &str) -> u16 {
        let text = self.text(row, field);
        text.parse().unwrap_or_else(|_| {
            self.defect(
                row,
                field,
                format!("`{text}` is not a whole number of millimetres"),
            );
            0
        })
    }

    /// Grade and source of a row, as a `TableSource`.
    pub(super) fn source(&mut self, row: usize) -> String {
        let (id, at, grade) = (
            self.text(row, "source"),
            self.text(row, "at"),
            self.text(row, "grade"),
        );
        let variant = match grade.as_str() {
            "standard" => "Standard",
            "agreeing" => "Agreeing",
            "published" => "Published",
            "memory" => "Memory",
            _ => {
                self.defect(
                    row,
                    "grade",
                    format!("`{grade}` is not a grade of these grids"),
                );
                "Memory"
            }
        };
        if id.is_empty() != (grade == "memory") {
            self.defect(
                row,
                "source",
                "a published cell names its source, a remembered one has none",
            );
        }
        if at.is_empty() {
            self.defect(row, "at", "the place in the source is missing");
        }
        format!("TableSource {{ source: {id:?}, at: {at:?}, grade: Grade::{variant} }}")
    }

    /// The same source for a whole grid.
    pub(super) fn one_source(&mut self) -> String {
        let mut first = String::new();
        for row in 0..self.rows.len() {
            let source = self.source(row);
            if row == 0 {
                first = source;
            } else if source != first {
                self.defect(
                    row,
                    "source",
                    "differs from the first row; the grid has one source",
                );
            }
        }
        first
    }

    /// Upper bounds of ranges that follow one another from 0 mm without gap.
    pub(super) fn ranges(&mut self, expected: &[u16]) -> Vec<u16> {
        let mut bounds = Vec::new();
        for row in 0..self.rows.len() {
            let over = self.bound(row, "over_mm");
            let up_to = self.bound(row, "up_to_mm");
            if over != bounds.last().copied().unwrap_or(0) {
                self.defect(row, "over_mm", "does not follow the row above");
            }
            bounds.push(up_to);
        }
        if bounds != expected {
            self.defects.push(format!(
                "{}: ranges {bounds:?}, expected {expected:?}",
                self.file
            ));
        }
        bounds
    }
}
