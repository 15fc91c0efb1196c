//! Stresses in two pressed rings and the pressures at which they first yield.

use super::class::Feature;
use crate::quantity::Pressure;

/// Which yield rule a pressure limit follows. They differ by up to 15 % for thin hubs.
///
/// ```
/// use framegauge::fit::YieldRule;
/// assert_eq!(YieldRule::default(), YieldRule::VonMises);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, strum::Display)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum YieldRule {
    /// Von Mises in plane stress at the hub bore: p = σ (1−Q²) / √(3+Q⁴), Q = d/D. The safer of the two.
    #[default]
    VonMises,
    /// DIN 7190 style for the hub: p = σ (1−Q²) / √3. The shaft is judged by von Mises under either rule.
    Din7190,
}

/// Pressure at first yield of each part; `None` where no strength is known.
///
/// ```
/// use framegauge::{fit::{Feature, YieldPressure, YieldRule}, mpa};
/// let limits = YieldPressure { rule: YieldRule::VonMises, hub: Some(mpa(40.0)), shaft: Some(mpa(90.0)) };
/// assert_eq!(limits.first(), Some((Feature::Hole, mpa(40.0))));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct YieldPressure {
    /// The rule for the hub.
    pub rule: YieldRule,
    /// Outer part.
    pub hub: Option<Pressure>,
    /// Inner part.
    pub shaft: Option<Pressure>,
}

impl YieldPressure {
    /// The part that yields at the lower pressure, and that pressure; the outer part when both yield at once.
    #[must_use]
    pub fn first(&self) -> Option<(Feature, Pressure)> {
        match (self.hub, self.shaft) {
            (Some(hub), Some(shaft)) if shaft < hub => Some((Feature::Shaft, shaft)),
            (Some(hub), _) => Some((Feature::Hole, hub)),
            (None, Some(shaft)) => Some((Feature::Shaft, shaft)),
            (None, None) => None,
        }
    }
}

/// Stresses in both parts; tension is positive.
///
/// ```
/// use framegauge::{Interference, Ratio, fit::{JointShape, Material, MaterialKind, Press, PressJoint}, gpa, mm};
/// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap();
/// let shape = JointShape { diameter: mm(100.0), shaft_bore: None, hub_outside: mm(150.0), length: mm(50.0) };
/// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
/// let stresses = joint.stresses(Press::new(Interference::new(mm(0.1)).unwrap()).unwrap());
/// // An online shrink-fit page prints 151.7 MPa.
/// assert!((stresses.hub_bore_hoop.value / 1e6 - 151.7).abs() < 0.05);
/// assert!(stresses.shaft_outside_hoop.value < 0.0 && stresses.shaft_bore_hoop.is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stresses {
    /// Contact pressure; the radial stress at the joint is its negative.
    pub pressure: Pressure,
    /// Hoop stress at the bore of the outer part.
    pub hub_bore_hoop: Pressure,
    /// Equivalent stress there.
    pub hub_bore_von_mises: Pressure,
    /// Hoop stress, and equivalent stress, at the outside of the outer part.
    pub hub_outside_hoop: Pressure,
    /// Hoop stress at the outside of the inner part.
    pub shaft_outside_hoop: Pressure,
    /// Equivalent stress there.
    pub shaft_outside_von_mises: Pressure,
    /// Hoop stress at the bore of a hollow inner part; its magnitude is the equivalent stress.
    pub shaft_bore_hoop: Option<Pressure>,
}

/// Equivalent stress for plane stress: √(σt² − σt σr + σr²).
pub(super) fn von_mises(hoop: f64, radial: f64) -> f64 {
    libm::sqrt(hoop * hoop - hoop * radial + radial * radial)
}
