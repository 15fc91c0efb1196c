//! The bench page: what to fetch, what to answer, what to do in which order, what to leave. One page, with boxes to tick.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::amounts::{amount, doing, have, room, standing, turn};
use super::text::{Paper, count, list};
use crate::measure::Outcome;
use crate::plan::{Caution, Operation, Plan, State, Step};
use crate::standard::Place;

/// The plan on one page, for the bench.
///
/// ```
/// use framegauge::{plan::{FrameSheet, prepare}, say};
/// let page = say::bench(&prepare(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }));
/// assert!(page.starts_with("NO. 4\n"));
/// ```
#[must_use]
pub fn bench(plan: &Plan) -> String {
    let mut page = Paper::default();
    head(&mut page, plan);
    questions(&mut page, plan);
    let ways = Ways::of(plan);
    steps(&mut page, plan, &ways);
    ways.tell(&mut page, plan);
    stays(&mut page, plan);
    page.line("");
    page.para("customer  ", &customer(plan));
    page.done()
}

fn head(page: &mut Paper, plan: &Plan) {
    page.para("", &plan.frame.to_uppercase());
    let mut about = Vec::new();
    if plan.invented {
        about.push("invented data".to_string());
    }
    about.extend(plan.date.iter().map(|date| format!("measured {date}")));
    if !about.is_empty() {
        page.para("", &about.join(", "));
    }
    if !plan.steps.is_empty() {
        page.para("hold      ", hold(plan));
    }
    let kit = kit(plan);
    if !kit.is_empty() {
        page.para("fetch     ", &kit.join("; "));
    }
    for caution in &plan.cautions {
        if let Some(words) = in_short(*caution) {
            page.para("mind      ", words);
        }
    }
    for note in &plan.notes {
        page.para("note      ", note);
    }
}

/// How the frame is held while it is worked on.
fn hold(plan: &Plan) -> &'static str {
    let carbon = plan.cautions.contains(&Caution::Carbon);
    let tube = plan.place(&Place::SeatTube);
    let first = plan.steps_at(&Place::SeatTube).next().is_some();
    match tube.map(|t| t.state) {
        _ if carbon => "by a post in the seat tube; never clamp a carbon tube",
        Some(State::ToDo | State::Done | State::Leave) if first => {
            "by head tube and shell until the seat tube is done, then by a post in it"
        }
        Some(State::Done | State::Leave) => "by a post in the seat tube",
        Some(_) => "not by a post yet: the seat tube is not ready for one",
        None => "by a post, if one goes in by hand; the sheet says nothing of the seat tube",
    }
}

/// What of a caution a mechanic must have in mind at the bench; what only the whole plan needs is told there.
const fn in_short(caution: Caution) -> Option<&'static str> {
    match caution {
        Caution::MakersLimits => Some("what the frame and component makers write comes first"),
        Caution::Carbon => Some("carbon is neither reamed, tapped, faced nor scraped"),
        Caution::BondedInsert => Some("metal in carbon is bonded: no heat, no force"),
        Caution::Titanium => {
            Some("titanium: sharp cutter, slow, much lubricant, stop when it squeals")
        }
        Caution::CarbonPost => Some("a carbon post must meet no edge; assembly paste, no grease"),
        Caution::Brakes => Some("try the brake at walking pace before anybody rides"),
        Caution::Steering => Some("a cup, race or steerer that is not shown to fit is not ridden"),
        Caution::Seatpost => Some("post in to the deepest of its own mark and the frame maker's"),
        Caution::WeakFigures => {
            Some("some figures are trade practice, not print: --why lists them")
        }
        Caution::Cutting | Caution::TurnOneWay | Caution::Dust => None,
    }
}

/// Every tool once, in the order in which they are wanted.
fn kit(plan: &Plan) -> Vec<String> {
    let mut out: Vec<String> = Vec::new();
    for tool in plan.steps.iter().flat_map(|s| &s.tools) {
        let words = tool.which.to_string();
        if !out.contains(&words) {
            out.push(words);
        }
    }
    if plan.steps.iter().any(Step::cuts) {
        out.push("cutting oil, brush, rags, mask".to_string());
    }
    out
}

fn questions(page: &mut Paper, plan: &Plan) {
    if plan.questions.is_empty() {
        return;
    }
    page.line("");
    page.line("FIRST MEASURE OR ASK");
    let mut with = None;
    for question in &plan.questions {
        let tool = question.ask.with();
        if with.as_ref() != Some(&tool) {
            page.para("", &tool.to_string());
            with = Some(tool);
        }
        let head = format!(" Q{:<2} [ ] ", question.number);
        page.para(&head, &format!("{question} ________ ({})", question.answer));
    }
}

/// What is said alike of several steps of one operation, so that it is said once: the words, and of which steps.
struct Ways(BTreeMap<Operation, Vec<(String, Vec<usize>)>>);

