//! The fold of all places into one plan: ordered once, numbered once. Its cost is linear in the places.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::String;
use alloc::vec::Vec;
use core::mem::take;

use super::answer::{After, CONTRACT, PlaceReport, Plan, Question, State, Step, WeakFigure};
use super::caution::Caution;
use super::facts::{CommonFact, Earlier, Fact};
use super::sheet::FrameSheet;
use super::work::{Asked, Draft, PlaceWork};
use crate::evidence::Text;
use crate::judge::Instrument;
use crate::standard::{End, HeadTubeEnd, Operation, Place, WorkRow, Workplace};
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
    match (draft.operation(), Workplace::of(&draft.place)) {
        (Operation::Clean, _) => Stage::Clean,
        (Operation::Chase | Operation::Tap | Operation::Replace, _)
        | (Operation::Refer, Workplace::ShellThread | Workplace::Thread) => Stage::Thread,
        (Operation::Face, _)
        | (Operation::Refer, Workplace::ShellFace | Workplace::HeadFace | Workplace::Mount) => {
            Stage::Face
        }
        (Operation::Check, _) => Stage::Check,
        (Operation::Ream | Operation::Deepen | Operation::Refer, _) => Stage::Bore,
    }
}

/// The order in which a frame is gone over: the seat tube first, so that it can be held by a post; then what is threaded
/// before what pilots on it (common practice).
const fn group(place: &Place) -> u8 {
    match place {
        Place::SeatTube | Place::SeatTubeSlot => 0,
        Place::Shell | Place::ShellSide(_) | Place::ShellFace(_) => 1,
        Place::HeadTube(_) | Place::HeadFace(_) => 2,
        Place::Crown => 3,
        Place::Steerer => 4,
        Place::Axle(_) => 5,
        Place::Hanger(_) | Place::Boss(_) | Place::Pedal(_) | Place::Thread => 6,
        Place::Brake(_) | Place::BrakeUnderside(_) => 7,
        Place::Seatpost | Place::Dropout(..) | Place::Iscg => 8,
    }
}

