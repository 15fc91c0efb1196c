//! One line of JSON in, one line of JSON out.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};

use serde::{Deserialize, Serialize};

use super::{Answer, Context, Question, Refusal};
use crate::read::Tree;
use crate::{Error, ErrorKind};

/// Longest line that is read: 1 MiB. A frame sheet takes a few thousand bytes.
///
/// ```
/// assert_eq!(framegauge::ask::LONGEST_LINE, 1_048_576);
/// ```
pub const LONGEST_LINE: usize = 1 << 20;

/// A reply: one line of JSON without its line break, and whether it is an answer.
///
/// ```
/// use framegauge::ask::{Context, answer_line};
/// assert!(!answer_line("", &Context::default()).answered);
/// ```
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reply {
    /// The line.
    pub json: String,
    /// True for an answer, false for an error.
    pub answered: bool,
}

/// What a line is called by: echoed as it came.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
enum Id<'a> {
    None,
    Whole(i64),
    Large(u64),
    Text(Cow<'a, str>),
}

/// Longest id that is echoed.
const LONGEST_ID: usize = 256;

impl<'a> Id<'a> {
    fn of(tree: &Tree<'a>) -> Option<Self> {
        match tree {
            Tree::Null => Some(Self::None),
            Tree::Whole(n) => Some(Self::Whole(*n)),
            Tree::Large(n) => Some(Self::Large(*n)),
            Tree::Text(text) if text.len() <= LONGEST_ID => Some(Self::Text(text.clone())),
            _ => None,
        }
    }

    /// The id of a line that is broken further on, where it stands first.
    fn before_the_break(line: &'a str) -> Option<Self> {
        let rest = line.trim_start().strip_prefix('{')?;
        let rest = rest.trim_start().strip_prefix("\"id\"")?;
        let mut reader = serde_json::Deserializer::from_str(rest.trim_start().strip_prefix(':')?);
        Self::of(&Tree::deserialize(&mut reader).ok()?)
    }
}

#[derive(Serialize)]
struct Line<'a> {
    id: Id<'a>,
    #[serde(flatten)]
    told: Told<'a>,
}

#[derive(Serialize)]
#[serde(rename_all = "snake_case")]
enum Told<'a> {
    Answer(&'a Answer),
    Error(&'a Refusal),
}

fn line_error(kind: ErrorKind, problem: String, remedy: &'static str) -> Refusal {
    Error::new(kind, "line", "", problem, remedy).into()
}

/// The line as a tree.
fn read(bytes: &[u8]) -> Result<Tree<'_>, (Id<'_>, Refusal)> {
    let nameless = |kind, problem, remedy| (Id::None, line_error(kind, problem, remedy));
    if bytes.len() > LONGEST_LINE {
        let problem = format!("a line of more than {LONGEST_LINE} bytes");
        let remedy = "one question a line";
        return Err(nameless(ErrorKind::TooLarge, problem, remedy));
    }
    let text = core::str::from_utf8(bytes).map_err(|e| {
        let problem = format!("not UTF-8 at byte {}", e.valid_up_to());
        nameless(ErrorKind::Text, problem, "write the line in UTF-8")
    })?;
    if text.trim().is_empty() {
        let (problem, remedy) = ("an empty line".into(), "write one question a line");
        return Err(nameless(ErrorKind::Missing, problem, remedy));
    }
    serde_json::from_str(text).map_err(|e| {
        let broken = e.to_string().replace(" at line 1 column ", ", column ");
        let remedy = "write one JSON object a line";
        let refusal = line_error(ErrorKind::Text, format!("not JSON: {broken}"), remedy);
        (Id::before_the_break(text).unwrap_or(Id::None), refusal)
    })
}

/// What a line is called by.
fn named<'a>(tree: &Tree<'a>) -> Result<Id<'a>, Error> {
    let Tree::Fields(fields) = tree else {
        return Ok(Id::None);
    };
    let Some((_, id)) = fields.iter().find(|(key, _)| key == "id") else {
        return Ok(Id::None);
    };
    Id::of(id).ok_or_else(|| {
        let problem = "an id is a short text or a whole number";
        let remedy = "number the lines, or leave the id out";
        Error::new(ErrorKind::Text, "id", id.word(), problem, remedy)
    })
}

/// What is written where nothing can be: numbers and texts always have a JSON form, so that nothing panics.
const UNWRITTEN: &str = r#"{"id":null,"error":{"kind":"text","field":"line","message":"cannot be written","remedy":"ask again"}}"#;

fn refused(id: Id<'_>, refusal: &Refusal) -> Reply {
    let told = Told::Error(refusal);
    let json = serde_json::to_string(&Line { id, told });
    let json = json.unwrap_or_else(|_| UNWRITTEN.into());
    Reply {
        json,
        answered: false,
    }
}

/// Answers one line. Anything that can be read gets a reply: an answer, or an error that says which field and what to do.
///
/// The line is JSON in UTF-8, without its line break; `id`, a text or a whole number, is echoed, in an error too where it
/// can be read. Lines do not depend on each other, so they may be answered in any order and on any number of threads.
///
/// ```
/// use framegauge::ask::{Context, answer_line};
/// let reply = answer_line(r#"{"id":4,"ask":"hand","shell":"bsc","side":"drive"}"#, &Context::default());
/// assert!(reply.json.starts_with(r#"{"id":4,"answer":{"#) && reply.json.contains(r#""hand":"left""#));
/// let reply = answer_line(r#"{"id":5,"ask":"fit_limits","nominal":42,"class":"N7"}"#, &Context::default());
/// assert!(reply.json.contains(r#""kind":"unit","field":"nominal""#));
/// ```
#[must_use]
pub fn answer_line(line: impl AsRef<[u8]>, context: &Context<'_>) -> Reply {
    let read = read(line.as_ref()).and_then(|tree| match named(&tree) {
        Ok(id) => Ok((id, tree)),
        Err(e) => Err((Id::None, e.into())),
    });
    let (id, tree) = match read {
        Ok(read) => read,
        Err((id, refusal)) => return refused(id, &refusal),
    };
    let question = Question::from_tree(tree, context.tables());
    let answer = match question.and_then(|question| question.answer(context)) {
        Ok(answer) => answer,
        Err(refusal) => return refused(id, &refusal),
    };
    let told = Told::Answer(&answer);
    match serde_json::to_string(&Line {
        id: id.clone(),
        told,
    }) {
        Ok(json) => Reply {
            json,
            answered: true,
        },
        Err(e) => {
            let problem = format!("the answer has no JSON form: {e}");
            refused(
                id,
                &line_error(ErrorKind::NotApplicable, problem, "ask for less"),
            )
        }
    }
}
