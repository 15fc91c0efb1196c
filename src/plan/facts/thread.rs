//! Facts, questions and tasks of threads.

use alloc::string::String;
use alloc::vec::Vec;

use crate::fact::facts;
use crate::judge::asks;
use crate::measure::{Limits, Reading};
use crate::quantity::{Length, Pitch};
use crate::standard::ThreadedPart;
use crate::thread::{Hand, ThreadSize};

facts! {
    /// What is found, left or could cure at threads.
    ThreadFact {
        /// Two entries speak of one place and state this field differently.
        EntriesDiffer { first: String, other: String, field: &'static str },
        /// A hanger at the front, where no frame has one.
        FrontHanger,
        /// Its mating part has another thread than it was taken for.
        PartIsOther { taken_for: ThreadSize, part: ThreadSize },
        /// Its pitch was read, and another one was told: by its part, by what was proved or by a label.
        PitchIsOther { read: Pitch, told_by: &'static str, told: ThreadSize },
        /// Another hand was found than the tables list.
        HandIsOther { found: Hand, listed: Hand },
        /// Which thread it is, and by what: its pitch, its part, what was proved, what it was taken for.
        Is { size: ThreadSize, by_pitch: bool, by_part: bool, proved: bool, taken_for: bool },
        /// The bore over the crests, held against nothing since threads with other bores look the same.
        BoreNotHeld { read: Vec<Reading> },
        /// It takes its part by hand and is left alone.
        TakesPart,
        /// The end of the thread that is there, which stops a chaser.
        EndOfThread,
        /// The depth that the part needs, which stops a tap.
        DepthOfPart,
        /// A chaser or tap.
        Cutter { kind: &'static str, size: ThreadSize, hand: Hand },
        /// A drill or reamer.
        HoleCutter { within: Limits },
        /// Both threads of a shell guide each other's chaser.
        GuidedByBoth,
        /// The plain hole is checked.
        CheckHole { limits: Limits, by: String },
        /// No limits are published, so the part decides.
        PartDecides { size: ThreadSize },
        /// A crossed thread proves nothing before it was gauged.
        GaugeBeforeVerdict,
        /// The hole is read again.
        HoleAgain,
        /// A new hanger is held against the wheel.
        AlignNewOne,
        /// This part runs in by hand.
        RunsIn { part: ThreadedPart },
    }
    /// What is to be done at threads.
    ThreadTask {
        /// Put in another part: it lost metal, or it is crossed.
        Replace { what: String, lost: bool },
        /// Follow it.
        Chase { what: String, size: ThreadSize, hand: Hand, crossed: bool, painted: bool },
        /// Cut it.
        Tap { what: String, size: ThreadSize, hand: Hand },
        /// Open the hole.
        OpenHole { what: String, least: Length, most: Length, hole: Length, size: ThreadSize },
        /// Not tapped: no hole is published.
        NoHole { what: String, size: ThreadSize },
        /// Not tapped: the hole is too large.
        HoleTooLarge { what: String },
        /// Check that the hanger is straight.
        Align { what: String },
    }
}

asks! {
    /// What is asked at threads.
    ThreadAsk {
        /// Whether a part or gauge goes through.
        Go => Part,
        /// Whether NOT GO or another part is loose too.
        NotGo => ThreadGauges,
        /// The hole.
        Hole { wanted: Limits } => Plug,
        /// The pitch.
        Pitch { painted: bool } => PitchGauge,
        /// The hand.
        Hand => Eye,
        /// Whether it is a thread that no table lists there.
        ReallyThis { size: ThreadSize } => Part,
        /// Which thread it is, since what the readings name has none in the tables.
        Which { code: String } => Part,
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(ThreadedPart);
