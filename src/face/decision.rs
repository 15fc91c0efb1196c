//! The facing decision: done, one more pass, stop, cannot clean up, or measure first.

use super::allowance::{Allowance, CutLimit, Pass};
use super::depth::{CleanUp, checked_share};
use super::report::report;
use super::ring::RingSurvey;
use super::tilt::Tilt;
use crate::evidence::{Grade, Text};
use crate::measure::{Decision, DecisionRule, Limits, Outcome, Reading, Why, decide};
use crate::quantity::{Length, in_mm, mm};
use crate::{Error, ErrorKind};

/// What the face must be: squareness as run-out over a diameter, and how much of it the cutter must have touched.
///
/// ```
/// use framegauge::{Grade, face::FacingGoal, mm};
/// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap().touching(0.9).unwrap();
/// assert_eq!(goal.share(), 0.9);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct FacingGoal {
    square: Limits,
    over: Length,
    flat: Option<Limits>,
    share: f64,
}

impl FacingGoal {
    /// Square to the pilot within this run-out over this diameter; the whole ring is to be touched if it is cut.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a limit or a diameter that is none.
    pub fn square_within(limit: Length, over: Length, grade: Grade) -> Result<Self, Error> {
        let over = super::plane::diameter(over)?;
        Ok(Self {
            square: upper(limit, grade, "squareness")?,
            over,
            flat: None,
            share: 1.0,
        })
    }
    /// Also flat within this zone. Three probes cannot show it: then the face is to be probed again.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a limit that is none.
    ///
    /// ```
    /// use framegauge::{Grade, face::FacingGoal, mm};
    /// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
    /// assert!(goal.clone().flat_within(mm(0.02), Grade::Shop).is_ok());
    /// assert_eq!(goal.flat_within(mm(-0.02), Grade::Shop).unwrap_err().field(), "flatness");
    /// ```
    pub fn flat_within(mut self, limit: Length, grade: Grade) -> Result<Self, Error> {
        self.flat = Some(upper(limit, grade, "flatness")?);
        Ok(self)
    }
    /// The share of the ring that a cut must have touched, above 0 and up to 1.
    ///
    /// # Errors
    /// `OutOfRange`.
    pub fn touching(mut self, share: f64) -> Result<Self, Error> {
        self.share = checked_share(share)?;
        Ok(self)
    }
    /// Limit of the run-out.
    #[must_use]
    pub const fn square(&self) -> Limits {
        self.square
    }
    /// The diameter it is stated over.
    #[must_use]
    pub const fn over(&self) -> Length {
        self.over
    }
    /// Limit of the flatness zone, where one is set.
    #[must_use]
    pub const fn flat(&self) -> Option<Limits> {
        self.flat
    }
    /// The share to be touched.
    #[must_use]
    pub const fn share(&self) -> f64 {
        self.share
    }
}

fn upper(limit: Length, grade: Grade, field: &'static str) -> Result<Limits, Error> {
    if limit.value.is_finite() && limit <= mm(0.0) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            in_mm(limit),
            "no face is better than perfect",
            "give the largest error that is acceptable",
        ));
    }
    Limits::at_most(limit, grade).map_err(|e| e.within(field))
}

