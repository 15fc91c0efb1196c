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
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::HeadCup => "cup in head tube",
            Self::CrownRace => "crown race on seat",
            Self::Seatpost => "seatpost in seat tube",
            Self::PressShell => "cup in shell",
            Self::DirectBearing => "bearing in shell",
            Self::IntegratedBearing => "bearing on its seat in the head tube",
            Self::Quill => "quill in steerer",
            Self::DrawnTube => "drawn tube in drawn tube",
            Self::Other => "part in bore",
        }
    }

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

    /// What to mind at this joint whatever the verdict; empty for a joint that carries nobody.
    #[must_use]
    pub const fn caution(self) -> &'static str {
        match self {
            Self::HeadCup | Self::CrownRace | Self::IntegratedBearing | Self::Quill => {
                "steering: must not be ridden before the fit is shown by the parts themselves; the maker's written limits come first; when in doubt, hand over to a qualified workshop"
            }
            Self::Seatpost => {
                "a loose or short post can break the tube and hurt the rider: the marks on post and frame and the maker's written limits come first"
            }
            Self::PressShell | Self::DirectBearing => {
                "the frame and component maker's written limits come first; a laminate shell is not cut or forced without the maker's consent"
            }
            Self::DrawnTube | Self::Other => "",
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
