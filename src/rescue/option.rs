//! What can be done: the steps in the trade's order of caution, and how each stands.

use alloc::vec::Vec;

use super::facts::{Ask, RescueAsk, RescueFact};
use crate::Error;
use crate::evidence::{Citation, Evidence, Grade};
use crate::fact::closed_words;
use crate::fact::outgoing;
use crate::fit::MaterialKind;
use crate::measure::{Reading, settled_cmp};
use crate::quantity::{Length, ShaftDiameter};
use crate::standard::Joint;
use crate::thread::{Designation, ShellThreads, Side};

closed_words! {
    /// What is wrong.
    #[cfg_attr(feature = "serde", derive(serde::Deserialize))]
    Damage {
        /// Metal is gone by use.
        Worn,
        /// Tapped or reamed too large.
        OverCut,
        /// Threads torn out.
        Stripped,
        /// Another thread was cut across.
        CrossCut,
        /// The hands of the two sides are swapped.
        Swapped,
        /// Bored to the wrong, larger size.
        OverBored,
        /// Out of round.
        Oval,
        /// Squeezed narrower at one place.
        Pinched,
        /// A pressed part has no grip left.
        Loose,
        /// The part does not come out.
        Seized,
    }
}

closed_words! {
    /// A kind of step, in the trade's order of caution: the first can always be undone, the last cannot.
    ///
    /// ```
    /// use framegauge::rescue::Step;
    /// assert!(Step::Clean < Step::Shim && Step::Shim < Step::Retap && Step::Retap < Step::Refer);
    /// ```
    Step {
        /// Pick out, wash, soak.
        Clean,
        /// Turn a seized part out the way that loosens it.
        Free,
        /// Follow the old thread with a chaser of its own size and hand.
        Chase,
        /// Gauge, or measure what is missing.
        Gauge,
        /// Press a bore back into round with a drift.
        RoundOut,
        /// Another mating part: of the next size, or a better one.
        AdjustPart,
        /// A shim in the gap.
        Shim,
        /// Retaining compound.
        Compound,
        /// A larger thread of the next pattern.
        Retap,
        /// A larger bore of the next size.
        NextSize,
        /// A thread insert.
        Insert,
        /// A unit that clamps itself in the shell and needs no thread.
        ClampInUnit,
        /// Fill the thread with braze and cut it anew.
        FillAndRecut,
        /// A sleeve, fixed in place and finished to size.
        Sleeve,
        /// Raise burrs with a punch: a last resort.
        Peen,
        /// Hand over to the frame maker or a qualified builder.
        Refer,
    }
}

impl Step {
    /// Whether it takes metal off.
    ///
    /// ```
    /// use framegauge::rescue::Step;
    /// assert!(Step::Chase.cuts() && !Step::Clean.cuts());
    /// ```
    #[must_use]
    pub const fn cuts(self) -> bool {
        use Step::*;
        matches!(
            self,
            Chase | Retap | NextSize | Insert | FillAndRecut | Sleeve
        )
    }

    /// Whether there is something to mind with it.
    const fn minds(self) -> bool {
        use Step::*;
        !matches!(
            self,
            Clean | Chase | Gauge | AdjustPart | ClampInUnit | Sleeve | Refer
        )
    }

    /// Whether the step rests on the practice of the trade, before any figure.
    const fn is_practice(self) -> bool {
        use Step::*;
        matches!(
            self,
            Clean | Free | Chase | RoundOut | Shim | FillAndRecut | Sleeve | Peen
        )
    }
}

closed_words! {
    /// How a step stands, by its geometry; the best first.
    Stand {
        /// Nothing measured stands against it. That it is possible does not make it wise.
        Allowed,
        /// Cannot be said before something is measured or looked up.
        NeedsMeasurement,
        /// What is known forbids it.
        Forbidden,
    }
}

