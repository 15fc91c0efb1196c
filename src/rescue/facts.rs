//! What is found and asked of a spoilt place, as facts: codes and numbers. Their sentences stand in `say`.

use alloc::vec::Vec;

use super::option::{Damage, Step};
use crate::evidence::Text;
use crate::fact::{fact_kinds, facts};
use crate::judge::{self, Finding, Instrument, asks};
use crate::measure::Outcome;
use crate::quantity::Length;
use crate::thread::{Designation, Hand};

facts! {
    /// Why a step stands as it does, what it takes, and what to mind.
    RescueFact {
        /// What comes off first: dirt, burrs and paint feel like damage.
        CleanFirst,
        /// Soak, and give it days.
        Soak,
        /// A pressed or slid part comes out with soaking, cold or warmth.
        DrawOut,
        /// Which way a thread of this hand loosens.
        Loosens { hand: Hand },
        /// The part is still in it.
        StillIn,
        /// Referring is always open.
        AlwaysOpen,
        /// Each cure needs the gap: measure before one is chosen.
        GapFirst,
        /// Damage is named by the gauge, before anything is cut.
        GaugeFirst,
        /// What the gauges show.
        Gauged { found: Vec<Finding> },
        /// Smallest and largest bore, and the clearance on diameter at both; negative presses.
        Clearance { smallest: Length, largest: Length, tightest: Length, loosest: Length },
        /// The gap on diameter.
        Gap { gap: Length },
        /// A size of a part.
        Part { size: Length },
        /// The clearance that this part leaves at the tightest place: smallest bore less its nominal size.
        PartLeaves { size: Length, clearance: Length },
        /// A part of the next size, or one at the top of its limits, may still hold.
        LargerPart,
        /// None of the sizes at hand fits.
        NoPartFits,
        /// No part of this pattern has the thread that is there.
        NoSuchPart,
        /// The flanks are torn out, so no part holds unless sound thread lies deeper.
        FlanksTorn,
        /// The form is not known, so its height is not either.
        FormUnknown,
        /// How much still bears by the crests: (part's major - bore) / 2, and its share of the basic height.
        StillBears { depth: Length, percent: f64 },
        /// A shim's wall is half of gap and wanted interference together.
        ShimIsHalf,
        /// The wall of the shim.
        ShimWall { wall: Length },
        /// A shim under a bearing ring deforms it.
        ShimUnderRing,
        /// There is no gap to fill, or no room at the tightest place.
        NoRoomForShim,
        /// The press that the part wants is not stated, and the bore is smaller than the part by it.
        PressNotStated,
        /// Only within the gap that its data sheet prints.
        CompoundWithinSheet,
        /// The gap at its widest against what the compound fills.
        CompoundFills { gap: Length, fills: Length, outcome: Outcome },
        /// Compound holds a part that the thread carries; it replaces no flanks.
        CompoundNoFlanks,
        /// Pressed round with drifts, where the tube is metal.
        PressRound { metal: bool },
        /// Reamed to the next size that parts exist in.
        NextSize,
        /// No larger size is known that parts exist in.
        NoLargerSize,
        /// A new bore, and the part that it is for.
        BoreFor { bore: Option<Length>, part: Option<Length> },
        /// What comes off on diameter: new bore less smallest bore.
        TakesOnDiameter { stock: Length },
        /// The wall that is left.
        WallLeft { wall: Length },
        /// The wall is not known.
        WallUnknown,
        /// It would break through the outside.
        BreaksThrough,
        /// A builder bores it out and sleeves it.
        Sleeve,
        /// Burrs grip for a while.
        Peen,
        /// Laminate is neither cut nor hammered.
        Laminate,
        /// A chaser of the other hand would cut across the thread.
        ChaserCrosses,
        /// Metal is gone, and a chaser restores none.
        MetalGone,
        /// Chased with this thread, by hand from the sound end.
        Chase { thread: Designation },
        /// A thread, or a coiled wire that restores it.
        Thread { thread: Designation },
        /// A coiled wire for this thread.
        Wire { thread: Designation },
        /// The new thread is no larger.
        NotLarger,
        /// Half the difference of the major diameters; how deep old grooves stay at most, and their share of the new height.
        TakesASide { stock: Length, old_grooves: Length, share: f64 },
        /// More than half of the new thread would be cut into grooves of another helix.
        CutAcross,
        /// The hand of this side changes to this one.
        HandChanges { hand: Hand },
        /// One side alone makes a hybrid.
        Hybrid { drive: Option<Designation>, non_drive: Option<Designation> },
        /// There is sound thread, of the wrong hand.
        SoundOtherHand,
        /// No insert sizes are known for this form.
        NoInsertKnown,
        /// The insert's tap and the least bore before it.
        InsertTap { major: Length, bore: Length },
        /// A unit that clamps itself in the shell needs no thread.
        ClampIn,
        /// Filled with braze and cut anew.
        Fill,
        /// What to mind with this step.
        Mind { step: Step },
        /// Nobody rides it before the fit is shown.
        Steering,
        /// What a row of the tables notes.
        RowNote { note: Text },
        /// A cure, and why.
        Cure { by: Step, why: Vec<RescueFact> },
    }
    /// What can be behind a symptom.
    Cause {
        /// Damage of the frame.
        Damaged { damage: Damage },
        /// Dirt, paint or hardened compound.
        Dirt,
        /// A part of another pitch, hand, flank angle or size.
        OtherPart,
        /// A bruised first thread.
        BruisedStart,
        /// A part at the bottom of its limits, stretched or undersize.
        SmallPart,
        /// Turned the wrong way.
        WrongWay,
        /// A slip fit by design.
        SlipByDesign,
        /// Bores that are not on one axis.
        OffAxis,
        /// A worn or dirty bearing.
        WornBearing,
        /// A spindle larger than the bearing bore.
        LargeSpindle,
        /// Preload, or a stack too wide.
        SideLoad,
        /// End faces out of parallel.
        FacesNotParallel,
        /// A bent steerer or fork.
        BentSteerer,
        /// A seat or race that sits crooked.
        CrookedRace,
        /// Bearings adjusted loose or too tight.
        Adjustment,
        /// A rotor that runs out.
        RotorRunOut,
        /// A cap or spacer of the hub is missing.
        HubAside,
        /// An adapter turned round, or of another size.
        Adapter,
        /// A mount face with paint on it, or out of square.
        MountFace,
        /// Pistons that stick.
        Pistons,
    }
}

