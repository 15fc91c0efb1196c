//! Two members as measured, against the windows that decide and those that stand beside.

use alloc::string::ToString;
use alloc::vec::Vec;

use super::fit::Asked;
use super::held::both_ends;
use super::joint::{from_maker, quoted, wanted, windows_of};
use super::verdict::{NOTHING, Verdict};
use super::{Fact, Finding, FitFact};
use crate::Error;
use crate::evidence::{Evidence, Grade};
use crate::fit::{
    Feature, Fit, HoleMember, MemberFinding, Sense, ShaftMember, Wanted, fit_between,
};
use crate::measure::{Bound, Decision, Limits, Outcome, decide, settled_below, settled_cmp};
use crate::quantity::Length;
use crate::standard::{FitWindow, Hold};

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
        let near = (self.nominal.or(fit.nominal())).unwrap_or(fit.hole().smallest.value());
        let rows: Vec<&FitWindow> = windows_of(self.tables, self.joint, near).collect();
        let of_rows = |maker: bool| -> Result<Vec<Finding>, Error> {
            let rows = rows.iter().filter(|w| from_maker(w) == maker);
            rows.filter_map(|w| Some((wanted(w)?, w.window.evidence())))
                .map(|(wanted, evidence)| self.against(&fit, &wanted, evidence))
                .collect()
        };
        let own = self.question.windows();
        let own = own.map(|wanted| self.against(&fit, &wanted, None));
        let mut windows: Vec<Finding> = own.collect::<Result<_, _>>()?;
        let (makers, mut beside) = (of_rows(true)?, of_rows(false)?);
        if windows.is_empty() {
            windows = makers;
        } else {
            beside.splice(0..0, makers);
        }
        if windows.is_empty() {
            windows = self.by_opinions(&fit, &mut beside)?;
        }
        let named = !windows.is_empty();
        let gap = settled_below(NOTHING, fit.tightest().value());
        let fills = |f: &Finding| f.outcome == Some(Outcome::NonconformityShown) && loose(f);
        let takes_a_shim = gap && windows.iter().any(fills);
        windows.extend(self.by_design(&fit, named)?);
        let windows = windows.into_iter().map(|f| self.through_paint(f));
        let mut findings = Vec::from([self.on_diameter(&fit)]);
        findings.extend(self.member(fit.hole()));
        findings.extend(self.member(fit.shaft()));
        findings.extend(windows);
        let mut said = Verdict::from_findings(self.joint.words(), findings);
        said.beside = beside;
        said.beside.extend(quoted(self.joint, &rows));
        let notes = self.notes(&said, named);
        said.findings.extend(notes.into_iter().map(Finding::of));
        said = self.numbers(said, &fit);
        said = self.blame(said, &fit);
        said = self.cures(said, &fit, takes_a_shim);
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

    /// The fit against one window; readings and limits are counted as the window is.
    fn against(
        &self,
        fit: &Fit,
        wanted: &Wanted,
        evidence: Option<&Evidence>,
    ) -> Result<Finding, Error> {
        let held = fit.against(wanted);
        let held = held.map_err(|e| e.named(wanted.sense.to_string()))?;
        let (tight, loose) = (fit.tightest(), fit.loosest());
        let grade = wanted.limits.grade();
        // A window without a lower end asks for a clearance or an interference all the same, and that begins at nothing.
        let limits = match (wanted.limits.lower(), wanted.limits.upper()) {
            (Bound::Open, Bound::At(most)) if settled_cmp(most, NOTHING).is_ge() => {
                Limits::between(NOTHING, most, grade)?
            }
            _ => wanted.limits,
        };
        let readings = match wanted.sense {
            Sense::Clearance => [tight, loose],
            Sense::Interference => [loose.scaled(-1.0), tight.scaled(-1.0)],
        };
        let margins = [held.tightest.margin, held.loosest.margin].into_iter();
        let decision = Decision {
            outcome: held.outcome,
            why: held.why,
            probability: held.probability,
            margin: margins.flatten().min_by(|a, b| settled_cmp(*a, *b)),
            ..held.tightest
        };
        let found = Finding {
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
        };
        Ok(found.resting_on(evidence))
    }

    /// What opinions decide where no maker prints a window; those that were read count before remembered ones. A press fit is
    /// held against the span of all of them: outside it nobody agrees. A sliding part is decided where they agree, and then
    /// they no longer stand beside.
    fn by_opinions(&self, fit: &Fit, beside: &mut Vec<Finding>) -> Result<Vec<Finding>, Error> {
        let was_read = |f: &Finding| f.limits.is_some_and(|l| l.grade() > Grade::Memory);
        let any_read = beside.iter().any(was_read);
        let counts = |f: &Finding| !any_read || was_read(f);
        if self.hold == Some(Hold::Press) {
            let counting = beside.iter().filter(|f| counts(f));
            return Ok(self
                .span(fit, &counting.collect::<Vec<_>>())?
                .into_iter()
                .collect());
        }
        let all = core::mem::take(beside).into_iter();
        let (counting, rest): (Vec<Finding>, Vec<Finding>) = all.partition(counts);
        *beside = rest;
        if all_alike(counting.iter()) {
            return Ok(counting);
        }
        let grade = counting.iter().filter_map(|f| f.grade).min();
        beside.extend(counting);
        let joint = self.joint;
        Ok(Vec::from([Finding {
            grade,
            ..Finding::practice(Outcome::Undecided, FitFact::WindowsDisagree { joint })
        }]))
    }

    /// The fit against the span of these windows, of those that count as the first one does.
    fn span(&self, fit: &Fit, windows: &[&Finding]) -> Result<Option<Finding>, Error> {
        let Some(sense) = windows.first().and_then(|f| counted(f)) else {
            return Ok(None);
        };
        let same = || windows.iter().filter(|f| counted(f) == Some(sense));
        let Some(limits) = both_ends(same().filter_map(|f| f.limits), false) else {
            return Ok(None);
        };
        let owner = "all published opinions".into();
        let span = Wanted {
            sense,
            limits: limits?,
            owner,
        };
        Ok(Some(Finding {
            grade: same().filter_map(|f| f.grade).min(),
            sources: same().flat_map(|f| f.sources.iter().cloned()).collect(),
            ..self.against(fit, &span, None)?
        }))
    }

    /// A press fit must press and a slip fit must not; nobody needs to publish that. How much is another matter.
    fn by_design(&self, fit: &Fit, named: bool) -> Result<Option<Finding>, Error> {
        let (joint, press) = (self.joint, self.hold == Some(Hold::Press));
        let window = match self.hold {
            Some(Hold::Press) => Limits::at_most(NOTHING, Grade::CommonPractice)?,
            Some(Hold::Slip) => Limits::at_least(NOTHING, Grade::CommonPractice)?,
            Some(Hold::Screw) | None => return Ok(None),
        };
        let ends = [fit.tightest(), fit.loosest()];
        let [tight, loose] = ends.map(|gap| decide(&gap, &window, self.rule));
        let broken = tight.outcome == Outcome::NonconformityShown;
        let fact = match (broken, press) {
            (true, true) => FitFact::Gap { joint },
            (true, false) => FitFact::TooLarge { joint },
            (false, true) if named => return Ok(None),
            (false, false) => return Ok(None),
            _ if loose.outcome == Outcome::ConformityShown => FitFact::PressesUnlimited { joint },
            _ => FitFact::PressOrGap { joint },
        };
        let (decision, outcome) = if broken {
            (tight, tight.outcome)
        } else {
            (loose, Outcome::Undecided)
        };
        Ok(Some(Finding {
            readings: ends.into(),
            decision: Some(decision),
            ..Finding::practice(outcome, fact)
        }))
    }

    /// A measured member against its own limits; it rests on its own surface.
    fn member(&self, found: &MemberFinding) -> Option<Finding> {
        let (limits, decision) = (found.limits?, found.decision?);
        let (member, inside) = (found.feature, found.feature == Feature::Hole);
        let (count, painted) = self.read(member);
        let mut readings = Vec::from([found.smallest, found.largest]);
        readings.truncate(count);
        let row = self.hole_row.filter(|_| inside);
        let evidence = row.and_then(|row| row.window.evidence());
        let finding = Finding {
            outcome: Some(decision.outcome),
            readings,
            limits: Some(limits),
            decision: Some(decision),
            owner: row.map(|row| row.owner.to_string()).unwrap_or_default(),
            grade: Some(limits.grade()),
            sources: evidence.map_or(Vec::new(), |e| e.sources().into()),
            ..Finding::of(FitFact::Member { member, count })
        };
        Some(if painted {
            finding.read_on_paint(inside, self.tables)
        } else {
            finding
        })
    }

    /// A finding as far as it holds through paint. Bare, a hole is no smaller than it reads and a shaft no larger: a looseness
    /// that is shown stays shown, everything else waits for the metal.
    fn through_paint(&self, found: Finding) -> Finding {
        let out = found.outcome == Some(Outcome::NonconformityShown);
        if !self.painted() || (out && loose(&found)) {
            found
        } else {
            found.through_paint()
        }
    }

    /// What the findings do not say by themselves.
    fn notes(&self, said: &Verdict, named: bool) -> Vec<FitFact> {
        let joint = self.joint;
        let mut findings = said.findings.iter();
        let mut notes = Vec::new();
        match self.hold {
            _ if self.painted() => {
                let out = |f: &Finding| f.outcome == Some(Outcome::NonconformityShown);
                let shown = findings.any(|f| out(f) && loose(f));
                notes.extend(shown.then_some(FitFact::LooserBare { joint }));
            }
            Some(Hold::Screw) => notes.push(FitFact::Screwed { joint }),
            _ if named || said.outcome != Outcome::Undecided => {}
            Some(Hold::Slip) => notes.push(FitFact::SlipByDesign { joint }),
            None => notes.push(FitFact::NobodyPrints { joint }),
            // By design it was said already.
            Some(Hold::Press) => {}
        }
        let windows = said.findings.iter().chain(&said.beside);
        if !all_alike(windows.filter(|f| counted(f).is_some())) && !disagree(said) {
            notes.push(FitFact::WindowsDisagree { joint });
        }
        notes
    }
}

