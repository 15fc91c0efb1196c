//! The JSON Schema of questions and answers, from the same declarations that read and write them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::{Serialize, Serializer};

use super::{Basis, Refusal, forms};
use crate::read::{FactForm, Field, Shape, Told, ValueForm};

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
#[derive(Serialize)]
#[serde(untagged)]
enum Piece {
    #[serde(serialize_with = "as_object")]
    Object(Fields),
    List(Vec<Self>),
    Text(String),
    YesNo(bool),
}

type Fields = Vec<(String, Piece)>;

fn as_object<S: Serializer>(fields: &Fields, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_map(fields.iter().map(|(name, piece)| (name, piece)))
}

fn text(value: &str) -> Piece {
    Piece::Text(value.into())
}
fn object<const N: usize>(fields: [(&str, Piece); N]) -> Piece {
    let fields = fields.into_iter();
    Piece::Object(fields.map(|(name, piece)| (name.into(), piece)).collect())
}
fn kind(name: &str) -> Piece {
    object([("type", text(name))])
}
fn reference(name: &str) -> Piece {
    object([("$ref", Piece::Text(format!("#/$defs/{name}")))])
}
fn any_of(pieces: Vec<Piece>) -> Piece {
    object([("anyOf", Piece::List(pieces))])
}
fn words(list: impl IntoIterator<Item = impl Into<String>>) -> Piece {
    let words = list.into_iter().map(|word| Piece::Text(word.into()));
    Piece::List(words.collect())
}

/// An object of these fields and no others, all of them needed but these.
fn record(what: &str, properties: Fields, free: &[&str]) -> Piece {
    let names = properties.iter().map(|(name, _)| name.clone());
    let needed = words(names.filter(|name| !free.contains(&name.as_str())));
    let mut piece = Vec::new();
    if !what.is_empty() {
        piece.push(("description".into(), text(what.trim())));
    }
    piece.push(("type".into(), text("object")));
    piece.push(("properties".into(), Piece::Object(properties)));
    piece.push(("required".into(), needed));
    piece.push(("additionalProperties".into(), Piece::YesNo(false)));
    Piece::Object(piece)
}

fn fields_of(what: &str, mut properties: Fields, fields: &[Field]) -> Piece {
    properties.extend(fields.iter().map(|f| (f.name.into(), described(f))));
    let free = fields.iter().filter(|f| !f.needed).map(|f| f.name);
    record(what, properties, &free.chain(["id"]).collect::<Vec<_>>())
}

fn of(shape: &Shape) -> Piece {
    match shape {
        Shape::Text { what } => object([("type", text("string")), ("description", text(what))]),
        Shape::Number => kind("number"),
        Shape::Count => kind("integer"),
        Shape::YesNo => kind("boolean"),
        Shape::Word(list) => object([("type", text("string")), ("enum", words(list()))]),
        Shape::List(item) => object([("type", text("array")), ("items", of(item))]),
        Shape::Fields(fields) => fields_of("", Vec::new(), fields),
        Shape::Form(form) => reference(form.name),
        Shape::Fact(form) => reference(&fact_name(&form(), true)),
        Shape::Bare(form) => reference(&fact_name(&form(), false)),
        Shape::Any => object([]),
        Shape::Named(value) => object([
            ("type", text("object")),
            ("additionalProperties", of(value)),
        ]),
        Shape::Either(shapes) => any_of(shapes.iter().map(of).collect()),
        Shape::OrNull(shape) => any_of(Vec::from([of(shape), kind("null")])),
        Shape::Report { what } => object([("type", text("object")), ("description", text(what))]),
    }
}

/// The piece of a field: its shape, with what it means.
fn described(field: &Field) -> Piece {
    let mut piece = of(&field.shape);
    if let Piece::Object(fields) = &mut piece {
        fields.retain(|(name, _)| name != "description");
        let means = field.words.trim();
        let what = match &field.shape {
            Shape::Text { what } | Shape::Report { what } if *what != "text" => {
                format!("{}: {what}", means.trim_end_matches('.'))
            }
            _ => means.into(),
        };
        fields.push(("description".into(), Piece::Text(what)));
    }
    piece
}

