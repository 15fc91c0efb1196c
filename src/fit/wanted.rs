//! A fit held against the window that a maker or the trade wants, and what would cure it.

use alloc::vec::Vec;

use super::between::{Fit, Out};
use super::caution::{Caution, note};
use crate::Error;
use crate::evidence::{Grade, Text};
use crate::measure::{
    Bound, Decision, DecisionRule, Limits, Outcome, Reading, Why, decide, settled_cmp,
};
use crate::quantity::{Length, Wall, mm};

/// Which way the wanted figures are counted.
///
/// ```
/// use framegauge::fit::Sense;
/// assert_eq!("interference".parse::<Sense>().unwrap(), Sense::Interference);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Sense {
    /// Shaft less hole.
    Interference,
    /// Hole less shaft.
    Clearance,
}

/// A wanted window of interference or clearance on diameter, and whose it is.
///
/// ```
/// use framegauge::{Grade, fit::Wanted, measure::Limits, mm};
/// let cups = Wanted::interference(Limits::at_most(mm(0.10), Grade::Published).unwrap(), "a headset maker's technical page");
/// assert_eq!(cups.to_string(), "interference at most 0.100 mm (a headset maker's technical page)");
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Wanted {
    /// Which way the limits are counted.
    pub sense: Sense,
    /// The limits, in that sense.
    pub limits: Limits,
    /// Whose window it is, in neutral words.
    pub owner: Text,
}

impl Wanted {
    /// A window of interference: shaft less hole.
    #[must_use]
    pub fn interference(limits: Limits, owner: impl Into<Text>) -> Self {
        Self {
            sense: Sense::Interference,
            limits,
            owner: owner.into(),
        }
    }

    /// A window of clearance: hole less shaft.
    #[must_use]
    pub fn clearance(limits: Limits, owner: impl Into<Text>) -> Self {
        Self {
            sense: Sense::Clearance,
            limits,
            owner: owner.into(),
        }
    }

    /// The same window counted as clearance. "A clearance of at most 0.2 mm" still asks for a clearance, so a side that
    /// is left open ends at zero (ISO 286-1: clearance and interference are positive by definition).
    ///
    /// # Errors
    /// Never for checked limits; the constructor of limits checks again.
    pub(crate) fn as_clearance(&self) -> Result<Limits, Error> {
        let turned = |bound: Bound| match bound {
            Bound::At(limit) => Bound::At(-limit),
            other => other,
        };
        let lower = match (self.limits.lower(), self.limits.upper()) {
            (Bound::Open, Bound::At(most)) if most >= mm(0.0) => Bound::At(mm(0.0)),
            (lower, _) => lower,
        };
        let (upper, grade) = (self.limits.upper(), self.limits.grade());
        match self.sense {
            Sense::Clearance => Limits::new(lower, upper, grade),
            Sense::Interference => Limits::new(turned(upper), turned(lower), grade),
        }
    }
}

impl core::fmt::Display for Wanted {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{} {}", self.sense, self.limits)?;
        if self.owner.is_empty() {
            Ok(())
        } else {
            write!(f, " ({})", self.owner)
        }
    }
}

/// What would bring a fit into the window. Every size is one that would fit the *other* member as it stands.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cure {
    /// Wall of a shim that fills the gap at its tightest place: **half** the difference of the diameters. Only offered
    /// where the fit is shown too loose.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "shim_wall_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    shim_wall: Option<Length>,
    /// Sizes of shaft that would fit this hole; `None` when no size would, because the hole varies by more than the window.
    pub shaft_sizes: Option<Limits>,
    /// Sizes of hole that would fit this shaft.
    pub hole_sizes: Option<Limits>,
}

impl Cure {
    /// The wall of the shim, where one would help.
    #[must_use]
    pub fn shim_wall(&self) -> Option<Wall> {
        self.shim_wall.and_then(|wall| Wall::new(wall).ok())
    }

    /// The largest of these sizes that would fit the hole as it stands.
    ///
    /// ```
    /// use framegauge::{Grade, fit::{HoleMember, ShaftMember, Wanted, fit_between}, measure::{DecisionRule, Limits}, mm};
    /// let tube = HoleMember::of_reading("27.25 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// let post = ShaftMember::of_reading("26.79 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// let fit = fit_between(&tube, &post, DecisionRule::default()).unwrap();
    /// let wanted = Wanted::clearance(Limits::between(mm(0.0), mm(0.2), Grade::CommonPractice).unwrap(), "");
    /// let held = fit.against(&wanted).unwrap();
    /// assert_eq!(held.cure.next_shaft(&[mm(26.8), mm(27.0), mm(27.2), mm(27.4)]), Some(mm(27.2)));
    /// ```
    #[must_use]
    pub fn next_shaft(&self, sizes: &[Length]) -> Option<Length> {
        let fitting = self.shaft_sizes?;
        sizes
            .iter()
            .copied()
            .filter(|size| fitting.admits(*size))
            .max_by(|a, b| settled_cmp(*a, *b))
    }
}

