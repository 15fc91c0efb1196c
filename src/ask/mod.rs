//! One question in, one answer out: the scripting contract.
//!
//! A question is an object that names itself under `ask`; lengths are text with a unit. An answer holds settled numbers
//! with the unit in the field name, what it rests on under `evidence`, and `sources`. A question that makes no sense
//! gives an error with a kind, the path of the field, a message and a remedy. No math lives here: every question is
//! handed to the room that knows.
//!
//! With feature `json`, [`answer_line`] answers one line of JSON with one line of JSON; [`schema`] is the JSON Schema of
//! it all, made from the same declarations that read the questions.
//!
//! ```
//! use framegauge::ask::{Context, Question};
//! let question: Question = serde_json::from_str(r#"{"ask":"fit_limits","nominal":"42 mm","class":"N7"}"#).unwrap();
//! let answer = question.answer(&Context::default()).unwrap();
//! let json = serde_json::to_value(&answer).unwrap();
//! assert_eq!((json["lower_um"].as_f64(), json["max_mm"].as_f64()), (Some(-33.0), Some(41.992)));
//! ```

use alloc::string::ToString;
use alloc::vec::Vec;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use crate::identify::Identification;
use crate::judge::{
    AtTemperature, BoltLength, BoreFit, CaliperPlace, CaliperTilt, Coating, Conform, CupDepth,
    Dropouts, Fit, Gauging, HoleToTap, HubWidth, Insertion, ParallelFaces, Ream, SeatpostForTube,
    Shim, SpindleBinds, SpindleWidth, Verdict, Wall, WidthWindow,
};
use crate::plan::{Plan, Prepare};
use crate::read::{Field, Tree, missing, twice};
use crate::standard::{ShopRows, Tables};
use crate::{Error, ErrorKind};

mod basis;
mod convert;
mod faces;
mod fits;
mod hand;
mod identify;
mod judged;
#[cfg(feature = "json")]
mod line;
mod mating;
mod prepare;
mod press;
mod refusal;
mod rescue;
mod rows;
mod said;
mod schema;
mod strength;
mod threads;

pub use crate::read::Told;
pub use basis::{Answered, Basis};
pub use convert::*;
pub use faces::*;
pub use fits::*;
pub use hand::*;
pub use identify::*;
#[cfg(feature = "json")]
pub use line::{LONGEST_LINE, Reply, answer_line};
pub use mating::*;
pub use press::*;
pub use refusal::Refusal;
pub use rescue::*;
pub use rows::*;
pub use schema::{Schema, schema};
pub use strength::*;
pub use threads::*;

/// What every question is answered in: our tables, with a shop's own rows beside them.
///
/// ```
/// use framegauge::{ask::Context, standard::ShopRows};
/// let rows = ShopRows::default();
/// assert!(Context::with_rows(&rows).is_ok());
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct Context<'a> {
    tables: Tables<'a>,
}

impl<'a> Context<'a> {
    /// Ours and the shop's own rows side by side.
    ///
    /// # Errors
    /// Those of [`ShopRows::check`]: a row of the shop's never takes a name that is taken.
    pub fn with_rows(rows: &'a ShopRows) -> Result<Self, Error> {
        Tables::with(rows).map(|tables| Self { tables })
    }

    /// The tables.
    #[must_use]
    pub const fn tables(&self) -> Tables<'a> {
        self.tables
    }
}

/// A question that can be answered.
///
/// ```
/// use framegauge::{ask::{Ask, Context, Convert}, mm};
/// let question = Convert { length: Some(mm(25.4)), pitch: None };
/// assert_eq!(question.answer(&Context::default()).unwrap().answer.text_in, "1.0000 in");
/// ```
pub trait Ask {
    /// What the answer holds.
    type Answer: Serialize;

    /// Answers it.
    ///
    /// # Errors
    /// Those of the room that answers, said of the fields of the question.
    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal>;

    /// The verdict on one place, where the answer is one.
    fn verdict(_: &Self::Answer) -> Option<&Verdict> {
        None
    }
}

/// A question by name, with the fields that it takes and those that its answer holds.
///
/// ```
/// let form = &framegauge::ask::forms()[0];
/// assert_eq!((form.name, form.question[0].name), ("thread_limits", "thread"));
/// ```
#[derive(Debug, Clone, Copy)]
pub struct QuestionForm {
    /// The name, as it stands under `ask`.
    pub name: &'static str,
    /// Another name that it goes by.
    pub other: &'static [&'static str],
    /// What it asks.
    pub words: &'static str,
    /// Fields of the question.
    pub question: &'static [Field],
    /// Fields of the answer, besides `evidence` and `sources`.
    pub answer: &'static [Field],
}

