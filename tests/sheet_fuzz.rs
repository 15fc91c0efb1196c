//! Mutated frame sheets: every one is planned or refused by name, none panics. The seed is fixed.
//!
//! `FUZZ_TIMES=50` runs fifty times as many, on another seed.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::plan::{FrameSheet, prepare, record};
use framegauge::read::Tree;
use framegauge::say;
use framegauge::standard::Tables;

mod random;
use random::{Dice, times};

const SHEETS: u32 = 20_000;

/// What a hand, a script or a broken file puts in place of a value.
const VALUES: [&str; 24] = [
    "\"\"",
    "\"NaN mm\"",
    "\"-1 mm\"",
    "\"0 mm\"",
    "\"1e300 mm\"",
    "\"1e-300 mm\"",
    "\"27,2 mm\"",
    "\"1 3/8 in\"",
    "\"27.2\"",
    "27.2",
    "nan",
    "true",
    "[]",
    "{}",
    "\"24 tpi\"",
    "\"M10x1-6H\"",
    "\"bsc\"",
    "\"left\"",
    "\"carbon\"",
    "\"painted\"",
    "\"10 mm deep, 0 deg: 27.02 mm\"",
    "[\"0 deg: 1 mm\", \"0 deg: 2 mm\"]",
    "[\"41.1 mm +/- 99 mm\"]",
    "\"\\u0000\"",
];

/// One to three lines lost, doubled, swapped, given another value, or bitten.
fn mutated(dice: &mut Dice, sheet: &str) -> String {
    let mut lines: Vec<String> = sheet.lines().map(str::to_owned).collect();
    for _ in 0..=dice.below(3) {
        let at = dice.below(lines.len());
        match dice.below(6) {
            0 => drop(lines.remove(at)),
            1 => {
                let to = dice.below(lines.len());
                lines.swap(at, to);
            }
            2 => {
                let again = lines[at].clone();
                lines.insert(at, again);
            }
            3 => {
                let mut chars: Vec<char> = lines[at].chars().collect();
                if !chars.is_empty() {
                    let here = dice.below(chars.len());
                    chars[here] = ['0', '9', '-', '.', '"', '[', 'm', 'é'][dice.below(8)];
                }
                lines[at] = chars.into_iter().collect();
            }
            _ => {
                if let Some((name, _)) = lines[at].split_once('=') {
                    lines[at] = format!("{name}= {}", VALUES[dice.below(VALUES.len())]);
                }
            }
        }
        if lines.is_empty() {
            break;
        }
    }
    lines.join("\n")
}

#[test]
fn mutated_sheets_are_planned_or_refused() {
    let folder = format!("{}/examples/frames", env!("CARGO_MANIFEST_DIR"));
    let mut paths: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|f| f.unwrap().path())
        .collect();
    paths.sort();
    let sheets: Vec<String> = paths
        .iter()
        .map(|p| std::fs::read_to_string(p).unwrap())
        .collect();
    let mut dice = Dice::new(26);
    let count = SHEETS * times();
    let (mut planned, mut refused) = (0_u32, 0_u32);
    for turn in 0..count {
        let text = mutated(&mut dice, &sheets[turn as usize % sheets.len()]);
        let Ok(written) = toml::from_str::<Tree<'_>>(&text) else {
            refused += 1;
            continue;
        };
        match FrameSheet::from_tree(&written, Tables::ours()) {
            Err(errors) => {
                refused += 1;
                assert!(!errors.is_empty(), "{text}");
                for error in errors {
                    assert!(!error.remedy().is_empty(), "{error:?}\n{text}");
                }
            }
            Ok(sheet) => {
                planned += 1;
                let page = say::plan(&prepare(&sheet));
                // A belief is repeated as it was written, whatever it says.
                assert!(
                    text.contains("NaN") || !page.contains("NaN") && !page.contains(" inf "),
                    "{page}\n{text}"
                );
                // The record costs a second plan, so it is taken now and then.
                if turn % 16 == 0 {
                    let record = record(&sheet, Tables::ours());
                    assert!(!say::markdown(&record).is_empty());
                }
            }
        }
    }
    // Both happen often, or the test would show nothing.
    assert!(
        planned > count / 10 && refused > count / 10,
        "{planned} planned, {refused} refused"
    );
}
