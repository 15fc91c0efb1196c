//! Identification against worked examples, real questions and the pairs that are easily confused.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod bad_input;
mod cases;
mod confusable;
mod features;
mod likelihood;
mod limits;
mod names;
mod outcomes;
mod rules;
mod slips;
mod together;
mod worked_example;

use framegauge::identify::{
    Assumptions, Belief, Doubt, DoubtKind, Feature, Identification, Note, Observation, Options,
    Outcome, Rule, Standing, TakenFor, UNLISTED, identify,
};
use framegauge::standard::{End, HeadTubeEnd, LeftRight, Place};
use framegauge::thread::{Hand, Side, ThreadForm, ThreadSize};
use framegauge::{ErrorKind, Pitch, in_mm, mm};

const UPPER: Place = Place::HeadTube(HeadTubeEnd::Upper);

fn see(words: &[(&str, &str)]) -> Vec<Observation> {
    words
        .iter()
        .map(|(key, value)| Observation::read(key, value).unwrap())
        .collect()
}

/// Every place but those of which nobody lists standards.
fn identifiable() -> impl Iterator<Item = Place> {
    Place::all().filter(|place| {
        !matches!(
            place,
            Place::SeatTubeSlot | Place::HeadFace(_) | Place::BrakeUnderside(_) | Place::Iscg
        )
    })
}

fn ask(kind: Place, words: &[(&str, &str)]) -> Identification {
    identify(kind, &see(words), &Options::default()).unwrap()
}

fn scattered(doubt: &Doubt) -> bool {
    matches!(doubt.kind, DoubtKind::Scatter { .. })
}

fn left(answer: &Identification) -> Vec<&str> {
    let mut codes: Vec<&str> = answer.outcome.left().iter().map(AsRef::as_ref).collect();
    codes.sort_unstable();
    codes
}

fn excluded_by(answer: &Identification, code: &str) -> Option<Feature> {
    match answer.candidate(code)?.standing {
        Standing::Excluded(e) => Some(e.by),
        _ => None,
    }
}

fn first_next(answer: &Identification) -> Option<Feature> {
    answer.next.first().map(|n| n.measure)
}

/// Numbers go out settled, with the unit in the name.
#[cfg(feature = "serde")]
#[test]
fn serialized() {
    let answer = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("width", "79.0 +/- 0.1 mm"),
            ("label", "BB386"),
        ],
    );
    let json = serde_json::to_value(&answer).unwrap();
    assert_eq!(json["outcome"], "identified");
    assert_eq!(json["code"], "bbright_pf");
    assert_eq!(json["belief"], "contradicted");
    let out = json["candidates"]
        .as_array()
        .unwrap()
        .iter()
        .find(|c| c["code"] == "bb386")
        .unwrap();
    assert_eq!(out["standing"], "excluded");
    assert_eq!(out["excluded"]["by"], "width");
    assert_eq!(out["excluded"]["read_mm"], 79.0);
    assert_eq!(out["excluded"]["lower_mm"], 85.7);
    let open = ask(Place::SeatTube, &[("bore", "27.1 +/- 0.05 mm")]);
    let json = serde_json::to_value(&open).unwrap();
    assert_eq!(json["outcome"], "ambiguous");
    assert_eq!(json["next"][0]["measure"], "bore");
}
