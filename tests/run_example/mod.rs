//! Runs an example by its command line, as a person types it.
#![allow(dead_code, reason = "each test file uses a part")]

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
pub fn example(name: &str) -> PathBuf {
    let tests = std::env::current_exe().unwrap();
    let folder = tests.parent().and_then(Path::parent).unwrap();
    folder.join("examples").join(name)
}

/// The name of the example, its exit code, and what it prints.
pub fn run(command: &str, more: &[&str]) -> (String, i32, String) {
    let line = command
        .trim_start_matches("$ ")
        .trim_start_matches("cargo run --example ");
    let mut parts = words(line).into_iter();
    let name = parts.next().unwrap();
    let ran = Command::new(example(&name))
        .args(parts.filter(|p| p != "--"))
        .args(more)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap_or_else(|e| panic!("{name}: {e}"));
    let text = format!(
        "{}{}",
        String::from_utf8_lossy(&ran.stdout),
        String::from_utf8_lossy(&ran.stderr)
    );
    (name, ran.status.code().unwrap_or(-1), text)
}
