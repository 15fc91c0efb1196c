//! Two members as measured, against the windows that decide and those that stand beside.

use super::fit::Asked;
use super::joint::{from_maker, held, quoted, wanted, windows_of};
use super::verdict::{NOTHING, Verdict};
use super::words::capital;
use super::{Finding, fit_words, from_to};
use crate::Error;
use crate::evidence::{Evidence, Grade};
use crate::fit::{
    Conformance, Fit, HoleMember, MemberFinding, Sense, ShaftMember, Wanted, fit_between,
};
use crate::measure::{Bound, Decision, Limits, Outcome, decide, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm};
use crate::standard::{FitWindow, Hold};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

impl Asked<'_> {
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
        let place = self.joint.words();
        let Sorted {
            first: mut decide_by,
            rest: mut beside,
            quotes,
        } = self.sort_windows(&fit)?;
        let mut findings: Vec<Finding> = [fit.hole(), fit.shaft()]
            .into_iter()
            .filter_map(member)
            .collect();
        for found in findings.iter_mut().filter(|f| f.what() == "hole") {
            found.owner.clone_from(&self.hole_owner);
            found
                .sources
                .extend(self.hole_evidence.iter().flat_map(|e| e.sources()).cloned());
        }
        let mut opinions: Vec<Told> = Vec::new();
        if decide_by.is_empty() {
            if self.hold == Some(Hold::Press) {
                opinions.extend(self.envelope(&fit, &beside, place)?);
            } else {
                match agreed(&mut beside) {
                    Agreement::None => {}
                    Agreement::All(windows) => decide_by = windows,
                    Agreement::Not => opinions.push(disagreement(&beside)),
                }
            }
        }
        let named = !decide_by.is_empty() || !opinions.is_empty();
        let mut told: Vec<Told> = decide_by.iter().map(|w| w.told(&fit, place)).collect();
        told.extend(opinions);
        let too_loose = told.iter().any(|t| t.takes_a_shim);
        told.extend(self.by_design(&fit, named)?);
        findings.extend(told.into_iter().map(|t| self.through_paint(t)));
        let findings = findings
            .into_iter()
            .map(|f| match &*f.what() {
                // A member's own finding rests on its own surface.
                "hole" if self.painted[0] => f.read_on_paint(true, self.tables),
                "shaft" if self.painted[1] => f.read_on_paint(false, self.tables),
                _ => f,
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
        said = self.cures(said, &fit, too_loose, &mut sentence);
        said = self.open(said, &fit, named);
        for caution in fit.cautions() {
            said.cautions.push(caution.words().into());
        }
        Ok(said.saying(sentence))
    }

    /// Deciding windows, others, and figures that can only be quoted.
    fn sort_windows(&self, fit: &Fit) -> Result<Sorted<'_>, Error> {
        let rows: Vec<&FitWindow> =
            windows_of(self.tables, self.joint, self.nominal_of(fit)).collect();
        let of = |maker: bool| -> Result<Vec<Held<'_>>, Error> {
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
        let own: Vec<Held<'_>> = self
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
        windows: &[Held<'_>],
        place: &str,
    ) -> Result<Option<Told>, Error> {
        let read = |w: &&Held<'_>| w.wanted.limits.grade() > Grade::Memory;
        let Some(first) = windows.iter().find(read).or(windows.first()) else {
            return Ok(None);
        };
        let any_read = windows.iter().any(|w| read(&w));
        let same: Vec<&Held<'_>> = windows
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
        let mut told = Held::of(fit, span, None)?.told(fit, place);
        told.finding = same
            .iter()
            .fold(told.finding, |f, w| f.resting_on(w.evidence));
        Ok(Some(told))
    }

    /// A press fit must press and a slip fit must not; nobody needs to publish that. How much is another matter.
    fn by_design(&self, fit: &Fit, named: bool) -> Result<Option<Told>, Error> {
        let Some(hold) = self.hold else {
            return Ok(None);
        };
        let (window, owner) = match hold {
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
        let press = hold == Hold::Press;
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
        Ok(Some(Told {
            loose: press,
            takes_a_shim: false,
            finding: Finding {
                outcome: Some(outcome),
                readings: Vec::from([fit.tightest(), fit.loosest()]),
                decision: Some(decision),
                owner: String::from(owner),
                grade: Some(Grade::CommonPractice),
                ..Finding::stated("design", words)
            },
        }))
    }

    /// A finding as far as it holds through paint. Bare, a hole is no smaller than it reads and a shaft no larger: a looseness
    /// that is shown stays shown, everything else waits for the metal.
    fn through_paint(&self, told: Told) -> Finding {
        let out = told.finding.outcome == Some(Outcome::NonconformityShown);
        if !self.painted.contains(&true) || (out && told.loose) {
            told.finding
        } else {
            told.finding.through_paint()
        }
    }
}

/// A finding on the fit, whether it is looseness that it shows out, and whether a shim would fill it.
struct Told {
    finding: Finding,
    loose: bool,
    takes_a_shim: bool,
}

/// Windows that decide, those beside, and figures that can only be quoted.
struct Sorted<'a> {
    first: Vec<Held<'a>>,
    rest: Vec<Held<'a>>,
    quotes: Vec<Finding>,
}

