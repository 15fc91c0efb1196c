//! What the tables hold: figures by family and grade, what is disputed, what is unknown, what is from memory.
//!
//! `coverage [--disputed] [--unknown] [--memory] [--json]`

// Writing to a String cannot fail.
#![allow(clippy::unwrap_used)]

mod support;

use std::collections::BTreeMap;
use std::fmt::Write;
use std::process::ExitCode;

use framegauge::measure::instruments;
use framegauge::standard::{Walk, every_figure, grids};
use framegauge::{Error, Grade};
use serde::Serialize;
use strum::IntoEnumIterator;
use support::{Answer, Words, answer};

/// One family or grid.
#[derive(Default, Serialize)]
struct Count {
    by_grade: BTreeMap<Grade, usize>,
    unknown: usize,
    disputed: usize,
    uncited: usize,
}

#[derive(Default, Serialize)]
struct Coverage {
    families: BTreeMap<String, Count>,
    grids: BTreeMap<String, Count>,
    disputed: Vec<String>,
    unknown: Vec<String>,
    memory: Vec<String>,
}

fn main() -> ExitCode {
    answer(|| {
        let words = Words::read(&[], &["disputed", "unknown", "memory"])?;
        let coverage = count();
        let uncited: usize = coverage
            .families
            .values()
            .chain(coverage.grids.values())
            .map(|c| c.uncited)
            .sum();
        let text = print(&coverage, &words, uncited);
        Ok::<_, Error>(Answer::new(&coverage, text, uncited == 0))
    })
}

fn count() -> Coverage {
    let mut out = Coverage::default();
    let mut note =
        |family: &str, code: &str, field: &str, stated: &dyn framegauge::standard::Stated| {
            let count = out.families.entry(family.to_owned()).or_default();
            let name = format!("{family} {code}: {field}");
            match stated.evidence() {
                Some(evidence) => {
                    *count.by_grade.entry(evidence.worth()).or_default() += 1;
                    let needs_source = !matches!(
                        evidence.grade(),
                        Grade::Memory | Grade::CommonPractice | Grade::Shop
                    );
                    count.uncited += usize::from(needs_source && evidence.sources().is_empty());
                    if evidence.worth() == Grade::Memory {
                        out.memory.push(format!("{name} {stated}"));
                    }
                }
                None => {
                    count.unknown += 1;
                    out.unknown.push(format!("{name}: {}", stated.reason()));
                }
            }
            if stated.disputes() > 0 {
                count.disputed += 1;
                out.disputed.push(format!("{name} {stated}"));
            }
        };
    every_figure(&mut note);
    for tool in instruments() {
        for limit in tool.limits.iter() {
            limit.error.walk("error", &mut |field, stated| {
                note("instrument", &tool.code, field, stated)
            });
        }
        tool.resolution.walk("resolution", &mut |field, stated| {
            note("instrument", &tool.code, field, stated)
        });
        tool.repeatability
            .walk("repeatability", &mut |field, stated| {
                note("instrument", &tool.code, field, stated)
            });
    }
    for grid in grids() {
        let count = out.grids.entry(grid.grid.to_owned()).or_default();
        *count.by_grade.entry(grid.grade).or_default() += grid.cells;
        if grid.source.is_none() && !matches!(grid.grade, Grade::Memory | Grade::CommonPractice) {
            count.uncited += grid.cells;
        }
    }
    out
}

fn print(coverage: &Coverage, words: &Words, uncited: usize) -> String {
    let grades: Vec<Grade> = Grade::iter()
        .filter(|g| *g != Grade::Shop)
        .collect::<Vec<_>>()
        .into_iter()
        .rev()
        .collect();
    let mut text = String::new();
    let short = |grade: &Grade| grade.to_string().replace('_', " ");
    write!(text, "{:18}", "").unwrap();
    for grade in &grades {
        write!(text, "{:>16}", short(grade)).unwrap();
    }
    writeln!(text, "{:>10}{:>10}", "unknown", "disputed").unwrap();
    let mut totals: BTreeMap<Grade, usize> = BTreeMap::new();
    for (name, count) in coverage.families.iter().chain(&coverage.grids) {
        write!(text, "{name:18}").unwrap();
        for grade in &grades {
            let cells = count.by_grade.get(grade).copied().unwrap_or(0);
            *totals.entry(*grade).or_default() += cells;
            write!(
                text,
                "{:>16}",
                if cells == 0 {
                    "-".to_owned()
                } else {
                    cells.to_string()
                }
            )
            .unwrap();
        }
        writeln!(text, "{:>10}{:>10}", count.unknown, count.disputed).unwrap();
    }
    write!(text, "{:18}", "all").unwrap();
    for grade in &grades {
        write!(text, "{:>16}", totals.get(grade).copied().unwrap_or(0)).unwrap();
    }
    writeln!(
        text,
        "{:>10}{:>10}",
        coverage.unknown.len(),
        coverage.disputed.len()
    )
    .unwrap();
    writeln!(
        text,
        "figures without a source that should have one: {uncited}"
    )
    .unwrap();
    for (flag, title, list) in [
        ("disputed", "Disputed, both sides kept", &coverage.disputed),
        ("unknown", "Unknown", &coverage.unknown),
        ("memory", "From memory", &coverage.memory),
    ] {
        if words.flag(flag) {
            writeln!(text, "\n{title}:").unwrap();
            for line in list {
                writeln!(text, "  {line}").unwrap();
            }
        }
    }
    text
}
