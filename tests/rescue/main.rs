//! What is left to do for a damaged thread or bore: every step, how it stands and why, on a limit and a micrometre beside.
//!
//! How the steps of interest stand is written by hand, with the reason; everything else that is said of them is held in the
//! `*.txt` files beside. `UPDATE_PINNED=1 cargo test --test rescue` rewrites these: read the difference as the mechanic
//! would before committing it. All sizes are invented; reasons name a table row, arithmetic, or common practice.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod bores;
#[path = "../committed/mod.rs"]
mod committed;
mod sizes;
mod symptoms;
mod threads;

use std::fmt::Write as _;

use framegauge::measure::Reading;
use framegauge::mm;
use framegauge::rescue::{Rescue, RescueOption, Stand, Step};

const YES: Stand = Stand::Allowed;
const NO: Stand = Stand::Forbidden;
const MEASURE: Stand = Stand::NeedsMeasurement;

/// A case: title, how steps have to stand, why, and what was answered.
struct Case(&'static str, &'static [(Step, Stand)], &'static str, Rescue);

fn exact(value: f64) -> Reading {
    Reading::exact(mm(value)).unwrap()
}

fn read(text: &str) -> Reading {
    text.parse().unwrap()
}

fn hold(name: &str, cases: &[Case]) {
    let mut text = String::new();
    for Case(title, expected, because, left) in cases {
        for (step, stand) in *expected {
            assert_eq!(
                left.stand(*step),
                Some(*stand),
                "{title}: {step}, {because}\n{left}"
            );
        }
        let mut stands: Vec<Step> = left.options.iter().map(|o| o.step).collect();
        stands.dedup();
        assert!(stands.is_sorted(), "{title}: not in order of caution");
        writeln!(
            text,
            "== {title}\n   {because}\n{}: {}. {}",
            left.what,
            left.damage,
            left.words()
        )
        .unwrap();
        for option in &left.options {
            say(&mut text, option);
        }
        for shell in &left.shells_after {
            let side = |t: Option<framegauge::thread::Designation>| {
                t.map_or_else(|| String::from("none"), |t| t.to_string())
            };
            writeln!(
                text,
                "  shell after: drive {}, non-drive {}",
                side(shell.drive),
                side(shell.non_drive)
            )
            .unwrap();
        }
        text.push('\n');
    }
    committed::same_as_committed(&format!("rescue/{name}.txt"), &text);
}

fn say(text: &mut String, option: &RescueOption) {
    let what = option.what.as_ref().map(ToString::to_string);
    writeln!(
        text,
        "- {} {} [{}] {}",
        option.step.words(),
        what.unwrap_or_default(),
        option.stand,
        option.words()
    )
    .unwrap();
    let worth = option.grade.map_or("own readings", |g| g.words());
    writeln!(text, "    costs: {}; worth: {worth}", option.step.costs()).unwrap();
    let codes: Vec<&str> = option.why.iter().map(|fact| fact.code()).collect();
    writeln!(text, "    by: {}", codes.join(", ")).unwrap();
    for next in &option.next {
        writeln!(text, "    next: {}", next.words()).unwrap();
    }
    for caution in &option.cautions {
        writeln!(text, "    mind: {caution}").unwrap();
    }
    for check in option.check_after() {
        writeln!(text, "    check after: {check}").unwrap();
    }
    for source in &option.sources {
        writeln!(text, "    from {} @ {}", source.source().id, source.at()).unwrap();
    }
}
