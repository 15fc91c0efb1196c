//! The plan as a person reads it at the bench.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::text::{safe, wrapped};
use crate::fact::Worded;
use crate::measure::Outcome;
use crate::plan::{Counted, Earlier, Off, Operation, PlaceReport, Plan, State, Step};
use crate::quantity::in_mm;
use crate::standard::{Place, Turning};

/// The plan as text: questions by instrument, steps in order, what was found.
///
/// ```
/// use framegauge::{plan::{FrameSheet, prepare}, say};
/// let page = say::plan(&prepare(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }));
/// assert!(page.starts_with("no. 4\n") && page.contains("nothing was measured"));
/// ```
#[must_use]
pub fn plan(plan: &Plan) -> String {
    let mut out = String::new();
    wrapped(&mut out, "", &plan.frame);
    if plan.invented {
        out.push_str("(invented data)\n");
    }
    if let Some(date) = &plan.date {
        wrapped(&mut out, "measured: ", date);
    }
    for note in &plan.notes {
        wrapped(&mut out, "note: ", note);
    }
    questions(&mut out, plan);
    out.push_str("\nORDER OF WORK\n");
    if plan.steps.is_empty() {
        out.push_str(if plan.places.is_empty() {
            "nothing was measured, so nothing can be said\n"
        } else if plan.acceptable() {
            "nothing to cut\n"
        } else {
            "no step yet: see what is open below\n"
        });
    }
    for step in &plan.steps {
        self::step(&mut out, step);
    }
    out.push_str("\nWHERE EACH PLACE STANDS\n");
    for place in &plan.places {
        self::place(&mut out, place);
    }
    if !plan.weak_figures.is_empty() {
        out.push_str("\nCHECK THESE FIGURES BEFORE YOU RELY ON THEM\n");
        for weak in &plan.weak_figures {
            wrapped(&mut out, "- ", &format!("{}: {weak}", weak.grade.words()));
        }
    }
    out.push_str("\nCAUTIONS\n");
    for caution in &plan.cautions {
        wrapped(&mut out, "- ", caution.words());
    }
    out
}

fn questions(out: &mut String, plan: &Plan) {
    if plan.questions.is_empty() {
        return;
    }
    out.push_str("\nMEASURE OR ASK FIRST\n");
    let mut tool = None;
    for question in &plan.questions {
        let with = question.ask.with();
        if tool.as_ref() != Some(&with) {
            wrapped(out, "with ", &with.to_string());
            tool = Some(with);
        }
        wrapped(
            out,
            &format!("  Q{}. ", question.number),
            &question.to_string(),
        );
        wrapped(out, "      why: ", &question.ask.why());
        wrapped(out, "      answer into: ", &question.answer);
    }
}

/// The state of a place in words.
pub(super) const fn state(state: State) -> &'static str {
    match state {
        State::NotMeasured => "not measured",
        State::Open => "open",
        State::ToDo => "to do",
        State::Done => "done",
        State::Out => "out, and nothing here cures it",
        State::Leave => "leave",
        State::Refer => "not ours: frame maker or qualified builder",
    }
}

fn step(out: &mut String, step: &Step) {
    let wait = if step.waits_for.is_empty() {
        String::new()
    } else {
        let numbers: Vec<String> = step.waits_for.iter().map(|n| format!("Q{n}")).collect();
        format!("  (waits for {})", numbers.join(", "))
    };
    wrapped(
        out,
        &format!("{}. ", step.number),
        &format!("{}{wait}", step.task),
    );
    wrapped(out, "    why: ", &step.task.why());
    for note in &step.notes {
        wrapped(out, "    note: ", note);
    }
    for after in &step.after {
        // The stand is needed by everything; what else must come first is worth a line.
        if step.place.whole() == Place::SeatTube || after.why != Earlier::Stand {
            wrapped(
                out,
                &format!("    after step {}: ", after.step),
                &after.why.to_string(),
            );
        }
    }
    for tool in &step.tools {
        wrapped(out, "    with: ", &tool.which.to_string());
    }
    if let Some(turn) = step.turn {
        let turn = turn.words();
        let from = Some(step.start)
            .filter(|from| !from.is_empty())
            .unwrap_or("outside");
        let turning = step.turning().map_or("", Turning::words);
        wrapped(
            out,
            "    turn: ",
            &format!("{turn} to cut, seen from {from}; {turning}"),
        );
    }
    if let Some(pilot) = &step.pilot {
        wrapped(out, "    guided by: ", &pilot.to_string());
    }
    if let Some(off) = &step.off {
        wrapped(out, "    take off: ", &amount(step.operation, off));
    }
    for stop in &step.stops {
        let left = stop
            .to_go
            .map_or(String::new(), |left| format!(", {} to go", in_mm(left)));
        let grade = stop
            .grade
            .map_or(String::new(), |grade| format!(" [{}]", grade.words()));
        wrapped(
            out,
            "    stop at: ",
            &format!("{}{left}{grade}", stop.limit),
        );
    }
    if !step.passes.is_empty() {
        wrapped(out, "    passes: ", step.passes);
    }
    for change in &step.changes {
        let by = change
            .by
            .map_or(String::new(), |by| format!(" (at most {})", in_mm(by)));
        wrapped(
            out,
            "    changes: ",
            &format!("{}: {}{by}", change.place.words(), change.what),
        );
    }
    for check in &step.checks {
        wrapped(out, "    then check: ", &check.to_string());
    }
    if let Some(proof) = &step.proof {
        wrapped(out, "    proved when: ", &proof.to_string());
    }
}

/// How much comes off, in words.
pub(super) fn amount(operation: Operation, off: &Off) -> String {
    let of = match (off.of, operation) {
        (Counted::Diameter, _) => "on diameter",
        (Counted::Depth, Operation::Face) => "of depth after first touch",
        (Counted::Depth, _) => "of depth",
    };
    if format!("{}", in_mm(off.least)) == format!("{}", in_mm(off.most)) {
        format!("{} {of}", in_mm(off.least))
    } else {
        format!("{} to {} {of}", in_mm(off.least), in_mm(off.most))
    }
}

fn place(out: &mut String, report: &PlaceReport) {
    wrapped(
        out,
        "",
        &format!("{}: {}", safe(&report.name), state(report.state)),
    );
    for note in &report.notes {
        wrapped(out, "  note: ", note);
    }
    for words in &report.contradictions {
        wrapped(out, "  !!    ", &words.to_string());
    }
    for finding in &report.facts {
        let mark = match finding.outcome {
            Some(Outcome::ConformityShown) => "ok    ",
            Some(Outcome::NonconformityShown) => "OUT   ",
            Some(Outcome::Undecided) => "?     ",
            None => "      ",
        };
        let grade = finding
            .grade
            .map_or(String::new(), |grade| format!(" [{}]", grade.words()));
        wrapped(
            out,
            &format!("  {mark}"),
            &format!("{}: {}{grade}", finding.fact.about(), finding),
        );
    }
    for leave in &report.leave {
        wrapped(out, "  leave: ", &leave.to_string());
    }
    for cure in &report.cures {
        wrapped(out, "  cure: ", &cure.to_string());
    }
}
