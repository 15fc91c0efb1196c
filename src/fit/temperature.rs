//! Temperature: sizes hold at 20 °C (ISO 1), and heat opens a bore.

use super::material::Material;
use super::press::{Press, non_negative};
use crate::measure::Reading;
use crate::quantity::{Length, Printed, TemperatureInterval, kelvin, mm, to_mm};
use crate::{Error, ErrorKind};

/// A temperature, kept apart from temperature differences.
///
/// ```
/// use framegauge::fit::Temperature;
/// assert_eq!(Temperature::celsius(23.7).unwrap().to_string(), "23.7 °C");
/// assert!(Temperature::celsius(-274.0).unwrap_err().problem().contains("absolute zero"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Temperature(f64);

/// Reference temperature of sizes (ISO 1), °C.
const REFERENCE: f64 = 20.0;

impl Temperature {
    /// A temperature in degrees Celsius.
    ///
    /// # Errors
    /// `NotFinite`; `OutOfRange` below absolute zero or above 500 °C, where no gauge is used.
    pub fn celsius(value: f64) -> Result<Self, Error> {
        let refuse = |kind, problem: &'static str| {
            Err(Error::new(
                kind,
                "temperature",
                alloc::format!("{value} °C"),
                problem,
                "give degrees Celsius",
            ))
        };
        if !value.is_finite() {
            return refuse(ErrorKind::NotFinite, "must be finite");
        }
        if value < -273.15 {
            return refuse(ErrorKind::OutOfRange, "lies below absolute zero");
        }
        if value > 500.0 {
            return refuse(ErrorKind::OutOfRange, "is hotter than any gauge stands");
        }
        Ok(Self(value))
    }

    /// Kelvins above the reference temperature of 20 °C, negative when colder.
    ///
    /// ```
    /// use framegauge::{fit::Temperature, kelvin};
    /// assert_eq!(Temperature::celsius(25.0).unwrap().above_reference(), kelvin(5.0));
    /// ```
    #[must_use]
    pub fn above_reference(self) -> TemperatureInterval {
        kelvin(self.0 - REFERENCE)
    }
}

impl core::fmt::Display for Temperature {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{} °C", self.0)
    }
}

/// A reading taken on an absolute scale, brought to 20 °C: L₂₀ = L − α L (T − 20) (ISO 1; a national laboratory's worked
/// example). Handbook coefficients are averages over a wide range, a few percent off at room temperature.
///
/// # Errors
/// `Missing` when the material's expansion is unknown.
///
/// ```
/// use framegauge::{Ratio, fit::{Material, MaterialKind, Temperature, at_reference}, gpa, in_mm, per_kelvin};
/// // A national physical laboratory's example: a steel rod read 500.035 mm at 23.7 °C is 500.013 mm.
/// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.3)).unwrap().with_expansion(per_kelvin(11.7e-6)).unwrap();
/// let rod = at_reference(&"500.035 +/- 0.002 mm".parse().unwrap(), &steel, Temperature::celsius(23.7).unwrap()).unwrap();
/// assert_eq!(in_mm(rod.value()).to_string(), "500.013 mm");
/// ```
pub fn at_reference(
    reading: &Reading,
    part: &Material,
    temperature: Temperature,
) -> Result<Reading, Error> {
    let alpha = part.need_expansion()?.value;
    Ok(reading.scaled(1.0 - alpha * temperature.above_reference().value))
}

