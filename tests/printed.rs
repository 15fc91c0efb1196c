//! What the examples print: three pages as they are read, and of everything else the codes and numbers.
//!
//! `tests/printed/*.txt` are one bench page, one plan with its reasons and one record: the first line is the command, the
//! second its exit code, the rest what is printed. `tests/printed/facts/examples.txt` holds what every example answers to a
//! program. `UPDATE_PINNED=1 cargo test --test printed` rewrites them: read the difference as the mechanic would before
//! committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod guard_support;
mod run_example;

use std::path::Path;

use guard_support::{Page, bare, flat, same_as_committed};
use run_example::{example, run};
use serde_json::Value;

const ROOT: &str = env!("CARGO_MANIFEST_DIR");

#[test]
fn three_pages_as_they_are_read() {
    const SHEET: &str = "$ cargo run --example prepare_frame -- examples/frames";
    for (file, command) in [
        ("bench", format!("{SHEET}/aluminium_trekking.toml")),
        ("why", format!("{SHEET}/aluminium_trekking.toml --why")),
        (
            "record",
            format!("{SHEET}/painted_steel_after.toml --record markdown"),
        ),
    ] {
        let (_, exit, text) = run(&command, &[]);
        same_as_committed(
            &format!("printed/{file}.txt"),
            &format!("{command}\nexit {exit}\n{text}"),
        );
    }
}

/// Every example answers a person and a program alike: with the same exit code, and the program by codes and numbers.
#[test]
fn every_example_answers() {
    let mut page = Page::new();
    let mut ran = std::collections::BTreeSet::new();
    for command in COMMANDS {
        let (name, exit, text) = run(command, &[]);
        let (_, code, json) = run(command, &["--json"]);
        assert!(!text.trim().is_empty(), "{command}");
        assert_eq!(exit, code, "{command}\n{text}\n{json}");
        page.title(command);
        page.line(&format!("exit {exit}"));
        match serde_json::from_str::<Value>(&json) {
            Ok(told) => {
                assert_eq!(told["acceptable"], exit == 0, "{command}");
                page.fields(&told["answer"]);
            }
            Err(_) => assert_eq!(exit, 2, "{command}: no JSON\n{json}"),
        }
        ran.insert(name);
    }
    page.check("printed/facts/examples.txt");
    // No example goes unrun, except those that answer a stream or have tests of their own.
    for entry in std::fs::read_dir(Path::new(ROOT).join("examples")).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        if path.extension().is_some_and(|e| e == "rs") {
            let own = ["ask", "cases", "coverage", "prepare_frame"];
            assert!(
                ran.contains(&name) || own.contains(&&*name),
                "the example {name} is not run"
            );
        }
    }
}

