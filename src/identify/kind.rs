//! What is asked about, and what can be observed there.

use crate::standard::End;

/// Upper or lower end of the head tube; each end is its own standard.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum HeadTubeEnd {
    /// Below the stem.
    Upper,
    /// Above the fork crown.
    Lower,
}

/// The place on the frame that is asked about.
///
/// ```
/// use framegauge::identify::{HeadTubeEnd, InterfaceKind};
/// assert_eq!(InterfaceKind::HeadTube(HeadTubeEnd::Lower).words(), "lower head-tube end");
/// assert_eq!("seat_tube".parse::<InterfaceKind>().unwrap(), InterfaceKind::SeatTube);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum InterfaceKind {
    /// Bottom-bracket shell, or the cup that came out of it.
    Shell,
    /// One end of the head tube.
    HeadTube(HeadTubeEnd),
    /// Crown-race seat on the fork.
    CrownSeat,
    /// Steerer, threaded or plain.
    Steerer,
    /// Seat tube: which post it takes.
    SeatTube,
    /// Seatpost.
    Seatpost,
    /// Thread of a wheel axle or thru-axle.
    AxleThread,
    /// Thread of the derailleur hanger or of its bolt.
    HangerThread,
    /// Pedal thread.
    Pedal,
    /// Disc-brake mount, front or rear (`Both` when not known).
    BrakeMount(End),
    /// Dropouts and the axle pattern they take, front or rear (`Both` when not known).
    Dropout(End),
    /// Any thread of the tables.
    AnyThread,
}

const KINDS: [(InterfaceKind, &str, &str); 17] = [
    (InterfaceKind::Shell, "shell", "bottom-bracket shell"),
    (
        InterfaceKind::HeadTube(HeadTubeEnd::Upper),
        "head_tube_upper",
        "upper head-tube end",
    ),
    (
        InterfaceKind::HeadTube(HeadTubeEnd::Lower),
        "head_tube_lower",
        "lower head-tube end",
    ),
    (InterfaceKind::CrownSeat, "crown_seat", "crown-race seat"),
    (InterfaceKind::Steerer, "steerer", "steerer"),
    (InterfaceKind::SeatTube, "seat_tube", "seat tube"),
    (InterfaceKind::Seatpost, "seatpost", "seatpost"),
    (InterfaceKind::AxleThread, "axle_thread", "axle thread"),
    (
        InterfaceKind::HangerThread,
        "hanger_thread",
        "hanger thread",
    ),
    (InterfaceKind::Pedal, "pedal", "pedal thread"),
    (
        InterfaceKind::BrakeMount(End::Front),
        "brake_mount_front",
        "front brake mount",
    ),
    (
        InterfaceKind::BrakeMount(End::Rear),
        "brake_mount_rear",
        "rear brake mount",
    ),
    (
        InterfaceKind::BrakeMount(End::Both),
        "brake_mount",
        "brake mount",
    ),
    (
        InterfaceKind::Dropout(End::Front),
        "dropout_front",
        "front dropouts",
    ),
    (
        InterfaceKind::Dropout(End::Rear),
        "dropout_rear",
        "rear dropouts",
    ),
    (InterfaceKind::Dropout(End::Both), "dropout", "dropouts"),
    (InterfaceKind::AnyThread, "any_thread", "thread"),
];

impl InterfaceKind {
    /// Every kind, each end on its own.
    pub fn all() -> impl Iterator<Item = Self> {
        KINDS.iter().map(|(kind, ..)| *kind)
    }

    fn row(self) -> (&'static str, &'static str) {
        KINDS
            .iter()
            .find(|(kind, ..)| *kind == self)
            .map_or(("any_thread", "thread"), |(_, code, words)| (*code, *words))
    }

    /// The word a sheet or a question uses.
    #[must_use]
    pub fn code(self) -> &'static str {
        self.row().0
    }

    /// The kind in words for a person.
    #[must_use]
    pub fn words(self) -> &'static str {
        self.row().1
    }

    /// Whether the place is a thread by nature.
    #[must_use]
    pub const fn is_thread(self) -> bool {
        matches!(
            self,
            Self::AxleThread | Self::HangerThread | Self::Pedal | Self::AnyThread
        )
    }
}

impl core::fmt::Display for InterfaceKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.code())
    }
}

impl core::str::FromStr for InterfaceKind {
    type Err = crate::Error;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        KINDS
            .iter()
            .find(|(_, code, _)| code.eq_ignore_ascii_case(text.trim()))
            .map(|(kind, ..)| *kind)
            .ok_or_else(|| {
                let known: alloc::vec::Vec<&str> = KINDS.iter().map(|(_, code, _)| *code).collect();
                crate::Error::new(
                    crate::ErrorKind::UnknownName,
                    "interface",
                    text,
                    "no such interface",
                    alloc::format!("one of {}", known.join(", ")),
                )
            })
    }
}

/// What can be observed at an interface. Sizes are lengths (millimetres), the seat angle is in degrees.
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
    /// The feature in words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Bore => "bore",
            Self::MinorDiameter => "minor diameter of the female thread",
            Self::CrestDiameter => "diameter over the thread crests",
            Self::OutsideDiameter => "outside diameter",
            Self::LowerDiameter => "diameter at the crown",
            Self::SeatDiameter => "crown-race seat diameter",
            Self::PartOutside => "outside diameter of the cup or bearing",
            Self::Pitch => "pitch",
            Self::BoltSpacing => "bolt spacing",
            Self::PlaneHeight => "height of the mount plane",
            Self::FirstBolt => "position of the first bolt",
            Self::InnerFaces => "distance of the dropout faces",
            Self::OverLocknut => "hub width",
            Self::Slot => "slot width",
            Self::Width => "width",
            Self::HalfWidthDrive => "drive-side half width",
            Self::HalfWidthNonDrive => "non-drive-side half width",
            Self::Wall => "wall",
            Self::SeatAngle => "seat angle",
            Self::Threaded => "presence of a thread",
            Self::HandDrive => "hand on the drive side",
            Self::HandNonDrive => "hand on the non-drive side",
            Self::Hand => "hand",
        }
    }

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
    pub(super) const fn is_key(self, kind: InterfaceKind) -> bool {
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
            Self::OutsideDiameter => {
                !matches!(kind, InterfaceKind::HeadTube(_) | InterfaceKind::SeatTube)
            }
            _ => true,
        }
    }
}

#[cfg(feature = "serde")]
mod serial {
    use super::InterfaceKind;

    impl serde::Serialize for InterfaceKind {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.serialize_str(self.code())
        }
    }

    impl<'de> serde::Deserialize<'de> for InterfaceKind {
        fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
            alloc::string::String::deserialize(deserializer)?
                .parse()
                .map_err(serde::de::Error::custom)
        }
    }
}
