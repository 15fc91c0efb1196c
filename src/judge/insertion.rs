//! How deep a seatpost must go in, by every published rule, by its makers, and by how deep the tube is clear.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, SettledBy, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::evidence::{Evidence, Grade};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_below};
use crate::quantity::{Length, in_mm, mm, positive, settled_mm, to_mm};
use crate::read::{Deep, form};
use crate::standard::{DepthCounts, InsertionRule, Tables};
use crate::{Error, Figure};

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
    grade: Grade,
}

impl Asked<'_> {
    fn evidence(&self) -> Option<&Evidence> {
        let depth = self.row.depth.as_ref().and_then(Figure::evidence);
        depth.or_else(|| {
            self.row
                .times_diameter
                .as_ref()
                .and_then(crate::Figure::evidence)
        })
    }
}

fn larger(a: Length, b: Length) -> Length {
    if settled_below(a, b) { b } else { a }
}
fn smaller(a: Length, b: Length) -> Length {
    if settled_below(b, a) { b } else { a }
}

impl Insertion {
    /// Every rule that applies, with the depth it asks for.
    fn asked<'a>(tables: Tables<'a>, post: Option<Length>, weld: Option<Length>) -> Vec<Asked<'a>> {
        let fixed = |row: &InsertionRule| {
            row.depth
                .as_ref()
                .and_then(|d| Some((d.lower()?, d.grade()?)))
        };
        let below = tables
            .all::<InsertionRule>()
            .filter(|row| row.counts == DepthCounts::BelowWeld)
            .filter_map(|row| Some(fixed(row)?.0))
            .fold(NOTHING, larger);
        let of = |row: &InsertionRule| match (row.counts, weld) {
            (DepthCounts::WithWeld, Some(weld)) => {
                fixed(row).map(|(total, grade)| (larger(total, weld + below), grade))
            }
            (DepthCounts::InAll, _) | (DepthCounts::WithoutWeld, None) => {
                let times = row.times_diameter.as_ref().zip(post);
                times
                    .and_then(|(times, post)| {
                        Some((mm(to_mm(post) * times.lower()?.0), times.grade()?))
                    })
                    .or_else(|| fixed(row))
            }
            _ => None,
        };
        tables
            .all::<InsertionRule>()
            .filter_map(|row| of(row).map(|(depth, grade)| Asked { row, depth, grade }))
            .collect()
    }

    /// The verdict, with the ruling `depth`: the deepest of what makers write and of the published rules that apply.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for lengths that are none; `Missing` for a written depth that is nobody's.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let rule = self.rule.unwrap_or_default();
        let post = self.post.map(|d| positive("post", d)).transpose()?;
        let weld = self.weld.map(|d| positive("weld", d)).transpose()?;
        let clear = self.clear.map(|d| positive("clear", d)).transpose()?;
        if let Some(inserted) = &self.inserted {
            size_reading("inserted", inserted)?;
        }
        let mut findings = Vec::new();
        let mut missed = String::new();
        let mut ruling: Option<Length> = None;
        let readings: Vec<Reading> = self.inserted.into_iter().collect();
        for (index, written) in self.written.iter().enumerate() {
            let field = |name: &str| format!("written[{index}].{name}");
            if written.owner.trim().is_empty() {
                return Err(crate::read::missing(field("owner")));
            }
            let depth = positive("depth", written.depth)
                .map_err(|e| e.within(&format!("written[{index}]")))?;
            ruling = Some(ruling.map_or(depth, |r| larger(r, depth)));
            let limits = Limits::at_least(depth, Grade::Shop)?;
            let found = sizes_against(
                "written depth",
                &readings,
                &limits,
                &written.owner,
                None,
                rule,
            );
            missed.push_str(&match found.outcome {
                Some(Outcome::NonconformityShown) => {
                    format!(" Less than {} asks: {}.", written.owner, in_mm(depth))
                }
                Some(Outcome::Undecided) => {
                    format!(
                        " Too close to what {} asks: {}.",
                        written.owner,
                        in_mm(depth)
                    )
                }
                _ => String::new(),
            });
            findings.push(found);
        }
        let asked = Self::asked(tables, post, weld);
        let counting = || asked.iter().filter(|a| a.grade > Grade::Memory);
        let least = counting().map(|a| a.depth).reduce(smaller);
        let most = counting().map(|a| a.depth).reduce(larger);
        let grade = counting().map(|a| a.grade).min().unwrap_or(Grade::Memory);
        ruling = match (ruling, most) {
            (Some(a), Some(b)) => Some(larger(a, b)),
            (a, b) => a.or(b),
        };
        let mut sentence = ruled_words(&asked, weld);
        if let (Some(least), Some(most)) = (least, most) {
            sentence.push_str(&format!(
                "; the published rules differ, {:.1} to {}",
                settled_mm(least),
                in_mm(most)
            ));
            if let Some(inserted) = &self.inserted {
                let (found, words) = by_rules(inserted, least, most, grade, rule)?;
                sentence.push_str(&format!("; {} is {words}", in_mm(inserted.value())));
                let sources = counting().filter_map(|a| a.evidence());
                findings.push(sources.fold(found, |f, e| f.resting_on(Some(e))));
            }
        }
        sentence.push_str(
            ". The mark on the post and the frame maker's depth win where they ask for more.",
        );
        sentence.push_str(&missed);
        if let Some(clear) = clear {
            findings.push(self.room(clear, ruling, least, rule)?);
        }
        let too_shallow = findings
            .iter()
            .any(|f| f.outcome == Some(Outcome::NonconformityShown) && f.what() != ROOM);
        let no_room = findings.last().filter(|f| {
            f.what() == ROOM && f.outcome.is_some_and(|o| o != Outcome::ConformityShown)
        });
        if let Some(found) = no_room {
            sentence.push_str(&format!(
                " {}.",
                super::words::capital(&alloc::string::ToString::to_string(found))
            ));
        }
        let no_room = no_room.is_some();
        let mut said = Verdict::from_findings("seatpost insertion", findings).saying(sentence);
        if let Some(depth) = ruling {
            said = said.with(Worked::length(
                "depth",
                depth,
                "the deepest of what makers write and of the published rules that apply",
            ));
        }
        said = with_numbers(said, &asked, least, most);
        if too_shallow && let Some(depth) = ruling {
            said = said.cured(Curing::by(Remedy::OtherPart).sized(depth));
        }
        if no_room {
            let depth = self.inserted.map(|r| r.value()).or(ruling);
            let deepen = Curing::by(Remedy::Deepen);
            said = said.cured(match depth {
                Some(depth) => deepen.sized(depth),
                None => deepen,
            });
        }
        said.beside = beside(&asked, self.inserted.as_ref(), rule)?;
        Ok(self.open(said))
    }

    /// Whether the tube is clear deep enough: for the post as it is in, else for what is asked of it.
    fn room(
        &self,
        clear: Length,
        ruling: Option<Length>,
        least: Option<Length>,
        rule: DecisionRule,
    ) -> Result<Finding, Error> {
        let owner = "how deep the tube is clear";
        if let Some(inserted) = &self.inserted {
            let limits = Limits::at_most(clear, Grade::Shop)?;
            return Ok(sizes_against(
                ROOM,
                &[*inserted],
                &limits,
                owner,
                None,
                rule,
            ));
        }
        let needed = self
            .written
            .iter()
            .map(|w| w.depth)
            .chain(least)
            .reduce(larger);
        let short_of = |depth: Option<Length>| depth.filter(|d| settled_below(clear, *d));
        let (outcome, words) = match (short_of(needed), short_of(ruling)) {
            (Some(depth), _) => (
                Some(Outcome::NonconformityShown),
                format!(
                    "the tube is clear to {}, and a post must go in {}",
                    in_mm(clear),
                    in_mm(depth)
                ),
            ),
            (None, Some(depth)) => (
                Some(Outcome::Undecided),
                format!(
                    "the tube is clear to {}, enough for some of the published rules and not for {}",
                    in_mm(clear),
                    in_mm(depth)
                ),
            ),
            (None, None) => (None, format!("the tube is clear to {}", in_mm(clear))),
        };
        Ok(Finding {
            outcome,
            readings: Vec::from([Reading::exact(clear).map_err(|e| e.named("clear"))?]),
            owner: String::from(owner),
            grade: Some(Grade::Shop),
            ..Finding::stated(ROOM, words)
        })
    }

    /// What is still to be measured.
    fn open(&self, mut said: Verdict) -> Verdict {
        if self.weld.is_none() {
            said = said.then(NextStep::new(
                "from the top of the seat tube to the lower edge of the weld or lug",
                "one rule counts from there",
                "rule",
            ));
        }
        if self.written.is_empty() {
            said = said.then(
                NextStep::new(
                    "the mark on the post and the frame maker's depth",
                    "they go before every published rule",
                    "post, manual",
                )
                .by(SettledBy::Written),
            );
        }
        if self.inserted.is_none() {
            said = said.then(NextStep::new(
                "how deep the post is in",
                "that is what is judged",
                "rule, mark on the post",
            ));
        }
        if self.post.is_none() {
            said = said.then(NextStep::new(
                "diameter of the post",
                "some rules count in diameters",
                "outside caliper",
            ));
        }
        said.minding("a short post can break the tube and hurt the rider")
    }
}

