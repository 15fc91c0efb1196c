//! A member of a fit: a tabulated class, a bearing ring, a maker's limits, or a measured part, and any of these measured.

use core::marker::PhantomData;

use super::bearing::{RingClass, RingSize, ring_tolerance};
use super::caution::Caution;
use super::class::{Feature, FitClass};
use super::deviation::limit_deviations;
use super::finding::Extent;
use super::shape::{Shape, SizeReading};
use crate::evidence::{Figure, Grade};
use crate::measure::{Decision, DecisionRule, Limits, Reading, decide};
use crate::quantity::{BoreDiameter, Length, ShaftDiameter, in_mm, settled_mm};
use crate::{Error, ErrorKind};

mod sealed {
    pub trait Sealed {}
    impl Sealed for super::Hole {}
    impl Sealed for super::Shaft {}
}

/// The inside or the outside of a fit, so that one cannot be given for the other.
///
/// ```
/// use framegauge::fit::{Feature, Hole, Part, RingSize, Shaft};
/// assert_eq!((Hole::FEATURE, Hole::RING), (Feature::Hole, RingSize::Bore));
/// assert_eq!((Shaft::FEATURE, Shaft::RING), (Feature::Shaft, RingSize::Outside));
/// ```
pub trait Part: sealed::Sealed + Copy {
    /// Hole or shaft.
    const FEATURE: Feature;
    /// The size of a bearing ring that is this part.
    const RING: RingSize;
    /// Checks a size of this part.
    ///
    /// # Errors
    /// Those of the role newtype.
    fn check(size: Length) -> Result<(), Error>;
}

/// Marks the member that goes around: bore, seat, ring bore.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hole;
/// Marks the member that goes inside: post, cup, ring outside, crown seat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shaft;

impl Part for Hole {
    const FEATURE: Feature = Feature::Hole;
    const RING: RingSize = RingSize::Bore;
    fn check(size: Length) -> Result<(), Error> {
        BoreDiameter::new(size).map(|_| ())
    }
}
impl Part for Shaft {
    const FEATURE: Feature = Feature::Shaft;
    const RING: RingSize = RingSize::Outside;
    fn check(size: Length) -> Result<(), Error> {
        ShaftDiameter::new(size).map(|_| ())
    }
}

/// One member of a fit: what it may be (limits), what it is (readings), or both.
///
/// ```
/// use framegauge::{fit::{HoleMember, RingClass, ShaftMember}, mm};
/// // A shell bored to N7, a bearing pressed into it, and the same shell once it has been measured.
/// let shell = HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap();
/// let bearing = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
/// let measured = shell.measured_once("41.975 +/- 0.004 mm".parse().unwrap()).unwrap();
/// assert!(measured.limits().is_some() && measured.shape().is_some() && bearing.shape().is_none());
/// // A shaft class cannot be a hole.
/// assert!(HoleMember::of_class(mm(42.0), "h6".parse().unwrap()).is_err());
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Member<P: Part> {
    nominal: Option<Length>,
    limits: Option<Limits>,
    stated: Option<(Length, Grade)>,
    shape: Option<Shape>,
    /// Bearing rings are judged on the mean of two-point diameters.
    by_mean: bool,
    part: PhantomData<P>,
}

/// The outer member of a fit.
pub type HoleMember = Member<Hole>;
/// The inner member of a fit.
pub type ShaftMember = Member<Shaft>;

impl<P: Part> Member<P> {
    const EMPTY: Self = Self {
        nominal: None,
        limits: None,
        stated: None,
        shape: None,
        by_mean: false,
        part: PhantomData,
    };

