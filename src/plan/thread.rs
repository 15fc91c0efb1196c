//! What is done to a known thread: followed, cut, left, or not touched. The judge says what it is worth.

use alloc::format;
use alloc::string::String;

use super::permit::Identity;
use super::sheet::{Heard, Limited, MakerLimit};
use super::site::{Joint, Site, covered};
use super::thread_now::{Now, cured_by};
use super::work::{ByHand, Draft, PlaceWork};
use super::{Fact, ThreadAsk, ThreadFact, ThreadTask, cures, thread_cut};
use crate::judge::{
    HoleToTap, Instrument, MinorHeld, OwnLimits, Passed, Remedy, ThreadSeen, minor_held,
};
use crate::measure::{Outcome, Reading};
use crate::standard::{Place, ThreadedPart};
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
    /// Both threads of its shell can guide each other's chaser.
    pub both_guide: bool,
    /// What it takes, where that proves it.
    pub part: Option<ThreadedPart>,
    /// The part that carries it can be replaced.
    pub replaceable: bool,
}

impl Bench<'_> {
    pub(super) fn field(&self, name: &str) -> String {
        format!("{}.{name}", self.path)
    }

    /// What the hole is held against; `None` where nobody publishes or writes anything.
    pub(super) fn hole(&self) -> Option<MinorHeld> {
        held(&self.size, self.own_hole().as_ref())
    }

    /// What the bore of a thread that is there is held against, where the judge cannot know it. Of threads that nothing tells
    /// apart the widest limits count, and where one of them has none, no bore is shown to be out.
    fn bore(&self) -> Option<OwnLimits> {
        let own = self.own_hole();
        if own.is_some() || self.alike.is_empty() {
            return own;
        }
        let first = held(&self.size, None)?;
        let wide = OwnLimits::of(first.limits, first.owner);
        self.alike.iter().try_fold(wide, |wide, size| {
            let other = held(size, None)?;
            let limits = wide.limits.wider(&other.limits).ok()?;
            let owner = format!("{} or {}", wide.owner, other.owner);
            Some(OwnLimits::of(limits, owner))
        })
    }

    /// What its maker writes of the hole.
    fn own_hole(&self) -> Option<OwnLimits> {
        Heard::of(self.limits, Limited::Minor).map(|h| OwnLimits::of(h.limits, h.owner()))
    }

    fn replace(&self, lost: bool) -> Draft {
        let what = self.what.clone();
        Draft::by_hand(
            &self.place,
            ByHand::Replace,
            ThreadTask::Replace { what, lost },
        )
        .checking(ThreadFact::AlignNewOne)
    }
}

fn held(size: &ThreadSize, own: Option<&OwnLimits>) -> Option<MinorHeld> {
    minor_held(size, None, own).ok().flatten()
}

pub(super) fn work(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let now = &bench.now;
    if now.state == Some(ThreadSeen::Uncut) && now.go.or(now.not_go).is_none() {
        uncut(site, work, bench);
    } else {
        cut(site, work, bench);
    }
    // Alignment after any work at a hanger.
    if matches!(bench.place, Place::Hanger(_)) && work.steps.iter().any(|s| s.operation().cuts()) {
        let what = bench.what.clone();
        work.steps.push(Draft::by_hand(
            &bench.place,
            ByHand::Check,
            ThreadTask::Align { what },
        ));
    }
}

/// A thread that is there.
fn cut(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let now = &bench.now;
    let mut asked = now.asked(Some((bench.size, bench.hand)), site.rule);
    asked.limits = bench.bore();
    if !bench.alike.is_empty() && asked.limits.is_none() && !asked.minor.is_empty() {
        let read = asked.minor.drain(..).map(|p| p.reading).collect();
        work.settled(ThreadFact::BoreNotHeld { read });
    }
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    let to_chase = cured_by(&said, Remedy::Chase);
    // A bore that is out is out, whatever runs in by hand.
    let out = said.outcome == Outcome::NonconformityShown && !to_chase;
    work.found(&said);
    let contradictions = said.findings.iter();
    for found in contradictions.filter(|f| f.fact.is_contradiction()) {
        let field = if now.not_go.is_none() {
            "not_go"
        } else {
            "state"
        };
        let fact = Fact::from(found.fact.clone());
        work.contradicts(fact, bench.field(field), Instrument::ThreadGauges);
    }
    let sound = matches!(now.state, Some(ThreadSeen::Sound | ThreadSeen::TakesPart));
    let clean = sound || (now.state.is_none() && !covered(now.coating));
    match now.state {
        _ if now.lost() && bench.replaceable => work.steps.push(bench.replace(true)),
        _ if now.lost() => thread_cut::lost(site, work, bench),
        Some(ThreadSeen::Crossed) if bench.replaceable => work.steps.push(bench.replace(false)),
        // More must be known before anything is done.
        Some(ThreadSeen::Loose) => {
            work.ask(bench.field(&now.gauge_field("not_go")), ThreadAsk::NotGo);
        }
        _ if out => {
            work.out = true;
            work.cures.extend(cures::of_verdict(&said));
        }
        Some(ThreadSeen::TakesPart) if !to_chase => work.leave(ThreadFact::TakesPart),
        _ if clean && now.go == Some(Passed::Passed) => work.leave(ThreadFact::TakesPart),
        _ if clean && now.go.is_none() => {
            work.ask(bench.field(&now.gauge_field("go")), ThreadAsk::Go);
        }
        _ => thread_cut::chase(site, work, bench),
    }
}

/// A plain hole that is to get a thread: is it the right hole?
fn uncut(site: &Site<'_>, work: &mut PlaceWork, bench: &Bench<'_>) {
    let what = bench.what.clone();
    let refer = |task: ThreadTask| Draft::refer(&bench.place, task);
    let Some(hole) = bench.hole() else {
        let size = bench.size;
        work.steps.push(refer(ThreadTask::NoHole { what, size }));
        return;
    };
    let asked = HoleToTap {
        thread: bench.size,
        hole: bench.now.minor.clone(),
        limits: bench.own_hole(),
        rule: Some(site.rule),
    };
    // Refused where nothing was read yet.
    let said = asked.answer(site.tables).ok();
    if let Some(said) = &said {
        work.found(said);
    }
    let to_ream = said
        .as_ref()
        .is_some_and(|said| cured_by(said, Remedy::Ream));
    match said.map(|said| said.outcome) {
        Some(Outcome::ConformityShown) => thread_cut::tap(site, work, bench, None),
        None | Some(Outcome::Undecided) => {
            let field = bench.field("minor");
            let wanted = hole.limits;
            work.ask(field.clone(), ThreadAsk::Hole { wanted });
            thread_cut::tap(site, work, bench, Some(field));
        }
        Some(Outcome::NonconformityShown) if to_ream => {
            if thread_cut::open_hole(site, work, bench, &hole).is_some() {
                thread_cut::tap(site, work, bench, None);
            }
        }
        Some(Outcome::NonconformityShown) => {
            work.steps.push(refer(ThreadTask::HoleTooLarge { what }));
        }
    }
}
