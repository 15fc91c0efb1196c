//! What is done to a known thread: chased, tapped, left or referred.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::draft::{Draft, DraftStep, Stage};
use super::facing::covered;
use super::plan::{Amount, Interface, InterfaceReport, Operation, Stop, Tool};
use super::sheet::{Coating, GaugeResult, JointMaterial, ThreadState};
use crate::judge::{Finding, sizes_against};
use crate::measure::{Outcome, Reading, settled_below};
use crate::quantity::in_mm;
use crate::standard::End;
use crate::thread::{Hand, Member, ThreadLimits, ThreadSize, limits_of_size, usual_class};

/// A thread on the bench, of whatever interface.
pub(super) struct OnBench<'a> {
    pub interface: Interface,
    pub end: End,
    pub name: String,
    pub size: ThreadSize,
    pub hand: Hand,
    pub material: JointMaterial,
    pub coating: Coating,
    pub state: ThreadState,
    pub go: GaugeResult,
    pub not_go: GaugeResult,
    pub minor: &'a [Reading],
    /// What guides the chaser.
    pub pilot: String,
    pub proof: String,
    pub waits_for: Vec<usize>,
}

/// Limits of the internal thread in the class that is usual for it; `None` where none are published.
pub(super) fn usual_limits(size: &ThreadSize) -> Option<ThreadLimits> {
    limits_of_size(size, &usual_class(size, Member::Internal)?).ok()
}

/// Chases, taps, leaves or refers one thread.
pub(super) fn work(draft: &mut Draft<'_>, bench: OnBench<'_>, report: &mut InterfaceReport) {
    let limits = usual_limits(&bench.size);
    let tool = |verb: &str| Tool {
        cutter: format!("{} {verb}, {}-hand", bench.size, bench.hand),
        hand: Some(bench.hand),
        turn: bench.hand.tighten(),
        pilot: bench.pilot.clone(),
    };
    if let (Some(limits), false) = (&limits, bench.minor.is_empty()) {
        let class = format!("{}, {}", bench.size, limits.class);
        let mut found = sizes_against(
            "hole",
            bench.minor,
            &limits.minor,
            &class,
            Some(limits.evidence()),
            draft.rule,
        );
        if covered(bench.coating) && bench.state != ThreadState::Uncut {
            found = found.read_on_paint(true, draft.tables);
        }
        report.findings.push(found);
    }
    gauged(&bench.name, bench.go, bench.not_go, report);
    let mut checks = Vec::from([
        String::from("GO gauge or a known good part: screws through by hand"),
        String::from("NOT GO gauge: stops within two turns from either end"),
    ]);
    if let Some(limits) = &limits {
        checks.push(format!("plain hole {} ({})", limits.minor, limits.class));
    } else {
        checks.push(format!(
            "no limits are published for {}: the mating part decides, no looseness may be felt",
            bench.size
        ));
    }
    if bench.not_go == GaugeResult::Failed
        || matches!(bench.state, ThreadState::Loose | ThreadState::Stripped)
    {
        let mut step = referred(
            &bench,
            format!(
                "Do not cut the thread of the {}: it is worn or torn out",
                bench.name
            ),
            "a chaser restores a thread that is fouled, never one that has lost metal; the minor diameter alone proves nothing about it",
        );
        step.checks.push(String::from("pitch diameter with a NOT GO gauge; then the frame maker or a qualified builder decides: insert, next pattern, sleeve"));
        draft.step(step);
        return;
    }
    match bench.state {
        ThreadState::Uncut => {
            let tool = tool("tap");
            tap(draft, bench, limits.as_ref(), tool, checks);
        }
        ThreadState::Crossed => {
            let mut step = chase(
                &bench,
                tool("chaser"),
                checks,
                "clean first, then follow the old thread from its good end; stop at the first resistance that a hand feels",
            );
            step.checks.insert(0, String::from("no verdict before the gauge: a crossed thread that takes a part by hand may still have lost its pitch diameter"));
            draft.step(step);
        }
        // A gauge that goes through by hand says more than paint beside the thread.
        ThreadState::Sound if bench.go == GaugeResult::Passed => {
            report.leave.push(format!(
                "the thread of the {}: sound, takes its part by hand",
                bench.name
            ));
        }
        ThreadState::Sound | ThreadState::Unstated
            if !covered(bench.coating) && bench.go != GaugeResult::Failed =>
        {
            draft.ask(
                bench.interface,
                format!(
                    "{}: does the mating part or a GO gauge screw through by hand?",
                    bench.name
                ),
                "a sound thread is left alone",
                "GO gauge or a known good part",
            );
            report.leave.push(format!(
                "the thread of the {}, until it has been tried",
                bench.name
            ));
        }
        _ => {
            let why = if covered(bench.coating) {
                "paint in the thread; the chaser takes it out and no more"
            } else {
                "the thread is fouled or rough at its start"
            };
            draft.step(chase(&bench, tool("chaser"), checks, why));
        }
    }
}

/// A thread that is not cut here.
fn referred(bench: &OnBench<'_>, title: String, why: &str) -> DraftStep {
    let mut step = DraftStep::new(bench.interface, Stage::Thread, Operation::Refer, title, why);
    step.end = bench.end;
    step
}

