//! The grids of the thread room: ISO 965-1 tolerances, coarse pitches, Unified series.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use super::Rendered;

const HEAD: &str = "// Generated from data/grids by tests/tables/grid_thread.rs. Do not edit.\n\n";

/// A CSV file with what is wrong in it so far.
struct Grid {
    file: &'static str,
    rows: Vec<BTreeMap<String, String>>,
    defects: Vec<String>,
}

impl Grid {
    fn read(file: &'static str) -> Self {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("data/grids")
            .join(file);
        let mut grid = Self {
            file,
            rows: Vec::new(),
            defects: Vec::new(),
        };
        let mut reader = match csv::Reader::from_path(&path) {
            Ok(reader) => reader,
            Err(e) => {
                grid.defects.push(format!("{file}: {e}"));
                return grid;
            }
        };
        let mut seen = BTreeSet::new();
        for (index, record) in reader.deserialize().enumerate() {
            match record {
                Ok(row) => {
                    let row: BTreeMap<String, String> = row;
                    if !seen.insert(format!("{row:?}")) {
                        grid.defects
                            .push(format!("{file}: row {}: repeated", index + 2));
                    }
                    grid.rows.push(row);
                }
                Err(e) => grid.defects.push(format!("{file}: row {}: {e}", index + 2)),
            }
        }
        for index in 0..grid.rows.len() {
            let grade = grid.text(index, "grade");
            if !["standard", "agreeing", "published", "derived", "memory"].contains(&grade.as_str())
            {
                grid.defect(index, "grade", "no such grade");
            }
            if (grade == "memory") != grid.text(index, "source").is_empty() {
                grid.defect(
                    index,
                    "source",
                    "a source is named exactly when the grade is not memory",
                );
            }
        }
        grid
    }

    fn defect(&mut self, row: usize, field: &str, problem: &str) {
        let value = self.text(row, field);
        self.defects.push(format!(
            "{}: row {}: {field}: {problem}, got `{value}`",
            self.file,
            row + 2
        ));
    }

    fn text(&self, row: usize, field: &str) -> String {
        self.rows[row].get(field).cloned().unwrap_or_default()
    }

    /// A cell times `scale` as a whole number; 0 for a cell that is empty where that is allowed.
    fn whole(&mut self, row: usize, field: &str, scale: f64, empty_allowed: bool) -> i64 {
        let text = self.text(row, field);
        if text.is_empty() && empty_allowed {
            return 0;
        }
        match text.parse::<f64>() {
            Ok(value) if value.is_finite() => {
                let scaled = value * scale;
                if (scaled - scaled.round()).abs() > 1e-6 {
                    self.defect(row, field, "finer than the table's step");
                }
                scaled.round() as i64
            }
            _ => {
                self.defect(row, field, "not a finite number");
                0
            }
        }
    }

    /// As [`Self::whole`], above zero.
    fn size(&mut self, row: usize, field: &str, scale: f64) -> i64 {
        let value = self.whole(row, field, scale, false);
        if value <= 0 {
            self.defect(row, field, "must be above zero");
        }
        value
    }
}

/// Edges of the diameter ranges in micrometres, from the widest grid.
fn edges(external: &mut Grid) -> Vec<i64> {
    let mut edges = BTreeSet::new();
    for row in 0..external.rows.len() {
        edges.insert(external.size(row, "over_mm", 1e3));
        edges.insert(external.size(row, "up_to_mm", 1e3));
    }
    edges.into_iter().collect()
}

/// Cells by (range, pitch) or by pitch, then by grade number.
type Cells = BTreeMap<(usize, i64), BTreeMap<i64, i64>>;