/// Facts of two rooms may have one name.
fn fact_name(form: &FactForm, worded: bool) -> String {
    let room = form.room.split("::").nth(1).unwrap_or_default();
    format!("{room}_{}{}", form.name, if worded { "" } else { "_bare" })
}

/// One fact: its code, its values with their units, and by itself its sentence.
fn fact(code: &str, means: &str, values: &[ValueForm], worded: bool) -> Piece {
    let mut fields = Vec::from([("code".into(), object([("const", text(code))]))]);
    let named = |value: &ValueForm| (format!("{}{}", value.name, value.unit), of(&value.shape));
    fields.extend(values.iter().map(named));
    if worded {
        fields.push(("words".into(), kind("string")));
    }
    record(means, fields, &[])
}

/// Every form and fact that shapes speak of, each once.
#[derive(Default)]
struct Met(Fields);

impl Met {
    fn all(&mut self, fields: &[Field]) {
        fields.iter().for_each(|field| self.shape(&field.shape));
    }
    /// Keeps it, before what it is made of is met; false where it was met before.
    fn first(&mut self, name: &str, piece: impl FnOnce() -> Piece) -> bool {
        let known = self.0.iter().any(|(known, _)| known == name);
        if !known {
            self.0.push((name.into(), piece()));
        }
        !known
    }
    fn shape(&mut self, shape: &Shape) {
        match shape {
            Shape::Form(form)
                if self.first(form.name, || fields_of("", Vec::new(), form.fields)) =>
            {
                self.all(form.fields);
            }
            Shape::Fields(fields) => self.all(fields),
            Shape::List(inner) | Shape::Named(inner) | Shape::OrNull(inner) => self.shape(inner),
            Shape::Either(shapes) => shapes.iter().for_each(|shape| self.shape(shape)),
            Shape::Fact(form) => self.fact(&form(), true),
            Shape::Bare(form) => self.fact(&form(), false),
            _ => {}
        }
    }
    fn fact(&mut self, form: &FactForm, worded: bool) {
        let full = |kind: &&FactForm| !(kind.codes.is_empty() && kind.kinds.is_empty());
        let kinds = || form.kinds.iter().filter(full);
        let codes = form.codes.iter();
        let pieces = codes.map(|(code, means, values)| fact(code, means, values, worded));
        let pieces = pieces.chain(kinds().map(|kind| reference(&fact_name(kind, worded))));
        if self.first(&fact_name(form, worded), || any_of(pieces.collect())) {
            let values = form.codes.iter().flat_map(|(_, _, values)| *values);
            values.for_each(|value| self.shape(&value.shape));
            kinds().for_each(|kind| self.fact(kind, worded));
        }
    }
}

impl Serialize for Schema {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let id = || words(["string", "integer", "null"]);
        let id = || ("id".into(), object([("type", id())]));
        let reply = |name: &str, told| record("", Vec::from([id(), (name.into(), told)]), &[]);
        let mut met = Met::default();
        let (mut defs, mut lines, mut replies) = (Vec::new(), Vec::new(), Vec::new());
        for form in forms() {
            let [question, answer] = ["question", "answer"].map(|of| format!("{}_{of}", form.name));
            lines.push(reference(&question));
            replies.push(reply("answer", reference(&answer)));
            let names = core::iter::once(&form.name).chain(form.other);
            let ask = ("ask".into(), object([("enum", words(names.copied()))]));
            let asked = fields_of(form.words, Vec::from([id(), ask]), form.question);
            let told = [form.answer, Basis::FIELDS].concat();
            defs.push((question, asked));
            defs.push((answer, fields_of(form.words, Vec::new(), &told)));
            met.all(form.question);
            met.all(&told);
        }
        replies.push(reply("error", of(&Refusal::SHAPE)));
        met.shape(&Refusal::SHAPE);
        defs.extend(met.0);
        defs.push(("question".into(), object([("oneOf", Piece::List(lines))])));
        // Answers of two questions may look alike, so any of them will do.
        defs.push(("reply".into(), any_of(replies)));
        let [title, description] = crate::say::reckoned::SCHEMA;
        object([
            ("title", text(title)),
            ("description", text(description)),
            (
                "anyOf",
                Piece::List(Vec::from([reference("question"), reference("reply")])),
            ),
            ("$defs", Piece::Object(defs)),
        ])
        .serialize(serializer)
    }
}
