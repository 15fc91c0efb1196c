//! Crown-race seats and steerers.

use crate::evidence::{Fact, Figure, List, Text};
use crate::thread::ThreadSize;

use super::row::rows;

rows! {
    /// The seat of the crown race on the fork.
    CrownSeat("crown_seat", CROWN_SEATS) {
        /// Unique code.
        code: Text,
        /// The fork number of the SHIS code; a name, 40 stands for 39.8 mm.
        shis_code: Text,
        /// Name for a person.
        name: Text,
        /// Diameter of the seat.
        seat: Figure,
        /// Bore of the race.
        #[cfg_attr(feature = "serde", serde(default))]
        race_bore: Option<Figure>,
        /// Height of the seat.
        #[cfg_attr(feature = "serde", serde(default))]
        seat_height: Option<Figure>,
        /// Which steerer, in words.
        steerer: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A steerer pattern.
    Steerer("steerer", STEERERS) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Diameter at the stem.
        upper_diameter: Figure,
        /// Diameter at the crown, if it differs.
        #[cfg_attr(feature = "serde", serde(default))]
        lower_diameter: Option<Figure>,
        /// Inside diameter.
        #[cfg_attr(feature = "serde", serde(default))]
        inside_diameter: Option<Figure>,
        /// Diameter of the quill.
        #[cfg_attr(feature = "serde", serde(default))]
        quill: Option<Figure>,
        /// Diameter of the stem clamp.
        #[cfg_attr(feature = "serde", serde(default))]
        stem_clamp: Option<Figure>,
        /// Thread, of threaded steerers.
        #[cfg_attr(feature = "serde", serde(default, deserialize_with = "super::shop::thread_or_none"))]
        thread: Option<Fact<ThreadSize>>,
        /// Codes of crown seats met with it.
        #[cfg_attr(feature = "serde", serde(default))]
        crown_seat: List<Text>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A rule about steerers and stems.
    SteererRule("steerer_rule", STEERER_RULES) {
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
}
