//! What every example shares: splitting words, the JSON envelope, exit codes. No math lives here.
//!
//! Exit codes: 0 answered and acceptable, 1 answered but not acceptable or undecided, 2 the question makes no sense.
#![allow(dead_code, reason = "each example uses a part")]

use std::io::Write;
use std::process::ExitCode;

use framegauge::{Error, ErrorKind};
use serde::Serialize;

/// The words of the command line: plain ones in order, `--name value` pairs, and bare `--flags`.
pub struct Words {
    plain: Vec<String>,
    named: Vec<(String, String)>,
    flags: Vec<String>,
}

impl Words {
    /// Splits the command line; `with_value` lists the names that take a value, `flags` those that do not.
    pub fn read(with_value: &[&str], flags: &[&str]) -> Result<Self, Error> {
        let mut words = Self {
            plain: Vec::new(),
            named: Vec::new(),
            flags: Vec::new(),
        };
        let mut rest = std::env::args().skip(1);
        while let Some(word) = rest.next() {
            match word.strip_prefix("--") {
                Some("json") => words.flags.push("json".to_owned()),
                Some(name) if with_value.contains(&name) => {
                    let value = rest.next().ok_or_else(|| {
                        Error::new(
                            ErrorKind::Missing,
                            format!("--{name}"),
                            "",
                            "a value is missing",
                            format!("write `--{name} VALUE`"),
                        )
                    })?;
                    words.named.push((name.to_owned(), value));
                }
                Some(name) if flags.contains(&name) => words.flags.push(name.to_owned()),
                Some(name) => {
                    let mut known: Vec<String> =
                        with_value.iter().map(|n| format!("--{n} VALUE")).collect();
                    known.extend(flags.iter().map(|n| format!("--{n}")));
                    known.push("--json".to_owned());
                    return Err(Error::new(
                        ErrorKind::UnknownField,
                        format!("--{name}"),
                        "",
                        "no such option",
                        format!("known: {}", known.join(", ")),
                    ));
                }
                None => words.plain.push(word),
            }
        }
        Ok(words)
    }

    /// The plain words.
    pub fn plain(&self) -> &[String] {
        &self.plain
    }

    /// The plain word at this place.
    pub fn at(&self, index: usize, what: &'static str, example: &str) -> Result<&str, Error> {
        self.plain.get(index).map(String::as_str).ok_or_else(|| {
            Error::new(
                ErrorKind::Missing,
                what,
                "",
                format!("{what} is missing"),
                format!("for example: {example}"),
            )
        })
    }

    /// The value of a named option.
    pub fn named(&self, name: &str) -> Option<&str> {
        self.named
            .iter()
            .rev()
            .find(|(n, _)| n == name)
            .map(|(_, v)| v.as_str())
    }

    /// Every value given for a named option, in order.
    pub fn all(&self, name: &str) -> Vec<&str> {
        self.named
            .iter()
            .filter(|(n, _)| n == name)
            .map(|(_, v)| v.as_str())
            .collect()
    }

    /// Whether a flag was given.
    pub fn flag(&self, name: &str) -> bool {
        self.flags.iter().any(|f| f == name)
    }
}

/// An answer: what a person reads, what a program reads, and whether it is acceptable.
pub struct Answer {
    pub text: String,
    pub json: serde_json::Value,
    pub acceptable: bool,
}

impl Answer {
    /// An answer from a serializable report and its text.
    pub fn new(report: &impl Serialize, text: String, acceptable: bool) -> Self {
        let json = serde_json::to_value(report)
            .unwrap_or_else(|e| serde_json::json!({ "error": e.to_string() }));
        Self {
            text,
            json,
            acceptable,
        }
    }
}

/// Prints the answer, or the error on stderr, and gives the exit code.
pub fn answer(run: impl FnOnce() -> Result<Answer, Error>) -> ExitCode {
    let as_json = std::env::args().any(|a| a == "--json");
    match run() {
        Ok(answer) => {
            let page = if as_json {
                format!(
                    "{:#}",
                    serde_json::json!({ "acceptable": answer.acceptable, "answer": answer.json })
                )
            } else {
                answer.text.trim_end().to_owned()
            };
            // A reader that stops early, such as `head`, is no fault.
            let _ = writeln!(std::io::stdout(), "{page}");
            ExitCode::from(u8::from(!answer.acceptable))
        }
        Err(error) => {
            if as_json {
                println!("{:#}", serde_json::json!({ "error": error }));
            }
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}
