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

/// Follows a thread that is there.
pub(super) fn chase(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let asked = Request {
        stops: ends(bench, ThreadFact::EndOfThread),
        ..request(site, work, bench, Operation::Chase)
    };
    let task = ThreadTask::Chase {
        what: bench.what.clone(),
        size: bench.size,
        hand: bench.hand,
        crossed: bench.now.state == Some(ThreadSeen::Crossed),
        painted: covered(bench.now.coating),
    };
    cut(work, bench, asked, ("chaser", task));
}

/// Cuts a thread into a plain hole; waits for the reading of this field where the hole is not shown to be right.
pub(super) fn tap(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, waits: Option<String>) {
    let asked = Request {
        stops: ends(bench, ThreadFact::DepthOfPart),
        waits: waits.into_iter().collect(),
        ..request(site, work, bench, Operation::Tap)
    };
    let (what, size, hand) = (bench.what.clone(), bench.size, bench.hand);
    cut(
        work,
        bench,
        asked,
        ("tap", ThreadTask::Tap { what, size, hand }),
    );
}

/// A thread that is cut or followed, where that is permitted, with what every one carries.
fn cut(
    work: &mut PlaceWork,
    bench: &Bench<'_>,
    asked: Request<'_>,
    (kind, task): (&'static str, ThreadTask),
) {
    let Some(permit) = permit(work, bench, asked) else {
        return;
    };
    let (size, hand) = (bench.size, bench.hand);
    let cutter = Tool {
        hand: Some(hand),
        ..tool(kind, ThreadFact::Cutter { kind, size, hand })
    };
    let check = match bench.hole() {
        Some(hole) => ThreadFact::CheckHole {
            limits: hole.limits,
            by: hole.owner,
        },
        None => ThreadFact::PartDecides { size },
    };
    let draft = Draft::cut(permit, task).with(cutter);
    let mut draft = draft.turned(hand.tighten()).checking(check);
    if bench.now.state == Some(ThreadSeen::Crossed) {
        draft = draft.checking(ThreadFact::GaugeBeforeVerdict);
    }
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
    work.steps.push(draft);
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

/// Opens a hole that is too small; `None` where that is not permitted.
pub(super) fn open_hole(
    site: &Site<'_>,
    work: &mut PlaceWork,
    bench: &Bench<'_>,
    held: &MinorHeld,
) -> Option<()> {
    let readings: Vec<Reading> = bench.now.minor.iter().map(|p| p.reading).collect();
    let hole = extremes(&readings).first().copied()?;
    let (least, most) = (held.limits.lower().known()?, held.limits.upper().known()?);
    let (on, by) = (Limited::Minor, held.owner.clone());
    let limit = CommonFact::AtMost { on, most, by };
    let left = Reading::exact(most).ok()?.less(&hole);
    let cap = CutLimit::new(LimitKind::Other, limit, left, held.limits.grade()).ok()?;
    let needed = Reading::exact(least).ok()?.less(&hole);
    let asked = Request {
        needed: Some((Counted::Diameter, needed)),
        allowance: Allowance::new([cap.citing(held.evidence)]),
        ..request(site, work, bench, Operation::Ream)
    };
    let permit = permit(work, bench, asked)?;
    let task = ThreadTask::OpenHole {
        what: bench.what.clone(),
        least,
        most,
        hole: hole.value(),
        size: bench.size,
    };
    let within = held.limits;
    let draft = Draft::cut(permit, task)
        .with(tool("reamer", ThreadFact::HoleCutter { within }))
        .turned(Turn::Clockwise)
        .checking(ThreadFact::HoleAgain);
    work.steps.push(draft);
    Some(())
}
