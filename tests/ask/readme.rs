//! The lines that the README and the guide show are true: every question is answered with what is printed below it.

use std::collections::BTreeSet;

use framegauge::ask::{Context, answer_line, forms};

/// Names of the questions shown in a text, after each was asked.
fn shown_in<'t>(page: &str, text: &'t str) -> BTreeSet<&'t str> {
    let mut lines = text
        .lines()
        .map(|line| line.trim_start_matches("//! "))
        .peekable();
    let mut shown = BTreeSet::new();
    while let Some(line) = lines.next() {
        let asked = line
            .strip_prefix("{\"id\":")
            .and_then(|rest| rest.split_once("\"ask\":\""));
        let Some((name, _)) = asked.and_then(|(_, rest)| rest.split_once('"')) else {
            continue;
        };
        // One question may stand alone, as the form of a line.
        let part = lines.peek().map_or("", |next| next.trim());
        if part == "```" {
            continue;
        }
        assert!(!part.is_empty(), "{page}: no answer below {line}");
        let reply = answer_line(line, &Context::default()).json;
        assert!(
            reply.contains(part),
            "{line}\n{page}: {part}\nanswer: {reply}"
        );
        shown.insert(name);
    }
    shown
}

#[test]
fn every_line_of_the_readme_and_of_the_guide() {
    let readme = shown_in("README.md", include_str!("../../README.md"));
    assert!(readme.len() >= 4, "the README shows {readme:?}");
    let guide = shown_in("guide", include_str!("../../src/guide/script.rs"));
    let all: BTreeSet<&str> = forms().iter().map(|form| form.name).collect();
    assert_eq!(guide, all, "one line of each question in the guide");
}
