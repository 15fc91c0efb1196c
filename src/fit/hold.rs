//! What a press does: grip, pressing force, stress and yield.

use alloc::vec::Vec;

use super::between::Fit;
use super::caution::{Caution, note};
use super::class::Feature;
use super::press::{Press, PressJoint, non_negative};
use super::stress::{Stresses, YieldRule};
use super::surface::{Friction, RoughnessLoss, coefficient};
use crate::evidence::Grade;
use crate::quantity::{Force, Interference, Length, Pressure, Torque, mpa, newton};
use crate::{Error, ErrorKind};

/// What a press holds, needs and does. Grip is reckoned from the smallest interference less the roughness loss at low
/// friction, pressing force from the largest at high friction, stress from the largest without any loss.
///
/// ```
/// use framegauge::{Interference, Ratio, fit::{Friction, JointShape, Material, MaterialKind, PressJoint, RoughnessLoss}, gpa, mm};
/// let steel = Material::new("4130", MaterialKind::Metal, gpa(205.0), Ratio(0.29)).unwrap();
/// let shape = JointShape { diameter: mm(30.0), shaft_bore: None, hub_outside: mm(36.0), length: mm(40.0) };
/// let at = |delta| Interference::new(mm(delta)).unwrap();
/// let report = PressJoint::new(shape, &steel, &steel).unwrap()
///     .report(at(0.01), at(0.05), Friction::new(0.08, 0.15).unwrap(), RoughnessLoss::None).unwrap();
/// // No strength was given, so yield is not judged.
/// assert_eq!(report.elastic, None);
/// ```
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
        let holding_force = self.friction_force(pressure_low, friction.low());
        Ok(PressReport {
            smallest,
            largest,
            loss,
            loss_rule: roughness.name(),
            pressure_low,
            stresses,
            holding_force,
            slip_torque: self.torque_of(holding_force),
            push_in_force: self.friction_force(stresses.pressure, friction.high()),
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
    ///
    /// ```
    /// use framegauge::{Ratio, fit::{JointShape, Material, MaterialKind, PressJoint}, gpa, mm, newton, newton_metre};
    /// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap();
    /// let shape = JointShape { diameter: mm(70.0), shaft_bore: None, hub_outside: mm(140.0), length: mm(60.0) };
    /// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
    /// // A DIN 7190-style example prints 28741.8 N for 1000 N m and 3125 N.
    /// assert!((joint.resultant(newton(3125.0), newton_metre(1000.0)).unwrap().value - 28_741.8).abs() < 0.05);
    /// ```
    pub fn resultant(&self, axial: Force, torque: Torque) -> Result<Force, Error> {
        let axial = non_negative("axial force", axial.value)?;
        let torque = non_negative("torque", torque.value)?;
        Ok(newton(libm::hypot(axial, 2.0 * torque / self.diameter_m())))
    }

    /// The pressure that holds a force with this safety: S F / (µ π d L).
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` for a negative force, a friction outside 0 to 1, a safety below 1.
    ///
    /// ```
    /// use framegauge::{Ratio, fit::{JointShape, Material, MaterialKind, PressJoint}, gpa, mm, newton};
    /// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap();
    /// let shape = JointShape { diameter: mm(70.0), shaft_bore: None, hub_outside: mm(140.0), length: mm(60.0) };
    /// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
    /// // The same example prints 34 MPa.
    /// assert!((joint.pressure_needed(newton(28_741.8), 0.09, 1.4).unwrap().value / 1e6 - 34.0).abs() < 0.5);
    /// ```
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
        Ok(mpa(safety * force / (friction * self.area()) / 1e6))
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

#[cfg(feature = "serde")]
impl serde::Serialize for PressReport {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let tidy = |value: f64| crate::quantity::settled(value, 1e3);
        let mpa = |stress: Pressure| tidy(stress.value / 1e6);
        let mm = crate::quantity::settled_mm;
        let s = &self.stresses;
        crate::quantity::serial::serialized!(
            serializer,
            PressReport {
                interference_smallest_mm: mm(self.smallest.length()),
                interference_largest_mm: mm(self.largest.length()),
                roughness_loss_mm: mm(self.loss),
                roughness_rule: self.loss_rule,
                pressure_low_mpa: mpa(self.pressure_low),
                pressure_high_mpa: mpa(s.pressure),
                hub_bore_hoop_mpa: mpa(s.hub_bore_hoop),
                hub_bore_von_mises_mpa: mpa(s.hub_bore_von_mises),
                hub_outside_hoop_mpa: mpa(s.hub_outside_hoop),
                shaft_outside_hoop_mpa: mpa(s.shaft_outside_hoop),
                shaft_outside_von_mises_mpa: mpa(s.shaft_outside_von_mises),
                shaft_bore_hoop_mpa: s.shaft_bore_hoop.map(mpa),
                holding_force_n: tidy(self.holding_force.value),
                slip_torque_n_m: tidy(self.slip_torque.value),
                push_in_force_n: tidy(self.push_in_force.value),
                first_yield_part: self.first_yield.map(|(part, _)| part),
                first_yield_mpa: self.first_yield.map(|(_, p)| mpa(p)),
                elastic: self.elastic,
                grade: self.grade,
                cautions: self.cautions,
            }
        )
    }
}
