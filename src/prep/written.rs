//! The sheet as a person writes it: every value is text with a unit, every place is said in words.
//!
//! A reading is `27.2 mm +/- 0.05 mm`, or `27.2 mm by micrometer_outside`, or `27.2 mm` where the sheet names an
//! instrument for that kind of measurement. A place stands in front of it: `10 mm deep, 90 deg: 27.15 mm`.

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use serde::de::{self, Visitor};
use serde::{Deserialize, Deserializer};

/// One text, or several. A bare number is refused with the remedy.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Lines(pub Vec<String>);

impl<'de> Deserialize<'de> for Lines {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Reader;
        impl<'de> Visitor<'de> for Reader {
            type Value = Lines;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a text with a unit such as \"27.2 mm\", or a list of such texts")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<Lines, E> {
                Ok(Lines(Vec::from([String::from(text)])))
            }
            fn visit_seq<A: de::SeqAccess<'de>>(self, mut seq: A) -> Result<Lines, A::Error> {
                let mut lines = Vec::new();
                while let Some(Line(text)) = seq.next_element()? {
                    lines.push(text);
                }
                Ok(Lines(lines))
            }
        }
        deserializer.deserialize_any(Reader)
    }
}

/// One text. A bare number is refused with the remedy.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Line(pub String);

impl<'de> Deserialize<'de> for Line {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Reader;
        impl Visitor<'_> for Reader {
            type Value = Line;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a text with a unit, such as \"27.2 mm\"")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<Line, E> {
                Ok(Line(String::from(text)))
            }
        }
        deserializer.deserialize_any(Reader)
    }
}

