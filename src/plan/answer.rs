//! What a plan says, as facts: places with their state, steps in order, questions with the field that answers them.

use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::facts::{Allowance, Ask, CutLimit, Earlier, Fact, Found, Task};
use crate::evidence::{Citation, Grade};
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

/// Where the work at a place stands.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter, strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum State {
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

/// What is counted of what comes off.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter, strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Counted {
    /// Depth of a face after first touch, or of a bore.
    Depth,
    /// Diameter of a bore.
    Diameter,
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

/// What stops a cut.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// The limit, with whose it is.
    pub limit: Fact,
    /// How much may come off before it for certain; `None` where the limit is no amount.
    pub to_go: Option<Length>,
    /// What the limit is worth; `None` where it is no figure.
    pub grade: Option<Grade>,
    /// Where this limit was read.
    pub sources: Vec<Citation>,
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

/// A tool: what kind it is, and which one.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Tool {
    /// What kind it is: `reamer`, `chaser`, `tap`, `facing_cutter`, `hand_tools`.
    pub code: &'static str,
    /// Which one, with its size.
    pub which: Fact,
    /// Hand of the thread it cuts; `None` for reamers and facing cutters.
    pub hand: Option<Hand>,
}

/// A step that must be finished before, and why.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct After {
    /// Its number.
    pub step: usize,
    /// Why.
    pub why: Earlier,
}

/// What a step changes at another place.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Change {
    /// Where it is felt.
    pub place: Place,
    /// What changes.
    pub what: Fact,
    /// By how much at most; `None` where it is no amount.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "by_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    pub by: Option<Length>,
}

/// One step of the work.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Number in the order of work, from 1.
    pub number: usize,
    /// Where.
    pub place: Place,
    /// What.
    pub operation: Operation,
    /// Steps that must be finished before.
    pub after: Vec<After>,
    /// Questions that must be answered first, by number.
    pub waits_for: Vec<usize>,
    /// How much comes off; only where metal is cut and the amount is known.
    pub off: Option<Off>,
    /// What stops the cut: at least one for every cut, none for anything else.
    pub stops: Vec<Stop>,
    /// With what.
    pub tools: Vec<Tool>,
    /// What guides the cutter; `None` where nothing does.
    pub pilot: Option<Fact>,
    /// The end at which the tool starts, from which its turning is told; empty where nothing turns.
    pub start: &'static str,
    /// Which way it turns to cut, seen from the end at which it starts.
    pub turn: Option<Turn>,
    /// How many passes to expect.
    pub passes: &'static str,
    /// What it changes elsewhere.
    pub changes: Vec<Change>,
    /// What to check after it.
    pub checks: Vec<Fact>,
    /// What proves it; `None` where it is no cut and no trial.
    pub proof: Option<Fact>,
    /// What belongs to it in danger.
    pub cautions: Vec<Caution>,
    /// What the sheet notes at this place.
    pub notes: Vec<String>,
    /// What is to be done, and why.
    pub task: Task,
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
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PlaceReport {
    /// Where.
    pub place: Place,
    /// What it is called: the sheet's own name for it, or ours.
    pub name: String,
    /// Where the work stands.
    pub state: State,
    /// Which standard it is, as far as the readings say; `None` where that was not asked.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
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

/// The plan for a whole frame.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Plan {
    /// Version of the contract, [`CONTRACT`].
    pub contract: u32,
    /// The frame, in the shop's words.
    pub frame: String,
    /// The data are invented for a demonstration.
    pub invented: bool,
    /// When it was measured, in the shop's words.
    pub date: Option<String>,
    /// What the sheet notes of the frame as a whole.
    pub notes: Vec<String>,
    /// Every place of the sheet, in the order of the work.
    pub places: Vec<PlaceReport>,
    /// The work, in order.
    pub steps: Vec<Step>,
    /// Measure and ask these first.
    pub questions: Vec<Question>,
    /// Cautions for the whole job.
    pub cautions: Vec<Caution>,
    /// Weak figures that the plan rests on.
    pub weak_figures: Vec<WeakFigure>,
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

#[cfg(feature = "serde")]
mod serial {
    use serde::ser::{Serialize, SerializeStruct, Serializer};

    use super::{After, Off, Question, Step, Stop, WeakFigure};
    use crate::fact::{Bare, Worded};
    use crate::quantity::settled_mm;
    use alloc::string::ToString;

    impl Serialize for Off {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Off", 2)?;
            out.serialize_field("of", &self.of)?;
            out.serialize_field(
                "mm",
                &crate::quantity::serial::Between {
                    min: Some(settled_mm(self.least)),
                    max: Some(settled_mm(self.most)),
                },
            )?;
            out.end()
        }
    }

    impl Serialize for Stop {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Stop", 4)?;
            out.serialize_field("limit", &self.limit)?;
            out.serialize_field("to_go_mm", &self.to_go.map(settled_mm))?;
            out.serialize_field("grade", &self.grade)?;
            out.serialize_field("sources", &self.sources)?;
            out.end()
        }
    }

    impl Serialize for After {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("After", 3)?;
            out.serialize_field("step", &self.step)?;
            out.serialize_field("code", self.why.code())?;
            out.serialize_field("why", &self.why.to_string())?;
            out.end()
        }
    }

    impl Serialize for Step {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Step", 22)?;
            out.serialize_field("number", &self.number)?;
            out.serialize_field("place", &self.place)?;
            out.serialize_field("operation", &self.operation)?;
            out.serialize_field("cuts", &self.cuts())?;
            out.serialize_field("after", &self.after)?;
            out.serialize_field("waits_for", &self.waits_for)?;
            out.serialize_field("off", &self.off)?;
            out.serialize_field("stops", &self.stops)?;
            out.serialize_field("tools", &self.tools)?;
            out.serialize_field("pilot", &self.pilot)?;
            out.serialize_field("start", &self.start)?;
            out.serialize_field("turn", &self.turn)?;
            out.serialize_field(
                "turning",
                self.turning().map_or("", |turning| turning.words()),
            )?;
            out.serialize_field("passes", &self.passes)?;
            out.serialize_field("changes", &self.changes)?;
            out.serialize_field("checks", &self.checks)?;
            out.serialize_field("proof", &self.proof)?;
            out.serialize_field("cautions", &self.cautions)?;
            out.serialize_field("notes", &self.notes)?;
            out.serialize_field("task", &Bare(&self.task))?;
            out.serialize_field("words", &self.task.to_string())?;
            out.serialize_field("why", &self.task.why())?;
            out.end()
        }
    }

    impl Serialize for Question {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Question", 8)?;
            out.serialize_field("number", &self.number)?;
            out.serialize_field("place", &self.place)?;
            out.serialize_field("ask", &Bare(&self.ask))?;
            out.serialize_field("measure", &self.ask.to_string())?;
            out.serialize_field("instrument", &self.ask.with().to_string())?;
            out.serialize_field("answer", &self.answer)?;
            out.serialize_field("words", &self.to_string())?;
            out.serialize_field("why", &self.ask.why())?;
            out.end()
        }
    }

    impl Serialize for WeakFigure {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("WeakFigure", 3)?;
            out.serialize_field("place", &self.place)?;
            out.serialize_field("what", &self.to_string())?;
            out.serialize_field("grade", &self.grade)?;
            out.end()
        }
    }
}
