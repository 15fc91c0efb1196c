//! Answers as readable lines, compared with a committed file: a guard against change, no evidence.
//!
//! `UPDATE_PINNED=1 cargo test --test face_guard --test fit_guard` rewrites the files: read the difference first.
#![allow(dead_code, reason = "each test file uses a part")]

#[path = "../committed/mod.rs"]
mod committed;

pub use committed::same_as_committed;
use serde_json::{Map, Value};

/// Whether a text is told to a person: its facts stand beside it, so only they are held.
fn told(key: &str, text: &str) -> bool {
    let words = text
        .split_whitespace()
        .filter(|word| word.chars().filter(|c| c.is_alphabetic()).count() > 1);
    matches!(key, "words" | "sentence" | "with" | "message" | "remedy")
        || (matches!(key, "why" | "about") && text.contains(' '))
        || words.count() > 3
}

/// A value without what is only told, and without the rows it was read from: codes, outcomes, numbers, names.
pub fn bare(value: Value) -> Value {
    // Nearly every decision goes by this rule; only another is told.
    let usual = framegauge::measure::DecisionRule::default().to_string();
    fn strip(key: &str, value: Value, usual: &str) -> Option<Value> {
        match value {
            // How many probes to set, or how deep: what is only told here still holds its numbers.
            Value::String(text) if key == "measure" => {
                let numbers = text.split(|c: char| !c.is_ascii_digit() && c != '.');
                let numbers: Vec<&str> = numbers.filter(|n| n.parse::<f64>().is_ok()).collect();
                (!numbers.is_empty()).then(|| Value::String(numbers.join(" ")))
            }
            Value::String(text) if told(key, &text) || (key == "rule" && text == usual) => None,
            _ if matches!(key, "sources" | "says") => None,
            Value::Array(all) => {
                let count = all.len();
                let left: Vec<Value> = all
                    .into_iter()
                    .filter_map(|v| strip(key, v, usual))
                    .collect();
                Some(match left.is_empty() {
                    true if count > 0 => Value::from(count),
                    _ => Value::Array(left),
                })
            }
            Value::Object(fields) => {
                let left: Map<String, Value> = fields
                    .into_iter()
                    .filter_map(|(k, v)| strip(&k, v, usual).map(|v| (k, v)))
                    .collect();
                Some(Value::Object(left))
            }
            other => Some(other),
        }
    }
    strip("", value, &usual).unwrap_or(Value::Null)
}

/// One line of what serializes: `name { field value, field value }`, lists in square brackets.
pub fn flat(value: &Value) -> String {
    match value {
        Value::Null => "-".into(),
        Value::String(text) => text.clone(),
        Value::Array(all) => format!("[{}]", all.iter().map(flat).collect::<Vec<_>>().join("; ")),
        Value::Object(fields) => {
            // Which fields there are is held by the schema of `ask`; here what is not there takes no room.
            let fields: Vec<String> = fields
                .iter()
                .filter(|(_, v)| !v.is_null())
                .map(|(k, v)| format!("{k} {}", flat(v)))
                .collect();
            format!("{{{}}}", fields.join(", "))
        }
        other => other.to_string(),
    }
}

/// A refusal: kind, field and value. What is wrong and what to do about it must be said, each in its own words.
pub fn refused(error: &framegauge::Error) -> String {
    assert!(
        !error.problem().is_empty() && !error.remedy().is_empty(),
        "{error}"
    );
    format!("{} / {} / {}", error.kind(), error.field(), error.value())
}

/// The file a topic is written to.
pub struct Page(String);

impl Page {
    pub fn new() -> Self {
        Self(
            "# A guard against change, no evidence. Everything measured is invented. Rewritten by UPDATE_PINNED=1.\n"
                .into(),
        )
    }
    pub fn title(&mut self, words: &str) {
        self.0.push_str(&format!("\n== {words}\n"));
    }
    pub fn line(&mut self, words: &str) {
        self.0.push_str(words.trim_end());
        self.0.push('\n');
    }
    /// Every field on a line of its own; one that grows too long is split once more.
    pub fn fields(&mut self, of: &impl serde::Serialize) {
        self.split("", &bare(serde_json::to_value(of).unwrap()));
    }
    fn split(&mut self, before: &str, value: &Value) {
        let line = flat(value);
        match value {
            Value::Object(fields) if before.is_empty() || line.len() > 150 => {
                for (key, inner) in fields {
                    let name = if before.is_empty() {
                        key.clone()
                    } else {
                        format!("{before}.{key}")
                    };
                    self.split(&name, inner);
                }
            }
            Value::Array(all) if line.len() > 150 => {
                for (index, inner) in all.iter().enumerate() {
                    self.split(&format!("{before}.{index}"), inner);
                }
            }
            _ => self.line(&format!("{before}: {line}")),
        }
    }
    /// A value with its name, on one line; errors too.
    pub fn said<T: serde::Serialize>(&mut self, name: &str, said: Result<T, framegauge::Error>) {
        match said {
            Ok(value) => {
                let line = flat(&bare(serde_json::to_value(value).unwrap()));
                self.line(&format!("{name}: {line}"));
            }
            Err(error) => self.line(&format!("{name}: {}", refused(&error))),
        }
    }
    pub fn check(self, name: &str) {
        same_as_committed(name, &self.0);
    }
}
