//! A bore against its limits, depth by depth and direction by direction.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::held::{FigureName, Held, OwnLimits, held, tightest};
use super::member::sizes;
use super::verdict::{Curing, NextStep, Remedy, Verdict, Worked, size_reading};
use super::{Finding, from_to, sizes_against};
use crate::Error;
use crate::fit::Shape;
use crate::measure::{
    DecisionRule, Limits, Outcome, Placed, Reading, Surface, Why, decide, settled_below,
    settled_cmp,
};
use crate::quantity::{Length, in_mm};
use crate::read::{Inside, form, missing};
use crate::standard::Tables;

form! {
    /// A bore against limits, each depth by itself: over at one end and under at the other is told so, with what may cure which
    /// end. Over paint a bore is at least as large as it reads: one that reads too small is not shown out, one that reads too
    /// large is.
    ///
    /// ```
    /// use framegauge::{judge::{BoreFit, Remedy}, measure::{Limits, Outcome}, standard::Tables};
    /// let read = |text: &str| text.parse().unwrap();
    /// let shell = BoreFit {
    ///     bore: vec![read("3 mm deep, 0 deg: 42.02 +/- 0.005 mm"), read("3 mm deep, 90 deg: 42.01 +/- 0.005 mm"),
    ///                read("55 mm deep, 0 deg: 41.90 +/- 0.005 mm")],
    ///     limits: vec!["41.96 to 41.985 mm".parse::<Limits>().unwrap().into()], figure: None, rule: None,
    /// };
    /// let said = shell.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::NonconformityShown);
    /// // Reaming cures the end that is under, and no end that is over.
    /// let reamed: Vec<String> = said.cures.iter().filter(|c| c.by == Remedy::Ream).map(|c| c.at.to_string()).collect();
    /// assert_eq!(reamed, ["55.000 mm deep"]);
    /// ```
    #[derive(Default)]
    BoreFit {
        /// The readings, each with its depth, direction and surface where these were noted.
        bore: Vec<Placed> => Inside,
        /// Limits that the bore must keep; where there are several, all of them.
        limits: Vec<OwnLimits>,
        /// The row that states limits, such as family `head_seat`, field `bore`.
        figure: Option<FigureName>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// Readings at one depth.
struct Section {
    at: String,
    readings: Vec<Placed>,
}

fn sections(bore: &[Placed]) -> Vec<Section> {
    let mut depths: Vec<Option<Length>> = Vec::new();
    for placed in bore {
        let known = |d: &Option<Length>| match (d, placed.depth) {
            (Some(a), Some(b)) => settled_cmp(*a, b).is_eq(),
            (a, b) => a.is_none() && b.is_none(),
        };
        if !depths.iter().any(known) {
            depths.push(placed.depth);
        }
    }
    depths.sort_by(|a, b| match (a, b) {
        (Some(a), Some(b)) => settled_cmp(*a, *b),
        (a, b) => a.is_some().cmp(&b.is_some()),
    });
    depths
        .into_iter()
        .map(|depth| Section {
            at: depth.map_or_else(String::new, |d| format!("{} deep", in_mm(d))),
            readings: bore
                .iter()
                .filter(|p| match (p.depth, depth) {
                    (Some(a), Some(b)) => settled_cmp(a, b).is_eq(),
                    (a, b) => a.is_none() && b.is_none(),
                })
                .copied()
                .collect(),
        })
        .collect()
}

/// How one section stands to the limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
struct Stands {
    over: bool,
    under: bool,
    painted_under: bool,
}

impl Section {
    fn judged(&self, held: &Held<'_>, rule: DecisionRule, tables: Tables<'_>) -> Vec<Finding> {
        let what = if self.at.is_empty() {
            String::from("bore")
        } else {
            format!("bore {}", self.at)
        };
        [false, true]
            .into_iter()
            .filter_map(|painted| {
                let readings: Vec<Reading> = self
                    .readings
                    .iter()
                    .filter(|p| (p.surface == Surface::OverPaint) == painted)
                    .map(|p| p.reading)
                    .collect();
                (!readings.is_empty()).then(|| {
                    let found = sizes_against(
                        what.clone(),
                        &readings,
                        &held.limits,
                        &held.owner,
                        held.evidence,
                        rule,
                    );
                    if painted {
                        found.read_on_paint(true, tables)
                    } else {
                        found
                    }
                })
            })
            .collect()
    }

    fn stands(&self, limits: &Limits, rule: DecisionRule, tables: Tables<'_>) -> Stands {
        let mut out = Stands::default();
        for placed in &self.readings {
            if decide(&placed.reading, limits, rule).outcome != Outcome::NonconformityShown {
                continue;
            }
            let under = limits
                .lower()
                .known()
                .is_some_and(|low| settled_below(placed.reading.value(), low));
            if !under {
                out.over = true;
                continue;
            }
            let painted = placed.surface == Surface::OverPaint
                && sizes_against("", &[placed.reading], limits, "", None, rule)
                    .read_on_paint(true, tables)
                    .outcome
                    != Some(Outcome::NonconformityShown);
            out.painted_under |= painted;
            out.under |= !painted;
        }
        out
    }
}

impl BoreFit {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without readings or limits; `OutOfRange` and `NotFinite` for sizes that are none; those of the figure;
    /// `Contradiction` for limits that no bore keeps.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        if self.bore.is_empty() {
            return Err(missing("bore"));
        }
        for (index, placed) in self.bore.iter().enumerate() {
            size_reading("", &placed.reading).map_err(|e| e.within(&format!("bore[{index}]")))?;
        }
        let all = held(&self.limits, self.figure.as_ref(), tables)?;
        let Some(limits) = tightest(&all, "limits")? else {
            return Err(missing("limits"));
        };
        let rule = self.rule.unwrap_or_default();
        let sections = sections(&self.bore);
        let mut findings = Vec::new();
        for held in &all {
            for section in &sections {
                findings.extend(section.judged(held, rule, tables));
            }
        }
        let coarse = findings.iter().any(|f| {
            f.decision
                .is_some_and(|d| d.why == Why::InstrumentTooCoarse)
        });
        let stands: Vec<(&Section, Stands)> = sections
            .iter()
            .map(|s| (s, s.stands(&limits, rule, tables)))
            .collect();
        let mut said = Verdict::from_findings("bore", findings);
        let sentence = words(&stands, &limits, said.outcome, &self.bore);
        said = said.saying(sentence);
        said = self.numbers(said, &limits)?;
        for (section, stands) in &stands {
            said = cures(said, section, *stands, &limits);
        }
        Ok(open(said, &stands, coarse, &self.bore))
    }

    fn numbers(&self, mut said: Verdict, limits: &Limits) -> Result<Verdict, Error> {
        let shape = Shape::of(&sizes(&self.bore).map_err(|e| e.named("bore"))?)
            .map_err(|e| e.named("bore"))?;
        let (low, high) = (shape.smallest().value(), shape.largest().value());
        said = said
            .with(Worked::length("smallest", low, "smallest reading"))
            .with(Worked::length("largest", high, "largest reading"));
        if let Some(oval) = shape.ovality() {
            said = said.with(Worked::length(
                "ovality",
                oval.value(),
                "largest less smallest at one depth",
            ));
        }
        if let Some(taper) = shape.taper() {
            said = said.with(Worked::length(
                "taper",
                taper.value(),
                "difference of the means of the depths",
            ));
        }
        if let Some(least) = limits.lower().known()
            && settled_below(low, least)
        {
            said = said.with(Worked::length(
                "under the lower limit by",
                least - low,
                "lower limit less smallest reading",
            ));
        }
        if let Some(most) = limits.upper().known()
            && settled_below(most, high)
        {
            said = said.with(Worked::length(
                "over the upper limit by",
                high - most,
                "largest reading less upper limit",
            ));
        }
        for caution in shape.cautions() {
            said.cautions.push(caution.words().into());
        }
        Ok(said)
    }
}

