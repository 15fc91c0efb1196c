//! How deep a seatpost must go in, by every published rule.

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, ShaftDiameter, in_mm, mm, positive, settled_mm, to_mm};
use crate::standard::{InsertionRule, Row, find};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// How deep a seatpost must go in, by every published rule, with what decides.
///
/// ```
/// use framegauge::{ShaftDiameter, judge::PostDepth, mm};
/// let post = PostDepth { post: ShaftDiameter::new(mm(27.2)).unwrap(), weld: Some(mm(80.0)), makers: Vec::new(), inserted: None };
/// assert_eq!(post.judge().unwrap().millimetres("by the weld rule"), Some(105.0));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct PostDepth {
    /// Diameter of the post.
    pub post: ShaftDiameter,
    /// From the top of the seat tube to the lower edge of the top-tube weld or lug.
    pub weld: Option<Length>,
    /// Depths that the post's mark or the frame maker asks for, with whose they are. They go before every published rule.
    pub makers: Vec<(String, Length)>,
    /// How deep it is in.
    pub inserted: Option<Reading>,
}

impl PostDepth {
    /// The verdict. Each rule is shown by itself; rules of different authors are not mixed into one.
    ///
    /// The weld rule of one trade article wants 25 mm below the weld **and** 90 mm in all; without the weld it wants 150 mm.
    /// Shown deep enough only when every applicable rule and every maker's depth is met; shown too shallow when a maker's depth
    /// is missed, or the least demanding rule; between them undecided, because the sources differ.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for depths that are none.
    ///
    /// ```
    /// use framegauge::{ShaftDiameter, judge::PostDepth, measure::Outcome, mm};
    /// let at = |weld: f64, inserted: &str| PostDepth {
    ///     post: ShaftDiameter::new(mm(27.2)).unwrap(), weld: Some(mm(weld)), makers: vec![], inserted: Some(inserted.parse().unwrap()),
    /// }.judge().unwrap();
    /// assert_eq!(at(50.0, "95 +/- 1 mm").millimetres("by the weld rule"), Some(90.0));
    /// assert_eq!(at(50.0, "40 +/- 1 mm").outcome, Outcome::NonconformityShown);
    /// assert_eq!(at(50.0, "80 +/- 1 mm").outcome, Outcome::Undecided);
    /// assert_eq!(at(50.0, "160 +/- 1 mm").outcome, Outcome::ConformityShown);
    /// ```
    pub fn judge(&self) -> Result<Verdict, Error> {
        let depth_of = |code: &str| {
            find::<InsertionRule>(code).map(|r| r.depth.as_ref().and_then(crate::Figure::lower))
        };
        let mut asked: Vec<(String, Length, Grade, &'static InsertionRule)> = Vec::new();
        for row in InsertionRule::table() {
            if row.code == "strength_below_mark" {
                // Speaks of the post's own strength, not of how deep it sits.
                continue;
            }
            let times = row
                .times_diameter
                .as_ref()
                .and_then(|t| Some((t.lower()?.0, t.grade()?)));
            let fixed = row
                .depth
                .as_ref()
                .and_then(|d| Some((d.lower()?, d.grade()?)));
            let depth = match row.code.as_ref() {
                "below_top_tube_weld" => continue,
                "total_with_weld_rule" => {
                    let (Some(weld), Some((total, grade))) = (self.weld, fixed) else {
                        continue;
                    };
                    let below = depth_of("below_top_tube_weld")?.unwrap_or(NOTHING);
                    let weld = positive("weld", weld)? + below;
                    Some((
                        if settled_cmp(weld, total).is_ge() {
                            weld
                        } else {
                            total
                        },
                        grade,
                    ))
                }
                "total_otherwise" if self.weld.is_some() => continue,
                _ => times
                    .map(|(n, g)| (mm(to_mm(self.post.length()) * n), g))
                    .or(fixed),
            };
            if let Some((depth, grade)) = depth {
                asked.push((String::from(&*row.what), depth, grade, row));
            }
        }
        if let Some(inserted) = &self.inserted {
            size_reading("inserted", inserted)?;
        }
        let mut findings = Vec::new();
        let mut beside = Vec::new();
        let mut missed = Vec::new();
        let rule = DecisionRule::default();
        for (owner, depth) in &self.makers {
            let depth = positive("maker's depth", *depth)?;
            let limits = Limits::at_least(depth, Grade::Shop)?;
            let readings: Vec<Reading> = self.inserted.into_iter().collect();
            let found = sizes_against("maker's depth", &readings, &limits, owner, None, rule);
            match found.outcome {
                Some(Outcome::NonconformityShown) => {
                    missed.push(format!("Less than {owner} asks: {}", in_mm(depth)));
                }
                Some(Outcome::Undecided) => {
                    missed.push(format!("Too close to what {owner} asks: {}", in_mm(depth)));
                }
                _ => {}
            }
            findings.push(found);
        }
        let (mut least, mut most): (Option<Length>, Option<Length>) = (None, None);
        for (what, depth, grade, row) in &asked {
            let evidence = row.depth.as_ref().map_or_else(
                || {
                    row.times_diameter
                        .as_ref()
                        .and_then(crate::Figure::evidence)
                },
                crate::Figure::evidence,
            );
            let decision = match &self.inserted {
                Some(inserted) => Some(decide(inserted, &Limits::at_least(*depth, *grade)?, rule)),
                None => None,
            };
            beside.push(
                Finding {
                    outcome: decision.map(|d| d.outcome),
                    limits: Some(Limits::at_least(*depth, *grade)?),
                    decision,
                    ..Finding::stated(what.clone(), format!("{}", in_mm(*depth)))
                }
                .resting_on(evidence),
            );
            // A remembered figure is shown and never decides.
            if *grade > Grade::Memory {
                least = Some(least.map_or(*depth, |l| {
                    if settled_cmp(*depth, l).is_lt() {
                        *depth
                    } else {
                        l
                    }
                }));
                most = Some(most.map_or(*depth, |m| {
                    if settled_cmp(*depth, m).is_gt() {
                        *depth
                    } else {
                        m
                    }
                }));
            }
        }
        let ruling = asked
            .iter()
            .find(|(.., r)| matches!(r.code.as_ref(), "total_with_weld_rule" | "total_otherwise"));
        let mut sentence = match (ruling, self.weld) {
            (Some((_, depth, ..)), Some(weld)) => format!(
                "With the weld ending at {} the trade rule asks for {} in all",
                in_mm(weld),
                in_mm(*depth)
            ),
            (Some((_, depth, ..)), None) => format!(
                "Without the place of the weld the trade rule asks for {}",
                in_mm(*depth)
            ),
            (None, _) => String::from("No trade rule is known"),
        };
        if let (Some(least), Some(most)) = (least, most) {
            sentence.push_str(&format!(
                "; the published rules differ, {:.1} to {}",
                settled_mm(least),
                in_mm(most)
            ));
            if let Some(inserted) = &self.inserted {
                let grade = asked
                    .iter()
                    .map(|(_, _, g, _)| *g)
                    .filter(|g| *g > Grade::Memory)
                    .min()
                    .unwrap_or(Grade::Memory);
                let low = decide(inserted, &Limits::at_least(least, grade)?, rule);
                let high = decide(inserted, &Limits::at_least(most, grade)?, rule);
                let outcome = if low.outcome == Outcome::NonconformityShown {
                    Outcome::NonconformityShown
                } else if high.outcome == Outcome::ConformityShown {
                    Outcome::ConformityShown
                } else {
                    Outcome::Undecided
                };
                let words = match (low.outcome, high.outcome) {
                    (Outcome::NonconformityShown, _) => "less than the least demanding rule asks",
                    (Outcome::Undecided, _) => "too close to the least demanding rule to tell",
                    (_, Outcome::ConformityShown) => "as much as the most demanding rule asks",
                    (_, Outcome::Undecided) => "too close to the most demanding rule to tell",
                    (_, Outcome::NonconformityShown) => {
                        "enough for some of the published rules and not for others"
                    }
                };
                sentence.push_str(&format!("; {} is {words}", in_mm(inserted.value())));
                findings.push(Finding {
                    outcome: Some(outcome),
                    readings: Vec::from([*inserted]),
                    decision: Some(if low.outcome == Outcome::ConformityShown {
                        high
                    } else {
                        low
                    }),
                    grade: Some(grade),
                    owner: String::from("every published rule"),
                    ..Finding::stated("insertion", words)
                });
            }
        }
        sentence.push_str(
            ". The mark on the post and the frame maker's depth win where they ask for more.",
        );
        for short in missed {
            sentence.push_str(&format!(" {short}."));
        }
        let mut said = Verdict::from_findings("seatpost insertion", findings).saying(sentence);
        if let Some((_, depth, _, row)) = ruling {
            let what = if row.code == "total_otherwise" {
                "without the weld"
            } else {
                "by the weld rule"
            };
            said = said.with(Worked::length(
                what,
                *depth,
                "larger of 90 mm and weld + 25 mm, or the rule without the weld",
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
        said.beside = beside;
        if self.makers.is_empty() {
            said = said.then(NextStep::new(
                "the mark on the post and the frame maker's depth",
                "they go before every published rule",
                "post, manual",
            ));
        }
        if self.weld.is_none() {
            said = said.then(NextStep::new(
                "from the top of the seat tube to the lower edge of the weld or lug",
                "one rule counts from there",
                "rule",
            ));
        }
        if self.inserted.is_none() {
            said = said.then(NextStep::new(
                "how deep the post is in",
                "that is what is judged",
                "rule, mark on the post",
            ));
        }
        Ok(said.minding("a short post can break the tube and hurt the rider"))
    }
}
