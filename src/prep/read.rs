//! From the sheet as written to the sheet as measured. Every defect is reported, with its field and remedy.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::sheet::{Common, Face, FrameSheet, JointMaterial, MakerLimit, Part};
use super::values::{Kind, PlaceText, Reader, limits_text, split_place};
use super::written::{Line, Lines, WrittenFace, WrittenLimit, WrittenPart, WrittenSheet};
use crate::evidence::Grade;
use crate::measure::{Bound, DecisionRule, Limits, Reading, instrument};
use crate::quantity::{Angle, in_mm, parse_length};
use crate::standard::Tables;
use crate::{Error, ErrorKind};

/// The form of the sheet that this library reads.
pub const SHEET_FORMAT: u32 = 1;
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
        self.read_with(Tables::ours())
    }

    /// As [`Self::read`], where names may also be those of a shop's own rows.
    ///
    /// # Errors
    /// As [`Self::read`].
    ///
    /// ```
    /// use framegauge::{prep::WrittenSheet, standard::Tables};
    /// let written = WrittenSheet { format: Some(1), frame: "Invented demo".into(), ..WrittenSheet::default() };
    /// assert_eq!(written.read_with(Tables::ours()).unwrap().frame, "Invented demo");
    /// ```
    pub fn read_with(&self, tables: Tables<'_>) -> Result<FrameSheet, Vec<Error>> {
        let mut reader = Reader {
            written: self,
            tables,
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

impl Reader<'_> {
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

    pub(super) fn common(
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

    pub(super) fn limits(&mut self, field: &str, written: &[WrittenLimit]) -> Vec<MakerLimit> {
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

    pub(super) fn part(&mut self, field: &str, written: Option<&WrittenPart>) -> Option<Part> {
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

    pub(super) fn face(&mut self, field: &str, written: Option<&WrittenFace>) -> Option<Face> {
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

    pub(super) fn probes(&mut self, field: &str, lines: &Lines) -> Vec<(Angle, Reading)> {
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
}
