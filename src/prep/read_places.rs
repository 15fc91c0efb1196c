//! Reads each interface of a written sheet.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::plan::end_words;
use super::sheet::{
    BrakeSheet, CrownSheet, HeadEnd, JointMaterial, PadPoint, PlacedReading, SeatTubeSheet,
    ShellSheet, ShellSide, SteererSheet, ThreadSheet,
};
use super::values::{Kind, PlaceText, Reader, split_place};
use super::written::{
    Lines, WrittenBrake, WrittenCrown, WrittenHeadEnd, WrittenSeatTube, WrittenShell,
    WrittenShellSide, WrittenSteerer, WrittenThread,
};
use crate::judge::extremes;
use crate::measure::{Reading, settled_below};
use crate::quantity::{in_mm, mm};
use crate::standard::{End, ShellWindow, ThreadedPart};
use crate::{Error, ErrorKind};

impl Reader<'_> {
    pub(super) fn shell(&mut self, w: &WrittenShell, frame: JointMaterial) -> ShellSheet {
        let sheet = ShellSheet {
            common: self.common(
                "shell",
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            width: self.sizes("shell.width", &w.width, Kind::Outside),
            half_drive: self.size("shell.half_drive", w.half_drive.as_ref(), Kind::Outside),
            half_non_drive: self.size(
                "shell.half_non_drive",
                w.half_non_drive.as_ref(),
                Kind::Outside,
            ),
            bore: self.placed("shell.bore", &w.bore, Kind::Inside),
            after: self.placed("shell.after", &w.after, Kind::Inside),
            pitch: self.pitch("shell.pitch", w.pitch.as_ref()),
            window: w.window.clone(),
            made_for: self.length("shell.made_for", w.made_for.as_ref()),
            part: self.part("shell.part", w.part.as_ref()),
            drive: self.shell_side("shell.drive", &w.drive),
            non_drive: self.shell_side("shell.non_drive", &w.non_drive),
        };
        self.before_after("shell", &sheet.bore, &sheet.after);
        if let Some(code) = &sheet.window {
            let found = self.tables.find::<ShellWindow>(code);
            self.keep("shell.window", found);
        }
        if let (Some(drive), Some(other), Some(width)) =
            (sheet.half_drive, sheet.half_non_drive, sheet.width.first())
        {
            let gap = drive.plus(&other).less(width);
            if settled_below(gap.expanded_uncertainty() + mm(0.5), gap.value().abs()) {
                self.errors.push(Error::new(
                    ErrorKind::Contradiction,
                    "shell.half_drive",
                    format!("{} + {}", in_mm(drive.value()), in_mm(other.value())),
                    format!(
                        "the half widths do not add up to the width of {}",
                        in_mm(width.value())
                    ),
                    "measure them again from the middle plane",
                ));
            }
        }
        sheet
    }

    fn shell_side(&mut self, field: &str, w: &WrittenShellSide) -> ShellSide {
        ShellSide {
            hand: self.optional_word(&format!("{field}.hand"), w.hand.as_deref()),
            minor: self.sizes(&format!("{field}.minor"), &w.minor, Kind::Inside),
            state: self.word(&format!("{field}.state"), w.state.as_deref()),
            go: self.word(&format!("{field}.go"), w.go.as_deref()),
            not_go: self.word(&format!("{field}.not_go"), w.not_go.as_deref()),
            go_after: self.word(&format!("{field}.go_after"), w.go_after.as_deref()),
            not_go_after: self.word(&format!("{field}.not_go_after"), w.not_go_after.as_deref()),
            face: self.face(&format!("{field}.face"), w.face.as_ref()),
        }
    }

    pub(super) fn head_end(
        &mut self,
        field: &str,
        w: &WrittenHeadEnd,
        frame: JointMaterial,
    ) -> HeadEnd {
        let end = HeadEnd {
            common: self.common(
                field,
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            bore: self.placed(&format!("{field}.bore"), &w.bore, Kind::Inside),
            after: self.placed(&format!("{field}.after"), &w.after, Kind::Inside),
            bore_depth: self.size(
                &format!("{field}.bore_depth"),
                w.bore_depth.as_ref(),
                Kind::Depth,
            ),
            outside: self.sizes(&format!("{field}.outside"), &w.outside, Kind::Outside),
            face: self.face(&format!("{field}.face"), w.face.as_ref()),
            part: self.part(&format!("{field}.part"), w.part.as_ref()),
            crown_gap: self.size(
                &format!("{field}.crown_gap"),
                w.crown_gap.as_ref(),
                Kind::Depth,
            ),
        };
        self.inside_below_outside(field, &end.bore, &end.outside);
        self.before_after(field, &end.bore, &end.after);
        end
    }

    fn before_after(&mut self, field: &str, before: &[PlacedReading], after: &[PlacedReading]) {
        if !after.is_empty() && before.is_empty() {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                format!("{field}.bore"),
                "",
                "readings after the work without readings before it",
                "give the readings before the work as `bore`",
            ));
        }
    }

    fn inside_below_outside(&mut self, field: &str, bore: &[PlacedReading], outside: &[Reading]) {
        let bores: Vec<Reading> = bore.iter().map(|b| b.reading).collect();
        let (bores, outside) = (extremes(&bores), extremes(outside));
        if let (Some(widest), Some(narrowest)) = (bores.last(), outside.first())
            && widest.value() >= narrowest.value()
        {
            let (widest, narrowest) = (widest.value(), narrowest.value());
            self.errors.push(Error::new(
                ErrorKind::Contradiction,
                format!("{field}.bore"),
                in_mm(widest),
                format!(
                    "the bore is not smaller than the outside of {}",
                    in_mm(narrowest)
                ),
                "check which reading is which",
            ));
        }
    }

    pub(super) fn crown(&mut self, w: &WrittenCrown, frame: JointMaterial) -> CrownSheet {
        CrownSheet {
            common: self.common(
                "crown",
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            seat: self.sizes("crown.seat", &w.seat, Kind::Outside),
            race: self.sizes("crown.race", &w.race, Kind::Inside),
        }
    }

    pub(super) fn steerer(&mut self, w: &WrittenSteerer, frame: JointMaterial) -> SteererSheet {
        SteererSheet {
            common: self.common(
                "steerer",
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            outside: self.sizes("steerer.outside", &w.outside, Kind::Outside),
            pitch: self.pitch("steerer.pitch", w.pitch.as_ref()),
            length: self.size("steerer.length", w.length.as_ref(), Kind::Outside),
            stack: self.sizes("steerer.stack", &w.stack, Kind::Outside),
        }
    }

    pub(super) fn seat_tube(&mut self, w: &WrittenSeatTube, frame: JointMaterial) -> SeatTubeSheet {
        let tube = SeatTubeSheet {
            common: self.common(
                "seat_tube",
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            bore: self.placed("seat_tube.bore", &w.bore, Kind::Inside),
            after: self.placed("seat_tube.after", &w.after, Kind::Inside),
            outside: self.sizes("seat_tube.outside", &w.outside, Kind::Outside),
            clear_depth: self.length("seat_tube.clear_depth", w.clear_depth.as_ref()),
            post: self.part("seat_tube.post", w.post.as_ref()),
            shim: self.length("seat_tube.shim", w.shim.as_ref()),
            weld_depth: self.length("seat_tube.weld_depth", w.weld_depth.as_ref()),
        };
        self.inside_below_outside("seat_tube", &tube.bore, &tube.outside);
        self.before_after("seat_tube", &tube.bore, &tube.after);
        tube
    }

    pub(super) fn thread(
        &mut self,
        index: usize,
        w: &WrittenThread,
        frame: JointMaterial,
    ) -> Option<ThreadSheet> {
        let field = format!("thread[{index}]");
        let place: Option<ThreadedPart> =
            self.optional_word(&format!("{field}.place"), Some(&w.place));
        let mate = w
            .mate
            .as_ref()
            .and_then(|line| self.keep(&format!("{field}.mate"), line.0.parse()));
        let end = self
            .optional_word(&format!("{field}.end"), w.end.as_deref())
            .unwrap_or(End::Both);
        let place = place?;
        let sheet = ThreadSheet {
            common: self.common(
                &field,
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            place,
            end,
            name: if w.name.is_empty() {
                name_of(place, end)
            } else {
                w.name.clone()
            },
            mate,
            minor: self.sizes(&format!("{field}.minor"), &w.minor, Kind::Inside),
            pitch: self.pitch(&format!("{field}.pitch"), w.pitch.as_ref()),
            hand: self.optional_word(&format!("{field}.hand"), w.hand.as_deref()),
            state: self.word(&format!("{field}.state"), w.state.as_deref()),
            go: self.word(&format!("{field}.go"), w.go.as_deref()),
            not_go: self.word(&format!("{field}.not_go"), w.not_go.as_deref()),
            go_after: self.word(&format!("{field}.go_after"), w.go_after.as_deref()),
            not_go_after: self.word(&format!("{field}.not_go_after"), w.not_go_after.as_deref()),
        };
        Some(sheet)
    }

    pub(super) fn brake(
        &mut self,
        index: usize,
        w: &WrittenBrake,
        frame: JointMaterial,
    ) -> Option<BrakeSheet> {
        let field = format!("brake[{index}]");
        let system = self.optional_word(&format!("{field}.system"), Some(&w.system));
        let end = self.optional_word(&format!("{field}.end"), Some(&w.end));
        let common = self.common(
            &field,
            frame,
            (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
        );
        let points = self.pads(&format!("{field}.points"), &w.points);
        let after = self.pads(&format!("{field}.after"), &w.after);
        let thickness = self.size(
            &format!("{field}.thickness"),
            w.thickness.as_ref(),
            Kind::Outside,
        );
        if !after.is_empty() && points.is_empty() {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                format!("{field}.points"),
                "",
                "readings after a pass without readings before it",
                "give the readings before the pass as `points`",
            ));
        }
        Some(BrakeSheet {
            common,
            system: system?,
            end: end?,
            points,
            after,
            thickness,
            bolt: self.length(&format!("{field}.bolt"), w.bolt.as_ref()),
            pad_clearance: self.length(&format!("{field}.pad_clearance"), w.pad_clearance.as_ref()),
            pad_length: self.length(&format!("{field}.pad_length"), w.pad_length.as_ref()),
        })
    }

    fn pads(&mut self, field: &str, lines: &Lines) -> Vec<PadPoint> {
        let mut out = Vec::new();
        for (path, line) in self.each(field, lines) {
            let (place, text) = split_place(&line);
            let Some(height) = self.reading(&path, text, Kind::Height) else {
                continue;
            };
            let Some(place) = self.keep(&path, PlaceText::read(place)) else {
                continue;
            };
            match (place.along, place.across) {
                (Some(along), Some(across)) => out.push(PadPoint {
                    along,
                    across,
                    height,
                }),
                _ => self.errors.push(Error::new(
                    ErrorKind::Missing,
                    path,
                    &line,
                    "a height on a mount without its place",
                    "write e.g. `10 mm along, 5 mm across: 0.03 mm`",
                )),
            }
        }
        out
    }
}

/// `rear axle`, `hanger` …
fn name_of(place: ThreadedPart, end: End) -> String {
    let place = place.to_string().replace('_', " ");
    match end_words(end) {
        "" => place,
        end => format!("{end} {place}"),
    }
}
