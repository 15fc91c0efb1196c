//! Facts: what was found, asked or planned, as a code with numbers. The sentence is made in `say`.

use alloc::borrow::Cow;

/// How a fact is told to a person; `say` implements it, and [`core::fmt::Display`] gives the sentence.
///
/// ```
/// use framegauge::{judge::{BoreFact, Finding}, fact::Worded};
/// let found: Finding = Finding::of(BoreFact::CutOnce);
/// assert_eq!((&*found.fact.about(), found.fact.code()), ("reaming", "cut_once"));
/// ```
pub trait Worded: core::fmt::Display {
    /// What it is about: a label of a few words.
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed("")
    }
    /// Why it is asked or done.
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed("")
    }
    /// How many readings were held against limits, where it says no more than that: the numbers stand in its finding.
    fn size_count(&self) -> Option<usize> {
        None
    }
}

/// A fact as it goes out: its code and its values, and by itself its sentence.
#[cfg(feature = "serde")]
pub trait Coded: core::fmt::Display {
    /// Its codes and values.
    fn form() -> crate::read::FactForm;
    /// Writes code and values.
    ///
    /// # Errors
    /// Those of the serializer.
    fn put<M: serde::ser::SerializeMap>(&self, map: &mut M) -> Result<(), M::Error>;
}

/// A fact without its sentence.
#[cfg(feature = "serde")]
pub(crate) struct Bare<'a, F>(pub &'a F);

#[cfg(feature = "serde")]
impl<F: Coded> serde::Serialize for Bare<'_, F> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeMap;
        let mut map = serializer.serialize_map(None)?;
        self.0.put(&mut map)?;
        map.end()
    }
}

/// How a fact without its sentence looks.
#[cfg(feature = "serde")]
pub(crate) struct BareOf<F>(core::marker::PhantomData<F>);

#[cfg(feature = "serde")]
impl<F: Coded> crate::read::Told for BareOf<F> {
    const SHAPE: crate::read::Shape = crate::read::Shape::Bare(F::form);
}

/// A fact by itself, with its sentence.
#[cfg(feature = "serde")]
pub(crate) fn with_words<F: Coded, S: serde::Serializer>(
    fact: &F,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    use serde::ser::SerializeMap;
    let mut map = serializer.serialize_map(None)?;
    fact.put(&mut map)?;
    map.serialize_entry("words", &alloc::string::ToString::to_string(fact))?;
    map.end()
}

/// How a value that a fact holds goes out: with the unit in its name.
#[cfg(feature = "serde")]
pub trait Value {
    /// How it looks.
    const SHAPE: crate::read::Shape = crate::read::Shape::Any;
    /// The unit behind the name.
    const SUFFIX: &'static str = "";
    /// What is written.
    type Out<'a>: serde::Serialize
    where
        Self: 'a;
    /// The value as it is written.
    fn out(&self) -> Self::Out<'_>;
}

#[cfg(feature = "serde")]
mod values {
    use alloc::borrow::Cow;
    use alloc::string::String;
    use alloc::vec::Vec;

    use super::Value;
    use crate::quantity::{Angle, Length, settled_mm};
    use crate::read::Shape;

    impl Value for Length {
        const SHAPE: Shape = Shape::Number;
        const SUFFIX: &'static str = "_mm";
        type Out<'a> = f64;
        fn out(&self) -> f64 {
            settled_mm(*self)
        }
    }
    impl Value for Angle {
        const SHAPE: Shape = Shape::Number;
        const SUFFIX: &'static str = "_deg";
        type Out<'a> = f64;
        fn out(&self) -> f64 {
            libm::round(crate::quantity::Printed::in_unit(*self) * 1e4) / 1e4
        }
    }
    impl<T: Value> Value for Option<T> {
        const SHAPE: Shape = Shape::OrNull(&T::SHAPE);
        const SUFFIX: &'static str = T::SUFFIX;
        type Out<'a>
            = Option<T::Out<'a>>
        where
            T: 'a;
        fn out(&self) -> Self::Out<'_> {
            self.as_ref().map(Value::out)
        }
    }
    impl<T: Value> Value for Vec<T> {
        const SHAPE: Shape = Shape::List(&T::SHAPE);
        const SUFFIX: &'static str = T::SUFFIX;
        type Out<'a>
            = Vec<T::Out<'a>>
        where
            T: 'a;
        fn out(&self) -> Self::Out<'_> {
            self.iter().map(Value::out).collect()
        }
    }

    impl<T: serde::Serialize> Value for alloc::boxed::Box<T> {
        type Out<'a>
            = &'a T
        where
            T: 'a;
        fn out(&self) -> &T {
            self
        }
    }

    /// Values that go out as they serialize by themselves, and how they look; said beside their type.
    macro_rules! values_as_they_are {
        ($($kind:ty $(=> $shape:expr)?),* $(,)?) => {$(
            impl $crate::fact::Value for $kind {
                $( const SHAPE: $crate::read::Shape = $shape; )?
                type Out<'a> = &'a Self;
                fn out(&self) -> &Self {
                    self
                }
            }
        )*};
    }
    pub(crate) use values_as_they_are;

    const TEXT: Shape = Shape::Text { what: "text" };

    values_as_they_are!(
        bool => Shape::YesNo,
        u32 => Shape::Count,
        usize => Shape::Count,
        f64 => Shape::Number,
        String => TEXT,
        &'static str => TEXT,
        Cow<'static, str> => TEXT,
    );
}
#[cfg(feature = "serde")]
pub(crate) use values::values_as_they_are;

