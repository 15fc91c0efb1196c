//! Reads serde types from a tree, with the path of every defect: how a frame sheet inside a question is read.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use core::fmt;

use serde::de::value::StrDeserializer;
use serde::de::{self, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Unexpected, Visitor};
use serde::forward_to_deserialize_any;

use super::said::under;
use crate::read::{Tree, missing, twice};
use crate::{Error, ErrorKind};

/// The crate's error in the words of serde.
#[derive(Debug, thiserror::Error)]
#[error("{0}")]
pub(super) struct Refused(pub(super) Error);

impl de::Error for Refused {
    fn custom<T: fmt::Display>(message: T) -> Self {
        Self(Error::new(
            ErrorKind::Text,
            "",
            "",
            message.to_string(),
            "see the schema of the question",
        ))
    }
    fn invalid_type(found: Unexpected<'_>, expected: &dyn de::Expected) -> Self {
        let expected = expected.to_string();
        let bare = matches!(
            found,
            Unexpected::Signed(_) | Unexpected::Unsigned(_) | Unexpected::Float(_)
        );
        let (kind, problem) = if bare && expected.contains("unit") {
            (ErrorKind::Unit, "a bare number has no unit".to_owned())
        } else {
            (ErrorKind::Text, format!("{found} stands here"))
        };
        let value = match found {
            Unexpected::Signed(n) => n.to_string(),
            Unexpected::Unsigned(n) => n.to_string(),
            Unexpected::Float(n) => n.to_string(),
            _ => String::new(),
        };
        Self(Error::new(
            kind,
            "",
            value,
            problem,
            format!("write {expected}"),
        ))
    }
    fn unknown_field(field: &str, expected: &'static [&'static str]) -> Self {
        Self(unknown_field(field, expected))
    }
    fn missing_field(field: &'static str) -> Self {
        Self(missing(field))
    }
    fn duplicate_field(field: &'static str) -> Self {
        Self(twice(field))
    }
}

pub(super) fn unknown_field(field: &str, known: &[&str]) -> Error {
    // A hostile name must not become a hostile path.
    let short: String = field.chars().take(60).collect();
    Error::new(
        ErrorKind::UnknownField,
        short,
        "",
        "no such field",
        format!("known here: {}", known.join(", ")),
    )
}

/// A tree as something that serde types are read from.
pub(super) struct At<'t>(pub(super) &'t Tree<'t>);

impl At<'_> {
    fn instead_of(&self, expected: &dyn de::Expected) -> Refused {
        let found = match self.0 {
            Tree::Null => Unexpected::Unit,
            Tree::YesNo(value) => Unexpected::Bool(*value),
            Tree::Whole(value) => Unexpected::Signed(*value),
            Tree::Large(value) => Unexpected::Unsigned(*value),
            Tree::Number(value) => Unexpected::Float(*value),
            Tree::Text(text) => Unexpected::Str(text),
            Tree::List(_) => Unexpected::Seq,
            Tree::Fields(_) => Unexpected::Map,
        };
        de::Error::invalid_type(found, expected)
    }
}

impl<'de> Deserializer<'de> for At<'de> {
    type Error = Refused;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Tree::Null => visitor.visit_unit(),
            Tree::YesNo(value) => visitor.visit_bool(*value),
            Tree::Whole(value) => visitor.visit_i64(*value),
            Tree::Large(value) => visitor.visit_u64(*value),
            Tree::Number(value) => visitor.visit_f64(*value),
            Tree::Text(text) => visitor.visit_borrowed_str(text),
            Tree::List(items) => visitor.visit_seq(Items {
                items: items.iter(),
                index: 0,
            }),
            Tree::Fields(fields) => visitor.visit_map(Fields {
                fields: fields.iter(),
                open: None,
            }),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Tree::Null => visitor.visit_none(),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Refused> {
        visitor.visit_newtype_struct(self)
    }

    // What is read by name is written by name: a list of values in the order of our fields is refused.
    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        match self.0 {
            Tree::Fields(fields) => visitor.visit_map(Fields {
                fields: fields.iter(),
                open: None,
            }),
            _ => Err(self.instead_of(&visitor)),
        }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Tree::List(items) => visitor.visit_seq(Items {
                items: items.iter(),
                index: 0,
            }),
            _ => Err(self.instead_of(&visitor)),
        }
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Tree::Text(text) => visitor.visit_borrowed_str(text),
            _ => Err(self.instead_of(&visitor)),
        }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str bytes byte_buf unit unit_struct tuple
        tuple_struct map enum identifier ignored_any
    }
}

struct Items<'t> {
    items: core::slice::Iter<'t, Tree<'t>>,
    index: usize,
}

impl<'de> SeqAccess<'de> for Items<'de> {
    type Error = Refused;
    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Refused> {
        let Some(item) = self.items.next() else {
            return Ok(None);
        };
        let index = self.index;
        self.index += 1;
        seed.deserialize(At(item))
            .map(Some)
            .map_err(|Refused(e)| Refused(under(e, &format!("[{index}]"))))
    }
}

struct Fields<'t> {
    fields: core::slice::Iter<'t, (alloc::borrow::Cow<'t, str>, Tree<'t>)>,
    open: Option<(&'t str, &'t Tree<'t>)>,
}

impl<'de> MapAccess<'de> for Fields<'de> {
    type Error = Refused;
    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Refused> {
        let Some((key, value)) = self.fields.next() else {
            return Ok(None);
        };
        self.open = Some((key, value));
        seed.deserialize(StrDeserializer::<Refused>::new(key))
            .map(Some)
    }
    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Refused> {
        let Some((key, value)) = self.open.take() else {
            return Err(de::Error::custom("a value without a name"));
        };
        seed.deserialize(At(value))
            .map_err(|Refused(e)| Refused(under(e, key)))
    }
}
