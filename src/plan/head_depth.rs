//! Depth of a head-tube bore against what goes in, and the gap between crown and head tube.

use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::caution::Caution;
use super::facts::{CutLimit, HeadAsk, HeadFact, HeadTask};
use super::head::{HeadEnd, Named};
use super::permit::{Pilot, Reason, Ruling, rule};
use super::sheet::{Fitted, Heard, Limited};
use super::site::{take, tool};
use super::steering::shown;
use super::work::{Draft, PlaceWork};
use crate::Figure;
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::judge::{CupDepth, Finding, Held};
use crate::measure::{Outcome, Reading, settled_below};
use crate::quantity::{Length, mm};
use crate::standard::{HeadSeat, HeadTubeEnd, Place};
use crate::thread::Turn;

/// Is the bore deep enough for what goes in?
pub(super) fn depth(end: &HeadEnd<'_>, named: &Named<'_>, work: &mut PlaceWork) {
    let readings = end.sheet.bore_depth.as_slice();
    if end.heard(Limited::BoreDepth, "bore depth", readings, work) {
        work.out = true;
        work.cure(HeadFact::DepthOutside);
    }
    let insertion = end.insertion();
    let Some(depth) = end.sheet.bore_depth else {
        if insertion.is_some() || end.limits(Limited::BoreDepth).next().is_some() {
            work.ask(end.field("bore_depth"), HeadAsk::BoreDepth);
        }
        return;
    };
    let part = insertion.and_then(|length| as_good(length, &depth));
    let judged = part.and_then(|insertion| {
        let cup = CupDepth {
            bore_depth: readings.to_vec(),
            insertion,
            room: None,
            rule: Some(end.site.rule),
        };
        Some((cup.answer(end.site.tables).ok()?, insertion))
    });
    listed(end, named, &depth, judged.is_some(), work);
    let Some((verdict, insertion)) = judged else {
        return;
    };
    if verdict.outcome == Outcome::NonconformityShown
        && !deepen(end, named.row, &depth, &insertion, work)
    {
        work.verdict(&verdict);
        return;
    }
    if verdict.outcome == Outcome::Undecided
        && let Some(next) = verdict.next.first()
    {
        work.ask(end.field("bore_depth"), next.ask.clone());
    }
    work.found(&verdict);
}

/// How long a part goes in. A sheet states it without uncertainty; it was read by the same hand as the bore, so it is taken to
/// be as good (common practice).
pub(super) fn as_good(insertion: Length, depth: &Reading) -> Option<Reading> {
    Reading::new(insertion, depth.standard_uncertainty()).ok()
}

/// The depth that the list wants. The cup at hand decides before the list.
fn listed(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    depth: &Reading,
    judged: bool,
    work: &mut PlaceWork,
) {
    let known = |row: &'_ &HeadSeat| row.bore_depth.as_ref().is_some_and(Figure::is_known);
    let Some(row) = named.row.filter(known) else {
        return;
    };
    let Some(least) = &row.bore_depth else { return };
    let held = Held::of_row(least, row.name.clone());
    let found = held.against("bore depth", &[*depth], end.site.rule);
    if found.outcome != Some(Outcome::NonconformityShown) {
        work.settled(found);
        return;
    }
    match least.lower() {
        Some(least) if !judged && !named.by_label => {
            let by = least - depth.value();
            work.fact(found);
            work.cure(HeadFact::StandsProud { by });
            work.ask(end.field("part.insertion"), HeadAsk::Insertion);
        }
        // The cup at hand decides, and a label proves nothing: the list stands beside.
        _ => work.settled(Finding {
            outcome: None,
            ..found
        }),
    }
}

