//! The JSON Schema of questions and answers, from the same declarations that read and write them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::ser::{Serialize, SerializeMap, Serializer};

use super::basis::COMMON;
use super::forms;
use crate::ErrorKind;
use crate::read::{Field, Form, Shape};

/// The schema of every question and answer; serializes as JSON Schema (draft 2020-12).
///
/// ```
/// let schema = serde_json::to_value(framegauge::ask::schema()).unwrap();
/// assert_eq!(schema["$defs"]["thread_limits_question"]["required"][0], "ask");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Schema(());

/// The schema of every question and answer.
///
/// ```
/// let text = serde_json::to_string(&framegauge::ask::schema()).unwrap();
/// assert!(text.contains("seatpost_for_tube_answer"));
/// ```
#[must_use]
pub const fn schema() -> Schema {
    Schema(())
}

/// Any piece of a schema.
enum Piece {
    Object(Vec<(String, Self)>),
    List(Vec<Self>),
    Text(String),
    YesNo(bool),
}

impl Serialize for Piece {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Object(fields) => {
                let mut map = serializer.serialize_map(Some(fields.len()))?;
                for (name, piece) in fields {
                    map.serialize_entry(name, piece)?;
                }
                map.end()
            }
            Self::List(items) => items.serialize(serializer),
            Self::Text(text) => serializer.serialize_str(text),
            Self::YesNo(value) => serializer.serialize_bool(*value),
        }
    }
}

fn text(value: &str) -> Piece {
    Piece::Text(value.into())
}
fn object<const N: usize>(fields: [(&str, Piece); N]) -> Piece {
    Piece::Object(
        fields
            .into_iter()
            .map(|(name, piece)| (name.into(), piece))
            .collect(),
    )
}
fn kind(name: &str) -> Piece {
    object([("type", text(name))])
}
fn reference(name: &str) -> Piece {
    object([("$ref", Piece::Text(format!("#/$defs/{name}")))])
}
fn words(list: Vec<String>) -> Piece {
    Piece::List(list.into_iter().map(Piece::Text).collect())
}

fn of(shape: &Shape) -> Piece {
    match shape {
        Shape::Text { what } => object([("type", text("string")), ("description", text(what))]),
        Shape::Number => kind("number"),
        Shape::Count => object([("type", text("integer"))]),
        Shape::YesNo => kind("boolean"),
        Shape::Word(list) => object([("type", text("string")), ("enum", words(list()))]),
        Shape::List(item) => object([("type", text("array")), ("items", of(item))]),
        Shape::Fields(fields) => fields_of(Vec::new(), fields),
        Shape::Form(form) => reference(form.name),
        Shape::Named(value) => object([
            ("type", text("object")),
            ("additionalProperties", of(value)),
        ]),
        Shape::Either(shapes) => object([("anyOf", Piece::List(shapes.iter().map(of).collect()))]),
        Shape::OrNull(shape) => {
            object([("anyOf", Piece::List(Vec::from([of(shape), kind("null")])))])
        }
        Shape::Report { what } => object([("type", text("object")), ("description", text(what))]),
    }
}

/// Every form that a shape speaks of, each once.
fn meet(shape: &Shape, met: &mut Vec<&'static Form>) {
    match shape {
        Shape::Form(form) => {
            if !met.iter().any(|known| known.name == form.name) {
                met.push(form);
                form.fields.iter().for_each(|field| meet(&field.shape, met));
            }
        }
        Shape::Fields(fields) => fields.iter().for_each(|field| meet(&field.shape, met)),
        Shape::List(inner) | Shape::Named(inner) | Shape::OrNull(inner) => meet(inner, met),
        Shape::Either(shapes) => shapes.iter().for_each(|shape| meet(shape, met)),
        Shape::Text { .. }
        | Shape::Number
        | Shape::Count
        | Shape::YesNo
        | Shape::Word(_)
        | Shape::Report { .. } => {}
    }
}

/// The piece of a field: its shape, with what it means.
fn described(field: &Field) -> Piece {
    match of(&field.shape) {
        Piece::Object(mut fields) => {
            fields.retain(|(name, _)| name != "description");
            let what = match &field.shape {
                Shape::Text { what } if *what != "text" => {
                    format!("{}: {what}", field.words.trim().trim_end_matches('.'))
                }
                Shape::Report { what } => {
                    format!("{}: {what}", field.words.trim().trim_end_matches('.'))
                }
                _ => field.words.trim().into(),
            };
            fields.push((String::from("description"), Piece::Text(what)));
            Piece::Object(fields)
        }
        other => other,
    }
}

