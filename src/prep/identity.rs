//! Which standard an interface is, before anything is planned for it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::draft::Draft;
use super::facing;
use super::plan::{Interface, InterfaceReport};
use super::sheet::{
    CrownSheet, HeadEnd, PlacedReading, SeatTubeSheet, ShellSheet, SteererSheet, ThreadSheet,
};
use crate::evidence::Text;
use crate::identify::{
    BeliefFrom, Feature, Identification, Observation, Options, Outcome, Standing, identify,
};
use crate::judge::Finding;
use crate::measure::{Reading, instrument, settled_below};
use crate::quantity::{mm, to_mm};
use crate::standard::{End, HeadTubeEnd, Place, ThreadUse, ThreadedPart};
use crate::thread::{Side, ThreadSize};

/// What may be worked to, and the question that stands before it where the readings speak against the belief.
pub(super) struct Settled {
    pub code: String,
    pub doubt: Option<usize>,
}

/// A size that misses the believed standard by less than this may be that standard, made or left wrong; beyond it, the
/// belief is wrong. Common practice: half a millimetre is what a reamer or a coat can account for.
const NEAR_MISS_MM: f64 = 0.5;

fn options<'a>(draft: &Draft<'a>) -> Options<'a> {
    Options {
        shop: draft.tables.shop(),
        ..Options::default()
    }
}

fn code_of(answer: &Identification) -> Option<String> {
    match &answer.outcome {
        Outcome::Identified { code } => Some(code.to_string()),
        Outcome::Ambiguous { between } if answer.interchange => {
            between.first().map(ToString::to_string)
        }
        _ => None,
    }
}

/// Identifies, writes the answer into the report, asks what is open, and gives the code that may be worked to.
fn settle(
    draft: &mut Draft<'_>,
    interface: Interface,
    place: Place,
    seen: &[Observation],
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let answer = match identify(place.clone(), seen, &options(draft)) {
        Ok(answer) => answer,
        Err(error) => {
            report
                .findings
                .push(Finding::stated("identification", error.to_string()));
            draft.ask(
                interface,
                format!("{}: {}", report.title, error.remedy()),
                error.problem().to_string(),
                "as named",
            );
            return None;
        }
    };
    let mut finding = Finding::stated("which standard", answer.sentence.clone());
    finding.grade = answer.grade();
    report.findings.push(finding);
    for note in &answer.notes {
        report
            .findings
            .push(Finding::stated("note", note.to_string()));
    }
    let code = code_of(&answer);
    // Seatposts step by less than a near miss; only shells and head tubes are made or left wrong by so much.
    let may_be_wrong = matches!(place, Place::Shell | Place::HeadTube(_));
    let settled = match near_miss(seen, &answer).filter(|_| may_be_wrong) {
        Some((believed, by)) => {
            let doubt = draft.ask(
                interface,
                format!("{}: is it really {believed}? Look for traces of a thread or a sleeve, measure again in other places", report.title),
                format!("it misses {believed} by {by:.3} mm: either it is something else, or it is {believed} and out of its limits"),
                "as named",
            );
            Some(Settled {
                code: believed,
                doubt: Some(doubt),
            })
        }
        None => {
            if code.is_none() {
                open(draft, interface, &report.title, &answer);
            }
            code.map(|code| Settled { code, doubt: None })
        }
    };
    report.identification = Some(answer);
    settled
}

/// The believed standard, where only a bore rules it out and only by a little, with the distance.
fn near_miss(seen: &[Observation], answer: &Identification) -> Option<(String, f64)> {
    let name = seen.iter().find_map(|o| match o {
        Observation::Belief { name, .. } => Some(name),
        _ => None,
    })?;
    let candidate = answer
        .candidates
        .iter()
        .find(|c| c.code.eq_ignore_ascii_case(name) || c.name.eq_ignore_ascii_case(name))?;
    match &candidate.standing {
        Standing::Excluded(exclusion) if exclusion.by == Feature::Bore => {
            let against = exclusion.against?;
            let by = libm::fmax(against.lower - against.read, against.read - against.upper);
            (by <= NEAR_MISS_MM).then(|| (candidate.code.to_string(), by))
        }
        _ => None,
    }
}

