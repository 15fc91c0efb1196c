//! Uncertainty budgets in the manner of EA-4/02: contributions, their combination, effective degrees of freedom, and
//! the factor that gives 95 % coverage.

use alloc::vec::Vec;
use core::fmt;

use super::{Freedom, Instrument, Reading, coverage_factor};
use crate::evidence::Text;
use crate::quantity::{Length, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// How a contribution is distributed, which says how its stated width becomes a standard uncertainty (GUM 4.3).
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter, strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Shape {
    /// A standard uncertainty as it is: divisor 1.
    Normal,
    /// A certificate's expanded uncertainty at k = 2: divisor 2.
    Expanded,
    /// Anywhere within ± the half-width: divisor √3.
    Rectangular,
    /// A last digit of this step: divisor √12.
    Resolution,
    /// Most likely in the middle of ± the half-width: divisor √6.
    Triangular,
    /// Most likely at the ends of ± the half-width: divisor √2.
    UShaped,
}

impl Shape {
    /// What the stated width is divided by.
    ///
    /// ```
    /// use framegauge::measure::Shape;
    /// assert!((Shape::Resolution.divisor() - 3.464).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn divisor(self) -> f64 {
        match self {
            Self::Normal => 1.0,
            Self::Expanded => 2.0,
            Self::Rectangular => libm::sqrt(3.0),
            Self::Resolution => libm::sqrt(12.0),
            Self::Triangular => libm::sqrt(6.0),
            Self::UShaped => libm::sqrt(2.0),
        }
    }
    const fn has_straight_sides(self) -> bool {
        matches!(self, Self::Rectangular | Self::Resolution)
    }
}

/// One line of a budget.
#[derive(Debug, Clone, PartialEq)]
pub struct Contribution {
    name: Text,
    stated: f64,
    shape: Shape,
    sensitivity: f64,
    freedom: Freedom,
}

impl Contribution {
    /// A contribution with its stated width and how it is distributed; sensitivity 1, known exactly.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a width that is negative or none.
    ///
    /// ```
    /// use framegauge::{in_mm, measure::{Contribution, Shape}, um};
    /// let mpe = Contribution::new("permissible error", um(40.0), Shape::Rectangular).unwrap();
    /// assert_eq!(in_mm(mpe.standard_uncertainty()).to_string(), "0.023 mm");
    /// ```
    pub fn new(name: impl Into<Text>, stated: Length, shape: Shape) -> Result<Self, Error> {
        let value = Reading::new(mm(0.0), stated).map(|r| to_mm(r.standard_uncertainty()))?;
        Ok(Self {
            name: name.into(),
            stated: value,
            shape,
            sensitivity: 1.0,
            freedom: Freedom::EXACT,
        })
    }
    /// The same with degrees of freedom, for scatter found from readings.
    #[must_use]
    pub const fn known_by(mut self, freedom: Freedom) -> Self {
        self.freedom = freedom;
        self
    }
    /// The same with a sensitivity: by how much the result moves when this moves by one.
    ///
    /// # Errors
    /// `NotFinite`.
    ///
    /// ```
    /// use framegauge::{in_mm, measure::{Contribution, Shape}, mm};
    /// // A centre is half of two readings.
    /// let half = Contribution::new("edge", mm(0.02), Shape::Normal).unwrap().weighing(0.5).unwrap();
    /// assert_eq!(in_mm(half.standard_uncertainty()).to_string(), "0.010 mm");
    /// assert_eq!(half.name(), "edge");
    /// ```
    pub fn weighing(mut self, sensitivity: f64) -> Result<Self, Error> {
        if !sensitivity.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "sensitivity",
                sensitivity,
                "must be finite",
                "1 for a direct reading",
            ));
        }
        self.sensitivity = sensitivity;
        Ok(self)
    }
    /// Its name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }
    /// How it is distributed.
    #[must_use]
    pub const fn shape(&self) -> Shape {
        self.shape
    }
    /// Its standard uncertainty in the result.
    #[must_use]
    pub fn standard_uncertainty(&self) -> Length {
        mm(self.u())
    }
    fn u(&self) -> f64 {
        libm::fabs(self.sensitivity) * self.stated / self.shape.divisor()
    }
}

/// Which distribution the sum of a budget was taken to have, for its coverage factor.
///
/// ```
/// use framegauge::{measure::{Budget, Contribution, Shape, SumShape}, um};
/// let line = |width, shape| Contribution::new("line", um(width), shape).unwrap();
/// let one = Budget::new([line(50.0, Shape::Rectangular), line(2.0, Shape::Normal)]).unwrap();
/// assert_eq!(one.coverage().shape, SumShape::Rectangle);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum SumShape {
    /// Student's t with the effective degrees of freedom.
    Student,
    /// One rectangle dominates: k = 0.95 √3.
    Rectangle,
    /// Two rectangles dominate: a trapezoid (EA-4/02, supplement 2, S10), k below 2.
    Trapezoid,
}

