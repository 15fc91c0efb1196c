//! Which standard a place is, before anything is cut there.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::permit::Identity;
use super::ranking::{code_of, is_called};
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::Text;
use crate::identify::{
    BeliefFrom, Feature, Identification, Next, Observation, Options, Standing, identify,
};
use crate::judge::{Finding, extremes};
use crate::measure::{Placed, Reading, Surface, instrument, settled_below};
use crate::quantity::{mm, to_mm};
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
        None => readings
            .iter()
            .map(|r| Observation::size(feature, *r))
            .collect(),
    }
}

/// The readings that lie on metal, or on nobody knows what; those over paint are bounds and name nothing.
pub(super) fn on_metal(readings: &[Placed]) -> Vec<Reading> {
    readings
        .iter()
        .filter(|p| p.surface != Surface::OverPaint)
        .map(|p| p.reading)
        .collect()
}

/// What readings say of the metal. Where all lie over paint, the metal of a bore lies between the widest of them and that with
/// the thickest coat of the tables on both sides (a rectangular part of the uncertainty, GUM 4.3.7).
pub(super) fn of_metal(tables: Tables<'_>, readings: &[Placed]) -> Vec<Reading> {
    let bare = on_metal(readings);
    let all: Vec<Reading> = readings.iter().map(|p| p.reading).collect();
    let coat = || {
        let rule = tables.get::<CuttingRule>("coat_one_side")?;
        rule.window.upper()
    };
    match (extremes(&all).last(), bare.is_empty()) {
        (Some(widest), true) => coat()
            .and_then(|coat| {
                let u = libm::hypot(
                    to_mm(widest.standard_uncertainty()),
                    to_mm(coat) / libm::sqrt(3.0),
                );
                Reading::new(widest.value() + coat, mm(u)).ok()
            })
            .into_iter()
            .collect(),
        _ => bare,
    }
}

/// Identifies and tells; gives the answer.
pub(super) fn ask_tables(
    site: &Site<'_>,
    work: &mut PlaceWork,
    place: &Place,
    seen: &[Observation],
    answer_field: &str,
) -> Option<Identification> {
    match identify(place.clone(), seen, &options(site)) {
        Ok(answer) => Some(answer),
        Err(error) => {
            work.settled(Finding::stated("identification", error.to_string()));
            refused(work, answer_field, &error);
            None
        }
    }
}

/// Asks anew for what the tables could not take: a name that none of them has, or a reading.
pub(super) fn refused(work: &mut PlaceWork, field: impl Into<String>, error: &Error) {
    let remedy = error.remedy();
    let (measure, with) = if error.kind() == ErrorKind::UnknownName {
        (
            format!("what is it called? {remedy}"),
            "label, maker's sheet",
        )
    } else {
        (remedy.to_string(), "as named")
    };
    work.ask_plain(field, measure, String::from(error.problem()), with);
}

/// Tells what the readings say, and keeps the answer.
pub(super) fn tell(work: &mut PlaceWork, answer: Identification) {
    let mut finding = Finding::stated("which standard", answer.words());
    finding.grade = answer.grade();
    work.settled(finding);
    for note in &answer.notes {
        work.settled(Finding::stated("note", note.to_string()));
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
    // What a gauge or the mating part proved is not weighed against a label.
    if let Some(proved) = confirmed {
        let known = answer
            .candidates
            .iter()
            .find(|c| is_called(c, proved))
            .map(|c| (c.code.to_string(), c.standing));
        let settled = match known {
            // Proved, and its bore misses it by a little: that is what is put right.
            Some((code, Standing::Excluded(_)))
                if near_misses && near_miss(Some(proved), &answer).is_some() =>
            {
                Some(code)
            }
            Some((code, Standing::Excluded(exclusion))) => {
                work.contradicts(
                    format!(
                        "{proved} was proved there, and the {} rules it out",
                        exclusion.by.words()
                    ),
                    format!("{path}.confirmed"),
                    "the mating part, and the reading again",
                );
                Some(code)
            }
            Some((code, _)) => Some(code),
            None => {
                work.contradicts(
                    format!("{proved} was proved there, and no table lists it for this place"),
                    format!("{path}.confirmed"),
                    "the mating part, frame maker's sheet",
                );
                None
            }
        };
        tell(work, answer);
        return settled.map(|code| Settled {
            code,
            identity: Identity::Known,
        });
    }
    let code = code_of(site.tables, &answer, believed);
    let miss = near_miss(believed, &answer).filter(|_| near_misses);
    let settled = match (miss, code) {
        (Some((believed, by, of)), _) => {
            let field = format!("{path}.confirmed");
            work.ask_plain(
                field.clone(),
                format!("is it really {believed}? Look for traces of a thread or a sleeve, try the mating part, measure again in other places"),
                format!("it misses {believed} by {by:.3} mm: either it is something else, or it is {believed} and out of its limits"),
                "mating part, light",
            );
            // Where the thread itself is in doubt, so are its pitch and hand, and nothing is followed.
            let identity = if of == Feature::MinorDiameter {
                Identity::Open
            } else {
                Identity::Doubtful(field)
            };
            Some(Settled {
                code: believed,
                identity,
            })
        }
        (None, Some(code)) => Some(Settled {
            code,
            identity: Identity::Known,
        }),
        (None, None) => {
            open(work, path, &answer, seen);
            None
        }
    };
    tell(work, answer);
    settled
}

/// The believed standard, where only a bore rules it out and only by a little, with the distance in millimetres and which bore.
fn near_miss(believed: Option<&str>, answer: &Identification) -> Option<(String, f64, Feature)> {
    let name = believed?;
    let candidate = answer.candidates.iter().find(|c| is_called(c, name))?;
    match &candidate.standing {
        Standing::Excluded(exclusion)
            if matches!(exclusion.by, Feature::Bore | Feature::MinorDiameter) =>
        {
            let against = exclusion.against?;
            let by = libm::fmax(against.lower - against.read, against.read - against.upper);
            (by <= NEAR_MISS_MM).then(|| (candidate.code.to_string(), by, exclusion.by))
        }
        _ => None,
    }
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
    for doubt in &answer.doubts {
        work.ask_plain(
            format!("{path}.{}", field_at(&answer.place, doubt.about)),
            format!("{} again", doubt.about.words()),
            doubt.words(),
            "as before, or a finer one",
        );
    }
    let left: Vec<&str> = answer
        .outcome
        .left()
        .iter()
        .map(Text::as_ref)
        .take(5)
        .collect();
    // What was read already tells no more when it is read again with a tool that is no finer.
    let told = |next: &Next| {
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
    };
    if let Some(next) = answer.next.iter().find(|n| !told(n)) {
        let with = next
            .instrument
            .as_deref()
            .and_then(|code| instrument(code).ok())
            .map_or("eye and hand", |tool| tool.name.as_ref());
        let why = if left.is_empty() {
            answer.words()
        } else {
            format!("it would tell {} apart best", left.join(", "))
        };
        work.ask_plain(
            format!("{path}.{}", field_at(&answer.place, next.measure)),
            next.measure.words(),
            why,
            with,
        );
    } else if answer.doubts.is_empty() {
        let ask = if left.is_empty() {
            String::from("what is it? The tables hold nothing that agrees")
        } else {
            format!(
                "{}? No reading with these tools tells them apart: try the mating part",
                left.join(" or ")
            )
        };
        work.ask_plain(
            format!("{path}.confirmed"),
            ask,
            answer.words(),
            "mating part, frame maker's drawing",
        );
    }
}
