//! Limit deviations of a class at a nominal size, from the tables of ISO 286-1. The formulas are not used: rounded,
//! they miss many cells of the tables.

use core::fmt;

use super::class::{DeviationLetter as L, Feature, FitClass, ToleranceGrade};
use super::tables::iso286::{DELTA, HOLE, HOLE_SOURCE, IT, IT_SOURCE, RANGES, SHAFT, SHAFT_SOURCE};
use crate::evidence::{Citation, Grade};
use crate::measure::Limits;
use crate::quantity::{Length, in_mm, nanometres, um};
use crate::{Error, ErrorKind};

/// Where a table of this room was read, and what it is worth. The source is named by its id in the list of sources.
///
/// ```
/// use framegauge::{Grade, fit::{ClearanceGroup, internal_clearance}, mm};
/// let (_, from) = internal_clearance(mm(25.0), ClearanceGroup::C3).unwrap();
/// assert_eq!(from.grade, Grade::Agreeing);
/// assert!(!from.source.is_empty());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TableSource {
    /// Id of the source; empty when the value is remembered.
    pub source: &'static str,
    /// Table, clause or page.
    pub at: &'static str,
    /// What it is worth.
    pub grade: Grade,
}

impl TableSource {
    /// As a citation; `None` where the value is remembered.
    ///
    /// ```
    /// let cited = framegauge::fit::iso286_sources()[0].citation().unwrap();
    /// assert!(!cited.to_string().is_empty());
    /// ```
    #[must_use]
    pub fn citation(&self) -> Option<Citation> {
        crate::evidence::tables::SOURCES
            .iter()
            .find(|source| source.id == self.source)
            .map(|source| Citation::from_table(source, self.at))
    }
}

/// Where the ISO 286 tables were read: standard tolerances, shaft deviations, hole deviations.
///
/// ```
/// use framegauge::{Grade, fit::iso286_sources};
/// assert!(iso286_sources().iter().all(|s| s.grade == Grade::Standard));
/// ```
#[must_use]
pub const fn iso286_sources() -> [TableSource; 3] {
    [IT_SOURCE, SHAFT_SOURCE, HOLE_SOURCE]
}

/// Upper and lower limit deviation from the nominal size, kept as whole nanometres.
///
/// ```
/// use framegauge::{fit::limit_deviations, in_mm, mm};
/// let n7 = limit_deviations(mm(42.0), "N7".parse().unwrap()).unwrap();
/// assert_eq!((n7.upper_um(), n7.lower_um()), (-8.0, -33.0));
/// assert_eq!(n7.to_string(), "-8/-33 µm");
/// assert_eq!(in_mm(n7.upper() - n7.lower()).to_string(), "0.025 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LimitDeviations {
    upper_nm: i32,
    lower_nm: i32,
}

impl LimitDeviations {
    /// Upper deviation, positive above the nominal size.
    #[must_use]
    pub fn upper(self) -> Length {
        um(self.upper_um())
    }
    /// Lower deviation, positive above the nominal size.
    #[must_use]
    pub fn lower(self) -> Length {
        um(self.lower_um())
    }
    /// Upper deviation in micrometres.
    #[must_use]
    pub fn upper_um(self) -> f64 {
        f64::from(self.upper_nm) / 1e3
    }
    /// Lower deviation in micrometres.
    #[must_use]
    pub fn lower_um(self) -> f64 {
        f64::from(self.lower_nm) / 1e3
    }
    /// The limits of size at this nominal size.
    ///
    /// # Errors
    /// `NotFinite` for a nominal size that is not finite.
    pub fn around(self, nominal: Length) -> Result<Limits, Error> {
        Limits::between(
            nominal + self.lower(),
            nominal + self.upper(),
            limits_grade(),
        )
    }
}

/// Limits rest on a tolerance and a deviation, so on the weakest of the three grids.
fn limits_grade() -> Grade {
    IT_SOURCE
        .grade
        .weaker(SHAFT_SOURCE.grade)
        .weaker(HOLE_SOURCE.grade)
}

impl fmt::Display for LimitDeviations {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = |um: f64| if um > 0.0 { "+" } else { "" };
        let (upper, lower) = (self.upper_um(), self.lower_um());
        write!(f, "{}{upper}/{}{lower} µm", sign(upper), sign(lower))
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for LimitDeviations {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("LimitDeviations", 2)?;
        out.serialize_field("lower_um", &self.lower_um())?;
        out.serialize_field("upper_um", &self.upper_um())?;
        out.end()
    }
}

const NM_PER_MM: i64 = 1_000_000;
/// Tables hold tenths of a micrometre.
const NM_PER_TENTH: i32 = 100;

