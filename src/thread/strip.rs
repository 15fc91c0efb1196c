//! What a strength sum answers: areas, stripping forces, the engagement of equal strength.

use super::{Member, ThreadSize};
use crate::quantity::{Area, Force, Length, Ratio, Torque, newton};
use crate::{Error, ErrorKind};

/// Shear areas of the two members over a length of engagement.
///
/// ```
/// use framegauge::{mm, thread::rough_shear_areas};
/// let areas = rough_shear_areas(&"M5x0.8".parse().unwrap(), mm(5.0)).unwrap();
/// assert!(areas.hole > areas.screw);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShearAreas {
    /// Of the screw's threads.
    pub screw: Area,
    /// Of the hole's threads.
    pub hole: Area,
}

/// What strips, and at which force.
///
/// ```
/// use framegauge::{mm, mpa, thread::{MinimumMaterial, limits_of_size}};
/// let size = "M6x1".parse().unwrap();
/// let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
/// let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
/// let strips = pair.stripping(mm(6.0), None, mpa(480.0), mpa(150.0)).unwrap();
/// assert_eq!(strips.force, strips.hole_force);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stripping {
    /// The areas behind the forces.
    pub areas: ShearAreas,
    /// Force that strips the screw's threads.
    pub screw_force: Force,
    /// Force that strips the hole's threads.
    pub hole_force: Force,
    /// The smaller of the two.
    pub force: Force,
    /// The member that goes first.
    pub weaker: Member,
}

impl Stripping {
    /// The tightening torque at which the threads strip: nut factor K × force × nominal diameter.
    ///
    /// K depends on lubrication and coating and is yours to state; the library holds none.
    ///
    /// # Errors
    /// `OutOfRange` for a nut factor outside 0.05 to 0.6.
    ///
    /// ```
    /// use framegauge::{Ratio, mm, mpa, thread::{MinimumMaterial, limits_of_size}};
    /// let size = "M5x0.8".parse().unwrap();
    /// let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    /// let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
    /// let strips = pair.stripping(mm(6.0), None, mpa(480.0), mpa(150.0)).unwrap();
    /// assert!(strips.torque(&size, Ratio(0.2)).is_ok());
    /// assert!(strips.torque(&size, Ratio(f64::NAN)).is_err());
    /// ```
    pub fn torque(&self, size: &ThreadSize, nut_factor: Ratio) -> Result<Torque, Error> {
        if !(0.05..=0.6).contains(&nut_factor.0) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "nut factor",
                nut_factor.0,
                "no screw has this factor between torque and force",
                "0.05 to 0.6; look it up for your lubricant",
            ));
        }
        let newton_metres = (self.force / newton(1.0)).value * size.major().value * nut_factor.0;
        Ok(crate::quantity::newton_metre(newton_metres))
    }
}

/// An engagement that is as strong as the screw.
///
/// ```
/// use framegauge::{in_mm, mm, thread::EqualStrength};
/// let needed = EqualStrength { length: mm(8.25), j: 2.06 };
/// assert_eq!(in_mm(needed.length).to_string(), "8.250 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct EqualStrength {
    /// The length needed.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "length_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub length: Length,
    /// Above 1 the tapped metal is the weaker one and lengthens the engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::round::three_places")
    )]
    pub j: f64,
}

#[cfg(feature = "serde")]
mod serial {
    use super::{ShearAreas, Stripping};
    use serde::{Serialize, Serializer, ser::SerializeStruct};

    fn places(value: f64, scale: f64) -> f64 {
        libm::round(value * scale) / scale
    }

    impl Serialize for ShearAreas {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("ShearAreas", 2)?;
            out.serialize_field("screw_mm2", &places(self.screw.value * 1e6, 1e3))?;
            out.serialize_field("hole_mm2", &places(self.hole.value * 1e6, 1e3))?;
            out.end()
        }
    }

    impl Serialize for Stripping {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Stripping", 5)?;
            out.serialize_field("areas", &self.areas)?;
            out.serialize_field("screw_force_n", &places(self.screw_force.value, 1.0))?;
            out.serialize_field("hole_force_n", &places(self.hole_force.value, 1.0))?;
            out.serialize_field("force_n", &places(self.force.value, 1.0))?;
            out.serialize_field("weaker", &self.weaker)?;
            out.end()
        }
    }
}