#[rustfmt::skip]
const COMMANDS: &[&str] = &[
    r#"bore_shape --error "0.010 mm" --min "43.95 mm" --max "44.00 mm" "0 deg, 5 mm: 43.97 mm" "90 deg, 5 mm: 43.98 mm""#,
    r#"brake_mount --error "0.008 mm" --pad-length "25 mm" --clearance "0.2 mm" "upper: -37 mm, -6 mm, 0 mm" "upper: -37 mm, 6 mm, 0.08 mm" "lower: 37 mm, -6 mm, 0 mm" "lower: 37 mm, 6 mm, 0.07 mm""#,
    r#"face_ring --inner "34 mm" --outer "42 mm" --probed "40 mm" --error "0.008 mm" --square "0.05 mm" --limit "least width=0.40 mm" "0.150 mm" "0.110 mm" "0.030 mm" "0.020 mm" "0.090 mm""#,
    r#"fit_between "42 N7/h6""#,
    r#"fit_between --bore "29.92 +/- 0.01 mm" --shaft "30.02 +/- 0.01 mm" --interference "at most 0.10 mm""#,
    r#"judge_interface fit joint=crown_race "hole.readings=29.92 +/- 0.03 mm" "shaft.readings=30.02 +/- 0.03 mm""#,
    r#"judge_interface insertion "post=27.2 mm" "weld=50 mm" "inserted=95 +/- 1 mm""#,
    r#"judge_interface ream "outside=31.7 +/- 0.05 mm" "bore=29.7 +/- 0.05 mm" "to=30.1 mm""#,
    r#"judge_interface shim "bore=27.40 +/- 0.02 mm" "post=27.00 +/- 0.02 mm" "nominal=27.2 mm" "clearance=0 to 0.1 mm""#,
    r#"prepare_frame examples/frames/none_such.toml"#,
    r#"press_cup --cup "44.05 +/- 0.005 mm" --bore "43.98 +/- 0.005 mm" --tube "50 mm" --cup-bore "41 mm" --length "10 mm" --tube-material "6061-T6, metal, 68.9 GPa, 0.33, 276 MPa" --cup-material "6061-T6, metal, 68.9 GPa, 0.33, 276 MPa" --friction "0.06 0.15""#,
    r#"rescue_thread joint=head_cup loose --hole "34.06 +/- 0.01 mm" --part "34.00 +/- 0.01 mm" --press "0.05 mm" --compound "0.10 mm""#,
    r#"rescue_thread M10x1 stripped --outside "18 +/- 0.2 mm""#,
    r#"rescue_thread shell=bsc drive stripped --to "36 mm x 24 tpi" --outside "40 +/- 0.1 mm""#,
    r#"rescue_thread symptom=jams_after_turns"#,
    r#"thread_limits M10x1-6H"#,
    r#"thread_limits "1/2-20 UNF-2B""#,
    r#"thread_mismatch M35x1 "1.370 in x 24 tpi BSC LH""#,
    r#"thread_strength M5x0.8 "8 mm" --screw 800 --hole 275 --shear 0.6 --hole-depth "10 mm""#,
    r#"which_hand bsc drive"#,
    r#"which_hand pedal"#,
    r#"which_standard shell "bore=33.7 +/- 0.05 mm" "width=68.1 +/- 0.1 mm""#,
    r#"which_standard shell "bore=33.9 +/- 0.05 mm" "pitch=1 mm" hand_drive=left label=BSA"#,
];

/// Every page of every sheet can be printed, its exit code says whether anything is open, and what is planned is held: how
/// each place stands, what is done there and by how much, what is asked.
#[test]
fn every_sheet_in_every_form() {
    let mut page = Page::new();
    let mut sheets: Vec<_> = std::fs::read_dir(Path::new(ROOT).join("examples/frames"))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .collect();
    sheets.sort();
    assert!(sheets.len() > 10);
    for sheet in sheets {
        let name = sheet.file_name().unwrap().to_string_lossy();
        let command = format!("prepare_frame examples/frames/{name}");
        let (_, exit, bench) = run(&command, &[]);
        assert!([0, 1].contains(&exit) && !bench.is_empty(), "{command}");
        for more in [&["--why"][..], &["--measure"], &["--json"]] {
            let (_, code, text) = run(&command, more);
            assert_eq!(code, exit, "{command} {more:?}");
            assert!(!text.is_empty() && text != bench, "{command} {more:?}");
        }
        for form in ["text", "markdown", "html"] {
            let (_, code, text) = run(&command, &["--record", form]);
            assert!(
                [0, 1].contains(&code) && !text.is_empty(),
                "{command} {form}"
            );
        }
        page.title(&name);
        page.line(&format!("exit {exit}"));
        let told: Value = serde_json::from_str(&run(&command, &["--json"]).2).unwrap();
        planned(&mut page, &bare(told["answer"].clone()));
    }
    page.check("printed/facts/plans.txt");
}

