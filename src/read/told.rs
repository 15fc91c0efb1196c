//! What goes out: one declaration says how it serializes and what its schema is.

use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;

use super::Shape;
use crate::measure::{Bound, Limits};
use crate::quantity::settled_mm;

/// Something that is told: what it looks like.
///
/// ```
/// use framegauge::{ask::ConvertAnswer, read::{Shape, Told}};
/// assert!(matches!(ConvertAnswer::SHAPE, Shape::Fields(fields) if fields.len() == 4));
/// ```
pub trait Told {
    /// The form of it.
    const SHAPE: Shape;
}

/// Says how types look that serialize by themselves: by their shape, or a text or report by what it holds.
macro_rules! told {
    ($( $(#[doc = $words:literal])+ $kind:ty : $form:ident ),* $(,)?) => {
        $crate::read::told! { $( $kind => $crate::read::Shape::$form { what: concat!($($words),+).trim_ascii() } ),* }
    };
    ($( $kind:ty => $shape:expr ),* $(,)?) => {$(
        impl $crate::read::Told for $kind { const SHAPE: $crate::read::Shape = $shape; }
    )*};
}
pub(crate) use told;

const TEXT: Shape = Shape::Text { what: "text" };

told! {
    f64 => Shape::Number,
    bool => Shape::YesNo,
    u8 => Shape::Count,
    u32 => Shape::Count,
    usize => Shape::Count,
    str => TEXT,
    String => TEXT,
    crate::evidence::Text => TEXT,
    crate::evidence::Citation => TEXT,
    crate::quantity::Length => Shape::Number,
    crate::quantity::Angle => Shape::Number,
}

impl<T: Told + ?Sized> Told for &T {
    const SHAPE: Shape = T::SHAPE;
}
impl<T: Told> Told for Box<T> {
    const SHAPE: Shape = T::SHAPE;
}
impl<T: Told> Told for Option<T> {
    const SHAPE: Shape = Shape::OrNull(&T::SHAPE);
}
impl<T: Told> Told for Vec<T> {
    const SHAPE: Shape = Shape::List(&T::SHAPE);
}

/// Declares answers: structs that serialize as they are written, and their schema.
macro_rules! answer {
    ($( $(#[$meta:meta])* $name:ident { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty, )* } )*) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        impl $name {
            pub(crate) const FIELDS: &'static [$crate::read::Field] = &[$(
                $crate::read::Field {
                    name: stringify!($field),
                    words: concat!($words $(, $more)*),
                    shape: <$kind as $crate::read::Told>::SHAPE,
                    needed: true,
                },
            )*];
        }

        impl $crate::read::Told for $name {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Fields(Self::FIELDS);
        }
    )*};
}
pub(crate) use answer;

/// Declares how a type goes out: each field with its meaning, its form and its value. A field behind `?` is left out
/// where it has no value.
macro_rules! goes_out {
    ($( $name:ident $(<$of:ident>)? ($this:ident) { $( $(#[doc = $words:literal])+ $field:ident : $kind:ty = $value:expr, )* $(? $(#[doc = $perhaps:literal])+ $maybe:ident : $maybes:ty = $may:expr, )* } )*) => {$(
        impl $(<$of: $crate::fact::Coded + $crate::fact::Worded>)? $name $(<$of>)? {
            pub(crate) const FIELDS: &'static [$crate::read::Field] = &[
                $( $crate::read::Field {
                    name: stringify!($field),
                    words: concat!($($words),+),
                    shape: <$kind as $crate::read::Told>::SHAPE,
                    needed: true,
                }, )*
                $( $crate::read::Field {
                    name: stringify!($maybe),
                    words: concat!($($perhaps),+),
                    shape: <$maybes as $crate::read::Told>::SHAPE,
                    needed: false,
                }, )*
            ];
        }

        impl $(<$of: $crate::fact::Coded + $crate::fact::Worded>)? $crate::read::Told for $name $(<$of>)? {
            const SHAPE: $crate::read::Shape = $crate::read::goes_out!(@shape $name $(<$of>)?);
        }

        impl $(<$of: $crate::fact::Coded + $crate::fact::Worded>)? serde::Serialize for $name $(<$of>)? {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeStruct;
                let $this = self;
                let mut out = serializer.serialize_struct(stringify!($name), Self::FIELDS.len())?;
                $( out.serialize_field(stringify!($field), &$value)?; )*
                $( if let Some(value) = &$may { out.serialize_field(stringify!($maybe), value)?; } )*
                out.end()
            }
        }
    )*};
    (@shape $name:ident) => {
        $crate::read::Shape::Form(&$crate::read::Form { name: stringify!($name), fields: Self::FIELDS })
    };
    (@shape $name:ident <$of:ident>) => { $crate::read::Shape::Fields(Self::FIELDS) };
}
pub(crate) use goes_out;

answer! {
    /// An interval of a quantity, in the unit that the field's name says; null where it is open or not known.
    ///
    /// ```
    /// use framegauge::{Grade, measure::Limits, mm, read::Between};
    /// let ends = Between::from(Limits::at_least(mm(9.35), Grade::Shop).unwrap());
    /// assert_eq!(serde_json::to_string(&ends).unwrap(), r#"{"min":9.35,"max":null}"#);
    /// ```
    Between {
        /// its least value
        min: Option<f64>,
        /// its largest value
        max: Option<f64>,
    }
}

impl From<Limits> for Between {
    fn from(limits: Limits) -> Self {
        let end = |bound: Bound| bound.known().map(settled_mm);
        Self {
            min: end(limits.lower()),
            max: end(limits.upper()),
        }
    }
}
