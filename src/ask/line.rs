//! One line of JSON in, one line of JSON out.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};

use serde::{Deserialize, Serialize, Serializer};

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
#[derive(Debug, Clone, PartialEq)]
enum Id<'a> {
    None,
    Whole(i64),
    Large(u64),
    Text(Cow<'a, str>),
}

impl Serialize for Id<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::None => serializer.serialize_none(),
            Self::Whole(n) => serializer.serialize_i64(*n),
            Self::Large(n) => serializer.serialize_u64(*n),
            Self::Text(text) => serializer.serialize_str(text),
        }
    }
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
    fn before_the_break(line: &'a str) -> Self {
        let rest = line
            .trim_start()
            .strip_prefix('{')
            .and_then(|rest| rest.trim_start().strip_prefix("\"id\""))
            .and_then(|rest| rest.trim_start().strip_prefix(':'));
        rest.and_then(|rest| {
            let mut reader = serde_json::Deserializer::from_str(rest);
            Tree::deserialize(&mut reader).ok()
        })
        .and_then(|tree| Self::of(&tree))
        .unwrap_or(Self::None)
    }
}

#[derive(Serialize)]
struct AnswerLine<'a> {
    id: Id<'a>,
    answer: &'a Answer,
}

#[derive(Serialize)]
struct ErrorLine<'a> {
    id: Id<'a>,
    error: &'a Refusal,
}

fn refused(id: Id<'_>, refusal: &Refusal) -> Reply {
    let json = serde_json::to_string(&ErrorLine { id, error: refusal });
    Reply {
        // Numbers and texts always have a JSON form; this is here so that nothing can panic.
        json: json.unwrap_or_else(|_| String::from(r#"{"id":null,"error":{"kind":"text","field":"line","message":"cannot be written","remedy":"ask again"}}"#)),
        answered: false,
    }
}

fn line_error(
    kind: ErrorKind,
    problem: impl Into<Cow<'static, str>>,
    remedy: &'static str,
) -> Refusal {
    Error::new(kind, "line", "", problem, remedy).into()
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
    let bytes = line.as_ref();
    if bytes.len() > LONGEST_LINE {
        return refused(
            Id::None,
            &line_error(
                ErrorKind::TooLarge,
                format!("a line of more than {LONGEST_LINE} bytes"),
                "one question a line",
            ),
        );
    }
    let text = match core::str::from_utf8(bytes) {
        Ok(text) => text,
        Err(e) => {
            return refused(
                Id::None,
                &line_error(
                    ErrorKind::Text,
                    format!("not UTF-8 at byte {}", e.valid_up_to()),
                    "write the line in UTF-8",
                ),
            );
        }
    };
    if text.trim().is_empty() {
        return refused(
            Id::None,
            &line_error(
                ErrorKind::Missing,
                "an empty line",
                "write one question a line",
            ),
        );
    }
    let tree: Tree<'_> = match serde_json::from_str(text) {
        Ok(tree) => tree,
        Err(e) => {
            return refused(
                Id::before_the_break(text),
                &line_error(
                    ErrorKind::Text,
                    format!(
                        "not JSON: {}",
                        e.to_string().replace(" at line 1 column ", ", column ")
                    ),
                    "write one JSON object a line",
                ),
            );
        }
    };
    let id = match &tree {
        Tree::Fields(fields) => match fields.iter().find(|(key, _)| key == "id") {
            Some((_, id)) => match Id::of(id) {
                Some(id) => id,
                None => {
                    let error = Error::new(
                        ErrorKind::Text,
                        "id",
                        id.word(),
                        "an id is a short text or a whole number",
                        "number the lines, or leave the id out",
                    );
                    return refused(Id::None, &error.into());
                }
            },
            None => Id::None,
        },
        _ => Id::None,
    };
    let answer =
        Question::from_tree(tree, context.tables()).and_then(|question| question.answer(context));
    match answer {
        Ok(answer) => match serde_json::to_string(&AnswerLine {
            id: id.clone(),
            answer: &answer,
        }) {
            Ok(json) => Reply {
                json,
                answered: true,
            },
            Err(e) => refused(
                id,
                &line_error(
                    ErrorKind::NotApplicable,
                    format!("the answer has no JSON form: {e}"),
                    "ask for less",
                ),
            ),
        },
        Err(refusal) => refused(id, &refusal),
    }
}
