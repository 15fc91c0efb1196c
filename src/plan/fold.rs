//! The fold of all places into one plan: ordered once, numbered once. Its cost is linear in the places.

use alloc::borrow::Cow;
use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Fact;
use super::answer::{After, CONTRACT, Operation, Plan, Question, State, Step};
use super::caution::Caution;
use super::rows::{self, PlaceKind};
use super::sheet::FrameSheet;
use super::work::{Draft, PlaceWork};
use crate::judge::Instrument;
use crate::standard::{End, HeadTubeEnd, Place};
use crate::thread::Side;

/// What a step does to its place: decides what must come before what.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Stage {
    Clean,
    Bore,
    Thread,
    Face,
    Check,
}

fn stage(draft: &Draft) -> Stage {
    match (draft.operation(), PlaceKind::of(&draft.place)) {
        (Operation::Clean, _) => Stage::Clean,
        (Operation::Ream | Operation::Deepen, _) => Stage::Bore,
        (Operation::Chase | Operation::Tap | Operation::Replace, _) => Stage::Thread,
        (Operation::Face, _) => Stage::Face,
        (Operation::Check, _) => Stage::Check,
        (Operation::Refer, PlaceKind::ShellThread | PlaceKind::Thread) => Stage::Thread,
        (Operation::Refer, PlaceKind::ShellFace | PlaceKind::HeadFace | PlaceKind::Mount) => {
            Stage::Face
        }
        (Operation::Refer, _) => Stage::Bore,
    }
}

/// The order in which a frame is gone over: the seat tube first, so that it can be held by a post; then what is threaded
/// before what pilots on it (common practice).
fn group(place: &Place) -> u8 {
    match place.whole() {
        Place::SeatTube => 0,
        Place::Shell => 1,
        Place::HeadTube(_) => 2,
        Place::Crown => 3,
        Place::Steerer => 4,
        Place::Axle(_) => 5,
        Place::Hanger(_) | Place::Boss(_) | Place::Pedal(_) | Place::Thread => 6,
        Place::Brake(_) => 7,
        _ => 8,
    }
}

/// Why one step must be finished before another, by place and stage (common practice).
fn earlier(place: &Place, at: Stage) -> Vec<(Place, Stage, &'static str)> {
    let mut out = Vec::new();
    let clean = "clean before cutting, so that the cutter follows metal and not paint";
    for before in [Stage::Clean, Stage::Bore, Stage::Thread, Stage::Face] {
        if before < at {
            let why = match (before, at) {
                (Stage::Clean, _) => clean,
                (Stage::Bore, Stage::Thread) => "hole before thread",
                _ => "check after the cut",
            };
            out.push((place.clone(), before, why));
        }
    }
    let thread_first = "thread before face: the facing tool pilots on the thread";
    let both_threads = "both threads before either face: the facing tool is guided through both";
    let both_bores = "both bores before either face: the pilot is centred in the opposite bore";
    match place {
        Place::ShellFace(side) => {
            let other = match side {
                Side::Drive => Side::NonDrive,
                Side::NonDrive => Side::Drive,
            };
            out.push((Place::ShellSide(*side), Stage::Thread, thread_first));
            out.push((Place::ShellSide(other), Stage::Thread, both_threads));
            out.push((
                Place::Shell,
                Stage::Bore,
                "bore before face: the facing tool pilots on the bore",
            ));
            out.push((Place::Shell, Stage::Clean, clean));
        }
        Place::HeadFace(end) => {
            let other = match end {
                HeadTubeEnd::Upper => HeadTubeEnd::Lower,
                HeadTubeEnd::Lower => HeadTubeEnd::Upper,
            };
            let here = "bore before face: the facing tool pilots on the bore";
            out.push((Place::HeadTube(*end), Stage::Bore, here));
            out.push((Place::HeadTube(*end), Stage::Clean, clean));
            out.push((Place::HeadTube(other), Stage::Bore, both_bores));
            out.push((Place::HeadTube(other), Stage::Clean, both_bores));
        }
        Place::Brake(end) if *end != End::Both => {
            let axle = "axle thread before brake mount: the facing tool pilots on the axle";
            out.push((Place::Axle(*end), Stage::Thread, axle));
            out.push((Place::Axle(*end), Stage::Clean, axle));
        }
        Place::Steerer if at == Stage::Check => {
            let faces = "what comes off the faces lowers the stack: length last";
            for end in [HeadTubeEnd::Upper, HeadTubeEnd::Lower] {
                out.push((Place::HeadFace(end), Stage::Face, faces));
                out.push((Place::HeadTube(end), Stage::Bore, faces));
            }
        }
        Place::Crown if at == Stage::Check => {
            out.push((
                Place::HeadFace(HeadTubeEnd::Lower),
                Stage::Face,
                "a lower face that was cut brings the crown closer",
            ));
        }
        _ => {}
    }
    out
}

