//! The bore of a head-tube end: on metal or over paint, against its limits, and what becomes of it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::caution::Caution;
use super::head::{HeadEnd, Named, heard};
use super::head_ream::{Window, ream};
use super::sheet::{Limited, Marks};
use super::work::{ByHand, Draft, PlaceWork};
use crate::fit::MaterialKind;
use crate::judge::{Finding, Remedy, Verdict, extremes, spread};
use crate::measure::{Outcome, Reading, Surface, settled_below};
use crate::quantity::in_mm;
use crate::standard::{HeadSeat, SeatKind};

/// Judges the bore and plans its work; whether it will be another bore afterwards.
pub(super) fn bore(end: &HeadEnd<'_>, named: &Named<'_>, work: &mut PlaceWork) -> bool {
    let now = &end.now;
    let readings = now.readings();
    wall(end, &readings, work);
    came_off(end, work);
    if readings.is_empty() {
        heard(end, Limited::Bore, "bore", &[], work);
        work.ask_plain(
            end.field("bore"),
            "bore in two directions, at the mouth and at the shoulder",
            "a seat is known by measuring, not by its label",
            "three-point internal micrometer or inside caliper",
        );
        return clean(end, named.row, work);
    }
    let window = Window::of(end, named.row);
    let Some(mut verdict) = window.judged(end) else {
        work.settled(Finding::stated("bore", spread(&readings)));
        return clean(end, named.row, work);
    };
    let by = |remedy: Remedy| verdict.cures.iter().any(|c| c.by == remedy);
    let over = by(Remedy::Sleeve);
    let under = by(Remedy::Ream) || by(Remedy::RoundOut);
    work.settled(Finding::stated("bore", verdict.words()));
    if over {
        too_large(&verdict, under, work);
        return false;
    }
    if now.covered {
        work.found(&verdict);
        return clean(end, named.row, work);
    }
    if under {
        let on_metal = now
            .bore
            .iter()
            .any(|p| p.surface == Surface::OnMetal && window.is_above(p.reading.value()));
        if !on_metal {
            not_shown(&mut verdict);
        }
        return too_small(end, named, &window, &verdict, on_metal, work);
    }
    if verdict.outcome == Outcome::Undecided && window.is_known() && now.on_metal() {
        let next = verdict.next.first();
        work.ask_plain(
            end.field(if now.worked { "passes" } else { "bore" }),
            next.map_or_else(
                || String::from("bore again, finer"),
                |n| alloc::string::ToString::to_string(&n.ask),
            ),
            "it lies too close to a limit for the instrument used",
            "three-point internal micrometer",
        );
    }
    if now.outdated() {
        read_again(end, work);
    }
    work.found(&verdict);
    false
}

/// What was not read on metal is not shown too small.
fn not_shown(verdict: &mut Verdict) {
    for finding in &mut verdict.findings {
        if finding.outcome == Some(Outcome::NonconformityShown) {
            finding.outcome = Some(Outcome::Undecided);
            finding.doubt = Some(crate::judge::Doubt::NotSaid);
        }
    }
    verdict.outcome = Outcome::Undecided;
}

fn read_again(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    work.ask_plain(
        end.field("passes"),
        "bore again in two directions, on metal",
        "it was read before the coating came off",
        "three-point internal micrometer",
    );
}

/// The wall that is left, by the last readings.
fn wall(end: &HeadEnd<'_>, bore: &[Reading], work: &mut PlaceWork) {
    let (outside, bores) = (extremes(&end.sheet.outside), extremes(bore));
    let left = match (outside.first(), bores.last()) {
        (Some(outside), Some(bore)) => Some(outside.less(bore).scaled(0.5)),
        _ => None,
    };
    if let Some(left) = left {
        work.settled(Finding {
            readings: Vec::from([left]),
            ..Finding::stated(
                "wall",
                format!(
                    "{} ± {} now, by outside less bore, halved",
                    in_mm(left.value()),
                    in_mm(left.expanded_uncertainty())
                ),
            )
        });
    }
    let readings: Vec<Reading> = left.into_iter().collect();
    if heard(end, Limited::Wall, "wall left", &readings, work) {
        work.out = true;
        work.cure(String::from(
            "a wall under its maker's limit does not grow again: the frame maker decides whether it may be used",
        ));
    }
}

