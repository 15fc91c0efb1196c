//! A verdict with everything it carries, as text.

use std::fmt::Write as _;
use std::path::Path;

use framegauge::judge::{Finding, Number, Verdict};

use super::Case;

pub fn same_as_committed(name: &str, cases: &[Case]) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("tests/judge/{name}.txt"));
    let text = cases.iter().map(block).collect::<Vec<_>>().join("\n");
    if std::env::var_os("UPDATE_JUDGED").is_some() {
        std::fs::write(&path, &text).unwrap();
        return;
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default();
    if let Some(at) = first_difference(&committed, &text) {
        panic!("tests/judge/{name}.txt, {at}");
    }
}

/// Where two texts part, with the case it lies in.
fn first_difference(committed: &str, now: &str) -> Option<String> {
    let mut case = "";
    let (mut old, mut new) = (committed.lines(), now.lines());
    let mut line = 0;
    loop {
        line += 1;
        let (a, b) = (old.next(), new.next());
        if let Some(title) = b.and_then(|b| b.strip_prefix("== ")) {
            case = title;
        }
        match (a, b) {
            (None, None) => return None,
            (a, b) if a == b => {}
            (a, b) => {
                return Some(format!(
                    "line {line}, \"{case}\"\n  committed: {}\n  now:       {}",
                    a.unwrap_or("(end)"),
                    b.unwrap_or("(end)")
                ));
            }
        }
    }
}

fn block(case: &Case) -> String {
    format!(
        "== {}\n   {}: {}\n{}",
        case.title,
        case.expected.words(),
        case.because,
        verdict(&case.said)
    )
}

fn verdict(said: &Verdict) -> String {
    let mut out = format!(
        "{}: {}. {}\n",
        said.place,
        said.outcome.words(),
        said.sentence
    );
    for found in &said.findings {
        finding(&mut out, "- ", found);
    }
    for found in &said.beside {
        finding(&mut out, "- beside: ", found);
    }
    for worked in &said.worked {
        let unit = match worked.value {
            Number::Length(_) | Number::Angle(_) => "",
            Number::Plain(_) => " (a bare number)",
        };
        writeln!(out, "  = {worked}{unit}: {}", worked.formula).unwrap();
    }
    if let Some(weakest) = said.weakest {
        writeln!(out, "  rests on: {}", weakest.words()).unwrap();
    }
    for next in &said.next {
        writeln!(out, "  next: {next}").unwrap();
    }
    for caution in &said.cautions {
        writeln!(out, "  mind: {caution}").unwrap();
    }
    out
}

fn finding(out: &mut String, mark: &str, found: &Finding) {
    let outcome = found.outcome.map_or("stated", |o| o.words());
    writeln!(out, "{mark}{} [{outcome}] {}", found.what, found.words).unwrap();
    let mut line = Vec::new();
    if !found.readings.is_empty() {
        let readings: Vec<String> = found.readings.iter().map(ToString::to_string).collect();
        line.push(format!("read {}", readings.join(" and ")));
    }
    if let Some(limits) = &found.limits {
        line.push(format!("limits {limits} ({})", limits.grade().words()));
    }
    if !found.owner.is_empty() {
        line.push(format!("owner: {}", found.owner));
    }
    if let Some(grade) = found.grade {
        line.push(format!("worth: {}", grade.words()));
    }
    if !line.is_empty() {
        writeln!(out, "    {}", line.join("; ")).unwrap();
    }
    if let Some(decision) = &found.decision {
        let margin = decision.margin.map_or_else(String::new, |m| {
            format!(", margin {}", framegauge::in_mm(m))
        });
        let sure = decision
            .probability
            .map_or_else(String::new, |p| format!(", {:.1} % inside", p * 100.0));
        writeln!(
            out,
            "    decided: {}, {}{margin}{sure}",
            decision.outcome.words(),
            decision.why
        )
        .unwrap();
    }
    for source in &found.sources {
        writeln!(out, "    from {} @ {}", source.source().id, source.at()).unwrap();
    }
}
