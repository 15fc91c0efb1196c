//! `fit_limits` and `conform`: limits of a size, and readings held against them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::said::{named, said_of};
use super::told::answer;
use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::{Evidence, Text};
use crate::fit::{FitClass, SizeClass, iso286_sources, limit_deviations};
use crate::judge::{FigureName, sizes_against};
use crate::measure::{
    Able, Decision, DecisionRule, Limits, Measures, Outcome, Reading, able, instruments,
};
use crate::quantity::{Length, mm, not_negative, settled_mm};
use crate::read::{Shape, form, known_words, words};
use crate::thread::{Designation, limits_of_size};
use crate::{Error, ErrorKind};

/// A deviation as tables print it: whole micrometres without a decimal point, else tenths.
///
/// ```
/// use framegauge::ask::Micrometres;
/// assert_eq!(serde_json::to_string(&[Micrometres(-33.0), Micrometres(12.5)]).unwrap(), "[-33,12.5]");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Micrometres(pub f64);

impl serde::Serialize for Micrometres {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "deviations of ISO 286 are below a metre"
        )]
        let whole = self.0 as i64;
        #[expect(clippy::cast_precision_loss, reason = "as above")]
        if whole as f64 == self.0 {
            serializer.serialize_i64(whole)
        } else {
            serializer.serialize_f64(self.0)
        }
    }
}

told! {
    Micrometres => Shape::Number,
    FitClass => Shape::Text { what: "a tolerance class" },
    Outcome => Shape::Word(known_words::<Outcome>),
    Decision => Shape::Report { what: "outcome, why, conformance_probability, margin_mm, rule, grade" },
    Able => Shape::Report { what: "instruments that can decide these limits, those that cannot, and words" },
}

form! {
    /// `fit_limits`: deviations and limits of size of an ISO 286 class.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, FitLimits}, mm};
    /// let question = FitLimits { nominal: mm(42.0), class: "N7".parse().unwrap() };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.min_mm, 41.967);
    /// ```
    FitLimits {
        /// Nominal size.
        nominal: Length,
        /// Tolerance class: capitals are holes, small letters shafts.
        class: FitClass,
    }
}

answer! {
    /// Deviations and limits of size.
    FitLimitsAnswer {
        /// Lower deviation in micrometres.
        lower_um: Micrometres,
        /// Upper deviation in micrometres.
        upper_um: Micrometres,
        /// Least size.
        min_mm: f64,
        /// Largest size.
        max_mm: f64,
        /// Nominal size.
        nominal_mm: f64,
        /// The class.
        class: FitClass,
    }
}

impl Ask for FitLimits {
    type Answer = FitLimitsAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let names = [
            ("class", "class"),
            ("letter", "class"),
            ("grade", "class"),
            ("deviation", "class"),
        ];
        let found = limit_deviations(self.nominal, self.class)
            .map_err(|e| said_of(&e, &names, "nominal"))?;
        let limits = found
            .around(self.nominal)
            .map_err(|e| said_of(&e, &[], "nominal"))?;
        let end = |bound: Option<Length>| bound.map(settled_mm).unwrap_or_default();
        Ok(Answered {
            answer: FitLimitsAnswer {
                lower_um: Micrometres(found.lower_um()),
                upper_um: Micrometres(found.upper_um()),
                min_mm: end(limits.lower().known()),
                max_mm: end(limits.upper().known()),
                nominal_mm: settled_mm(self.nominal),
                class: self.class,
            },
            basis: Basis::graded(crate::Grade::Standard).with_tables(&iso286_sources()),
        })
    }
}

/// Which diameter of a thread was read.
///
/// ```
/// use framegauge::{ask::ThreadDiameter, read::Tree};
/// let tree: Tree = serde_json::from_str(r#""pitch""#).unwrap();
/// assert_eq!(framegauge::read::read_whole::<ThreadDiameter>(&tree, framegauge::standard::Tables::ours()).unwrap(), ThreadDiameter::Pitch);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[strum(serialize_all = "snake_case")]
pub enum ThreadDiameter {
    /// Over the crests of a screw.
    Major,
    /// Over wires, or by a thread gauge.
    Pitch,
    /// Over the crests of a hole.
    Minor,
}
words!(ThreadDiameter);