/// What to do with the face.
///
/// ```
/// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
/// # let r = |v| Radius::new(mm(v)).unwrap();
/// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
/// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
/// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
/// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
/// let step = |heights: &[f64]| ring(heights).decide_facing(&goal, &Allowance::default(), DecisionRule::default()).unwrap().step;
/// assert_eq!(step(&[0.01, 0.00, 0.00, 0.01, 0.00]), FacingStep::Done);
/// // Nothing was said of what may come off, so nothing may.
/// assert!(matches!(step(&[0.10, 0.04, -0.06, -0.08, 0.00]), FacingStep::Undecided { .. }));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "step", rename_all = "snake_case")
)]
pub enum FacingStep {
    /// Square and flat enough as it is: leave it.
    Done,
    /// One more pass: at least so deep after first touch, and with the uncertainty of the survey perhaps as deep as `up_to`.
    OnePass {
        /// Depth after first touch.
        #[cfg_attr(
            feature = "serde",
            serde(rename = "depth_mm", serialize_with = "crate::quantity::serial::as_mm")
        )]
        depth: Length,
        /// Depth with its uncertainty, U (k = 2), but never past what the nearest limit allows for certain.
        #[cfg_attr(
            feature = "serde",
            serde(rename = "up_to_mm", serialize_with = "crate::quantity::serial::as_mm")
        )]
        up_to: Length,
        /// The nearest limit, which this pass does not reach.
        limit: CutLimit,
    },
    /// Nothing more may come off, because of this limit.
    Stop {
        /// The limit.
        limit: CutLimit,
    },
    /// What may come off does not clean the face up.
    CannotCleanUp {
        /// What may come off for certain.
        #[cfg_attr(
            feature = "serde",
            serde(rename = "depth_mm", serialize_with = "crate::quantity::serial::as_mm")
        )]
        depth: Length,
        /// The share of the face that this depth touches, 0 to 1.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "super::report::form::settled_share")
        )]
        share_reachable: f64,
        /// The limit that sets it.
        limit: CutLimit,
    },
    /// Not shown either way: measure this first.
    Undecided {
        /// What to measure.
        measure: Closer,
    },
}

report! {
    /// The facing decision with everything it rests on.
    FacingReport {
        /// What to do.
        step: FacingStep as own step,
        /// The same in a sentence.
        words: Text as own words,
        /// Tilt over the diameter of the goal.
        tilt: Tilt as own tilt,
        /// Tilt against its limit.
        square: Decision as own square,
        /// Flatness against its limit, where one is set.
        flat: Option<Decision> as own flat,
        /// Depth to clean up the whole face.
        clean_up: CleanUp as own clean_up,
        /// The nearest limit.
        nearest: Option<CutLimit> as own nearest_limit,
        /// The weakest grade among the limits used.
        grade: Grade as own grade,
    }
}

impl RingSurvey {
    /// Decides what to do with this face: goal against what was read, depth needed against what may come off.
    ///
    /// An allowance without any limit is no permission: the answer is then `Undecided` whenever something has to come
    /// off. State the limits, or state in one of them that there is none.
    ///
    /// # Errors
    /// Those of [`Self::tilt`].
    ///
    /// ```
    /// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
    /// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
    /// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
    /// let goal = FacingGoal::square_within(mm(0.05), mm(40.0), Grade::Shop).unwrap();
    /// let lip = CutLimit::new(LimitKind::PaintLip, "paint lip", Reading::exact(mm(0.08)).unwrap(), Grade::Shop).unwrap();
    /// let survey = ring(&[0.10, 0.04, -0.06, -0.08, 0.00]);
    /// let report = survey.decide_facing(&goal, &Allowance::new([lip]), DecisionRule::default()).unwrap();
    /// assert!(report.words.starts_with("cannot clean up: paint lip allows 0.080 mm"));
    /// ```
    pub fn decide_facing(
        &self,
        goal: &FacingGoal,
        allowance: &Allowance,
        rule: DecisionRule,
    ) -> Result<FacingReport, Error> {
        let tilt = self.tilt(goal.over)?;
        let square = decide(&tilt.run_out, &goal.square, rule);
        let flat = match goal.flat {
            Some(limits) => Some(self.judge_flatness(&limits, rule)?),
            None => None,
        };
        let clean_up = self.clean_up();
        let step = self.step(goal, allowance, rule, &square, flat.as_ref(), &clean_up)?;
        let nearest = allowance.nearest().cloned();
        let grade = [
            Some(square.grade),
            flat.as_ref().map(|f| f.grade),
            nearest.as_ref().map(CutLimit::grade),
        ]
        .into_iter()
        .flatten()
        .fold(square.grade, Grade::weaker);
        let words = step.words();
        Ok(FacingReport {
            step,
            words,
            tilt,
            square,
            flat,
            clean_up,
            nearest,
            grade,
        })
    }

