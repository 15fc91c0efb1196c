//! The bench page: what to fetch, what to answer, what to do in which order, what to leave. One page, with boxes to tick.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::amounts::{amount, doing, have, room, standing, turn};
use super::text::{Paper, count, list};
use crate::measure::Outcome;
use crate::plan::{Caution, Operation, PlaceReport, Plan, State, Step};
use crate::standard::{Place, Turning};

/// The bench page before it is set: every text once, in the order of the job.
pub(super) struct Bench {
    pub title: String,
    pub about: String,
    /// Hold, fetch, mind, note: a label and its text.
    pub heads: Vec<(&'static str, String)>,
    /// Questions by their instrument.
    pub questions: Vec<(String, Vec<Blank>)>,
    /// What stands in place of steps where there is none.
    pub no_step: Option<&'static str>,
    pub steps: Vec<Job>,
    /// What is said once of several steps.
    pub ways: Vec<(&'static str, String)>,
    /// Places where nothing is done here, with the reason.
    pub stays: Vec<String>,
    pub customer: String,
}

/// A question with the field for its answer.
pub(super) struct Blank {
    pub number: usize,
    pub words: String,
    pub field: String,
}

/// A step with its box.
pub(super) struct Job {
    pub number: usize,
    pub place: Place,
    pub title: String,
    /// Have, take, never more than, turn.
    pub parts: Vec<String>,
    pub notes: Vec<String>,
    /// What is said of this step alone.
    pub own: String,
    /// What is written down after it.
    pub after: Option<&'static str>,
}

/// The plan on one page, for the bench.
///
/// ```
/// use framegauge::{plan::{FrameSheet, prepare}, say};
/// let page = say::bench(&prepare(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }));
/// assert!(page.starts_with("NO. 4\n"));
/// ```
#[must_use]
pub fn bench(plan: &Plan) -> String {
    let bench = Bench::of(plan);
    let mut page = Paper::default();
    let about = match &*bench.about {
        "" => String::new(),
        about => format!(" ({about})"),
    };
    page.para("", &format!("{}{about}", bench.title.to_uppercase()));
    for (label, text) in &bench.heads {
        page.para(&format!("{label:<10}"), text);
    }
    let mut title = Some("FIRST MEASURE OR ASK");
    for (tool, blanks) in &bench.questions {
        page.title(&mut title);
        page.para("", tool);
        for blank in blanks {
            let head = format!(" Q{:<2} [ ] ", blank.number);
            page.para(
                &head,
                &format!("{} ________ ({})", blank.words, blank.field),
            );
        }
    }
    let mut title = Some("WORK, IN THIS ORDER");
    for job in &bench.steps {
        page.title(&mut title);
        page.para(&format!(" {:>2} [ ] ", job.number), &job.title);
        let mut parts = job.parts.clone();
        parts.extend(job.after.map(String::from));
        if !parts.is_empty() {
            page.para("        ", &parts.join(" | "));
        }
        for note in &job.notes {
            page.para("        note: ", note);
        }
        if !job.own.is_empty() {
            page.para("        ", &job.own);
        }
    }
    if let Some(words) = bench.no_step {
        page.line("");
        page.line(words);
    }
    let mut title = Some("HOW");
    for (label, text) in &bench.ways {
        page.title(&mut title);
        page.para(&format!("{label:<10}"), text);
    }
    let mut title = Some("NOTHING TO DO, OR NOT HERE");
    for text in &bench.stays {
        page.title(&mut title);
        page.para("  - ", text);
    }
    page.line("");
    page.para("customer  ", &bench.customer);
    page.done()
}

impl Bench {
    pub(super) fn of(plan: &Plan) -> Self {
        let ways = Ways::of(plan);
        let about = [
            plan.invented.then(|| "invented data".to_string()),
            plan.date.as_ref().map(|date| format!("measured {date}")),
        ];
        Self {
            title: plan.frame.clone(),
            about: about.into_iter().flatten().collect::<Vec<_>>().join(", "),
            heads: heads(plan),
            questions: questions(plan),
            no_step: match plan.steps.is_empty() {
                false => None,
                true if plan.places.is_empty() => {
                    Some("nothing was measured, so nothing can be said")
                }
                true if plan.acceptable() => Some("nothing to cut"),
                true => Some("no step yet: answer what is asked, and plan again"),
            },
            steps: plan
                .steps
                .iter()
                .map(|step| job(plan, step, &ways))
                .collect(),
            ways: ways.told(plan),
            stays: stays(plan),
            customer: customer(plan),
        }
    }
}

fn heads(plan: &Plan) -> Vec<(&'static str, String)> {
    let mut heads = Vec::new();
    if !plan.steps.is_empty() {
        heads.push(("hold", hold(plan).to_string()));
    }
    let kit = kit(plan);
    if !kit.is_empty() {
        heads.push(("fetch", kit.join("; ")));
    }
    let mind: Vec<&str> = plan.cautions.iter().filter_map(|c| in_short(*c)).collect();
    heads.push(("mind", mind.join("; ")));
    heads.extend(plan.notes.iter().map(|note| ("note", note.clone())));
    heads
}

/// How the frame is held while it is worked on. Common practice.
fn hold(plan: &Plan) -> &'static str {
    let carbon = plan.cautions.contains(&Caution::Carbon);
    let tube = plan.place(&Place::SeatTube);
    let first = plan.steps_at(&Place::SeatTube).next().is_some();
    match tube.map(|t| t.state) {
        _ if carbon => "by a post, once it goes in by hand; never clamp a carbon tube",
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
        Caution::MakersLimits => Some("the makers' written limits come first"),
        Caution::Carbon => Some("carbon is neither reamed, tapped, faced nor scraped"),
        Caution::BondedInsert => Some("metal in carbon is bonded: no heat, no force"),
        Caution::Titanium => {
            Some("titanium: sharp cutter, slow, much lubricant, stop when it squeals")
        }
        Caution::CarbonPost => Some("a carbon post must meet no edge; assembly paste, no grease"),
        Caution::Brakes => Some("try the brake at walking pace before anybody rides"),
        Caution::Steering => Some("no ride on a cup, race or steerer that is not shown to fit"),
        Caution::Seatpost => Some("post in to the deepest of its own mark and the frame maker's"),
        Caution::WeakFigures => Some("check the figures that are practice, not print"),
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
        out.push("oil, brush, mask".to_string());
    }
    out
}

fn questions(plan: &Plan) -> Vec<(String, Vec<Blank>)> {
    let mut out: Vec<(String, Vec<Blank>)> = Vec::new();
    for question in &plan.questions {
        let tool = question.instrument();
        if out.last().is_none_or(|(known, _)| *known != tool) {
            out.push((tool, Vec::new()));
        }
        if let Some((_, blanks)) = out.last_mut() {
            blanks.push(Blank {
                number: question.number,
                words: question.words(),
                field: question.answer.clone(),
            });
        }
    }
    out
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

    fn told(&self, plan: &Plan) -> Vec<(&'static str, String)> {
        let told = |(operation, said): (&Operation, &Vec<(String, Vec<usize>)>)| {
            let all = plan
                .steps
                .iter()
                .filter(|s| s.operation == *operation)
                .count();
            let mut groups: Vec<(&[usize], Vec<&str>)> = Vec::new();
            for (words, steps) in said {
                match groups.iter_mut().find(|(known, _)| known == steps) {
                    Some((_, group)) => group.push(words),
                    None => groups.push((steps, Vec::from([words.as_str()]))),
                }
            }
            let group = |(steps, words): (&[usize], Vec<&str>)| {
                let numbers: Vec<String> = steps.iter().map(ToString::to_string).collect();
                let words = words.join("; ");
                if steps.len() == all {
                    words
                } else {
                    format!("{}: {words}", list(&numbers))
                }
            };
            let words: Vec<String> = groups.into_iter().map(group).collect();
            (doing(*operation), words.join(". "))
        };
        let said = self.0.iter().filter(|(_, said)| !said.is_empty());
        said.map(told).collect()
    }
}

/// Everything that is said of how a step is done, where it ends and what proves it.
fn way(step: &Step) -> Vec<String> {
    let ends = step.stops.iter().filter(|s| s.to_go.is_none());
    let ends: Vec<String> = ends.map(|stop| stop.limit.to_string()).collect();
    let stop = (!ends.is_empty()).then(|| format!("stop at {}", ends.join(" and ")));
    let how = [step.turning().map_or("", Turning::words), step.passes];
    stop.into_iter()
        .chain(
            how.into_iter()
                .filter(|words| !words.is_empty())
                .map(String::from),
        )
        .chain(step.checks.iter().map(ToString::to_string))
        .chain(step.proof.iter().map(ToString::to_string))
        .collect()
}

fn job(plan: &Plan, step: &Step, ways: &Ways) -> Job {
    let waits: Vec<String> = step.waits_for.iter().map(|n| format!("Q{n}")).collect();
    let mut job = Job {
        number: step.number,
        place: step.place.clone(),
        title: step.words(),
        parts: Vec::new(),
        notes: step.notes.clone(),
        own: step.why().into_owned(),
        after: None,
    };
    if step.operation == Operation::Refer {
        return job;
    }
    if !waits.is_empty() {
        job.title
            .push_str(&format!(" (only after {})", list(&waits)));
    }
    let have = plan
        .place(&step.place)
        .and_then(|place| have(step.operation, place));
    job.parts.extend(have.map(|have| format!("have {have}")));
    let off = step.off.iter();
    job.parts
        .extend(off.map(|off| format!("take {}", amount(step.operation, off))));
    let nearest = step
        .stops
        .iter()
        .find_map(|s| Some(room(&s.limit, s.to_go?)));
    job.parts.extend(nearest);
    job.parts.extend(turn(step));
    let mut own = way(step);
    own.retain(|words| !ways.holds(step.operation, words));
    job.own = own.join("; ");
    job.after = match step.operation {
        Operation::Chase | Operation::Tap => Some("GO [ ] NOT GO [ ]"),
        _ if step.cuts() => Some("then ________"),
        _ => None,
    };
    job
}

/// Every place at which nothing is to be done, with the reason.
fn stays(plan: &Plan) -> Vec<String> {
    let place = |place: &PlaceReport| {
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
        match why {
            Some(why) => format!("{}: {}: {why}", place.name, super::plan::state(place.state)),
            None => format!("{}: {}", place.name, standing(place.state)),
        }
    };
    let places = plan.places.iter().filter(|p| p.state != State::ToDo);
    places.map(place).collect()
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
        (&[State::Leave], "to leave as found"),
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
