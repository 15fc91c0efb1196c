//! `hand`: which hand a thread is, and which way it turns.

use alloc::format;
use alloc::string::String;

use super::said::{ONE, Said, second};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Text;
use crate::read::{answer, form};
use crate::say::reckoned;
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

impl HandOf {
    fn told(&self, of: impl Into<Text>, hand: Hand, why: &'static str) -> HandAnswer {
        HandAnswer {
            of: of.into(),
            side: self.side,
            hand,
            tighten: hand.tighten(),
            loosen: hand.loosen(),
            why,
            tap_marked: match hand {
                Hand::Left => "LH",
                Hand::Right => "RH or unmarked",
            },
        }
    }

    /// A row of the tables or of the shop that states its hands.
    fn row(&self, row: &Shell) -> Result<Answered<HandAnswer>, Error> {
        let fact = row.hand_fact(self.side).filter(|fact| fact.is_known());
        let hand = row.hand(self.side);
        let known = hand.zip(fact.and_then(crate::Fact::evidence));
        let (hand, evidence) = known.ok_or_else(|| {
            let problem = format!("the row of {} states no hand for that side", row.name);
            let remedy = "look at the thread: a right-hand thread rises to the right";
            Error::new(ErrorKind::NotTabulated, "shell", &row.code, problem, remedy)
        })?;
        let answer = self.told(row.name.clone(), hand, reckoned::HAND_OF_ROW);
        let basis = Basis::graded(evidence.worth()).citing(evidence.sources());
        Ok(Answered { answer, basis })
    }
}

impl Ask for HandOf {
    type Answer = HandAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let pattern = match (&self.shell, &self.pattern) {
            (Some(name), None) => match (hand_pattern(name), context.tables.find::<Shell>(name)) {
                (Ok(pattern), _) => pattern,
                (_, Ok(row)) => return Ok(self.row(row)?),
                (Err(unknown), _) => return Err(unknown.named("shell").into()),
            },
            (None, Some(name)) => hand_pattern(name).said("pattern")?,
            (None, None) => return Err(crate::read::missing("shell").into()),
            (Some(_), Some(_)) => {
                let problem = "a shell and a pattern are two questions";
                return Err(second("pattern", problem, ONE).into());
            }
        };
        let turn = turning(pattern, self.side).said("side")?;
        let answer = self.told(pattern.name, turn.hand, turn.reason.words());
        let mut basis = Basis::of(turn.evidence);
        if !turn.disputed.is_empty() {
            basis = basis.noting(format!("disputed: another source {}", turn.disputed));
        }
        Ok(Answered { answer, basis })
    }
}
