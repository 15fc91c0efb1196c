//! Figures and facts: a value with its evidence, its dissent, or the reason why it is unknown.

use alloc::borrow::Cow;
use core::fmt;

use super::{Evidence, Grade, List, Text};
use crate::quantity::{Length, Printed};
use crate::{Error, ErrorKind};

/// A published value that disagrees with the one we hold.
#[derive(Debug, Clone, PartialEq)]
pub struct Dissent<V> {
    /// What it says.
    pub value: V,
    /// How sure it is.
    pub evidence: Evidence,
}

/// Nominal and limits of a figure; any of them may be unknown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span<Q> {
    /// The nominal value.
    pub nominal: Option<Q>,
    /// The lowest value allowed, where known.
    pub lower: Option<Q>,
    /// The highest value allowed, where known.
    pub upper: Option<Q>,
}

impl<Q: Printed> Span<Q> {
    /// Checks the order lower ≤ nominal ≤ upper and that something is known at all.
    ///
    /// # Errors
    /// `Missing` when nothing is known, `NotFinite` for NaN and infinities, `Contradiction` when out of order.
    ///
    /// ```
    /// use framegauge::{Span, mm};
    /// assert!(Span::new(Some(mm(44.0)), Some(mm(43.95)), Some(mm(44.0))).is_ok());
    /// assert!(Span::new(None, Some(mm(44.0)), Some(mm(43.95))).is_err());
    /// ```
    pub fn new(nominal: Option<Q>, lower: Option<Q>, upper: Option<Q>) -> Result<Self, Error> {
        let span = Self {
            nominal,
            lower,
            upper,
        };
        let known = [lower, nominal, upper];
        if known.iter().all(Option::is_none) {
            return Err(Error::new(
                ErrorKind::Missing,
                "figure",
                "",
                "neither nominal nor limit given",
                "give one of them, or state it as unknown",
            ));
        }
        for value in known.iter().flatten() {
            if !value.in_unit().is_finite() {
                return Err(Error::new(
                    ErrorKind::NotFinite,
                    "figure",
                    value.in_unit(),
                    "must be finite",
                    "give the printed value",
                ));
            }
        }
        let values = known.map(|v| v.map(Printed::in_unit));
        let mut highest = f64::NEG_INFINITY;
        for value in values.iter().flatten() {
            if *value < highest {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "figure",
                    alloc::format!("{span}"),
                    "lower, nominal and upper are out of order",
                    "lower <= nominal <= upper",
                ));
            }
            highest = *value;
        }
        Ok(span)
    }

    /// The best single value: the nominal, else the middle of the limits, else the one limit that is known. In the
    /// printed unit of the quantity: millimetres for a length.
    ///
    /// ```
    /// use framegauge::{Length, Span, mm};
    /// let span = Span::<Length>::new(None, Some(mm(33.9)), Some(mm(34.1))).unwrap();
    /// assert!((span.middle().unwrap() - 34.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn middle(&self) -> Option<f64> {
        match (self.nominal, self.lower, self.upper) {
            (Some(nominal), _, _) => Some(nominal.in_unit()),
            (None, Some(lower), Some(upper)) => {
                Some(f64::midpoint(lower.in_unit(), upper.in_unit()))
            }
            (None, Some(one), None) | (None, None, Some(one)) => Some(one.in_unit()),
            (None, None, None) => None,
        }
    }
}

impl<Q: Printed> fmt::Display for Span<Q> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let unit = if Q::UNIT == "1" { "" } else { Q::UNIT };
        let gap = if unit.is_empty() { "" } else { " " };
        match (self.lower, self.upper, self.nominal) {
            (Some(lower), Some(upper), _) => {
                write!(f, "{} to {}{gap}{unit}", lower.in_unit(), upper.in_unit())
            }
            (None, None, Some(nominal)) => write!(f, "{}{gap}{unit}", nominal.in_unit()),
            (Some(lower), None, _) => write!(f, "at least {}{gap}{unit}", lower.in_unit()),
            (None, Some(upper), _) => write!(f, "at most {}{gap}{unit}", upper.in_unit()),
            (None, None, None) => f.write_str("unknown"),
        }
    }
}

/// A value or a pair of limits together with its evidence, or the reason why it is unknown.
///
/// ```
/// use framegauge::{Evidence, Figure, Span, mm};
/// let bore = Figure::known(Span::new(Some(mm(44.0)), Some(mm(43.95)), None).unwrap(), Evidence::shop("drawing 12"));
/// assert_eq!(bore.lower(), Some(mm(43.95)));
/// assert_eq!(bore.upper(), None); // unknown, not "no limit"
/// assert_eq!(Figure::unknown("ask the frame maker").nominal(), None::<framegauge::Length>);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Figure<Q: Printed = Length> {
    state: State<Span<Q>>,
}

/// A stated fact that is no number (a hand, a status), with its evidence, or the reason why it is unknown.
///
/// ```
/// use framegauge::{Evidence, Fact};
/// let colour = Fact::known("left", Evidence::shop("read on the cup"));
/// assert_eq!(colour.value(), Some(&"left"));
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Fact<V: Clone + 'static> {
    state: State<V>,
}

#[derive(Debug, Clone, PartialEq)]
enum State<V: Clone + 'static> {
    Known {
        value: V,
        evidence: Evidence,
        dissent: List<Dissent<V>>,
    },
    Unknown {
        reason: Text,
        dissent: List<Dissent<V>>,
    },
}

