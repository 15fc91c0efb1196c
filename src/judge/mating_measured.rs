//! Two members as measured, against the windows that decide and those that stand beside.

use super::joint::{from_maker, held, quoted, wanted};
use super::mating::FitQuestion;
use super::verdict::{NOTHING, Verdict};
use super::words::capital;
use super::{Finding, fit_words, from_to};
use crate::Error;
use crate::evidence::{Evidence, Grade};
use crate::fit::{Conformance, Fit, HoleMember, MemberFinding, ShaftMember, Wanted, fit_between};
use crate::measure::{Bound, Decision, Limits, Outcome, decide, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm};
use crate::standard::{FitWindow, Hold};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

impl FitQuestion {
    pub(super) fn nominal_of(&self, fit: &Fit) -> Length {
        self.nominal
            .or(fit.nominal())
            .unwrap_or(fit.hole().smallest.value())
    }

    pub(super) fn measured(
        &self,
        hole: &HoleMember,
        shaft: &ShaftMember,
    ) -> Result<Verdict, Error> {
        let mut hole = hole.clone();
        if let Some(nominal) = self.nominal
            && hole.nominal().is_none()
        {
            hole = hole.with_nominal(nominal)?;
        }
        let fit = fit_between(&hole, shaft, self.rule)?;
        let Sorted {
            first: decide_by,
            rest: beside,
            quotes,
        } = self.sort_windows(&fit)?;
        let mut findings: Vec<Finding> = [fit.hole(), fit.shaft()]
            .into_iter()
            .filter_map(member)
            .collect();
        for found in findings.iter_mut().filter(|f| f.what == "hole") {
            found.owner.clone_from(&self.hole_owner);
            found
                .sources
                .extend(self.hole_evidence.iter().flat_map(|e| e.sources()).cloned());
        }
        let place = self.joint.words();
        let envelope = if decide_by.is_empty() {
            self.envelope(&fit, &beside, place)?
        } else {
            None
        };
        let named = !decide_by.is_empty() || envelope.is_some();
        let too_loose = decide_by
            .iter()
            .map(|w| &w.conformance)
            .chain(envelope.as_ref().map(|(_, held)| held))
            .any(|held| held.cure.shim_wall().is_some());
        findings.extend(decide_by.iter().map(|w| w.finding(&fit, place)));
        findings.extend(envelope.map(|(found, _)| found));
        findings.extend(self.by_design(&fit, named)?);
        findings = findings
            .into_iter()
            .map(|f| {
                if self.rests_on_paint(&f) {
                    f.through_paint()
                } else {
                    f
                }
            })
            .collect();
        let mut said = Verdict::from_findings(place, findings);
        said.beside = beside.iter().map(|w| w.finding(&fit, place)).collect();
        said.beside.extend(quotes);
        let conflict = conflicting(said.findings.iter().chain(&said.beside));
        said = self.numbers(said, &fit);
        let mut sentence = format!("{} on diameter", capital(&fit_words(&fit)));
        sentence.push_str(&self.meaning(&said, &fit, named));
        if conflict {
            sentence.push_str(" The published windows disagree: the maker of the part decides.");
        }
        said = self.blame(said, &fit, &mut sentence);
        if too_loose {
            said = self.fill_the_gap(said, &fit, &mut sentence);
        }
        said = self.open(said, &fit, named);
        for caution in fit.cautions() {
            said.cautions.push(caution.words().into());
        }
        Ok(said.saying(sentence))
    }

    /// Deciding windows, others, and figures that can only be quoted.
    fn sort_windows(&self, fit: &Fit) -> Result<Sorted, Error> {
        let rows: Vec<&'static FitWindow> = self.joint.windows(self.nominal_of(fit)).collect();
        let of = |maker: bool| -> Result<Vec<Held>, Error> {
            rows.iter()
                .filter(|w| from_maker(w) == maker)
                .filter_map(|w| Some((wanted(w)?, w.window.evidence())))
                .map(|(wanted, evidence)| Held::of(fit, wanted, evidence))
                .collect()
        };
        let quotes = quoted(self.joint.words(), &rows);
        if self.windows.is_empty() {
            return Ok(Sorted {
                first: of(true)?,
                rest: of(false)?,
                quotes,
            });
        }
        let own: Vec<Held> = self
            .windows
            .iter()
            .map(|w| Held::of(fit, w.clone(), None))
            .collect::<Result<_, _>>()?;
        let mut rest = of(true)?;
        rest.extend(of(false)?);
        Ok(Sorted {
            first: own,
            rest,
            quotes,
        })
    }