asks! {
    /// What is measured, tried or asked of a spoilt place.
    RescueAsk {
        /// Largest and smallest bore, and the part.
        Gap => BoreGauge,
        /// What both members are made of.
        Materials => Magnet,
        /// The outside around it.
        Outside => OutsideCaliper,
        /// The new part.
        NewPart => Micrometer,
        /// Sizes and threads that parts exist in.
        SizesMade => Sheet,
        /// The interference that the part's maker wants.
        WantedPress => Sheet,
        /// The greatest gap on the compound's data sheet.
        CompoundSheet => Sheet,
        /// Both gauges, at both ends.
        BothGauges => ThreadGauges,
        /// The hand, where the thread shows.
        HandShows => Eye,
        /// Bore over the crests, and pitch diameter.
        Crests => ThreadGauges,
        /// The insert's drill, tap and length.
        InsertSizes => Sheet,
        /// What a clamp-in unit needs.
        ClampRange => BoreGauge,
        /// The frame maker's consent to heat.
        Consent => Maker,
        /// Clean grooves.
        Grooves => Eye,
        /// Pitch and hand of both.
        PitchAndHand => PitchGauge,
        /// A chaser from the sound end.
        ChaseFromSoundEnd => Hand,
        /// A known good part, or a good counterpart.
        GoodPart => Part,
        /// Soaked, and given time.
        Soaked => Hand,
        /// A tool that cannot slip off.
        FirmTool => Hand,
        /// How the joint is meant to hold.
        HowItHolds => Sheet,
        /// Clean seats.
        Seats => Eye,
        /// The bearing out of the frame.
        BearingInHand => Hand,
        /// The centres of both bores.
        Centres => DialAtPilot,
        /// Turned without side load.
        WithoutSideLoad => Hand,
        /// Spindle and bearing bore.
        SpindleAndBearing => BoreGauge,
        /// Each bearing alone.
        EachBearing => Hand,
        /// A clean tube without a sleeve.
        CleanTube => Eye,
        /// The post's outside.
        PostOutside => Micrometer,
        /// The tube's bore at three depths.
        TubeBore => BoreGauge,
        /// The tube's outside and wall.
        TubeWall => WallGauge,
        /// A straight steerer, a true crown seat.
        SteererStraight => DialAtPilot,
        /// Both races seated all round.
        RacesSeated => Feeler,
        /// Ink on both faces.
        InkOnFaces => Eye,
        /// The rotor's run-out.
        RotorRunOut => DialAtPilot,
        /// The hub over its end caps.
        HubWidth => OutsideCaliper,
        /// The adapter.
        Adapter => Sheet,
        /// The mount's faces.
        MountFaces => DialAtAxle,
        /// Adjuster and bearing.
        Adjuster => Hand,
        /// Which of the two moves.
        WhichMoves => Hand,
    }
}

fact_kinds! {
    /// What is measured, tried or asked next.
    Ask {
        /// Of a spoilt place.
        Rescue(RescueAsk),
        /// What a judgement asks.
        Judged(judge::Ask),
    }
}

impl Ask {
    /// With what it is answered.
    #[must_use]
    pub fn with(&self) -> Instrument {
        match self {
            Self::Rescue(ask) => ask.with(),
            Self::Judged(ask) => ask.with(),
        }
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(Damage, Step, RescueFact, Finding, Designation);
