//! Decision rules by name, with three outcomes.

use core::cmp::Ordering;
use core::fmt;

use super::{Bound, Limits, Reading, phi, settled_cmp};
use crate::evidence::Grade;
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// The rule by which a reading is held against limits.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum DecisionRule {
    /// ISO 14253-1:2017: shown at a conformance probability of at least 95 %, either way. The default.
    #[default]
    Iso14253Of2017,
    /// ISO 14253-1:1998: the result with U (k = 2) wholly inside, or wholly outside.
    Iso14253Of1998,
    /// Simple acceptance: the value itself decides, whatever its uncertainty.
    SimpleAcceptance,
    /// ILAC-G8:09/2019: guard band r·U inside each limit (U, k = 2); r = 1 is the classic rule, r = 0 simple acceptance.
    GuardBand(GuardFactor),
}

/// Guard band as a multiple r of the expanded uncertainty U; a negative r widens the limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GuardFactor(f64);

impl GuardFactor {
    /// A guard factor.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` beyond -1 to 3, the span that ILAC-G8:09/2019 lists.
    ///
    /// ```
    /// use framegauge::measure::GuardFactor;
    /// assert!(GuardFactor::new(1.0).is_ok());
    /// assert!(GuardFactor::new(f64::NAN).is_err());
    /// ```
    pub fn new(r: f64) -> Result<Self, Error> {
        if !r.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "guard factor",
                r,
                "must be finite",
                "0 is simple acceptance, 1 the classic guard band",
            ));
        }
        if !(-1.0..=3.0).contains(&r) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "guard factor",
                r,
                "lies outside -1 to 3",
                "0 is simple acceptance, 1 the classic guard band",
            ));
        }
        Ok(Self(r))
    }
}

impl fmt::Display for DecisionRule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Iso14253Of2017 => f.write_str("ISO 14253-1:2017, 95 % conformance probability"),
            Self::Iso14253Of1998 => f.write_str("ISO 14253-1:1998, U with k = 2"),
            Self::SimpleAcceptance => f.write_str("simple acceptance"),
            Self::GuardBand(GuardFactor(r)) => write!(f, "guard band {r} U (ILAC-G8:09/2019)"),
        }
    }
}

/// The three outcomes, in the words of ISO 14253-1.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Outcome {
    /// Shown to lie within the limits.
    ConformityShown,
    /// Shown to lie outside the limits.
    NonconformityShown,
    /// Neither is shown.
    Undecided,
}

impl Outcome {
    /// The outcome in words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::ConformityShown => "within limits",
            Self::NonconformityShown => "out of limits",
            Self::Undecided => "undecided",
        }
    }
}

/// Why the outcome is what it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Why {
    /// The reading is clear of the limits by enough.
    Clear,
    /// The uncertainty straddles a limit.
    TooClose,
    /// A limit is not published, so conformity cannot be shown.
    LimitUnknown,
    /// This uncertainty could never show conformity with so narrow a tolerance: a finer instrument is needed.
    InstrumentTooCoarse,
}

/// A reading held against limits.
///
/// ```
/// use framegauge::{Grade, measure::{Bound, DecisionRule, Limits, Reading, decide}, mm};
/// let reading: Reading = "13.0 +/- 0.1 mm".parse().unwrap();
/// let both = Limits::between(mm(12.5), mm(16.3), Grade::Published).unwrap();
/// assert!(decide(&reading, &both, DecisionRule::default()).probability.unwrap() > 0.999);
/// let half = Limits::new(Bound::At(mm(12.5)), Bound::Unknown, Grade::Published).unwrap();
/// assert!(decide(&reading, &half, DecisionRule::default()).probability.is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Decision {
    /// What is shown.
    pub outcome: Outcome,
    /// Why.
    pub why: Why,
    /// Probability that the true value lies within the limits, 0 to 1 (JCGM 106:2012, 7.3.2, normal). `None` where a limit
    /// is unknown: the other one alone would make the reading look surer than anybody can be. A limit shown to be broken
    /// keeps its number, because the other limit could only lower it.
    pub probability: Option<f64>,
    /// Signed distance to the nearest known limit, positive inside.
    pub margin: Option<Length>,
    /// The rule used.
    pub rule: DecisionRule,
    /// What the limits are worth.
    pub grade: Grade,
}

/// Probability that the true value lies within the known limits (JCGM 106:2012, clause 7: normal, no prior knowledge).
///
/// With no uncertainty it is 0 or 1 by the settled comparison. An unknown side counts as absent, so it is an upper bound
/// there; [`Decision::probability`] is then left out.
///
/// ```
/// use framegauge::{Grade, measure::{Limits, Reading, conformance_probability}, mm};
/// let limits = Limits::between(mm(12.5), mm(16.3), Grade::Published).unwrap();
/// let p = conformance_probability(&Reading::new(mm(13.6), mm(1.8)).unwrap(), &limits);
/// assert!((p - 0.6626).abs() < 1e-4);
/// ```
#[must_use]
pub fn conformance_probability(reading: &Reading, limits: &Limits) -> f64 {
    Tails::of(reading, limits, phi).within()
}

