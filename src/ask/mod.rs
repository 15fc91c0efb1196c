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

use alloc::boxed::Box;
use alloc::string::ToString;
use alloc::vec::Vec;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use crate::identify::Identification;
use crate::judge::{self, Verdict};
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

pub use self::{
    convert::*, faces::*, fits::*, hand::*, identify::*, mating::*, press::*, rescue::*, rows::*,
    strength::*, threads::*,
};
pub use crate::read::Told;
pub use basis::{Answered, Basis};
#[cfg(feature = "json")]
pub use line::{LONGEST_LINE, Reply, answer_line};
pub use refusal::Refusal;
pub use schema::{Schema, schema};

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
    ($( $(#[doc = $words:literal])+ $name:literal $(( $other:literal ))? $kind:ident = $of:ty => $answer:ty; )*) => {
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
            $( $(#[doc = $words])+ $kind(Box<$of>), )*
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
            $( $(#[doc = $words])+ $kind(Box<Answered<$answer>>), )*
        }

        static FORMS: &[QuestionForm] = &[$(
            QuestionForm {
                name: $name,
                other: &[$($other)?],
                words: concat!($($words),+),
                question: <$of>::FIELDS,
                answer: <$answer>::FIELDS,
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
                    $( $name $(| $other)? => <$of>::from_fields(fields, context).map(|q| Self::$kind(Box::new(q))), )*
                    other => context.under("ask", |context| context.keep(Err(unknown_question(other)))),
                }
            }

            /// Answers it.
            ///
            /// # Errors
            /// Those of the room that answers, said of the fields of the question.
            pub fn answer(&self, context: &Context<'_>) -> Result<Answer, Refusal> {
                match self {
                    $( Self::$kind(question) => Ask::answer(question.as_ref(), context).map(|a| Answer::$kind(Box::new(a))), )*
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
                    $( Self::$kind(answered) => (&answered.answer as &dyn core::any::Any).downcast_ref(), )*
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
    "thread_limits" ThreadLimits = ThreadLimits => ThreadLimitsAnswer;
    /// Deviations and limits of size of an ISO 286 class.
    "fit_limits" FitLimits = FitLimits => FitLimitsAnswer;
    /// Which standard is this?
    "identify" Identify = Identify => Identification;
    /// Which hand is the thread on this side, and which way does it turn?
    "hand" HandOf = HandOf => HandAnswer;
    /// The whole frame: sheet in, plan out.
    "prepare" Prepare = Prepare => Plan;
    /// Readings of one size held against its limits.
    "conform" Conform = judge::Conform => Verdict;
    /// The fit of two members: how tight, what is wanted of it, which is off, and what would cure it.
    "fit" ("mate") Fit = judge::Fit => Verdict;
    /// What pressing one part into another does.
    "press" PressIn = PressIn => PressAnswer;
    /// A ring face from indicator readings: square, flat, how deep to cut, and whether.
    "face" Face = Face => FaceAnswer;
    /// A bore from a few diameters: its size, or that it has none.
    "bore_shape" Bore = Bore => BoreAnswer;
    /// Do these two threads mate, and if not, when does it show and bind?
    "pitch_mismatch" PitchMismatch = PitchMismatch => PitchMismatchAnswer;
    /// How much of a thread still bears.
    "engagement" Bearing = Bearing => BearingAnswer;
    /// What strips a thread, and at which force.
    "strip" Strip = Strip => StripAnswer;
    /// Which wire, and what pitch diameter the size over wires means.
    "three_wire" ThreeWire = ThreeWire => ThreeWireAnswer;
    /// Which seatposts go into this tube.
    "seatpost_for_tube" SeatpostForTube = judge::SeatpostForTube => Verdict;
    /// How deep a post must go in.
    "insertion" Insertion = judge::Insertion => Verdict;
    /// The shim between a tube and a post.
    "shim" Shim = judge::Shim => Verdict;
    /// Is a bore deep enough for the part in it?
    "depth" CupDepth = judge::CupDepth => Verdict;
    /// A shell with its spacers, held against the width that a unit wants.
    "width_stack" WidthWindow = judge::WidthWindow => Verdict;
    /// Which bolt leaves enough thread behind a mount.
    "bolt_length" BoltLength = judge::BoltLength => Verdict;
    /// A spindle or unit made for one width in a shell of another.
    "spindle_width" SpindleWidth = judge::SpindleWidth => Verdict;
    /// Does a tilted brake mount make the caliper rub?
    "caliper_tilt" CaliperTilt = judge::CaliperTilt => Verdict;
    /// A bore against its limits, depth by depth and direction by direction.
    "bore" BoreFit = judge::BoreFit => Verdict;
    /// A thread by its gauges, by what was seen of it, and by its bore.
    "gauging" Gauging = judge::Gauging => Verdict;
    /// The wall that an outside diameter and a bore leave.
    "wall" Wall = judge::Wall => Verdict;
    /// What reaming takes off and leaves.
    "ream" Ream = judge::Ream => Verdict;
    /// A hole before it is tapped.
    "hole_to_tap" HoleToTap = judge::HoleToTap => Verdict;
    /// The two end faces of a head tube: parallel or not.
    "parallel_faces" ParallelFaces = judge::ParallelFaces => Verdict;
    /// A hub in its dropouts: its width over the end caps.
    "hub_width" HubWidth = judge::HubWidth => Verdict;
    /// Where the caliper sits over its rotor.
    "caliper_place" CaliperPlace = judge::CaliperPlace => Verdict;
    /// Two dropouts: spacing and angle.
    "dropouts" Dropouts = judge::Dropouts => Verdict;
    /// Why a spindle binds in two bearings.
    "spindle_binds" SpindleBinds = judge::SpindleBinds => Verdict;
    /// What a coating does to a reading.
    "coating" Coating = judge::Coating => Verdict;
    /// A press fit at other temperatures.
    "temperature" AtTemperature = judge::AtTemperature => Verdict;
    /// Worn, over-cut, stripped: what is left to do.
    "rescue" RescueOf = RescueOf => RescueAnswer;
    /// A row of the tables or of the shop, with its sources.
    "standard" StandardRow = StandardRow => StandardAnswer;
    /// A quantity in other units.
    "convert" Convert = Convert => ConvertAnswer;
}

fn unknown_question(name: &str) -> Error {
    let names: Vec<&str> = FORMS.iter().map(|form| form.name).collect();
    let remedy = alloc::format!("one of {}", names.join(", "));
    Error::new(
        ErrorKind::UnknownName,
        "ask",
        name,
        "no such question",
        remedy,
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
            let like = "an object such as {\"ask\":\"thread_limits\",\"thread\":\"M10x1-6H\"}";
            return Err(tree.instead_of(like).within("line").into());
        };
        let own = |name: &'static str| fields.iter().filter(move |(key, _)| key == name).count();
        if let Some(field) = ["ask", "id"].into_iter().find(|name| own(name) > 1) {
            return Err(twice(field).into());
        }
        let asked = fields.iter().position(|(key, _)| key == "ask");
        let (_, asked) = asked
            .map(|at| fields.remove(at))
            .ok_or_else(|| missing("ask"))?;
        fields.retain(|(key, _)| key != "id");
        let Tree::Text(name) = asked else {
            return Err(asked
                .instead_of("the name of a question")
                .within("ask")
                .into());
        };
        let mut context = crate::read::Context::new(tables);
        match Self::of(&name, &fields, &mut context) {
            Some(question) if context.met() == 0 => Ok(question),
            _ => Err(Refusal::all(context.into_defects())
                .unwrap_or_else(|| unknown_question(&name).into())),
        }
    }
}

impl<'de> Deserialize<'de> for Question {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Self::from_tree(Tree::deserialize(deserializer)?, Tables::ours())
            .map_err(|e| de::Error::custom(e.to_string()))
    }
}