fn places(stands: &[(&Section, Stands)], pick: fn(&Stands) -> bool) -> String {
    let at: Vec<&str> = stands
        .iter()
        .filter(|(_, s)| pick(s))
        .map(|(section, _)| section.at.as_str())
        .filter(|at| !at.is_empty())
        .collect();
    if at.is_empty() {
        String::new()
    } else {
        format!(" at {}", at.join(", "))
    }
}

fn words(
    stands: &[(&Section, Stands)],
    limits: &Limits,
    outcome: Outcome,
    bore: &[Placed],
) -> String {
    let readings: Vec<Reading> = bore.iter().map(|p| p.reading).collect();
    let extremes = super::extremes(&readings);
    let size = match (extremes.first(), extremes.last()) {
        (Some(low), Some(high)) => from_to(low.value(), high.value()),
        _ => String::new(),
    };
    let any = |pick: fn(&Stands) -> bool| stands.iter().any(|(_, s)| pick(s));
    let over = places(stands, |s| s.over);
    let under = places(stands, |s| s.under);
    let told = match (any(|s| s.over), any(|s| s.under)) {
        (true, true) if stands.iter().any(|(_, s)| s.over && s.under) => format!(
            "over in one direction and under in another{over}: out of round, and no reamer brings metal back where it is over"
        ),
        (true, true) => format!(
            "over{over} and under{under}: reaming opens what is under and cures nothing that is over"
        ),
        (true, false) => format!("too large{over}: no cut cures that"),
        (false, true) => format!("too small{under}"),
        (false, false) if any(|s| s.painted_under) => String::from(
            "too small as it reads, over paint, which explains it: clean it and measure the metal",
        ),
        (false, false) => String::from(match outcome {
            Outcome::ConformityShown => "within the limits",
            _ => "not told by these readings",
        }),
    };
    format!("{size} against {limits}: {told}.")
}

