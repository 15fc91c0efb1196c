//! Which standard an interface is, before anything is planned for it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::draft::Draft;
use super::plan::{Interface, InterfaceReport};
use super::sheet::{CrownSheet, HeadEnd, PlacedReading, SeatTubeSheet, ShellSheet, SteererSheet};
use crate::evidence::Text;
use crate::identify::{
    BeliefFrom, Feature, HeadTubeEnd, Identification, InterfaceKind, Observation, Options, Outcome,
    identify,
};
use crate::judge::Finding;
use crate::measure::{Reading, instrument};
use crate::thread::Side;

/// Identifies, writes the answer into the report, asks what is open, and gives the code that may be worked to.
fn settle(
    draft: &mut Draft<'_>,
    interface: Interface,
    kind: InterfaceKind,
    seen: &[Observation],
    report: &mut InterfaceReport,
) -> Option<String> {
    let answer = match identify(kind, seen, &Options::default()) {
        Ok(answer) => answer,
        Err(error) => {
            report
                .findings
                .push(Finding::stated("identification", error.to_string()));
            draft.ask(
                interface,
                format!("{interface}: {}", error.remedy()),
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
    let code = match &answer.outcome {
        Outcome::Identified { code } => Some(code.to_string()),
        Outcome::Ambiguous { between } if answer.interchange => {
            between.first().map(ToString::to_string)
        }
        _ => None,
    };
    if code.is_none() {
        open(draft, interface, &answer);
    }
    report.identification = Some(answer);
    code
}

/// Asks for the measurement that tells most.
fn open(draft: &mut Draft<'_>, interface: Interface, answer: &Identification) {
    for doubt in &answer.doubts {
        draft.ask(
            interface,
            format!("{interface}: {} again", doubt.about.words()),
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
                format!("{interface}: {}", next.measure.words()),
                why,
                with,
            );
        }
        None if answer.doubts.is_empty() => {
            draft.ask(
                interface,
                format!("{interface}: what is it? The tables hold nothing that agrees"),
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

fn bores(seen: &mut Vec<Observation>, bore: &[PlacedReading]) {
    seen.extend(bore.iter().map(|p| size(Feature::Bore, p.reading)));
}

pub(super) fn shell(
    draft: &mut Draft<'_>,
    sheet: &ShellSheet,
    report: &mut InterfaceReport,
) -> Option<String> {
    let mut seen = Vec::new();
    bores(&mut seen, &sheet.bore);
    seen.extend(sheet.width.iter().map(|r| size(Feature::Width, *r)));
    seen.extend(sheet.half_drive.map(|r| size(Feature::HalfWidthDrive, r)));
    seen.extend(
        sheet
            .half_non_drive
            .map(|r| size(Feature::HalfWidthNonDrive, r)),
    );
    seen.extend(sheet.pitch.map(Observation::Pitch));
    for (side, here) in [
        (Side::Drive, &sheet.drive),
        (Side::NonDrive, &sheet.non_drive),
    ] {
        seen.extend(here.minor.iter().map(|r| size(Feature::MinorDiameter, *r)));
        seen.extend(here.hand.map(|hand| Observation::hand(side, hand)));
    }
    seen.extend(belief(sheet.common.believed.as_ref()));
    settle(draft, Interface::Shell, InterfaceKind::Shell, &seen, report)
}

pub(super) fn head(
    draft: &mut Draft<'_>,
    interface: Interface,
    end: &HeadEnd,
    report: &mut InterfaceReport,
) -> Option<String> {
    let kind = InterfaceKind::HeadTube(if interface == Interface::HeadUpper {
        HeadTubeEnd::Upper
    } else {
        HeadTubeEnd::Lower
    });
    let mut seen = Vec::new();
    bores(&mut seen, &end.bore);
    seen.extend(belief(end.common.believed.as_ref()));
    settle(draft, interface, kind, &seen, report)
}

pub(super) fn crown(
    draft: &mut Draft<'_>,
    sheet: &CrownSheet,
    report: &mut InterfaceReport,
) -> Option<String> {
    let mut seen: Vec<Observation> = sheet
        .seat
        .iter()
        .map(|r| size(Feature::OutsideDiameter, *r))
        .collect();
    seen.extend(belief(sheet.common.believed.as_ref()));
    settle(
        draft,
        Interface::Crown,
        InterfaceKind::CrownSeat,
        &seen,
        report,
    )
}

pub(super) fn steerer(
    draft: &mut Draft<'_>,
    sheet: &SteererSheet,
    report: &mut InterfaceReport,
) -> Option<String> {
    let feature = if sheet.pitch.is_some() {
        Feature::CrestDiameter
    } else {
        Feature::OutsideDiameter
    };
    let mut seen: Vec<Observation> = sheet.outside.iter().map(|r| size(feature, *r)).collect();
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(belief(sheet.common.believed.as_ref()));
    settle(
        draft,
        Interface::Steerer,
        InterfaceKind::Steerer,
        &seen,
        report,
    )
}

pub(super) fn seat_tube(
    draft: &mut Draft<'_>,
    tube: &SeatTubeSheet,
    report: &mut InterfaceReport,
) -> Option<String> {
    let mut seen = Vec::new();
    bores(&mut seen, &tube.bore);
    seen.extend(
        tube.outside
            .iter()
            .map(|r| size(Feature::OutsideDiameter, *r)),
    );
    seen.extend(belief(tube.common.believed.as_ref()));
    settle(
        draft,
        Interface::SeatTube,
        InterfaceKind::SeatTube,
        &seen,
        report,
    )
}
