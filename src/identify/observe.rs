//! What was observed: readings, gauge leaves, hands, looks, and what somebody believes.

use alloc::string::String;

use super::Feature;
use crate::evidence::Text;
use crate::measure::{Reading, instrument};
use crate::quantity::{Angle, Length, Pitch, mm, parse_length, settled_mm};
use crate::thread::{Hand, Side};
use crate::{Error, ErrorKind, Printed};

/// Where a belief comes from. All of it is weak evidence: it moves the ranking by a factor of two at most, and never
/// excludes anything.
///
/// ```
/// use framegauge::identify::BeliefFrom;
/// assert_eq!(BeliefFrom::Label.factor(), 2.0);
/// assert_eq!("part_that_fits".parse::<BeliefFrom>().unwrap(), BeliefFrom::PartThatFits);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum BeliefFrom {
    /// A label, stamp, box or data sheet.
    Label,
    /// Where and when the frame was made.
    Country,
    /// A width, or a tool that happens to fit.
    Width,
    /// A part that was in it or goes in: it may be a makeshift.
    PartThatFits,
    /// Somebody says so.
    Hearsay,
}

impl BeliefFrom {
    /// Factor on the prior of what is believed: 2 for a label, less for the rest (memory; labels were wrong in several
    /// real cases).
    #[must_use]
    pub const fn factor(self) -> f64 {
        match self {
            Self::Label => 2.0,
            Self::Country | Self::PartThatFits => 1.5,
            Self::Width | Self::Hearsay => 1.25,
        }
    }
}

/// One observation.
///
/// ```
/// use framegauge::{identify::{Feature, Observation}, thread::{Hand, Side}};
/// let bore = Observation::size(Feature::Bore, "33.9 +/- 0.05 mm".parse().unwrap());
/// let hand = Observation::hand(Side::Drive, Hand::Right);
/// assert_ne!(bore, hand);
/// ```
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Observation {
    /// A measured length. Readings that name one instrument share its bias, which is then counted once; unnamed ones
    /// of different features count as independent, so name the caliper.
    Size {
        /// What was measured.
        feature: Feature,
        /// The value with its uncertainty.
        reading: Reading,
        /// With which instrument, by the code of the tables or any name of your own.
        instrument: Option<Text>,
    },
    /// Angle of the bearing seat in the head tube, with its standard uncertainty.
    SeatAngle {
        /// The angle to the axis.
        angle: Angle,
        /// Its standard uncertainty.
        standard_uncertainty: Angle,
    },
    /// The leaf of a pitch gauge that fits.
    Pitch(Pitch),
    /// The hand of the thread; `side` is `None` where there is one thread only or the side is not known.
    Hand {
        /// Side of the frame.
        side: Option<Side>,
        /// The hand.
        hand: Hand,
    },
    /// Whether there is a thread.
    Threaded(bool),
    /// What a label, a country or a person says it is, by code or trade name.
    Belief {
        /// The name.
        name: Text,
        /// Where it comes from.
        from: BeliefFrom,
    },
}

impl Observation {
    /// A reading whose instrument is not named.
    #[must_use]
    pub const fn size(feature: Feature, reading: Reading) -> Self {
        Self::Size {
            feature,
            reading,
            instrument: None,
        }
    }

    /// A bare value read with an instrument of the tables, with that instrument's uncertainty.
    ///
    /// # Errors
    /// `UnknownName` for the instrument; `NotTabulated` when it has no permissible error at this size.
    ///
    /// ```
    /// use framegauge::{identify::{Feature, Observation}, mm};
    /// assert!(Observation::with(Feature::Bore, mm(27.2), "caliper_digital_inside").is_ok());
    /// assert!(Observation::with(Feature::Bore, mm(27.2), "eyeball").is_err());
    /// ```
    pub fn with(feature: Feature, value: Length, tool: &str) -> Result<Self, Error> {
        let tool = instrument(tool)?;
        Ok(Self::Size {
            feature,
            reading: tool.reading(value)?,
            instrument: Some(tool.code.clone()),
        })
    }

    /// A diameter from a circumference: value and uncertainty divided by π.
    ///
    /// ```
    /// use framegauge::{identify::{Feature, Observation}};
    /// let Observation::Size { reading, .. } =
    ///     Observation::circumference(Feature::OutsideDiameter, "82 +/- 0.5 mm".parse().unwrap()) else { panic!() };
    /// assert_eq!(reading.to_string(), "26.101 ± 0.159 mm");
    /// ```
    #[must_use]
    pub fn circumference(feature: Feature, reading: Reading) -> Self {
        Self::size(feature, reading.scaled(core::f64::consts::FRAC_1_PI))
    }

