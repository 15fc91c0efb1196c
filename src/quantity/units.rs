//! Const constructors. The only file that builds quantities by struct literal, because uom has no const constructor.

use core::marker::PhantomData;

pub use uom::si::f64::{
    Angle, Area, Force, Length, Pressure, TemperatureCoefficient as Expansion, TemperatureInterval,
    Torque,
};

macro_rules! constructor {
    ($(#[$doc:meta])* $name:ident -> $quantity:ident, $scale:expr) => {
        $(#[$doc])*
        #[must_use]
        pub const fn $name(value: f64) -> $quantity {
            $quantity { dimension: PhantomData, units: PhantomData, value: value * $scale }
        }
    };
}

constructor! {
    /// A length in millimetres.
    ///
    /// ```
    /// use framegauge::{Length, mm};
    /// const POST: Length = mm(27.2);
    /// assert_eq!(framegauge::in_mm(POST).to_string(), "27.200 mm");
    /// ```
    mm -> Length, 1e-3
}
constructor! {
    /// A length in micrometres.
    ///
    /// ```
    /// assert_eq!(framegauge::in_mm(framegauge::um(11.0)).to_string(), "0.011 mm");
    /// ```
    um -> Length, 1e-6
}
constructor! {
    /// A plane angle in degrees.
    ///
    /// ```
    /// use uom::si::angle::radian;
    /// assert!((framegauge::deg(180.0).get::<radian>() - core::f64::consts::PI).abs() < 1e-15);
    /// # use framegauge::uom;
    /// ```
    deg -> Angle, core::f64::consts::PI / 180.0
}
constructor! {
    /// A pressure or stress in megapascals (N/mm²).
    ///
    /// ```
    /// assert!(framegauge::mpa(205_000.0) == framegauge::gpa(205.0));
    /// ```
    mpa -> Pressure, 1e6
}
constructor! {
    /// A pressure or modulus in gigapascals.
    ///
    /// ```
    /// assert!(framegauge::gpa(68.9) > framegauge::mpa(68_000.0));
    /// ```
    gpa -> Pressure, 1e9
}
constructor! {
    /// A force in newtons.
    ///
    /// ```
    /// assert!(framegauge::newton(10.0) > framegauge::newton(9.0));
    /// ```
    newton -> Force, 1.0
}
constructor! {
    /// A torque in newton metres.
    ///
    /// ```
    /// assert!(framegauge::newton_metre(40.0) > framegauge::newton_metre(35.0));
    /// ```
    newton_metre -> Torque, 1.0
}
constructor! {
    /// A temperature difference in kelvins.
    ///
    /// ```
    /// assert!(framegauge::kelvin(3.7) > framegauge::kelvin(0.0));
    /// ```
    kelvin -> TemperatureInterval, 1.0
}
constructor! {
    /// A coefficient of thermal expansion in 1/K.
    ///
    /// ```
    /// let steel = framegauge::per_kelvin(11.5e-6);
    /// assert!(steel < framegauge::per_kelvin(23.6e-6));
    /// ```
    per_kelvin -> Expansion, 1.0
}

/// A length in inches. The exact ratio 254/10 is folded in first, so one rounding remains.
///
/// ```
/// assert_eq!(framegauge::in_mm(framegauge::inch(1.370)).to_string(), "34.798 mm");
/// ```
#[must_use]
pub const fn inch(value: f64) -> Length {
    mm(value * 254.0 / 10.0)
}

/// A length of `numerator/denominator` inches, with one rounding.
///
/// ```
/// assert_eq!(framegauge::in_mm(framegauge::inch_fraction(9, 16)).to_string(), "14.288 mm");
/// ```
#[must_use]
pub const fn inch_fraction(numerator: u32, denominator: u32) -> Length {
    mm((numerator as f64 * 254.0) / (denominator as f64 * 10.0))
}

/// The length in millimetres as a bare number, for the private kernels.
///
/// ```
/// assert!((framegauge::to_mm(framegauge::mm(44.0)) - 44.0).abs() < 1e-12);
/// ```
#[must_use]
pub const fn to_mm(length: Length) -> f64 {
    length.value * 1e3
}

/// The length settled to the nearest whole nanometre (halves away from zero).
///
/// Exact for any figure printed to 0.000001 mm, 0.00001 in or 1/64 in. Lengths beyond ±9 000 km and NaN have no
/// settled value and give `None`; every public constructor refuses them long before.
///
/// ```
/// use framegauge::{mm, nanometres};
/// // In binary 34.85 - 34.80 is more than 0.05; settled it is not.
/// assert_eq!(nanometres(mm(34.85) - mm(34.80)), nanometres(mm(0.05)));
/// ```
#[must_use]
pub fn nanometres(length: Length) -> Option<i64> {
    let scaled = libm::round(length.value * 1e9);
    if scaled.abs() < 9.0e15 {
        // Whole and far inside i64, so the conversion is exact.
        #[expect(clippy::cast_possible_truncation, reason = "range checked just above")]
        Some(scaled as i64)
    } else {
        None
    }
}

/// A number rounded to so many steps per unit, without a minus before nothing.
pub(crate) fn settled(value: f64, per_unit: f64) -> f64 {
    // -0.0 would print a sign that means nothing.
    libm::round(value * per_unit) / per_unit + 0.0
}

/// Millimetres settled to whole nanometres: the form in which numbers are serialized.
///
/// ```
/// use framegauge::{mm, settled_mm};
/// assert_eq!(settled_mm(mm(34.85) - mm(34.80)), 0.05);
/// ```
#[must_use]
pub fn settled_mm(length: Length) -> f64 {
    // -0.0 would print a sign that means nothing.
    libm::round(length.value * 1e9) / 1e6 + 0.0
}
