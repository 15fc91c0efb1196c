//! Limits of size of a thread in a tolerance class.

use super::iso965::{self, Missing, Route, Tolerances};
use super::tables::cite;
use super::{
    IsoClass, Member, Position, Series, ThreadForm, ThreadSize, ToleranceClass, UnifiedClass,
    formula, unified,
};
use crate::evidence::{Evidence, Grade};
use crate::measure::{Bound, Limits};
use crate::quantity::{Length, Pitch, in_mm, inch, to_mm, um};
use crate::{Error, ErrorKind};

/// Limits of size of one member of a thread.
///
/// The major diameter of a hole has no upper limit and is [`Bound::Open`] there. The minor diameter of a bolt runs
/// from the rounded root (d3 at the least pitch diameter) to where a GO ring would bite.
///
/// ```
/// use framegauge::{Grade, thread::{Member, limits_of_size}};
/// let axle = limits_of_size(&"M12x1".parse().unwrap(), &"6g".parse().unwrap()).unwrap();
/// assert_eq!(axle.member, Member::External);
/// assert_eq!(axle.major.to_string(), "11.794 to 11.974 mm");
/// // The tables are read in the standard, the formula of the rounded root in one publication:
/// assert_eq!((axle.major.grade(), axle.grade()), (Grade::Standard, Grade::Published));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreadLimits {
    /// The size.
    pub size: ThreadSize,
    /// The class.
    pub class: ToleranceClass,
    /// Which member the limits are for.
    pub member: Member,
    /// Major diameter.
    pub major: Limits,
    /// Pitch diameter.
    pub pitch_diameter: Limits,
    /// Minor diameter.
    pub minor: Limits,
    /// Pitch diameter by the second way of deriving it, where the tables are silent and the two ways differ.
    pub other_pitch_diameter: Option<Limits>,
    evidence: &'static Evidence,
}

impl ThreadLimits {
    /// What the limits rest on.
    #[must_use]
    pub const fn evidence(&self) -> &'static Evidence {
        self.evidence
    }

    /// The weakest grade among the limits.
    #[must_use]
    pub fn grade(&self) -> Grade {
        [self.major, self.pitch_diameter, self.minor]
            .iter()
            .map(Limits::grade)
            .fold(self.evidence.worth(), Grade::weaker)
    }
}

/// The size M47x1 of the T47 shell: the one size in use on bicycles that ISO 965-1 leaves out.
const OUTSIDE_TABLE: (u32, u16) = (47_000, 1000);

/// Limits of size by ISO 965-1 (ISO metric and ISO at an inch pitch) or ASME B1.1 (Unified).
///
/// ISO basic diameters are rounded to 0.001 mm first, as ISO 724 prints them. M47x1 and every inch pitch lie outside
/// the tables of ISO 965-1: they are graded `Derived` and carry both values where two ways of deriving differ. Results
/// that use position f are graded `Memory`. Allocates nothing unless it refuses.
///
/// # Errors
/// `NotTabulated` when the pitch is not tabulated in its diameter range, the grade or position does not exist for it,
/// or the form's limits were never found (BSC, Whitworth: only basic sizes are known); `NotApplicable` for a class of
/// another system and for the unknown form.
///
/// ```
/// use framegauge::{Grade, measure::Bound, thread::limits_of_size};
/// let of = |size: &str, class: &str| limits_of_size(&size.parse().unwrap(), &class.parse().unwrap());
/// let hanger = of("M10x1", "6H").unwrap();
/// assert_eq!(hanger.pitch_diameter.to_string(), "9.350 to 9.500 mm");
/// assert_eq!(hanger.minor.to_string(), "8.917 to 9.153 mm");
/// assert_eq!(hanger.major.upper(), Bound::Open);
///
/// let t47 = of("M47x1", "6H").unwrap();
/// assert_eq!(t47.grade(), Grade::Derived);
/// assert_eq!(t47.pitch_diameter.to_string(), "46.350 to 46.540 mm");
/// assert_eq!(t47.other_pitch_diameter.unwrap().to_string(), "46.350 to 46.530 mm");
///
/// assert!(of("1.370 in x 24 tpi BSC", "6H").unwrap_err().to_string().contains("BSC"));
/// ```
pub fn limits_of_size(size: &ThreadSize, class: &ToleranceClass) -> Result<ThreadLimits, Error> {
    match (size.form(), class) {
        (ThreadForm::IsoMetric, ToleranceClass::Iso(iso)) => {
            let major = micrometres(size.major());
            let found = match pitch_um(size) {
                Some(pitch) => match iso965::tabulated(major, pitch, *iso) {
                    Err(Missing::PitchInRange) if (major, pitch) == OUTSIDE_TABLE => {
                        formula::beyond_range(major, pitch, *iso)
                    }
                    found => found,
                },
                None => Err(Missing::Pitch),
            };
            iso_limits(size, *iso, found)
        }
        (ThreadForm::IsoInch, ToleranceClass::Iso(iso)) => {
            let found = formula::by_formula(micrometres(size.major()), size.pitch().to_mm(), *iso);
            iso_limits(size, *iso, found)
        }
        (ThreadForm::Unified, ToleranceClass::Unified(unified)) => unified_limits(size, *unified),
        (form, _) => Err(refusal(form, size, class)),
    }
}

