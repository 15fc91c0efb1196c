//! Which way to turn, why, and what the letters on a tap mean.

use super::{Hand, HandPattern, Holds, Side, Turn};
use crate::evidence::Evidence;
use crate::{Error, ErrorKind};

impl Turn {
    /// The turn in words.
    ///
    /// ```
    /// assert_eq!(framegauge::thread::Turn::CounterClockwise.words(), "counter-clockwise");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Clockwise => "clockwise",
            Self::CounterClockwise => "counter-clockwise",
        }
    }
}

impl Hand {
    /// The hand in words.
    ///
    /// ```
    /// assert_eq!(framegauge::thread::Hand::Left.words(), "left-hand");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Right => "right-hand",
            Self::Left => "left-hand",
        }
    }

    /// The hand that a letter on a tap or a part means: `L`, `LH`, `R`, `RH`, and `D` and `G` on French pedals.
    ///
    /// On a tap the letter is the hand of its thread, never the side of the frame: the tap marked L of an English set
    /// goes into the drive side, the rider's right. On a pedal the letter is the crank it belongs to, and its hand is the
    /// same word by luck. Common practice; where in doubt look at the threads: held upright, a right-hand thread rises to
    /// the right.
    ///
    /// # Errors
    /// `Text` for any other mark.
    ///
    /// ```
    /// use framegauge::thread::Hand;
    /// assert_eq!(Hand::from_mark("L").unwrap(), Hand::Left);
    /// assert_eq!(Hand::from_mark("D").unwrap(), Hand::Right); // droite
    /// assert!(Hand::from_mark("X").is_err());
    /// ```
    pub fn from_mark(mark: &str) -> Result<Self, Error> {
        let mark = mark.trim();
        let among = |all: &[&str]| all.iter().any(|word| word.eq_ignore_ascii_case(mark));
        if among(&["L", "LH", "left", "G"]) {
            Ok(Self::Left)
        } else if among(&["R", "RH", "right", "D"]) {
            Ok(Self::Right)
        } else {
            Err(Error::new(
                ErrorKind::Text,
                "mark",
                mark,
                "no mark of a hand",
                "L or R, LH or RH; on old French pedals G and D",
            ))
        }
    }
}

impl Side {
    /// The side in words.
    ///
    /// ```
    /// assert_eq!(framegauge::thread::Side::Drive.words(), "drive side");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Drive => "drive side",
            Self::NonDrive => "non-drive side",
        }
    }
}

/// Why a thread has the hand it has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Reason {
    /// The load turns in the part's seat, and precession tightens this hand.
    PrecessionTightens,
    /// Precession would loosen this hand: the part is held by its torque alone.
    TorqueOnly,
    /// Hardly any load turns here, so either hand would hold.
    LittleTurningLoad,
    /// Pedalling itself screws the part on.
    DriveTightens,
    /// The opposite hand keeps another part from backing out.
    LocksAnother,
}

/// Which way to turn a part of a pattern on a side.
///
/// ```
/// use framegauge::thread::{Side, hand_pattern, turning};
/// let pedal = turning(hand_pattern("pedal").unwrap(), Side::NonDrive).unwrap();
/// assert!(pedal.to_string().contains("loosen clockwise"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Turning {
    /// Code of the pattern.
    pub pattern: &'static str,
    /// The pattern in words.
    pub name: &'static str,
    /// The side; turns are seen facing it from outside.
    pub side: Side,
    /// The hand of the thread.
    pub hand: Hand,
    /// What the hand rests on.
    pub evidence: &'static Evidence,
    /// What other sources say of the hand; empty when none disagrees.
    pub disputed: &'static str,
    /// The turn that tightens a part, and that cuts when the tap enters from this side.
    pub tighten: Turn,
    /// The turn that loosens a part, and that backs the tap out.
    pub loosen: Turn,
    /// Why.
    pub reason: Reason,
}

/// Which way to turn a part of a pattern on a side, as seen facing that side from outside.
///
/// # Errors
/// `NotApplicable` when nothing of the pattern stands on that side.
///
/// ```
/// use framegauge::thread::{Hand, Reason, Side, Turn, hand_pattern, turning};
/// let cup = turning(hand_pattern("bsc").unwrap(), Side::Drive).unwrap();
/// assert_eq!((cup.hand, cup.loosen), (Hand::Left, Turn::Clockwise));
/// let italian = turning(hand_pattern("italian").unwrap(), Side::Drive).unwrap();
/// assert_eq!(italian.reason, Reason::TorqueOnly);
/// assert!(turning(hand_pattern("freewheel").unwrap(), Side::NonDrive).is_err());
/// ```
pub fn turning(pattern: &HandPattern, side: Side) -> Result<Turning, Error> {
    let found = pattern.side(side).ok_or_else(|| {
        Error::new(
            ErrorKind::NotApplicable,
            "side",
            alloc::format!("{} on the {}", pattern.name, side.words()),
            "nothing of this pattern stands on that side",
            "ask for the drive side",
        )
    })?;
    let hand = found.hand;
    let reason = match (pattern.holds, side, hand) {
        (Holds::Sprocket, ..) => Reason::DriveTightens,
        (Holds::Lockring, ..) => Reason::LocksAnother,
        (Holds::Pedal, ..) | (Holds::Cup, Side::Drive, Hand::Left) => Reason::PrecessionTightens,
        (Holds::Cup, Side::Drive, Hand::Right) => Reason::TorqueOnly,
        (Holds::Cup, Side::NonDrive, _) => Reason::LittleTurningLoad,
    };
    Ok(Turning {
        pattern: pattern.code,
        name: pattern.name,
        side,
        hand,
        evidence: found.evidence,
        disputed: found.disputed,
        tighten: hand.tighten(),
        loosen: hand.loosen(),
        reason,
    })
}
