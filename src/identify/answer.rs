//! The answer: one outcome, who else was in the running, what decided, and what to measure next.

use alloc::vec::Vec;

use super::Feature;
use crate::evidence::{Grade, Text};
use crate::quantity::Length;
use crate::standard::Place;
use crate::thread::ThreadSize;

/// Code of the candidate that stands for everything no table lists.
pub const UNLISTED: &str = "unlisted";

/// What the observations allow to be said.
///
/// ```
/// use framegauge::{identify::{Observation, Options, Outcome, identify}, standard::Place};
/// let seen = [Observation::read("bore", "43.97 +/- 0.01 mm").unwrap()];
/// let kind = "head_tube.lower".parse().unwrap();
/// match identify(kind, &seen, &Options::default()).unwrap().outcome {
///     Outcome::Ambiguous { between } => assert_eq!(between.len(), 2), // EC44 and ZS44 share one bore
///     other => panic!("{other:?}"),
/// }
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// Exactly one listed standard is left.
    Identified {
        /// Its code.
        code: Text,
    },
    /// Several are left; the most likely first. May hold [`UNLISTED`].
    Ambiguous {
        /// Their codes.
        between: Vec<Text>,
    },
    /// No listed standard has what was read.
    Unlisted,
    /// What was observed names nothing: too little, contradictory, or not what it is called.
    CannotTell,
}

impl Outcome {
    /// The outcome as one word: `identified`, `ambiguous`, `unlisted` or `cannot_tell`.
    #[must_use]
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Identified { .. } => "identified",
            Self::Ambiguous { .. } => "ambiguous",
            Self::Unlisted => "unlisted",
            Self::CannotTell => "cannot_tell",
        }
    }

    /// The code, if exactly one standard is left.
    #[must_use]
    pub fn identified(&self) -> Option<&str> {
        match self {
            Self::Identified { code } => Some(code),
            _ => None,
        }
    }

    /// The codes that are left, most likely first; empty for `Unlisted` and `CannotTell`.
    ///
    /// ```
    /// use framegauge::{identify::{Observation, Options, identify}, standard::Place};
    /// let seen = [Observation::read("bore", "33.7 +/- 0.05 mm").unwrap(), Observation::read("width", "68.1 +/- 0.1 mm").unwrap()];
    /// let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
    /// assert!(answer.outcome.left().len() > 1 && answer.outcome.identified().is_none());
    /// ```
    #[must_use]
    pub fn left(&self) -> &[Text] {
        match self {
            Self::Identified { code } => core::slice::from_ref(code),
            Self::Ambiguous { between } => between,
            Self::Unlisted | Self::CannotTell => &[],
        }
    }
}

/// The observation that rules a candidate out.
///
/// ```
/// use framegauge::{identify::{Feature, Observation, Options, Standing, identify}, standard::Place};
/// let seen = [Observation::read("bore", "41.0 +/- 0.05 mm").unwrap()];
/// let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
/// let Standing::Excluded(why) = answer.candidate("bb30").unwrap().standing else { panic!("41.96 is not 41.0") };
/// assert_eq!(why.by, Feature::Bore);
/// assert!(why.against.unwrap().distance_in_u > 30.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exclusion {
    /// Which observation.
    pub by: Feature,
    /// What was read and what the candidate has; `None` for hands, looks and features that the candidate does not have.
    pub against: Option<Against>,
}

/// A reading beside the band that it misses. Millimetres, or degrees for the seat angle.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Against {
    /// What was read.
    pub read: f64,
    /// Lower end of the candidate's band.
    pub lower: f64,
    /// Upper end of the candidate's band.
    pub upper: f64,
    /// Distance to the band in standard uncertainties of the reading.
    pub distance_in_u: f64,
    /// Whether the band is an assumed spread round a bare nominal rather than printed limits.
    pub assumed: bool,
}

/// Where a candidate stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Standing {
    /// Nothing observed rules it out.
    Possible,
    /// Not ruled out, but its figures for the deciding reading are not published: it could not be put to the test.
    Untested,
    /// Ruled out.
    Excluded(Exclusion),
}

