//! The record: what was found, what was done, what came off against what was planned, and where each place stands.

use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Off, PlaceReport, Plan, State, Step, WeakFigure};
use super::caution::Caution;
use super::facts::{Ask, Fact, Found, Task};
use super::prepare_with;
use super::sheet::{Face, FrameSheet};
use crate::measure::{Reading, settled_below};
use crate::standard::{Place, Tables};

/// The record of one place.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RecordEntry {
    /// Where.
    pub place: Place,
    /// Its name.
    pub name: String,
    /// Where the work stands.
    pub state: State,
    /// What was found before.
    pub before: Vec<Found>,
    /// What was planned, in one line each.
    pub planned: Vec<Task>,
    /// How much was planned to come off.
    pub planned_off: Option<Off>,
    /// What was found after the last pass; empty without readings after the work.
    pub after: Vec<Found>,
    /// What came off, least and most.
    pub removed: Vec<Reading>,
    /// More came off than was planned.
    pub too_much: bool,
    /// What is still to be done, in one line each.
    pub left_to_do: Vec<Task>,
    /// What is asked.
    pub asked: Vec<Ask>,
    /// What contradicts what.
    pub contradictions: Vec<Fact>,
    /// What is left as it is, and why.
    pub leave: Vec<Fact>,
    /// What could cure what is out.
    pub cures: Vec<Fact>,
    /// What the sheet notes there.
    pub notes: Vec<String>,
    /// Readings were taken after work.
    pub worked: bool,
}

/// The before-and-after record of a frame, in a form to hand to a customer.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Record {
    /// The frame, in the shop's words.
    pub frame: String,
    /// The data are invented for a demonstration.
    pub invented: bool,
    /// When it was measured.
    pub date: Option<String>,
    /// What the sheet notes of the frame as a whole.
    pub notes: Vec<String>,
    /// One entry a place.
    pub entries: Vec<RecordEntry>,
    /// Figures from memory, common practice or arithmetic: to be checked by the mechanic.
    pub weak_figures: Vec<WeakFigure>,
    /// Cautions.
    pub cautions: Vec<Caution>,
}

impl Record {
    /// Whether every place is done or left with a reason.
    ///
    /// ```
    /// use framegauge::{plan::{FrameSheet, record}, standard::Tables};
    /// assert!(!record(&FrameSheet::default(), Tables::ours()).finished());
    /// ```
    #[must_use]
    pub fn finished(&self) -> bool {
        !self.entries.is_empty() && self.entries.iter().all(|e| e.state.is_finished())
    }
}

/// Writes the record: the plan as it was before the work beside the plan that the readings after it give.
///
/// ```
/// use framegauge::{plan::{FrameSheet, SeatTubeSheet, State, record}, standard::Tables};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// let record = record(&sheet, Tables::ours());
/// assert_eq!(record.entries[0].state, State::Open);
/// ```
#[must_use]
pub fn record(sheet: &FrameSheet, tables: Tables<'_>) -> Record {
    let now = prepare_with(sheet, tables);
    let worked = now.places.iter().any(|p| p.worked);
    // Without readings after the work the plan before it is the plan.
    let before = worked.then(|| prepare_with(&sheet.before(), tables));
    of(&now, before.as_ref())
}

/// The record of a plan that is at hand, with the one before the work where there was work.
pub(super) fn of(now: &Plan, before: Option<&Plan>) -> Record {
    let first = before.unwrap_or(now);
    let found: BTreeMap<&Place, &PlaceReport> =
        first.places.iter().map(|p| (&p.place, p)).collect();
    let planned = steps_by_place(first);
    let left = steps_by_place(now);
    let mut asked: BTreeMap<&Place, Vec<Ask>> = BTreeMap::new();
    for question in &now.questions {
        asked
            .entry(&question.place)
            .or_default()
            .push(question.ask.clone());
    }
    let entries = now
        .places
        .iter()
        .map(|report| {
            let steps = planned.get(&report.place).map_or(&[][..], Vec::as_slice);
            let planned_off = steps.iter().find_map(|s| s.off);
            let most = report
                .removed
                .iter()
                .max_by(|a, b| crate::measure::settled_cmp(a.value(), b.value()));
            let too_much = most.zip(planned_off).is_some_and(|(most, off)| {
                settled_below(off.most, most.value() - most.expanded_uncertainty())
            });
            RecordEntry {
                place: report.place.clone(),
                name: report.name.clone(),
                state: report.state,
                before: found
                    .get(&report.place)
                    .map(|p| p.facts.clone())
                    .unwrap_or_default(),
                planned: steps.iter().map(|s| s.task.clone()).collect(),
                planned_off,
                after: if report.worked {
                    report.facts.clone()
                } else {
                    Vec::new()
                },
                removed: report.removed.clone(),
                too_much,
                left_to_do: left
                    .get(&report.place)
                    .map_or(&[][..], Vec::as_slice)
                    .iter()
                    .map(|s| s.task.clone())
                    .collect(),
                asked: asked.remove(&report.place).unwrap_or_default(),
                contradictions: report.contradictions.clone(),
                leave: report.leave.clone(),
                cures: report.cures.clone(),
                notes: report.notes.clone(),
                worked: report.worked,
            }
        })
        .collect();
    Record {
        frame: now.frame.clone(),
        invented: now.invented,
        date: now.date.clone(),
        notes: now.notes.clone(),
        entries,
        weak_figures: now.weak_figures.clone(),
        cautions: now.cautions.clone(),
    }
}

fn steps_by_place(plan: &Plan) -> BTreeMap<&Place, Vec<&Step>> {
    let mut out: BTreeMap<&Place, Vec<&Step>> = BTreeMap::new();
    for step in &plan.steps {
        out.entry(&step.place).or_default().push(step);
    }
    out
}

impl FrameSheet {
    /// The same sheet without any reading taken after work.
    ///
    /// ```
    /// use framegauge::{judge::Passed, plan::{FrameSheet, ShellSheet}};
    /// let mut shell = ShellSheet::default();
    /// shell.drive.go_after = Some(Passed::Passed);
    /// let sheet = FrameSheet { shell: Some(shell), ..FrameSheet::default() };
    /// assert_eq!(sheet.before().shell.unwrap().drive.go_after, None);
    /// ```
    #[must_use]
    pub fn before(&self) -> Self {
        let mut sheet = self.clone();
        let face = |face: &mut Option<Face>| {
            if let Some(face) = face {
                face.after.clear();
                face.passes.clear();
            }
        };
        if let Some(tube) = &mut sheet.seat_tube {
            tube.after.clear();
            tube.passes.clear();
        }
        for end in [&mut sheet.head_tube.upper, &mut sheet.head_tube.lower]
            .into_iter()
            .flatten()
        {
            end.after.clear();
            end.passes.clear();
            face(&mut end.face);
        }
        if let Some(shell) = &mut sheet.shell {
            shell.after.clear();
            shell.passes.clear();
            for side in [&mut shell.drive, &mut shell.non_drive] {
                side.go_after = None;
                side.not_go_after = None;
                side.passes.clear();
                face(&mut side.face);
            }
        }
        if let Some(crown) = &mut sheet.crown {
            crown.after.clear();
        }
        for thread in sheet.every_thread() {
            thread.go_after = None;
            thread.not_go_after = None;
            thread.passes.clear();
        }
        for brake in &mut sheet.brake {
            brake.sheet.after.clear();
            brake.sheet.passes.clear();
        }
        sheet
    }
}
