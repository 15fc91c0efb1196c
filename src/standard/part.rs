//! Rolling bearings, materials and friction.

use crate::evidence::{Figure, List, Text};
use crate::quantity::{Expansion, Pressure, Ratio};

use super::row::rows;

/// What kind of material it is: the ring formulas hold for metals, warn for plastics, refuse laminates.
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
    /// Elastic and alike in all directions.
    Metal,
    /// Creeps: a press fit relaxes.
    Plastic,
    /// Not alike in all directions, splits between its layers.
    Laminate,
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
        /// What it limits, in words.
        what: Text,
        /// The limit.
        window: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}
