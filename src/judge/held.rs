//! Limits that somebody writes down, or that a row of the tables states: with whose they are.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Doubt, Finding, sizes_against};
use crate::Error;
use crate::evidence::{Evidence, Figure, Text};
use crate::measure::{Bound, DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
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
        Held::own(self.limits, self.owner.clone())
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

impl<'a> Held<'a> {
    /// What somebody wants, printed nowhere.
    pub(crate) fn own(limits: Limits, owner: impl Into<Text>) -> Self {
        Self {
            limits,
            owner: owner.into(),
            evidence: None,
        }
    }

    /// What a row of the tables asks.
    pub(crate) fn of_row(window: &'a Figure<Length>, owner: impl Into<Text>) -> Self {
        Self {
            evidence: window.evidence(),
            ..Self::own(Limits::of_requirement(window), owner)
        }
    }

    /// Readings of one size held against these limits.
    pub(crate) fn against(
        &self,
        of: impl Into<Text>,
        readings: &[Reading],
        rule: impl Into<Option<DecisionRule>>,
    ) -> Finding {
        let rule = rule.into().unwrap_or_default();
        sizes_against(of, readings, &self.limits, &self.owner, self.evidence, rule)
    }
}

impl FigureName {
    /// The limits that the figure states: a window is a requirement, anything else a size. Fields of errors lie in `figure`.
    pub(super) fn held<'a>(&self, tables: Tables<'a>) -> Result<Held<'a>, Error> {
        let found = figure(tables, &self.family, &self.code, &self.field);
        let found = found.map_err(|e| e.within("figure"))?;
        Ok(Held {
            limits: if self.field == "window" {
                Limits::of_requirement(found)
            } else {
                Limits::of_size(found)
            },
            owner: format!("{} {}, {}", self.family, self.code, self.field).into(),
            evidence: found.evidence(),
        })
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
    let own = own.iter().map(|own| Ok(own.held()));
    own.chain(figure.map(|name| name.held(tables))).collect()
}

/// The tightest of several limits of one size: each end from whoever asks most.
///
/// # Errors
/// `Contradiction` where no size keeps all of them.
pub(super) fn tightest(all: &[Held<'_>], field: &'static str) -> Result<Option<Limits>, Error> {
    let tightest = both_ends(all.iter().map(|held| held.limits), true);
    tightest.transpose().map_err(|e| e.named(field))
}

/// The limits that keep all of these, or what any of them keeps; a side that nobody prints wins over one that is printed.
pub(super) fn both_ends(
    limits: impl Iterator<Item = Limits>,
    all: bool,
) -> Option<Result<Limits, Error>> {
    let end = |a: Bound, b: Bound, larger: bool| match (a, b) {
        (Bound::At(x), Bound::At(y)) if settled_cmp(x, y).is_gt() == larger => a,
        (Bound::At(_), Bound::At(_)) => b,
        (Bound::Open, other) | (other, Bound::Open) if all => other,
        (Bound::At(_), open) | (open, _) => open,
    };
    let ends = limits.map(|l| (l.lower(), l.upper(), l.grade()));
    let (lower, upper, grade) = ends.reduce(|a, b| {
        let (lower, upper) = (end(a.0, b.0, all), end(a.1, b.1, !all));
        (lower, upper, a.2.weaker(b.2))
    })?;
    Some(Limits::new(lower, upper, grade))
}
