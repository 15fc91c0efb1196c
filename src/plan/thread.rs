//! What is done to a known thread: followed, cut, left, or not touched.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Operation, Stop, Tool};
use super::caution::Caution;
use super::permit::{Identity, Pilot, Request, rule};
use super::sheet::{
    Coating, CoatingLeft, GaugeResult, Heard, Limited, MakerLimit, Marks, PartDid, ThreadPass,
    ThreadState,
};
use super::site::{Joint, Site, Wish, covered, on_surface, take, tool};
use super::work::{ByHand, Draft, PlaceWork};
use crate::evidence::{Grade, Text};
use crate::face::{Allowance, CutLimit, LimitKind};
use crate::fit::MaterialKind;
use crate::judge::{Finding, extremes, sizes_against};
use crate::measure::{Limits, Outcome, Placed, Reading, Surface, settled_below};
use crate::quantity::in_mm;
use crate::standard::Place;
use crate::thread::{Hand, Member, ThreadLimits, ThreadSize, limits_of_size, usual_class};

/// What a thread was and what the last pass made of it.
#[derive(Debug, Clone)]
pub(super) struct Now {
    pub state: Option<ThreadState>,
    pub go: Option<GaugeResult>,
    pub not_go: Option<GaugeResult>,
    pub minor: Vec<Placed>,
    pub coating: Option<Coating>,
    pub worked: bool,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
    /// Where it is written what the GO gauge does now, below the path of the thread.
    pub go_field: String,
}

/// What a sheet states of a thread before and after the work.
pub(super) struct Stated<'a> {
    pub state: Option<ThreadState>,
    pub go: Option<GaugeResult>,
    pub not_go: Option<GaugeResult>,
    pub go_after: Option<GaugeResult>,
    pub not_go_after: Option<GaugeResult>,
    pub minor: &'a [Placed],
    pub passes: &'a [ThreadPass],
    pub coating: Option<Coating>,
}

/// The thread as the last pass left it: a thread that takes its gauge by hand is sound, whatever it was before, unless metal
/// is gone.
pub(super) fn now(stated: &Stated<'_>) -> Now {
    let mut now = Now {
        state: stated.state,
        go: stated.go,
        not_go: stated.not_go,
        minor: on_surface(stated.minor, stated.coating),
        coating: stated.coating,
        worked: false,
        marks: None,
        part: None,
        go_field: String::from(
            if stated.go_after.is_some() || stated.not_go_after.is_some() {
                "go_after"
            } else {
                "go"
            },
        ),
    };
    if let Some(last) = stated.passes.len().checked_sub(1) {
        now.go_field = format!("passes[{last}].go");
    }
    let first = ThreadPass {
        go: stated.go_after,
        not_go: stated.not_go_after,
        ..ThreadPass::default()
    };
    let format_1 = stated.go_after.is_some() || stated.not_go_after.is_some();
    for pass in format_1.then_some(&first).into_iter().chain(stated.passes) {
        now.worked = true;
        now.coating = match pass.coating_left {
            Some(CoatingLeft::Remains) => stated.coating,
            _ => Some(Coating::Bare),
        };
        if pass.go.is_some() || pass.not_go.is_some() {
            now.go = pass.go;
            now.not_go = pass.not_go.or(now.not_go);
        }
        if !pass.minor.is_empty() {
            now.minor = pass
                .minor
                .iter()
                .map(|reading| Placed {
                    surface: Surface::OnMetal,
                    ..Placed::from(*reading)
                })
                .collect();
        }
        now.marks = pass.marks.or(now.marks);
        now.part = pass.part.or(now.part);
        let runs_in = pass.go == Some(GaugeResult::Passed) || pass.part == Some(PartDid::Fits);
        now.state = match now.state {
            Some(ThreadState::Fouled | ThreadState::Rough | ThreadState::Uncut) | None
                if runs_in =>
            {
                Some(ThreadState::Sound)
            }
            other => other,
        };
        if now.part == Some(PartDid::Fits) && now.go.is_none() {
            now.go = Some(GaugeResult::Passed);
        }
        if pass.part == Some(PartDid::Loose) {
            now.state = Some(ThreadState::Loose);
        }
    }
    now
}

