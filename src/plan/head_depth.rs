//! Depth of a head-tube bore against what goes in, and the gap between crown and head tube.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::caution::Caution;
use super::facts::{Allowance, CutLimit};
use super::head::{HeadEnd, Named, heard};
use super::permit::{Identity, Pilot, Reason, Request, Ruling, rule};
use super::sheet::{Heard, Limited};
use super::site::{Wish, take, tool};
use super::work::{Draft, PlaceWork};
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::judge::{CupDepth, Finding, Verdict, sizes_against};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{HeadSeat, HeadTubeEnd, Place};
use crate::thread::Turn;

/// Is the bore deep enough for what goes in?
pub(super) fn depth(end: &HeadEnd<'_>, named: &Named<'_>, work: &mut PlaceWork) {
    let row = named.row;
    let depth = end.sheet.bore_depth;
    let readings: Vec<Reading> = depth.into_iter().collect();
    if heard(
        end,
        Limited::BoreDepth,
        "depth of the bore",
        &readings,
        work,
    ) {
        work.out = true;
        work.cure(String::from(
            "a bore outside its maker's depth: too shallow is deepened by permit only, too deep is for the frame maker",
        ));
    }
    let insertion = end.sheet.part.as_ref().and_then(|p| p.insertion);
    let Some(depth) = depth else {
        if insertion.is_some()
            || end
                .sheet
                .limits
                .iter()
                .any(|l| l.what == Limited::BoreDepth)
        {
            work.ask_plain(
                end.field("bore_depth"),
                "depth of the bore to its shoulder",
                "a cup longer than its bore stands proud",
                "depth rod",
            );
        }
        return;
    };
    let verdict = insertion
        .and_then(|length| as_good(length, &depth))
        .and_then(|insertion| {
            CupDepth {
                bore_depth: readings.clone(),
                insertion,
                room: None,
                rule: Some(end.site.rule),
            }
            .answer(end.site.tables)
            .ok()
        });
    listed(end, named, &depth, verdict.as_ref(), work);
    let (Some(verdict), Some(insertion)) = (verdict, insertion) else {
        return;
    };
    match verdict.outcome {
        Outcome::ConformityShown => work.found(&verdict),
        Outcome::Undecided => {
            work.ask_plain(
                end.field("bore_depth"),
                "depth of the bore at four places, finer, and the length of the cup below its flange",
                "the shallowest place decides: the cup may bottom before it seats",
                "depth micrometer or a ground plug and a depth caliper",
            );
            work.found(&verdict);
        }
        Outcome::NonconformityShown => {
            if deepen(end, row, &depth, insertion, work) {
                work.found(&verdict);
            } else {
                work.verdict(&verdict);
            }
        }
    }
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
    cup: Option<&Verdict>,
    work: &mut PlaceWork,
) {
    let Some(least) = named
        .row
        .and_then(|r| r.bore_depth.as_ref())
        .filter(|f| f.is_known())
    else {
        return;
    };
    let found = sizes_against(
        "depth of the bore",
        &[*depth],
        &Limits::of_requirement(least),
        "least depth by the seat's guide",
        least.evidence(),
        end.site.rule,
    );
    let short = least.lower().map(|least| least - depth.value());
    match (found.outcome, cup, short) {
        (Some(Outcome::NonconformityShown), None, Some(short)) if !named.by_label => {
            work.fact(found);
            work.cure(format!(
                "a cup made for the listed depth stands {} proud: take one that goes in less, have this one shortened by its maker's word, or have the bore deepened where the frame maker allows it",
                in_mm(short)
            ));
            work.ask_plain(
                end.field("part.insertion"),
                "how far the cup at hand goes in, below its flange",
                "the bore is shallower than this seat is listed; a shorter cup may still sit",
                "depth caliper",
            );
        }
        // The cup at hand decides, and a label proves nothing: the list stands beside.
        (Some(Outcome::NonconformityShown), ..) => work.settled(Finding {
            outcome: None,
            ..found
        }),
        _ => work.settled(found),
    }
}