#[cold]
fn outside(nominal: Length) -> Error {
    if !nominal.value.is_finite() {
        return Error::new(
            ErrorKind::NotFinite,
            "nominal size",
            nominal.value,
            "must be a finite length",
            "give the size with its unit, e.g. `27.2 mm`",
        );
    }
    if nominal.value <= 0.0 {
        return Error::new(
            ErrorKind::OutOfRange,
            "nominal size",
            in_mm(nominal),
            "must be above 0 mm",
            "a size has no sign",
        );
    }
    Error::new(
        ErrorKind::NotTabulated,
        "nominal size",
        in_mm(nominal),
        "the embedded ISO 286 tables end at 120 mm",
        "give the limits of size instead of a class",
    )
}

#[cold]
fn undefined(class: FitClass, nominal: Length, reason: &'static str) -> Error {
    Error::new(
        ErrorKind::NotTabulated,
        "tolerance class",
        alloc::format!("{} {class}", in_mm(nominal)),
        reason,
        "take a neighbouring class, or give the limits of size",
    )
}

/// The size ranges that a nominal size falls in: over a bound, up to and including the next.
#[derive(Clone, Copy)]
struct Range {
    split: usize,
    main: usize,
    /// Some classes are not used up to 1 mm.
    tiny: bool,
}

#[inline]
fn range(nominal: Length) -> Result<Range, Error> {
    let size = match nanometres(nominal) {
        Some(nm) if nm > 0 && nm <= 120 * NM_PER_MM => nm,
        _ => return Err(outside(nominal)),
    };
    // Every bound is a whole millimetre: rounded up, the size finds its range.
    let (split, main) = usize::try_from((size + NM_PER_MM - 1) / NM_PER_MM)
        .ok()
        .and_then(|up| RANGES.get(up))
        .copied()
        .ok_or_else(|| outside(nominal))?;
    Ok(Range {
        split: usize::from(split),
        main: usize::from(main),
        tiny: size <= NM_PER_MM,
    })
}

/// Standard tolerance of a grade in nanometres.
fn tolerance_nm(
    range: Range,
    grade: ToleranceGrade,
    refuse: impl Fn(&'static str) -> Error,
) -> Result<i32, Error> {
    if range.tiny && grade.number() >= Some(14) {
        return Err(refuse("IT14 to IT18 are not used up to 1 mm"));
    }
    IT.get(range.main)
        .and_then(|row| row.get(grade.index()))
        .map(|tenths| tenths * NM_PER_TENTH)
        .ok_or_else(|| refuse("no standard tolerance is tabulated"))
}

/// The width of a standard tolerance grade at a nominal size (ISO 286-1, table of standard tolerances).
///
/// # Errors
/// `NotFinite`, `OutOfRange` at or below 0 mm, `NotTabulated` above 120 mm and for IT14 to IT18 up to 1 mm.
///
/// ```
/// use framegauge::{fit::standard_tolerance, in_mm, mm};
/// let it7 = "IT7".parse().unwrap();
/// // 30 mm belongs to the range over 18 up to and including 30.
/// assert_eq!(in_mm(standard_tolerance(mm(30.0), it7).unwrap()).to_string(), "0.021 mm");
/// assert_eq!(in_mm(standard_tolerance(mm(30.001), it7).unwrap()).to_string(), "0.025 mm");
/// ```
pub fn standard_tolerance(nominal: Length, grade: ToleranceGrade) -> Result<Length, Error> {
    let refuse = |reason| {
        Error::new(
            ErrorKind::NotTabulated,
            "tolerance grade",
            alloc::format!("{} IT{grade}", in_mm(nominal)),
            reason,
            "take a finer grade",
        )
    };
    let nm = tolerance_nm(range(nominal)?, grade, refuse)?;
    Ok(um(f64::from(nm) / 1e3))
}

/// The two limit deviations of a class at a nominal size, to 120 mm (ISO 286-1 tables; ISO 286-2 by addition).
///
/// Rules that the tables carry, all of ISO 286-1: a size on a bound belongs to the range below it. Holes K, M, N up to
/// IT8 and P to ZC up to IT7 take the base value plus Δ = ITn − IT(n−1). k other than IT4 to IT7 starts at 0.
/// `js`/`JS` are ± IT/2 **unrounded**: the half micrometre of an odd IT is kept. (Some tables first drop an odd IT of
/// grades 7 to 11 to the next lower even number and print ± 10 where this gives ± 10.5.)
///
/// # Errors
/// `NotFinite`; `OutOfRange` at or below 0 mm; `NotTabulated` above 120 mm, and for classes undefined at this size, with
/// the reason.
///
/// ```
/// use framegauge::{ErrorKind, fit::limit_deviations, mm};
/// let js7 = limit_deviations(mm(30.0), "JS7".parse().unwrap()).unwrap();
/// assert_eq!((js7.upper_um(), js7.lower_um()), (10.5, -10.5));
/// let refused = limit_deviations(mm(20.0), "t6".parse().unwrap()).unwrap_err();
/// assert_eq!(refused.kind(), ErrorKind::NotTabulated);
/// assert!(refused.problem().contains("24 mm"));
/// ```
#[inline]
pub fn limit_deviations(nominal: Length, class: FitClass) -> Result<LimitDeviations, Error> {
    let range = range(nominal)?;
    let refuse = |reason| undefined(class, nominal, reason);
    let tolerance = tolerance_nm(range, class.grade(), refuse)?;
    if class.letter() == L::Js {
        // Tenths of a micrometre halve into whole nanometres.
        return Ok(LimitDeviations {
            upper_nm: tolerance / 2,
            lower_nm: -tolerance / 2,
        });
    }
    if range.tiny && matches!(class.letter(), L::A | L::B) {
        return Err(refuse("a, b, A and B are not used up to 1 mm"));
    }
    let (fundamental, is_upper) = match class.feature() {
        Feature::Hole => (hole(range, class), class.letter() >= L::J),
        Feature::Shaft => (shaft(range, class), class.letter() <= L::H),
    };
    let fundamental = fundamental.map_err(refuse)?;
    Ok(if is_upper {
        LimitDeviations {
            upper_nm: fundamental,
            lower_nm: fundamental - tolerance,
        }
    } else {
        LimitDeviations {
            upper_nm: fundamental + tolerance,
            lower_nm: fundamental,
        }
    })
}

const NO_CD: &str = "cd, ef and fg are tabulated to 10 mm; a later edition carries them further, but only one \
                     transcription of it was found and it contradicts itself";

/// Why a letter with a column of its own has no value in a range.
const fn blank(letter: L) -> &'static str {
    match letter {
        L::Cd | L::Ef | L::Fg => NO_CD,
        L::T => "t and T start over 24 mm",
        L::V => "v and V start over 14 mm",
        L::Y => "y and Y start over 18 mm",
        _ => "the tables have no value for this size",
    }
}

