//! Facts, questions and tasks that any place can have.

use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Ask, Fact};
use crate::Error;
use crate::evidence::Text;
use crate::fact::{closed_words, facts};
use crate::identify::{self, Feature, Identification, Note};
use crate::judge::{CuredAt, Instrument, Remedy, asks};
use crate::measure::Limits;
use crate::plan::sheet::{Limited, PartDid};
use crate::quantity::Length;
use crate::standard::{Operation, Place, Workplace};

facts! {
    /// What is found, left or could cure at any place.
    CommonFact {
        /// What a maker wrote as a limit, and whose it is.
        MakersLimit { on: Limited, is: Limits, by: String },
        /// It must stay at or above this.
        AtLeast { on: Limited, least: Length, by: String },
        /// It must stay at or below this.
        AtMost { on: Limited, most: Length, by: String },
        /// As the trade does it: the text of a row.
        Usual { says: Text },
        /// Which standard it is, as it was identified.
        Standard { is: Box<Identification> },
        /// What an identification notes besides.
        Note { said: Note },
        /// The tables could not take what was asked.
        NotIdentified { because: Error },
        /// What is worked to where the readings alone name nothing: its share of what agrees, with what takes the same parts.
        TakenAs { code: String, share: f64 },
        /// Proved there, and a reading rules it out.
        ProvedAndExcluded { name: String, by: Feature },
        /// Proved there, and no table lists it for this place.
        ProvedAndUnlisted { name: String },
        /// What the part did when it was tried after the last pass.
        Tried { did: PartDid, part: GoesIn },
        /// Paint, chips and burrs are looked for before anything else.
        LookFirst,
        /// One way to cure what is out.
        Cure { by: Remedy, size: Option<Length>, at: CuredAt },
        /// What sits there sits flat and does not rock.
        SitsFlat,
        /// Nothing is cut there for now: nothing guides the cutter.
        Unguided { at: Place, cut: Operation, why: Box<Fact> },
        /// Nothing is cut there for now: what it waits for is asked at its place.
        Waits { at: Place, cut: Operation },
    }
    /// What is to be done at any place.
    CommonTask {
        /// Not to be cut here, and why.
        DoNot { cut: Operation, at: Place, why: Reason },
        /// Only the coating comes off, by hand.
        CoatByHand { at: Place, cut: Operation },
    }
    /// Why a cut is not permitted.
    Reason {
        /// Laminate is not cut.
        Carbon,
        /// Plastic is not cut to fit.
        Plastic,
        /// Nobody said what the joint is made of.
        MaterialUnknown,
        /// Metal bonded into carbon, and no maker's consent is stated.
        NoConsent,
        /// Two statements contradict each other.
        Contradicted,
        /// What the place is, is open.
        IdentityOpen,
        /// Metal is lost.
        MetalLost,
        /// The maker's own shape.
        MakersShape,
        /// Nothing guides the cutter.
        NoPilot { why: Box<Fact> },
        /// Nothing more may come off because of this limit.
        NothingMayComeOff { limit: Box<Fact>, over: Length },
        /// More would have to come off than this limit allows.
        BeyondLimit { limit: Box<Fact>, needed: Length, allowed: Length },
        /// Needed and allowed lie too close together to tell.
        TooClose { limit: Box<Fact>, needed: Length, allowed: Length },
        /// A limit is not known.
        LimitUnknown { limit: Box<Fact>, measure: Box<Ask> },
        /// A cut that nothing stops.
        NoStop,
    }
    /// Why one step comes before another (common practice).
    #[derive(Copy, Eq)]
    Earlier {
        /// The seat tube, so that the frame can be held.
        Stand,
        /// Clean before cutting.
        CleanFirst,
        /// The hole before its thread.
        HoleFirst,
        /// A check comes after the cut.
        CheckAfter,
        /// A facing tool pilots on its thread.
        ThreadPilots,
        /// A facing tool is guided through both threads.
        BothThreads,
        /// A facing tool pilots on its bore.
        BorePilots,
        /// The pilot is centred in the opposite bore.
        BothBores,
        /// A facing tool pilots on the axle.
        AxlePilots,
        /// Faces lower the stack.
        LengthLast,
        /// A lower face brings the crown closer.
        CrownCloser,
    }
}