/// Where a place stands among the others of its group.
const fn rank(place: &Place) -> u8 {
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

/// What must be finished before this stage of a place, and why (common practice).
fn earlier(place: &Place, at: Stage, tell: &mut dyn FnMut(&Place, Stage, Earlier)) {
    for before in [Stage::Clean, Stage::Bore, Stage::Thread, Stage::Face] {
        if before < at {
            let why = match (before, at) {
                (Stage::Clean, _) => Earlier::CleanFirst,
                (Stage::Bore, Stage::Thread) => Earlier::HoleFirst,
                _ => Earlier::CheckAfter,
            };
            tell(place, before, why);
        }
    }
    match place {
        Place::ShellFace(side) => {
            let other = match side {
                Side::Drive => Side::NonDrive,
                Side::NonDrive => Side::Drive,
            };
            tell(
                &Place::ShellSide(*side),
                Stage::Thread,
                Earlier::ThreadPilots,
            );
            tell(
                &Place::ShellSide(other),
                Stage::Thread,
                Earlier::BothThreads,
            );
            tell(&Place::Shell, Stage::Bore, Earlier::BorePilots);
            tell(&Place::Shell, Stage::Clean, Earlier::CleanFirst);
        }
        Place::HeadFace(end) => {
            let other = match end {
                HeadTubeEnd::Upper => HeadTubeEnd::Lower,
                HeadTubeEnd::Lower => HeadTubeEnd::Upper,
            };
            tell(&Place::HeadTube(*end), Stage::Bore, Earlier::BorePilots);
            tell(&Place::HeadTube(*end), Stage::Clean, Earlier::CleanFirst);
            tell(&Place::HeadTube(other), Stage::Bore, Earlier::BothBores);
            tell(&Place::HeadTube(other), Stage::Clean, Earlier::BothBores);
        }
        Place::Brake(end) if *end != End::Both => {
            tell(&Place::Axle(*end), Stage::Thread, Earlier::AxlePilots);
            tell(&Place::Axle(*end), Stage::Clean, Earlier::AxlePilots);
        }
        Place::Steerer if at == Stage::Check => {
            for end in [HeadTubeEnd::Upper, HeadTubeEnd::Lower] {
                tell(&Place::HeadFace(end), Stage::Face, Earlier::LengthLast);
                tell(&Place::HeadTube(end), Stage::Bore, Earlier::LengthLast);
            }
        }
        Place::Crown if at == Stage::Check => {
            tell(
                &Place::HeadFace(HeadTubeEnd::Lower),
                Stage::Face,
                Earlier::CrownCloser,
            );
        }
        _ => {}
    }
}

/// Joins what the planners gave.
pub(super) fn fold(sheet: &FrameSheet, mut works: Vec<PlaceWork>) -> Plan {
    works.sort_by_key(|work| (group(&work.place), rank(&work.place)));
    // The state of a place is what it is with its steps and questions.
    let states: Vec<State> = works.iter().map(PlaceWork::state).collect();
    let mut cautions = BTreeSet::from([Caution::MakersLimits]);
    let mut drafts: Vec<Draft> = Vec::new();
    for work in &mut works {
        cautions.extend(work.cautions.iter().copied());
        drafts.append(&mut work.steps);
    }
    let weak_figures = weak_figures(&mut works);
    if !weak_figures.is_empty() {
        cautions.insert(Caution::WeakFigures);
    }
    let questions = questions(&mut works, &states);
    let reports = works
        .into_iter()
        .zip(states)
        .map(|(work, state)| work.report(state));
    let places: Vec<PlaceReport> = reports.collect();
    // Stable: what is equal stays in the order in which it was planned.
    drafts.sort_by_key(|draft| (group(&draft.place), stage(draft), rank(&draft.place)));
    for draft in &drafts {
        cautions.extend(draft.cautions.iter().copied());
        if draft.operation().cuts() {
            cautions.extend([Caution::Cutting, Caution::TurnOneWay, Caution::Dust]);
        } else if draft.operation() == Operation::Clean {
            cautions.insert(Caution::Dust);
        }
    }
    let steps = steps(drafts, &places, &questions);
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
        weak_figures,
    }
}

/// Every weak figure once a place.
fn weak_figures(works: &mut [PlaceWork]) -> Vec<WeakFigure> {
    let mut out: Vec<WeakFigure> = Vec::new();
    for work in works {
        // Works of one place stand together.
        let here = out
            .iter()
            .rposition(|w| w.place != work.place)
            .map_or(0, |last| last + 1);
        for figure in take(&mut work.weak) {
            if !out
                .iter()
                .skip(here)
                .any(|known| known.is_same(&figure.what, &figure.owner))
            {
                out.push(figure);
            }
        }
    }
    out
}

/// Numbers the questions so that each instrument is picked up once.
fn questions(works: &mut [PlaceWork], states: &[State]) -> Vec<Question> {
    let mut tools: BTreeMap<Instrument, usize> = BTreeMap::new();
    let mut seen: BTreeSet<String> = BTreeSet::new();
    let mut asked: Vec<(usize, usize, Asked)> = Vec::new();
    for (index, work) in works.iter_mut().enumerate() {
        for question in take(&mut work.questions) {
            if seen.insert(question.answer.clone()) {
                let next = tools.len();
                let tool = *tools.entry(question.ask.with()).or_insert(next);
                asked.push((tool, index, question));
            }
        }
    }
    asked.sort_by_key(|(tool, ..)| *tool);
    let open: BTreeMap<Text, &PlaceWork> = works
        .iter()
        .zip(states)
        .filter(|(_, state)| **state == State::Open && !asked.is_empty())
        .map(|(work, _)| (work.place.code(), work))
        .collect();
    let numbered =
        asked
            .into_iter()
            .enumerate()
            .filter_map(|(index, (_, asker, Asked { answer, ask }))| {
                // Whoever asks it, it is measured where it is written, if that place waits too.
                let mut wholes = answer.match_indices('.').rev();
                let measured_at = wholes.find_map(|(end, _)| open.get(answer.get(..end)?).copied());
                let work = measured_at.or_else(|| works.get(asker))?;
                let (place, name) = (work.place.clone(), work.name.clone());
                Some(Question {
                    number: index + 1,
                    place,
                    name,
                    ask,
                    answer,
                })
            });
    numbered.collect()
}

