//! Dropouts and spindles: spacing, angle, offset, each kept apart.

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Angle, Length, deg, in_mm, mm, positive, to_mm};
use crate::{Error, ErrorKind};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

/// Two dropouts: their spacing and their angle, kept apart.
///
/// ```
/// use framegauge::{judge::Dropouts, mm};
/// let pair = Dropouts { spacing: "114 +/- 0.2 mm".parse().unwrap(), hub: mm(108.0), difference: None, over: None, angle: None };
/// assert_eq!(pair.judge().unwrap().millimetres("each side"), Some(3.0));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dropouts {
    /// Distance of the inner faces as found.
    pub spacing: Reading,
    /// Width over the locknuts of the hub that belongs there.
    pub hub: Length,
    /// Difference of the spacing between the two ends of the dropouts.
    pub difference: Option<Reading>,
    /// Length between these two readings.
    pub over: Option<Length>,
    /// An angle that somebody states.
    pub angle: Option<Angle>,
}

impl Dropouts {
    /// The verdict: spacing off by so much in all and on each side; angle between the faces from two readings, or the length
    /// that a stated angle implies. No limit for either is published.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none, and for a stated angle that is none between two faces.
    ///
    /// ```
    /// use framegauge::{deg, judge::Dropouts, mm};
    /// let pair = Dropouts {
    ///     spacing: "114 +/- 0.2 mm".parse().unwrap(), hub: mm(108.0),
    ///     difference: Some("1.0 +/- 0.1 mm".parse().unwrap()), over: None, angle: Some(deg(2.0)),
    /// };
    /// let said = pair.judge().unwrap();
    /// assert_eq!(said.millimetres("spacing off by"), Some(6.0));
    /// assert!((said.millimetres("length that this angle implies").unwrap() - 28.636).abs() < 0.001);
    /// ```
    pub fn judge(&self) -> Result<Verdict, Error> {
        size_reading("spacing", &self.spacing)?;
        let hub = positive("hub width", self.hub)?;
        let off = self.spacing.value() - hub;
        let apart = match settled_cmp(off, NOTHING) {
            Ordering::Greater => format!("{} too wide, {} a side", in_mm(off), in_mm(off / 2.0)),
            Ordering::Less => format!("{} too narrow, {} a side", in_mm(-off), in_mm(-off / 2.0)),
            Ordering::Equal => String::from("as wide as the hub"),
        };
        if let Some(angle) = self.angle {
            between_dropouts(angle)?;
        }
        let mut said = Verdict::from_findings(
            "dropouts",
            Vec::from([Finding {
                outcome: Some(Outcome::Undecided),
                readings: Vec::from([self.spacing]),
                ..Finding::stated(
                    "spacing",
                    format!(
                        "{} for a hub of {}: {apart}; no limit is published",
                        self.spacing,
                        in_mm(hub),
                    ),
                )
            }]),
        )
        .with(Worked::length(
            "spacing off by",
            off,
            "spacing less hub width",
        ))
        .with(Worked::length(
            "each side",
            off / 2.0,
            "half of it, if both stand equally far from the middle",
        ));
        let mut sentence = format!("Spacing {apart}");
        let mut angle_known = false;
        if let Some(difference) = &self.difference {
            let apart = to_mm(difference.value()).abs();
            match (self.over, self.angle) {
                (Some(over), stated) => {
                    let over = positive("length between the readings", over)?;
                    let angle = deg(libm::atan2(apart, to_mm(over)).to_degrees());
                    angle_known = true;
                    sentence.push_str(&format!(
                        "; faces {:.2}° apart in direction",
                        libm::atan2(apart, to_mm(over)).to_degrees()
                    ));
                    said = said.with(Worked::angle("angle", angle, "atan(difference / length)"));
                    if let Some(stated) = stated
                        && (stated.value - angle.value).abs() > deg(0.5).value
                    {
                        sentence.push_str("; the angle that was stated is another");
                    }
                }
                (None, Some(stated)) => {
                    let over = mm(apart / libm::tan(stated.value));
                    angle_known = true;
                    sentence.push_str(&format!(
                        "; {:.3} mm at the stated angle implies a length of {}",
                        apart,
                        in_mm(over)
                    ));
                    said = said.with(Worked::angle("angle", stated, "as stated")).with(
                        Worked::length(
                            "length that this angle implies",
                            over,
                            "difference / tan(angle)",
                        ),
                    );
                }
                (None, None) => {}
            }
        }
        sentence.push_str(". Spacing and angle are two faults; washers cure neither, and for neither is a limit published.");
        if !angle_known {
            said = said.then(NextStep::new(
                "the spacing at both ends of the dropouts, and how far these are apart",
                "two readings and their distance give the angle",
                "inside caliper, rule, or alignment gauges",
            ));
        }
        said = said.then(NextStep::new(
            "each dropout from the middle plane of the frame",
            "half the error a side holds only when both are off alike",
            "straightedge or string line",
        ));
        Ok(said.saying(sentence).minding("cold setting is for steel only, and for a qualified builder; never bend aluminium, titanium or carbon"))
    }
}

