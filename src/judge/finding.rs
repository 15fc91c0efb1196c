//! A finding: a fact, the numbers, limits, whose limits they are, and the outcome.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Doubt, Fact, SizeFact};
use crate::evidence::{Citation, Evidence, Grade, Text};
use crate::measure::{
    Decision, DecisionRule, Limits, Outcome, Reading, decide, settled_below, settled_cmp,
};
use crate::quantity::Length;
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
    /// use framegauge::judge::{BoreFact, Finding};
    /// let f: Finding = Finding::of(BoreFact::CutOnce);
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

    /// What arithmetic shows.
    pub(crate) fn derived(holds: bool, fact: impl Into<F>) -> Self {
        let outcome = match holds {
            true => Outcome::ConformityShown,
            false => Outcome::NonconformityShown,
        };
        Self {
            grade: Some(Grade::Derived),
            ..Self::practice(outcome, fact)
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
    /// let found = Finding::<framegauge::judge::Fact>::of(framegauge::judge::BoreFact::CutOnce).resting_on(Some(&Evidence::shop("drawing")));
    /// assert_eq!(found.grade, Some(Grade::Shop));
    /// ```
    #[must_use]
    pub fn resting_on(mut self, evidence: Option<&Evidence>) -> Self {
        if let Some(evidence) = evidence {
            let worth = evidence.worth();
            self.grade = Some(self.grade.map_or(worth, |g| g.weaker(worth)));
            self.sources.extend(evidence.sources().iter().cloned());
        }
        self
    }
}

impl Finding {}

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
    pub fn read_on_paint(self, inside: bool, tables: Tables<'_>) -> Self {
        let end = |limits: &Limits| {
            if inside {
                limits.upper()
            } else {
                limits.lower()
            }
        };
        let bounded = self.limits.as_ref().and_then(|l| end(l).known()).is_some();
        match self.outcome {
            None => self,
            Some(Outcome::NonconformityShown) if self.explained_by_paint(inside, tables) => {
                self.open_for(Doubt::Hidden)
            }
            Some(Outcome::ConformityShown) if bounded => self.open_for(Doubt::Within),
            Some(_) => Self {
                doubt: Some(Doubt::Same),
                ..self
            },
        }
    }

    /// What it lies on nobody said: out by what a coat explains shows nothing, and within shows as much as it says.
    pub(crate) fn perhaps_on_paint(self, inside: bool, tables: Tables<'_>) -> Self {
        let out = self.outcome == Some(Outcome::NonconformityShown);
        if out && self.explained_by_paint(inside, tables) {
            return self.open_for(Doubt::NotSaid);
        }
        self
    }

    /// The same, for a fit with a coated member: nothing is shown before the coat is off.
    pub(crate) fn through_paint(self) -> Self {
        match self.outcome {
            Some(_) => self.open_for(Doubt::Fit),
            None => self,
        }
    }

    /// The same, with nothing shown for this doubt.
    fn open_for(self, doubt: Doubt) -> Self {
        Self {
            outcome: Some(Outcome::Undecided),
            doubt: Some(doubt),
            ..self
        }
    }

    /// Whether a coat that is no thicker than any in the tables can be why a size does not keep its limits.
    fn explained_by_paint(&self, inside: bool, tables: Tables<'_>) -> bool {
        let (Some(limits), Some(low), Some(high)) =
            (&self.limits, self.readings.first(), self.readings.last())
        else {
            return false;
        };
        let (least, most) = (limits.lower().known(), limits.upper().known());
        let under = least.map(|least| least - low.value());
        let over = most.map(|most| high.value() - most);
        // How much paint would have to hide, and whether the other side is kept.
        let (hidden, beyond, read) = if inside {
            (under, over, low)
        } else {
            (over, under, high)
        };
        let some = |by: Option<Length>| by.filter(|by| settled_below(Length::default(), *by));
        let hides = CuttingRule::greatest(Cutting::Coat, tables)
            .map(|(coat, _)| coat * 2.0 + read.expanded_uncertainty());
        let enough = |by| hides.is_none_or(|hides| !settled_below(hides, by));
        some(beyond).is_none() && some(hidden).is_some_and(enough)
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
    let decision = readings
        .iter()
        .map(|reading| decide(reading, limits, rule))
        .min_by(Decision::weight);
    let silent = limits.lower().known().is_none() && limits.upper().known().is_none();
    let unlimited = silent && decision.is_some();
    Finding {
        outcome: match decision {
            Some(_) if unlimited => Some(Outcome::Undecided),
            decision => decision.map(|d| d.outcome),
        },
        readings: extremes(readings),
        limits: (!unlimited).then_some(*limits),
        decision,
        owner: owner.into(),
        grade: (!unlimited).then_some(limits.grade()),
        ..Finding::of(SizeFact::Against {
            of: of.into(),
            count: readings.len(),
        })
    }
    .resting_on(evidence)
}

/// Smallest and largest.
pub(crate) fn extremes(readings: &[Reading]) -> Vec<Reading> {
    let mut sorted: Vec<Reading> = readings.to_vec();
    sorted.sort_by(|a, b| settled_cmp(a.value(), b.value()));
    if sorted.len() > 2 {
        sorted.drain(1..sorted.len() - 1);
    }
    sorted
}
