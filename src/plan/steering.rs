//! What head tube, crown and steerer share: sizes against makers' limits, what came off, fits, work by hand.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::caution::Caution;
use super::facts::{Found, HeadFact, HeadTask, RoundFact};
use super::identity;
use super::round_place;
use super::sheet::{Limited, MakerLimit};
use super::site::Site;
use super::work::{ByHand, Draft, PlaceWork};
use crate::Error;
use crate::evidence::Text;
use crate::fit::MaterialKind;
use crate::judge::{
    Fact, Finding, Fit, Instrument, MemberOf, SizeFact, Verdict, extremes, sizes_against,
};
use crate::measure::{DecisionRule, Reading};
use crate::quantity::Length;
use crate::standard::{InShop, Joint, Place};

/// A maker's limit of something that was not measured, or that is not used here.
pub(super) fn unmeasured(limit: &MakerLimit) -> Finding {
    let of = format!("maker's limit, {}", limit.what);
    held(of, &[], limit, DecisionRule::default())
}

/// Readings against a maker's limit.
pub(super) fn held(
    of: impl Into<Text>,
    readings: &[Reading],
    limit: &MakerLimit,
    rule: DecisionRule,
) -> Finding {
    sizes_against(of, readings, &limit.limits, &limit.owner, None, rule)
}

/// A size as it was read, with no limit.
pub(super) fn as_read(of: &'static str, readings: &[Reading]) -> Found {
    let fact = SizeFact::Against {
        of: of.into(),
        count: readings.len(),
    };
    Found {
        readings: extremes(readings),
        ..Found::of(Fact::from(fact))
    }
}

/// What one reading shows.
pub(super) fn shown(reading: Reading, fact: HeadFact) -> Found {
    Found {
        readings: Vec::from([reading]),
        ..Found::of(fact)
    }
}

/// Two parts against what their makers want of the fit, or else against what is published.
pub(super) fn fit_of(
    site: &Site<'_>,
    work: &mut PlaceWork,
    joint: Joint,
    (hole, shaft): (MemberOf, MemberOf),
    limits: &[MakerLimit],
) -> Option<Verdict> {
    let of = |what: Limited| limits.iter().filter(move |l| l.what == what);
    let both = of(Limited::Interference).chain(of(Limited::Clearance));
    let owners: Vec<&str> = both.map(|l| l.owner.as_str()).collect();
    let fit = Fit {
        joint: Some(joint),
        hole,
        shaft,
        clearance: of(Limited::Clearance).map(|l| l.limits).collect(),
        interference: of(Limited::Interference).map(|l| l.limits).collect(),
        owner: (!owners.is_empty()).then(|| owners.join("; ")),
        rule: Some(site.rule),
        ..Fit::default()
    };
    let no_verdict = |error: Error| {
        let problem = error.to_string();
        work.settled(HeadFact::NoVerdict { problem });
    };
    fit.answer(site.tables).map_err(no_verdict).ok()
}

/// What came off on diameter, or the contradiction that one place reads as if metal had come on.
pub(super) fn came_off(
    off: Reading,
    came_on: Option<Length>,
    (field, with): (String, Instrument),
    work: &mut PlaceWork,
) {
    if let Some(by) = came_on {
        work.contradicts(RoundFact::Grew { by }, field, with);
    } else if off.sure_sign().is_ge() {
        round_place::came_off(off, work);
    }
}

/// A place of the steering, with the note of its sheet.
pub(super) fn begin(place: Place, note: Option<&String>) -> PlaceWork {
    let mut work = PlaceWork::new(place);
    work.cautions.push(Caution::Steering);
    work.notes.extend(note.cloned());
    work
}

/// Work by hand at the steering.
pub(super) fn by_hand(
    place: &Place,
    work: ByHand,
    task: HeadTask,
    material: Option<MaterialKind>,
) -> Draft {
    let draft = Draft::by_hand(place, work, task).minding(Caution::Steering);
    if material == Some(MaterialKind::Carbon) {
        return draft.minding(Caution::Carbon);
    }
    draft
}

/// The row of this name; a name that no table has is asked for anew.
pub(super) fn row_of<'a, R: InShop>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    name: Option<&str>,
    field: String,
) -> Option<&'a R> {
    let found = site.tables.find(name?);
    let refused = |error| identity::refused(work, field, &error);
    found.map_err(refused).ok()
}
