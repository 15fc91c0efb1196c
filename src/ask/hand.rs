//! `hand`: which hand a thread is, and which way it turns.

use alloc::format;
use alloc::string::String;

use super::said::said_of;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Text;
use crate::read::{answer, form};
use crate::standard::Shell;
use crate::thread::{Hand, Side, Turn, hand_pattern, turning};
use crate::{Error, ErrorKind};

form! {
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
            (None, None) => return Err(crate::read::missing("shell").into()),
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
