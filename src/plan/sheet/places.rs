//! The places of a frame as a sheet states them. Each is declared once: struct, reader and schema.

use alloc::string::String;
use alloc::vec::Vec;

use super::limit::{
    CrownLimits, FaceLimits, HeadLimits, MakerLimit, MountLimits, OtherLimits, SeatTubeLimits,
    ShellLimits, SteererLimits, ThreadLimits,
};
use super::values::{FacePoint, FileName, MountPoint, Said, Size};
use super::words::{Coating, CoatingLeft, Fitted, Marks, PartDid, Taken};
use crate::fit::MaterialKind;
use crate::judge::{Passed, ThreadSeen};
use crate::measure::{Limits, Placed, Reading};
use crate::quantity::{Length, Pitch};
use crate::read::{Deep, Given, Inside, Outside, form};
use crate::standard::{BrakeSystem, End, ThreadedPart};
use crate::thread::{Hand, ThreadSize};

/// What every place of a sheet can state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Common<'a> {
    /// Material of the joint; the frame's material where none is stated.
    pub material: Option<MaterialKind>,
    /// What it is believed to be.
    pub believed: Option<&'a str>,
    /// What was proved by a gauge, a plug or the mating part.
    pub confirmed: Option<&'a str>,
    /// Who of the makers allows the cut, and where.
    pub consent: Option<&'a str>,
    /// What covers it.
    pub coating: Option<Coating>,
    /// Makers' limits.
    pub limits: &'a [MakerLimit],
    /// A note.
    pub note: Option<&'a str>,
    /// Photographs.
    pub photos: &'a [Photo],
}

