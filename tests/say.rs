//! What a person gets: a page that fits the bench, pages that no text of a sheet can break, a sheet to fill in.
#![cfg(feature = "json")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "say/numbers.rs"]
mod numbers;
#[path = "say/second_language.rs"]
mod second_language;

use std::fs;

use framegauge::plan::{FrameSheet, Plan, prepare, record};
use framegauge::read::Tree;
use framegauge::say::{self, pictures};
use framegauge::standard::{Place, Tables};
use strum::IntoEnumIterator;

fn sheet(text: &str) -> FrameSheet {
    let tree: Tree<'_> = toml::from_str(text).unwrap();
    FrameSheet::from_tree(&tree, Tables::ours()).unwrap_or_else(|e| panic!("{e:?}\n{text}"))
}

fn sheets() -> Vec<(String, FrameSheet)> {
    let mut out: Vec<_> = fs::read_dir("examples/frames")
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .map(|path| {
            (
                path.display().to_string(),
                sheet(&fs::read_to_string(path).unwrap()),
            )
        })
        .collect();
    out.sort_by(|a, b| a.0.cmp(&b.0));
    out
}

fn lines(page: &str) -> usize {
    page.lines().count()
}

/// Every way in which a sheet is told.
fn pages(sheet: &FrameSheet) -> Vec<(&'static str, String)> {
    let plan = prepare(sheet);
    let drawn = pictures(sheet, Tables::ours());
    let record = record(sheet, Tables::ours());
    let mut out = vec![
        ("bench page", say::bench(&plan)),
        ("plan", say::plan(&plan)),
        ("measuring list", say::measure(&plan)),
        ("letter", say::record(&record)),
        ("letter in Markdown", say::markdown(&record)),
        ("page.html", say::page(&plan, &drawn)),
        ("letter.html", say::letter(&record, &drawn, &[])),
    ];
    out.extend(drawn.into_iter().map(|p| ("drawing.html", p.svg)));
    out
}

/// A bench page is one page: 66 lines of 100 columns for the lead example, and in proportion for the others.
#[test]
fn a_bench_page_fits_the_bench() {
    for (name, sheet) in sheets() {
        let plan: Plan = prepare(&sheet);
        let page = say::bench(&plan);
        for line in page.lines() {
            assert!(line.chars().count() <= 100, "{name}: {line}");
        }
        let most = if name.contains("trekking") {
            66
        } else {
            16 + 4 * plan.steps.len() + 4 * plan.questions.len() + 3 * plan.places.len()
        };
        assert!(
            lines(&page) <= most,
            "{name}: {} of {most}\n{page}",
            lines(&page)
        );
    }
}

/// What a sheet says can neither break a page nor be taken for markup, nor turn a line around.
#[test]
fn no_text_of_a_sheet_breaks_a_page() {
    let hostile =
        "</h1><script>alert(1)</script> \" ' & ]]> \u{202e}gnp.exe \u{7}\u{1b}[31m | `#` *x* <b";
    let text = fs::read_to_string("examples/frames/aluminium_trekking.toml").unwrap();
    let mut sheets = sheets();
    let mut tree: toml::Table = toml::from_str(&text).unwrap();
    let quoted = toml::Value::String(hostile.into());
    tree["frame"] = quoted.clone();
    tree.insert("note".into(), quoted.clone());
    tree.insert("date".into(), quoted.clone());
    for place in ["seat_tube", "shell"] {
        tree[place]
            .as_table_mut()
            .unwrap()
            .insert("note".into(), quoted.clone());
        tree[place]["limits"][0]["owner"] = quoted.clone();
    }
    tree["thread"][2]["name"] = quoted.clone();
    tree["head_tube"]["upper"]["part"]["name"] = quoted;
    sheets.push(("hostile".into(), sheet(&toml::to_string(&tree).unwrap())));
    for (name, sheet) in sheets {
        for (what, page) in pages(&sheet) {
            let odd = page.chars().find(|c| {
                (c.is_control() && *c != '\n')
                    || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
            });
            assert_eq!(odd, None, "{name}, {what}");
            if what.ends_with(".html") {
                let options = roxmltree::ParsingOptions {
                    allow_dtd: true,
                    ..Default::default()
                };
                let read = roxmltree::Document::parse_with_options(&page, options);
                let read = read.unwrap_or_else(|e| panic!("{name}, {what}: {e}"));
                let scripts = read
                    .descendants()
                    .filter(|n| n.has_tag_name("script"))
                    .count();
                assert_eq!(scripts, 0, "{name}, {what}");
            } else if what.contains("Markdown") {
                assert!(!page.contains("<script>"), "{name}, {what}");
            }
        }
    }
}

/// An empty sheet of every place is a sheet, and every line of it is one when its mark is taken away and its gap filled.
#[test]
fn an_empty_sheet_is_a_sheet() {
    let all: Vec<Place> = [
        "seat_tube",
        "shell",
        "head_tube.upper",
        "head_tube.lower",
        "crown",
        "steerer",
        "axle.front",
        "axle.rear",
        "hanger.rear",
        "pedal.left",
        "pedal.right",
        "boss.bottle",
        "brake.front",
        "brake.rear",
        "dropout.rear.drive",
    ]
    .iter()
    .map(|code| code.parse().unwrap())
    .collect();
    let blank = say::blank(&all).unwrap();
    let plan = prepare(&sheet(&blank));
    assert!(
        plan.steps.is_empty() && plan.questions.len() >= 8,
        "{}",
        say::bench(&plan)
    );
    for place in &all {
        let alone = say::blank(std::slice::from_ref(place)).unwrap();
        assert!(sheet(&alone).frame.starts_with("name"), "{place}");
        let mut open = String::new();
        for line in alone.lines() {
            let bare = line.trim_start_matches("# ");
            let field = bare.split(" = ").next().unwrap_or_default();
            let is_field =
                bare.contains(" = ") && field.chars().all(|c| c.is_lowercase() || c == '_');
            if bare.starts_with('[') || (is_field && bare.contains(" mm\"") && field != "limits") {
                open.push_str(&bare.replace("  mm", " 12 mm +/- 0.1 mm"));
                open.push('\n');
            } else if !line.starts_with('#') {
                open.push_str(line);
                open.push('\n');
            }
        }
        let tree: Tree<'_> =
            toml::from_str(&open).unwrap_or_else(|e| panic!("{place}: {e}\n{open}"));
        if let Err(errors) = FrameSheet::from_tree(&tree, Tables::ours()) {
            for error in errors {
                let kind = error.kind();
                // Figures that do not belong together are no fault of the form.
                assert!(
                    !matches!(
                        kind,
                        framegauge::ErrorKind::UnknownName | framegauge::ErrorKind::Unit
                    ),
                    "{place}: {error}\n{open}"
                );
            }
        }
    }
    let unknown: Place = "iscg".parse().unwrap();
    assert!(say::blank(&[unknown]).is_ok());
}

/// Words of a plan hold no code, no jargon of grades, no Rust.
#[test]
fn a_page_speaks_workshop_english() {
    for (name, sheet) in sheets() {
        let page = say::bench(&prepare(&sheet));
        for word in [
            "None",
            "Some(",
            "neither shown nor ruled out",
            "second-hand",
            "counter-clockwise",
            "``",
        ] {
            assert!(!page.contains(word), "{name}: {word}\n{page}");
        }
    }
    assert!(framegauge::plan::State::iter().count() > 5);
}
