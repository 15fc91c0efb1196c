//! Every example against its committed output in `tests/printed/`.
//!
//! The first line of a file is the command, as a person types it after `cargo run --example`; the second its exit code;
//! the rest is what it prints. `UPDATE_PRINTED=1 cargo test --test printed` rewrites them: read the difference as the
//! mechanic would before committing it.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::path::{Path, PathBuf};
use std::process::Command;

/// Words of a command line; double quotes hold a word together.
fn words(line: &str) -> Vec<String> {
    let mut out = Vec::new();
    let mut word = String::new();
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ' ' if !quoted => {
                if !word.is_empty() {
                    out.push(std::mem::take(&mut word));
                }
            }
            other => word.push(other),
        }
    }
    if !word.is_empty() {
        out.push(word);
    }
    out
}

/// Cargo builds the examples beside the tests.
fn example(name: &str) -> PathBuf {
    let tests = std::env::current_exe().unwrap();
    let folder = tests.parent().and_then(Path::parent).unwrap();
    folder.join("examples").join(name)
}

#[test]
fn examples_print_what_is_committed() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let folder = root.join("tests/printed");
    let update = std::env::var_os("UPDATE_PRINTED").is_some();
    let mut files: Vec<PathBuf> = std::fs::read_dir(&folder)
        .unwrap()
        .map(|f| f.unwrap().path())
        .collect();
    files.sort();
    let mut run_examples = std::collections::BTreeSet::new();
    let mut differ = Vec::new();
    for path in files {
        let committed = std::fs::read_to_string(&path).unwrap();
        let command = committed.lines().next().unwrap_or_default().to_owned();
        let mut parts = words(
            command
                .trim_start_matches("$ ")
                .trim_start_matches("cargo run --example "),
        )
        .into_iter();
        let name = parts.next().unwrap();
        let arguments: Vec<String> = parts.filter(|p| p != "--").collect();
        let ran = Command::new(example(&name))
            .args(&arguments)
            .current_dir(root)
            .output()
            .unwrap_or_else(|e| panic!("{name}: {e}"));
        run_examples.insert(name);
        let text = format!(
            "{command}\nexit {}\n{}{}",
            ran.status.code().unwrap_or(-1),
            String::from_utf8_lossy(&ran.stdout),
            String::from_utf8_lossy(&ran.stderr)
        );
        if text != committed {
            if update {
                std::fs::write(&path, &text).unwrap();
            } else {
                differ.push(format!("{}:\n{text}", path.display()));
            }
        }
    }
    assert!(
        differ.is_empty(),
        "{} differ\n{}",
        differ.len(),
        differ.join("\n")
    );
    // No example goes unrun, except those that answer a stream and have tests of their own.
    for entry in std::fs::read_dir(root.join("examples")).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        if path.extension().is_some_and(|e| e == "rs") && name != "ask" {
            assert!(
                run_examples.contains(&name),
                "no committed output for the example {name}"
            );
        }
    }
}

/// What the README shows of a plan and of an identification is what is printed.
#[test]
fn the_readme_shows_what_is_printed() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let read = |name: &str| std::fs::read_to_string(root.join(name)).unwrap();
    let readme = read("README.md");
    // How many fences stand between the marker and the block: one from prose, two from a command in its own block.
    for (marker, fences, printed) in [
        (
            "Part of what the first command prints",
            1,
            "plan_aluminium_trekking.txt",
        ),
        ("which_standard -- shell", 2, "which_standard.txt"),
    ] {
        let after = readme
            .split_once(marker)
            .unwrap_or_else(|| panic!("README: {marker}"))
            .1;
        let shown = after.split("```").nth(fences).unwrap();
        let whole = read(&format!("tests/printed/{printed}"));
        let mut lines = shown
            .lines()
            .map(str::trim)
            .filter(|l| !l.is_empty() && *l != "…")
            .peekable();
        assert!(lines.peek().is_some(), "README: nothing after {marker}");
        for line in lines {
            assert!(
                whole.contains(line),
                "{printed} does not hold what the README shows: {line}"
            );
        }
    }
}

/// The face that the README shows is the one that is drawn.
#[test]
fn the_picture_of_the_readme_is_drawn_anew() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let folder = std::env::temp_dir().join(format!("framegauge-pictures-{}", std::process::id()));
    let ran = Command::new(example("prepare_frame"))
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
    if std::env::var_os("UPDATE_PRINTED").is_some() {
        std::fs::write(root.join(name), drawn).unwrap();
    } else {
        let committed = std::fs::read_to_string(root.join(name)).unwrap();
        assert!(committed == drawn, "{name} is stale: UPDATE_PRINTED=1");
    }
}
