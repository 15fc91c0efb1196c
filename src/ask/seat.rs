//! `seatpost_for_tube`, `insertion` and `shim`: what goes into a seat tube, and how deep.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::mate::{SizeAt, windows_of_joint};
use super::said::{bare, named, said_of};
use super::told::answer;
use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::{
    Caution, Conformance, Fit, HoleMember, Insertion, InsertionRule as Rule, Out, RuleDepth,
    ShaftMember, SizeReading, Wanted, fit_between, insertion,
};
use crate::measure::{Decision, DecisionRule, Limits, Outcome, Reading};
use crate::quantity::{Length, ShaftDiameter, mm, settled_mm};
use crate::read::{Shape, form};
use crate::standard::{InsertionRule, Seatpost};
use crate::{Error, ErrorKind, Figure, Grade};

const JOINT: &str = "seatpost in seat tube";

told! {
    Conformance => Shape::Report { what: "wanted, outcome, why, conformance_probability, tightest, loosest, out, cure, grade, cautions" },
    Insertion => Shape::Report { what: "ruling, each, not_judged, cautions" },
}

fn tube(bore: &[SizeAt]) -> Result<HoleMember, Error> {
    let sizes: Vec<SizeReading> = bore.iter().map(|at| at.0).collect();
    HoleMember::measured_only(&sizes).map_err(|e| named(&e, "bore"))
}

/// The window that was asked about, or every published one for a post in a tube.
fn wanted(
    context: &Context<'_>,
    clearance: Option<Limits>,
    basis: Basis,
) -> Result<(Vec<Wanted>, Basis), Error> {
    match clearance {
        Some(limits) => Ok((
            alloc::vec![Wanted::clearance(limits, "your own window")],
            basis.at_best(Some(limits.grade())),
        )),
        None => windows_of_joint(context, JOINT, basis),
    }
}

form! {
    /// `seatpost_for_tube`: which listed seatposts go into this tube.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"seatpost_for_tube","bore":["27.24 +/- 0.02 mm"],"clearance":"0 mm to 0.1 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["posts"][0]["code"], "27.2");
    /// ```
    SeatpostForTube {
        /// Bore of the tube, paint off.
        bore: Vec<SizeAt>,
        /// Clearance that is wanted; every published window unless stated. No clearance is published for all posts.
        clearance: Option<Limits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// How one post stands to one window.
    PostVerdict {
        /// Whose window it is.
        owner: crate::evidence::Text,
        /// What is shown.
        outcome: Outcome,
        /// Probability that it conforms.
        conformance_probability: Option<f64>,
    }
}

answer! {
    /// A listed post of exactly its nominal size in this tube.
    PostInTube {
        /// Code of the row.
        code: crate::evidence::Text,
        /// Its nominal diameter.
        diameter_mm: f64,
        /// Clearance at the tightest place.
        tightest_mm: f64,
        /// Clearance at the loosest place.
        loosest_mm: f64,
        /// One verdict a window.
        windows: Vec<PostVerdict>,
    }
}

answer! {
    /// Which posts go in.
    SeatpostAnswer {
        /// Posts that at least one window does not rule out, largest first.
        posts: Vec<PostInTube>,
        /// How the tube was taken.
        words: String,
    }
}

impl Ask for SeatpostForTube {
    type Answer = SeatpostAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let hole = tube(&self.bore)?;
        let basis = Basis::graded(Grade::Standard)
            .by("tube less post of exactly its nominal size, on diameter");
        let (windows, mut basis) = wanted(context, self.clearance, basis)?;
        let mut posts = Vec::new();
        for row in context.tables.all::<Seatpost>() {
            let Ok(post) = ShaftMember::of_figure(&row.diameter) else {
                continue;
            };
            let fit = fit_between(&hole, &post, self.rule.unwrap_or_default())
                .map_err(|e| said_of(&e, &[], "bore"))?;
            let held = fit
                .against_each(&windows)
                .map_err(|e| said_of(&e, &[], "clearance"))?;
            if held
                .each
                .iter()
                .all(|c| c.outcome == Outcome::NonconformityShown)
            {
                continue;
            }
            if let Some(evidence) = row.diameter.evidence() {
                basis = basis
                    .at_best(Some(evidence.worth()))
                    .citing(evidence.sources());
            }
            posts.push(PostInTube {
                code: row.code.clone(),
                diameter_mm: row.diameter.nominal().map(settled_mm).unwrap_or_default(),
                tightest_mm: settled_mm(fit.tightest().value()),
                loosest_mm: settled_mm(fit.loosest().value()),
                windows: held
                    .each
                    .into_iter()
                    .map(|c| PostVerdict {
                        owner: c.wanted.owner,
                        outcome: c.outcome,
                        conformance_probability: c.probability,
                    })
                    .collect(),
            });
        }
        posts.sort_by(|a, b| b.diameter_mm.total_cmp(&a.diameter_mm));
        Ok(Answered {
            answer: SeatpostAnswer {
                posts,
                words: String::from(
                    "a post is taken at its nominal size: measure yours, and try it dry before the clamp closes",
                ),
            },
            basis,
        })
    }
}

