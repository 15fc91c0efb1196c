//! Facts, questions and tasks of head tube, crown and steerer.

use alloc::string::String;

use crate::evidence::Text;
use crate::fact::facts;
use crate::judge::asks;
use crate::measure::{Limits, Reading};
use crate::quantity::Length;
use crate::standard::Place;

facts! {
    /// What is found, left or could cure at head tube, crown and steerer.
    HeadFact {
        /// A seat was proved by a gauge or its part.
        Proved { seat: Text },
        /// A seat was proved, and the bore is far from it.
        ProvedElsewhere { seat: Text, bore: Length },
        /// A seat is taken for what it is called; nothing proves it yet.
        TakenFor { seat: Text },
        /// The wall that outside and bore leave.
        Wall { left: Reading },
        /// The wall that is left when the bore is reamed as far as allowed, and the one that builders use.
        WallReamed { left: Length, usual: Option<Limits> },
        /// The gap to the crown, where nobody limits it.
        CrownGap { gap: Reading },
        /// What the fit cannot be judged by.
        NoVerdict { problem: String },
        /// A part that does not come out: it stays, with bore and face.
        PartStays { part: String },
        /// A part sits in this bore.
        PartInBore,
        /// A part that stays fills the opposite bore, in which a cutter is centred.
        OppositePartStays,
        /// A part fills the opposite bore, in which a cutter is centred.
        OppositePartIn,
        /// The seat is not named, so its face is not cut.
        SeatNotNamed,
        /// The bore is too shallow for its part, and facing makes it shallower.
        TooShallowToFace,
        /// The seat of a bearing that lies in the frame is not cut.
        IntegratedSeat,
        /// The face at an integrated seat is not cut.
        IntegratedFace,
        /// The face under a part that stays.
        FaceUnderPart { part: String },
        /// The two faces are out of parallel by more than their limit.
        OutOfParallel,
        /// Parallelism waits for the heights of both faces.
        ParallelismWaits,
        /// Where both faces may be cut, that brings them parallel.
        FaceBothEnds,
        /// A bore too small at one place and too large at another is not reamed.
        NotReamed,
        /// Another cup, with a larger outside.
        LargerCup,
        /// An insert or a new head tube.
        InsertOrTube,
        /// Never by force or filing.
        NeverByForce,
        /// A wall under its limit does not grow.
        WallTooThin,
        /// A bore outside the depth that its maker wants.
        DepthOutside,
        /// By so much a cup made for the listed depth stands proud.
        StandsProud { by: Length },
        /// Another lower cup or race brings the gap right.
        OtherLowerCup,
        /// A pressed cup at a seat that takes a bearing by hand; it may be larger than that seat.
        CupInSeat { part: String, seat: Text, larger: bool },
        /// A bearing at a bore that takes a cup.
        BearingInBore { part: String, seat: Text },
        /// The bearing is not of the size that the seat is listed for.
        OtherBearing { reads: Length, listed: Length },
        /// A bearing that is listed for the seat.
        ListedBearing { bearing: Text, size: String, angles: String },
        /// The part or bearing that the seat was made for.
        PartForSeat,
        /// A larger cup where it is loose, a smaller one where it is tight.
        CupOfSize,
        /// Limit on a cut: half of the gap to the crown.
        HalfCrownGap,
        /// Limit on a cut: the depth that the cup needs.
        DepthForCup,
        /// A reamer, by what it finishes.
        Reamer { from: Length, to: Option<Length> },
        /// A counterbore of the bore's own size.
        Counterbore,
        /// What lies below stays clear to this bore.
        ClearBelow { to: Length },
        /// Ink shows a bearing in its seat all round.
        InkBearing,
        /// The bearing drops in and does not rock.
        BearingDropsIn,
        /// The stack is lower by what comes off.
        StackLower,
        /// The crown comes closer by what comes off.
        CrownCloser,
        /// The crown-race seat is covered, so a reading is a bound.
        SeatCovered,
        /// The crown-race seat is cut by the fork maker or a builder.
        CrownSeatIsTheirs,
        /// Another race, made for this seat.
        OtherRace,
        /// A worn seat is built up and cut again, or the fork replaced.
        BuiltUpOrFork,
        /// A race that does not fit is not fitted.
        RaceNotFitted,
        /// A steerer of laminate.
        LaminateSteerer,
        /// The thread of a steerer is only followed.
        SteererThread,
        /// Size of the steerer thread.
        ThreadIs { size: String },
        /// Size of the quill.
        QuillIs { size: String },
        /// The length that a steerer wants, so much below what stands on it.
        LengthWanted { length: Length, below: Length },
        /// So much longer than wanted.
        LongerBy { by: Length },
        /// A steerer that is too short for what stands on it.
        LessOnSteerer,
    }
    /// What is to be done at head tube, crown and steerer.
    HeadTask {
        /// Ream a bore into its limits.
        Ream { at: Place, from: Length, to: Length },
        /// Deepen a bore until its part goes in.
        Deepen { at: Place, insertion: Length },
        /// Take a coating off by hand, for a second time or not; down to metal or without scraping; a bearing lies there.
        Clean { at: Place, again: bool, to_metal: bool, bearing: bool },
        /// Mark the length of the steerer when the faces are finished.
        MarkLength { laminate: bool },
    }
}

asks! {
    /// What is asked at head tube, crown and steerer.
    HeadAsk {
        /// The bore, as found.
        Bore => BoreGauge,
        /// The bore again, now bare.
        BareBore => BoreGauge,
        /// What covers a bore.
        BoreCoating => Eye,
        /// What is left of its coating, and the bore again.
        CoatingLeft => Eye,
        /// Depth of the bore.
        BoreDepth => Depth,
        /// How deep the bore may be made.
        DepthAllowed => Maker,
        /// How far the cup goes in.
        Insertion => Depth,
        /// Gap between fork crown and head tube.
        CrownGap => Feeler,
        /// Which seat it is, where bore and part disagree.
        WhichSeat { because: HeadFact } => Part,
        /// Which bearing the frame was made for.
        WhichBearing => Maker,
        /// Heights of a face, for the parallelism of both.
        FaceHeights => DialAtPilot,
        /// Heights of both faces again.
        FacesFiner => DialAtPilot,
        /// Diameter of the crown-race seat.
        CrownSeat => Micrometer,
        /// The same, again and finer.
        CrownSeatFiner => Micrometer,
        /// What covers the crown-race seat.
        CrownCoating => Eye,
        /// Bore of the race.
        Race => BoreGauge,
        /// Race and seat again, finer.
        RaceFiner => BoreGauge,
        /// Length of the steerer.
        SteererLength => Rule,
        /// Length of the steerer and what stands on it again, finer.
        SteererLengthFiner => Rule,
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(HeadFact);
