//! Text of a person that can do no harm where it is printed.

use alloc::string::String;

/// What becomes of a character: control characters and marks that turn the direction of writing become blanks.
fn tame(c: char) -> char {
    let turns = matches!(c,
        '\u{200e}' | '\u{200f}' | '\u{061c}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{2028}' | '\u{2029}');
    // What XML does not allow is no text either.
    let none = matches!(c, '\u{fffe}' | '\u{ffff}');
    if c.is_control() || turns || none {
        ' '
    } else {
        c
    }
}

/// A text on one line, without characters that steer a terminal or turn the writing.
pub(crate) fn one_line(text: &str) -> String {
    text.chars().map(tame).collect()
}

/// A text that cannot be taken for markup, in an element or an attribute.
pub(crate) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars().map(tame) {
        match c {
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '&' => out.push_str("&amp;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            other => out.push(other),
        }
    }
    out
}
