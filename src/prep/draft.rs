//! The plan while it is being written, and the order of work as a checked graph.

use alloc::collections::BTreeSet;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::plan::{
    Amount, Consequence, Edge, Interface, InterfaceReport, Operation, Plan, Question, Step, Stop,
    Tool, WeakFigure,
};
use super::sheet::FrameSheet;
use crate::evidence::Grade;
use crate::measure::DecisionRule;
use crate::standard::{End, Tables};
use crate::thread::Side;

/// What a step does to its place: decides what must come before what.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Stage {
    Clean,
    Bore,
    Thread,
    Face,
    Check,
}

/// A step before it has a number.
pub(super) struct DraftStep {
    pub interface: Interface,
    pub stage: Stage,
    /// Front or rear, where the step belongs to a wheel.
    pub end: End,
    pub operation: Operation,
    pub title: String,
    pub why: String,
    pub tool: Option<Tool>,
    pub amount: Option<Amount>,
    pub stop: Option<Stop>,
    pub passes: &'static str,
    pub consequences: Vec<Consequence>,
    pub waits_for: Vec<usize>,
    pub checks: Vec<String>,
    pub proof: String,
    pub cautions: Vec<Caution>,
}

impl DraftStep {
    pub fn new(
        interface: Interface,
        stage: Stage,
        operation: Operation,
        title: impl Into<String>,
        why: impl Into<String>,
    ) -> Self {
        Self {
            interface,
            stage,
            end: End::Both,
            operation,
            title: title.into(),
            why: why.into(),
            tool: None,
            amount: None,
            stop: None,
            passes: passes_of(operation),
            consequences: Vec::new(),
            waits_for: Vec::new(),
            checks: Vec::new(),
            proof: String::new(),
            cautions: Vec::new(),
        }
    }
}

/// The plan in the making.
pub(super) struct Draft<'a> {
    pub sheet: &'a FrameSheet,
    pub rule: DecisionRule,
    pub tables: Tables<'a>,
    questions: Vec<Question>,
    steps: Vec<DraftStep>,
    interfaces: Vec<InterfaceReport>,
    cautions: BTreeSet<Caution>,
    weak: Vec<WeakFigure>,
}

impl<'a> Draft<'a> {
    pub fn new(sheet: &'a FrameSheet, tables: Tables<'a>) -> Self {
        Self {
            sheet,
            rule: sheet.rule,
            tables,
            questions: Vec::new(),
            steps: Vec::new(),
            interfaces: Vec::new(),
            cautions: BTreeSet::from([Caution::MakersLimits]),
            weak: Vec::new(),
        }
    }

    /// Asks a question once; gives its number.
    pub fn ask(
        &mut self,
        interface: Interface,
        ask: impl Into<String>,
        why: impl Into<String>,
        instrument: impl Into<String>,
    ) -> usize {
        let ask = ask.into();
        if let Some(known) = self
            .questions
            .iter()
            .find(|q| q.interface == interface && q.ask == ask)
        {
            return known.number;
        }
        let number = self.questions.len() + 1;
        self.questions.push(Question {
            number,
            interface,
            ask,
            why: why.into(),
            instrument: instrument.into(),
        });
        number
    }

    pub fn step(&mut self, step: DraftStep) {
        if !matches!(
            step.operation,
            Operation::Leave | Operation::Refer | Operation::Check
        ) {
            self.cautions.insert(Caution::Dust);
        }
        if matches!(
            step.operation,
            Operation::Ream | Operation::Chase | Operation::Tap | Operation::Face
        ) {
            self.cautions.insert(Caution::Cutting);
            self.cautions.insert(Caution::TurnOneWay);
        }
        self.cautions.extend(step.cautions.iter().copied());
        self.steps.push(step);
    }

    pub fn caution(&mut self, caution: Caution) {
        self.cautions.insert(caution);
    }

    pub fn report(&mut self, report: InterfaceReport) {
        for finding in &report.findings {
            if let Some(grade) = finding.grade {
                self.weak_figure(
                    if finding.owner.is_empty() {
                        format!("{}: {}", report.title, finding.what)
                    } else {
                        format!("{}: {} ({})", report.title, finding.what, finding.owner)
                    },
                    grade,
                );
            }
        }
        self.interfaces.push(report);
    }

    /// Lists a figure that should be checked before it is relied on.
    pub fn weak_figure(&mut self, what: String, grade: Grade) {
        let weak = matches!(
            grade,
            Grade::Memory | Grade::CommonPractice | Grade::Derived | Grade::SecondHand
        );
        if weak && !self.weak.iter().any(|w| w.what == what) {
            self.weak.push(WeakFigure { what, grade });
            self.cautions.insert(Caution::WeakFigures);
        }
    }

    /// Numbers the questions so that each instrument is picked up once. Gives the new number of each old one.
    fn group_questions(&mut self) -> Vec<usize> {
        let mut tools: Vec<String> = Vec::new();
        for question in &self.questions {
            if !tools.contains(&question.instrument) {
                tools.push(question.instrument.clone());
            }
        }
        let mut order: Vec<usize> = (0..self.questions.len()).collect();
        order.sort_by_key(|i| {
            self.questions
                .get(*i)
                .and_then(|q| tools.iter().position(|t| *t == q.instrument))
        });
        let mut numbers = alloc::vec![0; order.len()];
        for (new, old) in order.iter().enumerate() {
            if let (Some(question), Some(number)) =
                (self.questions.get_mut(*old), numbers.get_mut(*old))
            {
                question.number = new + 1;
                *number = new + 1;
            }
        }
        self.questions.sort_by_key(|q| q.number);
        numbers
    }

