//! Bores: diameters at clock angles and depths, and what they say of size and shape.

use alloc::format;
use alloc::vec::Vec;

use super::clock::Clock;
use super::report::report;
use super::section::{Section, extremes, mean, rms, section};
use crate::measure::{Decision, DecisionRule, Limits, Reading, decide};
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
        difference: Reading as own difference,
        /// Distance between them.
        over: Length as mm over_mm,
        /// Whether the difference is larger than its expanded uncertainty (k = 2).
        shown: bool as own shown,
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
        size: Size as own size,
        /// Each depth by itself, outermost first.
        sections: Vec<Section> as own sections,
        /// Taper, where two depths or more were read.
        taper: Option<Taper> as own taper,
        /// Whether two axes at two depths or more were read; if not, every figure of shape is "at least".
        complete: bool as own two_axes_at_two_depths,
        /// Three-contact readings differ from two-contact ones by more than their uncertainty: odd lobes are likely.
        lobes_suspected: bool as own odd_lobes_suspected,
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
        depths.dedup_by(|next, kept| *next < *kept + SAME_DEPTH_MM);
        let mut sections = Vec::with_capacity(depths.len());
        for depth in &depths {
            // From its first depth on: a reading between two sections belongs to one of them.
            let within = *depth..*depth + SAME_DEPTH_MM;
            let at = |r: &&BoreReading| within.contains(&to_mm(r.depth));
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
        let axes = |s: &Section| !s.blind_to.iter().any(|b| b == Section::ONE_AXIS);
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
        decide(&least, limits, rule).worse(decide(&most, limits, rule))
    }

    fn lobes_suspected(&self, u: f64) -> bool {
        let of = |gauge| mean(self.readings.iter().filter(move |r| r.gauge == gauge));
        // Without readings of one kind their mean is no number, and no difference is larger than any limit.
        libm::fabs(of(Gauge::TwoPoint) - of(Gauge::ThreePoint)) > 2.0 * libm::sqrt(2.0) * u
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