const STAND: &str = "the seat tube comes first, so that the frame can be held by a post";

/// Joins what the planners gave.
pub(super) fn fold(sheet: &FrameSheet, mut works: Vec<PlaceWork>) -> Plan {
    works.sort_by_key(|work| (group(&work.place), rank(&work.place)));
    let mut cautions = BTreeSet::from([Caution::MakersLimits]);
    let mut weak = Vec::new();
    let mut known = BTreeSet::new();
    for work in &mut works {
        cautions.extend(work.cautions.iter().copied());
        for figure in work.weak.drain(..) {
            if known.insert((
                figure.place.clone(),
                figure.what.code(),
                figure.owner.clone(),
            )) {
                weak.push(figure);
            }
        }
    }
    if !weak.is_empty() {
        cautions.insert(Caution::WeakFigures);
    }
    let questions = number_questions(&mut works);
    let numbers: BTreeMap<String, usize> = questions
        .iter()
        .map(|q| (q.answer.clone(), q.number))
        .collect();
    let mut drafts: Vec<Draft> = Vec::new();
    let mut notes: BTreeMap<Place, Vec<String>> = BTreeMap::new();
    for work in &works {
        if !work.notes.is_empty() {
            notes.insert(work.place.clone(), work.notes.clone());
        }
    }
    let mut places = Vec::with_capacity(works.len());
    for mut work in works {
        // The state is what it is with its steps.
        let steps = work.steps.clone();
        drafts.append(&mut work.steps);
        work.steps = steps;
        places.push(work.report());
    }
    // Stable: what is equal stays in the order in which it was planned.
    drafts.sort_by_key(order_key);
    for draft in &drafts {
        cautions.extend(draft.cautions.iter().copied());
        if draft.operation().cuts() {
            cautions.extend([Caution::Cutting, Caution::TurnOneWay, Caution::Dust]);
        } else if draft.operation() == Operation::Clean {
            cautions.insert(Caution::Dust);
        }
    }
    let mut at: BTreeMap<(Place, Stage), Vec<usize>> = BTreeMap::new();
    for (index, draft) in drafts.iter().enumerate() {
        if !matches!(draft.operation(), Operation::Refer) {
            at.entry((draft.place.clone(), stage(draft)))
                .or_default()
                .push(index + 1);
        }
    }
    let stand: Vec<usize> = at
        .get(&(Place::SeatTube, Stage::Bore))
        .cloned()
        .unwrap_or_default();
    let steps = drafts
        .into_iter()
        .enumerate()
        .map(|(index, draft)| {
            let number = index + 1;
            let mut after = Vec::new();
            if draft.operation() != Operation::Refer {
                if draft.place != Place::SeatTube {
                    after.extend(stand.iter().map(|step| After {
                        step: *step,
                        why: STAND,
                    }));
                }
                for (place, before, why) in earlier(&draft.place, stage(&draft)) {
                    let steps = at.get(&(place, before)).into_iter().flatten();
                    after.extend(
                        steps
                            .filter(|step| **step < number)
                            .map(|step| After { step: *step, why }),
                    );
                }
            }
            let here = notes.get(&draft.place).cloned().unwrap_or_default();
            step(draft, number, after, &numbers, here)
        })
        .collect();
    Plan {
        contract: CONTRACT,
        frame: sheet.frame.clone(),
        invented: sheet.invented,
        date: sheet.date.clone(),
        notes: sheet.note.iter().cloned().collect(),
        places,
        steps,
        questions,
        cautions: cautions.into_iter().collect(),
        weak_figures: weak,
    }
}

