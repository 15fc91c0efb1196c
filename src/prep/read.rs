//! From the sheet as written to the sheet as measured. Every defect is reported, with its field and remedy.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::str::FromStr;

use super::sheet::{
    BrakeSheet, Common, CrownSheet, Face, FrameSheet, HeadEnd, JointMaterial, MakerLimit, PadPoint,
    Part, PlacedReading, SeatTubeSheet, ShellSheet, ShellSide, SteererSheet, ThreadSheet,
};
use super::written::{
    Line, Lines, WrittenBrake, WrittenCrown, WrittenFace, WrittenHeadEnd, WrittenLimit,
    WrittenPart, WrittenSeatTube, WrittenSheet, WrittenShell, WrittenShellSide, WrittenSteerer,
    WrittenThread,
};
use crate::evidence::Grade;
use crate::measure::{Bound, DecisionRule, Limits, Reading, instrument};
use crate::quantity::{Angle, Length, Pitch, Printed, in_mm, mm, parse_length, parse_toleranced};
use crate::standard::{End, Place, ShellWindow, find};
use crate::{Error, ErrorKind};

/// The form of the sheet that this library reads.
pub const SHEET_FORMAT: u32 = 1;
/// More readings of one thing than anybody takes.
const MOST_READINGS: usize = 2000;

/// What a reading measures, as far as the choice of an instrument goes.
#[derive(Clone, Copy)]
enum Kind {
    Inside,
    Outside,
    Depth,
    Height,
}

impl WrittenSheet {
    /// Reads the sheet.
    ///
    /// # Errors
    /// Every defect found, in the order of the sheet: units, words, ranges, contradictions, unknown names.
    ///
    /// ```
    /// use framegauge::prep::WrittenSheet;
    /// let written = WrittenSheet { frame: "Invented demo".into(), ..WrittenSheet::default() };
    /// let errors = written.read().unwrap_err();
    /// assert_eq!(errors[0].field(), "format");
    /// ```
    pub fn read(&self) -> Result<FrameSheet, Vec<Error>> {
        let mut reader = Reader {
            written: self,
            errors: Vec::new(),
        };
        let sheet = reader.sheet();
        if reader.errors.is_empty() {
            Ok(sheet)
        } else {
            Err(reader.errors)
        }
    }
}

struct Reader<'a> {
    written: &'a WrittenSheet,
    errors: Vec<Error>,
}