fn came_off(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let Some(removed) = end.now.removed else {
        return;
    };
    let words = match removed.sure_sign() {
        Ordering::Less => {
            let words = format!(
                "the bore reads {} narrower than before: measured elsewhere, or not clean",
                in_mm(-removed.value())
            );
            work.contradicts(
                words,
                end.field("passes"),
                "three-point internal micrometer",
            );
            return;
        }
        Ordering::Equal => String::from("nothing that these readings can see came off"),
        Ordering::Greater => format!(
            "{} ± {} on diameter at the narrowest place",
            in_mm(removed.value()),
            in_mm(removed.expanded_uncertainty())
        ),
    };
    work.removed = Vec::from([removed]);
    work.settled(Finding {
        readings: Vec::from([removed]),
        ..Finding::stated("what came off", words)
    });
}

/// Too large somewhere: a reamer cures no place that is over its limit.
fn too_large(verdict: &Verdict, small_too: bool, work: &mut PlaceWork) {
    work.out = true;
    work.found(verdict);
    if small_too {
        work.leave(String::from(
            "not reamed: where it is too small a reamer would help, where it is too large nothing that cuts does",
        ));
    }
    work.cures.extend(
        [
            "another cup, with a larger outside, by its maker's word",
            "an insert or a new head tube, by the frame maker or a qualified builder",
            "never by filing, a punch or raised burrs",
        ]
        .map(super::Fact::from),
    );
}

/// Too small, and not known to be covered.
fn too_small(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    window: &Window<'_>,
    verdict: &Verdict,
    shown: bool,
    work: &mut PlaceWork,
) -> bool {
    let now = &end.now;
    let mut waits = Vec::new();
    if !shown {
        let (field, measure) = if now.worked {
            (
                "passes",
                "what is left of the coating in the bore, and the bore again on metal",
            )
        } else {
            ("coating", "what covers the bore?")
        };
        work.ask_plain(
            end.field(field),
            measure,
            "paint narrows a bore; what is only covered is cleaned by hand and not cut",
            "eye, light, fingernail",
        );
        if now.worked {
            work.found(verdict);
            return true;
        }
        waits.push(end.field(field));
    }
    if now.marks == Some(Marks::Torn) {
        work.found(verdict);
        work.steps.push(Draft::refer_plain(
            &end.place,
            format!("Do not ream the {}: the last pass tore it", end.what()),
            "torn metal is cut again only with another reamer or another hand",
        ));
        return true;
    }
    let (asked, steps) = (work.questions.len(), work.steps.len());
    ream(end, named, window, waits, work);
    work.found(verdict);
    if work.questions.len() == asked && work.steps.len() == steps && shown {
        // Nothing here cures it for now.
        work.out = true;
    }
    true
}

/// A covered seat is cleaned by hand, whatever it is made of. Whether it is covered.
fn clean(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) -> bool {
    if !end.now.covered {
        if end.now.outdated() {
            read_again(end, work);
        }
        return false;
    }
    let metal = end.joint.material.is_some_and(MaterialKind::is_metal);
    let slips = row.is_some_and(|r| r.kind == SeatKind::Integrated);
    let again = if end.now.worked { " again" } else { "" };
    let how = if metal && !slips {
        ", down to metal"
    } else {
        ": wood, plastic or a fine cloth, nothing that scrapes"
    };
    let words = format!(
        "Take the coating out of the {}{again} by hand{how}",
        end.what()
    );
    let why = if slips {
        "paint under a bearing lets it rock; scraping the seat does the same"
    } else {
        "a cup pressed on paint sits neither square nor tight"
    };
    let mut draft =
        Draft::by_hand_plain(&end.place, ByHand::Clean, words, why).minding(Caution::Steering);
    if end.joint.material == Some(MaterialKind::Carbon) {
        draft = draft.minding(Caution::Carbon);
    }
    if slips {
        draft = draft
            .checking("ink the bearing, turn it in its seat: the mark must be an unbroken ring")
            .proved("the bearing drops in by hand and does not rock under a finger on any side");
    }
    work.steps.push(draft);
    true
}

impl Window<'_> {
    /// Whether the lower limit lies above this size.
    fn is_above(&self, size: crate::quantity::Length) -> bool {
        self.low
            .as_ref()
            .is_some_and(|low| settled_below(size, low.at))
    }
}
