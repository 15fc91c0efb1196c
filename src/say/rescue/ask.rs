//! Symptoms, what can be behind them and what is asked, in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use crate::fact::Worded;
use crate::rescue::{Ask, Cause, Diagnosis, RescueAsk, Symptom};

impl RescueAsk {
    /// What to measure or do, and what it decides.
    const fn said(&self) -> (&'static str, &'static str) {
        match self {
            Self::Gap => (
                "largest and smallest bore on two axes at two depths, and the part's outside",
                "the gap at its widest and at its tightest decides what is open, and which of the two is out",
            ),
            Self::Materials => (
                "what both parts are made of",
                "only ductile metal is pressed round; light alloy in steel corrodes fast, and laminate takes no heat",
            ),
            Self::Outside => (
                "outside diameter of the metal around it, and the depth there is",
                "the wall that is left decides; no least wall is published",
            ),
            Self::NewPart => (
                "the new part before it goes in",
                "a nominal size is not a reading",
            ),
            Self::SizesMade => (
                "which sizes or threads parts are made in",
                "an oversize part needs no change to the frame, and a cut without a part for it is no rescue",
            ),
            Self::WantedPress => (
                "interference that the maker of the part wants",
                "a bore as large as the part does not hold it; a shim's wall is (gap + interference) / 2",
            ),
            Self::CompoundSheet => (
                "the greatest gap on the compound's data sheet",
                "beyond it compound is no cure; none is published here",
            ),
            Self::BothGauges => (
                "GO through, NOT GO at both ends, or pitch diameter over wires",
                "the bore can be right and the thread gone; only the gauge tells a crossed or worn thread from a clean one",
            ),
            Self::HandShows => (
                "the hand, from the pattern or where the thread shows",
                "the wrong way tightens it and tears the thread",
            ),
            Self::Crests => (
                "bore over the crests, and pitch diameter",
                "says how much of the thread still bears",
            ),
            Self::InsertSizes => (
                "an insert of this thread: its drill, tap and length",
                "its maker's own figures decide",
            ),
            Self::ClampRange => (
                "bore on two axes at both ends, width, and the range the unit is made for",
                "it has to fit what is left of the bore",
            ),
            Self::Consent => (
                "the frame maker's consent, and the joints near the heat",
                "the braze of the frame itself must not run",
            ),
            Self::Grooves => (
                "clean the grooves: pick out, wash, look",
                "dirt feels like a crossed thread",
            ),
            Self::PitchAndHand => (
                "pitch and hand of hole and part",
                "the wrong part must not be forced, nor the wrong chaser; a smaller pattern rattles",
            ),
            Self::ChaseFromSoundEnd => (
                "chase from the sound end, with a chaser of the thread's own size and hand",
                "takes paint and burrs out, and follows the old helix",
            ),
            Self::GoodPart => (
                "a known good part in it, and the part in a good counterpart",
                "tells which of the two is out",
            ),
            Self::Soaked => (
                "clean and soak the joint, for days",
                "corrosion and compound give way to time, or to heat on steel",
            ),
            Self::FirmTool => (
                "a tool that cannot slip off the flats, clamped in place",
                "rounded flats end the easy ways",
            ),
            Self::HowItHolds => (
                "how the joint is meant to hold",
                "a slip fit by design is not loose",
            ),
            Self::Seats => ("clean both seats", "grit, grease and old compound deceive"),
            Self::BearingInHand => (
                "clean and turn the bearing out of the frame",
                "rough in the hand is the bearing itself",
            ),
            Self::Centres => (
                "centres of the two bores, in two directions at right angles",
                "a spindle through crooked bores loads both",
            ),
            Self::WithoutSideLoad => (
                "turn it with the side load taken off",
                "tells preload from the rest, and costs nothing",
            ),
            Self::SpindleAndBearing => (
                "spindle diameter and bearing bore",
                "a spindle too large binds in any shell",
            ),
            Self::EachBearing => (
                "each bearing alone on the spindle",
                "one at a time there is no alignment to be wrong",
            ),
            Self::CleanTube => (
                "clean the tube and its slot, and look for a sleeve",
                "burrs and paint take tenths",
            ),
            Self::PostOutside => (
                "outside of the post on two axes",
                "posts are not what they are marked",
            ),
            Self::TubeBore => (
                "bore on two axes at the mouth, at the lug and below",
                "tells shape from size",
            ),
            Self::TubeWall => (
                "outside of the tube and its wall",
                "says which post the tube was made for",
            ),
            Self::SteererStraight => (
                "straightness of the steerer, run-out of the crown seat",
                "gives the same sign, and needs no cutter",
            ),
            Self::RacesSeated => (
                "seating of both races all round",
                "a crooked race wears on one side",
            ),
            Self::InkOnFaces => (
                "ink on both faces and the first light cut",
                "where the ink goes first the face stands high",
            ),
            Self::RotorRunOut => ("run-out of the rotor", "needs no change to the frame"),
            Self::HubWidth => (
                "width of the hub over its end caps",
                "a missing cap moves the rotor by its whole width",
            ),
            Self::Adapter => (
                "adapter: which way round, and what rotor it is for",
                "rotor sizes are diameters, the caliper moves by half",
            ),
            Self::MountFaces => (
                "paint on the mount faces, then their height against the axle",
                "facing is for what is left",
            ),
            Self::Adjuster => (
                "adjuster and bearing by hand",
                "the common cause, and no fault of the frame",
            ),
            Self::WhichMoves => (
                "whether the part moves in the frame, or the bearing in itself",
                "a finger over the joint feels which",
            ),
        }
    }
}

