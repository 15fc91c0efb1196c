//! One declaration for a result type and its serialized form: the field, its type, how it is written, and its name
//! with the unit. Numbers are settled on the way out.

/// Declares a public result type; with feature `serde` it serializes under the names given, and with what it says besides.
macro_rules! report {
    ($(#[$meta:meta])* $name:ident { $( $(#[$field_meta:meta])* $field:ident : $type:ty as $form:ident $label:ident ),* $(,)? }
        $(and { $( $more:ident => $said:expr ),* $(,)? })?) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( $(#[$field_meta])* pub $field: $type, )*
        }

        #[cfg(feature = "serde")]
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeStruct;
                let fields = [$(stringify!($label)),* $(, $(stringify!($more)),*)?].len();
                let mut out = serializer.serialize_struct(stringify!($name), fields)?;
                $( out.serialize_field(stringify!($label), &crate::face::report::form::$form(&self.$field))?; )*
                $( $( out.serialize_field(stringify!($more), &($said)(self))?; )* )?
                out.end()
            }
        }
    };
}
pub(crate) use report;

/// How a field is written.
#[cfg(feature = "serde")]
pub(crate) mod form {
    use crate::quantity::{Angle, Length, Printed, settled, settled_mm};

    /// Millimetres, settled to whole nanometres.
    pub(crate) fn mm(length: &Length) -> f64 {
        settled_mm(*length)
    }
    /// Millimetres or null.
    pub(crate) fn mm_or_null(length: &Option<Length>) -> Option<f64> {
        length.map(settled_mm)
    }
    /// Degrees, free of binary noise.
    pub(crate) fn degrees(angle: &Angle) -> f64 {
        // A ten-thousandth of a degree is finer than any reading of a face.
        settled(angle.in_unit(), 1e4)
    }
    /// A share or factor, to six places.
    pub(crate) fn share(share: &f64) -> f64 {
        settled(*share, 1e6)
    }
    /// As the type itself serializes.
    pub(crate) fn settled_share<S: serde::Serializer>(
        value: &f64,
        serializer: S,
    ) -> Result<S::Ok, S::Error> {
        serializer.serialize_f64(share(value))
    }
    pub(crate) fn own<T>(value: &T) -> &T {
        value
    }
}

#[cfg(all(test, feature = "serde"))]
mod tests {
    use super::form::{degrees, share};
    use crate::quantity::deg;

    /// What is rounded to nothing has no sign: `-0.0` in an answer reads like a lean to the other side.
    #[test]
    fn nothing_has_no_sign() {
        for little in [0.0, -0.0, -1e-9] {
            assert!(degrees(&deg(little)).is_sign_positive(), "{little} deg");
            assert!(share(&little).is_sign_positive(), "{little}");
        }
        assert_eq!(
            (degrees(&deg(-0.00016)), share(&-0.0000016)),
            (-0.0002, -0.000002)
        );
    }
}
