//! What a tilted brake mount does to the caliper.

use alloc::vec::Vec;

use super::pads::PadSurvey;
use super::plane::Plane;
use super::report::report;
use crate::evidence::{Grade, Text};
use crate::measure::{Decision, DecisionRule, Limits, Reading, decide};
use crate::quantity::{Angle, Length, deg, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// How the caliper stands on its mount, and so which slope of the mount matters.
///
/// ```
/// use framegauge::face::MountKind;
/// assert_eq!("tab".parse::<MountKind>().unwrap(), MountKind::Tab);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum MountKind {
    /// Two posts or a flat-mount face, bolts in the plane of the wheel. Only the slope across the line of the pads rolls
    /// the caliper; a height step between the pads pitches it in the plane of the rotor and does not make it rub.
    Posts,
    /// A plain tab, bolts parallel to the axle: any slope of the tab tilts the caliper against the rotor.
    Tab,
}

report! {
    /// Caliper tilt over the brake pad against the clearance given.
    ///
    /// Clearance and pad length are yours: no published limit was found. Brake parts: the frame, fork and brake makers'
    /// written limits come first, and the brake must be checked by hand before it is ridden.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, measure::DecisionRule, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// let mount = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    ///     at("lower", 37.0, -6.0, 0.3), at("lower", 37.0, 6.0, 0.38)], mm(0.004)).unwrap();
    /// let tilt = mount.caliper_tilt(MountKind::Posts, mm(25.0), mm(0.2), DecisionRule::default()).unwrap();
    /// assert_eq!(in_mm(tilt.allowed_rise).to_string(), "0.400 mm");
    /// ```
    CaliperTilt {
        /// Rise of the caliper over the length of the pad.
        rise: Reading as own rise_over_pad,
        /// Angle of the harmful slope.
        angle: Angle as degrees angle_deg,
        /// Rise at which a pad touches a centred rotor: twice the clearance to a side.
        allowed_rise: Length as mm allowed_rise_mm,
        /// The same as an angle, arcsin(2 c / L).
        allowed_angle: Angle as degrees allowed_angle_deg,
        /// Rise against what is allowed.
        decision: Decision as own decision,
        /// Each pad by itself.
        pads: Vec<PadShape> as own pads,
    }
}

report! {
    /// One pad of a mount.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, measure::DecisionRule, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// let mount = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    ///     at("lower", 37.0, -6.0, 0.3), at("lower", 37.0, 6.0, 0.38)], mm(0.004)).unwrap();
    /// let pads = mount.pad_shapes();
    /// assert_eq!(in_mm(pads[0].rise_across.unwrap()).to_string(), "0.080 mm");
    /// assert_eq!(in_mm(pads[1].height).to_string(), "0.340 mm");
    /// ```
    PadShape {
        /// Its name.
        pad: Text as own pad,
        /// Mean height of its readings.
        height: Length as mm height_mm,
        /// Rise across the pad, over its own readings; `None` when they lie on one line along the mount.
        rise_across: Option<Length> as mm_or_null rise_across_mm,
        /// Highest less lowest reading.
        range: Length as mm range_mm,
    }
}

impl PadSurvey {
    /// The slope that tilts the caliper against the rotor.
    ///
    /// ```
    /// # use framegauge::{face::*, in_mm, measure::DecisionRule, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// let mount = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    ///     at("lower", 37.0, -6.0, 0.3), at("lower", 37.0, 6.0, 0.38)], mm(0.004)).unwrap();
    /// assert!((mount.harmful_slope(MountKind::Posts) - 0.08 / 12.0).abs() < 1e-12);
    /// assert!(mount.harmful_slope(MountKind::Tab) > mount.harmful_slope(MountKind::Posts));
    /// ```
    #[must_use]
    pub fn harmful_slope(&self, kind: MountKind) -> f64 {
        let plane = Plane(self.fit.plane);
        match kind {
            MountKind::Posts => libm::fabs(plane.slope_y()),
            MountKind::Tab => plane.slope(),
        }
    }

