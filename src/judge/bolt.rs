//! A bolt through a mount: which length leaves the thread that is wanted behind it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::evidence::{Evidence, Grade};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::read::{Outside, form};
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
                owner: "the thread that is wanted",
                evidence: None,
            },
            None => of_flat_mounts(tables)?,
        };
        let mut said = match bolt {
            Some(bolt) => self.at_hand(bolt, &wanted),
            None if !self.bolts.is_empty() => self.of_several(&wanted),
            None if wanted.printed.is_some() => {
                Verdict::from_findings("bolt through mount", Vec::new())
            }
            None => return Err(crate::read::missing("bolts")),
        };
        if let Some(printed) = wanted.printed {
            said = self.listed(said, printed, tables);
        }
        if said.outcome != Outcome::ConformityShown {
            said = said.then(NextStep::new(
                "thickness again after facing, and the depth of the thread in the caliper",
                "facing changes the thickness, and engaged thread is less than what stands out",
                "depth caliper",
            ));
        }
        Ok(said.minding(
            "brakes: torque to the maker's figure; when in doubt, hand over to a qualified workshop",
        ))
    }

    /// What stands out of this bolt, held against what is wanted.
    fn held(&self, bolt: Length, wanted: &StandsOut<'_>) -> Finding {
        let out = self.thickness.scaled(-1.0).shifted(bolt);
        let rule = self.rule.unwrap_or_default();
        let what = "bolt through mount";
        let mut found = sizes_against(
            what,
            &[out],
            &wanted.limits,
            wanted.owner,
            wanted.evidence,
            rule,
        );
        // A printed figure without a tolerance: near it is not yet as it.
        if let Some(printed) = wanted.printed
            && found.outcome == Some(Outcome::ConformityShown)
            && settled_below(
                self.thickness.expanded_uncertainty(),
                (out.value() - printed).abs(),
            )
        {
            found.outcome = Some(Outcome::Undecided);
            found.doubt = Some(super::Doubt::NotPrinted);
        }
        found
    }

    fn at_hand(&self, bolt: Length, wanted: &StandsOut<'_>) -> Verdict {
        let found = self.held(bolt, wanted);
        let out = bolt - self.thickness.value();
        let long = wanted
            .limits
            .upper()
            .known()
            .is_some_and(|most| settled_below(most, out));
        let words = match found.outcome {
            Some(Outcome::NonconformityShown) if long => {
                "The one at hand is too long: it bottoms in the blind hole and feels tight without clamping."
            }
            Some(Outcome::NonconformityShown) => "The one at hand is too short: too little thread.",
            Some(Outcome::ConformityShown) => "The one at hand is right.",
            _ => "For the one at hand nothing is shown.",
        };
        let said = Verdict::from_findings("bolt through mount", Vec::from([found]))
            .saying(String::from(words))
            .with(Worked::length("stands out", out, "bolt less thickness"));
        if said.outcome == Outcome::NonconformityShown {
            said.cured(Curing::by(Remedy::OtherPart))
        } else {
            said
        }
    }

    /// The shortest bolt that is shown to leave what is wanted.
    fn of_several(&self, wanted: &StandsOut<'_>) -> Verdict {
        let mut lengths = self.bolts.clone();
        lengths.sort_by(|a, b| settled_cmp(*a, *b));
        let held: Vec<(Length, Finding)> = lengths
            .into_iter()
            .map(|bolt| (bolt, self.held(bolt, wanted)))
            .collect();
        let best = held
            .iter()
            .find(|(_, f)| f.outcome == Some(Outcome::ConformityShown));
        if let Some((bolt, found)) = best {
            let out = *bolt - self.thickness.value();
            return Verdict::from_findings("bolt through mount", Vec::from([found.clone()]))
                .saying(format!(
                    "{} bolt: {} in the thread.",
                    in_mm(*bolt),
                    in_mm(out)
                ))
                .with(Worked::length(
                    "bolt length",
                    *bolt,
                    "shortest that is shown to conform",
                ))
                .with(Worked::length("stands out", out, "bolt less thickness"));
        }
        let none = held
            .iter()
            .all(|(_, f)| f.outcome == Some(Outcome::NonconformityShown));
        let mut said = Verdict::from_findings(
            "bolt through mount",
            held.into_iter().map(|(_, f)| f).collect(),
        )
        .saying("None of these lengths is shown to leave the thread that is wanted.");
        if !none {
            said.outcome = Outcome::Undecided;
        }
        said
    }

    /// The bolt that the tables of flat mounts list for the nearest thickness.
    fn listed(&self, mut said: Verdict, printed: Length, tables: Tables<'_>) -> Verdict {
        let thickness = self.thickness.value();
        let ideal = thickness + printed;
        let mut sentence = format!(
            "A mount of {} takes a bolt of {}: thickness and {}",
            in_mm(thickness),
            in_mm(ideal),
            in_mm(printed)
        );
        said = said.with(Worked::length(
            "ideal length",
            ideal,
            "thickness + what the tables let stand out",
        ));
        let row = tables
            .all::<FlatMountBolt>()
            .filter_map(|r| Some((r.frame_thickness.nominal()?, r.bolt_length.nominal()?)))
            .min_by(|a, b| settled_cmp((a.0 - thickness).abs(), (b.0 - thickness).abs()));
        if let Some((at, length)) = row {
            sentence.push_str(&format!(
                "; the nearest listed is {} for {}",
                in_mm(length),
                in_mm(at)
            ));
            if said.number("bolt length").is_none() {
                said = said.with(Worked::length(
                    "bolt length",
                    length,
                    "listed for the nearest thickness",
                ));
            }
            for cure in &mut said.cures {
                cure.size = Some(length);
            }
        }
        sentence.push('.');
        if !said.words().is_empty() {
            sentence.push(' ');
            sentence.push_str(&said.words());
        }
        said.saying(sentence)
    }
}

/// What the tables let stand out of a flat mount, to half a step of the lengths they list: beyond it another bolt is nearer.
fn of_flat_mounts(tables: Tables<'_>) -> Result<StandsOut<'_>, Error> {
    let not_published = || {
        Error::new(
            ErrorKind::NotTabulated,
            "engaged",
            "",
            "no length is published",
            "ask the caliper maker",
        )
    };
    let row = tables
        .find::<BrakeFigure>("fm_bolt_protrusion")
        .map_err(|e| e.named("engaged"))?;
    let figure = row.figure.as_ref().ok_or_else(not_published)?;
    let printed = figure.nominal().ok_or_else(not_published)?;
    let mut lengths: Vec<Length> = tables
        .all::<FlatMountBolt>()
        .filter_map(|r| r.bolt_length.nominal())
        .collect();
    lengths.sort_by(|a, b| settled_cmp(*a, *b));
    let half = lengths
        .iter()
        .zip(lengths.iter().skip(1))
        .map(|(a, b)| (*b - *a) / 2.0)
        .filter(|half| settled_below(Length::default(), *half))
        .min_by(|a, b| settled_cmp(*a, *b))
        .ok_or_else(not_published)?;
    let grade = figure.grade().unwrap_or(Grade::Memory);
    Ok(StandsOut {
        limits: Limits::between(printed - half, printed + half, grade.weaker(Grade::Derived))?,
        printed: Some(printed),
        owner: "within half a step of what the tables let stand out",
        evidence: figure.evidence(),
    })
}
