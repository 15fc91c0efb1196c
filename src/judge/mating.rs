//! Does this part fit? Two members as measured, as limited, or as felt, against the windows that are published.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::joint::{from_maker, held, quoted, wanted};
use super::verdict::{NOTHING, NextStep, Verdict, Worked};
use super::words::capital;
use super::{Finding, Joint, fit_words};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{
    Conformance, Feature, Fit, HoleMember, MemberFinding, ShaftMember, Wanted, fit_between,
};
use crate::measure::{
    Bound, Decision, DecisionRule, Limits, Outcome, Reading, decide, settled_cmp,
};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::{BoreWindow, FitWindow, Hold, Row, Seatpost, Shell};

/// What was felt or seen without a measuring tool.
///
/// ```
/// use framegauge::judge::{Felt, FitQuestion, Joint};
/// use framegauge::measure::Outcome;
/// let cup = FitQuestion::new(Joint::HeadCup).felt(Felt::GoesByHand).judge().unwrap();
/// assert_eq!(cup.outcome, Outcome::NonconformityShown);
/// assert!(cup.next[0].measure.contains("bore"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Felt {
    /// The part goes in or on by hand.
    GoesByHand,
    /// The part rocks or knocks.
    Rocks,
    /// The part turned or crept in use: marks on both members moved apart.
    TurnedInUse,
    /// The part does not start by hand.
    NeedsForce,
    /// The same hole was loose with two or more good inner parts.
    HoleLooseWithSeveral,
    /// The same inner part was loose in two or more good holes.
    ShaftLooseInSeveral,
}

/// A question about one joint. Give what is known; what is missing comes back as the next measurement.
///
/// ```
/// use framegauge::{fit::{HoleMember, ShaftMember}, judge::{FitQuestion, Joint}, measure::Outcome};
/// // New fork: seat 30.02 mm, race 29.92 mm by caliper; the race does not start by hand.
/// let race = HoleMember::of_reading("29.92 +/- 0.03 mm".parse().unwrap()).unwrap();
/// let seat = ShaftMember::of_reading("30.02 +/- 0.03 mm".parse().unwrap()).unwrap();
/// let said = FitQuestion::new(Joint::CrownRace).hole(race).shaft(seat).judge().unwrap();
/// assert_eq!(said.outcome, Outcome::ConformityShown);
/// assert_eq!(said.millimetres("interference"), Some(0.1));
/// ```
#[derive(Debug, Clone)]
pub struct FitQuestion {
    joint: Joint,
    hold: Hold,
    hole: Option<HoleMember>,
    shaft: Option<ShaftMember>,
    nominal: Option<Length>,
    windows: Vec<Wanted>,
    felt: Vec<Felt>,
    coated: [bool; 2],
    rule: DecisionRule,
}

impl FitQuestion {
    /// A question about this joint.
    #[must_use]
    pub fn new(joint: Joint) -> Self {
        Self {
            joint,
            hold: joint.hold(),
            hole: None,
            shaft: None,
            nominal: None,
            windows: Vec::new(),
            felt: Vec::new(),
            coated: [false; 2],
            rule: DecisionRule::default(),
        }
    }

    /// A question about a press shell of the tables: its way of holding, its nominal bore and its printed bore limits.
    ///
    /// # Errors
    /// `Missing` when the row has no bore, as a threaded shell.
    ///
    /// ```
    /// use framegauge::{judge::{Felt, FitQuestion}, measure::Outcome, standard::{Shell, find}};
    /// // A moulded 37 mm seat is a slip fit by design: no interference is no fault.
    /// let said = FitQuestion::of_shell(find::<Shell>("bb90").unwrap()).unwrap().felt(Felt::GoesByHand).judge().unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// assert!(said.sentence.contains("slip fit by design"));
    /// ```
    pub fn of_shell(shell: &Shell) -> Result<Self, Error> {
        let Some(nominal) = shell.bore.as_ref().and_then(crate::Figure::nominal) else {
            return Err(Error::new(
                crate::ErrorKind::Missing,
                "shell",
                shell.code.clone(),
                "no bore is known for this shell",
                "a threaded shell is judged by its thread; else measure the bore",
            ));
        };
        let direct = shell
            .fit
            .as_ref()
            .and_then(|f| f.value())
            .is_some_and(|h| *h == Hold::Press)
            && (nominal - mm(42.0)).abs() < mm(0.5);
        let mut out = Self::new(if direct {
            Joint::DirectBearing
        } else {
            Joint::PressShell
        });
        if let Some(hold) = shell.fit.as_ref().and_then(|f| f.value()) {
            out.hold = *hold;
        }
        out.nominal = Some(nominal);
        let printed = BoreWindow::table()
            .iter()
            .find(|w| w.shell == shell.code && w.window.is_known());
        if let Some(window) = printed {
            out.hole = Some(HoleMember::of_limits(Limits::of_size(&window.window))?);
        }
        Ok(out)
    }

