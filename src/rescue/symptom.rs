//! A symptom is not a diagnosis: what can be behind it, and in which order to look.

use alloc::vec::Vec;

use crate::judge::NextStep;
use crate::measure::Outcome;

use super::option::Damage;

/// What was noticed.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Symptom {
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

/// What can be behind a symptom.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Cause {
    /// In words.
    pub what: &'static str,
    /// The damage it would be, where it is one of the frame's.
    pub damage: Option<Damage>,
}

/// What can be behind a symptom, and the checks in order. The outcome is always undecided: no check has been made.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Diagnosis {
    /// What was noticed.
    pub symptom: Symptom,
    /// Undecided: a symptom alone shows nothing.
    pub outcome: Outcome,
    /// What can be behind it.
    pub causes: Vec<Cause>,
    /// The checks, in order.
    pub checks: Vec<NextStep>,
    /// What not to do meanwhile.
    pub until_then: &'static str,
}

impl core::fmt::Display for Diagnosis {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let causes: Vec<&str> = self.causes.iter().map(|c| c.what).collect();
        writeln!(f, "Nothing is shown yet. It can be: {}.", causes.join("; "))?;
        for (index, check) in self.checks.iter().enumerate() {
            writeln!(
                f,
                "{}. {} ({}): {}",
                index + 1,
                check.ask,
                check.ask.with(),
                crate::fact::Worded::why(&check.ask)
            )?;
        }
        writeln!(f, "Until then: {}.", self.until_then)
    }
}

