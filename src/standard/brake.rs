//! Disc-brake mounts, rotors and bolts.

use crate::evidence::{Fact, Figure, Text};
use crate::quantity::Angle;
use crate::thread::ThreadSize;

use super::axle::End;
use super::row::rows;

/// A system of disc-brake mounts, or the part that a figure speaks of.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum BrakeSystem {
    /// International Standard tabs: bolts parallel to the axle.
    Is,
    /// Post mount: bolts along the wheel plane.
    Pm,
    /// Flat mount.
    Fm,
    /// The rotor.
    Rotor,
    /// The pads.
    Pads,
    /// Any mount.
    Any,
}

rows! {
    /// A disc-brake mount.
    BrakeMount("brake_mount", BRAKE_MOUNTS) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Front or rear.
        end: End,
        /// Distance of the bolts.
        #[cfg_attr(feature = "serde", serde(default))]
        bolt_spacing: Option<Figure>,
        /// Thread of the bolts.
        #[cfg_attr(feature = "serde", serde(default, deserialize_with = "super::shop::thread_or_none"))]
        bolt: Option<Fact<ThreadSize>>,
        /// Height of the mounting plane above the axle.
        #[cfg_attr(feature = "serde", serde(default))]
        plane_height: Option<Figure>,
        /// First bolt along the plane from the axle.
        #[cfg_attr(feature = "serde", serde(default))]
        first_bolt: Option<Figure>,
        /// Rotor that fits without an adapter.
        #[cfg_attr(feature = "serde", serde(default))]
        rotor: Option<Figure>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A single figure about disc brakes.
    BrakeFigure("brake_figure", BRAKE_FIGURES) {
        /// Unique code.
        code: Text,
        /// Which system or part.
        system: BrakeSystem,
        /// Front or rear.
        end: End,
        /// What it is, in words.
        what: Text,
        /// The figure, where it is a length.
        #[cfg_attr(feature = "serde", serde(default))]
        figure: Option<Figure>,
        /// The figure, where it is an angle.
        #[cfg_attr(feature = "serde", serde(default))]
        angle: Option<Figure<Angle>>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// Thickness of a maker's rotors: the wear limit belongs to the maker.
    Rotor("rotor", ROTORS) {
        /// Unique code.
        code: Text,
        /// Whose rotor.
        owner: Text,
        /// Thickness when new.
        #[cfg_attr(feature = "serde", serde(default))]
        new_thickness: Option<Figure>,
        /// Least thickness.
        #[cfg_attr(feature = "serde", serde(default))]
        minimum_thickness: Option<Figure>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// Bolt for a flat mount of this frame thickness.
    FlatMountBolt("flat_mount_bolt", FLAT_MOUNT_BOLTS) {
        /// Unique code.
        code: Text,
        /// Thickness of the mount.
        frame_thickness: Figure,
        /// Length of the bolt.
        bolt_length: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}