    /// Where nobody with a say prints a window, the span of all opinions: outside it nobody agrees. Remembered windows are
    /// left out where anything was read.
    fn envelope(
        &self,
        fit: &Fit,
        windows: &[Held],
        place: &str,
    ) -> Result<Option<(Finding, Conformance)>, Error> {
        let read = |w: &&Held| w.wanted.limits.grade() > Grade::Memory;
        let Some(first) = windows.iter().find(read).or(windows.first()) else {
            return Ok(None);
        };
        let any_read = windows.iter().any(|w| read(&w));
        let same: Vec<&Held> = windows
            .iter()
            .filter(|w| w.wanted.sense == first.wanted.sense && (!any_read || read(w)))
            .collect();
        let far = |pick: fn(&Limits) -> Bound, larger: bool| {
            same.iter()
                .map(|w| pick(&w.wanted.limits))
                .reduce(|a, b| match (a, b) {
                    (Bound::At(x), Bound::At(y)) if settled_cmp(x, y).is_gt() == larger => a,
                    (Bound::At(_), Bound::At(_)) => b,
                    // A side that one of them leaves open is open.
                    (Bound::At(_), open) | (open, _) => open,
                })
                .unwrap_or(Bound::Open)
        };
        let (lower, upper) = (far(Limits::lower, false), far(Limits::upper, true));
        let grade = same
            .iter()
            .map(|w| w.wanted.limits.grade())
            .min()
            .unwrap_or(Grade::Memory);
        let span = Wanted {
            sense: first.wanted.sense,
            limits: Limits::new(lower, upper, grade)?,
            owner: "the span of every published opinion".into(),
        };
        let conformance = fit.against(&span)?;
        let found = held(fit, place, &span, &conformance);
        let found = same.iter().fold(found, |f, w| f.resting_on(w.evidence));
        Ok(Some((found, conformance)))
    }

    /// A press fit must press and a slip fit must not; nobody needs to publish that. How much is another matter.
    fn by_design(&self, fit: &Fit, named: bool) -> Result<Option<Finding>, Error> {
        let (window, owner) = match self.hold {
            Hold::Press => (
                Limits::at_most(NOTHING, Grade::CommonPractice)?,
                "by design of a press fit",
            ),
            Hold::Slip => (
                Limits::at_least(NOTHING, Grade::CommonPractice)?,
                "by design of a slip fit",
            ),
            Hold::Screw => return Ok(None),
        };
        let tight = decide(&fit.tightest(), &window, self.rule);
        let loose = decide(&fit.loosest(), &window, self.rule);
        let press = self.hold == Hold::Press;
        let (outcome, decision, words) = if press && tight.outcome == Outcome::NonconformityShown {
            (tight.outcome, tight, "meant to press, and there is a gap")
        } else if !press && tight.outcome == Outcome::NonconformityShown {
            (
                tight.outcome,
                tight,
                "meant to slide in, and the part is larger than the hole",
            )
        } else if named || !press {
            return Ok(None);
        } else if loose.outcome == Outcome::ConformityShown {
            (
                Outcome::Undecided,
                loose,
                "it presses everywhere; how much it may press nobody prints for this joint",
            )
        } else {
            (
                Outcome::Undecided,
                loose,
                "press or gap: not told by these readings",
            )
        };
        Ok(Some(Finding {
            outcome: Some(outcome),
            readings: Vec::from([fit.tightest(), fit.loosest()]),
            decision: Some(decision),
            owner: String::from(owner),
            grade: Some(Grade::CommonPractice),
            ..Finding::stated("design", words)
        }))
    }

    /// A member's own finding rests on its own surface, all others on both.
    fn rests_on_paint(&self, found: &Finding) -> bool {
        match found.what.as_str() {
            "hole" => self.coated[0],
            "shaft" => self.coated[1],
            _ => self.coated.contains(&true),
        }
    }
}

/// Windows that decide, those beside, and figures that can only be quoted.
struct Sorted {
    first: Vec<Held>,
    rest: Vec<Held>,
    quotes: Vec<Finding>,
}

/// A fit held against one window.
struct Held {
    wanted: Wanted,
    conformance: Conformance,
    evidence: Option<&'static Evidence>,
}

impl Held {
    fn of(fit: &Fit, wanted: Wanted, evidence: Option<&'static Evidence>) -> Result<Self, Error> {
        let conformance = fit.against(&wanted)?;
        Ok(Self {
            wanted,
            conformance,
            evidence,
        })
    }
    fn finding(&self, fit: &Fit, place: &str) -> Finding {
        held(fit, place, &self.wanted, &self.conformance).resting_on(self.evidence)
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
                .is_some_and(|l| settled_below(found.smallest.value(), l));
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
        None => {
            let (low, high) = (found.smallest.value(), found.largest.value());
            let sizes = from_to(low, high);
            format!("{sizes}, limits {limits}: {}", decision.outcome.words())
        }
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
