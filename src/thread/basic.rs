//! Basic diameters: what a thread would measure without any tolerance.

use super::form::Profile;
use super::tables::cite;
use super::{ThreadForm, ThreadSize};
use crate::evidence::Evidence;
use crate::quantity::{Length, mm, to_mm};
use crate::{Error, ErrorKind};

/// Basic diameters of a thread, taken from the size together with its form.
///
/// ```
/// use framegauge::{in_mm, thread::{BasicDiameters, ThreadSize}};
/// let of = |text: &str| BasicDiameters::of(&text.parse::<ThreadSize>().unwrap()).unwrap();
/// // The two names of the common bottom-bracket thread meet at the pitch diameter:
/// assert_eq!(in_mm(of("1.370 in x 24 tpi BSC").pitch_diameter).to_string(), "34.234 mm");
/// assert_eq!(in_mm(of("1.375 in x 24 tpi ISO").pitch_diameter).to_string(), "34.238 mm");
/// assert_eq!(in_mm(of("M10x1").minor).to_string(), "8.917 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BasicDiameters {
    /// Outside diameter of the profile.
    pub major: Length,
    /// Pitch (effective) diameter: where thread and groove are equally wide.
    pub pitch_diameter: Length,
    /// Minor diameter, or core: the basic inside diameter of a hole.
    pub minor: Length,
    /// Minor diameter d3 of a bolt with a root rounded to H/6; ISO metric and Unified only.
    pub rounded_root: Option<Length>,
    /// Radial depth over which the flanks of basic sizes overlap (5H/8 for ISO).
    pub engaged_depth: Length,
    form: ThreadForm,
}

impl BasicDiameters {
    /// The basic diameters of a size.
    ///
    /// ISO 724 rounds to 0.001 mm, and so are the ISO diameters here; those of the inch forms are not rounded.
    /// Relations: ISO 68-1 and ASME B1.1 D − 3H/4 and D − 5H/4; BSC D − 0.532692 P; Whitworth D − 0.640327 P.
    ///
    /// # Errors
    /// `NotApplicable` for the unknown form: between the known forms the pitch diameter differs by 0.1 mm and more.
    ///
    /// ```
    /// use framegauge::{ErrorKind, thread::{BasicDiameters, ThreadSize}};
    /// let italian: ThreadSize = "36 mm x 24 tpi".parse().unwrap();
    /// assert_eq!(BasicDiameters::of(&italian).unwrap_err().kind(), ErrorKind::NotApplicable);
    /// ```
    pub fn of(size: &ThreadSize) -> Result<Self, Error> {
        let Some(profile) = size.form().profile() else {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "thread form",
                size,
                "the form of this thread is not known, so no diameter follows from its size",
                "name the form (BSC, ISO, UN, BSW), or measure the pitch diameter over wires",
            ));
        };
        let (d, p) = (to_mm(size.major()), size.pitch().to_mm());
        let iso = matches!(size.form(), ThreadForm::IsoMetric | ThreadForm::IsoInch);
        let settle = |value: f64| mm(if iso { rounded_um(value) } else { value });
        Ok(Self {
            major: size.major(),
            pitch_diameter: settle(d - profile.to_pitch_diameter * p),
            minor: settle(d - profile.to_minor * p),
            rounded_root: profile.to_rounded_root.map(|below| settle(d - below * p)),
            engaged_depth: mm(profile.engaged_depth() * p),
            form: size.form(),
        })
    }

    /// What the diameters rest on.
    #[must_use]
    pub const fn evidence(&self) -> &'static Evidence {
        match self.form {
            ThreadForm::IsoInch => &cite::ISO_INCH_BASIC,
            ThreadForm::Unified => &cite::UNIFIED_BASIC,
            ThreadForm::Bsc => &cite::BSC_BASIC,
            ThreadForm::Whitworth => &cite::WHITWORTH_BASIC,
            // The unknown form never gets this far.
            ThreadForm::IsoMetric | ThreadForm::Unknown => &cite::ISO_BASIC,
        }
    }
}

/// The span in which the pitch diameter of a size can lie, in millimetres: a point for known forms.
pub(super) fn pitch_diameter_span(size: &ThreadSize) -> (f64, f64) {
    span(size, |basic| basic.pitch_diameter, |p| p.to_pitch_diameter)
}

/// The span in which the minor diameter of a size can lie, in millimetres: a point for known forms.
pub(crate) fn minor_span(size: &ThreadSize) -> (f64, f64) {
    span(size, |basic| basic.minor, |p| p.to_minor)
}

/// For the unknown form, from the deepest of the known ones to the shallowest.
fn span(
    size: &ThreadSize,
    basic: fn(&BasicDiameters) -> Length,
    below_major: fn(Profile) -> f64,
) -> (f64, f64) {
    if let Ok(found) = BasicDiameters::of(size) {
        let at = to_mm(basic(&found));
        return (at, at);
    }
    let (d, p) = (to_mm(size.major()), size.pitch().to_mm());
    [ThreadForm::IsoInch, ThreadForm::Bsc, ThreadForm::Whitworth]
        .into_iter()
        .filter_map(ThreadForm::profile)
        .map(|profile| d - below_major(profile) * p)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
            (libm::fmin(low, at), libm::fmax(high, at))
        })
}

/// Whole micrometres, as a number of millimetres.
fn rounded_um(value: f64) -> f64 {
    libm::round(value * 1e3) / 1e3
}

#[cfg(feature = "serde")]
impl serde::Serialize for BasicDiameters {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::quantity::settled_mm;
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("BasicDiameters", 6)?;
        out.serialize_field("major_mm", &settled_mm(self.major))?;
        out.serialize_field("pitch_diameter_mm", &settled_mm(self.pitch_diameter))?;
        out.serialize_field("minor_mm", &settled_mm(self.minor))?;
        out.serialize_field("rounded_root_mm", &self.rounded_root.map(settled_mm))?;
        out.serialize_field("engaged_depth_mm", &settled_mm(self.engaged_depth))?;
        out.serialize_field("evidence", self.evidence())?;
        out.end()
    }
}
