//! Lines on paper, and text of a sheet that can do no harm there.

use alloc::string::String;

/// Width of a line on paper.
const LINE: usize = 100;

/// A text of a sheet on one line: control characters and marks that turn the direction of writing become blanks.
pub(super) fn safe(text: &str) -> String {
    text.chars()
        .map(|c| {
            let turns = matches!(c,
                '\u{200e}' | '\u{200f}' | '\u{061c}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{2028}' | '\u{2029}');
            if c.is_control() || turns { ' ' } else { c }
        })
        .collect()
}

/// A text that cannot break out of a cell of a Markdown table, nor be taken for markup.
pub(super) fn cell(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in safe(text).chars() {
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

/// Writes a text under a head, later lines indented.
pub(super) fn wrapped(out: &mut String, head: &str, text: &str) {
    let indent = head.len() - head.trim_start().len() + 4;
    let mut line = String::from(head);
    let mut empty = true;
    for word in safe(text).split_whitespace() {
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
