//! What can be done: the steps in the trade's order of caution, and how each stands.

use alloc::string::String;
use alloc::vec::Vec;

use crate::evidence::{Citation, Evidence, Grade, Text};
use crate::judge::{NextStep, Worked};
use crate::thread::ShellThreads;

/// What is wrong.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Damage {
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

/// A kind of step, in the trade's order of caution: the first can always be undone, the last cannot.
///
/// ```
/// use framegauge::rescue::Step;
/// assert!(Step::Clean < Step::Shim && Step::Shim < Step::Retap && Step::Retap < Step::Refer);
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Step {
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

impl Step {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Clean => "clean",
            Self::Free => "turn it out",
            Self::Chase => "chase",
            Self::Gauge => "gauge",
            Self::RoundOut => "press it round",
            Self::AdjustPart => "another part",
            Self::Shim => "shim",
            Self::Compound => "retaining compound",
            Self::Retap => "retap to the next pattern",
            Self::NextSize => "ream to the next size",
            Self::Insert => "thread insert",
            Self::ClampInUnit => "clamp-in unit",
            Self::FillAndRecut => "fill and recut",
            Self::Sleeve => "sleeve",
            Self::Peen => "raise burrs (last resort)",
            Self::Refer => "refer",
        }
    }

    /// What it costs later.
    ///
    /// ```
    /// use framegauge::rescue::Step;
    /// assert_eq!(Step::Gauge.costs(), "nothing");
    /// assert!(Step::NextSize.costs().starts_with("cannot be undone"));
    /// ```
    #[must_use]
    pub const fn costs(self) -> &'static str {
        match self {
            Self::Clean | Self::Gauge | Self::Refer => "nothing",
            Self::Free => "nothing, if it turns the right way",
            Self::Chase => "a little metal: a chaser can only make a loose thread looser",
            Self::RoundOut => "worked metal: it may spring back or crack, and paint flakes",
            Self::AdjustPart => "nothing on the frame; later parts must be of that size too",
            Self::Shim => "has to be fitted again each time; it can creep, and corrodes",
            Self::Compound => {
                "the part comes out with heat only, and the seat must be cleaned back to metal each time"
            }
            Self::Retap => {
                "cannot be undone: the frame has that thread and that hand from now on, and less wall"
            }
            Self::NextSize => {
                "cannot be undone: less wall, and only the larger part fits from now on"
            }
            Self::Insert => "cannot be undone: the next failure leaves a hole larger still",
            Self::ClampInUnit => "the frame takes that kind of unit only, unless it is rebuilt",
            Self::FillAndRecut => {
                "heat in a finished frame and new paint; its durability is not known"
            }
            Self::Sleeve => "heat or bonding in a finished frame, and new paint",
            Self::Peen => "spoils the seat for every better cure, and holds for a while only",
        }
    }

    /// Whether it takes metal off.
    ///
    /// ```
    /// use framegauge::rescue::Step;
    /// assert!(Step::Chase.cuts() && !Step::Clean.cuts());
    /// ```
    #[must_use]
    pub const fn cuts(self) -> bool {
        matches!(
            self,
            Self::Chase
                | Self::Retap
                | Self::NextSize
                | Self::Insert
                | Self::FillAndRecut
                | Self::Sleeve
        )
    }
}

/// How a step stands, by its geometry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Stand {
    /// Nothing measured stands against it. That it is possible does not make it wise.
    Allowed,
    /// What is known forbids it.
    Forbidden,
    /// Cannot be said before something is measured or looked up.
    NeedsMeasurement,
}

/// One step, how it stands and why, what it costs and what to check after.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RescueOption {
    /// Which kind of step.
    pub step: Step,
    /// What exactly, such as the thread of the next pattern; empty when the step says it.
    pub what: String,
    /// How it stands.
    pub stand: Stand,
    /// The geometry or the reason, in words.
    pub why: String,
    /// Numbers behind it.
    pub worked: Vec<Worked>,
    /// What to measure or look up before it.
    pub next: Vec<NextStep>,
    /// What it costs later.
    pub costs: &'static str,
    /// What to mind.
    pub cautions: Vec<Text>,
    /// What to check after.
    pub check_after: Vec<&'static str>,
    /// What the weakest figure behind it is worth; `None` where only own readings stand behind it.
    pub grade: Option<Grade>,
    /// Where its figures were read.
    pub sources: Vec<Citation>,
}

