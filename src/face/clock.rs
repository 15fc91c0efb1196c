//! Directions on a face as a mechanic says them: by the clock, seen from outside.

use core::f64::consts::TAU;
use core::fmt;

use crate::quantity::{Angle, deg};
use crate::{Error, ErrorKind};

/// A direction on a face seen from outside: 0 at the top, clockwise, below a full turn.
///
/// ```
/// use framegauge::{deg, face::Clock};
/// assert_eq!(Clock::new(deg(135.0)).unwrap().to_string(), "135 deg (4:30)");
/// assert!(Clock::new(deg(360.0)).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Clock(f64);

impl Clock {
    /// A direction from an angle, 0 up to but not including 360 degrees.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` below 0 and from a full turn on.
    pub fn new(angle: Angle) -> Result<Self, Error> {
        let radians = angle.value;
        if !radians.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "angle",
                radians,
                "an angle must be finite",
                "give the angle in degrees, e.g. `45 deg`",
            ));
        }
        // A degree value such as 359.9999999999 must not be refused for its last bit; 360 itself must.
        if !(0.0..TAU * (1.0 - 1e-12)).contains(&radians) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "angle",
                alloc::format!("{} deg", radians / deg(1.0).value),
                "is not within one turn",
                "give 0 to below 360 degrees, clockwise from the top, seen from outside",
            ));
        }
        Ok(Self(radians))
    }

    /// The top, 12 o'clock.
    #[must_use]
    pub const fn top() -> Self {
        Self(0.0)
    }

    /// The direction of a point to the right by `x` and up by `y`; `None` for the centre itself.
    pub(crate) fn towards(x: f64, y: f64) -> Option<Self> {
        if x == 0.0 && y == 0.0 {
            return None;
        }
        Some(Self(within_one_turn(libm::atan2(x, y))))
    }

    /// The angle, clockwise from the top.
    #[must_use]
    pub const fn angle(self) -> Angle {
        deg(self.0 / deg(1.0).value)
    }

    /// The angle in degrees, free of binary noise.
    #[must_use]
    pub fn degrees(self) -> f64 {
        within_a_turn(libm::round(self.0 / deg(1.0).value * 1e6) / 1e6)
    }

    pub(crate) const fn radians(self) -> f64 {
        self.0
    }

    /// How far another direction lies from this one, 0 to 180 degrees.
    ///
    /// ```
    /// use framegauge::{deg, face::Clock};
    /// let gap = Clock::new(deg(350.0)).unwrap().apart(Clock::new(deg(10.0)).unwrap());
    /// assert!((gap.value - deg(20.0).value).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn apart(self, other: Self) -> Angle {
        let gap = libm::fabs(self.0 - other.0);
        deg(libm::fmin(gap, TAU - gap) / deg(1.0).value)
    }
}

/// An angle in radians within one turn: from 0 up to but not including a full one.
pub(crate) fn within_one_turn(radians: f64) -> f64 {
    let rest = libm::fmod(radians, TAU);
    // -0.0 has a sign too, and a full turn is the top again.
    let turned = if rest.is_sign_negative() {
        rest + TAU
    } else {
        rest
    };
    if turned >= TAU { 0.0 } else { turned }
}

/// What rounding lifted to a full turn is the top again.
fn within_a_turn(degrees: f64) -> f64 {
    if degrees >= 360.0 { 0.0 } else { degrees }
}

impl fmt::Display for Clock {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Minutes of the clock face, to the nearest five: a face is not read closer.
        let twelfths = libm::round(self.0 / TAU * 144.0);
        let hour = libm::floor(twelfths / 12.0);
        let minute = (twelfths - hour * 12.0) * 5.0;
        let hour = if (1.0..12.0).contains(&hour) {
            hour
        } else {
            12.0
        };
        // `{:#}` is the direction on a clock alone.
        if f.alternate() {
            return write!(f, "{hour:.0}:{minute:02.0}");
        }
        let degrees = within_a_turn(libm::round(self.degrees()));
        write!(f, "{degrees} deg ({hour:.0}:{minute:02.0})")
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Clock {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        crate::quantity::serial::serialized!(
            serializer,
            Clock {
                clockwise_from_top_deg: within_a_turn(libm::round(self.degrees() * 1e3) / 1e3),
                words: alloc::format!("{self}"),
            }
        )
    }
}
