//! Two elastic rings pressed together (Lamé, plane stress, equal length, both free along the axis).
//!
//! Sources of the formulas: they stand, algebraically the same, in five texts (two engineering reference pages, a
//! university-style article, a mechanics calculator's notes and engineering forum notes). One print of them carries the
//! wrong sign of the shaft's Poisson term; this one does not.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::caution::{Caution, note};
use super::material::{Material, MaterialKind};
use super::stress::{Stresses, YieldPressure, YieldRule, von_mises};
use crate::evidence::Grade;
use crate::measure::settled_cmp;
use crate::quantity::{Force, Interference, Length, Pressure, Torque, in_mm, mm, newton};
use crate::{Error, ErrorKind, Width};

/// Beyond this two parts do not belong together.
const LARGEST_MM: f64 = 10.0;

/// An interference that is none below zero: what a press formula may be asked about.
///
/// ```
/// use framegauge::{Interference, fit::Press, mm};
/// assert!(Press::new(Interference::new(mm(0.05)).unwrap()).is_ok());
/// let error = Press::new(Interference::new(mm(-0.05)).unwrap()).unwrap_err();
/// assert!(error.problem().contains("nothing presses"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Press(Length);

impl Press {
    /// Takes an interference on diameter.
    ///
    /// # Errors
    /// `OutOfRange` for a negative interference, which is a gap, and beyond 10 mm.
    pub fn new(interference: Interference) -> Result<Self, Error> {
        if settled_cmp(interference.length(), mm(0.0)).is_lt() {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "interference",
                interference,
                "the parts have a gap, so nothing presses",
                "interference is shaft less bore; check which is which",
            ));
        }
        if interference.length() > mm(LARGEST_MM) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "interference",
                interference,
                "is beyond 10 mm, larger than any press",
                "check the unit; these are two parts that do not belong together",
            ));
        }
        Ok(Self(interference.length()))
    }
    /// The interference on diameter.
    #[must_use]
    pub const fn length(self) -> Length {
        self.0
    }
}

/// Sizes of a pressed joint. All are diameters but the length.
///
/// ```
/// use framegauge::{fit::JointShape, mm};
/// // A cup of 44 mm with a bore of 41 mm in a head tube of 50 mm outside, touching over 10 mm.
/// let cup = JointShape { diameter: mm(44.0), shaft_bore: Some(mm(41.0)), hub_outside: mm(50.0), length: mm(10.0) };
/// assert!(cup.hub_outside > cup.diameter);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointShape {
    /// Where the two parts meet.
    pub diameter: Length,
    /// Bore of the inner part; `None` when it is solid.
    pub shaft_bore: Option<Length>,
    /// Outside diameter of the outer part.
    pub hub_outside: Length,
    /// Length over which both touch.
    pub length: Length,
}

/// A pressed joint of two rings, checked once.
///
/// ```
/// use framegauge::{Interference, Ratio, fit::{JointShape, Material, MaterialKind, Press, PressJoint}, gpa, mm};
/// // An online shrink-fit page prints 58.3 MPa for this pair of steel rings.
/// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap();
/// let shape = JointShape { diameter: mm(100.0), shaft_bore: None, hub_outside: mm(150.0), length: mm(50.0) };
/// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
/// let press = Press::new(Interference::new(mm(0.1)).unwrap()).unwrap();
/// assert!((joint.pressure(press).value / 1e6 - 58.3).abs() < 0.05);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressJoint {
    d: f64,
    di: f64,
    outside: f64,
    length: f64,
    hub: Ring,
    shaft: Ring,
    grade: Grade,
}

/// Elastic constants of one part, in Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Ring {
    modulus: f64,
    poisson: f64,
    strength: Option<f64>,
    plastic: bool,
}

impl Ring {
    fn of(field: &'static str, material: &Material) -> Result<Self, Error> {
        if material.kind().is_carbon() {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                field,
                material.name(),
                "a fibre laminate is not isotropic: its stiffness through the thickness is a fraction of that along the \
                 fibres, and it delaminates instead of yielding, so the ring formula does not hold",
                "keep to the frame maker's written fit; a metal insert in the laminate can be reckoned by itself",
            ));
        }
        Ok(Self {
            modulus: material.youngs_modulus().value,
            poisson: material.poisson().0,
            strength: material.strength().map(|s| s.value),
            plastic: material.kind() == MaterialKind::Plastic,
        })
    }
}

