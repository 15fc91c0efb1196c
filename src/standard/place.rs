//! The places of a frame where a part is pressed, screwed, slid or bolted: one list, one code each.
//!
//! The code is the path of the place in a frame sheet. What is read, identified, judged, planned, recorded or drawn says by
//! it where it is.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;
use core::str::FromStr;

use super::End;
use crate::evidence::Text;
use crate::thread::Side;
use crate::{Error, ErrorKind};

/// Which end of a head tube.
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
pub enum HeadTubeEnd {
    /// Towards the stem.
    Upper,
    /// Towards the fork crown.
    Lower,
}

/// Left or right of the bicycle, as the rider sits on it.
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
pub enum LeftRight {
    /// The rider's left, the non-drive side.
    Left,
    /// The rider's right, the drive side.
    Right,
}

/// A place of a frame or fork. [`End::Both`] and `None` stand for an end or side that is not said.
///
/// ```
/// use framegauge::standard::{End, Place};
/// let place: Place = "axle.rear".parse().unwrap();
/// assert_eq!(place, Place::Axle(End::Rear));
/// assert_eq!(place.to_string(), "axle.rear");
/// assert_eq!(place.words(), "rear axle");
/// assert!("axel.rear".parse::<Place>().unwrap_err().remedy().contains("axle.rear"));
/// ```
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Place {
    /// The bore of the seat tube.
    SeatTube,
    /// The slot and ears of the seat clamp.
    SeatTubeSlot,
    /// A seatpost: a part, not a place of the frame, identified like one.
    Seatpost,
    /// The bottom-bracket shell as a whole: width, bore.
    Shell,
    /// One threaded side of the shell.
    ShellSide(Side),
    /// One face of the shell.
    ShellFace(Side),
    /// The seat in one end of the head tube.
    HeadTube(HeadTubeEnd),
    /// The face of one end of the head tube.
    HeadFace(HeadTubeEnd),
    /// The crown-race seat of the fork.
    Crown,
    /// The steerer.
    Steerer,
    /// The thread or hole of the axle.
    Axle(End),
    /// The faces of the dropouts, or one of them.
    Dropout(End, Option<Side>),
    /// The derailleur hanger.
    Hanger(End),
    /// A boss, by its name.
    Boss(Text),
    /// The pedal thread of a crank.
    Pedal(Option<LeftRight>),
    /// A disc-brake mount.
    Brake(End),
    /// The underside of a flat mount, where the bolt heads sit.
    BrakeUnderside(End),
    /// The chain-guide tabs around the shell.
    Iscg,
    /// A thread of which nothing else is said.
    #[default]
    Thread,
}

/// Every place that can be named without more being said; a boss has a name of its own besides.
const PLACES: [(&str, Place); 38] = [
    ("seat_tube", Place::SeatTube),
    ("seat_tube.slot", Place::SeatTubeSlot),
    ("seatpost", Place::Seatpost),
    ("shell", Place::Shell),
    ("shell.drive", Place::ShellSide(Side::Drive)),
    ("shell.non_drive", Place::ShellSide(Side::NonDrive)),
    ("shell.drive.face", Place::ShellFace(Side::Drive)),
    ("shell.non_drive.face", Place::ShellFace(Side::NonDrive)),
    ("head_tube.upper", Place::HeadTube(HeadTubeEnd::Upper)),
    ("head_tube.lower", Place::HeadTube(HeadTubeEnd::Lower)),
    ("head_tube.upper.face", Place::HeadFace(HeadTubeEnd::Upper)),
    ("head_tube.lower.face", Place::HeadFace(HeadTubeEnd::Lower)),
    ("crown", Place::Crown),
    ("steerer", Place::Steerer),
    ("axle.front", Place::Axle(End::Front)),
    ("axle.rear", Place::Axle(End::Rear)),
    ("axle", Place::Axle(End::Both)),
    ("dropout.front", Place::Dropout(End::Front, None)),
    (
        "dropout.front.drive",
        Place::Dropout(End::Front, Some(Side::Drive)),
    ),
    (
        "dropout.front.non_drive",
        Place::Dropout(End::Front, Some(Side::NonDrive)),
    ),
    ("dropout.rear", Place::Dropout(End::Rear, None)),
    (
        "dropout.rear.drive",
        Place::Dropout(End::Rear, Some(Side::Drive)),
    ),
    (
        "dropout.rear.non_drive",
        Place::Dropout(End::Rear, Some(Side::NonDrive)),
    ),
    ("dropout", Place::Dropout(End::Both, None)),
    ("hanger.front", Place::Hanger(End::Front)),
    ("hanger.rear", Place::Hanger(End::Rear)),
    ("hanger", Place::Hanger(End::Both)),
    ("pedal.left", Place::Pedal(Some(LeftRight::Left))),
    ("pedal.right", Place::Pedal(Some(LeftRight::Right))),
    ("pedal", Place::Pedal(None)),
    ("brake.front", Place::Brake(End::Front)),
    ("brake.rear", Place::Brake(End::Rear)),
    ("brake", Place::Brake(End::Both)),
    ("brake.front.underside", Place::BrakeUnderside(End::Front)),
    ("brake.rear.underside", Place::BrakeUnderside(End::Rear)),
    ("brake.underside", Place::BrakeUnderside(End::Both)),
    ("iscg", Place::Iscg),
    ("thread", Place::Thread),
];

impl Place {
    /// Every place that needs no name, in the order in which a frame is gone over.
    ///
    /// ```
    /// use framegauge::standard::Place;
    /// assert!(Place::all().any(|place| place == Place::Crown));
    /// ```
    pub fn all() -> impl Iterator<Item = Self> {
        PLACES.iter().map(|(_, place)| place.clone())
    }

