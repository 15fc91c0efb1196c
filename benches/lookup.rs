//! Rows by name, figures and their evidence, counted in time and in allocations; beside them what a program without the
//! crate would do with the same files of `data/`: parse them when it is asked, or parse them once and keep the rows.
//!
//! `cargo bench --bench lookup`. The text of the files is in memory already, so no disk is timed. Before anything is timed,
//! every way must find the same row.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::collections::HashMap;
use std::fmt;

use divan::{AllocProfiler, Bencher, black_box};
use framegauge::standard::{HeadSeat, Row, SeatClamp, Seatpost, Shell, ThreadUse, find};

#[global_allocator]
static ALLOC: AllocProfiler = AllocProfiler::system();

fn main() {
    for name in SHELLS {
        let code = find::<Shell>(name).unwrap().code.to_string();
        assert_eq!(code, by_parsing(SHELL_FILE, "shell", name).unwrap());
        let rows = owned_rows(SHELL_FILE, "shell");
        assert_eq!(code, walked(&rows, name).unwrap().code);
        assert_eq!(code, rows[hash_map(&rows)[&name.to_lowercase()]].code);
    }
    for family in FAMILIES {
        let rows = owned_rows(family.file, family.name);
        assert_eq!(rows.len(), (family.rows)(), "{}", family.name);
        assert_eq!(rows.last().unwrap().code, (family.last)());
    }
    let (ours, theirs) = (
        limit_and_grade(),
        limit_and_grade_of(&owned_rows(HEAD_TUBE_FILE, "head_seat")),
    );
    assert!((ours.0 - theirs.0).abs() < 1e-12 && ours.1 == theirs.1);
    divan::main();
}

const SHELL_FILE: &str = include_str!("../data/shells.toml");
const HEAD_TUBE_FILE: &str = include_str!("../data/head_tube.toml");

/// A code, an alias in another case, and one of the last rows.
const SHELLS: [&str; 3] = ["bsc", "BSA", "bb90"];

/// A row as a program would keep it that parsed the file itself.
struct Owned {
    code: String,
    aliases: Vec<String>,
    figures: toml::Table,
}

fn table(text: &str) -> toml::Table {
    toml::from_str(text).unwrap()
}

fn words(row: &toml::Table, key: &str) -> Vec<String> {
    let listed = row.get(key).and_then(toml::Value::as_array);
    let word = |value: &toml::Value| value.as_str().unwrap().to_owned();
    listed.map_or_else(Vec::new, |list| list.iter().map(word).collect())
}

fn owned_rows(text: &str, family: &str) -> Vec<Owned> {
    let row = |row: &toml::Value| {
        let figures = row.as_table().unwrap().clone();
        Owned {
            code: figures["code"].as_str().unwrap().to_owned(),
            aliases: words(&figures, "aliases"),
            figures,
        }
    };
    table(text)[family]
        .as_array()
        .unwrap()
        .iter()
        .map(row)
        .collect()
}

/// Row after row, codes first as ours does, without regard to letter case.
fn walked<'a>(rows: &'a [Owned], name: &str) -> Option<&'a Owned> {
    let wanted = name.trim();
    rows.iter()
        .find(|row| row.code.eq_ignore_ascii_case(wanted))
        .or_else(|| {
            rows.iter().find(|row| {
                row.aliases
                    .iter()
                    .any(|alias| alias.eq_ignore_ascii_case(wanted))
            })
        })
}

/// From every name in small letters to the place of its row.
fn hash_map(rows: &[Owned]) -> HashMap<String, usize> {
    let mut map = HashMap::new();
    for (at, row) in rows.iter().enumerate() {
        for name in row.aliases.iter().chain([&row.code]) {
            map.insert(name.to_lowercase(), at);
        }
    }
    map
}

/// The file parsed for this one question.
fn by_parsing(text: &str, family: &str, name: &str) -> Option<String> {
    let table = table(text);
    let is = |value: &toml::Value| {
        value
            .as_str()
            .is_some_and(|v| v.eq_ignore_ascii_case(name.trim()))
    };
    let named = |row: &&toml::Value| {
        let aliases = row.get("aliases").and_then(toml::Value::as_array);
        row.get("code").is_some_and(is) || aliases.is_some_and(|list| list.iter().any(is))
    };
    let row = table[family].as_array()?.iter().find(named)?;
    Some(row["code"].as_str()?.to_owned())
}

#[divan::bench(args = SHELLS, sample_size = 256)]
fn shell(bencher: Bencher, name: &str) {
    bencher.bench(|| find::<Shell>(black_box(name)).unwrap().code.len());
}

