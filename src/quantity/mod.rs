//! Quantities with units, the roles that keep two lengths from being swapped, pitch, and their text form.
//!
//! Public signatures take and return `uom::si::f64` quantities. A bare number is never a length.

mod pitch;
mod roles;
mod shown;
mod text;
mod toleranced;
mod units;

pub use pitch::Pitch;
pub use roles::{BoreDiameter, Clearance, Depth, Interference, Radius, ShaftDiameter, Wall, Width};
pub(crate) use roles::{not_negative, positive};
pub use shown::{InInches, InMillimetres, in_inches, in_mm};
pub use text::{Printed, Ratio, decimal, parse_length};
pub use toleranced::{Toleranced, parse_toleranced};
pub(crate) use units::settled;
pub use units::{
    Angle, Area, Expansion, Force, Length, Pressure, TemperatureInterval, Torque, deg, gpa, inch,
    inch_fraction, kelvin, mm, mpa, nanometres, newton, newton_metre, per_kelvin, settled_mm,
    to_mm, um,
};

#[cfg(feature = "serde")]
pub mod serial;