/// A fit held against a wanted window.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Conformance {
    /// The window.
    pub wanted: Wanted,
    /// What is shown. Every place of the joint must conform; one place shown outside is enough for nonconformity.
    pub outcome: Outcome,
    /// Why.
    pub why: Why,
    /// Probability that the worst place conforms. `None` while an unmeasured member or an unknown limit leaves it open.
    #[cfg_attr(feature = "serde", serde(rename = "conformance_probability"))]
    pub probability: Option<f64>,
    /// The tightest place, counted as clearance.
    pub tightest: Decision,
    /// The loosest place, counted as clearance.
    pub loosest: Decision,
    /// Which member is to blame: by its own limits where it has any; else, for a window of clearance and a known nominal
    /// size, by whether it would fit a counterpart of exactly that size.
    pub out: Out,
    /// What would cure it.
    pub cure: Cure,
    /// The weakest grade that the verdict rests on.
    pub grade: Grade,
    /// Warnings, those of the fit included.
    pub cautions: Vec<Caution>,
}

/// A fit held against several windows. They are shown side by side, never averaged.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Windows {
    /// One verdict a window, in the order given.
    pub each: Vec<Conformance>,
    /// Whether the windows lead to different outcomes.
    pub conflict: bool,
}

impl Fit {
    /// Holds the fit against a wanted window, by the rule that the fit was made with.
    ///
    /// # Errors
    /// Those of [`Limits::new`], for a window that is none.
    ///
    /// ```
    /// use framegauge::{Grade, fit::{HoleMember, Out, ShaftMember, Wanted, fit_between}, in_mm, measure::{DecisionRule, Limits, Outcome}, mm};
    /// let tube = HoleMember::of_reading("27.40 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// let post = ShaftMember::of_reading("27.00 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// let fit = fit_between(&tube.with_nominal(mm(27.2)).unwrap(), &post, DecisionRule::default()).unwrap();
    /// let window = Limits::between(mm(0.0), mm(0.1), Grade::CommonPractice).unwrap();
    /// let held = fit.against(&Wanted::clearance(window, "trade rule")).unwrap();
    /// assert_eq!(held.outcome, Outcome::NonconformityShown);
    /// assert_eq!(held.out, Out::Both); // each is 0.2 mm off its nominal size
    /// assert_eq!(held.cure.shim_wall().unwrap().to_string(), "0.200 mm"); // half of 0.400 mm
    /// ```
    pub fn against(&self, wanted: &Wanted) -> Result<Conformance, Error> {
        let window = wanted.as_clearance()?;
        let rule = self.rule();
        let tightest = decide(&self.tightest(), &window, rule);
        let loosest = decide(&self.loosest(), &window, rule);
        let [hole, shaft] = self.sizes();
        let both_real = hole.actual && shaft.actual;
        let worst = tightest.worse(loosest);
        let (outcome, why, probability) = if both_real || worst.outcome == Outcome::ConformityShown
        {
            (worst.outcome, worst.why, worst.probability)
        } else if self.hopeless(&window, rule) {
            (Outcome::NonconformityShown, Why::Clear, Some(0.0))
        } else {
            let why = if window.has_unknown() {
                Why::LimitUnknown
            } else {
                Why::TooClose
            };
            (Outcome::Undecided, why, None)
        };
        let mut cautions = self.cautions().to_vec();
        if window.grade() == Grade::Memory {
            note(&mut cautions, Caution::FromMemory);
        }
        Ok(Conformance {
            wanted: wanted.clone(),
            outcome,
            why,
            probability: probability.map(four_places),
            tightest,
            loosest,
            out: self.blame(&window, outcome),
            cure: self.cure(&window, outcome)?,
            grade: self
                .grade()
                .map_or(window.grade(), |g| g.weaker(window.grade())),
            cautions,
        })
    }

