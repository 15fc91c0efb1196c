//! The frame sheet: what was measured and seen on one frame, each reading with its place and uncertainty.

use alloc::string::String;
use alloc::vec::Vec;

use crate::measure::{DecisionRule, Limits, Reading};
use crate::quantity::{Angle, Length, Pitch};
use crate::standard::{BrakeSystem, End, ThreadedPart};
use crate::thread::{Hand, ThreadSize};

macro_rules! words {
    ($( $(#[$doc:meta])* $name:ident { $( $(#[$variant_doc:meta])* $variant:ident ),* $(,)? } )*) => {$(
        $(#[$doc])*
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, Hash, Default, strum::Display, strum::EnumString, strum::EnumIter,
            strum::IntoStaticStr,
        )]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(rename_all = "snake_case"))]
        #[strum(serialize_all = "snake_case")]
        pub enum $name { $( $(#[$variant_doc])* $variant ),* }
    )*};
}

words! {
    /// Material of a joint: where the cutter would go, not what the frame is called.
    JointMaterial {
        /// Not stated.
        #[default]
        Unknown,
        /// Steel.
        Steel,
        /// Aluminium alloy.
        Aluminium,
        /// Titanium alloy.
        Titanium,
        /// Carbon laminate, or carbon moulded around the place.
        Carbon,
    }

    /// What covers a place.
    Coating {
        /// Nothing was stated.
        #[default]
        Unstated,
        /// Bare metal.
        Bare,
        /// A thin mist of paint.
        Overspray,
        /// Paint.
        Painted,
        /// Powder coat.
        PowderCoated,
    }

    /// State of a thread as seen and felt.
    ThreadState {
        /// Nothing was stated.
        #[default]
        Unstated,
        /// Clean, takes its part by hand.
        Sound,
        /// Paint or dirt in it.
        Fouled,
        /// Damaged at the start, or rough.
        Rough,
        /// Cut by a part that was started askew or had another thread.
        Crossed,
        /// Its part is loose in it.
        Loose,
        /// Torn out.
        Stripped,
        /// Not cut yet: a plain hole.
        Uncut,
    }

    /// What a thread gauge did (principle of ISO 1502).
    GaugeResult {
        /// Not tried.
        #[default]
        Untried,
        /// GO: screwed through by hand. NOT GO: stopped within two turns.
        Passed,
        /// GO: would not go through. NOT GO: went in further than two turns.
        Failed,
    }

    /// Whether a part sits in its place.
    Fitted {
        /// It is not fitted.
        #[default]
        No,
        /// It is fitted and can be taken out.
        Yes,
        /// It is fitted and does not come out with a reasonable effort: it stays.
        Stuck,
    }
}

/// What every interface of the sheet can state.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Common {
    /// Material of the joint; the frame's material where none is stated.
    pub material: JointMaterial,
    /// What it is believed to be: a code or trade name. A label proves nothing.
    pub believed: Option<String>,
    /// What covers it.
    pub coating: Coating,
    /// Limits that the frame or component maker wrote; they override ours.
    pub limits: Vec<MakerLimit>,
    /// Anything else, carried into the plan.
    pub note: String,
}

/// A limit written by a frame or component maker.
#[derive(Debug, Clone, PartialEq)]
pub struct MakerLimit {
    /// What it limits: `bore`, `width`, `interference`, `depth`, `thickness`, `parallelism` …
    pub what: String,
    /// The limit.
    pub limits: Limits,
    /// Who wrote it, and where.
    pub owner: String,
}

/// A diameter with where it was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlacedReading {
    /// The reading.
    pub reading: Reading,
    /// Direction, counted clockwise as seen facing the opening; `None` when not stated.
    pub angle: Option<Angle>,
    /// Depth from the opening; `None` when not stated.
    pub depth: Option<Length>,
}

