//! Property 5: telling more that is true never gives a worse plan. And a true answer closes its question.

use std::collections::BTreeSet;
use std::sync::{LazyLock, Mutex};

use framegauge::ErrorKind;
use framegauge::plan::{FrameSheet, Plan, State, prepare_with};
use framegauge::read::Tree;
use framegauge::standard::{ShopRows, Tables};
use serde::Deserialize;
use serde_json::Value;

use crate::case::{Case, Failure, fails, planned, read};
use crate::draw::{as_answered, as_read};
use crate::leaf::{Leaf, Sheet, Unit, at};
use crate::safety::kind;

/// What may be added without showing a fault: names, sizes beside others, gauges that passed.
fn harmless(path: &str, leaf: &Leaf, told: &Sheet) -> bool {
    let (place, field) = path.rsplit_once('.').unwrap_or(("", path));
    if path.contains(".passes[") || place.ends_with(".post") || place.ends_with(".part") {
        return false;
    }
    match (field, leaf) {
        ("believed" | "pitch" | "hand" | "note" | "consent" | "mate", Leaf::Text(_)) => true,
        ("go", Leaf::Text(word)) => {
            word == "passed" && told.word(&format!("{place}.state")) == Some("sound")
        }
        ("not_go", Leaf::Text(word)) => word == "passed",
        // The bolt at hand is not among them: lengths are printed for few thicknesses, and of another one its maker is asked.
        ("clear_depth" | "pad_length", _) => true,
        _ => false,
    }
}

/// Fields where one more reading is one more of the same.
const LISTS: [&str; 4] = ["width", "minor", "seat", "bore"];

/// A sheet with one true thing more.
struct Richer {
    what: String,
    told: Sheet,
    /// It is one more reading, smaller or larger than all before it: it tells of a shape that nobody spoke of, which may
    /// honestly open a question. It never shows a frame without a fault to be out.
    beyond: bool,
}

/// Every sheet with one true thing more.
fn richer(case: &Case) -> Vec<Richer> {
    let mut out = Vec::new();
    for (path, leaf) in &case.truth.0 {
        let mut dice = case.dice(path);
        let place = path.rsplit_once('.').map_or("", |(place, _)| place);
        let field = path.rsplit('.').next().unwrap_or_default();
        match case.told.get(path) {
            None if harmless(path, leaf, &case.told)
                && (place.is_empty() || case.told.speaks_of(place)) =>
            {
                let mut told = case.told.clone();
                told.put(path, as_read(path, leaf, 0.02, &mut dice));
                out.push(Richer {
                    what: path.clone(),
                    told,
                    beyond: false,
                });
            }
            Some(Leaf::Many(many))
                if LISTS.contains(&field)
                    && !many.is_empty()
                    && case.told.word(&format!("{place}.state")) != Some("uncut")
                    && case
                        .told
                        .word(&format!(
                            "{}.believed",
                            place.split('.').next().unwrap_or(place)
                        ))
                        .is_some() =>
            {
                let Leaf::Many(all) = leaf else { continue };
                let (like, again) = (&many[0], dice.of(all).clone());
                let again = crate::draw::read(&again, like.u, &mut dice);
                let beyond =
                    many.iter().all(|r| r.mm < again.mm) || many.iter().all(|r| r.mm > again.mm);
                let mut told = case.told.clone();
                if let Some(Leaf::Many(readings)) = told.0.get_mut(path) {
                    readings.push(again);
                }
                out.push(Richer {
                    what: format!("one more {path}"),
                    told,
                    beyond,
                });
            }
            _ => {}
        }
    }
    out
}

/// 5. Telling more that is true never gives a worse plan.
pub fn telling(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    if case.lies || case.faults {
        return out;
    }
    for Richer { what, told, beyond } in richer(case) {
        let Some(plan) = planned(&told, Unit::Millimetres) else {
            fails(
                &mut out,
                format!("not read with {}", kind(&what)),
                told.toml(),
            );
            continue;
        };
        for report in &case.plan.places {
            let Some(after) = plan.place(&report.place) else {
                continue;
            };
            let worse = after.state == State::Out || after.state == State::Open && !beyond;
            if report.state.is_clear() && worse {
                let place = report.place.to_string();
                fails(
                    &mut out,
                    format!(
                        "{} becomes {} by telling {}",
                        report.state,
                        after.state,
                        kind(&what)
                    ),
                    format!(
                        "{place}: told besides {what}: {:?}\n{}",
                        told.get(what.trim_start_matches("one more ")),
                        asked(&plan, &place)
                    ),
                );
            }
        }
    }
    out
}

fn asked(plan: &Plan, place: &str) -> String {
    let mut words: Vec<String> = plan
        .questions
        .iter()
        .filter(|q| q.place.to_string() == place)
        .map(|q| format!("{}: {} ({})", q.answer, q.words(), q.why()))
        .collect();
    words.extend(
        plan.places
            .iter()
            .filter(|p| p.place.to_string() == place)
            .flat_map(|p| p.contradictions.iter().map(ToString::to_string)),
    );
    words.join("\n")
}

/// A frame without a fault of which nothing is said that is not so contradicts itself nowhere.
pub fn honest(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    if case.lies || case.faults {
        return out;
    }
    for report in &case.plan.places {
        for words in &report.contradictions {
            let place = report.place.to_string();
            let words = words.to_string();
            let what: String = words
                .chars()
                .filter(|c| !c.is_ascii_digit())
                .take(60)
                .collect();
            fails(
                &mut out,
                format!("a contradiction at {}: {what}", kind(&place)),
                &words,
            );
        }
    }
    out
}