/// Fundamental deviation of a shaft in nm: es for a to h, ei for the others.
#[inline]
fn shaft(range: Range, class: FitClass) -> Result<i32, &'static str> {
    let letter = class.letter();
    let column = match (letter, class.grade().number()) {
        (L::J, Some(5 | 6)) => 11,
        (L::J, Some(7)) => 12,
        (L::J, Some(8)) => 13,
        (L::J, _) => return Err("j exists as j5, j6, j7 and, up to 3 mm, j8"),
        (L::K, Some(4..=7)) => 14,
        _ if letter <= L::H => letter as usize,
        // From k on the columns follow the letters, two places further on than the letters: j has three, js none, k two.
        _ => letter as usize + 2,
    };
    let cell = SHAFT.get(range.split).and_then(|row| row.get(column));
    match cell {
        Some(Some(tenths)) => Ok(i32::from(*tenths) * NM_PER_TENTH),
        _ if letter == L::J => Err("j8 exists up to 3 mm only"),
        _ => Err(blank(letter)),
    }
}

/// Fundamental deviation of a hole in nm: EI for A to H, ES for the others, Δ included.
#[inline]
fn hole(range: Range, class: FitClass) -> Result<i32, &'static str> {
    let letter = class.letter();
    let number = class.grade().number();
    let (column, last_with_delta) = match (letter, number) {
        (L::J, Some(n @ 6..=8)) => (11 + usize::from(n - 6), None),
        (L::J, _) => return Err("J exists as J6, J7 and J8 only"),
        (L::K | L::M | L::N, n) => {
            let above = n > Some(8);
            let first = match letter {
                L::K => 14,
                L::M => 16,
                _ => 18,
            };
            (first + usize::from(above), (!above).then_some(8))
        }
        _ if letter <= L::H => (letter as usize, None),
        _ => (letter as usize + 4, (number <= Some(7)).then_some(7)),
    };
    let base = match HOLE.get(range.split).and_then(|row| row.get(column)) {
        Some(Some(tenths)) => i32::from(*tenths),
        _ if letter == L::K => return Err("K above IT8 is not defined over 3 mm"),
        _ => return Err(blank(letter)),
    };
    let delta = match (last_with_delta, number) {
        (None, _) => 0,
        // Up to 3 mm there is no delta.
        _ if range.split == 0 => 0,
        (Some(_), Some(n @ 3..=8)) => DELTA
            .get(range.split)
            .and_then(|row| row.get(usize::from(n - 3)))
            .map_or(0, |tenths| i32::from(*tenths)),
        _ => return Err("for K, M, N and P to ZC delta is tabulated for IT3 to IT8 only"),
    };
    Ok((base + delta) * NM_PER_TENTH)
}