impl Now {
    /// Metal is gone: a chaser restores nothing.
    pub(super) fn lost(&self) -> bool {
        self.not_go == Some(GaugeResult::Failed)
            || matches!(self.state, Some(ThreadState::Loose | ThreadState::Stripped))
            || self.marks == Some(Marks::Torn)
    }

    /// It cannot guide a cutter: torn out, loose, or cut across.
    pub(super) fn guides(&self) -> bool {
        !self.lost() && !matches!(self.state, Some(ThreadState::Crossed | ThreadState::Uncut))
    }
}

/// A known thread on the bench.
pub(super) struct Bench<'a> {
    pub place: Place,
    /// The path of the thread in the sheet.
    pub path: String,
    /// What it is called: `shell, drive side`, `rear axle`.
    pub what: String,
    pub size: ThreadSize,
    pub hand: Hand,
    pub joint: Joint<'a>,
    /// The path that states material and consent.
    pub joint_path: &'a str,
    pub limits: &'a [MakerLimit],
    pub now: Now,
    pub identity: Identity,
    /// What guides the chaser, where it is more than the thread itself.
    pub guided: Option<Text>,
    pub proof: Option<&'static str>,
    /// The part that carries it can be replaced.
    pub replaceable: bool,
}

/// Limits of the internal thread in the class that is usual for it; `None` where none are published.
pub(super) fn usual_limits(size: &ThreadSize) -> Option<ThreadLimits> {
    limits_of_size(size, &usual_class(size, Member::Internal)?).ok()
}

pub(super) fn work(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let limits = usual_limits(&bench.size);
    holes(site, work, bench, limits.as_ref());
    gauges(work, bench);
    let now = &bench.now;
    if now.lost() {
        lost(site, work, bench);
        return;
    }
    match now.state {
        Some(ThreadState::Uncut) => tap(site, work, bench, limits.as_ref()),
        Some(ThreadState::Crossed) if bench.replaceable => {
            work.steps.push(
                Draft::by_hand(
                    &bench.place,
                    ByHand::Replace,
                    format!("Replace the {}", bench.what),
                    "a crossed thread may have lost its pitch diameter, and this part can be had new",
                )
                .checking("alignment of the new one against the wheel, before the derailleur goes on"),
            );
        }
        Some(ThreadState::Sound) if now.go == Some(GaugeResult::Passed) => {
            work.leave
                .push(String::from("the thread: sound, takes its part by hand"));
        }
        Some(ThreadState::Sound) | None
            if !covered(now.coating) && now.go != Some(GaugeResult::Failed) =>
        {
            if now.go == Some(GaugeResult::Passed) {
                work.leave
                    .push(String::from("the thread: takes its part by hand"));
            } else {
                work.ask(
                    format!("{}.{}", bench.path, now.go_field),
                    "does the mating part or a GO gauge screw through by hand?",
                    "a sound thread is left alone",
                    "GO gauge or a known good part",
                );
            }
        }
        _ => chase(site, work, bench, limits.as_ref()),
    }
    hanger_check(work, bench);
}