/// Contact pressure in Pa for a diametral interference in m.
///
/// p = (δ/d) / [ (Ch+νh)/Eh + (Cs−νs)/Es ], brought over one denominator so that a single division remains.
/// A pressure in its own base unit: no conversion on the fast path.
#[inline]
fn pascal(value: f64) -> Pressure {
    Pressure::new::<uom::si::pressure::pascal>(value)
}

fn metre(value: f64) -> Length {
    mm(value * 1e3)
}

#[inline]
fn lame(delta: f64, d: f64, di: f64, outside: f64, hub: (f64, f64), shaft: (f64, f64)) -> f64 {
    let (dd, ii, oo) = (d * d, di * di, outside * outside);
    let (wall_h, wall_s) = (oo - dd, dd - ii);
    let hub_term = oo + dd + hub.1 * wall_h;
    let shaft_term = dd + ii - shaft.1 * wall_s;
    let stiff_h = wall_h * hub.0;
    let stiff_s = wall_s * shaft.0;
    delta * stiff_h * stiff_s / (d * (hub_term * stiff_s + shaft_term * stiff_h))
}

impl PressJoint {
    /// Checks the sizes and the materials.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for sizes out of bounds, `Contradiction` for a part without a wall (its bore not
    /// smaller than its outside), `NotApplicable` for a fibre laminate.
    pub fn new(shape: JointShape, shaft: &Material, hub: &Material) -> Result<Self, Error> {
        checked("joint diameter", shape.diameter)?;
        checked("hub outside", shape.hub_outside)?;
        checked("joint length", shape.length)?;
        let bore = shape.shaft_bore.unwrap_or_default();
        if shape.shaft_bore.is_some() {
            checked("shaft bore", bore)?;
        }
        if settled_cmp(shape.hub_outside, shape.diameter).is_le() {
            return Err(no_wall("hub", shape.diameter, shape.hub_outside));
        }
        if settled_cmp(shape.diameter, bore).is_le() {
            return Err(no_wall("shaft", bore, shape.diameter));
        }
        Ok(Self {
            d: shape.diameter.value,
            di: bore.value,
            outside: shape.hub_outside.value,
            length: shape.length.value,
            hub: Ring::of("hub", hub)?,
            shaft: Ring::of("shaft", shaft)?,
            grade: hub.grade().weaker(shaft.grade()),
        })
    }

    /// Contact pressure. Linear in the interference.
    #[inline]
    #[must_use]
    pub fn pressure(&self, press: Press) -> Pressure {
        pascal(lame(
            press.0.value,
            self.d,
            self.di,
            self.outside,
            (self.hub.modulus, self.hub.poisson),
            (self.shaft.modulus, self.shaft.poisson),
        ))
    }

    /// The interference on diameter that gives this pressure.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` for a pressure that is not a finite number of at least 0.
    ///
    /// ```
    /// # use framegauge::{Interference, Ratio, fit::{JointShape, Material, MaterialKind, Press, PressJoint}, gpa, in_mm, mm, mpa};
    /// # let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap();
    /// # let shape = JointShape { diameter: mm(100.0), shaft_bore: None, hub_outside: mm(150.0), length: mm(50.0) };
    /// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
    /// assert_eq!(in_mm(joint.interference_for(mpa(58.3333333)).unwrap().length()).to_string(), "0.100 mm");
    /// ```
    pub fn interference_for(&self, pressure: Pressure) -> Result<Interference, Error> {
        let per_mm = self.pressure(Press(mm(1.0))).value;
        let wanted = non_negative("pressure", pressure.value)?;
        Interference::new(mm(wanted / per_mm))
    }

