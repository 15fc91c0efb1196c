//! Serialized forms of the answer: numbers settled, the unit in the field name.

use serde::ser::{Serialize, SerializeStruct, Serializer};

use alloc::string::String;
use alloc::vec::Vec;

use super::Feature;
use super::answer::{
    Belief, Candidate, DecidedBy, Doubt, Exclusion, Identification, Next, Outcome, Rule, Standing,
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
        sentence: String = this.sentence,
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
        notes: Vec<String> = this.notes,
        /// every candidate, most likely first
        candidates: Vec<Candidate> = this.candidates,
    }
}

impl Serialize for Outcome {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.word())
    }
}

const TEXT: Shape = Shape::Text { what: "text" };

told! {
    Outcome => Shape::Word(|| ["identified", "ambiguous", "unlisted", "cannot_tell"].map(String::from).to_vec()),
    Exclusion => Shape::Report { what: "by which observation, and what was read beside the band that it misses" },
    Doubt => Shape::Report { what: "about, kind, words" },
    Feature => TEXT,
    Rule => TEXT,
    Belief => TEXT,
}
