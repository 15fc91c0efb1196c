//! How deep a post must go in: every rule that applies, and the one that rules.

use alloc::string::String;
use alloc::vec::Vec;

use super::caution::{Caution, note};
use crate::evidence::{Grade, Text};
use crate::measure::{Decision, DecisionRule, Limits, Reading, decide, settled_cmp};
use crate::quantity::{Depth, Length, ShaftDiameter, in_mm, mm, not_negative, to_mm};
use crate::{Error, ErrorKind};

/// How a rule counts its depth.
///
/// ```
/// use framegauge::{fit::RuleDepth, mm};
/// assert_ne!(RuleDepth::Fixed(mm(65.0)), RuleDepth::BelowJunction(mm(65.0)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RuleDepth {
    /// A depth.
    Fixed(Length),
    /// A number of post diameters.
    Diameters(f64),
    /// This far below the junction of top tube and seat stays.
    BelowJunction(Length),
}

/// A published rule of minimum insertion.
#[derive(Debug, Clone, PartialEq)]
pub struct InsertionRule {
    name: Text,
    depth: RuleDepth,
    grade: Grade,
}

impl InsertionRule {
    /// A rule, whose it is in neutral words, and what it is worth.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a depth below 0 or beyond 1000 mm, or a number of diameters outside 0.5 to 10.
    ///
    /// ```
    /// use framegauge::{Grade, fit::{InsertionRule, RuleDepth}};
    /// assert!(InsertionRule::new("a frame maker's manual", RuleDepth::Diameters(2.5), Grade::Published).is_ok());
    /// assert!(InsertionRule::new("", RuleDepth::Diameters(-2.5), Grade::Shop).is_err());
    /// ```
    pub fn new(name: impl Into<Text>, depth: RuleDepth, grade: Grade) -> Result<Self, Error> {
        match depth {
            RuleDepth::Fixed(length) => {
                Depth::new(length).map_err(|e| e.within("insertion rule"))?;
            }
            RuleDepth::BelowJunction(length) => {
                if !length.value.is_finite() || length < mm(0.0) || length > mm(1000.0) {
                    return Err(Error::new(
                        ErrorKind::OutOfRange,
                        "insertion rule",
                        in_mm(length),
                        "lies outside 0 to 1000 mm",
                        "count from the junction downwards",
                    ));
                }
            }
            RuleDepth::Diameters(count) => {
                if !(0.5..=10.0).contains(&count) {
                    return Err(Error::new(
                        ErrorKind::OutOfRange,
                        "insertion rule",
                        count,
                        "a number of diameters lies between 0.5 and 10",
                        "2.5 is usual",
                    ));
                }
            }
        }
        Ok(Self {
            name: name.into(),
            depth,
            grade,
        })
    }
}

/// What one rule asks of one post.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RuledDepth {
    /// Whose rule it is.
    pub rule: Text,
    /// The depth that it asks for.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "depth_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub depth: Length,
    /// What it is worth.
    pub grade: Grade,
}

/// The depth that a post must go in.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Insertion {
    /// The largest: it rules.
    pub ruling: RuledDepth,
    /// Every rule, in the order given.
    pub each: Vec<RuledDepth>,
    /// Rules that need a dimension of the frame that was not given.
    pub not_judged: Vec<String>,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

/// Applies every rule to a post; the largest depth rules. `junction` is the depth, from the top of the seat tube, of the lower
/// edge of the junction with top tube and seat stays.
///
/// The mark on the post and the frame maker's written depth go before all of these.
///
/// # Errors
/// `Missing` for an empty list of rules, or when no rule can be applied; `OutOfRange` for a negative junction depth.
///
/// ```
/// use framegauge::{Grade, ShaftDiameter, fit::{InsertionRule, RuleDepth, insertion}, in_mm, mm};
/// let rules = [
///     InsertionRule::new("a frame maker's manual: 2.5 diameters", RuleDepth::Diameters(2.5), Grade::Published).unwrap(),
///     InsertionRule::new("the same: below the junction", RuleDepth::BelowJunction(mm(0.0)), Grade::Published).unwrap(),
/// ];
/// let post = ShaftDiameter::new(mm(30.0)).unwrap();
/// assert_eq!(in_mm(insertion(&rules, post, None).unwrap().ruling.depth).to_string(), "75.000 mm");
/// assert_eq!(in_mm(insertion(&rules, post, Some(mm(100.0))).unwrap().ruling.depth).to_string(), "100.000 mm");
/// ```
pub fn insertion(
    rules: &[InsertionRule],
    post: ShaftDiameter,
    junction: Option<Length>,
) -> Result<Insertion, Error> {
    if let Some(depth) = junction {
        Depth::new(depth).map_err(|e| e.within("junction"))?;
    }
    let mut each = Vec::new();
    let mut not_judged = Vec::new();
    for rule in rules {
        let depth = match (rule.depth, junction) {
            (RuleDepth::Fixed(depth), _) => depth,
            (RuleDepth::Diameters(count), _) => mm(to_mm(post.length()) * count),
            (RuleDepth::BelowJunction(extra), Some(junction)) => junction + extra,
            (RuleDepth::BelowJunction(_), None) => {
                not_judged.push(String::from(&*rule.name));
                continue;
            }
        };
        each.push(RuledDepth {
            rule: rule.name.clone(),
            depth,
            grade: rule.grade,
        });
    }
    let Some(ruling) = each
        .iter()
        .max_by(|a, b| settled_cmp(a.depth, b.depth))
        .cloned()
    else {
        return Err(Error::new(
            ErrorKind::Missing,
            "insertion rules",
            not_judged.join(", "),
            "no rule can be applied",
            "give the depth of the junction, or the mark on the post",
        ));
    };
    let mut cautions = alloc::vec![Caution::MakerFirst];
    if ruling.grade == Grade::Memory {
        note(&mut cautions, Caution::FromMemory);
    }
    Ok(Insertion {
        ruling,
        each,
        not_judged,
        cautions,
    })
}

impl Insertion {
    /// Whether a measured insertion is deep enough for the ruling depth.
    ///
    /// # Errors
    /// `OutOfRange` for a length below zero or above 1000 mm.
    ///
    /// ```
    /// use framegauge::{Grade, ShaftDiameter, fit::{InsertionRule, RuleDepth, insertion}, measure::{DecisionRule, Outcome}, mm};
    /// let rule = InsertionRule::new("a maker", RuleDepth::Fixed(mm(65.0)), Grade::Published).unwrap();
    /// let depth = insertion(&[rule], ShaftDiameter::new(mm(27.2)).unwrap(), None).unwrap();
    /// let held = depth.holds(&"60 +/- 1 mm".parse().unwrap(), DecisionRule::default()).unwrap();
    /// assert_eq!(held.outcome, Outcome::NonconformityShown);
    /// ```
    pub fn holds(&self, inserted: &Reading, rule: DecisionRule) -> Result<Decision, Error> {
        not_negative("inserted", inserted.value())?;
        let limits = Limits::at_least(self.ruling.depth, self.ruling.grade)?;
        Ok(decide(inserted, &limits, rule))
    }
}
