//! `thread_limits`: what a thread may measure; and the words for threads that all answers share.

use alloc::string::{String, ToString};

use super::said::said_of;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::measure::Limits;
use crate::quantity::{Length, settled_mm};
use crate::read::{Shape, answer, form, told, words};
use crate::thread::{
    Designation, Engagement, Grounds, Mates, Member, ThreadLimits as Found, ThreadSize, Turn,
    engagement_group, limits_of_size,
};
use crate::{Error, ErrorKind};

/// A hole or a screw.
///
/// ```
/// use framegauge::{ask::ThreadMember, read::Tree};
/// let tree: Tree = serde_json::from_str(r#""screw""#).unwrap();
/// assert!(framegauge::read::read_whole::<ThreadMember>(&tree, framegauge::standard::Tables::ours()).unwrap_err()[0].remedy().contains("external"));
/// ```
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
    Turn => Shape::Text { what: "`clockwise` or `counter-clockwise`" },
    Mates => Shape::Text { what: "`yes`, `no` or `cannot_tell`" },
    Grounds => Shape::Report { what: "diameter, pitch, form, hand: true where the threads differ in it" },
    Engagement => Shape::Report { what: "group, short_up_to_mm, normal_up_to_mm, evidence" },
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

form! {
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