/// A stated angle: more than nothing, and no more than two bent faces can stand apart.
fn between_dropouts(angle: Angle) -> Result<(), Error> {
    let degrees = angle.value.to_degrees();
    let (kind, problem) = if !degrees.is_finite() {
        (ErrorKind::NotFinite, "an angle must be finite")
    } else if !(0.01..=45.0).contains(&degrees) {
        (ErrorKind::OutOfRange, "no angle between dropout faces")
    } else {
        return Ok(());
    };
    Err(Error::new(
        kind,
        "angle",
        degrees,
        problem,
        "give a few degrees",
    ))
}

/// Why a spindle binds in two bearings: three causes, each by its own readings.
///
/// ```
/// use framegauge::{judge::SpindleBinds, measure::Outcome};
/// let said = SpindleBinds::default().judge().unwrap();
/// assert_eq!(said.outcome, Outcome::Undecided);
/// assert_eq!(said.next.len(), 3);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SpindleBinds {
    /// Outside diameter of the spindle where the bearings sit.
    pub spindle: Option<Reading>,
    /// Smallest bore of the bearings.
    pub bearing_bore: Option<Reading>,
    /// Offset between the centres of the two bores, in two directions at right angles.
    pub offset: Option<[Reading; 2]>,
    /// Distance of the two bearings from middle to middle.
    pub apart: Option<Length>,
    /// Width of a bearing's inner ring.
    pub ring_width: Option<Length>,
    /// Whether it still binds with the side load taken off (adjuster loose).
    pub binds_unloaded: Option<bool>,
}

