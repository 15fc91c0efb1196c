//! Serialized forms of the answer: numbers settled, the unit in the field name.

use alloc::string::ToString;

use serde::ser::{Serialize, SerializeMap, SerializeStruct, Serializer};

use super::Feature;
use super::answer::{
    Candidate, DecidedBy, Doubt, DoubtKind, Exclusion, Identification, Next, Note, Outcome,
    Standing,
};
use crate::quantity::settled_mm;

/// Four places: shares and bits from workshop uncertainties are not known better.
fn short(value: f64) -> f64 {
    libm::round(value * 1e4) / 1e4
}
fn settled(value: f64) -> f64 {
    libm::round(value * 1e6) / 1e6
}

/// Names of a reading and of the two ends that it is held against, with the unit.
const fn names(of: Feature) -> [&'static str; 3] {
    match of {
        Feature::SeatAngle => ["read_deg", "lower_deg", "upper_deg"],
        _ => ["read_mm", "lower_mm", "upper_mm"],
    }
}

impl Serialize for Exclusion {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Exclusion", 6)?;
        out.serialize_field("by", &self.by)?;
        if let Some(a) = &self.against {
            for (name, value) in names(self.by).into_iter().zip([a.read, a.lower, a.upper]) {
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

impl Serialize for Doubt {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_map(None)?;
        out.serialize_entry("about", &self.about)?;
        let code: &'static str = (&self.kind).into();
        out.serialize_entry("kind", code)?;
        let [read, low, high] = names(self.about);
        let (DoubtKind::Scatter {
            low: least,
            high: most,
            ..
        }
        | DoubtKind::Implausible {
            low: least,
            high: most,
            ..
        }) = self.kind;
        out.serialize_entry(low, &settled(least))?;
        out.serialize_entry(high, &settled(most))?;
        match &self.kind {
            DoubtKind::Scatter { count, .. } => out.serialize_entry("count", count)?,
            DoubtKind::Implausible {
                read: size, may_be, ..
            } => {
                out.serialize_entry(read, &settled(*size))?;
                out.serialize_entry("may_be", may_be)?;
            }
        }
        out.serialize_entry("words", &self.to_string())?;
        out.end()
    }
}

impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl Serialize for Identification {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Identification", 13)?;
        out.serialize_field("place", &self.place)?;
        out.serialize_field("outcome", &self.outcome)?;
        out.serialize_field("code", &self.outcome.identified())?;
        out.serialize_field("between", self.outcome.left())?;
        out.serialize_field("sentence", &self.words())?;
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

crate::fact::values_as_they_are!(Note);
