//! Places that are looked at and not cut: dropout faces, the clamp slot, the underside of a mount, chain-guide tabs.

use alloc::string::String;
use alloc::vec::Vec;

use super::site::{Site, covered};
use super::work::{ByHand, Draft, PlaceWork};
use crate::standard::Place;

pub(super) fn plan(site: &Site<'_>) -> Vec<PlaceWork> {
    site.sheet
        .others()
        .into_iter()
        .map(|(place, sheet)| {
            let mut work = PlaceWork::new(place.clone());
            let common = sheet.common();
            work.notes.extend(common.note.map(String::from));
            work.hear(common.limits);
            let Some(coating) = common.coating else {
                return work;
            };
            work.measured = true;
            match place {
                Place::Dropout(..) if covered(Some(coating)) => work.leave(String::from(
                    "the face: the toothed ends of an axle bite through the paint; only a thick build-up is taken down by hand",
                )),
                Place::BrakeUnderside(_) if covered(Some(coating)) => work.steps.push(
                    Draft::by_hand_plain(
                        &place,
                        ByHand::Clean,
                        "Take the paint off where the bolt heads sit, by hand",
                        "a bolt head on paint loses its tension when the paint gives way",
                    )
                    .minding(super::Caution::Brakes),
                ),
                Place::SeatTubeSlot if covered(Some(coating)) => work.steps.push(Draft::by_hand_plain(
                    &place,
                    ByHand::Clean,
                    "Clean the slot and its ears by hand, and round the end of the slot",
                    "paint in the slot keeps the clamp from closing, and an edge scores the post",
                )),
                _ => work.leave(String::from("nothing is cut there")),
            }
            work
        })
        .collect()
}