    /// How the joint is meant to hold, where it differs from the usual.
    #[must_use]
    pub const fn hold(mut self, hold: Hold) -> Self {
        self.hold = hold;
        self
    }
    /// The outer member.
    #[must_use]
    pub fn hole(mut self, hole: HoleMember) -> Self {
        self.hole = Some(hole);
        self
    }
    /// A reading of the outer member, held against its limits where [`Self::of_shell`] knew any.
    ///
    /// # Errors
    /// As [`HoleMember::measured_once`].
    pub fn hole_measured(mut self, reading: Reading) -> Result<Self, Error> {
        let member = match self.hole.take() {
            Some(member) => member.measured_once(reading)?,
            None => HoleMember::of_reading(reading)?,
        };
        self.hole = Some(member);
        Ok(self)
    }
    /// The inner member.
    #[must_use]
    pub fn shaft(mut self, shaft: ShaftMember) -> Self {
        self.shaft = Some(shaft);
        self
    }
    /// The size that both are sold or drawn as.
    #[must_use]
    pub const fn sold_as(mut self, nominal: Length) -> Self {
        self.nominal = Some(nominal);
        self
    }
    /// A maker's own window; it decides before everything published.
    #[must_use]
    pub fn window(mut self, wanted: Wanted) -> Self {
        self.windows.push(wanted);
        self
    }
    /// What was felt or seen.
    #[must_use]
    pub fn felt(mut self, felt: Felt) -> Self {
        self.felt.push(felt);
        self
    }
    /// This member was read on paint or another coating.
    #[must_use]
    pub const fn coated(mut self, member: Feature) -> Self {
        match member {
            Feature::Hole => self.coated[0] = true,
            Feature::Shaft => self.coated[1] = true,
        }
        self
    }
    /// The decision rule.
    #[must_use]
    pub const fn rule(mut self, rule: DecisionRule) -> Self {
        self.rule = rule;
        self
    }

    /// The verdict.
    ///
    /// # Errors
    /// Those of [`fit_between`] and of windows that are none.
    pub fn judge(&self) -> Result<Verdict, Error> {
        let both = self.hole.as_ref().zip(self.shaft.as_ref());
        if let Some((hole, shaft)) = both {
            match fit_between(hole, shaft, self.rule) {
                Ok(_) => return self.measured(hole, shaft),
                Err(e) if e.kind() == crate::ErrorKind::Missing => {}
                Err(e) => return Err(e),
            }
        }
        let hole_known = self.hole.as_ref().is_some_and(|h| h.shape().is_some());
        let shaft_known = self
            .shaft
            .as_ref()
            .is_some_and(|s| s.shape().is_some() || s.limits().is_some());
        Ok(self.unmeasured(hole_known, shaft_known))
    }

    fn nominal_of(&self, fit: &Fit) -> Length {
        self.nominal
            .or(fit.nominal())
            .unwrap_or(fit.hole().smallest.value())
    }

