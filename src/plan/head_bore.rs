//! The bore of a head-tube end: on metal or over paint, against its limits, and what becomes of it.

use alloc::vec::Vec;

use super::facts::{HeadAsk, HeadFact, HeadTask};
use super::head::{HeadEnd, Named, as_read, by_hand, came_off, heard, is_integrated, shown};
use super::head_ream::{Window, ream};
use super::sheet::{Limited, Marks};
use super::work::{ByHand, Draft, PlaceWork};
use crate::fit::MaterialKind;
use crate::judge::{Doubt, Instrument, Remedy, Verdict, extremes};
use crate::measure::{Outcome, Reading, Surface, settled_below};
use crate::standard::HeadSeat;

/// Judges the bore and plans its work; whether it will be another bore afterwards.
pub(super) fn bore(end: &HeadEnd<'_>, named: &Named<'_>, work: &mut PlaceWork) -> bool {
    let now = &end.now;
    let readings = now.readings();
    wall(end, &readings, work);
    if let Some(off) = now.removed {
        came_off(off, end.field("passes"), Instrument::BoreGauge, work);
    }
    if readings.is_empty() {
        heard(end, Limited::Bore, "bore", &[], work);
        work.ask(end.field("bore"), HeadAsk::Bore);
        return clean(end, named.row, work);
    }
    let window = Window::of(end, named.row);
    let Some(mut verdict) = window.judged(end) else {
        work.settled(as_read("bore", &readings));
        return clean(end, named.row, work);
    };
    let by = |remedy: Remedy| verdict.cures.iter().any(|c| c.by == remedy);
    let under = by(Remedy::Ream) || by(Remedy::RoundOut);
    if by(Remedy::Sleeve) {
        too_large(&verdict, under, work);
        return false;
    }
    if now.covered {
        work.found(&verdict);
        return clean(end, named.row, work);
    }
    if under {
        let low = window.low.as_ref().map(|low| low.at);
        let small = |size: Reading| low.is_some_and(|low| settled_below(size.value(), low));
        let mut bore = now.bore.iter();
        let shown = bore.any(|p| p.surface == Surface::OnMetal && small(p.reading));
        if !shown {
            not_shown(&mut verdict);
        }
        return too_small(end, named, &window, &verdict, shown, work);
    }
    if verdict.outcome == Outcome::Undecided
        && window.is_known()
        && now.on_metal()
        && let Some(next) = verdict.next.first()
    {
        let field = if now.worked { "passes" } else { "bore" };
        work.ask(end.field(field), next.ask.clone());
    }
    read_again(end, work);
    work.found(&verdict);
    false
}

/// What was not read on metal is not shown too small.
fn not_shown(verdict: &mut Verdict) {
    let out = |o: Option<Outcome>| o == Some(Outcome::NonconformityShown);
    for finding in verdict.findings.iter_mut().filter(|f| out(f.outcome)) {
        finding.outcome = Some(Outcome::Undecided);
        finding.doubt = Some(Doubt::NotSaid);
    }
    verdict.outcome = Outcome::Undecided;
}

/// What was read before the coating came off is read again.
fn read_again(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    if end.now.outdated() {
        work.ask(end.field("passes"), HeadAsk::BareBore);
    }
}

/// The wall that is left, by the last readings.
fn wall(end: &HeadEnd<'_>, bore: &[Reading], work: &mut PlaceWork) {
    let (outside, bores) = (extremes(&end.sheet.outside), extremes(bore));
    let both = outside.first().zip(bores.last());
    let left = both.map(|(outside, bore)| outside.less(bore).scaled(0.5));
    if let Some(left) = left {
        work.settled(shown(left, HeadFact::Wall { left }));
    }
    if heard(end, Limited::Wall, "wall left", left.as_slice(), work) {
        work.out = true;
        work.cure(HeadFact::WallTooThin);
    }
}

/// Too large somewhere: a reamer cures no place that is over its limit.
fn too_large(verdict: &Verdict, small_too: bool, work: &mut PlaceWork) {
    work.out = true;
    work.found(verdict);
    if small_too {
        work.leave(HeadFact::NotReamed);
    }
    work.cure(HeadFact::LargerCup);
    work.cure(HeadFact::InsertOrTube);
    work.cure(HeadFact::NeverByForce);
}

/// Too small, and not known to be covered.
fn too_small(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    window: &Window<'_>,
    verdict: &Verdict,
    shown: bool,
    work: &mut PlaceWork,
) -> bool {
    work.found(verdict);
    let mut waits = Vec::new();
    if !shown && end.now.worked {
        work.ask(end.field("passes"), HeadAsk::CoatingLeft);
        return true;
    }
    if !shown {
        waits.push(end.field("coating"));
        work.ask(end.field("coating"), HeadAsk::BoreCoating);
    }
    if end.now.marks == Some(Marks::Torn) {
        let at = end.place.clone();
        let task = HeadTask::LeaveTorn { at };
        work.steps.push(Draft::refer(&end.place, task));
        return true;
    }
    let before = (work.questions.len(), work.steps.len());
    ream(end, named, window, waits, work);
    if (work.questions.len(), work.steps.len()) == before && shown {
        // Nothing here cures it for now.
        work.out = true;
    }
    true
}

/// A covered seat is cleaned by hand, whatever it is made of. Whether it is covered.
fn clean(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) -> bool {
    read_again(end, work);
    if !end.now.covered {
        return false;
    }
    let (material, bearing) = (end.joint.material, is_integrated(row));
    let task = HeadTask::Clean {
        at: end.place.clone(),
        again: end.now.worked,
        to_metal: material.is_some_and(MaterialKind::is_metal) && !bearing,
        bearing,
    };
    let mut draft = by_hand(&end.place, ByHand::Clean, task, material);
    if bearing {
        draft = draft.checking(HeadFact::InkBearing);
        draft = draft.proved(HeadFact::BearingDropsIn);
    }
    work.steps.push(draft);
    true
}
