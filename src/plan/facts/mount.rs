//! Facts, questions and tasks of brake mounts and faces.

use alloc::boxed::Box;
use alloc::string::String;

use super::Fact;
use crate::Error;
use crate::evidence::Text;
use crate::face::{Clock, Closer, Warning};
use crate::fact::facts;
use crate::judge::{Instrument, asks};
use crate::measure::{Outcome, Reading};
use crate::quantity::{Angle, Length};
use crate::standard::Place;
use crate::thread::Side;

facts! {
    /// What is found, left or could cure at brake mounts and faces.
    MountFact {
        /// What its survey cannot tell, or what looks wrong in it.
        SurveyWarns { of: Warning },
        /// How far out of square a face is, where it is high, and what cleans it out to its edge.
        FaceLies { cut: bool, run_out: Reading, over: Length, high_at: Option<Clock>, clean_up: Length },
        /// How a mount lies: highest above lowest place, its slope to the side and along.
        MountLies { cut: bool, range: Length, side_slope: Angle, along: Angle },
        /// What came off between the first and the last survey.
        CameOff { least: Reading, most: Reading },
        /// It stands higher than before somewhere.
        Grew { by: Length },
        /// Squareness against a limit.
        SquareWithin { most: Length, over: Length, by: String, outcome: Outcome },
        /// A rise of the mount against a limit of squareness.
        RisesOver { over: Length },
        /// No squareness is published for this face.
        NoSquareness,
        /// Square enough as it is.
        SquareEnough,
        /// Nothing shows that it must be cut.
        NothingShown,
        /// Bare and not surveyed, so no reason to cut is known.
        BareUnsurveyed,
        /// Paint is left where nothing came off.
        PaintLeft,
        /// Paint has to come off all round.
        PaintAllRound,
        /// Paint tilts the caliper.
        PaintTilts,
        /// Out of square by more than the limit.
        OutOfSquare,
        /// Out of square by more than the caliper bears.
        TiltsCaliper,
        /// Facing would cure it, within what the maker allows.
        FaceIt,
        /// Out of its maker's limits, and metal does not come back.
        GoneForGood { what: &'static str },
        /// What the mount was proved to be or is called.
        Called { proved: bool, name: Text },
        /// Thickness of the mount now.
        Thickness { is: Reading },
        /// A bolt that is not judged here.
        BoltNotJudged { bolt: Length },
        /// The mount gets thinner, so its bolts get too long.
        Thinner,
        /// Thickness and bolt are looked at again.
        ThicknessAgain,
        /// A cutter of brake mounts.
        MountCutter,
        /// A cutter of shell faces.
        ShellCutter,
        /// A cutter of head-tube faces.
        HeadCutter,
        /// Guided by the sound thread of a side, held by both.
        GuidedByThread { side: Side },
        /// Guided by the bore.
        GuidedByBore,
        /// The thread that the tool pilots on, or the other one, is gone or not cut.
        ThreadGone { other: bool },
        /// One of the threads that guide the tool is not made sound here.
        ThreadNotSound,
        /// The thread of the axle is torn, loose, crossed or not cut.
        AxleCannotGuide,
        /// A ring in a groove locates the bearing.
        GrooveLocates,
        /// A seat in the bore locates the bearing.
        SeatLocates,
        /// The chainline moves inboard.
        ChainlineMoves,
        /// The bearing moves inboard.
        BearingMoves,
        /// The shell gets narrower.
        Narrower,
        /// The faces bring the width back.
        WidthAtFaces,
        /// The shell is too wide, and nothing is faced.
        TooWide,
        /// An axle bites through the paint of a dropout.
        AxleBites,
        /// Nothing is cut at such a place.
        NothingCut,
    }
    /// What is to be done at brake mounts and faces.
    MountTask {
        /// Face a ring, and why; so many of the probed places are touched half way down.
        Face { place: Place, why: Box<Fact>, touched: usize, probed: usize },
        /// Face a mount, and why.
        FaceMount { what: String, why: Box<Fact> },
        /// Not faced: the last pass tore it.
        Torn { what: String },
        /// Choose bolts by what is left.
        ChooseBolts { what: String },
        /// Paint off under the bolt heads.
        CleanUnderside,
        /// Slot and ears of the seat clamp.
        CleanSlot,
    }
}

asks! {
    /// What is asked at brake mounts and faces.
    MountAsk {
        /// Which mount it is.
        System => Eye,
        /// Heights of a ring face, and for what.
        Ring { why: Option<Box<Fact>> } => DialAtPilot,
        /// Heights of a mount.
        Heights => DialAtAxle,
        /// What the heights lack to be a survey.
        NoSurvey { because: Error, with: Instrument } => with.clone(),
        /// Heights at the places of the first survey.
        SamePlaces { with: Instrument } => with.clone(),
        /// What is left under a limit, where the surveys do not tell what came off.
        WhatIsLeft => OutsideCaliper,
        /// Heights of a mount, finer.
        Finer => DialAtAxle,
        /// A face again, in this way.
        FaceAgain { how: Closer } => DialAtPilot,
        /// Whether paint is left on the flat.
        PaintLeft => Eye,
        /// What covers it, or what is left of that.
        Coating { worked: bool } => Eye,
        /// Thickness, for the bolt or for its maker's limit.
        Thickness { for_bolt: bool } => OutsideCaliper,
        /// A size too close to its maker's limit.
        LimitAgain { what: &'static str } => Micrometer,
        /// Clearance of the pads.
        PadClearance => Feeler,
        /// Length of a pad.
        PadLength => Rule,
        /// The bolt that the caliper maker wants.
        Bolt => Sheet,
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(Clock, Warning, Closer);