fn cells(
    grid: &mut Grid,
    edges: Option<&[i64]>,
    grades: &[i64],
    derived: &mut Vec<Completed>,
    which: &str,
) -> Cells {
    let mut cells: Cells = BTreeMap::new();
    for row in 0..grid.rows.len() {
        let range = match edges {
            None => 0,
            Some(edges) => {
                let over = grid.size(row, "over_mm", 1e3);
                let up_to = grid.size(row, "up_to_mm", 1e3);
                match edges.iter().position(|e| *e == over) {
                    Some(at) if edges.get(at + 1) == Some(&up_to) => at,
                    _ => {
                        grid.defect(row, "over_mm", "no such diameter range");
                        0
                    }
                }
            }
        };
        let pitch = grid.size(row, "pitch_mm", 1e3);
        let grade = grid.size(row, "grade_no", 1.0);
        let um = grid.size(row, "um", 1.0);
        if !grades.contains(&grade) {
            grid.defect(row, "grade_no", "no such tolerance grade here");
        }
        if um > i64::from(u16::MAX) {
            grid.defect(row, "um", "too large");
        }
        if cells
            .entry((range, pitch))
            .or_default()
            .insert(grade, um)
            .is_some()
        {
            grid.defect(row, "grade_no", "cell given twice");
        }
        if grid.text(row, "grade") == "derived" {
            derived.push((which.to_owned(), range, pitch, grade));
        }
    }
    let mut problems = Vec::new();
    for ((range, pitch), by_grade) in &cells {
        if by_grade
            .values()
            .zip(by_grade.values().skip(1))
            .any(|(a, b)| a >= b)
        {
            problems.push(format!(
                "{}: range {range}, pitch {pitch} um: grades do not ascend",
                grid.file
            ));
        }
    }
    grid.defects.append(&mut problems);
    cells
}

/// A cell that was completed by the inner rule of the tables: table, range, pitch, grade.
type Completed = (String, usize, i64, i64);

/// Bits of the completed cells of a row: internal grades 4 to 8 from bit 0, external grades 3 to 9 from bit 8.
fn completed_mask(completed: &[Completed], range: usize, pitch: i64) -> u16 {
    completed
        .iter()
        .filter(|c| c.1 == range && c.2 == pitch)
        .map(|(table, _, _, grade)| match table.as_str() {
            "internal" => 1u16 << (grade - 4),
            _ => 1u16 << (8 + grade - 3),
        })
        .sum()
}

fn list(by_grade: Option<&BTreeMap<i64, i64>>, grades: &[i64]) -> String {
    let values: Vec<String> = grades
        .iter()
        .map(|g| {
            by_grade
                .and_then(|m| m.get(g))
                .copied()
                .unwrap_or(0)
                .to_string()
        })
        .collect();
    format!("[{}]", values.join(", "))
}

pub fn render() -> Vec<Rendered> {
    let (iso, mut defects) = iso965();
    let (series, more) = series();
    defects.extend(more);
    assert!(
        defects.is_empty(),
        "defects in data/grids:\n{}",
        defects.join("\n")
    );
    let mut rendered = vec![iso, series];
    rendered.extend(super::thread_cite::render());
    rendered
}

