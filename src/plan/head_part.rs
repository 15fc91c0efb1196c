//! The cup or bearing of a head-tube end: is it of the right kind, and does it fit?

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::head::{HeadEnd, unmeasured};
use super::head_bore::Coat;
use super::sheet::{Limited, Part, PartDid};
use super::work::PlaceWork;
use crate::fit::{Feature, HoleMember, ShaftMember, SizeReading, Wanted};
use crate::judge::{Finding, FitQuestion, Joint, extremes};
use crate::measure::{Outcome, Placed, settled_below, settled_cmp};
use crate::quantity::{in_mm, mm};
use crate::standard::{HeadSeat, HeadsetBearing, SeatKind};

/// Diameters with their places, as the fit room takes them.
pub(super) fn sizes(readings: &[Placed]) -> Vec<SizeReading> {
    readings
        .iter()
        .map(|p| {
            let mut size = SizeReading::new(p.reading);
            if let Some(angle) = p.angle {
                size = size.across(angle).unwrap_or(size);
            }
            if let Some(depth) = p.depth {
                size = size.at_depth(depth).unwrap_or(size);
            }
            size
        })
        .collect()
}

/// The part, by its readings or else by its maker's limits.
fn shaft(part: &Part) -> Option<ShaftMember> {
    let readings: Vec<SizeReading> = part.outside.iter().map(|r| SizeReading::new(*r)).collect();
    ShaftMember::measured_only(&readings).ok().or_else(|| {
        part.outside_limits
            .and_then(|limits| ShaftMember::of_limits(limits).ok())
    })
}

/// Whether the person's own name of the part says so.
fn called(part: &Part, wanted: &str) -> bool {
    part.name.as_deref().is_some_and(|name| {
        name.to_lowercase()
            .split(|c: char| !c.is_alphanumeric())
            .any(|word| word == wanted)
    })
}

/// A pressed cup in a seat that takes a bearing by hand, or a bare bearing in a bore that takes a cup.
pub(super) fn wrong_kind(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) {
    let (Some(row), Some(part)) = (row, end.sheet.part.as_ref()) else {
        return;
    };
    let (cup, bearing) = (called(part, "cup"), called(part, "bearing"));
    let integrated = row.kind == SeatKind::Integrated;
    let bore = extremes(&end.now.plain());
    let outside = extremes(&part.outside);
    // Only on metal: through paint a bore reads too small.
    let presses = end.now.on_metal()
        && matches!((outside.last(), bore.first()), (Some(o), Some(b)) if o.less(b).sure_sign().is_gt());
    if integrated && (cup && !bearing || presses) {
        let name = end.part_name();
        let how = if presses { ", larger than it" } else { "" };
        work.contradicts(
            format!(
                "{name} is meant for a pressed bore, and {} is a seat in which a bearing lies by hand{how}",
                row.code
            ),
            end.field("part.name"),
            "the part itself, frame maker's sheet",
        );
    } else if bearing && !cup && matches!(row.kind, SeatKind::ExternalCup | SeatKind::ZeroStack) {
        work.contradicts(
            format!(
                "{} is a bearing, and {} is a bore into which a cup is pressed",
                end.part_name(),
                row.code
            ),
            end.field("part.name"),
            "the part itself, frame maker's sheet",
        );
    }
}

/// Does it fit? Where the bore will be another one afterwards, what is found now does not decide.
pub(super) fn fit(end: &HeadEnd<'_>, row: Option<&HeadSeat>, changes: bool, work: &mut PlaceWork) {
    let integrated = row.is_some_and(|r| r.kind == SeatKind::Integrated);
    let windows: Vec<(Limited, Wanted)> = end
        .sheet
        .limits
        .iter()
        .filter_map(|l| match l.what {
            Limited::Interference => {
                Some((l.what, Wanted::interference(l.limits, l.owner.clone())))
            }
            Limited::Clearance => Some((l.what, Wanted::clearance(l.limits, l.owner.clone()))),
            _ => None,
        })
        .collect();
    tried(end, integrated, work);
    let part = end.sheet.part.as_ref();
    let member = part.and_then(shaft);
    let hole = HoleMember::measured_only(&sizes(&end.now.readings)).ok();
    let (Some(shaft), Some(hole), Some(_)) = (member.clone(), hole.clone(), part) else {
        for limit in &end.sheet.limits {
            if matches!(limit.what, Limited::Interference | Limited::Clearance) {
                work.settled(unmeasured(limit));
            }
        }
        if (part.is_some() || !windows.is_empty()) && member.is_none() {
            work.ask(
                end.field("part.outside"),
                "outside diameter of the part where it will sit",
                "the fit cannot be judged without it",
                "outside micrometer",
            );
        }
        return;
    };
    if row.is_none() && windows.is_empty() {
        // Without a name of the seat nobody's window is its own.
        return;
    }
    let joint = if integrated {
        Joint::IntegratedBearing
    } else {
        Joint::HeadCup
    };
    let mut asked = FitQuestion::new(joint)
        .hole(hole)
        .shaft(shaft)
        .rule(end.site.rule);
    let known = !windows.is_empty();
    for (_, window) in windows {
        asked = asked.window(window);
    }
    let covered = end.now.coat == Coat::On || !end.now.reread;
    if covered {
        asked = asked.coated(Feature::Hole);
    }
    let verdict = match asked.judge() {
        Ok(verdict) => verdict,
        Err(error) => {
            work.settled(Finding::stated("fit", format!("{error}")));
            return;
        }
    };
    work.settled(Finding::stated(
        format!("{} in its bore", end.part_name()),
        verdict.sentence.clone(),
    ));
    for caution in &verdict.cautions {
        work.settled(Finding::stated("fit", caution.clone().into_owned()));
    }
    if changes || covered {
        work.found(&verdict);
        return;
    }
    let limited = known || verdict.findings.iter().any(|f| f.limits.is_some());
    if verdict.outcome == Outcome::Undecided && limited {
        let next = verdict.next.first();
        work.ask(
            end.field("part.outside"),
            next.map_or_else(
                || String::from("the part and its bore again, finer"),
                |n| n.measure.clone().into_owned(),
            ),
            "whether the part fits is not shown either way; steering must not be ridden before it is",
            "outside micrometer and three-point internal micrometer",
        );
    }
    if verdict.outcome == Outcome::NonconformityShown {
        work.cures.push(String::from(if integrated {
            "the bearing that this frame was made for, by its maker's sheet"
        } else {
            "another cup, by its maker's word: a larger outside where it is loose, a smaller one where it presses too hard; never by filing a cup, a punch or raised burrs"
        }));
    }
    work.verdict(&verdict);
}

