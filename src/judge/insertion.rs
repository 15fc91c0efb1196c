//! How deep a seatpost must go in, by every published rule, by its makers, and by how deep the tube is clear.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::held::Held;
use super::verdict::{Curing, NOTHING, NextStep, Remedy, SettledBy, Verdict, size_reading};
use super::{BoreAsk, BoreFact, Finding};
use crate::Error;
use crate::evidence::{Evidence, Grade};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, positive};
use crate::read::{Deep, form, missing};
use crate::standard::{DepthCounts, InsertionRule, Tables};

form! {
    /// A depth that somebody writes.
    ///
    /// ```
    /// use framegauge::{judge::WrittenDepth, mm};
    /// let mark = WrittenDepth { owner: "the mark on the post".into(), depth: mm(110.0) };
    /// assert_eq!(mark.depth, mm(110.0));
    /// ```
    WrittenDepth {
        /// Whose it is: the mark on the post, the frame maker's manual.
        owner: String,
        /// The depth.
        depth: Length,
    }

    /// How deep a seatpost must go in, and whether it does.
    ///
    /// A depth that the post's mark or the frame maker asks for goes first. Of the published rules every one that applies is
    /// shown; less than the least demanding is out, as much as the most demanding is within, between them nothing is shown,
    /// because the sources differ. A remembered rule is shown and decides nothing.
    ///
    /// ```
    /// use framegauge::{judge::{Insertion, WrittenDepth}, measure::Outcome, mm, standard::Tables};
    /// let at = |weld: f64, inserted: &str| Insertion {
    ///     post: Some(mm(27.2)), weld: Some(mm(weld)), inserted: Some(inserted.parse().unwrap()), ..Insertion::default()
    /// };
    /// let judged = |asked: Insertion| asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(judged(at(50.0, "40 +/- 1 mm")).outcome, Outcome::NonconformityShown);
    /// assert_eq!(judged(at(80.0, "95 +/- 1 mm")).outcome, Outcome::Undecided); // 105 mm by the weld rule, 54.4 mm by the mark
    /// assert_eq!(judged(at(50.0, "160 +/- 1 mm")).outcome, Outcome::ConformityShown);
    /// assert_eq!(judged(at(80.0, "95 +/- 1 mm")).millimetres("depth"), Some(105.0));
    /// // The frame maker's depth goes first.
    /// let mut asked = at(50.0, "160 +/- 1 mm");
    /// asked.written.push(WrittenDepth { owner: "the frame maker's manual".into(), depth: mm(180.0) });
    /// assert_eq!(judged(asked).outcome, Outcome::NonconformityShown);
    /// ```
    #[derive(Default)]
    Insertion {
        /// Diameter of the post.
        post: Option<Length>,
        /// From the top of the seat tube to the lower edge of the top-tube weld or lug.
        weld: Option<Length>,
        /// Depths that the post's mark or the frame maker asks for. They go before every published rule.
        written: Vec<WrittenDepth>,
        /// How deep the post is in, or is to go in.
        inserted: Option<Reading> => Deep,
        /// How deep the tube is clear for it.
        clear: Option<Length>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// A rule that applies, with the depth it asks for here.
struct Asked<'a> {
    row: &'a InsertionRule,
    depth: Length,
    evidence: &'a Evidence,
}

impl Insertion {
    /// Every rule that applies, with the depth it asks for.
    fn asked<'a>(&self, tables: Tables<'a>) -> Vec<Asked<'a>> {
        let fixed = |row: &'a InsertionRule| {
            let depth = row.depth.as_ref()?;
            Some((depth.lower()?, depth.evidence()?))
        };
        let times = |row: &'a InsertionRule| {
            let (times, post) = row.times_diameter.as_ref().zip(self.post)?;
            Some((post * times.lower()?.0, times.evidence()?))
        };
        let below = tables
            .all::<InsertionRule>()
            .filter(|row| row.counts == DepthCounts::BelowWeld)
            .filter_map(|row| Some(fixed(row)?.0))
            .fold(NOTHING, Length::max);
        let of = |row: &'a InsertionRule| match (row.counts, self.weld) {
            (DepthCounts::WithWeld, Some(weld)) => {
                fixed(row).map(|(total, evidence)| (total.max(weld + below), evidence))
            }
            (DepthCounts::InAll, _) | (DepthCounts::WithoutWeld, None) => {
                times(row).or_else(|| fixed(row))
            }
            _ => None,
        };
        let asked = |row| {
            of(row).map(|(depth, evidence)| Asked {
                row,
                depth,
                evidence,
            })
        };
        tables.all::<InsertionRule>().filter_map(asked).collect()
    }

    /// The verdict, with the ruling `depth`: the deepest of what makers write and of the published rules that apply.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for lengths that are none; `Missing` for a written depth that is nobody's.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let rule = self.rule.unwrap_or_default();
        let weld = self.weld;
        for (field, length) in [("post", self.post), ("weld", weld), ("clear", self.clear)] {
            length.map_or(Ok(NOTHING), |length| positive(field, length))?;
        }
        if let Some(inserted) = &self.inserted {
            size_reading("inserted", inserted)?;
        }
        let readings: Vec<Reading> = self.inserted.into_iter().collect();
        let mut findings = Vec::new();
        for (index, WrittenDepth { owner, depth }) in self.written.iter().enumerate() {
            let place = format!("written[{index}]");
            if owner.trim().is_empty() {
                return Err(missing(format!("{place}.owner")));
            }
            let depth = positive("depth", *depth).map_err(|e| e.within(&place))?;
            let limits = Limits::at_least(depth, Grade::Shop)?;
            let held = Held::own(limits, owner.clone());
            findings.push(held.against("written depth", &readings, rule));
        }
        let asked = self.asked(tables);
        let counts = |a: &&Asked<'_>| a.evidence.worth() > Grade::Memory;
        let counting: Vec<&Asked<'_>> = asked.iter().filter(counts).collect();
        let least = counting.iter().map(|a| a.depth).reduce(Length::min);
        let most = counting.iter().map(|a| a.depth).reduce(Length::max);
        let written = || self.written.iter().map(|w| w.depth);
        let depth = written().chain(most).reduce(Length::max);
        let by_weld = [DepthCounts::WithWeld, DepthCounts::WithoutWeld];
        let trade = asked
            .iter()
            .find(|a| by_weld.contains(&a.row.counts))
            .map(|a| a.depth);
        if let (Some(inserted), Some(least), Some(most)) = (&self.inserted, least, most) {
            findings.push(by_rules(inserted, (least, most), &counting, rule)?);
        }
        let too_shallow = findings
            .iter()
            .any(|f| f.outcome == Some(Outcome::NonconformityShown));
        let needed = written().chain(least).reduce(Length::max);
        let room = self.room(&readings, depth, needed, rule)?;
        let no_room = room
            .as_ref()
            .and_then(|f| f.outcome)
            .is_some_and(|o| o != Outcome::ConformityShown);
        findings.extend(room);
        findings.push(Finding::of(BoreFact::DepthAsked {
            depth,
            weld,
            trade,
            least,
            most,
        }));
        let by = weld.map_or("without weld", |_| "weld rule");
        let mut said = Verdict::from_findings("seatpost insertion", findings)
            .minding(BoreFact::ShortPost)
            .lengths([
                ("depth", depth, "deepest that counts"),
                (by, trade, "larger of both"),
                ("least published", least, "min(rules)"),
                ("most published", most, "max(rules)"),
            ]);
        if too_shallow && let Some(depth) = depth {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(depth));
        }
        if no_room {
            let size = self.inserted.map(|r| r.value()).or(depth);
            said = said.cured(Curing {
                size,
                ..Curing::by(Remedy::Deepen)
            });
        }
        for a in &asked {
            let limits = Limits::at_least(a.depth, a.evidence.worth())?;
            let held = Held::own(limits, "published");
            let found = held.against(a.row.what.clone(), &readings, rule);
            said.beside.push(found.resting_on(Some(a.evidence)));
        }
        let written = NextStep::of(BoreAsk::DepthWritten).by(SettledBy::Written);
        for (open, next) in [
            (weld.is_none(), NextStep::of(BoreAsk::Weld)),
            (self.written.is_empty(), written),
            (self.inserted.is_none(), NextStep::of(BoreAsk::DepthNow)),
            (self.post.is_none(), NextStep::of(BoreAsk::PostOutside)),
        ] {
            said.next.extend(open.then_some(next));
        }
        Ok(said)
    }

    /// Whether the tube is clear deep enough: for the post as it is in, else for what is asked of it.
    fn room(
        &self,
        inserted: &[Reading],
        ruling: Option<Length>,
        needed: Option<Length>,
        rule: DecisionRule,
    ) -> Result<Option<Finding>, Error> {
        let Some(clear) = self.clear else {
            return Ok(None);
        };
        if !inserted.is_empty() {
            let limits = Limits::at_most(clear, Grade::Shop)?;
            let held = Held::own(limits, "clear depth");
            return Ok(Some(held.against("room for post", inserted, rule)));
        }
        let short_of = |depth: Option<Length>| depth.filter(|d| settled_below(clear, *d));
        let (outcome, short_of, some) = match (short_of(needed), short_of(ruling)) {
            (Some(depth), _) => (Some(Outcome::NonconformityShown), Some(depth), false),
            (None, Some(depth)) => (Some(Outcome::Undecided), Some(depth), true),
            (None, None) => (None, None, false),
        };
        Ok(Some(Finding {
            outcome,
            readings: Vec::from([Reading::exact(clear).map_err(|e| e.named("clear"))?]),
            grade: Some(Grade::Shop),
            ..Finding::of(BoreFact::ClearTo {
                clear,
                short_of,
                some,
            })
        }))
    }
}

