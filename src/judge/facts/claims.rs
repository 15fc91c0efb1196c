//! Facts and questions of what somebody claimed.

use alloc::vec::Vec;

use super::instrument::asks;
use crate::evidence::Text;
use crate::fact::facts;
use crate::measure::Reading;
use crate::quantity::{Angle, Length, Pitch};
use crate::thread::{Hand, Side};

facts! {
    /// What is found of what somebody claimed.
    ClaimFact {
        /// A rule of so much an inch, worked out, and how many times that is used.
        PerInch { rule: Length, diameter: Length, gives: Length, used: Length, ratio: f64 },
        /// A ratio that was claimed.
        Ratio { claimed: f64, is: f64 },
        /// A general machining rule is no bicycle limit.
        NoBicycleLimit,
        /// Nominal and core of a row, and whether they agree with its pitch.
        Row { nominal: Length, core: Length, pitch: Pitch, agree: bool },
        /// The designation says what the row says.
        SaidTwice { written: Length },
        /// The designation is the slip.
        Slip { written: Length, nominal: Length },
        /// The nominal is the slip.
        NominalSlip { written: Length, nominal: Length },
        /// Designation and nominal contradict each other, and the row does not tell which is right.
        Contradict { written: Length, nominal: Length },
        /// The fine pitch against the coarse one of the same size.
        Finer { fine: Pitch, coarse: Pitch, finer: bool },
        /// A pitch in the column of a series: of which series it is, and what that column has for the size.
        Column { column: Text, pitch: Pitch, of: Text, listed: Option<Pitch> },
        /// A diameter from a tape, and the listed posts that it leaves.
        Tape { around: Length, diameter: Reading, posts: Vec<Text> },
        /// The slot of the tab runs along the slot of the dropout.
        SlotsAlong { at: Angle },
        /// How far the caliper strays from where it should stand against the axle.
        Strays { travel: Length, by: Length },
        /// A brake tab is for a qualified builder.
        TabForBuilder,
        /// How a side of a possible pattern turns.
        Turns { pattern: Text, side: Side, hand: Hand },
        /// No more torque until the hand is known.
        NoMoreTorque,
    }
}

asks! {
    /// What is asked of what somebody claimed.
    ClaimAsk {
        /// The row in a second table.
        SecondTable => Sheet,
        /// The whole column in a second source.
        WholeColumn => Sheet,
        /// The diameter itself.
        Diameter => OutsideCaliper,
        /// Whether the caliper clears the stay over the whole travel.
        StayClearance => OutsideCaliper,
        /// A known cup tried in the other side.
        OtherSide => Part,
        /// Pitch and hand where the thread shows.
        PitchAndHand => PitchGauge,
    }
}
