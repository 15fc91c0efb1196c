//! Places that are looked at and not cut: dropout faces, the clamp slot, the underside of a mount, chain-guide tabs.

use alloc::string::String;
use alloc::vec::Vec;

use super::site::{Site, covered};
use super::work::{ByHand, Draft, PlaceWork};
use super::{Caution, MountFact, MountTask, OtherSheet};
use crate::standard::Place;

pub(super) fn plan(site: &Site<'_>) -> Vec<PlaceWork> {
    let others = site.sheet.others().into_iter();
    others.map(|(place, sheet)| one(place, sheet)).collect()
}

fn one(place: Place, sheet: &OtherSheet) -> PlaceWork {
    let common = sheet.common();
    let by_hand = |task: MountTask| Draft::by_hand(&place, ByHand::Clean, task);
    let mut work = PlaceWork::new(place.clone());
    work.notes.extend(common.note.map(String::from));
    work.hear(common.limits);
    work.measured = common.coating.is_some();
    let painted = covered(common.coating);
    let underside = || by_hand(MountTask::CleanUnderside).minding(Caution::Brakes);
    match place {
        _ if !work.measured => {}
        Place::Dropout(..) if painted => work.leave(MountFact::AxleBites),
        Place::BrakeUnderside(_) if painted => work.steps.push(underside()),
        Place::SeatTubeSlot if painted => work.steps.push(by_hand(MountTask::CleanSlot)),
        _ => work.leave(MountFact::NothingCut),
    }
    work
}
