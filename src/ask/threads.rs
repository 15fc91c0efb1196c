//! `thread_limits`, `hand`, `pitch_mismatch`, `three_wire`: what a thread may measure, which way it turns, what it mates.

use alloc::format;
use alloc::string::{String, ToString};

use super::form::{answer, question};
use super::read::{Read, known_words, word};
use super::read::{bare, said_of, words};
use super::shape::{Shape, told};
use super::tree::Tree;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Text;
use crate::measure::{Limits, Reading};
use crate::quantity::{Length, settled_mm};
use crate::standard::Shell;
use crate::thread::{
    BasicDiameters, Designation, Engagement, Grounds, Hand, Mates, Member, Side,
    ThreadLimits as Found, ThreadSize, ThreeWire as Wires, Turn, VISIBLE_DRIFT, engagement_group,
    hand_pattern, limits_of_size, mismatch, turning,
};
use crate::{Error, ErrorKind, Grade};

/// A hole or a screw.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[strum(serialize_all = "snake_case")]
pub enum ThreadMember {
    /// The hole.
    Internal,
    /// The screw.
    External,
}
words!(ThreadMember);

impl From<ThreadMember> for Member {
    fn from(member: ThreadMember) -> Self {
        match member {
            ThreadMember::Internal => Self::Internal,
            ThreadMember::External => Self::External,
        }
    }
}

told! {
    Designation => Shape::Text { what: "a thread" },
    ThreadSize => Shape::Text { what: "a thread size" },
    Hand => Shape::Word(known_words::<Hand>),
    Side => Shape::Word(known_words::<Side>),
    Turn => Shape::Text { what: "`clockwise` or `counter-clockwise`" },
    Mates => Shape::Text { what: "`yes`, `no` or `cannot_tell`" },
    Grounds => Shape::Report { what: "diameter, pitch, form, hand: true where the threads differ in it" },
    Engagement => Shape::Report { what: "group, short_up_to_mm, normal_up_to_mm, evidence" },
    Reading => Shape::Report { what: "value_mm, expanded_uncertainty_mm (k = 2)" },
    Limits => Shape::Report { what: "lower_mm, upper_mm, each `stated`, `none` or `unknown`, and their grade" },
}

answer! {
    /// A pair of limits in millimetres; null where there is none or none is known.
    ///
    /// ```
    /// let ends = framegauge::ask::MinMax { min: Some(9.35), max: None };
    /// assert_eq!(serde_json::to_string(&ends).unwrap(), r#"{"min":9.35,"max":null}"#);
    /// ```
    MinMax {
        /// The least size.
        min: Option<f64>,
        /// The largest size.
        max: Option<f64>,
    }
}

impl From<Limits> for MinMax {
    fn from(limits: Limits) -> Self {
        let end = |bound: crate::measure::Bound| bound.known().map(settled_mm);
        Self {
            min: end(limits.lower()),
            max: end(limits.upper()),
        }
    }
}

question! {
    /// `thread_limits`: what may this thread measure?
    ///
    /// ```
    /// use framegauge::ask::{Ask, Context, ThreadLimits};
    /// let question = ThreadLimits { thread: "M10x1-6H".parse().unwrap(), member: None, engagement: None };
    /// let found = question.answer(&Context::default()).unwrap();
    /// assert_eq!(found.answer.pitch_diameter_mm.min, Some(9.35));
    /// ```
    ThreadLimits {
        /// The thread, with its class where it is known.
        thread: Designation,
        /// Hole or screw; needed where the thread states no class, which then is the usual one.
        member: Option<ThreadMember>,
        /// Length of engagement, to be told which group of ISO 965-1 it belongs to.
        engagement: Option<Length>,
    }
}

