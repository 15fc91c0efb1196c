//! The joints of a frame: which two parts, and how each is meant to hold.

use super::Hold;

/// A place where one part sits in or on another.
///
/// ```
/// use framegauge::standard::{Hold, Joint};
/// assert_eq!(Joint::CrownRace.hold(), Hold::Press);
/// assert_eq!(Joint::IntegratedBearing.hold(), Hold::Slip);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Joint {
    /// Headset cup in the head tube.
    HeadCup,
    /// Crown race on its seat.
    CrownRace,
    /// Seatpost in the seat tube.
    Seatpost,
    /// Cup pressed into a shell.
    PressShell,
    /// Bearing pressed straight into a shell.
    DirectBearing,
    /// Headset bearing dropped on a seat in the frame.
    IntegratedBearing,
    /// Quill in a steerer.
    Quill,
    /// A drawn tube in another, as it is supplied.
    DrawnTube,
    /// Any other.
    Other,
}

impl Joint {
    /// How the joint is meant to hold. A shell's own row goes before this, see `judge::Fit`.
    #[must_use]
    pub const fn hold(self) -> Hold {
        match self {
            Self::HeadCup | Self::CrownRace | Self::PressShell | Self::DirectBearing => Hold::Press,
            Self::Seatpost
            | Self::IntegratedBearing
            | Self::Quill
            | Self::DrawnTube
            | Self::Other => Hold::Slip,
        }
    }
}

/// What a published window was written for.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    Default,
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
pub enum SpeaksOf {
    /// Bicycle frames.
    #[default]
    Bicycle,
    /// Machined housings: shown in the tables, never applied to a tube.
    Machining,
}
