//! `face` and `bore_shape`: rings and bores from a handful of readings.

use alloc::string::String;
use alloc::vec::Vec;

use super::said::{named, said_of, under};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::face::{
    Allowance, Annulus, BoreReading, BoreShape, BoreSurvey, Clock, CutLimit, FaceAnswer as Report,
    FacingGoal, FacingStep, Gauge, LimitKind, Probe, RingSurvey,
};
use crate::measure::{Decision, DecisionRule, Limits, Reading};
use crate::quantity::{Angle, Length, Radius};
use crate::read::{Shape, answer, form, told};
use crate::{Error, Grade};

told! {
    FacingStep => Shape::Report { what: "`step`: `done`, `one_pass` (depth_mm, up_to_mm), `stop`, `cannot_clean_up` or `undecided`, with the limit that sets it" },
    Report => Shape::Report { what: "facing, squareness, flatness, form, seat, rock, sampling, warnings" },
    BoreShape => Shape::Report { what: "size, sections, taper, lobes_suspected, complete" },
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
}

form! {
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
}

impl LimitOf {
    fn limit(&self) -> Result<CutLimit, Error> {
        let kind = self.kind.unwrap_or(LimitKind::Other);
        let what = self.what.clone();
        let contradiction = |field: &'static str| {
            Error::new(
                crate::ErrorKind::Contradiction,
                field,
                "",
                "a second statement of one limit",
                "state one of: may_come_off; measured and least; unknown",
            )
        };
        let limit = match (
            &self.may_come_off,
            &self.measured,
            &self.least,
            &self.unknown,
        ) {
            (Some(amount), None, None, None) => CutLimit::new(kind, what, *amount, Grade::Shop),
            (None, Some(measured), Some(least), None) => {
                CutLimit::leaving(kind, what, measured, *least, Grade::Shop)
            }
            (None, None, None, Some(measure)) => CutLimit::unknown(kind, what, measure.clone()),
            (None, Some(_), None, None) => return Err(crate::read::missing("least")),
            (None, None, Some(_), None) => return Err(crate::read::missing("measured")),
            (None, None, None, None) => return Err(crate::read::missing("may_come_off")),
            (_, _, _, Some(_)) => return Err(contradiction("unknown")),
            (_, Some(_), _, _) => return Err(contradiction("measured")),
            (_, None, Some(_), _) => return Err(contradiction("least")),
        };
        limit.map_err(|e| said_of(&e, &[("least", "least")], "what"))
    }
}

form! {
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
}

answer! {
    /// What a ring survey says.
    FaceAnswer {
        /// What to do next.
        next: FacingStep,
        /// In a sentence.
        words: crate::evidence::Text,
        /// Everything that the survey says.
        report: Report,
    }
}

impl Face {
    fn survey(&self) -> Result<RingSurvey, Error> {
        let radius = |length, field| Radius::new(length).map_err(|e| named(&e, field));
        let face = Annulus::new(
            radius(self.inner_radius, "inner_radius")?,
            radius(self.outer_radius, "outer_radius")?,
        )
        .map_err(|e| said_of(&e, &[], "inner_radius"))?;
        let mut probes = Vec::with_capacity(self.probes.len());
        for (index, probe) in self.probes.iter().enumerate() {
            let here = |e: &Error, field: &'static str| {
                under(named(e, field), &alloc::format!("probes[{index}]"))
            };
            let at = Clock::new(probe.at).map_err(|e| here(&e, "at"))?;
            let radius = probe
                .radius
                .or(self.probe_radius)
                .ok_or_else(|| crate::read::missing("probe_radius"))?;
            probes.push(Probe {
                at,
                radius: Radius::new(radius).map_err(|e| here(&e, "radius"))?,
                height: probe.height,
            });
        }
        RingSurvey::new(face, self.datum.clone(), probes).map_err(|e| {
            // A probe is named by its place in the list.
            match e
                .field()
                .strip_prefix("probes.")
                .and_then(|rest| rest.split_once('.'))
            {
                Some((index, field)) => {
                    let path = alloc::format!("probes[{index}].{field}");
                    named(&e, path)
                }
                None => said_of(&e, &[("datum", "datum")], "probes"),
            }
        })
    }
}

impl Ask for Face {
    type Answer = FaceAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let survey = self.survey()?;
        let names = [
            ("squareness", "square_within"),
            ("over", "over"),
            ("diameter", "over"),
        ];
        let mut goal = FacingGoal::square_within(self.square_within, self.over, Grade::Shop)
            .map_err(|e| said_of(&e, &names, "over"))?;
        if let Some(flat) = self.flat_within {
            goal = goal
                .flat_within(flat, Grade::Shop)
                .map_err(|e| said_of(&e, &[], "flat_within"))?;
        }
        if let Some(share) = self.share {
            goal = goal
                .touching(share)
                .map_err(|e| said_of(&e, &[], "share"))?;
        }
        let limits = self
            .limits
            .iter()
            .enumerate()
            .map(|(index, limit)| {
                limit
                    .limit()
                    .map_err(|e| under(e, &alloc::format!("limits[{index}]")))
            })
            .collect::<Result<Vec<_>, Error>>()?;
        let report = survey
            .answer(
                &goal,
                &Allowance::new(limits),
                self.rule.unwrap_or_default(),
            )
            .map_err(|e| said_of(&e, &names, "probes"))?;
        Ok(Answered {
            answer: FaceAnswer {
                next: report.facing.step.clone(),
                words: alloc::borrow::Cow::Owned(String::from(&*report.facing.words)),
                report,
            },
            basis: Basis::graded(Grade::Shop)
                .by("least squares tilt against the pilot; clean-up depth to the outer edge")
                .noting("limits and goal are the asker's own; the frame maker's written limits go first"),
        })
    }
}

form! {
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
}

form! {
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

answer! {
    /// The shape of a bore.
    BoreAnswer {
        /// Size, sections, taper and what the readings cannot see.
        shape: BoreShape,
        /// The bore held against the limits, where some were given.
        decision: Option<Decision>,
    }
}

impl Ask for Bore {
    type Answer = BoreAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let mut readings = Vec::with_capacity(self.readings.len());
        for (index, reading) in self.readings.iter().enumerate() {
            let at = Clock::new(reading.at)
                .map_err(|e| under(named(&e, "at"), &alloc::format!("readings[{index}]")))?;
            readings.push(BoreReading {
                at,
                depth: reading.depth,
                diameter: reading.diameter,
                gauge: reading.gauge.unwrap_or(Gauge::TwoPoint),
            });
        }
        let of_readings = |e: Error| said_of(&e, &[], "readings");
        let survey = BoreSurvey::new(readings).map_err(of_readings)?;
        let shape = survey.shape().map_err(of_readings)?;
        let decision = self
            .limits
            .map(|limits| survey.against(&limits, self.rule.unwrap_or_default()));
        Ok(Answered {
            answer: BoreAnswer { shape, decision },
            basis: Basis::graded(self.limits.map_or(Grade::Derived, |l| l.grade()))
                .by("largest and smallest diameter; an ellipse through three axes or more")
                .noting("two-point readings cannot see odd lobes"),
        })
    }
}
