//! Judges one place. The first word names the question as `ask` does, the others are its fields as `name=value`; a name with a dot
//! lies inside another, and a name that is written several times is a list:
//!
//! - `judge_interface fit joint=crown_race "hole.readings=29.92 +/- 0.03 mm" "shaft.readings=30.02 +/- 0.03 mm"`
//! - `judge_interface depth "bore_depth=9 +/- 0.1 mm" "insertion=12 +/- 0.1 mm"`
//! - `judge_interface insertion "post=27.2 mm" "weld=50 mm" "inserted=95 +/- 1 mm"`
//! - `judge_interface ream "outside=31.7 +/- 0.05 mm" "bore=29.7 +/- 0.05 mm" "to=30.1 mm"`
//! - `judge_interface shim "bore=27.40 +/- 0.02 mm" "post=27.00 +/- 0.02 mm" "nominal=27.2 mm" "clearance=0 to 0.1 mm"`
//! - `judge_interface spindle_width "width=71 +/- 0.1 mm" "made_for=68 mm"`
//!
//! Exit 0: conformity shown; 1: not, or undecided; 2: no sense in the question.

mod support;

use std::process::ExitCode;

use framegauge::ask::{Context, Question, forms};
use framegauge::measure::Outcome;
use framegauge::read::Tree;
use framegauge::standard::Tables;
use framegauge::{Error, ErrorKind};
use support::{Answer, Words, answer};

type Fields<'a> = Vec<(std::borrow::Cow<'a, str>, Tree<'a>)>;

/// A value as it is written: a number, yes or no, or a text.
fn value(text: &str) -> Tree<'_> {
    match text {
        "true" => Tree::YesNo(true),
        "false" => Tree::YesNo(false),
        other => other
            .parse()
            .map_or_else(|_| Tree::Text(other.into()), Tree::Number),
    }
}

/// Puts a value under its name; a second one of that name makes a list.
fn put<'a>(fields: &mut Fields<'a>, name: &'a str, given: Tree<'a>) {
    let (first, rest) = name.split_once('.').unwrap_or((name, ""));
    let at = fields.iter().position(|(known, _)| known == first);
    match (at.and_then(|at| fields.get_mut(at)), rest) {
        (Some((_, Tree::Fields(inner))), rest) if !rest.is_empty() => put(inner, rest, given),
        (Some((_, Tree::List(list))), _) => list.push(given),
        (Some((_, known)), _) => {
            let before = std::mem::replace(known, Tree::Null);
            *known = Tree::List(vec![before, given]);
        }
        (None, "") => fields.push((first.into(), given)),
        (None, rest) => {
            let mut inner = Vec::new();
            put(&mut inner, rest, given);
            fields.push((first.into(), Tree::Fields(inner)));
        }
    }
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&[], &[])?;
    let name = words.at(0, "question", "depth \"bore_depth=9 +/- 0.1 mm\"")?;
    let mut fields: Fields<'_> = vec![("ask".into(), Tree::Text(name.into()))];
    for (field, text) in words.plain().iter().filter_map(|w| w.split_once('=')) {
        put(&mut fields, field, value(text));
    }
    let told = Question::from_tree(Tree::Fields(fields), Tables::ours())
        .and_then(|question| question.answer(&Context::default()))
        .map_err(|refusal| refusal.first().clone())?;
    let Some(said) = told.verdict() else {
        let names: Vec<&str> = forms().iter().map(|form| form.name).collect();
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "question",
            name,
            "gives no verdict on one place",
            format!("put it to `ask`; questions are {}", names.join(", ")),
        ));
    };
    Ok(Answer::new(
        said,
        said.to_string(),
        said.outcome == Outcome::ConformityShown,
    ))
}

fn main() -> ExitCode {
    answer(run)
}
