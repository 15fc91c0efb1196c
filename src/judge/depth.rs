//! Deep or long enough? Cups in bores, posts in tubes, spindles and shells, bolts through mounts.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::room_below;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, ShaftDiameter, in_mm, mm, settled_mm, to_mm};
use crate::standard::{BrakeFigure, FlatMountBolt, InsertionRule, Row, ShellWindow, find};

/// A cup in its bore: bore depth less insertion. What is missing is how far the cup stands proud.
///
/// ```
/// use framegauge::{judge::cup_depth, measure::DecisionRule};
/// let said = cup_depth(&"9.0 +/- 0.1 mm".parse().unwrap(), &"12.0 +/- 0.1 mm".parse().unwrap(), DecisionRule::default());
/// assert!(said.sentence.contains("3.000 mm proud"));
/// ```
#[must_use]
pub fn cup_depth(bore_depth: &Reading, insertion: &Reading, rule: DecisionRule) -> Verdict {
    let wanted = Limits::from_table(
        crate::measure::Bound::At(NOTHING),
        crate::measure::Bound::Open,
        Grade::CommonPractice,
    );
    let room = room_below(bore_depth, insertion, wanted, rule);
    let short = -room.length.value();
    let found = Finding {
        outcome: Some(room.decision.outcome),
        readings: Vec::from([room.length]),
        limits: Some(wanted),
        decision: Some(room.decision),
        owner: String::from("reamed depth must be at least the insertion"),
        grade: Some(Grade::CommonPractice),
        ..Finding::stated(
            "room below the cup",
            format!(
                "bore {} deep, cup {} long: {}",
                in_mm(bore_depth.value()),
                in_mm(insertion.value()),
                in_mm(room.length.value())
            ),
        )
    };
    let said = Verdict::from_findings("cup in bore", Vec::from([found]));
    match said.outcome {
        Outcome::NonconformityShown => said
            .saying(format!(
                "The cup bottoms and stands {} proud: no go. Deepen the bore by that much if the wall below allows it, or shorten the cup, which leaves less length to press.",
                in_mm(short)
            ))
            .with(Worked::length("stands proud", short, "insertion less bore depth"))
            .then(NextStep::new("the inside below the bore, and the wall there", "deepening needs wall to cut in, and a shoulder to stop at", "caliper, wall gauge"))
            .minding("cutting cannot be undone; a shortened cup needs a new chamfer and its maker's consent"),
        Outcome::ConformityShown => said
            .saying(format!("The cup seats with {} to spare.", in_mm(room.length.value())))
            .with(Worked::length("room below", room.length.value(), "bore depth less insertion")),
        Outcome::Undecided => said
            .saying("Too close to tell: the cup may bottom before it seats.")
            .with(Worked::length("room below", room.length.value(), "bore depth less insertion"))
            .then(NextStep::new("bore depth at four places and the length of the cup below its flange", "the shallowest place decides", "depth caliper")),
    }
}

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
                    let weld = size("weld", weld)? + below;
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
        let mut findings = Vec::new();
        let mut beside = Vec::new();
        let rule = DecisionRule::default();
        for (owner, depth) in &self.makers {
            let depth = size("maker's depth", *depth)?;
            let limits = Limits::at_least(depth, Grade::Shop)?;
            let readings: Vec<Reading> = self.inserted.into_iter().collect();
            findings.push(sizes_against(
                "maker's depth",
                &readings,
                &limits,
                owner,
                None,
                rule,
            ));
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
                    grade: Some(*grade),
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
                let words = match outcome {
                    Outcome::NonconformityShown => "less than the least demanding rule asks",
                    Outcome::ConformityShown => "as much as the most demanding rule asks",
                    Outcome::Undecided => {
                        "enough for some of the published rules and not for others"
                    }
                };
                sentence.push_str(&format!("; {} is {words}", in_mm(inserted.value())));
                findings.push(Finding {
                    outcome: Some(outcome),
                    readings: Vec::from([*inserted]),
                    decision: Some(if outcome == low.outcome { low } else { high }),
                    grade: Some(grade),
                    owner: String::from("every published rule"),
                    ..Finding::stated("insertion", words)
                });
            }
        }
        sentence.push_str(
            ". The mark on the post and the frame maker's depth win where they ask for more.",
        );
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