/// A reading taken with a gauge of another material at the same temperature, brought to 20 °C: only the difference of the
/// coefficients counts, L₂₀ = L − (α part − α gauge) L (T − 20).
///
/// # Errors
/// `Missing` when an expansion is unknown.
///
/// ```
/// use framegauge::{Ratio, fit::{Material, MaterialKind, Temperature, at_reference_with_gauge}, gpa, in_mm, per_kelvin};
/// let of = |name: &'static str, alpha: f64| {
///     Material::new(name, MaterialKind::Metal, gpa(70.0), Ratio(0.3)).unwrap().with_expansion(per_kelvin(alpha)).unwrap()
/// };
/// let warm = Temperature::celsius(30.0).unwrap();
/// let bore = at_reference_with_gauge(&"42.000 +/- 0.004 mm".parse().unwrap(), &of("6061", 23.6e-6), &of("steel", 11.5e-6), warm).unwrap();
/// assert_eq!(in_mm(bore.value()).to_string(), "41.995 mm");
/// ```
pub fn at_reference_with_gauge(
    reading: &Reading,
    part: &Material,
    gauge: &Material,
    temperature: Temperature,
) -> Result<Reading, Error> {
    let apart = part.need_expansion()?.value - gauge.need_expansion()?.value;
    Ok(reading.scaled(1.0 - apart * temperature.above_reference().value))
}

/// How much the clearance of a fit changes from 20 °C to this temperature: d (α hole − α shaft) (T − 20). Positive opens.
///
/// # Errors
/// `Missing` when an expansion is unknown; `OutOfRange` for a diameter at or below 0 mm.
///
/// ```
/// use framegauge::{Ratio, fit::{Material, MaterialKind, Temperature, clearance_change}, gpa, in_mm, mm, per_kelvin};
/// let of = |name: &'static str, alpha: f64| {
///     Material::new(name, MaterialKind::Metal, gpa(70.0), Ratio(0.3)).unwrap().with_expansion(per_kelvin(alpha)).unwrap()
/// };
/// // An aluminium shell lets go of a steel bearing in the sun.
/// let change = clearance_change(mm(42.0), &of("6061", 23.6e-6), &of("steel", 11.5e-6), Temperature::celsius(60.0).unwrap()).unwrap();
/// assert_eq!(in_mm(change).to_string(), "0.020 mm");
/// ```
pub fn clearance_change(
    diameter: Length,
    hole: &Material,
    shaft: &Material,
    temperature: Temperature,
) -> Result<Length, Error> {
    let d = to_mm(crate::ShaftDiameter::new(diameter)?.length());
    let apart = hole.need_expansion()?.value - shaft.need_expansion()?.value;
    Ok(mm(d * apart * temperature.above_reference().value))
}

/// Temperature difference that lets a part go in with this gap: ΔT = (δ + gap) / (α d). Heating the outer part and cooling
/// the inner one add.
///
/// Heat spoils paint, glue, heat treatment and fibre: this is what physics needs, not what a frame stands.
///
/// # Errors
/// `OutOfRange` for a negative gap or diameter; `Missing` or `NotApplicable` when the expansion is unknown or not above zero.
///
/// ```
/// use framegauge::{Interference, Ratio, fit::{Material, MaterialKind, Press, assembly_temperature}, gpa, mm, per_kelvin};
/// let steel = Material::new("steel", MaterialKind::Metal, gpa(210.0), Ratio(0.27)).unwrap().with_expansion(per_kelvin(11.7e-6)).unwrap();
/// let press = Press::new(Interference::new(mm(0.26)).unwrap()).unwrap();
/// // A press calculation sheet prints 159 K.
/// let heat = assembly_temperature(mm(220.0), press, mm(0.15), &steel).unwrap();
/// assert!((heat.value - 159.0).abs() < 0.5);
/// ```
pub fn assembly_temperature(
    diameter: Length,
    press: Press,
    gap: Length,
    heated: &Material,
) -> Result<TemperatureInterval, Error> {
    let d = to_mm(crate::ShaftDiameter::new(diameter)?.length());
    let gap = non_negative("gap", to_mm(gap))?;
    let expansion = heated.need_expansion()?;
    if expansion.in_unit() <= 0.0 {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "expansion",
            heated.name(),
            "this material does not grow when heated",
            "heat does not help here",
        ));
    }
    Ok(kelvin(
        (to_mm(press.length()) + gap) / (expansion.value * d),
    ))
}