fn fields_of(first: Vec<(String, Piece)>, fields: &[Field]) -> Piece {
    let mut needed: Vec<Piece> = first
        .iter()
        .filter(|(name, _)| name != "id")
        .map(|(name, _)| text(name))
        .collect();
    needed.extend(fields.iter().filter(|f| f.needed).map(|f| text(f.name)));
    let mut properties = first;
    properties.extend(fields.iter().map(|f| (String::from(f.name), described(f))));
    object([
        ("type", text("object")),
        ("properties", Piece::Object(properties)),
        ("required", Piece::List(needed)),
        ("additionalProperties", Piece::YesNo(false)),
    ])
}

fn with(piece: Piece, name: &str, value: Piece) -> Piece {
    match piece {
        Piece::Object(mut fields) => {
            fields.push((name.into(), value));
            Piece::Object(fields)
        }
        other => other,
    }
}

fn line(fields: Vec<(String, Piece)>) -> Piece {
    let needed = fields.iter().map(|(name, _)| text(name)).collect();
    object([
        ("type", text("object")),
        ("properties", Piece::Object(fields)),
        ("required", Piece::List(needed)),
        ("additionalProperties", Piece::YesNo(false)),
    ])
}

fn error() -> Piece {
    let defect = |more: Vec<(String, Piece)>| {
        let kinds = crate::read::known_words::<ErrorKind>();
        let mut properties = Vec::from([
            (
                String::from("kind"),
                object([("type", text("string")), ("enum", words(kinds))]),
            ),
            (
                String::from("field"),
                object([
                    ("type", text("string")),
                    (
                        "description",
                        text("path inside the question; `line` for the line itself"),
                    ),
                ]),
            ),
            (String::from("message"), kind("string")),
            (String::from("remedy"), kind("string")),
        ]);
        properties.extend(more);
        object([
            ("type", text("object")),
            ("properties", Piece::Object(properties)),
            (
                "required",
                words(
                    ["kind", "field", "message", "remedy"]
                        .map(String::from)
                        .to_vec(),
                ),
            ),
            ("additionalProperties", Piece::YesNo(false)),
        ])
    };
    let also = object([
        ("type", text("array")),
        ("items", defect(Vec::new())),
        ("description", text("further defects of a sheet")),
    ]);
    defect(Vec::from([(String::from("also"), also)]))
}

impl Serialize for Schema {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let id = || {
            object([(
                "type",
                words(["string", "integer", "null"].map(String::from).to_vec()),
            )])
        };
        let mut defs = Vec::new();
        let mut lines = Vec::new();
        let mut answers = Vec::new();
        for form in forms() {
            let question = format!("{}_question", form.name);
            let answer = format!("{}_answer", form.name);
            let names = core::iter::once(&form.name).chain(form.other);
            let ask = object([(
                "enum",
                words(names.map(|name| String::from(*name)).collect()),
            )]);
            let first = Vec::from([(String::from("id"), id()), (String::from("ask"), ask)]);
            defs.push((
                question.clone(),
                with(
                    fields_of(first, form.question),
                    "description",
                    text(form.words.trim()),
                ),
            ));
            let told: Vec<Field> = form.answer.iter().chain(&COMMON).copied().collect();
            defs.push((
                answer.clone(),
                with(
                    fields_of(Vec::new(), &told),
                    "description",
                    text(form.words.trim()),
                ),
            ));
            lines.push(reference(&question));
            answers.push(line(Vec::from([
                (String::from("id"), id()),
                (String::from("answer"), reference(&answer)),
            ])));
        }
        answers.push(line(Vec::from([
            (String::from("id"), id()),
            (String::from("error"), error()),
        ])));
        let mut forms_met: Vec<&'static Form> = Vec::new();
        for form in forms() {
            for field in form.question.iter().chain(form.answer) {
                meet(&field.shape, &mut forms_met);
            }
        }
        for form in forms_met {
            defs.push((form.name.into(), fields_of(Vec::new(), form.fields)));
        }
        defs.push((
            String::from("question"),
            object([("oneOf", Piece::List(lines))]),
        ));
        // Answers of two questions may look alike, so any of them will do.
        defs.push((
            String::from("reply"),
            object([("anyOf", Piece::List(answers))]),
        ));
        object([
            ("title", text("One question, one answer")),
            ("description", text("JSON Schema, draft 2020-12. A question is one line of JSON, a reply another, in the same order.")),
            ("anyOf", Piece::List(Vec::from([reference("question"), reference("reply")]))),
            ("$defs", Piece::Object(defs)),
        ])
        .serialize(serializer)
    }
}