#[cold]
fn refusal(form: ThreadForm, size: &ThreadSize, class: &ToleranceClass) -> Error {
    let (kind, problem, remedy) = match form {
        ThreadForm::Bsc => (
            ErrorKind::NotTabulated,
            "the limits of BSC threads (BS 811) were not found in any source; only basic sizes are known",
            "use the basic sizes, or gauge with a plug or ring made for this thread",
        ),
        ThreadForm::Whitworth => (
            ErrorKind::NotTabulated,
            "the limits of Whitworth threads (BS 84) were not found in any source; only basic sizes are known",
            "use the basic sizes, or gauge with a plug or ring made for this thread",
        ),
        ThreadForm::Unknown => (
            ErrorKind::NotApplicable,
            "the form of this thread is not known, so nothing can be derived",
            "name the form, e.g. `1.370 in x 24 tpi BSC`",
        ),
        ThreadForm::IsoMetric | ThreadForm::IsoInch => (
            ErrorKind::NotApplicable,
            "this class belongs to Unified threads",
            "use an ISO class such as 6H or 6g",
        ),
        ThreadForm::Unified => (
            ErrorKind::NotApplicable,
            "this class belongs to ISO threads",
            "use a Unified class such as 2A or 2B",
        ),
    };
    Error::new(
        kind,
        "tolerance class",
        alloc::format!("{size} in class {class}"),
        problem,
        remedy,
    )
}

#[cold]
pub(super) fn missing(missing: Missing, size: &ThreadSize, class: IsoClass) -> Error {
    let (field, value, problem, remedy) = match missing {
        Missing::Pitch => (
            "pitch",
            alloc::format!("{size}"),
            "ISO 965-1 does not tabulate this pitch",
            "check the pitch against the standard pitches",
        ),
        Missing::Diameter => (
            "major diameter",
            alloc::format!("{}", in_mm(size.major())),
            "ISO 965-1 covers 0.99 mm to 355 mm",
            "check the unit",
        ),
        Missing::PitchInRange => (
            "pitch",
            alloc::format!("{size}"),
            "ISO 965-1 does not tabulate this pitch in this diameter range",
            "check the pitch; without a table no limit is offered",
        ),
        Missing::Position => (
            "tolerance position",
            alloc::format!("{class}"),
            "this position has no value at this pitch",
            "use g or h",
        ),
        Missing::Grade => (
            "tolerance grade",
            alloc::format!("{class}"),
            "ISO 965-1 does not tabulate this grade at this pitch",
            "the usual classes are 6H and 6g",
        ),
    };
    Error::new(ErrorKind::NotTabulated, field, value, problem, remedy)
}

/// Whole micrometres, halves up: every length here is above zero and below 300 mm.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "sizes are checked when they are made"
)]
pub(super) fn whole(um: f64) -> u32 {
    (um + 0.5) as u32
}

pub(super) fn micrometres(length: Length) -> u32 {
    whole(length.value * 1e6)
}

