//! The forms that questions and answers take, as data: read by the reader of questions and by the schema alike.

use alloc::string::String;
use alloc::vec::Vec;

/// What a value looks like.
///
/// ```
/// use framegauge::{Length, read::{Read, Shape}};
/// assert!(matches!(Length::SHAPE, Shape::Text { .. }));
/// ```
#[derive(Debug, Clone, Copy)]
#[non_exhaustive]
pub enum Shape {
    /// Text that is read as a quantity or a designation.
    Text {
        /// What it is, with an example.
        what: &'static str,
    },
    /// A number.
    Number,
    /// A whole number of at least zero.
    Count,
    /// True or false.
    YesNo,
    /// One of a closed list of words.
    Word(fn() -> Vec<String>),
    /// A list.
    List(&'static Self),
    /// Named fields, and no others.
    Fields(&'static [Field]),
    /// A form by its name: named fields, and no others.
    Form(&'static Form),
    /// Any names, each with such a value.
    Named(&'static Self),
    /// One of several.
    Either(&'static [Self]),
    /// The same, or null.
    OrNull(&'static Self),
    /// A fact: its code and its values, and by itself its sentence.
    Fact(fn() -> FactForm),
    /// The same without its sentence, which stands beside it.
    Bare(fn() -> FactForm),
    /// Anything, as its type serializes.
    Any,
    /// A report of another room, as that type serializes.
    Report {
        /// Which type.
        what: &'static str,
    },
}

/// The shape of a text: what it is, with an example.
macro_rules! text_shape {
    ($(#[doc = $words:literal])+) => { $crate::read::Shape::Text { what: concat!($($words),+).trim_ascii() } };
}
pub(crate) use text_shape;

/// A named field of a question or an answer.
///
/// ```
/// let convert = framegauge::ask::forms().iter().find(|form| form.name == "convert").unwrap();
/// assert!(convert.question.iter().all(|field| !field.needed));
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// Its name.
    pub name: &'static str,
    /// What it means.
    pub words: &'static str,
    /// What it looks like.
    pub shape: Shape,
    /// Whether it must be there.
    pub needed: bool,
}

/// A form by its name.
#[derive(Debug, Clone, Copy)]
pub struct Form {
    /// Its name.
    pub name: &'static str,
    /// Its fields.
    pub fields: &'static [Field],
}

/// The facts of one kind: their codes with their values, or the kinds that they are of.
#[derive(Debug, Clone)]
pub struct FactForm {
    /// The module that holds them.
    pub room: &'static str,
    /// Its name.
    pub name: &'static str,
    /// Every fact: code, meaning, values.
    pub codes: Vec<(&'static str, &'static str, &'static [ValueForm])>,
    /// The kinds that these facts are of, where they are of several.
    pub kinds: Vec<Self>,
}

/// A value of a fact.
#[derive(Debug, Clone, Copy)]
pub struct ValueForm {
    /// Its name without the unit.
    pub name: &'static str,
    /// The unit behind the name.
    pub unit: &'static str,
    /// What it looks like.
    pub shape: Shape,
}
