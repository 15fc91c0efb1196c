//! The paper of a drawing: the few shapes it needs, as SVG text.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::room::{Area, Spot};
use crate::evidence::escaped;
use crate::quantity::settled;

/// A page under construction, in millimetres.
pub(super) struct Page {
    body: String,
    /// Down to where it is written.
    end: f64,
}

pub(super) const WIDTH: f64 = 160.0;
const MARGIN: f64 = 8.0;
const INDENT: f64 = 4.0;
const RIGHT: f64 = 3.0;

/// Two decimals of a millimetre on paper are finer than print.
pub(super) fn n(value: f64) -> f64 {
    settled(value, 100.0)
}

impl Page {
    pub(super) const fn new() -> Self {
        Self {
            body: String::new(),
            end: MARGIN / 2.0,
        }
    }
    pub(super) fn add(&mut self, element: &str) {
        self.body.push_str("  ");
        self.body.push_str(element);
        self.body.push('\n');
    }
    pub(super) fn text(&mut self, x: f64, y: f64, size: f64, anchor: &str, words: &str) {
        self.add(&format!(
            "<text x=\"{}\" y=\"{}\" font-size=\"{size}\" text-anchor=\"{anchor}\">{}</text>",
            n(x),
            n(y),
            escaped(words)
        ));
    }
    pub(super) fn line(&mut self, from: (f64, f64), to: (f64, f64), style: &str) {
        self.add(&format!(
            "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\" {style}/>",
            n(from.0),
            n(from.1),
            n(to.0),
            n(to.1)
        ));
    }
    pub(super) fn circle(&mut self, at: (f64, f64), radius: f64, style: &str) {
        self.add(&format!(
            "<circle cx=\"{}\" cy=\"{}\" r=\"{}\" {style}/>",
            n(at.0),
            n(at.1),
            n(radius)
        ));
    }
    pub(super) fn path(&mut self, d: &str, style: &str) {
        self.add(&format!("<path d=\"{d}\" {style}/>"));
    }
    /// A filled dot was touched, an open ring was not, a second ring marks the highest, a cross the seat.
    pub(super) fn mark(&mut self, at: (f64, f64), touched: bool, first: bool, seat: bool) {
        let fill = if touched {
            "fill=\"black\""
        } else {
            "fill=\"white\""
        };
        self.circle(
            at,
            1.5,
            &format!("{fill} stroke=\"black\" stroke-width=\"0.4\""),
        );
        if first {
            self.circle(
                at,
                2.4,
                "fill=\"none\" stroke=\"black\" stroke-width=\"0.5\"",
            );
        }
        if seat {
            let (x, y) = at;
            let style = "stroke=\"black\" stroke-width=\"0.4\"";
            self.line((x - 3.4, y), (x + 3.4, y), style);
            self.line((x, y - 3.4), (x, y + 3.4), style);
        }
    }
    /// Lines of text below what stands there, broken between words so that they stay on the paper.
    pub(super) fn write(&mut self, size: f64, lines: &[String]) {
        for line in lines {
            for (part, words) in wrapped(line, size).into_iter().enumerate() {
                let indent = if part == 0 { 0.0 } else { INDENT };
                self.end += size * 1.45;
                self.text(MARGIN + indent, self.end, size, "start", &words);
            }
        }
    }
    /// Keeps a part of the paper free for a figure, and gives its middle line when the figure reaches so far up and down.
    pub(super) fn figure(&mut self, (top, bottom): (f64, f64)) -> f64 {
        const APART: f64 = 4.0;
        let middle = self.end + APART - top;
        self.end = middle + bottom + APART;
        middle
    }
    pub(super) fn finish(self, title: &str) -> String {
        let height = n(self.end + MARGIN);
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WIDTH}mm\" height=\"{height}mm\" viewBox=\"0 0 {WIDTH} {height}\" font-family=\"sans-serif\">\n  \
             <title>{}</title>\n  \
             <defs><pattern id=\"touched\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line x1=\"0\" y1=\"0\" x2=\"0\" y2=\"2\" stroke=\"black\" stroke-width=\"0.5\"/></pattern></defs>\n  \
             <rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n{}</svg>\n",
            escaped(title),
            self.body
        )
    }
}

/// How many letters a text has.
#[expect(clippy::cast_precision_loss, reason = "a count of letters")]
pub(super) fn letters(words: &str) -> f64 {
    words.chars().count() as f64
}

/// Breaks a line between words, and a word that is longer than the paper is wide.
fn wrapped(line: &str, size: f64) -> Vec<String> {
    let fits = |words: &str| letters(words) * 0.6 * size <= WIDTH - MARGIN - INDENT - RIGHT;
    let mut parts: Vec<String> = Vec::new();
    for word in line.split_whitespace() {
        let joined = parts.last().map(|part| format!("{part} {word}"));
        match (parts.last_mut(), joined) {
            (Some(part), Some(joined)) if fits(&joined) => *part = joined,
            _ => {
                let mut part = String::new();
                for letter in word.chars() {
                    part.push(letter);
                    if !fits(&part) {
                        part.pop();
                        parts.push(core::mem::replace(&mut part, letter.into()));
                    }
                }
                parts.push(part);
            }
        }
    }
    parts
}

/// What a mark takes.
pub(super) const fn mark_area(at: Spot, first: bool, seat: bool) -> Area {
    let reach = match (seat, first) {
        (true, _) => 3.4,
        (_, true) => 2.65,
        _ => 1.7,
    };
    Area::around(at, reach, reach)
}