/// The pitch in whole micrometres, if it is whole.
pub(super) fn pitch_um(size: &ThreadSize) -> Option<u16> {
    let exact = size.pitch().to_mm() * 1e3;
    let um = whole(exact);
    (libm::fabs(exact - f64::from(um)) < 1e-6)
        .then(|| u16::try_from(um).ok())
        .flatten()
}

#[inline(always)]
fn iso_limits(
    size: &ThreadSize,
    class: IsoClass,
    found: Result<Tolerances, Missing>,
) -> Result<ThreadLimits, Error> {
    let found = match found {
        Ok(found) => found,
        Err(reason) => return Err(missing(reason, size, class)),
    };
    const TO_PITCH_DIAMETER: f64 = 649.519_052_838_329; // 3H/4 per mm of pitch, in um
    const TO_MINOR: f64 = 1_082.531_754_730_548_4; // 5H/4
    const TO_ROUNDED_ROOT: f64 = 616.025; // d2 - d3 at the least pitch diameter (ISO 965-1, clause 11)
    let (d, p) = (size.major().value * 1e6, size.pitch().to_mm());
    let major = i64::from(whole(d));
    let pitch_diameter = i64::from(whole(d - TO_PITCH_DIAMETER * p));
    let minor = i64::from(whole(d - TO_MINOR * p));
    let (evidence, grade) = match (found.route, class.position()) {
        (_, Position::ExternalF) => (&cite::ISO_LIMITS_F, Grade::Memory),
        (Route::Table, _) => (&cite::ISO_LIMITS, Grade::Standard),
        (Route::Completed, _) => (&cite::ISO_LIMITS_COMPLETED, Grade::Derived),
        (Route::Formula, _) => (&cite::ISO_LIMITS_DERIVED, Grade::Derived),
    };
    #[expect(clippy::cast_precision_loss, reason = "below 300 000")]
    let at = |micrometres: i64| Bound::At(um(micrometres as f64));
    let pair = |low: i64, high: i64, grade: Grade| Limits::from_table(at(low), at(high), grade);
    let lift = i64::from(found.deviation);
    let tolerance = i64::from(found.pitch_diameter);
    let crest = i64::from(found.crest);
    let other = found
        .pitch_diameter_by_formula
        .filter(|um| *um != found.pitch_diameter)
        .map(i64::from);
    let member = class.member();
    let (major, pitch, minor, other) = match member {
        Member::Internal => {
            let low = pitch_diameter + lift;
            (
                Limits::from_table(at(major + lift), Bound::Open, grade),
                pair(low, low + tolerance, grade),
                pair(minor + lift, minor + lift + crest, grade),
                other.map(|t| pair(low, low + t, grade)),
            )
        }
        Member::External => {
            let high = pitch_diameter - lift;
            #[expect(clippy::cast_precision_loss, reason = "below 300 000")]
            let root = whole((high - tolerance) as f64 - TO_ROUNDED_ROOT * p);
            (
                pair(major - lift - crest, major - lift, grade),
                pair(high - tolerance, high, grade),
                pair(
                    i64::from(root),
                    minor - lift,
                    grade.weaker(Grade::Published),
                ),
                other.map(|t| pair(high - t, high, grade)),
            )
        }
    };
    Ok(ThreadLimits {
        size: *size,
        class: ToleranceClass::Iso(class),
        member,
        major,
        pitch_diameter: pitch,
        minor,
        other_pitch_diameter: other,
        evidence,
    })
}

/// Basic diameter in inches and in ten-thousandths of one, as the lists of series name it, and threads per inch.
fn unified_key(size: &ThreadSize) -> Option<(f64, u32, u16)> {
    let inches = to_mm(size.major()) / 25.4;
    Some((
        inches,
        ten_thousandths(inches),
        size.pitch().threads_per_inch()?,
    ))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast of floats saturates, and no list holds such a size"
)]
fn ten_thousandths(inches: f64) -> u32 {
    libm::round(inches * 1e4) as u32
}

/// The pitch that a series has at this diameter, where the lists hold it.
pub(crate) fn pitch_in_series(major: Length, series: Series) -> Option<Pitch> {
    let tpi = unified::tpi_in(series, ten_thousandths(to_mm(major) / 25.4))?;
    Pitch::tpi(tpi).ok()
}

