//! Where a reading was taken: direction, depth, place on a mount, on metal or over paint. One text form.

use core::str::FromStr;

use super::Reading;
use crate::quantity::{Angle, Length, Printed, not_negative, parse_length};
use crate::{Error, ErrorKind};

/// What a reading lies on.
///
/// Over paint a bore is a lower bound of the metal's and a shaft an upper bound: such a reading may support a size and never
/// rules one out on its other side.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    Default,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Surface {
    /// Nobody said.
    #[default]
    NotKnown,
    /// On bare metal, or bare laminate.
    OnMetal,
    /// Over paint, powder coat or overspray.
    OverPaint,
}

/// Where a reading was taken, as far as it was said.
///
/// ```
/// use framegauge::measure::{Spot, Surface};
/// let (spot, size) = Spot::before("10 mm deep, 90 deg, on metal: 27.15 mm").unwrap();
/// assert_eq!((spot.surface, size), (Surface::OnMetal, "27.15 mm"));
/// assert!(Spot::before("upstairs: 27.15 mm").is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Spot {
    /// Direction, counted clockwise as seen facing the opening.
    pub angle: Option<Angle>,
    /// Depth from the opening.
    pub depth: Option<Length>,
    /// Along a mount.
    pub along: Option<Length>,
    /// Across a mount: towards the wheel is positive.
    pub across: Option<Length>,
    /// What it lies on.
    pub surface: Surface,
}

impl Spot {
    /// The place that stands before the last colon of a line, and what stands behind it.
    ///
    /// # Errors
    /// Those of the place.
    pub fn before(line: &str) -> Result<(Self, &str), Error> {
        match line.rsplit_once(':') {
            Some((spot, rest)) => Ok((spot.parse()?, rest.trim())),
            None => Ok((Self::default(), line.trim())),
        }
    }
}

impl FromStr for Spot {
    type Err = Error;

    /// Reads `10 mm deep, 90 deg`, `10 mm along, 5 mm across`, `on metal` or `over paint`, in any order.
    fn from_str(text: &str) -> Result<Self, Error> {
        let mut spot = Self::default();
        // `, ` parts the words of a place; a bare comma may be a decimal comma.
        for part in text.split(", ").map(str::trim).filter(|p| !p.is_empty()) {
            if part.ends_with("deg") || part.ends_with('°') {
                spot.angle = Some(Angle::parse(part)?);
            } else if let Some(depth) = part.strip_suffix("deep") {
                spot.depth = Some(not_negative("depth", parse_length(depth)?)?);
            } else if let Some(along) = part.strip_suffix("along") {
                spot.along = Some(parse_length(along)?);
            } else if let Some(across) = part.strip_suffix("across") {
                spot.across = Some(parse_length(across)?);
            } else {
                spot.surface = match part {
                    "on metal" => Surface::OnMetal,
                    "over paint" | "on paint" => Surface::OverPaint,
                    _ => {
                        return Err(Error::new(
                            ErrorKind::Text,
                            "place",
                            part,
                            "no place that can be read",
                            "write `90 deg`, `10 mm deep`, `10 mm along`, `5 mm across`, `on metal` or `over paint`",
                        ));
                    }
                };
            }
        }
        Ok(spot)
    }
}

/// A diameter, width or depth with where it was taken.
///
/// ```
/// use framegauge::measure::{Placed, Surface};
/// let placed: Placed = "10 mm deep, 90 deg: 27.15 +/- 0.02 mm".parse().unwrap();
/// assert_eq!(placed.surface, Surface::NotKnown);
/// assert!(placed.angle.is_some() && placed.depth.is_some());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed {
    /// The reading.
    pub reading: Reading,
    /// Direction, counted clockwise as seen facing the opening; `None` when not stated.
    pub angle: Option<Angle>,
    /// Depth from the opening; `None` when not stated.
    pub depth: Option<Length>,
    /// What it lies on.
    pub surface: Surface,
}

impl Placed {
    /// A reading at a spot.
    ///
    /// # Errors
    /// `Text` for a place along or across a mount, which no diameter has.
    pub fn at(spot: Spot, reading: Reading) -> Result<Self, Error> {
        if spot.along.is_some() || spot.across.is_some() {
            return Err(Error::new(
                ErrorKind::Text,
                "place",
                "",
                "a diameter has an angle and a depth",
                "write e.g. `10 mm deep, 90 deg: 27.15 mm`",
            ));
        }
        Ok(Self {
            reading,
            angle: spot.angle,
            depth: spot.depth,
            surface: spot.surface,
        })
    }
}

impl From<Reading> for Placed {
    fn from(reading: Reading) -> Self {
        Self {
            reading,
            angle: None,
            depth: None,
            surface: Surface::NotKnown,
        }
    }
}

impl FromStr for Placed {
    type Err = Error;

    fn from_str(line: &str) -> Result<Self, Error> {
        let (spot, size) = Spot::before(line)?;
        Self::at(spot, size.parse()?)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Placed {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::quantity::settled_mm;
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("Placed", 5)?;
        out.serialize_field("value_mm", &settled_mm(self.reading.value()))?;
        out.serialize_field(
            "expanded_uncertainty_mm",
            &settled_mm(self.reading.expanded_uncertainty()),
        )?;
        out.serialize_field(
            "angle_deg",
            &self.angle.map(|a| libm::round(a.in_unit() * 1e4) / 1e4),
        )?;
        out.serialize_field("depth_mm", &self.depth.map(settled_mm))?;
        out.serialize_field("surface", &self.surface)?;
        out.end()
    }
}
