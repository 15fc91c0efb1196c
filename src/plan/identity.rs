//! Which standard a place is, before anything is cut there.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::facts::{CommonAsk, CommonFact, Found};
use super::permit::Identity;
use super::ranking::{code_of, is_called};
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::Text;
use crate::identify::{
    BeliefFrom, Feature, Identification, Next, Observation, Options, Standing, identify,
};
use crate::judge::{Instrument, extremes};
use crate::measure::{Placed, Reading, Surface, instrument, settled_below, settled_cmp};
use crate::quantity::{Length, mm, to_mm};
use crate::standard::{CuttingRule, Place, Tables};
use crate::{Error, ErrorKind};

/// What may be worked to, and how sure it is.
#[derive(Debug, Clone)]
pub(super) struct Settled {
    pub code: String,
    pub identity: Identity,
}

/// A size that misses the believed standard by less than this may be that standard, made or left wrong; beyond it, the
/// belief is wrong. Common practice: half a millimetre is what a reamer or a coat can account for.
const NEAR_MISS_MM: f64 = 0.5;

/// Beyond this spread a set of readings is not one size, and the identification is told so reading by reading.
/// Common practice: a bore or width out of true by a fifth of a millimetre is refused, not named.
const ONE_SIZE_MM: f64 = 0.2;

pub(super) fn options<'a>(site: &Site<'a>) -> Options<'a> {
    Options {
        shop: site.tables.shop(),
        ..Options::default()
    }
}

pub(super) fn belief(believed: Option<&str>) -> Option<Observation> {
    believed.map(|name| Observation::Belief {
        name: Text::Owned(name.to_string()),
        from: BeliefFrom::Label,
    })
}

/// Readings at different places of one feature: their spread is the shape of the part, not the scatter of the hand. The
/// middle of their extremes stands for them, with the spread as a rectangular part of its uncertainty (GUM 4.3.7): a place
/// that is read twice weighs no more than one that is read once.
pub(super) fn observed(feature: Feature, readings: &[Reading]) -> Vec<Observation> {
    let one = match *extremes(readings).as_slice() {
        [low, high] if !settled_below(mm(ONE_SIZE_MM), high.value() - low.value()) => {
            let shape = to_mm(high.value() - low.value()) / libm::sqrt(12.0);
            let u = mm(libm::hypot(to_mm(low.standard_uncertainty()), shape));
            Reading::new((low.value() + high.value()) / 2.0, u).ok()
        }
        _ => None,
    };
    match one {
        Some(reading) => Vec::from([Observation::size(feature, reading)]),
        // In the order of their sizes, so that the order in which they were written changes no sum.
        None => {
            let mut sorted = readings.to_vec();
            sorted.sort_by(|a, b| {
                settled_cmp(a.value(), b.value())
                    .then_with(|| settled_cmp(a.standard_uncertainty(), b.standard_uncertainty()))
            });
            let size = |r| Observation::size(feature, r);
            sorted.into_iter().map(size).collect()
        }
    }
}

/// The readings that lie on metal, or on nobody knows what; those over paint are bounds and name nothing.
pub(super) fn on_metal(readings: &[Placed]) -> Vec<Reading> {
    let bare = readings.iter().filter(|p| p.surface != Surface::OverPaint);
    bare.map(|p| p.reading).collect()
}

/// What readings say of the metal. Where all lie over paint, the metal of a bore lies between the widest of them and that with
/// the thickest coat of the tables on both sides (a rectangular part of the uncertainty, GUM 4.3.7).
pub(super) fn of_metal(tables: Tables<'_>, readings: &[Placed]) -> Vec<Reading> {
    let bare = on_metal(readings);
    if !bare.is_empty() {
        return bare;
    }
    let all: Vec<Reading> = readings.iter().map(|p| p.reading).collect();
    let under_paint = || {
        let widest = *extremes(&all).last()?;
        let coat = tables.get::<CuttingRule>("coat_one_side")?.window.upper()?;
        let u = libm::hypot(
            to_mm(widest.standard_uncertainty()),
            to_mm(coat) / libm::sqrt(3.0),
        );
        Reading::new(widest.value() + coat, mm(u)).ok()
    };
    under_paint().into_iter().collect()
}

/// Identifies and tells; gives the answer.
pub(super) fn ask_tables(
    site: &Site<'_>,
    work: &mut PlaceWork,
    place: &Place,
    seen: &[Observation],
    answer_field: &str,
) -> Option<Identification> {
    identify(place.clone(), seen, &options(site))
        .map_err(|error| {
            refused(work, answer_field, &error);
            work.settled(CommonFact::NotIdentified { because: error });
        })
        .ok()
}

/// Asks anew for what the tables could not take: a name that none of them has, or a reading.
pub(super) fn refused(work: &mut PlaceWork, field: impl Into<String>, error: &Error) {
    let because = error.clone();
    work.ask(
        field,
        match error.kind() {
            ErrorKind::UnknownName => CommonAsk::WhatCalled { because },
            _ => CommonAsk::ReadAgain { because },
        },
    );
}

/// Tells what the readings say, and keeps the answer.
pub(super) fn tell(work: &mut PlaceWork, answer: Identification) {
    work.settled(Found {
        grade: answer.grade(),
        ..Found::of(CommonFact::Standard {
            is: Box::new(answer.clone()),
        })
    });
    for note in &answer.notes {
        work.settled(CommonFact::Note { said: note.clone() });
    }
    work.identification = Some(answer);
}

