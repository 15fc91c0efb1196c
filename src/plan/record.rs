//! The record: what was found, what was done, what came off against what was planned, and where each place stands.

use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Off, PlaceReport, Plan, Step, WeakFigure};
use super::caution::Caution;
use super::facts::{Ask, Found, Task};
use super::prepare_with;
use super::sheet::{Face, FrameSheet};
use crate::measure::{settled_below, settled_cmp};
use crate::standard::{Place, Tables};

/// The record of one place.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RecordEntry {
    /// As it is now: what was found after the last pass, or as it was met where nothing was done.
    #[cfg_attr(feature = "serde", serde(flatten))]
    pub now: PlaceReport,
    /// What was found before.
    pub before: Vec<Found>,
    /// What was planned.
    pub planned: Vec<Task>,
    /// How much was planned to come off.
    pub planned_off: Option<Off>,
    /// More came off than was planned.
    pub too_much: bool,
    /// What is still to be done.
    pub left_to_do: Vec<Task>,
    /// What is asked.
    pub asked: Vec<Ask>,
}

impl RecordEntry {
    /// What was found after the work; empty without readings after it.
    #[must_use]
    pub fn after(&self) -> &[Found] {
        if self.now.worked {
            &self.now.facts
        } else {
            &[]
        }
    }
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
        !self.entries.is_empty() && self.entries.iter().all(|e| e.now.state.is_finished())
    }
}

/// Writes the record: the plan as it was before the work beside the plan that the readings after it give.
///
/// ```
/// use framegauge::{plan::{FrameSheet, SeatTubeSheet, State, record}, standard::Tables};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// let record = record(&sheet, Tables::ours());
/// assert_eq!(record.entries[0].now.state, State::Open);
/// ```
#[must_use]
pub fn record(sheet: &FrameSheet, tables: Tables<'_>) -> Record {
    let now = prepare_with(sheet, tables);
    let worked = now.places.iter().any(|p| p.worked);
    // Without readings after the work the plan before it is the plan.
    let before = worked.then(|| prepare_with(&sheet.before(), tables));
    of(now, before.as_ref())
}

/// The record of a plan, with the one before the work where there was work.
fn of(now: Plan, before: Option<&Plan>) -> Record {
    let first = before.unwrap_or(&now);
    let found: BTreeMap<&Place, &PlaceReport> =
        first.places.iter().map(|p| (&p.place, p)).collect();
    let (planned, left) = (steps_by_place(first), steps_by_place(&now));
    let mut asked: BTreeMap<&Place, Vec<Ask>> = BTreeMap::new();
    for question in &now.questions {
        asked
            .entry(&question.place)
            .or_default()
            .push(question.ask.clone());
    }
    let tasks = |steps: &[&Step]| steps.iter().map(|s| s.task.clone()).collect();
    let entry = |report: &PlaceReport| {
        let steps = planned.get(&report.place).map_or(&[][..], Vec::as_slice);
        let left = left.get(&report.place).map_or(&[][..], Vec::as_slice);
        let planned_off = steps.iter().find_map(|s| s.off);
        let most = report
            .removed
            .iter()
            .max_by(|a, b| settled_cmp(a.value(), b.value()));
        RecordEntry {
            now: report.clone(),
            before: found
                .get(&report.place)
                .map(|p| p.facts.clone())
                .unwrap_or_default(),
            planned: tasks(steps),
            planned_off,
            too_much: most.zip(planned_off).is_some_and(|(most, off)| {
                settled_below(off.most, most.value() - most.expanded_uncertainty())
            }),
            left_to_do: tasks(left),
            asked: asked.get(&report.place).cloned().unwrap_or_default(),
        }
    };
    let entries = now.places.iter().map(entry).collect();
    Record {
        entries,
        frame: now.frame,
        invented: now.invented,
        date: now.date,
        notes: now.notes,
        weak_figures: now.weak_figures,
        cautions: now.cautions,
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
        fn face(face: &mut Option<Face>) {
            if let Some(face) = face {
                face.after.clear();
                face.passes.clear();
            }
        }
        let mut sheet = self.clone();
        if let Some(tube) = &mut sheet.seat_tube {
            tube.after.clear();
            tube.passes.clear();
        }
        let ends = [&mut sheet.head_tube.upper, &mut sheet.head_tube.lower];
        for end in ends.into_iter().flatten() {
            end.after.clear();
            end.passes.clear();
            face(&mut end.face);
        }
        if let Some(shell) = &mut sheet.shell {
            shell.after.clear();
            shell.passes.clear();
            for side in [&mut shell.drive, &mut shell.non_drive] {
                (side.go_after, side.not_go_after) = (None, None);
                side.passes.clear();
                face(&mut side.face);
            }
        }
        if let Some(crown) = &mut sheet.crown {
            crown.after.clear();
        }
        for thread in sheet.every_thread() {
            (thread.go_after, thread.not_go_after) = (None, None);
            thread.passes.clear();
        }
        for brake in &mut sheet.brake {
            brake.sheet.after.clear();
            brake.sheet.passes.clear();
        }
        sheet
    }
}
