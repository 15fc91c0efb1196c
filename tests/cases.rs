//! Every case of the log, through the public API: numbers and outcome, or the honest undecided answer and the next step.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "../examples/support/cases/mod.rs"]
mod cases;

#[test]
fn every_case() {
    let all = cases::all();
    assert_eq!(all.len(), 38);
    let mut failures = Vec::new();
    for (case, runner) in all {
        let run = cases::run(runner);
        assert!(!run.checks.is_empty(), "{}: nothing is checked", case.id);
        assert_eq!(run.result() == "wrong", run.checks.iter().any(|c| !c.1));
        for (what, held) in &run.checks {
            if !held {
                failures.push(format!(
                    "{}: {what}\n    {}",
                    case.id,
                    run.says.join("\n    ")
                ));
            }
        }
        // A case with numbers and an ending is decided, or its own expected verdict leaves it open.
        let left_open = case.expected_verdict.contains("needs")
            || case.expected_verdict.contains("not decidable");
        if case.tier == "core" && !run.open.is_empty() && !left_open {
            failures.push(format!("{}: left open: {}", case.id, run.open.join("; ")));
        }
    }
    assert!(failures.is_empty(), "\n{}", failures.join("\n"));
}
