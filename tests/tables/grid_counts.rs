//! Counts the cells of the grids by source and grade, so that `coverage` can show them, and checks that each is cited.

use std::collections::BTreeMap;
use std::path::Path;

use framegauge::Grade;

use crate::Rendered;
use crate::families::Checks;

/// Columns that are not figures.
const NOT_FIGURES: [&str; 13] = [
    "source", "at", "grade", "f_grade", "over_mm", "up_to_mm", "pitch_mm", "grade_no", "quantity",
    "class", "group", "series", "tpi",
];

pub fn render(folder: &Path, checks: &mut Checks) -> Rendered {
    let mut counts: BTreeMap<(String, String, Grade), usize> = BTreeMap::new();
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|f| f.unwrap().path())
        .collect();
    files.sort();
    for path in files {
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        let mut reader = csv::Reader::from_path(&path).unwrap();
        let headers = reader.headers().unwrap().clone();
        let column = |wanted: &str| headers.iter().position(|h| h == wanted);
        let (source, grade) = (
            column("source").expect("a grid cites its source"),
            column("grade").expect("a grid grades its rows"),
        );
        for (index, record) in reader.records().enumerate() {
            let record = record.unwrap();
            let at = format!("data/grids/{name}.csv row {}", index + 2);
            let Ok(row_grade) = record[grade].parse::<Grade>() else {
                checks
                    .problems
                    .push(format!("{at}: grade `{}` is none of ours", &record[grade]));
                continue;
            };
            match (record[source].is_empty(), row_grade) {
                (true, Grade::Memory | Grade::CommonPractice) => {}
                (true, _) => checks.problems.push(format!("{at}: no source")),
                (false, _) => checks.cite_in_grid(&name, &record[source]),
            }
            for (header, cell) in headers.iter().zip(record.iter()) {
                if cell.is_empty() || NOT_FIGURES.contains(&header) {
                    continue;
                }
                // Column f of the ISO 965-1 deviations carries a grade of its own.
                let own = column(&format!("{header}_grade")).and_then(|i| record[i].parse().ok());
                *counts
                    .entry((
                        name.clone(),
                        record[source].to_owned(),
                        own.unwrap_or(row_grade),
                    ))
                    .or_default() += 1;
            }
        }
    }
    let rows: Vec<String> = counts
        .iter()
        .map(|((name, source, grade), cells)| {
            let source = match checks.index_of(source) {
                Some(index) => format!("Some(&SOURCES[{index}])"),
                None => "None".to_owned(),
            };
            format!(
                "GridCount {{ grid: {name:?}, source: {source}, grade: {}, cells: {cells} }}",
                crate::rust::word("Grade", &grade.to_string())
            )
        })
        .collect();
    Rendered {
        path: "src/standard/tables/grids.rs",
        text: format!(
            "// @generated from data/grids/ by tests/tables. Do not edit; see DEVELOPERS.md.\n\nuse crate::evidence::Grade;\nuse crate::evidence::tables::SOURCES;\nuse crate::standard::GridCount;\n\npub(crate) static GRIDS: [GridCount; {}] = [{}];\n",
            rows.len(),
            rows.join(", ")
        ),
    }
}
