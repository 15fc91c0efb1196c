//! A page of a drawing: the few shapes it needs, as SVG text.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::allowance::{Caps, LimitName};
use crate::quantity::{mm, settled, settled_mm};

/// A page under construction, in millimetres.
pub(crate) struct Page {
    body: String,
    height: f64,
}

pub(crate) const WIDTH: f64 = 160.0;
const MARGIN: f64 = 8.0;
const LINE: f64 = 5.0;

/// Text that is safe inside an element.
fn safe(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
}

/// Two decimals of a millimetre on paper are finer than print.
pub(crate) fn n(value: f64) -> f64 {
    settled(value, 100.0)
}

impl Page {
    pub(crate) const fn new() -> Self {
        Self {
            body: String::new(),
            height: 0.0,
        }
    }
    pub(crate) fn add(&mut self, element: &str) {
        self.body.push_str("  ");
        self.body.push_str(element);
        self.body.push('\n');
    }
    pub(crate) fn text(&mut self, x: f64, y: f64, size: f64, anchor: &str, words: &str) {
        self.add(&format!(
            "<text x=\"{}\" y=\"{}\" font-size=\"{size}\" text-anchor=\"{anchor}\">{}</text>",
            n(x),
            n(y),
            safe(words)
        ));
    }
    pub(crate) fn line(&mut self, from: (f64, f64), to: (f64, f64), style: &str) {
        self.add(&format!(
            "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\" {style}/>",
            n(from.0),
            n(from.1),
            n(to.0),
            n(to.1)
        ));
    }
    pub(crate) fn circle(&mut self, at: (f64, f64), radius: f64, style: &str) {
        self.add(&format!(
            "<circle cx=\"{}\" cy=\"{}\" r=\"{}\" {style}/>",
            n(at.0),
            n(at.1),
            n(radius)
        ));
    }
    pub(crate) fn path(&mut self, d: &str, style: &str) {
        self.add(&format!("<path d=\"{d}\" {style}/>"));
    }
    /// A filled dot was touched, an open ring was not, a second ring marks the first contact, a cross the seat.
    pub(crate) fn mark(&mut self, at: (f64, f64), touched: bool, first: bool, seat: bool) {
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
    pub(crate) fn notes(&mut self, top: f64, lines: &[String]) {
        let mut y = top;
        for line in lines {
            for (part, words) in wrapped(line).into_iter().enumerate() {
                let indent = if part == 0 { 0.0 } else { 4.0 };
                self.text(MARGIN + indent, y, 3.4, "start", &words);
                y += LINE;
            }
        }
        self.height = y + MARGIN - LINE / 2.0;
    }
    pub(crate) fn finish(self, title: &str) -> String {
        let height = n(self.height);
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WIDTH}mm\" height=\"{height}mm\" viewBox=\"0 0 {WIDTH} {height}\" font-family=\"sans-serif\">\n  \
             <title>{}</title>\n  \
             <defs><pattern id=\"touched\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line x1=\"0\" y1=\"0\" x2=\"0\" y2=\"2\" stroke=\"black\" stroke-width=\"0.5\"/></pattern></defs>\n  \
             <rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n{}</svg>\n",
            safe(title),
            self.body
        )
    }
}

/// Breaks a line between words, so that it stays on the paper.
fn wrapped(line: &str) -> Vec<String> {
    const MOST: usize = 76;
    let mut parts: Vec<String> = Vec::new();
    for word in line.split_whitespace() {
        match parts.last_mut() {
            Some(part) if part.chars().count() + 1 + word.chars().count() <= MOST => {
                part.push(' ');
                part.push_str(word);
            }
            _ => parts.push(word.into()),
        }
    }
    parts
}

pub(crate) fn limits_in_words<N: LimitName, M: LimitName>(allowance: &Caps<N, M>) -> Vec<String> {
    let nearest = allowance.nearest();
    let mut lines = Vec::new();
    for limit in allowance.limits() {
        let mark = if nearest == Some(limit) {
            " (nearest)"
        } else {
            ""
        };
        lines.push(format!("Limit: {limit}{mark}"));
    }
    if lines.is_empty() {
        lines.push("Limits: none stated".into());
    }
    lines
}

/// Height above the lowest reading, signed against zero as read.
pub(crate) fn label(z: f64) -> String {
    format!("{:+.3}", settled_mm(mm(z)))
}
