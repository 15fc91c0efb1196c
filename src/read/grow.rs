//! A tree from any format that serde reads: JSON lines, TOML sheets.

use alloc::borrow::{Cow, ToOwned};
use alloc::vec::Vec;
use core::fmt;

use serde::de::{Deserialize, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};

use super::Tree;

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