fn iso965() -> (Rendered, Vec<String>) {
    let mut td2_external = Grid::read("iso965_td2_external.csv");
    let mut td2_internal = Grid::read("iso965_td2_internal.csv");
    let mut td1 = Grid::read("iso965_td1.csv");
    let mut td = Grid::read("iso965_td.csv");
    let mut deviation = Grid::read("iso965_deviation.csv");
    let mut engagement = Grid::read("iso965_engagement.csv");
    let mut coarse = Grid::read("iso965_coarse.csv");

    let edges = edges(&mut td2_external);
    let mut derived = Vec::new();
    let external_grades = [3, 4, 5, 6, 7, 8, 9];
    let internal_grades = [4, 5, 6, 7, 8];
    let external = cells(
        &mut td2_external,
        Some(&edges),
        &external_grades,
        &mut derived,
        "external",
    );
    let internal = cells(
        &mut td2_internal,
        Some(&edges),
        &internal_grades,
        &mut derived,
        "internal",
    );
    let minor = cells(&mut td1, None, &internal_grades, &mut derived, "minor");
    let major = cells(&mut td, None, &[4, 6, 8], &mut derived, "major");

    let mut pitches = BTreeMap::new();
    for row in 0..deviation.rows.len() {
        let pitch = deviation.size(row, "pitch_mm", 1e3);
        let g = deviation.size(row, "G", 1.0);
        if deviation.whole(row, "g", 1.0, false) != -g {
            deviation.defect(row, "g", "g and G are mirror images");
        }
        for zero in ["H", "h"] {
            if deviation.whole(row, zero, 1.0, false) != 0 {
                deviation.defect(row, zero, "must be 0");
            }
        }
        let e = -deviation.whole(row, "e", 1.0, true);
        let f = -deviation.whole(row, "f", 1.0, true);
        if (e != 0 && e <= f) || (f != 0 && f <= g) {
            deviation.defect(row, "e", "deviations must grow from g to e");
        }
        if f != 0 && deviation.text(row, "f_grade") != "memory" {
            deviation.defect(row, "f_grade", "column f is known from memory only");
        }
        if pitches.insert(pitch, (g, e, f)).is_some() {
            deviation.defect(row, "pitch_mm", "pitch given twice");
        }
    }
    let mut groups = BTreeMap::new();
    for row in 0..engagement.rows.len() {
        let over = engagement.size(row, "over_mm", 1e3);
        let pitch = engagement.size(row, "pitch_mm", 1e3);
        let s = engagement.size(row, "s_up_to_mm", 10.0);
        let n = engagement.size(row, "n_up_to_mm", 10.0);
        if s >= n {
            engagement.defect(row, "n_up_to_mm", "N must reach beyond S");
        }
        let range = edges.iter().position(|e| *e == over).unwrap_or(usize::MAX);
        groups.insert((range, pitch), (s, n));
    }
    let mut defects: Vec<String> = Vec::new();
    for (table, ..) in &derived {
        if table == "minor" || table == "major" {
            defects.push(format!(
                "a completed cell in the {table} tolerances has no place to be marked"
            ));
        }
    }
    let all_keys: BTreeSet<_> = external
        .keys()
        .chain(internal.keys())
        .chain(groups.keys())
        .copied()
        .collect();
    for (range, pitch) in &all_keys {
        if !pitches.contains_key(pitch) {
            defects.push(format!(
                "pitch {pitch} um is in no row of iso965_deviation.csv"
            ));
        }
        if !groups.contains_key(&(*range, *pitch)) {
            defects.push(format!(
                "range {range}, pitch {pitch} um has no engagement row"
            ));
        }
    }
    for (_, pitch) in minor.keys().chain(major.keys()) {
        if !pitches.contains_key(pitch) {
            defects.push(format!(
                "pitch {pitch} um is in no row of iso965_deviation.csv"
            ));
        }
    }

    let mut text = String::from(HEAD);
    text.push_str("//! ISO 965-1:1998, Tables 1 to 6, and the coarse pitches of ISO 965-2. Pitches and tolerances in micrometres; 0 means not tabulated.\n\nuse crate::thread::iso965::{PitchRow, RangeRow, pitch, range};\n\n");
    let _ = writeln!(
        text,
        "/// Edges of the diameter ranges: over the one, up to and including the next.\npub(in crate::thread) static EDGES: [u32; {}] = {edges:?};\n",
        edges.len()
    );
    let _ = writeln!(
        text,
        "/// By pitch: deviations G, e, f (f from memory), TD1 grades 4 to 8, Td grades 4, 6, 8.\n#[rustfmt::skip]\npub(in crate::thread) static PITCHES: [PitchRow; {}] = [",
        pitches.len()
    );
    for (p, (g, e, f)) in &pitches {
        let _ = writeln!(
            text,
            "    pitch({p}, {g}, {e}, {f}, {}, {}),",
            list(minor.get(&(0, *p)), &internal_grades),
            list(major.get(&(0, *p)), &[4, 6, 8])
        );
    }
    let _ = writeln!(
        text,
        "];\n\n/// By diameter range and pitch: TD2 grades 4 to 8, Td2 grades 3 to 9, engagement S up to and N up to in tenths of a millimetre, completed cells.\n#[rustfmt::skip]\npub(in crate::thread) static RANGES: [RangeRow; {}] = [",
        all_keys.len()
    );
    for key in &all_keys {
        let (s, n) = groups.get(key).copied().unwrap_or_default();
        let _ = writeln!(
            text,
            "    range({}, {}, {}, {}, {s}, {n}, {:#06x}),",
            key.0,
            key.1,
            list(internal.get(key), &internal_grades),
            list(external.get(key), &external_grades),
            completed_mask(&derived, key.0, key.1)
        );
    }
    text.push_str("];\n\n");
    let order: Vec<i64> = pitches.keys().copied().collect();
    let mut pitch_at = vec![u8::MAX; 161];
    for (at, pitch) in order.iter().enumerate() {
        match (pitch % 50, pitch_at.get_mut((*pitch / 50) as usize)) {
            (0, Some(slot)) => *slot = at as u8,
            _ => defects.push(format!(
                "pitch {pitch} um does not fit the index of pitches"
            )),
        }
    }
    let _ = writeln!(
        text,
        "/// Row of `PITCHES` by pitch in steps of 50 um; 255 where there is none.\npub(in crate::thread) static PITCH_AT: [u8; 161] = {pitch_at:?};\n"
    );
    let rows: Vec<Vec<u8>> = (0..edges.len() - 1)
        .map(|range| {
            order
                .iter()
                .map(|pitch| {
                    let key = (range, *pitch);
                    all_keys
                        .iter()
                        .position(|k| *k == key)
                        .map_or(u8::MAX, |at| at as u8)
                })
                .collect()
        })
        .collect();
    let _ = writeln!(
        text,
        "/// Row of `RANGES` by diameter range and row of `PITCHES`; 255 where there is none.\npub(in crate::thread) static ROW_AT: [[u8; {}]; {}] = {rows:?};\n",
        order.len(),
        rows.len()
    );
    let mut steps: BTreeMap<i64, i64> = BTreeMap::new();
    for row in 0..coarse.rows.len() {
        let major = coarse.size(row, "major_mm", 1e3);
        let pitch = coarse.size(row, "pitch_mm", 1e3);
        if !pitches.contains_key(&pitch) {
            coarse.defect(row, "pitch_mm", "not a pitch of the tolerance tables");
        }
        steps.insert(major, pitch);
    }
    let _ = writeln!(
        text,
        "/// Coarse pitch by nominal diameter, both in micrometres.\npub(in crate::thread) static COARSE: [(u32, u16); {}] = [",
        steps.len()
    );
    for (major, pitch) in &steps {
        let _ = writeln!(text, "({major}, {pitch}),");
    }
    text.push_str("];\n");
    for mut grid in [
        td2_external,
        td2_internal,
        td1,
        td,
        deviation,
        engagement,
        coarse,
    ] {
        defects.append(&mut grid.defects);
    }
    (
        Rendered {
            path: "src/thread/tables/iso965.rs",
            text,
        },
        defects,
    )
}

