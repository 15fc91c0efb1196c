//! Bores: diameters at clock angles and depths, and what they say of size and shape.

use alloc::format;
use alloc::vec::Vec;

use super::clock::Clock;
use super::kernel::{P, lsq};
use super::report::report;
use crate::evidence::Text;
use crate::measure::{Decision, DecisionRule, Limits, Outcome, Reading, decide};
use crate::quantity::{BoreDiameter, Length, deg, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// What the diameter was read with, which says what it cannot see.
///
/// ```
/// use framegauge::face::Gauge;
/// assert_eq!("three_point".parse::<Gauge>().unwrap(), Gauge::ThreePoint);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Gauge {
    /// Two contacts across: caliper, telescoping gauge, inside micrometer. Odd lobes are invisible to it.
    TwoPoint,
    /// Three self-centring contacts 120 degrees apart. It sees three lobes but, to first order, no ellipse.
    ThreePoint,
}

/// A diameter at a place of a bore.
///
/// ```
/// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
/// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
/// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
/// let reading = at(90.0, 5.0, 43.97);
/// assert_eq!(reading.gauge, Gauge::TwoPoint);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoreReading {
    /// Direction of one contact, seen from the end that depths are counted from.
    pub at: Clock,
    /// Depth from that end, inwards, zero or more.
    pub depth: Length,
    /// The diameter.
    pub diameter: Reading,
    /// What it was read with.
    pub gauge: Gauge,
}

/// Diameters of one bore at known angles and depths.
///
/// ```
/// use framegauge::{deg, face::{BoreReading, BoreSurvey, Clock, Gauge, Size}, in_mm, measure::Reading, mm};
/// let at = |angle, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(5.0),
///     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
/// let shape = BoreSurvey::new([at(0.0, 43.80), at(90.0, 44.00)]).unwrap().shape().unwrap();
/// // 0.2 mm apart with readings good to 0.01 mm: this bore has no size.
/// assert!(matches!(shape.size, Size::None { .. }));
/// assert_eq!(in_mm(shape.sections[0].spread).to_string(), "0.200 mm");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct BoreSurvey {
    readings: Vec<BoreReading>,
}

/// The size of a bore, or the finding that it has none.
///
/// ```
/// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
/// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
/// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
/// let shape = BoreSurvey::new([at(0.0, 5.0, 43.97), at(90.0, 5.0, 43.98)]).unwrap().shape().unwrap();
/// let Size::One { diameter } = shape.size else { panic!() };
/// assert_eq!(diameter.to_string(), "43.975 ± 0.010 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "finding", rename_all = "snake_case")
)]
pub enum Size {
    /// All readings agree within what their uncertainty explains.
    One {
        /// Mean of the readings. Its uncertainty is not divided by their number: one instrument, one bias.
        diameter: Reading,
    },
    /// The readings differ by more than their uncertainty explains: the bore is out of round, tapered or bell-mouthed.
    None {
        /// Smallest reading.
        least: Reading,
        /// Largest reading.
        most: Reading,
    },
}

report! {
    /// An ellipse through three diameters or more of one section.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
    /// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
    /// let bore = BoreSurvey::new([at(0.0, 5.0, 44.00), at(60.0, 5.0, 43.85), at(120.0, 5.0, 43.85)]).unwrap();
    /// let ellipse = bore.shape().unwrap().sections[0].ellipse.clone().unwrap();
    /// assert_eq!(in_mm(ellipse.ovality).to_string(), "0.200 mm");
    /// ```
    Ellipse {
        /// Mean diameter.
        mean: Length as mm "mean_mm",
        /// Largest less smallest diameter.
        ovality: Length as mm "ovality_mm",
        /// Radial out-of-round, half of that (RONt of ISO 12181 for a pure ellipse).
        out_of_round: Length as mm "out_of_round_radial_mm",
        /// One end of the long axis; the other lies opposite.
        long_at: Option<Clock> as own "long_at",
        /// Standard uncertainty of the ovality.
        standard_uncertainty: Length as mm "standard_uncertainty_mm",
    }
}