/// One candidate.
///
/// ```
/// use framegauge::{identify::{Observation, Options, identify}, standard::Place};
/// let seen = [
///     Observation::read("bore", "46.0 +/- 0.05 mm").unwrap(),
///     Observation::read("width", "68.2 +/- 0.1 mm").unwrap(),
///     Observation::Threaded(false),
/// ];
/// let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
/// let shell = answer.candidate("pf30").unwrap();
/// assert_eq!(framegauge::in_mm(shell.width.unwrap()).to_string(), "68.000 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// Code of the row, or [`UNLISTED`].
    pub code: Text,
    /// Name for a person.
    pub name: Text,
    /// Its share of the likelihood, 0 to 1, all candidates together 1. The exclusion stands above it.
    pub share: f64,
    /// Possible, untested or excluded.
    pub standing: Standing,
    /// For shells, the listed width that suits best.
    pub width: Option<Length>,
    /// Its thread, if it has one.
    pub thread: Option<ThreadSize>,
    /// Weakest grade among the figures that were compared.
    pub grade: Option<Grade>,
    /// Which alternative of the row suits best.
    pub(super) variant: usize,
    /// How many readings that can name a standard were compared.
    pub(super) key_tests: u8,
    /// How many readings of any kind were not compared, because the row has no figure for them.
    pub(super) untested: u8,
}

/// Which rule settled the outcome: published because the two can differ.
///
/// ```
/// use framegauge::{identify::{Feature, Observation, Options, Rule, identify}, standard::Place};
/// let seen = [Observation::read("outside_diameter", "30.9 +/- 0.02 mm").unwrap(), Observation::label("31.6")];
/// let answer = identify(Place::Seatpost, &seen, &Options::default()).unwrap();
/// let decided = answer.decided_by.unwrap();
/// assert_eq!(decided.feature, Some(Feature::OutsideDiameter));
/// assert_eq!(decided.rule, Rule::Nothing); // 30.8 and 31.0 lie within reach too
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DecidedBy {
    /// The rule.
    pub rule: Rule,
    /// The observation that ruled out most candidates, if any was ruled out.
    pub feature: Option<Feature>,
}

/// The rule that settled the outcome.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Rule {
    /// The intervals alone: the ranking would still give an excluded candidate 5 % or more.
    Exclusion,
    /// Intervals and ranking agree.
    ExclusionAndRanking,
    /// Nothing was excluded, or several are left: the ranking orders them and decides nothing.
    Nothing,
}

/// What becomes of a belief.
///
/// ```
/// use framegauge::{identify::{Belief, Observation, Options, identify}, standard::Place};
/// let seen = [Observation::read("bore", "27.4 +/- 0.02 mm").unwrap(), Observation::label("27.2")];
/// let answer = identify(Place::SeatTube, &seen, &Options::default()).unwrap();
/// assert_eq!(answer.belief, Some(Belief::Contradicted));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Belief {
    /// The readings name the same standard, or one that interchanges with it.
    Confirmed,
    /// The readings rule it out.
    Contradicted,
    /// The readings neither name it nor rule it out.
    NotTested,
}

/// A measurement worth taking.
///
/// ```
/// use framegauge::{identify::{Feature, Observation, Options, identify}, standard::Place};
/// let seen = [Observation::read("crest_diameter", "14.0 +/- 0.05 mm").unwrap()];
/// let answer = identify(Place::Pedal(None), &seen, &Options::default()).unwrap();
/// assert_eq!(answer.next[0].measure, Feature::Pitch);
/// assert_eq!(answer.next[0].instrument.as_deref(), Some("pitch_gauge"));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Next {
    /// What to measure or look at.
    pub measure: Feature,
    /// Code of the cheapest instrument that does it; `None` where eyes and hands do.
    pub instrument: Option<Text>,
    /// Candidates that it would tell from the most likely one.
    pub separates: Vec<Text>,
    /// Expected information, bit.
    pub bits: f64,
    /// Order of cost and trouble, 0 a look, 1 by hand, then as the instruments.
    pub cost: u8,
}

/// Why an observation cannot be taken at its word. As JSON with its sentence under `words`.
///
/// ```
/// use framegauge::{identify::{DoubtKind, Observation, Options, TakenFor, identify}, standard::Place};
/// let seen = [Observation::read("outside_diameter", "13.6 +/- 0.05 mm").unwrap()];
/// let answer = identify(Place::Seatpost, &seen, &Options::default()).unwrap();
/// let DoubtKind::Implausible { may_be, .. } = &answer.doubts[0].kind else { panic!("no post is so thin") };
/// assert_eq!((may_be[0].what, &*may_be[0].code), (TakenFor::Radius, "27.2"));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt {
    /// Which observation.
    pub about: Feature,
    /// What kind of doubt.
    pub kind: DoubtKind,
}

/// Kinds of doubt. Millimetres, or degrees for the seat angle.
#[derive(Debug, Clone, PartialEq, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum DoubtKind {
    /// Repeated readings spread beyond their uncertainties: no size may be named.
    Scatter {
        /// How many.
        count: u16,
        /// The smallest.
        low: f64,
        /// The largest.
        high: f64,
    },
    /// No such feature has such a size.
    Implausible {
        /// What was read.
        read: f64,
        /// The smallest size that the tables have.
        low: f64,
        /// The largest size that the tables have.
        high: f64,
        /// What it may be instead.
        may_be: Vec<MayBe>,
    },
}