    fn row(&self) -> Option<&'static str> {
        PLACES
            .iter()
            .find(|(_, place)| place == self)
            .map(|(code, _)| *code)
    }

    /// Its code.
    ///
    /// ```
    /// use framegauge::{standard::Place, thread::Side};
    /// assert_eq!(Place::ShellFace(Side::Drive).code(), "shell.drive.face");
    /// ```
    #[must_use]
    pub fn code(&self) -> Text {
        match (self.row(), self) {
            (Some(code), _) => Cow::Borrowed(code),
            (None, Self::Boss(name)) => Cow::Owned(format!("boss.{name}")),
            (None, _) => Cow::Borrowed("place"),
        }
    }

    /// The end of the bicycle that it belongs to; `Both` where it belongs to none or none is said.
    ///
    /// ```
    /// use framegauge::standard::{End, Place};
    /// assert_eq!(Place::Brake(End::Rear).end(), End::Rear);
    /// assert_eq!(Place::Shell.end(), End::Both);
    /// ```
    #[must_use]
    pub const fn end(&self) -> End {
        match self {
            Self::Axle(end)
            | Self::Dropout(end, _)
            | Self::Hanger(end)
            | Self::Brake(end)
            | Self::BrakeUnderside(end) => *end,
            _ => End::Both,
        }
    }

    /// Whether what is asked there is which thread it is.
    #[must_use]
    pub const fn is_thread(&self) -> bool {
        matches!(
            self,
            Self::Axle(_) | Self::Hanger(_) | Self::Boss(_) | Self::Pedal(_) | Self::Thread
        )
    }

    /// The place that this one is a part of: the shell for its sides and faces, an end of the head tube for its face.
    ///
    /// ```
    /// use framegauge::{standard::Place, thread::Side};
    /// assert_eq!(Place::ShellFace(Side::Drive).whole(), Place::Shell);
    /// assert_eq!(Place::Crown.whole(), Place::Crown);
    /// ```
    #[must_use]
    pub fn whole(&self) -> Self {
        match self {
            Self::ShellSide(_) | Self::ShellFace(_) => Self::Shell,
            Self::HeadFace(end) => Self::HeadTube(*end),
            Self::BrakeUnderside(end) => Self::Brake(*end),
            Self::SeatTubeSlot => Self::SeatTube,
            other => other.clone(),
        }
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.code())
    }
}

/// Names under which places were asked for before they had one list.
const OLDER: [(&str, Place); 11] = [
    ("head_tube_upper", Place::HeadTube(HeadTubeEnd::Upper)),
    ("head_tube_lower", Place::HeadTube(HeadTubeEnd::Lower)),
    ("crown_seat", Place::Crown),
    ("axle_thread", Place::Axle(End::Both)),
    ("hanger_thread", Place::Hanger(End::Both)),
    ("brake_mount_front", Place::Brake(End::Front)),
    ("brake_mount_rear", Place::Brake(End::Rear)),
    ("brake_mount", Place::Brake(End::Both)),
    ("dropout_front", Place::Dropout(End::Front, None)),
    ("dropout_rear", Place::Dropout(End::Rear, None)),
    ("any_thread", Place::Thread),
];

impl FromStr for Place {
    type Err = Error;

    /// Reads the code of a place, in any case.
    fn from_str(text: &str) -> Result<Self, Error> {
        let wanted = text.trim().to_ascii_lowercase();
        if let Some((.., place)) = PLACES.iter().find(|(code, ..)| *code == wanted) {
            return Ok(place.clone());
        }
        if let Some((_, place)) = OLDER.iter().find(|(code, _)| *code == wanted) {
            return Ok(place.clone());
        }
        if let Some(name) = wanted.strip_prefix("boss.") {
            return boss(name);
        }
        let near = super::row::nearest(&mut PLACES.iter().map(|(code, ..)| *code), &wanted);
        Err(Error::new(
            ErrorKind::UnknownName,
            "place",
            text,
            "no such place",
            format!("nearest: {}; a boss is `boss.NAME`", near.join(", ")),
        ))
    }
}

/// A boss, by a name of letters, digits and underscores; other characters become underscores.
fn boss(name: &str) -> Result<Place, Error> {
    // A hostile name must not cost more than a real one. Small letters first: one capital may become two characters.
    let plain: String = name
        .trim()
        .chars()
        .flat_map(char::to_lowercase)
        .map(|c| if c.is_alphanumeric() { c } else { '_' })
        .take(60)
        .collect();
    if plain.chars().all(|c| c == '_') {
        return Err(Error::new(
            ErrorKind::Missing,
            "place",
            name,
            "a boss without a name",
            "write e.g. `boss.down_tube_1`",
        ));
    }
    Ok(Place::Boss(Cow::Owned(plain)))
}

impl Place {
    /// A boss of this name.
    ///
    /// # Errors
    /// `Missing` for a name without a letter or digit.
    ///
    /// ```
    /// use framegauge::standard::Place;
    /// assert_eq!(Place::boss("Down tube, upper").unwrap().to_string(), "boss.down_tube__upper");
    /// ```
    pub fn boss(name: &str) -> Result<Self, Error> {
        boss(name)
    }

    /// The codes of all places that need no name.
    #[must_use]
    pub fn codes() -> Vec<String> {
        PLACES
            .iter()
            .map(|(code, ..)| (*code).to_string())
            .collect()
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Place {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for Place {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?
            .parse()
            .map_err(serde::de::Error::custom)
    }
}
