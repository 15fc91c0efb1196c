//! What is left to do for a damaged thread or bore: every step, how it stands and why, on a limit and a micrometre beside.
//!
//! How the steps of interest stand is written by hand, with the reason; the codes and numbers of every step are held in the
//! `*.txt` files beside, without a sentence. `UPDATE_PINNED=1 cargo test --test rescue` rewrites these: read the difference as the mechanic
//! would before committing it. All sizes are invented; reasons name a table row, arithmetic, or common practice.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod bores;
#[path = "../guard_support/mod.rs"]
mod guard_support;
mod sizes;
mod symptoms;
mod threads;

use framegauge::measure::Reading;
use framegauge::mm;
use framegauge::rescue::{Rescue, RescueOption, Stand, Step};
use guard_support::{Page, bare, flat};
use serde_json::Value;

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
    let mut page = Page::new();
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
        page.title(title);
        for option in &left.options {
            page.line(&stands_so(option));
        }
        for shell in &left.shells_after {
            let side = |t: Option<framegauge::thread::Designation>| {
                t.map_or_else(|| String::from("none"), |t| t.to_string())
            };
            let (drive, other) = (side(shell.drive), side(shell.non_drive));
            page.line(&format!("shell after: drive {drive}, non-drive {other}"));
        }
    }
    page.check(&format!("rescue/{name}.txt"));
}

/// Codes and numbers of a step; every fact, question and caution is told in words besides.
fn stands_so(option: &RescueOption) -> String {
    let json = bare(serde_json::to_value(option).unwrap());
    let spoken = option
        .why
        .iter()
        .chain(&option.cautions)
        .chain(&option.what);
    for words in spoken.map(ToString::to_string).chain([option.words()]) {
        assert!(!words.is_empty(), "{json}");
    }
    let of = |key: &str| match &json[key] {
        Value::Array(all) => all.iter().map(fact).collect::<Vec<_>>().join(" "),
        one => fact(one),
    };
    let sources: Vec<_> = option
        .sources
        .iter()
        .map(|s| s.source().id.clone())
        .collect();
    let mut out = format!("{}: {}", option.step, option.stand);
    for (name, part) in [
        ("", option.grade.map(|g| g.to_string()).unwrap_or_default()),
        ("what", of("what")),
        ("by", of("why")),
        ("next", of("next")),
        ("mind", of("cautions")),
        ("from", sources.join(" ")),
    ] {
        if !part.is_empty() {
            out += &format!(" | {name} {part}");
        }
    }
    out
}

/// A fact or question: its code, and its values in brackets.
fn fact(value: &Value) -> String {
    let Some(fields) = value.as_object() else {
        return if value.is_null() {
            String::new()
        } else {
            flat(value)
        };
    };
    if let Some(ask) = fields.get("ask") {
        return fact(ask);
    }
    let code = fields.get("code").map(flat).unwrap_or_default();
    let values: Vec<String> = fields
        .iter()
        .filter(|(key, _)| *key != "code")
        .map(|(key, value)| format!("{key} {}", flat(value)))
        .collect();
    if values.is_empty() {
        code
    } else {
        format!("{code}({})", values.join(", "))
    }
}
