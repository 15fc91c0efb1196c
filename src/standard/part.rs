//! Rolling bearings, materials and friction.

use alloc::format;

use crate::evidence::{Evidence, Figure, List, Text};
use crate::fit::{self, MaterialKind};
use crate::quantity::{Expansion, Pressure, Ratio};
use crate::{Error, ErrorKind};

use super::row::rows;

rows! {
    /// A rolling bearing (boundary dimensions as ISO 15).
    Bearing("bearing", BEARINGS, aliases) {
        /// Unique code.
        code: Text,
        /// Other designations.
        #[cfg_attr(feature = "serde", serde(default))]
        aliases: List<Text>,
        /// Bore.
        bore: Figure,
        /// Outside diameter.
        outside: Figure,
        /// Width.
        width: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A material.
    Material("material", MATERIALS) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Kind.
        kind: MaterialKind,
        /// Modulus of elasticity.
        youngs_modulus: Figure<Pressure>,
        /// Poisson's number.
        #[cfg_attr(feature = "serde", serde(default))]
        poisson: Option<Figure<Ratio>>,
        /// Yield strength, or strength where there is no yield.
        strength: Figure<Pressure>,
        /// Coefficient of thermal expansion.
        #[cfg_attr(feature = "serde", serde(default))]
        expansion: Option<Figure<Expansion>>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A coefficient of friction.
    Friction("friction", FRICTIONS) {
        /// Unique code.
        code: Text,
        /// Which pair of materials.
        pair: Text,
        /// Dry, lubricated, how joined.
        condition: Text,
        /// The coefficient.
        coefficient: Figure<Ratio>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// What is published about how much a hand cutter takes off.
    CuttingRule("cutting_rule", CUTTING_RULES) {
        /// Unique code.
        code: Text,
        /// What it limits, in words.
        what: Text,
        /// The limit.
        window: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}

impl Material {
    /// The material as the formulas of [`fit`](crate::fit) take it. Of two limits the lower stands for modulus and strength: what
    /// is not known is taken as weak. An expansion of which only limits are held is left unknown.
    ///
    /// # Errors
    /// `NotTabulated` where no modulus or no Poisson number is held; `OutOfRange` for a figure of a shop's row that no material
    /// has.
    ///
    /// ```
    /// use framegauge::{ErrorKind, standard::{Material, find}};
    /// let alloy = find::<Material>("al_6061_t6").unwrap().for_fit().unwrap();
    /// assert!(alloy.kind().is_metal() && alloy.strength().is_some());
    /// let error = find::<Material>("al_7005_t6").unwrap().for_fit().unwrap_err();
    /// assert_eq!((error.kind(), error.field()), (ErrorKind::NotTabulated, "poisson"));
    /// ```
    pub fn for_fit(&self) -> Result<fit::Material, Error> {
        let unknown = |field: &'static str, what: &str, reason: &str| {
            Error::new(
                ErrorKind::NotTabulated,
                field,
                &self.code,
                format!("no {what} is held for it: {reason}"),
                "state its constants: name, kind, youngs_modulus, poisson, strength",
            )
        };
        let low = |figure: &Figure<Pressure>| figure.lower().or_else(|| figure.nominal());
        let modulus = low(&self.youngs_modulus)
            .ok_or_else(|| unknown("youngs_modulus", "modulus", self.youngs_modulus.reason()))?;
        let poisson = self.poisson.as_ref();
        let ratio = poisson
            .and_then(|f| f.nominal().or_else(|| f.lower()))
            .ok_or_else(|| {
                unknown(
                    "poisson",
                    "Poisson number",
                    poisson.map_or("", Figure::reason),
                )
            })?;
        let mut material = fit::Material::new(self.name.clone(), self.kind, modulus, ratio)?;
        if let Some(strength) = low(&self.strength) {
            material = material.with_strength(strength)?;
        }
        if let Some(expansion) = self.expansion.as_ref().and_then(Figure::nominal) {
            material = material.with_expansion(expansion)?;
        }
        let weakest = [
            self.youngs_modulus.evidence(),
            self.strength.evidence(),
            poisson.and_then(Figure::evidence),
            self.expansion.as_ref().and_then(Figure::evidence),
        ]
        .into_iter()
        .flatten()
        .map(Evidence::worth)
        .min();
        Ok(match weakest {
            Some(grade) => material.graded(grade),
            None => material,
        })
    }
}
