//! A finding: numbers, limits, whose limits they are, the outcome, and one plain sentence.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::evidence::{Citation, Evidence, Grade};
use crate::fit::{Conformance, Fit, Wanted};
use crate::measure::{
    Decision, DecisionRule, Limits, Outcome, Reading, Why, decide, settled_below,
};
use crate::quantity::{Length, in_mm, settled_mm, to_mm};
use crate::standard::{Cutting, CuttingRule, Tables};

/// One thing that was found at one place.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Finding {
    /// What was looked at.
    pub what: String,
    /// What is shown; `None` for a plain statement that no limit belongs to.
    pub outcome: Option<Outcome>,
    /// The finding in one sentence.
    pub words: String,
    /// The readings that decided: smallest and largest.
    pub readings: Vec<Reading>,
    /// The limits.
    pub limits: Option<Limits>,
    /// The decision on the worst reading.
    pub decision: Option<Decision>,
    /// Whose limits they are.
    pub owner: String,
    /// What the limits are worth.
    pub grade: Option<Grade>,
    /// Where the limits were read.
    pub sources: Vec<Citation>,
}

impl Finding {
    /// A plain statement.
    ///
    /// ```
    /// let f = framegauge::judge::Finding::stated("upper cup", "pressed in and does not come out: it stays");
    /// assert!(f.outcome.is_none());
    /// ```
    #[must_use]
    pub fn stated(what: impl Into<String>, words: impl Into<String>) -> Self {
        Self {
            what: what.into(),
            outcome: None,
            words: words.into(),
            readings: Vec::new(),
            limits: None,
            decision: None,
            owner: String::new(),
            grade: None,
            sources: Vec::new(),
        }
    }

    /// The same, resting on this evidence.
    ///
    /// ```
    /// use framegauge::{Evidence, Grade, judge::Finding};
    /// let found = Finding::stated("cup", "as the drawing says").resting_on(Some(&Evidence::shop("drawing")));
    /// assert_eq!(found.grade, Some(Grade::Shop));
    /// ```
    #[must_use]
    pub fn resting_on(mut self, evidence: Option<&Evidence>) -> Self {
        if let Some(evidence) = evidence {
            self.grade = Some(
                self.grade
                    .map_or(evidence.worth(), |g| g.weaker(evidence.worth())),
            );
            self.sources.extend(evidence.sources().iter().cloned());
        }
        self
    }

    /// The same, for a size that was read over paint. Bare, a hole is no smaller and a shaft no larger than it reads: paint
    /// explains a hole that reads too small and a shaft that reads too large, unless it had to be thicker than any coat of the
    /// tables. What it explains is not shown until the paint is off.
    ///
    /// ```
    /// use framegauge::{Grade, judge::sizes_against, measure::{DecisionRule, Limits, Outcome, Reading}, mm, standard::Tables};
    /// let limits = Limits::between(mm(41.10), mm(41.20), Grade::SecondHand).unwrap();
    /// let read = |bore: f64| {
    ///     let reading = Reading::expanded(mm(bore), mm(0.02)).unwrap();
    ///     sizes_against("bore", &[reading], &limits, "", None, DecisionRule::default()).read_on_paint(true, Tables::ours()).outcome
    /// };
    /// assert_eq!(read(41.02), Some(Outcome::Undecided));
    /// assert_eq!(read(40.60), Some(Outcome::NonconformityShown)); // no coat is 0.25 mm thick
    /// assert_eq!(read(41.30), Some(Outcome::NonconformityShown)); // and bare it is larger still
    /// ```
    #[must_use]
    pub fn read_on_paint(mut self, inside: bool, tables: Tables<'_>) -> Self {
        let explained = self.explained_by_paint(inside, tables);
        let ends = self
            .limits
            .as_ref()
            .map(|l| (l.lower().known(), l.upper().known()));
        if self.outcome == Some(Outcome::NonconformityShown) && explained {
            self.outcome = Some(Outcome::Undecided);
            self.words.push_str("; but read over paint, which is not a reading on metal: nothing is shown until it is off");
        } else if self.outcome == Some(Outcome::ConformityShown)
            && ends.is_some_and(|(least, most)| if inside { most } else { least }.is_some())
        {
            self.outcome = Some(Outcome::Undecided);
            self.words
                .push_str("; but read over paint, and the metal below has another size");
        } else if self.outcome.is_some() {
            self.words.push_str("; read over paint");
        }
        self
    }