/// Asks for the permit to deepen the bore by what the cup stands proud. Whether it is planned.
fn deepen(
    end: &HeadEnd<'_>,
    row: Option<&HeadSeat>,
    depth: &Reading,
    insertion: &Reading,
    work: &mut PlaceWork,
) -> bool {
    let mut limits = Vec::new();
    if let Some(heard) = Heard::of(&end.sheet.limits, Limited::BoreDepth)
        && let Some((most, what)) = heard.most()
        && let Ok(left) = Reading::new(most - depth.value(), depth.standard_uncertainty())
    {
        let grade = heard.limits.grade();
        limits.extend(CutLimit::new(LimitKind::Maker, what, left, grade));
        // What a cup seats deeper, the crown comes closer.
        limits.extend(gap_limit(end));
    }
    let needed = (Counted::Depth, insertion.less(depth));
    let mut request = end.request(Operation::Deepen, needed, limits, row, work);
    // A counterbore follows its own bore: only what sits in that is in its way.
    if end.fitted() != Some(Fitted::Yes) {
        request.pilot = Pilot::There;
    }
    let ruling = rule(request);
    if matches!(ruling, Ruling::Ask(Reason::NoStop)) {
        work.ask(end.field("limits"), HeadAsk::DepthAllowed);
    }
    let wish = end.wish(Operation::Deepen, "bore_depth");
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    let by = permit.off().map(|off| off.most);
    let task = HeadTask::Deepen {
        at: end.place.clone(),
        insertion: insertion.value(),
    };
    let mut draft = Draft::cut(permit, task)
        .with(tool("reamer", HeadFact::Counterbore))
        .turned(Turn::Clockwise)
        .minding(Caution::Steering);
    let clear = row.and_then(|r| r.clear_below.as_ref());
    if let Some(to) = clear.and_then(Figure::lower) {
        draft = draft.checking(HeadFact::ClearBelow { to });
    }
    draft.changes = changes(end, by);
    work.steps.push(draft);
    true
}

/// What a cut that lets the cups sit closer together changes.
pub(super) fn changes(end: &HeadEnd<'_>, by: Option<Length>) -> Vec<Change> {
    let change = |place, what: HeadFact| Change {
        place,
        what: what.into(),
        by,
    };
    let mut all = Vec::from([change(Place::Steerer, HeadFact::StackLower)]);
    if end.end == HeadTubeEnd::Lower {
        all.push(change(Place::Crown, HeadFact::CrownCloser));
    }
    all
}

/// The gap between crown and head tube against its makers' limits.
pub(super) fn crown_gap(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let gap = end.sheet.crown_gap;
    if end.heard(Limited::CrownGap, "crown gap", gap.as_slice(), work) {
        work.out = true;
        work.cure(HeadFact::OtherLowerCup);
    }
    match (end.limits(Limited::CrownGap).next(), gap) {
        (None, Some(gap)) => work.settled(shown(gap, HeadFact::CrownGap { gap })),
        (Some(_), None) => work.ask(end.field("crown_gap"), HeadAsk::CrownGap),
        _ => {}
    }
}

/// What the gap to the crown leaves for a cut at the lower end: all above the maker's least gap, or half of it (common
/// practice). `None` at the upper end, and where the gap is not known.
pub(super) fn gap_limit(end: &HeadEnd<'_>) -> Option<CutLimit> {
    let gap = end.sheet.crown_gap;
    let gap = gap.filter(|_| end.end == HeadTubeEnd::Lower)?;
    let heard = Heard::of(&end.sheet.limits, Limited::CrownGap);
    let kind = LimitKind::Clearance;
    let Some((heard, (least, what))) = heard.and_then(|h| Some((h.limits, h.least()?))) else {
        let (what, half) = (HeadFact::HalfCrownGap, gap.scaled(0.5));
        return CutLimit::leaving(kind, what, &half, mm(0.0), Grade::CommonPractice).ok();
    };
    CutLimit::leaving(kind, what, &gap, least, heard.grade()).ok()
}

/// Whether the cup is shown not to go in deep enough.
pub(super) fn too_shallow(end: &HeadEnd<'_>) -> bool {
    let both = end.sheet.bore_depth.zip(end.insertion());
    both.is_some_and(|(depth, insertion)| {
        settled_below(depth.value() + depth.expanded_uncertainty(), insertion)
    })
}