/// Declares a place: what every place can state, and what only this one can.
macro_rules! places {
    ($( $(#[$meta:meta])* $name:ident, $limits:ty { $( #[doc = $words:literal] $(#[doc = $more:literal])* $field:ident : $kind:ty $(=> $by:ty)?, )* } )*) => {$(
        form! {
            $(#[$meta])*
            #[derive(Default)]
            $name {
                /// Material of the joint: where the cutter would go, not what the frame is called.
                material: Option<MaterialKind>,
                /// What it is believed to be: a code or trade name. A label proves nothing.
                believed: Option<String> => Said,
                /// Which standard or size was proved by a gauge, a plug of known size or the mating part.
                confirmed: Option<String> => Said,
                /// Which maker allows the cut, and where it is written.
                consent: Option<String> => Said,
                /// What covers it.
                coating: Option<Coating>,
                /// Limits that the frame or component maker wrote; the tightest counts.
                limits: Vec<MakerLimit> => $limits,
                /// Anything else: printed where the work is done, and in the record.
                note: Option<String> => Said,
                /// Photographs of the place, beside the sheet.
                photos: Vec<Photo>,
                $( #[doc = $words] $(#[doc = $more])* $field : $kind $(=> $by)?, )*
            }
        }

        impl $name {
            pub(crate) fn common(&self) -> Common<'_> {
                Common {
                    material: self.material,
                    believed: self.believed.as_deref(),
                    confirmed: self.confirmed.as_deref(),
                    consent: self.consent.as_deref(),
                    coating: self.coating,
                    limits: &self.limits,
                    note: self.note.as_deref(),
                    photos: &self.photos,
                }
            }
        }
    )*};
}

form! {
    /// A photograph, by its file beside the sheet. Whoever reads the sheet reads the file; nothing here does.
    #[cfg_attr(feature = "serde", derive(serde::Serialize))]
    Photo {
        /// The file, such as `seat_tube_before.jpg`.
        file: String => FileName,
        /// What it shows.
        caption: Option<String> => Said,
        /// Whether it was taken before or after the work.
        when: Option<Taken>,
    }

    /// A mating part: its own readings, or the limits its maker prints.
    #[derive(Default)]
    Part {
        /// What it is, in words.
        name: Option<String> => Said,
        /// Outside diameter where it fits.
        outside: Vec<Reading> => Outside,
        /// Outside diameter as its maker limits it.
        outside_limits: Option<Limits>,
        /// Bore where it fits over something.
        bore: Vec<Reading> => Inside,
        /// How long the part goes in.
        insertion: Option<Length> => Size,
        /// Its material.
        material: Option<MaterialKind>,
        /// Whether it sits in its place: `no`, `yes` or `stuck`.
        fitted: Option<Fitted>,
    }

    /// A pass over a bore or seat, as it was found after it.
    #[derive(Default)]
    BorePass {
        /// Bore after the pass.
        bore: Vec<Placed> => Inside,
        /// What is left of the coating.
        coating_left: Option<CoatingLeft>,
        /// Marks of the cutter.
        marks: Option<Marks>,
        /// What the mating part did when it was tried.
        part: Option<PartDid>,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// A pass over the bores of a shell, or readings of its width after its faces were cut.
    #[derive(Default)]
    ShellPass {
        /// Bore after the pass.
        bore: Vec<Placed> => Inside,
        /// Width over the faces after the pass.
        width: Vec<Reading> => Outside,
        /// What is left of the coating.
        coating_left: Option<CoatingLeft>,
        /// Marks of the cutter.
        marks: Option<Marks>,
        /// What the mating part did when it was tried.
        part: Option<PartDid>,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// A pass through a thread.
    #[derive(Default)]
    ThreadPass {
        /// What the GO gauge or a known good part did after it.
        go: Option<Passed>,
        /// What the NOT GO gauge did after it.
        not_go: Option<Passed>,
        /// Minor diameter after it.
        minor: Vec<Reading> => Inside,
        /// What is left of the coating.
        coating_left: Option<CoatingLeft>,
        /// Marks of the cutter.
        marks: Option<Marks>,
        /// What the mating part did when it was tried.
        part: Option<PartDid>,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// A pass over a face.
    #[derive(Default)]
    FacePass {
        /// Heights after it, at the same places and from the same datum.
        probes: Vec<FacePoint>,
        /// What is left of the coating.
        coating_left: Option<CoatingLeft>,
        /// Marks of the cutter.
        marks: Option<Marks>,
        /// What the mating part did when it was tried.
        part: Option<PartDid>,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// A pass over a brake mount.
    #[derive(Default)]
    MountPass {
        /// Heights after it, at the same places and from the same datum.
        points: Vec<MountPoint>,
        /// Thickness of a flat mount after it.
        thickness: Option<Reading> => Outside,
        /// What is left of the coating.
        coating_left: Option<CoatingLeft>,
        /// Marks of the cutter.
        marks: Option<Marks>,
        /// What the mating part did when it was tried.
        part: Option<PartDid>,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// A face: heights around a ring, along the pilot axis, positive outwards.
    #[derive(Default)]
    Face {
        /// What covers it; what covers its place where nothing is stated.
        coating: Option<Coating>,
        /// Radius at which it was probed.
        probe_radius: Option<Length> => Size,
        /// Outer radius of the ring that must be flat.
        outer_radius: Option<Length> => Size,
        /// Inner radius of that ring.
        inner_radius: Option<Length> => Size,
        /// Heights: `45 deg: 0.03 mm`, clockwise from twelve o'clock, seen from outside.
        probes: Vec<FacePoint>,
        /// Heights after the first pass.
        after: Vec<FacePoint>,
        /// Passes, each as it was found after it.
        passes: Vec<FacePass>,
        /// Limits: how much may come off in all, how far out of square it may be.
        limits: Vec<MakerLimit> => FaceLimits,
        /// Anything else.
        note: Option<String> => Said,
    }

    /// One side of a bottom-bracket shell.
    #[derive(Default)]
    ShellSide {
        /// Material of this side, where it is another than the shell's.
        material: Option<MaterialKind>,
        /// What covers the thread; what covers the shell where nothing is stated.
        coating: Option<Coating>,
        /// Hand found on this side.
        hand: Option<Hand>,
        /// Minor diameter of the thread.
        minor: Vec<Placed> => Inside,
        /// State of the thread.
        state: Option<ThreadSeen>,
        /// What the GO gauge or a known good cup did.
        go: Option<Passed>,
        /// What the NOT GO gauge did.
        not_go: Option<Passed>,
        /// What the GO gauge did after the first pass.
        go_after: Option<Passed>,
        /// What the NOT GO gauge did after the first pass.
        not_go_after: Option<Passed>,
        /// Passes, each as it was found after it.
        passes: Vec<ThreadPass>,
        /// Limits of this side.
        limits: Vec<MakerLimit> => ThreadLimits,
        /// Anything else.
        note: Option<String> => Said,
        /// The face.
        face: Option<Face>,
    }
}

places! {
    /// The seat tube.
    SeatTubeSheet, SeatTubeLimits {
        /// Bore at angles and depths: `10 mm deep, 0 deg: 27.15 mm`.
        bore: Vec<Placed> => Inside,
        /// Bore after the first pass.
        after: Vec<Placed> => Inside,
        /// Passes, each as it was found after it.
        passes: Vec<BorePass>,
        /// Outside diameter.
        outside: Vec<Reading> => Outside,
        /// How deep the bore is clear for a reamer and a post.
        clear_depth: Option<Length> => Size,
        /// The post that will be fitted.
        post: Option<Part>,
        /// Wall of the shim at hand, if one is meant to be used.
        shim: Option<Length> => Size,
        /// Distance from the top of the tube to the lower edge of the top-tube weld or lug.
        weld_depth: Option<Length> => Size,
        /// The slot and ears of the seat clamp.
        slot: Option<OtherSheet>,
    }

    /// The bottom-bracket shell.
    ShellSheet, ShellLimits {
        /// Width over the faces, before the work: what comes off the faces is taken from it.
        width: Vec<Reading> => Outside,
        /// Distance of the drive-side face from the frame's middle plane.
        half_drive: Option<Reading> => Outside,
        /// Distance of the non-drive-side face from the middle plane.
        half_non_drive: Option<Reading> => Outside,
        /// Bore of an unthreaded shell: `5 mm deep, 0 deg: 46.00 mm`.
        bore: Vec<Placed> => Inside,
        /// Bore after the first pass.
        after: Vec<Placed> => Inside,
        /// Passes, each as it was found after it.
        passes: Vec<ShellPass>,
        /// Outside diameter of the shell.
        outside: Vec<Reading> => Outside,
        /// Pitch, read with a gauge.
        pitch: Option<Pitch>,
        /// Code of the width window of the crank that will be fitted.
        window: Option<String> => Said,
        /// Shell width that the spindle or kit at hand is made for.
        made_for: Option<Length> => Size,
        /// The cup or bearing that will be pressed in.
        part: Option<Part>,
        /// The chain side.
        drive: ShellSide => Given,
        /// The other side.
        non_drive: ShellSide => Given,
    }

    /// One end of the head tube.
    HeadEndSheet, HeadLimits {
        /// Bore or seat.
        bore: Vec<Placed> => Inside,
        /// Bore or seat after the first pass.
        after: Vec<Placed> => Inside,
        /// Passes, each as it was found after it.
        passes: Vec<BorePass>,
        /// Depth of the bore to its shoulder.
        bore_depth: Option<Reading> => Deep,
        /// Outside diameter of the head tube there.
        outside: Vec<Reading> => Outside,
        /// The face.
        face: Option<Face>,
        /// The cup or bearing.
        part: Option<Part>,
        /// Gap between fork crown and head tube, lower end only.
        crown_gap: Option<Reading> => Deep,
    }

    /// The crown-race seat.
    CrownSheet, CrownLimits {
        /// Diameter of the seat.
        seat: Vec<Placed> => Outside,
        /// Diameter of the seat after the coating came off.
        after: Vec<Placed> => Outside,
        /// Bore of the race.
        race: Vec<Reading> => Inside,
    }

    /// The steerer.
    SteererSheet, SteererLimits {
        /// Outside diameter, over the crests where it is threaded.
        outside: Vec<Reading> => Outside,
        /// Pitch, where it is threaded.
        pitch: Option<Pitch>,
        /// Length from the crown-race seat to its end.
        length: Option<Reading> => Outside,
        /// What stands on it, from the crown up: lower headset, head tube, upper headset, spacers, stem.
        stack: Vec<Reading> => Outside,
    }

    /// A thread that is neither shell nor steerer: axle, hanger, boss, pedal.
    ThreadSheet, ThreadLimits {
        /// What it is for, in a list: `axle`, `hanger`, `bottle_boss` …
        place: Option<ThreadedPart>,
        /// `front` or `rear`, in a list, where it belongs to a wheel.
        end: Option<End>,
        /// What to call it.
        name: Option<String> => Said,
        /// Thread of the mating part, such as `M12x1`.
        mate: Option<ThreadSize>,
        /// Hole or minor diameter.
        minor: Vec<Placed> => Inside,
        /// Pitch, read with a gauge.
        pitch: Option<Pitch>,
        /// Hand found.
        hand: Option<Hand>,
        /// State of the thread.
        state: Option<ThreadSeen>,
        /// What the GO gauge or the mating part did.
        go: Option<Passed>,
        /// What the NOT GO gauge did.
        not_go: Option<Passed>,
        /// What the GO gauge did after the first pass.
        go_after: Option<Passed>,
        /// What the NOT GO gauge did after the first pass.
        not_go_after: Option<Passed>,
        /// Passes, each as it was found after it.
        passes: Vec<ThreadPass>,
        /// The part that carries it can be replaced, such as a hanger held by a bolt.
        replaceable: Option<bool>,
    }

    /// A disc-brake mount.
    BrakeSheet, MountLimits {
        /// `is`, `pm` or `fm`.
        system: Option<BrakeSystem>,
        /// `front` or `rear`, in a list.
        end: Option<End>,
        /// Heights of its faces: `10 mm along, 5 mm across: 0.03 mm`.
        points: Vec<MountPoint>,
        /// Heights after the first pass.
        after: Vec<MountPoint>,
        /// Passes, each as it was found after it.
        passes: Vec<MountPass>,
        /// Thickness of a flat mount, bolt head to caliper, before the work: what comes off is taken from it.
        thickness: Option<Reading> => Outside,
        /// Length of the bolts at hand.
        bolt: Option<Length> => Size,
        /// Clearance of pad and rotor on each side.
        pad_clearance: Option<Length> => Size,
        /// Length of the pad across the tilt.
        pad_length: Option<Length> => Size,
        /// The underside, where the bolt heads sit.
        underside: Option<OtherSheet>,
    }

    /// A place that is looked at and not cut: a dropout face, a clamp slot, the underside of a mount, chain-guide tabs.
    OtherSheet, OtherLimits {
    }
}
