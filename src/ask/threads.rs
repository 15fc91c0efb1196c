//! `thread_limits`: what a thread may measure; and the words for threads that all answers share.

use alloc::string::{String, ToString};

use super::said::Said;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::quantity::Length;
use crate::read::{Between, Shape, answer, form, known_words, told, words};
use crate::thread::{
    Designation, Engagement, Grounds, Mates, Member, ThreadLimits as Found, ThreadSize, Turn,
    engagement_group, limits_of_size,
};
use crate::{Error, ErrorKind};

words!(Member);

told! {
    /// a thread size
    ThreadSize: Text,
    /// `clockwise` or `counter-clockwise`
    Turn: Text,
    /// `yes`, `no` or `cannot_tell`
    Mates: Text,
    /// diameter, pitch, form, hand: true where the threads differ in it
    Grounds: Report,
    /// group, short_up_to_mm, normal_up_to_mm, evidence
    Engagement: Report,
}

told! {
    Designation => Shape::Text { what: "a thread" },
    Member => Shape::Word(known_words::<Member>),
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
        member: Option<Member>,
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
        member: Member,
        /// Pitch diameter.
        pitch_diameter_mm: Between,
        /// Minor diameter: at the crests of a hole.
        minor_diameter_mm: Between,
        /// Major diameter: at the crests of a screw.
        major_diameter_mm: Between,
        /// What another way of deriving the same tolerance gives, where the two differ.
        other_pitch_diameter_mm: Option<Between>,
        /// The group of the engagement, where one was given.
        engagement: Option<Engagement>,
    }
}

impl Ask for ThreadLimits {
    type Answer = ThreadLimitsAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let thread = self.thread;
        let stated = thread.class.map(|class| class.member());
        let member = self.member.or(stated).ok_or_else(|| {
            let problem = "the thread states no class, so it may be a hole or a screw";
            let remedy = "write the class, as in `M10x1-6H`, or `\"member\": \"internal\"`";
            Error::new(ErrorKind::Missing, "member", thread, problem, remedy)
        })?;
        let classed = if thread.class.is_some() {
            "member"
        } else {
            "thread"
        };
        let class = thread.class_for(member).said(classed)?;
        let found: Found = limits_of_size(&thread.size, &class).said("thread")?;
        let engagement = self
            .engagement
            .map(|length| engagement_group(&thread.size, length));
        let answer = ThreadLimitsAnswer {
            thread,
            class: class.to_string(),
            member,
            pitch_diameter_mm: found.pitch_diameter.into(),
            minor_diameter_mm: found.minor.into(),
            major_diameter_mm: found.major.into(),
            other_pitch_diameter_mm: found.other_pitch_diameter.map(Between::from),
            engagement: engagement.transpose().said("engagement")?,
        };
        let basis = Basis::of(found.evidence()).at_best(Some(found.grade()));
        Ok(Answered { answer, basis })
    }
}