/// Identifies a place that has one bore or one outside: a head-tube seat, a crown seat, a steerer, a seat tube.
pub(super) fn settle(
    site: &Site<'_>,
    work: &mut PlaceWork,
    (place, path): (&Place, &str),
    seen: &[Observation],
    (believed, confirmed): (Option<&str>, Option<&str>),
    near_misses: bool,
) -> Option<Settled> {
    let answer = ask_tables(site, work, place, seen, &format!("{path}.believed"))?;
    let miss = |name| near_miss(name, &answer).filter(|_| near_misses);
    let mut identity = Identity::Known;
    let code = if let Some(name) = confirmed {
        // What a gauge or the mating part proved is not weighed against a label.
        proved(work, path, name, &answer, miss(confirmed).is_some())
    } else if let Some((name, off, of)) = miss(believed) {
        let field = format!("{path}.confirmed");
        work.ask(
            field.clone(),
            CommonAsk::IsItReally {
                name: name.clone(),
                off,
            },
        );
        // Where the thread itself is in doubt, so are its pitch and hand, and nothing is followed.
        identity = match of {
            Feature::MinorDiameter => Identity::Open,
            _ => Identity::Doubtful(field),
        };
        Some(name)
    } else {
        let code = code_of(site.tables, &answer, believed);
        if code.is_none() {
            open(work, path, &answer, seen);
        }
        code
    };
    tell(work, answer);
    code.map(|code| Settled { code, identity })
}

/// The code of what was proved; a reading that rules it out by more than work puts right contradicts it.
fn proved(
    work: &mut PlaceWork,
    path: &str,
    name: &str,
    answer: &Identification,
    misses_by_little: bool,
) -> Option<String> {
    let owned = || name.to_string();
    let candidate = answer.candidates.iter().find(|c| is_called(c, name));
    let contradiction = match candidate.map(|c| c.standing) {
        Some(Standing::Excluded(by)) if !misses_by_little => CommonFact::ProvedAndExcluded {
            name: owned(),
            by: by.by,
        },
        None => CommonFact::ProvedAndUnlisted { name: owned() },
        Some(_) => return candidate.map(|c| c.code.to_string()),
    };
    work.contradicts(contradiction, format!("{path}.confirmed"), Instrument::Part);
    candidate.map(|c| c.code.to_string())
}

/// The believed standard, where only a bore rules it out and only by a little, with by how much and which bore.
fn near_miss(believed: Option<&str>, answer: &Identification) -> Option<(String, Length, Feature)> {
    let name = believed?;
    let candidate = answer.candidates.iter().find(|c| is_called(c, name))?;
    let Standing::Excluded(exclusion) = candidate.standing else {
        return None;
    };
    let bore = matches!(exclusion.by, Feature::Bore | Feature::MinorDiameter);
    let against = exclusion.against.filter(|_| bore)?;
    let off = libm::fmax(against.lower - against.read, against.read - against.upper);
    (off <= NEAR_MISS_MM).then(|| (candidate.code.to_string(), mm(off), exclusion.by))
}

/// The field of a sheet in which a feature is written, below the path of its place. A thread of the frame has no outside: what
/// screws into it has.
fn field_at(place: &Place, feature: Feature) -> &'static str {
    match feature {
        Feature::CrestDiameter | Feature::OutsideDiameter if place.is_thread() => "mate",
        other => field_of(other),
    }
}

/// The field of a sheet in which a feature is written, where its place has an outside.
pub(super) const fn field_of(feature: Feature) -> &'static str {
    match feature {
        Feature::Bore => "bore",
        Feature::MinorDiameter => "minor",
        Feature::CrestDiameter | Feature::OutsideDiameter | Feature::Wall => "outside",
        Feature::SeatDiameter | Feature::LowerDiameter => "seat",
        Feature::PartOutside => "part.outside",
        Feature::Pitch => "pitch",
        Feature::Width => "width",
        Feature::HalfWidthDrive => "half_drive",
        Feature::HalfWidthNonDrive => "half_non_drive",
        Feature::HandDrive => "drive.hand",
        Feature::HandNonDrive => "non_drive.hand",
        Feature::Hand => "hand",
        Feature::BoltSpacing
        | Feature::PlaneHeight
        | Feature::FirstBolt
        | Feature::InnerFaces
        | Feature::OverLocknut
        | Feature::Slot
        | Feature::SeatAngle
        | Feature::Threaded => "confirmed",
    }
}

/// Asks for the measurement that tells most.
pub(super) fn open(
    work: &mut PlaceWork,
    path: &str,
    answer: &Identification,
    seen: &[Observation],
) {
    let field = |feature| format!("{path}.{}", field_at(&answer.place, feature));
    for doubt in &answer.doubts {
        let because = doubt.clone();
        work.ask(field(doubt.about), CommonAsk::Doubt { because });
    }
    let left: Vec<Text> = answer.outcome.left().iter().take(5).cloned().collect();
    if let Some(next) = answer.next.iter().find(|next| !told(next, seen)) {
        let measure = next.measure;
        work.ask(
            field(measure),
            CommonAsk::Tells {
                measure,
                apart: left,
            },
        );
    } else if answer.doubts.is_empty() {
        work.ask(format!("{path}.confirmed"), CommonAsk::WhatIsIt { left });
    }
}

/// Whether it was read already: it tells no more when it is read again with a tool that is no finer.
fn told(next: &Next, seen: &[Observation]) -> bool {
    let tool = next
        .instrument
        .as_deref()
        .and_then(|code| instrument(code).ok());
    seen.iter().any(|o| match o {
        Observation::Size {
            feature, reading, ..
        } if *feature == next.measure => tool
            .and_then(|tool| tool.standard_uncertainty(reading.value()).ok())
            .is_none_or(|u| !settled_below(u, reading.standard_uncertainty())),
        _ => false,
    })
}
