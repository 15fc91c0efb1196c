//! Slit clamps: what a bolt holds on a post or stem, in three pressure models by name.
//!
//! The models are statics of a split hub; formula collections for shaft-hub joints name the same three. No worked example
//! in print was found, and one textbook seems to use another factor for the cosine model (π²/8 in place of 4/π).

use alloc::vec::Vec;

use super::caution::Caution;
use super::press::non_negative;
use super::surface::coefficient;
use crate::measure::{Limits, settled_cmp};
use crate::quantity::{Force, Length, Pressure, Torque, mpa, newton, newton_metre, to_mm};
use crate::{Error, ErrorKind, ShaftDiameter, Width};

/// How the pressure spreads around the clamped part.
///
/// ```
/// use framegauge::fit::ClampModel;
/// assert_eq!("uniform".parse::<ClampModel>().unwrap(), ClampModel::Uniform);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum ClampModel {
    /// Two lines: stiff halves on an undersize part. Axial grip 4 µ F, the least of the three.
    Line,
    /// Cosine around each half: 4/π times the line.
    Cosine,
    /// Even all round: a flexible strap on a part of the same size. π/2 times the line, 2 π µ F.
    Uniform,
}

impl ClampModel {
    /// Axial grip as a multiple of µ F, F the bolt force at the slit.
    const fn factor(self) -> f64 {
        use core::f64::consts::PI;
        match self {
            Self::Line => 4.0,
            Self::Cosine => 16.0 / PI,
            Self::Uniform => 2.0 * PI,
        }
    }
}

/// Bolt force from its torque: F = T / (K d), nut factor K about 0.2 dry (common practice).
///
/// # Errors
/// `NotFinite`; `OutOfRange` for a negative torque, a nut factor outside 0.05 to 0.5, a bolt diameter at or below 0 mm.
///
/// ```
/// use framegauge::{fit::bolt_force, mm, newton_metre};
/// // M5 at 5 N m: 5.0 kN.
/// assert!((bolt_force(newton_metre(5.0), mm(5.0), 0.2).unwrap().value - 5000.0).abs() < 1e-6);
/// ```
pub fn bolt_force(torque: Torque, bolt_diameter: Length, nut_factor: f64) -> Result<Force, Error> {
    let torque = non_negative("torque", torque.value)?;
    let d = to_mm(
        ShaftDiameter::new(bolt_diameter)
            .map_err(|e| e.within("bolt"))?
            .length(),
    );
    let nut_factor = non_negative("nut factor", nut_factor)?;
    if !(0.05..=0.5).contains(&nut_factor) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "nut factor",
            nut_factor,
            "lies outside 0.05 to 0.5",
            "0.2 is a dry steel bolt, less when greased",
        ));
    }
    Ok(newton(torque * 1e3 / (nut_factor * d)))
}

/// A clamp with one slit.
///
/// ```
/// use framegauge::{ShaftDiameter, Width, fit::SlitClamp, mm};
/// let clamp = SlitClamp::new(ShaftDiameter::new(mm(28.6)).unwrap(), Width::new(mm(14.0)).unwrap());
/// assert_ne!(clamp, SlitClamp::new(ShaftDiameter::new(mm(28.6)).unwrap(), Width::new(mm(15.0)).unwrap()));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SlitClamp {
    d: f64,
    height: f64,
}

/// What a clamp holds.
///
/// ```
/// use framegauge::{ShaftDiameter, Width, fit::{Caution, ClampModel, SlitClamp}, mm, newton};
/// let clamp = SlitClamp::new(ShaftDiameter::new(mm(28.6)).unwrap(), Width::new(mm(40.0)).unwrap());
/// let grip = clamp.grip(newton(8000.0), 0.1, ClampModel::Cosine).unwrap();
/// assert!(grip.torque.value > 0.0 && grip.cautions.contains(&Caution::GripUpperBound));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Grip {
    /// The pressure model.
    pub model: ClampModel,
    /// Mean pressure on the clamped part, 2 F / (d L).
    pub mean_pressure: Pressure,
    /// Axial force alone that it holds.
    pub axial: Force,
    /// Torque alone that it holds.
    pub torque: Torque,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

impl SlitClamp {
    /// A clamp around a part of this diameter, this high along the axis.
    #[must_use]
    pub fn new(diameter: ShaftDiameter, height: Width) -> Self {
        Self {
            d: to_mm(diameter.length()),
            height: to_mm(height.length()),
        }
    }

