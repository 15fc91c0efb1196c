//! Serialized forms of the answer: numbers settled, the unit in the field name.

use alloc::string::ToString;

use serde::ser::{Serialize, SerializeMap, SerializeStruct, Serializer};

use alloc::string::String;
use alloc::vec::Vec;

use super::Feature;
use super::answer::{
    Belief, Candidate, DecidedBy, Doubt, DoubtKind, Exclusion, Identification, Next, Note, Outcome,
    Rule, Standing,
};
use crate::evidence::{Grade, Text};
use crate::quantity::settled_mm;
use crate::read::{Shape, goes_out, told};
use crate::standard::Place;
use crate::thread::ThreadSize;

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

impl Standing {
    const fn word(&self) -> &'static str {
        match self {
            Self::Possible => "possible",
            Self::Untested => "untested",
            Self::Excluded(_) => "excluded",
        }
    }
    const fn excluded(&self) -> Option<&Exclusion> {
        match self {
            Self::Excluded(by) => Some(by),
            Self::Possible | Self::Untested => None,
        }
    }
}

goes_out! {
    Candidate(this) {
        /// code of the row
        code: Text = this.code,
        /// its name
        name: Text = this.name,
        /// how likely it is, 0 to 1
        share: f64 = short(this.share),
        /// `possible`, `untested` or `excluded`
        standing: &str = this.standing.word(),
        /// the observation that rules it out
        excluded: Option<Exclusion> = this.standing.excluded(),
        /// its width
        width_mm: Option<f64> = this.width.map(settled_mm),
        /// its thread
        thread: Option<ThreadSize> = this.thread,
        /// what its weakest figure is worth
        grade: Option<Grade> = this.grade,
    }
    Next(this) {
        /// what to measure or look at
        measure: Feature = this.measure,
        /// code of the cheapest instrument that does it; null where eyes and hands do
        instrument: Option<Text> = this.instrument,
        /// candidates that it would tell from the most likely one
        separates: Vec<Text> = this.separates,
        /// expected information, bit
        bits: f64 = short(this.bits),
        /// order of cost and trouble, 0 a look, 1 by hand, then as the instruments
        cost: u8 = this.cost,
    }
    DecidedBy(this) {
        /// the rule that settled the outcome
        rule: Rule = this.rule,
        /// the observation that did
        feature: Option<Feature> = this.feature,
    }
    Identification(this) {
        /// the place that was asked about
        place: Place = this.place,
        /// what may be said
        outcome: Outcome = this.outcome,
        /// the standard, when identified
        code: Option<&str> = this.outcome.identified(),
        /// what is left, when ambiguous or identified
        between: Vec<Text> = this.outcome.left(),
        /// the answer in words
        sentence: String = this.words(),
        /// rule and observation that decided
        decided_by: Option<DecidedBy> = this.decided_by,
        /// what became of the belief
        belief: Option<Belief> = this.belief,
        /// whether all that is left interchanges
        interchange: bool = this.interchange,
        /// what to measure next, the best first
        next: Vec<Next> = this.next,
        /// whether no measurement could separate what is left
        inseparable: bool = this.inseparable,
        /// readings that look wrong
        doubts: Vec<Doubt> = this.doubts,
        /// what else to know
        notes: Vec<Note> = this.notes,
        /// every candidate, most likely first
        candidates: Vec<Candidate> = this.candidates,
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

const TEXT: Shape = Shape::Text { what: "text" };

told! {
    /// by which observation, and what was read beside the band that it misses
    Exclusion: Report,
    /// about, kind, numbers, words
    Doubt: Report,
}

told! {
    Outcome => Shape::Word(|| ["identified", "ambiguous", "unlisted", "cannot_tell"].map(String::from).to_vec()),
    Feature => TEXT,
    Note => TEXT,
    Rule => TEXT,
    Belief => TEXT,
}

crate::fact::values_as_they_are!(Note);
