//! One declaration for a question or an answer: its fields, their meaning, how they are read or told, and the schema.

/// Declares a question: a struct whose fields are read from the fields of an object, and no others.
macro_rules! question {
    ($(#[$meta:meta])* $name:ident { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty, )* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        impl $name {
            pub(super) const FIELDS: &'static [crate::ask::Field] = &[$(
                crate::ask::Field {
                    name: stringify!($field),
                    words: concat!($words $(, $more)*),
                    shape: <$kind as crate::ask::Read>::SHAPE,
                    needed: <$kind as crate::ask::Read>::NEEDED,
                },
            )*];

            #[allow(dead_code, reason = "questions are read from their fields, parts of them from a tree")]
            pub(super) fn from_fields(
                fields: &[(alloc::borrow::Cow<'_, str>, crate::ask::Tree<'_>)],
            ) -> Result<Self, crate::Error> {
                let fields = crate::ask::read::Fields::checked(fields, &[$(stringify!($field)),*])?;
                Ok(Self { $( $field: fields.field(stringify!($field))?, )* })
            }
        }

        impl crate::ask::Read for $name {
            const SHAPE: crate::ask::Shape = crate::ask::Shape::Fields(Self::FIELDS);
            fn read(tree: &crate::ask::Tree<'_>) -> Result<Self, crate::Error> {
                let fields = crate::ask::read::Fields::of(tree, &[$(stringify!($field)),*])?;
                Ok(Self { $( $field: fields.field(stringify!($field))?, )* })
            }
        }
    };
}
pub(super) use question;

/// Declares an answer: a struct that serializes as it is written, and its schema.
macro_rules! answer {
    ($(#[$meta:meta])* $name:ident { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty, )* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        impl $name {
            pub(super) const FIELDS: &'static [crate::ask::Field] = &[$(
                crate::ask::Field {
                    name: stringify!($field),
                    words: concat!($words $(, $more)*),
                    shape: <$kind as crate::ask::Told>::SHAPE,
                    needed: true,
                },
            )*];
        }

        impl crate::ask::Told for $name {
            const SHAPE: crate::ask::Shape = crate::ask::Shape::Fields(Self::FIELDS);
        }
    };
}
pub(super) use answer;
