//! Materials as the caller knows them. The tables of materials lie above this room.

use crate::evidence::{Grade, Text};
use crate::quantity::{Expansion, Pressure, Printed, Ratio, gpa, mpa};
use crate::{Error, ErrorKind};

/// What kind of material: the ring formulas hold for isotropic elastic ones only, and only metal is cut. Not known is
/// `Option::None`, never a kind.
///
/// ```
/// use framegauge::fit::MaterialKind;
/// assert_eq!("carbon".parse::<MaterialKind>().unwrap(), MaterialKind::Carbon);
/// assert_eq!("laminate".parse::<MaterialKind>().unwrap().to_string(), "carbon");
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum MaterialKind {
    /// Steel.
    Steel,
    /// Stainless steel: work-hardens under a cutter that rubs.
    Stainless,
    /// Aluminium alloy.
    Aluminium,
    /// Titanium or its alloy.
    Titanium,
    /// A metal that is not named further: isotropic, yields.
    Metal,
    /// Creeps: an elastic pressure is an upper bound.
    Plastic,
    /// Fibre laminate (carbon, glass): not isotropic, does not yield, delaminates.
    #[strum(to_string = "carbon", serialize = "laminate")]
    #[cfg_attr(feature = "serde", serde(alias = "laminate"))]
    Carbon,
}

impl MaterialKind {
    /// Whether it is a metal, named or not.
    ///
    /// ```
    /// use framegauge::fit::MaterialKind;
    /// assert!(MaterialKind::Titanium.is_metal() && MaterialKind::Metal.is_metal());
    /// assert!(!MaterialKind::Plastic.is_metal() && !MaterialKind::Carbon.is_metal());
    /// ```
    #[must_use]
    pub const fn is_metal(self) -> bool {
        match self {
            Self::Steel | Self::Stainless | Self::Aluminium | Self::Titanium | Self::Metal => true,
            Self::Plastic | Self::Carbon => false,
        }
    }

    /// Whether it is a fibre laminate, which is not cut and for which no ring formula holds.
    ///
    /// ```
    /// use framegauge::fit::MaterialKind;
    /// assert!(MaterialKind::Carbon.is_carbon() && !MaterialKind::Steel.is_carbon());
    /// ```
    #[must_use]
    pub const fn is_carbon(self) -> bool {
        matches!(self, Self::Carbon)
    }
}

/// A material: modulus and Poisson number, and where known strength and expansion.
///
/// ```
/// use framegauge::{ErrorKind, Grade, Ratio, fit::{Material, MaterialKind}, gpa, mpa, per_kelvin};
/// // 6061-T6, a supplier's datasheet.
/// let shell = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap()
///     .with_strength(mpa(276.0)).unwrap().with_expansion(per_kelvin(23.6e-6)).unwrap().graded(Grade::Agreeing);
/// assert_eq!(shell.name(), "6061-T6");
/// let error = Material::new("jelly", MaterialKind::Plastic, gpa(1.0), Ratio(0.51)).unwrap_err();
/// assert_eq!(error.kind(), ErrorKind::OutOfRange);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    name: Text,
    kind: MaterialKind,
    youngs_modulus: Pressure,
    poisson: Ratio,
    strength: Option<Pressure>,
    expansion: Option<Expansion>,
    grade: Grade,
}

fn within<Q: Printed>(field: &'static str, value: Q, low: f64, high: f64) -> Result<Q, Error> {
    let number = value.in_unit();
    if !number.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            field,
            number,
            "must be finite",
            "give the datasheet value",
        ));
    }
    if number < low || number > high {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            alloc::format!("{number} {}", Q::UNIT),
            alloc::format!("lies outside {low} to {high} {}", Q::UNIT),
            "check the unit",
        ));
    }
    Ok(value)
}

impl Material {
    /// A material of this Young's modulus and Poisson number, graded as the shop's own until said otherwise.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a modulus outside 1 MPa to 1000 GPa or a Poisson number outside 0 to 0.5.
    pub fn new(
        name: impl Into<Text>,
        kind: MaterialKind,
        youngs_modulus: Pressure,
        poisson: Ratio,
    ) -> Result<Self, Error> {
        Ok(Self {
            name: name.into(),
            kind,
            youngs_modulus: within(
                "youngs_modulus",
                youngs_modulus,
                mpa(1.0).in_unit(),
                gpa(1000.0).in_unit(),
            )?,
            poisson: within("poisson", poisson, 0.0, 0.5)?,
            strength: None,
            expansion: None,
            grade: Grade::Shop,
        })
    }

    /// The same with its yield strength (for plastics and laminates the strength that limits it).
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` outside 0.1 MPa to 5 GPa.
    pub fn with_strength(mut self, strength: Pressure) -> Result<Self, Error> {
        self.strength = Some(within("strength", strength, 0.1, 5000.0)?);
        Ok(self)
    }

    /// The same with its coefficient of linear expansion; a laminate's may be negative.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` outside -20 to 500 millionths per kelvin.
    pub fn with_expansion(mut self, expansion: Expansion) -> Result<Self, Error> {
        self.expansion = Some(within("expansion", expansion, -20.0, 500.0)?);
        Ok(self)
    }

    /// The same with the grade of its figures.
    #[must_use]
    pub const fn graded(mut self, grade: Grade) -> Self {
        self.grade = grade;
        self
    }

    /// The name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }
    /// The kind.
    #[must_use]
    pub const fn kind(&self) -> MaterialKind {
        self.kind
    }
    /// Young's modulus.
    #[must_use]
    pub const fn youngs_modulus(&self) -> Pressure {
        self.youngs_modulus
    }
    /// Poisson's number.
    #[must_use]
    pub const fn poisson(&self) -> Ratio {
        self.poisson
    }
    /// Strength, where known.
    #[must_use]
    pub const fn strength(&self) -> Option<Pressure> {
        self.strength
    }
    /// Coefficient of linear expansion, where known.
    ///
    /// ```
    /// use framegauge::{Ratio, fit::{Material, MaterialKind}, gpa, per_kelvin};
    /// let shell = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap();
    /// assert!(shell.expansion().is_none()); // unknown, not zero
    /// assert_eq!(shell.with_expansion(per_kelvin(23.6e-6)).unwrap().expansion(), Some(per_kelvin(23.6e-6)));
    /// ```
    #[must_use]
    pub const fn expansion(&self) -> Option<Expansion> {
        self.expansion
    }
    /// What its figures are worth.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }

    /// Coefficient of expansion, or the error that it is missing.
    pub(super) fn need_expansion(&self) -> Result<Expansion, Error> {
        self.expansion.ok_or_else(|| {
            Error::new(
                ErrorKind::Missing,
                "expansion",
                self.name(),
                "no coefficient of expansion is given for this material",
                "take it from a datasheet of the alloy; `steel` alone is not a material",
            )
        })
    }
}
