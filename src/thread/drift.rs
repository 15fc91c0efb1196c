//! Two pitches laid against each other: how far they drift, and after how many turns that shows or binds.

use super::ThreadForm;
use crate::Error;
use crate::quantity::{Length, Pitch, mm, positive, to_mm};

/// The axial drift between two pitches.
///
/// ```
/// use framegauge::{Pitch, in_mm, mm, thread::{PitchDrift, ThreadForm}};
/// let drift = PitchDrift::between(Pitch::tpi(24).unwrap(), Pitch::millimetres(1.0).unwrap());
/// assert_eq!(in_mm(drift.per_turn).to_string(), "0.058 mm");
/// // 0.15 mm of play in the pitch diameter is gone after one and a half turns:
/// let turns = drift.turns_until_binding(mm(0.15), ThreadForm::IsoMetric).unwrap().unwrap();
/// assert!((turns - 1.48).abs() < 0.01);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PitchDrift {
    /// Difference of the pitches: drift per turn, and per thread under a leaf. Never negative.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "per_turn_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub per_turn: Length,
    /// The finer of the two pitches.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "finer_pitch_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub finer_pitch: Length,
}

/// Drift that an eye sees against a leaf: 0.10 to 0.15 mm by common practice; the safer end.
///
/// ```
/// assert_eq!(framegauge::in_mm(framegauge::thread::VISIBLE_DRIFT).to_string(), "0.150 mm");
/// ```
pub const VISIBLE_DRIFT: Length = mm(0.15);

impl PitchDrift {
    /// The drift between two pitches.
    #[must_use]
    pub fn between(a: Pitch, b: Pitch) -> Self {
        let (a, b) = (a.to_mm(), b.to_mm());
        Self {
            per_turn: mm(libm::fabs(a - b)),
            finer_pitch: mm(libm::fmin(a, b)),
        }
    }

    /// Whether the pitches are one and the same.
    #[must_use]
    pub fn is_none(&self) -> bool {
        crate::measure::settled_cmp(self.per_turn, mm(0.0)) == core::cmp::Ordering::Equal
    }

    fn turns(&self, length: Length) -> Option<f64> {
        (!self.is_none()).then(|| length.value / self.per_turn.value)
    }

    /// Turns until the drift reaches a visible length; `None` when the pitches are the same.
    ///
    /// # Errors
    /// `NotFinite` and `OutOfRange` for a length that is not above zero.
    ///
    /// ```
    /// use framegauge::{Pitch, thread::{PitchDrift, VISIBLE_DRIFT}};
    /// let drift = PitchDrift::between(Pitch::tpi(26).unwrap(), Pitch::millimetres(1.0).unwrap());
    /// assert!((drift.turns_until_visible(VISIBLE_DRIFT).unwrap().unwrap() - 6.5).abs() < 1e-9);
    /// ```
    pub fn turns_until_visible(&self, drift: Length) -> Result<Option<f64>, Error> {
        positive("visible drift", drift).map(|drift| self.turns(drift))
    }

    /// How many threads to lay a leaf over so that the drift reaches a visible length: n threads span n − 1 pitches.
    /// `None` when the pitches are the same.
    ///
    /// # Errors
    /// As [`Self::turns_until_visible`].
    ///
    /// ```
    /// use framegauge::{Pitch, mm, thread::PitchDrift};
    /// let drift = PitchDrift::between(Pitch::tpi(24).unwrap(), Pitch::millimetres(1.0).unwrap());
    /// assert_eq!(drift.threads_under_leaf(mm(0.15)).unwrap(), Some(4));
    /// ```
    pub fn threads_under_leaf(&self, drift: Length) -> Result<Option<u32>, Error> {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "rounded up; a saturated count is still too many threads to lay a leaf over"
        )]
        let count = |turns: f64| (libm::ceil(turns - 1e-9) as u32).saturating_add(1);
        self.turns_until_visible(drift)
            .map(|turns| turns.map(count))
    }

    /// Turns until the drift is half the finer pitch: crests then stand on crests. `None` when the pitches are the same.
    ///
    /// ```
    /// use framegauge::{Pitch, thread::PitchDrift};
    /// let drift = PitchDrift::between(Pitch::tpi(24).unwrap(), Pitch::tpi(26).unwrap());
    /// assert!((drift.turns_to_half_pitch().unwrap() - 6.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn turns_to_half_pitch(&self) -> Option<f64> {
        self.turns(self.finer_pitch / 2.0)
    }

    /// How much of the clearance in the pitch diameter one turn takes: drift times the cotangent of half the flank angle
    /// (standard metrology, virtual pitch diameter). For the unknown form the sharper angle is assumed.
    ///
    /// ```
    /// use framegauge::{Pitch, in_mm, thread::{PitchDrift, ThreadForm}};
    /// let drift = PitchDrift::between(Pitch::tpi(24).unwrap(), Pitch::millimetres(1.0).unwrap());
    /// assert_eq!(in_mm(drift.taken_per_turn(ThreadForm::IsoMetric)).to_string(), "0.101 mm");
    /// ```
    #[must_use]
    pub fn taken_per_turn(&self, form: ThreadForm) -> Length {
        let profile = form.profile().or(ThreadForm::Whitworth.profile());
        self.per_turn * profile.map_or(1.0, |p| p.cot_half)
    }

    /// Turns until a clearance in the pitch diameter is used up and the threads bind; `None` when the pitches are the same.
    ///
    /// # Errors
    /// `NotFinite` and `OutOfRange` for a clearance below zero.
    pub fn turns_until_binding(
        &self,
        clearance: Length,
        form: ThreadForm,
    ) -> Result<Option<f64>, Error> {
        if to_mm(clearance) == 0.0 {
            return Ok((!self.is_none()).then_some(0.0));
        }
        let clearance = positive("clearance", clearance)?;
        Ok((!self.is_none()).then(|| clearance.value / self.taken_per_turn(form).value))
    }
}
