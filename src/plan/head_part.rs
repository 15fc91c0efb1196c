//! The cup or bearing of a head-tube end: is it of the right kind, and does it fit?

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::head::{HeadEnd, Named, unmeasured};
use super::permit::Identity;
use super::sheet::{Limited, Part};
use super::tried::{self, GoesIn};
use super::work::{Answers, PlaceWork};
use crate::judge::{Finding, Fit, MemberOf, extremes};
use crate::measure::{Outcome, settled_below, settled_cmp};
use crate::quantity::{in_mm, mm};
use crate::standard::{HeadSeat, HeadsetBearing, Joint, SeatKind};

/// The part, by its readings or else by its maker's limits.
fn shaft(part: &Part) -> MemberOf {
    if part.outside.is_empty() {
        part.outside_limits
            .map(MemberOf::within)
            .unwrap_or_default()
    } else {
        MemberOf::placed(part.outside.iter().map(|r| (*r).into()).collect::<Vec<_>>())
    }
}

/// Whether the person's own name of the part says so.
fn called(part: &Part, wanted: &str) -> bool {
    part.name.as_deref().is_some_and(|name| {
        name.to_lowercase()
            .split(|c: char| !c.is_alphanumeric())
            .any(|word| word == wanted)
    })
}

/// A pressed cup in a seat that takes a bearing by hand, or a bare bearing in a bore that takes a cup. Where a bore alone names
/// the seat, the part is the other witness, and which of the two is right is a question.
pub(super) fn wrong_kind(end: &HeadEnd<'_>, named: &mut Named<'_>, work: &mut PlaceWork) {
    let (Some(row), Some(part)) = (named.row, end.sheet.part.as_ref()) else {
        return;
    };
    let (cup, bearing) = (called(part, "cup"), called(part, "bearing"));
    let integrated = row.kind == SeatKind::Integrated;
    let bore = extremes(&end.now.readings());
    let outside = extremes(&part.outside);
    // Only on metal: through paint a bore reads too small.
    let presses = end.now.on_metal()
        && matches!((outside.last(), bore.first()), (Some(o), Some(b)) if o.less(b).sure_sign().is_gt());
    let pressed = matches!(row.kind, SeatKind::ExternalCup | SeatKind::ZeroStack);
    let name = end.part_name();
    let words = if integrated && (cup && !bearing || presses) {
        let how = if presses { ", larger than it" } else { "" };
        format!(
            "{name} is meant for a pressed bore, and {} is a seat in which a bearing lies by hand{how}",
            row.code
        )
    } else if pressed && bearing && !cup {
        format!(
            "{name} is a bearing, and {} is a bore into which a cup is pressed",
            row.code
        )
    } else {
        return;
    };
    if end.sheet.confirmed.is_some() {
        // The seat was proved, so it is the part that is wrong.
        work.fact(Finding {
            outcome: Some(Outcome::NonconformityShown),
            ..Finding::stated("part", words)
        });
        work.cure(String::from("the part that this seat was made for"));
    } else if end.sheet.believed.is_none() {
        let field = end.field("confirmed");
        work.ask_plain(
            field.clone(),
            "which seat is it? Try the part by hand, look for a shoulder or a chamfer that a bearing lies on",
            format!("{words}, and only the bore says so"),
            "the part itself tried by hand, frame maker's sheet",
        );
        named.identity = Identity::Doubtful(field);
    } else {
        work.contradicts(
            words,
            end.field("confirmed"),
            "the part itself tried by hand, frame maker's sheet",
        );
    }
}

/// Does it fit? Where the bore will be another one afterwards, what is found now does not decide.
pub(super) fn fit(end: &HeadEnd<'_>, row: Option<&HeadSeat>, changes: bool, work: &mut PlaceWork) {
    let integrated = row.is_some_and(|r| r.kind == SeatKind::Integrated);
    let goes_in = if integrated {
        GoesIn::Lies
    } else {
        GoesIn::Presses
    };
    tried::heard(work, end.now.part, goes_in, !end.now.covered);
    let of = |what: Limited| end.sheet.limits.iter().filter(move |l| l.what == what);
    let limited = || of(Limited::Interference).chain(of(Limited::Clearance));
    let part = end.sheet.part.as_ref();
    let member = part.map(shaft).unwrap_or_default();
    if member.is_empty() || end.now.bore.is_empty() {
        for limit in limited() {
            work.settled(unmeasured(limit));
        }
        if member.is_empty() && (part.is_some() || limited().next().is_some()) {
            work.ask_plain(
                end.field("part.outside"),
                "outside diameter of the part where it will sit",
                "the fit cannot be judged without it",
                "outside micrometer",
            );
        }
        return;
    }
    if row.is_none() && limited().next().is_none() {
        // Without a name of the seat nobody's window is its own.
        return;
    }
    let owners: Vec<&str> = limited().map(|l| l.owner.as_str()).collect();
    let asked = Fit {
        joint: Some(if integrated {
            Joint::IntegratedBearing
        } else {
            Joint::HeadCup
        }),
        hole: MemberOf::placed(end.now.bore.clone()),
        shaft: member,
        clearance: of(Limited::Clearance).map(|l| l.limits).collect(),
        interference: of(Limited::Interference).map(|l| l.limits).collect(),
        owner: (!owners.is_empty()).then(|| owners.join("; ")),
        rule: Some(end.site.rule),
        ..Fit::default()
    };
    let verdict = match asked.answer(end.site.tables) {
        Ok(verdict) => verdict,
        Err(error) => {
            work.settled(Finding::stated("fit", format!("{error}")));
            return;
        }
    };
    work.settled(Finding::stated(
        format!("{} in its bore", end.part_name()),
        verdict.words(),
    ));
    // A bearing that lies in its seat, of which nobody prints how loosely: its own size and the bore's have been judged.
    let nobody_says = integrated
        && verdict.outcome == Outcome::Undecided
        && verdict.findings.iter().all(|f| f.limits.is_none());
    if changes || end.now.covered || end.now.outdated() || nobody_says {
        work.found(&verdict);
        return;
    }
    let (outside, passes, limits) = (
        end.field("part.outside"),
        end.field("passes"),
        end.field("limits"),
    );
    work.judged(
        &verdict,
        Answers {
            reading: &outside,
            trial: &passes,
            written: &limits,
        },
    );
    if verdict.outcome == Outcome::NonconformityShown {
        work.cure(String::from(if integrated {
            "the bearing that this frame was made for, by its maker's sheet"
        } else {
            "a larger cup where it is loose, a smaller one where it presses too hard, by its maker's word; never by filing a cup, a punch or raised burrs"
        }));
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
        let found = Finding::stated(
            "bearing",
            format!(
                "reads {} outside, this seat is listed for {}: another bearing; a bearing in its seat must not rock",
                in_mm(read.value()),
                in_mm(listed)
            ),
        )
        .resting_on(row.bearing_outside.as_ref().and_then(|f| f.evidence()));
        if end.sheet.confirmed.is_some() {
            // The seat was proved, so it is the bearing that is another.
            work.fact(Finding {
                outcome: Some(Outcome::NonconformityShown),
                ..found
            });
            work.cure(String::from("a bearing that is listed for this seat"));
        } else {
            work.settled(found);
            work.ask_plain(
                end.field("confirmed"),
                "which bearing was the frame made for?",
                "bearings of the same trade name differ by 0.2 mm outside",
                "frame maker's sheet, micrometer",
            );
        }
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
