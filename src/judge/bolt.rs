//! A bolt through a mount: which length leaves the thread that is wanted behind it.

use alloc::format;
use alloc::vec::Vec;

use super::held::{Held, OwnLimits, as_printed};
use super::verdict::{Curing, NOTHING, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, ThreadAsk, ThreadFact};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, positive};
use crate::read::{Outside, form, missing};
use crate::standard::{BrakeFigure, FlatMountBolt, Tables};
use crate::{Error, ErrorKind, Figure};

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
        let (wanted, printed) = match self.engaged {
            Some(limits) => (OwnLimits::of(limits, "the thread wanted").held(), None),
            None => of_flat_mounts(tables)?,
        };
        let bolts = bolt.map_or_else(|| in_order(self.bolts.clone()), |bolt| Vec::from([bolt]));
        if bolts.is_empty() && printed.is_none() {
            return Err(missing("bolts"));
        }
        let held = |bolt| self.held(bolt, &wanted, printed);
        let mut said = self.chosen(bolts.into_iter().map(held).collect());
        if let Some(printed) = printed {
            self.listed(&mut said, printed, tables);
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::of(ThreadAsk::ThicknessAndThread));
        }
        Ok(said.minding(ThreadFact::BoltTorque))
    }

    /// What stands out of this bolt, held against what is wanted.
    fn held(&self, bolt: Length, wanted: &Held<'_>, printed: Option<Length>) -> (Length, Finding) {
        let out = self.thickness.scaled(-1.0).shifted(bolt);
        let mut found = wanted.against("bolt", &[out], self.rule);
        found.fact = ThreadFact::StandsOut { bolt }.into();
        if let Some(printed) = printed {
            found = as_printed(found, &out, printed);
        }
        (bolt, found)
    }

    /// The bolt at hand, or of several the shortest that is shown to leave what is wanted; else all of them.
    fn chosen(&self, mut held: Vec<(Length, Finding)>) -> Verdict {
        let shows = |outcome| move |(_, f): &(Length, Finding)| f.outcome == Some(outcome);
        let best = match self.bolt {
            Some(_) => Some(0),
            None => held.iter().position(shows(Outcome::ConformityShown)),
        };
        let Some(best) = best else {
            let open = held.iter().any(shows(Outcome::Undecided));
            let mut said = Verdict::from_findings(PLACE, held.into_iter().map(|h| h.1).collect());
            if open {
                said.outcome = Outcome::Undecided;
            }
            return said;
        };
        let (bolt, found) = held.swap_remove(best);
        let out = bolt - self.thickness.value();
        let mut said = Verdict::from_findings(PLACE, Vec::from([found]));
        said = said.with(Worked::length("stands out", out, "bolt - thickness"));
        if self.bolt.is_none() {
            said = said.with(Worked::length("bolt length", bolt, "shortest that suits"));
        } else if said.outcome == Outcome::NonconformityShown {
            said = said.cured(Curing::by(Remedy::OtherPart));
            let limits = said.findings.first().and_then(|f| f.limits);
            let most = limits.and_then(|l| l.upper().known());
            if most.is_some_and(|most| settled_below(most, out)) {
                said = said.minding(ThreadFact::BoltBottoms);
            }
        }
        said
    }

    /// The bolt that the tables of flat mounts list for the nearest thickness.
    fn listed(&self, said: &mut Verdict, printed: Length, tables: Tables<'_>) {
        let thickness = self.thickness.value();
        let ideal = thickness + printed;
        let number = Worked::length("ideal length", ideal, "thickness + printed");
        said.worked.push(number);
        let row = tables
            .all::<FlatMountBolt>()
            .filter_map(|r| Some((r.frame_thickness.nominal()?, r.bolt_length.nominal()?)))
            .min_by(|a, b| settled_cmp((a.0 - thickness).abs(), (b.0 - thickness).abs()));
        let (listed_for, listed) = row.unzip();
        if let Some(length) = listed.filter(|_| said.number("bolt length").is_none()) {
            let number = Worked::length("bolt length", length, "listed for nearest");
            said.worked.push(number);
        }
        for cure in &mut said.cures {
            cure.size = listed.or(cure.size);
        }
        let fact = ThreadFact::BoltFor {
            thickness,
            ideal,
            listed,
            listed_for,
        };
        said.findings.push(Finding::of(fact));
    }
}

fn in_order(mut lengths: Vec<Length>) -> Vec<Length> {
    lengths.sort_by(|a, b| settled_cmp(*a, *b));
    lengths
}

/// What the tables let stand out of a flat mount, to half a step of the lengths they list: beyond it another bolt is nearer.
fn of_flat_mounts(tables: Tables<'_>) -> Result<(Held<'_>, Option<Length>), Error> {
    let row = tables.find::<BrakeFigure>("fm_bolt_protrusion");
    let figure = row.map_err(|e| e.named("engaged"))?.figure.as_ref();
    let printed = figure.and_then(Figure::nominal);
    let listed = tables.all::<FlatMountBolt>();
    let lengths = in_order(listed.filter_map(|r| r.bolt_length.nominal()).collect());
    let steps = lengths.iter().zip(lengths.iter().skip(1));
    let half = steps
        .map(|(a, b)| (*b - *a) / 2.0)
        .filter(|half| settled_below(NOTHING, *half))
        .min_by(|a, b| settled_cmp(*a, *b));
    let (Some(figure), Some(at), Some(half)) = (figure, printed, half) else {
        return Err(Error::new(
            ErrorKind::NotTabulated,
            "engaged",
            "",
            "no length is published",
            "ask the caliper maker",
        ));
    };
    let grade = figure.grade().unwrap_or(Grade::Memory);
    let held = Held {
        limits: Limits::between(at - half, at + half, grade.weaker(Grade::Derived))?,
        owner: "nearest listed bolt".into(),
        evidence: figure.evidence(),
    };
    Ok((held, printed))
}
