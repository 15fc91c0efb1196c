//! Surveys as a sheet writes them: every length and angle is text with its unit. Reading a sheet checks it and names the
//! field that is wrong.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::{Deserialize, Serialize};

use super::{
    Allowance, Annulus, BoreReading, BoreSurvey, Clock, CutLimit, Gauge, LimitKind, PadPoint,
    PadSurvey, Point, Probe, RingSurvey,
};
use crate::evidence::Grade;
use crate::measure::Reading;
use crate::quantity::{Angle, Length, Printed, Radius, mm, parse_length, parse_toleranced};
use crate::{Error, ErrorKind};

/// A ring survey as written. Diameters, because that is what a caliper reads.
///
/// ```
/// use framegauge::face::RingSheet;
/// let sheet: RingSheet = serde_json::from_str(r#"{
///     "inner_diameter": "34 mm", "outer_diameter": "42 mm", "probed_diameter": "40 mm",
///     "pilot": "shell thread, drive side", "uncertainty": "0.008 mm",
///     "probes": [{ "angle": "0 deg", "height": "0.05 mm" }, { "angle": "120 deg", "height": "0.02 mm" },
///                { "angle": "240 deg", "height": "0.03 +/- 0.01 mm" }]
/// }"#).unwrap();
/// assert_eq!(sheet.read().unwrap().probes().len(), 3);
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RingSheet {
    /// Inner diameter of the face.
    pub inner_diameter: String,
    /// Outer diameter of the face.
    pub outer_diameter: String,
    /// Diameter of the probed circle, for probes that do not state their own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub probed_diameter: Option<String>,
    /// What the heights were read along.
    pub pilot: String,
    /// Expanded uncertainty U (k = 2) of heights that do not state their own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub uncertainty: Option<String>,
    /// The probes.
    pub probes: Vec<ProbeSheet>,
}

/// A probe as written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProbeSheet {
    /// Clock angle from the top, clockwise seen from outside: `"45 deg"`.
    pub angle: String,
    /// Height outwards: `"0.05 mm"` or `"0.05 +/- 0.008 mm"`.
    pub height: String,
    /// Diameter of its circle, where it is not the sheet's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub diameter: Option<String>,
}

/// Diameters of a bore as written.
///
/// ```
/// use framegauge::face::BoreSheet;
/// let sheet: BoreSheet = serde_json::from_str(r#"{ "uncertainty": "0.01 mm", "readings": [
///     { "angle": "0 deg", "depth": "5 mm", "diameter": "43.97 mm" },
///     { "angle": "90 deg", "depth": "5 mm", "diameter": "43.98 mm", "gauge": "three_point" }] }"#).unwrap();
/// assert_eq!(sheet.read().unwrap().readings().len(), 2);
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BoreSheet {
    /// Expanded uncertainty U (k = 2) of diameters that do not state their own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub uncertainty: Option<String>,
    /// The diameters.
    pub readings: Vec<DiameterSheet>,
}

/// A diameter as written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DiameterSheet {
    /// Clock angle of one contact.
    pub angle: String,
    /// Depth from the end, inwards.
    pub depth: String,
    /// The diameter.
    pub diameter: String,
    /// What it was read with; two contacts when not said.
    #[serde(default = "two_point")]
    pub gauge: Gauge,
}

const fn two_point() -> Gauge {
    Gauge::TwoPoint
}

/// Pads of a mount as written.
///
/// ```
/// use framegauge::face::PadSheet;
/// let sheet: PadSheet = serde_json::from_str(r#"{ "datum": "wheel axle", "uncertainty": "0.008 mm", "points": [
///     { "pad": "upper", "along": "-37 mm", "across": "-6 mm", "height": "0 mm" },
///     { "pad": "upper", "along": "-37 mm", "across": "6 mm", "height": "0.08 mm" },
///     { "pad": "lower", "along": "37 mm", "across": "0 mm", "height": "0.04 mm" }] }"#).unwrap();
/// assert_eq!(sheet.read().unwrap().points().len(), 3);
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PadSheet {
    /// What the heights were read along.
    pub datum: String,
    /// Expanded uncertainty U (k = 2) of every height.
    pub uncertainty: String,
    /// The points.
    pub points: Vec<PadPointSheet>,
}

/// A point of a pad as written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PadPointSheet {
    /// Which pad.
    pub pad: String,
    /// Place along the line that joins the pads.
    pub along: String,
    /// Place across it.
    pub across: String,
    /// Height outwards.
    pub height: String,
}

/// A limit on a cut as written: an amount that may come off, or what to measure because it is unknown.
///
/// ```
/// use framegauge::face::{LimitSheet, allowance_of};
/// let sheets: Vec<LimitSheet> = serde_json::from_str(r#"[
///     { "kind": "minimum_width", "what": "68 mm shell", "may_come_off": "0.40 +/- 0.02 mm" },
///     { "kind": "maker", "what": "frame maker's limit", "unknown": "ask the frame maker" }]"#).unwrap();
/// let allowance = allowance_of(&sheets).unwrap();
/// assert_eq!(allowance.nearest().unwrap().what(), "68 mm shell");
/// assert_eq!(allowance.first_unknown().unwrap().measure().unwrap(), "ask the frame maker");
/// ```
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LimitSheet {
    /// What it protects.
    pub kind: LimitKind,
    /// Its name.
    pub what: String,
    /// How much may come off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub may_come_off: Option<String>,
    /// Why it is unknown: what to measure, or whom to ask.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unknown: Option<String>,
}

fn length(text: &str, field: &str) -> Result<Length, Error> {
    parse_length(text).map_err(|e| e.within(field))
}