    /// What it lies on nobody said: out by what a coat explains shows nothing, and within shows as much as it says.
    pub(crate) fn perhaps_on_paint(mut self, inside: bool, tables: Tables<'_>) -> Self {
        if self.outcome == Some(Outcome::NonconformityShown)
            && self.explained_by_paint(inside, tables)
        {
            self.outcome = Some(Outcome::Undecided);
            self.words
                .push_str("; nobody said whether paint lies there, and paint would explain it");
        }
        self
    }

    /// Whether a coat that is no thicker than any in the tables can be why a size does not keep its limits.
    fn explained_by_paint(&self, inside: bool, tables: Tables<'_>) -> bool {
        let thickest = CuttingRule::greatest(Cutting::Coat, tables).map(|(coat, _)| coat);
        let ends = self
            .limits
            .as_ref()
            .map(|l| (l.lower().known(), l.upper().known()));
        match (ends, self.readings.first(), self.readings.last()) {
            (Some((least, most)), Some(low), Some(high)) => {
                // How much paint would have to hide, and whether the other side is kept.
                let hidden = if inside {
                    least.map(|l| (l - low.value(), low))
                } else {
                    most.map(|m| (high.value() - m, high))
                };
                let kept = if inside {
                    most.is_none_or(|m| !settled_below(m, high.value()))
                } else {
                    least.is_none_or(|l| !settled_below(low.value(), l))
                };
                kept && hidden.is_some_and(|(by, read)| {
                    settled_below(Length::default(), by)
                        && thickest.is_none_or(|coat| {
                            !settled_below(coat * 2.0 + read.expanded_uncertainty(), by)
                        })
                })
            }
            _ => false,
        }
    }

    /// The same, for a fit with a coated member: nothing is shown before the coat is off.
    pub(crate) fn through_paint(mut self) -> Self {
        if self.outcome.is_some() {
            self.outcome = Some(Outcome::Undecided);
            self.words.push_str("; but read on paint, which is not a reading on metal: nothing is shown until it is off");
        }
        self
    }

    /// A fit held against a wanted window.
    #[must_use]
    pub fn fit(
        what: impl Into<String>,
        fit: &Fit,
        wanted: &Wanted,
        conformance: &Conformance,
        evidence: Option<&Evidence>,
    ) -> Self {
        let outcome = conformance.outcome;
        let words = format!("wanted {wanted}: {}", outcome_words(conformance));
        Self {
            what: what.into(),
            outcome: Some(outcome),
            words,
            readings: Vec::from([fit.tightest(), fit.loosest()]),
            limits: Some(wanted.limits),
            decision: None,
            owner: wanted.owner.clone().into_owned(),
            grade: Some(wanted.limits.grade()),
            sources: Vec::new(),
        }
        .resting_on(evidence)
    }
}

/// `interference 0.050 to 0.100 mm` or `clearance …`, on diameter.
pub(crate) fn fit_words(fit: &Fit) -> String {
    let (low, high) = (fit.tightest().value(), fit.loosest().value());
    let (low_mm, high_mm) = (settled_mm(low), settled_mm(high));
    if low_mm == 0.0 && high_mm == 0.0 {
        String::from("neither gap nor press")
    } else if high_mm <= 0.0 {
        format!("interference {}", from_to(-high, -low))
    } else if low_mm >= 0.0 {
        format!("clearance {}", from_to(low, high))
    } else {
        format!(
            "from {:.3} mm interference to {:.3} mm clearance",
            -low_mm, high_mm
        )
    }
}

/// `26.980 to 27.150 mm`, or one size where both print alike.
pub(crate) fn from_to(low: Length, high: Length) -> String {
    if in_mm(low).to_string() == in_mm(high).to_string() {
        in_mm(high).to_string()
    } else {
        format!("{:.3} to {}", settled_mm(low), in_mm(high))
    }
}

fn outcome_words(held: &Conformance) -> String {
    match (held.outcome, held.probability) {
        (Outcome::ConformityShown, _) => String::from("inside"),
        (Outcome::NonconformityShown, _) => String::from("outside"),
        (Outcome::Undecided, Some(p)) => {
            format!("undecided, inside with {:.0} % probability", p * 100.0)
        }
        (Outcome::Undecided, None) if held.why == Why::LimitUnknown => {
            String::from("undecided: a limit is not published")
        }
        (Outcome::Undecided, None) => String::from("undecided until both parts are measured"),
    }
}