/// What can be behind a symptom, and in which order to check (common practice of the trade; the order is from what costs
/// nothing to what cannot be undone).
///
/// ```
/// use framegauge::{measure::Outcome, rescue::{Symptom, diagnose}};
/// let jams = diagnose(Symptom::JamsAfterTurns);
/// assert_eq!(jams.outcome, Outcome::Undecided);
/// assert!(jams.checks[0].measure().contains("clean"));
/// assert!(jams.checks.last().unwrap().measure().contains("gauge"));
/// ```
#[must_use]
pub fn diagnose(symptom: Symptom) -> Diagnosis {
    let cause = |what: &'static str, damage: Option<Damage>| Cause { what, damage };
    let check = |measure: &'static str, why: &'static str, with: &'static str| {
        NextStep::new(measure, why, with)
    };
    let (causes, checks, until_then) = match symptom {
        Symptom::JamsAfterTurns => (
            Vec::from([
                cause("dirt, paint or hardened compound in the grooves", None),
                cause("a thread that was cut across", Some(Damage::CrossCut)),
                cause("a part of another pitch, hand or flank angle", None),
                cause("a bruised first thread", None),
            ]),
            Vec::from([
                check(
                    "clean the grooves: pick out, wash, look",
                    "dirt feels like a crossed thread",
                    "pick, brush, solvent, lamp",
                ),
                check(
                    "pitch and hand of hole and part",
                    "the wrong part must not be forced, nor the wrong chaser",
                    "leaf, lamp",
                ),
                check(
                    "chase from the sound end",
                    "takes paint and burrs out, follows the old helix",
                    "chaser of the thread's own size and hand",
                ),
                check(
                    "gauge: GO through, NOT GO at both ends",
                    "only the gauge tells a crossed thread from a clean one",
                    "GO and NOT GO plug",
                ),
            ]),
            "no force, and no verdict from the jam alone",
        ),
        Symptom::LooseThread => (
            Vec::from([
                cause("a part at the bottom of its limits", None),
                cause("a thread worn or tapped too large", Some(Damage::OverCut)),
                cause("a part of a smaller pattern", None),
            ]),
            Vec::from([
                check(
                    "a second and third known good part",
                    "one part may be the small one",
                    "known good parts",
                ),
                check(
                    "pitch and hand of hole and part",
                    "a smaller pattern rattles",
                    "leaf, lamp",
                ),
                check(
                    "gauge: NOT GO at both ends, or pitch diameter over wires",
                    "the bore can be right and the pitch diameter wrong",
                    "NOT GO plug, wires and micrometer",
                ),
            ]),
            "do not judge it by its bore, and do not pack it",
        ),
        Symptom::WillNotUnscrew => (
            Vec::from([
                cause(
                    "turned the wrong way: the hand is not what was assumed",
                    None,
                ),
                cause("corroded, or set in compound", Some(Damage::Seized)),
                cause("a thread cut across", Some(Damage::CrossCut)),
            ]),
            Vec::from([
                check(
                    "the hand, from the pattern or where the thread shows",
                    "the wrong way tightens it",
                    "lamp, leaf",
                ),
                check(
                    "clean and soak the joint",
                    "corrosion and compound give way to time, or to heat on steel",
                    "penetrant, days",
                ),
                check(
                    "a tool that cannot slip off the flats",
                    "rounded flats end the easy ways",
                    "fixed-cup tool clamped in place",
                ),
            ]),
            "no more torque until the hand is known",
        ),
        Symptom::PressedPartLoose => (
            Vec::from([
                cause("a bore worn, bored over or oval", Some(Damage::OverBored)),
                cause("a part stretched or undersize", Some(Damage::Loose)),
                cause("a slip fit by design", None),
            ]),
            Vec::from([
                check(
                    "how the joint is meant to hold",
                    "a slip fit by design is not loose",
                    "the standard, the frame maker",
                ),
                check(
                    "clean both seats",
                    "grit, grease and old compound deceive",
                    "solvent, rag",
                ),
                check(
                    "bore on two axes at two depths, and the part's outside",
                    "the gap decides which cure is open, and which member is out",
                    "bore gauge, micrometer",
                ),
                check(
                    "the part in a good counterpart",
                    "tells which of the two is out",
                    "known good part",
                ),
            ]),
            "do not ride it: a loose cup or race ovals its seat",
        ),
        Symptom::RunsRough => (
            Vec::from([
                cause(
                    "too much press: the ring is squeezed",
                    Some(Damage::Pinched),
                ),
                cause("a bore out of round", Some(Damage::Oval)),
                cause("bores not on one axis", None),
                cause("a worn or dirty bearing", None),
            ]),
            Vec::from([
                check(
                    "clean and turn the bearing out of the frame",
                    "rough in the hand is the bearing itself",
                    "by hand",
                ),
                check(
                    "bore on two axes at two depths, and the ring's outside",
                    "the press takes the clearance inside the bearing",
                    "bore gauge, micrometer",
                ),
                check(
                    "offset of the two bores",
                    "a spindle through crooked bores loads both",
                    "alignment bar",
                ),
            ]),
            "do not ream on a feeling: a caliper cannot settle a press fit",
        ),
        Symptom::SpindleBinds => (
            Vec::from([
                cause("a spindle larger than the bearing bore", None),
                cause("bores not on one axis", None),
                cause("side load: preload, or a stack too wide", None),
                cause("bearings squeezed in the shell", Some(Damage::Pinched)),
            ]),
            Vec::from([
                check(
                    "turn it with the side load taken off",
                    "tells preload from the rest, and costs nothing",
                    "by hand",
                ),
                check(
                    "spindle diameter and bearing bore",
                    "a spindle too large binds in any shell",
                    "micrometer, bore gauge",
                ),
                check(
                    "each bearing alone on the spindle",
                    "one at a time there is no alignment to be wrong",
                    "by hand",
                ),
                check(
                    "centres of both bores",
                    "two directions at right angles",
                    "alignment bar, dial indicator",
                ),
            ]),
            "do not drive the spindle through: the bearings take the blows",
        ),
        Symptom::PostMisfits => (
            Vec::from([
                cause("a post of another size than the tube", None),
                cause(
                    "a tube pinched or bulged at the clamp or lug",
                    Some(Damage::Pinched),
                ),
                cause("burr, paint or a sleeve in the tube", None),
                cause("a tube worn or reamed over", Some(Damage::OverBored)),
            ]),
            Vec::from([
                check(
                    "clean the tube and its slot, and look for a sleeve",
                    "burrs and paint take tenths",
                    "brush, lamp",
                ),
                check(
                    "outside of the post on two axes",
                    "posts are not what they are marked",
                    "micrometer",
                ),
                check(
                    "bore on two axes at the mouth, at the lug and below",
                    "tells shape from size",
                    "telescoping gauge and micrometer",
                ),
                check(
                    "outside of the tube and its wall",
                    "says which post the tube was made for",
                    "caliper, wall gauge",
                ),
            ]),
            "do not ream to the post at hand before the tube is round",
        ),
        Symptom::OneSidedWear => (
            Vec::from([
                cause("end faces out of parallel", None),
                cause("a bent steerer or fork", None),
                cause("a crown seat or race that sits crooked", None),
                cause("bearings run loose or too tight", None),
            ]),
            Vec::from([
                check(
                    "straightness of the steerer, run-out of the crown seat",
                    "gives the same sign, and needs no cutter",
                    "V-blocks, dial indicator",
                ),
                check(
                    "seating of both races all round",
                    "a crooked race wears on one side",
                    "feeler, lamp",
                ),
                check(
                    "ink on both faces and the first light cut",
                    "where the ink goes first the face stands high",
                    "marking ink, facing tool",
                ),
            ]),
            "no verdict from the wear alone",
        ),
        Symptom::RotorRubs => (
            Vec::from([
                cause("a rotor that runs out", None),
                cause("a hub that sits to one side: cap or spacer missing", None),
                cause("an adapter turned round, or of another size", None),
                cause("a mount face with paint on it, or out of square", None),
                cause("pistons that stick", None),
            ]),
            Vec::from([
                check(
                    "run-out of the rotor",
                    "needs no change to the frame",
                    "dial indicator",
                ),
                check(
                    "width of the hub over its end caps",
                    "a missing cap moves the rotor by its whole width",
                    "caliper",
                ),
                check(
                    "adapter: which way round, and what rotor it is for",
                    "rotor sizes are diameters, the caliper moves by half",
                    "marking",
                ),
                check(
                    "paint on the mount faces, then their height against the axle",
                    "facing is for what is left",
                    "scraper, dial indicator",
                ),
            ]),
            "do not face the mount before the hub and rotor are cleared",
        ),
        Symptom::Rocks => (
            Vec::from([
                cause("a worn bearing, or an adjuster come loose", None),
                cause("a seat gone oval", Some(Damage::Oval)),
                cause("a pressed part loose in its bore", Some(Damage::Loose)),
            ]),
            Vec::from([
                check(
                    "adjuster and bearing by hand",
                    "the common cause, and no fault of the frame",
                    "by hand",
                ),
                check(
                    "whether the part moves in the frame, or the bearing in itself",
                    "a finger over the joint feels which",
                    "by hand",
                ),
                check(
                    "largest and smallest bore, and the part's outside",
                    "an oval seat has a gap on one axis only",
                    "bore gauge, micrometer",
                ),
            ]),
            "do not ride a steering that knocks",
        ),
    };
    Diagnosis {
        symptom,
        outcome: Outcome::Undecided,
        causes,
        checks,
        until_then,
    }
}
