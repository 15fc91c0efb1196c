//! What a press does: grip, pressing force, stress, yield, heat; and what it leaves of a bearing's clearance.

use alloc::vec::Vec;

use super::between::Fit;
use super::caution::{Caution, note};
use super::class::Feature;
use super::material::Material;
use super::press::{Press, PressJoint, Stresses, YieldRule, non_negative};
use crate::evidence::Grade;
use crate::measure::Limits;
use crate::quantity::{
    Force, Interference, Length, Pressure, Printed, TemperatureInterval, Torque, kelvin, mm, mpa,
    newton, to_mm,
};
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

    /// The rule by name.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Din7190 { .. } => "DIN 7190-1:2017, 0.8 (Rz + Rz)",
            Self::TenthOfDepth { .. } => "a tenth of the roughness depth, 0.2 (Rz + Rz)",
        }
    }
}

/// What a press holds, needs and does. Grip is reckoned from the smallest interference less the roughness loss at low
/// friction, pressing force from the largest at high friction, stress from the largest without any loss.
#[derive(Debug, Clone, PartialEq)]
pub struct PressReport {
    /// Smallest interference, as given; negative where the loosest pair has a gap.
    pub smallest: Interference,
    /// Largest interference, as given.
    pub largest: Interference,
    /// What the surfaces lose, on diameter.
    pub loss: Length,
    /// Rule of the loss.
    pub loss_rule: &'static str,
    /// Pressure at the smallest interference after the loss.
    pub pressure_low: Pressure,
    /// Stresses at the largest interference without loss.
    pub stresses: Stresses,
    /// Axial force that the joint holds for certain.
    pub holding_force: Force,
    /// Torque at which it slips at the earliest.
    pub slip_torque: Torque,
    /// Axial force that pressing in may need.
    pub push_in_force: Force,
    /// Part that yields first and the pressure at which it does, by von Mises; `None` when no strength is known.
    pub first_yield: Option<(Feature, Pressure)>,
    /// Whether the largest interference stays below first yield; `None` when a strength is missing.
    pub elastic: Option<bool>,
    /// What the elastic constants are worth.
    pub grade: Grade,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

impl PressJoint {
    /// What an interference between these bounds does.
    ///
    /// # Errors
    /// `OutOfRange` when even the largest interference is a gap; `Contradiction` when the bounds are out of order; those of
    /// [`RoughnessLoss::amount`].
    ///
    /// ```
    /// use framegauge::{Interference, Ratio, fit::{Caution, Friction, JointShape, Material, MaterialKind, PressJoint, RoughnessLoss}, gpa, mm, mpa, um};
    /// // An aluminium cup of 44.05 mm in an aluminium head tube of 50 mm outside, invented part.
    /// let alloy = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap().with_strength(mpa(276.0)).unwrap();
    /// let shape = JointShape { diameter: mm(44.0), shaft_bore: Some(mm(41.0)), hub_outside: mm(50.0), length: mm(10.0) };
    /// let joint = PressJoint::new(shape, &alloy, &alloy).unwrap();
    /// let report = joint.report(
    ///     Interference::new(mm(0.05)).unwrap(), Interference::new(mm(0.10)).unwrap(),
    ///     Friction::new(0.06, 0.15).unwrap(), RoughnessLoss::Din7190 { shaft_rz: um(6.3), hub_rz: um(6.3) }).unwrap();
    /// assert_eq!(report.elastic, Some(true));
    /// assert!(report.push_in_force > report.holding_force);
    /// assert!(report.cautions.contains(&Caution::ShorterThanDiameter));
    /// ```
    pub fn report(
        &self,
        smallest: Interference,
        largest: Interference,
        friction: Friction,
        roughness: RoughnessLoss,
    ) -> Result<PressReport, Error> {
        if smallest > largest {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "interference",
                alloc::format!("{smallest} to {largest}"),
                "the smallest interference is above the largest",
                "give the smallest first",
            ));
        }
        let loss = roughness.amount()?;
        let tight = Press::new(largest)?;
        let left = Press::new(Interference::new(smallest.length() - loss)?);
        let mut cautions = self.cautions();
        let pressure_low = match left {
            Ok(left) => self.pressure(left),
            // No grip at the loose end is an answer, said by name.
            Err(_) => mpa(0.0),
        };
        if pressure_low.value <= 0.0 {
            note(&mut cautions, Caution::NoGrip);
        }
        let stresses = self.stresses(tight);
        let limits = self.yield_pressure(YieldRule::VonMises);
        let exceeds = |limit: Option<Pressure>| limit.map(|l| stresses.pressure > l);
        if exceeds(limits.hub) == Some(true) {
            note(&mut cautions, Caution::HubYields);
        }
        if exceeds(limits.shaft) == Some(true) {
            note(&mut cautions, Caution::ShaftYields);
        }
        let elastic = match (exceeds(limits.hub), exceeds(limits.shaft)) {
            (Some(true), _) | (_, Some(true)) => Some(false),
            (Some(false), Some(false)) => Some(true),
            _ => {
                note(&mut cautions, Caution::StrengthUnknown);
                None
            }
        };
        let holding_force = self.friction_force(pressure_low, friction.low);
        Ok(PressReport {
            smallest,
            largest,
            loss,
            loss_rule: roughness.name(),
            pressure_low,
            stresses,
            holding_force,
            slip_torque: self.torque_of(holding_force),
            push_in_force: self.friction_force(stresses.pressure, friction.high),
            first_yield: limits.first(),
            elastic,
            grade: self.grade(),
            cautions,
        })
    }

    /// The one force that an axial force and a torque make together at the joint: √(F² + (2T/d)²).
    ///
    /// # Errors
    /// `NotFinite`, or `OutOfRange` for negative loads.
    pub fn resultant(&self, axial: Force, torque: Torque) -> Result<Force, Error> {
        let axial = non_negative("axial force", axial.value)?;
        let torque = non_negative("torque", torque.value)?;
        Ok(newton(libm::hypot(
            axial,
            2e3 * torque / self.diameter_mm(),
        )))
    }

    /// The pressure that holds a force with this safety: S F / (µ π d L).
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` for a negative force, a friction outside 0 to 1, a safety below 1.
    pub fn pressure_needed(
        &self,
        force: Force,
        friction: f64,
        safety: f64,
    ) -> Result<Pressure, Error> {
        let force = non_negative("force", force.value)?;
        let friction = coefficient(friction)?;
        let safety = non_negative("safety", safety)?;
        if safety < 1.0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "safety",
                safety,
                "a safety below 1 asks for slip",
                "give 1 or more",
            ));
        }
        Ok(mpa(safety * force / (friction * self.area())))
    }
}

impl Fit {
    /// Smallest and largest interference of the fit, widened by the expanded uncertainty of the readings.
    ///
    /// # Errors
    /// Never for a fit of checked members; the role newtype checks again.
    ///
    /// ```
    /// use framegauge::{fit::{HoleMember, ShaftMember, fit_between}, measure::DecisionRule};
    /// let race = HoleMember::of_reading("29.92 +/- 0.012 mm".parse().unwrap()).unwrap();
    /// let seat = ShaftMember::of_reading("30.02 +/- 0.005 mm".parse().unwrap()).unwrap();
    /// let (low, high) = fit_between(&race, &seat, DecisionRule::default()).unwrap().press_range().unwrap();
    /// assert_eq!((low.to_string().as_str(), high.to_string().as_str()), ("0.087 mm", "0.113 mm"));
    /// ```
    pub fn press_range(&self) -> Result<(Interference, Interference), Error> {
        let (tight, loose) = (self.tightest(), self.loosest());
        Ok((
            Interference::new(-loose.value() - loose.expanded_uncertainty())?,
            Interference::new(-tight.value() + tight.expanded_uncertainty())?,
        ))
    }
}

