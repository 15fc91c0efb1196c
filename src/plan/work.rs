//! What a place's planner gives: facts, steps, questions and what becomes of the place. A plan is the fold of these.

use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Change, Off, PlaceReport, State, Stop, Tool, WeakFigure};
use super::caution::Caution;
use super::facts::{Allowance, Ask, CommonAsk, CommonFact, Fact, Found, Task};
use super::permit::Permit;
use super::sheet::{MakerLimit, Photo};
use crate::evidence::Grade;
use crate::identify::Identification;
use crate::judge::{Instrument, SettledBy, Verdict};
use crate::measure::{Outcome, Reading};
use crate::standard::{Operation, Place};
use crate::thread::Turn;

/// A question before it has a number; the answer's field is what it is known by.
#[derive(Debug, Clone)]
pub(super) struct Asked {
    pub answer: String,
    pub ask: Ask,
}

/// Work by hand, which takes no metal off, so that nobody has to permit it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum ByHand {
    Clean,
    Check,
    Replace,
}

/// What a step is: a cut, which only a permit makes; work by hand; or a step that is not ours.
#[derive(Debug, Clone)]
pub(super) enum Kind {
    Cut(Permit),
    ByHand(ByHand),
    Refer,
}

impl Kind {
    /// How much comes off, and what stops it.
    pub(super) fn into_amount(self) -> (Option<Off>, Vec<Stop>) {
        match self {
            Self::Cut(permit) => (permit.off(), permit.into_stops()),
            Self::ByHand(_) | Self::Refer => (None, Vec::new()),
        }
    }
}

/// A step before it has a number.
#[derive(Debug, Clone)]
pub(super) struct Draft {
    pub place: Place,
    pub kind: Kind,
    pub task: Task,
    pub tools: Vec<Tool>,
    pub turn: Option<Turn>,
    /// What guides the cutter, where it is another thing than the row of the work says.
    pub pilot: Option<Fact>,
    pub changes: Vec<Change>,
    /// Checks besides those of the row of the work.
    pub checks: Vec<Fact>,
    /// What proves it, where it is another thing than the row of the work says.
    pub proof: Option<Fact>,
    pub cautions: Vec<Caution>,
    /// Fields whose questions must be answered first.
    pub waits: Vec<String>,
}

impl Draft {
    /// A cut. Without a permit none can be written.
    pub(super) fn cut(permit: Permit, task: impl Into<Task>) -> Self {
        let mut draft = Self::new(permit.place().clone(), Kind::Refer, task);
        draft.waits = permit.waits().to_vec();
        draft.kind = Kind::Cut(permit);
        draft
    }

    pub(super) fn by_hand(place: &Place, work: ByHand, task: impl Into<Task>) -> Self {
        Self::new(place.clone(), Kind::ByHand(work), task)
    }

    pub(super) fn refer(place: &Place, task: impl Into<Task>) -> Self {
        Self::new(place.clone(), Kind::Refer, task)
    }

    fn new(place: Place, kind: Kind, task: impl Into<Task>) -> Self {
        Self {
            place,
            kind,
            task: task.into(),
            tools: Vec::new(),
            turn: None,
            pilot: None,
            changes: Vec::new(),
            checks: Vec::new(),
            proof: None,
            cautions: Vec::new(),
            waits: Vec::new(),
        }
    }

    pub(super) const fn operation(&self) -> Operation {
        match &self.kind {
            Kind::Cut(permit) => permit.operation(),
            Kind::ByHand(ByHand::Clean) => Operation::Clean,
            Kind::ByHand(ByHand::Check) => Operation::Check,
            Kind::ByHand(ByHand::Replace) => Operation::Replace,
            Kind::Refer => Operation::Refer,
        }
    }

    pub(super) fn with(mut self, tool: Tool) -> Self {
        self.tools.push(tool);
        self
    }
    pub(super) fn turned(mut self, turn: Turn) -> Self {
        self.turn = Some(turn);
        self
    }
    pub(super) fn guided(mut self, pilot: impl Into<Fact>) -> Self {
        self.pilot = Some(pilot.into());
        self
    }
    pub(super) fn checking(mut self, check: impl Into<Fact>) -> Self {
        self.checks.push(check.into());
        self
    }
    pub(super) fn proved(mut self, proof: impl Into<Fact>) -> Self {
        self.proof = Some(proof.into());
        self
    }
    pub(super) fn minding(mut self, caution: Caution) -> Self {
        self.cautions.push(caution);
        self
    }
    pub(super) fn changing(mut self, change: Change) -> Self {
        self.changes.push(change);
        self
    }
}

/// The fields that take what would decide a verdict.
#[derive(Debug, Clone, Copy)]
pub(super) struct Answers<'a> {
    /// A reading.
    pub reading: &'a str,
    /// What the part did.
    pub trial: &'a str,
    /// What its owner writes.
    pub written: &'a str,
}

/// What a place's planner gives.
#[derive(Debug, Clone, Default)]
pub(super) struct PlaceWork {
    pub place: Place,
    pub name: String,
    pub identification: Option<Identification>,
    pub facts: Vec<Found>,
    /// Something is out and nothing planned here cures it.
    pub out: bool,
    pub contradictions: Vec<Fact>,
    /// Something else must be done first that no question of this place settles.
    pub held: bool,
    /// What is out here is cured by a step at another place.
    pub cured_beside: bool,
    pub leave: Vec<Fact>,
    pub cures: Vec<Fact>,
    pub notes: Vec<String>,
    pub photos: Vec<Photo>,
    pub removed: Vec<Reading>,
    /// What limits a cut there now.
    pub limits: Allowance,
    /// The sheet holds a reading or an observation of the place.
    pub measured: bool,
    /// The sheet holds readings taken after work.
    pub worked: bool,
    pub steps: Vec<Draft>,
    pub questions: Vec<Asked>,
    pub cautions: Vec<Caution>,
    pub weak: Vec<WeakFigure>,
}