/// Readings of one size held against its limits. The worst reading decides; one shown outside is enough.
///
/// ```
/// use framegauge::{Grade, judge::sizes_against, measure::{DecisionRule, Limits, Outcome, Reading}, mm};
/// let limits = Limits::between(mm(45.95), mm(46.0), Grade::Published).unwrap();
/// let reading = Reading::expanded(mm(45.80), mm(0.05)).unwrap();
/// let found = sizes_against("bore", &[reading], &limits, "a workshop article", None, DecisionRule::default());
/// assert_eq!(found.outcome, Some(Outcome::NonconformityShown));
/// assert!(found.words.contains("0.150 mm under the lower limit"));
/// ```
#[must_use]
pub fn sizes_against(
    what: impl Into<String>,
    readings: &[Reading],
    limits: &Limits,
    owner: &str,
    evidence: Option<&Evidence>,
    rule: DecisionRule,
) -> Finding {
    let what = what.into();
    let Some(worst) = readings
        .iter()
        .map(|reading| (reading, decide(reading, limits, rule)))
        .min_by(|(_, a), (_, b)| a.weight(b))
    else {
        let words = format!("not measured; limits {limits} ({owner})");
        return Finding {
            limits: Some(*limits),
            owner: owner.into(),
            grade: Some(limits.grade()),
            ..Finding::stated(what, words)
        }
        .resting_on(evidence);
    };
    let (reading, decision) = worst;
    if limits.lower().known().is_none() && limits.upper().known().is_none() {
        let words = format!(
            "{}; no limit is published ({owner}), so nothing can be shown",
            spread(readings)
        );
        return Finding {
            outcome: Some(Outcome::Undecided),
            readings: extremes(readings),
            decision: Some(decision),
            owner: owner.into(),
            ..Finding::stated(what, words)
        }
        .resting_on(evidence);
    }
    let words = format!(
        "{}; limits {limits} ({owner}): {}",
        spread(readings),
        decision_words(reading, limits, &decision)
    );
    Finding {
        outcome: Some(decision.outcome),
        readings: extremes(readings),
        limits: Some(*limits),
        decision: Some(decision),
        owner: owner.into(),
        grade: Some(limits.grade()),
        ..Finding::stated(what, words)
    }
    .resting_on(evidence)
}

/// Smallest and largest.
pub(crate) fn extremes(readings: &[Reading]) -> Vec<Reading> {
    let mut sorted: Vec<Reading> = readings.to_vec();
    sorted.sort_by(|a, b| settled_mm(a.value()).total_cmp(&settled_mm(b.value())));
    match (sorted.first().copied(), sorted.last().copied()) {
        (Some(low), Some(high)) if sorted.len() > 1 => Vec::from([low, high]),
        (Some(only), _) => Vec::from([only]),
        _ => Vec::new(),
    }
}

/// `26.980 to 27.150 mm ± 0.023 mm (6 readings)`.
pub(crate) fn spread(readings: &[Reading]) -> String {
    match *extremes(readings).as_slice() {
        [low, high] if in_mm(low.value()).to_string() == in_mm(high.value()).to_string() => {
            format!("{low} ({} readings alike)", readings.len())
        }
        [low, high] => {
            let u = low.expanded_uncertainty().max(high.expanded_uncertainty());
            format!(
                "{:.3} to {} ± {} ({} readings)",
                settled_mm(low.value()),
                in_mm(high.value()),
                in_mm(u),
                readings.len()
            )
        }
        [only] if to_mm(only.expanded_uncertainty()) == 0.0 => {
            format!("{}, as stated", in_mm(only.value()))
        }
        [only] => format!("{only} (one reading)"),
        _ => String::from("not measured"),
    }
}

fn decision_words(reading: &Reading, limits: &Limits, decision: &Decision) -> String {
    let off = decision.margin.map(|m| in_mm(-m));
    let below = limits
        .lower()
        .known()
        .is_some_and(|low| settled_below(reading.value(), low));
    match (decision.outcome, off) {
        (Outcome::NonconformityShown, Some(off)) if below => format!("{off} under the lower limit"),
        (Outcome::NonconformityShown, Some(off)) => format!("{off} over the upper limit"),
        (Outcome::ConformityShown, _) => String::from("within limits"),
        _ => match decision.why {
            Why::LimitUnknown => {
                String::from("a limit is not published, so conformity cannot be shown")
            }
            Why::InstrumentTooCoarse => String::from(
                "undecided: this instrument can never show so narrow a tolerance, use a finer one",
            ),
            _ => {
                let sure = decision
                    .probability
                    .map(|p| format!(" ({:.0} % inside)", p * 100.0));
                format!(
                    "undecided: too close to a limit for this instrument{}",
                    sure.unwrap_or_default()
                )
            }
        },
    }
}