fn cures(mut said: Verdict, section: &Section, stands: Stands, limits: &Limits) -> Verdict {
    let at = || section.at.to_string();
    if stands.painted_under {
        said = said.cured(Curing::by(Remedy::Clean).only_at(at()));
    }
    if stands.over && stands.under {
        said = said.cured(Curing::by(Remedy::RoundOut).only_at(at()));
    } else if stands.under {
        let ream = Curing::by(Remedy::Ream).only_at(at());
        said = said.cured(match limits.lower().known() {
            Some(least) => ream.sized(least),
            None => ream,
        });
    }
    if stands.over {
        said = said
            .cured(Curing::by(Remedy::OtherPart).only_at(at()))
            .cured(Curing::by(Remedy::Sleeve).only_at(at()));
    }
    said
}

fn open(
    mut said: Verdict,
    stands: &[(&Section, Stands)],
    coarse: bool,
    bore: &[Placed],
) -> Verdict {
    let painted = bore.iter().any(|p| p.surface == Surface::OverPaint);
    if painted && said.outcome != Outcome::NonconformityShown {
        said = said.then(NextStep::new(
            "the bore on bare metal",
            "over paint a bore reads smaller than it is",
            "remove the paint by hand first",
        ));
    }
    if said.outcome == Outcome::Undecided && !painted {
        said = said.then(NextStep::new(
            "the bore in two directions at two depths, with a finer gauge",
            if coarse {
                "the instrument used can never show so narrow a tolerance"
            } else {
                "too close to a limit for these readings"
            },
            "three-point internal micrometer, bore gauge",
        ));
    }
    let shapeless = bore.iter().all(|p| p.angle.is_none() && p.depth.is_none());
    if stands.len() < 2 && shapeless && said.outcome != Outcome::Undecided {
        said = said.then(NextStep::new(
            "the bore in two directions at both ends",
            "one place says nothing of ovality and taper",
            "three-point internal micrometer, bore gauge",
        ));
    }
    said
}
