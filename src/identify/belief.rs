//! Beliefs: names that move the ranking a little and are contradicted openly.

use super::entry::{Entry, every};
use super::kind::Kind;
use super::{Observation, Options};
use crate::standard::{
    Axle, BrakeMount, CrownSeat, HeadSeat, Seatpost, Shell, Steerer, ThreadUse, find,
};
use crate::{Error, ErrorKind};

/// Most beliefs that are weighed; nobody has more to say about one place.
const MOST: usize = 8;
/// A shorter word begins too many names.
const SHORTEST: usize = 3;

#[derive(Debug, Clone, Copy)]
struct Held<'a> {
    name: &'a str,
    factor: f64,
    /// Whether a code or alias is called so; else the name covers every row that begins with it.
    exact: bool,
}

/// The beliefs of one question, each known to name at least one row.
#[derive(Debug, Clone, Copy)]
pub(super) struct Beliefs<'a> {
    held: [Option<Held<'a>>; MOST],
}

impl<'a> Beliefs<'a> {
    pub fn resolve(
        kind: Kind,
        observations: &'a [Observation],
        options: &Options<'_>,
    ) -> Result<Self, Error> {
        let mut held = [None; MOST];
        let mut slots = held.iter_mut();
        for observation in observations {
            let Observation::Belief { name, from } = observation else {
                continue;
            };
            let name = name.trim();
            let (mut exact, mut begins) = (false, false);
            every(kind, options, true, &mut |entry| {
                exact = exact || entry.is_called(name);
                begins = begins || (name.len() >= SHORTEST && entry.begins_with(name));
            });
            if !exact && !begins {
                return Err(unknown(kind, name));
            }
            let Some(slot) = slots.next() else {
                return Err(Error::new(
                    ErrorKind::TooLarge,
                    "belief",
                    name,
                    "more than eight beliefs about one place",
                    "state those that come from the part itself",
                ));
            };
            *slot = Some(Held {
                name,
                factor: from.factor(),
                exact,
            });
        }
        Ok(Self { held })
    }

    fn about(&self, entry: Entry<'_>) -> impl Iterator<Item = f64> {
        self.held.iter().flatten().filter_map(move |h| {
            let meant = if h.exact {
                entry.is_called(h.name)
            } else {
                entry.begins_with(h.name)
            };
            meant.then_some(h.factor)
        })
    }

    /// Factor on the prior of a row; two at most, however many beliefs agree.
    pub fn factor(&self, entry: Entry<'_>) -> f64 {
        libm::fmin(self.about(entry).product(), 2.0)
    }

    /// Whether any belief means this row.
    pub fn mean(&self, entry: Entry<'_>) -> bool {
        self.about(entry).next().is_some()
    }

    pub fn is_empty(&self) -> bool {
        self.held.iter().flatten().next().is_none()
    }
}

/// The error of the family's own look-up, which offers the nearest names.
fn unknown(kind: Kind, name: &str) -> Error {
    let found = match kind {
        Kind::Shell => find::<Shell>(name).err(),
        Kind::HeadTube => find::<HeadSeat>(name).err(),
        Kind::Crown => find::<CrownSeat>(name).err(),
        Kind::Steerer => find::<Steerer>(name).err(),
        Kind::SeatTube | Kind::Seatpost => find::<Seatpost>(name).err(),
        Kind::Brake(_) => find::<BrakeMount>(name).err(),
        Kind::Dropout(_) => find::<Axle>(name).err(),
        Kind::Axle | Kind::Hanger | Kind::Pedal | Kind::Thread => find::<ThreadUse>(name).err(),
    };
    found.map_or_else(
        || {
            Error::new(
                ErrorKind::UnknownName,
                "belief",
                name,
                alloc::format!("names a part of another place than a {}", kind.words()),
                "name a standard of this place",
            )
        },
        |e| e.within("belief"),
    )
}