/// Asks for the measurement that tells most.
fn open(draft: &mut Draft<'_>, interface: Interface, title: &str, answer: &Identification) {
    for doubt in &answer.doubts {
        draft.ask(
            interface,
            format!("{title}: {} again", doubt.about.words()),
            doubt.words.clone(),
            "as before, or a finer one",
        );
    }
    match answer.next.first() {
        Some(next) => {
            let with = next
                .instrument
                .as_deref()
                .and_then(|code| instrument(code).ok())
                .map_or("eye and hand", |tool| tool.name.as_ref());
            let left: Vec<&str> = answer
                .outcome
                .left()
                .iter()
                .map(Text::as_ref)
                .take(5)
                .collect();
            let why = if left.is_empty() {
                answer.sentence.clone()
            } else {
                format!("it would tell {} apart best", left.join(", "))
            };
            draft.ask(
                interface,
                format!("{title}: {}", next.measure.words()),
                why,
                with,
            );
        }
        None if answer.doubts.is_empty() => {
            let left = answer.outcome.left();
            let ask = if left.is_empty() {
                format!("{title}: what is it? The tables hold nothing that agrees")
            } else {
                format!(
                    "{title}: {}? No reading with these tools tells them apart",
                    left.join(" or ")
                )
            };
            draft.ask(
                interface,
                ask,
                answer.sentence.clone(),
                "frame maker's drawing",
            );
        }
        None => {}
    }
}

fn size(feature: Feature, reading: Reading) -> Observation {
    Observation::size(feature, reading)
}

fn belief(believed: Option<&String>) -> Option<Observation> {
    believed.map(|name| Observation::Belief {
        name: Text::Owned(name.clone()),
        from: BeliefFrom::Label,
    })
}

/// Beyond this spread a set of readings is not one size, and the identification is told so reading by reading.
/// Common practice: a bore or width out of true by a fifth of a millimetre is refused, not named.
const ONE_SIZE_MM: f64 = 0.2;

/// Readings at different places of one feature: their spread is the shape of the part, not the scatter of the hand. Their
/// mean stands for them, with the spread as a rectangular part of its uncertainty (GUM 4.3.7).
fn observed(feature: Feature, readings: &[Reading]) -> Vec<Observation> {
    let one = match *crate::judge::extremes(readings).as_slice() {
        [low, high] if !settled_below(mm(ONE_SIZE_MM), high.value() - low.value()) => {
            let sum = readings.iter().fold(mm(0.0), |sum, r| sum + r.value());
            #[expect(clippy::cast_precision_loss, reason = "a list of readings is short")]
            let mean = sum / readings.len() as f64;
            let shape = to_mm(high.value() - low.value()) / libm::sqrt(12.0);
            let u = mm(libm::hypot(to_mm(low.standard_uncertainty()), shape));
            Reading::new(mean, u).ok()
        }
        _ => None,
    };
    match one {
        Some(reading) => Vec::from([size(feature, reading)]),
        None => readings.iter().map(|r| size(feature, *r)).collect(),
    }
}

fn bores(bore: &[PlacedReading]) -> Vec<Observation> {
    let plain: Vec<Reading> = bore.iter().map(|p| p.reading).collect();
    observed(Feature::Bore, &plain)
}

pub(super) fn shell(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let seen = seen_in_shell(sheet);
    settle(draft, Interface::Shell, Place::Shell, &seen, report)
}

/// The pattern of which this shell would be with its sides exchanged: the hands tell the sides (common practice).
pub(super) fn turned_shell(draft: &Draft<'_>, sheet: &ShellSheet) -> Option<String> {
    let mut turned = sheet.clone();
    core::mem::swap(&mut turned.drive.hand, &mut turned.non_drive.hand);
    if turned.drive.hand == sheet.drive.hand {
        return None;
    }
    let seen = seen_in_shell(&turned);
    code_of(&identify(Place::Shell, &seen, &options(draft)).ok()?)
}

