//! The cup or bearing of a head-tube end: is it of the right kind, and does it fit?

use alloc::format;
use alloc::vec::Vec;

use super::facts::{CommonAsk, Found, HeadAsk, HeadFact};
use super::head::{HeadEnd, Named, is_integrated};
use super::permit::Identity;
use super::sheet::{Limited, Part};
use super::steering::{fit_of, unmeasured};
use super::tried::{self, GoesIn};
use super::work::{Answers, PlaceWork};
use crate::judge::{Instrument, MemberOf, extremes};
use crate::measure::{Outcome, Placed, settled_below, settled_cmp};
use crate::quantity::mm;
use crate::standard::{HeadSeat, HeadsetBearing, Joint, SeatKind};

/// The part, by its readings or else by its maker's limits.
fn shaft(part: &Part) -> MemberOf {
    let readings: Vec<Placed> = part.outside.iter().map(|r| (*r).into()).collect();
    let limits = part.outside_limits.filter(|_| readings.is_empty());
    MemberOf {
        limits,
        ..MemberOf::placed(readings)
    }
}

/// Whether the person's own name of the part says so.
fn called(part: &Part, wanted: &str) -> bool {
    let name = part.name.as_deref().unwrap_or_default().to_lowercase();
    name.split(|c: char| !c.is_alphanumeric())
        .any(|word| word == wanted)
}

/// A pressed cup in a seat that takes a bearing by hand, or a bare bearing in a bore that takes a cup. Where a bore alone names
/// the seat, the part is the other witness, and which of the two is right is a question.
pub(super) fn wrong_kind(end: &HeadEnd<'_>, named: &mut Named<'_>, work: &mut PlaceWork) {
    let (Some(row), Some(part)) = (named.row, end.sheet.part.as_ref()) else {
        return;
    };
    let (cup, bearing) = (called(part, "cup"), called(part, "bearing"));
    let outside = extremes(&part.outside).last().copied();
    // Only on metal: through paint a bore reads too small.
    let bore = end.now.smallest().filter(|_| end.now.on_metal());
    let larger = outside
        .zip(bore)
        .is_some_and(|(o, b)| o.less(&b).sure_sign().is_gt());
    let (part, seat) = (end.part_name(), row.code.clone());
    let wrong = match row.kind {
        SeatKind::Integrated if cup && !bearing || larger => {
            HeadFact::CupInSeat { part, seat, larger }
        }
        SeatKind::ExternalCup | SeatKind::ZeroStack if bearing && !cup => {
            HeadFact::BearingInBore { part, seat }
        }
        _ => return,
    };
    let field = end.field("confirmed");
    if end.sheet.confirmed.is_some() {
        // The seat was proved, so it is the part that is wrong.
        not_of_this_seat(wrong.into(), work);
    } else if end.sheet.believed.is_none() {
        work.ask(field.clone(), HeadAsk::WhichSeat { because: wrong });
        named.identity = Identity::Doubtful(field);
    } else {
        work.contradicts(wrong, field, Instrument::Part);
    }
}

/// The part is out, because the seat was proved.
fn not_of_this_seat(found: Found, work: &mut PlaceWork) {
    work.fact(Found {
        outcome: Some(Outcome::NonconformityShown),
        ..found
    });
    work.cure(HeadFact::PartForSeat);
}

/// Does it fit? Where the bore will be another one afterwards, what is found now does not decide.
pub(super) fn fit(end: &HeadEnd<'_>, row: Option<&HeadSeat>, changes: bool, work: &mut PlaceWork) {
    let now = &end.now;
    let integrated = is_integrated(row);
    let (joint, goes_in) = if integrated {
        (Joint::IntegratedBearing, GoesIn::Lies)
    } else {
        (Joint::HeadCup, GoesIn::Presses)
    };
    tried::heard(work, now.part, goes_in, !now.covered);
    let tight = end.limits(Limited::Interference);
    let mut limited = tight.chain(end.limits(Limited::Clearance));
    let part = end.sheet.part.as_ref();
    let member = part.map(shaft).unwrap_or_default();
    if member.is_empty() || now.bore.is_empty() {
        let any = part.is_some() || limited.clone().next().is_some();
        limited.for_each(|limit| work.settled(unmeasured(limit)));
        if member.is_empty() && any {
            work.ask(end.field("part.outside"), CommonAsk::PartOutside);
        }
        return;
    }
    if row.is_none() && limited.next().is_none() {
        // Without a name of the seat nobody's window is its own.
        return;
    }
    let both = (MemberOf::placed(now.bore.clone()), member);
    let Some(verdict) = fit_of(end.site, work, joint, both, &end.sheet.limits) else {
        return;
    };
    // A bearing that lies in its seat, of which nobody prints how loosely: its own size and the bore's have been judged.
    let nobody_says = integrated
        && verdict.outcome == Outcome::Undecided
        && verdict.findings.iter().all(|f| f.limits.is_none());
    if changes || now.covered || now.outdated() || nobody_says {
        work.found(&verdict);
        return;
    }
    let answers = Answers {
        reading: &end.field("part.outside"),
        trial: &end.field("passes"),
        written: &end.field("limits"),
    };
    work.judged(&verdict, answers);
    if verdict.outcome == Outcome::NonconformityShown {
        work.cure(if integrated {
            HeadFact::PartForSeat
        } else {
            HeadFact::CupOfSize
        });
    }
}

/// The bearings that are listed for an integrated seat, and whether the one at hand is one of them.
pub(super) fn bearings(end: &HeadEnd<'_>, row: &HeadSeat, work: &mut PlaceWork) {
    let part = end.sheet.part.as_ref();
    let read = part.and_then(|p| extremes(&p.outside).first().copied());
    let figure = row.bearing_outside.as_ref();
    // A tenth is half the step between the listed bearings of one trade name (common practice).
    if let Some((read, listed)) = read.zip(figure.and_then(|f| f.nominal()))
        && let reads = read.value()
        && settled_below(
            mm(0.1) + read.expanded_uncertainty(),
            (reads - listed).abs(),
        )
    {
        let fact = HeadFact::OtherBearing { reads, listed };
        let found = Found::of(fact).resting_on(figure.and_then(|f| f.evidence()));
        if end.sheet.confirmed.is_some() {
            not_of_this_seat(found, work);
        } else {
            work.settled(found);
            work.ask(end.field("confirmed"), HeadAsk::WhichBearing);
        }
    }
    let listed = end.site.tables.all::<HeadsetBearing>();
    let mut listed: Vec<_> = listed.filter(|b| b.seat == row.code).collect();
    listed.sort_by(|a, b| match (a.outside.nominal(), b.outside.nominal()) {
        (Some(a), Some(b)) => settled_cmp(a, b),
        (a, b) => a.is_none().cmp(&b.is_none()),
    });
    for bearing in listed {
        let fact = HeadFact::ListedBearing {
            bearing: bearing.code.clone(),
            size: format!(
                "{} x {} x {}",
                bearing.bore, bearing.outside, bearing.height
            ),
            angles: format!("{} x {}", bearing.inner_angle, bearing.outer_angle),
        };
        work.settled(Found::of(fact).resting_on(bearing.outside.evidence()));
    }
}