form! {
    /// `conform`: readings of one size held against its limits. One of `limits`, `class`, `thread` and `figure` says
    /// which limits.
    ///
    /// ```
    /// use framegauge::{ask::Question, ask::Context};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"conform","readings":["45.80 +/- 0.05 mm"],"limits":"45.95 mm to 46.00 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["outcome"], "nonconformity_shown");
    /// ```
    Conform {
        /// The readings; the worst one decides.
        readings: Vec<Reading>,
        /// Limits of your own.
        limits: Option<Limits>,
        /// Limits of an ISO 286 class.
        class: Option<SizeClass>,
        /// Limits of a thread with its class.
        thread: Option<Designation>,
        /// Which diameter of that thread was read.
        diameter: Option<ThreadDiameter>,
        /// Limits of a row of the tables.
        figure: Option<FigureName>,
        /// What is measured, to be told which instruments could decide.
        measures: Option<Measures>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// Readings held against limits.
    ConformAnswer {
        /// What is shown.
        outcome: Outcome,
        /// In a sentence.
        words: String,
        /// The limits.
        limits: Limits,
        /// The smallest and the largest reading.
        readings: Vec<Reading>,
        /// The decision on the worst reading.
        decision: Option<Decision>,
        /// Which instruments could decide these limits; null where `measures` was not said.
        instruments: Option<Able>,
    }
}

/// Limits with whose they are.
struct Held {
    limits: Limits,
    owner: Text,
    basis: Basis,
}

impl Conform {
    fn held(&self, context: &Context<'_>) -> Result<Held, Error> {
        let stated = [
            ("limits", self.limits.is_some()),
            ("class", self.class.is_some()),
            ("thread", self.thread.is_some()),
            ("figure", self.figure.is_some()),
        ];
        let mut named = stated.iter().filter(|(_, is)| *is).map(|(name, _)| *name);
        let Some(first) = named.next() else {
            return Err(crate::read::missing("limits"));
        };
        if let Some(second) = named.next() {
            return Err(Error::new(
                ErrorKind::Contradiction,
                second,
                "",
                format!("`{first}` states limits already"),
                "state one of limits, class, thread, figure",
            ));
        }
        if let Some(class) = self.class {
            return Ok(Held {
                limits: class.limits().map_err(|e| said_of(&e, &[], "class"))?,
                owner: format!("{class}, ISO 286-1").into(),
                basis: Basis::graded(crate::Grade::Standard).with_tables(&iso286_sources()),
            });
        }
        if let Some(thread) = self.thread {
            let class = thread.class.ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    "thread",
                    thread,
                    "the thread states no class",
                    "write it, as in `M10x1-6H`",
                )
            })?;
            let found =
                limits_of_size(&thread.size, &class).map_err(|e| said_of(&e, &[], "thread"))?;
            let limits = match self.diameter {
                Some(ThreadDiameter::Major) => found.major,
                Some(ThreadDiameter::Pitch) => found.pitch_diameter,
                Some(ThreadDiameter::Minor) => found.minor,
                None => return Err(crate::read::missing("diameter")),
            };
            return Ok(Held {
                limits,
                owner: format!("{thread}").into(),
                basis: Basis::of(found.evidence()).at_best(Some(limits.grade())),
            });
        }
        if let Some(name) = &self.figure {
            let (limits, owner, evidence) = name.held(context.tables())?;
            return Ok(Held {
                limits,
                owner,
                basis: evidence.map_or_else(|| Basis::graded(limits.grade()), of_row),
            });
        }
        let limits = self.limits.ok_or_else(|| crate::read::missing("limits"))?;
        Ok(Held {
            limits,
            owner: "your own limits".into(),
            basis: Basis::graded(limits.grade()),
        })
    }
}

fn of_row(evidence: &Evidence) -> Basis {
    Basis::graded(evidence.worth())
        .by(String::from(evidence.formula()))
        .noting(String::from(evidence.note()))
        .citing(evidence.sources())
}

impl Ask for Conform {
    type Answer = ConformAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        if self.diameter.is_some() && self.thread.is_none() {
            return Err(crate::read::missing("thread").into());
        }
        let held = self.held(context)?;
        if self.readings.is_empty() {
            return Err(crate::read::missing("readings").into());
        }
        // Limits of one's own may be about a deviation; those of a class, a thread or a row are about a size unless they
        // reach below zero.
        let lower = held.limits.lower().known();
        if self.limits.is_none() && lower.is_none_or(|lower| lower >= mm(0.0)) {
            for (index, reading) in self.readings.iter().enumerate() {
                not_negative("readings", reading.value())
                    .map_err(|e| named(&e, format!("readings[{index}]")))?;
            }
        }
        let rule = self.rule.unwrap_or_default();
        let found = sizes_against(
            "size",
            &self.readings,
            &held.limits,
            &held.owner,
            None,
            rule,
        );
        Ok(Answered {
            answer: ConformAnswer {
                outcome: found.outcome.unwrap_or(Outcome::Undecided),
                words: found.words,
                limits: held.limits,
                readings: found.readings,
                decision: found.decision,
                instruments: self
                    .measures
                    .map(|measures| able(instruments(), &held.limits, measures, rule)),
            },
            basis: held.basis,
        })
    }
}
