//! Dropouts and their spacing and their angle, each kept apart.

use super::Finding;
use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{Angle, Length, deg, in_mm, mm, positive, to_mm};
use crate::read::{Inside, form};
use crate::standard::Tables;
use crate::{Error, ErrorKind};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

form! {
    /// Two dropouts: their spacing and their angle, kept apart. No limit for either is published.
    ///
    /// ```
    /// use framegauge::{deg, judge::Dropouts, mm, standard::Tables};
    /// let pair = Dropouts {
    ///     spacing: "114 +/- 0.2 mm".parse().unwrap(), hub: mm(108.0),
    ///     difference: Some("1.0 +/- 0.1 mm".parse().unwrap()), over: None, angle: Some(deg(2.0)),
    /// };
    /// let said = pair.answer(Tables::ours()).unwrap();
    /// assert_eq!((said.millimetres("spacing off by"), said.millimetres("each side")), (Some(6.0), Some(3.0)));
    /// assert!((said.millimetres("length that this angle implies").unwrap() - 28.636).abs() < 0.001);
    /// ```
    Dropouts {
        /// Distance of the inner faces as found.
        spacing: Reading => Inside,
        /// Width over the locknuts of the hub that belongs there.
        hub: Length,
        /// Difference of the spacing between the two ends of the dropouts.
        difference: Option<Reading>,
        /// Length between these two readings.
        over: Option<Length>,
        /// An angle that somebody states.
        angle: Option<Angle>,
    }
}

impl Dropouts {
    /// The verdict: spacing off by so much in all and on each side; angle between the faces from two readings, or the length
    /// that a stated angle implies.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none, and for a stated angle that is none between two faces.
    pub fn answer(&self, _: Tables<'_>) -> Result<Verdict, Error> {
        size_reading("spacing", &self.spacing)?;
        let hub = positive("hub", self.hub)?;
        let off = self.spacing.value() - hub;
        let apart = match settled_cmp(off, NOTHING) {
            Ordering::Greater => format!("{} too wide, {} a side", in_mm(off), in_mm(off / 2.0)),
            Ordering::Less => format!("{} too narrow, {} a side", in_mm(-off), in_mm(-off / 2.0)),
            Ordering::Equal => String::from("as wide as the hub"),
        };
        if let Some(angle) = self.angle {
            between_dropouts(angle)?;
        }
        let mut said = Verdict::from_findings(
            "dropouts",
            Vec::from([Finding {
                outcome: Some(Outcome::Undecided),
                readings: Vec::from([self.spacing]),
                ..Finding::stated(
                    "spacing",
                    format!(
                        "{} for a hub of {}: {apart}; no limit is published",
                        self.spacing,
                        in_mm(hub),
                    ),
                )
            }]),
        )
        .with(Worked::length(
            "spacing off by",
            off,
            "spacing less hub width",
        ))
        .with(Worked::length(
            "each side",
            off / 2.0,
            "half of it, if both stand equally far from the middle",
        ));
        let mut sentence = format!("Spacing {apart}");
        let mut angle_known = false;
        if let Some(difference) = &self.difference {
            let apart = to_mm(difference.value()).abs();
            match (self.over, self.angle) {
                (Some(over), stated) => {
                    let over = positive("over", over)?;
                    let angle = deg(libm::atan2(apart, to_mm(over)).to_degrees());
                    angle_known = true;
                    sentence.push_str(&format!(
                        "; faces {:.2}° apart in direction",
                        libm::atan2(apart, to_mm(over)).to_degrees()
                    ));
                    said = said.with(Worked::angle("angle", angle, "atan(difference / length)"));
                    if let Some(stated) = stated
                        && (stated.value - angle.value).abs() > deg(0.5).value
                    {
                        sentence.push_str("; the angle that was stated is another");
                    }
                }
                (None, Some(stated)) => {
                    let over = mm(apart / libm::tan(stated.value));
                    angle_known = true;
                    sentence.push_str(&format!(
                        "; {:.3} mm at the stated angle implies a length of {}",
                        apart,
                        in_mm(over)
                    ));
                    said = said.with(Worked::angle("angle", stated, "as stated")).with(
                        Worked::length(
                            "length that this angle implies",
                            over,
                            "difference / tan(angle)",
                        ),
                    );
                }
                (None, None) => {}
            }
        }
        sentence.push_str(". Spacing and angle are two faults; washers cure neither, and for neither is a limit published.");
        if !angle_known {
            said = said.then(NextStep::new(
                "the spacing at both ends of the dropouts, and how far these are apart",
                "two readings and their distance give the angle",
                "inside caliper, rule, or alignment gauges",
            ));
        }
        said = said.then(NextStep::new(
            "each dropout from the middle plane of the frame",
            "half the error a side holds only when both are off alike",
            "straightedge or string line",
        ));
        Ok(said.saying(sentence).minding("cold setting is for steel only, and for a qualified builder; never bend aluminium, titanium or carbon"))
    }
}

/// A stated angle: more than nothing, and no more than two bent faces can stand apart.
fn between_dropouts(angle: Angle) -> Result<(), Error> {
    let degrees = angle.value.to_degrees();
    let (kind, problem) = if !degrees.is_finite() {
        (ErrorKind::NotFinite, "an angle must be finite")
    } else if !(0.01..=45.0).contains(&degrees) {
        (ErrorKind::OutOfRange, "no angle between dropout faces")
    } else {
        return Ok(());
    };
    Err(Error::new(
        kind,
        "angle",
        degrees,
        problem,
        "give a few degrees",
    ))
}
