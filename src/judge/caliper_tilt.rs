//! Does a tilted brake mount make the caliper rub?

use alloc::format;
use alloc::vec::Vec;

use super::held::{Held, OwnLimits};
use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked};
use super::{Fact, Finding, SquareAsk, SquareFact};
use crate::Error;
use crate::evidence::Grade;
use crate::face::{MountKind, PadPoint, PadSurvey, Point};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, Spot, settled_below};
use crate::quantity::{Length, deg, in_mm, mm, positive};
use crate::read::{form, from_text, missing};
use crate::standard::{BrakeFigure, Tables};

/// A height read at a place of a mount.
///
/// ```
/// use framegauge::{judge::HeightAt, mm};
/// let at: HeightAt = "-37 mm along, 6 mm across: 0.08 +/- 0.008 mm".parse().unwrap();
/// assert_eq!((at.along, at.across), (mm(-37.0), mm(6.0)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeightAt {
    /// Along the mount, from one pad to the other.
    pub along: Length,
    /// Across the mount: towards the wheel is positive.
    pub across: Length,
    /// The height.
    pub height: Reading,
}

impl core::str::FromStr for HeightAt {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        let (spot, size) = Spot::before(text)?;
        Ok(Self {
            along: spot.along.ok_or_else(|| missing("along"))?,
            across: spot.across.ok_or_else(|| missing("across"))?,
            height: size.parse()?,
        })
    }
}

from_text! {
    /// a height of a mount, such as `10 mm along, 5 mm across: 0.03 +/- 0.008 mm`
    HeightAt, |text| text.parse();
}