    /// A pitch from the advance over a number of turns or threads.
    ///
    /// # Errors
    /// `OutOfRange` when no turn was made.
    ///
    /// ```
    /// use framegauge::identify::Observation;
    /// let ten = Observation::advance(10, "10.58 +/- 0.1 mm".parse().unwrap()).unwrap();
    /// let Observation::Size { reading, .. } = ten else { panic!() };
    /// assert_eq!(reading.to_string(), "1.058 ± 0.010 mm");
    /// ```
    pub fn advance(turns: u16, reading: Reading) -> Result<Self, Error> {
        if turns == 0 {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "turns",
                turns,
                "no advance without a turn",
                "count ten turns or threads",
            ));
        }
        Ok(Self::size(
            Feature::Pitch,
            reading.scaled(1.0 / f64::from(turns)),
        ))
    }

    /// The hand on one side.
    #[must_use]
    pub const fn hand(side: Side, hand: Hand) -> Self {
        Self::Hand {
            side: Some(side),
            hand,
        }
    }

    /// What a label says.
    #[must_use]
    pub fn label(name: impl Into<Text>) -> Self {
        Self::Belief {
            name: name.into(),
            from: BeliefFrom::Label,
        }
    }

    /// Reads one observation from a key and its text, as a sheet or a question writes it: a [`Feature`] name with
    /// `33.7 +/- 0.05 mm` (also `27.2 mm with caliper_digital_inside`), `pitch` with `24 tpi`, `hand_drive` with
    /// `left`, `threaded` with `yes`, or a [`BeliefFrom`] name with a standard; `circumference` is a diameter in
    /// another form.
    ///
    /// # Errors
    /// `UnknownField` for a key that nothing knows; `Text` for a hand given by the rider's side; else the errors of
    /// the value.
    ///
    /// ```
    /// use framegauge::identify::Observation;
    /// assert!(Observation::read("bore", "33,7 +/- 0,05 mm").is_ok());
    /// assert!(Observation::read("bore", "33.7 mm").is_err()); // no uncertainty, no instrument
    /// assert!(Observation::read("hand_left", "left").unwrap_err().remedy().contains("hand_non_drive"));
    /// ```
    pub fn read(key: &str, value: &str) -> Result<Self, Error> {
        let key = key.trim();
        let within = |e: Error| e.within(key);
        if let Ok(from) = key.parse::<BeliefFrom>()
            && key != "width"
        {
            return Ok(Self::Belief {
                name: Text::Owned(value.trim().into()),
                from,
            });
        }
        match key {
            "hand_left" | "hand_right" => {
                return Err(Error::new(
                    ErrorKind::Text,
                    String::from(key),
                    value,
                    "left and right name a hand here, not a side",
                    "write `hand_drive` for the chain side (the rider's right) and `hand_non_drive` for the rider's left",
                ));
            }
            "hand" | "hand_drive" | "hand_non_drive" => {
                return Ok(Self::Hand {
                    side: match key {
                        "hand_drive" => Some(Side::Drive),
                        "hand_non_drive" => Some(Side::NonDrive),
                        _ => None,
                    },
                    hand: hand_of(value).map_err(within)?,
                });
            }
            "threaded" => return yes_or_no(value).map(Self::Threaded).map_err(within),
            "seat_angle" => {
                return Ok(Self::SeatAngle {
                    angle: Angle::parse(value).map_err(within)?,
                    // A template or a protractor in a small seat (memory).
                    standard_uncertainty: crate::quantity::deg(1.0),
                });
            }
            "circumference" => {
                return sized(value)
                    .map(|(reading, _)| Self::circumference(Feature::OutsideDiameter, reading))
                    .map_err(within);
            }
            "pitch" if !value.contains("+/-") && !value.contains('±') => {
                return value.parse().map(Self::Pitch).map_err(within);
            }
            _ => {}
        }
        let feature = key.parse::<Feature>().map_err(|_| {
            Error::new(
                ErrorKind::UnknownField,
                String::from(key),
                value,
                "no such observation",
                "bore, minor_diameter, crest_diameter, outside_diameter, width, half_width_drive, half_width_non_drive, \
                 pitch, hand_drive, hand_non_drive, threaded, wall, seat_angle, bolt_spacing, label, country, …",
            )
        })?;
        let (reading, tool) = sized(value).map_err(within)?;
        Ok(Self::Size {
            feature,
            reading,
            instrument: tool,
        })
    }
}

/// `33.7 +/- 0.05 mm`, `… with caliper`, or a bare length with an instrument of the tables.
fn sized(value: &str) -> Result<(Reading, Option<Text>), Error> {
    let Some((size, tool)) = value.split_once(" with ") else {
        return Ok((value.parse()?, None));
    };
    let tool = tool.trim();
    if size.contains("+/-") || size.contains('±') {
        return Ok((size.parse()?, Some(Text::Owned(tool.into()))));
    }
    let known = instrument(tool)?;
    Ok((
        known.reading(mm(settled_mm(parse_length(size)?)))?,
        Some(known.code.clone()),
    ))
}

fn hand_of(value: &str) -> Result<Hand, Error> {
    match value.trim().to_ascii_lowercase().as_str() {
        "left" | "lh" | "left-hand" => Ok(Hand::Left),
        "right" | "rh" | "right-hand" => Ok(Hand::Right),
        _ => Err(Error::new(
            ErrorKind::Text,
            "",
            value,
            "not a hand",
            "write `left` or `right`: a right-hand thread tightens clockwise",
        )),
    }
}

fn yes_or_no(value: &str) -> Result<bool, Error> {
    match value.trim().to_ascii_lowercase().as_str() {
        "yes" | "true" => Ok(true),
        "no" | "false" => Ok(false),
        _ => Err(Error::new(
            ErrorKind::Text,
            "",
            value,
            "neither yes nor no",
            "write `yes` or `no`",
        )),
    }
}