/// An uncertainty budget.
///
/// ```
/// use framegauge::{in_mm, measure::{Budget, Contribution, Shape, SumShape}, um};
/// // EA-4/02 supplement 2, example S10: a vernier caliper at 150 mm (printed: u 0.033 mm, k 1.83, U 0.06 mm).
/// let budget = Budget::new([
///     Contribution::new("resolution", um(25.0), Shape::Rectangular).unwrap(),
///     Contribution::new("gauge block", um(0.8), Shape::Rectangular).unwrap(),
///     Contribution::new("mechanical effects", um(50.0), Shape::Rectangular).unwrap(),
///     Contribution::new("temperature", um(2.0), Shape::Normal).unwrap(),
/// ]).unwrap();
/// let coverage = budget.coverage();
/// assert_eq!(coverage.shape, SumShape::Trapezoid);
/// assert!((coverage.factor - 1.83).abs() < 0.005);
/// assert_eq!(format!("{:.2}", in_mm(coverage.expanded)), "0.06 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    lines: Vec<Contribution>,
}

/// A coverage interval of 95 %.
///
/// ```
/// use framegauge::{measure::{Budget, Contribution, Freedom, Shape}, um};
/// let scatter = Contribution::new("three readings", um(5.0), Shape::Normal).unwrap().known_by(Freedom::new(2.0).unwrap());
/// let coverage = Budget::new([scatter]).unwrap().coverage();
/// assert!((coverage.factor - 4.303).abs() < 1e-3);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coverage {
    /// The factor k on the standard uncertainty.
    pub factor: f64,
    /// k u: with 95 % coverage.
    pub expanded: Length,
    /// Effective degrees of freedom (Welch and Satterthwaite, GUM G.4.1).
    pub freedom: Freedom,
    /// The distribution it was taken from.
    pub shape: SumShape,
}

/// The rest of a budget may be this share of its dominating part and still be left out (EA-4/02).
const NEGLIGIBLE: f64 = 0.3;

impl Budget {
    /// A budget from its lines.
    ///
    /// # Errors
    /// `Missing` for no line, or for lines that are all zero.
    pub fn new(lines: impl Into<Vec<Contribution>>) -> Result<Self, Error> {
        let lines = lines.into();
        if !lines.iter().any(|l| l.u() > 0.0) {
            return Err(Error::new(
                ErrorKind::Missing,
                "budget",
                "",
                "nothing in the budget is uncertain",
                "state the permissible error, the resolution and the repeatability",
            ));
        }
        Ok(Self { lines })
    }
    /// The lines.
    #[must_use]
    pub fn lines(&self) -> &[Contribution] {
        &self.lines
    }
    fn squares(&self) -> f64 {
        self.lines.iter().map(|l| l.u() * l.u()).sum()
    }
    /// Combined standard uncertainty: square root of the sum of squares (GUM 5.1.2, independent inputs).
    #[must_use]
    pub fn standard_uncertainty(&self) -> Length {
        mm(libm::sqrt(self.squares()))
    }
    /// Effective degrees of freedom, u⁴ / Σ (uᵢ⁴/νᵢ).
    #[must_use]
    pub fn freedom(&self) -> Freedom {
        let total = self.squares();
        // In shares of u², so that a single line gives its own degrees and never a hair less than one.
        let spread: f64 = self
            .lines
            .iter()
            .map(|l| {
                let share = l.u() * l.u() / total;
                share * share / l.freedom.degrees()
            })
            .sum();
        Freedom::new(1.0 / spread).unwrap_or(Freedom::EXACT)
    }
    /// The interval of 95 % coverage, by the shape that dominates the sum.
    #[must_use]
    pub fn coverage(&self) -> Coverage {
        let u = libm::sqrt(self.squares());
        let freedom = self.freedom();
        let (factor, shape) = self.dominating();
        let factor = factor.unwrap_or_else(|| coverage_factor(0.95, freedom).unwrap_or(2.0));
        Coverage {
            factor,
            expanded: mm(factor * u),
            freedom,
            shape,
        }
    }
    /// The factor of one or two dominating rectangles; `None` when neither dominates.
    fn dominating(&self) -> (Option<f64>, SumShape) {
        let mut widest: Vec<(f64, bool)> = self
            .lines
            .iter()
            .map(|line| (line.u(), line.shape.has_straight_sides()))
            .collect();
        // Of two alike the rectangle stands first, in whatever order they were written.
        widest.sort_by(|a, b| b.0.total_cmp(&a.0).then(b.1.cmp(&a.1)));
        let mut widest = widest.into_iter();
        let mut next = || widest.next().unwrap_or_default();
        let ((first, straight), (second, also)) = (next(), next());
        let rest = |used: f64| libm::sqrt(libm::fmax(self.squares() - used, 0.0));
        if straight && rest(first * first) <= NEGLIGIBLE * first {
            return (Some(0.95 * libm::sqrt(3.0)), SumShape::Rectangle);
        }
        let both = libm::hypot(first, second);
        if straight && also && rest(both * both) <= NEGLIGIBLE * both {
            // Half-widths a₁ ≥ a₂, β = (a₁ − a₂)/(a₁ + a₂); common factors cancel.
            let beta = (first - second) / (first + second);
            let k = (1.0 - libm::sqrt(0.05 * (1.0 - beta * beta)))
                / libm::sqrt((1.0 + beta * beta) / 6.0);
            return (Some(k), SumShape::Trapezoid);
        }
        (None, SumShape::Student)
    }
    /// A value read under this budget.
    ///
    /// # Errors
    /// Those of [`Reading::new`].
    pub fn reading(&self, value: Length) -> Result<Reading, Error> {
        Reading::new(value, self.standard_uncertainty())
    }
}