/// The series of a Unified size; `None` for other forms.
///
/// ```
/// use framegauge::thread::{Series, series};
/// assert_eq!(series(&"1/2-20 UN".parse().unwrap()), Some(Series::Fine));
/// assert_eq!(series(&"M10x1".parse().unwrap()), None);
/// ```
#[must_use]
pub fn series(size: &ThreadSize) -> Option<Series> {
    if size.form() != ThreadForm::Unified {
        return None;
    }
    unified_key(size).map(|(_, key, tpi)| unified::series_of(key, tpi).0)
}

fn unified_limits(size: &ThreadSize, class: UnifiedClass) -> Result<ThreadLimits, Error> {
    let Some((inches, key, tpi)) = unified_key(size) else {
        return Err(refusal(
            ThreadForm::Unknown,
            size,
            &ToleranceClass::Unified(class),
        ));
    };
    let (series, memory) = unified::series_of(key, tpi);
    let found = unified::limits(inches, tpi, series, class);
    let (evidence, grade) = if memory {
        (&cite::UNIFIED_LIMITS_MEMORY, Grade::Memory)
    } else {
        (&cite::UNIFIED_LIMITS, Grade::Derived)
    };
    let upper = found
        .major
        .1
        .map_or(Bound::Open, |max| Bound::At(inch(max)));
    let pair = |(low, high): (f64, f64)| Limits::between(inch(low), inch(high), grade);
    Ok(ThreadLimits {
        size: *size,
        class: ToleranceClass::Unified(class),
        member: class.member(),
        major: Limits::new(Bound::At(inch(found.major.0)), upper, grade)?,
        pitch_diameter: pair(found.pitch_diameter)?,
        minor: pair(found.minor)?,
        other_pitch_diameter: None,
        evidence,
    })
}

/// The class meant when a designation names none: 6H and 6g (5H and 6h up to M1.4), 2B and 2A for Unified threads.
///
/// That 6H/6g is meant is a convention known from memory; `None` for forms without known classes.
///
/// ```
/// use framegauge::thread::{Member, usual_class};
/// let class = usual_class(&"M10x1".parse().unwrap(), Member::External).unwrap();
/// assert_eq!(class.to_string(), "6g");
/// ```
#[must_use]
pub fn usual_class(size: &ThreadSize, member: Member) -> Option<ToleranceClass> {
    match size.form() {
        ThreadForm::IsoMetric | ThreadForm::IsoInch => {
            let small = to_mm(size.major()) < 1.4 + 1e-6;
            let usual = match (member, small) {
                (Member::Internal, false) => IsoClass::USUAL_INTERNAL,
                (Member::External, false) => IsoClass::USUAL_EXTERNAL,
                (Member::Internal, true) => IsoClass::new(5, 5, Position::InternalH).ok()?,
                (Member::External, true) => IsoClass::new(6, 6, Position::ExternalH).ok()?,
            };
            Some(ToleranceClass::Iso(usual))
        }
        ThreadForm::Unified => UnifiedClass::new(2, member)
            .ok()
            .map(ToleranceClass::Unified),
        ThreadForm::Bsc | ThreadForm::Whitworth | ThreadForm::Unknown => None,
    }
}

#[cfg(feature = "serde")]
mod serial {
    use super::ThreadLimits;
    use crate::measure::{Bound, Limits};
    use crate::quantity::serial::serialized;
    use crate::quantity::settled_mm;
    use serde::{Serialize, Serializer};

    /// `min` and `max` in millimetres; a side without a limit is null.
    struct MinMax(Limits);

    impl Serialize for MinMax {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let side = |bound: Bound| bound.known().map(settled_mm);
            serialized!(
                serializer,
                MinMax {
                    min: side(self.0.lower()),
                    max: side(self.0.upper()),
                }
            )
        }
    }

    impl Serialize for ThreadLimits {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serialized!(serializer, ThreadLimits {
                thread: self.size,
                class: self.class,
                member: self.member,
                major_diameter_mm: MinMax(self.major),
                pitch_diameter_mm: MinMax(self.pitch_diameter),
                minor_diameter_mm: MinMax(self.minor),
                grade: self.grade(),
                evidence: self.evidence();
                other_pitch_diameter_mm: self.other_pitch_diameter.map(MinMax)
            })
        }
    }
}