/// What an implausible size may be: the size of something else, or a number that became another one.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct MayBe {
    /// What it was taken for.
    pub what: TakenFor,
    /// What was read, the slip put right: millimetres.
    #[cfg_attr(feature = "serde", serde(rename = "read_mm"))]
    pub read: f64,
    /// Code of the row that has that size.
    pub code: Text,
    /// Its name for a person.
    pub name: Text,
}

/// What a size is taken for, and how a number becomes another one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum TakenFor {
    /// The bore of the steerer.
    SteererBore,
    /// The outside of the steerer.
    SteererOutside,
    /// The bore of the head tube.
    HeadTubeBore,
    /// The crown-race seat.
    CrownSeat,
    /// The width of the shell.
    ShellWidth,
    /// The bore of the shell.
    ShellBore,
    /// The hub width.
    HubWidth,
    /// The distance of the dropout faces.
    DropoutFaces,
    /// A radius given as a diameter.
    Radius,
    /// A circumference given as a diameter.
    Circumference,
    /// Inches read as millimetres.
    Inches,
    /// Millimetres read as inches.
    Millimetres,
}

/// What a person should know besides the outcome. As JSON it is its sentence.
///
/// ```
/// use framegauge::{identify::{Feature, Note, Observation, Options, identify}, mm, standard::Place};
/// let seen = [Observation::read("outside_diameter", "28.83 +/- 0.02 mm").unwrap()];
/// let answer = identify(Place::SeatTube, &seen, &Options::default()).unwrap();
/// assert_eq!(answer.notes, [Note::PaintOnTube { outside: mm(28.83), bare: mm(28.6) }]);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum Note {
    /// The candidates differ in hand: no force either way.
    HandOpen,
    /// The name that was stated stands for several.
    NameOfSeveral {
        /// Their codes.
        codes: Vec<Text>,
        /// Their names for a person.
        names: Vec<Text>,
    },
    /// A size was worked out from other readings.
    WorkedOut {
        /// Which.
        of: Feature,
        /// The size.
        size: Length,
        /// Whether the tube is taken as still to be reamed.
        to_ream: bool,
    },
    /// Paint would explain the outside of a seat tube.
    PaintOnTube {
        /// As read.
        outside: Length,
        /// The tube that the table has.
        bare: Length,
    },
    /// The wall that the bore for a believed post would leave is not the wall that was read.
    WallLeft {
        /// The post.
        post: Length,
        /// The wall that its bore would leave.
        wall: Length,
        /// The wall that was read.
        read: Length,
    },
    /// Stamped posts read low: the next size may be stamped on it.
    StampedLow {
        /// Code of that size.
        code: Text,
    },
}

/// The answer to "which standard is this?". As JSON with its sentence under `sentence`.
#[derive(Debug, Clone, PartialEq)]
pub struct Identification {
    /// The place that was asked about.
    pub place: Place,
    /// What may be said.
    pub outcome: Outcome,
    /// Every candidate, most likely first, the unlisted one among them.
    pub candidates: Vec<Candidate>,
    /// Which rule and which observation settled it; `None` for `CannotTell`.
    pub decided_by: Option<DecidedBy>,
    /// What becomes of the belief, if one was stated.
    pub belief: Option<Belief>,
    /// Whether the candidates left interchange, so that it does not matter which it is.
    pub interchange: bool,
    /// Measurements worth taking, best first.
    pub next: Vec<Next>,
    /// Whether several are left that none of the tools could tell apart.
    pub inseparable: bool,
    /// Observations that cannot be taken at their word.
    pub doubts: Vec<Doubt>,
    /// What a person should know besides.
    pub notes: Vec<Note>,
    /// The codes that the stated belief names; empty where none was stated.
    pub believed: Vec<Text>,
}

impl Identification {
    /// The candidate of this code.
    ///
    /// ```
    /// use framegauge::{identify::{Observation, Options, identify}, standard::Place};
    /// let seen = [Observation::read("outside_diameter", "27.2 +/- 0.02 mm").unwrap()];
    /// let answer = identify(Place::Seatpost, &seen, &Options::default()).unwrap();
    /// assert!(answer.candidate("27.2").unwrap().share > 0.9);
    /// ```
    #[must_use]
    pub fn candidate(&self, code: &str) -> Option<&Candidate> {
        self.candidates.iter().find(|c| c.code == code)
    }

    /// Weakest grade of the figures that the leading candidates rest on; `None` when nothing is left.
    #[must_use]
    pub fn grade(&self) -> Option<Grade> {
        self.outcome
            .left()
            .iter()
            .filter_map(|code| self.candidate(code)?.grade)
            .min()
    }
}