answer! {
    /// What a thread may measure.
    ThreadLimitsAnswer {
        /// The thread.
        thread: Designation,
        /// The class that the limits belong to.
        class: String,
        /// Hole (`internal`) or screw (`external`).
        member: String,
        /// Pitch diameter.
        pitch_diameter_mm: MinMax,
        /// Minor diameter: at the crests of a hole.
        minor_diameter_mm: MinMax,
        /// Major diameter: at the crests of a screw.
        major_diameter_mm: MinMax,
        /// What another way of deriving the same tolerance gives, where the two differ.
        other_pitch_diameter_mm: Option<MinMax>,
        /// The group of the engagement, where one was given.
        engagement: Option<Engagement>,
    }
}

impl Ask for ThreadLimits {
    type Answer = ThreadLimitsAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let thread = self.thread;
        let member = match (self.member, thread.class) {
            (Some(member), _) => member.into(),
            (None, Some(class)) => class.member(),
            (None, None) => {
                return Err(Error::new(
                    ErrorKind::Missing,
                    "member",
                    thread,
                    "the thread states no class, so it may be a hole or a screw",
                    "write the class, as in `M10x1-6H`, or `\"member\": \"internal\"`",
                )
                .into());
            }
        };
        let of_thread = |e: Error| said_of(&e, &[], "thread");
        let class = thread.class_for(member).map_err(|e| {
            said_of(
                &e,
                &[],
                if thread.class.is_some() {
                    "member"
                } else {
                    "thread"
                },
            )
        })?;
        let found: Found = limits_of_size(&thread.size, &class).map_err(of_thread)?;
        let engagement = self
            .engagement
            .map(|length| engagement_group(&thread.size, length))
            .transpose()
            .map_err(|e| said_of(&e, &[], "engagement"))?;
        Ok(Answered {
            answer: ThreadLimitsAnswer {
                thread,
                class: class.to_string(),
                member: String::from(match member {
                    Member::Internal => "internal",
                    Member::External => "external",
                }),
                pitch_diameter_mm: found.pitch_diameter.into(),
                minor_diameter_mm: found.minor.into(),
                major_diameter_mm: found.major.into(),
                other_pitch_diameter_mm: found.other_pitch_diameter.map(MinMax::from),
                engagement,
            },
            basis: Basis::of(found.evidence()).at_best(Some(found.grade())),
        })
    }
}

question! {
    /// `hand`: which hand is the thread on this side, and which way does it turn?
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, HandOf}, thread::{Hand, Side}};
    /// let question = HandOf { shell: Some("bsc".into()), pattern: None, side: Side::Drive };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.hand, Hand::Left);
    /// ```
    HandOf {
        /// The shell: a hand pattern such as `bsc`, or the code of a row, a shop's own included.
        shell: Option<String>,
        /// Another place of known hand: `pedal`, `freewheel`, `track_lockring`.
        pattern: Option<String>,
        /// The side of the bicycle, as the rider sits: `drive` is the right-hand side.
        side: Side,
    }
}

answer! {
    /// Which way a thread turns. Directions are seen facing that side from outside.
    HandAnswer {
        /// What was asked about.
        of: Text,
        /// The side.
        side: Side,
        /// The hand of the thread.
        hand: Hand,
        /// Which way tightens.
        tighten: Turn,
        /// Which way loosens.
        loosen: Turn,
        /// Why it is so.
        why: &'static str,
        /// What a tap for it is marked.
        tap_marked: &'static str,
    }
}