fn series() -> (Rendered, Vec<String>) {
    let mut grid = Grid::read("unified_series.csv");
    let mut text = String::from(HEAD);
    let _ = writeln!(
        text,
        "//! Unified thread series by size: basic diameter in ten-thousandths of an inch, threads per inch.\n\nuse crate::thread::unified::{{Series, SeriesRow, row}};\n\npub(in crate::thread) static SERIES: [SeriesRow; {}] = [",
        grid.rows.len()
    );
    let mut last = (0, 0);
    for row in 0..grid.rows.len() {
        let key = (grid.size(row, "major_in", 1e4), grid.size(row, "tpi", 1.0));
        if key <= last {
            grid.defect(row, "major_in", "sizes must ascend and be given once");
        }
        last = key;
        let series = match grid.text(row, "series").as_str() {
            "UNC" => "Coarse",
            "UNF" => "Fine",
            "UNEF" => "ExtraFine",
            _ => {
                grid.defect(row, "series", "UNC, UNF or UNEF");
                "Coarse"
            }
        };
        let memory = grid.text(row, "grade") == "memory";
        let _ = writeln!(
            text,
            "row({}, {}, Series::{series}, {memory}),",
            key.0, key.1
        );
    }
    text.push_str("];\n");
    (
        Rendered {
            path: "src/thread/tables/series.rs",
            text,
        },
        grid.defects,
    )
}
