//! The steerer: what it is, and its length against what stands on it. Nothing is cut here.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::crown::recognised;
use super::head::unmeasured;
use super::identity;
use super::sheet::{Limited, SteererSheet};
use super::site::{Site, covered};
use super::work::{ByHand, Draft, PlaceWork};
use crate::fit::{MaterialKind, steerer_length};
use crate::identify::{Feature, Observation};
use crate::judge::{Finding, sizes_against, spread};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::in_mm;
use crate::standard::{Place, Steerer, SteererRule};

const PATH: &str = "steerer";

pub(super) fn plan(site: &Site<'_>, sheet: &SteererSheet) -> PlaceWork {
    let mut work = PlaceWork::new(Place::Steerer);
    work.cautions.push(Caution::Steering);
    work.notes.extend(sheet.note.clone());
    work.measured = !sheet.outside.is_empty() || sheet.length.is_some() || !sheet.stack.is_empty();
    named(site, sheet, &mut work);
    let carbon = site.joint(&sheet.common()).material == Some(MaterialKind::Carbon);
    if carbon && work.measured {
        work.cautions.push(Caution::Carbon);
        work.leave(String::from(
            "the steerer: laminate; it is shortened, plugged and clamped only as its maker writes",
        ));
    }
    let too_long = makers(site, sheet, &mut work);
    stack(site, sheet, (carbon, too_long), &mut work);
    work
}

/// Which steerer it is, and what belongs to it.
fn named(site: &Site<'_>, sheet: &SteererSheet, work: &mut PlaceWork) {
    if !sheet.outside.is_empty() {
        let over = if covered(sheet.coating) {
            "; read over paint, so no more than that"
        } else {
            ""
        };
        work.settled(Finding::stated(
            "outside",
            format!("{}{over}", spread(&sheet.outside)),
        ));
    }
    let feature = if sheet.pitch.is_some() {
        Feature::CrestDiameter
    } else {
        Feature::OutsideDiameter
    };
    // Over paint an outside reads too large and names nothing.
    let mut seen = if covered(sheet.coating) {
        Vec::new()
    } else {
        identity::observed(feature, &sheet.outside)
    };
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(identity::belief(sheet.believed.as_deref()));
    let find = |name: &str| site.tables.find::<Steerer>(name);
    let proved = match sheet.confirmed.as_deref().map(find) {
        Some(Ok(row)) => Some(row),
        Some(Err(error)) => {
            identity::refused(work, format!("{PATH}.confirmed"), &error);
            None
        }
        None => None,
    };
    let code = if seen.is_empty() {
        None
    } else {
        recognised(
            site,
            work,
            (&Place::Steerer, PATH),
            &seen,
            sheet.believed.as_deref(),
        )
    };
    let row = proved.or_else(|| find(&code?).ok());
    let threaded = sheet.pitch.is_some() || row.is_some_and(|r| r.thread.is_some());
    if let Some(row) = row {
        if let Some(thread) = &row.thread
            && let Some(size) = thread.value()
        {
            work.settled(
                Finding::stated("thread", format!("{size}")).resting_on(thread.evidence()),
            );
        }
        if let Some(quill) = &row.quill {
            work.settled(Finding::stated("quill", format!("{quill}")).resting_on(quill.evidence()));
        }
    }
    if threaded {
        work.leave(String::from(
            "the steerer thread: it is only followed with its own form; Italian and English steerers share size and pitch and differ in flank angle",
        ));
    }
}

/// The makers' limits of length; whether one is shown too long.
fn makers(site: &Site<'_>, sheet: &SteererSheet, work: &mut PlaceWork) -> bool {
    let mut too_long = false;
    for limit in &sheet.limits {
        if limit.what != Limited::Length {
            work.settled(unmeasured(limit));
            continue;
        }
        let Some(length) = sheet.length else {
            work.settled(unmeasured(limit));
            ask_length(work, "a maker limits it");
            continue;
        };
        let found = sizes_against(
            "length",
            &[length],
            &limit.limits,
            &limit.owner,
            None,
            site.rule,
        );
        let long = limit
            .limits
            .upper()
            .known()
            .is_some_and(|most| settled_below(most, length.value()));
        match found.outcome {
            Some(Outcome::NonconformityShown) if long => {
                too_long = true;
                work.settled(found);
            }
            Some(Outcome::NonconformityShown) => {
                too_short(work);
                work.fact(found);
            }
            Some(Outcome::Undecided) => {
                ask_length(work, "it lies too close to its maker's limit to tell");
                work.settled(found);
            }
            _ => work.settled(found),
        }
    }
    too_long
}