form! {
    /// The tilt of a brake mount against the clearance of the pads: of a mount for posts only the slope across the pads rolls the
    /// caliper, of a tab any slope does. No squareness is published for a mount; the pads' own clearance is the only bound.
    ///
    /// ```
    /// use framegauge::{face::MountKind, judge::CaliperTilt, measure::Outcome, mm, standard::Tables};
    /// let at = |text: &str| text.parse().unwrap();
    /// let mut mount = CaliperTilt {
    ///     kind: MountKind::Posts,
    ///     points: vec![
    ///         at("-37 mm along, -7.5 mm across: 0 +/- 0.008 mm"), at("-37 mm along, 7.5 mm across: 0.1 +/- 0.008 mm"),
    ///         at("37 mm along, -7.5 mm across: 0 +/- 0.008 mm"), at("37 mm along, 7.5 mm across: 0.1 +/- 0.008 mm"),
    ///     ],
    ///     pad_length: Some(mm(25.0)), pad_clearance: Some(mm(0.2)), rule: None,
    /// };
    /// // 0.1 mm over 15 mm is 0.38 degrees; 0.2 mm a side over 25 mm allows 0.92.
    /// let said = mount.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::ConformityShown);
    /// mount.pad_clearance = None;
    /// assert!(mount.answer(Tables::ours()).unwrap().next[0].measure().contains("clearance"));
    /// ```
    CaliperTilt {
        /// How the caliper stands on the mount.
        kind: MountKind,
        /// Heights read over the mount, along the axle.
        points: Vec<HeightAt>,
        /// Length of the pad in the direction of the tilt.
        pad_length: Option<Length>,
        /// Clearance of pad and rotor on one side.
        pad_clearance: Option<Length>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl CaliperTilt {
    /// The heights as the face math takes them.
    fn survey(&self) -> Result<PadSurvey, Error> {
        let mut pads = Vec::with_capacity(self.points.len());
        let mut worst = mm(0.0);
        for (index, at) in self.points.iter().enumerate() {
            worst = worst.max(at.height.standard_uncertainty());
            let pad = if at.along < mm(0.0) { "lower" } else { "upper" };
            pads.push(PadPoint {
                pad: pad.into(),
                point: Point::new(at.along, at.across, at.height.value())
                    .map_err(|e| e.within(&format!("points[{index}]")))?,
            });
        }
        PadSurvey::new("wheel axle", pads, worst).map_err(|e| e.named("points"))
    }

    /// The verdict.
    ///
    /// # Errors
    /// Those of heights that span no face, and of a pad that is none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let stated = |field, length: Option<Length>| length.map(|l| positive(field, l)).transpose();
        let length = stated("pad_length", self.pad_length)?;
        let gap = stated("pad_clearance", self.pad_clearance)?;
        let mut said = match (self.points.is_empty(), length, gap) {
            (true, ..) => open(SquareFact::MountNotMeasured),
            (_, Some(length), Some(gap)) => self.judged(length, gap)?,
            (_, length, _) => self.unbounded(length, tables)?,
        };
        let play = tables.get::<BrakeFigure>("pads_free_play");
        let play = play.and_then(|f| f.figure.as_ref()?.lower());
        let published = |play| Worked::length("least free play", play, "both clearances together");
        said.worked.extend(play.map(published));
        if let Ok(row) = tables.find::<BrakeFigure>("mount_squareness") {
            let what = row.what.clone();
            let none = Finding::of(SquareFact::NotPrinted { what });
            said.beside.push(none);
        }
        if length.is_none() || gap.is_none() {
            said = said.then(NextStep::of(SquareAsk::Pads));
        }
        if self.points.is_empty() {
            said = said.then(NextStep::of(SquareAsk::MountHeights));
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::of(SquareAsk::MakersSquareness));
        }
        Ok(said.minding(SquareFact::BrakeTest))
    }

    fn judged(&self, length: Length, gap: Length) -> Result<Verdict, Error> {
        let rule = self.rule.unwrap_or_default();
        let tilt = self.survey()?.caliper_tilt(self.kind, length, gap, rule);
        let tilt = tilt.map_err(|e| e.named("pad_clearance"))?;
        let limits = Limits::at_most(tilt.allowed_rise, Grade::Shop)?;
        let held = OwnLimits::of(limits, "the caliper's clearance").held();
        let mut found = held.against("tilt", &[tilt.rise], self.rule);
        found.fact = Fact::Square(SquareFact::Tilt {
            leans: tilt.angle,
            touches: tilt.allowed_angle,
            outcome: tilt.decision.outcome,
        });
        let mut said = Verdict::from_findings(PLACE, Vec::from([found]));
        said.worked = Vec::from([
            Worked::length("rise", tilt.rise.value(), "slope x pad length"),
            Worked::length("rise allowed", tilt.allowed_rise, "2 x clearance"),
            Worked::angle("tilt", tilt.angle, "harmful slope"),
            Worked::angle(
                "tilt allowed",
                tilt.allowed_angle,
                "asin(2 x clearance / pad)",
            ),
        ]);
        if said.outcome == Outcome::NonconformityShown {
            said = said.cured(Curing::by(Remedy::Face));
        }
        Ok(said)
    }

    /// The slope alone, and beside it what the least published clearance would say.
    fn unbounded(&self, length: Option<Length>, tables: Tables<'_>) -> Result<Verdict, Error> {
        let survey = self.survey()?;
        let by = deg(libm::atan(survey.harmful_slope(self.kind)).to_degrees());
        let said = open(SquareFact::Leans { by });
        let mut said = said.with(Worked::angle("tilt", by, "harmful slope"));
        let row = tables.get::<BrakeFigure>("pads_clearance");
        let figure = row.and_then(|row| row.figure.as_ref());
        if let (Some(length), Some(figure)) = (length, figure)
            && let Some(least) = figure.lower().filter(|l| settled_below(*l * 2.0, length))
        {
            let rule = self.rule.unwrap_or_default();
            let tilt = survey.caliper_tilt(self.kind, length, least, rule);
            let tilt = tilt.map_err(|e| e.named("pad_length"))?;
            let grade = figure.grade().unwrap_or(Grade::Memory);
            let held = Held {
                limits: Limits::at_most(tilt.allowed_rise, grade)?,
                owner: format!("a brake maker's {} a side", in_mm(least)).into(),
                evidence: figure.evidence(),
            };
            said.beside = Vec::from([held.against("tilt", &[tilt.rise], self.rule)]);
        }
        Ok(said)
    }
}

const PLACE: &str = "brake mount face";

fn open(fact: SquareFact) -> Verdict {
    let mut found = Finding::of(fact);
    found.outcome = Some(Outcome::Undecided);
    Verdict::from_findings(PLACE, Vec::from([found]))
}
