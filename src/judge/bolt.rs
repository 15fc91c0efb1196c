//! A bolt through a mount: which length leaves the thread that is wanted behind it.

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Doubt, Finding, ThreadAsk, ThreadFact, sizes_against};
use crate::evidence::{Evidence, Grade};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, positive};
use crate::read::{Outside, form, missing};
use crate::standard::{BrakeFigure, FlatMountBolt, Tables};
use crate::{Error, ErrorKind};

form! {
    /// A bolt through a mount, by the thread that must stand out behind it. Without `engaged` the mount is a flat one: its
    /// tables print the bolt for a thickness, and between them what stands out must be what they share (13 mm).
    ///
    /// ```
    /// use framegauge::{judge::BoltLength, measure::Outcome, mm, standard::Tables};
    /// let of = |bolt: f64| BoltLength {
    ///     thickness: "20.0 +/- 0.1 mm".parse().unwrap(), bolt: Some(mm(bolt)), bolts: vec![], engaged: None, rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(of(38.0).outcome, Outcome::NonconformityShown); // bottoms in the blind hole
    /// assert_eq!(of(38.0).millimetres("bolt length"), Some(33.0));
    /// assert_eq!(of(35.0).outcome, Outcome::Undecided); // not what the tables print, and no tolerance is published
    /// ```
    ///
    /// Of several lengths, the shortest that is shown to leave the thread wanted:
    /// ```
    /// use framegauge::{judge::BoltLength, mm, standard::Tables};
    /// let said = BoltLength {
    ///     thickness: "12.4 +/- 0.1 mm".parse().unwrap(), bolt: None, bolts: vec![mm(18.0), mm(23.0), mm(28.0)],
    ///     engaged: Some("10 to 12 mm".parse().unwrap()), rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.millimetres("bolt length"), Some(23.0));
    /// ```
    BoltLength {
        /// Thickness of the mount.
        thickness: Reading => Outside,
        /// The bolt at hand.
        bolt: Option<Length>,
        /// Lengths that bolts come in.
        bolts: Vec<Length>,
        /// Thread that is needed at least, and that there is room for at most; without it, as flat mounts want it.
        engaged: Option<Limits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// What must stand out, and whose word that is.
struct StandsOut<'a> {
    limits: Limits,
    /// The one figure that is printed, where it is printed without a tolerance.
    printed: Option<Length>,
    owner: &'static str,
    evidence: Option<&'a Evidence>,
}

const PLACE: &str = "bolt through mount";

impl BoltLength {
    /// The verdict.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none; `Missing` where neither bolts nor a flat mount say what to judge.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        size_reading("thickness", &self.thickness)?;
        let bolt = self.bolt.map(|b| positive("bolt", b)).transpose()?;
        for (index, bolt) in self.bolts.iter().enumerate() {
            positive("", *bolt).map_err(|e| e.within(&format!("bolts[{index}]")))?;
        }
        let wanted = match self.engaged {
            Some(limits) => StandsOut {
                limits,
                printed: None,
                owner: "the thread wanted",
                evidence: None,
            },
            None => of_flat_mounts(tables)?,
        };
        let mut said = match bolt {
            Some(bolt) => self.at_hand(bolt, &wanted),
            None if !self.bolts.is_empty() => self.of_several(&wanted),
            None if wanted.printed.is_some() => Verdict::from_findings(PLACE, Vec::new()),
            None => return Err(missing("bolts")),
        };
        if let Some(printed) = wanted.printed {
            self.listed(&mut said, printed, tables);
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::of(ThreadAsk::ThicknessAndThread));
        }
        Ok(said.minding(ThreadFact::BoltTorque))
    }

    /// What stands out of this bolt, held against what is wanted.
    fn held(&self, bolt: Length, wanted: &StandsOut<'_>) -> Finding {
        let out = self.thickness.scaled(-1.0).shifted(bolt);
        let (owner, evidence) = (wanted.owner, wanted.evidence);
        let rule = self.rule.unwrap_or_default();
        let mut found = sizes_against("bolt", &[out], &wanted.limits, owner, evidence, rule);
        found.fact = ThreadFact::StandsOut { bolt }.into();
        // A printed figure without a tolerance: near it is not yet as it.
        let u = self.thickness.expanded_uncertainty();
        if found.outcome == Some(Outcome::ConformityShown)
            && wanted
                .printed
                .is_some_and(|at| settled_below(u, (out.value() - at).abs()))
        {
            found.outcome = Some(Outcome::Undecided);
            found.doubt = Some(Doubt::NotPrinted);
        }
        found
    }

    fn at_hand(&self, bolt: Length, wanted: &StandsOut<'_>) -> Verdict {
        let found = self.held(bolt, wanted);
        let said = self.chosen(bolt, found);
        if said.outcome != Outcome::NonconformityShown {
            return said;
        }
        let most = wanted.limits.upper().known();
        let said = said.cured(Curing::by(Remedy::OtherPart));
        if most.is_some_and(|most| settled_below(most, bolt - self.thickness.value())) {
            said.minding(ThreadFact::BoltBottoms)
        } else {
            said
        }
    }

    fn chosen(&self, bolt: Length, found: Finding) -> Verdict {
        let out = bolt - self.thickness.value();
        let said = Verdict::from_findings(PLACE, Vec::from([found]));
        said.with(Worked::length("stands out", out, "bolt - thickness"))
    }

    /// The shortest bolt that is shown to leave what is wanted.
    fn of_several(&self, wanted: &StandsOut<'_>) -> Verdict {
        let shows = |f: &Finding, outcome| f.outcome == Some(outcome);
        let mut none = Vec::new();
        for bolt in in_order(self.bolts.clone()) {
            let found = self.held(bolt, wanted);
            if shows(&found, Outcome::ConformityShown) {
                let length = Worked::length("bolt length", bolt, "shortest that conforms");
                return self.chosen(bolt, found).with(length);
            }
            none.push(found);
        }
        let all_out = none.iter().all(|f| shows(f, Outcome::NonconformityShown));
        let mut said = Verdict::from_findings(PLACE, none);
        if !all_out {
            said.outcome = Outcome::Undecided;
        }
        said
    }

    /// The bolt that the tables of flat mounts list for the nearest thickness.
    fn listed(&self, said: &mut Verdict, printed: Length, tables: Tables<'_>) {
        let thickness = self.thickness.value();
        let ideal = thickness + printed;
        said.worked
            .push(Worked::length("ideal length", ideal, "thickness + printed"));
        let row = tables
            .all::<FlatMountBolt>()
            .filter_map(|r| Some((r.frame_thickness.nominal()?, r.bolt_length.nominal()?)))
            .min_by(|a, b| settled_cmp((a.0 - thickness).abs(), (b.0 - thickness).abs()));
        let (listed_for, listed) = row.unzip();
        if let Some(length) = listed.filter(|_| said.number("bolt length").is_none()) {
            let formula = "listed for nearest thickness";
            said.worked
                .push(Worked::length("bolt length", length, formula));
        }
        for cure in &mut said.cures {
            cure.size = listed.or(cure.size);
        }
        said.findings.push(Finding::of(ThreadFact::BoltFor {
            thickness,
            ideal,
            listed,
            listed_for,
        }));
    }
}