/// Temperature difference that lets a part go in with this gap: ΔT = (δ + gap) / (α d). Heating the outer part and cooling
/// the inner one add.
///
/// Heat spoils paint, glue, heat treatment and fibre: this is what physics needs, not what a frame stands.
///
/// # Errors
/// `OutOfRange` for a negative gap or diameter; `Missing` or `NotApplicable` when the expansion is unknown or not above zero.
///
/// ```
/// use framegauge::{Interference, Ratio, fit::{Material, MaterialKind, Press, assembly_temperature}, gpa, mm, per_kelvin};
/// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.27)).unwrap().with_expansion(per_kelvin(11.7e-6)).unwrap();
/// let press = Press::new(Interference::new(mm(0.26)).unwrap()).unwrap();
/// // A press calculation sheet prints 159 K.
/// let heat = assembly_temperature(mm(220.0), press, mm(0.15), &steel).unwrap();
/// assert!((heat.value - 159.0).abs() < 0.5);
/// ```
pub fn assembly_temperature(
    diameter: Length,
    press: Press,
    gap: Length,
    heated: &Material,
) -> Result<TemperatureInterval, Error> {
    let d = to_mm(crate::ShaftDiameter::new(diameter)?.length());
    let gap = non_negative("gap", to_mm(gap))?;
    let expansion = heated.need_expansion()?;
    if expansion.in_unit() <= 0.0 {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "expansion",
            heated.name(),
            "this material does not grow when heated",
            "heat does not help here",
        ));
    }
    Ok(kelvin(
        (to_mm(press.length()) + gap) / (expansion.value * d),
    ))
}

