//! A symptom is not a diagnosis: what can be behind it, and in which order to look.

use alloc::vec::Vec;

use super::facts::{Ask, Cause, RescueAsk};
use super::option::Damage;
use crate::fact::closed_words;
use crate::measure::Outcome;

closed_words! {
    /// What was noticed.
    #[cfg_attr(feature = "serde", derive(serde::Deserialize))]
    Symptom {
        /// A threaded part jams after a few turns.
        JamsAfterTurns,
        /// A threaded part is loose.
        LooseThread,
        /// A threaded part does not come out.
        WillNotUnscrew,
        /// A pressed part goes in or moves by hand.
        PressedPartLoose,
        /// A pressed bearing runs rough.
        RunsRough,
        /// A spindle has to be driven in, or stops turning within a turn.
        SpindleBinds,
        /// The post slips or does not go in.
        PostMisfits,
        /// Races or bearings wear on one side.
        OneSidedWear,
        /// The rotor rubs at every setting of the caliper.
        RotorRubs,
        /// The crank or fork knocks or rocks.
        Rocks,
    }
}

impl Cause {
    const fn of(damage: Damage) -> Self {
        Self::Damaged { damage }
    }
    /// The damage that it would be, where it is one of the frame's.
    #[must_use]
    pub const fn damage(&self) -> Option<Damage> {
        match self {
            Self::Damaged { damage } => Some(*damage),
            _ => None,
        }
    }
}

/// What can be behind a symptom, and the checks in order. The outcome is always undecided: no check has been made.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// What was noticed.
    pub symptom: Symptom,
    /// Undecided: a symptom alone shows nothing.
    pub outcome: Outcome,
    /// What can be behind it.
    pub causes: Vec<Cause>,
    /// The checks, in order.
    pub checks: Vec<Ask>,
}

const CROSS_CUT: Cause = Cause::of(Damage::CrossCut);
const OVER_CUT: Cause = Cause::of(Damage::OverCut);
const OVER_BORED: Cause = Cause::of(Damage::OverBored);
const SEIZED: Cause = Cause::of(Damage::Seized);
const PINCHED: Cause = Cause::of(Damage::Pinched);
const LOOSE: Cause = Cause::of(Damage::Loose);
const OVAL: Cause = Cause::of(Damage::Oval);

impl Symptom {
    /// What can be behind it (common practice of the trade).
    const fn causes(self) -> &'static [Cause] {
        use Cause::*;
        match self {
            Self::JamsAfterTurns => &[Dirt, CROSS_CUT, OtherPart, BruisedStart],
            Self::LooseThread => &[SmallPart, OVER_CUT, OtherPart],
            Self::WillNotUnscrew => &[WrongWay, SEIZED, CROSS_CUT],
            Self::PressedPartLoose => &[OVER_BORED, OVAL, SmallPart, SlipByDesign],
            Self::RunsRough => &[PINCHED, OVAL, OffAxis, WornBearing],
            Self::SpindleBinds => &[LargeSpindle, OffAxis, SideLoad, PINCHED],
            Self::PostMisfits => &[OtherPart, PINCHED, Dirt, OVER_BORED],
            Self::OneSidedWear => &[FacesNotParallel, BentSteerer, CrookedRace, Adjustment],
            Self::RotorRubs => &[RotorRunOut, HubAside, Adapter, MountFace, Pistons],
            Self::Rocks => &[WornBearing, Adjustment, OVAL, LOOSE],
        }
    }

    /// The checks, from what costs nothing to what cannot be undone (common practice of the trade).
    const fn checks(self) -> &'static [RescueAsk] {
        use RescueAsk::*;
        match self {
            Self::JamsAfterTurns => &[Grooves, PitchAndHand, ChaseFromSoundEnd, BothGauges],
            Self::LooseThread => &[GoodPart, PitchAndHand, BothGauges],
            Self::WillNotUnscrew => &[HandShows, Soaked, FirmTool],
            Self::PressedPartLoose => &[HowItHolds, Seats, Gap, GoodPart],
            Self::RunsRough => &[BearingInHand, Gap, Centres],
            Self::SpindleBinds => &[WithoutSideLoad, SpindleAndBearing, EachBearing, Centres],
            Self::PostMisfits => &[CleanTube, PostOutside, TubeBore, TubeWall],
            Self::OneSidedWear => &[SteererStraight, RacesSeated, InkOnFaces],
            Self::RotorRubs => &[RotorRunOut, HubWidth, Adapter, MountFaces],
            Self::Rocks => &[Adjuster, WhichMoves, Gap],
        }
    }
}

/// What can be behind a symptom, and in which order to check.
///
/// ```
/// use framegauge::{measure::Outcome, rescue::{RescueAsk, Symptom, diagnose}};
/// let jams = diagnose(Symptom::JamsAfterTurns);
/// assert_eq!(jams.outcome, Outcome::Undecided);
/// assert_eq!(jams.checks[0], RescueAsk::Grooves.into());
/// assert_eq!(jams.checks.last(), Some(&RescueAsk::BothGauges.into()));
/// ```
#[must_use]
pub fn diagnose(symptom: Symptom) -> Diagnosis {
    Diagnosis {
        symptom,
        outcome: Outcome::Undecided,
        causes: symptom.causes().to_vec(),
        checks: symptom.checks().iter().cloned().map(Ask::from).collect(),
    }
}
