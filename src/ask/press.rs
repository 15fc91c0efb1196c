//! `press`: what pressing one part into another does.

use alloc::string::String;

use super::said::Said;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fact::closed_words;
use crate::fit::{
    Caution, Fit, FitKind, Friction, HoleMember, JointShape, Material, MaterialKind, Out,
    PressJoint, PressReport, RingClass, RingSize, RoughnessLoss, ShaftMember, fit_between,
    iso286_sources, ring_tolerance,
};
use crate::judge::MemberOf;
use crate::measure::DecisionRule;
use crate::quantity::{Length, Pressure, Ratio};
use crate::read::{Read, Shape, Tree, answer, form, known_words, told, words};
use crate::say::reckoned;
use crate::standard::Material as MaterialRow;
use crate::{Error, ErrorKind};

told! {
    /// `clearance`, `transition` or `interference`
    FitKind: Text,
    /// `neither`, `hole`, `shaft`, `both` or `cannot_tell`
    Out: Text,
    /// the fit as reckoned: both members, tightest, loosest and mean place, cautions
    Fit: Report,
    /// pressures, stresses and forces: pressure_low_mpa, hub_bore_hoop_mpa, push_in_force_n, holding_force_n, slip_torque_n_m, elastic, cautions, …
    PressReport: Report,
}

told! {
    Caution => Shape::Word(known_words::<Caution>),
}

/// The fit of two members, its errors said of the fields `hole` and `shaft`.
fn fit_of(hole: &MemberOf, shaft: &MemberOf, rule: Option<DecisionRule>) -> Result<Fit, Error> {
    let outer: HoleMember = hole.member().under("hole")?;
    let inner: ShaftMember = shaft.member().under("shaft")?;
    let names = [("shaft", "shaft"), ("nominal", "shaft.nominal")];
    fit_between(&outer, &inner, rule.unwrap_or_default()).said_by(&names, "hole")
}

/// What the tables say of a member. `ring` is the size of a ring that it would be.
fn with_member(mut basis: Basis, member: &MemberOf, ring: RingSize) -> Basis {
    if member.class.is_some() {
        basis = basis.with_tables(&iso286_sources());
    }
    let class = member.ring_class.unwrap_or(RingClass::Normal);
    let found = |size| ring_tolerance(ring, class, size).ok();
    match member.ring.and_then(found) {
        Some(found) => basis.with_tables(&[found.from]),
        None => basis,
    }
}

/// A material: the code of a row of the tables or of the shop, or its constants.
///
/// In a question it is a text such as `al_6061_t6`, or an object with `name`, `kind`, `youngs_modulus`, `poisson` and
/// `strength`.
///
/// ```
/// use framegauge::{ask::MaterialOf, read::Tree};
/// let tree: Tree = serde_json::from_str(r#""al_6061_t6""#).unwrap();
/// assert_eq!(framegauge::read::read_whole::<MaterialOf>(&tree, framegauge::standard::Tables::ours()).unwrap(), MaterialOf::Row("al_6061_t6".into()));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum MaterialOf {
    /// A row by its code.
    Row(String),
    /// Constants from a datasheet.
    Stated(MaterialConstants),
}

const CODE: Shape = Shape::Text {
    what: "the code of a material, such as `al_6061_t6`",
};

impl Read for MaterialOf {
    const SHAPE: Shape = Shape::Either(&[CODE, MaterialConstants::SHAPE]);

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        match tree {
            Tree::Fields(_) => MaterialConstants::read(tree, context).map(Self::Stated),
            other => {
                let what = "the code of a material, or an object with its constants";
                crate::read::text(other, what, context).map(|code| Self::Row(code.into()))
            }
        }
    }
}