/// Where a place stands among the others of its group.
fn rank(place: &Place) -> u8 {
    match place {
        Place::ShellSide(Side::Drive) | Place::HeadTube(HeadTubeEnd::Upper) => 1,
        Place::ShellSide(Side::NonDrive) => 2,
        Place::ShellFace(Side::Drive) | Place::HeadTube(HeadTubeEnd::Lower) => 3,
        Place::ShellFace(Side::NonDrive) => 4,
        Place::HeadFace(HeadTubeEnd::Upper) => 5,
        Place::HeadFace(HeadTubeEnd::Lower) => 6,
        _ => 0,
    }
}

fn order_key(draft: &Draft) -> (u8, Stage, u8) {
    (group(&draft.place), stage(draft), rank(&draft.place))
}

/// Numbers the questions so that each instrument is picked up once.
fn number_questions(works: &mut [PlaceWork]) -> Vec<Question> {
    let mut tools: BTreeMap<Instrument, usize> = BTreeMap::new();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    let mut out: Vec<(usize, Question)> = Vec::new();
    let places: BTreeMap<String, usize> = works
        .iter()
        .enumerate()
        .filter(|(_, work)| work.state() == State::Open)
        .map(|(index, work)| (work.place.to_string(), index))
        .collect();
    for asker in works.iter() {
        for asked in &asker.questions {
            if !seen.insert(asked.answer.clone()) {
                continue;
            }
            // Whoever asks it, it is measured where it is written, if that place waits too.
            let measured_at = asked
                .answer
                .match_indices('.')
                .rev()
                .find_map(|(end, _)| places.get(asked.answer.get(..end)?))
                .and_then(|index| works.get(*index));
            let work = measured_at.unwrap_or(asker);
            let next = tools.len();
            let tool = *tools.entry(asked.ask.with()).or_insert(next);
            out.push((
                tool,
                Question {
                    number: 0,
                    place: work.place.clone(),
                    name: work.name.clone(),
                    ask: asked.ask.clone(),
                    answer: asked.answer.clone(),
                },
            ));
        }
    }
    out.sort_by_key(|(tool, _)| *tool);
    out.into_iter()
        .enumerate()
        .map(|(index, (_, question))| Question {
            number: index + 1,
            ..question
        })
        .collect()
}

fn step(
    draft: Draft,
    number: usize,
    after: Vec<After>,
    questions: &BTreeMap<String, usize>,
    notes: Vec<String>,
) -> Step {
    let operation = draft.operation();
    let row = if operation == Operation::Refer {
        None
    } else {
        rows::find(operation, &draft.place)
    };
    let mut waits: Vec<usize> = draft
        .waits
        .iter()
        .filter_map(|answer| questions.get(answer).copied())
        .collect();
    waits.sort_unstable();
    waits.dedup();
    let (off, stops) = match draft.permit() {
        Some(permit) => (permit.off(), permit.stops().to_vec()),
        None => (None, Vec::new()),
    };
    let mut checks: Vec<Fact> = row
        .map(|row| row.checks.iter().map(|c| Fact::from(*c)).collect())
        .unwrap_or_default();
    if operation == Operation::Refer {
        checks.clear();
    } else {
        checks.extend(draft.checks);
    }
    let text = |of: fn(&rows::WorkRow) -> &'static str| Cow::Borrowed(row.map_or("", of));
    let fact = |of: fn(&rows::WorkRow) -> &'static str| {
        row.map(of)
            .filter(|words| !words.is_empty())
            .map(Fact::from)
    };
    Step {
        number,
        place: draft.place,
        operation,
        after,
        waits_for: waits,
        off,
        stops,
        tools: if operation == Operation::Refer {
            Vec::new()
        } else {
            draft.tools
        },
        pilot: draft.pilot.or_else(|| fact(|row| row.pilot)),
        start: text(|row| row.start),
        turn: draft.turn,
        turning: row.map_or("", |row| row.turning),
        passes: row.map_or("", |row| row.passes),
        changes: draft.changes,
        checks,
        proof: if operation == Operation::Refer {
            None
        } else {
            draft.proof.or_else(|| fact(|row| row.proof))
        },
        cautions: draft.cautions,
        notes,
        task: draft.task,
    }
}
