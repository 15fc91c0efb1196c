//! The record as it is handed over: plain text, or Markdown.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::plan::{amount, state};
use super::text::{cell, safe, wrapped};
use crate::evidence::Grade;
use crate::fact::Worded;
use crate::measure::Outcome;
use crate::plan::{Found, Operation, Record, RecordEntry, State};
use crate::quantity::in_mm;

/// What the state of a place means for the customer.
fn meaning(entry: &RecordEntry) -> String {
    fn first<T: ToString>(list: &[T]) -> String {
        list.first().map(T::to_string).unwrap_or_default()
    }
    let words = match entry.now.state {
        State::NotMeasured => String::from("nothing was measured there, so nothing is known of it"),
        State::Open if !entry.now.contradictions.is_empty() => first(&entry.now.contradictions),
        State::Open if !entry.asked.is_empty() => {
            format!("still to be measured or asked: {}", first(&entry.asked))
        }
        State::Open => format!("waits: {}", first(&entry.now.leave)),
        State::ToDo => format!("still to do: {}", first(&entry.left_to_do)),
        State::Done => String::from("the readings after the work ask for nothing more"),
        State::Out => format!("out of what it must be; {}", first(&entry.now.cures)),
        State::Leave if entry.now.leave.is_empty() => {
            String::from("as it should be; left as it is")
        }
        State::Leave => format!("left as it is: {}", first(&entry.now.leave)),
        State::Refer => first(&entry.left_to_do),
    };
    if entry.too_much {
        format!("{words}; more came off than was planned")
    } else {
        words
    }
}

fn said<T: ToString>(list: &[T]) -> Vec<String> {
    list.iter().map(T::to_string).collect()
}

const fn mark(outcome: Option<Outcome>) -> &'static str {
    match outcome {
        Some(outcome) => outcome.words(),
        None => "",
    }
}

fn findings(out: &mut String, head: &str, findings: &[Found]) {
    for finding in findings {
        // Some findings say their outcome as their last words.
        let outcome = Some(mark(finding.outcome))
            .filter(|words| !words.is_empty() && !finding.to_string().ends_with(words))
            .map_or(String::new(), |words| format!(" -> {words}"));
        wrapped(
            out,
            &format!("  {head}: "),
            &format!("{}: {}{outcome}", finding.fact.about(), finding),
        );
    }
}

/// The record in plain text.
///
/// ```
/// use framegauge::{plan::{FrameSheet, record}, say, standard::Tables};
/// let page = say::record(&record(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }, Tables::ours()));
/// assert!(page.starts_with("no. 4\n"));
/// ```
#[must_use]
pub fn record(record: &Record) -> String {
    let mut out = String::new();
    wrapped(&mut out, "", &record.frame);
    if record.invented {
        out.push_str("(invented data)\n");
    }
    if let Some(date) = &record.date {
        wrapped(&mut out, "measured: ", date);
    }
    for note in &record.notes {
        wrapped(&mut out, "note: ", note);
    }
    for entry in &record.entries {
        out.push('\n');
        wrapped(
            &mut out,
            "",
            &format!(
                "{}: {}. {}",
                safe(&entry.now.name),
                state(entry.now.state),
                meaning(entry)
            ),
        );
        for note in &entry.now.notes {
            wrapped(&mut out, "  note: ", note);
        }
        findings(&mut out, "found", &entry.before);
        for task in &entry.planned {
            wrapped(&mut out, "  planned: ", &task.to_string());
        }
        if let Some(off) = &entry.planned_off {
            wrapped(
                &mut out,
                "  planned to come off: ",
                &amount(Operation::Check, off),
            );
        }
        findings(&mut out, "after", entry.after());
        if let [least, .., most] = entry.now.removed.as_slice() {
            wrapped(
                &mut out,
                "  came off: ",
                &format!("{} to {}", in_mm(least.value()), in_mm(most.value())),
            );
        }
        for (head, list) in [
            ("  contradiction: ", said(&entry.now.contradictions)),
            ("  still to do: ", said(&entry.left_to_do)),
            ("  asked: ", said(&entry.asked)),
            ("  left: ", said(&entry.now.leave)),
            ("  could cure it: ", said(&entry.now.cures)),
        ] {
            // What was planned and is still to do is told once.
            let told = head == "  still to do: " && !entry.now.worked;
            for words in list.into_iter().filter(|_| !told) {
                wrapped(&mut out, head, &words);
            }
        }
    }
    if !record.weak_figures.is_empty() {
        out.push_str("\nFigures that the mechanic should check, because they are not from a published limit:\n");
        for weak in &record.weak_figures {
            wrapped(&mut out, "  ", &format!("{}: {weak}", weak.grade.words()));
        }
    }
    out.push('\n');
    for caution in &record.cautions {
        wrapped(&mut out, "", caution.words());
    }
    out
}

/// The record in Markdown.
///
/// ```
/// use framegauge::{plan::{FrameSheet, record}, say, standard::Tables};
/// let page = say::markdown(&record(&FrameSheet { frame: "no. <4>".into(), ..FrameSheet::default() }, Tables::ours()));
/// assert!(page.starts_with("# no. &lt;4&gt;\n"));
/// ```
#[must_use]
pub fn markdown(record: &Record) -> String {
    let mut page = format!("# {}\n", cell(&record.frame));
    if record.invented {
        page.push_str("\nInvented data.\n");
    }
    if let Some(date) = &record.date {
        page.push_str(&format!("\nMeasured: {}.\n", cell(date)));
    }
    for note in &record.notes {
        page.push_str(&format!("\nNote: {}.\n", cell(note)));
    }
    page.push_str("\n| place | state | what it means |\n|---|---|---|\n");
    for entry in &record.entries {
        page.push_str(&format!(
            "| {} | {} | {} |\n",
            cell(&entry.now.name),
            state(entry.now.state),
            cell(&meaning(entry))
        ));
    }
    for entry in &record.entries {
        place(&mut page, entry);
    }
    page.push_str("\n## Figures to check\n\n");
    for weak in &record.weak_figures {
        page.push_str(&format!(
            "- {}: {}\n",
            weak.grade.words(),
            cell(&weak.to_string())
        ));
    }
    page.push_str("\n## Cautions\n\n");
    for caution in &record.cautions {
        page.push_str(&format!("- {}\n", caution.words()));
    }
    page
}

fn place(page: &mut String, entry: &RecordEntry) {
    page.push_str(&format!("\n## {}\n\n", cell(&entry.now.name)));
    for (head, list) in [
        ("Note", entry.now.notes.clone()),
        ("Planned", said(&entry.planned)),
        ("Contradiction", said(&entry.now.contradictions)),
        ("Asked", said(&entry.asked)),
        ("Left", said(&entry.now.leave)),
        ("Could cure it", said(&entry.now.cures)),
    ] {
        for words in list {
            page.push_str(&format!("{head}: {}.\n\n", cell(&words)));
        }
    }
    if entry.before.is_empty() && entry.after().is_empty() {
        return;
    }
    page.push_str("| when | what | finding | outcome | sure |\n|---|---|---|---|---|\n");
    for (when, findings) in [
        ("before", entry.before.as_slice()),
        ("after", entry.after()),
    ] {
        for finding in findings {
            page.push_str(&format!(
                "| {when} | {} | {} | {} | {} |\n",
                cell(&finding.fact.about()),
                cell(&finding.to_string()),
                mark(finding.outcome),
                finding.grade.map_or("", Grade::words)
            ));
        }
    }
}
