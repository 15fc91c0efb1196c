//! Serialized forms: lengths go out as settled millimetres (the field name says `_mm`) and come in as text with a unit.

use alloc::string::String;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{Length, Pitch, parse_length, settled_mm};

/// Serializes a struct of these fields, each under its name; the field behind `;` is left out where it has no value.
macro_rules! serialized {
    ($serializer:expr, $name:ident { $($field:ident : $value:expr),* $(,)? $(; $maybe:ident : $may:expr)? }) => {{
        use serde::ser::SerializeStruct;
        let fields = [$(stringify!($field),)* $(stringify!($maybe))?].len();
        let mut out = $serializer.serialize_struct(stringify!($name), fields)?;
        $( out.serialize_field(stringify!($field), &$value)?; )*
        $( if let Some(value) = $may { out.serialize_field(stringify!($maybe), &value)?; } )?
        out.end()
    }};
}
pub(crate) use serialized;

/// Serializes a length as a number of millimetres, settled to whole nanometres.
///
/// # Errors
/// Those of the serializer.
///
/// ```
/// use framegauge::{Length, mm, quantity::serial};
/// #[derive(serde::Serialize)]
/// struct Mine { #[serde(serialize_with = "serial::as_mm")] bore_mm: Length }
/// assert_eq!(serde_json::to_string(&Mine { bore_mm: mm(27.2) }).unwrap(), r#"{"bore_mm":27.2}"#);
/// ```
pub fn as_mm<S: Serializer>(length: &Length, serializer: S) -> Result<S::Ok, S::Error> {
    settled_mm(*length).serialize(serializer)
}

/// Serializes an optional length as a number of millimetres.
///
/// # Errors
/// Those of the serializer.
///
/// ```
/// use framegauge::{Length, mm, serial};
/// #[derive(serde::Serialize)]
/// struct Mine { #[serde(serialize_with = "serial::as_mm_or_null")] bore_mm: Option<Length> }
/// assert_eq!(serde_json::to_string(&Mine { bore_mm: Some(mm(27.2)) }).unwrap(), r#"{"bore_mm":27.2}"#);
/// assert_eq!(serde_json::to_string(&Mine { bore_mm: None }).unwrap(), r#"{"bore_mm":null}"#);
/// ```
pub fn as_mm_or_null<S: Serializer>(
    length: &Option<Length>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    length.map(settled_mm).serialize(serializer)
}

/// Deserializes a length from text with a unit, such as `"27.2 mm"`.
///
/// # Errors
/// Those of [`parse_length`], in the words of the deserializer.
///
/// ```
/// use framegauge::{Length, mm, quantity::serial};
/// #[derive(serde::Deserialize)]
/// struct Mine { #[serde(deserialize_with = "serial::from_text")] bore: Length }
/// assert!(serde_json::from_str::<Mine>(r#"{"bore":"27.2 mm"}"#).unwrap().bore == mm(27.2));
/// assert!(serde_json::from_str::<Mine>(r#"{"bore":27.2}"#).is_err()); // a bare number is no length
/// ```
pub fn from_text<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Length, D::Error> {
    let text = String::deserialize(deserializer)?;
    parse_length(&text).map_err(de::Error::custom)
}

impl Serialize for Pitch {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Pitch {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?
            .parse()
            .map_err(de::Error::custom)
    }
}
