//! A question as it was read, before it is understood: text, numbers, lists and named fields, in their order.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::{Error, ErrorKind};

/// A value as it stands in a question. Unlike most trees of this kind it keeps fields in order and a field that is
/// stated twice, so that the second can be refused.
///
/// ```
/// use framegauge::read::Tree;
/// let tree: Tree = serde_json::from_str(r#"{"class":"N7","nominal":"42 mm"}"#).unwrap();
/// assert!(matches!(tree, Tree::Fields(fields) if fields.len() == 2));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum Tree<'a> {
    /// Nothing.
    Null,
    /// Yes or no.
    YesNo(bool),
    /// A whole number.
    Whole(i64),
    /// A whole number above those.
    Large(u64),
    /// A number.
    Number(f64),
    /// Text.
    Text(Cow<'a, str>),
    /// A list.
    List(Vec<Self>),
    /// Named fields.
    Fields(Vec<(Cow<'a, str>, Self)>),
}

impl Tree<'_> {
    /// What it is, in a word.
    #[must_use]
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Null => "null",
            Self::YesNo(_) => "true or false",
            Self::Whole(_) | Self::Large(_) | Self::Number(_) => "a number",
            Self::Text(_) => "a text",
            Self::List(_) => "a list",
            Self::Fields(_) => "an object",
        }
    }

    /// The error that something else was expected here; a bare number where a quantity belongs lacks its unit.
    pub(crate) fn instead_of(&self, expected: &str) -> Error {
        let value = match self {
            Self::Text(text) => text.to_string(),
            Self::Whole(n) => n.to_string(),
            Self::Large(n) => n.to_string(),
            Self::Number(n) => n.to_string(),
            Self::YesNo(b) => b.to_string(),
            Self::Null | Self::List(_) | Self::Fields(_) => String::new(),
        };
        let number = matches!(self, Self::Whole(_) | Self::Large(_) | Self::Number(_));
        if number && expected.contains("unit") {
            return Error::new(
                ErrorKind::Unit,
                "",
                value,
                "a bare number has no unit",
                format!("write {expected}"),
            );
        }
        Error::new(
            ErrorKind::Text,
            "",
            value,
            format!("{} stands here", self.word()),
            format!("write {expected}"),
        )
    }
}
