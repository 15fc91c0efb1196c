//! A finding: a fact, the numbers, limits, whose limits they are, and the outcome.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Doubt, Fact, SizeFact};
use crate::evidence::{Citation, Evidence, Grade, Text};
use crate::fit::{Conformance, Fit, Wanted};
use crate::measure::{
    Decision, DecisionRule, Limits, Outcome, Reading, Why, decide, settled_below,
};
use crate::quantity::{Length, in_mm, settled_mm, to_mm};
use crate::standard::{Cutting, CuttingRule, Tables};

/// One thing that was found at one place.
///
/// As JSON its fact stands under `fact`, its sentence under `words`.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding<F = Fact> {
    /// What was found.
    pub fact: F,
    /// What is shown; `None` for a plain statement that no limit belongs to.
    pub outcome: Option<Outcome>,
    /// What makes it doubtful.
    pub doubt: Option<Doubt>,
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

impl<F> Finding<F> {
    /// A plain statement.
    ///
    /// ```
    /// let f = framegauge::judge::Finding::stated("upper cup", "pressed in and does not come out: it stays");
    /// assert!(f.outcome.is_none());
    /// ```
    #[must_use]
    pub fn of(fact: impl Into<F>) -> Self {
        Self {
            fact: fact.into(),
            outcome: None,
            doubt: None,
            readings: Vec::new(),
            limits: None,
            decision: None,
            owner: String::new(),
            grade: None,
            sources: Vec::new(),
        }
    }

    /// The same finding of another kind of fact.
    #[must_use]
    pub fn with_fact<G>(self, of: impl FnOnce(F) -> G) -> Finding<G> {
        Finding {
            fact: of(self.fact),
            outcome: self.outcome,
            doubt: self.doubt,
            readings: self.readings,
            limits: self.limits,
            decision: self.decision,
            owner: self.owner,
            grade: self.grade,
            sources: self.sources,
        }
    }

    /// What a rule of the trade shows, which no source prints.
    pub(crate) fn practice(outcome: Outcome, fact: impl Into<F>) -> Self {
        Self {
            outcome: Some(outcome),
            grade: Some(Grade::CommonPractice),
            ..Self::of(fact)
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
}

impl Finding {
    /// Says it anew in words; to be given a fact of its own.
    pub(crate) fn reworded(&mut self, words: impl Into<Text>) {
        self.fact = Fact::Size(SizeFact::Plain {
            what: self.what(),
            plain: words.into(),
        });
    }
    /// A statement in words; to be given a fact of its own.
    pub fn stated(what: impl Into<Text>, words: impl Into<Text>) -> Self {
        Self::of(SizeFact::Plain {
            what: what.into(),
            plain: words.into(),
        })
    }

    /// A fit held against a wanted window.
    #[must_use]
    pub fn fit(
        what: impl Into<Text>,
        fit: &Fit,
        wanted: &Wanted,
        conformance: &Conformance,
        evidence: Option<&Evidence>,
    ) -> Self {
        let outcome = conformance.outcome;
        let words = format!("wanted {wanted}: {}", outcome_words(conformance));
        Self {
            outcome: Some(outcome),
            readings: Vec::from([fit.tightest(), fit.loosest()]),
            limits: Some(wanted.limits),
            owner: wanted.owner.clone().into_owned(),
            grade: Some(wanted.limits.grade()),
            ..Self::stated(what.into(), words)
        }
        .resting_on(evidence)
    }
}

impl<F> Finding<F> {
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
            self.doubt = Some(Doubt::Hidden);
        } else if self.outcome == Some(Outcome::ConformityShown)
            && ends.is_some_and(|(least, most)| if inside { most } else { least }.is_some())
        {
            self.outcome = Some(Outcome::Undecided);
            self.doubt = Some(Doubt::Within);
        } else if self.outcome.is_some() {
            self.doubt = Some(Doubt::Same);
        }
        self
    }

    /// What it lies on nobody said: out by what a coat explains shows nothing, and within shows as much as it says.
    pub(crate) fn perhaps_on_paint(mut self, inside: bool, tables: Tables<'_>) -> Self {
        if self.outcome == Some(Outcome::NonconformityShown)
            && self.explained_by_paint(inside, tables)
        {
            self.outcome = Some(Outcome::Undecided);
            self.doubt = Some(Doubt::NotSaid);
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
            self.doubt = Some(Doubt::Fit);
        }
        self
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
/// assert!(found.to_string().contains("0.150 mm under the lower limit"));
/// ```
#[must_use]
pub fn sizes_against(
    of: impl Into<Text>,
    readings: &[Reading],
    limits: &Limits,
    owner: &str,
    evidence: Option<&Evidence>,
    rule: DecisionRule,
) -> Finding {
    let mut found = Finding {
        readings: extremes(readings),
        limits: Some(*limits),
        owner: owner.into(),
        grade: Some(limits.grade()),
        ..Finding::of(SizeFact::Against {
            of: of.into(),
            count: readings.len(),
        })
    };
    found.decision = readings
        .iter()
        .map(|reading| decide(reading, limits, rule))
        .min_by(Decision::weight);
    if found.decision.is_some()
        && limits.lower().known().is_none()
        && limits.upper().known().is_none()
    {
        found.outcome = Some(Outcome::Undecided);
        (found.limits, found.grade) = (None, None);
    } else {
        found.outcome = found.decision.map(|d| d.outcome);
    }
    found.resting_on(evidence)
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

#[cfg(feature = "serde")]
crate::read::told! {
    Doubt => crate::read::Shape::Text { what: "text" },
    Decision => crate::read::Shape::Report { what: "outcome, why, conformance_probability, margin_mm, rule, grade" },
}

#[cfg(feature = "serde")]
crate::read::goes_out! {
    Finding<F>(this) {
        /// what was found, as a fact
        fact: crate::fact::BareOf<F> = crate::fact::Bare(&this.fact),
        /// what is shown; null for a plain statement that no limit belongs to
        outcome: Option<Outcome> = this.outcome,
        /// what makes it doubtful
        doubt: Option<Doubt> = this.doubt,
        /// the finding in a sentence
        words: String = this.words(),
        /// the readings that decided: smallest and largest
        readings: Vec<Reading> = this.readings,
        /// the limits
        limits: Option<Limits> = this.limits,
        /// the decision on the worst reading
        decision: Option<Decision> = this.decision,
        /// whose limits they are
        owner: String = this.owner,
        /// what the limits are worth
        grade: Option<Grade> = this.grade,
        /// where the limits were read
        sources: Vec<Citation> = this.sources,
    }
}
