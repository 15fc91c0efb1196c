//! Facts, questions and tasks of the seat tube.

use alloc::string::String;
use alloc::vec::Vec;

use crate::fact::facts;
use crate::judge::asks;
use crate::quantity::Length;

facts! {
    /// What is found, left or could cure at the seat tube.
    SeatTubeFact {
        /// Out of round by at least this; wider towards the bottom by this, or narrower where it is negative.
        Shape { oval: Option<Length>, taper: Option<Length> },
        /// The readings spread so far that no size may be named.
        Spread { over: Length },
        /// It was read deeper than it is said to be clear.
        BelowClear { read: Length, clear: Length },
        /// Under paint: the size that it is taken for, the one that was believed, and all that agree with the readings.
        UnderPaint { size: Option<String>, label: Option<String>, agree: Vec<String> },
        /// A post or plug proved this size.
        Proved { size: String },
        /// A size was proved, and the bore is larger everywhere.
        ProvedSmaller { size: String, low: Length, high: Length },
        /// A size that was believed or proved is not listed.
        Unlisted { size: String },
        /// The sheet says another size than the readings.
        OtherThanBelieved { believed: String, size: Length },
        /// No coat is so thick as what is missing to the size.
        NoCoat { missing: Length },
        /// It is nowhere below its size.
        LargeEnough { size: Length },
        /// It is below its size by less than the readings can tell.
        AboutThere { by: Length, size: Length },
        /// It was reamed above its size.
        ReamedTooFar { by: Length, size: Length },
        /// A larger post, or a shim.
        LargerPostOrShim,
        /// What stops the reamer: its size.
        ToSize { size: Length },
        /// What stops the reamer: a maker's depth.
        DepthAtMost { depth: Length, by: String },
        /// What stops the reamer: how deep the tube is clear.
        ClearTo { depth: Length },
        /// The most stock that any text leaves for a reamer.
        Stock { most: Length },
        /// A reamer of this size.
        Reamer { size: Length },
        /// A carbon post meets no edge.
        NoEdge,
    }
    /// What is to be done at the seat tube.
    SeatTubeTask {
        /// It is reamed to this size.
        Ream { size: Length },
    }
}

asks! {
    /// What is asked at the seat tube.
    SeatTubeAsk {
        /// The bore at two depths, in two directions at each.
        Bore => InsideCaliper,
        /// The bore again, cleaned and looked at.
        BoreClean => InsideCaliper,
        /// How deep the bore is clear.
        ClearDepth => Depth,
        /// Which of these sizes it is, by a post or plug.
        WhichSize { agree: Vec<String> } => Plug,
    }
}