    fn measured(&self, hole: &HoleMember, shaft: &ShaftMember) -> Result<Verdict, Error> {
        let mut hole = hole.clone();
        if let Some(nominal) = self.nominal
            && hole.nominal().is_none()
        {
            hole = hole.with_nominal(nominal)?;
        }
        let fit = fit_between(&hole, shaft, self.rule)?;
        let (decide_by, beside, quotes) = self.sort_windows(&fit)?;
        let mut findings: Vec<Finding> = [fit.hole(), fit.shaft()]
            .into_iter()
            .filter_map(|m| member(m))
            .collect();
        let place = self.joint.words();
        let envelope = if decide_by.is_empty() {
            self.envelope(&fit, &beside, place)?
        } else {
            None
        };
        let named = !decide_by.is_empty() || envelope.is_some();
        findings.extend(decide_by.iter().map(|(w, c)| held(&fit, place, w, c)));
        findings.extend(envelope);
        let pressed = self.pressed(&fit, named)?;
        findings.extend(pressed);
        if self.coated.contains(&true) {
            findings = findings.into_iter().map(|f| self.on_paint(f)).collect();
        }
        let mut said = Verdict::from_findings(place, findings);
        said.beside = beside
            .iter()
            .map(|(w, c)| held(&fit, place, w, c))
            .collect();
        said.beside.extend(quotes);
        let conflict = conflicting(said.findings.iter().chain(&said.beside));
        said = self.numbers(said, &fit);
        let mut sentence = format!("{} on diameter", capital(&fit_words(&fit)));
        sentence.push_str(&self.meaning(&said, &fit, named));
        if conflict {
            sentence.push_str(" The published windows disagree: the maker of the part decides.");
        }
        said = self.blame(said, &fit, &mut sentence);
        said = self.open(said, &fit);
        for caution in fit.cautions() {
            said.cautions.push(caution.words().into());
        }
        Ok(said.saying(sentence))
    }