/// What the part did when it was tried after the last pass.
fn tried(end: &HeadEnd<'_>, integrated: bool, work: &mut PlaceWork) {
    let Some(did) = end.now.part else { return };
    let (out, words) = match (did, integrated) {
        (PartDid::Fits, _) => (false, "it started as it should"),
        (PartDid::Tight, false) => (false, "it needs force, as a pressed part does"),
        (PartDid::Tight, true) => (
            true,
            "it does not drop in: paint, a burr, or another bearing",
        ),
        (PartDid::Loose, false) => (
            true,
            "it goes in with play: nothing presses, it must not be ridden",
        ),
        (PartDid::Loose, true) => (false, "it drops in, as it should; it must not rock"),
        (PartDid::Rocks, _) => (true, "it rocks: it does not sit on its seat all round"),
    };
    let finding = Finding {
        outcome: out.then_some(Outcome::NonconformityShown),
        ..Finding::stated("part, tried after the last pass", words)
    };
    // Under a coating that is still there it says nothing yet.
    if end.now.coat == Coat::On {
        work.settled(finding);
    } else {
        work.fact(finding);
    }
    if out && end.now.coat != Coat::On {
        work.cures.push(String::from(
            "look for paint, chips and burrs first; then bore and part again by measurement",
        ));
    }
}

/// The bearings that are listed for an integrated seat, and whether the one at hand is one of them.
pub(super) fn bearings(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) {
    let Some(row) = row else { return };
    let read = end
        .sheet
        .part
        .as_ref()
        .map(|p| extremes(&p.outside))
        .unwrap_or_default();
    let listed = row.bearing_outside.as_ref().and_then(|f| f.nominal());
    // A tenth is half the step between the listed bearings of one trade name (common practice).
    if let (Some(read), Some(listed)) = (read.first(), listed)
        && settled_below(
            mm(0.1) + read.expanded_uncertainty(),
            (read.value() - listed).abs(),
        )
    {
        work.settled(
            Finding::stated(
                "bearing",
                format!(
                    "reads {} outside, this seat is listed for {}: another bearing; a bearing in its seat must not rock",
                    in_mm(read.value()),
                    in_mm(listed)
                ),
            )
            .resting_on(row.bearing_outside.as_ref().and_then(|f| f.evidence())),
        );
        work.ask(
            end.field("confirmed"),
            "which bearing was the frame made for?",
            "bearings of the same trade name differ by 0.2 mm outside",
            "frame maker's sheet, micrometer",
        );
    }
    let mut all: Vec<&HeadsetBearing> = end
        .site
        .tables
        .all::<HeadsetBearing>()
        .filter(|b| b.seat == row.code)
        .collect();
    all.sort_by(|a, b| match (a.outside.nominal(), b.outside.nominal()) {
        (Some(a), Some(b)) => settled_cmp(a, b),
        (a, b) => a.is_none().cmp(&b.is_none()),
    });
    for bearing in all {
        work.settled(
            Finding::stated(
                "bearing",
                format!(
                    "{}: {} x {} x {}, inner {} (race), outer {} (frame seat)",
                    bearing.code,
                    bearing.bore,
                    bearing.outside,
                    bearing.height,
                    bearing.inner_angle,
                    bearing.outer_angle
                ),
            )
            .resting_on(bearing.outside.evidence()),
        );
    }
}
