//! Real questions, restated as numbers: each is put to the library and its answer held against what a right answer must say.
//!
//! `cases.csv` is a log of questions that mechanics asked. `core` cases have numbers and an ending; `extra` cases lack one of
//! them, and there the right answer is the honest undecided one with the next step. A published figure that a check compares
//! with is named beside it; sums of the log's own readings are arithmetic.

mod brakes;
mod presses;
mod seats;
mod threads;

use framegauge::judge::{Fit, MemberOf, Verdict};
use framegauge::measure::{Outcome, Reading};
use framegauge::standard::{Joint, Tables};
use framegauge::{Error, ErrorKind, Length, parse_length};

/// One line of the log.
#[derive(Debug, Clone, serde::Deserialize, serde::Serialize)]
pub struct Case {
    pub id: String,
    pub topic: String,
    pub inputs_mm: String,
    pub expected_verdict: String,
    pub certainty: String,
    pub difficulty: String,
    pub tier: String,
}

/// What the library said to one case, and what was checked of it.
#[derive(Debug, Clone, Default, serde::Serialize)]
pub struct Run {
    /// The library's sentences.
    pub says: Vec<String>,
    /// Each check and whether it held.
    pub checks: Vec<(String, bool)>,
    /// Why we do not decide, and what to measure next; empty when we do.
    pub open: Vec<String>,
    /// Where the log's own answer disagrees with the published figures.
    pub log_differs: Option<&'static str>,
}

impl Run {
    /// Notes a check.
    pub fn check(&mut self, what: impl Into<String>, held: bool) {
        self.checks.push((what.into(), held));
    }
    /// Notes what a verdict says, and checks its outcome.
    pub fn outcome(&mut self, verdict: &Verdict, wanted: Outcome) {
        self.says
            .push(format!("{}: {}", verdict.outcome.words(), verdict.words()));
        self.check(
            format!("{} is {wanted}", verdict.place),
            verdict.outcome == wanted,
        );
        if verdict.outcome == Outcome::Undecided {
            self.open
                .extend(verdict.next.iter().map(ToString::to_string));
            self.check(
                format!("{} names a next step", verdict.place),
                !verdict.next.is_empty(),
            );
        }
    }
    /// Checks a worked-out length, to a micrometre.
    pub fn length(&mut self, verdict: &Verdict, what: &str, wanted: f64) {
        let got = verdict.millimetres(what);
        self.check(
            format!("{what} {wanted} mm, got {got:?}"),
            got.is_some_and(|g| (g - wanted).abs() < 0.0011),
        );
    }
    /// Checks that a verdict finds a fact of this code.
    pub fn finds(&mut self, verdict: &Verdict, code: &str) {
        let found = verdict.findings.iter().any(|f| f.fact.code() == code);
        self.check(format!("finds `{code}`"), found);
    }
    /// Checks that a sentence says something.
    pub fn says(&mut self, text: &str, part: &str) {
        self.check(format!("says `{part}`"), text.contains(part));
    }
    /// Right, wrong, or undecidable by us.
    pub fn result(&self) -> &'static str {
        if self.checks.iter().any(|(_, held)| !held) {
            "wrong"
        } else if self.open.is_empty() {
            "right"
        } else {
            "undecidable"
        }
    }
}

type Runner = fn(&mut Run) -> Result<(), Error>;

/// The log and, for each line, the questions it puts to the library.
pub fn all() -> Vec<(Case, Option<Runner>)> {
    let mut log = csv::Reader::from_reader(include_str!("cases.csv").as_bytes());
    log.deserialize::<Case>()
        .filter_map(Result::ok)
        .map(|case| {
            let runner = threads::RUNNERS
                .iter()
                .chain(presses::RUNNERS)
                .chain(seats::RUNNERS)
                .chain(brakes::RUNNERS)
                .find(|(id, _)| *id == case.id)
                .map(|(_, runner)| *runner);
            (case, runner)
        })
        .collect()
}

/// Puts one case to the library.
pub fn run(runner: Option<Runner>) -> Run {
    let mut out = Run::default();
    match runner {
        None => out.check("the case is put to the library", false),
        Some(runner) => {
            if let Err(error) = runner(&mut out) {
                out.check(format!("no error ({error})"), false);
            }
        }
    }
    out
}

/// Our tables.
const OURS: Tables<'static> = Tables::ours();

/// A fit of which both members were read once.
fn fit(joint: Joint, hole: Reading, shaft: Reading) -> Fit {
    Fit {
        joint: Some(joint),
        hole: MemberOf::read(hole),
        shaft: MemberOf::read(shaft),
        ..Fit::default()
    }
}

/// A reading from its text.
fn read(text: &str) -> Result<Reading, Error> {
    text.parse()
}

/// A length from its text.
fn length(text: &str) -> Result<Length, Error> {
    parse_length(text)
}

/// What should be there and is not.
fn missing(what: &'static str) -> Error {
    Error::new(ErrorKind::Missing, what, "", "not there", "see the case")
}
