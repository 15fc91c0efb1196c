//! The lines of the README are true: every question it prints is answered with what it prints below it.

use std::collections::BTreeSet;

use framegauge::ask::{Context, answer_line, forms};

#[test]
fn every_line_of_the_readme() {
    let readme = include_str!("../../README.md");
    let mut lines = readme.lines().peekable();
    let mut shown = BTreeSet::new();
    while let Some(line) = lines.next() {
        let Some(name) = line
            .strip_prefix("{\"id\":")
            .and_then(|rest| rest.split_once("\"ask\":\""))
            .and_then(|(_, rest)| rest.split_once('"'))
            .map(|(name, _)| name)
        else {
            continue;
        };
        let part = lines.next().unwrap().trim();
        assert!(!part.is_empty(), "{line}: the README shows no answer");
        let reply = answer_line(line, &Context::default()).json;
        assert!(
            reply.contains(part),
            "{line}\nREADME: {part}\nanswer: {reply}"
        );
        shown.insert(name);
    }
    let all: BTreeSet<&str> = forms().iter().map(|form| form.name).collect();
    assert_eq!(shown, all, "one line of each question");
}