report! {
    /// One section of a bore: the readings at one depth.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
    /// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
    /// let bore = BoreSurvey::new([at(0.0, 5.0, 43.98), at(90.0, 5.0, 43.97)]).unwrap();
    /// let section = &bore.shape().unwrap().sections[0];
    /// assert_eq!(in_mm(section.spread).to_string(), "0.010 mm");
    /// assert!(section.blind_to.iter().any(|what| what.contains("odd lobes")));
    /// ```
    Section {
        /// Depth from the end.
        depth: Length as mm "depth_mm",
        /// Mean of the readings.
        mean: Reading as own "mean",
        /// Smallest reading.
        least: Reading as own "least",
        /// Largest reading.
        most: Reading as own "most",
        /// Largest less smallest diameter, between readings of one gauge: the bore is out of round by at least this on
        /// diameter, half of it on radius.
        spread: Length as mm "ovality_at_least_mm",
        /// The ellipse, where three two-point diameters or more at distinct angles allow it.
        ellipse: Option<Ellipse> as own "ellipse",
        /// What the readings of this section cannot see.
        blind_to: Vec<Text> as own "blind_to",
    }
}

report! {
    /// Taper between the first and the last section.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
    /// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
    /// let bore = BoreSurvey::new([at(0.0, 2.0, 44.00), at(0.0, 12.0, 43.95)]).unwrap();
    /// let taper = bore.shape().unwrap().taper.unwrap();
    /// assert_eq!(in_mm(taper.difference.value()).to_string(), "0.050 mm");
    /// assert!(taper.shown);
    /// ```
    Taper {
        /// Diameter of the first section less that of the last: positive when the bore narrows inwards.
        difference: Reading as own "difference",
        /// Distance between them.
        over: Length as mm "over_mm",
        /// Whether the difference is larger than its expanded uncertainty (k = 2).
        shown: bool as own "shown",
    }
}

report! {
    /// What the diameters say of a bore.
    ///
    /// ```
    /// # use framegauge::{deg, face::*, in_mm, measure::Reading, mm};
    /// # let at = |angle, depth, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(depth),
    /// #     diameter: Reading::new(mm(d), mm(0.005)).unwrap(), gauge: Gauge::TwoPoint };
    /// let bore = BoreSurvey::new([at(0.0, 2.0, 44.00), at(90.0, 2.0, 43.99)]).unwrap();
    /// assert!(!bore.shape().unwrap().complete); // only one depth was read
    /// ```
    BoreShape {
        /// Its size, or that it has none.
        size: Size as own "size",
        /// Each depth by itself, outermost first.
        sections: Vec<Section> as own "sections",
        /// Taper, where two depths or more were read.
        taper: Option<Taper> as own "taper",
        /// Whether two axes at two depths or more were read; if not, every figure of shape is "at least".
        complete: bool as own "two_axes_at_two_depths",
        /// Three-contact readings differ from two-contact ones by more than their uncertainty: odd lobes are likely.
        lobes_suspected: bool as own "odd_lobes_suspected",
    }
}

/// Readings this near in depth are one section.
const SAME_DEPTH_MM: f64 = 0.5;