#[divan::bench(args = SHELLS, max_time = 2)]
fn shell_by_parsing_the_file(bencher: Bencher, name: &str) {
    bencher.bench(|| by_parsing(black_box(SHELL_FILE), "shell", black_box(name)));
}

#[divan::bench(args = SHELLS, sample_size = 256)]
fn shell_in_owned_rows(bencher: Bencher, name: &str) {
    let rows = owned_rows(SHELL_FILE, "shell");
    bencher.bench(|| {
        let row = walked(black_box(&rows), black_box(name)).unwrap();
        row.code.len()
    });
}

#[divan::bench(args = SHELLS, sample_size = 256)]
fn shell_in_a_hash_map(bencher: Bencher, name: &str) {
    let rows = owned_rows(SHELL_FILE, "shell");
    let map = hash_map(&rows);
    bencher.bench(|| {
        let at = black_box(&map)[&black_box(name).trim().to_lowercase()];
        rows[at].code.len()
    });
}

/// A family, the file that holds it and the code of its last row, which a walk finds last.
struct Family {
    rows: fn() -> usize,
    name: &'static str,
    file: &'static str,
    last: fn() -> &'static str,
    find: fn(&str) -> usize,
}

impl fmt::Display for Family {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", (self.rows)())
    }
}

fn rows<R: Row>() -> usize {
    R::table().len()
}

fn last<R: Row>() -> &'static str {
    R::table().last().unwrap().code()
}

fn found<R: Row>(name: &str) -> usize {
    find::<R>(name).unwrap().code().len()
}

/// A small, a middling and a large family.
const FAMILIES: [Family; 3] = [
    Family {
        rows: rows::<SeatClamp>,
        name: "clamp",
        file: include_str!("../data/seatposts.toml"),
        last: last::<SeatClamp>,
        find: found::<SeatClamp>,
    },
    Family {
        rows: rows::<HeadSeat>,
        name: "head_seat",
        file: HEAD_TUBE_FILE,
        last: last::<HeadSeat>,
        find: found::<HeadSeat>,
    },
    Family {
        rows: rows::<ThreadUse>,
        name: "thread_use",
        file: include_str!("../data/axles.toml"),
        last: last::<ThreadUse>,
        find: found::<ThreadUse>,
    },
];

/// The last row by its code: growth with the number of rows.
#[divan::bench(args = FAMILIES, sample_size = 256)]
fn last_row(bencher: Bencher, family: &Family) {
    let name = (family.last)();
    bencher.bench(|| (family.find)(black_box(name)));
}

#[divan::bench(args = FAMILIES, sample_size = 256)]
fn last_row_in_owned_rows(bencher: Bencher, family: &Family) {
    let (name, rows) = ((family.last)(), owned_rows(family.file, family.name));
    bencher.bench(|| {
        let row = walked(black_box(&rows), black_box(name)).unwrap();
        row.code.len()
    });
}

const LIMITED: &str = "EC44";

/// From a name to a limit in metres and its grade.
fn limit_and_grade() -> (f64, usize) {
    let row = find::<HeadSeat>(black_box(LIMITED)).unwrap();
    let grade: &str = row.bore.grade().unwrap().into();
    (row.bore.lower().unwrap().value, grade.len())
}

/// The same from owned rows, where a limit is still the text that the file has.
fn limit_and_grade_of(rows: &[Owned]) -> (f64, usize) {
    let bore = &walked(rows, black_box(LIMITED)).unwrap().figures["bore"];
    let lower = bore["lower"].as_str().unwrap().strip_suffix(" mm").unwrap();
    let lower: f64 = lower.parse().unwrap();
    (lower / 1e3, bore["grade"].as_str().unwrap().len())
}

#[divan::bench(sample_size = 256)]
fn limit(bencher: Bencher) {
    bencher.bench(limit_and_grade);
}

#[divan::bench(sample_size = 256)]
fn limit_in_owned_rows(bencher: Bencher) {
    let rows = owned_rows(HEAD_TUBE_FILE, "head_seat");
    bencher.bench(|| limit_and_grade_of(black_box(&rows)));
}

/// Every row of three families, one after another.
#[divan::bench(sample_size = 256)]
fn walk(bencher: Bencher) {
    bencher.bench(|| {
        Shell::table().iter().filter(|r| r.bore.is_some()).count()
            + HeadSeat::table().len()
            + Seatpost::table().len()
    });
}