impl Ask for HandOf {
    type Answer = HandAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (name, field) = match (&self.shell, &self.pattern) {
            (Some(name), None) => (name, "shell"),
            (None, Some(name)) => (name, "pattern"),
            (Some(_), Some(name)) => {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "pattern",
                    name,
                    "a shell and a pattern are two questions",
                    "state one of them",
                )
                .into());
            }
            (None, None) => return Err(super::from_tree::missing("shell").into()),
        };
        let marked = |hand| match hand {
            Hand::Left => "LH",
            Hand::Right => "RH or unmarked",
        };
        let known = match hand_pattern(name) {
            Ok(pattern) => pattern,
            Err(error) if field == "pattern" => return Err(said_of(&error, &[], field).into()),
            Err(error) => {
                // A row of the tables or of the shop that states its hands.
                let row = context
                    .tables
                    .find::<Shell>(name)
                    .map_err(|_| said_of(&error, &[], field))?;
                let fact = row.hand_fact(self.side).filter(|fact| fact.is_known());
                let (Some(hand), Some(evidence)) =
                    (row.hand(self.side), fact.and_then(crate::Fact::evidence))
                else {
                    return Err(Error::new(
                        ErrorKind::NotTabulated,
                        field,
                        name,
                        format!("the row of {} states no hand for that side", row.name),
                        "look at the thread: a right-hand thread rises to the right",
                    )
                    .into());
                };
                return Ok(Answered {
                    answer: HandAnswer {
                        of: row.name.clone(),
                        side: self.side,
                        hand,
                        tighten: hand.tighten(),
                        loosen: hand.loosen(),
                        why: "as the row of the table states it",
                        tap_marked: marked(hand),
                    },
                    basis: Basis::graded(evidence.worth()).citing(evidence.sources()),
                });
            }
        };
        let turn = turning(known, self.side).map_err(|e| said_of(&e, &[], "side"))?;
        let mut basis = Basis::of(turn.evidence);
        if let Some(side) = known
            .side(self.side)
            .filter(|side| !side.disputed.is_empty())
        {
            basis = basis.noting(format!("disputed: another source {}", side.disputed));
        }
        Ok(Answered {
            answer: HandAnswer {
                of: known.name.into(),
                side: self.side,
                hand: turn.hand,
                tighten: turn.tighten,
                loosen: turn.loosen,
                why: turn.reason.words(),
                tap_marked: marked(turn.hand),
            },
            basis,
        })
    }
}

question! {
    /// `pitch_mismatch`: do these two threads mate, and if not, when does it show and when does it bind?
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, PitchMismatch}, thread::Mates};
    /// let read = |text: &str| text.parse().unwrap();
    /// let question = PitchMismatch { a: read("M35x1"), b: read("1.370 in x 24 tpi BSC"), visible: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.mates, Mates::No);
    /// ```
    PitchMismatch {
        /// One thread.
        a: Designation,
        /// The other thread.
        b: Designation,
        /// Drift that the eye sees against a gauge leaf; 0.15 mm unless stated (common practice).
        visible: Option<Length>,
    }
}

answer! {
    /// Two threads against each other.
    PitchMismatchAnswer {
        /// Whether they mate.
        mates: Mates,
        /// On which ground they do not.
        grounds: Grounds,
        /// Drift of the pitches a turn.
        drift_per_turn_mm: f64,
        /// Turns until the drift is seen; null when the pitches are the same.
        turns_until_visible: Option<f64>,
        /// Turns until it binds in the wider thread as the hole; null when the pitches are the same.
        turns_until_binding: Option<f64>,
        /// How far the pitch diameters lie apart at the least.
        pitch_diameters_apart_min_mm: f64,
        /// How far the pitch diameters lie apart at the most.
        pitch_diameters_apart_max_mm: f64,
        /// The wider thread, where one is.
        wider: Option<ThreadSize>,
        /// The same in a sentence.
        words: String,
    }
}

