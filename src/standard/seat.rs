//! Seatposts, seat tubes, clamps and insertion.

use crate::evidence::{Figure, Text};
use crate::quantity::Ratio;

use super::row::rows;

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
