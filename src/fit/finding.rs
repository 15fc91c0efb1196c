//! How one member of a fit stands by itself.

use super::caution::Caution;
use super::class::Feature;
use super::member::{Member, Part};
use crate::evidence::Grade;
use crate::measure::{Decision, DecisionRule, Limits, Reading};
use crate::quantity::{Length, Printed};

/// The sizes of a member that a fit is reckoned with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Extent {
    pub(super) smallest: Reading,
    pub(super) largest: Reading,
    pub(super) mean: Reading,
    /// The sizes are there on the part, not merely allowed.
    pub(super) actual: bool,
    /// What the sizes are worth when they come from a table.
    pub(super) grade: Option<Grade>,
    pub(super) caution: Option<Caution>,
}

/// How one member stands by itself.
///
/// ```
/// use framegauge::{Grade, fit::{HoleMember, ShaftMember, fit_between}, in_mm, measure::{DecisionRule, Limits}, mm};
/// let limits = Limits::between(mm(45.95), mm(46.0), Grade::Published).unwrap();
/// let bore = HoleMember::of_limits(limits).unwrap().measured_once("45.80 +/- 0.02 mm".parse().unwrap()).unwrap();
/// let cup = ShaftMember::of_reading("46.02 +/- 0.01 mm".parse().unwrap()).unwrap();
/// let fit = fit_between(&bore, &cup, DecisionRule::default()).unwrap();
/// assert_eq!(in_mm(fit.hole().outside_by().unwrap()).to_string(), "0.150 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct MemberFinding {
    /// Hole or shaft.
    pub feature: Feature,
    /// Smallest size that the fit was reckoned with.
    pub smallest: Reading,
    /// Largest size that the fit was reckoned with.
    pub largest: Reading,
    /// Whether the sizes were measured.
    pub measured: bool,
    /// Mean size less nominal size: positive is large.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "off_nominal_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    pub off_nominal: Option<Length>,
    /// The member's own limits.
    pub limits: Option<Limits>,
    /// The readings held against these limits; `None` without readings or without limits.
    pub decision: Option<Decision>,
}

impl MemberFinding {
    pub(super) fn of<P: Part>(
        member: &Member<P>,
        extent: &Extent,
        nominal: Option<Length>,
        rule: DecisionRule,
    ) -> Self {
        Self {
            feature: P::FEATURE,
            smallest: extent.smallest,
            largest: extent.largest,
            measured: member.shape().is_some(),
            off_nominal: nominal.map(|n| extent.mean.value() - n),
            limits: member.limits(),
            decision: member.own_decision(rule),
        }
    }

    /// How far the worst reading lies outside the member's own limits; `None` when none does or nothing is known.
    #[must_use]
    pub fn outside_by(&self) -> Option<Length> {
        let margin = self.decision?.margin?;
        (margin.in_unit() < 0.0).then_some(-margin)
    }
}