form! {
    /// A depth that somebody writes.
    ///
    /// ```
    /// use framegauge::{ask::WrittenDepth, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"owner":"the frame maker","depth":"100 mm"}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<WrittenDepth>(\&tree, framegauge::standard::Tables::ours()).unwrap().owner, "the frame maker");
    /// ```
    WrittenDepth {
        /// Whose it is.
        owner: String,
        /// The depth.
        depth: Length,
    }
}

form! {
    /// `insertion`: how deep a post must go in. The largest of the rules decides.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, Insert}, mm};
    /// let question = Insert { post: mm(27.2), junction: None, rules: vec![], written: vec![], inserted: None, rule: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.depth_mm, 90.0);
    /// ```
    Insert {
        /// Diameter of the post.
        post: Length,
        /// Depth of the lower edge of the junction with top tube and seat stays, from the top of the seat tube.
        junction: Option<Length>,
        /// Codes of the rules that apply. Unless stated: `mark_two_diameters`, `bicycle_maker_2_5_diameters`, `below_junction`, `below_top_tube_weld` and `total_with_weld_rule`.
        rules: Vec<String>,
        /// Depths that frame or post maker write. They go first.
        written: Vec<WrittenDepth>,
        /// How deep the post sits, to be held against the ruling depth.
        inserted: Option<Reading>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// How deep a post must go in.
    InsertAnswer {
        /// The ruling depth.
        depth_mm: f64,
        /// Every rule, and the one that rules.
        insertion: Insertion,
        /// The post as it sits held against it.
        decision: Option<Decision>,
    }
}

const USUAL_RULES: [&str; 5] = [
    "mark_two_diameters",
    "bicycle_maker_2_5_diameters",
    "below_junction",
    "below_top_tube_weld",
    "total_with_weld_rule",
];

/// The rule of a row, and what it is worth.
fn rule_of(row: &InsertionRule) -> Option<Result<Rule, Error>> {
    let below = row.code.starts_with("below_");
    let least = |figure: &Figure<Length>| figure.lower().or_else(|| figure.nominal());
    let depth = match (row.depth.as_ref().and_then(least), &row.times_diameter) {
        // The figure of this row is what the whole insertion can come to, not a distance below the junction.
        (Some(_), _) if row.code == "below_junction" => RuleDepth::BelowJunction(mm(0.0)),
        (Some(depth), _) if below => RuleDepth::BelowJunction(depth),
        (Some(depth), _) => RuleDepth::Fixed(depth),
        (None, Some(times)) => RuleDepth::Diameters(times.lower().or_else(|| times.nominal())?.0),
        (None, None) => return None,
    };
    let grade = evidence_of(row).map_or(Grade::Memory, crate::Evidence::worth);
    Some(Rule::new(row.what.clone(), depth, grade))
}

fn evidence_of(row: &InsertionRule) -> Option<&crate::Evidence> {
    row.depth
        .as_ref()
        .and_then(Figure::evidence)
        .or_else(|| row.times_diameter.as_ref().and_then(Figure::evidence))
}

impl Ask for Insert {
    type Answer = InsertAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let post = ShaftDiameter::new(self.post).map_err(|e| named(&e, "post"))?;
        let mut basis = Basis::graded(Grade::Standard)
            .by("the largest of the depths that the rules ask for")
            .noting("the mark on the post and the frame maker's written depth go before every general rule");
        let mut rules = Vec::new();
        let asked: Vec<&str> = if self.rules.is_empty() {
            USUAL_RULES.to_vec()
        } else {
            self.rules.iter().map(String::as_str).collect()
        };
        for (index, code) in asked.into_iter().enumerate() {
            let here = |e: Error| bare(&e).within(&format!("rules[{index}]"));
            let row = context.tables.find::<InsertionRule>(code).map_err(here)?;
            let rule = rule_of(row).ok_or_else(|| {
                here(Error::new(
                    ErrorKind::NotTabulated,
                    "",
                    code,
                    "this rule states no depth",
                    "take the depth from the maker and give it under `written`",
                ))
            })?;
            rules.push(rule.map_err(here)?);
            if let Some(evidence) = evidence_of(row) {
                basis = basis
                    .at_best(Some(evidence.worth()))
                    .citing(evidence.sources());
            }
        }
        for (index, written) in self.written.iter().enumerate() {
            let rule = Rule::new(
                written.owner.clone(),
                RuleDepth::Fixed(written.depth),
                Grade::Shop,
            )
            .map_err(|e| named(&e, format!("written[{index}].depth")))?;
            rules.push(rule);
        }
        let found = insertion(&rules, post, self.junction)
            .map_err(|e| said_of(&e, &[("junction", "junction")], "rules"))?;
        let grade = Some(found.ruling.grade);
        let decision = self
            .inserted
            .map(|inserted| found.holds(&inserted, self.rule.unwrap_or_default()))
            .transpose()
            .map_err(|e| said_of(&e, &[], "inserted"))?;
        Ok(Answered {
            answer: InsertAnswer {
                depth_mm: settled_mm(found.ruling.depth),
                insertion: found,
                decision,
            },
            basis: basis.at_best(grade),
        })
    }
}