impl MaterialOf {
    /// The material, and the basis with what its row rests on.
    fn material(&self, context: &Context<'_>, basis: Basis) -> Result<(Material, Basis), Error> {
        let code = match self {
            Self::Stated(given) => {
                return Ok((given.material()?, basis.at_best(Some(crate::Grade::Shop))));
            }
            Self::Row(code) => code,
        };
        let row = context.tables.find::<MaterialRow>(code).said("")?;
        let material = row.for_fit().said("")?;
        let poisson = row.poisson.as_ref().and_then(crate::Figure::evidence);
        let (youngs, strength) = (row.youngs_modulus.evidence(), row.strength.evidence());
        let evidence = [youngs, strength, poisson];
        let sources = evidence.into_iter().flatten().flat_map(|e| e.sources());
        let basis = basis.at_best(Some(material.grade())).citing(sources);
        Ok((material, basis))
    }
}

impl MaterialConstants {
    fn material(&self) -> Result<Material, Error> {
        let (name, poisson) = (self.name.clone(), Ratio(self.poisson));
        let material = Material::new(name, self.kind, self.youngs_modulus, poisson)?;
        match self.strength {
            Some(strength) => material.with_strength(strength),
            None => Ok(material),
        }
    }
}

closed_words! {
    /// Rule of what the surfaces lose of an interference.
    ///
    /// ```
    /// use framegauge::{ask::RoughnessRule, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#""din_7190""#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<RoughnessRule>(&tree, framegauge::standard::Tables::ours()).unwrap(), RoughnessRule::Din7190);
    /// ```
    RoughnessRule {
        /// DIN 7190-1:2017: 0.8 (Rz + Rz), on diameter.
        #[strum(serialize = "din_7190")]
        Din7190,
        /// A tenth of the roughness depth on each side: 0.2 (Rz + Rz), on diameter.
        TenthOfDepth,
    }
}
words!(RoughnessRule);