fn too_short(work: &mut PlaceWork) {
    let cure = super::Fact::from(SHORT);
    if !work.cures.contains(&cure) {
        work.cure(cure);
    }
}

const SHORT: &str = "fewer spacers, a lower stem or headset, or another fork; never less grip than the stem maker wants";

fn ask_length(work: &mut PlaceWork, why: &'static str) {
    work.ask_plain(
        format!("{PATH}.length"),
        "length from the crown-race seat to the end of the steerer, to half a millimetre",
        why,
        "steel rule against a square",
    );
}

/// Length against what stands on it: the end stays below the top of the stem, and not far below.
fn stack(
    site: &Site<'_>,
    sheet: &SteererSheet,
    (carbon, too_long): (bool, bool),
    work: &mut PlaceWork,
) {
    let rule = |code: &str| site.tables.get::<SteererRule>(code);
    let below = rule("steerer_below_stack");
    let wanted = below
        .and_then(|r| r.window.nominal().or_else(|| r.window.lower()))
        .filter(|_| !sheet.stack.is_empty())
        .and_then(|below| Some((below, steerer_length(&sheet.stack, below).ok()?)));
    let Some((below_by, wanted)) = wanted else {
        if too_long {
            shorten(carbon, work);
        }
        return;
    };
    let words = format!(
        "{} wanted: what stands on it, less {} below the top",
        in_mm(wanted.value()),
        in_mm(below_by)
    );
    work.settled(
        Finding {
            readings: Vec::from([wanted]),
            ..Finding::stated("steerer length", words)
        }
        .resting_on(below.and_then(|r| r.window.evidence())),
    );
    let Some(length) = sheet.length else {
        ask_length(work, "it is held against what stands on it");
        if too_long {
            shorten(carbon, work);
        }
        return;
    };
    let spare = length.less(&wanted);
    if spare.sure_sign().is_gt() || too_long {
        work.settled(Finding {
            readings: Vec::from([spare]),
            ..Finding::stated(
                "steerer length",
                format!("{} longer than that, as it stands", in_mm(spare.value())),
            )
        });
        shorten(carbon, work);
        return;
    }
    grip(site, &wanted.shifted(below_by).less(&length), work);
}

/// How far the stem stands above the end of the steerer, by the standards.
fn grip(site: &Site<'_>, above: &Reading, work: &mut PlaceWork) {
    let Ok(row) = site.tables.find::<SteererRule>("stem_above_steerer") else {
        return;
    };
    let found = sizes_against(
        row.what.clone(),
        &[*above],
        &Limits::of_requirement(&row.window),
        "the standards for bicycles",
        row.window.evidence(),
        site.rule,
    );
    match found.outcome {
        Some(Outcome::NonconformityShown) => {
            too_short(work);
            work.fact(found);
        }
        Some(Outcome::Undecided) => {
            ask_length(
                work,
                "whether the stem grips enough of it is too close to tell",
            );
            work.settled(found);
        }
        _ => work.settled(found),
    }
}

/// Sawing is not planned here; when it is done, and by whose word, is.
fn shorten(carbon: bool, work: &mut PlaceWork) {
    let mut draft = Draft::by_hand_plain(
        &Place::Steerer,
        ByHand::Check,
        "Fit headset, spacers and stem dry and mark the length of the steerer, only when the head-tube faces are finished",
        if carbon {
            "what comes off the faces lowers the stack; laminate is sawn only as the fork maker writes, and by whoever may"
        } else {
            "what comes off the faces lowers the stack, and a steerer that was sawn too short does not grow"
        },
    )
    .minding(Caution::Steering);
    if carbon {
        draft = draft.minding(Caution::Carbon);
    }
    work.steps.push(draft);
}
