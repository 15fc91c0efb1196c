//! Known biases of readings, offered as corrections. Nothing here is ever applied silently: the caller shifts or scales
//! the reading, and says so.

use crate::quantity::{Angle, BoreDiameter, Length, deg, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// How much the flat jaws of an inside caliper read low in a bore: D − √(D² − a²), a the width of the jaw's land.
///
/// # Errors
/// `NotFinite`, `OutOfRange` for a land that is negative or as wide as the bore.
///
/// ```
/// use framegauge::{BoreDiameter, in_mm, measure::{Reading, jaw_correction}, mm};
/// let bore = BoreDiameter::new(mm(27.2)).unwrap();
/// let low = jaw_correction(bore, mm(0.5)).unwrap();
/// assert_eq!(format!("{:.4}", in_mm(low)), "0.0046 mm");
/// let corrected = Reading::new(mm(27.2), mm(0.026)).unwrap().shifted(low);
/// assert_eq!(in_mm(corrected.value()).to_string(), "27.205 mm");
/// ```
pub fn jaw_correction(bore: BoreDiameter, land: Length) -> Result<Length, Error> {
    let (d, a) = (to_mm(bore.length()), to_mm(land));
    if !a.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "land",
            a,
            "must be finite",
            "measure the flat of the jaw",
        ));
    }
    if !(0.0..d).contains(&a) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "land",
            in_mm(land),
            "a jaw that enters the bore is narrower than it",
            "measure the flat of the jaw",
        ));
    }
    // a²/(D + √…) instead of the difference, which would cancel.
    Ok(mm(a * a / (d + libm::sqrt(d * d - a * a))))
}

/// The factor on the reading of a lever indicator whose stylus stands at an angle to the surface: its cosine.
///
/// # Errors
/// `NotFinite`; `OutOfRange` from 75 degrees on, where nothing is left to read.
///
/// ```
/// use framegauge::{deg, measure::lever_factor};
/// assert!((lever_factor(deg(30.0)).unwrap() - 0.87).abs() < 0.005);
/// ```
pub fn lever_factor(angle: Angle) -> Result<f64, Error> {
    let radians = angle.value;
    if !radians.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "angle",
            radians,
            "must be finite",
            "0 for a stylus along the surface",
        ));
    }
    if libm::fabs(radians) >= deg(75.0).value {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "angle",
            alloc::format!("{:.1} deg", radians / deg(1.0).value),
            "the stylus stands too steep to read",
            "lay it below 30 degrees",
        ));
    }
    Ok(libm::cos(radians))
}
