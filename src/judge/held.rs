//! Limits that somebody writes down, or that a row of the tables states: with whose they are.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Doubt, Finding, sizes_against};
use crate::Error;
use crate::evidence::{Evidence, Text};
use crate::measure::{Bound, DecisionRule, Limits, Outcome, Reading, settled_below};
use crate::quantity::Length;
use crate::read::{Context, Read, Shape, Tree, form};
use crate::standard::{Tables, figure};

form! {
    /// A figure of the tables, or of the shop's own rows.
    ///
    /// ```
    /// use framegauge::judge::FigureName;
    /// let bore = FigureName { family: "head_seat".into(), code: "ZS44".into(), field: "bore".into() };
    /// assert_eq!(bore.field, "bore");
    /// ```
    FigureName {
        /// The family, as in the tables: `head_seat`, `shell`, `shell_window`, `crown_seat`, `seatpost`, …
        family: String,
        /// Code of the row.
        code: String,
        /// Field of the row, such as `bore`.
        field: String,
    }

    /// Limits with their owner.
    ///
    /// ```
    /// use framegauge::judge::OwnedLimits;
    /// let drawing = OwnedLimits { limits: "43.95 to 44.00 mm".parse().unwrap(), owner: "the frame builder's drawing".into() };
    /// assert_eq!(drawing.limits.to_string(), "43.950 to 44.000 mm");
    /// ```
    OwnedLimits {
        /// The limits.
        limits: Limits,
        /// Whose they are.
        owner: String,
    }
}

/// Limits that are asked about: alone, or with whose they are.
///
/// ```
/// use framegauge::judge::OwnLimits;
/// let width: OwnLimits = "72.5 to 73.5 mm".parse::<framegauge::measure::Limits>().unwrap().into();
/// assert_eq!(width.owner, "your own limits");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct OwnLimits {
    /// The limits.
    pub limits: Limits,
    /// Whose they are.
    pub owner: Text,
}

impl OwnLimits {
    /// Limits with whose they are.
    ///
    /// ```
    /// use framegauge::judge::OwnLimits;
    /// let width = OwnLimits::of("at least 68 mm".parse().unwrap(), "the frame maker");
    /// assert_eq!(width.owner, "the frame maker");
    /// ```
    #[must_use]
    pub fn of(limits: Limits, owner: impl Into<Text>) -> Self {
        Self {
            limits,
            owner: owner.into(),
        }
    }

    pub(super) fn held(&self) -> Held<'static> {
        Held {
            limits: self.limits,
            owner: self.owner.clone(),
            evidence: None,
        }
    }
}

impl From<Limits> for OwnLimits {
    fn from(limits: Limits) -> Self {
        Self::of(limits, "your own limits")
    }
}

impl Read for OwnLimits {
    const SHAPE: Shape = Shape::Either(&[Limits::SHAPE, OwnedLimits::SHAPE]);

    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        match tree {
            Tree::Fields(_) => {
                OwnedLimits::read(tree, context).map(|o| Self::of(o.limits, o.owner))
            }
            _ => Limits::read(tree, context).map(Self::from),
        }
    }
}

/// Limits with whose they are and what they rest on.
#[derive(Debug, Clone)]
pub(crate) struct Held<'a> {
    pub(crate) limits: Limits,
    pub(crate) owner: Text,
    pub(crate) evidence: Option<&'a Evidence>,
}

impl Held<'_> {
    /// Readings of one size held against these limits.
    pub(super) fn against(
        &self,
        of: &'static str,
        readings: &[Reading],
        rule: Option<DecisionRule>,
    ) -> Finding {
        let rule = rule.unwrap_or_default();
        sizes_against(of, readings, &self.limits, &self.owner, self.evidence, rule)
    }
}

impl FigureName {
    /// The limits that the figure states: a window is a requirement, anything else a size. Fields of errors lie in `figure`.
    pub(crate) fn held<'a>(
        &self,
        tables: Tables<'a>,
    ) -> Result<(Limits, Text, Option<&'a Evidence>), Error> {
        let found = figure(tables, &self.family, &self.code, &self.field)
            .map_err(|e| e.within("figure"))?;
        let limits = if self.field == "window" {
            Limits::of_requirement(found)
        } else {
            Limits::of_size(found)
        };
        let owner = format!("{} {}, {}", self.family, self.code, self.field);
        Ok((limits, owner.into(), found.evidence()))
    }
}

/// The same where one figure is printed without a tolerance: within, but shown to differ from it, is not yet as printed.
pub(super) fn as_printed(mut found: Finding, reading: &Reading, printed: Length) -> Finding {
    let off = (reading.value() - printed).abs();
    if found.outcome == Some(Outcome::ConformityShown)
        && settled_below(reading.expanded_uncertainty(), off)
    {
        found.outcome = Some(Outcome::Undecided);
        found.doubt = Some(Doubt::NotPrinted);
    }
    found
}

/// Everything that is asked of a size: the asker's own limits first, then the row's.
pub(super) fn held<'a>(
    own: &[OwnLimits],
    figure: Option<&FigureName>,
    tables: Tables<'a>,
) -> Result<Vec<Held<'a>>, Error> {
    let mut all: Vec<Held<'a>> = own.iter().map(OwnLimits::held).collect();
    if let Some(name) = figure {
        let (limits, owner, evidence) = name.held(tables)?;
        all.push(Held {
            limits,
            owner,
            evidence,
        });
    }
    Ok(all)
}

/// The tightest of several limits of one size: each end from whoever asks most.
///
/// # Errors
/// `Contradiction` where no size keeps all of them.
pub(super) fn tightest(all: &[Held<'_>], field: &'static str) -> Result<Option<Limits>, Error> {
    let Some(first) = all.first() else {
        return Ok(None);
    };
    let (mut lower, mut upper) = (first.limits.lower(), first.limits.upper());
    let mut grade = first.limits.grade();
    for held in all.iter().skip(1) {
        lower = match (lower, held.limits.lower()) {
            (Bound::At(a), Bound::At(b)) => Bound::At(if settled_below(a, b) { b } else { a }),
            (Bound::Open, other) | (other, Bound::Open) => other,
            (unknown, _) => unknown,
        };
        upper = match (upper, held.limits.upper()) {
            (Bound::At(a), Bound::At(b)) => Bound::At(if settled_below(b, a) { b } else { a }),
            (Bound::Open, other) | (other, Bound::Open) => other,
            (unknown, _) => unknown,
        };
        grade = grade.weaker(held.limits.grade());
    }
    Limits::new(lower, upper, grade)
        .map(Some)
        .map_err(|e| e.named(field))
}
