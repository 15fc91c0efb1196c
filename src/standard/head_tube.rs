//! Head-tube seats by SHIS code and older press sizes, headset bearings, and what is published about facing and fits there.
//!
//! A SHIS number is a name, never arithmetic: 34 stands for a bore of 33.90 to 33.95 mm, 49 for 49.57 to 49.61 mm.

use crate::evidence::{Fact, Figure, List, Text};
use crate::fit::Sense;
use crate::quantity::Angle;

use super::joint::{Joint, SpeaksOf};
use super::row::rows;
use super::shell::{Confusion, Hold};

/// The type of a head-tube seat, in SHIS words.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum SeatKind {
    /// EC: the cup stands outside the head tube.
    ExternalCup,
    /// ZS: the cup is pressed in, the bearing lies inside the head tube.
    ZeroStack,
    /// IS: the bearing drops on a seat made in the frame, no cup.
    Integrated,
    /// A pattern without a SHIS code.
    Other,
}
rows! {
    /// A seat in the head tube.
    HeadSeat("head_seat", HEAD_SEATS) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Type of seat.
        kind: SeatKind,
        /// How the part is held.
        #[cfg_attr(feature = "serde", serde(default))]
        fit: Option<Fact<Hold>>,
        /// Diameter of the bore or seat.
        bore: Figure,
        /// Least depth of the seat.
        #[cfg_attr(feature = "serde", serde(default))]
        bore_depth: Option<Figure>,
        /// Least inside diameter below the seat.
        #[cfg_attr(feature = "serde", serde(default))]
        clear_below: Option<Figure>,
        /// Outside diameter of the head tube.
        #[cfg_attr(feature = "serde", serde(default))]
        outside_diameter: Option<Figure>,
        /// Angle of the seat in the frame: the outer angle of the bearing.
        #[cfg_attr(feature = "serde", serde(default))]
        seat_angle: Option<Figure<Angle>>,
        /// Outside diameter of the bearing.
        #[cfg_attr(feature = "serde", serde(default))]
        bearing_outside: Option<Figure>,
        /// Outside diameter of the pressed part.
        #[cfg_attr(feature = "serde", serde(default))]
        cup: Option<Figure>,
        /// Codes that share this bore.
        #[cfg_attr(feature = "serde", serde(default))]
        same_bore_as: List<Text>,
        /// What it is taken for.
        #[cfg_attr(feature = "serde", serde(default))]
        confused_with: List<Confusion>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A headset cartridge bearing. Angles are stored inner, outer: the frame seat takes the outer one.
    HeadsetBearing("headset_bearing", HEADSET_BEARINGS) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Bore.
        bore: Figure,
        /// Outside diameter.
        outside: Figure,
        /// Height.
        height: Figure,
        /// Angle of the inner chamfer: crown race and compression ring.
        inner_angle: Figure<Angle>,
        /// Angle of the outer chamfer: the seat in the frame.
        outer_angle: Figure<Angle>,
        /// Code of the seat; empty when none is known.
        seat: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// What is published about the faces and bores of a head tube.
    FacingRule("facing_rule", FACING_RULES) {
        /// Unique code.
        code: Text,
        /// What it limits, in words.
        what: Text,
        /// The limit.
        window: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A window that somebody wants for a fit, on diameter. Windows that conflict are separate rows, never averaged.
    FitWindow("fit_window", FIT_WINDOWS) {
        /// Unique code.
        code: Text,
        /// Which joint.
        joint: Joint,
        /// Sizes of the joint that it speaks of; all of them unless stated.
        #[cfg_attr(feature = "serde", serde(default))]
        sizes: Option<Figure>,
        /// What it was written for.
        #[cfg_attr(feature = "serde", serde(default))]
        speaks_of: SpeaksOf,
        /// Whose window it is.
        owner: Text,
        /// Interference or clearance.
        sense: Sense,
        /// The window.
        window: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}
