//! Lines on paper, and text of a sheet that can do no harm there.

use alloc::string::String;

use crate::evidence::one_line;

/// Width of a line on paper.
const LINE: usize = 100;

/// A text that cannot break out of a cell of a Markdown table, nor be taken for markup.
pub(super) fn cell(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in one_line(text).chars() {
        match c {
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '&' => out.push_str("&amp;"),
            '|' | '\\' | '`' | '*' | '[' | ']' | '#' => {
                out.push('\\');
                out.push(c);
            }
            other => out.push(other),
        }
    }
    out
}

/// Lines on paper, none longer than a line may be.
#[derive(Default)]
pub(super) struct Paper(String);

impl Paper {
    pub(super) fn line(&mut self, text: &str) {
        self.0.push_str(text);
        self.0.push('\n');
    }

    /// A title above what follows, once.
    pub(super) fn title(&mut self, title: &mut Option<&str>) {
        if let Some(title) = title.take() {
            self.line("");
            self.line(title);
        }
    }

    /// A remark of several lines, each behind its mark.
    pub(super) fn remark(&mut self, mark: &str, text: &str) {
        let mut lines = String::new();
        fill(&mut lines, "", text, 0);
        for line in lines.lines() {
            self.0.push_str(mark);
            self.line(line);
        }
    }

    /// A paragraph: later lines stand under the first word behind the head.
    pub(super) fn para(&mut self, head: &str, text: &str) {
        fill(&mut self.0, head, text, head.chars().count());
    }

    pub(super) fn done(self) -> String {
        self.0
    }
}

/// Several things in one line: `a, b and c`; names that hold commas themselves are parted by semicolons.
pub(super) fn list(names: &[String]) -> String {
    if names.iter().any(|name| name.contains(',')) {
        return names.join("; ");
    }
    match names {
        [all @ .., last] if !all.is_empty() => alloc::format!("{} and {last}", all.join(", ")),
        [only] => only.clone(),
        _ => String::new(),
    }
}

/// With a capital letter at the start.
pub(super) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(chars).collect()
    })
}

/// `1 place`, `3 places`.
pub(super) fn count(number: usize, noun: &str) -> String {
    alloc::format!("{number} {noun}{}", if number == 1 { "" } else { "s" })
}

/// Writes a text under a head, later lines indented.
pub(super) fn wrapped(out: &mut String, head: &str, text: &str) {
    fill(out, head, text, head.len() - head.trim_start().len() + 4);
}

fn fill(out: &mut String, head: &str, text: &str, indent: usize) {
    let mut line = String::from(head);
    let mut empty = true;
    for word in one_line(text).split_whitespace() {
        if !empty && line.chars().count() + 1 + word.chars().count() > LINE {
            out.push_str(line.trim_end());
            out.push('\n');
            line = " ".repeat(indent);
            empty = true;
        }
        if !empty {
            line.push(' ');
        }
        line.push_str(word);
        empty = false;
    }
    out.push_str(line.trim_end());
    out.push('\n');
}