    /// Puts the steps in order. Ties keep the order in which the interfaces were planned.
    pub fn finish(mut self) -> Plan {
        let renumbered = self.group_questions();
        let count = self.steps.len();
        let mut wanted: Vec<(usize, usize, &'static str)> = Vec::new();
        for (i, before) in self.steps.iter().enumerate() {
            for (j, after) in self.steps.iter().enumerate() {
                if i != j
                    && let Some(reason) = must_precede(before, after)
                {
                    wanted.push((i, j, reason));
                }
            }
        }
        let mut placed: Vec<usize> = Vec::with_capacity(count);
        // The rules below contain no circle (tested); should one ever arise, the steps keep the planned order.
        while let Some(next) = {
            let mut open = (0..count).filter(|j| !placed.contains(j));
            let free = |j: &usize| wanted.iter().all(|(i, k, _)| k != j || placed.contains(i));
            open.clone().find(free).or_else(|| open.next())
        } {
            placed.push(next);
        }
        let number_of = |index: usize| placed.iter().position(|p| *p == index).map_or(0, |p| p + 1);
        let order = wanted
            .iter()
            .map(|(i, j, reason)| Edge {
                before: number_of(*i),
                after: number_of(*j),
                reason,
            })
            .collect();
        let mut steps: Vec<Step> = self
            .steps
            .into_iter()
            .enumerate()
            .map(|(index, s)| Step {
                number: number_of(index),
                interface: s.interface,
                operation: s.operation,
                title: s.title,
                why: s.why,
                tool: s.tool,
                amount: s.amount,
                stop: s.stop,
                passes: s.passes,
                consequences: s.consequences,
                waits_for: {
                    let mut waits: Vec<usize> = s
                        .waits_for
                        .iter()
                        .filter_map(|old| renumbered.get(old.wrapping_sub(1)).copied())
                        .collect();
                    waits.sort_unstable();
                    waits.dedup();
                    waits
                },
                checks: s.checks,
                proof: s.proof,
                cautions: s.cautions,
            })
            .collect();
        steps.sort_by_key(|s| s.number);
        Plan {
            frame: self.sheet.frame.clone(),
            invented: self.sheet.invented,
            questions: self.questions,
            steps,
            order,
            interfaces: self.interfaces,
            cautions: self.cautions.into_iter().collect(),
            weak_figures: self.weak,
        }
    }
}

/// How many passes to expect. Nobody prints a depth a pass for a hand cutter, so the rule is the trade's (common practice):
/// cut little, look, cut again only after measuring.
const fn passes_of(operation: Operation) -> &'static str {
    match operation {
        Operation::Face => "one, of the least depth; a second only after a new survey",
        Operation::Ream => "one slow pass the whole depth; another only after measuring",
        Operation::Chase | Operation::Tap => "one, backed off and cleared as often as it tightens",
        Operation::Clean | Operation::Check | Operation::Leave | Operation::Refer => "",
    }
}

/// The rules of the order of work (common practice; see the crate's guide), each with its reason.
fn must_precede(before: &DraftStep, after: &DraftStep) -> Option<&'static str> {
    use Interface::{Brake, HeadLower, HeadUpper, SeatTube, ShellSide, Thread};
    let head = |i: Interface| matches!(i, HeadUpper | HeadLower);
    if before.interface == SeatTube && before.stage == Stage::Bore && after.interface != SeatTube {
        return Some("the seat tube comes first, so that the frame can be held by a post");
    }
    if before.interface == after.interface && before.stage < after.stage {
        return Some(match (before.stage, after.stage) {
            (Stage::Clean, _) => {
                "clean before cutting, so that the cutter follows metal and not paint"
            }
            (Stage::Thread, Stage::Face) => {
                "thread before face: the facing tool pilots on the thread"
            }
            (Stage::Bore, Stage::Face) => "bore before face: the facing tool pilots on the bore",
            (Stage::Bore, Stage::Thread) => "hole before thread",
            _ => "check after the cut",
        });
    }
    match (before.interface, after.interface) {
        (ShellSide(Side::Drive | Side::NonDrive), ShellSide(_))
            if before.stage == Stage::Thread && after.stage == Stage::Face =>
        {
            Some("both threads before either face: the facing tool is guided through both")
        }
        (a, b)
            if head(a) && head(b) && before.stage == Stage::Bore && after.stage == Stage::Face =>
        {
            Some("both bores before either face: the pilot is centred in the opposite bore")
        }
        (Thread(_), Brake(_))
            if before.stage == Stage::Thread
                && after.stage == Stage::Face
                && before.end == after.end
                && before.end != End::Both =>
        {
            Some("axle thread before brake mount: the facing tool pilots on the axle")
        }
        (HeadLower, Interface::Crown)
            if before.stage == Stage::Face && after.stage == Stage::Check =>
        {
            Some("a lower face that was cut brings the crown closer")
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests;