    /// What it holds at this total bolt force and friction.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a negative force or a friction outside 0 to 1.
    ///
    /// ```
    /// use framegauge::{ShaftDiameter, Width, fit::{ClampModel, SlitClamp}, mm, newton};
    /// let clamp = SlitClamp::new(ShaftDiameter::new(mm(27.2)).unwrap(), Width::new(mm(15.0)).unwrap());
    /// let even = clamp.grip(newton(5000.0), 0.1, ClampModel::Uniform).unwrap();
    /// assert!((even.axial.value - 3141.6).abs() < 0.1);
    /// // An undersize post touches along lines and loses a third of that.
    /// let line = clamp.grip(newton(5000.0), 0.1, ClampModel::Line).unwrap();
    /// assert!((line.axial.value - 2000.0).abs() < 1e-9);
    /// ```
    pub fn grip(&self, bolts: Force, friction: f64, model: ClampModel) -> Result<Grip, Error> {
        let force = non_negative("bolt force", bolts.value)?;
        let axial = model.factor() * coefficient(friction)? * force;
        Ok(Grip {
            model,
            mean_pressure: mpa(2.0 * force / (self.d * self.height)),
            axial: newton(axial),
            torque: newton_metre(axial * self.d / 2e3),
            cautions: alloc::vec![Caution::GripUpperBound, Caution::MakerFirst],
        })
    }

    /// The share of a grip that an axial force and a torque use up together: √(F² + (2T/d)²) over the axial grip. Above 1 it
    /// slips.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` for negative loads; `Contradiction` for a grip of nothing.
    ///
    /// ```
    /// # use framegauge::{ShaftDiameter, Width, fit::{ClampModel, SlitClamp}, mm, newton, newton_metre};
    /// # let clamp = SlitClamp::new(ShaftDiameter::new(mm(27.2)).unwrap(), Width::new(mm(15.0)).unwrap());
    /// let grip = clamp.grip(newton(5000.0), 0.1, ClampModel::Line).unwrap();
    /// assert!(clamp.used(&grip, newton(1200.0), newton_metre(0.0)).unwrap() < 0.61);
    /// assert!(clamp.used(&grip, newton(1200.0), newton_metre(30.0)).unwrap() > 1.0);
    /// ```
    pub fn used(&self, grip: &Grip, axial: Force, torque: Torque) -> Result<f64, Error> {
        let axial = non_negative("axial force", axial.value)?;
        let torque = non_negative("torque", torque.value)?;
        if grip.axial.value <= 0.0 {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "grip",
                grip.axial.value,
                "a clamp without bolt force holds nothing",
                "tighten the bolt",
            ));
        }
        Ok(libm::hypot(axial, 2e3 * torque / self.d) / grip.axial.value)
    }
}

/// How much of the bolt force a strap carries on the average when its own friction on the part holds it back:
/// (1 − e^(−µπ)) / (µπ) (rope friction over half a turn each way).
///
/// # Errors
/// As for every coefficient of friction: `OutOfRange` at or below 0 or above 1.
///
/// ```
/// use framegauge::fit::strap_tension;
/// assert!((strap_tension(0.1).unwrap() - 0.86).abs() < 0.005);
/// ```
pub fn strap_tension(friction: f64) -> Result<f64, Error> {
    let turn = coefficient(friction)? * core::f64::consts::PI;
    Ok((1.0 - libm::exp(-turn)) / turn)
}

/// The clamp for a tube: clamp size follows the **outside** of the tube, not the post. Of the sizes whose clearance on the
/// tube lies in the window the closest is taken.
///
/// ```
/// use framegauge::{Grade, fit::clamp_for_tube, measure::Limits, mm};
/// let window = Limits::between(mm(-0.1), mm(0.3), Grade::CommonPractice).unwrap();
/// assert_eq!(clamp_for_tube(mm(28.6), &[mm(27.2), mm(28.6), mm(31.8)], &window), Some(mm(28.6)));
/// assert_eq!(clamp_for_tube(mm(30.0), &[mm(27.2), mm(28.6), mm(31.8)], &window), None);
/// ```
#[must_use]
pub fn clamp_for_tube(tube_outside: Length, clamps: &[Length], window: &Limits) -> Option<Length> {
    clamps
        .iter()
        .copied()
        .filter(|clamp| window.admits(*clamp - tube_outside))
        .min_by(|a, b| {
            let off = |c: &Length| (*c - tube_outside).abs();
            settled_cmp(off(a), off(b))
        })
}

#[cfg(feature = "serde")]
impl serde::Serialize for Grip {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let tidy = |value: f64| crate::quantity::settled(value, 1e3);
        let mut out = serializer.serialize_struct("Grip", 5)?;
        out.serialize_field("model", &self.model)?;
        out.serialize_field("mean_pressure_mpa", &tidy(self.mean_pressure.value / 1e6))?;
        out.serialize_field("axial_n", &tidy(self.axial.value))?;
        out.serialize_field("torque_n_m", &tidy(self.torque.value))?;
        out.serialize_field("cautions", &self.cautions)?;
        out.end()
    }
}