/// Probabilities that the true value lies beyond each known limit.
pub(super) struct Tails {
    below: f64,
    above: f64,
}

impl Tails {
    /// By a cumulative distribution of (limit - value) / u, or of (value - limit) / u for the upper one.
    pub(super) fn of(reading: &Reading, limits: &Limits, cumulative: impl Fn(f64) -> f64) -> Self {
        let u = to_mm(reading.standard_uncertainty());
        let beyond = |by: Option<Length>| {
            by.map_or(0.0, |by| {
                if u > 0.0 {
                    cumulative(to_mm(by) / u)
                } else {
                    f64::from(settled_cmp(by, mm(0.0)) == Ordering::Greater)
                }
            })
        };
        let value = reading.value();
        Self {
            below: beyond(limits.lower().known().map(|low| low - value)),
            above: beyond(limits.upper().known().map(|high| value - high)),
        }
    }

    /// Within both. Summing the two tails keeps full precision where 1 - p is tiny.
    pub(super) fn within(&self) -> f64 {
        (1.0 - self.below - self.above).clamp(0.0, 1.0)
    }

    /// Beyond one particular limit, the likelier of the two. A reading so coarse that the tolerance is lost in it makes both
    /// sides likely and neither shown.
    pub(super) fn beyond_one(&self) -> f64 {
        libm::fmax(self.below, self.above)
    }
}

/// Probability that must be reached for the 2017 rule.
pub(super) const SHOWN: f64 = 0.95;

/// Holds a reading against limits by a rule.
///
/// An unknown limit never lets conformity be shown; nonconformity with the known side still can be.
///
/// ```
/// use framegauge::{Grade, measure::{DecisionRule, Limits, Outcome, Reading, Why, decide}, mm};
/// let bore = Limits::between(mm(45.95), mm(46.0), Grade::Published).unwrap();
/// let reading = Reading::expanded(mm(45.80), mm(0.05)).unwrap();
/// assert_eq!(decide(&reading, &bore, DecisionRule::default()).outcome, Outcome::NonconformityShown);
/// // An inside caliper can never show a 0.05 mm window:
/// let reading = Reading::expanded(mm(45.975), mm(0.05)).unwrap();
/// assert_eq!(decide(&reading, &bore, DecisionRule::default()).why, Why::InstrumentTooCoarse);
/// ```
#[must_use]
pub fn decide(reading: &Reading, limits: &Limits, rule: DecisionRule) -> Decision {
    let tails = Tails::of(reading, limits, phi);
    let margin = limits.margin(reading.value());
    let within_by = |band: Length| margin.is_none_or(|m| settled_cmp(m, band) != Ordering::Less);
    let outside_by =
        |band: Length| margin.is_some_and(|m| settled_cmp(-m, band) == Ordering::Greater);
    let expanded = reading.expanded_uncertainty();
    let (inside, outside) = match rule {
        DecisionRule::Iso14253Of2017 => (tails.within() >= SHOWN, tails.beyond_one() >= SHOWN),
        DecisionRule::Iso14253Of1998 => (within_by(expanded), outside_by(expanded)),
        DecisionRule::SimpleAcceptance => (within_by(mm(0.0)), outside_by(mm(0.0))),
        DecisionRule::GuardBand(GuardFactor(r)) => (
            within_by(expanded * r),
            outside_by(expanded * libm::fmax(r, -r)),
        ),
    };
    let unknown = limits.has_unknown();
    let (outcome, why) = if outside && margin.is_some() {
        (Outcome::NonconformityShown, Why::Clear)
    } else if unknown {
        (Outcome::Undecided, Why::LimitUnknown)
    } else if inside {
        (Outcome::ConformityShown, Why::Clear)
    } else if acceptance_zone(limits, reading.standard_uncertainty(), rule).is_none() {
        (Outcome::Undecided, Why::InstrumentTooCoarse)
    } else {
        (Outcome::Undecided, Why::TooClose)
    };
    Decision {
        outcome,
        why,
        probability: told(why, &tails),
        margin,
        rule,
        grade: limits.grade(),
    }
}

/// The probability that may be told with this reason.
pub(super) fn told(why: Why, tails: &Tails) -> Option<f64> {
    (why != Why::LimitUnknown).then(|| tails.within())
}

impl Decision {
    /// The one of two that weighs more: out, then undecided, then within; then the less probable, then the smaller margin.
    ///
    /// ```
    /// use framegauge::{Grade, measure::{DecisionRule, Limits, Outcome, decide}, mm};
    /// let limits = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
    /// let of = |text: &str| decide(&text.parse().unwrap(), &limits, DecisionRule::default());
    /// let worse = of("43.97 +/- 0.01 mm").worse(of("44.05 +/- 0.01 mm"));
    /// assert_eq!(worse.outcome, Outcome::NonconformityShown);
    /// ```
    #[must_use]
    pub fn worse(self, other: Self) -> Self {
        if other.weight(&self) == Ordering::Less {
            other
        } else {
            self
        }
    }

