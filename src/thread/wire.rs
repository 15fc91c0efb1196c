//! Three-wire measurement: pitch diameter of a screw from the size over wires, and back.

use super::ThreadSize;
use super::form::Profile;
use crate::measure::{Limits, Reading};
use crate::quantity::{Length, ShaftDiameter, in_mm, mm, to_mm};
use crate::{Error, ErrorKind, Grade};

/// Three-wire measurement of a screw of one size.
///
/// M = E + W (1 + 1/sin(a/2)) − (P/2) cot(a/2), with M over the wires, E the pitch diameter, W the wire diameter and a the
/// angle between the flanks (an early turning textbook and a wire supplier's sheet agree). For 60° that is E + 3 W − 0.866025 P, for
/// 55° E + 3.16568 W − 0.960491 P: never use 3 W on a Whitworth thread. At bottom-bracket sizes the helix shifts the result
/// by less than 0.001 mm, which is neglected.
///
/// ```
/// use framegauge::{in_mm, mm, thread::ThreeWire};
/// let cup = ThreeWire::of(&"1.370 in x 24 tpi BSC".parse().unwrap()).unwrap();
/// assert_eq!(in_mm(cup.best_wire()).to_string(), "0.611 mm");
/// let over = cup.over_wires(mm(34.234), mm(0.62)).unwrap();
/// assert_eq!(in_mm(over).to_string(), "35.177 mm");
/// assert_eq!(in_mm(cup.pitch_diameter(over, mm(0.62)).unwrap()).to_string(), "34.234 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreeWire {
    size: ThreadSize,
    pitch_mm: f64,
    sin_half: f64,
    cos_half: f64,
    cot_half: f64,
    crest_height: f64,
    flank_end: f64,
}

