//! The area that a screw breaks across.

use super::{ThreadForm, ThreadSize};
use crate::quantity::{Area, Length, ShaftDiameter, in_mm, mm};
use crate::{Error, ErrorKind};

/// Two constants are in use for the area that a screw breaks across.
///
/// ```
/// use framegauge::thread::StressAreaRule;
/// assert_eq!("iso898".parse::<StressAreaRule>().unwrap(), StressAreaRule::Iso898);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum StressAreaRule {
    /// ISO 898-1: (π/4) ((d2 + d3)/2)², that is (π/4) (d − 0.9382 P)². ISO threads.
    Iso898,
    /// FED-STD-H28/2B: (π/4) (D − 0.9743/n)². Unified threads.
    FedStdH28,
}

/// The tensile stress area of a screw.
///
/// # Errors
/// `NotApplicable` for a form that the rule is not made for; no rule for BSC and Whitworth screws was found.
///
/// ```
/// use framegauge::{mm, thread::{StressAreaRule, stress_area}};
/// let area = stress_area(&"M10x1.5".parse().unwrap(), StressAreaRule::Iso898).unwrap();
/// assert!(((area / (mm(1.0) * mm(1.0))).value - 57.99).abs() < 0.01);
/// assert!(stress_area(&"M10x1.5".parse().unwrap(), StressAreaRule::FedStdH28).is_err());
/// ```
pub fn stress_area(size: &ThreadSize, rule: StressAreaRule) -> Result<Area, Error> {
    let factor = match (rule, size.form()) {
        (StressAreaRule::Iso898, ThreadForm::IsoMetric | ThreadForm::IsoInch) => 0.938_194,
        (StressAreaRule::FedStdH28, ThreadForm::Unified) => 0.974_279,
        _ => {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "stress area rule",
                alloc::format!("{rule} on {size}"),
                "this rule is not made for this form",
                "iso898 for ISO threads, fed_std_h28 for Unified ones; none was found for BSC and Whitworth",
            ));
        }
    };
    let across = size.major() - mm(factor * size.pitch().to_mm());
    Ok(across * across * (core::f64::consts::PI / 4.0))
}

/// The stress area of a Unified screw of very strong steel: π (Emin/2 − 0.16238/n)², Emin the least pitch diameter.
///
/// FED-STD-H28/2B. Sources disagree from which strength on it is to be used: one says 180 ksi, others 100 ksi.
///
/// # Errors
/// `NotFinite` and `OutOfRange` for a diameter that is none or that no thread of this size has; `NotApplicable` for other
/// forms.
///
/// ```
/// use framegauge::{inch, thread::{StressAreaRule, high_strength_stress_area, stress_area}};
/// let size = "1/2-20 UN".parse().unwrap();
/// let strong = high_strength_stress_area(&size, inch(0.4619)).unwrap();
/// assert!(strong < stress_area(&size, StressAreaRule::FedStdH28).unwrap());
/// ```
pub fn high_strength_stress_area(
    size: &ThreadSize,
    pitch_diameter_min: Length,
) -> Result<Area, Error> {
    if size.form() != ThreadForm::Unified {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "thread form",
            size,
            "this rule is made for Unified screws",
            "use the ISO 898-1 rule for ISO threads",
        ));
    }
    let least = ShaftDiameter::new(pitch_diameter_min)
        .map_err(|e| e.within("pitch diameter"))?
        .length();
    if !size.can_have_pitch_diameter(least) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "pitch diameter",
            in_mm(least),
            alloc::format!("no {size} has this pitch diameter"),
            "take the least of its limits; check the unit",
        ));
    }
    let radius = least / 2.0 - mm(0.162_38 * size.pitch().to_mm());
    Ok(radius * radius * core::f64::consts::PI)
}