form! {
    /// Elastic constants of a material.
    ///
    /// ```
    /// use framegauge::{ask::MaterialConstants, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"name":"invented alloy","kind":"metal","youngs_modulus":"70 GPa","poisson":0.33}"#).unwrap();
    /// assert!(framegauge::read::read_whole::<MaterialConstants>(&tree, framegauge::standard::Tables::ours()).unwrap().strength.is_none());
    /// ```
    MaterialConstants {
        /// Its name.
        name: String,
        /// Kind; the ring formula holds for metals, warns for plastics and refuses laminates.
        kind: MaterialKind,
        /// Young's modulus.
        youngs_modulus: Pressure,
        /// Poisson's number.
        poisson: f64,
        /// Yield strength; without it yield is not judged.
        strength: Option<Pressure>,
    }

    /// Roughness of the two surfaces.
    ///
    /// ```
    /// use framegauge::{ask::Roughness, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"shaft_rz":"3.2 um","hub_rz":6.3}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<Roughness>(&tree, framegauge::standard::Tables::ours()).unwrap_err()[0].field(), "hub_rz"); // no unit
    /// ```
    Roughness {
        /// Rz of the inner part.
        shaft_rz: Length,
        /// Rz of the outer part.
        hub_rz: Length,
        /// Rule of the loss; DIN 7190 unless stated, the safer one for grip.
        rule: Option<RoughnessRule>,
    }

    /// Friction of the joint.
    ///
    /// ```
    /// use framegauge::{ask::FrictionOf, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"holding":0.06,"pressing":0.15}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<FrictionOf>(&tree, framegauge::standard::Tables::ours()).unwrap().pressing, 0.15);
    /// ```
    FrictionOf {
        /// The low value: what it holds.
        holding: f64,
        /// The high value: what pressing in needs.
        pressing: f64,
    }

    /// `press`: what pressing a part into another does: forces, stress, yield.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"press","hole":{"readings":["43.98 +/- 0.005 mm"]},"shaft":{"readings":["44.05 +/- 0.005 mm"]},
    ///         "hub_outside":"50 mm","shaft_bore":"41 mm","length":"10 mm","hub_material":"al_6061_t6",
    ///         "shaft_material":"al_6061_t6","friction":{"holding":0.06,"pressing":0.15}}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["press"]["elastic"], true);
    /// ```
    PressIn {
        /// The outer member: bore of the head tube or shell.
        hole: MemberOf,
        /// The inner member: cup or bearing.
        shaft: MemberOf,
        /// Outside diameter of the outer part.
        hub_outside: Length,
        /// Bore of the inner part; a solid part has none.
        shaft_bore: Option<Length>,
        /// Length of the joint.
        length: Length,
        /// Material of the outer part.
        hub_material: MaterialOf,
        /// Material of the inner part.
        shaft_material: MaterialOf,
        /// Friction, two values.
        friction: FrictionOf,
        /// Roughness of the surfaces; without it nothing is taken off.
        roughness: Option<Roughness>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// A pressed joint.
    PressAnswer {
        /// Whether both parts stay elastic; null where a strength is not known.
        elastic: Option<bool>,
        /// What the press does.
        press: PressReport,
        /// The fit that it was reckoned from.
        fit: Fit,
        /// Warnings, the frame maker's word first.
        cautions: alloc::vec::Vec<Caution>,
    }
}

impl Roughness {
    fn loss(&self) -> RoughnessLoss {
        let (shaft_rz, hub_rz) = (self.shaft_rz, self.hub_rz);
        match self.rule.unwrap_or(RoughnessRule::Din7190) {
            RoughnessRule::Din7190 => RoughnessLoss::Din7190 { shaft_rz, hub_rz },
            RoughnessRule::TenthOfDepth => RoughnessLoss::TenthOfDepth { shaft_rz, hub_rz },
        }
    }
}

/// The field that a joint's error is about: a material where the formula does not hold for it, else a size.
fn of_joint(error: Error) -> Error {
    let of_material = error.kind() == ErrorKind::NotApplicable;
    let field = match error.field() {
        "hub" if of_material => "hub_material",
        "shaft" if of_material => "shaft_material",
        hub if hub.starts_with("hub") => "hub_outside",
        "shaft" => "shaft_bore",
        bore if bore.contains("shaft bore") => "shaft_bore",
        length if length.contains("joint length") => "length",
        _ => "shaft",
    };
    error.named(field)
}

impl Ask for PressIn {
    type Answer = PressAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let fit = fit_of(&self.hole, &self.shaft, self.rule)?;
        let basis = Basis::reckoned(reckoned::PRESS)
            .noting(reckoned::PRESS_NOTE)
            .at_best(fit.grade());
        let (hub, shaft) = (&self.hub_material, &self.shaft_material);
        let (hub, basis) = hub.material(context, basis).under("hub_material")?;
        let (shaft, basis) = shaft.material(context, basis).under("shaft_material")?;
        let shape = JointShape {
            diameter: fit.shaft().largest.value(),
            shaft_bore: self.shaft_bore,
            hub_outside: self.hub_outside,
            length: self.length,
        };
        let joint = PressJoint::new(shape, &shaft, &hub).map_err(of_joint)?;
        let friction = &self.friction;
        let friction = Friction::new(friction.holding, friction.pressing).said("friction")?;
        let rough = self.roughness.as_ref();
        let loss = rough.map_or(RoughnessLoss::None, Roughness::loss);
        let (smallest, largest) = fit.press_range().said("shaft")?;
        let names = [("roughness", "roughness"), ("friction", "friction")];
        let press = joint.report(smallest, largest, friction, loss);
        let press = press.said_by(&names, "shaft")?;
        let mut cautions = alloc::vec![Caution::MakerFirst];
        for caution in press.cautions.iter().chain(fit.cautions()) {
            if !cautions.contains(caution) {
                cautions.push(*caution);
            }
        }
        let basis = with_member(basis, &self.hole, RingSize::Bore);
        let basis = with_member(basis, &self.shaft, RingSize::Outside).at_best(Some(press.grade));
        let elastic = press.elastic;
        let answer = PressAnswer {
            elastic,
            press,
            fit,
            cautions,
        };
        Ok(Answered { answer, basis })
    }
}
