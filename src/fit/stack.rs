//! Stacks of toleranced lengths: worst case and root sum of squares, with sensitivities.

use crate::measure::{Limits, Reading};
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// One length of a stack: nominal, tolerance plus or minus, and how much the result moves with it (+1 adds, −1 takes away).
///
/// ```
/// use framegauge::{fit::Link, mm};
/// assert!(Link::new(mm(25.0), mm(0.05), -1.0).is_ok());
/// assert!(Link::new(mm(25.0), mm(-0.05), 1.0).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Link {
    nominal: f64,
    plus_minus: f64,
    sensitivity: f64,
}

impl Link {
    /// A link.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a negative tolerance, a length beyond 3 m or a sensitivity beyond ±100.
    pub fn new(nominal: Length, plus_minus: Length, sensitivity: f64) -> Result<Self, Error> {
        let checked = Reading::exact(nominal).map_err(|e| e.within("link"))?;
        let tolerance = Reading::exact(plus_minus).map_err(|e| e.within("tolerance"))?;
        if to_mm(tolerance.value()) < 0.0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "tolerance",
                in_mm(plus_minus),
                "a tolerance has no sign",
                "give the half width, plus or minus",
            ));
        }
        if !sensitivity.is_finite() || libm::fabs(sensitivity) > 100.0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "sensitivity",
                sensitivity,
                "lies outside -100 to 100",
                "1 adds, -1 takes away; a lever has its ratio",
            ));
        }
        Ok(Self {
            nominal: to_mm(checked.value()),
            plus_minus: to_mm(tolerance.value()),
            sensitivity,
        })
    }

    /// A link from limits of size: the middle, plus or minus half the width.
    ///
    /// # Errors
    /// `Missing` when a side is not known; else as [`Link::new`].
    ///
    /// ```
    /// use framegauge::{Grade, fit::{Link, stack}, in_mm, measure::Limits, mm};
    /// let width = Limits::between(mm(72.5), mm(73.5), Grade::Published).unwrap();
    /// let sum = stack(&[Link::of_limits(&width, 1.0).unwrap()]).unwrap();
    /// assert_eq!((in_mm(sum.nominal).to_string(), in_mm(sum.worst_case).to_string()), ("73.000 mm".into(), "0.500 mm".into()));
    /// ```
    pub fn of_limits(limits: &Limits, sensitivity: f64) -> Result<Self, Error> {
        let (Some(low), Some(high)) = (limits.lower().known(), limits.upper().known()) else {
            return Err(Error::new(
                ErrorKind::Missing,
                "link",
                limits,
                "a limit is not known, so the stack has no bound",
                "measure the part",
            ));
        };
        Self::new((low + high) / 2.0, (high - low) / 2.0, sensitivity)
    }
}

/// The sum of a stack.
///
/// For one frame in a stand only the worst case or a measurement says anything; the root sum is for many assemblies of
/// independent, centred, normally spread parts whose tolerances are three standard deviations.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stack {
    /// Σ s L.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "nominal_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub nominal: Length,
    /// Σ |s t|, plus or minus.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "worst_case_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub worst_case: Length,
    /// √Σ (s t)², plus or minus.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "root_sum_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub root_sum: Length,
}

/// Adds up a stack. Nothing is allocated.
///
/// # Errors
/// `Missing` for an empty stack.
///
/// ```
/// use framegauge::{fit::{Link, stack}, in_mm, mm};
/// // A worked example in print: 40 - 25 - 2 - 10 = 3.00 mm.
/// let link = |nominal, tolerance, sign| Link::new(mm(nominal), mm(tolerance), sign).unwrap();
/// let gap = stack(&[link(40.0, 0.10, 1.0), link(25.0, 0.05, -1.0), link(2.0, 0.03, -1.0), link(10.0, 0.05, -1.0)]).unwrap();
/// assert_eq!(in_mm(gap.nominal).to_string(), "3.000 mm");
/// assert_eq!(in_mm(gap.worst_case).to_string(), "0.230 mm");
/// ```
pub fn stack(links: &[Link]) -> Result<Stack, Error> {
    if links.is_empty() {
        return Err(Error::new(
            ErrorKind::Missing,
            "stack",
            "",
            "no link given",
            "give at least one length",
        ));
    }
    let (mut nominal, mut worst, mut squares) = (0.0, 0.0, 0.0);
    for link in links {
        let share = libm::fabs(link.sensitivity * link.plus_minus);
        nominal += link.sensitivity * link.nominal;
        worst += share;
        squares += share * share;
    }
    Ok(Stack {
        nominal: mm(nominal),
        worst_case: mm(worst),
        root_sum: mm(libm::sqrt(squares)),
    })
}
