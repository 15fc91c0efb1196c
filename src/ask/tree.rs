//! A question as it was read, before it is understood: text, numbers, lists and named fields, in their order.

use alloc::borrow::{Cow, ToOwned};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use serde::de::{Deserialize, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};

use crate::{Error, ErrorKind};

/// A value as it stands in a question. Unlike most trees of this kind it keeps fields in order and a field that is
/// stated twice, so that the second can be refused.
///
/// ```
/// use framegauge::ask::Tree;
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
    pub(super) fn instead_of(&self, expected: &str) -> Error {
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

impl<'de: 'a, 'a> Deserialize<'de> for Tree<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Grower)
    }
}

struct Grower;

impl<'de> Visitor<'de> for Grower {
    type Value = Tree<'de>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a question")
    }
    fn visit_unit<E>(self) -> Result<Self::Value, E> {
        Ok(Tree::Null)
    }
    fn visit_none<E>(self) -> Result<Self::Value, E> {
        Ok(Tree::Null)
    }
    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<Self::Value, D::Error> {
        deserializer.deserialize_any(self)
    }
    fn visit_bool<E>(self, value: bool) -> Result<Self::Value, E> {
        Ok(Tree::YesNo(value))
    }
    fn visit_i64<E>(self, value: i64) -> Result<Self::Value, E> {
        Ok(Tree::Whole(value))
    }
    fn visit_u64<E>(self, value: u64) -> Result<Self::Value, E> {
        Ok(i64::try_from(value).map_or(Tree::Large(value), Tree::Whole))
    }
    fn visit_f64<E>(self, value: f64) -> Result<Self::Value, E> {
        Ok(Tree::Number(value))
    }
    fn visit_borrowed_str<E>(self, text: &'de str) -> Result<Self::Value, E> {
        Ok(Tree::Text(Cow::Borrowed(text)))
    }
    fn visit_str<E>(self, text: &str) -> Result<Self::Value, E> {
        Ok(Tree::Text(Cow::Owned(text.to_owned())))
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Self::Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = seq.next_element()? {
            list.push(item);
        }
        Ok(Tree::List(list))
    }
    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
        let mut fields = Vec::new();
        while let Some(Key(key)) = map.next_key()? {
            fields.push((key, map.next_value()?));
        }
        Ok(Tree::Fields(fields))
    }
}

/// A name of a field, borrowed where the text allows.
struct Key<'a>(Cow<'a, str>);

impl<'de: 'a, 'a> Deserialize<'de> for Key<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        match deserializer.deserialize_str(Grower)? {
            Tree::Text(text) => Ok(Self(text)),
            other => Err(D::Error::custom(other.instead_of("a name"))),
        }
    }
}