    /// Stresses in both parts at this interference.
    #[must_use]
    pub fn stresses(&self, press: Press) -> Stresses {
        let p = self.pressure(press).value;
        let (dd, ii, oo) = (
            self.d * self.d,
            self.di * self.di,
            self.outside * self.outside,
        );
        let hub_bore = p * (oo + dd) / (oo - dd);
        let shaft_outside = -p * (dd + ii) / (dd - ii);
        let hollow = ii > 0.0;
        let shaft_bore = -2.0 * p * dd / (dd - ii);
        Stresses {
            pressure: pascal(p),
            hub_bore_hoop: pascal(hub_bore),
            hub_bore_von_mises: pascal(von_mises(hub_bore, -p)),
            hub_outside_hoop: pascal(2.0 * p * dd / (oo - dd)),
            shaft_outside_hoop: pascal(shaft_outside),
            shaft_outside_von_mises: pascal(von_mises(shaft_outside, -p)),
            shaft_bore_hoop: hollow.then(|| pascal(shaft_bore)),
        }
    }

    /// The pressure at which each part first yields, where its strength is known.
    ///
    /// ```
    /// # use framegauge::{Ratio, fit::{JointShape, Material, MaterialKind, PressJoint, YieldRule}, gpa, mm, mpa};
    /// // A DIN 7190-style worked example prints 108 MPa for a hub of 70/140 mm (yield 250 MPa inferred from it).
    /// let steel = Material::new("steel", MaterialKind::Metal, gpa(215.0), Ratio(0.3)).unwrap().with_strength(mpa(250.0)).unwrap();
    /// let shape = JointShape { diameter: mm(70.0), shaft_bore: None, hub_outside: mm(140.0), length: mm(60.0) };
    /// let joint = PressJoint::new(shape, &steel, &steel).unwrap();
    /// assert!((joint.yield_pressure(YieldRule::Din7190).hub.unwrap().value / 1e6 - 108.0).abs() < 0.5);
    /// ```
    #[must_use]
    pub fn yield_pressure(&self, rule: YieldRule) -> YieldPressure {
        let q_hub = self.d * self.d / (self.outside * self.outside);
        let q_shaft = self.di * self.di / (self.d * self.d);
        let of_hub = match rule {
            YieldRule::VonMises => (1.0 - q_hub) / libm::sqrt(3.0 + q_hub * q_hub),
            YieldRule::Din7190 => (1.0 - q_hub) / libm::sqrt(3.0),
        };
        // The bore of a hollow shaft yields first; a solid shaft is under equal pressure from all sides in the plane.
        let of_shaft = if self.di > 0.0 {
            (1.0 - q_shaft) / 2.0
        } else {
            1.0
        };
        YieldPressure {
            rule,
            hub: self.hub.strength.map(|s| pascal(s * of_hub)),
            shaft: self.shaft.strength.map(|s| pascal(s * of_shaft)),
        }
    }

    /// How much the bore of a hollow inner part shrinks on diameter: 2 p d² dᵢ / (E (d² − dᵢ²)). For the outer ring of a
    /// bearing, give its raceway as the bore of the inner part. `None` when it is solid.
    ///
    /// ```
    /// use framegauge::{Interference, Ratio, fit::{JointShape, Material, MaterialKind, Press, PressJoint}, gpa, um, mm};
    /// // A 42 mm bearing (raceway 39.6 mm assumed) in a tube of 46 mm outside, 20 µm of press.
    /// let steel = Material::new("bearing steel", MaterialKind::Metal, gpa(206.0), Ratio(0.3)).unwrap();
    /// let alloy = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap();
    /// let shape = JointShape { diameter: mm(42.0), shaft_bore: Some(mm(39.6)), hub_outside: mm(46.0), length: mm(7.0) };
    /// let press = Press::new(Interference::new(um(20.0)).unwrap()).unwrap();
    /// let shrink = |shell| PressJoint::new(shape, &steel, shell).unwrap().bore_shrink(press).unwrap();
    /// assert!(shrink(&alloy) < shrink(&steel) * 0.6);
    /// ```
    #[must_use]
    pub fn bore_shrink(&self, press: Press) -> Option<Length> {
        let p = self.pressure(press).value;
        let (dd, ii) = (self.d * self.d, self.di * self.di);
        (ii > 0.0).then(|| metre(2.0 * p * dd * self.di / (self.shaft.modulus * (dd - ii))))
    }

