//! The cuts in a thread: chasing, opening a hole, tapping.

use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Operation, Stop, Tool};
use super::caution::Caution;
use super::facts::{Allowance, CommonFact, CutLimit};
use super::permit::{Identity, Permit, Request};
use super::sheet::{Heard, Limited};
use super::site::{Site, covered, permitted, tool};
use super::thread::Bench;
use super::work::{Draft, PlaceWork};
use super::{Fact, ThreadFact, ThreadTask, cures};
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::fit::MaterialKind;
use crate::judge::{MinorHeld, ThreadSeen, extremes};
use crate::measure::Reading;
use crate::thread::Turn;

/// Stops that end a thread: a depth that somebody wrote, and its own end.
fn ends(bench: &Bench<'_>, own: ThreadFact) -> Vec<Stop> {
    let stop = |limit: Fact, grade: Option<Grade>| Stop {
        limit,
        to_go: None,
        grade,
        sources: Vec::new(),
    };
    let depth = Heard::of(bench.limits, Limited::Depth).and_then(|heard| heard.most());
    let depth = depth.map(|(_, limit)| stop(limit.into(), Some(Grade::Shop)));
    depth.into_iter().chain([stop(own.into(), None)]).collect()
}

fn request<'a>(
    site: &Site<'_>,
    work: &PlaceWork,
    bench: &'a Bench<'_>,
    operation: Operation,
) -> Request<'a> {
    Request {
        contradicted: !work.contradictions.is_empty(),
        identity: bench.identity.clone(),
        metal_lost: bench.now.lost(),
        ..bench.joint.request(&bench.place, operation, site.rule)
    }
}

fn permit(work: &mut PlaceWork, bench: &Bench<'_>, request: Request<'_>) -> Option<Permit> {
    let now = &bench.now;
    let coated = covered(now.coating) && now.state != Some(ThreadSeen::Uncut) && !now.lost();
    permitted(
        work,
        request,
        bench.joint_path,
        bench.field("minor"),
        coated,
    )
}

fn cutter(kind: &'static str, bench: &Bench<'_>) -> Tool {
    let (size, hand) = (bench.size, bench.hand);
    Tool {
        hand: Some(hand),
        ..tool(kind, ThreadFact::Cutter { kind, size, hand })
    }
}

/// Follows a thread that is there.
pub(super) fn chase(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let asked = Request {
        stops: ends(bench, ThreadFact::EndOfThread),
        ..request(site, work, bench, Operation::Chase)
    };
    let Some(permit) = permit(work, bench, asked) else {
        return;
    };
    let crossed = bench.now.state == Some(ThreadSeen::Crossed);
    let task = ThreadTask::Chase {
        what: bench.what.clone(),
        size: bench.size,
        hand: bench.hand,
        crossed,
        painted: covered(bench.now.coating),
    };
    let mut draft = finish(
        Draft::cut(permit, task).with(cutter("chaser", bench)),
        bench,
    );
    if crossed {
        draft = draft.checking(ThreadFact::GaugeBeforeVerdict);
    }
    work.steps.push(draft);
}

/// What every thread that is cut or followed carries.
fn finish(draft: Draft, bench: &Bench<'_>) -> Draft {
    let size = bench.size;
    let check = match bench.hole() {
        Some(hole) => ThreadFact::CheckHole {
            limits: hole.limits,
            by: hole.owner,
        },
        None => ThreadFact::PartDecides { size },
    };
    let mut draft = draft.turned(bench.hand.tighten()).checking(check);
    if bench.both_guide {
        draft = draft.guided(ThreadFact::GuidedByBoth);
    }
    if let Some(part) = bench.part {
        draft = draft.proved(ThreadFact::RunsIn { part });
    }
    if bench.joint.material == Some(MaterialKind::Titanium) {
        draft = draft.minding(Caution::Titanium);
    }
    if bench.joint.bonded {
        draft = draft.minding(Caution::BondedInsert);
    }
    draft
}

/// Metal is lost: told, referred, and what could be done.
pub(super) fn lost(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let asked = Request {
        stops: ends(bench, ThreadFact::EndOfThread),
        // A thread that is gone is referred whatever else is open.
        identity: Identity::Known,
        contradicted: false,
        material: bench.joint.material.or(Some(MaterialKind::Metal)),
        bonded: false,
        ..request(site, work, bench, Operation::Chase)
    };
    let _ = permit(work, bench, asked);
    work.cures.extend(cures::of_thread(site.tables, bench));
}

/// Opens a hole that is too small; whether that is permitted.
pub(super) fn open_hole(
    site: &Site<'_>,
    work: &mut PlaceWork,
    bench: &Bench<'_>,
    held: &MinorHeld,
) -> bool {
    let readings: Vec<Reading> = bench.now.minor.iter().map(|p| p.reading).collect();
    let (Some(hole), Some(low), Some(high)) = (
        extremes(&readings).first().copied(),
        held.limits.lower().known(),
        held.limits.upper().known(),
    ) else {
        return false;
    };
    let (Ok(least), Ok(most)) = (Reading::exact(low), Reading::exact(high)) else {
        return false;
    };
    let limit = CommonFact::AtMost {
        on: Limited::Minor,
        most: high,
        by: held.owner.clone(),
    };
    let cap = CutLimit::new(
        LimitKind::Other,
        limit,
        most.less(&hole),
        held.limits.grade(),
    );
    let cap = cap.map(|cap| cap.citing(held.evidence));
    let asked = Request {
        needed: Some((Counted::Diameter, least.less(&hole))),
        allowance: Allowance::new(cap.into_iter().collect::<Vec<_>>()),
        ..request(site, work, bench, Operation::Ream)
    };
    let Some(permit) = permit(work, bench, asked) else {
        return false;
    };
    let task = ThreadTask::OpenHole {
        what: bench.what.clone(),
        least: low,
        most: high,
        hole: hole.value(),
        size: bench.size,
    };
    let within = held.limits;
    work.steps.push(
        Draft::cut(permit, task)
            .with(tool("reamer", ThreadFact::HoleCutter { within }))
            .turned(Turn::Clockwise)
            .checking(ThreadFact::HoleAgain),
    );
    true
}

/// Cuts a thread into a plain hole; waits for the reading of this field where the hole is not shown to be right.
pub(super) fn tap(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, waits: Option<String>) {
    let asked = Request {
        stops: ends(bench, ThreadFact::DepthOfPart),
        waits: waits.into_iter().collect(),
        ..request(site, work, bench, Operation::Tap)
    };
    let Some(permit) = permit(work, bench, asked) else {
        return;
    };
    let task = ThreadTask::Tap {
        what: bench.what.clone(),
        size: bench.size,
        hand: bench.hand,
    };
    let draft = Draft::cut(permit, task).with(cutter("tap", bench));
    work.steps.push(finish(draft, bench));
}