    /// Deciding windows, others, and figures that can only be quoted.
    #[expect(
        clippy::type_complexity,
        reason = "three lists, named where they are taken apart"
    )]
    fn sort_windows(
        &self,
        fit: &Fit,
    ) -> Result<
        (
            Vec<(Wanted, Conformance)>,
            Vec<(Wanted, Conformance)>,
            Vec<Finding>,
        ),
        Error,
    > {
        let rows: Vec<&'static FitWindow> = self.joint.windows(self.nominal_of(fit)).collect();
        let each = |list: Vec<Wanted>| -> Result<Vec<_>, Error> {
            list.into_iter()
                .map(|w| fit.against(&w).map(|c| (w, c)))
                .collect()
        };
        let of = |maker: bool| {
            rows.iter()
                .filter(move |w| from_maker(w) == maker)
                .filter_map(|w| wanted(w))
        };
        let (first, rest): (Vec<Wanted>, Vec<Wanted>) = if self.windows.is_empty() {
            (of(true).collect(), of(false).collect())
        } else {
            (self.windows.clone(), of(true).chain(of(false)).collect())
        };
        Ok((each(first)?, each(rest)?, quoted(self.joint.words(), &rows)))
    }

    /// Where nobody with a say prints a window, the span of all opinions: outside it nobody agrees.
    fn envelope(
        &self,
        fit: &Fit,
        windows: &[(Wanted, Conformance)],
        place: &str,
    ) -> Result<Option<Finding>, Error> {
        let Some((first, _)) = windows.first() else {
            return Ok(None);
        };
        let same: Vec<&Wanted> = windows
            .iter()
            .map(|(w, _)| w)
            .filter(|w| w.sense == first.sense)
            .collect();
        let far = |pick: fn(&Limits) -> Bound, larger: bool| {
            same.iter()
                .filter_map(|w| pick(&w.limits).known())
                .reduce(|a, b| {
                    if settled_cmp(a, b).is_gt() == larger {
                        a
                    } else {
                        b
                    }
                })
        };
        let lower = far(Limits::lower, false).map_or(Bound::Open, Bound::At);
        let upper = far(Limits::upper, true).map_or(Bound::Open, Bound::At);
        let grade = same
            .iter()
            .map(|w| w.limits.grade())
            .min()
            .unwrap_or(Grade::Memory);
        let span = Wanted {
            sense: first.sense,
            limits: Limits::new(lower, upper, grade)?,
            owner: "the span of every published opinion".into(),
        };
        let conformance = fit.against(&span)?;
        Ok(Some(held(fit, place, &span, &conformance)))
    }

    /// A press fit must press; nobody needs to publish that. How much it may press is another matter.
    fn pressed(&self, fit: &Fit, named: bool) -> Result<Option<Finding>, Error> {
        if self.hold != Hold::Press {
            return Ok(None);
        }
        let window = Limits::at_most(NOTHING, Grade::CommonPractice)?;
        let tight = decide(&fit.tightest(), &window, self.rule);
        let loose = decide(&fit.loosest(), &window, self.rule);
        let (outcome, words) = if tight.outcome == Outcome::NonconformityShown {
            (tight.outcome, "meant to press, and there is a gap")
        } else if named {
            return Ok(None);
        } else if loose.outcome == Outcome::ConformityShown {
            (
                Outcome::Undecided,
                "it presses everywhere; how much it may press nobody prints for this joint",
            )
        } else {
            (
                Outcome::Undecided,
                "press or gap: not told by these readings",
            )
        };
        Ok(Some(Finding {
            outcome: Some(outcome),
            readings: Vec::from([fit.tightest(), fit.loosest()]),
            decision: Some(if outcome == tight.outcome {
                tight
            } else {
                loose
            }),
            owner: String::from("by design of a press fit"),
            grade: Some(Grade::CommonPractice),
            ..Finding::stated("press", words)
        }))
    }

    fn on_paint(&self, mut found: Finding) -> Finding {
        if found.outcome.is_some() {
            found.outcome = Some(Outcome::Undecided);
            found.words.push_str("; but read on paint, which is not a reading on metal: nothing is shown until it is off");
        }
        found
    }

    fn numbers(&self, said: Verdict, fit: &Fit) -> Verdict {
        let (tight, loose) = (fit.tightest().value(), fit.loosest().value());
        let mut said = if self.hold == Hold::Press {
            said.with(Worked::length(
                "interference",
                -fit.mean().value(),
                "mean shaft less mean hole",
            ))
            .with(Worked::length(
                "least interference",
                -loose,
                "smallest shaft less largest hole",
            ))
            .with(Worked::length(
                "greatest interference",
                -tight,
                "largest shaft less smallest hole",
            ))
        } else {
            said.with(Worked::length(
                "clearance",
                fit.mean().value(),
                "mean hole less mean shaft",
            ))
            .with(Worked::length(
                "least clearance",
                tight,
                "smallest hole less largest shaft",
            ))
            .with(Worked::length(
                "greatest clearance",
                loose,
                "largest hole less smallest shaft",
            ))
        };
        for member in [fit.hole(), fit.shaft()] {
            if let Some(off) = member.outside_by() {
                let what = format!("{} outside its limits by", member.feature);
                said = said.with(Worked::length(
                    what,
                    off,
                    "worst reading less the nearest limit",
                ));
            }
        }
        let beyond = said
            .findings
            .iter()
            .filter(|f| f.what == self.joint.words())
            .filter_map(|f| {
                let limits = f.limits?;
                let low = limits.lower().known().map(|l| l + tight);
                let high = limits.upper().known().map(|h| -tight - h);
                (self.hold == Hold::Press).then(|| {
                    [low, high]
                        .into_iter()
                        .flatten()
                        .find(|by| settled_cmp(*by, NOTHING).is_gt())
                })?
            })
            .max_by(|a, b| settled_cmp(*a, *b));
        match beyond {
            Some(by) => said.with(Worked::length(
                "beyond the window by",
                by,
                "value less the limit",
            )),
            None => said,
        }
    }

    fn meaning(&self, said: &Verdict, fit: &Fit, named: bool) -> String {
        let gap = settled_cmp(fit.tightest().value(), NOTHING).is_ge();
        match (self.hold, said.outcome) {
            _ if self.coated.contains(&true) => String::from(
                "; a reading over a coating is not a reading on metal, so no verdict before it is off.",
            ),
            (Hold::Slip, Outcome::ConformityShown) => String::from(": as a slip fit wants it."),
            (Hold::Slip, _) if !named => String::from(
                ": a slip fit by design, so having no interference is no fault; no limit is published for its gap.",
            ),
            (_, Outcome::ConformityShown) => String::from(": as this press fit wants it."),
            (Hold::Press, Outcome::NonconformityShown) if gap => {
                String::from(": it is meant to press and does not hold.")
            }
            (_, Outcome::NonconformityShown) => String::from(": out of what is allowed."),
            (_, Outcome::Undecided) if !named => String::from(
                ": how much is right nobody publishes for this joint; the maker of the part has to say.",
            ),
            (_, Outcome::Undecided) => {
                String::from(": too close to a limit for these readings to settle.")
            }
        }
    }

    /// Which member is off the size that both are sold as.
    fn blame(&self, mut said: Verdict, fit: &Fit, sentence: &mut String) -> Verdict {
        let Some(nominal) = self.nominal else {
            return said;
        };
        let step = mm(0.1);
        let off = |m: &MemberFinding, reading: Reading| {
            let by = reading.value() - nominal;
            let sure = by.abs() - reading.expanded_uncertainty();
            m.measured
                .then_some(by)
                .filter(|_| settled_cmp(sure, step).is_gt())
        };
        let (hole, shaft) = (
            off(fit.hole(), fit.hole().smallest),
            off(fit.shaft(), fit.shaft().largest),
        );
        for (what, by) in [
            ("hole off the size it is sold as", hole),
            ("inner part off the size it is sold as", shaft),
        ] {
            if let Some(by) = by {
                said = said.with(Worked::length(what, by, "reading less the size sold"));
            }
        }
        let which = match (hole, shaft) {
            (Some(_), Some(_)) => "both members are off",
            (Some(_), None) => "the hole is off",
            (None, Some(_)) => "the inner part is off",
            (None, None) => return said,
        };
        sentence.push_str(&format!(" Against {} as sold, {which}.", in_mm(nominal)));
        said
    }

    /// Cures and the next measurement.
    fn open(&self, mut said: Verdict, fit: &Fit) -> Verdict {
        let gap = fit.tightest().value();
        if self.joint == Joint::Seatpost
            && said.outcome == Outcome::NonconformityShown
            && settled_cmp(gap, NOTHING).is_gt()
        {
            said = said.with(Worked::length(
                "shim wall",
                gap / 2.0,
                "half the gap on diameter",
            ));
            let fits = fit.hole().smallest;
            let largest = Seatpost::table()
                .iter()
                .filter_map(|p| p.diameter.nominal())
                .filter(|d| settled_cmp(*d, fits.value() + fits.expanded_uncertainty()).is_le())
                .max_by(|a, b| settled_cmp(*a, *b));
            if let Some(size) = largest
                && settled_cmp(
                    size,
                    fit.shaft().largest.value() + fit.shaft().largest.expanded_uncertainty(),
                )
                .is_gt()
            {
                said = said
                    .with(Worked::length(
                        "post size to try first",
                        size,
                        "largest size of the series that the smallest bore admits",
                    ))
                    .with(Worked::length(
                        "clearance with that post",
                        fits.value() - size,
                        "smallest bore less its nominal size",
                    ));
            }
        }
        if said.outcome == Outcome::Undecided
            || fit.cautions().contains(&crate::fit::Caution::ShapeAtLeast)
        {
            let unsure = [fit.hole().smallest, fit.shaft().largest]
                .into_iter()
                .any(|r| settled_cmp(r.expanded_uncertainty(), mm(0.008)).is_gt());
            if self.hold == Hold::Press && unsure {
                said = said.then(NextStep::new(
                    "the bore with a bore gauge and the outside with a micrometer, two axes at two depths",
                    "a caliper cannot settle a press fit, and one diameter says nothing of shape",
                    "bore gauge, outside micrometer",
                ));
            } else if said.outcome == Outcome::Undecided {
                said = said.then(NextStep::new(
                    "largest and smallest diameter of both members",
                    "the gap at its widest decides, and the maker's own limit",
                    "bore gauge, outside micrometer",
                ));
            }
        }
        if self.coated.contains(&true) {
            said.next.insert(
                0,
                NextStep::new(
                    "the same size on bare metal",
                    "a coating counts on both sides",
                    "remove the coating by hand first",
                ),
            );
        }
        said
    }

    fn unmeasured(&self, hole_known: bool, shaft_known: bool) -> Verdict {
        let place = self.joint.words();
        let mut findings: Vec<Finding> = self.felt.iter().map(|f| self.feel(*f)).collect();
        let mut shared = None;
        for felt in &self.felt {
            match felt {
                Felt::HoleLooseWithSeveral => {
                    shared =
                        Some("the hole is the common one, so likely worn, stretched or over-cut")
                }
                Felt::ShaftLooseInSeveral => {
                    shared = Some("the inner part is the common one, so likely undersize or worn")
                }
                _ => {}
            }
        }
        if findings.is_empty() {
            findings.push(Finding::stated(place, "neither felt nor measured"));
        }
        let mut said = Verdict::from_findings(place, findings);
        let mut sentence = match (self.hold, said.outcome) {
            (Hold::Slip, Outcome::Undecided) => String::from(
                "A slip fit by design: going in by hand is no fault; only its gap against the maker's limit can tell, and none is published here.",
            ),
            (_, Outcome::NonconformityShown) => {
                String::from("It is meant to press and does not hold: no interference is left.")
            }
            _ => String::from("Nothing is shown without the two diameters."),
        };
        if let Some(which) = shared {
            sentence.push_str(&format!(
                " Of the two members {which}; both readings are still needed."
            ));
        }
        if !hole_known {
            said = said.then(NextStep::new(
                "largest and smallest bore, two axes at two depths",
                "the gap decides which cure is open",
                "bore gauge, or telescoping gauge and micrometer",
            ));
        }
        if !shaft_known {
            said = said.then(NextStep::new(
                "outside diameter of the inner part, two axes",
                "tells which of the two is out",
                "outside micrometer",
            ));
        }
        said.saying(sentence)
    }

    fn feel(&self, felt: Felt) -> Finding {
        let press = self.hold == Hold::Press;
        let (outcome, words) = match felt {
            Felt::GoesByHand if press => (
                Outcome::NonconformityShown,
                "goes by hand where it must be pressed: no interference",
            ),
            Felt::GoesByHand => (
                Outcome::Undecided,
                "goes by hand, as a slip fit does by design",
            ),
            Felt::Rocks if press => (
                Outcome::NonconformityShown,
                "rocks where it must be pressed",
            ),
            Felt::Rocks => (
                Outcome::Undecided,
                "rocks: more gap than it should have, or a worn bearing; measure before naming it",
            ),
            Felt::TurnedInUse if press => (
                Outcome::NonconformityShown,
                "turned on its seat in use: proof that it slips",
            ),
            Felt::TurnedInUse => (
                Outcome::Undecided,
                "turned in use: creep of a slip fit, a cause to look for",
            ),
            Felt::NeedsForce if press => (
                Outcome::Undecided,
                "needs force, as a press fit does; how much it presses is not felt",
            ),
            Felt::NeedsForce => (
                Outcome::Undecided,
                "needs force where it should slide: dirt, burr, paint, shape or size",
            ),
            Felt::HoleLooseWithSeveral | Felt::ShaftLooseInSeveral if press => (
                Outcome::NonconformityShown,
                "loose with more than one counterpart: no interference",
            ),
            Felt::HoleLooseWithSeveral | Felt::ShaftLooseInSeveral => {
                (Outcome::Undecided, "loose with more than one counterpart")
            }
        };
        Finding {
            outcome: Some(outcome),
            grade: Some(Grade::CommonPractice),
            owner: String::from("by design of the joint"),
            ..Finding::stated(self.joint.words(), words)
        }
    }
}