impl BoreSurvey {
    /// A survey from readings.
    ///
    /// # Errors
    /// `Missing` for none; `OutOfRange` for a diameter or depth that is none; `Contradiction` for a place read twice.
    pub fn new(readings: impl Into<Vec<BoreReading>>) -> Result<Self, Error> {
        let readings = readings.into();
        if readings.is_empty() {
            return Err(Error::new(
                ErrorKind::Missing,
                "diameters",
                "",
                "no diameter was read",
                "read two axes at two depths or more",
            ));
        }
        for (index, reading) in readings.iter().enumerate() {
            let field = format!("diameters.{index}");
            BoreDiameter::new(reading.diameter.value()).map_err(|e| e.within(&field))?;
            let depth = to_mm(reading.depth);
            if !(0.0..=1000.0).contains(&depth) {
                let kind = if depth.is_finite() {
                    ErrorKind::OutOfRange
                } else {
                    ErrorKind::NotFinite
                };
                return Err(Error::new(
                    kind,
                    format!("{field}.depth"),
                    in_mm(reading.depth),
                    "a depth runs from 0 mm inwards",
                    "count depths from the end of the bore",
                ));
            }
            if readings
                .iter()
                .take(index)
                .any(|other| same_place(other, reading))
            {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    field,
                    reading.at,
                    "this diameter was already read",
                    "pool repeated readings of one place first; 0 and 180 degrees are one diameter",
                ));
            }
        }
        Ok(Self { readings })
    }
    /// The readings, in the order given.
    #[must_use]
    pub fn readings(&self) -> &[BoreReading] {
        &self.readings
    }

    /// Size, out-of-round, ellipse and taper.
    ///
    /// # Errors
    /// Those of [`Reading::new`] for combined uncertainties beyond any use.
    pub fn shape(&self) -> Result<BoreShape, Error> {
        let mut depths: Vec<f64> = self.readings.iter().map(|r| to_mm(r.depth)).collect();
        depths.sort_by(f64::total_cmp);
        depths.dedup_by(|next, kept| *next - *kept < SAME_DEPTH_MM);
        let mut sections = Vec::with_capacity(depths.len());
        for depth in &depths {
            let at = |r: &&BoreReading| (to_mm(r.depth) - depth).abs() < SAME_DEPTH_MM;
            let own: Vec<&BoreReading> = self.readings.iter().filter(at).collect();
            sections.push(section(*depth, &own)?);
        }
        let (least, most) = extremes(&self.readings.iter().collect::<Vec<_>>());
        let u = rms(self.readings.iter());
        let range = to_mm(most.value()) - to_mm(least.value());
        let size = if range > super::sampling::range_limit(self.readings.len()) * u + 1e-6 {
            Size::None { least, most }
        } else {
            Size::One {
                diameter: Reading::new(mm(mean(self.readings.iter())), mm(u))?,
            }
        };
        let taper = match (sections.first(), sections.last()) {
            (Some(first), Some(last)) if sections.len() > 1 => {
                let difference = first.mean.less(&last.mean);
                let over = last.depth - first.depth;
                let bare = to_mm(difference.value()).abs();
                Some(Taper {
                    difference,
                    over,
                    shown: bare > to_mm(difference.expanded_uncertainty()),
                })
            }
            _ => None,
        };
        let axes = |s: &Section| !s.blind_to.iter().any(|b| b == ONE_AXIS);
        Ok(BoreShape {
            size,
            complete: sections.len() > 1 && sections.iter().all(axes),
            lobes_suspected: self.lobes_suspected(u),
            sections,
            taper,
        })
    }

    /// Holds the bore against limits of size: every reading must conform for the bore to conform, one that does not is
    /// enough against it. With fewer than two axes at two depths conformity is of the read places only.
    ///
    /// ```
    /// # use framegauge::{deg, face::{BoreReading, BoreSurvey, Clock, Gauge}, measure::Reading, mm};
    /// use framegauge::{Grade, measure::{DecisionRule, Limits, Outcome}};
    /// # let at = |angle, d| BoreReading { at: Clock::new(deg(angle)).unwrap(), depth: mm(5.0),
    /// #     diameter: Reading::new(mm(d), mm(0.002)).unwrap(), gauge: Gauge::TwoPoint };
    /// let bore = BoreSurvey::new([at(0.0, 43.97), at(90.0, 44.03)]).unwrap();
    /// let limits = Limits::between(mm(43.95), mm(44.0), Grade::Published).unwrap();
    /// assert_eq!(bore.against(&limits, DecisionRule::default()).outcome, Outcome::NonconformityShown);
    /// ```
    #[must_use]
    pub fn against(&self, limits: &Limits, rule: DecisionRule) -> Decision {
        let (least, most) = extremes(&self.readings.iter().collect::<Vec<_>>());
        let worse = |a: Decision, b: Decision| {
            let rank = |d: &Decision| match d.outcome {
                Outcome::NonconformityShown => 0,
                Outcome::Undecided => 1,
                Outcome::ConformityShown => 2,
            };
            let nearer =
                rank(&b) < rank(&a) || (rank(&b) == rank(&a) && b.probability < a.probability);
            if nearer { b } else { a }
        };
        worse(decide(&least, limits, rule), decide(&most, limits, rule))
    }

    fn lobes_suspected(&self, u: f64) -> bool {
        let of = |gauge: Gauge| self.readings.iter().filter(move |r| r.gauge == gauge);
        if of(Gauge::TwoPoint).next().is_none() || of(Gauge::ThreePoint).next().is_none() {
            return false;
        }
        libm::fabs(mean(of(Gauge::TwoPoint)) - mean(of(Gauge::ThreePoint)))
            > 2.0 * libm::sqrt(2.0) * u
    }
}

