//! How an operation is done at a kind of place.

use super::row::rows;
use super::{Place, Row};
use crate::evidence::{Grade, List, Text};

/// Closed words of the work.
macro_rules! work_words {
    ($( $(#[$doc:meta])* $name:ident { $( $(#[$variant_doc:meta])* $variant:ident ),* $(,)? } )*) => {$(
        $(#[$doc])*
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, strum::Display, strum::EnumString, strum::EnumIter,
            strum::IntoStaticStr,
        )]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(rename_all = "snake_case"))]
        #[strum(serialize_all = "snake_case")]
        pub enum $name { $( $(#[$variant_doc])* $variant ),* }
    )*};
}

work_words! {
    /// What is done at a place.
    Operation {
        /// Take paint or dirt off by hand, without cutting metal.
        Clean,
        /// Open a bore with a reamer.
        Ream,
        /// Cut a bore deeper.
        Deepen,
        /// Follow an existing thread with a chaser.
        Chase,
        /// Cut a thread.
        Tap,
        /// Cut a face flat and square to its pilot.
        Face,
        /// Measure or try again after something else moved it.
        Check,
        /// Put another part in the place of this one.
        Replace,
        /// Not ours to cut: frame maker or qualified builder.
        Refer,
    }

    /// Places that are worked in the same way.
    Workplace {
        /// The bore of a seat tube.
        SeatTube,
        /// The bores of a shell for pressed cups.
        PressShell,
        /// A threaded side of a shell.
        ShellThread,
        /// A face of a shell.
        ShellFace,
        /// A seat in the head tube.
        HeadSeat,
        /// A face of the head tube.
        HeadFace,
        /// A crown-race seat.
        CrownSeat,
        /// Any other thread.
        Thread,
        /// A brake mount.
        Mount,
        /// A place that is looked at and not cut.
        Other,
    }

    /// How a cutter is turned on its way.
    Turning {
        /// Only its own way, on the way out too: a reamer, a facing cutter.
        OneWay,
        /// Turned back to break the chip, and unscrewed to come out: a tap, a chaser.
        BackAndForth,
    }
}

impl Operation {
    /// Whether metal comes off.
    ///
    /// ```
    /// use framegauge::standard::Operation;
    /// assert!(Operation::Face.cuts() && !Operation::Clean.cuts());
    /// ```
    #[must_use]
    pub const fn cuts(self) -> bool {
        self.turning().is_some()
    }

    /// How its cutter is turned; `None` where nothing is cut.
    ///
    /// ```
    /// use framegauge::standard::{Operation, Turning};
    /// assert_eq!(Operation::Tap.turning(), Some(Turning::BackAndForth));
    /// ```
    #[must_use]
    pub const fn turning(self) -> Option<Turning> {
        match self {
            Self::Ream | Self::Deepen | Self::Face => Some(Turning::OneWay),
            Self::Chase | Self::Tap => Some(Turning::BackAndForth),
            Self::Clean | Self::Check | Self::Replace | Self::Refer => None,
        }
    }
}

impl Workplace {
    /// The kind of a place.
    ///
    /// ```
    /// use framegauge::standard::{Place, Workplace};
    /// assert_eq!(Workplace::of(&Place::Shell), Workplace::PressShell);
    /// ```
    #[must_use]
    pub const fn of(place: &Place) -> Self {
        match place {
            Place::SeatTube | Place::Seatpost => Self::SeatTube,
            Place::Shell => Self::PressShell,
            Place::ShellSide(_) => Self::ShellThread,
            Place::ShellFace(_) => Self::ShellFace,
            Place::HeadTube(_) => Self::HeadSeat,
            Place::HeadFace(_) => Self::HeadFace,
            Place::Crown => Self::CrownSeat,
            Place::Axle(_)
            | Place::Hanger(_)
            | Place::Boss(_)
            | Place::Pedal(_)
            | Place::Steerer
            | Place::Thread => Self::Thread,
            Place::Brake(_) => Self::Mount,
            Place::SeatTubeSlot | Place::Dropout(..) | Place::BrakeUnderside(_) | Place::Iscg => {
                Self::Other
            }
        }
    }
}

rows! {
    /// How an operation is done at a kind of place.
    WorkRow("work", WORKS) {
        /// Unique code.
        code: Text,
        /// What is done.
        operation: Operation,
        /// Where.
        place: Workplace,
        /// What guides the tool; empty where the plan says it, or nothing does.
        #[cfg_attr(feature = "serde", serde(default))]
        pilot: Text,
        /// The end at which the tool starts; its turning is told as seen from there.
        #[cfg_attr(feature = "serde", serde(default))]
        start: Text,
        /// How many passes to expect.
        #[cfg_attr(feature = "serde", serde(default))]
        passes: Text,
        /// What to check after it.
        checks: List<Text>,
        /// What proves it.
        proof: Text,
        /// What its texts are worth.
        basis: Grade,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}

impl WorkRow {
    /// How this is done there; `None` where nothing is to be said of it.
    ///
    /// ```
    /// use framegauge::standard::{Operation, Place, WorkRow};
    /// assert!(WorkRow::of(Operation::Ream, &Place::SeatTube).is_some_and(|row| row.pilot.starts_with("the bore itself")));
    /// assert!(WorkRow::of(Operation::Refer, &Place::SeatTube).is_none());
    /// ```
    #[must_use]
    pub fn of(operation: Operation, place: &Place) -> Option<&'static Self> {
        let place = Workplace::of(place);
        Self::table()
            .iter()
            .find(|row| row.operation == operation && row.place == place)
    }
}
