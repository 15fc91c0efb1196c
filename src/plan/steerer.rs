//! The steerer: what it is, and its length against what stands on it. Nothing is cut here.

use alloc::string::{String, ToString};

use super::caution::Caution;
use super::crown::recognised;
use super::facts::{Fact, Found, HeadAsk, HeadFact, HeadTask};
use super::identity;
use super::sheet::{Limited, SteererSheet};
use super::site::{Site, covered};
use super::steering::{as_read, begin, by_hand, held, row_of, shown, unmeasured};
use super::work::{ByHand, PlaceWork};
use crate::fit::{MaterialKind, steerer_length};
use crate::identify::{Feature, Observation};
use crate::judge::{Doubt, Finding, Held};
use crate::measure::{Outcome, Reading, settled_below};
use crate::standard::{Place, Steerer, SteererRule};

pub(super) fn plan(site: &Site<'_>, sheet: &SteererSheet) -> PlaceWork {
    let mut work = begin(Place::Steerer, sheet.note.as_ref());
    work.measured = !sheet.outside.is_empty() || sheet.length.is_some() || !sheet.stack.is_empty();
    named(site, sheet, &mut work);
    let material = site.joint(&sheet.common()).material;
    let laminate = material == Some(MaterialKind::Carbon);
    if laminate && work.measured {
        work.cautions.push(Caution::Carbon);
        work.leave(HeadFact::LaminateSteerer);
    }
    let too_long = makers(site, sheet, &mut work);
    if stack(site, sheet, &mut work) || too_long {
        // Sawing is not planned here; when it is done, and by whose word, is.
        let task = HeadTask::MarkLength { laminate };
        work.steps
            .push(by_hand(&Place::Steerer, ByHand::Check, task, material));
    }
    work
}

/// Which steerer it is, and what belongs to it.
fn named(site: &Site<'_>, sheet: &SteererSheet, work: &mut PlaceWork) {
    let over_paint = covered(sheet.coating);
    if !sheet.outside.is_empty() {
        work.settled(Found {
            doubt: over_paint.then_some(Doubt::Same),
            ..as_read("outside", &sheet.outside)
        });
    }
    let feature = if sheet.pitch.is_some() {
        Feature::CrestDiameter
    } else {
        Feature::OutsideDiameter
    };
    // Over paint an outside reads too large and names nothing.
    let mut seen = identity::observed(feature, &sheet.outside);
    if over_paint {
        seen.clear();
    }
    let believed = sheet.believed.as_deref();
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(identity::belief(believed));
    let confirmed = sheet.confirmed.as_deref();
    let proved = row_of(site, work, confirmed, String::from("steerer.confirmed"));
    let place = (&Place::Steerer, "steerer");
    let code = (!seen.is_empty()).then(|| recognised(site, work, place, &seen, believed));
    let row = proved.or_else(|| site.tables.get::<Steerer>(&code??));
    if let Some(thread) = row.and_then(|r| r.thread.as_ref())
        && let Some(size) = thread.value()
    {
        let size = size.to_string();
        work.settled(Found::of(HeadFact::ThreadIs { size }).resting_on(thread.evidence()));
    }
    if let Some(quill) = row.and_then(|r| r.quill.as_ref()) {
        let size = quill.to_string();
        work.settled(Found::of(HeadFact::QuillIs { size }).resting_on(quill.evidence()));
    }
    if sheet.pitch.is_some() || row.is_some_and(|r| r.thread.is_some()) {
        work.leave(HeadFact::SteererThread);
    }
}

/// The makers' limits of length; whether one is shown too long.
fn makers(site: &Site<'_>, sheet: &SteererSheet, work: &mut PlaceWork) -> bool {
    let mut too_long = false;
    for limit in &sheet.limits {
        let of_length = limit.what == Limited::Length;
        let Some(length) = sheet.length.filter(|_| of_length) else {
            work.settled(unmeasured(limit));
            if of_length {
                work.ask("steerer.length", HeadAsk::SteererLength);
            }
            continue;
        };
        let found = held("length", &[length], limit, site.rule);
        let most = limit.limits.upper().known();
        let long = most.is_some_and(|most| settled_below(most, length.value()));
        if long && found.outcome == Some(Outcome::NonconformityShown) {
            too_long = true;
            work.settled(found);
        } else {
            long_enough(found, work);
        }
    }
    too_long
}

/// Whether it is long enough: too short leaves it out, too close asks for its length again.
fn long_enough(found: Finding, work: &mut PlaceWork) {
    match found.outcome {
        Some(Outcome::NonconformityShown) => {
            let cure = Fact::from(HeadFact::LessOnSteerer);
            if !work.cures.contains(&cure) {
                work.cure(cure);
            }
        }
        Some(Outcome::Undecided) => work.ask("steerer.length", HeadAsk::SteererLengthFiner),
        _ => {}
    }
    work.fact(found);
}

/// Length against what stands on it: the end stays below the top of the stem, and not far below. Whether it is too long.
fn stack(site: &Site<'_>, sheet: &SteererSheet, work: &mut PlaceWork) -> bool {
    let rule = site.tables.get::<SteererRule>("steerer_below_stack");
    let below = rule.and_then(|r| r.window.nominal().or_else(|| r.window.lower()));
    let Some((below, wanted)) = below
        .filter(|_| !sheet.stack.is_empty())
        .and_then(|below| Some((below, steerer_length(&sheet.stack, below).ok()?)))
    else {
        return false;
    };
    let length = wanted.value();
    let fact = HeadFact::LengthWanted { length, below };
    let evidence = rule.and_then(|r| r.window.evidence());
    work.settled(shown(wanted, fact).resting_on(evidence));
    let Some(length) = sheet.length else {
        work.ask("steerer.length", HeadAsk::SteererLength);
        return false;
    };
    let spare = length.less(&wanted);
    let longer = spare.sure_sign().is_gt();
    if longer {
        let by = spare.value();
        work.settled(shown(spare, HeadFact::LongerBy { by }));
    } else {
        grip(site, &wanted.shifted(below).less(&length), work);
    }
    longer
}

/// How far the stem stands above the end of the steerer, by the standards.
fn grip(site: &Site<'_>, above: &Reading, work: &mut PlaceWork) {
    let Some(row) = site.tables.get::<SteererRule>("stem_above_steerer") else {
        return;
    };
    let held = Held::of_row(&row.window, "bicycle standards");
    long_enough(held.against(row.what.clone(), &[*above], site.rule), work);
}
