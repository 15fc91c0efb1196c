//! Two members as measured, against the windows that decide and those that stand beside.

use alloc::string::ToString;
use alloc::vec::Vec;

use super::fit::Asked;
use super::joint::{from_maker, quoted, wanted, windows_of};
use super::verdict::{NOTHING, Verdict};
use super::{Fact, Finding, FitFact};
use crate::Error;
use crate::evidence::{Evidence, Grade};
use crate::fit::{
    Feature, Fit, HoleMember, MemberFinding, Sense, ShaftMember, Wanted, fit_between,
};
use crate::measure::{Bound, Decision, Limits, Outcome, decide, settled_below, settled_cmp};
use crate::standard::{FitWindow, Hold};

/// A fit held against a window: the finding, whether it is too loose for it, and whether a shim would fill the gap.
struct Told {
    finding: Finding,
    loose: bool,
    takes_a_shim: bool,
}

impl Told {
    fn plainly(finding: Finding) -> Self {
        Self {
            finding,
            loose: false,
            takes_a_shim: false,
        }
    }
    /// Whether anybody read this window, and did not remember it.
    fn was_read(&self) -> bool {
        let limits = self.finding.limits.as_ref();
        limits.is_some_and(|l| l.grade() > Grade::Memory)
    }
}

impl Asked<'_> {
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
        let joint = self.joint;
        let near = (self.nominal.or(fit.nominal())).unwrap_or(fit.hole().smallest.value());
        let rows: Vec<&FitWindow> = windows_of(self.tables, joint, near).collect();
        let of_rows = |maker: bool| -> Result<Vec<Told>, Error> {
            let rows = rows.iter().filter(|w| from_maker(w) == maker);
            rows.filter_map(|w| Some((wanted(w)?, w.window.evidence())))
                .map(|(wanted, evidence)| self.told(&fit, &wanted, evidence))
                .collect()
        };
        let mut told: Vec<Told> = (self.windows.iter())
            .map(|w| self.told(&fit, w, None))
            .collect::<Result<_, _>>()?;
        let (makers, mut beside) = (of_rows(true)?, of_rows(false)?);
        if told.is_empty() {
            told = makers;
        } else {
            beside.splice(0..0, makers);
        }
        if told.is_empty() && !beside.is_empty() {
            told = self.by_opinions(&fit, &mut beside)?;
        }
        let named = !told.is_empty();
        let too_loose = told.iter().any(|t| t.takes_a_shim);
        told.extend(self.by_design(&fit, named)?);
        let mut findings = Vec::from([self.on_diameter(&fit)]);
        findings.extend(
            [fit.hole(), fit.shaft()]
                .into_iter()
                .filter_map(|m| self.member(m)),
        );
        findings.extend(told.into_iter().map(|t| self.through_paint(t)));
        let mut said = Verdict::from_findings(joint.words(), findings);
        said.beside = beside.into_iter().map(|t| t.finding).collect();
        said.beside.extend(quoted(joint, &rows));
        let notes = self.notes(&said, named);
        said.findings.extend(notes.into_iter().map(Finding::of));
        said = self.numbers(said, &fit);
        said = self.blame(said, &fit);
        said = self.cures(said, &fit, too_loose);
        said = self.open(said, &fit, named);
        for caution in fit.cautions() {
            said = said.minding(FitFact::Mind { caution: *caution });
        }
        Ok(said)
    }

    fn on_diameter(&self, fit: &Fit) -> Finding {
        let (tightest, loosest) = (fit.tightest(), fit.loosest());
        Finding {
            readings: Vec::from([tightest, loosest]),
            ..Finding::of(FitFact::OnDiameter {
                joint: self.joint,
                tightest: tightest.value(),
                loosest: loosest.value(),
            })
        }
    }

    /// The fit against one window.
    fn told(&self, fit: &Fit, wanted: &Wanted, evidence: Option<&Evidence>) -> Result<Told, Error> {
        let held = fit
            .against(wanted)
            .map_err(|e| e.named(wanted.sense.to_string()))?;
        let (tight, loose) = (fit.tightest(), fit.loosest());
        let grade = wanted.limits.grade();
        // A window without a lower end asks for a clearance or an interference all the same, and that begins at nothing.
        let limits = match (wanted.limits.lower(), wanted.limits.upper()) {
            (Bound::Open, Bound::At(most)) if settled_cmp(most, NOTHING).is_ge() => {
                Limits::between(NOTHING, most, grade)?
            }
            _ => wanted.limits,
        };
        let (readings, too_loose) = match wanted.sense {
            Sense::Clearance => {
                let most = limits.upper().known();
                let too = most.is_some_and(|most| settled_below(most, loose.value()));
                ([tight, loose], too)
            }
            Sense::Interference => {
                let ends = [loose.scaled(-1.0), tight.scaled(-1.0)];
                let least = limits.lower().known();
                let too = least.is_some_and(|least| settled_below(-loose.value(), least));
                (ends, too)
            }
        };
        let margins = [held.tightest.margin, held.loosest.margin];
        let decision = Decision {
            outcome: held.outcome,
            why: held.why,
            probability: held.probability,
            margin: (margins.into_iter().flatten()).min_by(|a, b| settled_cmp(*a, *b)),
            ..held.tightest
        };
        Ok(Told {
            loose: too_loose,
            takes_a_shim: held.cure.shim_wall().is_some(),
            finding: Finding {
                outcome: Some(held.outcome),
                readings: readings.into(),
                limits: Some(limits),
                decision: Some(decision),
                owner: wanted.owner.clone().into_owned(),
                grade: Some(grade),
                ..Finding::of(FitFact::Window {
                    joint: self.joint,
                    wanted: wanted.sense,
                })
            }
            .resting_on(evidence),
        })
    }

    /// What opinions decide where no maker prints a window; those that were read count before remembered ones. A press fit is
    /// held against the span of all of them: outside it nobody agrees. A sliding part is decided where they agree, and then
    /// they no longer stand beside.
    fn by_opinions(&self, fit: &Fit, beside: &mut Vec<Told>) -> Result<Vec<Told>, Error> {
        let any_read = beside.iter().any(Told::was_read);
        let counts = |told: &Told| !any_read || told.was_read();
        if self.hold == Some(Hold::Press) {
            let counting: Vec<&Told> = beside.iter().filter(|t| counts(t)).collect();
            return Ok(self.span(fit, &counting)?.into_iter().collect());
        }
        let (counting, rest): (Vec<Told>, Vec<Told>) =
            core::mem::take(beside).into_iter().partition(counts);
        *beside = rest;
        let mut outcomes = counting.iter().map(|t| t.finding.outcome);
        let first = outcomes.next();
        if outcomes.all(|o| Some(o) == first) {
            return Ok(counting);
        }
        let grade = counting.iter().filter_map(|t| t.finding.grade).min();
        beside.extend(counting);
        let joint = self.joint;
        Ok(Vec::from([Told::plainly(Finding {
            grade,
            ..Finding::practice(Outcome::Undecided, FitFact::WindowsDisagree { joint })
        })]))
    }

    /// The fit against the span of these windows, of those that count as the first one does.
    fn span(&self, fit: &Fit, windows: &[&Told]) -> Result<Option<Told>, Error> {
        let kind = |told: &Told| match told.finding.fact {
            Fact::Fit(FitFact::Window { wanted, .. }) => Some(wanted),
            _ => None,
        };
        let Some(sense) = windows.first().and_then(|t| kind(t)) else {
            return Ok(None);
        };
        let same = || {
            windows
                .iter()
                .filter(|t| kind(t) == Some(sense))
                .map(|t| &t.finding)
        };
        let far = |pick: fn(&Limits) -> Bound, larger: bool| {
            same()
                .filter_map(|f| f.limits.as_ref().map(pick))
                .reduce(|a, b| match (a, b) {
                    (Bound::At(x), Bound::At(y)) if settled_cmp(x, y).is_gt() == larger => a,
                    (Bound::At(_), Bound::At(_)) => b,
                    // A side that one of them leaves open is open.
                    (Bound::At(_), open) | (open, _) => open,
                })
                .unwrap_or(Bound::Open)
        };
        let (lower, upper) = (far(Limits::lower, false), far(Limits::upper, true));
        let grades = same().filter_map(|f| f.limits.map(|l| l.grade()));
        let grade = grades.min().unwrap_or(Grade::Memory);
        let span = Wanted {
            sense,
            limits: Limits::new(lower, upper, grade)?,
            owner: "all published opinions".into(),
        };
        let mut told = self.told(fit, &span, None)?;
        told.finding.grade = same().filter_map(|f| f.grade).min();
        told.finding.sources = same().flat_map(|f| f.sources.iter().cloned()).collect();
        Ok(Some(told))
    }

    /// A press fit must press and a slip fit must not; nobody needs to publish that. How much is another matter.
    fn by_design(&self, fit: &Fit, named: bool) -> Result<Option<Told>, Error> {
        let press = self.hold == Some(Hold::Press);
        let window = match self.hold {
            Some(Hold::Press) => Limits::at_most(NOTHING, Grade::CommonPractice)?,
            Some(Hold::Slip) => Limits::at_least(NOTHING, Grade::CommonPractice)?,
            Some(Hold::Screw) | None => return Ok(None),
        };
        let joint = self.joint;
        let [tight, loose] =
            [fit.tightest(), fit.loosest()].map(|gap| decide(&gap, &window, self.rule));
        let (decision, outcome, fact) = if tight.outcome == Outcome::NonconformityShown {
            let fact = if press {
                FitFact::Gap { joint }
            } else {
                FitFact::TooLarge { joint }
            };
            (tight, tight.outcome, fact)
        } else if named || !press {
            return Ok(None);
        } else if loose.outcome == Outcome::ConformityShown {
            (
                loose,
                Outcome::Undecided,
                FitFact::PressesUnlimited { joint },
            )
        } else {
            (loose, Outcome::Undecided, FitFact::PressOrGap { joint })
        };
        Ok(Some(Told {
            loose: press,
            ..Told::plainly(Finding {
                readings: Vec::from([fit.tightest(), fit.loosest()]),
                decision: Some(decision),
                ..Finding::practice(outcome, fact)
            })
        }))
    }

    /// A measured member against its own limits; it rests on its own surface.
    fn member(&self, found: &MemberFinding) -> Option<Finding> {
        let (limits, decision) = (found.limits?, found.decision?);
        let inside = found.feature == Feature::Hole;
        let at = usize::from(!inside);
        let count = self.counts.get(at).copied().unwrap_or_default();
        let mut readings = Vec::from([found.smallest, found.largest]);
        readings.truncate(count);
        let mut finding = Finding {
            outcome: Some(decision.outcome),
            readings,
            limits: Some(limits),
            decision: Some(decision),
            grade: Some(limits.grade()),
            ..Finding::of(FitFact::Member {
                member: found.feature,
                count,
            })
        };
        if inside {
            finding.owner = self.hole_owner.clone().into_owned();
            let of_row = self.hole_evidence.iter().flat_map(|e| e.sources());
            finding.sources.extend(of_row.cloned());
        }
        Some(match self.painted.get(at) {
            Some(true) => finding.read_on_paint(inside, self.tables),
            _ => finding,
        })
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

    /// What the findings do not say by themselves.
    fn notes(&self, said: &Verdict, named: bool) -> Vec<FitFact> {
        let joint = self.joint;
        let mut notes = Vec::new();
        let loose_bare = |f: &Finding| {
            f.outcome == Some(Outcome::NonconformityShown)
                && !matches!(f.fact, Fact::Fit(FitFact::Member { .. }))
        };
        if self.painted.contains(&true) {
            if said.findings.iter().any(loose_bare) {
                notes.push(FitFact::LooserBare { joint });
            }
        } else if self.hold == Some(Hold::Screw) {
            notes.push(FitFact::Screwed { joint });
        } else if !named && said.outcome == Outcome::Undecided {
            match self.hold {
                Some(Hold::Slip) => notes.push(FitFact::SlipByDesign { joint }),
                None => notes.push(FitFact::NobodyPrints { joint }),
                // By design it was said already.
                _ => {}
            }
        }
        let windows = said.findings.iter().chain(&said.beside);
        let mut shown = windows
            .filter(|f| matches!(f.fact, Fact::Fit(FitFact::Window { .. })))
            .map(|f| f.outcome);
        let first = shown.next();
        if shown.any(|o| Some(o) != first) && !disagree(said) {
            notes.push(FitFact::WindowsDisagree { joint });
        }
        notes
    }
}

/// Whether the published windows do not agree, so that nothing is decided.
pub(super) fn disagree(said: &Verdict) -> bool {
    let mut decide = said.findings.iter().filter(|f| f.outcome.is_some());
    decide.any(|f| matches!(f.fact, Fact::Fit(FitFact::WindowsDisagree { .. })))
}
