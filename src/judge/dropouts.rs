//! Dropouts and their spacing and their angle, each kept apart.

use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked, size_reading};
use super::{Finding, SquareAsk, SquareFact};
use crate::measure::{Outcome, Reading};
use crate::quantity::{Angle, Length, deg, mm, positive, to_mm};
use crate::read::{Inside, form};
use crate::standard::Tables;
use crate::{Error, ErrorKind};

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
    /// assert!((said.millimetres("length implied").unwrap() - 28.636).abs() < 0.001);
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
        let wide = self.spacing.value() - hub;
        self.angle.map(between_dropouts).transpose()?;
        let spacing = Finding {
            outcome: Some(Outcome::Undecided),
            readings: Vec::from([self.spacing]),
            ..Finding::of(SquareFact::Spacing { hub, wide })
        };
        let mut said = Verdict::from_findings("dropouts", Vec::from([spacing]))
            .with(Worked::length("spacing off by", wide, "spacing - hub"))
            .with(Worked::length("each side", wide / 2.0, "half of it"));
        match self.faces()? {
            None => said = said.then(NextStep::of(SquareAsk::SpacingTwice)),
            Some((angle, over, read)) => {
                said = said.with(Worked::angle("angle", angle, "atan(difference / length)"));
                if !read {
                    let formula = "difference / tan(angle)";
                    said = said.with(Worked::length("length implied", over, formula));
                }
                let fact = SquareFact::FacesApart { angle, over, read };
                said.findings.push(Finding::of(fact));
                let other = |stated: Angle| (stated.value - angle.value).abs() > deg(0.5).value;
                if self.angle.is_some_and(other) {
                    said.findings.push(Finding::of(SquareFact::OtherAngle));
                }
            }
        }
        said.findings.push(Finding::of(SquareFact::TwoFaults));
        Ok(said
            .then(NextStep::of(SquareAsk::MiddlePlane))
            .minding(SquareFact::ColdSetting))
    }

    /// The angle of the faces with the length that belongs to it, and whether that length was read; else it is implied.
    fn faces(&self) -> Result<Option<(Angle, Length, bool)>, Error> {
        let Some(difference) = &self.difference else {
            return Ok(None);
        };
        let apart = to_mm(difference.value()).abs();
        let over = self.over.map(|over| positive("over", over)).transpose()?;
        Ok(match (over, self.angle) {
            (Some(over), _) => {
                let angle = libm::atan2(apart, to_mm(over)).to_degrees();
                Some((deg(angle), over, true))
            }
            (None, Some(stated)) => Some((stated, mm(apart / libm::tan(stated.value)), false)),
            (None, None) => None,
        })
    }
}

/// A stated angle: more than nothing, and no more than two bent faces can stand apart.
fn between_dropouts(angle: Angle) -> Result<(), Error> {
    let degrees = angle.value.to_degrees();
    let kind = if !degrees.is_finite() {
        ErrorKind::NotFinite
    } else if !(0.01..=45.0).contains(&degrees) {
        ErrorKind::OutOfRange
    } else {
        return Ok(());
    };
    Err(Error::new(
        kind,
        "angle",
        degrees,
        "no angle between dropout faces",
        "give a few degrees",
    ))
}