impl fmt::Display for RescueAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.said().0)
    }
}

impl Worded for RescueAsk {
    fn why(&self) -> Cow<'static, str> {
        self.said().1.into()
    }
}

impl Ask {
    /// The question in one line.
    ///
    /// ```
    /// use framegauge::rescue::{Ask, RescueAsk};
    /// let ask = Ask::from(RescueAsk::NewPart);
    /// assert_eq!(ask.words(), "the new part before it goes in (outside micrometer): a nominal size is not a reading");
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        format!("{self} ({}): {}", self.with(), self.why())
    }
}

impl fmt::Display for Cause {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Damaged { damage } => damage.words(),
            Self::Dirt => "dirt, burrs, paint or hardened compound",
            Self::OtherPart => "a part of another size, pitch, hand or flank angle",
            Self::BruisedStart => "a bruised first thread",
            Self::SmallPart => "a part at the bottom of its limits, stretched or undersize",
            Self::WrongWay => "turned the wrong way: the hand is not what was assumed",
            Self::SlipByDesign => "a slip fit by design",
            Self::OffAxis => "bores not on one axis",
            Self::WornBearing => "a worn or dirty bearing",
            Self::LargeSpindle => "a spindle larger than the bearing bore",
            Self::SideLoad => "side load: preload, or a stack too wide",
            Self::FacesNotParallel => "end faces out of parallel",
            Self::BentSteerer => "a bent steerer or fork",
            Self::CrookedRace => "a crown seat or race that sits crooked",
            Self::Adjustment => "bearings run loose or too tight, or an adjuster come loose",
            Self::RotorRunOut => "a rotor that runs out",
            Self::HubAside => "a hub that sits to one side: cap or spacer missing",
            Self::Adapter => "an adapter turned round, or of another size",
            Self::MountFace => "a mount face with paint on it, or out of square",
            Self::Pistons => "pistons that stick",
        })
    }
}

impl Worded for Cause {}

impl Symptom {
    /// What not to do before the checks are made.
    #[must_use]
    pub const fn until_then(self) -> &'static str {
        match self {
            Self::JamsAfterTurns => "no force, and no verdict from the jam alone",
            Self::LooseThread => "do not judge it by its bore, and do not pack it",
            Self::WillNotUnscrew => "no more torque until the hand is known",
            Self::PressedPartLoose => "do not ride it: a loose cup or race ovals its seat",
            Self::RunsRough => "do not ream on a feeling: a caliper cannot settle a press fit",
            Self::SpindleBinds => "do not drive the spindle through: the bearings take the blows",
            Self::PostMisfits => "do not ream to the post at hand before the tube is round",
            Self::OneSidedWear => "no verdict from the wear alone",
            Self::RotorRubs => "do not face the mount before the hub and rotor are cleared",
            Self::Rocks => "do not ride a steering that knocks",
        }
    }
}

impl Diagnosis {
    /// In one sentence.
    #[must_use]
    pub fn words(&self) -> String {
        format!(
            "nothing is shown yet; until then: {}",
            self.symptom.until_then()
        )
    }
}

impl fmt::Display for Diagnosis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let causes: Vec<String> = self.causes.iter().map(Cause::to_string).collect();
        writeln!(f, "Nothing is shown yet. It can be: {}.", causes.join("; "))?;
        for (index, check) in self.checks.iter().enumerate() {
            writeln!(f, "{}. {}", index + 1, check.words())?;
        }
        writeln!(f, "Until then: {}.", self.symptom.until_then())
    }
}
