//! Limits that somebody writes down, or that a row of the tables states: with whose they are.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::Error;
use crate::evidence::{Evidence, Text};
use crate::measure::{Bound, Limits, settled_cmp};
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
pub(super) struct Held<'a> {
    pub(super) limits: Limits,
    pub(super) owner: Text,
    pub(super) evidence: Option<&'a Evidence>,
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

/// Everything that is asked of a size: the asker's own limits first, then the row's.
pub(super) fn held<'a>(
    own: &[OwnLimits],
    figure: Option<&FigureName>,
    tables: Tables<'a>,
) -> Result<Vec<Held<'a>>, Error> {
    let own = own.iter().map(|own| Held {
        limits: own.limits,
        owner: own.owner.clone(),
        evidence: None,
    });
    let mut all: Vec<Held<'a>> = own.collect();
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
    let end = |pick: fn(&Limits) -> Bound, larger: bool| {
        let ends = all.iter().map(|held| pick(&held.limits));
        ends.reduce(|a, b| match (a, b) {
            (Bound::At(x), Bound::At(y)) if settled_cmp(x, y).is_gt() == larger => a,
            (Bound::At(_), Bound::At(_)) => b,
            (Bound::Open, other) | (other, Bound::Open) => other,
            (unknown, _) => unknown,
        })
    };
    let grade = all.iter().map(|held| held.limits.grade()).min();
    let (Some(lower), Some(upper), Some(grade)) =
        (end(Limits::lower, true), end(Limits::upper, false), grade)
    else {
        return Ok(None);
    };
    let tightest = Limits::new(lower, upper, grade).map_err(|e| e.named(field))?;
    Ok(Some(tightest))
}
