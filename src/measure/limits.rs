//! Limits and the settled comparison: values are settled to whole nanometres before they meet a limit, because in
//! binary a gap of 34.85 - 34.80 mm is larger than 0.05 mm.

use core::cmp::Ordering;

use crate::evidence::{Figure, Grade};
use crate::quantity::{Length, in_mm, nanometres};
use crate::{Error, ErrorKind};

/// Compares two lengths settled to whole nanometres. NaN compares as greater than everything, so it passes no upper limit.
///
/// ```
/// use core::cmp::Ordering;
/// use framegauge::{measure::settled_cmp, mm};
/// assert_eq!(settled_cmp(mm(34.85) - mm(34.80), mm(0.05)), Ordering::Equal);
/// ```
#[must_use]
pub fn settled_cmp(a: Length, b: Length) -> Ordering {
    match (nanometres(a), nanometres(b)) {
        (Some(a), Some(b)) => a.cmp(&b),
        _ => a.value.partial_cmp(&b.value).unwrap_or(Ordering::Greater),
    }
}

/// Whether `a` lies below `b`, settled. NaN lies below nothing.
///
/// ```
/// use framegauge::{measure::settled_below, mm};
/// assert!(!settled_below(mm(0.05), mm(34.85) - mm(34.80)));
/// ```
#[must_use]
pub fn settled_below(a: Length, b: Length) -> bool {
    settled_cmp(a, b) == Ordering::Less
}

/// One side of a pair of limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// The limit.
    At(Length),
    /// There is no limit on this side, by the nature of the requirement.
    Open,
    /// There is a limit, but it is not known. Conformity can then never be shown.
    Unknown,
}

impl Bound {
    /// The limit, where there is one and it is known.
    #[must_use]
    pub const fn known(self) -> Option<Length> {
        match self {
            Self::At(limit) => Some(limit),
            Self::Open | Self::Unknown => None,
        }
    }
}

/// Lower and upper limit of a size, with the worth of the weakest of them.
///
/// ```
/// use framegauge::{Grade, measure::Limits, mm};
/// let bore = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
/// assert!(bore.admits(mm(43.95)) && bore.admits(mm(44.0)) && !bore.admits(mm(44.001)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    lower: Bound,
    upper: Bound,
    grade: Grade,
}

