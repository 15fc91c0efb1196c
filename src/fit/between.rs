//! The fit between any two members: clearance as an interval with its uncertainty, and which member is out.

use alloc::vec::Vec;

use super::caution::{Caution, note};
use super::finding::{Extent, MemberFinding};
use super::member::{HoleMember, Member, Part, ShaftMember, mixed};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Outcome, Reading};
use crate::quantity::{Length, nanometres, settled_mm};

/// The kind of a fit (ISO 286-1). A clearance fit with no gap left still is one, and is not called loose here: a direct
/// bearing in its shell is meant to go in by hand.
///
/// ```
/// use framegauge::fit::FitKind;
/// assert_eq!(FitKind::Interference.to_string(), "interference");
/// assert!(FitKind::Clearance.words().contains("by hand"));
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum FitKind {
    /// Never less than no gap.
    Clearance,
    /// Gap or press, depending on the parts or on the place.
    Transition,
    /// Never less than no press.
    Interference,
}

/// Which member lies outside its limits.
///
/// ```
/// assert_eq!(framegauge::fit::Out::Both.words(), "both members are out");
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Out {
    /// Both are shown within.
    Neither,
    /// The hole is shown outside, the shaft is not.
    Hole,
    /// The shaft is shown outside, the hole is not.
    Shaft,
    /// Both are shown outside.
    Both,
    /// Nothing is shown, for want of limits or of readings fine enough.
    CannotTell,
}

impl Out {
    pub(crate) fn of(hole: Option<Outcome>, shaft: Option<Outcome>) -> Self {
        let out = |o: Option<Outcome>| o == Some(Outcome::NonconformityShown);
        let within = |o: Option<Outcome>| o == Some(Outcome::ConformityShown);
        match (out(hole), out(shaft)) {
            (true, true) => Self::Both,
            (true, false) => Self::Hole,
            (false, true) => Self::Shaft,
            (false, false) if within(hole) && within(shaft) => Self::Neither,
            (false, false) => Self::CannotTell,
        }
    }
}

/// The fit between two members.
///
/// All clearances are on diameter, hole less shaft: a negative clearance is an interference.
///
/// ```
/// use framegauge::{Clearance, fit::{HoleMember, ShaftMember, fit_between}, in_mm, measure::DecisionRule};
/// let tube = HoleMember::of_reading("27.25 +/- 0.03 mm".parse().unwrap()).unwrap();
/// let post = ShaftMember::of_reading("27.15 +/- 0.04 mm".parse().unwrap()).unwrap();
/// let fit = fit_between(&tube, &post, DecisionRule::default()).unwrap();
/// assert_eq!(in_mm(fit.mean().value()).to_string(), "0.100 mm");
/// assert_eq!(in_mm(fit.mean().expanded_uncertainty()).to_string(), "0.050 mm");
/// assert_eq!(Clearance::new(fit.mean().value()).unwrap().as_interference().to_string(), "-0.100 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Fit {
    tightest: Reading,
    loosest: Reading,
    mean: Reading,
    kind: FitKind,
    out: Out,
    hole: MemberFinding,
    shaft: MemberFinding,
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "nominal_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    nominal: Option<Length>,
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    grade: Option<Grade>,
    cautions: Vec<Caution>,
    #[cfg_attr(feature = "serde", serde(skip))]
    sizes: [Extent; 2],
    #[cfg_attr(feature = "serde", serde(skip))]
    rule: DecisionRule,
}