impl SpindleBinds {
    /// The verdict: which cause the readings show, and what is still to be measured.
    ///
    /// Offset e = √(x² + y²) over the distance L tilts the spindle by atan(e/L); over a ring of width b that takes up
    /// b·e/L of the clearance. No coaxiality limit is published.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none.
    ///
    /// ```
    /// use framegauge::{judge::SpindleBinds, measure::Outcome, mm};
    /// let read = |text: &str| text.parse().unwrap();
    /// let said = SpindleBinds {
    ///     spindle: Some(read("29.98 +/- 0.004 mm")), bearing_bore: Some(read("29.995 +/- 0.004 mm")),
    ///     offset: Some([read("0.30 +/- 0.02 mm"), read("0.40 +/- 0.02 mm")]), apart: Some(mm(60.0)), ring_width: Some(mm(7.0)),
    ///     binds_unloaded: Some(true),
    /// }.judge().unwrap();
    /// assert_eq!(said.millimetres("offset of the bores"), Some(0.5));
    /// assert_eq!(said.outcome, Outcome::NonconformityShown); // the tilt takes more than the clearance there is
    /// ```
    pub fn judge(&self) -> Result<Verdict, Error> {
        let mut findings = Vec::new();
        let mut worked = Vec::new();
        let mut next = Vec::new();
        let mut shown: Vec<&str> = Vec::new();
        let least = Limits::at_least(NOTHING, Grade::Derived)?;
        let clearance = match (self.spindle, self.bearing_bore) {
            (Some(spindle), Some(bore)) => {
                size_reading("spindle", &spindle)?;
                size_reading("bearing bore", &bore)?;
                let gap = bore.less(&spindle);
                worked.push(Worked::length(
                    "clearance on the spindle",
                    gap.value(),
                    "bearing bore less spindle",
                ));
                let found = sizes_against(
                    "spindle in bearing",
                    &[gap],
                    &least,
                    "a spindle that slides",
                    None,
                    DecisionRule::default(),
                );
                if found.outcome == Some(Outcome::NonconformityShown) {
                    shown.push("the spindle is larger than the bearing bore");
                }
                findings.push(found);
                Some(gap)
            }
            _ => {
                next.push(NextStep::new(
                    "spindle diameter and bearing bore",
                    "a spindle too large binds whatever the shell is like",
                    "micrometer, bore gauge",
                ));
                None
            }
        };
        match (self.offset, self.apart) {
            (Some([x, y]), Some(apart)) => {
                let apart = positive("distance of the bearings", apart)?;
                let e = libm::hypot(to_mm(x.value()), to_mm(y.value()));
                let u = libm::hypot(
                    to_mm(x.standard_uncertainty()),
                    to_mm(y.standard_uncertainty()),
                );
                worked.push(Worked::length(
                    "offset of the bores",
                    mm(e),
                    "root of the sum of squares of the two directions",
                ));
                worked.push(Worked::angle(
                    "tilt of the spindle",
                    deg(libm::atan2(e, to_mm(apart)).to_degrees()),
                    "atan(offset / distance)",
                ));
                if let (Some(gap), Some(width)) = (clearance, self.ring_width) {
                    let share = to_mm(positive("ring width", width)?) / to_mm(apart);
                    let taken = Reading::new(mm(e * share), mm(u * share))?;
                    worked.push(Worked::length(
                        "clearance taken by the tilt",
                        taken.value(),
                        "ring width x offset / distance",
                    ));
                    let left = gap.less(&taken);
                    let found = sizes_against(
                        "clearance left after the tilt",
                        &[left],
                        &least,
                        "rings held square by the shell",
                        None,
                        DecisionRule::default(),
                    );
                    if found.outcome == Some(Outcome::NonconformityShown) && shown.is_empty() {
                        shown.push("the two bores are not on one axis");
                    }
                    findings.push(found);
                }
                if self.ring_width.is_none() {
                    next.push(NextStep::new(
                        "width of a bearing's inner ring",
                        "a wide ring takes more of the clearance when the spindle is tilted",
                        "caliper",
                    ));
                }
                findings.push(Finding::stated(
                    "coaxiality",
                    "no limit is published for the two bores of a shell",
                ));
            }
            _ => next.push(NextStep::new(
                "centres of both bores, in two directions at right angles, and their distance",
                "bores off one axis make a straight spindle bind in both",
                "alignment bar, or dial indicator on a turned arbor",
            )),
        }
        match self.binds_unloaded {
            Some(false) => {
                findings.push(Finding { outcome: Some(Outcome::NonconformityShown), grade: Some(Grade::CommonPractice), ..Finding::stated("side load", "turns freely once the side load is off: too much preload, or a stack too wide") });
                shown.push("the side load is too great");
            }
            Some(true) => findings.push(Finding::stated(
                "side load",
                "binds without side load too, so preload is not the cause",
            )),
            None => next.push(NextStep::new(
                "turning with the adjuster loose",
                "tells side load from the other two",
                "by hand",
            )),
        }
        let ruled_out = next.is_empty()
            && findings
                .iter()
                .filter_map(|f| f.outcome)
                .all(|o| o == Outcome::ConformityShown);
        let sentence = if !shown.is_empty() {
            format!("What the readings show: {}.", shown.join("; "))
        } else if ruled_out {
            String::from(
                "It is none of the three usual causes: the spindle slides, the bores leave it its clearance, and it binds without side load.",
            )
        } else {
            String::from(
                "Three causes look alike: a spindle too large, bores not on one axis, side load. What is measured so far does not say which.",
            )
        };
        let mut said = Verdict::from_findings("spindle in two bearings", findings);
        if shown.is_empty() {
            said.outcome = Outcome::Undecided;
            if next.is_empty() {
                next.push(NextStep::new(
                    "the bearings by hand before and after pressing",
                    "cups squeezed in the shell take the clearance inside the bearing",
                    "by hand, then bore gauge in the shell",
                ));
            }
        }
        said.worked = worked;
        said.next = next;
        Ok(said
            .saying(sentence)
            .minding("do not drive a spindle through: the bearings take the blows"))
    }
}
