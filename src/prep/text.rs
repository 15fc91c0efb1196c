//! The plan as a person reads it at the bench.

use alloc::format;
use alloc::string::String;
use core::fmt;

use super::plan::{Amount, Edge, InterfaceReport, Plan, Step};
use crate::measure::Outcome;
use crate::quantity::in_mm;

/// Width of a line on paper.
const LINE: usize = 100;

impl fmt::Display for Plan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.frame)?;
        if self.invented {
            writeln!(f, "(invented data)")?;
        }
        if !self.questions.is_empty() {
            writeln!(f, "\nMEASURE OR ASK FIRST")?;
            let mut tool = "";
            for question in &self.questions {
                if question.instrument != tool {
                    tool = &question.instrument;
                    wrapped(f, "with ", tool)?;
                }
                wrapped(f, &format!("  Q{}. ", question.number), &question.ask)?;
                wrapped(f, "      why: ", &question.why)?;
            }
        }
        writeln!(f, "\nORDER OF WORK")?;
        if self.steps.is_empty() {
            writeln!(f, "nothing to cut")?;
        }
        for step in &self.steps {
            self.step(f, step)?;
        }
        writeln!(f, "\nFOUND")?;
        for report in &self.interfaces {
            interface(f, report)?;
        }
        if !self.weak_figures.is_empty() {
            writeln!(f, "\nCHECK THESE FIGURES BEFORE YOU RELY ON THEM")?;
            for weak in &self.weak_figures {
                wrapped(f, "- ", &format!("{}: {}", weak.grade.words(), weak.what))?;
            }
        }
        writeln!(f, "\nCAUTIONS")?;
        for caution in &self.cautions {
            wrapped(f, "- ", caution.words())?;
        }
        Ok(())
    }
}

impl Plan {
    fn step(&self, f: &mut fmt::Formatter<'_>, step: &Step) -> fmt::Result {
        let wait = if step.waits_for.is_empty() {
            String::new()
        } else {
            let numbers: alloc::vec::Vec<String> =
                step.waits_for.iter().map(|n| format!("Q{n}")).collect();
            format!("  (waits for {})", numbers.join(", "))
        };
        wrapped(
            f,
            &format!("{}. ", step.number),
            &format!("{}{wait}", step.title),
        )?;
        wrapped(f, "    why: ", &step.why)?;
        // The stand is needed by everything; what else must come first is worth a line.
        let worth_saying =
            |e: &&Edge| e.after == step.number && !e.reason.starts_with("the seat tube");
        for edge in self.order.iter().filter(worth_saying) {
            wrapped(f, &format!("    after step {}: ", edge.before), edge.reason)?;
        }
        if let Some(tool) = &step.tool {
            wrapped(
                f,
                "    with: ",
                &format!(
                    "{}; turn it {} only, seen from outside; piloted by {}",
                    tool.cutter, tool.turn, tool.pilot
                ),
            )?;
        }
        if let Some(amount) = &step.amount {
            wrapped(f, "    off: ", &amount_words(amount))?;
        }
        if let Some(stop) = &step.stop {
            let left = stop
                .left
                .map_or(String::new(), |left| format!(", {} to go", in_mm(left)));
            let grade = stop
                .grade
                .map_or(String::new(), |grade| format!(" [{}]", grade.words()));
            wrapped(f, "    stop at: ", &format!("{}{left}{grade}", stop.limit))?;
        }
        if !step.passes.is_empty() {
            wrapped(f, "    passes: ", step.passes)?;
        }
        for change in &step.consequences {
            let by = change
                .by
                .map_or(String::new(), |by| format!(" (at most {})", in_mm(by)));
            wrapped(
                f,
                "    changes: ",
                &format!("{}: {}{by}", change.on, change.words),
            )?;
        }
        for check in &step.checks {
            wrapped(f, "    then check: ", check)?;
        }
        if !step.proof.is_empty() {
            wrapped(f, "    proved when: ", &step.proof)?;
        }
        Ok(())
    }
}

fn amount_words(amount: &Amount) -> String {
    if format!("{}", in_mm(amount.least)) == format!("{}", in_mm(amount.most)) {
        format!("{} {}", in_mm(amount.least), amount.counted)
    } else {
        format!(
            "{} to {} {}",
            in_mm(amount.least),
            in_mm(amount.most),
            amount.counted
        )
    }
}

fn interface(f: &mut fmt::Formatter<'_>, report: &InterfaceReport) -> fmt::Result {
    writeln!(f, "{}", report.title)?;
    for finding in &report.findings {
        let mark = match finding.outcome {
            Some(Outcome::ConformityShown) => "ok  ",
            Some(Outcome::NonconformityShown) => "OUT ",
            Some(Outcome::Undecided) => "?   ",
            None => "    ",
        };
        let grade = finding
            .grade
            .map_or(String::new(), |grade| format!(" [{}]", grade.words()));
        wrapped(
            f,
            &format!("  {mark}"),
            &format!("{}: {}{grade}", finding.what, finding.words),
        )?;
    }
    for leave in &report.leave {
        wrapped(f, "  leave ", leave)?;
    }
    Ok(())
}

/// Prints a text under a head, later lines indented.
fn wrapped(f: &mut fmt::Formatter<'_>, head: &str, text: &str) -> fmt::Result {
    let indent = head.len() - head.trim_start().len() + 4;
    let mut line = String::from(head);
    let mut empty = true;
    for word in text.split_whitespace() {
        if !empty && line.chars().count() + 1 + word.chars().count() > LINE {
            writeln!(f, "{}", line.trim_end())?;
            line = " ".repeat(indent);
            empty = true;
        }
        if !empty {
            line.push(' ');
        }
        line.push_str(word);
        empty = false;
    }
    writeln!(f, "{}", line.trim_end())
}