/// The fit of this shaft in this hole. `rule` decides how each member stands against its own limits.
///
/// The interval runs from the tightest place (smallest hole, largest shaft) to the loosest. Where both members are
/// measured both places are real; where one is given by limits only, they are what the pair may turn out to be.
///
/// # Errors
/// `Missing` when a member has neither readings nor two limits; `Contradiction` for two different nominal sizes.
///
/// ```
/// use framegauge::{fit::{FitKind, HoleMember, Out, RingClass, ShaftMember, fit_between}, in_mm, measure::DecisionRule, mm};
/// // A bearing of class Normal in a shell bored to N7: from 3 µm of gap to 33 µm of press.
/// let shell = HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap();
/// let bearing = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
/// let fit = fit_between(&shell, &bearing, DecisionRule::default()).unwrap();
/// assert_eq!(fit.kind(), FitKind::Transition);
/// assert_eq!(in_mm(fit.tightest().value()).to_string(), "-0.033 mm");
/// assert_eq!(in_mm(fit.loosest().value()).to_string(), "0.003 mm");
/// // The same shell measured 20 µm over its limits.
/// let shell = shell.measured_once("42.012 +/- 0.004 mm".parse().unwrap()).unwrap();
/// assert_eq!(fit_between(&shell, &bearing, DecisionRule::default()).unwrap().out(), Out::Hole);
/// ```
pub fn fit_between(
    hole: &HoleMember,
    shaft: &ShaftMember,
    rule: DecisionRule,
) -> Result<Fit, Error> {
    let nominal = match (hole.nominal(), shaft.nominal()) {
        (Some(a), Some(b)) if settled_mm(a) != settled_mm(b) => return Err(mixed(a, b)),
        (a, b) => a.or(b),
    };
    let around = hole.extent()?;
    let inside = shaft.extent()?;
    let tightest = around.smallest.less(&inside.largest);
    let loosest = around.largest.less(&inside.smallest);
    let hole_finding = MemberFinding::of(hole, &around, nominal, rule);
    let shaft_finding = MemberFinding::of(shaft, &inside, nominal, rule);
    let mut cautions = Vec::new();
    gather(&mut cautions, hole, &around);
    gather(&mut cautions, shaft, &inside);
    if near_zero(&tightest) || near_zero(&loosest) {
        note(&mut cautions, Caution::KindWithinUncertainty);
    }
    let outcome = |m: &MemberFinding| m.decision.map(|d| d.outcome);
    Ok(Fit {
        tightest,
        loosest,
        mean: around.mean.less(&inside.mean),
        kind: kind(&tightest, &loosest),
        out: Out::of(outcome(&hole_finding), outcome(&shaft_finding)),
        hole: hole_finding,
        shaft: shaft_finding,
        nominal,
        grade: weakest(&[around.grade, inside.grade]),
        cautions,
        sizes: [around, inside],
        rule,
    })
}

fn weakest(grades: &[Option<Grade>]) -> Option<Grade> {
    grades.iter().flatten().copied().min()
}

fn gather<P: Part>(cautions: &mut Vec<Caution>, member: &Member<P>, extent: &Extent) {
    if let Some(shape) = member.shape() {
        for caution in shape.cautions() {
            note(cautions, *caution);
        }
    }
    if let Some(caution) = extent.caution {
        note(cautions, caution);
    }
    let limits = member.limits().map(|l| l.grade());
    if limits == Some(Grade::Memory) || extent.grade == Some(Grade::Memory) {
        note(cautions, Caution::FromMemory);
    }
}

fn kind(tightest: &Reading, loosest: &Reading) -> FitKind {
    let sign = |r: &Reading| nanometres(r.value()).unwrap_or_default().signum();
    match (sign(tightest), sign(loosest)) {
        (0.., _) => FitKind::Clearance,
        (_, ..=0) => FitKind::Interference,
        _ => FitKind::Transition,
    }
}

/// A measured clearance whose expanded uncertainty reaches over zero.
fn near_zero(clearance: &Reading) -> bool {
    let (gap, unsure) = (
        nanometres(clearance.value()).map(i64::abs),
        nanometres(clearance.expanded_uncertainty()),
    );
    gap < unsure
}

impl Fit {
    /// Clearance at the tightest place, negative for interference.
    #[must_use]
    pub const fn tightest(&self) -> Reading {
        self.tightest
    }
    /// Clearance at the loosest place.
    #[must_use]
    pub const fn loosest(&self) -> Reading {
        self.loosest
    }
    /// Mean hole less mean shaft: what presses, when out-of-round parts round each other.
    #[must_use]
    pub const fn mean(&self) -> Reading {
        self.mean
    }
    /// Clearance, transition or interference, by the values as they stand.
    #[must_use]
    pub const fn kind(&self) -> FitKind {
        self.kind
    }
    /// Which measured member lies outside its own limits.
    #[must_use]
    pub const fn out(&self) -> Out {
        self.out
    }
    /// The hole by itself.
    #[must_use]
    pub const fn hole(&self) -> &MemberFinding {
        &self.hole
    }
    /// The shaft by itself.
    #[must_use]
    pub const fn shaft(&self) -> &MemberFinding {
        &self.shaft
    }
    /// The nominal size, where one is known.
    #[must_use]
    pub const fn nominal(&self) -> Option<Length> {
        self.nominal
    }
    /// The weakest grade of the tabulated sizes that the fit rests on; `None` when both members were measured.
    #[must_use]
    pub const fn grade(&self) -> Option<Grade> {
        self.grade
    }
    /// Warnings.
    #[must_use]
    pub fn cautions(&self) -> &[Caution] {
        &self.cautions
    }
    pub(super) const fn sizes(&self) -> &[Extent; 2] {
        &self.sizes
    }
    pub(super) const fn rule(&self) -> DecisionRule {
        self.rule
    }
}