macro_rules! questions {
    ($( $(#[doc = $words:literal])+ $name:literal $(( $other:literal ))? $kind:ident -> $answer:ident; )*) => {
        /// Any question.
        ///
        /// ```
        /// use framegauge::ask::Question;
        /// let error = serde_json::from_str::<Question>(r#"{"ask":"fit_limit"}"#).unwrap_err();
        /// assert!(error.to_string().contains("fit_limits"));
        /// ```
        #[derive(Debug, Clone, PartialEq)]
        #[non_exhaustive]
        pub enum Question {
            $( $(#[doc = $words])+ $kind(alloc::boxed::Box<$kind>), )*
        }

        /// The answer to any question; serializes as the answer itself.
        ///
        /// ```
        /// use framegauge::ask::{Answer, Context, Question};
        /// let question: Question = serde_json::from_str(r#"{"ask":"convert","length":"1 in"}"#).unwrap();
        /// assert!(matches!(question.answer(&Context::default()), Ok(Answer::Convert(inch)) if inch.answer.mm == 25.4));
        /// ```
        #[derive(Debug, Clone, PartialEq)]
        #[non_exhaustive]
        pub enum Answer {
            $( $(#[doc = $words])+ $kind(alloc::boxed::Box<Answered<$answer>>), )*
        }

        static FORMS: &[QuestionForm] = &[$(
            QuestionForm {
                name: $name,
                other: &[$($other)?],
                words: concat!($($words),+),
                question: $kind::FIELDS,
                answer: $answer::FIELDS,
            },
        )*];

        impl Question {
            /// Reads the question of this name from its fields, `ask` and `id` left out.
            fn of(
                name: &str,
                fields: &[(alloc::borrow::Cow<'_, str>, Tree<'_>)],
                context: &mut crate::read::Context<'_>,
            ) -> Option<Self> {
                match name {
                    $( $name $(| $other)? => $kind::from_fields(fields, context).map(|q| Self::$kind(alloc::boxed::Box::new(q))), )*
                    other => context.under("ask", |context| context.keep(Err(unknown_question(other)))),
                }
            }

            /// Answers it.
            ///
            /// # Errors
            /// Those of the room that answers, said of the fields of the question.
            pub fn answer(&self, context: &Context<'_>) -> Result<Answer, Refusal> {
                match self {
                    $( Self::$kind(question) => Ask::answer(question.as_ref(), context).map(|a| Answer::$kind(alloc::boxed::Box::new(a))), )*
                }
            }

            /// Its name, as it stands under `ask`.
            #[must_use]
            pub const fn name(&self) -> &'static str {
                match self {
                    $( Self::$kind(_) => $name, )*
                }
            }
        }

        impl Answer {
            /// The verdict on one place, where the answer is one.
            ///
            /// ```
            /// use framegauge::ask::{Context, Question};
            /// let question: Question = serde_json::from_str(
            ///     r#"{"ask":"depth","bore_depth":"9.0 +/- 0.1 mm","insertion":"12.0 +/- 0.1 mm"}"#).unwrap();
            /// let answer = question.answer(&Context::default()).unwrap();
            /// assert_eq!(answer.verdict().unwrap().millimetres("stands proud"), Some(3.0));
            /// ```
            #[must_use]
            pub fn verdict(&self) -> Option<&Verdict> {
                match self {
                    $( Self::$kind(answered) => <$kind as Ask>::verdict(&answered.answer), )*
                }
            }
        }

        impl Serialize for Answer {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                match self {
                    $( Self::$kind(answer) => answer.serialize(serializer), )*
                }
            }
        }
    };
}

questions! {
    /// What may this thread measure?
    "thread_limits" ThreadLimits -> ThreadLimitsAnswer;
    /// Deviations and limits of size of an ISO 286 class.
    "fit_limits" FitLimits -> FitLimitsAnswer;
    /// Which standard is this?
    "identify" Identify -> Identification;
    /// Which hand is the thread on this side, and which way does it turn?
    "hand" HandOf -> HandAnswer;
    /// The whole frame: sheet in, plan out.
    "prepare" Prepare -> Plan;
    /// Readings of one size held against its limits.
    "conform" Conform -> Verdict;
    /// The fit of two members: how tight, what is wanted of it, which is off, and what would cure it.
    "fit" ("mate") Fit -> Verdict;
    /// What pressing one part into another does.
    "press" PressIn -> PressAnswer;
    /// A ring face from indicator readings: square, flat, how deep to cut, and whether.
    "face" Face -> FaceAnswer;
    /// A bore from a few diameters: its size, or that it has none.
    "bore_shape" Bore -> BoreAnswer;
    /// Do these two threads mate, and if not, when does it show and bind?
    "pitch_mismatch" PitchMismatch -> PitchMismatchAnswer;
    /// How much of a thread still bears.
    "engagement" Bearing -> BearingAnswer;
    /// What strips a thread, and at which force.
    "strip" Strip -> StripAnswer;
    /// Which wire, and what pitch diameter the size over wires means.
    "three_wire" ThreeWire -> ThreeWireAnswer;
    /// Which seatposts go into this tube.
    "seatpost_for_tube" SeatpostForTube -> Verdict;
    /// How deep a post must go in.
    "insertion" Insertion -> Verdict;
    /// The shim between a tube and a post.
    "shim" Shim -> Verdict;
    /// Is a bore deep enough for the part in it?
    "depth" CupDepth -> Verdict;
    /// A shell with its spacers, held against the width that a unit wants.
    "width_stack" WidthWindow -> Verdict;
    /// Which bolt leaves enough thread behind a mount.
    "bolt_length" BoltLength -> Verdict;
    /// A spindle or unit made for one width in a shell of another.
    "spindle_width" SpindleWidth -> Verdict;
    /// Does a tilted brake mount make the caliper rub?
    "caliper_tilt" CaliperTilt -> Verdict;
    /// A bore against its limits, depth by depth and direction by direction.
    "bore" BoreFit -> Verdict;
    /// A thread by its gauges, by what was seen of it, and by its bore.
    "gauging" Gauging -> Verdict;
    /// The wall that an outside diameter and a bore leave.
    "wall" Wall -> Verdict;
    /// What reaming takes off and leaves.
    "ream" Ream -> Verdict;
    /// A hole before it is tapped.
    "hole_to_tap" HoleToTap -> Verdict;
    /// The two end faces of a head tube: parallel or not.
    "parallel_faces" ParallelFaces -> Verdict;
    /// A hub in its dropouts: its width over the end caps.
    "hub_width" HubWidth -> Verdict;
    /// Where the caliper sits over its rotor.
    "caliper_place" CaliperPlace -> Verdict;
    /// Two dropouts: spacing and angle.
    "dropouts" Dropouts -> Verdict;
    /// Why a spindle binds in two bearings.
    "spindle_binds" SpindleBinds -> Verdict;
    /// What a coating does to a reading.
    "coating" Coating -> Verdict;
    /// A press fit at other temperatures.
    "temperature" AtTemperature -> Verdict;
    /// Worn, over-cut, stripped: what is left to do.
    "rescue" RescueOf -> RescueAnswer;
    /// A row of the tables or of the shop, with its sources.
    "standard" StandardRow -> StandardAnswer;
    /// A quantity in other units.
    "convert" Convert -> ConvertAnswer;
}

fn unknown_question(name: &str) -> Error {
    let names: Vec<&str> = FORMS.iter().map(|form| form.name).collect();
    Error::new(
        ErrorKind::UnknownName,
        "ask",
        name,
        "no such question",
        alloc::format!("one of {}", names.join(", ")),
    )
}

/// Every question, in the order of the contract.
///
/// ```
/// assert!(framegauge::ask::forms().iter().any(|form| form.name == "thread_limits"));
/// ```
#[must_use]
pub fn forms() -> &'static [QuestionForm] {
    FORMS
}

impl Question {
    /// Reads a question from a tree. `id` belongs to the line, not to the question, and is passed over.
    ///
    /// # Errors
    /// Every defect: `Missing` or `UnknownName` for `ask`; those of the question's own fields, each with its path.
    ///
    /// ```
    /// use framegauge::{ask::Question, read::Tree, standard::Tables};
    /// let tree: Tree = serde_json::from_str(r#"{"ask":"thread_limits","thread":10}"#).unwrap();
    /// assert_eq!(Question::from_tree(tree, Tables::ours()).unwrap_err().first().field(), "thread");
    /// ```
    pub fn from_tree(tree: Tree<'_>, tables: Tables<'_>) -> Result<Self, Refusal> {
        let Tree::Fields(mut fields) = tree else {
            return Err(tree
                .instead_of("an object such as {\"ask\":\"thread_limits\",\"thread\":\"M10x1-6H\"}")
                .within("line")
                .into());
        };
        let mut name = None;
        let mut ids = 0;
        let mut again = None;
        fields.retain_mut(|(key, value)| match key.as_ref() {
            "ask" => {
                if name
                    .replace(core::mem::replace(value, Tree::Null))
                    .is_some()
                {
                    again = Some("ask");
                }
                false
            }
            "id" => {
                ids += 1;
                if ids > 1 {
                    again = Some("id");
                }
                false
            }
            _ => true,
        });
        if let Some(field) = again {
            return Err(twice(field).into());
        }
        match name {
            Some(Tree::Text(name)) => {
                let mut context = crate::read::Context::new(tables);
                match Self::of(&name, &fields, &mut context) {
                    Some(question) if context.met() == 0 => Ok(question),
                    _ => Err(Refusal::all(context.into_defects())
                        .unwrap_or_else(|| unknown_question(&name).into())),
                }
            }
            Some(other) => Err(other
                .instead_of("the name of a question")
                .within("ask")
                .into()),
            None => Err(missing("ask").into()),
        }
    }
}

impl<'de> Deserialize<'de> for Question {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Self::from_tree(Tree::deserialize(deserializer)?, Tables::ours())
            .map_err(|e| de::Error::custom(e.to_string()))
    }
}
