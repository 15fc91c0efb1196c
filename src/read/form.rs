//! One declaration for a form that is read: its fields, their meaning, how each is read, and the schema.

/// Declares forms: structs whose fields are read from the fields of an object, and no others.
///
/// A field is read as its type says, or by a reader named behind `=>`, such as `bore: Vec<Placed> => Inside`.
macro_rules! form {
    ($( $(#[$meta:meta])* $name:ident { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty $(=> $by:ty)?, )* } )*) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        impl $name {
            /// The fields of this form.
            pub(crate) const FIELDS: &'static [$crate::read::Field] = &[$(
                $crate::read::Field {
                    name: stringify!($field),
                    words: concat!($words $(, $more)*),
                    shape: $crate::read::form!(@shape $kind $(, $by)?),
                    needed: $crate::read::form!(@needed $kind $(, $by)?),
                },
            )*];

            /// The form as a whole.
            const FORM: $crate::read::Form = $crate::read::Form {
                name: stringify!($name),
                fields: Self::FIELDS,
            };

            fn read_fields(
                fields: &$crate::read::Fields<'_>,
                context: &mut $crate::read::Context<'_>,
            ) -> Option<Self> {
                // Every field is read before the first defect ends the form.
                $( let $field = $crate::read::form!(@read fields, context, $field, $kind $(, $by)?); )*
                Some(Self { $( $field: $field?, )* })
            }

            #[allow(dead_code, reason = "questions are read from their fields, parts of them from a tree")]
            pub(crate) fn from_fields(
                fields: &[(alloc::borrow::Cow<'_, str>, $crate::read::Tree<'_>)],
                context: &mut $crate::read::Context<'_>,
            ) -> Option<Self> {
                let fields = $crate::read::Fields::checked(fields, &[$(stringify!($field)),*], context);
                Self::read_fields(&fields, context)
            }
        }

        impl $crate::read::Read for $name {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Form(&Self::FORM);
            fn read(
                tree: &$crate::read::Tree<'_>,
                context: &mut $crate::read::Context<'_>,
            ) -> Option<Self> {
                let fields = $crate::read::Fields::of(tree, &[$(stringify!($field)),*], context)?;
                Self::read_fields(&fields, context)
            }
        }
    )*};
    (@shape $kind:ty) => { <$kind as $crate::read::Read>::SHAPE };
    (@shape $kind:ty, $by:ty) => { <$by as $crate::read::ReadBy<$kind>>::SHAPE };
    (@needed $kind:ty) => { <$kind as $crate::read::Read>::NEEDED };
    (@needed $kind:ty, $by:ty) => { <$by as $crate::read::ReadBy<$kind>>::NEEDED };
    (@read $fields:ident, $context:ident, $field:ident, $kind:ty) => {
        $fields.field::<$kind>(stringify!($field), $context)
    };
    (@read $fields:ident, $context:ident, $field:ident, $kind:ty, $by:ty) => {
        $fields.field_by::<$kind, $by>(stringify!($field), $context)
    };
}
pub(crate) use form;