const ROOM: &str = "room for the post";

/// The rule of the weld, or the one without it.
fn of_the_weld<'a, 'r>(asked: &'a [Asked<'r>]) -> Option<&'a Asked<'r>> {
    asked.iter().find(|a| {
        matches!(
            a.row.counts,
            DepthCounts::WithWeld | DepthCounts::WithoutWeld
        )
    })
}

fn ruled_words(asked: &[Asked<'_>], weld: Option<Length>) -> String {
    match (of_the_weld(asked), weld) {
        (Some(rule), Some(weld)) => format!(
            "With the weld ending at {} the trade rule asks for {} in all",
            in_mm(weld),
            in_mm(rule.depth)
        ),
        (Some(rule), None) => format!(
            "Without the place of the weld the trade rule asks for {}",
            in_mm(rule.depth)
        ),
        (None, _) => String::from("No trade rule is known"),
    }
}

/// The post as it is in, against the least and the most demanding rule.
fn by_rules(
    inserted: &Reading,
    least: Length,
    most: Length,
    grade: Grade,
    rule: DecisionRule,
) -> Result<(Finding, &'static str), Error> {
    let (least, most) = (
        Limits::at_least(least, grade)?,
        Limits::at_least(most, grade)?,
    );
    let low = decide(inserted, &least, rule);
    let high = decide(inserted, &most, rule);
    let (outcome, words) = match (low.outcome, high.outcome) {
        (Outcome::NonconformityShown, _) => (
            Outcome::NonconformityShown,
            "less than the least demanding rule asks",
        ),
        (Outcome::Undecided, _) => (
            Outcome::Undecided,
            "too close to the least demanding rule to tell",
        ),
        (_, Outcome::ConformityShown) => (
            Outcome::ConformityShown,
            "as much as the most demanding rule asks",
        ),
        (_, Outcome::Undecided) => (
            Outcome::Undecided,
            "too close to the most demanding rule to tell",
        ),
        (_, Outcome::NonconformityShown) => (
            Outcome::Undecided,
            "enough for some of the published rules and not for others",
        ),
    };
    let enough = low.outcome == Outcome::ConformityShown;
    let found = Finding {
        outcome: Some(outcome),
        readings: Vec::from([*inserted]),
        limits: Some(if enough { most } else { least }),
        decision: Some(if enough { high } else { low }),
        grade: Some(grade),
        owner: String::from("every published rule"),
        ..Finding::stated("insertion", words)
    };
    Ok((found, words))
}

fn with_numbers(
    mut said: Verdict,
    asked: &[Asked<'_>],
    least: Option<Length>,
    most: Option<Length>,
) -> Verdict {
    if let Some(rule) = of_the_weld(asked) {
        let what = if rule.row.counts == DepthCounts::WithWeld {
            "by the weld rule"
        } else {
            "without the weld"
        };
        said = said.with(Worked::length(
            what,
            rule.depth,
            "larger of the rule's total and its distance below the weld, or the rule without the weld",
        ));
    }
    for (what, length) in [("least published", least), ("most published", most)] {
        if let Some(length) = length {
            said = said.with(Worked::length(
                what,
                length,
                "over the published rules that apply",
            ));
        }
    }
    said
}

/// Each rule by itself.
fn beside(
    asked: &[Asked<'_>],
    inserted: Option<&Reading>,
    rule: DecisionRule,
) -> Result<Vec<Finding>, Error> {
    asked
        .iter()
        .map(|a| {
            let limits = Limits::at_least(a.depth, a.grade)?;
            let decision = inserted.map(|inserted| decide(inserted, &limits, rule));
            Ok(Finding {
                outcome: decision.map(|d| d.outcome),
                limits: Some(limits),
                decision,
                ..Finding::stated(String::from(&*a.row.what), format!("{}", in_mm(a.depth)))
            }
            .resting_on(a.evidence()))
        })
        .collect()
}
