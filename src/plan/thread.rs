//! What is done to a known thread: followed, cut, left, or not touched. The judge says what it is worth.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::permit::Identity;
use super::sheet::{Heard, Limited, MakerLimit};
use super::site::{Joint, Site, covered};
use super::thread_cut;
use super::thread_now::{Now, cured_by};
use super::work::{ByHand, Draft, PlaceWork};
use crate::evidence::Text;
use crate::judge::{
    Finding, HoleToTap, MinorHeld, OwnLimits, Passed, Remedy, ThreadSeen, Verdict, minor_held,
    spread,
};
use crate::measure::{Outcome, Reading};
use crate::standard::Place;
use crate::thread::{Hand, ShellThreads, Side, ThreadSize};

/// A known thread on the bench.
pub(super) struct Bench<'a> {
    pub place: Place,
    /// The path of the thread in the sheet.
    pub path: String,
    /// What it is called: `shell, drive side`, `rear axle`.
    pub what: String,
    pub size: ThreadSize,
    /// Threads that nothing tells apart from it, and that one chaser follows with it.
    pub alike: &'a [ThreadSize],
    pub hand: Hand,
    pub joint: Joint<'a>,
    /// The path that states material and consent.
    pub joint_path: &'a str,
    pub limits: &'a [MakerLimit],
    pub now: Now,
    pub identity: Identity,
    /// Outside diameter of the metal around it, where that was measured.
    pub outside: Option<Reading>,
    /// Both threads of its shell, and which of them it is.
    pub shell: Option<(ShellThreads, Side)>,
    /// What guides the chaser, where it is more than the thread itself.
    pub guided: Option<Text>,
    pub proof: Option<&'static str>,
    /// The part that carries it can be replaced.
    pub replaceable: bool,
}

impl Bench<'_> {
    pub(super) fn field(&self, name: &str) -> String {
        format!("{}.{name}", self.path)
    }

    /// What the hole is held against; `None` where nobody publishes or writes anything.
    pub(super) fn hole(&self) -> Option<MinorHeld> {
        minor_held(&self.size, None, self.own_hole().as_ref())
            .ok()
            .flatten()
    }

    /// What the bore of a thread that is there is held against. Of threads that nothing tells apart the widest limits count,
    /// and where one of them has none, no bore is shown to be out.
    fn bore(&self) -> Option<OwnLimits> {
        if let Some(own) = self.own_hole() {
            return Some(own);
        }
        let mut wide: Option<OwnLimits> = None;
        for size in core::iter::once(&self.size).chain(self.alike) {
            let held = minor_held(size, None, None).ok().flatten()?;
            wide = Some(match wide {
                None => OwnLimits::of(held.limits, held.owner),
                Some(so_far) => OwnLimits::of(
                    so_far.limits.wider(&held.limits).ok()?,
                    format!("{} or {}", so_far.owner, held.owner),
                ),
            });
        }
        wide
    }

    /// What its maker writes of the hole.
    fn own_hole(&self) -> Option<OwnLimits> {
        Heard::of(self.limits, Limited::Minor).map(|h| OwnLimits::of(h.limits, h.owner()))
    }

    fn replace(&self, why: &'static str) -> Draft {
        Draft::by_hand_plain(
            &self.place,
            ByHand::Replace,
            format!("Replace the {}", self.what),
            why,
        )
        .checking("alignment of the new one against the wheel, before the derailleur goes on")
    }
}

pub(super) fn work(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    gauges(work, bench);
    if bench.now.state == Some(ThreadSeen::Uncut) && bench.now.go.or(bench.now.not_go).is_none() {
        uncut(site, work, bench);
    } else {
        cut(site, work, bench);
    }
    hanger_check(work, bench);
}

/// A thread that is there.
fn cut(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let now = &bench.now;
    let mut asked = now.asked(Some((bench.size, bench.hand)), site.rule);
    if bench.alike.is_empty() {
        asked.limits = bench.own_hole();
    } else {
        asked.limits = bench.bore();
        if asked.limits.is_none() && !asked.minor.is_empty() {
            let read: Vec<Reading> = asked.minor.drain(..).map(|p| p.reading).collect();
            work.settled(Finding {
                readings: read.clone(),
                ..Finding::stated(
                    "bore over the crests",
                    format!(
                        "{}; not held against limits, since threads with other bores look the same by what was read",
                        spread(&read)
                    ),
                )
            });
        }
    }
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    // What is out is dealt with below: chased, referred, or out for good.
    if said.outcome != Outcome::NonconformityShown || now.lost() || cured_by(&said, Remedy::Chase) {
        work.found(&said);
    }
    let contradictions = said.findings.iter().filter(|f| f.fact.is_contradiction());
    for found in contradictions {
        work.contradicts(
            found.fact.clone(),
            bench.field(if now.not_go.is_none() {
                "not_go"
            } else {
                "state"
            }),
            "GO and NOT GO gauge, pitch gauge, light",
        );
    }
    if now.lost() {
        if bench.replaceable {
            work.steps
                .push(bench.replace("its thread has lost metal, and this part can be had new"));
        } else {
            thread_cut::lost(site, work, bench);
        }
        return;
    }
    let sound = matches!(now.state, Some(ThreadSeen::Sound | ThreadSeen::TakesPart));
    let goes = now.go == Some(Passed::Passed);
    let clean = sound || (now.state.is_none() && !covered(now.coating));
    let to_chase = cured_by(&said, Remedy::Chase);
    // A bore that is out is out, whatever runs in by hand.
    let out = said.outcome == Outcome::NonconformityShown && !to_chase;
    match now.state {
        Some(ThreadSeen::Crossed) if bench.replaceable => work.steps.push(bench.replace(
            "a crossed thread may have lost its pitch diameter, and this part can be had new",
        )),
        // The judge wants to know more before anything is done.
        Some(ThreadSeen::Loose) => ask_next(work, bench, &said),
        _ if out => work.verdict(&said),
        Some(ThreadSeen::TakesPart) if !to_chase => {
            work.leave(String::from("the thread: takes its part by hand"))
        }
        _ if clean && goes => work.leave(String::from(if sound {
            "the thread: sound, takes its part by hand"
        } else {
            "the thread: takes its part by hand"
        })),
        _ if clean && now.go.is_none() => work.ask_plain(
            bench.field("go"),
            "does the mating part or a GO gauge screw through by hand?",
            "a sound thread is left alone",
            "GO gauge or a known good part",
        ),
        _ => thread_cut::chase(site, work, bench),
    }
}

