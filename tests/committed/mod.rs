//! Text that a test wrote against the file that is committed for it.
//!
//! `UPDATE_PINNED=1 cargo test` rewrites the files: read the difference, as the mechanic would, before committing it.

use std::path::Path;

/// `file` is its path below `tests/`. The first line that differs is told, with the last `== title` before it.
pub fn same_as_committed(file: &str, text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests")
        .join(file);
    if std::env::var_os("UPDATE_PINNED").is_some() {
        std::fs::write(&path, text).unwrap();
        return;
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default();
    let mut title = "";
    let (mut old, mut new) = (committed.lines(), text.lines());
    for line in 1.. {
        let (was, is) = (old.next(), new.next());
        if let Some(words) = is.and_then(|is| is.strip_prefix("== ")) {
            title = words;
        }
        assert!(
            was == is,
            "tests/{file}, line {line}, \"{title}\"\n  committed: {}\n  now:       {}",
            was.unwrap_or("(end)"),
            is.unwrap_or("(end)")
        );
        if is.is_none() {
            break;
        }
    }
    assert!(text == committed, "tests/{file}: another end of line");
}
