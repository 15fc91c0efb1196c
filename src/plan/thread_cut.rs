//! The cuts in a thread: chasing, opening a hole, tapping.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Operation, Stop, Tool};
use super::caution::Caution;
use super::facts::{Allowance, CutLimit};
use super::permit::{Identity, Pilot, Request, rule};
use super::sheet::{Heard, Limited};
use super::site::{Site, Wish, covered, take, tool};
use super::thread::Bench;
use super::work::{Draft, PlaceWork};
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::fit::MaterialKind;
use crate::judge::{MinorHeld, ThreadSeen, extremes};
use crate::measure::Reading;
use crate::quantity::in_mm;

/// Stops that end a thread: its own end, and a depth that somebody wrote.
fn ends(bench: &Bench<'_>, own: &'static str) -> Vec<Stop> {
    let mut stops = Vec::new();
    if let Some((_, words)) = Heard::of(bench.limits, Limited::Depth).and_then(|h| h.at_most()) {
        stops.push(Stop {
            limit: format!("depth of thread {words}").into(),
            to_go: None,
            grade: Some(Grade::Shop),
            sources: Vec::new(),
        });
    }
    stops.push(Stop {
        limit: own.into(),
        to_go: None,
        grade: None,
        sources: Vec::new(),
    });
    stops
}

fn request<'a>(
    site: &Site<'_>,
    work: &PlaceWork,
    bench: &'a Bench<'a>,
    operation: Operation,
) -> Request<'a> {
    Request {
        place: &bench.place,
        operation,
        material: bench.joint.material,
        bonded: bench.joint.bonded,
        consent: bench.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: bench.identity.clone(),
        metal_lost: bench.now.lost(),
        makers_shape: false,
        pilot: Pilot::There,
        needed: None,
        to_size: false,
        allowance: Allowance::default(),
        stops: Vec::new(),
        waits: Vec::new(),
        decision: site.rule,
    }
}

fn wish<'a>(bench: &'a Bench<'_>, operation: Operation) -> Wish<'a> {
    Wish {
        place: &bench.place,
        joint: bench.joint_path,
        readings: bench.field("minor"),
        operation,
        only_coating: covered(bench.now.coating)
            && !matches!(bench.now.state, Some(ThreadSeen::Uncut)),
    }
}

fn cutter(code: &'static str, bench: &Bench<'_>) -> Tool {
    Tool {
        hand: Some(bench.hand),
        ..tool(code, format!("{} {code}, {}-hand", bench.size, bench.hand))
    }
}

/// Follows a thread that is there.
pub(super) fn chase(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let ruling = rule(Request {
        stops: ends(
            bench,
            "the end of the existing thread; and any cutting of bright metal along the flanks",
        ),
        ..request(site, work, bench, Operation::Chase)
    });
    let wish = wish(bench, Operation::Chase);
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let crossed = bench.now.state == Some(ThreadSeen::Crossed);
    let why = if crossed {
        "clean first, then follow the old thread from its good end; stop at the first resistance that a hand feels"
    } else if covered(bench.now.coating) {
        "paint in the thread; the chaser takes it out and no more"
    } else {
        "the thread is fouled or rough at its start"
    };
    let words = format!(
        "Chase the {}: {}, {}-hand",
        bench.what, bench.size, bench.hand
    );
    let mut draft = finish(
        Draft::cut_plain(permit, words, why).with(cutter("chaser", bench)),
        bench,
    );
    if crossed {
        draft = draft.checking("no verdict before the gauge: a crossed thread that takes a part by hand may still have lost its pitch diameter");
    }
    work.steps.push(draft);
}

/// What every thread that is cut or followed carries.
fn finish(draft: Draft, bench: &Bench<'_>) -> Draft {
    let mut draft = draft
        .turned(bench.hand.tighten())
        .checking(match bench.hole() {
            Some(hole) => format!("plain hole {} ({})", hole.limits, hole.owner),
            None => format!(
                "no limits are published for {}: the mating part decides, no looseness may be felt",
                bench.size
            ),
        });
    if let Some(guide) = &bench.guided {
        draft = draft.guided(guide.clone());
    }
    if let Some(proof) = bench.proof {
        draft = draft.proved(proof);
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
    let ruling = rule(Request {
        metal_lost: true,
        stops: ends(bench, "the end of the existing thread"),
        // A thread that is gone is referred whatever else is open.
        identity: Identity::Known,
        contradicted: false,
        material: bench.joint.material.or(Some(MaterialKind::Metal)),
        bonded: false,
        ..request(site, work, bench, Operation::Chase)
    });
    let wish = Wish {
        only_coating: false,
        ..wish(bench, Operation::Chase)
    };
    let _ = take(work, ruling, &wish);
    work.cures.extend(
        super::cures::of_thread(site.tables, bench)
            .into_iter()
            .map(super::Fact::from),
    );
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
    let cap = CutLimit::new(
        LimitKind::Other,
        format!("hole at most {} ({})", in_mm(high), held.owner),
        most.less(&hole),
        held.limits.grade(),
    )
    .map(|c| c.citing(held.evidence));
    let what = format!("hole of the {}", bench.what);
    let ruling = rule(Request {
        needed: Some((Counted::Diameter, least.less(&hole))),
        allowance: Allowance::new(cap.ok().into_iter().collect::<Vec<_>>()),
        ..request(site, work, bench, Operation::Ream)
    });
    let wish = wish(bench, Operation::Ream);
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    work.steps.push(
        Draft::cut_plain(
            permit,
            format!(
                "Open the {what} to between {} and {}",
                in_mm(low),
                in_mm(high)
            ),
            format!(
                "{} is {} too small for {}: the tap would jam or break",
                in_mm(hole.value()),
                in_mm(low - hole.value()),
                bench.size
            ),
        )
        .with(tool(
            "reamer",
            format!("drill or reamer that finishes inside {}", held.limits),
        ))
        .turned(crate::thread::Turn::Clockwise)
        .checking("the hole with a caliper in two directions"),
    );
    true
}

/// Cuts a thread into a plain hole; waits for the reading of this field where the hole is not shown to be right.
pub(super) fn tap(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, waits: Option<String>) {
    let ruling = rule(Request {
        stops: ends(
            bench,
            "the depth that the part needs, and what lies behind the hole",
        ),
        waits: waits.into_iter().collect(),
        ..request(site, work, bench, Operation::Tap)
    });
    let wish = wish(bench, Operation::Tap);
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let words = format!(
        "Tap the {}: {}, {}-hand",
        bench.what, bench.size, bench.hand
    );
    let draft =
        Draft::cut_plain(permit, words, "the thread is not cut yet").with(cutter("tap", bench));
    work.steps.push(finish(draft, bench));
}
