//! The numbers of the README are counted, not remembered: coverage against what the example of that name prints, lines of
//! `tests/published/` against the files.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod run_example;

use std::collections::{BTreeMap, BTreeSet};

const README: &str = include_str!("../README.md");

/// What the example `coverage` counts: seven grades from the strongest, then unknown and disputed.
fn printed() -> BTreeMap<String, Vec<usize>> {
    let (_, exit, text) = run_example::run("coverage", &[]);
    assert_eq!(exit, 0, "{text}");
    text.lines()
        .filter_map(|line| {
            let (name, cells) = line.split_once(' ')?;
            let cells: Option<Vec<usize>> = cells
                .split_whitespace()
                .map(|cell| {
                    if cell == "-" {
                        Some(0)
                    } else {
                        cell.parse().ok()
                    }
                })
                .collect();
            cells
                .filter(|cells| cells.len() == 9)
                .map(|cells| (name.to_owned(), cells))
        })
        .collect()
}

/// Cells of the rows of the table below a heading.
fn table(head: &str) -> Vec<Vec<&'static str>> {
    let below = README
        .split_once(head)
        .unwrap_or_else(|| panic!("README: {head}"))
        .1;
    below
        .lines()
        .skip(2)
        .take_while(|line| line.starts_with('|'))
        .map(|line| line.trim_matches('|').split('|').map(str::trim).collect())
        .collect()
}

#[test]
fn it_is_short() {
    let lines = README.lines().count();
    assert!(lines < 200, "{lines} lines");
}

#[test]
fn coverage_by_family() {
    let printed = printed();
    let mut shown = BTreeSet::new();
    let mut sum = vec![0; 9];
    let rows = table("| family | known |");
    let parts = |row: &[&str]| {
        let share: Vec<usize> = row[2].split(" · ").map(|s| s.parse().unwrap()).collect();
        let number = |i: usize| row[i].parse::<usize>().unwrap();
        (number(1), share, number(3))
    };
    let check = |name: &str, row: &[&str], counts: &[usize]| {
        let (known, share, unknown) = parts(row);
        let all: usize = counts[..7].iter().sum();
        assert_eq!((known, unknown), (all, counts[7]), "{name}");
        for (share, count) in share.iter().zip(&counts[1..7]) {
            let exact = 100.0 * *count as f64 / all as f64;
            assert!((exact - *share as f64).abs() <= 0.5, "{name}: {exact} %");
        }
        // No family has a figure read in a standard; the day one has, the column is needed.
        assert_eq!((counts[0], share.len()), (0, 6), "{name}");
    };
    for half in rows
        .iter()
        .flat_map(|row| row.chunks(4))
        .filter(|half| half[0].starts_with('`'))
    {
        let name = half[0].trim_matches('`');
        let counts = &printed[name];
        check(name, half, counts);
        sum.iter_mut().zip(counts).for_each(|(s, c)| *s += c);
        assert!(shown.insert(name), "{name} stands there twice");
    }
    let total = rows.iter().find(|row| row[0] == "**28 families**").unwrap();
    check("all families", &total[..4], &sum);
    let grids: Vec<_> = printed
        .iter()
        .filter(|(name, _)| **name != "all" && !shown.contains(name.as_str()))
        .collect();
    assert!(
        grids
            .iter()
            .all(|(name, _)| name.starts_with("iso") || *name == "unified_series"),
        "a family is missing: {grids:?}"
    );
    let cells = |i: usize| grids.iter().map(|(_, counts)| counts[i]).sum::<usize>();
    let all: usize = (0..7).map(cells).sum();
    for text in [
        format!("hold {all} cells: {} as in the standard", cells(0)),
        format!(
            "{} where two sources agree, {} published once, {} derived, {} from memory",
            cells(1),
            cells(2),
            cells(4),
            cells(6)
        ),
        format!("both sides are kept ({} figures)", sum[8]),
    ] {
        assert!(
            README
                .split_whitespace()
                .collect::<Vec<_>>()
                .join(" ")
                .contains(&text),
            "README does not say: {text}"
        );
    }
}

#[test]
fn lines_reproduced() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/");
    let rows = table("| what | lines | from | file |");
    assert!(!rows.is_empty());
    for row in rows {
        let said: Vec<usize> = row[1].split(", ").map(|n| n.parse().unwrap()).collect();
        let files: Vec<&str> = row[3].split(", ").map(|f| f.trim_matches('`')).collect();
        let counted: Vec<usize> = files
            .iter()
            .map(|file| {
                csv::Reader::from_path(format!("{folder}{file}.csv"))
                    .unwrap()
                    .records()
                    .map(Result::unwrap)
                    .count()
            })
            .collect();
        assert_eq!(said, counted, "{files:?}");
    }
}