/// A diameter has two ends; three contacts repeat every 120 degrees.
fn same_place(a: &BoreReading, b: &BoreReading) -> bool {
    let period = match a.gauge {
        Gauge::TwoPoint => core::f64::consts::PI,
        Gauge::ThreePoint => core::f64::consts::TAU / 3.0,
    };
    let turn = libm::fmod(libm::fabs(a.at.radians() - b.at.radians()), period);
    a.gauge == b.gauge
        && (to_mm(a.depth) - to_mm(b.depth)).abs() < 0.01
        && libm::fmin(turn, period - turn) < deg(0.01).value
}

fn mean<'a>(readings: impl Iterator<Item = &'a BoreReading>) -> f64 {
    let (sum, n) = readings.fold((0.0, 0.0), |(sum, n), r| {
        (sum + to_mm(r.diameter.value()), n + 1.0)
    });
    sum / n
}

fn rms<'a>(readings: impl Iterator<Item = &'a BoreReading>) -> f64 {
    let (sum, n) = readings.fold((0.0, 0.0), |(sum, n), r| {
        let u = to_mm(r.diameter.standard_uncertainty());
        (sum + u * u, n + 1.0)
    });
    libm::sqrt(sum / n)
}

/// Smallest and largest; nothing at all only for no reading at all, which the constructor refuses.
fn extremes(readings: &[&BoreReading]) -> (Reading, Reading) {
    let by_size = |a: &&&BoreReading, b: &&&BoreReading| {
        to_mm(a.diameter.value()).total_cmp(&to_mm(b.diameter.value()))
    };
    let least = readings
        .iter()
        .min_by(by_size)
        .map_or(Reading::zero(), |r| r.diameter);
    let most = readings
        .iter()
        .max_by(by_size)
        .map_or(Reading::zero(), |r| r.diameter);
    (least, most)
}

const ONE_AXIS: &str = "anything but one axis: read a second one, square to it";

fn section(depth: f64, own: &[&BoreReading]) -> Result<Section, Error> {
    let (least, most) = extremes(own);
    let of = |gauge: Gauge| {
        own.iter()
            .copied()
            .filter(move |r| r.gauge == gauge)
            .collect::<Vec<_>>()
    };
    let (two, three) = (of(Gauge::TwoPoint), of(Gauge::ThreePoint));
    // Readings of different gauges differ by what each is blind to, so only like is compared with like.
    let spread = [&two, &three]
        .into_iter()
        .filter(|r| !r.is_empty())
        .map(|r| extremes(r))
        .map(|(low, high)| to_mm(high.value()) - to_mm(low.value()))
        .fold(0.0, f64::max);
    let mut blind_to: Vec<Text> = Vec::new();
    if own.len() < 2 {
        blind_to.push(ONE_AXIS.into());
    }
    if three.is_empty() {
        blind_to.push("odd lobes: two contacts read the same across them".into());
    }
    if two.len() < 2 && !three.is_empty() {
        blind_to.push("an ellipse: three contacts average it away".into());
    }
    let ellipse = ellipse(&two);
    if two.len() >= 2 && ellipse.is_none() {
        blind_to.push(
            "an ellipse that stands between the axes read: read a third at 60 or 45 degrees".into(),
        );
    }
    Ok(Section {
        depth: mm(depth),
        mean: Reading::new(mm(mean(own.iter().copied())), mm(rms(own.iter().copied())))?,
        least,
        most,
        spread: mm(spread),
        ellipse,
        blind_to,
    })
}

/// D = D₀ + A cos 2θ + B sin 2θ by least squares: exact through three diameters, such as 0, 60 and 120 degrees, where
/// it is A = ⅔ Σ D cos 2θ, B = ⅔ Σ D sin 2θ.
fn ellipse(two: &[&BoreReading]) -> Option<Ellipse> {
    let around: Vec<P> = two
        .iter()
        .map(|r| {
            let twice = 2.0 * r.at.radians();
            P {
                x: libm::cos(twice),
                y: libm::sin(twice),
                z: to_mm(r.diameter.value()),
            }
        })
        .collect();
    let fit = lsq::fit(&around)?;
    let (a, b) = (fit.plane.a, fit.plane.b);
    let half = libm::hypot(a, b);
    let long = libm::atan2(b, a) / 2.0;
    let u = rms(two.iter().copied());
    Some(Ellipse {
        mean: mm(fit.plane.c),
        ovality: mm(2.0 * half),
        out_of_round: mm(half),
        long_at: if half > 0.0 {
            Clock::towards(libm::sin(long), libm::cos(long))
        } else {
            None
        },
        standard_uncertainty: mm(2.0 * fit.worst_slope_u(u)),
    })
}
