//! A verdict on one interface: outcome, numbers, limits, sources, what would cure it, what to measure next.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Ask, Fact, Finding, FitFact};
use crate::evidence::{Citation, Grade, Text};
use crate::fact::closed_words;
use crate::fact::outgoing;
#[cfg(feature = "serde")]
use crate::fact::{Bare, BareOf};
use crate::fit::{Feature, Out};
use crate::measure::{Outcome, Reading};
use crate::quantity::{Angle, Length, Printed, mm, positive, settled_mm};
#[cfg(feature = "serde")]
use crate::read::{Shape, goes_out, known_words, told};

/// What a next step brings.
///
/// ```
/// use framegauge::judge::{BoreAsk, NextStep, SettledBy};
/// let next = NextStep::of(BoreAsk::BareMetal).by(SettledBy::Trial);
/// assert_eq!(next.settled_by, SettledBy::Trial);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum SettledBy {
    /// A reading, or something seen.
    #[default]
    Reading,
    /// What the part does when it is tried by hand.
    Trial,
    /// What its owner writes: a limit, a mark.
    Written,
}

/// What to measure or look at next.
///
/// As JSON: its code and values, `measure`, `why` and `with`.
///
/// ```
/// use framegauge::judge::{BoreAsk, NextStep, SettledBy};
/// let next = NextStep::of(BoreAsk::ThinnestWall);
/// assert_eq!((next.ask.code(), next.settled_by), ("thinnest_wall", SettledBy::Reading));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct NextStep {
    /// What to measure or do, why, and with what.
    pub ask: Ask,
    /// What it brings.
    pub settled_by: SettledBy,
}

impl NextStep {
    /// A next step: a reading.
    #[must_use]
    pub fn of(ask: impl Into<Ask>) -> Self {
        Self {
            ask: ask.into(),
            settled_by: SettledBy::Reading,
        }
    }

    /// What it brings, where that is no reading.
    #[must_use]
    pub const fn by(mut self, settled_by: SettledBy) -> Self {
        self.settled_by = settled_by;
        self
    }
}

/// A number that was worked out on the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Number {
    /// A length.
    Length(Length),
    /// An angle.
    Angle(Angle),
    /// A ratio or a count.
    Plain(f64),
}

impl Number {
    /// The unit behind a name.
    const fn suffix(self) -> &'static str {
        match self {
            Self::Length(_) => "_mm",
            Self::Angle(_) => "_deg",
            Self::Plain(_) => "",
        }
    }
}

/// A number that was worked out, with its name and how.
///
/// ```
/// use framegauge::{judge::Worked, mm};
/// let wall = Worked::length("wall left", mm(0.75), "(outside - bore) / 2");
/// assert_eq!(wall.to_string(), "wall left 0.750 mm");
/// assert_eq!(wall.in_mm(), Some(0.75));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Worked {
    /// What it is.
    pub what: Text,
    /// The value.
    pub value: Number,
    /// How it was worked out.
    pub formula: Text,
}

impl Worked {
    fn of(what: impl Into<Text>, value: Number, formula: impl Into<Text>) -> Self {
        Self {
            what: what.into(),
            value,
            formula: formula.into(),
        }
    }
    /// A length.
    #[must_use]
    pub fn length(what: impl Into<Text>, value: Length, formula: impl Into<Text>) -> Self {
        Self::of(what, Number::Length(value), formula)
    }
    /// An angle.
    ///
    /// ```
    /// use framegauge::{deg, judge::Worked};
    /// let tilt = Worked::angle("tilt", deg(0.5), "arctan(rise / run)");
    /// assert_eq!((tilt.in_deg(), tilt.bare()), (Some(0.5), None));
    /// ```
    #[must_use]
    pub fn angle(what: impl Into<Text>, value: Angle, formula: impl Into<Text>) -> Self {
        Self::of(what, Number::Angle(value), formula)
    }
    /// A ratio or a count.
    ///
    /// ```
    /// use framegauge::judge::Worked;
    /// let left = Worked::plain("threads left", 6.5, "length / pitch");
    /// assert_eq!((left.bare(), left.in_mm()), (Some(6.5), None));
    /// ```
    #[must_use]
    pub fn plain(what: impl Into<Text>, value: f64, formula: impl Into<Text>) -> Self {
        Self::of(what, Number::Plain(value), formula)
    }
    fn in_unit(&self, suffix: &str) -> Option<f64> {
        (self.value.suffix() == suffix).then(|| self.number())
    }
    /// The value in millimetres, settled; `None` for angles and ratios.
    #[must_use]
    pub fn in_mm(&self) -> Option<f64> {
        self.in_unit("_mm")
    }
    /// The value in degrees; `None` for anything else.
    #[must_use]
    pub fn in_deg(&self) -> Option<f64> {
        self.in_unit("_deg")
    }
    /// The bare number of a ratio or count; `None` for anything else.
    #[must_use]
    pub fn bare(&self) -> Option<f64> {
        self.in_unit("")
    }
    /// The name as scripts have it, with its unit: `wall_left_mm`.
    ///
    /// ```
    /// use framegauge::{judge::Worked, mm};
    /// assert_eq!(Worked::length("drive side, wall left", mm(0.75), "").code(), "drive_side_wall_left_mm");
    /// ```
    #[must_use]
    pub fn code(&self) -> String {
        let mut out = String::new();
        for c in self.what.chars() {
            if c.is_alphanumeric() {
                out.extend(c.to_lowercase());
            } else if !out.is_empty() && !out.ends_with('_') {
                out.push('_');
            }
        }
        out + self.value.suffix()
    }
    /// The number alone, in the unit of its code; angles and ratios from workshop readings are not known to more than four
    /// places.
    #[must_use]
    pub fn number(&self) -> f64 {
        let value = match self.value {
            Number::Length(length) => return settled_mm(length),
            Number::Angle(angle) => angle.in_unit(),
            Number::Plain(value) => value,
        };
        // No minus before nothing.
        libm::round(value * 1e4) / 1e4 + 0.0
    }
}