outgoing! {
    /// One step, how it stands and why, and what to ask before it.
    RescueOption(this) {
        /// Which kind of step.
        step: Step,
        /// What exactly, such as the thread of the next pattern; `None` when the step says it.
        what: Option<RescueFact>,
        /// How it stands.
        stand: Stand,
        /// The geometry or the reason.
        why: Vec<RescueFact>,
        /// What to measure or look up before it.
        next: Vec<Ask> as next: Vec<serial::Asked> = serial::all(&this.next),
        /// What to mind.
        cautions: Vec<RescueFact>,
        /// What the weakest figure behind it is worth; `None` where only own readings stand behind it.
        grade: Option<Grade>,
        /// Where its figures were read.
        sources: Vec<Citation>,
        ;
        /// the reason in a sentence
        words: alloc::string::String = this.words(),
        /// what it costs later
        costs: &'static str = this.step.costs(),
        /// what to check after
        check_after: Vec<&'static str> = this.check_after(),
    }
}

impl RescueOption {
    fn new(step: Step, stand: Stand, why: RescueFact) -> Self {
        Self {
            step,
            what: None,
            stand,
            why: Vec::from([why]),
            next: Vec::new(),
            cautions: Vec::new(),
            grade: step.is_practice().then_some(Grade::CommonPractice),
            sources: Vec::new(),
        }
    }
    pub(super) fn can(step: Step, why: RescueFact) -> Self {
        Self::new(step, Stand::Allowed, why)
    }
    pub(super) fn not(step: Step, why: RescueFact) -> Self {
        Self::new(step, Stand::Forbidden, why)
    }
    pub(super) fn open(step: Step, why: RescueFact, ask: impl Into<Ask>) -> Self {
        Self::new(step, Stand::NeedsMeasurement, why).needing(ask)
    }
    pub(super) fn of(mut self, what: RescueFact) -> Self {
        self.what = Some(what);
        self
    }
    pub(super) fn because(mut self, why: RescueFact) -> Self {
        self.why.push(why);
        self
    }
    pub(super) fn needing(mut self, ask: impl Into<Ask>) -> Self {
        self.next.push(ask.into());
        self
    }
    /// No better than this.
    pub(super) fn standing(mut self, stand: Stand) -> Self {
        self.stand = self.stand.max(stand);
        self
    }
    /// Waits for an answer unless this is so.
    pub(super) fn unless(self, so: bool, ask: RescueAsk) -> Self {
        if so {
            self
        } else {
            self.standing(Stand::NeedsMeasurement).needing(ask)
        }
    }
    /// Waits for an answer, for this reason.
    pub(super) fn waiting(self, why: RescueFact, ask: RescueAsk) -> Self {
        self.because(why).unless(false, ask)
    }
    /// The wall that is left decides: an unknown one is measured first, and none forbids it.
    pub(super) fn walled(self, left: Option<Length>) -> Self {
        match left {
            None => self.waiting(RescueFact::WallUnknown, RescueAsk::Outside),
            Some(wall) if settled_cmp(wall, Length::default()).is_le() => self
                .standing(Stand::Forbidden)
                .because(RescueFact::BreaksThrough),
            Some(wall) => self.because(RescueFact::WallLeft { wall }),
        }
    }
    pub(super) fn resting_on(mut self, evidence: Option<&Evidence>) -> Self {
        self.sources.extend(
            evidence
                .into_iter()
                .flat_map(|e| e.sources().iter().cloned()),
        );
        match evidence {
            Some(evidence) => self.graded(evidence.worth()),
            None => self,
        }
    }
    pub(super) fn graded(mut self, grade: Grade) -> Self {
        self.grade = Some(self.grade.map_or(grade, |g| g.weaker(grade)));
        self
    }
    /// The cure as a plan tells it.
    #[must_use]
    pub fn as_cure(&self) -> RescueFact {
        RescueFact::Cure {
            by: self.step,
            why: self.why.clone(),
        }
    }
}