/// The published windows lead to different answers.
fn conflicting<'a>(findings: impl Iterator<Item = &'a Finding>) -> bool {
    let mut shown = findings
        .filter(|f| f.limits.is_some() && f.what != "hole" && f.what != "shaft")
        .filter_map(|f| f.outcome);
    let first = shown.next();
    shown.any(|o| Some(o) != first)
}

/// A measured member against its own limits.
fn member(found: &MemberFinding) -> Option<Finding> {
    let (limits, decision): (Limits, Decision) = (found.limits?, found.decision?);
    let words = match found.outside_by() {
        Some(by) => {
            let below = limits
                .lower()
                .known()
                .is_some_and(|l| found.smallest.value() < l);
            format!(
                "{} is {} {} the limits {limits}: {}",
                in_mm(if below {
                    found.smallest.value()
                } else {
                    found.largest.value()
                }),
                in_mm(by),
                if below { "under" } else { "over" },
                decision.outcome.words()
            )
        }
        None => format!(
            "{:.3} to {}, limits {limits}: {}",
            settled_mm(found.smallest.value()),
            in_mm(found.largest.value()),
            decision.outcome.words()
        ),
    };
    Some(Finding {
        outcome: Some(decision.outcome),
        readings: Vec::from([found.smallest, found.largest]),
        limits: Some(limits),
        decision: Some(decision),
        grade: Some(limits.grade()),
        ..Finding::stated(found.feature.to_string(), words)
    })
}