/// Declares facts: an enum whose variants hold numbers and codes. As JSON each is its code, its values and its sentence.
macro_rules! facts {
    ($( $(#[$meta:meta])* $name:ident { $( $(#[doc = $doc:literal])* $variant:ident $({ $($field:ident : $kind:ty),* $(,)? })? ,)* } )*) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, strum::IntoStaticStr, strum::VariantNames)]
        #[strum(serialize_all = "snake_case")]
        pub enum $name {
            $( $(#[doc = $doc])* $variant $({ $(#[doc = concat!("`", stringify!($field), "`")] $field: $kind),* })?, )*
        }

        impl $name {
            /// Its code, as JSON has it.
            #[must_use]
            pub fn code(&self) -> &'static str {
                self.into()
            }
        }

        #[cfg(feature = "serde")]
        impl $crate::fact::Coded for $name {
            #[allow(unused_imports, reason = "a list of facts may hold none with values")]
            fn form() -> $crate::read::FactForm {
                use $crate::fact::Value;
                let values: &[(&'static str, &'static [$crate::read::ValueForm])] = &[$(
                    (concat!($($doc),*), &[$($( $crate::read::ValueForm {
                        name: stringify!($field),
                        unit: <$kind as Value>::SUFFIX,
                        shape: <$kind as Value>::SHAPE,
                    }, )*)?]),
                )*];
                let codes = <Self as strum::VariantNames>::VARIANTS.iter().zip(values);
                $crate::read::FactForm {
                    room: module_path!(),
                    name: stringify!($name),
                    codes: codes.map(|(code, (words, values))| (*code, *words, *values)).collect(),
                    kinds: alloc::vec::Vec::new(),
                }
            }
            #[allow(unused_imports, reason = "a list of facts may hold none with values")]
            fn put<M: serde::ser::SerializeMap>(&self, map: &mut M) -> Result<(), M::Error> {
                use $crate::fact::Value;
                map.serialize_entry("code", self.code())?;
                match *self {
                    $( Self::$variant $({ $(ref $field),* })? => { $($( map.serialize_entry(
                        &alloc::format!("{}{}", stringify!($field), <$kind as Value>::SUFFIX), &$field.out())?; )*)? return Ok(()); } )*
                }
            }
        }

        #[cfg(feature = "serde")]
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                $crate::fact::with_words(self, serializer)
            }
        }

        #[cfg(feature = "serde")]
        impl $crate::read::Told for $name {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Fact(<Self as $crate::fact::Coded>::form);
        }
    )*};
}
pub(crate) use facts;

