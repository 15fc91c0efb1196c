//! Rolling bearing rings: tolerances of mean diameters (ISO 492) and radial internal clearance (ISO 5753-1).
//!
//! Ring bores and ring outsides are both *minus* tolerances: a bearing bore is not an H hole. The limits hold for the
//! mean of two-point diameters; a thin ring may be out of round beyond them.

use core::str::FromStr;

use super::TableSource;
use super::tables::iso492::RINGS;
use super::tables::iso5753::CLEARANCES;
use crate::measure::Limits;
use crate::quantity::{Length, in_mm, mm, nanometres, um};
use crate::{Error, ErrorKind};

/// Tolerance class of a bearing ring (ISO 492).
///
/// ```
/// use framegauge::fit::RingClass;
/// assert_eq!("P6".parse::<RingClass>().unwrap(), RingClass::Six);
/// assert_eq!(RingClass::Five.to_string(), "5");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, strum::Display, strum::EnumIter)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum RingClass {
    /// Class Normal (P0).
    #[default]
    Normal,
    /// Class 6 (P6).
    #[strum(to_string = "6")]
    #[cfg_attr(feature = "serde", serde(rename = "6"))]
    Six,
    /// Class 5 (P5).
    #[strum(to_string = "5")]
    #[cfg_attr(feature = "serde", serde(rename = "5"))]
    Five,
}

impl FromStr for RingClass {
    type Err = Error;

    /// Reads `Normal`, `P0`, `6`, `P6`, `5` or `P5`.
    fn from_str(text: &str) -> Result<Self, Error> {
        match text.trim() {
            "Normal" | "normal" | "N" | "P0" | "0" => Ok(Self::Normal),
            "6" | "P6" => Ok(Self::Six),
            "5" | "P5" => Ok(Self::Five),
            _ => Err(Error::new(
                ErrorKind::UnknownName,
                "ring class",
                text,
                "no such class here",
                "one of Normal, 6, 5",
            )),
        }
    }
}

/// Which size of a ring.
///
/// ```
/// assert_eq!(framegauge::fit::RingSize::Outside.to_string(), "outside");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display)]
#[strum(serialize_all = "snake_case")]
pub enum RingSize {
    /// Mean bore of the inner ring.
    Bore,
    /// Mean outside diameter of the outer ring.
    Outside,
    /// Width of a ring; the range is that of the bore.
    Width,
}

/// Internal clearance group of a bearing (ISO 5753-1), from tight to loose.
///
/// ```
/// use framegauge::fit::ClearanceGroup;
/// assert!(ClearanceGroup::C2 < ClearanceGroup::CN && ClearanceGroup::CN < ClearanceGroup::C3);
/// assert_eq!("C4".parse::<ClearanceGroup>().unwrap(), ClearanceGroup::C4);
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[allow(clippy::upper_case_acronyms, reason = "printed so")]
pub enum ClearanceGroup {
    /// Smaller than normal.
    C2,
    /// Normal.
    CN,
    /// Larger than normal.
    C3,
    /// Larger than C3.
    C4,
}

/// Lower and upper deviation or clearance of a bearing, with its source.
///
/// ```
/// use framegauge::{fit::{RingClass, RingSize, ring_tolerance}, mm};
/// let bore = ring_tolerance(RingSize::Bore, RingClass::Six, mm(30.0)).unwrap();
/// assert_eq!(bore.around(mm(30.0)).unwrap().to_string(), "29.992 to 30.000 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RingTolerance {
    /// Lower deviation from the nominal size, negative.
    pub lower: Length,
    /// Upper deviation, 0 throughout these classes.
    pub upper: Length,
    /// Where it was read. The grade differs from row to row: some ranges are remembered only.
    pub from: TableSource,
}

