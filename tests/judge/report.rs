//! A verdict with everything it carries, as text.

use std::fmt::Write as _;

use framegauge::judge::{Finding, Number, Verdict};

use super::Case;

pub fn same_as_committed(name: &str, cases: &[Case]) {
    let text = cases.iter().map(block).collect::<Vec<_>>().join("\n");
    crate::committed::same_as_committed(&format!("judge/{name}.txt"), &text);
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
