//! One section of a bore: the diameters read at one depth.

use alloc::vec::Vec;

use super::bore::{BoreReading, Gauge};
use super::clock::Clock;
use super::kernel::{P, lsq};
use super::report::report;
use crate::Error;
use crate::evidence::Text;
use crate::measure::Reading;
use crate::quantity::{Length, mm, to_mm};

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
        mean: Length as mm mean_mm,
        /// Largest less smallest diameter.
        ovality: Length as mm ovality_mm,
        /// Radial out-of-round, half of that (RONt of ISO 12181 for a pure ellipse).
        out_of_round: Length as mm out_of_round_radial_mm,
        /// One end of the long axis; the other lies opposite.
        long_at: Option<Clock> as own long_at,
        /// Standard uncertainty of the ovality.
        standard_uncertainty: Length as mm standard_uncertainty_mm,
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
        depth: Length as mm depth_mm,
        /// Mean of the readings.
        mean: Reading as own mean,
        /// Smallest reading.
        least: Reading as own least,
        /// Largest reading.
        most: Reading as own most,
        /// Largest less smallest diameter, between readings of one gauge: the bore is out of round by at least this on
        /// diameter, half of it on radius.
        spread: Length as mm ovality_at_least_mm,
        /// The ellipse, where three two-point diameters or more at distinct angles allow it.
        ellipse: Option<Ellipse> as own ellipse,
        /// What the readings of this section cannot see.
        blind_to: Vec<Text> as own blind_to,
    }
}

pub(crate) fn mean<'a>(readings: impl Iterator<Item = &'a BoreReading>) -> f64 {
    let (sum, n) = readings.fold((0.0, 0.0), |(sum, n), r| {
        (sum + to_mm(r.diameter.value()), n + 1.0)
    });
    sum / n
}

pub(crate) fn rms<'a>(readings: impl Iterator<Item = &'a BoreReading>) -> f64 {
    let (sum, n) = readings.fold((0.0, 0.0), |(sum, n), r| {
        let u = to_mm(r.diameter.standard_uncertainty());
        (sum + u * u, n + 1.0)
    });
    libm::sqrt(sum / n)
}

/// Smallest and largest; nothing at all only for no reading at all, which the constructor refuses.
pub(crate) fn extremes(readings: &[&BoreReading]) -> (Reading, Reading) {
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

pub(crate) fn section(depth: f64, own: &[&BoreReading]) -> Result<Section, Error> {
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
        blind_to.push(Section::ONE_AXIS.into());
    }
    if three.is_empty() {
        blind_to.push(Section::ODD_LOBES.into());
    }
    if two.len() < 2 && !three.is_empty() {
        blind_to.push(Section::ELLIPSE.into());
    }
    let ellipse = ellipse(&two);
    if two.len() >= 2 && ellipse.is_none() {
        blind_to.push(Section::BETWEEN_AXES.into());
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