fn in_order(mut lengths: Vec<Length>) -> Vec<Length> {
    lengths.sort_by(|a, b| settled_cmp(*a, *b));
    lengths
}

/// What the tables let stand out of a flat mount, to half a step of the lengths they list: beyond it another bolt is nearer.
fn of_flat_mounts(tables: Tables<'_>) -> Result<StandsOut<'_>, Error> {
    let not_published = || {
        let problem = "no length is published";
        Error::new(
            ErrorKind::NotTabulated,
            "engaged",
            "",
            problem,
            "ask the caliper maker",
        )
    };
    let row = tables
        .find::<BrakeFigure>("fm_bolt_protrusion")
        .map_err(|e| e.named("engaged"))?;
    let figure = row.figure.as_ref().ok_or_else(not_published)?;
    let printed = figure.nominal().ok_or_else(not_published)?;
    let listed = tables.all::<FlatMountBolt>();
    let lengths = in_order(listed.filter_map(|r| r.bolt_length.nominal()).collect());
    let half = lengths
        .iter()
        .zip(lengths.iter().skip(1))
        .map(|(a, b)| (*b - *a) / 2.0)
        .filter(|half| settled_below(NOTHING, *half))
        .min_by(|a, b| settled_cmp(*a, *b))
        .ok_or_else(not_published)?;
    let grade = figure.grade().unwrap_or(Grade::Memory);
    Ok(StandsOut {
        limits: Limits::between(printed - half, printed + half, grade.weaker(Grade::Derived))?,
        printed: Some(printed),
        owner: "half a listed step",
        evidence: figure.evidence(),
    })
}