    /// Holds the fit against each of several windows. Where makers disagree the outcomes may differ; none is preferred.
    ///
    /// # Errors
    /// As [`Self::against`].
    ///
    /// ```
    /// use framegauge::{Grade, fit::{HoleMember, ShaftMember, Wanted, fit_between}, measure::{DecisionRule, Limits}, mm};
    /// let bore = HoleMember::of_reading("33.95 +/- 0.01 mm".parse().unwrap()).unwrap();
    /// let cup = ShaftMember::of_reading("34.10 +/- 0.01 mm".parse().unwrap()).unwrap();
    /// let fit = fit_between(&bore, &cup, DecisionRule::default()).unwrap();
    /// let windows = fit.against_each(&[
    ///     Wanted::interference(Limits::at_most(mm(0.10), Grade::Published).unwrap(), "one headset maker"),
    ///     Wanted::interference(Limits::between(mm(0.10), mm(0.25), Grade::Published).unwrap(), "another"),
    /// ]).unwrap();
    /// assert!(windows.conflict);
    /// ```
    pub fn against_each(&self, wanted: &[Wanted]) -> Result<Windows, Error> {
        let each: Vec<Conformance> = wanted
            .iter()
            .map(|w| self.against(w))
            .collect::<Result<_, _>>()?;
        let conflict = each
            .iter()
            .zip(each.iter().skip(1))
            .any(|(a, b)| a.outcome != b.outcome);
        Ok(Windows { each, conflict })
    }

    /// Whether even the most favourable parts within their limits would lie outside, at one real place at least.
    fn hopeless(&self, window: &Limits, rule: DecisionRule) -> bool {
        let [hole, shaft] = self.sizes();
        let pick = |real: bool, here: Reading, best: Reading| if real { here } else { best };
        let tight_best = pick(hole.actual, hole.smallest, hole.largest).less(&pick(
            shaft.actual,
            shaft.largest,
            shaft.smallest,
        ));
        let loose_best = pick(hole.actual, hole.largest, hole.smallest).less(&pick(
            shaft.actual,
            shaft.smallest,
            shaft.largest,
        ));
        let shown_outside = |place: &Reading, lower: Bound, upper: Bound| {
            Limits::new(lower, upper, window.grade())
                .is_ok_and(|side| decide(place, &side, rule).outcome == Outcome::NonconformityShown)
        };
        shown_outside(&tight_best, window.lower(), Bound::Open)
            || shown_outside(&loose_best, Bound::Open, window.upper())
    }

    fn blame(&self, window: &Limits, outcome: Outcome) -> Out {
        if self.out() != Out::CannotTell || outcome != Outcome::NonconformityShown {
            return self.out();
        }
        let meant_to_clear = window
            .lower()
            .known()
            .is_some_and(|low| settled_cmp(low, mm(0.0)) != core::cmp::Ordering::Less);
        let (Some(nominal), true) = (self.nominal(), meant_to_clear) else {
            return self.out();
        };
        let stands = |gap: [Reading; 2], measured: bool| {
            let [a, b] = gap.map(|g| decide(&g, window, self.rule()));
            measured.then(|| a.worse(b).outcome)
        };
        let [hole, shaft] = self.sizes();
        let off = |size: Reading| size.shifted(-nominal);
        let short = |size: Reading| size.scaled(-1.0).shifted(nominal);
        Out::of(
            stands([off(hole.smallest), off(hole.largest)], hole.actual),
            stands([short(shaft.smallest), short(shaft.largest)], shaft.actual),
        )
    }

    fn cure(&self, window: &Limits, outcome: Outcome) -> Result<Cure, Error> {
        let [hole, shaft] = self.sizes();
        let loose = window
            .upper()
            .known()
            .is_some_and(|high| settled_cmp(self.loosest().value(), high).is_gt());
        let gap = self.tightest().value();
        let shim =
            outcome == Outcome::NonconformityShown && loose && settled_cmp(gap, mm(0.0)).is_gt();
        let moved = |bound: Bound, by: &dyn Fn(Length) -> Length| match bound {
            Bound::At(limit) => Bound::At(by(limit)),
            other => other,
        };
        // A shaft of size s fits when smallest hole - s >= lower and largest hole - s <= upper; the hole likewise.
        let shaft_sizes = Limits::new(
            moved(window.upper(), &|high| hole.largest.value() - high),
            moved(window.lower(), &|low| hole.smallest.value() - low),
            window.grade(),
        );
        let hole_sizes = Limits::new(
            moved(window.lower(), &|low| shaft.largest.value() + low),
            moved(window.upper(), &|high| shaft.smallest.value() + high),
            window.grade(),
        );
        Ok(Cure {
            shim_wall: shim.then(|| gap / 2.0),
            shaft_sizes: shaft_sizes.ok(),
            hole_sizes: hole_sizes.ok(),
        })
    }
}

/// A probability from workshop uncertainties is not known better.
fn four_places(probability: f64) -> f64 {
    libm::round(probability * 1e4) / 1e4
}