    /// A member of a tabulated ISO 286 class.
    ///
    /// # Errors
    /// `Contradiction` when the class is the other member's; else as [`limit_deviations`].
    pub fn of_class(nominal: Length, class: FitClass) -> Result<Self, Error> {
        if class.feature() != P::FEATURE {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "tolerance class",
                class,
                alloc::format!("is not a class of a {}", P::FEATURE),
                "capitals are holes, small letters shafts",
            ));
        }
        Ok(Self {
            nominal: Some(nominal),
            limits: Some(limit_deviations(nominal, class)?.around(nominal)?),
            ..Self::EMPTY
        })
    }

    /// A bearing ring of ISO 492: as a hole the bore of the inner ring, as a shaft the outside of the outer ring.
    ///
    /// # Errors
    /// As [`ring_tolerance`].
    pub fn of_ring(nominal: Length, class: RingClass) -> Result<Self, Error> {
        Ok(Self {
            nominal: Some(nominal),
            limits: Some(ring_tolerance(P::RING, class, nominal)?.around(nominal)?),
            by_mean: true,
            ..Self::EMPTY
        })
    }

    /// A member with a maker's limits of size.
    ///
    /// # Errors
    /// `OutOfRange` for a limit at or below 0 mm or beyond 1000 mm.
    pub fn of_limits(limits: Limits) -> Result<Self, Error> {
        for bound in [limits.lower().known(), limits.upper().known()]
            .into_iter()
            .flatten()
        {
            P::check(bound).map_err(|e| e.within("limits"))?;
        }
        Ok(Self {
            limits: Some(limits),
            ..Self::EMPTY
        })
    }

    /// A member whose size a table row states: its limits where it has any, else its nominal size taken as exact.
    ///
    /// # Errors
    /// `Missing` when the figure is unknown; `OutOfRange` as [`Self::of_limits`].
    ///
    /// ```
    /// use framegauge::{Evidence, Figure, Span, fit::HoleMember, mm};
    /// let bore = Figure::known(Span::new(None, Some(mm(43.95)), Some(mm(44.0))).unwrap(), Evidence::shop("drawing 12"));
    /// assert_eq!(HoleMember::of_figure(&bore).unwrap().limits().unwrap().to_string(), "43.950 to 44.000 mm");
    /// assert!(HoleMember::of_figure(&Figure::unknown("ask the frame maker")).is_err());
    /// ```
    pub fn of_figure(figure: &Figure) -> Result<Self, Error> {
        let Some(grade) = figure.grade() else {
            return Err(Error::new(
                ErrorKind::Missing,
                "figure",
                "",
                alloc::format!("the size is unknown: {}", figure.reason()),
                "measure the part",
            ));
        };
        if figure.lower().is_some() || figure.upper().is_some() {
            return Self::of_limits(Limits::of_size(figure));
        }
        let stated = figure.nominal().map(|nominal| (nominal, grade));
        if let Some((size, _)) = stated {
            P::check(size)?;
        }
        Ok(Self {
            stated,
            ..Self::EMPTY
        })
    }

    /// A measured part of which nothing else is known.
    ///
    /// # Errors
    /// As [`Shape::of`].
    ///
    /// ```
    /// use framegauge::{fit::{HoleMember, SizeReading}, measure::Reading, mm};
    /// let at = |v| SizeReading::new(Reading::new(mm(v), mm(0.005)).unwrap());
    /// let tube = HoleMember::measured_only(&[at(27.21), at(27.24)]).unwrap();
    /// assert!(tube.limits().is_none() && HoleMember::measured_only(&[]).is_err());
    /// ```
    pub fn measured_only(readings: &[SizeReading]) -> Result<Self, Error> {
        Self::EMPTY.measured(readings)
    }

    /// A part measured once, of which nothing else is known.
    ///
    /// # Errors
    /// As [`Shape::of`].
    ///
    /// ```
    /// use framegauge::{fit::HoleMember, mm};
    /// let tube = HoleMember::of_reading("27.25 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// assert_eq!(tube.shape().unwrap().mean().value(), mm(27.25));
    /// ```
    pub fn of_reading(reading: Reading) -> Result<Self, Error> {
        Self::EMPTY.measured_once(reading)
    }

    /// The same member, measured: the fit then rests on the readings, and the readings are held against the limits.
    ///
    /// # Errors
    /// As [`Shape::of`]; `OutOfRange` for a size beyond 1000 mm.
    pub fn measured(mut self, readings: &[SizeReading]) -> Result<Self, Error> {
        for reading in readings {
            P::check(reading.size().value()).map_err(|e| e.within("readings"))?;
        }
        self.shape = Some(Shape::of(readings)?);
        Ok(self)
    }

    /// The same member with a single reading.
    ///
    /// # Errors
    /// As [`Self::measured`].
    pub fn measured_once(self, reading: Reading) -> Result<Self, Error> {
        self.measured(&[SizeReading::new(reading)])
    }

    /// The same member with the nominal size that it is sold or drawn as.
    ///
    /// # Errors
    /// `OutOfRange` at or below 0 mm or beyond 1000 mm; `Contradiction` when its class says another nominal size.
    pub fn with_nominal(mut self, nominal: Length) -> Result<Self, Error> {
        P::check(nominal).map_err(|e| e.within("nominal size"))?;
        if let Some(own) = self.nominal
            && settled_mm(own) != settled_mm(nominal)
        {
            return Err(mixed(own, nominal));
        }
        self.nominal = Some(nominal);
        Ok(self)
    }

    /// The nominal size, where known.
    #[must_use]
    pub const fn nominal(&self) -> Option<Length> {
        self.nominal
    }
    /// The member's own limits, where known.
    #[must_use]
    pub const fn limits(&self) -> Option<Limits> {
        self.limits
    }
    /// What its readings say, where it was measured.
    #[must_use]
    pub const fn shape(&self) -> Option<&Shape> {
        self.shape.as_ref()
    }

    /// The sizes that a fit is reckoned with.
    pub(super) fn extent(&self) -> Result<Extent, Error> {
        if let Some(shape) = &self.shape {
            return Ok(Extent {
                smallest: shape.smallest(),
                largest: shape.largest(),
                mean: shape.mean(),
                actual: true,
                grade: None,
                caution: None,
            });
        }
        if let Some((size, grade)) = self.stated {
            let size = Reading::exact(size)?;
            return Ok(Extent {
                smallest: size,
                largest: size,
                mean: size,
                actual: true,
                grade: Some(grade),
                caution: Some(Caution::NominalOnly),
            });
        }
        let known = self
            .limits
            .and_then(|l| Some((l, l.lower().known()?, l.upper().known()?)));
        let Some((limits, lower, upper)) = known else {
            return Err(Error::new(
                ErrorKind::Missing,
                alloc::format!("{}", P::FEATURE),
                "",
                "neither a reading nor both limits are known",
                "measure it, or give both limits of size",
            ));
        };
        Ok(Extent {
            smallest: Reading::exact(lower)?,
            largest: Reading::exact(upper)?,
            mean: Reading::exact((lower + upper) / 2.0)?,
            actual: false,
            grade: Some(limits.grade()),
            caution: Some(Caution::NotMeasured),
        })
    }

    /// The readings held against the member's own limits: the worst of them, or for a bearing ring their mean.
    pub(super) fn own_decision(&self, rule: DecisionRule) -> Option<Decision> {
        let (limits, shape) = (self.limits?, self.shape.as_ref()?);
        if self.by_mean {
            return Some(decide(&shape.mean(), &limits, rule));
        }
        let (smallest, largest) = (shape.smallest(), shape.largest());
        let small = decide(&smallest, &limits, rule);
        // A single reading is both.
        if smallest == largest {
            return Some(small);
        }
        Some(small.worse(decide(&largest, &limits, rule)))
    }
}

pub(super) fn mixed(one: Length, other: Length) -> Error {
    Error::new(
        ErrorKind::Contradiction,
        "nominal size",
        alloc::format!("{} and {}", in_mm(one), in_mm(other)),
        "one fit has one nominal size",
        "give both members the same nominal size, or give limits instead of classes",
    )
}