impl<V: Clone + 'static> State<V> {
    fn evidence(&self) -> Option<&Evidence> {
        match self {
            Self::Known { evidence, .. } => Some(evidence),
            Self::Unknown { .. } => None,
        }
    }
    fn dissent(&self) -> &[Dissent<V>] {
        match self {
            Self::Known { dissent, .. } | Self::Unknown { dissent, .. } => dissent,
        }
    }
    fn value(&self) -> Option<&V> {
        match self {
            Self::Known { value, .. } => Some(value),
            Self::Unknown { .. } => None,
        }
    }
    fn reason(&self) -> &str {
        match self {
            Self::Known { .. } => "",
            Self::Unknown { reason, .. } => reason,
        }
    }
}

macro_rules! stated {
    ($outer:ident, $param:ident, $bound:ident, $inner:ty) => {
        impl<$param: $bound + 'static> $outer<$param> {
            /// For generated tables.
            pub(crate) const fn from_table(
                value: $inner,
                evidence: Evidence,
                dissent: &'static [Dissent<$inner>],
            ) -> Self {
                Self {
                    state: State::Known {
                        value,
                        evidence,
                        dissent: Cow::Borrowed(dissent),
                    },
                }
            }
            /// For generated tables.
            pub(crate) const fn unknown_in_table(
                reason: &'static str,
                dissent: &'static [Dissent<$inner>],
            ) -> Self {
                Self {
                    state: State::Unknown {
                        reason: Cow::Borrowed(reason),
                        dissent: Cow::Borrowed(dissent),
                    },
                }
            }
            /// A known value with its evidence.
            #[must_use]
            pub fn known(value: $inner, evidence: Evidence) -> Self {
                Self {
                    state: State::Known {
                        value,
                        evidence,
                        dissent: Cow::Borrowed(&[]),
                    },
                }
            }
            /// A value that is not known, and why or where to get it.
            #[must_use]
            pub fn unknown(reason: impl Into<Text>) -> Self {
                Self {
                    state: State::Unknown {
                        reason: reason.into(),
                        dissent: Cow::Borrowed(&[]),
                    },
                }
            }
            /// The same, with values that disagree.
            ///
            /// ```
            /// use framegauge::{Dissent, Evidence, Figure, Span, mm};
            /// let span = |v| Span::new(Some(mm(v)), None, None).unwrap();
            /// let width = Figure::known(span(68.0), Evidence::shop("drawing 12"))
            ///     .disputed_by(vec![Dissent { value: span(68.5), evidence: Evidence::shop("measured on five frames") }]);
            /// assert_eq!(width.dissent().len(), 1);
            /// ```
            #[must_use]
            pub fn disputed_by(mut self, values: impl Into<List<Dissent<$inner>>>) -> Self {
                let (State::Known { dissent, .. } | State::Unknown { dissent, .. }) =
                    &mut self.state;
                *dissent = values.into();
                self
            }
            /// Whether anything is known.
            #[must_use]
            pub fn is_known(&self) -> bool {
                self.state.value().is_some()
            }
            /// The evidence; `None` when unknown.
            #[must_use]
            pub fn evidence(&self) -> Option<&Evidence> {
                self.state.evidence()
            }
            /// What the figure is worth; `None` when unknown.
            #[must_use]
            pub fn grade(&self) -> Option<Grade> {
                self.state.evidence().map(Evidence::worth)
            }
            /// Published values that disagree.
            #[must_use]
            pub fn dissent(&self) -> &[Dissent<$inner>] {
                self.state.dissent()
            }
            /// Why it is unknown; empty when it is known.
            #[must_use]
            pub fn reason(&self) -> &str {
                self.state.reason()
            }
        }
    };
}

stated!(Figure, Q, Printed, Span<Q>);
stated!(Fact, V, Clone, V);

impl<Q: Printed> Figure<Q> {
    /// Nominal and limits; `None` when wholly unknown.
    #[must_use]
    pub fn span(&self) -> Option<&Span<Q>> {
        self.state.value()
    }
    /// The nominal value, where known.
    #[must_use]
    pub fn nominal(&self) -> Option<Q> {
        self.span().and_then(|s| s.nominal)
    }
    /// The lower limit, where known.
    #[must_use]
    pub fn lower(&self) -> Option<Q> {
        self.span().and_then(|s| s.lower)
    }
    /// The upper limit, where known.
    #[must_use]
    pub fn upper(&self) -> Option<Q> {
        self.span().and_then(|s| s.upper)
    }
}

impl<V: Clone + 'static> Fact<V> {
    /// The value, where known.
    #[must_use]
    pub fn value(&self) -> Option<&V> {
        self.state.value()
    }
}

impl<Q: Printed> fmt::Display for Figure<Q> {
    /// `{}` prints the values, `{:#}` adds grade and sources.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.span() {
            None => write!(f, "unknown"),
            Some(span) => {
                write!(f, "{span}")?;
                if f.alternate() {
                    trail(f, self.evidence())
                } else {
                    Ok(())
                }
            }
        }
    }
}

impl<V: Clone + fmt::Display + 'static> fmt::Display for Fact<V> {
    /// `{}` prints the value, `{:#}` adds grade and sources.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.value() {
            None => write!(f, "unknown"),
            Some(value) => {
                write!(f, "{value}")?;
                if f.alternate() {
                    trail(f, self.evidence())
                } else {
                    Ok(())
                }
            }
        }
    }
}

fn trail(f: &mut fmt::Formatter<'_>, evidence: Option<&Evidence>) -> fmt::Result {
    let Some(evidence) = evidence else {
        return Ok(());
    };
    write!(f, " ({}", evidence.grade().words())?;
    if !evidence.formula().is_empty() {
        write!(f, ": {}", evidence.formula())?;
    }
    for (index, citation) in evidence.sources().iter().enumerate() {
        write!(f, "{} {citation}", if index == 0 { ":" } else { ";" })?;
    }
    f.write_str(")")
}
