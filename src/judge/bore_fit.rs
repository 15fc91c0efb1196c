//! A bore against its limits, depth by depth and direction by direction.

use alloc::vec::Vec;
use core::cmp::Ordering;

use super::held::{FigureName, Held, OwnLimits, held, tightest};
use super::member::sizes;
use super::verdict::{CuredAt, Curing, NOTHING, NextStep, Remedy, Verdict};
use super::wall::ends;
use super::{BoreAsk, BoreFact, Finding, sizes_against};
use crate::Error;
use crate::fit::Shape;
use crate::measure::{
    DecisionRule, Limits, Outcome, Placed, Reading, Surface, Why, settled_below, settled_cmp,
};
use crate::quantity::Length;
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

/// Order of the depths, what has none first; readings of one depth are one section.
fn by_depth(a: &Placed, b: &Placed) -> Ordering {
    match (a.depth, b.depth) {
        (Some(a), Some(b)) => settled_cmp(a, b),
        (a, b) => a.is_some().cmp(&b.is_some()),
    }
}

fn over_paint(placed: &Placed) -> bool {
    placed.surface == Surface::OverPaint
}

/// One section against limits: what was read on metal, and what over paint.
fn judged(
    section: &[Placed],
    held: &Held<'_>,
    rule: DecisionRule,
    tables: Tables<'_>,
) -> Vec<Finding> {
    let deep = section.first().and_then(|p| p.depth);
    let of = |painted: bool| {
        let here = section.iter().filter(|p| over_paint(p) == painted);
        let readings: Vec<Reading> = here.map(|p| p.reading).collect();
        let (limits, fact) = (
            &held.limits,
            BoreFact::Bore {
                deep,
                count: readings.len(),
            },
        );
        let found = sizes_against("", &readings, limits, &held.owner, held.evidence, rule);
        let found = found.with_fact(|_| fact.into());
        let found = if painted {
            found.read_on_paint(true, tables)
        } else {
            found
        };
        (!readings.is_empty()).then_some(found)
    };
    [false, true].into_iter().filter_map(of).collect()
}

/// How one section stands to the limits.
#[derive(Default)]
struct Stands {
    deep: Option<Length>,
    over: bool,
    under: bool,
    painted_under: bool,
}

impl Stands {
    fn of(section: &[Placed], limits: &Limits, rule: DecisionRule, tables: Tables<'_>) -> Self {
        let deep = section.first().and_then(|p| p.depth);
        let mut out = Self {
            deep,
            ..Self::default()
        };
        let shown_out = |found: &Finding| found.outcome == Some(Outcome::NonconformityShown);
        for placed in section {
            let found = sizes_against("", &[placed.reading], limits, "", None, rule);
            let small = |least| settled_below(placed.reading.value(), least);
            if !shown_out(&found) {
                continue;
            } else if !limits.lower().known().is_some_and(small) {
                out.over = true;
            } else if over_paint(placed) && !shown_out(&found.read_on_paint(true, tables)) {
                out.painted_under = true;
            } else {
                out.under = true;
            }
        }
        out
    }

    /// What may cure this section, and nothing that cannot.
    fn cures(&self, limits: &Limits) -> impl Iterator<Item = Curing> {
        let at = self.deep.map_or(CuredAt::All, CuredAt::Depth);
        let size = limits.lower().known();
        [
            (self.painted_under, Remedy::Clean),
            (self.over && self.under, Remedy::RoundOut),
            (self.under && !self.over, Remedy::Ream),
            (self.over, Remedy::OtherPart),
            (self.over, Remedy::Sleeve),
        ]
        .into_iter()
        .filter_map(|(may, by)| may.then_some(by))
        .map(move |by| Curing {
            by,
            size: size.filter(|_| by == Remedy::Ream),
            at: at.clone(),
        })
    }
}

impl BoreFit {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without readings or limits; `OutOfRange` and `NotFinite` for sizes that are none; those of the figure;
    /// `Contradiction` for limits that no bore keeps.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (low, high) = ends("bore", &self.bore)?;
        let all = held(&self.limits, self.figure.as_ref(), tables)?;
        let limits = tightest(&all, "limits")?.ok_or_else(|| missing("limits"))?;
        let rule = self.rule.unwrap_or_default();
        let mut bore = self.bore.clone();
        bore.sort_by(by_depth);
        let sections = || bore.chunk_by(|a, b| by_depth(a, b).is_eq());
        let mut findings = Vec::new();
        for held in &all {
            findings.extend(sections().flat_map(|s| judged(s, held, rule, tables)));
        }
        let stands: Vec<Stands> = sections()
            .map(|s| Stands::of(s, &limits, rule, tables))
            .collect();
        let out = |pick: fn(&Stands) -> bool| {
            stands
                .iter()
                .filter(move |s| pick(s))
                .map(|s| s.deep)
                .collect()
        };
        let (over, under): (Vec<_>, Vec<_>) = (out(|s| s.over), out(|s| s.under));
        if !over.is_empty() {
            findings.push(Finding::of(BoreFact::TooLarge { over, under }));
        }
        let mut said = Verdict::from_findings("bore", findings);
        said.cures
            .extend(stands.iter().flat_map(|s| s.cures(&limits)));
        let said = self.numbers(said, low.value(), high.value(), &limits)?;
        Ok(self.open(said, stands.len() < 2))
    }

    fn numbers(
        &self,
        mut said: Verdict,
        low: Length,
        high: Length,
        limits: &Limits,
    ) -> Result<Verdict, Error> {
        let shape = sizes(&self.bore).and_then(|sizes| Shape::of(&sizes));
        let shape = shape.map_err(|e| e.named("bore"))?;
        let off = |by: Option<Length>| by.filter(|by| settled_below(NOTHING, *by));
        let under = off(limits.lower().known().map(|least| least - low));
        let over = off(limits.upper().known().map(|most| high - most));
        let (ovality, taper) = (shape.ovality(), shape.taper());
        let cautions = shape.cautions().iter();
        said.cautions
            .extend(cautions.map(|caution| BoreFact::Shape { caution: *caution }.into()));
        Ok(said.lengths([
            ("smallest", Some(low), "smallest reading"),
            ("largest", Some(high), "largest reading"),
            ("ovality", ovality.map(|r| r.value()), "at one depth"),
            ("taper", taper.map(|r| r.value()), "mean by depth"),
            ("under limit", under, "limit - smallest"),
            ("over limit", over, "largest - limit"),
        ]))
    }

    fn open(&self, mut said: Verdict, one_place: bool) -> Verdict {
        let painted = self.bore.iter().any(over_paint);
        let placed = self
            .bore
            .iter()
            .any(|p| p.angle.is_some() || p.depth.is_some());
        let open = said.outcome == Outcome::Undecided;
        let out = said.outcome == Outcome::NonconformityShown;
        let mut whys = said.findings.iter().filter_map(|f| Some(f.decision?.why));
        let instrument = whys.any(|why| why == Why::InstrumentTooCoarse);
        for (asked, ask) in [
            (painted && !out, BoreAsk::OnMetal),
            (open && !painted, BoreAsk::Finer { instrument }),
            (one_place && !placed && !open, BoreAsk::BothEnds),
        ] {
            said.next.extend(asked.then(|| NextStep::of(ask)));
        }
        said
    }
}