    /// Three probes lie on a plane whatever the face is like, so they show nothing of its flatness.
    fn judge_flatness(&self, limits: &Limits, rule: DecisionRule) -> Result<Decision, Error> {
        let judged = decide(&self.flatness()?.zone, limits, rule);
        if self.points.len() > 3 {
            return Ok(judged);
        }
        Ok(Decision {
            outcome: Outcome::Undecided,
            why: Why::TooClose,
            probability: None,
            margin: None,
            ..judged
        })
    }

    fn step(
        &self,
        goal: &FacingGoal,
        allowance: &Allowance,
        rule: DecisionRule,
        square: &Decision,
        flat: Option<&Decision>,
        clean_up: &CleanUp,
    ) -> Result<FacingStep, Error> {
        let shown = |outcome| move |d: &Decision| d.outcome == outcome;
        let judged = || core::iter::once(square).chain(flat);
        if judged().all(shown(Outcome::ConformityShown)) {
            return Ok(FacingStep::Done);
        }
        if !judged().any(shown(Outcome::NonconformityShown)) {
            let coarse = judged().any(|d| d.why == Why::InstrumentTooCoarse);
            let measure = self.look_closer(coarse);
            return Ok(FacingStep::Undecided { measure });
        }
        self.one_pass(&self.needed(goal, clean_up)?, allowance, rule)
    }

    /// One pass that takes at least `needed` off, or what stands against it. A known limit that leaves nothing forbids the
    /// cut whatever the unknown ones are; else those come first.
    pub(crate) fn one_pass(
        &self,
        needed: &Reading,
        allowance: &Allowance,
        rule: DecisionRule,
    ) -> Result<FacingStep, Error> {
        let undecided = |measure| FacingStep::Undecided { measure };
        Ok(match allowance.pass(needed, rule)? {
            Pass::Within { up_to, limit } => FacingStep::OnePass {
                depth: needed.value(),
                up_to,
                limit: limit.clone(),
            },
            Pass::Nothing { limit } => FacingStep::Stop {
                limit: limit.clone(),
            },
            Pass::Beyond { limit } => {
                let depth = limit.surely().unwrap_or(mm(0.0)).max(mm(0.0));
                FacingStep::CannotCleanUp {
                    depth,
                    share_reachable: self.touched_area(depth)?,
                    limit: limit.clone(),
                }
            }
            Pass::TooClose { limit } => undecided(Closer::Both {
                needed: needed.value(),
                limit: limit.clone(),
            }),
            Pass::Unknown { limit } => undecided(Closer::Limit {
                limit: limit.clone(),
            }),
            Pass::NoLimit => undecided(Closer::AnyLimit),
        })
    }

    /// Depth that the goal asks for, with its uncertainty.
    fn needed(&self, goal: &FacingGoal, clean_up: &CleanUp) -> Result<Reading, Error> {
        let depth = if goal.share < 1.0 {
            self.depth_for_share(goal.share)?
        } else {
            clean_up.at_outer_edge
        };
        Reading::new(depth, clean_up.standard_uncertainty)
    }

    fn look_closer(&self, coarse: bool) -> Closer {
        if coarse {
            return Closer::Finer;
        }
        let probes = super::sampling::recommended_probes(self.points.len());
        Closer::Again { probes }
    }
}

/// What must be measured before it can be decided. As JSON its sentence.
///
/// ```
/// use framegauge::face::Closer;
/// assert!(Closer::Again { probes: 9 }.to_string().contains("9 probes"));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub enum Closer {
    /// The face with a finer indicator.
    Finer,
    /// The face again.
    Again {
        /// With so many probes.
        probes: usize,
    },
    /// What is needed and what is left lie too close together.
    Both {
        /// What has to come off.
        needed: Length,
        /// The limit that leaves about as much.
        limit: CutLimit,
    },
    /// A limit that is not known.
    Limit {
        /// The limit.
        limit: CutLimit,
    },
    /// Nobody stated any limit.
    AnyLimit,
}

#[cfg(feature = "serde")]
impl serde::Serialize for Closer {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
