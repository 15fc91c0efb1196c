//! Serialized forms of the answer: numbers settled, the unit in the field name.

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::Feature;
use super::answer::{Candidate, DecidedBy, Exclusion, Identification, Next, Outcome, Standing};
use crate::quantity::settled_mm;

/// Four places: shares and bits from workshop uncertainties are not known better.
fn short(value: f64) -> f64 {
    libm::round(value * 1e4) / 1e4
}
fn settled(value: f64) -> f64 {
    libm::round(value * 1e6) / 1e6
}

impl Serialize for Exclusion {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Exclusion", 6)?;
        out.serialize_field("by", &self.by)?;
        let angle = self.by == Feature::SeatAngle;
        let names = if angle {
            ["read_deg", "lower_deg", "upper_deg"]
        } else {
            ["read_mm", "lower_mm", "upper_mm"]
        };
        if let Some(a) = &self.against {
            for (name, value) in names.into_iter().zip([a.read, a.lower, a.upper]) {
                out.serialize_field(name, &settled(value))?;
            }
            out.serialize_field(
                "distance_in_u",
                &(libm::round(a.distance_in_u * 100.0) / 100.0),
            )?;
            out.serialize_field("assumed", &a.assumed)?;
        }
        out.end()
    }
}

impl Serialize for Candidate {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Candidate", 8)?;
        out.serialize_field("code", &self.code)?;
        out.serialize_field("name", &self.name)?;
        out.serialize_field("share", &short(self.share))?;
        let (standing, excluded) = match &self.standing {
            Standing::Possible => ("possible", None),
            Standing::Untested => ("untested", None),
            Standing::Excluded(by) => ("excluded", Some(by)),
        };
        out.serialize_field("standing", standing)?;
        out.serialize_field("excluded", &excluded)?;
        out.serialize_field("width_mm", &self.width.map(settled_mm))?;
        out.serialize_field("thread", &self.thread)?;
        out.serialize_field("grade", &self.grade)?;
        out.end()
    }
}

impl Serialize for Next {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Next", 5)?;
        out.serialize_field("measure", &self.measure)?;
        out.serialize_field("instrument", &self.instrument)?;
        out.serialize_field("separates", &self.separates)?;
        out.serialize_field("bits", &short(self.bits))?;
        out.serialize_field("cost", &self.cost)?;
        out.end()
    }
}

impl Serialize for DecidedBy {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("DecidedBy", 2)?;
        out.serialize_field("rule", &self.rule)?;
        out.serialize_field("feature", &self.feature)?;
        out.end()
    }
}

impl Serialize for Outcome {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.word())
    }
}

impl Serialize for Identification {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Identification", 13)?;
        out.serialize_field("place", &self.place)?;
        out.serialize_field("outcome", &self.outcome)?;
        out.serialize_field("code", &self.outcome.identified())?;
        out.serialize_field("between", self.outcome.left())?;
        out.serialize_field("sentence", &self.sentence)?;
        out.serialize_field("decided_by", &self.decided_by)?;
        out.serialize_field("belief", &self.belief)?;
        out.serialize_field("interchange", &self.interchange)?;
        out.serialize_field("next", &self.next)?;
        out.serialize_field("inseparable", &self.inseparable)?;
        out.serialize_field("doubts", &self.doubts)?;
        out.serialize_field("notes", &self.notes)?;
        out.serialize_field("candidates", &self.candidates)?;
        out.end()
    }
}