impl Ways {
    fn of(plan: &Plan) -> Self {
        let mut ways: BTreeMap<Operation, Vec<(String, Vec<usize>)>> = BTreeMap::new();
        for step in plan
            .steps
            .iter()
            .filter(|s| s.operation != Operation::Refer)
        {
            let said = ways.entry(step.operation).or_default();
            for words in way(step) {
                match said.iter_mut().find(|(known, _)| *known == words) {
                    Some((_, steps)) => steps.push(step.number),
                    None => said.push((words, Vec::from([step.number]))),
                }
            }
        }
        for said in ways.values_mut() {
            said.retain(|(_, steps)| steps.len() > 1);
        }
        Self(ways)
    }

    fn holds(&self, operation: Operation, words: &str) -> bool {
        let said = self.0.get(&operation).into_iter().flatten();
        said.into_iter().any(|(known, _)| known == words)
    }

    fn tell(&self, page: &mut Paper, plan: &Plan) {
        let mut title = Some("HOW");
        for (operation, said) in &self.0 {
            let all = plan
                .steps
                .iter()
                .filter(|s| s.operation == *operation)
                .count();
            let words: Vec<String> = said
                .iter()
                .map(|(words, steps)| {
                    if steps.len() == all {
                        return words.clone();
                    }
                    let steps: Vec<String> = steps.iter().map(ToString::to_string).collect();
                    format!("{}: {words}", list(&steps))
                })
                .collect();
            if !words.is_empty() {
                page.title(&mut title);
                page.para(&format!("{:<10}", doing(*operation)), &words.join("; "));
            }
        }
    }
}

/// Everything that is said of how a step is done, where it ends and what proves it.
fn way(step: &Step) -> Vec<String> {
    let ends = step.stops.iter().filter(|s| s.to_go.is_none()).map(room);
    let how = [step.turning, step.passes]
        .into_iter()
        .filter(|words| !words.is_empty());
    ends.chain(how.map(ToString::to_string))
        .chain(step.checks.iter().map(ToString::to_string))
        .chain(step.proof.iter().map(ToString::to_string))
        .collect()
}

fn steps(page: &mut Paper, plan: &Plan, ways: &Ways) {
    page.line("");
    if plan.steps.is_empty() {
        page.line(if plan.places.is_empty() {
            "nothing was measured, so nothing can be said"
        } else if plan.acceptable() {
            "nothing to cut"
        } else {
            "no step yet: answer what is asked, and plan again"
        });
        return;
    }
    page.line("WORK, IN THIS ORDER");
    for step in &plan.steps {
        let head = format!(" {:>2} [ ] ", step.number);
        let waits: Vec<String> = step.waits_for.iter().map(|n| format!("Q{n}")).collect();
        let title = if waits.is_empty() {
            step.words()
        } else {
            format!("{} (only after {})", step.words(), list(&waits))
        };
        page.para(&head, &title);
        if step.operation == Operation::Refer {
            page.para("        ", &step.why());
            continue;
        }
        let mut parts = Vec::new();
        if let Some(report) = plan.place(&step.place) {
            parts.extend(have(report).map(|have| format!("have {have}")));
        }
        let off = step.off.iter();
        parts.extend(off.map(|off| format!("take {}", amount(step.operation, off))));
        parts.extend(step.stops.iter().find(|s| s.to_go.is_some()).map(room));
        parts.extend(turn(step));
        if !parts.is_empty() {
            page.para("        ", &parts.join(" | "));
        }
        for note in &step.notes {
            page.para("        note: ", note);
        }
        let mut own = way(step);
        own.retain(|words| !ways.holds(step.operation, words));
        if !own.is_empty() {
            page.para("        ", &own.join("; "));
        }
        match step.operation {
            Operation::Chase | Operation::Tap => page.line("        GO [ ]  NOT GO [ ]"),
            _ if step.cuts() => page.line("        measured after it ____________________"),
            _ => {}
        }
    }
}

/// Every place at which nothing is to be done, with the reason.
fn stays(page: &mut Paper, plan: &Plan) {
    let mut title = Some("NOTHING TO DO, OR NOT HERE");
    for place in plan.places.iter().filter(|p| p.state != State::ToDo) {
        let out = || {
            let mut facts = place.facts.iter();
            let out = facts.find(|f| f.outcome == Some(Outcome::NonconformityShown))?;
            Some(format!("{}: {out}", out.what()))
        };
        let mut told = place.contradictions.iter().chain(&place.leave);
        let why = match place.state {
            State::Out => out(),
            _ => told.next().map(ToString::to_string),
        };
        let why = why.unwrap_or_else(|| standing(place.state).to_string());
        page.title(&mut title);
        let state = super::plan::state(place.state);
        page.para("  - ", &format!("{}: {state}; {why}", place.name));
    }
}

/// One line for the customer.
fn customer(plan: &Plan) -> String {
    let of = |wanted: &[State]| {
        plan.places
            .iter()
            .filter(|p| wanted.contains(&p.state))
            .count()
    };
    let mut out = Vec::new();
    for (states, words) in [
        (&[State::Done][..], "done"),
        (&[State::ToDo], "to work on"),
        (&[State::Leave], "good as they are"),
        (&[State::Open, State::NotMeasured], "not settled yet"),
        (&[State::Out, State::Refer], "not to be put right here"),
    ] {
        if of(states) > 0 {
            out.push(format!("{} {words}", of(states)));
        }
    }
    format!(
        "{} looked at: {}",
        count(plan.places.len(), "place"),
        out.join(", ")
    )
}