/// A mating part: its own readings, or the limits its maker prints.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Part {
    /// What it is, in words.
    pub name: String,
    /// Outside diameter where it fits.
    pub outside: Vec<Reading>,
    /// Outside diameter as its maker limits it.
    pub outside_limits: Option<Limits>,
    /// Bore where it fits over something.
    pub bore: Vec<Reading>,
    /// How long the part goes in.
    pub insertion: Option<Length>,
    /// Its material.
    pub material: JointMaterial,
    /// Whether it sits in its place.
    pub fitted: Fitted,
}

/// Heights around a face, along the pilot axis, positive outwards.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Face {
    /// What covers the face.
    pub coating: Coating,
    /// Radius at which it was probed.
    pub probe_radius: Option<Length>,
    /// Outer radius of the ring that must be flat.
    pub outer_radius: Option<Length>,
    /// Inner radius of that ring.
    pub inner_radius: Option<Length>,
    /// Height at each angle; angles clockwise from twelve o'clock, seen from outside.
    pub probes: Vec<(Angle, Reading)>,
    /// Heights after a pass, in the same way.
    pub after: Vec<(Angle, Reading)>,
    /// How much may come off in all, where the sheet's writer knows a limit of his own.
    pub limits: Vec<MakerLimit>,
}

/// One side of a bottom-bracket shell.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ShellSide {
    /// Hand found on this side.
    pub hand: Option<Hand>,
    /// Minor diameter of the thread.
    pub minor: Vec<Reading>,
    /// State of the thread.
    pub state: ThreadState,
    /// What the GO gauge or a known good cup did.
    pub go: GaugeResult,
    /// What the NOT GO gauge did.
    pub not_go: GaugeResult,
    /// What the GO gauge did after the work.
    pub go_after: GaugeResult,
    /// What the NOT GO gauge did after the work.
    pub not_go_after: GaugeResult,
    /// The face.
    pub face: Option<Face>,
}

/// The bottom-bracket shell.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ShellSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Width over the faces.
    /// Read before the work: what comes off the faces is taken from it.
    pub width: Vec<Reading>,
    /// Distance of the drive-side face from the frame's middle plane.
    pub half_drive: Option<Reading>,
    /// Distance of the non-drive-side face from the middle plane.
    pub half_non_drive: Option<Reading>,
    /// Bore of an unthreaded shell.
    pub bore: Vec<PlacedReading>,
    /// Bore after the work.
    pub after: Vec<PlacedReading>,
    /// Pitch, read with a gauge.
    pub pitch: Option<Pitch>,
    /// Code of the width window of the crank that will be fitted.
    pub window: Option<String>,
    /// Shell width that the spindle or kit at hand is made for.
    pub made_for: Option<Length>,
    /// The cup or bearing that will be pressed in.
    pub part: Option<Part>,
    /// The chain side.
    pub drive: ShellSide,
    /// The other side.
    pub non_drive: ShellSide,
}

/// One end of the head tube.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct HeadEnd {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Bore or seat.
    pub bore: Vec<PlacedReading>,
    /// Bore or seat after the work.
    pub after: Vec<PlacedReading>,
    /// Depth of the bore to its shoulder.
    pub bore_depth: Option<Reading>,
    /// Outside diameter of the head tube there.
    pub outside: Vec<Reading>,
    /// The face.
    pub face: Option<Face>,
    /// The cup or bearing.
    pub part: Option<Part>,
    /// Gap between fork crown and head tube, lower end only.
    pub crown_gap: Option<Reading>,
}

/// The crown-race seat of the fork.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CrownSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Diameter of the seat.
    pub seat: Vec<Reading>,
    /// Bore of the race.
    pub race: Vec<Reading>,
}

/// The steerer.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SteererSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Outside diameter, over the crests where it is threaded.
    pub outside: Vec<Reading>,
    /// Pitch, where it is threaded.
    pub pitch: Option<Pitch>,
    /// Length from the crown-race seat to its end.
    pub length: Option<Reading>,
    /// What stands on it, from the crown up: lower headset, head tube, upper headset, spacers, stem.
    pub stack: Vec<Reading>,
}

