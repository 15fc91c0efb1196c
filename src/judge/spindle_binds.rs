//! Why a spindle binds in two bearings.

use alloc::vec::Vec;

use super::held::Held;
use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, SquareAsk, SquareFact};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading};
use crate::quantity::{Length, deg, mm, positive, to_mm};
use crate::read::{Inside, Outside, form};
use crate::standard::Tables;
use crate::{Error, ErrorKind};

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
    /// assert_eq!(said.millimetres("offset"), Some(0.5));
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
        let (mut findings, mut worked, mut next) = (Vec::new(), Vec::new(), Vec::new());
        let slides = Held {
            limits: Limits::at_least(NOTHING, Grade::Derived)?,
            owner: "a spindle that slides".into(),
            evidence: None,
        };
        let mut clearance = None;
        if let (Some(spindle), Some(bore)) = (&self.spindle, &self.bearing_bore) {
            size_reading("spindle", spindle)?;
            size_reading("bearing_bore", bore)?;
            let gap = bore.less(spindle);
            worked.push(Worked::length("clearance", gap.value(), "bore - spindle"));
            findings.push(slides.against("spindle in bearing", &[gap], self.rule));
            clearance = Some(gap);
        } else {
            next.push(NextStep::of(SquareAsk::SpindleAndBearing));
        }
        if self.offset.len() == 1 || self.offset.len() > 2 {
            return Err(Error::new(
                ErrorKind::Missing,
                "offset",
                self.offset.len(),
                "an offset is told in two directions at right angles",
                "give two readings",
            ));
        }
        if let ([x, y], Some(apart)) = (self.offset.as_slice(), self.apart) {
            let apart = to_mm(positive("apart", apart)?);
            let root = |a: Length, b: Length| libm::hypot(to_mm(a), to_mm(b));
            let e = root(x.value(), y.value());
            let u = root(x.standard_uncertainty(), y.standard_uncertainty());
            let tilt = deg(libm::atan2(e, apart).to_degrees());
            worked.push(Worked::length("offset", mm(e), "hypot(x, y)"));
            worked.push(Worked::angle("tilt", tilt, "atan(offset / distance)"));
            let mut takes = None;
            if let (Some(gap), Some(width)) = (clearance, self.ring_width) {
                let share = to_mm(positive("ring_width", width)?) / apart;
                let taken = Reading::new(mm(e * share), mm(u * share));
                let taken = taken.map_err(|e| e.named("apart"))?;
                worked.push(Worked::length(
                    "tilt takes",
                    taken.value(),
                    "ring x tan(tilt)",
                ));
                let left = gap.less(&taken);
                findings.push(slides.against("clearance after tilt", &[left], self.rule));
                takes = Some(taken.value());
            }
            if self.ring_width.is_none() {
                next.push(NextStep::of(SquareAsk::RingWidth));
            }
            let offset = mm(e);
            findings.push(Finding::of(SquareFact::OffAxis { offset, takes }));
        } else {
            next.push(NextStep::of(SquareAsk::BoreCentres));
        }
        let out = Outcome::NonconformityShown;
        match self.binds_unloaded {
            Some(false) => findings.push(Finding::practice(out, SquareFact::SideLoad)),
            Some(true) => findings.push(Finding::of(SquareFact::NotSideLoad)),
            None => next.push(NextStep::of(SquareAsk::WithoutSideLoad)),
        }
        let mut said = Verdict::from_findings("spindle in bearings", findings);
        // No cause is shown; where all three are ruled out the bearings are left.
        if said.outcome != out && next.is_empty() {
            if said.outcome == Outcome::ConformityShown {
                said.findings.push(Finding::of(SquareFact::NoUsualCause));
            }
            next.push(NextStep::of(SquareAsk::BearingsByHand));
        }
        if said.outcome != out {
            said.outcome = Outcome::Undecided;
        }
        (said.worked, said.next) = (worked, next);
        Ok(said.minding(SquareFact::DoNotDrive))
    }
}
