//! Plans of small invented sheets, written as a mechanic meets the frame; what is right was decided by hand before looking.
//!
//! The sheets of the first trial stand beside three more of their kind: a fix is for the class.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod fork;
mod head;
mod head_depths;
mod head_limits;
mod mounts;
mod mounts_limits;
mod reported;
mod seat_tubes;
mod shells;
mod shells_guided;
mod threads;
mod told;

use framegauge::measure::{Outcome, settled_cmp};
use framegauge::plan::{FrameSheet, Operation, Plan, State, prepare};
use framegauge::read::Tree;
use framegauge::standard::{Place, Tables};

/// A case: title with the reason; the place looked at; its state; every operation planned there, in order; fields that must be
/// asked for; the sheet without its head.
struct Case(
    &'static str,
    &'static str,
    State,
    &'static [Operation],
    &'static [&'static str],
    &'static str,
);

fn read(text: &str) -> FrameSheet {
    let whole = format!("format = 1\nframe = \"invented\"\ninvented = true\n{text}");
    let tree: Tree = toml::from_str(&whole).unwrap_or_else(|e| panic!("{e}\n{whole}"));
    FrameSheet::from_tree(&tree, Tables::ours()).unwrap_or_else(|e| panic!("{e:?}\n{whole}"))
}

fn planned(text: &str) -> Plan {
    prepare(&read(text))
}

/// The state of a place.
fn state(plan: &Plan, place: &str) -> State {
    let place: Place = place.parse().unwrap();
    plan.place(&place).map_or_else(
        || panic!("{place} is not in the plan"),
        |report| report.state,
    )
}

fn operations(plan: &Plan, place: &str) -> Vec<Operation> {
    let place: Place = place.parse().unwrap();
    plan.steps_at(&place).map(|s| s.operation).collect()
}

/// Everything that is said of a place, in one text.
fn said(plan: &Plan, place: &str) -> String {
    let place: Place = place.parse().unwrap();
    let report = plan.place(&place).unwrap();
    let facts = report
        .facts
        .iter()
        .map(|f| format!("{}: {}", f.what(), f.words()));
    let rest = [&report.contradictions, &report.leave, &report.cures]
        .into_iter()
        .flatten()
        .map(ToString::to_string)
        .chain(report.notes.clone());
    let steps = plan
        .steps_at(&place)
        .map(|s| format!("{}: {}", s.words(), s.why()));
    facts
        .chain(rest)
        .chain(steps)
        .collect::<Vec<_>>()
        .join("\n")
}

fn hold(cases: &[Case]) {
    for Case(title, place, wanted, steps, asks, sheet) in cases {
        let plan = planned(sheet);
        let answers: Vec<&str> = plan.questions.iter().map(|q| q.answer.as_str()).collect();
        let told = || format!("{title}\n{answers:?}\n{}", said(&plan, place));
        assert_eq!(state(&plan, place), *wanted, "{}", told());
        assert_eq!(operations(&plan, place), *steps, "{}", told());
        for field in *asks {
            assert!(answers.contains(field), "{field} is not asked: {}", told());
        }
        never_unsafe(&plan, title);
    }
}

/// What no plan may do, whatever the sheet.
fn never_unsafe(plan: &Plan, title: &str) {
    for step in &plan.steps {
        if step.cuts() {
            assert!(
                !step.stops.is_empty(),
                "{title}: nothing stops {}",
                step.words()
            );
            let most = step.off.map(|off| off.most);
            for (stop, most) in step.stops.iter().filter_map(|s| Some((s, most?))) {
                if let Some(to_go) = stop.to_go {
                    assert!(
                        settled_cmp(most, to_go).is_le(),
                        "{title}: {} passes {}",
                        step.words(),
                        stop.limit
                    );
                }
            }
        } else {
            assert!(step.off.is_none() && step.stops.is_empty(), "{title}");
        }
        if step.operation == Operation::Refer {
            let bare = step.tools.is_empty() && step.proof.is_none() && step.checks.is_empty();
            assert!(bare, "{title}: a refusal reads as an order");
        }
    }
    for place in &plan.places {
        let out = place
            .facts
            .iter()
            .any(|f| f.outcome == Some(Outcome::NonconformityShown));
        let whole = place.place.whole();
        let dealt = plan.steps.iter().any(|s| s.place.whole() == whole)
            || plan.questions.iter().any(|q| q.place == place.place)
            || !place.state.is_clear();
        assert!(
            !out || dealt,
            "{title}: {} is out and nothing follows",
            place.name
        );
    }
}