/// Rows of a shop that no frame here has anything to do with.
static SHOP: LazyLock<ShopRows> = LazyLock::new(|| {
    toml::from_str(
        r#"
        [[shell]]
        code = "shop_odd_shell"
        name = "invented shell of 63 mm"
        bore = { nominal = "63 mm", grade = "shop" }
        widths = [{ nominal = "141 mm", grade = "shop" }]
        located_by = { value = "face", grade = "shop" }
        [[seatpost]]
        code = "shop_41_3"
        diameter = { nominal = "41.3 mm", grade = "shop" }
        [[head_seat]]
        code = "shop_odd_seat"
        name = "invented seat of 71 mm"
        kind = "external_cup"
        bore = { lower = "71.0 mm", upper = "71.05 mm", grade = "shop" }
        "#,
    )
    .unwrap()
});

/// 5. A row that has nothing to do with a frame changes nothing of its plan.
pub fn shop_row(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    let tables = Tables::with(&SHOP).unwrap();
    let Ok(sheet) = read(&case.told, Unit::Millimetres, tables) else {
        fails(&mut out, "not read beside a shop's row", "");
        return out;
    };
    let plan = prepare_with(&sheet, tables);
    for report in case.plan.places.iter().filter(|r| r.state != State::Open) {
        let steps = |plan: &Plan| -> Vec<String> {
            plan.steps_at(&report.place)
                .map(|s| format!("{} {:?} {:?}", s.operation, s.off, s.stops))
                .collect()
        };
        let after = plan.place(&report.place).map(|r| r.state);
        if after != Some(report.state) || steps(&plan) != steps(&case.plan) {
            let place = report.place.to_string();
            fails(
                &mut out,
                format!("a shop's row changes {}", kind(&place)),
                format!("{place}: {} then {after:?}", report.state),
            );
        }
    }
    out
}

/// Paths that were found in the sheet's form already.
static KNOWN: Mutex<BTreeSet<String>> = Mutex::new(BTreeSet::new());

/// The answer of every question is a field of the sheet.
pub fn answer_fields(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for question in &case.plan.questions {
        let path = &question.answer;
        let plain: String = path.chars().filter(|c| !c.is_ascii_digit()).collect();
        if KNOWN.lock().unwrap().contains(&plain) {
            continue;
        }
        let mut told = case.told.clone();
        told.0.remove(path);
        let mut value = told.value(Unit::Millimetres);
        *at(&mut value, path) = Value::Null;
        let errors = FrameSheet::from_tree(&Tree::deserialize(&value).unwrap(), Tables::ours())
            .err()
            .unwrap_or_default();
        match errors.iter().find(|e| {
            e.kind() == ErrorKind::UnknownField
                || e.problem().contains("stands here") && !e.field().starts_with(path.as_str())
        }) {
            Some(error) => fails(
                &mut out,
                format!("no such field: {}", kind(&plain)),
                format!("{path}: {error}"),
            ),
            None => drop(KNOWN.lock().unwrap().insert(plain)),
        }
        if question.measure().trim().is_empty()
            || question.why().trim().is_empty()
            || question.instrument().trim().is_empty()
        {
            fails(
                &mut out,
                format!("a question without words at {}", kind(path)),
                question.words(),
            );
        }
    }
    out
}

/// A true answer, written where the question says, closes it.
pub fn answers(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    if case.lies {
        return out;
    }
    for question in &case.plan.questions {
        let path = &question.answer;
        let mut dice = case.dice(path);
        let open = case
            .plan
            .place(&question.place)
            .is_some_and(|p| p.contradictions.is_empty());
        if !open || path.ends_with(".limits") {
            // Which of two is so, and which of several limits is meant, no single field answers.
            continue;
        }
        let Some(truth) = case.truth.get(path) else {
            continue;
        };
        if let (Some(Leaf::Text(told)), Leaf::Text(so)) = (case.told.get(path), truth)
            && told == so
        {
            let words = format!("{}: {} ({})", path, question.words(), question.why());
            fails(
                &mut out,
                format!("asks for what was told: {}", kind(path)),
                words,
            );
            continue;
        }
        let field = path.rsplit('.').next().unwrap_or_default();
        let covered = case.truth.0.iter().any(|(key, leaf)| {
            key.ends_with("coating")
                && path.starts_with(key.trim_end_matches("coating"))
                && *leaf != Leaf::word("bare")
        });
        if covered && matches!(field, "bore" | "minor" | "seat") {
            // It is asked for on metal; what can be read lies over paint.
            continue;
        }
        if case.told.get(path).is_some() {
            // Asked to measure finer or cleaner: truth alone cannot promise that it is enough.
            continue;
        }
        let mut told = case.told.clone();
        told.put(path, as_answered(path, truth, 0.004, &mut dice));
        let Some(plan) = planned(&told, Unit::Millimetres) else {
            fails(
                &mut out,
                format!("an answer is not read: {}", kind(path)),
                path,
            );
            continue;
        };
        if let Some(again) = plan
            .questions
            .iter()
            .find(|q| q.answer == *path && q.measure() == question.measure())
        {
            fails(
                &mut out,
                format!("answered and asked again: {}", kind(path)),
                format!(
                    "{path} = {:?}: {} ({})",
                    told.get(path),
                    again.words(),
                    again.why()
                ),
            );
        }
    }
    out
}
