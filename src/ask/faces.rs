//! `face` and `bore_shape`: rings and bores from a handful of readings.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::said::{Said, second};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::face::{
    Allowance, Annulus, BoreReading, BoreShape, BoreSurvey, Clock, CutLimit, FaceAnswer as Report,
    FacingGoal, FacingStep, Gauge, LimitKind, Probe, RingSurvey,
};
use crate::measure::{Decision, DecisionRule, Limits, Reading};
use crate::quantity::{Angle, Length, Radius};
use crate::read::{answer, form, missing, told};
use crate::say::reckoned;
use crate::{Error, Grade};

told! {
    /// `step`: `done`, `one_pass` (depth_mm, up_to_mm), `stop`, `cannot_clean_up` or `undecided`, with the limit that sets it
    FacingStep: Report,
    /// facing, squareness, flatness, form, seat, rock, sampling, warnings
    Report: Report,
    /// size, sections, taper, lobes_suspected, complete
    BoreShape: Report,
}

form! {
    /// A probed place of a face.
    ///
    /// ```
    /// use framegauge::{ask::ProbeAt, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"at":"90 deg","height":"0.03 +/- 0.008 mm"}"#).unwrap();
    /// assert!(framegauge::read::read_whole::<ProbeAt>(&tree, framegauge::standard::Tables::ours()).unwrap().radius.is_none());
    /// ```
    ProbeAt {
        /// Direction, clockwise from 12 o'clock as seen from outside.
        at: Angle,
        /// Height along the pilot, outwards positive.
        height: Reading,
        /// Radius that it was read at; `probe_radius` unless stated.
        radius: Option<Length>,
    }

    /// A limit on what may come off: stated as an amount, as a size that must stay, or as not known.
    ///
    /// ```
    /// use framegauge::{ask::LimitOf, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"what":"least width","measured":"68.4 +/- 0.02 mm","least":"68 mm"}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<LimitOf>(&tree, framegauge::standard::Tables::ours()).unwrap().what, "least width");
    /// ```
    LimitOf {
        /// What it protects, in words.
        what: String,
        /// Kind; `other` unless stated.
        kind: Option<LimitKind>,
        /// How much may come off.
        may_come_off: Option<Reading>,
        /// A size that shrinks with the cut …
        measured: Option<Reading>,
        /// … and the least that must be left of it.
        least: Option<Length>,
        /// What to measure or whom to ask, where the limit is not known. While it stands, no cut is shown to be allowed.
        unknown: Option<String>,
    }

    /// `face`: a ring face from indicator readings along the pilot: square, flat, how deep to cut, and whether.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"face","datum":"shell thread, drive side","inner_radius":"17 mm","outer_radius":"21 mm",
    ///         "probe_radius":"20 mm","probes":[{"at":"0 deg","height":"0.15 +/- 0.008 mm"},
    ///         {"at":"120 deg","height":"0.03 +/- 0.008 mm"},{"at":"240 deg","height":"0.02 +/- 0.008 mm"}],
    ///         "square_within":"0.05 mm","over":"40 mm",
    ///         "limits":[{"what":"least width","measured":"68.4 +/- 0.02 mm","least":"68 mm"}]}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["next"]["step"], "one_pass");
    /// ```
    Face {
        /// What the heights were read along: the pilot of the cutter.
        datum: String,
        /// Inner radius of the face.
        inner_radius: Length,
        /// Outer radius of the face.
        outer_radius: Length,
        /// Radius that the probes were read at.
        probe_radius: Option<Length>,
        /// The probes: three at the least.
        probes: Vec<ProbeAt>,
        /// Largest run-out that is acceptable.
        square_within: Length,
        /// Diameter that the run-out is stated over.
        over: Length,
        /// Largest flatness zone that is acceptable.
        flat_within: Option<Length>,
        /// Share of the ring that a cut must have touched, 1 unless stated.
        share: Option<f64>,
        /// Limits on what may come off.
        limits: Vec<LimitOf>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }

    /// A diameter at a place of a bore.
    ///
    /// ```
    /// use framegauge::{ask::BoreAt, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"at":"0 deg","depth":"5 mm","diameter":"43.97 +/- 0.01 mm","gauge":"three_point"}"#).unwrap();
    /// assert!(framegauge::read::read_whole::<BoreAt>(&tree, framegauge::standard::Tables::ours()).unwrap().gauge.is_some());
    /// ```
    BoreAt {
        /// Direction of one contact.
        at: Angle,
        /// Depth from the end.
        depth: Length,
        /// The diameter.
        diameter: Reading,
        /// What it was read with; `two_point` unless stated.
        gauge: Option<Gauge>,
    }

    /// `bore_shape`: a bore from a few diameters: its size, or that it has none, ovality, taper, and its limits.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"bore_shape","readings":[{"at":"0 deg","depth":"5 mm","diameter":"43.80 +/- 0.01 mm"},
    ///         {"at":"90 deg","depth":"5 mm","diameter":"44.00 +/- 0.01 mm"}]}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["shape"]["size"]["finding"], "none");
    /// ```
    Bore {
        /// The diameters, two axes and two depths at the least.
        readings: Vec<BoreAt>,
        /// Limits that the bore is held against.
        limits: Option<Limits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl LimitOf {
    fn limit(&self) -> Result<CutLimit, Error> {
        let (kind, what) = (self.kind.unwrap_or(LimitKind::Other), self.what.clone());
        let (off, of, least) = (&self.may_come_off, &self.measured, &self.least);
        let limit = match (off, of, least, &self.unknown) {
            (Some(amount), None, None, None) => CutLimit::new(kind, what, *amount, Grade::Shop),
            (None, Some(of), Some(least), None) => {
                CutLimit::leaving(kind, what, of, *least, Grade::Shop)
            }
            (None, None, None, Some(measure)) => CutLimit::unknown(kind, what, measure.clone()),
            (None, Some(_), None, None) => return Err(missing("least")),
            (None, None, Some(_), None) => return Err(missing("measured")),
            (None, None, None, None) => return Err(missing("may_come_off")),
            (_, of, _, unknown) => {
                let other = of.as_ref().map_or("least", |_| "measured");
                let field = unknown.as_ref().map_or(other, |_| "unknown");
                let remedy = "state one of: may_come_off; measured and least; unknown";
                return Err(second(field, "a second statement of one limit", remedy));
            }
        };
        limit.said_by(&[("least", "least")], "what")
    }
}

answer! {
    /// What a ring survey says.
    FaceAnswer {
        /// What to do next.
        next: FacingStep,
        /// In a sentence.
        words: String,
        /// Everything that the survey says.
        report: Report,
    }

    /// The shape of a bore.
    BoreAnswer {
        /// Size, sections, taper and what the readings cannot see.
        shape: BoreShape,
        /// The bore held against the limits, where some were given.
        decision: Option<Decision>,
    }
}

impl ProbeAt {
    fn probe(&self, otherwise: Option<Length>) -> Result<Probe, Error> {
        let at = Clock::new(self.at).said("at")?;
        let radius = self.radius.or(otherwise).ok_or_else(|| missing("radius"))?;
        let (radius, height) = (Radius::new(radius).said("radius")?, self.height);
        Ok(Probe { at, radius, height })
    }
}

/// Each of a list read, its error said of its place in the list.
fn each<T, U>(
    list: &[T],
    name: &str,
    read: impl Fn(&T) -> Result<U, Error>,
) -> Result<Vec<U>, Error> {
    let numbered = list.iter().enumerate();
    numbered
        .map(|(index, one)| read(one).under(&format!("{name}[{index}]")))
        .collect()
}

impl Face {
    fn survey(&self) -> Result<RingSurvey, Error> {
        if self.probe_radius.is_none() && self.probes.iter().any(|probe| probe.radius.is_none()) {
            return Err(missing("probe_radius"));
        }
        let inner = Radius::new(self.inner_radius).said("inner_radius")?;
        let outer = Radius::new(self.outer_radius).said("outer_radius")?;
        let face = Annulus::new(inner, outer).said("inner_radius")?;
        let probe = |probe: &ProbeAt| probe.probe(self.probe_radius);
        let probes = each(&self.probes, "probes", probe)?;
        RingSurvey::new(face, self.datum.clone(), probes).map_err(|e| {
            // A probe is named by its place in the list.
            let place = e.field().strip_prefix("probes.");
            let place = place.and_then(|rest| rest.split_once('.'));
            match place.map(|(index, field)| format!("probes[{index}].{field}")) {
                Some(path) => e.named(path),
                None if e.field().contains("datum") => e.named("datum"),
                None => e.named("probes"),
            }
        })
    }

    fn goal(&self) -> Result<FacingGoal, Error> {
        let square = FacingGoal::square_within(self.square_within, self.over, Grade::Shop);
        let mut goal = square.said_by(&NAMES, "over")?;
        if let Some(flat) = self.flat_within {
            goal = goal.flat_within(flat, Grade::Shop).said("flat_within")?;
        }
        match self.share {
            Some(share) => goal.touching(share).said("share"),
            None => Ok(goal),
        }
    }
}

const NAMES: [(&str, &str); 3] = [
    ("squareness", "square_within"),
    ("over", "over"),
    ("diameter", "over"),
];

impl Ask for Face {
    type Answer = FaceAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (survey, goal) = (self.survey()?, self.goal()?);
        let limits = Allowance::new(each(&self.limits, "limits", LimitOf::limit)?);
        let report = survey.answer(&goal, &limits, self.rule.unwrap_or_default());
        let report = report.said_by(&NAMES, "probes")?;
        let answer = FaceAnswer {
            next: report.facing.step.clone(),
            words: String::from(&*report.facing.words),
            report,
        };
        let basis = Basis::graded(Grade::Shop)
            .by(reckoned::FACE)
            .noting(reckoned::FACE_NOTE);
        Ok(Answered { answer, basis })
    }
}

impl BoreAt {
    fn reading(&self) -> Result<BoreReading, Error> {
        Ok(BoreReading {
            at: Clock::new(self.at).said("at")?,
            depth: self.depth,
            diameter: self.diameter,
            gauge: self.gauge.unwrap_or(Gauge::TwoPoint),
        })
    }
}

impl Ask for Bore {
    type Answer = BoreAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let readings = each(&self.readings, "readings", BoreAt::reading)?;
        let survey = BoreSurvey::new(readings).said("readings")?;
        let rule = self.rule.unwrap_or_default();
        let answer = BoreAnswer {
            shape: survey.shape().said("readings")?,
            decision: self.limits.map(|limits| survey.against(&limits, rule)),
        };
        let basis = Basis::graded(self.limits.map_or(Grade::Derived, |l| l.grade()))
            .by(reckoned::BORE)
            .noting(reckoned::BORE_NOTE);
        Ok(Answered { answer, basis })
    }
}