impl ThreeWire {
    /// Three-wire measurement of this size.
    ///
    /// # Errors
    /// `NotApplicable` for the unknown form: 55° and 60° give pitch diameters 0.1 mm apart from one reading.
    pub fn of(size: &ThreadSize) -> Result<Self, Error> {
        let Some(Profile {
            sin_half,
            cos_half,
            cot_half,
            crest_height,
            flank_end,
            ..
        }) = size.form().profile()
        else {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "thread form",
                size,
                "the flank angle of this thread is not known",
                "find the form first: 60 degrees (ISO, UN, BSC) or 55 degrees (Whitworth)",
            ));
        };
        Ok(Self {
            size: *size,
            pitch_mm: size.pitch().to_mm(),
            sin_half,
            cos_half,
            cot_half,
            crest_height,
            flank_end,
        })
    }

    /// The wire that touches the flanks at the pitch line: P / (2 cos(a/2)).
    ///
    /// It makes the result independent of a small error of the flank angle.
    ///
    /// ```
    /// use framegauge::{in_mm, thread::ThreeWire};
    /// let wires = ThreeWire::of(&"M10x1".parse().unwrap()).unwrap();
    /// assert_eq!(format!("{:.4}", in_mm(wires.best_wire())), "0.5774 mm");
    /// ```
    #[must_use]
    pub fn best_wire(&self) -> Length {
        mm(self.pitch_mm / (2.0 * self.cos_half))
    }

    /// The wires that can be used: the thinnest still stands above the crests, the thickest still touches straight flanks.
    ///
    /// Derived from the profile: 0.505182 P to 1.010363 P for ISO and Unified threads, 0.50568 P to 0.85272 P for Whitworth.
    ///
    /// ```
    /// use framegauge::thread::ThreeWire;
    /// let wires = ThreeWire::of(&"M10x1".parse().unwrap()).unwrap();
    /// assert_eq!(wires.usable_wires().unwrap().to_string(), "0.505 to 1.010 mm");
    /// ```
    ///
    /// # Errors
    /// None for any size that can be made; the type is that of [`Limits::between`].
    pub fn usable_wires(&self) -> Result<Limits, Error> {
        let (thinnest, thickest) = self.usable();
        Limits::between(mm(thinnest), mm(thickest), Grade::Derived)
    }

    /// The thinnest and the thickest wire that can be used, in millimetres.
    fn usable(&self) -> (f64, f64) {
        let standing_out = 2.0 * self.crest_height / (1.0 + 1.0 / self.sin_half);
        let on_the_flank = 2.0 * self.flank_end * self.sin_half / (self.cos_half * self.cos_half);
        (standing_out * self.pitch_mm, on_the_flank * self.pitch_mm)
    }

    fn check_wire(&self, wire: Length) -> Result<f64, Error> {
        let wire = ShaftDiameter::new(wire)
            .map_err(|e| e.within("wire"))?
            .length();
        if !self.usable_wires()?.admits(wire) {
            let (thinnest, thickest) = self.usable();
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "wire",
                alloc::format!("{:.4}", in_mm(wire)),
                alloc::format!(
                    "outside the usable range of {thinnest:.4} to {thickest:.4} mm for {}",
                    self.size
                ),
                alloc::format!("the best wire is {:.4}", in_mm(self.best_wire())),
            ));
        }
        Ok(to_mm(wire))
    }

    /// Over the wires less pitch diameter.
    fn excess(&self, wire: f64) -> f64 {
        wire * (1.0 + 1.0 / self.sin_half) - self.pitch_mm / 2.0 * self.cot_half
    }

    /// The size over three wires for a pitch diameter.
    ///
    /// # Errors
    /// `OutOfRange` for a wire outside the usable range; `NotFinite` and `OutOfRange` for a diameter that is none.
    pub fn over_wires(&self, pitch_diameter: Length, wire: Length) -> Result<Length, Error> {
        let wire = self.check_wire(wire)?;
        let pitch_diameter = ShaftDiameter::new(pitch_diameter)
            .map_err(|e| e.within("pitch diameter"))?
            .length();
        Ok(pitch_diameter + mm(self.excess(wire)))
    }

    /// The pitch diameter from the size over three wires.
    ///
    /// # Errors
    /// As [`Self::over_wires`]; `Contradiction` when what remains is no pitch diameter of this size: the wires were not in
    /// the groove, or the size is another one.
    ///
    /// ```
    /// use framegauge::{ErrorKind, mm, thread::ThreeWire};
    /// let wires = ThreeWire::of(&"M10x1".parse().unwrap()).unwrap();
    /// assert_eq!(wires.pitch_diameter(mm(14.0), mm(0.58)).unwrap_err().kind(), ErrorKind::Contradiction);
    /// ```
    pub fn pitch_diameter(&self, over_wires: Length, wire: Length) -> Result<Length, Error> {
        let wire = self.check_wire(wire)?;
        let over = ShaftDiameter::new(over_wires)
            .map_err(|e| e.within("over wires"))?
            .length();
        let pitch_diameter = over - mm(self.excess(wire));
        if !self.size.can_have_pitch_diameter(pitch_diameter) {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "over wires",
                in_mm(over),
                alloc::format!(
                    "leaves a pitch diameter of {}, which no {} can have",
                    in_mm(pitch_diameter),
                    self.size
                ),
                "seat the wires in the grooves, or check the size",
            ));
        }
        Ok(pitch_diameter)
    }

    /// The pitch diameter from a reading over wires, with the wires taken as exact.
    ///
    /// # Errors
    /// As [`Self::pitch_diameter`].
    ///
    /// ```
    /// use framegauge::{mm, thread::ThreeWire};
    /// let wires = ThreeWire::of(&"M10x1".parse().unwrap()).unwrap();
    /// let e = wires.pitch_diameter_reading(&"10.18 +/- 0.01 mm".parse().unwrap(), mm(0.58)).unwrap();
    /// assert_eq!(e.to_string(), "9.306 ± 0.010 mm");
    /// ```
    pub fn pitch_diameter_reading(
        &self,
        over_wires: &Reading,
        wire: Length,
    ) -> Result<Reading, Error> {
        let pitch_diameter = self.pitch_diameter(over_wires.value(), wire)?;
        Ok(over_wires.shifted(pitch_diameter - over_wires.value()))
    }

    /// The size measured.
    #[must_use]
    pub const fn size(&self) -> ThreadSize {
        self.size
    }
}
