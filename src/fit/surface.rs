//! Surfaces of a pressed joint: friction, and what roughness takes from an interference.

use super::press::non_negative;
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// Friction of a joint, two values: a low one for what it holds, a high one for the force to press it in.
///
/// General tables of clean static friction run several times higher than press-fit design values; they are no holding figures.
///
/// ```
/// use framegauge::fit::Friction;
/// assert!(Friction::new(0.06, 0.15).is_ok());
/// assert!(Friction::new(0.0, 0.15).is_err() && Friction::new(0.1, 2.0).is_err() && Friction::new(0.2, 0.1).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    low: f64,
    high: f64,
}

impl Friction {
    /// A low and a high coefficient.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` at or below 0 or above 1; `Contradiction` when the low one is the larger.
    pub fn new(low: f64, high: f64) -> Result<Self, Error> {
        coefficient(low)?;
        coefficient(high)?;
        if low > high {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "friction",
                alloc::format!("{low} to {high}"),
                "the low coefficient is the larger one",
                "give the holding value first, the pressing value second",
            ));
        }
        Ok(Self { low, high })
    }
    /// The holding value.
    #[must_use]
    pub const fn low(&self) -> f64 {
        self.low
    }
    /// The pressing value.
    #[must_use]
    pub const fn high(&self) -> f64 {
        self.high
    }
}

/// A coefficient of friction that a joint can have.
pub(super) fn coefficient(value: f64) -> Result<f64, Error> {
    if !value.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "friction",
            value,
            "must be finite",
            "give e.g. 0.1",
        ));
    }
    if value <= 0.0 || value > 1.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "friction",
            value,
            "a coefficient of a pressed or clamped joint lies above 0 and not above 1",
            "press joints of metal lie between 0.04 and 0.2",
        ));
    }
    Ok(value)
}

/// How much of an interference the surfaces lose by bedding in. Published rules differ by a factor of four.
///
/// ```
/// use framegauge::{fit::RoughnessLoss, in_mm, um};
/// // Rz 10 µm on a reamed bore and Rz 2 µm on a ground ring.
/// assert_eq!(in_mm(RoughnessLoss::Din7190 { shaft_rz: um(2.0), hub_rz: um(10.0) }.amount().unwrap()).to_string(), "0.010 mm");
/// assert_eq!(in_mm(RoughnessLoss::TenthOfDepth { shaft_rz: um(2.0), hub_rz: um(10.0) }.amount().unwrap()).to_string(), "0.002 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RoughnessLoss {
    /// No loss: for polished parts, and always for stress.
    None,
    /// DIN 7190-1:2017 as two calculation pages give it: 0.8 (Rz shaft + Rz hub), on diameter. The safer one for grip.
    Din7190 {
        /// Roughness Rz of the inner part.
        shaft_rz: Length,
        /// Roughness Rz of the outer part.
        hub_rz: Length,
    },
    /// A tribology calculator's rule: a tenth of the roughness depth on each side, 0.2 (Rz shaft + Rz hub) on diameter;
    /// with Rz = 6 Ra it is 1.2 (Ra shaft + Ra hub).
    TenthOfDepth {
        /// Roughness Rz of the inner part.
        shaft_rz: Length,
        /// Roughness Rz of the outer part.
        hub_rz: Length,
    },
}

impl RoughnessLoss {
    /// The loss on diameter.
    ///
    /// # Errors
    /// `NotFinite`, or `OutOfRange` for a negative roughness or one beyond 1 mm.
    pub fn amount(&self) -> Result<Length, Error> {
        let (share, shaft_rz, hub_rz) = match self {
            Self::None => return Ok(mm(0.0)),
            Self::Din7190 { shaft_rz, hub_rz } => (0.8, shaft_rz, hub_rz),
            Self::TenthOfDepth { shaft_rz, hub_rz } => (0.2, shaft_rz, hub_rz),
        };
        let mut sum = 0.0;
        for rz in [shaft_rz, hub_rz] {
            let value = non_negative("roughness", to_mm(*rz))?;
            if value > 1.0 {
                return Err(Error::new(
                    ErrorKind::OutOfRange,
                    "roughness",
                    crate::quantity::in_mm(*rz),
                    "beyond 1 mm is no roughness",
                    "Rz is given in micrometres",
                ));
            }
            sum += value;
        }
        Ok(mm(share * sum))
    }
}
