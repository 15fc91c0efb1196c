//! ASME B1.1: Unified tolerances by formula, in inches. The series decides the length of engagement that is assumed.

use core::fmt;

use super::tables::series::SERIES;
use super::{Member, UnifiedClass};

/// The series a Unified size belongs to.
///
/// ```
/// use framegauge::thread::Series;
/// assert_eq!(Series::Fine.to_string(), "UNF");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Series {
    /// UNC.
    Coarse,
    /// UNF.
    Fine,
    /// UNEF.
    ExtraFine,
    /// 4-UN, 6-UN or 8-UN.
    ConstantPitchCoarse,
    /// 12-UN to 32-UN, and UNS.
    Other,
}

impl fmt::Display for Series {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Coarse => "UNC",
            Self::Fine => "UNF",
            Self::ExtraFine => "UNEF",
            Self::ConstantPitchCoarse | Self::Other => "UN",
        })
    }
}

#[derive(Debug)]
pub(super) struct SeriesRow {
    major: u32,
    tpi: u16,
    series: Series,
    memory: bool,
}

pub(super) const fn row(major: u32, tpi: u16, series: Series, memory: bool) -> SeriesRow {
    SeriesRow {
        major,
        tpi,
        series,
        memory,
    }
}

/// Series of a size and whether that is known from memory only. Major diameter in ten-thousandths of an inch.
pub(super) fn series_of(major: u32, tpi: u16) -> (Series, bool) {
    if let Ok(at) = SERIES.binary_search_by_key(&(major, tpi), |row| (row.major, row.tpi))
        && let Some(row) = SERIES.get(at)
    {
        return (row.series, row.memory);
    }
    if [4, 6, 8].contains(&tpi) && major > 10_000 {
        (Series::ConstantPitchCoarse, false)
    } else {
        (Series::Other, false)
    }
}

/// Threads per inch of a size in a series, where the lists hold it.
pub(super) fn tpi_in(series: Series, major: u32) -> Option<u16> {
    SERIES
        .iter()
        .find(|row| row.major == major && row.series == series)
        .map(|row| row.tpi)
}

/// Limits in inches; `major.1` and `minor.0` are `None` where the standard sets no limit.
#[derive(Debug, Clone, Copy)]
pub(super) struct InchLimits {
    pub major: (f64, Option<f64>),
    pub pitch_diameter: (f64, f64),
    pub minor: (f64, f64),
}

/// Decimal places of an inch that a printed value has.
#[derive(Clone, Copy)]
enum Places {
    Three,
    Four,
    Six,
}

/// Rounded to printed places, halves up as the printed rows are; the nudge undoes binary noise on exact ties.
fn places(value: f64, places: Places) -> f64 {
    let scale = match places {
        Places::Three => 1e3,
        Places::Four => 1e4,
        Places::Six => 1e6,
    };
    libm::floor(value * scale + 0.5 + 1e-7) / scale
}

/// Limits by ASME B1.1: basic major diameter in inches, threads per inch.
pub(super) fn limits(d: f64, tpi: u16, series: Series, class: UnifiedClass) -> InchLimits {
    let n = f64::from(tpi);
    let p = 1.0 / n;
    let p_two_thirds = {
        let root = libm::cbrt(p);
        root * root
    };
    let engagement = match series {
        Series::Coarse | Series::Fine | Series::ConstantPitchCoarse => d,
        Series::ExtraFine | Series::Other => 9.0 * p,
    };
    let base = places(
        0.0015 * libm::cbrt(d) + 0.0015 * libm::sqrt(engagement) + 0.015 * p_two_thirds,
        Places::Six,
    );
    let h = 0.866_025_403_784_438_6 * p;
    let pitch_diameter = places(d - 0.75 * h, Places::Four);
    match class.member() {
        Member::External => {
            let (factor, crest) = match class.number() {
                1 => (1.5, 0.09),
                2 => (1.0, 0.06),
                _ => (0.75, 0.06),
            };
            let allowance = if class.number() == 3 {
                0.0
            } else {
                places(0.3 * base, Places::Four)
            };
            let major_max = places(d, Places::Four) - allowance;
            let pitch_max = pitch_diameter - allowance;
            let pitch_min = pitch_max - places(factor * base, Places::Four);
            InchLimits {
                major: (
                    major_max - places(crest * p_two_thirds, Places::Four),
                    Some(major_max),
                ),
                pitch_diameter: (pitch_min, pitch_max),
                minor: (
                    places(pitch_min - 0.75 * h, Places::Four),
                    places(major_max - 1.25 * h, Places::Four),
                ),
            }
        }
        Member::Internal => {
            let factor = match class.number() {
                1 => 1.95,
                2 => 1.3,
                _ => 0.975,
            };
            let close = class.number() == 3;
            // Held between bounds so that fine and coarse pitches keep a sensible depth.
            let by_size = 0.05 * p_two_thirds + 0.03 * p / d - 0.002;
            let tolerance = if close {
                let least = if tpi >= 13 {
                    0.23 * p - 1.5 * p * p
                } else {
                    0.12 * p
                };
                by_size.max(least).min(0.394 * p)
            } else if d < 0.25 {
                by_size.max(0.25 * p - 0.4 * p * p).min(0.394 * p)
            } else {
                // Coarser than 4 tpi the standard has another rule; such pitches are refused when they are made.
                0.25 * p - 0.4 * p * p
            };
            let basic_minor = d - 1.25 * h;
            // Printed to three places from size #6 (0.138 in) up, except in class 3B.
            let (digits, low, high) = if close || d < 0.138 {
                (
                    Places::Four,
                    basic_minor,
                    places(basic_minor, Places::Four) + tolerance,
                )
            } else {
                (Places::Three, basic_minor, basic_minor + tolerance)
            };
            InchLimits {
                major: (places(d, Places::Four), None),
                pitch_diameter: (
                    pitch_diameter,
                    pitch_diameter + places(factor * base, Places::Four),
                ),
                minor: (places(low, digits), places(high, digits)),
            }
        }
    }
}
