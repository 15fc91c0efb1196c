//! Whether an instrument can decide a tolerance at all, which one can, and deciding from few readings.

use alloc::vec::Vec;

use super::decision::{SHOWN, Tails, told};
use super::{
    Decision, DecisionRule, Freedom, Instrument, Limits, Measures, Outcome, Reading, Why,
    acceptance_zone, student,
};
use crate::evidence::Text;
use crate::quantity::mm;

/// Which instruments could show conformity with limits, and which never could.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Able {
    /// Codes of those that can, cheapest first.
    pub can: Vec<Text>,
    /// Codes of those that cannot, cheapest first.
    pub cannot: Vec<Text>,
    /// The answer in a sentence.
    pub words: Text,
}

/// Sorts instruments by whether they can decide these limits under a rule. Those that cannot measure the thing, or
/// have no permissible error tabulated for its size, are left out.
///
/// ```
/// use framegauge::{Evidence, Figure, Grade, Span, measure::{DecisionRule, ErrorLimit, Instrument, Limits, Measures, able}, mm, um};
/// let own = |v| Figure::known(Span::new(Some(um(v)), None, None).unwrap(), Evidence::shop("our certificate"));
/// let gauge = |code: &'static str, error, cost| Instrument {
///     code: code.into(), name: code.into(), measures: vec![Measures::Inside].into(),
///     limits: vec![ErrorLimit { over: mm(0.0), up_to: mm(100.0), error: own(error) }].into(),
///     resolution: None, repeatability: None, cost, note: "".into(),
/// };
/// let shop = [gauge("caliper", 40.0, 1), gauge("three-point", 4.0, 3)];
/// let cup_bore = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
/// let answer = able(&shop, &cup_bore, Measures::Inside, DecisionRule::default());
/// assert_eq!(answer.words, "caliper cannot decide 43.950 to 44.000 mm; three-point can");
/// ```
#[must_use]
pub fn able(
    instruments: &[Instrument],
    limits: &Limits,
    measures: Measures,
    rule: DecisionRule,
) -> Able {
    let size = match (limits.lower().known(), limits.upper().known()) {
        (Some(low), Some(high)) => (low + high) / 2.0,
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => mm(0.0),
    };
    let mut known: Vec<(u8, &Text, bool)> = instruments
        .iter()
        .filter(|i| i.measures.contains(&measures))
        .filter_map(|i| {
            let u = i.standard_uncertainty(size).ok()?;
            Some((i.cost, &i.code, acceptance_zone(limits, u, rule).is_some()))
        })
        .collect();
    known.sort_by_key(|k| k.0);
    let pick = |wanted: bool| -> Vec<Text> {
        known
            .iter()
            .filter(|k| k.2 == wanted)
            .map(|k| k.1.clone())
            .collect()
    };
    let (can, cannot) = (pick(true), pick(false));
    Able {
        words: Able::said(&can, &cannot, limits, size),
        can,
        cannot,
    }
}

/// As [`super::conformance_probability`], with an uncertainty that is itself known from few readings: Student's t in the
/// place of the normal distribution (JCGM 106:2012, 7.3).
///
/// ```
/// use framegauge::{Grade, measure::{Freedom, Limits, Reading, probability_from_few}, mm};
/// let limits = Limits::at_most(mm(1.0), Grade::Shop).unwrap();
/// let reading = Reading::new(mm(0.8), mm(0.1)).unwrap();
/// // Two u inside: 97.7 % if u is well known, 85 % if it comes from two readings.
/// assert!((probability_from_few(&reading, Freedom::EXACT, &limits) - 0.977).abs() < 1e-3);
/// assert!((probability_from_few(&reading, Freedom::new(1.0).unwrap(), &limits) - 0.852).abs() < 1e-3);
/// ```
#[must_use]
pub fn probability_from_few(reading: &Reading, freedom: Freedom, limits: &Limits) -> f64 {
    Tails::of(reading, limits, |score| student(score, freedom)).within()
}

/// Holds a reading whose uncertainty comes from few readings against limits: ISO 14253-1:2017 with Student's t. As in
/// [`super::decide`], nonconformity is shown only beyond one limit.
///
/// ```
/// use framegauge::{Grade, measure::{Freedom, Limits, Outcome, Reading, decide_from_few}, mm};
/// let limits = Limits::at_most(mm(1.0), Grade::Shop).unwrap();
/// let reading = Reading::new(mm(0.8), mm(0.1)).unwrap();
/// assert_eq!(decide_from_few(&reading, Freedom::new(1.0).unwrap(), &limits).outcome, Outcome::Undecided);
/// assert_eq!(decide_from_few(&reading, Freedom::EXACT, &limits).outcome, Outcome::ConformityShown);
/// ```
pub fn decide_from_few(reading: &Reading, freedom: Freedom, limits: &Limits) -> Decision {
    let tails = Tails::of(reading, limits, |score| student(score, freedom));
    let margin = limits.margin(reading.value());
    let best = limits.width().map_or(1.0, |width| {
        let middle = reading.shifted(
            limits
                .lower()
                .known()
                .map_or(mm(0.0), |low| low + width / 2.0 - reading.value()),
        );
        probability_from_few(&middle, freedom, limits)
    });
    let (outcome, why) = if tails.beyond_one() >= SHOWN && margin.is_some() {
        (Outcome::NonconformityShown, Why::Clear)
    } else if limits.has_unknown() {
        (Outcome::Undecided, Why::LimitUnknown)
    } else if tails.within() >= SHOWN {
        (Outcome::ConformityShown, Why::Clear)
    } else if best < SHOWN {
        (Outcome::Undecided, Why::InstrumentTooCoarse)
    } else {
        (Outcome::Undecided, Why::TooClose)
    };
    Decision {
        outcome,
        why,
        probability: told(why, &tails),
        margin,
        rule: DecisionRule::Iso14253Of2017,
        grade: limits.grade(),
    }
}
