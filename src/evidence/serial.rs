//! Serialized forms of figures and facts. Out: numbers with the unit in the field name, grade and sources. In: a shop's
//! own rows, in the same words as the files of `data/`; whatever grade they claim, they are graded `Shop`.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde::ser::SerializeMap;
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{Citation, Dissent, Evidence, Fact, Figure, Source, SourceKind, Span};
use crate::quantity::Printed;

impl Serialize for Citation {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

fn evidence_into<M: SerializeMap>(map: &mut M, evidence: &Evidence) -> Result<(), M::Error> {
    map.serialize_entry("grade", &evidence.grade())?;
    if evidence.worth() != evidence.grade() {
        map.serialize_entry("worth", &evidence.worth())?;
    }
    if !evidence.formula().is_empty() {
        map.serialize_entry("formula", evidence.formula())?;
    }
    map.serialize_entry("sources", evidence.sources())?;
    if !evidence.note().is_empty() {
        map.serialize_entry("note", evidence.note())?;
    }
    Ok(())
}

fn span_into<M: SerializeMap, Q: Printed>(map: &mut M, span: &Span<Q>) -> Result<(), M::Error> {
    for (name, value) in [
        ("nominal", span.nominal),
        ("lower", span.lower),
        ("upper", span.upper),
    ] {
        map.serialize_entry(
            &format!("{name}_{}", Q::SUFFIX),
            &value.map(Printed::in_unit),
        )?;
    }
    Ok(())
}

impl Serialize for Evidence {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        evidence_into(&mut map, self)?;
        map.end()
    }
}

impl<Q: Printed> Serialize for Dissent<Span<Q>> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        span_into(&mut map, &self.value)?;
        evidence_into(&mut map, &self.evidence)?;
        map.end()
    }
}

impl<Q: Printed> Serialize for Figure<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        match (self.span(), self.evidence()) {
            (Some(span), Some(evidence)) => {
                span_into(&mut map, span)?;
                evidence_into(&mut map, evidence)?;
            }
            _ => map.serialize_entry("unknown", self.reason())?,
        }
        if !self.dissent().is_empty() {
            map.serialize_entry("dissent", self.dissent())?;
        }
        map.end()
    }
}

/// A fact's dissent serializes beside it as `value` plus evidence.
struct Voice<'a, V>(&'a V, &'a Evidence);

impl<V: Serialize> Serialize for Voice<'_, V> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("value", self.0)?;
        evidence_into(&mut map, self.1)?;
        map.end()
    }
}

impl<V: Clone + Serialize + 'static> Serialize for Fact<V> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        match (self.value(), self.evidence()) {
            (Some(value), Some(evidence)) => {
                map.serialize_entry("value", value)?;
                evidence_into(&mut map, evidence)?;
            }
            _ => map.serialize_entry("unknown", self.reason())?,
        }
        if !self.dissent().is_empty() {
            let voices: Vec<_> = self
                .dissent()
                .iter()
                .map(|d| Voice(&d.value, &d.evidence))
                .collect();
            map.serialize_entry("dissent", &voices)?;
        }
        map.end()
    }
}

/// The evidence part of a shop's figure, in the words of `data/`.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenFigure {
    nominal: Option<String>,
    lower: Option<String>,
    upper: Option<String>,
    unknown: Option<String>,
    grade: Option<super::Grade>,
    #[serde(default)]
    from: Vec<String>,
    #[serde(default)]
    note: String,
    formula: Option<String>,
    basis: Option<super::Grade>,
    #[serde(default)]
    dissent: Vec<WrittenFigure>,
}

pub(crate) fn shop_evidence(from: &[String], note: String) -> Evidence {
    let citations: Vec<Citation> = from.iter().map(|text| shop_citation(text)).collect();
    Evidence::shop(note).citing(citations)
}

/// `title @ place`, as a shop names its own source.
pub(crate) fn shop_citation(text: &str) -> Citation {
    let (title, at) = text.split_once('@').unwrap_or((text, ""));
    let title = title.trim().to_string();
    Citation::new(
        Source {
            id: title.clone().into(),
            title: title.into(),
            edition: "".into(),
            kind: SourceKind::Shop,
        },
        at.trim().to_string(),
    )
}

fn span_of<Q: Printed>(written: &WrittenFigure) -> Result<Span<Q>, crate::Error> {
    let read = |text: &Option<String>| text.as_deref().map(Q::parse).transpose();
    Span::new(
        read(&written.nominal)?,
        read(&written.lower)?,
        read(&written.upper)?,
    )
}

impl<'de, Q: Printed> Deserialize<'de> for Figure<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let written = WrittenFigure::deserialize(deserializer)?;
        // The claimed grade, basis and formula are read so that a row copied from data/ is accepted, and then not believed.
        let _ = (&written.grade, &written.basis, &written.formula);
        let mut voices = Vec::new();
        for voice in &written.dissent {
            voices.push(Dissent {
                value: span_of(voice).map_err(de::Error::custom)?,
                evidence: shop_evidence(&voice.from, voice.note.clone()),
            });
        }
        let figure = if let Some(reason) = written.unknown {
            if written.nominal.is_some() || written.lower.is_some() || written.upper.is_some() {
                return Err(de::Error::custom(
                    "a figure is either unknown or has values, not both",
                ));
            }
            Self::unknown(reason)
        } else {
            let span = span_of(&written).map_err(de::Error::custom)?;
            Self::known(span, shop_evidence(&written.from, written.note))
        };
        Ok(figure.disputed_by(voices))
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
#[serde(bound(deserialize = "V: Deserialize<'de>"))]
struct WrittenFact<V> {
    value: Option<V>,
    unknown: Option<String>,
    grade: Option<super::Grade>,
    #[serde(default)]
    from: Vec<String>,
    #[serde(default)]
    note: String,
    formula: Option<String>,
    basis: Option<super::Grade>,
    #[serde(default = "Vec::new")]
    dissent: Vec<WrittenFact<V>>,
}

impl<'de, V: Clone + Deserialize<'de> + 'static> Deserialize<'de> for Fact<V> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let written = WrittenFact::<V>::deserialize(deserializer)?;
        let _ = (&written.grade, &written.basis, &written.formula);
        let mut voices = Vec::new();
        for voice in written.dissent {
            voices.push(Dissent {
                value: voice
                    .value
                    .ok_or_else(|| de::Error::missing_field("value"))?,
                evidence: shop_evidence(&voice.from, voice.note),
            });
        }
        let fact = match (written.value, written.unknown) {
            (Some(value), None) => Self::known(value, shop_evidence(&written.from, written.note)),
            (None, Some(reason)) => Self::unknown(reason),
            (Some(_), Some(_)) => {
                return Err(de::Error::custom(
                    "a fact is either unknown or has a value, not both",
                ));
            }
            (None, None) => return Err(de::Error::missing_field("value")),
        };
        Ok(fact.disputed_by(voices))
    }
}
