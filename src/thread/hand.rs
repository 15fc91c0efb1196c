//! Hand of a thread, side of the frame, and which way to turn.

use core::ops::Not;

/// Right- or left-hand thread.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Hand {
    /// Tightens clockwise.
    Right,
    /// Tightens counter-clockwise.
    Left,
}

impl Not for Hand {
    type Output = Self;
    fn not(self) -> Self {
        match self {
            Self::Right => Self::Left,
            Self::Left => Self::Right,
        }
    }
}

/// Side of the frame: the drive side carries the chain.
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
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Side {
    /// The chain side, the rider's right.
    Drive,
    /// The other side, the rider's left.
    NonDrive,
}

impl Not for Side {
    type Output = Self;
    fn not(self) -> Self {
        match self {
            Self::Drive => Self::NonDrive,
            Self::NonDrive => Self::Drive,
        }
    }
}

/// Which way to turn, as seen facing that side of the frame from outside.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "kebab-case")
)]
#[strum(serialize_all = "kebab-case")]
pub enum Turn {
    /// With the clock.
    Clockwise,
    /// Against the clock.
    CounterClockwise,
}

impl Not for Turn {
    type Output = Self;
    fn not(self) -> Self {
        match self {
            Self::Clockwise => Self::CounterClockwise,
            Self::CounterClockwise => Self::Clockwise,
        }
    }
}

impl Hand {
    /// The turn that tightens, seen from outside on either side of the frame.
    ///
    /// ```
    /// use framegauge::thread::{Hand, Turn};
    /// assert_eq!(Hand::Left.tighten(), Turn::CounterClockwise);
    /// assert_eq!(Hand::Left.loosen(), Turn::Clockwise);
    /// ```
    #[must_use]
    pub const fn tighten(self) -> Turn {
        match self {
            Self::Right => Turn::Clockwise,
            Self::Left => Turn::CounterClockwise,
        }
    }

    /// The turn that loosens, seen from outside.
    #[must_use]
    pub const fn loosen(self) -> Turn {
        match self {
            Self::Right => Turn::CounterClockwise,
            Self::Left => Turn::Clockwise,
        }
    }
}