/// Asks for the permit to deepen the bore by what the cup stands proud. Whether it is planned.
fn deepen(
    end: &HeadEnd<'_>,
    row: Option<&HeadSeat>,
    depth: &Reading,
    insertion: Length,
    work: &mut PlaceWork,
) -> bool {
    let Some(needed) = as_good(insertion, depth).map(|length| length.less(depth)) else {
        return false;
    };
    let mut limits = Vec::new();
    if let Some(heard) = Heard::of(&end.sheet.limits, Limited::BoreDepth)
        && let Some((most, words)) = heard.at_most()
        && let Ok(left) = Reading::new(most - depth.value(), depth.standard_uncertainty())
    {
        let what = format!("depth of the bore {words}");
        limits.extend(CutLimit::new(
            LimitKind::Maker,
            what,
            left,
            heard.limits.grade(),
        ));
        // What a cup seats deeper, the crown comes closer.
        limits.extend(gap_limit(end));
    }
    let ruling = rule(Request {
        place: &end.place,
        operation: Operation::Deepen,
        material: end.joint.material,
        bonded: end.joint.bonded,
        consent: end.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        // How deep it may be is its maker's word, whatever the seat is called.
        identity: Identity::Known,
        metal_lost: false,
        makers_shape: row.is_some_and(|r| r.kind == crate::standard::SeatKind::Integrated),
        pilot: match &end.pilot {
            // A counterbore follows its own bore: only what sits in that is in its way.
            Pilot::Missing(_)
                if end.sheet.part.as_ref().and_then(|p| p.fitted)
                    != Some(super::sheet::Fitted::Yes) =>
            {
                Pilot::There
            }
            other => other.clone(),
        },
        to_size: false,
        needed: Some((Counted::Depth, needed)),
        allowance: Allowance::new(limits),
        stops: Vec::new(),
        waits: Vec::new(),
        decision: end.site.rule,
    });
    let wish = Wish {
        place: &end.place,
        joint: end.path,
        readings: end.field("bore_depth"),
        operation: Operation::Deepen,
        only_coating: false,
    };
    if matches!(ruling, Ruling::Ask(Reason::NoStop)) {
        work.ask_plain(
            end.field("limits"),
            "how deep may the bore be made (`bore_depth`)? What lies below it: butt, gusset, bonded part",
            "the cup is longer than its bore; without the frame maker's word it is not deepened",
            "frame maker; light, depth rod",
        );
    }
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    let by = permit.off().map(|off| off.most);
    let clear = row
        .and_then(|r| r.clear_below.as_ref())
        .and_then(crate::Figure::lower);
    let mut draft = Draft::cut_plain(
        permit,
        format!(
            "Deepen the bore of the {} until the cup goes in {}",
            end.what(),
            in_mm(insertion)
        ),
        "the cup is longer than its bore",
    )
    .with(tool(
        "reamer",
        "counterbore or end-cutting head-tube reamer of the bore's own size",
    ))
    .turned(Turn::Clockwise)
    .minding(Caution::Steering);
    if let Some(clear) = clear {
        draft = draft.checking(format!(
            "what lies below: the bore stays clear to at least {}",
            in_mm(clear)
        ));
    }
    if end.end == HeadTubeEnd::Lower {
        draft = draft.changing(Change {
            place: Place::Crown,
            what: "the lower cup sits deeper by what comes off: gap to the crown again".into(),
            by,
        });
    }
    draft = draft.changing(Change {
        place: Place::Steerer,
        what: "the stack is lower by what comes off: steerer length and spacers again".into(),
        by,
    });
    work.steps.push(draft);
    true
}

/// The gap between crown and head tube against its makers' limits.
pub(super) fn crown_gap(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let readings: Vec<Reading> = end.sheet.crown_gap.into_iter().collect();
    let limited = end.sheet.limits.iter().any(|l| l.what == Limited::CrownGap);
    if heard(end, Limited::CrownGap, "gap to the crown", &readings, work) {
        work.out = true;
        work.cure(String::from(
            "gap to the crown out of its maker's limits: another lower cup or race, never by cutting",
        ));
    }
    if !limited && let Some(gap) = end.sheet.crown_gap {
        work.settled(Finding {
            readings,
            ..Finding::stated("gap to the crown", format!("{gap}; no number is published"))
        });
    }
    if limited && end.sheet.crown_gap.is_none() {
        work.ask_plain(
            end.field("crown_gap"),
            "gap between fork crown and head tube, fork fitted",
            "a maker limits it",
            "feeler or caliper",
        );
    }
}

/// What the gap to the crown leaves for a cut at the lower end: all above the maker's least gap, or half of it (common
/// practice). `None` at the upper end, and where the gap is not known.
pub(super) fn gap_limit(end: &HeadEnd<'_>) -> Option<CutLimit> {
    let gap = end
        .sheet
        .crown_gap
        .filter(|_| end.end == HeadTubeEnd::Lower)?;
    let heard = Heard::of(&end.sheet.limits, Limited::CrownGap);
    match heard
        .as_ref()
        .and_then(|h| Some((h.at_least()?, h.limits.grade())))
    {
        Some(((least, words), grade)) => CutLimit::leaving(
            LimitKind::Clearance,
            format!("gap between crown and head tube {words}"),
            &gap,
            least,
            grade,
        )
        .ok(),
        None => CutLimit::leaving(
            LimitKind::Clearance,
            "gap between crown and head tube, half of it",
            &gap.scaled(0.5),
            mm(0.0),
            Grade::CommonPractice,
        )
        .ok(),
    }
}

/// Whether the cup is shown not to go in deep enough.
pub(super) fn too_shallow(end: &HeadEnd<'_>) -> bool {
    let insertion = end.sheet.part.as_ref().and_then(|p| p.insertion);
    match (end.sheet.bore_depth, insertion) {
        (Some(depth), Some(insertion)) => {
            settled_below(depth.value() + depth.expanded_uncertainty(), insertion)
        }
        _ => false,
    }
}
