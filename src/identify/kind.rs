//! What is asked about, and what can be observed there.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::standard::{End, LeftRight, Place};
use crate::thread::Side;
use crate::{Error, ErrorKind};

/// Which tables are searched for a place. A place carries a name and is cloned; this is copied at every row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Shell,
    HeadTube,
    Crown,
    Steerer,
    SeatTube,
    Seatpost,
    Axle,
    Hanger,
    Pedal,
    Brake(End),
    Dropout(End),
    Thread,
}

impl Kind {
    /// The tables of a place, and the side on which a hand lies that is told without one.
    pub fn of(place: &Place) -> Result<(Self, Option<Side>), Error> {
        let side = match place {
            Place::ShellSide(side) | Place::ShellFace(side) => Some(*side),
            // The drive side is the rider's right.
            Place::Pedal(Some(LeftRight::Right)) => Some(Side::Drive),
            Place::Pedal(Some(LeftRight::Left)) => Some(Side::NonDrive),
            _ => None,
        };
        Self::searched(place)
            .map(|kind| (kind, side))
            .ok_or_else(|| refused(place))
    }

    const fn searched(place: &Place) -> Option<Self> {
        Some(match place {
            Place::Shell | Place::ShellSide(_) | Place::ShellFace(_) => Self::Shell,
            Place::HeadTube(_) => Self::HeadTube,
            Place::Crown => Self::Crown,
            Place::Steerer => Self::Steerer,
            Place::SeatTube => Self::SeatTube,
            Place::Seatpost => Self::Seatpost,
            Place::Axle(_) => Self::Axle,
            Place::Hanger(_) => Self::Hanger,
            Place::Pedal(_) => Self::Pedal,
            Place::Brake(end) => Self::Brake(*end),
            Place::Dropout(end, _) => Self::Dropout(*end),
            Place::Boss(_) | Place::Thread => Self::Thread,
            Place::SeatTubeSlot | Place::HeadFace(_) | Place::BrakeUnderside(_) | Place::Iscg => {
                return None;
            }
        })
    }

    /// What its tables list, in words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Shell => "bottom-bracket shell",
            Self::HeadTube => "head tube",
            Self::Crown => "crown-race seat",
            Self::Steerer => "steerer",
            Self::SeatTube => "seat tube",
            Self::Seatpost => "seatpost",
            Self::Axle => "axle thread",
            Self::Hanger => "hanger thread",
            Self::Pedal => "pedal thread",
            Self::Brake(_) => "brake mount",
            Self::Dropout(_) => "dropout",
            Self::Thread => "thread",
        }
    }

    /// Whether the place is a thread by nature.
    pub const fn is_thread(self) -> bool {
        matches!(self, Self::Axle | Self::Hanger | Self::Pedal | Self::Thread)
    }

    /// Whether the two search the same tables, at whichever end.
    pub fn is_like(self, other: Self) -> bool {
        core::mem::discriminant(&self) == core::mem::discriminant(&other)
    }
}

/// What the tables of a place list.
pub(crate) fn listed(place: &Place) -> &'static str {
    Kind::searched(place).map_or("part", Kind::words)
}

fn refused(place: &Place) -> Error {
    let known: Vec<String> = Place::all()
        .filter(|place| Kind::searched(place).is_some())
        .map(|place| place.to_string())
        .collect();
    Error::new(
        ErrorKind::NotApplicable,
        "place",
        place,
        "no table lists standards of this place",
        format!("identify one of {}, boss.NAME", known.join(", ")),
    )
}

/// What can be observed at a place. Sizes are lengths (millimetres), the seat angle is in degrees.
///
/// ```
/// use framegauge::identify::Feature;
/// assert_eq!(Feature::HalfWidthDrive.words(), "drive-side half width");
/// assert_eq!("outside_diameter".parse::<Feature>().unwrap(), Feature::OutsideDiameter);
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::EnumCount,
    strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Feature {
    /// Inside diameter as read, in a plain bore or over the crests of a female thread.
    Bore,
    /// Inside diameter over the crests of what is known to be a female thread.
    MinorDiameter,
    /// Outside diameter over the crests of a male thread.
    CrestDiameter,
    /// Outside diameter of a tube, post, seat, steerer or axle.
    OutsideDiameter,
    /// Outside diameter of a steerer at the crown.
    LowerDiameter,
    /// Diameter of the crown-race seat that belongs to a steerer.
    SeatDiameter,
    /// Outside diameter of the cup or bearing that sat in a head tube.
    PartOutside,
    /// Pitch, by gauge or as an advance over turns.
    Pitch,
    /// Distance of the holes of a brake mount.
    BoltSpacing,
    /// Height of a post mount's plane above the axle.
    PlaneHeight,
    /// First bolt of a post mount along its plane from the axle.
    FirstBolt,
    /// Distance of the inner faces of the dropouts.
    InnerFaces,
    /// Hub width over locknuts or end caps.
    OverLocknut,
    /// Width of a dropout slot.
    Slot,
    /// Width of a shell over its faces.
    Width,
    /// Face to middle plane, drive side.
    HalfWidthDrive,
    /// Face to middle plane, non-drive side.
    HalfWidthNonDrive,
    /// Thickness of the tube.
    Wall,
    /// Angle of the bearing seat in the head tube, in degrees to the axis.
    SeatAngle,
    /// Whether there is a thread at all.
    Threaded,
    /// Hand of the thread, drive side (the rider's right).
    HandDrive,
    /// Hand of the thread, non-drive side (the rider's left).
    HandNonDrive,
    /// Hand of the thread, where there is only one or the side is not known.
    Hand,
}

/// How many features there are: the length of the arrays that hold one slot a feature.
pub(super) const FEATURES: usize = <Feature as strum::EnumCount>::COUNT;

impl Feature {
    /// Whether it is a length that a [`Reading`](crate::measure::Reading) can hold.
    ///
    /// ```
    /// use framegauge::identify::Feature;
    /// assert!(Feature::Bore.is_length() && !Feature::Hand.is_length());
    /// ```
    #[must_use]
    pub const fn is_length(self) -> bool {
        !matches!(
            self,
            Self::SeatAngle | Self::Threaded | Self::HandDrive | Self::HandNonDrive | Self::Hand
        )
    }

    /// Whether a standard can be named by it. Widths, walls and angles only support what a diameter or pitch says.
    pub(super) const fn is_key(self, kind: Kind) -> bool {
        match self {
            Self::Width
            | Self::HalfWidthDrive
            | Self::HalfWidthNonDrive
            | Self::Wall
            | Self::SeatAngle
            | Self::Threaded
            | Self::HandDrive
            | Self::HandNonDrive
            | Self::Hand => false,
            Self::OutsideDiameter => !matches!(kind, Kind::HeadTube | Kind::SeatTube),
            _ => true,
        }
    }
}
