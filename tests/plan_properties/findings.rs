//! Property 4: what is out is dealt with. And nothing that was said is lost.

use framegauge::measure::Outcome;
use framegauge::plan::{Operation, State};

use crate::case::{Case, Failure, fails, places};
use crate::leaf::Leaf;
use crate::safety::{kind, torn};

/// 4. Every finding that is out has a step, a question, or a state that says so.
pub fn findings(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    let acceptable = case.plan.acceptable();
    for report in &case.plan.places {
        let place = report.place.to_string();
        let state = report.state;
        let asked = case.plan.questions.iter().any(|q| q.place == report.place);
        // What a part of it waits for may be asked of the whole.
        let whole = report.place.whole();
        let asked_of_whole = case.plan.questions.iter().any(|q| q.place.whole() == whole);
        let steps: Vec<Operation> = case
            .plan
            .steps_at(&report.place)
            .map(|s| s.operation)
            .collect();
        // A shell that is too wide is cured at its faces.
        let of_whole: Vec<Operation> = case
            .plan
            .steps
            .iter()
            .filter(|s| s.place.whole() == whole)
            .map(|s| s.operation)
            .collect();
        let cured = of_whole
            .iter()
            .any(|o| o.cuts() || matches!(o, Operation::Clean | Operation::Replace));
        if let Some(fact) = report
            .facts
            .iter()
            .find(|f| f.outcome == Some(Outcome::NonconformityShown))
        {
            let what = format!("{}: {}", fact.what(), fact.words());
            if !asked
                && of_whole.is_empty()
                && !matches!(state, State::Out | State::Refer | State::Open)
            {
                fails(
                    &mut out,
                    format!(
                        "out and nothing follows at {}: {}",
                        kind(&place),
                        fact.what()
                    ),
                    &what,
                );
            }
            if matches!(state, State::Leave | State::Done) {
                fails(
                    &mut out,
                    format!("out and {state} at {}: {}", kind(&place), fact.what()),
                    &what,
                );
            }
            if acceptable && !cured {
                fails(
                    &mut out,
                    format!("out and acceptable at {}: {}", kind(&place), fact.what()),
                    &what,
                );
            }
        }
        if matches!(state, State::Leave | State::Done) && (asked || !steps.is_empty()) {
            fails(
                &mut out,
                format!("{state} with work or a question at {}", kind(&place)),
                format!("{place}: {steps:?}"),
            );
        }
        if state == State::ToDo && of_whole.is_empty() {
            fails(
                &mut out,
                format!("to do without a step at {}", kind(&place)),
                &place,
            );
        }
        if state == State::Open
            && !asked_of_whole
            && report.contradictions.is_empty()
            && report.leave.is_empty()
            && steps.is_empty()
        {
            fails(
                &mut out,
                format!("open without a question at {}", kind(&place)),
                &place,
            );
        }
        if matches!(state, State::Out | State::Refer)
            && report.facts.is_empty()
            && steps.is_empty()
            && report.cures.is_empty()
        {
            fails(
                &mut out,
                format!("{state} without a word at {}", kind(&place)),
                &place,
            );
        }
        told_damage(case, &place, state, &mut out);
    }
    out
}

/// Damage that the sheet tells is not forgotten, and a place of which nothing was measured is not all clear.
fn told_damage(case: &Case, place: &str, state: State, out: &mut Vec<Failure>) {
    let finished = matches!(state, State::Leave | State::Done);
    let paths = case.paths(place);
    for path in &paths {
        let word = |field: &str| case.told.word(&format!("{path}.{field}"));
        if torn(case, path)
            && (finished || state == State::ToDo && !case.has(place, &[Operation::Replace]))
        {
            fails(
                out,
                format!("torn thread is {state} at {}", kind(place)),
                place,
            );
        }
        let tried_again = case.told.passes(path) > 0 || word("go_after").is_some();
        if finished
            && !tried_again
            && (word("go") == Some("failed") || word("state") == Some("crossed"))
        {
            fails(
                out,
                format!("a thread that takes no gauge is {state} at {}", kind(place)),
                place,
            );
        }
        if state == State::Leave && word("state") == Some("uncut") {
            fails(
                out,
                format!("an uncut thread is left at {}", kind(place)),
                place,
            );
        }
        let empty = case.told.get(path) == Some(&Leaf::Empty);
        if empty && state.is_clear() {
            fails(
                out,
                format!("nothing measured and {state} at {}", kind(place)),
                place,
            );
        }
    }
    if let [one, other] = paths.as_slice() {
        let mate = |path: &str| case.told.word(&format!("{path}.mate")).map(str::to_owned);
        if mate(one).is_some() && mate(other).is_some() && mate(one) != mate(other) {
            if state != State::Open {
                fails(out, format!("two entries for one place and {state}"), place);
            }
            if case.has(place, &[Operation::Chase, Operation::Tap, Operation::Ream]) {
                fails(out, "two entries for one place and a cut", place);
            }
        }
    }
}

/// What the sheet says is heard: every place, every note, the owner of every limit.
pub fn heard(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    let planned: Vec<String> = case
        .plan
        .places
        .iter()
        .map(|p| p.place.to_string())
        .collect();
    for place in places(&case.told) {
        if !planned.contains(&place) {
            fails(
                &mut out,
                format!("{} is not in the plan", kind(&place)),
                &place,
            );
        }
    }
    for place in planned
        .iter()
        .filter(|p| planned.iter().filter(|o| o == p).count() > 1)
    {
        fails(&mut out, "a place is told twice", place);
    }
    let mut json = None;
    let mut whole = || {
        json.get_or_insert_with(|| serde_json::to_string(&case.plan).unwrap())
            .clone()
    };
    for (path, leaf) in &case.told.0 {
        match leaf {
            Leaf::Text(note) if path.ends_with("note") => {
                let noted = case.plan.notes.contains(note)
                    || case.plan.places.iter().any(|p| p.notes.contains(note))
                    || case.plan.steps.iter().any(|s| s.notes.contains(note));
                if !noted {
                    fails(
                        &mut out,
                        format!("a note is lost at {}", kind(&plain(path))),
                        format!("{path}: {note}"),
                    );
                }
            }
            Leaf::Limits(limits) => {
                let json = whole();
                for limit in limits.iter().filter(|l| !json.contains(&l.owner)) {
                    let field = plain(path);
                    fails(
                        &mut out,
                        format!("a limit on {} is lost at {}", limit.what, kind(&field)),
                        format!("{path}: {} by {}", limit.what, limit.owner),
                    );
                }
            }
            _ => {}
        }
    }
    // What a place notes stands at its steps too, where the mechanic works.
    for step in &case.plan.steps {
        let Some(report) = case.plan.place(&step.place) else {
            fails(
                &mut out,
                "a step at a place that is not in the plan",
                step.place.to_string(),
            );
            continue;
        };
        if report.notes.iter().any(|n| !step.notes.contains(n)) {
            fails(
                &mut out,
                format!(
                    "a note is not at the step of {}",
                    kind(&step.place.to_string())
                ),
                step.words(),
            );
        }
    }
    out
}

/// A path without its numbers.
fn plain(path: &str) -> String {
    path.chars().filter(|c| !c.is_ascii_digit()).collect()
}
