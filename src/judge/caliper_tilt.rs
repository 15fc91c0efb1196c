//! Does a tilted brake mount make the caliper rub?

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::face::{MountKind, PadPoint, PadSurvey, Point};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, Spot, settled_below};
use crate::quantity::{Length, Printed, in_mm, mm, positive, settled_mm};
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
    HeightAt, "a height of a mount, such as `10 mm along, 5 mm across: 0.03 +/- 0.008 mm`", |text| text.parse();
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
        let length = self
            .pad_length
            .map(|l| positive("pad_length", l))
            .transpose()?;
        let gap = self
            .pad_clearance
            .map(|l| positive("pad_clearance", l))
            .transpose()?;
        let rule = self.rule.unwrap_or_default();
        let mut said = if self.points.is_empty() {
            unmeasured()
        } else {
            let survey = self.survey()?;
            match (length, gap) {
                (Some(length), Some(gap)) => judged(&survey, self.kind, length, gap, rule)?,
                (length, _) => unbounded(&survey, self.kind, length, rule, tables)?,
            }
        };
        let free = tables.get::<BrakeFigure>("pads_free_play");
        if let Some(play) = free.and_then(|f| f.figure.as_ref()?.lower()) {
            said = said.with(Worked::length(
                "least free play of the rotor",
                play,
                "both pad clearances together, as published",
            ));
        }
        if let Ok(row) = tables.find::<BrakeFigure>("mount_squareness") {
            said.beside.push(Finding::stated(
                String::from(&*row.what),
                "no limit is published",
            ));
        }
        if length.is_none() || gap.is_none() {
            said = said.then(NextStep::new(
                "clearance of pad and rotor on each side, and length of the pad across the tilt",
                "no squareness is published for a mount; the caliper's own clearance is the only bound",
                "feeler gauge, steel rule; or the brake maker's figure",
            ));
        }
        if self.points.is_empty() {
            said = said.then(NextStep::new(
                "the height of both pad traces on the rotor, or a dial reading along the mount face",
                "rub after alignment has other causes: rotor run-out, hub play, sticking pistons",
                "dial indicator on a facing guide",
            ));
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::new(
                "the caliper maker's own figure",
                "only the maker can say how square is enough",
                "caliper maker's manual",
            ));
        }
        Ok(said.minding("brakes: after any work at a mount test at walking pace; when in doubt, hand over to a qualified workshop"))
    }
}

const PLACE: &str = "brake mount face";

fn open(words: impl Into<String>) -> Verdict {
    let words = words.into();
    Verdict::from_findings(
        PLACE,
        Vec::from([Finding {
            outcome: Some(Outcome::Undecided),
            ..Finding::stated("caliper tilt", words.clone())
        }]),
    )
    .saying(words)
}

fn unmeasured() -> Verdict {
    open(
        "For the squareness of a mount face no limit is published, so none is invented here; a tilt that takes up the clearance of the pads must rub.",
    )
}

fn judged(
    survey: &PadSurvey,
    kind: MountKind,
    length: Length,
    gap: Length,
    rule: DecisionRule,
) -> Result<Verdict, Error> {
    let tilt = survey.caliper_tilt(kind, length, gap, rule).map_err(|e| {
        let field = if e.field().contains("length") {
            "pad_length"
        } else {
            "pad_clearance"
        };
        e.named(field)
    })?;
    let limits = Limits::at_most(tilt.allowed_rise, Grade::Shop)?;
    let words = match tilt.decision.outcome {
        Outcome::ConformityShown => "clear, with the rotor centred and true",
        Outcome::NonconformityShown => "it will rub whatever the bolts do",
        Outcome::Undecided => "too close to tell whether it rubs",
    };
    let found = Finding {
        outcome: Some(tilt.decision.outcome),
        readings: Vec::from([tilt.rise]),
        limits: Some(limits),
        decision: Some(tilt.decision),
        owner: String::from("the caliper's own clearance"),
        grade: Some(Grade::Shop),
        ..Finding::stated(
            "caliper tilt",
            format!(
                "rises {} over the pad, which touches at {}: {words}",
                in_mm(tilt.rise.value()),
                in_mm(tilt.allowed_rise)
            ),
        )
    };
    let said = Verdict::from_findings(PLACE, Vec::from([found]))
        .saying(format!(
            "The mount leans {:.2} deg; a pad {} long with {} a side touches at {:.2} deg: {words}.",
            tilt.angle.in_unit(),
            in_mm(length),
            in_mm(gap),
            tilt.allowed_angle.in_unit()
        ))
        .with(Worked::length("rise over the pad", tilt.rise.value(), "harmful slope x length of the pad"))
        .with(Worked::length("rise allowed", tilt.allowed_rise, "twice the clearance of one side"))
        .with(Worked::angle("tilt", tilt.angle, "angle of the harmful slope"))
        .with(Worked::angle("tilt allowed", tilt.allowed_angle, "asin(2 x clearance / length of the pad)"));
    Ok(if said.outcome == Outcome::NonconformityShown {
        said.cured(Curing::by(Remedy::Face))
    } else {
        said
    })
}

/// The slope alone, and beside it what the least published clearance would say.
fn unbounded(
    survey: &PadSurvey,
    kind: MountKind,
    length: Option<Length>,
    rule: DecisionRule,
    tables: Tables<'_>,
) -> Result<Verdict, Error> {
    let slope = survey.harmful_slope(kind);
    let angle = crate::quantity::deg(libm::atan(slope).to_degrees());
    let mut said = open(format!(
        "The mount leans {:.2} deg; whether that rubs depends on pad and clearance, and no squareness is published.",
        angle.in_unit()
    ))
    .with(Worked::angle("tilt", angle, "angle of the harmful slope"));
    let published = tables
        .get::<BrakeFigure>("pads_clearance")
        .and_then(|row| row.figure.as_ref());
    if let (Some(length), Some(figure)) = (length, published)
        && let Some(least) = figure.lower()
        && settled_below(least * 2.0, length)
    {
        let tilt = survey
            .caliper_tilt(kind, length, least, rule)
            .map_err(|e| e.named("pad_length"))?;
        let limits = Limits::at_most(tilt.allowed_rise, figure.grade().unwrap_or(Grade::Memory))?;
        let owner = format!(
            "{} mm a side, the least that a brake maker prints",
            settled_mm(least)
        );
        said.beside.push(sizes_against(
            "caliper tilt",
            &[tilt.rise],
            &limits,
            &owner,
            figure.evidence(),
            rule,
        ));
    }
    Ok(said)
}