    /// Less: this one weighs more.
    pub(crate) fn weight(&self, other: &Self) -> Ordering {
        let rank = |d: &Self| match d.outcome {
            Outcome::NonconformityShown => 0,
            Outcome::Undecided => 1,
            Outcome::ConformityShown => 2,
        };
        let by = |a: Option<f64>, b: Option<f64>| a.partial_cmp(&b).unwrap_or(Ordering::Equal);
        rank(self)
            .cmp(&rank(other))
            .then_with(|| by(self.probability, other.probability))
            .then_with(|| by(self.margin.map(to_mm), other.margin.map(to_mm)))
    }
}

/// The readings that would show conformity with these limits at this standard uncertainty, as limits themselves;
/// `None` when no reading could (below 3.92 u of tolerance under the 2017 rule), when a limit is unknown, and for an
/// uncertainty that is none: negative, or no number.
///
/// ```
/// use framegauge::{Grade, in_mm, measure::{DecisionRule, Limits, acceptance_zone}, mm};
/// let limits = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
/// // A three-point gauge with u = 0.002 mm may read 43.953 to 43.997 mm.
/// let zone = acceptance_zone(&limits, mm(0.002), DecisionRule::default()).unwrap();
/// assert_eq!(zone.to_string(), "43.953 to 43.997 mm");
/// assert!(acceptance_zone(&limits, mm(0.026), DecisionRule::default()).is_none());
/// ```
#[must_use]
pub fn acceptance_zone(
    limits: &Limits,
    standard_uncertainty: Length,
    rule: DecisionRule,
) -> Option<Limits> {
    let u = to_mm(standard_uncertainty);
    if limits.has_unknown() || u < 0.0 {
        return None;
    }
    let band = match rule {
        // What is known exactly needs no band, not even where both limits are one.
        DecisionRule::Iso14253Of2017 if u == 0.0 => mm(0.0),
        DecisionRule::Iso14253Of2017 => mm(guard_factor(limits.width().map(|t| to_mm(t) / u))? * u),
        DecisionRule::Iso14253Of1998 => mm(2.0 * u),
        DecisionRule::SimpleAcceptance => mm(0.0),
        DecisionRule::GuardBand(GuardFactor(r)) => mm(2.0 * u * r),
    };
    let moved = |bound: Bound, by: Length| match bound {
        Bound::At(limit) => Bound::At(limit + by),
        other => other,
    };
    Limits::new(
        moved(limits.lower(), band),
        moved(limits.upper(), -band),
        limits.grade(),
    )
    .ok()
}

/// Smallest g (in u) with Φ(g) − Φ(g − T/u) ≥ 95 %; one-sided limits have no T and need 1.645.
fn guard_factor(tolerance_in_u: Option<f64>) -> Option<f64> {
    let held = |g: f64| phi(g) - tolerance_in_u.map_or(0.0, |t| phi(g - t));
    // At the middle of the tolerance the probability is greatest; if even there it falls short, nothing can be shown.
    // Beyond eight u there is nothing left to gain.
    let middle = tolerance_in_u.map_or(8.0, |t| libm::fmin(t / 2.0, 8.0));
    (held(middle) >= SHOWN).then(|| least_guard(held, middle))
}

/// The smallest g up to `enough` that holds 95 %.
fn least_guard(held: impl Fn(f64) -> f64, enough: f64) -> f64 {
    let (mut low, mut high) = (0.0, enough);
    for _ in 0..60 {
        let try_here = f64::midpoint(low, high);
        if held(try_here) >= SHOWN {
            high = try_here;
        } else {
            low = try_here;
        }
    }
    high
}

#[cfg(feature = "serde")]
impl serde::Serialize for Decision {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("Decision", 6)?;
        out.serialize_field("outcome", &self.outcome)?;
        out.serialize_field("why", &self.why)?;
        // Four places: a probability from workshop uncertainties is not known better.
        out.serialize_field(
            "conformance_probability",
            &self.probability.map(|p| libm::round(p * 1e4) / 1e4),
        )?;
        out.serialize_field("margin_mm", &self.margin.map(crate::quantity::settled_mm))?;
        out.serialize_field("rule", &alloc::format!("{}", self.rule))?;
        out.serialize_field("grade", &self.grade)?;
        out.end()
    }
}

#[cfg(test)]
mod tests {
    use super::guard_factor;

    /// Two-sided factors for 95 %: reckoned with an independent solver (T/u 4, 4.5, 5, 6).
    #[test]
    fn guard_factors() {
        for (ratio, expected) in [(4.0, 1.796_213), (3.92, 1.953_938)] {
            let got = guard_factor(Some(ratio)).unwrap_or(f64::NAN);
            assert!((got - expected).abs() < 2e-6, "T/u {ratio}: {got}");
        }
        assert!(guard_factor(Some(3.91)).is_none());
        assert!((guard_factor(None).unwrap_or(f64::NAN) - 1.644_854).abs() < 1e-6);
    }
}
