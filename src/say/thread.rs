//! Threads and their gauges in words.

use core::fmt;

use crate::quantity::in_mm;
use crate::thread::{
    BoreCandidates, CaliperShows, Chasing, FlankEngagement, Gauge, GaugeMeaning, Mates, Member,
    Mismatch, Reason, Retap, ThreadForm, Turning,
};

impl Gauge {
    /// What this gauge means on a hole or a screw (principle of ISO 1502, as two gauge makers' usage texts agree).
    ///
    /// ```
    /// use framegauge::thread::{Gauge, Member};
    /// assert!(Gauge::Go.meaning(Member::Internal).silent_on.contains("minor diameter"));
    /// ```
    #[must_use]
    pub const fn meaning(self, member: Member) -> GaugeMeaning {
        match (self, member) {
            (Self::Go, Member::Internal) => GaugeMeaning {
                shows: "the functional pitch diameter is not below its minimum, pitch and flank errors included, and the major diameter is large enough",
                silent_on: "the minor diameter, and how much too large the thread is",
                used: "screws in by hand through the whole thread, without force",
            },
            (Self::Go, Member::External) => GaugeMeaning {
                shows: "the functional pitch diameter is not above its maximum, and the root clears",
                silent_on: "the major diameter, and how much too small the thread is",
                used: "screws on by hand over the whole thread, without force",
            },
            (Self::NotGo, Member::Internal) => GaugeMeaning {
                shows: "the pitch diameter itself is not above its maximum",
                silent_on: "pitch, flanks and the minor diameter",
                used: "may enter from each end by no more than two turns",
            },
            (Self::NotGo, Member::External) => GaugeMeaning {
                shows: "the pitch diameter itself is not below its minimum",
                silent_on: "pitch, flanks and the major diameter",
                used: "may go on from each end by no more than two turns",
            },
            (Self::PlainGo, Member::Internal) => GaugeMeaning {
                shows: "the minor diameter is not below its minimum",
                silent_on: "everything about the flanks",
                used: "a plain plug that goes through",
            },
            (Self::PlainGo, Member::External) => GaugeMeaning {
                shows: "the major diameter is not above its maximum",
                silent_on: "everything about the flanks",
                used: "a plain ring that goes over",
            },
            (Self::PlainNotGo, Member::Internal) => GaugeMeaning {
                shows: "the minor diameter is not above its maximum",
                silent_on: "everything about the flanks: a sound bore proves no pitch diameter",
                used: "a plain plug that does not enter",
            },
            (Self::PlainNotGo, Member::External) => GaugeMeaning {
                shows: "the major diameter is not below its minimum",
                silent_on: "everything about the flanks",
                used: "a plain ring that does not go over",
            },
        }
    }
}

impl Chasing {
    /// As the trade knows it.
    pub(crate) const OF_THE_TRADE: Self = Self {
        restores: &[
            "GO acceptance where burrs, paint or displaced metal blocked it",
            "a bruised first thread",
        ],
        never_restores: &[
            "pitch diameter lost to wear, to a loose tap or to a crossed start",
            "the bore: shallow threads stay shallow",
            "a torn-out flank",
        ],
        before: &[
            "pick out and wash the grooves: hardened compound and paint feel like a crossed thread",
            "name the thread: pitch by leaf, hand by sight; a chaser of another pitch ruins it",
            "start the chaser by hand from the sound end, following the old helix",
        ],
        check_after: &[
            "GO through the whole thread by hand",
            "NOT GO at both ends: a chaser can only make this worse",
            "bore, or crest diameter, against its limits",
            "the mating part by hand; a hand fit is neither gauge",
        ],
    };
}