impl Limits {
    /// Limits from two bounds.
    ///
    /// # Errors
    /// `NotFinite` for a bound that is NaN or infinite; `Contradiction` when the lower lies above the upper.
    ///
    /// ```
    /// use framegauge::{ErrorKind, Grade, measure::{Bound, Limits}, mm};
    /// let deep = Limits::new(Bound::At(mm(12.5)), Bound::Unknown, Grade::Published).unwrap();
    /// assert!(deep.has_unknown());
    /// let swapped = Limits::new(Bound::At(mm(44.0)), Bound::At(mm(43.95)), Grade::Published);
    /// assert_eq!(swapped.unwrap_err().kind(), ErrorKind::Contradiction);
    /// ```
    pub fn new(lower: Bound, upper: Bound, grade: Grade) -> Result<Self, Error> {
        for bound in [lower, upper] {
            if let Bound::At(limit) = bound
                && !limit.value.is_finite()
            {
                return Err(Error::new(
                    ErrorKind::NotFinite,
                    "limit",
                    limit.value,
                    "a limit must be finite",
                    "leave an unknown limit out",
                ));
            }
        }
        if let (Bound::At(low), Bound::At(high)) = (lower, upper)
            && settled_cmp(low, high) == Ordering::Greater
        {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "limits",
                alloc::format!("{} to {}", in_mm(low), in_mm(high)),
                "the lower limit lies above the upper limit",
                "swap them or read them again",
            ));
        }
        Ok(Self {
            lower,
            upper,
            grade,
        })
    }

    /// For limits that come from whole numbers of a table and are in order by construction: no check, no cost.
    pub(crate) const fn from_table(lower: Bound, upper: Bound, grade: Grade) -> Self {
        Self {
            lower,
            upper,
            grade,
        }
    }

    /// Both limits known.
    ///
    /// # Errors
    /// As [`Limits::new`].
    pub fn between(lower: Length, upper: Length, grade: Grade) -> Result<Self, Error> {
        Self::new(Bound::At(lower), Bound::At(upper), grade)
    }

    /// Only a lower limit by nature, as "at least 12.5 mm deep".
    ///
    /// # Errors
    /// As [`Limits::new`].
    pub fn at_least(lower: Length, grade: Grade) -> Result<Self, Error> {
        Self::new(Bound::At(lower), Bound::Open, grade)
    }

    /// Only an upper limit by nature, as "at most 0.10 mm of interference".
    ///
    /// # Errors
    /// As [`Limits::new`].
    pub fn at_most(upper: Length, grade: Grade) -> Result<Self, Error> {
        Self::new(Bound::Open, Bound::At(upper), grade)
    }

    /// The limits of a figure of size: a side that the figure does not state is unknown.
    ///
    /// ```
    /// use framegauge::{Evidence, Figure, Span, measure::{Bound, Limits}, mm};
    /// let seat = Figure::known(Span::new(None, Some(mm(41.95)), None).unwrap(), Evidence::shop("drawing"));
    /// assert_eq!(Limits::of_size(&seat).upper(), Bound::Unknown);
    /// assert_eq!(Limits::of_requirement(&seat).upper(), Bound::Open);
    /// ```
    #[must_use]
    pub fn of_size(figure: &Figure) -> Self {
        Self::of(figure, Bound::Unknown)
    }

    /// The limits of a one-sided requirement: a side that the figure does not state is open. A figure that states
    /// no limit at all is unknown on both sides.
    #[must_use]
    pub fn of_requirement(figure: &Figure) -> Self {
        let stated = figure.lower().is_some() || figure.upper().is_some();
        Self::of(figure, if stated { Bound::Open } else { Bound::Unknown })
    }

    fn of(figure: &Figure, missing: Bound) -> Self {
        Self {
            lower: figure.lower().map_or(missing, Bound::At),
            upper: figure.upper().map_or(missing, Bound::At),
            grade: figure.grade().unwrap_or(Grade::Shop),
        }
    }

    /// Limits that admit whatever either of two admits.
    pub(crate) fn wider(&self, other: &Self) -> Result<Self, Error> {
        let end = |one: Bound, two: Bound, further: fn(Length, Length) -> bool| match (one, two) {
            (Bound::At(a), Bound::At(b)) => Bound::At(if further(a, b) { a } else { b }),
            (Bound::Open, _) | (_, Bound::Open) => Bound::Open,
            (unknown, Bound::At(_)) | (_, unknown) => unknown,
        };
        Self::new(
            end(self.lower, other.lower, settled_below),
            end(self.upper, other.upper, |a, b| settled_below(b, a)),
            self.grade.weaker(other.grade),
        )
    }

    /// The lower bound.
    #[must_use]
    pub const fn lower(&self) -> Bound {
        self.lower
    }
    /// The upper bound.
    #[must_use]
    pub const fn upper(&self) -> Bound {
        self.upper
    }
    /// What the weakest of the limits is worth.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }
    /// Upper less lower, where both are known.
    #[must_use]
    pub fn width(&self) -> Option<Length> {
        Some(self.upper.known()? - self.lower.known()?)
    }
    /// Whether a side is unknown.
    #[must_use]
    pub fn has_unknown(&self) -> bool {
        self.lower == Bound::Unknown || self.upper == Bound::Unknown
    }

    /// Whether an exact value lies on or inside the known limits.
    #[must_use]
    pub fn admits(&self, value: Length) -> bool {
        self.lower
            .known()
            .is_none_or(|low| settled_cmp(value, low) != Ordering::Less)
            && self
                .upper
                .known()
                .is_none_or(|high| settled_cmp(value, high) != Ordering::Greater)
    }

    /// Signed distance to the nearest known limit: positive inside, negative outside; `None` when no limit is known.
    ///
    /// ```
    /// use framegauge::{Grade, in_mm, measure::Limits, mm};
    /// let bore = Limits::between(mm(45.95), mm(46.0), Grade::Published).unwrap();
    /// assert_eq!(in_mm(bore.margin(mm(45.80)).unwrap()).to_string(), "-0.150 mm");
    /// ```
    #[must_use]
    pub fn margin(&self, value: Length) -> Option<Length> {
        let below = self.lower.known().map(|low| value - low);
        let above = self.upper.known().map(|high| high - value);
        match (below, above) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (one, other) => one.or(other),
        }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Limits {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let words = |bound: Bound| match bound {
            Bound::At(_) => "stated",
            Bound::Open => "none",
            Bound::Unknown => "unknown",
        };
        let mut out = serializer.serialize_struct("Limits", 5)?;
        out.serialize_field(
            "lower_mm",
            &self.lower.known().map(crate::quantity::settled_mm),
        )?;
        out.serialize_field("lower", words(self.lower))?;
        out.serialize_field(
            "upper_mm",
            &self.upper.known().map(crate::quantity::settled_mm),
        )?;
        out.serialize_field("upper", words(self.upper))?;
        out.serialize_field("grade", &self.grade)?;
        out.end()
    }
}