macro_rules! written {
    ($( $(#[$doc:meta])* $name:ident { $( $(#[$field_doc:meta])* $field:ident : $kind:ty ),* $(,)? } )*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Default, Deserialize)]
        #[serde(deny_unknown_fields, default)]
        pub struct $name { $( $(#[$field_doc])* pub $field: $kind ),* }
    )*};
}

written! {
    /// Which instrument took the readings that name none.
    WrittenInstruments {
        /// Bores.
        inside: Option<String>,
        /// Posts, cups, tubes, widths.
        outside: Option<String>,
        /// Depths.
        depth: Option<String>,
        /// Heights of faces.
        height: Option<String>,
    }
    /// A limit that the frame or component maker wrote.
    WrittenLimit {
        /// What it limits.
        what: String,
        /// At least.
        lower: Option<Line>,
        /// At most.
        upper: Option<Line>,
        /// Who wrote it, and where.
        owner: String,
    }
    /// A mating part.
    WrittenPart {
        /// What it is.
        name: String,
        /// Readings of its outside.
        outside: Lines,
        /// Limits of its outside, as its maker prints them: `46.00 mm to 46.05 mm` or `46 +0.05/-0 mm`.
        outside_limits: Option<Line>,
        /// Readings of its bore.
        bore: Lines,
        /// How long it goes in.
        insertion: Option<Line>,
        /// Its material.
        material: Option<String>,
        /// `no`, `yes` or `stuck`.
        fitted: Option<String>,
    }
    /// A face.
    WrittenFace {
        /// What covers it.
        coating: Option<String>,
        /// Radius of the probes.
        probe_radius: Option<Line>,
        /// Outer radius of the ring.
        outer_radius: Option<Line>,
        /// Inner radius of the ring.
        inner_radius: Option<Line>,
        /// `45 deg: 0.03 mm`, outwards positive, clockwise from twelve o'clock seen from outside.
        probes: Lines,
        /// The same after a pass.
        after: Lines,
        /// Limits known to the writer.
        limits: Vec<WrittenLimit>,
    }
    /// One side of a shell.
    WrittenShellSide {
        /// `left` or `right`: the hand of the thread.
        hand: Option<String>,
        /// Minor diameter.
        minor: Lines,
        /// State of the thread.
        state: Option<String>,
        /// GO gauge: `passed` or `failed`.
        go: Option<String>,
        /// NOT GO gauge: `passed` (stopped within two turns) or `failed`.
        not_go: Option<String>,
        /// GO gauge after the work.
        go_after: Option<String>,
        /// NOT GO gauge after the work.
        not_go_after: Option<String>,
        /// The face.
        face: Option<WrittenFace>,
    }
    /// The shell.
    WrittenShell {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Width over the faces.
        width: Lines,
        /// Drive-side face to the middle plane.
        half_drive: Option<Line>,
        /// Non-drive-side face to the middle plane.
        half_non_drive: Option<Line>,
        /// Bore.
        bore: Lines,
        /// Bore after the work.
        after: Lines,
        /// Pitch.
        pitch: Option<Line>,
        /// Code of a width window.
        window: Option<String>,
        /// Shell width that the spindle at hand is made for.
        made_for: Option<Line>,
        /// The part to be pressed in.
        part: Option<WrittenPart>,
        /// Drive side.
        drive: WrittenShellSide,
        /// Non-drive side.
        non_drive: WrittenShellSide,
    }
    /// One end of the head tube.
    WrittenHeadEnd {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Bore or seat.
        bore: Lines,
        /// Bore or seat after the work.
        after: Lines,
        /// Depth of the bore.
        bore_depth: Option<Line>,
        /// Outside diameter.
        outside: Lines,
        /// The face.
        face: Option<WrittenFace>,
        /// The cup or bearing.
        part: Option<WrittenPart>,
        /// Gap to the fork crown.
        crown_gap: Option<Line>,
    }
    /// Both ends of the head tube.
    WrittenHeadTube {
        /// Upper end.
        upper: Option<WrittenHeadEnd>,
        /// Lower end.
        lower: Option<WrittenHeadEnd>,
    }
    /// The crown-race seat.
    WrittenCrown {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Diameter of the seat.
        seat: Lines,
        /// Bore of the race.
        race: Lines,
    }
    /// The steerer.
    WrittenSteerer {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Outside diameter.
        outside: Lines,
        /// Pitch.
        pitch: Option<Line>,
        /// Length from the crown-race seat to its end.
        length: Option<Line>,
        /// What stands on it, from the crown up: lower headset, head tube, upper headset, spacers, stem.
        stack: Lines,
    }
    /// The seat tube.
    WrittenSeatTube {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Bore: `10 mm deep, 0 deg: 27.15 mm`.
        bore: Lines,
        /// Bore after reaming.
        after: Lines,
        /// Outside diameter.
        outside: Lines,
        /// How deep the bore is clear.
        clear_depth: Option<Line>,
        /// The post.
        post: Option<WrittenPart>,
        /// Wall of the shim at hand.
        shim: Option<Line>,
        /// Top of the tube to the lower edge of the weld.
        weld_depth: Option<Line>,
    }
    /// An axle, hanger or boss thread.
    WrittenThread {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// Where it is: `axle`, `hanger`, `bottle_boss` …
        place: String,
        /// `front` or `rear`, where it belongs to a wheel.
        end: Option<String>,
        /// What to call it.
        name: String,
        /// Thread of the mating part, such as `M12x1`.
        mate: Option<Line>,
        /// Hole or minor diameter.
        minor: Lines,
        /// Pitch.
        pitch: Option<Line>,
        /// Hand found.
        hand: Option<String>,
        /// State of the thread.
        state: Option<String>,
        /// GO gauge.
        go: Option<String>,
        /// NOT GO gauge.
        not_go: Option<String>,
        /// GO gauge after the work.
        go_after: Option<String>,
        /// NOT GO gauge after the work.
        not_go_after: Option<String>,
    }
    /// A brake mount.
    WrittenBrake {
        /// Material of the joint.
        material: Option<String>,
        /// What it is believed to be.
        believed: Option<String>,
        /// What covers it.
        coating: Option<String>,
        /// Makers' limits.
        limits: Vec<WrittenLimit>,
        /// A note.
        note: String,
        /// `is`, `pm` or `fm`.
        system: String,
        /// `front` or `rear`.
        end: String,
        /// `10 mm along, 5 mm across: 0.03 mm`.
        points: Lines,
        /// The same after a pass.
        after: Lines,
        /// Thickness of a flat mount.
        thickness: Option<Line>,
        /// Length of the bolts at hand.
        bolt: Option<Line>,
        /// Clearance of pad and rotor on each side.
        pad_clearance: Option<Line>,
        /// Length of the pad across the tilt.
        pad_length: Option<Line>,
    }
    /// The whole sheet as written. [`WrittenSheet::read`] turns it into a [`crate::prep::FrameSheet`].
    WrittenSheet {
        /// Version of this form; 1.
        format: Option<u32>,
        /// What the frame is.
        frame: String,
        /// The data are invented for a demonstration.
        invented: bool,
        /// Material of the frame.
        material: Option<String>,
        /// Decision rule: `iso_14253_1_2017` (default), `iso_14253_1_1998` or `simple_acceptance`.
        rule: Option<String>,
        /// Instruments of readings that name none.
        instruments: WrittenInstruments,
        /// Bottom-bracket shell.
        shell: Option<WrittenShell>,
        /// Head tube.
        head_tube: WrittenHeadTube,
        /// Crown-race seat.
        crown: Option<WrittenCrown>,
        /// Steerer.
        steerer: Option<WrittenSteerer>,
        /// Seat tube.
        seat_tube: Option<WrittenSeatTube>,
        /// Axle threads, hanger, bosses.
        thread: Vec<WrittenThread>,
        /// Brake mounts.
        brake: Vec<WrittenBrake>,
    }
}