fn ask_next(work: &mut PlaceWork, bench: &Bench<'_>, said: &Verdict) {
    if let Some(next) = said.next.first() {
        work.ask_plain(
            bench.field("not_go"),
            format!("{}; or another good part", next.ask),
            "loose with one part says nothing yet: the part may be the small one",
            next.ask.with().to_string(),
        );
    }
}

/// A plain hole that is to get a thread: is it the right hole?
fn uncut(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let asked = HoleToTap {
        thread: bench.size,
        hole: bench.now.minor.clone(),
        limits: bench.own_hole(),
        rule: Some(site.rule),
    };
    let Some(hole) = bench.hole() else {
        work.steps.push(Draft::refer_plain(
            &bench.place,
            format!(
                "Do not tap the {}: no hole size is published for {}",
                bench.what, bench.size
            ),
            "the tap's maker names the hole, and the frame maker the thread",
        ));
        return;
    };
    let said = match asked.answer(site.tables) {
        Ok(said) => said,
        // Nothing was read yet.
        Err(_) => {
            let field = ask_hole(work, bench, &hole);
            thread_cut::tap(site, work, bench, Some(field));
            return;
        }
    };
    work.found(&said);
    match said.outcome {
        Outcome::ConformityShown => thread_cut::tap(site, work, bench, None),
        Outcome::Undecided => {
            let field = ask_hole(work, bench, &hole);
            thread_cut::tap(site, work, bench, Some(field));
        }
        Outcome::NonconformityShown if cured_by(&said, Remedy::Ream) => {
            if thread_cut::open_hole(site, work, bench, &hole) {
                thread_cut::tap(site, work, bench, None);
            }
        }
        Outcome::NonconformityShown => work.steps.push(Draft::refer_plain(
            &bench.place,
            format!("Do not tap the {}: {}", bench.what, lower(&said.words())),
            "too little thread would be left; insert or next pattern, by the frame maker or a qualified builder",
        )),
    }
}

fn ask_hole(work: &mut PlaceWork, bench: &Bench<'_>, hole: &MinorHeld) -> String {
    let field = bench.field("minor");
    work.ask_plain(
        field.clone(),
        format!("hole diameter, in two directions; wanted {}", hole.limits),
        "the hole decides how much thread there will be",
        "plug of known size, small-hole gauge",
    );
    field
}

/// What the gauges did.
fn gauges(work: &mut PlaceWork, bench: &Bench<'_>) {
    let now = &bench.now;
    let go = now.go.map(|result| match result {
        Passed::Passed => "GO went through by hand",
        Passed::Failed => "GO did not go through by hand",
    });
    let not_go = now.not_go.map(|result| match result {
        Passed::Passed => "NOT GO stopped within two turns",
        Passed::Failed => "NOT GO went in further than two turns",
    });
    let words: Vec<&str> = go.into_iter().chain(not_go).collect();
    if !words.is_empty() {
        work.settled(Finding::stated("gauge", words.join("; ")));
    }
}

/// The sentence inside another.
fn lower(sentence: &str) -> String {
    let mut chars = sentence.trim_end_matches('.').chars();
    chars.next().map_or_else(String::new, |first| {
        first.to_lowercase().chain(chars).collect()
    })
}

/// Alignment after any work at a hanger.
fn hanger_check(work: &mut PlaceWork, bench: &Bench<'_>) {
    if matches!(bench.place, Place::Hanger(_)) && work.steps.iter().any(|s| s.operation().cuts()) {
        work.steps.push(Draft::by_hand_plain(
            &bench.place,
            ByHand::Check,
            format!("Check the alignment of the {}", bench.what),
            "a hanger that was worked at is not straight until that is shown",
        ));
    }
}

/// The thread in words, with what it rests on.
pub(super) fn told(size: &ThreadSize, by: &[&str]) -> String {
    if by.is_empty() {
        format!("{size}: the only listed thread of this place")
    } else {
        format!("{}, by {}", size, by.join(" and "))
    }
}
