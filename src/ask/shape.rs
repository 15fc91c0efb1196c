//! The forms that questions and answers take, as data: read by the reader of questions and by the schema alike.

use alloc::string::String;
use alloc::vec::Vec;

/// What a value looks like.
///
/// ```
/// use framegauge::{Length, ask::{Read, Shape}};
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
    /// Any names, each with such a value.
    Named(&'static Self),
    /// One of several.
    Either(&'static [Self]),
    /// The same, or null.
    OrNull(&'static Self),
    /// A report of another room, as that type serializes.
    Report {
        /// Which type.
        what: &'static str,
    },
}

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

/// Something that an answer tells: how it serializes.
///
/// ```
/// use framegauge::ask::{MinMax, Shape, Told};
/// assert!(matches!(MinMax::SHAPE, Shape::Fields(fields) if fields.len() == 2));
/// ```
pub trait Told {
    /// The form of it.
    const SHAPE: Shape;
}

macro_rules! told {
    ($( $kind:ty => $shape:expr ),* $(,)?) => {$(
        impl $crate::ask::Told for $kind { const SHAPE: Shape = $shape; }
    )*};
}
pub(super) use told;

told! {
    f64 => Shape::Number,
    bool => Shape::YesNo,
    u32 => Shape::Count,
    usize => Shape::Count,
    String => Shape::Text { what: "text" },
    &'static str => Shape::Text { what: "text" },
    crate::evidence::Text => Shape::Text { what: "text" },
}

impl<T: Told> Told for Option<T> {
    const SHAPE: Shape = Shape::OrNull(&T::SHAPE);
}
impl<T: Told> Told for Vec<T> {
    const SHAPE: Shape = Shape::List(&T::SHAPE);
}