closed_words! {
    /// What would cure a finding that is out. Whether it may be done is for whoever plans the frame.
    Remedy {
        /// Taken down to the metal, paint and dirt off.
        Clean,
        /// Brought round again, without cutting.
        RoundOut,
        /// Opened by a reamer.
        Ream,
        /// Bored or reamed deeper.
        Deepen,
        /// Faced.
        Face,
        /// A spacer put in.
        Spacer,
        /// Chased with a tap or die of the same thread.
        Chase,
        /// Another part.
        OtherPart,
        /// A shim of this wall.
        Shim,
        /// Sleeved, inserted or built up, by a builder.
        Sleeve,
        /// For the frame maker or a qualified builder.
        Refer,
    }
}

/// The part of a place that is cured.
#[derive(Debug, Clone, PartialEq)]
pub enum CuredAt {
    /// All of it.
    All,
    /// One of two members.
    Member(Feature),
    /// The bore at this depth.
    Depth(Length),
}

impl CuredAt {
    /// Whether it is all of the place.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        matches!(self, Self::All)
    }
}

/// One way to cure what is out: by what, to which size, and at which place.
///
/// ```
/// use framegauge::{judge::{Curing, Remedy}, mm};
/// let shim = Curing::by(Remedy::Shim).sized(mm(0.2));
/// assert_eq!((shim.size, shim.at.is_empty()), (Some(mm(0.2)), true));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Curing {
    /// By what.
    pub by: Remedy,
    /// Size of the part or tool that it takes, or the size that results.
    pub size: Option<Length>,
    /// Which part of the place it cures.
    pub at: CuredAt,
}

impl Curing {
    /// A cure of the whole place.
    #[must_use]
    pub const fn by(by: Remedy) -> Self {
        Self {
            by,
            size: None,
            at: CuredAt::All,
        }
    }
    /// The same, with its size.
    #[must_use]
    pub const fn sized(mut self, size: Length) -> Self {
        self.size = Some(size);
        self
    }
    /// The same, of one part of the place.
    #[must_use]
    pub fn only_at(mut self, at: impl Into<CuredAt>) -> Self {
        self.at = at.into();
        self
    }
}

outgoing! {
    /// The verdict on one place.
    ///
    /// As JSON the sentence is `words`, and every number worked out stands by its code under `numbers`.
    ///
    /// ```
    /// use framegauge::{judge::CupDepth, measure::Outcome, standard::Tables};
    /// let cup = CupDepth { bore_depth: vec!["9.0 +/- 0.1 mm".parse().unwrap()], insertion: "12.0 +/- 0.1 mm".parse().unwrap(), room: None, rule: None };
    /// let said = cup.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::NonconformityShown);
    /// assert_eq!(said.millimetres("stands proud"), Some(3.0));
    /// ```
    Verdict(this) {
        /// What was judged.
        place: String,
        /// What is shown: one deciding finding out is enough for out, all within for within, else undecided.
        outcome: Outcome,
        /// The findings that decide.
        findings: Vec<Finding>,
        /// Findings against other published figures, shown beside and not deciding.
        beside: Vec<Finding>,
        /// Numbers worked out.
        worked: Vec<Worked> as numbers: Numbers<'_> = Numbers(&this.worked),
        /// Of two members, which one is off; `None` where there are not two, or nobody asked.
        out: Option<Out>,
        /// What would cure it, the most cautious first; empty when nothing is out.
        cures: Vec<Curing>,
        /// What to measure next, the most telling first; empty when nothing is open.
        next: Vec<NextStep>,
        /// What to mind.
        cautions: Vec<Fact>,
        /// The weakest evidence that the deciding findings rest on.
        weakest: Option<Grade>,
        ;
        /// the verdict in a sentence
        words: String = this.words(),
    }
}

