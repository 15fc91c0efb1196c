//! Words add no number: every figure on a page stands in the plan's JSON, or is the sheet's own.

use std::collections::BTreeSet;

use framegauge::plan::prepare;
use framegauge::say;
use serde_json::Value;

/// Numbers as a page prints them, with how many decimals; a minus or a range dash before them is no part of them.
fn numbers(text: &str) -> Vec<(&str, f64, i32)> {
    text.split(|c: char| !c.is_ascii_digit() && c != '.')
        .map(|token| token.trim_matches('.'))
        .filter_map(|token| {
            let decimals = token.split_once('.').map_or(0, |(_, d)| d.len());
            Some((token, token.parse().ok()?, i32::try_from(decimals).ok()?))
        })
        .collect()
}

/// What a value holds: its numbers, and those in its names and codes. Sentences are left out, for they are what is tested.
fn collect(key: &str, value: &Value, exact: &mut Vec<f64>, named: &mut BTreeSet<String>) {
    match value {
        Value::Number(n) => exact.extend(n.as_f64().map(f64::abs)),
        Value::String(text) if !TOLD.contains(&key) => {
            named.extend(numbers(text).into_iter().map(|n| n.0.to_owned()));
        }
        Value::Array(all) => all.iter().for_each(|v| collect(key, v, exact, named)),
        Value::Object(all) => all.iter().for_each(|(k, v)| collect(k, v, exact, named)),
        _ => {}
    }
}

/// The hands of a clock, as they are shown for an angle: `157 deg (5:15)`. Each must be the one for its angle.
fn without_clocks(page: &str) -> String {
    let mut out = String::new();
    let mut rest = page;
    while let Some((before, after)) = rest.split_once(" deg (") {
        out.push_str(before);
        out.push_str(" deg");
        let (clock, left) = after.split_once(')').unwrap();
        let angle: f64 = before.rsplit(' ').next().unwrap().parse().unwrap();
        if let Some((hours, minutes)) = clock.split_once(':') {
            let shown =
                hours.parse::<f64>().unwrap() * 30.0 + minutes.parse::<f64>().unwrap() / 2.0;
            let apart = (shown - angle).rem_euclid(360.0);
            assert!(apart.min(360.0 - apart) <= 2.5, "{angle} deg ({clock})");
        } else {
            out.push_str(&format!(" ({clock})"));
        }
        rest = left;
    }
    out + rest
}

/// Where sentences stand in a plan's JSON.
const TOLD: [&str; 6] = ["words", "sentence", "why", "measure", "with", "passes"];

/// What the sheet says in its own words, such as names, notes and owners; readings are not among it.
fn own(key: &str, value: &toml::Value, named: &mut BTreeSet<String>) {
    match value {
        toml::Value::String(text) => {
            let reading = text.contains(" mm") || text.contains("deg");
            if !reading || OWN.contains(&key) {
                named.extend(numbers(text).into_iter().map(|n| n.0.to_owned()));
            }
        }
        toml::Value::Array(all) => all.iter().for_each(|v| own(key, v, named)),
        toml::Value::Table(all) => all.iter().for_each(|(k, v)| own(k, v, named)),
        _ => {}
    }
}

const OWN: [&str; 6] = ["frame", "note", "owner", "name", "thread", "designation"];

/// Numbers that belong to the language of the trade, and not to a frame.
const OF_THE_TRADE: [(&str, &str); 3] = [
    ("90", "90 degrees"),
    // The range of an instrument stands in its name.
    ("20", "micrometer, 20 to 50 mm"),
    ("50", "micrometer, 20 to 50 mm"),
];

#[test]
fn every_number_of_a_page_is_a_number_of_the_plan() {
    let (mut checked, mut strange) = (0, Vec::new());
    for (name, sheet) in super::sheets() {
        let plan = prepare(&sheet);
        let json = serde_json::to_value(&plan).unwrap();
        let (mut exact, mut named) = (Vec::new(), BTreeSet::new());
        collect("", &json, &mut exact, &mut named);
        let text = std::fs::read_to_string(&name).unwrap();
        own("", &toml::from_str(&text).unwrap(), &mut named);
        // Steps, questions and places are counted and called by their number.
        let parts = [plan.steps.len(), plan.questions.len(), plan.places.len()];
        let most = parts.into_iter().max().unwrap();
        for (what, page) in [("bench", say::bench(&plan)), ("plan", say::plan(&plan))] {
            // On the bench a direction is a time of the clock alone.
            let page: Vec<&str> = page.split_whitespace().collect();
            let is_clock = |word: &str| {
                let clock = word.trim_end_matches(',').split_once(':');
                clock.is_some_and(|(h, m)| h.parse::<u8>().is_ok() && m.parse::<u8>().is_ok())
            };
            let page: Vec<&str> = page.into_iter().filter(|word| !is_clock(word)).collect();
            let page = without_clocks(&page.join(" "));
            let shares: BTreeSet<&str> = page
                .split(" %")
                .filter_map(|before| before.rsplit([' ', '(']).next())
                .collect();
            for (token, value, decimals) in numbers(&page) {
                let counted = decimals == 0 && value <= most as f64;
                let trade = OF_THE_TRADE
                    .iter()
                    .any(|(number, words)| *number == token && page.contains(words));
                // Rounded, and what a hand turns to, with two decimals, up or down to the safe side.
                let place = 0.1_f64.powi(decimals);
                let within = if decimals == 2 {
                    place - 1e-9
                } else {
                    place / 2.0 + 1e-9
                };
                let stands = exact.iter().any(|n| {
                    let share = shares.contains(token) && (n * 100.0 - value).abs() <= 0.5;
                    share || (n - value).abs() <= within
                });
                checked += 1;
                if !(counted || trade || stands || named.contains(token)) {
                    strange.push(format!("{name}, {what}: {token}"));
                }
            }
        }
    }
    assert!(strange.is_empty(), "no number of the plan: {strange:#?}");
    assert!(checked > 1000, "{checked}");
}

/// The net above catches what it is made for.
#[test]
fn a_number_that_nobody_gave_is_seen() {
    assert_eq!(
        numbers("take 0.14 mm, M12x1.5, 2 and 3."),
        [
            ("0.14", 0.14, 2),
            ("12", 12.0, 0),
            ("1.5", 1.5, 1),
            ("2", 2.0, 0),
            ("3", 3.0, 0)
        ]
    );
    let told: Value = serde_json::json!({"off_mm": -0.1401, "words": "9.99 mm", "size": "27.2"});
    let (mut exact, mut named) = (Vec::new(), BTreeSet::new());
    collect("", &told, &mut exact, &mut named);
    assert_eq!(exact, [0.1401]);
    assert!(named.contains("27.2") && !named.contains("9.99"));
}