fn seen_in_shell(sheet: &ShellSheet) -> Vec<Observation> {
    let mut seen = bores(&sheet.bore);
    seen.extend(observed(Feature::Width, &sheet.width));
    seen.extend(sheet.half_drive.map(|r| size(Feature::HalfWidthDrive, r)));
    seen.extend(
        sheet
            .half_non_drive
            .map(|r| size(Feature::HalfWidthNonDrive, r)),
    );
    seen.extend(sheet.pitch.map(Observation::Pitch));
    if !sheet.bore.is_empty() && sheet.pitch.is_none() {
        seen.push(Observation::Threaded(false));
    }
    for (side, here) in [
        (Side::Drive, &sheet.drive),
        (Side::NonDrive, &sheet.non_drive),
    ] {
        seen.extend(observed(Feature::MinorDiameter, &here.minor));
        seen.extend(here.hand.map(|hand| Observation::hand(side, hand)));
    }
    seen.extend(belief(sheet.common.believed.as_ref()));
    seen
}

pub(super) fn head(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let place = Place::HeadTube(if interface == Interface::HeadUpper {
        HeadTubeEnd::Upper
    } else {
        HeadTubeEnd::Lower
    });
    let mut seen = bores(&end.bore);
    seen.extend(belief(end.common.believed.as_ref()));
    settle(draft, interface, place, &seen, report)
}

pub(super) fn crown(
    draft: &mut Draft<'_>,
    sheet: &CrownSheet,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let mut seen = observed(Feature::OutsideDiameter, &sheet.seat);
    seen.extend(belief(sheet.common.believed.as_ref()));
    settle(draft, Interface::Crown, Place::Crown, &seen, report)
}

pub(super) fn steerer(
    draft: &mut Draft<'_>,
    sheet: &SteererSheet,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let feature = if sheet.pitch.is_some() {
        Feature::CrestDiameter
    } else {
        Feature::OutsideDiameter
    };
    let mut seen = observed(feature, &sheet.outside);
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(belief(sheet.common.believed.as_ref()));
    settle(draft, Interface::Steerer, Place::Steerer, &seen, report)
}

pub(super) fn seat_tube(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let mut seen = bores(if tube.after.is_empty() {
        &tube.bore
    } else {
        &tube.after
    });
    seen.extend(observed(Feature::OutsideDiameter, &tube.outside));
    seen.extend(belief(tube.common.believed.as_ref()));
    settle(draft, Interface::SeatTube, Place::SeatTube, &seen, report)
}

pub(super) fn thread(
    draft: &mut Draft<'_>,
    interface: Interface,
    sheet: &ThreadSheet,
    report: &mut InterfaceReport,
) -> Option<Settled> {
    let place = match sheet.place {
        ThreadedPart::Axle => Place::Axle(End::Both),
        ThreadedPart::Hanger | ThreadedPart::HangerBolt => Place::Hanger(End::Both),
        ThreadedPart::Pedal => Place::Pedal(None),
        _ => Place::Thread,
    };
    let mut seen = Vec::new();
    if facing::covered(sheet.common.coating) {
        if !sheet.minor.is_empty() {
            report.findings.push(Finding::stated(
                "hole",
                "read on paint, so it names no thread: the pitch must",
            ));
        }
        if sheet.pitch.is_none() {
            draft.ask(
                interface,
                format!("{}: pitch, with a gauge over six threads or more", sheet.name),
                "paint narrows the hole, the pitch stays; the wrong chaser cuts a second thread across the first",
                "thread pitch gauge leaves",
            );
        }
    } else {
        seen.extend(observed(Feature::MinorDiameter, &sheet.minor));
    }
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(
        sheet
            .hand
            .map(|hand| Observation::Hand { side: None, hand }),
    );
    // A designation is no name of a row; the row of this place with that thread is.
    let stated = sheet
        .common
        .believed
        .as_deref()
        .and_then(|b| b.parse::<ThreadSize>().ok())
        .or(sheet.mate);
    let row = stated.and_then(|size| {
        draft
            .tables
            .all::<ThreadUse>()
            .find(|row| row.place == sheet.place && row.thread.value() == Some(&size))
    });
    let named = match (row, stated) {
        (Some(row), _) => Some(String::from(row.code.as_ref())),
        (None, None) => sheet.common.believed.clone(),
        (None, Some(_)) => None,
    };
    seen.extend(belief(named.as_ref()));
    if seen.is_empty() && facing::covered(sheet.common.coating) {
        // The pitch has been asked for; no other reading names a thread through paint.
        return None;
    }
    settle(draft, interface, place, &seen, report)
}
