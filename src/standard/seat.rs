//! Seatposts, seat tubes, clamps and insertion.

use crate::evidence::{Figure, Text};
use crate::quantity::Ratio;

use super::row::rows;

/// How the figure of an insertion rule counts.
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
pub enum DepthCounts {
    /// From the top of the seat tube, whatever the frame.
    #[default]
    InAll,
    /// From the lower edge of the weld or lug; asked together with the rows `with_weld`.
    BelowWeld,
    /// In all, where the place of the weld is known, together with the rows `below_weld`.
    WithWeld,
    /// In all, only where the place of the weld is not known.
    WithoutWeld,
    /// Speaks of something else than how deep the post sits.
    NoDepth,
}

rows! {
    /// A seatpost size.
    Seatpost("seatpost", SEATPOSTS) {
        /// Unique code.
        code: Text,
        /// Nominal diameter.
        diameter: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// The post that a tube of this outside diameter and wall is fitted with.
    SeatTube("seat_tube", SEAT_TUBES) {
        /// Unique code.
        code: Text,
        /// Outside diameter of the tube.
        outside: Figure,
        /// Wall.
        wall: Figure,
        /// Post fitted.
        post: Figure,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A seat clamp: its size follows the tube, never the post.
    SeatClamp("clamp", SEAT_CLAMPS) {
        /// Unique code.
        code: Text,
        /// Outside diameter of the tube.
        tube_outside: Figure,
        /// Post met with it.
        #[cfg_attr(feature = "serde", serde(default))]
        post: Option<Figure>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A rule for the least insertion of a seatpost.
    InsertionRule("insertion_rule", INSERTION_RULES) {
        /// Unique code.
        code: Text,
        /// What it asks, in words.
        what: Text,
        /// How its figure counts.
        #[cfg_attr(feature = "serde", serde(default))]
        counts: DepthCounts,
        /// A depth.
        #[cfg_attr(feature = "serde", serde(default))]
        depth: Option<Figure>,
        /// A multiple of the post diameter.
        #[cfg_attr(feature = "serde", serde(default))]
        times_diameter: Option<Figure<Ratio>>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}