    /// Caliper tilt over a brake pad of this length (in the direction of the tilt) against the clearance per side of a
    /// centred rotor: the pad touches when it rises by 2 c over its length, at arcsin(2 c / L).
    ///
    /// # Errors
    /// `OutOfRange`, `NotFinite` for a pad length or clearance that is none; `Contradiction` when the clearance is half
    /// the pad or more.
    ///
    /// ```
    /// # use framegauge::{face::{MountKind, PadPoint, PadSurvey, Point}, in_mm, measure::{DecisionRule, Outcome}, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// # let survey = PadSurvey::new("wheel axle", [at("upper", -37.0, -7.5, 0.0), at("upper", -37.0, 7.5, 0.1),
    /// #     at("lower", 37.0, -7.5, 0.0), at("lower", 37.0, 7.5, 0.1)], mm(0.004)).unwrap();
    /// // A slope of 0.1 mm across a face 15 mm wide is 0.38 degrees; 0.2 mm to a side over 25 mm allows 0.92.
    /// let tilt = survey.caliper_tilt(MountKind::Posts, mm(25.0), mm(0.2), DecisionRule::default()).unwrap();
    /// assert!((tilt.angle.value.to_degrees() - 0.382).abs() < 1e-3);
    /// assert!((tilt.allowed_angle.value.to_degrees() - 0.917).abs() < 1e-3);
    /// assert_eq!(tilt.decision.outcome, Outcome::ConformityShown);
    /// ```
    pub fn caliper_tilt(
        &self,
        kind: MountKind,
        pad_length: Length,
        clearance: Length,
        rule: DecisionRule,
    ) -> Result<CaliperTilt, Error> {
        for (field, value) in [("pad length", pad_length), ("clearance", clearance)] {
            if !(value.value.is_finite() && value > mm(0.0)) {
                let kind = if value.value.is_finite() {
                    ErrorKind::OutOfRange
                } else {
                    ErrorKind::NotFinite
                };
                return Err(Error::new(
                    kind,
                    field,
                    in_mm(value),
                    "must be above 0 mm",
                    "measure it on the brake",
                ));
            }
        }
        let ratio = to_mm(clearance) * 2.0 / to_mm(pad_length);
        if ratio >= 1.0 {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "clearance",
                in_mm(clearance),
                alloc::format!("is half the pad length of {} or more", in_mm(pad_length)),
                "give the gap between pad and rotor on one side",
            ));
        }
        let slope = self.harmful_slope(kind);
        let u = to_mm(self.u);
        let spread = match kind {
            MountKind::Posts => self.fit.slope_y_u(u),
            MountKind::Tab => self.fit.worst_slope_u(u),
        };
        let sine = slope / libm::sqrt(1.0 + slope * slope);
        let rise = Reading::new(mm(sine * to_mm(pad_length)), mm(spread * to_mm(pad_length)))
            .map_err(|e| e.within("tilt"))?;
        let allowed_rise = clearance * 2.0;
        let limits = Limits::at_most(allowed_rise, Grade::Shop)?;
        let degrees = |radians: f64| deg(radians / deg(1.0).value);
        Ok(CaliperTilt {
            rise,
            angle: degrees(libm::atan(slope)),
            allowed_rise,
            allowed_angle: degrees(libm::asin(ratio)),
            decision: decide(&rise, &limits, rule),
            pads: self.pad_shapes(),
        })
    }

    /// Each pad by itself, in the order in which they first appear.
    #[must_use]
    pub fn pad_shapes(&self) -> Vec<PadShape> {
        let mut shapes: Vec<PadShape> = Vec::new();
        for pad in &self.pads {
            if shapes.iter().any(|s| s.pad == pad.pad) {
                continue;
            }
            let own = || {
                self.pads
                    .iter()
                    .filter(|p| p.pad == pad.pad)
                    .map(|p| p.point)
            };
            #[expect(clippy::cast_precision_loss, reason = "a count")]
            let n = own().count() as f64;
            let (mean_y, mean_z) = own().fold((0.0, 0.0), |(y, z), p| (y + p.y / n, z + p.z / n));
            let (syy, syz) = own().fold((0.0, 0.0), |(yy, yz), p| {
                let y = p.y - mean_y;
                (yy + y * y, yz + y * p.z)
            });
            let extremes = |of: fn(&super::Point) -> f64| {
                own()
                    .map(|p| of(&p))
                    .fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| {
                        (l.min(v), h.max(v))
                    })
            };
            let (left, right) = extremes(|p| p.y);
            let (low, high) = extremes(|p| p.z);
            shapes.push(PadShape {
                pad: pad.pad.clone(),
                height: mm(mean_z),
                rise_across: (right - left > 0.5).then(|| mm(syz / syy * (right - left))),
                range: mm(high - low),
            });
        }
        shapes
    }
}