/// The decisions of a plan, a line each.
fn planned(page: &mut Page, plan: &Value) {
    let list = |of: &Value| of.as_array().cloned().unwrap_or_default();
    let codes = |of: &Value| {
        let codes: Vec<String> = list(of).iter().map(|fact| flat(&fact["code"])).collect();
        codes.join(" ")
    };
    for place in list(&plan["places"]) {
        page.line(&format!(
            "{}: {} | leave {} | against {}",
            flat(&place["place"]),
            flat(&place["state"]),
            codes(&place["leave"]),
            codes(&place["contradictions"])
        ));
    }
    for step in list(&plan["steps"]) {
        let stop = |stop: &Value| format!("{} {}", flat(&stop["limit"]), flat(&stop["to_go_mm"]));
        let stops: Vec<String> = list(&step["stops"]).iter().map(stop).collect();
        page.line(&format!(
            "{}. {} {} {} | off {} | stops {} | after {} | waits {}",
            step["number"],
            flat(&step["operation"]),
            flat(&step["place"]),
            flat(&step["task"]["code"]),
            flat(&step["off"]),
            stops.join("; "),
            codes(&step["after"]),
            flat(&step["waits_for"])
        ));
    }
    for asked in list(&plan["questions"]) {
        let (field, ask) = (flat(&asked["answer"]), flat(&asked["ask"]["code"]));
        page.line(&format!("Q{} {field} {ask}", asked["number"]));
    }
    page.line(&format!("minding {}", codes(&plan["cautions"])));
}

/// The log of real questions and the count of figures: what they count is checked by `cases` and `readme`.
#[test]
fn logs_and_counts_are_printed() {
    let (_, exit, text) = run("cases", &[]);
    assert_eq!(exit, 0, "{text}");
    for command in [
        "coverage",
        "coverage --memory",
        "coverage --unknown",
        "coverage --disputed",
    ] {
        let (_, exit, text) = run(command, &[]);
        assert_eq!(exit, 0, "{text}");
        assert!(text.lines().count() > 10, "{command}\n{text}");
    }
}

/// What the README shows below a command is what the command prints.
#[test]
fn the_readme_shows_what_is_printed() {
    let readme = std::fs::read_to_string(Path::new(ROOT).join("README.md")).unwrap();
    // How many fences stand between the marker and the block: one from prose, two from a command in its own block.
    for (marker, fences, command) in [
        (
            "Part of what the first command prints",
            1,
            "prepare_frame examples/frames/aluminium_trekking.toml",
        ),
        (
            "which_standard -- shell",
            2,
            "which_standard shell \"bore=33.7 +/- 0.05 mm\" \"width=68.1 +/- 0.1 mm\"",
        ),
    ] {
        let after = readme
            .split_once(marker)
            .unwrap_or_else(|| panic!("README: {marker}"))
            .1;
        let shown = after.split("```").nth(fences).unwrap();
        let whole = run(command, &[]).2;
        let mut lines = shown
            .lines()
            .map(str::trim)
            .filter(|l| !l.is_empty() && *l != "…")
            .peekable();
        assert!(lines.peek().is_some(), "README: nothing after {marker}");
        for line in lines {
            assert!(
                whole.contains(line),
                "{command} does not print what the README shows: {line}\n{whole}"
            );
        }
    }
}

/// The face that the README shows is the one that is drawn.
#[test]
fn the_picture_of_the_readme_is_drawn_anew() {
    let root = Path::new(ROOT);
    let folder = std::env::temp_dir().join(format!("framegauge-pictures-{}", std::process::id()));
    let ran = std::process::Command::new(example("prepare_frame"))
        .current_dir(root)
        .args(["examples/frames/aluminium_trekking.toml", "--pictures"])
        .arg(&folder)
        .output()
        .unwrap();
    assert_eq!(ran.status.code(), Some(0));
    let drawn = std::fs::read_to_string(folder.join("shell_drive_face_before.svg")).unwrap();
    std::fs::remove_dir_all(&folder).unwrap();
    let name = "examples/frames/aluminium_trekking_drive_face.svg";
    assert!(
        std::fs::read_to_string(root.join("README.md"))
            .unwrap()
            .contains(name)
    );
    same_as_committed(&format!("../{name}"), &drawn);
}