impl RingTolerance {
    /// The limits of size of a ring of this nominal size.
    ///
    /// # Errors
    /// `NotFinite` for a nominal size that is not finite.
    pub fn around(&self, nominal: Length) -> Result<Limits, Error> {
        Limits::between(nominal + self.lower, nominal + self.upper, self.from.grade)
    }
}

fn size_nm(field: &'static str, size: Length) -> Result<i64, Error> {
    match nanometres(size) {
        Some(nm) if nm > 0 => Ok(nm),
        Some(_) => Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            in_mm(size),
            "must be above 0 mm",
            "a size has no sign",
        )),
        None => Err(Error::new(
            ErrorKind::NotFinite,
            field,
            size.value,
            "must be a finite length",
            "give the size with its unit",
        )),
    }
}

fn within(nm: i64, over: u8, up_to: u8) -> bool {
    nm > i64::from(over) * 1_000_000 && nm <= i64::from(up_to) * 1_000_000
}

fn tenth(tenths: i16) -> Length {
    um(f64::from(tenths) / 10.0)
}

/// The tolerance of a ring (ISO 492): bore and outside by their own nominal size, width by the nominal **bore**.
///
/// # Errors
/// `NotFinite`, `OutOfRange` at or below 0 mm, `NotTabulated` outside the ranges held (bore and width over 10 to 80 mm,
/// outside over 18 to 80 mm).
///
/// ```
/// use framegauge::{Grade, fit::{RingClass, RingSize, ring_tolerance}, in_mm, mm};
/// let outside = ring_tolerance(RingSize::Outside, RingClass::Normal, mm(42.0)).unwrap();
/// assert_eq!(in_mm(outside.lower).to_string(), "-0.011 mm");
/// // Over 50 mm the outside of class Normal is remembered, not read: the grade says so.
/// let big = ring_tolerance(RingSize::Outside, RingClass::Normal, mm(52.0)).unwrap();
/// assert_eq!(big.from.grade, Grade::Memory);
/// ```
pub fn ring_tolerance(
    size: RingSize,
    class: RingClass,
    nominal: Length,
) -> Result<RingTolerance, Error> {
    let nm = size_nm("nominal size", nominal)?;
    RINGS
        .iter()
        .find(|row| row.quantity == size && row.class == class && within(nm, row.over, row.up_to))
        .map(|row| RingTolerance {
            lower: tenth(row.lower),
            upper: mm(0.0),
            from: row.from,
        })
        .ok_or_else(|| {
            Error::new(
                ErrorKind::NotTabulated,
                "ring",
                alloc::format!("{size} {} class {class}", in_mm(nominal)),
                "no ring tolerance is held for this size",
                "give the limits of the ring, or measure it",
            )
        })
}

/// Radial internal clearance of a deep groove bearing with cylindrical bore before mounting (ISO 5753-1), lower and upper.
///
/// # Errors
/// `NotFinite`, `OutOfRange` at or below 0 mm, `NotTabulated` above 80 mm bore.
///
/// ```
/// use framegauge::{fit::{ClearanceGroup, internal_clearance}, mm};
/// // A 30 mm bore is in the row over 24 up to and including 30.
/// let (limits, _) = internal_clearance(mm(30.0), ClearanceGroup::CN).unwrap();
/// assert_eq!(limits.to_string(), "0.005 to 0.020 mm");
/// ```
pub fn internal_clearance(
    bore: Length,
    group: ClearanceGroup,
) -> Result<(Limits, TableSource), Error> {
    let nm = size_nm("bore", bore)?;
    let row = CLEARANCES
        .iter()
        .find(|row| row.group == group && within(nm, row.over, row.up_to))
        .ok_or_else(|| {
            Error::new(
                ErrorKind::NotTabulated,
                "bore",
                in_mm(bore),
                "no internal clearance is held above 80 mm",
                "ask the bearing maker",
            )
        })?;
    let limits = Limits::between(tenth(row.min), tenth(row.max), row.from.grade)?;
    Ok((limits, row.from))
}