/// The hole against the limits of its thread.
fn holes(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, limits: Option<&ThreadLimits>) {
    if bench.now.minor.is_empty() {
        return;
    }
    let readings: Vec<Reading> = bench.now.minor.iter().map(|p| p.reading).collect();
    let heard = Heard::of(bench.limits, Limited::Minor);
    let (held, owner, evidence) = match (&heard, limits) {
        (Some(heard), _) => (heard.limits, heard.owner(), None),
        (None, Some(limits)) => (
            limits.minor,
            format!("{}, {}", bench.size, limits.class),
            Some(limits.evidence()),
        ),
        (None, None) => return,
    };
    let mut found = sizes_against("hole", &readings, &held, &owner, evidence, site.rule);
    let over_paint = bench
        .now
        .minor
        .iter()
        .any(|p| p.surface == Surface::OverPaint);
    if over_paint && bench.now.state != Some(ThreadState::Uncut) {
        found = found.read_on_paint(true, site.tables);
    }
    // A hole that is out is dealt with by the state of its thread: chased, gauged, opened or referred below. A thread that is
    // left as it is has nothing that deals with it.
    let left = matches!(bench.now.state, Some(ThreadState::Sound) | None)
        && bench.now.go == Some(GaugeResult::Passed);
    if found.outcome != Some(Outcome::NonconformityShown) || !left {
        work.settled(found);
        return;
    }
    let narrow = extremes(&readings)
        .last()
        .zip(held.upper().known())
        .is_none_or(|(largest, most)| !settled_below(most, largest.value()));
    let on_metal = bench
        .now
        .minor
        .iter()
        .all(|p| p.surface == Surface::OnMetal);
    if narrow && !on_metal {
        work.ask(
            format!("{}.coating", bench.path),
            "what covers the thread?",
            "its hole reads under its limits and its part goes in: paint narrows a hole",
            "eye, light",
        );
        work.settled(found);
    } else if heard.is_some() {
        work.cures.push(String::from(
            "the gauge goes in and the hole is out of its maker's limits: its maker decides, no cut mends it",
        ));
        work.fact(found);
    } else {
        work.contradicts(
            format!(
                "its part goes in by hand, and its hole is out: {}",
                found.words
            ),
            format!("{}.not_go", bench.path),
            "NOT GO gauge, caliper",
        );
        work.settled(found);
    }
}

/// What the gauges did, and what of it contradicts the state that was written down.
fn gauges(work: &mut PlaceWork, bench: &Bench<'_>) {
    let now = &bench.now;
    let go = now.go.map(|result| match result {
        GaugeResult::Passed => "GO went through by hand",
        GaugeResult::Failed => "GO did not go through by hand",
    });
    let not_go = now.not_go.map(|result| match result {
        GaugeResult::Passed => "NOT GO stopped within two turns",
        GaugeResult::Failed => "NOT GO went in further than two turns",
    });
    let words: Vec<&str> = go.into_iter().chain(not_go).collect();
    if !words.is_empty() {
        work.settled(Finding::stated("gauge", words.join("; ")));
    }
    let field = format!("{}.state", bench.path);
    match (now.state, now.go, now.not_go) {
        (_, Some(GaugeResult::Failed), Some(GaugeResult::Failed)) => work.contradicts(
            "GO does not enter and NOT GO does: the thread is cut across, or the gauge is for another thread",
            field,
            "both gauges again, pitch gauge",
        ),
        (Some(ThreadState::Sound), Some(GaugeResult::Failed), _) => work.contradicts(
            "the thread is called sound, and GO does not go through",
            field,
            "GO gauge, light",
        ),
        (Some(ThreadState::Sound), _, Some(GaugeResult::Failed)) => work.contradicts(
            "the thread is called sound, and NOT GO goes in",
            field,
            "NOT GO gauge",
        ),
        (
            Some(ThreadState::Stripped | ThreadState::Loose),
            Some(GaugeResult::Passed),
            Some(GaugeResult::Passed),
        ) => work.contradicts(
            "the thread is called torn or loose, and both gauges call it sound",
            field,
            "both gauges again, a known good part",
        ),
        _ => {}
    }
}

/// Stops that end a thread: its own end, and a depth that somebody wrote.
fn ends(bench: &Bench<'_>, own: &'static str) -> Vec<Stop> {
    let mut stops = Vec::new();
    if let Some((depth, words)) = Heard::of(bench.limits, Limited::Depth).and_then(|h| h.at_most())
    {
        let _ = depth;
        stops.push(Stop {
            limit: Text::Owned(format!("depth of thread {words}")),
            to_go: None,
            grade: Some(Grade::Shop),
            sources: Vec::new(),
        });
    }
    stops.push(Stop {
        limit: Text::Borrowed(own),
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
        window: false,
        allowance: Allowance::default(),
        stops: Vec::new(),
        waits: Vec::new(),
        decision: site.rule,
    }
}

fn wish<'a>(bench: &'a Bench<'_>, operation: Operation, what: &'a str) -> Wish<'a> {
    Wish {
        place: &bench.place,
        joint: bench.joint_path,
        readings: format!("{}.minor", bench.path),
        operation,
        what,
        only_coating: covered(bench.now.coating)
            && !matches!(bench.now.state, Some(ThreadState::Uncut)),
        instrument: "plug of known size, small-hole gauge",
    }
}