/// The seat tube.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SeatTubeSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Bore at angles and depths.
    pub bore: Vec<PlacedReading>,
    /// Bore after reaming.
    pub after: Vec<PlacedReading>,
    /// Outside diameter.
    pub outside: Vec<Reading>,
    /// How deep the bore is clear for a reamer.
    pub clear_depth: Option<Length>,
    /// The post that will be fitted.
    pub post: Option<Part>,
    /// Wall of the shim at hand, if one is meant to be used.
    pub shim: Option<Length>,
    /// Distance from the top of the tube to the lower edge of the top-tube weld or lug.
    pub weld_depth: Option<Length>,
}

/// A thread that is neither shell nor steerer: axle, hanger, boss.
#[derive(Debug, Clone, PartialEq)]
pub struct ThreadSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// Where it is.
    pub place: ThreadedPart,
    /// Front or rear, where it belongs to a wheel.
    pub end: End,
    /// What to call it.
    pub name: String,
    /// The thread that the mating part has, where that is known.
    pub mate: Option<ThreadSize>,
    /// Hole or minor diameter.
    pub minor: Vec<Reading>,
    /// Pitch, read with a gauge.
    pub pitch: Option<Pitch>,
    /// Hand found.
    pub hand: Option<Hand>,
    /// State of the thread.
    pub state: ThreadState,
    /// What the GO gauge or the mating part did.
    pub go: GaugeResult,
    /// What the NOT GO gauge did.
    pub not_go: GaugeResult,
    /// What the GO gauge did after the work.
    pub go_after: GaugeResult,
    /// What the NOT GO gauge did after the work.
    pub not_go_after: GaugeResult,
}

/// A point of a brake mount: along and across the mount, and its height along the cutter's pilot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PadPoint {
    /// Along the mount.
    pub along: Length,
    /// Across the mount: towards the wheel is positive.
    pub across: Length,
    /// Height, positive outwards.
    pub height: Reading,
}

/// A disc-brake mount.
#[derive(Debug, Clone, PartialEq)]
pub struct BrakeSheet {
    /// Material, belief, coating, makers' limits.
    pub common: Common,
    /// System of the mount.
    pub system: BrakeSystem,
    /// Front or rear.
    pub end: End,
    /// Heights of its faces.
    pub points: Vec<PadPoint>,
    /// Heights after a pass.
    pub after: Vec<PadPoint>,
    /// Thickness of a flat mount, bolt head to caliper.
    /// Read before the work: what comes off is taken from it.
    pub thickness: Option<Reading>,
    /// Length of the bolts at hand.
    pub bolt: Option<Length>,
    /// Clearance of pad and rotor on each side.
    pub pad_clearance: Option<Length>,
    /// Length of the pad across the tilt.
    pub pad_length: Option<Length>,
}

/// Everything measured and seen on one frame.
///
/// Build it in code, or read it from TOML or JSON through `WrittenSheet` (feature `serde`).
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FrameSheet {
    /// What the frame is, in the shop's words.
    pub frame: String,
    /// The data are invented for a demonstration.
    pub invented: bool,
    /// The frame's material, where a joint states none.
    pub material: JointMaterial,
    /// Rule by which readings are held against limits.
    pub rule: DecisionRule,
    /// Bottom-bracket shell.
    pub shell: Option<ShellSheet>,
    /// Upper end of the head tube.
    pub head_upper: Option<HeadEnd>,
    /// Lower end of the head tube.
    pub head_lower: Option<HeadEnd>,
    /// Crown-race seat.
    pub crown: Option<CrownSheet>,
    /// Steerer.
    pub steerer: Option<SteererSheet>,
    /// Seat tube.
    pub seat_tube: Option<SeatTubeSheet>,
    /// Axle threads, hanger, bosses, in the order they were measured.
    pub threads: Vec<ThreadSheet>,
    /// Brake mounts.
    pub brakes: Vec<BrakeSheet>,
}
