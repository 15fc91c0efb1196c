//! A thread size: form, nominal major diameter and pitch, inseparable.

use core::cmp::Ordering;
use core::fmt;

use super::ThreadForm;
use crate::measure::settled_cmp;
use crate::quantity::{Length, Pitch, in_mm, mm, nanometres, settled_mm};
use crate::{Error, ErrorKind};

/// A thread size. Its form travels with it, so that the ISO relations cannot meet a BSC size by accident.
///
/// Two sizes are equal when form and pitch are, and the major diameters agree to the nanometre. Printed and read back
/// a size is itself.
///
/// ```
/// use framegauge::{Pitch, mm, thread::{ThreadForm, ThreadSize}};
/// let hanger = ThreadSize::new(ThreadForm::IsoMetric, mm(10.0), Pitch::millimetres(1.0).unwrap()).unwrap();
/// assert_eq!(hanger.to_string(), "M10x1");
/// let cup: ThreadSize = "1.370 in x 24 tpi BSC".parse().unwrap();
/// assert_eq!(cup.form(), ThreadForm::Bsc);
/// ```
#[derive(Debug, Clone, Copy)]
pub struct ThreadSize {
    form: ThreadForm,
    major: Length,
    pitch: Pitch,
}

impl ThreadSize {
    /// A size from its parts.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a diameter outside 1 to 300 mm or a pitch above a third of it; `Contradiction`
    /// for a pitch in the wrong unit: ISO metric has its pitch in mm, the inch forms in threads per inch.
    ///
    /// ```
    /// use framegauge::{ErrorKind, Pitch, mm, thread::{ThreadForm, ThreadSize}};
    /// let pitch = Pitch::tpi(24).unwrap();
    /// let refused = ThreadSize::new(ThreadForm::IsoMetric, mm(34.8), pitch).unwrap_err();
    /// assert_eq!(refused.kind(), ErrorKind::Contradiction);
    /// ```
    pub fn new(form: ThreadForm, major: Length, pitch: Pitch) -> Result<Self, Error> {
        if !major.value.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "major diameter",
                major.value,
                "must be finite",
                "measure the crests",
            ));
        }
        if major < mm(1.0) || major > mm(300.0) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "major diameter",
                in_mm(major),
                "no frame thread has this diameter",
                "1 mm to 300 mm; check the unit",
            ));
        }
        if pitch.to_mm() * 3e-3 > major.value {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "pitch",
                pitch,
                "too coarse for this diameter",
                "read the pitch again; `M10x10` is usually `M10x1`",
            ));
        }
        let by_inch = pitch.threads_per_inch().is_some();
        match form {
            ThreadForm::IsoMetric if by_inch => {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "pitch",
                    pitch,
                    "an ISO metric thread has its pitch in millimetres",
                    "name the form: BSC, ISO (inch pitch), UN or BSW",
                ));
            }
            ThreadForm::IsoInch | ThreadForm::Unified | ThreadForm::Bsc | ThreadForm::Whitworth
                if !by_inch =>
            {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "pitch",
                    pitch,
                    "this form has its pitch in whole threads per inch",
                    "write the pitch as `24 tpi`, or name a metric thread `M35x1`",
                ));
            }
            _ => {}
        }
        Ok(Self { form, major, pitch })
    }

    /// Whether a thread of this size, worn or new, can have this pitch diameter: from two pitches below its major one up to it.
    pub(super) fn can_have_pitch_diameter(&self, pitch_diameter: Length) -> bool {
        let lowest = self.major - self.pitch.length() * 2.0;
        settled_cmp(pitch_diameter, lowest) != Ordering::Less
            && settled_cmp(pitch_diameter, self.major) != Ordering::Greater
    }

    /// For generated tables, whose values are checked by the generator.
    pub(crate) const fn from_table(form: ThreadForm, major: Length, pitch: Pitch) -> Self {
        Self { form, major, pitch }
    }

    /// The form.
    #[must_use]
    pub const fn form(&self) -> ThreadForm {
        self.form
    }
    /// Nominal major diameter.
    #[must_use]
    pub const fn major(&self) -> Length {
        self.major
    }
    /// Pitch.
    #[must_use]
    pub const fn pitch(&self) -> Pitch {
        self.pitch
    }
}

impl PartialEq for ThreadSize {
    fn eq(&self, other: &Self) -> bool {
        self.form == other.form
            && nanometres(self.major) == nanometres(other.major)
            && self.pitch.threads_per_inch() == other.pitch.threads_per_inch()
            && self.pitch.same_as(other.pitch)
    }
}

impl fmt::Display for ThreadSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.form == ThreadForm::IsoMetric {
            return write!(
                f,
                "M{}x{}",
                settled_mm(self.major),
                settled_mm(self.pitch.length())
            );
        }
        let inches = Inches::of(self.major);
        match inches {
            Some(inches) => write!(f, "{inches} in x {}", self.pitch)?,
            None => write!(f, "{} mm x {}", settled_mm(self.major), self.pitch)?,
        }
        match self.form {
            // A bare inch size is refused when read, because the forms differ by more than a fit.
            ThreadForm::Unknown if inches.is_some() => f.write_str(" unknown form"),
            ThreadForm::Unknown => Ok(()),
            form => write!(f, " {}", form.mark()),
        }
    }
}

/// A diameter that is a customary inch size: a fraction down to 1/32, or whole thousandths.
#[derive(Clone, Copy)]
enum Inches {
    Fraction { whole: i64, over: i64, under: i64 },
    Thousandths(i64),
}

impl Inches {
    fn of(length: Length) -> Option<Self> {
        let nm = nanometres(length)?;
        // 1/32 in = 793 750 nm and 1/1000 in = 25 400 nm, both exact. No whole or half millimetre is in thousandths: the first
        // they share is 2 1/2 in.
        if nm % 793_750 == 0 {
            let parts = nm / 793_750;
            let mut over = parts % 32;
            let mut under = 32;
            while over != 0 && over % 2 == 0 {
                over /= 2;
                under /= 2;
            }
            return Some(Self::Fraction {
                whole: parts / 32,
                over,
                under,
            });
        }
        (nm % 25_400 == 0).then_some(Self::Thousandths(nm / 25_400))
    }
}

impl fmt::Display for Inches {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Fraction { whole, over: 0, .. } => write!(f, "{whole}"),
            Self::Fraction {
                whole: 0,
                over,
                under,
            } => write!(f, "{over}/{under}"),
            Self::Fraction { whole, over, under } => write!(f, "{whole} {over}/{under}"),
            Self::Thousandths(thousandths) => {
                write!(f, "{}.{:03}", thousandths / 1000, thousandths % 1000)
            }
        }
    }
}