impl Reason {
    /// The reason in words a mechanic would use.
    ///
    /// Source: an archived cycling answer list on left-hand threads, agreeing with a magazine article. Precession: under a
    /// turning load a part that is a slightly loose fit rolls inside its seat against the load. It is stronger than the drag
    /// of the bearing, so "the bearing would unscrew it" gives the wrong sign.
    ///
    /// ```
    /// use framegauge::thread::{Side, hand_pattern, turning};
    /// let cup = turning(hand_pattern("bsc").unwrap(), Side::Drive).unwrap();
    /// assert!(cup.reason.words().contains("rolls"));
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::PrecessionTightens => {
                "under a turning load a slightly loose part rolls inside its seat against the load (precession); this hand is tightened by it, and the drag of the bearing is too weak to matter"
            }
            Self::TorqueOnly => {
                "precession works against this hand here, so the part is held by its torque alone: tighten it fully and check it again"
            }
            Self::LittleTurningLoad => {
                "hardly any turning load reaches this side, so the plain right-hand thread holds"
            }
            Self::DriveTightens => {
                "pedalling screws it on; back-pedalling unscrews a fixed sprocket, so that one needs its left-hand lockring"
            }
            Self::LocksAnother => {
                "the opposite hand to the sprocket's: when the sprocket backs out it drives the lockring tighter"
            }
        }
    }
}

impl fmt::Display for Turning {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{}, {}: {} thread. Facing that side from outside: tighten {}, loosen {}.",
            self.name,
            self.side.words(),
            self.hand.words(),
            self.tighten.words(),
            self.loosen.words()
        )
    }
}

impl fmt::Display for Mismatch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.mates {
            Mates::Yes => f.write_str("these threads mate")?,
            Mates::CannotTell => {
                return f.write_str(
                    "cannot tell: the form of one thread is not known; measure its pitch diameter over wires",
                );
            }
            Mates::No => write!(f, "these threads do not mate: {}", self.grounds)?,
        }
        if self.grounds.diameter {
            write!(f, "; pitch diameters {} apart", in_mm(self.apart_min))?;
        }
        if self.grounds.pitch {
            write!(f, "; {} drift a turn", in_mm(self.drift.per_turn))?;
            if let (Some(turns), Some(wider)) = (self.turns_until_binding, self.wider) {
                write!(
                    f,
                    ", with {wider} as the hole it binds after about {turns:.1} turns"
                )?;
            }
        }
        if self.grounds.hand {
            f.write_str("; one is left-hand, the other right-hand")?;
        }
        Ok(())
    }
}

impl ThreadForm {
    /// The form in words for a person.
    ///
    /// ```
    /// use framegauge::thread::ThreadForm;
    /// assert_eq!(ThreadForm::Bsc.words(), "BSC, 60 degrees, rounded");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::IsoMetric => "ISO metric, 60 degrees",
            Self::IsoInch => "ISO profile at an inch pitch, 60 degrees",
            Self::Unified => "Unified, 60 degrees",
            Self::Bsc => "BSC, 60 degrees, rounded",
            Self::Whitworth => "Whitworth, 55 degrees",
            Self::Unknown => "form not known",
        }
    }
}

impl CaliperShows {
    pub(crate) const USUAL_MINOR: &'static str = "minor diameter limits of the usual class";
    pub(crate) const USUAL_MAJOR: &'static str = "major diameter limits of the usual class";
    pub(crate) const PUBLISHED: &'static str =
        "nominal less 0.2 mm at a pitch near 1 mm, two published pages; scaled with the pitch";
    pub(crate) const BASIC_MINOR: &'static str =
        "basic minor diameter; its upper limit was not found";
}

impl BoreCandidates {
    /// What to do with so many of them.
    pub(crate) const fn next_for(possible: usize) -> &'static str {
        match possible {
            0 => "none of these: measure the pitch with a leaf, and the bore again at both ends",
            1 => {
                "lay a leaf of this pitch on the threads before cutting; a bore alone proves no thread"
            }
            _ => {
                "the bore cannot tell these apart: lay a leaf on the threads, or count them along 25.4 mm"
            }
        }
    }
}

impl FlankEngagement {
    /// A sound bore says nothing about the flanks above it.
    pub(crate) const CAUTION: &'static str = "crest diameters alone prove nothing about the pitch diameter: an over-tapped thread keeps its bore; try a NOT GO gauge or measure over wires";
}

impl Retap {
    /// What a larger thread costs.
    pub(crate) const CAUTION: &'static str = "cannot be undone: ask the frame maker what wall must stay, and never recut a bonded or composite shell";
}
