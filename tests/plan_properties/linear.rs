//! Property 10: ten thousand places are planned, and lists of errors are capped. Time is for `benches/plan.rs`.

use framegauge::plan::{FrameSheet, prepare};
use framegauge::read::{MOST_DEFECTS, Tree};
use framegauge::standard::Tables;
use serde::Deserialize;
use serde_json::json;

const MANY: usize = 10_000;

fn bosses(of: impl Fn(usize) -> serde_json::Value) -> serde_json::Value {
    let list: Vec<_> = (0..MANY).map(of).collect();
    json!({ "format": 1, "frame": "invented: more bosses than frame", "material": "steel", "thread": list })
}

#[test]
fn ten_thousand_places_are_planned() {
    let sheet = bosses(
        |i| json!({ "place": "bottle_boss", "name": format!("boss {i}"), "mate": "M5x0.8", "pitch": "0.8 mm", "state": "fouled", "coating": "painted" }),
    );
    let sheet = FrameSheet::from_tree(&Tree::deserialize(&sheet).unwrap(), Tables::ours()).unwrap();
    let plan = prepare(&sheet);
    assert_eq!(plan.places.len(), MANY);
    assert!(
        plan.steps.len() + plan.questions.len() >= MANY,
        "{} steps, {} questions",
        plan.steps.len(),
        plan.questions.len()
    );
}

#[test]
fn ten_thousand_defects_are_capped() {
    let sheet = bosses(|_| json!({ "place": "bottle_bos", "state": "fouled" }));
    let errors =
        FrameSheet::from_tree(&Tree::deserialize(&sheet).unwrap(), Tables::ours()).unwrap_err();
    assert_eq!(errors.len(), MOST_DEFECTS + 1);
    let last = errors.last().unwrap();
    assert!(
        last.problem()
            .contains(&format!("and {} more", MANY - MOST_DEFECTS)),
        "{last}"
    );
}