impl Verdict {
    /// A verdict from what was found. The outcome follows from the findings; without any it is undecided.
    ///
    /// ```
    /// use framegauge::{judge::{Finding, Verdict}, measure::Outcome};
    /// let said = Verdict::from_findings("shell", vec![Finding::of(framegauge::judge::BoreFact::CutOnce)]);
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// ```
    #[must_use]
    pub fn from_findings(place: impl Into<String>, findings: Vec<Finding>) -> Self {
        let decide = || findings.iter().filter(|f| f.outcome.is_some());
        let shown = |outcome| decide().any(|f| f.outcome == Some(outcome));
        let outcome = if shown(Outcome::NonconformityShown) {
            Outcome::NonconformityShown
        } else if shown(Outcome::ConformityShown) && !shown(Outcome::Undecided) {
            Outcome::ConformityShown
        } else {
            Outcome::Undecided
        };
        let weakest = decide().filter_map(|f| f.grade).min();
        Self {
            place: place.into(),
            outcome,
            findings,
            beside: Vec::new(),
            worked: Vec::new(),
            out: None,
            cures: Vec::new(),
            next: Vec::new(),
            cautions: Vec::new(),
            weakest,
        }
    }

    pub(crate) fn with(mut self, worked: Worked) -> Self {
        self.worked.push(worked);
        self
    }
    pub(crate) fn then(mut self, next: NextStep) -> Self {
        self.next.push(next);
        self
    }
    pub(crate) fn cured(mut self, by: Curing) -> Self {
        self.cures.push(by);
        self
    }
    pub(crate) fn minding(mut self, caution: impl Into<Fact>) -> Self {
        self.cautions.push(caution.into());
        self
    }

    /// The number of this name.
    #[must_use]
    pub fn number(&self, what: &str) -> Option<&Worked> {
        self.worked.iter().find(|w| w.what == what)
    }
    /// The length of this name in millimetres.
    #[must_use]
    pub fn millimetres(&self, what: &str) -> Option<f64> {
        self.number(what)?.in_mm()
    }
    /// Every source that the deciding findings cite.
    #[must_use]
    pub fn sources(&self) -> Vec<&Citation> {
        self.findings.iter().flat_map(|f| &f.sources).collect()
    }

    /// The verdict held to a least grade of evidence: resting on less, nothing is shown.
    ///
    /// ```
    /// use framegauge::{Grade, judge::CupDepth, measure::Outcome, standard::Tables};
    /// let cup = CupDepth { bore_depth: vec!["9.0 +/- 0.1 mm".parse().unwrap()], insertion: "12.0 +/- 0.1 mm".parse().unwrap(), room: None, rule: None };
    /// assert_eq!(cup.answer(Tables::ours()).unwrap().demanding(Grade::Standard).outcome, Outcome::Undecided);
    /// ```
    #[must_use]
    pub fn demanding(mut self, least: Grade) -> Self {
        if self.outcome != Outcome::Undecided && self.weakest.is_some_and(|g| g < least) {
            self.outcome = Outcome::Undecided;
            self = self.minding(FitFact::WeakerThanAsked { asked: least });
        }
        self
    }
}

/// A reading whose value is above zero.
pub(crate) fn size_reading(field: &'static str, reading: &Reading) -> Result<(), crate::Error> {
    positive(field, reading.value()).map(|_| ())
}

pub(crate) const NOTHING: Length = mm(0.0);

#[cfg(feature = "serde")]
impl crate::fact::Value for CuredAt {
    const SHAPE: Shape = Shape::Text { what: "text" };
    type Out<'a> = String;
    fn out(&self) -> String {
        alloc::string::ToString::to_string(self)
    }
}

#[cfg(feature = "serde")]
goes_out! {
    NextStep(this) {
        /// the question as a fact
        ask: BareOf<Ask> = Bare(&this.ask),
        /// what to measure or do
        measure: String = this.measure(),
        /// what it decides
        why: Text = this.why(),
        /// the tool
        with: String = this.with(),
    }
}

#[cfg(feature = "serde")]
goes_out! {
    Curing(this) {
        /// by what
        by: Remedy = this.by,
        /// size of the part or tool that it takes, or the size that results
        size_mm: Option<f64> = this.size.map(settled_mm),
        /// which part of the place it cures; empty for all of it
        at: String = alloc::string::ToString::to_string(&this.at),
    }
}

/// Numbers by their codes.
#[cfg(feature = "serde")]
struct Numbers<'a>(&'a [Worked]);

#[cfg(feature = "serde")]
impl serde::Serialize for Numbers<'_> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|worked| (worked.code(), worked.number())))
    }
}

#[cfg(feature = "serde")]
told! {
    Remedy => Shape::Word(known_words::<Remedy>),
    Numbers<'_> => Shape::Named(&Shape::Number),
}

#[cfg(feature = "serde")]
goes_out! {}