/// What the gauges did, as it was written down.
fn gauged(name: &str, go: GaugeResult, not_go: GaugeResult, report: &mut InterfaceReport) {
    let go = match go {
        GaugeResult::Untried => None,
        GaugeResult::Passed => Some("GO went through by hand"),
        GaugeResult::Failed => Some("GO did not go through by hand"),
    };
    let not_go = match not_go {
        GaugeResult::Untried => None,
        GaugeResult::Passed => Some("NOT GO stopped within two turns"),
        GaugeResult::Failed => Some("NOT GO went in further than two turns"),
    };
    let words: Vec<&str> = go.into_iter().chain(not_go).collect();
    if !words.is_empty() {
        report
            .findings
            .push(Finding::stated(format!("gauge, {name}"), words.join("; ")));
    }
}

fn chase(bench: &OnBench<'_>, tool: Tool, checks: Vec<String>, why: &str) -> DraftStep {
    let mut step = DraftStep::new(
        bench.interface,
        Stage::Thread,
        Operation::Chase,
        format!(
            "Chase the {}: {}, {}-hand",
            bench.name, bench.size, bench.hand
        ),
        why,
    );
    step.end = bench.end;
    if bench.material == JointMaterial::Carbon {
        step.operation = Operation::Clean;
        step.stage = Stage::Clean;
        step.title = format!(
            "Clean the thread of the {} by hand; chase it only with the frame maker's written consent",
            bench.name
        );
        step.why = String::from("a thread bonded into laminate turns out with the cutter");
        step.passes = "";
        step.cautions = Vec::from([Caution::Carbon, Caution::BondedInsert]);
    } else {
        step.tool = Some(tool);
        step.stop = Some(Stop {
            limit: String::from(
                "the end of the existing thread; and any cutting of bright metal along the flanks",
            ),
            left: None,
            grade: None,
            sources: Vec::new(),
        });
    }
    step.waits_for.clone_from(&bench.waits_for);
    step.checks = checks;
    step.proof.clone_from(&bench.proof);
    if bench.material == JointMaterial::Titanium {
        step.cautions.push(Caution::Titanium);
    }
    step
}

/// A plain hole that is to get a thread: is it the right hole?
fn tap(
    draft: &mut Draft<'_>,
    bench: OnBench<'_>,
    limits: Option<&ThreadLimits>,
    tool: Tool,
    checks: Vec<String>,
) {
    let mut step = DraftStep::new(
        bench.interface,
        Stage::Thread,
        Operation::Tap,
        format!(
            "Tap the {}: {}, {}-hand",
            bench.name, bench.size, bench.hand
        ),
        "the thread is not cut yet",
    );
    step.end = bench.end;
    step.tool = Some(tool);
    step.checks = checks;
    step.proof.clone_from(&bench.proof);
    step.waits_for.clone_from(&bench.waits_for);
    let Some(limits) = limits else {
        let title = format!(
            "Do not tap the {}: no hole size is published for {}",
            bench.name, bench.size
        );
        draft.step(referred(
            &bench,
            title,
            "the tap's maker names the hole, and the frame maker the thread",
        ));
        return;
    };
    let found = sizes_against("hole", bench.minor, &limits.minor, "", None, draft.rule);
    let (hole, low, high) = (
        bench.minor.first(),
        limits.minor.lower().known(),
        limits.minor.upper().known(),
    );
    match (found.outcome, hole, low, high) {
        (Some(Outcome::NonconformityShown), Some(hole), Some(low), Some(high))
            if settled_below(hole.value(), low) =>
        {
            let mut ream = DraftStep::new(
                bench.interface,
                Stage::Bore,
                Operation::Ream,
                format!(
                    "Open the hole of the {} to between {} and {}",
                    bench.name,
                    in_mm(low),
                    in_mm(high)
                ),
                format!(
                    "{} is {} too small for {}: the tap would jam or break",
                    in_mm(hole.value()),
                    in_mm(low - hole.value()),
                    bench.size
                ),
            );
            ream.end = bench.end;
            ream.amount = Some(Amount {
                least: low - hole.value(),
                most: high - hole.value(),
                counted: "on diameter",
            });
            ream.stop = Some(Stop {
                limit: format!("hole limits of {}, {}", bench.size, limits.class),
                left: Some(high - hole.value()),
                grade: Some(limits.grade()),
                sources: limits.evidence().sources().to_vec(),
            });
            ream.checks
                .push(String::from("the hole with a caliper in two directions"));
            draft.step(ream);
            draft.step(step);
        }
        (Some(Outcome::NonconformityShown), Some(hole), _, Some(high)) => {
            let title = format!(
                "Do not tap the {}: the hole is {} too large for {}",
                bench.name,
                in_mm(hole.value() - high),
                bench.size
            );
            draft.step(referred(&bench, title, "too little thread would be left; insert or next pattern, by the frame maker or a qualified builder"));
        }
        (None, ..) | (Some(Outcome::Undecided), ..) => {
            let question = draft.ask(
                bench.interface,
                format!(
                    "{}: hole diameter, in two directions; wanted {}",
                    bench.name, limits.minor
                ),
                "the hole decides how much thread there will be",
                "caliper with inside jaws, plug of known size",
            );
            step.waits_for.push(question);
            draft.step(step);
        }
        _ => draft.step(step),
    }
}
