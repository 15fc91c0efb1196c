//! How a length prints.

use core::fmt;

use super::{Length, settled_mm};

/// A length that prints in millimetres, three decimals unless the format asks for another precision.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InMillimetres(Length);

/// Prints a length in millimetres with its unit.
///
/// ```
/// use framegauge::{in_mm, mm};
/// assert_eq!(in_mm(mm(0.05)).to_string(), "0.050 mm");
/// assert_eq!(format!("{:.1}", in_mm(mm(68.0))), "68.0 mm");
/// ```
#[must_use]
pub const fn in_mm(length: Length) -> InMillimetres {
    InMillimetres(length)
}

impl fmt::Display for InMillimetres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let precision = f.precision().unwrap_or(3).min(6);
        // Rounded from whole nanometres, halves away from zero, as tables are: 14.2875 prints 14.288.
        let step = match precision {
            0 => 1e6,
            1 => 1e5,
            2 => 1e4,
            3 => 1e3,
            4 => 1e2,
            5 => 1e1,
            _ => 1.0,
        };
        let steps = libm::round(settled_mm(self.0) * 1e6 / step);
        write!(f, "{:.precision$} mm", steps * step / 1e6 + 0.0)
    }
}

/// A length that prints in inches, four decimals unless the format asks for another precision.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InInches(Length);

/// Prints a length in inches with its unit.
///
/// ```
/// use framegauge::{in_inches, inch};
/// assert_eq!(in_inches(inch(1.370)).to_string(), "1.3700 in");
/// ```
#[must_use]
pub const fn in_inches(length: Length) -> InInches {
    InInches(length)
}

impl fmt::Display for InInches {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let precision = f.precision().unwrap_or(4);
        let inches = settled_mm(self.0) / 25.4;
        // What is rounded to nothing has no sign.
        let sign_only = libm::fabs(inches) * libm::pow(10.0, precision as f64) < 0.5;
        write!(f, "{:.precision$} in", if sign_only { 0.0 } else { inches })
    }
}
