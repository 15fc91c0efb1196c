//! Facts, questions and tasks of the bottom-bracket shell.

use alloc::string::String;

use crate::fact::facts;
use crate::judge::asks;
use crate::measure::Limits;
use crate::quantity::Length;
use crate::thread::{Hand, Side};

facts! {
    /// What is found, left or could cure at the bottom-bracket shell.
    ShellFact {
        /// Its thread, by its pattern.
        Thread { thread: String },
        /// Its thread lost metal, and which it was is not settled.
        ThreadLost,
        /// Nothing is planned before the shell is named.
        UntilNamed,
        /// There is no thread in its pattern.
        NoThread,
        /// The sheet speaks of a thread, and the pattern has none.
        SpeaksOfThread { pattern: String },
        /// What guides a chaser: that of the other side.
        BothChasers,
        /// Which way a side turns.
        Turns { side: Side, hand: Hand },
        /// A side has another hand than its pattern.
        OtherHand { side: Side, found: Hand, wanted: Hand, pattern: String },
        /// Both hands are those of the pattern with the sides exchanged.
        BackToFront { pattern: String },
        /// It is named by its thread, and no table lists its width.
        WidthNotListed { pattern: String },
        /// One pattern was proved, and the readings say another.
        ProvedOther { proved: String, named: String },
        /// Parts of the pattern that was believed start and then bind.
        PartsBind { parts: String, pitch: String, read: String, turns: f64 },
        /// The width as it was read, so many times; after the work, or before.
        Width { after_work: bool, count: usize },
        /// How much further out the drive side lies than the other.
        Lean { drive_side_out_by: Length },
        /// A half width beside the one of the pattern.
        HalfWidth { side: Side, read: Length, listed: Length },
        /// The least width, which stops a cut; where two faces share it, half of what is left each.
        LeastWidth { least: Length, by: String, shared: bool },
        /// The least width, by the width that is left after a cut.
        LeastWidthNow { least: Length, by: String },
        /// The width, or its least, is not known.
        WidthNotKnown,
        /// It is wider than it may be, and faced to its width.
        TooWide { over: Length, most: Length, by: String },
        /// It is narrower than it may be.
        TooNarrow,
        /// The window is for another shell.
        OtherWindow { window: String, of: String, this: String },
        /// The part slips in by design.
        SlipFit,
        /// A reamer that finishes inside these limits.
        Reamer { within: Limits },
    }
    /// What is to be done at the bottom-bracket shell.
    ShellTask {
        /// Its bores are reamed to between these, or to the lower one.
        Ream { least: Length, most: Option<Length> },
    }
}

asks! {
    /// What is asked at the bottom-bracket shell.
    ShellAsk {
        /// What names it: thread, pitch, bore, width, hands.
        Names => PitchGauge,
        /// Which of two it is.
        WhichOf { one: String, other: String } => Part,
        /// Which hand a side has.
        Hand => Eye,
        /// The bore, in two directions at each end.
        Bore => BoreGauge,
        /// The bore, where no paint lies.
        BareBore => BoreGauge,
        /// What the frame maker allows the bore to be.
        BoreLimits => Maker,
        /// The outside.
        Outside => OutsideCaliper,
        /// The width at three places.
        Width => OutsideCaliper,
        /// The width, finer: it lies too close to this limit.
        FinerWidth { limit: Length } => Micrometer,
        /// The crank, and so its window.
        Crank => Sheet,
        /// Heights of a face all round.
        Heights => DialAtPilot,
        /// Heights of both faces, finer.
        FinerHeights => DialAtPilot,
        /// How square a face must be, where the two are out of parallel by this.
        Squareness { out_by: Length } => Maker,
    }
}