/// Sizes that were given must be sizes, whether they come to be used or not.
pub(super) fn diameters(given: &[(&'static str, Option<Reading>)]) -> Result<(), Error> {
    given.iter().try_for_each(|(name, reading)| {
        let size = reading.map(|reading| ShaftDiameter::new(reading.value()));
        size.transpose().map(|_| ()).map_err(|e| e.named(*name))
    })
}

/// What is spoilt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spoilt {
    /// A bore or seat.
    Joint(Joint),
    /// A thread, and the side of the shell that it is.
    Thread(Designation, Option<Side>),
}

outgoing! {
    /// What is left to do, in order of caution.
    Rescue(this) {
        /// What was asked about.
        what: Spoilt as what: alloc::string::String = alloc::string::ToString::to_string(&this.what),
        /// What is wrong with it.
        damage: Damage,
        /// Every step, the most cautious first; several of one kind where several patterns or sizes are at hand.
        options: Vec<RescueOption>,
        /// The shell as it would be after each retap of one side, in the order of these options.
        shells_after: Vec<ShellThreads>,
    }
}

impl Rescue {
    /// Sorted by caution; what laminate does not take is forbidden, and what carries a caution says it.
    pub(super) fn of(
        what: Spoilt,
        damage: Damage,
        material: Option<MaterialKind>,
        mut options: Vec<RescueOption>,
    ) -> Self {
        options.push(RescueOption::can(Step::Refer, RescueFact::AlwaysOpen));
        options.sort_by_key(|o| o.step);
        let carbon = material.is_some_and(MaterialKind::is_carbon);
        for option in &mut options {
            let step = option.step;
            if carbon && (step.cuts() || matches!(step, Step::RoundOut | Step::Peen)) {
                option.stand = Stand::Forbidden;
                option.why.insert(0, RescueFact::Laminate);
            }
            if option.stand != Stand::Forbidden && step.minds() {
                option.cautions.insert(0, RescueFact::Mind { step });
            }
        }
        Self {
            what,
            damage,
            options,
            shells_after: Vec::new(),
        }
    }

    /// The steps of one kind.
    pub fn steps(&self, step: Step) -> impl Iterator<Item = &RescueOption> {
        self.options.iter().filter(move |o| o.step == step)
    }

    /// How a kind of step stands at its best; `None` when it does not belong here.
    ///
    /// ```
    /// use framegauge::{rescue::{Damage, Stand, Step, ThreadRescue}, standard::Tables};
    /// let hanger = ThreadRescue::new("M10x1".parse().unwrap(), Damage::Stripped).options(Tables::ours()).unwrap();
    /// assert_eq!(hanger.stand(Step::Chase), Some(Stand::Forbidden));
    /// assert_eq!(hanger.stand(Step::Insert), Some(Stand::NeedsMeasurement));
    /// ```
    #[must_use]
    pub fn stand(&self, step: Step) -> Option<Stand> {
        self.steps(step).map(|o| o.stand).min()
    }
}

#[cfg(feature = "serde")]
mod serial {
    use alloc::string::{String, ToString};
    use alloc::vec::Vec;

    use super::{Ask, Damage, ShellThreads, Stand, Step};
    use crate::fact::{Bare, BareOf, Worded};
    use crate::read::{Shape, goes_out, known_words, told};
    use crate::rescue::{Cause, Diagnosis, Symptom};
    use crate::{evidence::Text, measure::Outcome};

    /// A question with its sentences.
    pub(super) struct Asked(Ask);

    told! {
        Step => Shape::Word(known_words::<Step>),
        Stand => Shape::Word(known_words::<Stand>),
        Damage => Shape::Word(known_words::<Damage>),
        Symptom => Shape::Word(known_words::<Symptom>),
        ShellThreads => Shape::Report { what: "drive, non_drive" },
    }

    pub(super) fn all(asks: &[Ask]) -> Vec<Asked> {
        asks.iter().cloned().map(Asked).collect()
    }

    goes_out! {
        Asked(this) {
            /// the question as a fact
            ask: BareOf<Ask> = Bare(&this.0),
            /// what to measure, try or look up
            measure: String = this.0.to_string(),
            /// what it decides
            why: Text = this.0.why(),
            /// with what
            with: String = this.0.with().to_string(),
        }
        Diagnosis(this) {
            /// what was noticed
            symptom: Symptom = this.symptom,
            /// undecided: a symptom alone shows nothing
            outcome: Outcome = this.outcome,
            /// what can be behind it
            causes: Vec<Cause> = this.causes,
            /// the checks, in order
            checks: Vec<Asked> = all(&this.checks),
            /// what not to do meanwhile
            until_then: &str = this.symptom.until_then(),
        }
    }
}