impl fmt::Display for Budget {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for line in &self.lines {
            writeln!(
                f,
                "{}: {} ({})",
                line.name,
                in_mm(line.standard_uncertainty()),
                line.shape
            )?;
        }
        let coverage = self.coverage();
        write!(
            f,
            "u {}, U {} (95 %, k {:.2})",
            in_mm(self.standard_uncertainty()),
            in_mm(coverage.expanded),
            coverage.factor
        )
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Budget {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::quantity::settled_mm;
        use serde::ser::SerializeStruct;
        #[derive(serde::Serialize)]
        struct Line<'a> {
            name: &'a str,
            shape: Shape,
            standard_uncertainty_mm: f64,
        }
        let lines: Vec<Line> = self
            .lines
            .iter()
            .map(|l| Line {
                name: &l.name,
                shape: l.shape,
                standard_uncertainty_mm: settled_mm(mm(l.u())),
            })
            .collect();
        let coverage = self.coverage();
        let freedom = coverage.freedom.degrees();
        let mut out = serializer.serialize_struct("Budget", 6)?;
        out.serialize_field("lines", &lines)?;
        out.serialize_field(
            "standard_uncertainty_mm",
            &settled_mm(self.standard_uncertainty()),
        )?;
        out.serialize_field("expanded_uncertainty_mm", &settled_mm(coverage.expanded))?;
        out.serialize_field(
            "coverage_factor",
            &(libm::round(coverage.factor * 1e3) / 1e3),
        )?;
        out.serialize_field("sum_shape", &coverage.shape)?;
        // Infinity has no number in most formats: null means "known exactly".
        out.serialize_field(
            "degrees_of_freedom",
            &freedom
                .is_finite()
                .then(|| libm::round(freedom * 10.0) / 10.0),
        )?;
        out.end()
    }
}

impl Instrument {
    /// The budget of one reading of this size: permissible error, resolution, repeatability, each with its figure's shape.
    ///
    /// # Errors
    /// As [`Self::standard_uncertainty`].
    ///
    /// ```
    /// use framegauge::{Evidence, Figure, Span, measure::{ErrorLimit, Instrument, Measures}, mm};
    /// let own = |v| Figure::known(Span::new(Some(mm(v)), None, None).unwrap(), Evidence::shop("our certificate"));
    /// let gauge = Instrument {
    ///     code: "shop-gauge".into(), name: "our bore gauge".into(), measures: vec![Measures::Inside].into(),
    ///     limits: vec![ErrorLimit { over: mm(0.0), up_to: mm(60.0), error: own(0.004) }].into(),
    ///     resolution: Some(own(0.001)), repeatability: None, cost: 3, note: "".into(),
    /// };
    /// let budget = gauge.budget(mm(44.0)).unwrap();
    /// assert_eq!(budget.lines().len(), 2);
    /// assert_eq!(budget.standard_uncertainty(), gauge.standard_uncertainty(mm(44.0)).unwrap());
    /// ```
    pub fn budget(&self, size: Length) -> Result<Budget, Error> {
        let mut lines = alloc::vec![Contribution::new(
            "permissible error",
            self.permissible_error(size)?,
            Shape::Rectangular
        )?];
        for (name, figure, shape) in [
            ("resolution", &self.resolution, Shape::Resolution),
            ("repeatability", &self.repeatability, Shape::Normal),
        ] {
            if let Some(value) = figure
                .as_ref()
                .and_then(|f| f.nominal().or_else(|| f.upper()))
            {
                lines.push(Contribution::new(name, value, shape)?);
            }
        }
        Budget::new(lines)
    }
}