fn cutter(code: &'static str, bench: &Bench<'_>) -> Tool {
    Tool {
        hand: Some(bench.hand),
        ..tool(code, format!("{} {code}, {}-hand", bench.size, bench.hand))
    }
}

fn chase(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, limits: Option<&ThreadLimits>) {
    let what = format!("thread of the {}", bench.what);
    let ruling = rule(Request {
        stops: ends(
            bench,
            "the end of the existing thread; and any cutting of bright metal along the flanks",
        ),
        ..request(site, work, bench, Operation::Chase)
    });
    let wish = wish(bench, Operation::Chase, &what);
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let crossed = bench.now.state == Some(ThreadState::Crossed);
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
        Draft::cut(permit, words, why).with(cutter("chaser", bench)),
        bench,
        limits,
    );
    if crossed {
        draft = draft.checking("no verdict before the gauge: a crossed thread that takes a part by hand may still have lost its pitch diameter");
    }
    work.steps.push(draft);
}

/// What every thread that is cut or followed carries.
fn finish(draft: Draft, bench: &Bench<'_>, limits: Option<&ThreadLimits>) -> Draft {
    let mut draft = draft.turned(bench.hand.tighten()).checking(match limits {
        Some(limits) => format!("plain hole {} ({})", limits.minor, limits.class),
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
fn lost(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    work.settled(Finding {
        outcome: Some(Outcome::NonconformityShown),
        grade: Some(Grade::CommonPractice),
        ..Finding::stated(
            "thread",
            "worn or torn out: a chaser restores a thread that is fouled, never one that has lost metal; the hole alone proves nothing about it",
        )
    });
    if bench.replaceable {
        work.steps.push(
            Draft::by_hand(
                &bench.place,
                ByHand::Replace,
                format!("Replace the {}", bench.what),
                "its thread has lost metal, and this part can be had new",
            )
            .checking("alignment of the new one against the wheel, before the derailleur goes on"),
        );
        return;
    }
    let what = format!("thread of the {}", bench.what);
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
        ..wish(bench, Operation::Chase, &what)
    };
    let _ = take(work, ruling, &wish);
    work.cures.extend(super::cures::of_thread(bench));
}

/// A plain hole that is to get a thread: is it the right hole?
fn tap(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>, limits: Option<&ThreadLimits>) {
    let what = bench.what.clone();
    let Some(limits) = limits else {
        work.steps.push(Draft::refer(
            &bench.place,
            format!(
                "Do not tap the {what}: no hole size is published for {}",
                bench.size
            ),
            "the tap's maker names the hole, and the frame maker the thread",
        ));
        return;
    };
    let readings: Vec<Reading> = bench.now.minor.iter().map(|p| p.reading).collect();
    let found = sizes_against("hole", &readings, &limits.minor, "", None, site.rule);
    let ends_of = extremes(&readings);
    let (smallest, largest) = (ends_of.first().copied(), ends_of.last().copied());
    let (low, high) = (limits.minor.lower().known(), limits.minor.upper().known());
    match (found.outcome, smallest, low, high) {
        (Some(Outcome::NonconformityShown), Some(hole), Some(low), Some(_))
            if settled_below(hole.value(), low)
                && largest.is_some_and(|l| {
                    limits
                        .minor
                        .upper()
                        .known()
                        .is_none_or(|h| !settled_below(h, l.value()))
                }) =>
        {
            if open_hole(site, work, bench, limits, &hole) {
                tap_step(site, work, bench, limits, None);
            }
        }
        (Some(Outcome::NonconformityShown), ..) => {
            let over = largest.zip(high).map_or(String::new(), |(l, h)| {
                format!(
                    ": the hole is {} too large for {}",
                    in_mm(l.value() - h),
                    bench.size
                )
            });
            work.steps.push(Draft::refer(
                &bench.place,
                format!("Do not tap the {what}{over}"),
                "too little thread would be left; insert or next pattern, by the frame maker or a qualified builder",
            ));
        }
        (Some(Outcome::ConformityShown), ..) => tap_step(site, work, bench, limits, None),
        _ => {
            let field = format!("{}.minor", bench.path);
            work.ask(
                field.clone(),
                format!("hole diameter, in two directions; wanted {}", limits.minor),
                "the hole decides how much thread there will be",
                "plug of known size, small-hole gauge",
            );
            tap_step(site, work, bench, limits, Some(field));
        }
    }
}

/// Opens a hole that is too small; whether that is permitted.
fn open_hole(
    site: &Site<'_>,
    work: &mut PlaceWork,
    bench: &Bench<'_>,
    limits: &ThreadLimits,
    hole: &Reading,
) -> bool {
    let (Some(low), Some(high)) = (limits.minor.lower().known(), limits.minor.upper().known())
    else {
        return false;
    };
    let Ok(target) = Reading::exact(low) else {
        return false;
    };
    let needed = target.less(hole);
    let mut caps = Vec::new();
    let cap = |to, what: String, grade| {
        let most = Reading::exact(to).ok()?.less(hole);
        CutLimit::new(LimitKind::Other, what, most, grade).ok()
    };
    caps.extend(
        cap(
            high,
            format!(
                "hole at most {} ({}, {})",
                in_mm(high),
                bench.size,
                limits.class
            ),
            limits.grade(),
        )
        .map(|c| c.citing(Some(limits.evidence()))),
    );
    if let Some((most, words)) = Heard::of(bench.limits, Limited::Minor).and_then(|h| h.at_most()) {
        caps.extend(cap(most, format!("hole {words}"), Grade::Shop));
    }
    let what = format!("hole of the {}", bench.what);
    let ruling = rule(Request {
        needed: Some((Counted::Diameter, needed)),
        window: true,
        allowance: Allowance::new(caps),
        ..request(site, work, bench, Operation::Ream)
    });
    let wish = wish(bench, Operation::Ream, &what);
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    work.steps.push(
        Draft::cut(
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
            format!("drill or reamer that finishes inside {}", limits.minor),
        ))
        .turned(crate::thread::Turn::Clockwise)
        .checking("the hole with a caliper in two directions"),
    );
    true
}

fn tap_step(
    site: &Site<'_>,
    work: &mut PlaceWork,
    bench: &Bench<'_>,
    limits: &ThreadLimits,
    waits: Option<String>,
) {
    let ruling = rule(Request {
        stops: ends(
            bench,
            "the depth that the part needs, and what lies behind the hole",
        ),
        waits: waits.into_iter().collect(),
        ..request(site, work, bench, Operation::Tap)
    });
    let wish = wish(bench, Operation::Tap, &bench.what);
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let words = format!(
        "Tap the {}: {}, {}-hand",
        bench.what, bench.size, bench.hand
    );
    let draft = Draft::cut(permit, words, "the thread is not cut yet").with(cutter("tap", bench));
    work.steps.push(finish(draft, bench, Some(limits)));
}

/// Alignment after any work at a hanger.
fn hanger_check(work: &mut PlaceWork, bench: &Bench<'_>) {
    if matches!(bench.place, Place::Hanger(_)) && work.steps.iter().any(|s| s.operation().cuts()) {
        work.steps.push(Draft::by_hand(
            &bench.place,
            ByHand::Check,
            format!("Check the alignment of the {}", bench.what),
            "a hanger that was worked at is not straight until that is shown",
        ));
    }
}

/// Limits of a plain hole that a maker wrote.
pub(super) fn heard_minor(limits: &[MakerLimit]) -> Option<Limits> {
    Heard::of(limits, Limited::Minor).map(|heard| heard.limits)
}

/// The thread in words, with what it rests on.
pub(super) fn told(size: &ThreadSize, by: &[&str]) -> String {
    if by.is_empty() {
        format!("{size}: the only listed thread of this place")
    } else {
        format!("{}, by {}", size.to_string(), by.join(" and "))
    }
}