/// What presses leave of the clearance inside a bearing.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ClearanceLeft {
    /// Radial internal clearance before mounting.
    pub before: Limits,
    /// Least clearance left: least before less most taken. Negative means preload.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "least_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub least: Length,
    /// Most clearance left.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "most_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub most: Length,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

/// Clearance left after raceways have moved: each change is (least, most) on diameter, from [`PressJoint::bore_shrink`] of the
/// outer ring and [`PressJoint::outside_growth`] of the inner ring.
///
/// # Errors
/// `Missing` when the clearance before has an unknown side; `OutOfRange` for a negative change, `Contradiction` for one out of order.
///
/// ```
/// use framegauge::{fit::{Caution, ClearanceGroup, clearance_left, internal_clearance}, in_mm, mm, um};
/// let (before, _) = internal_clearance(mm(30.0), ClearanceGroup::CN).unwrap();
/// let left = clearance_left(before, &[(um(0.0), um(11.0))]).unwrap();
/// assert_eq!(in_mm(left.least).to_string(), "-0.006 mm");
/// assert!(left.cautions.contains(&Caution::ClearanceUsedUp));
/// ```
pub fn clearance_left(
    before: Limits,
    changes: &[(Length, Length)],
) -> Result<ClearanceLeft, Error> {
    let (Some(low), Some(high)) = (before.lower().known(), before.upper().known()) else {
        return Err(Error::new(
            ErrorKind::Missing,
            "clearance",
            before,
            "the clearance before mounting is not known on both sides",
            "take the bearing's clearance group",
        ));
    };
    let (mut least, mut most) = (to_mm(low), to_mm(high));
    for (small, large) in changes {
        let small = non_negative("change", to_mm(*small))?;
        let large = non_negative("change", to_mm(*large))?;
        if small > large {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "change",
                alloc::format!("{small} to {large} mm"),
                "the least change is above the most",
                "give the least first",
            ));
        }
        least -= large;
        most -= small;
    }
    let (least, most) = (mm(least), mm(most));
    let mut cautions = Vec::new();
    if crate::measure::settled_cmp(least, mm(0.0)).is_le() {
        note(&mut cautions, Caution::ClearanceUsedUp);
    }
    Ok(ClearanceLeft {
        before,
        least,
        most,
        cautions,
    })
}

#[cfg(feature = "serde")]
impl serde::Serialize for PressReport {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let tidy = |value: f64| libm::round(value * 1e3) / 1e3 + 0.0;
        let mpa = |stress: Pressure| tidy(stress.value / 1e6);
        let mm = crate::quantity::settled_mm;
        let s = &self.stresses;
        let mut out = serializer.serialize_struct("PressReport", 20)?;
        out.serialize_field("interference_smallest_mm", &mm(self.smallest.length()))?;
        out.serialize_field("interference_largest_mm", &mm(self.largest.length()))?;
        out.serialize_field("roughness_loss_mm", &mm(self.loss))?;
        out.serialize_field("roughness_rule", self.loss_rule)?;
        out.serialize_field("pressure_low_mpa", &mpa(self.pressure_low))?;
        out.serialize_field("pressure_high_mpa", &mpa(s.pressure))?;
        out.serialize_field("hub_bore_hoop_mpa", &mpa(s.hub_bore_hoop))?;
        out.serialize_field("hub_bore_von_mises_mpa", &mpa(s.hub_bore_von_mises))?;
        out.serialize_field("hub_outside_hoop_mpa", &mpa(s.hub_outside_hoop))?;
        out.serialize_field("shaft_outside_hoop_mpa", &mpa(s.shaft_outside_hoop))?;
        out.serialize_field(
            "shaft_outside_von_mises_mpa",
            &mpa(s.shaft_outside_von_mises),
        )?;
        out.serialize_field("shaft_bore_hoop_mpa", &s.shaft_bore_hoop.map(mpa))?;
        out.serialize_field("holding_force_n", &tidy(self.holding_force.value))?;
        out.serialize_field("slip_torque_n_m", &tidy(self.slip_torque.value))?;
        out.serialize_field("push_in_force_n", &tidy(self.push_in_force.value))?;
        out.serialize_field("first_yield_part", &self.first_yield.map(|(part, _)| part))?;
        out.serialize_field("first_yield_mpa", &self.first_yield.map(|(_, p)| mpa(p)))?;
        out.serialize_field("elastic", &self.elastic)?;
        out.serialize_field("grade", &self.grade)?;
        out.serialize_field("cautions", &self.cautions)?;
        out.end()
    }
}
