//! Checks `data/` and keeps the generated tables under `src/*/tables/` fresh.
//!
//! `UPDATE_TABLES=1 cargo test --test tables` rewrites them. See DEVELOPERS.md, "The path of a number".
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod families;
mod grid_counts;
mod grid_fit;
mod grid_thread;
mod rust;
mod schema;
mod thread_cite;

use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

/// A generated file: path from the package root, and its text before formatting.
struct Rendered {
    path: &'static str,
    text: String,
}

fn all() -> Vec<Rendered> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let (mut rendered, mut checks) = families::render(root);
    rendered.push(grid_counts::render(&root.join("data/grids"), &mut checks));
    for source in thread_cite::cited() {
        checks.cite_in_grid("thread_evidence.toml", &source);
    }
    families::unused_sources(&mut checks);
    assert!(
        checks.problems.is_empty(),
        "{} problems:\n{}",
        checks.problems.len(),
        checks.problems.join("\n")
    );
    rendered.extend(grid_fit::render());
    rendered.extend(grid_thread::render());
    rendered
}

/// Generated code is formatted like the rest.
fn formatted(text: &str) -> String {
    let mut child = Command::new("rustfmt")
        .args(["--edition", "2024", "--emit", "stdout"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("rustfmt is part of the toolchain");
    child
        .stdin
        .take()
        .unwrap()
        .write_all(text.as_bytes())
        .unwrap();
    let out = child.wait_with_output().unwrap();
    assert!(out.status.success(), "rustfmt refused generated code");
    String::from_utf8(out.stdout).unwrap()
}

#[test]
fn generated_tables_are_fresh() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let update = std::env::var_os("UPDATE_TABLES").is_some();
    let mut stale = Vec::new();
    for rendered in all() {
        let path = root.join(rendered.path);
        let fresh = formatted(&rendered.text);
        if std::fs::read_to_string(&path).unwrap_or_default() != fresh {
            if update {
                std::fs::write(&path, fresh).unwrap();
            }
            stale.push(rendered.path);
        }
    }
    assert!(
        update || stale.is_empty(),
        "stale: {stale:?}; run UPDATE_TABLES=1 cargo test --test tables"
    );
}