    /// How much the outside of the outer part grows on diameter: 2 p d² D / (E (D² − d²)). For the inner ring of a
    /// bearing, give its raceway as the outside of the outer part.
    ///
    /// ```
    /// use framegauge::{Interference, Ratio, fit::{JointShape, Material, MaterialKind, Press, PressJoint}, gpa, mm, to_mm};
    /// let steel = Material::new("steel", MaterialKind::Metal, gpa(206.0), Ratio(0.3)).unwrap();
    /// let ring = |outside| JointShape { diameter: mm(42.0), shaft_bore: None, hub_outside: mm(outside), length: mm(7.0) };
    /// let press = Press::new(Interference::new(mm(0.02)).unwrap()).unwrap();
    /// let growth = |outside| to_mm(PressJoint::new(ring(outside), &steel, &steel).unwrap().outside_growth(press));
    /// // On a solid shaft of one material the pressure is delta E (D2 - d2) / (2 d D2), so the outside grows by delta d / D.
    /// assert!((growth(84.0) - 0.01).abs() < 1e-9 && growth(44.0) > growth(84.0));
    /// ```
    #[must_use]
    pub fn outside_growth(&self, press: Press) -> Length {
        let p = self.pressure(press).value;
        let (dd, oo) = (self.d * self.d, self.outside * self.outside);
        metre(2.0 * p * dd * self.outside / (self.hub.modulus * (oo - dd)))
    }

    /// Contact area, m².
    pub(super) fn area(&self) -> f64 {
        core::f64::consts::PI * self.d * self.length
    }

    /// Friction force at this pressure and coefficient: F = µ p π d L.
    pub(super) fn friction_force(&self, pressure: Pressure, coefficient: f64) -> Force {
        newton(coefficient * pressure.value * self.area())
    }

    /// Torque of a friction force at the joint: T = F d / 2.
    pub(super) fn torque_of(&self, force: Force) -> Torque {
        crate::quantity::newton_metre(force.value * self.d / 2.0)
    }

    /// The joint diameter in m.
    pub(super) const fn diameter_m(&self) -> f64 {
        self.d
    }

    /// What the elastic constants are worth.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }

    /// Where the formula is stretched by this joint.
    #[must_use]
    pub fn cautions(&self) -> Vec<Caution> {
        let mut cautions = Vec::new();
        let thin = self.d / 20.0;
        if (self.outside - self.d) / 2.0 < thin
            // A solid shaft has its radius for a wall.
            || (self.d - self.di) / 2.0 < thin
        {
            note(&mut cautions, Caution::ThinShell);
        }
        if self.length < self.d {
            note(&mut cautions, Caution::ShorterThanDiameter);
        }
        if self.hub.plastic || self.shaft.plastic {
            note(&mut cautions, Caution::PlasticCreeps);
        }
        if self.grade == Grade::Memory {
            note(&mut cautions, Caution::FromMemory);
        }
        cautions
    }
}

/// Bounds of a size, in this joint's own words.
fn checked(field: &'static str, size: Length) -> Result<(), Error> {
    Width::new(size).map(|_| ()).map_err(|e| {
        Error::new(
            e.kind(),
            field,
            e.value(),
            e.problem().to_owned(),
            e.remedy().to_owned(),
        )
    })
}

fn no_wall(part: &'static str, bore: Length, outside: Length) -> Error {
    Error::new(
        ErrorKind::Contradiction,
        part,
        alloc::format!("bore {}, outside {}", in_mm(bore), in_mm(outside)),
        "the bore is not smaller than the outside, so there is no wall",
        "check which diameter is which",
    )
}

/// A finite number of at least zero.
pub(super) fn non_negative(field: &'static str, value: f64) -> Result<f64, Error> {
    if !value.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            field,
            value,
            "must be finite",
            "give a number",
        ));
    }
    if value < 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            value,
            "must not be negative",
            "give its magnitude",
        ));
    }
    Ok(value)
}