asks! {
    /// What is asked at any place.
    CommonAsk {
        /// Two statements of the sheet cannot both be true: which of them is?
        WhichIsSo { of: Box<Fact>, with: Instrument } => with.clone(),
        /// The outside diameter where the bore is.
        Outside => OutsideCaliper,
        /// The outside of the part.
        PartOutside => Micrometer,
        /// What a cut lacks.
        ForCut { cut: Operation, at: Place, lacks: Reason } => lacked(*cut, at, lacks),
        /// A name that no table has.
        WhatCalled { because: Error } => Sheet,
        /// A reading that the tables could not take.
        ReadAgain { because: Error } => Rule,
        /// It misses what it was believed to be by so much.
        IsItReally { name: String, off: Length } => Part,
        /// A reading that cannot be taken at its word.
        Doubt { because: identify::Doubt } => reads(because.about),
        /// The reading that tells most, and what it tells apart.
        Tells { measure: Feature, apart: Vec<Text> } => reads(*measure),
        /// No reading tells what is left apart.
        WhatIsIt { left: Vec<Text> } => Part,
    }
}

closed_words! {
    /// How a part is meant to go in.
    GoesIn {
        /// It slides and is clamped: a post.
        Slides,
        /// It is laid in by hand: the bearing of an integrated seat.
        Lies,
        /// It is pressed in: a cup.
        Presses,
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(
    Reason,
    GoesIn,
    Error,
    Feature,
    Remedy,
    PartDid,
    identify::Doubt
);

/// With what is answered that a cut lacks.
fn lacked(cut: Operation, at: &Place, lacks: &Reason) -> Instrument {
    match lacks {
        Reason::MaterialUnknown => Instrument::Magnet,
        Reason::TooClose { .. } => surveyed(cut, at),
        Reason::LimitUnknown { measure, .. } => measure.with(),
        _ => Instrument::Maker,
    }
}

/// With what a place is read for a cut.
const fn surveyed(cut: Operation, at: &Place) -> Instrument {
    match (cut, Workplace::of(at)) {
        (Operation::Deepen, _) => Instrument::Depth,
        (_, Workplace::ShellFace | Workplace::HeadFace) => Instrument::DialAtPilot,
        (_, Workplace::Mount) => Instrument::DialAtAxle,
        (_, Workplace::PressShell | Workplace::HeadSeat) => Instrument::BoreGauge,
        (_, Workplace::Thread | Workplace::ShellThread) => Instrument::Plug,
        _ => Instrument::InsideCaliper,
    }
}

/// With what a feature is read.
const fn reads(feature: Feature) -> Instrument {
    match feature {
        Feature::Bore | Feature::MinorDiameter | Feature::Slot => Instrument::InsideCaliper,
        Feature::Pitch => Instrument::PitchGauge,
        Feature::Wall => Instrument::WallGauge,
        Feature::Hand
        | Feature::HandDrive
        | Feature::HandNonDrive
        | Feature::Threaded
        | Feature::SeatAngle => Instrument::Eye,
        Feature::HalfWidthDrive
        | Feature::HalfWidthNonDrive
        | Feature::BoltSpacing
        | Feature::PlaneHeight
        | Feature::FirstBolt
        | Feature::InnerFaces
        | Feature::OverLocknut => Instrument::Rule,
        Feature::CrestDiameter
        | Feature::OutsideDiameter
        | Feature::SeatDiameter
        | Feature::LowerDiameter
        | Feature::PartOutside
        | Feature::Width => Instrument::OutsideCaliper,
    }
}
