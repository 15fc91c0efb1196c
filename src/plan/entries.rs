//! Two entries of a sheet for one place: one place where they agree, a contradiction where they do not.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::ThreadFact;
use super::sheet::{BrakeSheet, ThreadSheet};
use super::work::PlaceWork;
use crate::judge::Instrument;
use crate::standard::Place;

/// What several entries can state of one place.
pub(super) trait Joined: Clone {
    /// Adds what another entry says, and gives the fields that the two state differently.
    fn join(&mut self, other: &Self) -> Vec<&'static str>;
    fn note(&self) -> Option<&String>;
}

/// Entries by their places, in the order of the sheet.
pub(super) fn by_place<E>(
    entries: impl IntoIterator<Item = E>,
    place: impl Fn(&E) -> Place,
) -> Vec<Vec<E>> {
    let mut known: BTreeMap<Place, usize> = BTreeMap::new();
    let mut all: Vec<Vec<E>> = Vec::new();
    for entry in entries {
        let index = *known.entry(place(&entry)).or_insert(all.len());
        match all.get_mut(index) {
            Some(here) => here.push(entry),
            None => all.push(Vec::from([entry])),
        }
    }
    all
}

/// The entries of one place as one: what one leaves out another may say.
pub(super) fn one<'e, S: Joined + 'e>(
    work: &mut PlaceWork,
    entries: impl Iterator<Item = (&'e String, &'e S)>,
) -> Option<S> {
    let mut all: Option<(&String, S)> = None;
    for (path, sheet) in entries {
        if let Some(note) = sheet.note().filter(|note| !work.notes.contains(note)) {
            work.notes.push(note.clone());
        }
        let Some((first, all)) = &mut all else {
            all = Some((path, sheet.clone()));
            continue;
        };
        for field in all.join(sheet) {
            let (first, other) = (first.clone(), path.clone());
            let differ = ThreadFact::EntriesDiffer {
                first,
                other,
                field,
            };
            work.contradicts(differ, format!("{path}.{field}"), Instrument::Eye);
        }
    }
    all.map(|(_, sheet)| sheet)
}

macro_rules! joined {
    ($sheet:ty { states { $($stated:ident),* } reads { $($read:ident),* } adds { $($added:ident),* } }) => {
        impl Joined for $sheet {
            fn join(&mut self, other: &Self) -> Vec<&'static str> {
                let mut apart = Vec::new();
                $(match (&self.$stated, &other.$stated) {
                    (None, Some(_)) => self.$stated.clone_from(&other.$stated),
                    (Some(here), Some(there)) if here != there => apart.push(stringify!($stated)),
                    _ => {}
                })*
                $(if self.$read.is_empty() {
                    self.$read.clone_from(&other.$read);
                } else if !other.$read.is_empty() && self.$read != other.$read {
                    apart.push(stringify!($read));
                })*
                $(self.$added.extend_from_slice(&other.$added);)*
                apart
            }
            fn note(&self) -> Option<&String> {
                self.note.as_ref()
            }
        }
    };
}

joined!(ThreadSheet {
    states {
        material, believed, confirmed, consent, coating, name, mate, pitch, hand, state, go, not_go, go_after,
        not_go_after, replaceable
    }
    reads {}
    adds { minor, limits, passes }
});
joined!(BrakeSheet {
    states {
        material, believed, confirmed, consent, coating, system, thickness, bolt, pad_clearance, pad_length, underside
    }
    reads { points, after, passes }
    adds { limits }
});