impl Reader<'_> {
    fn keep<T>(&mut self, field: &str, result: Result<T, Error>) -> Option<T> {
        match result {
            Ok(value) => Some(value),
            Err(error) => {
                self.errors.push(error.within(field));
                None
            }
        }
    }

    fn sheet(&mut self) -> FrameSheet {
        let written = self.written;
        match written.format {
            Some(SHEET_FORMAT) => {}
            Some(other) => self.errors.push(Error::new(
                ErrorKind::OutOfRange,
                "format",
                other,
                "a sheet of another version",
                format!("this library reads format {SHEET_FORMAT}"),
            )),
            None => self.errors.push(Error::new(
                ErrorKind::Missing,
                "format",
                "",
                "the sheet states no format",
                format!("write `format = {SHEET_FORMAT}`"),
            )),
        }
        if written.frame.trim().is_empty() {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                "frame",
                "",
                "the sheet does not say which frame it is",
                "write a name or number",
            ));
        }
        for (field, name) in [
            ("instruments.inside", &written.instruments.inside),
            ("instruments.outside", &written.instruments.outside),
            ("instruments.depth", &written.instruments.depth),
            ("instruments.height", &written.instruments.height),
        ] {
            if let Some(name) = name {
                self.keep(field, instrument(name));
            }
        }
        let material = self.word("material", written.material.as_deref());
        FrameSheet {
            frame: written.frame.clone(),
            invented: written.invented,
            material,
            rule: self.rule(written.rule.as_deref()),
            shell: written
                .shell
                .as_ref()
                .map(|shell| self.shell(shell, material)),
            head_upper: written
                .head_tube
                .upper
                .as_ref()
                .map(|end| self.head_end("head_tube.upper", end, material)),
            head_lower: written
                .head_tube
                .lower
                .as_ref()
                .map(|end| self.head_end("head_tube.lower", end, material)),
            crown: written
                .crown
                .as_ref()
                .map(|crown| self.crown(crown, material)),
            steerer: written
                .steerer
                .as_ref()
                .map(|steerer| self.steerer(steerer, material)),
            seat_tube: written
                .seat_tube
                .as_ref()
                .map(|tube| self.seat_tube(tube, material)),
            threads: written
                .thread
                .iter()
                .enumerate()
                .filter_map(|(i, t)| self.thread(i, t, material))
                .collect(),
            brakes: written
                .brake
                .iter()
                .enumerate()
                .filter_map(|(i, b)| self.brake(i, b, material))
                .collect(),
        }
    }

    fn rule(&mut self, word: Option<&str>) -> DecisionRule {
        match word {
            None | Some("iso_14253_1_2017") => DecisionRule::Iso14253Of2017,
            Some("iso_14253_1_1998") => DecisionRule::Iso14253Of1998,
            Some("simple_acceptance") => DecisionRule::SimpleAcceptance,
            Some(other) => {
                self.errors.push(Error::new(
                    ErrorKind::UnknownName,
                    "rule",
                    other,
                    "no such decision rule",
                    "iso_14253_1_2017, iso_14253_1_1998 or simple_acceptance",
                ));
                DecisionRule::default()
            }
        }
    }

    /// A word of a closed list.
    fn word<T: FromStr + Default + strum::IntoEnumIterator + ToString>(
        &mut self,
        field: &str,
        word: Option<&str>,
    ) -> T {
        let Some(word) = word else {
            return T::default();
        };
        word.parse().unwrap_or_else(|_| {
            self.errors.push(unknown_word::<T>(field, word));
            T::default()
        })
    }

    fn optional_word<T: FromStr + strum::IntoEnumIterator + ToString>(
        &mut self,
        field: &str,
        word: Option<&str>,
    ) -> Option<T> {
        let word = word?;
        match word.parse() {
            Ok(value) => Some(value),
            Err(_) => {
                self.errors.push(unknown_word::<T>(field, word));
                None
            }
        }
    }

    fn length(&mut self, field: &str, line: Option<&Line>) -> Option<Length> {
        let line = line?;
        let length = self.keep(field, parse_length(&line.0))?;
        self.keep(field, positive(length))?;
        Some(length)
    }

    /// A size: a reading that must be above zero.
    fn size(&mut self, field: &str, line: Option<&Line>, kind: Kind) -> Option<Reading> {
        let line = line?;
        let reading = self.reading(field, &line.0, kind)?;
        self.keep(field, positive(reading.value()))?;
        Some(reading)
    }

    fn sizes(&mut self, field: &str, lines: &Lines, kind: Kind) -> Vec<Reading> {
        self.placed(field, lines, kind)
            .into_iter()
            .map(|p| p.reading)
            .collect()
    }

    /// Sizes with their places.
    fn placed(&mut self, field: &str, lines: &Lines, kind: Kind) -> Vec<PlacedReading> {
        let mut out = Vec::new();
        for (path, line) in self.each(field, lines) {
            let (place, text) = split_place(&line);
            let Some(reading) = self.reading(&path, text, kind) else {
                continue;
            };
            if self.keep(&path, positive(reading.value())).is_none() {
                continue;
            }
            if let Some(place) = self.keep(&path, PlaceText::read(place)) {
                if place.along.is_some() || place.across.is_some() {
                    self.errors.push(Error::new(
                        ErrorKind::Text,
                        path.clone(),
                        &line,
                        "a diameter has an angle and a depth",
                        "write e.g. `10 mm deep, 90 deg: 27.15 mm`",
                    ));
                }
                out.push(PlacedReading {
                    reading,
                    angle: place.angle,
                    depth: place.depth,
                });
            }
        }
        out
    }

    fn each(&mut self, field: &str, lines: &Lines) -> Vec<(String, String)> {
        if lines.0.len() > MOST_READINGS {
            self.errors.push(Error::new(
                ErrorKind::TooLarge,
                field.to_string(),
                lines.0.len(),
                "more readings than anybody takes",
                format!("at most {MOST_READINGS}"),
            ));
            return Vec::new();
        }
        lines
            .0
            .iter()
            .enumerate()
            .map(|(i, line)| (format!("{field}[{i}]"), line.clone()))
            .collect()
    }

    fn reading(&mut self, field: &str, text: &str, kind: Kind) -> Option<Reading> {
        let (text, named) = match text.split_once(" by ") {
            Some((text, name)) => (text, Some(name.trim().to_string())),
            None => (text, None),
        };
        let (value, tolerance) = self.keep(field, parse_toleranced(text))?;
        if tolerance.is_some() {
            return self.keep(field, text.parse::<Reading>());
        }
        let instruments = &self.written.instruments;
        let (which, default) = match kind {
            Kind::Inside => ("inside", &instruments.inside),
            Kind::Outside => ("outside", &instruments.outside),
            Kind::Depth => ("depth", &instruments.depth),
            Kind::Height => ("height", &instruments.height),
        };
        let Some(name) = named.or_else(|| default.clone()) else {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                field.to_string(),
                text,
                "a reading without an uncertainty and without an instrument",
                format!("write `+/- 0.05 mm` or `by …`, or name `{which}` under [instruments]"),
            ));
            return None;
        };
        let instrument = self.keep(field, instrument(&name))?;
        self.keep(field, instrument.reading(value))
    }

    fn common(
        &mut self,
        field: &str,
        frame: JointMaterial,
        (material, believed, coating, limits, note): (
            &Option<String>,
            &Option<String>,
            &Option<String>,
            &[WrittenLimit],
            &str,
        ),
    ) -> Common {
        Common {
            material: if material.is_some() {
                self.word(&format!("{field}.material"), material.as_deref())
            } else {
                frame
            },
            believed: believed.clone().filter(|b| !b.trim().is_empty()),
            coating: self.word(&format!("{field}.coating"), coating.as_deref()),
            limits: self.limits(field, limits),
            note: note.to_string(),
        }
    }

    fn limits(&mut self, field: &str, written: &[WrittenLimit]) -> Vec<MakerLimit> {
        let mut out = Vec::new();
        for (index, limit) in written.iter().enumerate() {
            let path = format!("{field}.limits[{index}]");
            let mut side = |name: &str, line: &Option<Line>| match line {
                None => Some(Bound::Open),
                Some(line) => self
                    .keep(&format!("{path}.{name}"), parse_length(&line.0))
                    .map(Bound::At),
            };
            let (lower, upper) = (side("lower", &limit.lower), side("upper", &limit.upper));
            let (Some(lower), Some(upper)) = (lower, upper) else {
                continue;
            };
            if limit.what.trim().is_empty() || limit.owner.trim().is_empty() {
                self.errors.push(Error::new(
                    ErrorKind::Missing,
                    path.clone(),
                    "",
                    "a maker's limit says what it limits and who wrote it",
                    "fill in `what` and `owner`",
                ));
                continue;
            }
            if lower == Bound::Open && upper == Bound::Open {
                self.errors.push(Error::new(
                    ErrorKind::Missing,
                    path.clone(),
                    "",
                    "a limit without a value",
                    "write `lower`, `upper` or both",
                ));
                continue;
            }
            if let Some(limits) = self.keep(&path, Limits::new(lower, upper, Grade::Shop)) {
                out.push(MakerLimit {
                    what: limit.what.clone(),
                    limits,
                    owner: limit.owner.clone(),
                });
            }
        }
        out
    }

    fn part(&mut self, field: &str, written: Option<&WrittenPart>) -> Option<Part> {
        let written = written?;
        let outside_limits = written.outside_limits.as_ref().and_then(|line| {
            let path = format!("{field}.outside_limits");
            self.keep(&path, limits_text(&line.0))
        });
        let part = Part {
            name: written.name.clone(),
            outside: self.sizes(&format!("{field}.outside"), &written.outside, Kind::Outside),
            outside_limits,
            bore: self.sizes(&format!("{field}.bore"), &written.bore, Kind::Inside),
            insertion: self.length(&format!("{field}.insertion"), written.insertion.as_ref()),
            material: self.word(&format!("{field}.material"), written.material.as_deref()),
            fitted: self.word(&format!("{field}.fitted"), written.fitted.as_deref()),
        };
        if let (Some(bore), Some(outside)) = (part.bore.first(), part.outside.first())
            && bore.value() >= outside.value()
        {
            self.errors.push(Error::new(
                ErrorKind::Contradiction,
                format!("{field}.bore"),
                in_mm(bore.value()),
                "the bore of a part is not smaller than its outside",
                "check which reading is which",
            ));
        }
        Some(part)
    }

    fn face(&mut self, field: &str, written: Option<&WrittenFace>) -> Option<Face> {
        let written = written?;
        let face = Face {
            coating: self.word(&format!("{field}.coating"), written.coating.as_deref()),
            probe_radius: self.length(
                &format!("{field}.probe_radius"),
                written.probe_radius.as_ref(),
            ),
            outer_radius: self.length(
                &format!("{field}.outer_radius"),
                written.outer_radius.as_ref(),
            ),
            inner_radius: self.length(
                &format!("{field}.inner_radius"),
                written.inner_radius.as_ref(),
            ),
            probes: self.probes(&format!("{field}.probes"), &written.probes),
            after: self.probes(&format!("{field}.after"), &written.after),
            limits: self.limits(field, &written.limits),
        };
        if let (Some(inner), Some(outer)) = (face.inner_radius, face.outer_radius)
            && inner >= outer
        {
            self.errors.push(Error::new(
                ErrorKind::Contradiction,
                format!("{field}.inner_radius"),
                in_mm(inner),
                "the inner radius of a face is not below its outer radius",
                "check which is which, and that both are radii",
            ));
        }
        if !face.after.is_empty() && face.probes.is_empty() {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                format!("{field}.probes"),
                "",
                "readings after a pass without readings before it",
                "give the readings before the pass as `probes`",
            ));
        }
        Some(face)
    }

    fn probes(&mut self, field: &str, lines: &Lines) -> Vec<(Angle, Reading)> {
        let mut out = Vec::new();
        for (path, line) in self.each(field, lines) {
            let (place, text) = split_place(&line);
            let Some(reading) = self.reading(&path, text, Kind::Height) else {
                continue;
            };
            let Some(place) = self.keep(&path, PlaceText::read(place)) else {
                continue;
            };
            match place.angle {
                Some(angle) => out.push((angle, reading)),
                None => self.errors.push(Error::new(
                    ErrorKind::Missing,
                    path,
                    &line,
                    "a height on a face without its angle",
                    "write e.g. `45 deg: 0.03 mm`",
                )),
            }
        }
        out
    }

    fn shell(&mut self, w: &WrittenShell, frame: JointMaterial) -> ShellSheet {
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
            pitch: self.pitch("shell.pitch", w.pitch.as_ref()),
            window: w.window.clone(),
            made_for: self.length("shell.made_for", w.made_for.as_ref()),
            part: self.part("shell.part", w.part.as_ref()),
            drive: self.shell_side("shell.drive", &w.drive),
            non_drive: self.shell_side("shell.non_drive", &w.non_drive),
        };
        if let Some(code) = &sheet.window {
            self.keep("shell.window", find::<ShellWindow>(code));
        }
        if let (Some(drive), Some(other), Some(width)) =
            (sheet.half_drive, sheet.half_non_drive, sheet.width.first())
        {
            let gap = drive.plus(&other).less(width);
            if gap.value().abs() > gap.expanded_uncertainty() + mm(0.5) {
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
            face: self.face(&format!("{field}.face"), w.face.as_ref()),
        }
    }

    fn head_end(&mut self, field: &str, w: &WrittenHeadEnd, frame: JointMaterial) -> HeadEnd {
        let end = HeadEnd {
            common: self.common(
                field,
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            bore: self.placed(&format!("{field}.bore"), &w.bore, Kind::Inside),
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
        end
    }

    fn inside_below_outside(&mut self, field: &str, bore: &[PlacedReading], outside: &[Reading]) {
        let widest = bore
            .iter()
            .map(|b| b.reading.value())
            .fold(mm(0.0), |a, b| if b > a { b } else { a });
        if let Some(narrowest) = outside
            .iter()
            .map(Reading::value)
            .reduce(|a, b| if b < a { b } else { a })
            && widest >= narrowest
        {
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

    fn crown(&mut self, w: &WrittenCrown, frame: JointMaterial) -> CrownSheet {
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

    fn steerer(&mut self, w: &WrittenSteerer, frame: JointMaterial) -> SteererSheet {
        SteererSheet {
            common: self.common(
                "steerer",
                frame,
                (&w.material, &w.believed, &w.coating, &w.limits, &w.note),
            ),
            outside: self.sizes("steerer.outside", &w.outside, Kind::Outside),
            pitch: self.pitch("steerer.pitch", w.pitch.as_ref()),
        }
    }

    fn seat_tube(&mut self, w: &WrittenSeatTube, frame: JointMaterial) -> SeatTubeSheet {
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
        if !tube.after.is_empty() && tube.bore.is_empty() {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                "seat_tube.bore",
                "",
                "readings after reaming without readings before it",
                "give the readings before reaming as `bore`",
            ));
        }
        tube
    }

    fn thread(
        &mut self,
        index: usize,
        w: &WrittenThread,
        frame: JointMaterial,
    ) -> Option<ThreadSheet> {
        let field = format!("thread[{index}]");
        let place: Option<Place> = self.optional_word(&format!("{field}.place"), Some(&w.place));
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
                super::threads::name_of(place, end)
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
        };
        Some(sheet)
    }

    fn brake(
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

    fn pitch(&mut self, field: &str, line: Option<&Line>) -> Option<Pitch> {
        let line = line?;
        self.keep(field, line.0.parse())
    }
}

fn positive(length: Length) -> Result<(), Error> {
    if length <= mm(0.0) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "",
            in_mm(length),
            "a size must be above 0 mm",
            "measure again",
        ));
    }
    Ok(())
}