/// The post as it is in, against the least and the most demanding rule.
fn by_rules(
    inserted: &Reading,
    (least, most): (Length, Length),
    counting: &[&Asked<'_>],
    rule: DecisionRule,
) -> Result<Finding, Error> {
    let grades = counting.iter().map(|a| a.evidence.worth());
    let grade = grades.min().unwrap_or(Grade::Memory);
    let held = |depth: Length| {
        let held = Held::own(Limits::at_least(depth, grade)?, "every published rule");
        Ok::<_, Error>(held.against("", &[*inserted], rule))
    };
    let (low, high) = (held(least)?, held(most)?);
    let of = |found: &Finding| found.outcome.unwrap_or(Outcome::Undecided);
    let (least, most) = (of(&low), of(&high));
    let (outcome, found) = match (least, most) {
        (Outcome::ConformityShown, Outcome::NonconformityShown) => (Outcome::Undecided, high),
        (Outcome::ConformityShown, most) => (most, high),
        (least, _) => (least, low),
    };
    let fact = BoreFact::ByRules {
        depth: inserted.value(),
        least,
        most,
    }
    .into();
    let found = Finding {
        fact,
        outcome: Some(outcome),
        ..found
    };
    Ok(counting
        .iter()
        .fold(found, |found, a| found.resting_on(Some(a.evidence))))
}