impl PlaceWork {
    pub(super) fn new(place: Place) -> Self {
        let name = place.words().into_owned();
        Self {
            place,
            name,
            ..Self::default()
        }
    }

    /// Asks; the answer is written into this field of the sheet.
    pub(super) fn ask(&mut self, answer: impl Into<String>, ask: impl Into<Ask>) {
        let answer = answer.into();
        if !self.questions.iter().any(|q| q.answer == answer) {
            let ask = ask.into();
            self.questions.push(Asked { answer, ask });
        }
    }

    /// Something else must be done first: why nothing is planned here yet.
    pub(super) fn hold(&mut self, why: impl Into<Fact>) {
        self.held = true;
        let why = why.into();
        if !self.leave.contains(&why) {
            self.leave.push(why);
        }
    }

    /// A reason to leave the place as it is.
    pub(super) fn leave(&mut self, why: impl Into<Fact>) {
        self.leave.push(why.into());
    }

    /// What could cure what is out.
    pub(super) fn cure(&mut self, by: impl Into<Fact>) {
        self.cures.push(by.into());
    }

    /// A fact. One that is out leaves the place out unless a step or a question deals with it: then it is `settled`.
    pub(super) fn fact(&mut self, found: impl Into<Found>) {
        let found = found.into();
        if found.outcome == Some(Outcome::NonconformityShown) {
            self.out = true;
        }
        self.settled(found);
    }

    /// A fact that a step or a question of this place deals with. One that rests on a weak figure is told once.
    pub(super) fn settled(&mut self, found: impl Into<Found>) {
        use Grade::{CommonPractice, Derived, Memory, SecondHand};
        let found = found.into();
        if let Some(grade @ (Memory | CommonPractice | Derived | SecondHand)) = found.grade
            && !self
                .weak
                .iter()
                .any(|weak| weak.is_same(&found.fact, &found.owner))
        {
            self.weak.push(WeakFigure {
                place: self.place.clone(),
                name: self.name.clone(),
                what: found.fact.clone(),
                owner: found.owner.clone(),
                grade,
            });
        }
        self.facts.push(found);
    }

    /// Every limit that a maker wrote for this place, with whose it is.
    pub(super) fn hear(&mut self, limits: &[MakerLimit]) {
        for limit in limits {
            let (on, is, by) = (limit.what, limit.limits, limit.owner.clone());
            self.settled(Found {
                limits: Some(is),
                owner: by.clone(),
                ..Found::of(CommonFact::MakersLimit { on, is, by })
            });
        }
    }

    /// Everything that a verdict found. Out, and nothing planned: the place is out, and the verdict's cures are told.
    pub(super) fn verdict(&mut self, verdict: &Verdict) {
        if verdict.outcome == Outcome::NonconformityShown {
            self.out = true;
            self.cures.extend(super::cures::of_verdict(verdict));
        }
        self.found(verdict);
    }

    /// A verdict that decides: out leaves the place out, undecided asks for what would decide it.
    pub(super) fn judged(&mut self, verdict: &Verdict, answers: Answers<'_>) {
        self.verdict(verdict);
        if verdict.outcome == Outcome::Undecided
            && let Some(next) = verdict.next.first()
        {
            let field = match next.settled_by {
                SettledBy::Reading => answers.reading,
                SettledBy::Trial => answers.trial,
                SettledBy::Written => answers.written,
            };
            self.ask(field, next.ask.clone());
        }
    }

    /// Everything that a verdict found, where a step or a question deals with it, or where it does not decide.
    pub(super) fn found(&mut self, verdict: &Verdict) {
        // What stands beside decides nothing; who wants to see it asks the question by itself.
        for finding in &verdict.findings {
            self.settled(finding.clone());
        }
    }

    /// What contradicts what: nothing is cut here while it stands.
    pub(super) fn contradicts(
        &mut self,
        what: impl Into<Fact>,
        answer: impl Into<String>,
        with: impl Into<Instrument>,
    ) {
        let what = what.into();
        let which = CommonAsk::WhichIsSo {
            of: alloc::boxed::Box::new(what.clone()),
            with: with.into(),
        };
        self.ask(answer, which);
        self.contradictions.push(what);
    }

    /// Whether a fact is shown to be out.
    fn shows_out(&self) -> bool {
        self.facts
            .iter()
            .any(|f| f.outcome == Some(Outcome::NonconformityShown))
    }

    /// Where the work stands, by what the planner gave.
    pub(super) fn state(&self) -> State {
        let refers = self.steps.iter().any(|s| s.operation() == Operation::Refer);
        if !self.contradictions.is_empty() {
            State::Open
        } else if refers {
            State::Refer
        } else if self.out {
            State::Out
        } else if !self.questions.is_empty() || self.held {
            State::Open
        } else if !self.steps.is_empty() || self.cured_beside {
            State::ToDo
        } else if self.shows_out() {
            // Nothing deals with it.
            State::Out
        } else if self.worked {
            State::Done
        } else if !self.leave.is_empty() || self.measured {
            // Measured, nothing out, nothing to do: that is a reason to leave it.
            State::Leave
        } else {
            State::NotMeasured
        }
    }

    pub(super) fn report(self, state: State) -> PlaceReport {
        PlaceReport {
            place: self.place,
            name: self.name,
            state,
            identification: self.identification,
            facts: self.facts,
            contradictions: self.contradictions,
            leave: self.leave,
            cures: self.cures,
            notes: self.notes,
            photos: self.photos,
            removed: self.removed,
            limits: self.limits,
            worked: self.worked,
        }
    }
}