impl Ask for PitchMismatch {
    type Answer = PitchMismatchAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let found = mismatch(&self.a, &self.b);
        let visible = found
            .drift
            .turns_until_visible(self.visible.unwrap_or(VISIBLE_DRIFT))
            .map_err(|e| said_of(&e, &[], "visible"))?;
        // A thousandth of a turn is finer than anybody counts.
        let three = |value: f64| libm::round(value * 1e3) / 1e3 + 0.0;
        let grade = [self.a, self.b]
            .iter()
            .filter_map(|thread| BasicDiameters::of(&thread.size).ok())
            .map(|basic| basic.evidence().worth())
            .min();
        let basis = Basis::reckoned("drift = difference of the pitches; it binds when the drift times cot(half flank angle) uses up the difference of the pitch diameters")
            .at_best(grade)
            .citing(
                [self.a, self.b]
                    .iter()
                    .filter_map(|thread| BasicDiameters::of(&thread.size).ok())
                    .flat_map(|basic| basic.evidence().sources()),
            );
        Ok(Answered {
            answer: PitchMismatchAnswer {
                mates: found.mates,
                grounds: found.grounds,
                drift_per_turn_mm: settled_mm(found.drift.per_turn),
                turns_until_visible: visible.map(three),
                turns_until_binding: found.turns_until_binding.map(three),
                pitch_diameters_apart_min_mm: settled_mm(found.apart_min),
                pitch_diameters_apart_max_mm: settled_mm(found.apart_max),
                wider: found.wider,
                words: found.to_string(),
            },
            basis,
        })
    }
}

question! {
    /// `three_wire`: which wire, and what pitch diameter does the size over wires mean?
    ///
    /// ```
    /// use framegauge::ask::{Ask, Context, ThreeWire};
    /// let question = ThreeWire { thread: "M10x1".parse().unwrap(), wire: None, over_wires: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.best_wire_mm, 0.57735);
    /// ```
    ThreeWire {
        /// The thread of the screw.
        thread: Designation,
        /// Diameter of the wires; the best wire unless stated.
        wire: Option<Length>,
        /// Size measured over the wires; without it the size over wires of the basic pitch diameter is told.
        over_wires: Option<Reading>,
    }
}

answer! {
    /// Three wires on a screw thread.
    ThreeWireAnswer {
        /// The wire that touches at the pitch line.
        best_wire_mm: f64,
        /// Wires that rest on the flanks and stand out of the crests.
        usable_wires_mm: MinMax,
        /// The wire that the rest is told for.
        wire_mm: f64,
        /// Size over these wires at the basic pitch diameter; null where the form is not known well enough.
        over_wires_at_basic_mm: Option<f64>,
        /// The pitch diameter that was measured.
        pitch_diameter: Option<Reading>,
    }
}

impl Ask for ThreeWire {
    type Answer = ThreeWireAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let wires = Wires::of(&self.thread.size).map_err(|e| said_of(&e, &[], "thread"))?;
        let wire = self.wire.unwrap_or_else(|| wires.best_wire());
        let names = [("over wires", "over_wires"), ("wire", "wire")];
        let basic = BasicDiameters::of(&self.thread.size).ok();
        let over = match &basic {
            Some(basic) => Some(
                wires
                    .over_wires(basic.pitch_diameter, wire)
                    .map_err(|e| said_of(&e, &names, "wire"))?,
            ),
            None => None,
        };
        let measured = self
            .over_wires
            .map(|reading| wires.pitch_diameter_reading(&reading, wire))
            .transpose()
            .map_err(|e| said_of(&e, &names, "over_wires"))?;
        let usable = wires
            .usable_wires()
            .map_err(|e| bare(&e).within("thread"))?;
        let mut basis = Basis::reckoned("d2 = M - w (1 + 1/sin a) + P/2 cot a, a the half flank angle")
            .noting("the helix is left out, as for threads of one start; wires and force add their own error");
        if let Some(basic) = &basic {
            basis = basis
                .at_best(Some(basic.evidence().worth()))
                .citing(basic.evidence().sources());
        }
        Ok(Answered {
            answer: ThreeWireAnswer {
                best_wire_mm: settled_mm(wires.best_wire()),
                usable_wires_mm: usable.into(),
                wire_mm: settled_mm(wire),
                over_wires_at_basic_mm: over.map(settled_mm),
                pitch_diameter: measured,
            },
            basis: basis.at_best(Some(Grade::Derived)),
        })
    }
}