impl RescueOption {
    pub(super) fn new(step: Step, stand: Stand, why: impl Into<String>) -> Self {
        Self {
            step,
            what: String::new(),
            stand,
            why: why.into(),
            worked: Vec::new(),
            next: Vec::new(),
            costs: step.costs(),
            cautions: Vec::new(),
            check_after: Vec::new(),
            grade: None,
            sources: Vec::new(),
        }
    }
    pub(super) fn of(mut self, what: impl Into<String>) -> Self {
        self.what = what.into();
        self
    }
    pub(super) fn with(mut self, worked: Worked) -> Self {
        self.worked.push(worked);
        self
    }
    pub(super) fn needing(mut self, next: NextStep) -> Self {
        self.next.push(next);
        self
    }
    pub(super) fn minding(mut self, caution: impl Into<Text>) -> Self {
        self.cautions.push(caution.into());
        self
    }
    pub(super) fn then_check(mut self, checks: &[&'static str]) -> Self {
        self.check_after.extend_from_slice(checks);
        self
    }
    pub(super) fn resting_on(mut self, evidence: Option<&Evidence>) -> Self {
        if let Some(evidence) = evidence {
            self.grade = Some(
                self.grade
                    .map_or(evidence.worth(), |g| g.weaker(evidence.worth())),
            );
            self.sources.extend(evidence.sources().iter().cloned());
        }
        self
    }
    pub(super) fn graded(mut self, grade: Grade) -> Self {
        self.grade = Some(self.grade.map_or(grade, |g| g.weaker(grade)));
        self
    }

    /// The length of this name in millimetres.
    #[must_use]
    pub fn millimetres(&self, what: &str) -> Option<f64> {
        self.worked.iter().find(|w| w.what == what)?.in_mm()
    }
}

/// What is left to do, in order of caution.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rescue {
    /// What was asked about.
    pub what: String,
    /// What is wrong with it.
    pub damage: Damage,
    /// Every step, the most cautious first; several of one kind where several patterns or sizes are at hand.
    pub options: Vec<RescueOption>,
    /// The shell as it would be after each retap of one side, in the order of these options.
    pub shells_after: Vec<ShellThreads>,
    /// The answer in one sentence.
    pub sentence: String,
}

impl Rescue {
    pub(super) fn of(what: String, damage: Damage, mut options: Vec<RescueOption>) -> Self {
        options.sort_by_key(|o| o.step);
        let mut rescue = Self {
            what,
            damage,
            options,
            shells_after: Vec::new(),
            sentence: String::new(),
        };
        rescue.sentence = rescue.say();
        rescue
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
        let rank = |s: Stand| match s {
            Stand::Allowed => 0,
            Stand::NeedsMeasurement => 1,
            Stand::Forbidden => 2,
        };
        self.steps(step).map(|o| o.stand).min_by_key(|s| rank(*s))
    }

    fn say(&self) -> String {
        let named = |stand: Stand| {
            let mut names: Vec<String> = Vec::new();
            for option in self.options.iter().filter(|o| o.stand == stand) {
                let name = if option.what.is_empty() {
                    String::from(option.step.words())
                } else {
                    alloc::format!("{} ({})", option.step.words(), option.what)
                };
                if !names.contains(&name) {
                    names.push(name);
                }
            }
            names
        };
        let mut text = alloc::format!(
            "In order of caution, possible: {}",
            named(Stand::Allowed).join(", ")
        );
        let open = named(Stand::NeedsMeasurement);
        if !open.is_empty() {
            text.push_str(&alloc::format!("; after measuring: {}", open.join(", ")));
        }
        let not = named(Stand::Forbidden);
        if !not.is_empty() {
            text.push_str(&alloc::format!("; not: {}", not.join(", ")));
        }
        text.push('.');
        text
    }
}

impl core::fmt::Display for Rescue {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        writeln!(f, "{}: {}. {}", self.what, self.damage, self.sentence)?;
        for option in &self.options {
            let stand = match option.stand {
                Stand::Allowed => "possible",
                Stand::Forbidden => "not",
                Stand::NeedsMeasurement => "after measuring",
            };
            write!(f, "- {}", option.step.words())?;
            if !option.what.is_empty() {
                write!(f, ", {}", option.what)?;
            }
            writeln!(f, " [{stand}]: {}", option.why)?;
            for next in &option.next {
                writeln!(f, "    {next}")?;
            }
            if option.stand == Stand::Forbidden {
                continue;
            }
            writeln!(f, "    costs later: {}", option.costs)?;
            for caution in &option.cautions {
                writeln!(f, "    mind: {caution}")?;
            }
        }
        Ok(())
    }
}