form! {
    /// `shim`: does a shim help this post in this tube, and which wall does it need?
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"shim","bore":["27.40 +/- 0.02 mm"],"post":["27.00 +/- 0.02 mm"],"nominal":"27.2 mm",
    ///         "clearance":"0 mm to 0.1 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["shim_wall_mm"], 0.2); // half the difference
    /// ```
    Shim {
        /// Bore of the tube.
        bore: Vec<SizeAt>,
        /// Outside of the post.
        post: Vec<SizeAt>,
        /// Nominal size that both are sold for.
        nominal: Option<Length>,
        /// Clearance that is wanted. No clearance is published for all posts.
        clearance: Limits,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// The shim.
    ShimAnswer {
        /// Wall of the shim, half the difference of the diameters; null where none helps.
        shim_wall_mm: Option<f64>,
        /// Whether the post as it is goes in as wanted.
        outcome: Outcome,
        /// Clearance at the tightest place.
        tightest_mm: f64,
        /// Clearance at the loosest place.
        loosest_mm: f64,
        /// Which of the two is off.
        out: Out,
        /// The fit held against the window, with what else would cure it.
        held: Conformance,
        /// Warnings.
        cautions: Vec<Caution>,
    }
}

impl Shim {
    fn fit(&self) -> Result<Fit, Error> {
        let mut hole = tube(&self.bore)?;
        if let Some(nominal) = self.nominal {
            hole = hole
                .with_nominal(nominal)
                .map_err(|e| named(&e, "nominal"))?;
        }
        let sizes: Vec<SizeReading> = self.post.iter().map(|at| at.0).collect();
        let post = ShaftMember::measured_only(&sizes).map_err(|e| named(&e, "post"))?;
        fit_between(&hole, &post, self.rule.unwrap_or_default())
            .map_err(|e| said_of(&e, &[], "bore"))
    }
}

impl Ask for Shim {
    type Answer = ShimAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let fit = self.fit()?;
        let held = fit
            .against(&Wanted::clearance(self.clearance, ""))
            .map_err(|e| said_of(&e, &[], "clearance"))?;
        let mut cautions = alloc::vec![Caution::MakerFirst];
        for caution in &held.cautions {
            if !cautions.contains(caution) {
                cautions.push(*caution);
            }
        }
        Ok(Answered {
            answer: ShimAnswer {
                shim_wall_mm: held.cure.shim_wall().map(|wall| settled_mm(wall.length())),
                outcome: held.outcome,
                tightest_mm: settled_mm(fit.tightest().value()),
                loosest_mm: settled_mm(fit.loosest().value()),
                out: held.out,
                cautions,
                held,
            },
            basis: Basis::graded(Grade::Shop).by("wall = (tube - post) / 2 at the tightest place"),
        })
    }
}
