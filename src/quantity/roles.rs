//! Role newtypes: two lengths that could be swapped are two types.

use core::fmt;

use super::{Length, in_mm, mm};
use crate::{Error, ErrorKind};

/// No interface of a bicycle frame is larger; a value beyond it was read in another unit.
const LARGEST_MM: f64 = 1000.0;

fn finite(field: &'static str, length: Length) -> Result<Length, Error> {
    if length.value.is_finite() {
        Ok(length)
    } else {
        Err(Error::new(
            ErrorKind::NotFinite,
            field,
            length.value,
            "must be a finite length",
            "give the reading with its unit, e.g. `27.2 mm`",
        ))
    }
}

fn of_a_frame(field: &'static str, length: Length) -> Result<Length, Error> {
    let length = finite(field, length)?;
    if length > mm(LARGEST_MM) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            in_mm(length),
            "is beyond 1000 mm, larger than any frame interface",
            "check the unit",
        ));
    }
    Ok(length)
}

fn refused(field: &'static str, length: Length, problem: &'static str) -> Error {
    let remedy = "measure again; a size has no sign";
    Error::new(ErrorKind::OutOfRange, field, in_mm(length), problem, remedy)
}

/// A size under this name.
pub(crate) fn positive(field: &'static str, length: Length) -> Result<Length, Error> {
    let length = of_a_frame(field, length)?;
    if length <= mm(0.0) {
        return Err(refused(field, length, "must be above 0 mm"));
    }
    Ok(length)
}

/// A length under this name that may be nothing: a depth that was not bored, a spacer that is not there.
pub(crate) fn not_negative(field: &'static str, length: Length) -> Result<Length, Error> {
    let length = of_a_frame(field, length)?;
    if length < mm(0.0) {
        return Err(refused(field, length, "must not be below 0 mm"));
    }
    Ok(length)
}

macro_rules! role {
    ($(#[$doc:meta])* $name:ident, $field:literal, $check:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(Length);

        impl $name {
            /// Takes a length into this role.
            ///
            /// # Errors
            /// `NotFinite` for NaN and infinities; for sizes `OutOfRange` at or below 0 mm and above 1000 mm.
            pub fn new(length: Length) -> Result<Self, Error> {
                $check($field, length).map(Self)
            }
            /// The plain length.
            #[must_use]
            pub const fn length(self) -> Length {
                self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                in_mm(self.0).fmt(f)
            }
        }
    };
}

role! {
    /// Inside diameter of a hole, bore or seat. Unit: length.
    ///
    /// A bore cannot be taken for a shaft:
    /// ```
    /// use framegauge::{BoreDiameter, Clearance, ShaftDiameter, mm};
    /// let bore = BoreDiameter::new(mm(27.25)).unwrap();
    /// let post = ShaftDiameter::new(mm(27.15)).unwrap();
    /// assert_eq!(Clearance::between(bore, post).to_string(), "0.100 mm");
    /// ```
    /// ```compile_fail
    /// use framegauge::{BoreDiameter, Clearance, ShaftDiameter, mm};
    /// let bore = BoreDiameter::new(mm(27.25)).unwrap();
    /// let post = ShaftDiameter::new(mm(27.15)).unwrap();
    /// let swapped = Clearance::between(post, bore);
    /// ```
    BoreDiameter, "bore diameter", positive
}
role! {
    /// Outside diameter of a post, cup, ring or axle. Unit: length.
    ///
    /// ```
    /// use framegauge::{ShaftDiameter, mm};
    /// assert!(ShaftDiameter::new(mm(f64::NAN)).is_err());
    /// assert_eq!(ShaftDiameter::new(mm(34.1)).unwrap().to_string(), "34.100 mm");
    /// ```
    ShaftDiameter, "shaft diameter", positive
}
role! {
    /// Half a diameter, kept apart from diameters. Unit: length.
    ///
    /// ```
    /// use framegauge::{Radius, mm};
    /// assert_eq!(Radius::new(mm(22.0)).unwrap().to_string(), "22.000 mm");
    /// ```
    Radius, "radius", positive
}
role! {
    /// Distance between two faces. Unit: length.
    ///
    /// ```
    /// use framegauge::{Width, mm};
    /// assert_eq!(Width::new(mm(68.0)).unwrap().to_string(), "68.000 mm");
    /// ```
    Width, "width", positive
}
role! {
    /// Depth along an axis, from a face inwards. Unit: length.
    ///
    /// ```
    /// use framegauge::{Depth, mm};
    /// assert_eq!(Depth::new(mm(12.5)).unwrap().to_string(), "12.500 mm");
    /// ```
    Depth, "depth", positive
}
role! {
    /// Thickness of a tube wall or shim. Unit: length.
    ///
    /// ```
    /// use framegauge::{Wall, mm};
    /// assert_eq!(Wall::new(mm(0.9)).unwrap().to_string(), "0.900 mm");
    /// ```
    Wall, "wall", positive
}
role! {
    /// Bore less shaft, on diameter. Positive: gap. Negative: interference.
    ///
    /// ```
    /// use framegauge::{Clearance, mm};
    /// assert_eq!(Clearance::new(mm(-0.05)).unwrap().as_interference().to_string(), "0.050 mm");
    /// ```
    Clearance, "clearance", finite
}
role! {
    /// Shaft less bore, on diameter. Positive: press. Negative: gap.
    ///
    /// ```
    /// use framegauge::{Interference, mm};
    /// assert_eq!(Interference::new(mm(0.05)).unwrap().as_clearance().to_string(), "-0.050 mm");
    /// ```
    Interference, "interference", finite
}

impl Clearance {
    /// The clearance of this shaft in this bore.
    #[must_use]
    pub fn between(bore: BoreDiameter, shaft: ShaftDiameter) -> Self {
        Self(bore.0 - shaft.0)
    }
    /// The same fit seen as interference.
    #[must_use]
    pub fn as_interference(self) -> Interference {
        Interference(-self.0)
    }
}

impl Interference {
    /// The interference of this shaft in this bore.
    #[must_use]
    pub fn between(bore: BoreDiameter, shaft: ShaftDiameter) -> Self {
        Self(shaft.0 - bore.0)
    }
    /// The same fit seen as clearance.
    #[must_use]
    pub fn as_clearance(self) -> Clearance {
        Clearance(-self.0)
    }
}
