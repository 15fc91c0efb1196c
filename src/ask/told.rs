//! What answers look like: one declaration makes the struct and its schema.

use alloc::string::String;
use alloc::vec::Vec;

use crate::read::Shape;

/// Something that an answer tells: how it serializes.
///
/// ```
/// use framegauge::{ask::{MinMax, Told}, read::Shape};
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

/// Declares an answer: a struct that serializes as it is written, and its schema.
macro_rules! answer {
    ($(#[$meta:meta])* $name:ident { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty, )* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        impl $name {
            pub(super) const FIELDS: &'static [$crate::read::Field] = &[$(
                $crate::read::Field {
                    name: stringify!($field),
                    words: concat!($words $(, $more)*),
                    shape: <$kind as $crate::ask::Told>::SHAPE,
                    needed: true,
                },
            )*];
        }

        impl $crate::ask::Told for $name {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Fields(Self::FIELDS);
        }
    };
}
pub(super) use answer;