/// Declares what is one of several kinds of facts: each kind turns into it.
macro_rules! fact_kinds {
    ($( $(#[$meta:meta])* $name:ident { $( $(#[doc = $doc:literal])* $variant:ident($kind:ty), )* } )*) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub enum $name {
            $( $(#[doc = $doc])* $variant($kind), )*
        }

        $( impl From<$kind> for $name {
            fn from(fact: $kind) -> Self {
                Self::$variant(fact)
            }
        } )*

        impl $name {
            /// Its code, as JSON has it.
            #[must_use]
            pub fn code(&self) -> &'static str {
                match self { $( Self::$variant(fact) => fact.code(), )* }
            }
        }

        impl core::fmt::Display for $name {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                match self { $( Self::$variant(fact) => core::fmt::Display::fmt(fact, f), )* }
            }
        }

        impl $crate::fact::Worded for $name {
            fn about(&self) -> alloc::borrow::Cow<'static, str> {
                match self { $( Self::$variant(fact) => $crate::fact::Worded::about(fact), )* }
            }
            fn why(&self) -> alloc::borrow::Cow<'static, str> {
                match self { $( Self::$variant(fact) => $crate::fact::Worded::why(fact), )* }
            }
            fn size_count(&self) -> Option<usize> {
                match self { $( Self::$variant(fact) => $crate::fact::Worded::size_count(fact), )* }
            }
        }

        #[cfg(feature = "serde")]
        impl $crate::fact::Coded for $name {
            fn form() -> $crate::read::FactForm {
                $crate::read::FactForm {
                    room: module_path!(),
                    name: stringify!($name),
                    codes: alloc::vec::Vec::new(),
                    kinds: alloc::vec::Vec::from([$( <$kind as $crate::fact::Coded>::form(), )*]),
                }
            }
            fn put<M: serde::ser::SerializeMap>(&self, map: &mut M) -> Result<(), M::Error> {
                match self { $( Self::$variant(fact) => $crate::fact::Coded::put(fact, map), )* }
            }
        }

        #[cfg(feature = "serde")]
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                $crate::fact::with_words(self, serializer)
            }
        }

        #[cfg(feature = "serde")]
        impl $crate::read::Told for $name {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Fact(<Self as $crate::fact::Coded>::form);
        }
    )*};
}
pub(crate) use fact_kinds;

/// Declares what goes out as it is held: the struct, how each field is told where that is not as it stands, and behind `;`
/// what is told besides.
macro_rules! outgoing {
    ($( $(#[$meta:meta])* $name:ident ($this:ident) { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty $(as $label:ident : $told:ty = $value:expr)? ,)* $(; $( $(#[doc = $also:literal])+ $said:ident : $says:ty = $say:expr, )*)? } )*) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( #[doc = $words] $(#[doc = $more])* pub $field: $kind, )*
        }

        #[cfg(feature = "serde")]
        impl $name {
            pub(crate) const FIELDS: &'static [$crate::read::Field] = &[
                $( $crate::fact::outgoing!(@field ($words $(, $more)*) $field : $kind $(as $label : $told)?), )*
                $($( $crate::fact::outgoing!(@field ($($also),+) $said : $says), )*)?
            ];
        }

        #[cfg(feature = "serde")]
        impl $crate::read::Told for $name {
            const SHAPE: $crate::read::Shape = $crate::read::goes_out!(@shape $name);
        }

        #[cfg(feature = "serde")]
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeStruct;
                let $this = self;
                let mut out = serializer.serialize_struct(stringify!($name), Self::FIELDS.len())?;
                $( $crate::fact::outgoing!(@put out, $this, $field $(, $label, $value)?); )*
                $($( out.serialize_field(stringify!($said), &$say)?; )*)?
                out.end()
            }
        }
    )*};
    (@field ($($words:expr),+) $field:ident : $kind:ty as $label:ident : $told:ty) => {
        $crate::fact::outgoing!(@field ($($words),+) $label : $told)
    };
    (@field ($($words:expr),+) $field:ident : $kind:ty) => {
        $crate::read::Field {
            name: stringify!($field),
            words: concat!($($words),+),
            shape: <$kind as $crate::read::Told>::SHAPE,
            needed: true,
        }
    };
    (@put $out:ident, $this:ident, $field:ident, $label:ident, $value:expr) => {
        $out.serialize_field(stringify!($label), &$value)?
    };
    (@put $out:ident, $this:ident, $field:ident) => {
        $out.serialize_field(stringify!($field), &$this.$field)?
    };
}
pub(crate) use outgoing;

/// Declares closed lists of words: each variant is told and read as its name with underscores.
macro_rules! closed_words {
    ($( $(#[$meta:meta])* $name:ident { $( $(#[$about:meta])* $variant:ident ),* $(,)? } )*) => {$(
        $(#[$meta])*
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, strum::Display, strum::EnumString, strum::EnumIter,
            strum::IntoStaticStr,
        )]
        #[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
        #[strum(serialize_all = "snake_case")]
        pub enum $name { $( $(#[$about])* $variant, )* }
    )*};
}
pub(crate) use closed_words;