/// A spindle or unit made for one shell width in a shell of another, against every window that a crank or frame maker prints
/// for the width it was made for.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for widths that are none.
///
/// ```
/// use framegauge::{judge::spindle_for_width, measure::Outcome, mm};
/// let said = spindle_for_width(&"71 +/- 0.1 mm".parse().unwrap(), mm(68.0)).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("spindle short by"), Some(3.0));
/// ```
pub fn spindle_for_width(shell: &Reading, made_for: Length) -> Result<Verdict, Error> {
    size_reading("shell width", shell)?;
    let made_for = size("width it was made for", made_for)?;
    let short = shell.value() - made_for;
    let mut findings: Vec<Finding> = Vec::new();
    let mut outer: Option<(Length, Length, Grade)> = None;
    for row in ShellWindow::table() {
        let same = row
            .nominal
            .nominal()
            .is_some_and(|n| settled_cmp(n, made_for).is_eq());
        let (Some(low), Some(high), true) = (row.window.lower(), row.window.upper(), same) else {
            continue;
        };
        let grade = row.window.grade().unwrap_or(Grade::Shop);
        findings.push(sizes_against(
            row.code.clone(),
            &[*shell],
            &Limits::of_size(&row.window),
            &row.owner,
            row.window.evidence(),
            DecisionRule::default(),
        ));
        outer = Some(outer.map_or((low, high, grade), |(l, h, g)| {
            (
                if settled_cmp(low, l).is_lt() { low } else { l },
                if settled_cmp(high, h).is_gt() {
                    high
                } else {
                    h
                },
                g.weaker(grade),
            )
        }));
    }
    let way = if settled_cmp(short, NOTHING).is_ge() {
        "short"
    } else {
        "long"
    };
    let mut sentence = format!(
        "Made for {}, the shell is {}: {} too {way}",
        in_mm(made_for),
        in_mm(shell.value()),
        in_mm(short.abs())
    );
    let deciding = match outer {
        Some((low, high, grade)) => {
            let limits = Limits::between(low, high, grade)?;
            let found = sizes_against(
                "shell width",
                &[*shell],
                &limits,
                "the widest window that any maker prints for this width",
                None,
                DecisionRule::default(),
            );
            sentence.push_str(match found.outcome {
                Some(Outcome::NonconformityShown) => ", outside every window that a maker prints for that width; the cup would end inside the shell or stand out of it. Take a spindle for this width, and keep the cups that fit the thread.",
                Some(Outcome::ConformityShown) => ", inside a window that a maker prints.",
                _ => "; too close to a window's edge to tell.",
            });
            Vec::from([found])
        }
        None => {
            sentence.push_str("; no window is published for that width, so nothing is shown. A whole width out is felt at once: the cup face falls below or stands above the shell face.");
            Vec::from([Finding {
                outcome: Some(Outcome::Undecided),
                ..Finding::stated(
                    "shell width",
                    "no window is published for the width it was made for",
                )
            }])
        }
    };
    let mut said = Verdict::from_findings("spindle in shell", deciding)
        .saying(sentence)
        .with(Worked::length(
            "spindle short by",
            short,
            "shell width less the width it was made for",
        ));
    said.beside = findings;
    if said.outcome == Outcome::Undecided {
        said = said.then(NextStep::new(
            "the maker's width window for this unit",
            "the window belongs to the crank, not to the shell",
            "maker's instructions",
        ));
    }
    Ok(said)
}

/// A bolt through a flat mount. The tables print the bolt for a thickness; between them its length less the thickness must be
/// what the tables share (13 mm).
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none.
///
/// ```
/// use framegauge::{judge::flat_mount_bolt, measure::Outcome, mm};
/// let said = flat_mount_bolt(&"20.0 +/- 0.1 mm".parse().unwrap(), Some(mm(38.0))).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown); // bottoms in the blind hole
/// assert_eq!(said.millimetres("bolt length"), Some(33.0));
/// ```
pub fn flat_mount_bolt(thickness: &Reading, bolt: Option<Length>) -> Result<Verdict, Error> {
    size_reading("mount thickness", thickness)?;
    let protrusion = find::<BrakeFigure>("fm_bolt_protrusion")?;
    let Some(stands_out) = protrusion.figure.as_ref().and_then(crate::Figure::nominal) else {
        return Err(Error::new(
            crate::ErrorKind::NotTabulated,
            "bolt",
            "",
            "no length is published",
            "ask the caliper maker",
        ));
    };
    let evidence = protrusion.figure.as_ref().and_then(crate::Figure::evidence);
    let grade = evidence.map_or(Grade::Memory, |e| e.worth());
    let ideal = thickness.value() + stands_out;
    let row = FlatMountBolt::table()
        .iter()
        .filter_map(|r| Some((r.frame_thickness.nominal()?, r.bolt_length.nominal()?)))
        .min_by(|a, b| {
            settled_cmp(
                (a.0 - thickness.value()).abs(),
                (b.0 - thickness.value()).abs(),
            )
        });
    let mut sentence = format!(
        "A mount of {} takes a bolt of {}: thickness and {}",
        in_mm(thickness.value()),
        in_mm(ideal),
        in_mm(stands_out)
    );
    let mut worked = Vec::from([Worked::length(
        "ideal length",
        ideal,
        "thickness + what the tables let stand out",
    )]);
    if let Some((at, length)) = row {
        sentence.push_str(&format!(
            "; the nearest listed is {} for {}",
            in_mm(length),
            in_mm(at)
        ));
        worked.push(Worked::length(
            "bolt length",
            length,
            "listed for the nearest thickness",
        ));
    }
    let mut findings = Vec::new();
    if let Some(bolt) = bolt {
        let bolt = size("bolt", bolt)?;
        let out = thickness.scaled(-1.0).shifted(bolt);
        worked.push(Worked::length(
            "stands out",
            out.value(),
            "bolt less thickness",
        ));
        // Bolts step by 5 mm: beyond half a step another one is nearer.
        let limits = Limits::between(
            stands_out - mm(2.5),
            stands_out + mm(2.5),
            grade.weaker(Grade::Derived),
        )?;
        let mut found = sizes_against(
            "bolt through mount",
            &[out],
            &limits,
            "within half a step of what the tables let stand out",
            evidence,
            DecisionRule::default(),
        );
        if found.outcome == Some(Outcome::ConformityShown)
            && settled_cmp(
                (out.value() - stands_out).abs(),
                thickness.expanded_uncertainty(),
            )
            .is_gt()
        {
            found.outcome = Some(Outcome::Undecided);
            found
                .words
                .push_str("; but not what the tables print, and no tolerance is published");
        }
        sentence.push_str(match found.outcome {
            Some(Outcome::NonconformityShown) if settled_cmp(out.value(), stands_out).is_gt() => ". The one at hand is too long: it bottoms in the blind hole and feels tight without clamping",
            Some(Outcome::NonconformityShown) => ". The one at hand is too short: too little thread",
            Some(Outcome::ConformityShown) => ". The one at hand is right",
            _ => ". For the one at hand no tolerance is published",
        });
        findings.push(found);
    }
    sentence.push('.');
    let mut said = Verdict::from_findings("flat-mount bolt", findings).saying(sentence);
    said.worked = worked;
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