fn clock(text: &str) -> Result<Clock, Error> {
    Angle::parse(text)
        .and_then(Clock::new)
        .map_err(|e| e.within("angle"))
}

/// A reading with its own uncertainty, or with the sheet's.
fn reading(text: &str, otherwise: Option<&str>, field: &str) -> Result<Reading, Error> {
    let read = || match (parse_toleranced(text)?, otherwise) {
        ((_, Some(_)), _) => text.parse(),
        ((value, None), Some(u)) => Reading::expanded(value, length(u, "uncertainty")?),
        ((_, None), None) => Err(Error::new(
            ErrorKind::Missing,
            "uncertainty",
            text,
            "neither the reading nor the sheet says how good it is",
            "write `+/- 0.008 mm`, or give the sheet an uncertainty",
        )),
    };
    read().map_err(|e| e.within(field))
}

impl RingSheet {
    /// The survey.
    ///
    /// # Errors
    /// Those of reading text and of [`RingSurvey::new`], with the field that is wrong.
    pub fn read(&self) -> Result<RingSurvey, Error> {
        let half = |text: &str, field: &str| {
            length(text, field).and_then(|d| Radius::new(d / 2.0).map_err(|e| e.within(field)))
        };
        let inner = half(&self.inner_diameter, "inner_diameter")?;
        let face = Annulus::new(inner, half(&self.outer_diameter, "outer_diameter")?)?;
        let probes = self.probes.iter().enumerate().map(|(index, probe)| {
            let read = || {
                let diameter = probe
                    .diameter
                    .as_ref()
                    .or(self.probed_diameter.as_ref())
                    .ok_or_else(|| {
                        Error::new(
                            ErrorKind::Missing,
                            "diameter",
                            "",
                            "neither the probe nor the sheet says on which circle it lies",
                            "give the sheet a probed_diameter",
                        )
                    })?;
                Ok(Probe {
                    at: clock(&probe.angle)?,
                    radius: half(diameter, "diameter")?,
                    height: reading(&probe.height, self.uncertainty.as_deref(), "height")?,
                })
            };
            read().map_err(|e: Error| e.within(&format!("probes.{index}")))
        });
        RingSurvey::new(
            face,
            self.pilot.clone(),
            probes.collect::<Result<Vec<_>, Error>>()?,
        )
    }
}

impl BoreSheet {
    /// The survey.
    ///
    /// # Errors
    /// Those of reading text and of [`BoreSurvey::new`], with the field that is wrong.
    pub fn read(&self) -> Result<BoreSurvey, Error> {
        let readings = self.readings.iter().enumerate().map(|(index, written)| {
            let read = || {
                Ok(BoreReading {
                    at: clock(&written.angle)?,
                    depth: length(&written.depth, "depth")?,
                    diameter: reading(&written.diameter, self.uncertainty.as_deref(), "diameter")?,
                    gauge: written.gauge,
                })
            };
            read().map_err(|e: Error| e.within(&format!("readings.{index}")))
        });
        BoreSurvey::new(readings.collect::<Result<Vec<_>, Error>>()?)
    }
}

impl PadSheet {
    /// The survey.
    ///
    /// # Errors
    /// Those of reading text and of [`PadSurvey::new`], with the field that is wrong.
    pub fn read(&self) -> Result<PadSurvey, Error> {
        let points = self.points.iter().enumerate().map(|(index, written)| {
            let read = || {
                let (x, y) = (
                    length(&written.along, "along")?,
                    length(&written.across, "across")?,
                );
                let point = Point::new(x, y, length(&written.height, "height")?)?;
                Ok(PadPoint {
                    pad: written.pad.clone().into(),
                    point,
                })
            };
            read().map_err(|e: Error| e.within(&format!("points.{index}")))
        });
        let u = Reading::expanded(mm(0.0), length(&self.uncertainty, "uncertainty")?)?
            .standard_uncertainty();
        PadSurvey::new(
            self.datum.clone(),
            points.collect::<Result<Vec<_>, Error>>()?,
            u,
        )
    }
}

impl LimitSheet {
    /// The limit, graded as the shop's own.
    ///
    /// # Errors
    /// `Contradiction` when it is both known and unknown, `Missing` when it is neither; those of reading text.
    pub fn read(&self) -> Result<CutLimit, Error> {
        match (&self.may_come_off, &self.unknown) {
            (Some(left), None) => {
                // A stated limit without an uncertainty is a decision, not a measurement.
                let left = reading(left, Some("0 mm"), "may_come_off")?;
                CutLimit::new(self.kind, self.what.clone(), left, Grade::Shop)
            }
            (None, Some(measure)) => {
                CutLimit::unknown(self.kind, self.what.clone(), measure.clone())
            }
            (Some(_), Some(_)) => Err(Error::new(
                ErrorKind::Contradiction,
                "may_come_off",
                &self.what,
                "a limit is either known or unknown, not both",
                "leave one of them out",
            )),
            (None, None) => Err(Error::new(
                ErrorKind::Missing,
                "may_come_off",
                &self.what,
                "neither an amount nor why it is unknown",
                "write `\"may_come_off\": \"0.40 mm\"` or `\"unknown\": \"ask the frame maker\"`",
            )),
        }
    }
}

/// The allowance of several written limits.
///
/// # Errors
/// Those of [`LimitSheet::read`], with the place in the list.
pub fn allowance_of(limits: &[LimitSheet]) -> Result<Allowance, Error> {
    let read = limits
        .iter()
        .enumerate()
        .map(|(index, l)| l.read().map_err(|e| e.within(&format!("limits.{index}"))));
    Ok(Allowance::new(read.collect::<Result<Vec<_>, Error>>()?))
}