fn unknown_word<T: strum::IntoEnumIterator + ToString>(field: &str, word: &str) -> Error {
    let known: Vec<String> = T::iter().map(|w| w.to_string()).collect();
    Error::new(
        ErrorKind::UnknownName,
        field.to_string(),
        word,
        "no such word",
        format!("one of {}", known.join(", ")),
    )
}

/// `10 mm deep, 90 deg: 27.15 mm` into place and reading.
fn split_place(line: &str) -> (&str, &str) {
    line.rsplit_once(':')
        .map_or(("", line), |(place, reading)| {
            (place.trim(), reading.trim())
        })
}

#[derive(Default)]
struct PlaceText {
    angle: Option<Angle>,
    depth: Option<Length>,
    along: Option<Length>,
    across: Option<Length>,
}

impl PlaceText {
    fn read(place: &str) -> Result<Self, Error> {
        let mut out = Self::default();
        // `, ` parts the words of a place; a bare comma may be a decimal comma.
        for part in place.split(", ").map(str::trim).filter(|p| !p.is_empty()) {
            if part.ends_with("deg") || part.ends_with('°') {
                out.angle = Some(Angle::parse(part)?);
            } else if let Some(depth) = part.strip_suffix("deep") {
                out.depth = Some(parse_length(depth)?);
            } else if let Some(along) = part.strip_suffix("along") {
                out.along = Some(parse_length(along)?);
            } else if let Some(across) = part.strip_suffix("across") {
                out.across = Some(parse_length(across)?);
            } else {
                return Err(Error::new(
                    ErrorKind::Text,
                    "place",
                    part,
                    "no place that can be read",
                    "write `90 deg`, `10 mm deep`, `10 mm along` or `5 mm across`",
                ));
            }
        }
        Ok(out)
    }
}

/// `46.00 mm to 46.05 mm`, `46.00 to 46.05 mm` or `46 +0.05/-0 mm`.
fn limits_text(text: &str) -> Result<Limits, Error> {
    if let Some((low, high)) = text.split_once(" to ") {
        let upper = parse_length(high)?;
        let lower = if low.trim().ends_with(|c: char| c.is_ascii_digit()) {
            parse_length(&format!("{} mm", low.trim()))?
        } else {
            parse_length(low)?
        };
        return Limits::between(lower, upper, Grade::Shop);
    }
    match parse_toleranced(text)? {
        (nominal, Some(t)) => Limits::between(nominal + t.lower, nominal + t.upper, Grade::Shop),
        (_, None) => Err(Error::new(
            ErrorKind::Text,
            "limits",
            text,
            "one length is no pair of limits",
            "write `46.00 mm to 46.05 mm`",
        )),
    }
}
