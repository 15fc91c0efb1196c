//! Axles and dropouts, and every other thread on a frame and its parts.

use crate::evidence::{Fact, Figure, List, Text};
use crate::quantity::Torque;
use crate::thread::{Hand, ThreadSize};

use super::row::rows;
use super::shell::Confusion;

/// Front or rear end of the frame.
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
pub enum End {
    /// The fork.
    Front,
    /// The rear triangle.
    Rear,
    /// Either.
    Both,
}
/// Where a thread is used.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum ThreadedPart {
    /// Wheel axle.
    Axle,
    /// Rear derailleur hanger.
    Hanger,
    /// Bolt of a replaceable hanger.
    HangerBolt,
    /// Pedal in crank.
    Pedal,
    /// Freewheel or sprocket on hub.
    Freewheel,
    /// Lockring.
    Lockring,
    /// Crank bolt or extractor.
    Crank,
    /// Steerer.
    Steerer,
    /// Bottle boss.
    BottleBoss,
    /// Rack or mudguard boss.
    RackBoss,
    /// Seat binder.
    SeatBinder,
    /// Cantilever boss.
    BrakeBoss,
    /// Post of a post mount.
    BrakePost,
    /// Brake bolt.
    BrakeBolt,
    /// Rotor bolt.
    RotorBolt,
    /// Spoke.
    Spoke,
    /// Any other.
    Other,
}

rows! {
    /// An axle pattern. Over-locknut width and the spacing of the frame faces are different figures.
    Axle("axle", AXLES) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Front or rear.
        end: Fact<End>,
        /// Hub width over the locknuts or end caps (OLD).
        over_locknut: Figure,
        /// Distance of the inner faces of the dropouts.
        #[cfg_attr(feature = "serde", serde(default))]
        inner_faces: Option<Figure>,
        /// Diameter of the axle.
        #[cfg_attr(feature = "serde", serde(default))]
        axle_diameter: Option<Figure>,
        /// Width of the dropout slot.
        #[cfg_attr(feature = "serde", serde(default))]
        slot: Option<Figure>,
        /// Threads in use; the pitch must be read.
        #[cfg_attr(feature = "serde", serde(default, deserialize_with = "super::shop::thread_list"))]
        threads: List<Fact<ThreadSize>>,
        /// Length of thread.
        #[cfg_attr(feature = "serde", serde(default))]
        thread_length: Option<Figure>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A thread on a frame or one of its parts.
    ThreadUse("thread_use", THREAD_USES) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Where it is used.
        place: ThreadedPart,
        /// The thread.
        #[cfg_attr(feature = "serde", serde(deserialize_with = "super::shop::thread"))]
        thread: Fact<ThreadSize>,
        /// Hand, where there is one.
        #[cfg_attr(feature = "serde", serde(default))]
        hand: Option<Fact<Hand>>,
        /// Hand on the rider's left.
        #[cfg_attr(feature = "serde", serde(default))]
        hand_left: Option<Fact<Hand>>,
        /// Hand on the rider's right.
        #[cfg_attr(feature = "serde", serde(default))]
        hand_right: Option<Fact<Hand>>,
        /// Basic pitch diameter.
        #[cfg_attr(feature = "serde", serde(default))]
        pitch_diameter: Option<Figure>,
        /// Basic minor diameter of the external thread.
        #[cfg_attr(feature = "serde", serde(default))]
        minor_diameter: Option<Figure>,
        /// Minor diameter of the internal thread.
        #[cfg_attr(feature = "serde", serde(default))]
        internal_minor: Option<Figure>,
        /// Tolerance class that a bicycle standard asks for.
        #[cfg_attr(feature = "serde", serde(default))]
        tolerance_class: Option<Fact<Text>>,
        /// What it is taken for.
        #[cfg_attr(feature = "serde", serde(default))]
        confused_with: List<Confusion>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A torque that somebody prints. Follow the marking on the part first.
    TorqueFigure("torque", TORQUES) {
        /// Unique code.
        code: Text,
        /// Which part.
        part: Text,
        /// The torque.
        window: Figure<Torque>,
        /// Who prints it.
        owner: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}
