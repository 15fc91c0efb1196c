//! What a plan says, as facts: places with their state, steps in order, questions with the field that answers them.

use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::facts::{Allowance, Ask, CutLimit, Earlier, Fact, Found, Task};
use super::sheet::Photo;
use crate::evidence::{Citation, Grade};
use crate::fact::closed_words;
use crate::fact::outgoing;
use crate::identify::Identification;
use crate::quantity::Length;
pub use crate::standard::Operation;
use crate::standard::{Place, Turning};
use crate::thread::{Hand, Turn};

/// Version of the contract that a plan is told in.
///
/// ```
/// assert_eq!(framegauge::plan::CONTRACT, 2);
/// ```
pub const CONTRACT: u32 = 2;

closed_words! {
    /// Where the work at a place stands.
    State {
        /// Nothing was measured there, so nothing is known.
        NotMeasured,
        /// A question waits.
        Open,
        /// There is work to do.
        ToDo,
        /// Done: the readings after the work ask for nothing more.
        Done,
        /// Out of what it must be, and nothing here cures it.
        Out,
        /// Left as it is, with the reason.
        Leave,
        /// For the frame maker or a qualified builder.
        Refer,
    }
}

impl State {
    /// Whether nothing stands in the way: there is only work to do, or none.
    ///
    /// ```
    /// use framegauge::plan::State;
    /// assert!(State::ToDo.is_clear() && !State::NotMeasured.is_clear());
    /// ```
    #[must_use]
    pub const fn is_clear(self) -> bool {
        matches!(self, Self::ToDo | Self::Done | Self::Leave)
    }

    /// Whether the place is finished.
    #[must_use]
    pub const fn is_finished(self) -> bool {
        matches!(self, Self::Done | Self::Leave)
    }
}

closed_words! {
    /// What is counted of what comes off.
    Counted {
        /// Depth of a face after first touch, or of a bore.
        Depth,
        /// Diameter of a bore.
        Diameter,
    }
}

/// How much comes off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Off {
    /// What is counted.
    pub of: Counted,
    /// At least this much.
    pub least: Length,
    /// At most this much: never more than the tightest limit allows for certain.
    pub most: Length,
}

outgoing! {
    /// What stops a cut.
    Stop(this) {
        /// The limit, with whose it is.
        limit: Fact,
        /// How much may come off before it for certain; `None` where the limit is no amount.
        to_go: Option<Length> as to_go_mm: Option<f64> = this.to_go.map(crate::quantity::settled_mm),
        /// What the limit is worth; `None` where it is no figure.
        grade: Option<Grade>,
        /// Where this limit was read.
        sources: Vec<Citation>,
    }
}

impl From<CutLimit> for Stop {
    fn from(limit: CutLimit) -> Self {
        let (to_go, grade) = (limit.surely(), Some(limit.grade()));
        let (limit, sources) = limit.into_name();
        Self {
            limit,
            to_go,
            grade,
            sources,
        }
    }
}

outgoing! {
    /// A tool: what kind it is, and which one.
    Tool(this) {
        /// What kind it is: `reamer`, `chaser`, `tap`, `facing_cutter`, `hand_tools`.
        code: &'static str,
        /// Which one, with its size.
        which: Fact,
        /// Hand of the thread it cuts; `None` for reamers and facing cutters.
        hand: Option<Hand>,
    }
}

/// A step that must be finished before, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct After {
    /// Its number.
    pub step: usize,
    /// Why.
    pub why: Earlier,
}

outgoing! {
    /// What a step changes at another place.
    Change(this) {
        /// Where it is felt.
        place: Place,
        /// What changes.
        what: Fact,
        /// By how much at most; `None` where it is no amount.
        by: Option<Length> as by_mm: Option<f64> = this.by.map(crate::quantity::settled_mm),
    }
}

outgoing! {
    /// One step of the work.
    Step(this) {
        /// Number in the order of work, from 1.
        number: usize,
        /// Where.
        place: Place,
        /// What.
        operation: Operation,
        /// Steps that must be finished before.
        after: Vec<After>,
        /// Questions that must be answered first, by number.
        waits_for: Vec<usize>,
        /// How much comes off; only where metal is cut and the amount is known.
        off: Option<Off>,
        /// What stops the cut: at least one for every cut, none for anything else.
        stops: Vec<Stop>,
        /// With what.
        tools: Vec<Tool>,
        /// What guides the cutter; `None` where nothing does.
        pilot: Option<Fact>,
        /// The end at which the tool starts, from which its turning is told; empty where nothing turns.
        start: &'static str,
        /// Which way it turns to cut, seen from the end at which it starts.
        turn: Option<Turn>,
        /// How many passes to expect.
        passes: &'static str,
        /// What it changes elsewhere.
        changes: Vec<Change>,
        /// What to check after it.
        checks: Vec<Fact>,
        /// What proves it; `None` where it is no cut and no trial.
        proof: Option<Fact>,
        /// What belongs to it in danger.
        cautions: Vec<Caution>,
        /// What the sheet notes at this place.
        notes: Vec<String>,
        /// What is to be done, and why.
        task: Task as task: crate::fact::BareOf<Task> = crate::fact::Bare(&this.task),
        ;
        /// whether metal comes off
        cuts: bool = this.cuts(),
        /// how it is turned on the way
        turning: &str = this.turning().map_or("", Turning::words),
        /// the step in one line
        words: String = this.words(),
        /// why it is done
        why: crate::evidence::Text = this.why(),
    }
}

