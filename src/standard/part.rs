//! Rolling bearings, materials and friction.

use alloc::format;

use crate::evidence::{Evidence, Figure, List, Text};
use crate::fit::{self, MaterialKind};
use crate::measure::settled_cmp;
use crate::quantity::{Expansion, Length, Pressure, Ratio};
use crate::{Error, ErrorKind};

use super::Tables;
use super::row::rows;

/// What a figure of [`CuttingRule`] is of.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Cutting {
    /// Stock on diameter that is left for a reamer.
    ReamStock,
    /// Depth that one pass of a hand facing cutter takes.
    FacingPass,
    /// Depth that may come off a face in all.
    FacingTotal,
    /// Thickness of a coat of paint, on one side.
    Coat,
}

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
        /// What its figure is of.
        about: Cutting,
        /// What it limits, in words.
        what: Text,
        /// The limit.
        window: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}

impl CuttingRule {
    /// Every row about this, ours first.
    pub fn about<'a>(about: Cutting, tables: Tables<'a>) -> impl Iterator<Item = &'a Self> {
        tables.all::<Self>().filter(move |row| row.about == about)
    }

    /// The greatest that is known about this, with the row that says so; `None` where no row knows.
    ///
    /// ```
    /// use framegauge::standard::{Cutting, CuttingRule, Tables};
    /// let (thickest, row) = CuttingRule::greatest(Cutting::Coat, Tables::ours()).unwrap();
    /// assert_eq!((framegauge::settled_mm(thickest), row.code.as_ref()), (0.12, "coat_one_side"));
    /// assert!(CuttingRule::greatest(Cutting::FacingTotal, Tables::ours()).is_none()); // nobody prints it
    /// ```
    #[must_use]
    pub fn greatest<'a>(about: Cutting, tables: Tables<'a>) -> Option<(Length, &'a Self)> {
        Self::about(about, tables)
            .filter_map(|row| Some((row.window.upper().or(row.window.nominal())?, row)))
            .max_by(|a, b| settled_cmp(a.0, b.0))
    }

    /// The least that is known about this, with the row that says so; `None` where no row knows.
    ///
    /// ```
    /// use framegauge::standard::{Cutting, CuttingRule, Tables};
    /// let (thinnest, _) = CuttingRule::smallest(Cutting::Coat, Tables::ours()).unwrap();
    /// assert_eq!(framegauge::settled_mm(thinnest), 0.06);
    /// ```
    #[must_use]
    pub fn smallest<'a>(about: Cutting, tables: Tables<'a>) -> Option<(Length, &'a Self)> {
        Self::about(about, tables)
            .filter_map(|row| Some((row.window.lower().or(row.window.nominal())?, row)))
            .min_by(|a, b| settled_cmp(a.0, b.0))
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
