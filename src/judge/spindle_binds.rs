//! Why a spindle binds in two bearings.

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading};
use crate::quantity::{Length, deg, mm, positive, to_mm};
use crate::read::{Inside, Outside, form};
use crate::standard::Tables;
use crate::{Error, ErrorKind};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

form! {
    /// Why a spindle binds in two bearings: three causes, each by its own readings.
    ///
    /// Offset e = √(x² + y²) over the distance L tilts the spindle by atan(e/L); over a ring of width b that takes up
    /// b·e/L of the clearance. No coaxiality limit is published.
    ///
    /// ```
    /// use framegauge::{judge::SpindleBinds, measure::Outcome, mm, standard::Tables};
    /// let nothing = SpindleBinds::default().answer(Tables::ours()).unwrap();
    /// assert_eq!((nothing.outcome, nothing.next.len()), (Outcome::Undecided, 3));
    /// let read = |text: &str| text.parse().unwrap();
    /// let said = SpindleBinds {
    ///     spindle: Some(read("29.98 +/- 0.004 mm")), bearing_bore: Some(read("29.995 +/- 0.004 mm")),
    ///     offset: vec![read("0.30 +/- 0.02 mm"), read("0.40 +/- 0.02 mm")], apart: Some(mm(60.0)), ring_width: Some(mm(7.0)),
    ///     binds_unloaded: Some(true), rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.millimetres("offset of the bores"), Some(0.5));
    /// assert_eq!(said.outcome, Outcome::NonconformityShown); // the tilt takes more than the clearance there is
    /// ```
    #[derive(Default)]
    SpindleBinds {
        /// Outside diameter of the spindle where the bearings sit.
        spindle: Option<Reading> => Outside,
        /// Smallest bore of the bearings.
        bearing_bore: Option<Reading> => Inside,
        /// Offset between the centres of the two bores, in two directions at right angles.
        offset: Vec<Reading>,
        /// Distance of the two bearings from middle to middle.
        apart: Option<Length>,
        /// Width of a bearing's inner ring.
        ring_width: Option<Length>,
        /// Whether it still binds with the side load taken off (adjuster loose).
        binds_unloaded: Option<bool>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl SpindleBinds {
    /// The verdict: which cause the readings show, and what is still to be measured.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none; `Missing` for an offset in one direction only.
    pub fn answer(&self, _: Tables<'_>) -> Result<Verdict, Error> {
        let mut findings = Vec::new();
        let mut worked = Vec::new();
        let mut next = Vec::new();
        let mut shown: Vec<&str> = Vec::new();
        let least = Limits::at_least(NOTHING, Grade::Derived)?;
        let clearance = match (self.spindle, self.bearing_bore) {
            (Some(spindle), Some(bore)) => {
                size_reading("spindle", &spindle)?;
                size_reading("bearing_bore", &bore)?;
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
                    self.rule.unwrap_or_default(),
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
        if self.offset.len() == 1 || self.offset.len() > 2 {
            return Err(Error::new(
                ErrorKind::Missing,
                "offset",
                self.offset.len(),
                "an offset is told in two directions at right angles",
                "give two readings",
            ));
        }
        match (self.offset.as_slice(), self.apart) {
            ([x, y], Some(apart)) => {
                let apart = positive("apart", apart)?;
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
                    let share = to_mm(positive("ring_width", width)?) / to_mm(apart);
                    let taken =
                        Reading::new(mm(e * share), mm(u * share)).map_err(|e| e.named("apart"))?;
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
                        self.rule.unwrap_or_default(),
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