/// How the window of a finding is counted, where it is one.
pub(super) const fn counted(found: &Finding) -> Option<Sense> {
    match found.fact {
        Fact::Fit(FitFact::Window { wanted, .. }) => Some(wanted),
        _ => None,
    }
}

/// Whether it is looseness that a finding shows out.
fn loose(found: &Finding) -> bool {
    let over = |limit: Option<Length>, at: Option<Length>| {
        let ends = limit.zip(at);
        ends.is_some_and(|(limit, at)| settled_below(limit, at))
    };
    let end = |pick: fn(&Limits) -> Bound| found.limits.as_ref().and_then(|l| pick(l).known());
    let (low, high) = (found.readings.first(), found.readings.last());
    match (counted(found), &found.fact) {
        (Some(Sense::Clearance), _) => over(end(Limits::upper), high.map(|r| r.value())),
        (Some(Sense::Interference), _) => over(low.map(|r| r.value()), end(Limits::lower)),
        (None, fact) => matches!(fact, Fact::Fit(FitFact::Gap { .. })),
    }
}

/// Whether these findings show the same.
fn all_alike<'a>(findings: impl Iterator<Item = &'a Finding>) -> bool {
    let mut outcomes = findings.map(|f| f.outcome);
    let first = outcomes.next();
    outcomes.all(|o| Some(o) == first)
}

/// Whether the published windows do not agree, so that nothing is decided.
pub(super) fn disagree(said: &Verdict) -> bool {
    let mut decide = said.findings.iter().filter(|f| f.outcome.is_some());
    decide.any(|f| matches!(f.fact, Fact::Fit(FitFact::WindowsDisagree { .. })))
}