/// Numbers the steps, each with what comes before it.
fn steps(drafts: Vec<Draft>, places: &[PlaceReport], questions: &[Question]) -> Vec<Step> {
    let numbers: BTreeMap<&str, usize> = questions
        .iter()
        .map(|q| (q.answer.as_str(), q.number))
        .collect();
    let mut notes: BTreeMap<&Place, &[String]> = BTreeMap::new();
    for report in places.iter().filter(|p| !p.notes.is_empty()) {
        notes.insert(&report.place, &report.notes);
    }
    let mut at: BTreeMap<(Place, Stage), Vec<usize>> = BTreeMap::new();
    for (index, draft) in drafts.iter().enumerate() {
        if draft.operation() != Operation::Refer {
            at.entry((draft.place.clone(), stage(draft)))
                .or_default()
                .push(index + 1);
        }
    }
    let numbered = drafts.into_iter().enumerate().map(|(index, draft)| {
        let number = index + 1;
        let mut after = Vec::new();
        if draft.operation() != Operation::Refer {
            let mut tell = |place: &Place, before: Stage, why: Earlier| {
                let steps = at.get(&(place.clone(), before)).into_iter().flatten();
                let earlier = steps.filter(|step| **step < number);
                after.extend(earlier.map(|step| After { step: *step, why }));
            };
            if draft.place != Place::SeatTube {
                tell(&Place::SeatTube, Stage::Bore, Earlier::Stand);
            }
            earlier(&draft.place, stage(&draft), &mut tell);
        }
        let here = notes
            .get(&draft.place)
            .copied()
            .unwrap_or_default()
            .to_vec();
        step(draft, number, after, &numbers, here)
    });
    numbered.collect()
}

fn step(
    draft: Draft,
    number: usize,
    after: Vec<After>,
    questions: &BTreeMap<&str, usize>,
    notes: Vec<String>,
) -> Step {
    let operation = draft.operation();
    let ours = operation != Operation::Refer;
    let row = WorkRow::of(operation, &draft.place).filter(|_| ours);
    let usual = |says: &'static Text| {
        Fact::from(CommonFact::Usual {
            says: Text::Borrowed(says),
        })
    };
    let mut waits_for: Vec<usize> = draft
        .waits
        .iter()
        .filter_map(|answer| questions.get(answer.as_str()).copied())
        .collect();
    waits_for.sort_unstable();
    waits_for.dedup();
    let mut checks = Vec::new();
    if ours {
        checks.extend(row.iter().flat_map(|row| row.checks.iter()).map(usual));
        checks.extend(draft.checks);
    }
    let proof = draft.proof.or_else(|| row.map(|row| usual(&row.proof)));
    let pilot = row.map(|row| &row.pilot).filter(|pilot| !pilot.is_empty());
    let (off, stops) = draft.kind.into_amount();
    Step {
        number,
        place: draft.place,
        operation,
        after,
        waits_for,
        off,
        stops,
        tools: if ours { draft.tools } else { Vec::new() },
        pilot: draft.pilot.or_else(|| pilot.map(usual)),
        start: row.map_or("", |row| &row.start),
        turn: draft.turn,
        passes: row.map_or("", |row| &row.passes),
        changes: draft.changes,
        checks,
        proof: proof.filter(|_| ours),
        cautions: draft.cautions,
        notes,
        task: draft.task,
    }
}
