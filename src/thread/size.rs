//! A thread size: form, nominal major diameter and pitch, inseparable.

use core::fmt;

use super::ThreadForm;
use crate::quantity::{Length, Pitch, in_mm, mm, settled_mm};
use crate::{Error, ErrorKind};

/// A thread size. Its form travels with it, so that the ISO relations cannot meet a BSC size by accident.
///
/// ```
/// use framegauge::{Pitch, mm, thread::{ThreadForm, ThreadSize}};
/// let hanger = ThreadSize::new(ThreadForm::IsoMetric, mm(10.0), Pitch::millimetres(1.0).unwrap()).unwrap();
/// assert_eq!(hanger.to_string(), "M10x1");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreadSize {
    form: ThreadForm,
    major: Length,
    pitch: Pitch,
}

impl ThreadSize {
    /// A size from its parts.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` for a diameter outside 1 to 300 mm or a pitch above a third of it.
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
        if pitch.length() * 3.0 > major {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "pitch",
                pitch,
                "too coarse for this diameter",
                "read the pitch again; `M10x10` is usually `M10x1`",
            ));
        }
        Ok(Self { form, major, pitch })
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

impl fmt::Display for ThreadSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let major = settled_mm(self.major);
        match (self.form, self.pitch.threads_per_inch()) {
            (ThreadForm::IsoMetric, None) => {
                write!(f, "M{major}x{}", settled_mm(self.pitch.length()))
            }
            _ => write!(f, "{major} mm x {} {}", self.pitch, self.form),
        }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for ThreadSize {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("ThreadSize", 4)?;
        out.serialize_field("designation", &alloc::format!("{self}"))?;
        out.serialize_field("form", &self.form)?;
        out.serialize_field("major_mm", &settled_mm(self.major))?;
        out.serialize_field("pitch", &self.pitch)?;
        out.end()
    }
}