/// A fit held against one window.
struct Held<'a> {
    wanted: Wanted,
    conformance: Conformance,
    evidence: Option<&'a Evidence>,
}

impl<'a> Held<'a> {
    fn of(fit: &Fit, wanted: Wanted, evidence: Option<&'a Evidence>) -> Result<Self, Error> {
        let conformance = fit.against(&wanted).map_err(|e| {
            e.named(if wanted.sense == Sense::Clearance {
                "clearance"
            } else {
                "interference"
            })
        })?;
        Ok(Self {
            wanted,
            conformance,
            evidence,
        })
    }
    fn finding(&self, fit: &Fit, place: &str) -> Finding {
        held(fit, place, &self.wanted, &self.conformance).resting_on(self.evidence)
    }
    fn told(&self, fit: &Fit, place: &str) -> Told {
        let most = self
            .wanted
            .as_clearance()
            .ok()
            .and_then(|l| l.upper().known());
        Told {
            finding: self.finding(fit, place),
            loose: most.is_some_and(|most| settled_below(most, fit.loosest().value())),
            takes_a_shim: self.conformance.cure.shim_wall().is_some(),
        }
    }
}

/// Whether opinions on a sliding part agree.
enum Agreement<'a> {
    /// Nobody has one.
    None,
    /// All of them: these decide, and no longer stand beside.
    All(Vec<Held<'a>>),
    /// They do not, so nothing is shown.
    Not,
}

/// Opinions that were read count before remembered ones.
fn agreed<'a>(windows: &mut Vec<Held<'a>>) -> Agreement<'a> {
    let read = |w: &Held<'_>| w.wanted.limits.grade() > Grade::Memory;
    let any_read = windows.iter().any(read);
    let (counting, rest): (Vec<Held<'a>>, Vec<Held<'a>>) = core::mem::take(windows)
        .into_iter()
        .partition(|w| !any_read || read(w));
    let mut outcomes = counting.iter().map(|w| w.conformance.outcome);
    let first = outcomes.next();
    let same = outcomes.all(|o| Some(o) == first);
    *windows = rest;
    match first {
        None => Agreement::None,
        Some(_) if same => Agreement::All(counting),
        Some(_) => {
            windows.extend(counting);
            Agreement::Not
        }
    }
}

/// What is said where the published windows disagree.
pub(super) const DISAGREE: &str = "published windows";

/// What stands for windows that disagree.
fn disagreement(windows: &[Held<'_>]) -> Told {
    Told {
        loose: false,
        takes_a_shim: false,
        finding: Finding {
            outcome: Some(Outcome::Undecided),
            grade: windows.iter().map(|w| w.conformance.grade).min(),
            owner: String::from("every published opinion"),
            ..Finding::stated(
                DISAGREE,
                "they disagree, and which of them this part was made to is not known",
            )
        },
    }
}

/// The published windows lead to different answers.
fn conflicting<'a>(findings: impl Iterator<Item = &'a Finding>) -> bool {
    let mut shown = findings
        .filter(|f| f.limits.is_some() && f.what() != "hole" && f.what() != "shaft")
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