impl Step {
    /// Whether metal comes off.
    #[must_use]
    pub const fn cuts(&self) -> bool {
        self.operation.cuts()
    }

    /// How its cutter is turned on the way; `None` where nothing is cut.
    #[must_use]
    pub const fn turning(&self) -> Option<Turning> {
        self.operation.turning()
    }
}

/// A question that must be answered first, and the field of the sheet where its answer is written.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// Number in the plan, from 1.
    pub number: usize,
    /// Where.
    pub place: Place,
    /// What to measure, look at or ask, why, and with what.
    pub ask: Ask,
    /// The field of the sheet where the answer is written; answering it closes the question.
    pub answer: String,
    /// What the place is called.
    pub name: String,
}

/// What is known of one place, and where the work there stands.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceReport {
    /// Where.
    pub place: Place,
    /// What it is called: the sheet's own name for it, or ours.
    pub name: String,
    /// Where the work stands.
    pub state: State,
    /// Which standard it is, as far as the readings say; `None` where that was not asked.
    pub identification: Option<Identification>,
    /// What was found.
    pub facts: Vec<Found>,
    /// What contradicts what; while one stands nothing is cut there.
    pub contradictions: Vec<Fact>,
    /// What is left alone there, and why.
    pub leave: Vec<Fact>,
    /// What could cure what is out, in order of caution.
    pub cures: Vec<Fact>,
    /// What the sheet notes there.
    pub notes: Vec<String>,
    /// Photographs that the sheet names there.
    pub photos: Vec<Photo>,
    /// What came off in all by the readings before and after the work: least and most.
    pub removed: Vec<crate::measure::Reading>,
    /// What limits a cut there now, as the plan and the drawings hold it.
    pub limits: Allowance,
    /// Whether the sheet holds readings taken after work there.
    pub worked: bool,
}

/// A figure from memory, common practice or arithmetic that the plan rests on: check it before relying on it.
#[derive(Debug, Clone, PartialEq)]
pub struct WeakFigure {
    /// At which place.
    pub place: Place,
    /// What the place is called.
    pub name: String,
    /// Which figure.
    pub what: Fact,
    /// Whose it is.
    pub owner: String,
    /// What it is worth.
    pub grade: Grade,
}

impl WeakFigure {
    /// Whether it is this figure again.
    pub(super) fn is_same(&self, what: &Fact, owner: &str) -> bool {
        self.what.code() == what.code() && self.owner == owner
    }
}

outgoing! {
    /// The plan for a whole frame.
    Plan(this) {
        /// Version of the contract, [`CONTRACT`].
        contract: u32,
        /// The frame, in the shop's words.
        frame: String,
        /// The data are invented for a demonstration.
        invented: bool,
        /// When it was measured, in the shop's words.
        date: Option<String>,
        /// What the sheet notes of the frame as a whole.
        notes: Vec<String>,
        /// Every place of the sheet, in the order of the work.
        places: Vec<PlaceReport>,
        /// The work, in order.
        steps: Vec<Step>,
        /// Measure and ask these first.
        questions: Vec<Question>,
        /// Cautions for the whole job.
        cautions: Vec<Caution>,
        /// Weak figures that the plan rests on.
        weak_figures: Vec<WeakFigure>,
    }
}

impl Plan {
    /// What is known of a place.
    ///
    /// ```
    /// use framegauge::{plan::{FrameSheet, SeatTubeSheet, State, prepare}, standard::Place};
    /// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
    /// assert_eq!(prepare(&sheet).place(&Place::SeatTube).unwrap().state, State::Open);
    /// ```
    #[must_use]
    pub fn place(&self, place: &Place) -> Option<&PlaceReport> {
        self.places.iter().find(|p| p.place == *place)
    }

    /// The steps at a place.
    pub fn steps_at<'a>(&'a self, place: &'a Place) -> impl Iterator<Item = &'a Step> {
        self.steps.iter().filter(move |s| s.place == *place)
    }

    /// Whether nothing stands in the way: every place is done, left with a reason, or has only work to do. A sheet without
    /// any place says nothing, so it is not acceptable.
    #[must_use]
    pub fn acceptable(&self) -> bool {
        !self.places.is_empty() && self.places.iter().all(|p| p.state.is_clear())
    }

    /// Whether every place is done or left with a reason.
    #[must_use]
    pub fn finished(&self) -> bool {
        !self.places.is_empty() && self.places.iter().all(|p| p.state.is_finished())
    }
}
