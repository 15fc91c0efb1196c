//! The head tube: bores before faces, a cup that does not come out stays, and the lower end has a crown below it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Operation;
use super::bore_now::{self, BoreNow};
use super::caution::Caution;
use super::head_face::Planned;
use super::permit::{Identity, Pilot};
use super::sheet::{Fitted, HeadEndSheet, HeadTubeSheet, Limited, MakerLimit};
use super::site::{Joint, Site};
use super::work::PlaceWork;
use super::{head_bore, head_depth, head_face, head_part, identity};
use crate::identify::Feature;
use crate::judge::{Finding, sizes_against};
use crate::measure::{Outcome, Reading, Surface, settled_below};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{HeadSeat, HeadTubeEnd, Place, SeatKind};

/// One end, with what its planners share.
pub(super) struct HeadEnd<'a> {
    pub site: &'a Site<'a>,
    pub end: HeadTubeEnd,
    pub place: Place,
    /// Its path in the sheet.
    pub path: &'static str,
    pub sheet: &'a HeadEndSheet,
    pub joint: Joint<'a>,
    pub now: BoreNow,
    /// What guides a cutter that goes into this end: the opposite bore.
    pub pilot: Pilot,
}

impl HeadEnd<'_> {
    pub(super) const fn what(&self) -> &'static str {
        match self.end {
            HeadTubeEnd::Upper => "head tube, upper end",
            HeadTubeEnd::Lower => "head tube, lower end",
        }
    }

    pub(super) fn field(&self, field: &str) -> String {
        format!("{}.{field}", self.path)
    }

    /// The name of the part, or what it is.
    pub(super) fn part_name(&self) -> String {
        self.sheet
            .part
            .as_ref()
            .and_then(|p| p.name.clone())
            .unwrap_or_else(|| String::from("the cup"))
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &HeadTubeSheet) -> Vec<PlaceWork> {
    let ends = [
        (HeadTubeEnd::Upper, &sheet.upper, &sheet.lower),
        (HeadTubeEnd::Lower, &sheet.lower, &sheet.upper),
    ];
    let both = head_face::both_surveyed(sheet);
    let mut works = Vec::new();
    let mut planned = Vec::new();
    for (end, here, there) in ends {
        let Some(here) = here else { continue };
        let end = end_of(site, end, here, there.as_ref());
        let (mut work, row) = seat(&end);
        if !both {
            parallelism_unknown(&end, sheet, &mut work);
        }
        planned.push(Planned {
            row,
            contradicted: !work.contradictions.is_empty(),
            end,
        });
        works.push(work);
    }
    let asked: Vec<String> = works
        .iter()
        .flat_map(|w| &w.questions)
        .map(|q| q.answer.clone())
        .collect();
    works.extend(head_face::plan(site, sheet, &planned, &asked));
    works
}

/// A maker's limit of parallelism that cannot be held against anything yet.
fn parallelism_unknown(end: &HeadEnd<'_>, sheet: &HeadTubeSheet, work: &mut PlaceWork) {
    let limits = end.sheet.limits.iter();
    for limit in limits.filter(|l| l.what == Limited::Parallelism) {
        work.settled(unmeasured(limit));
        work.hold("parallelism of both faces: waits for the heights of both");
        for (path, end) in [
            ("head_tube.upper.face.probes", &sheet.upper),
            ("head_tube.lower.face.probes", &sheet.lower),
        ] {
            let face = end.as_ref().and_then(|e| e.face.as_ref());
            if face.is_none_or(|f| f.probes.is_empty()) {
                work.ask_plain(
                    path,
                    "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
                    "a maker limits how far the two faces may be out of parallel",
                    "dial indicator turned about the pilot",
                );
            }
        }
    }
}

fn end_of<'a>(
    site: &'a Site<'a>,
    end: HeadTubeEnd,
    sheet: &'a HeadEndSheet,
    other: Option<&HeadEndSheet>,
) -> HeadEnd<'a> {
    let fitted = |end: &HeadEndSheet| end.part.as_ref().and_then(|p| p.fitted);
    let pilot = match (fitted(sheet), other.and_then(fitted)) {
        (Some(Fitted::Yes), _) => Pilot::Missing("a part sits in this bore; take it out first".into()),
        (_, Some(Fitted::Stuck)) => Pilot::Missing("the opposite bore, in which the cutter is centred, is filled by a part that stays; whether a cutter guided by its own bore or by a rod through that part may be used is for the frame maker".into()),
        (_, Some(Fitted::Yes)) => Pilot::Missing("the opposite bore, in which the cutter is centred, is filled by a part; take that out first".into()),
        _ => Pilot::There,
    };
    HeadEnd {
        site,
        end,
        place: Place::HeadTube(end),
        path: match end {
            HeadTubeEnd::Upper => "head_tube.upper",
            HeadTubeEnd::Lower => "head_tube.lower",
        },
        sheet,
        joint: site.joint(&sheet.common()),
        now: bore_now::of(
            &sheet.bore,
            &sheet.after,
            sheet.passes.iter().map(Into::into),
            sheet.coating,
            true,
        ),
        pilot,
    }
}

/// The seat of one end, and which row it is.
fn seat<'a>(end: &HeadEnd<'a>) -> (PlaceWork, Option<&'a HeadSeat>) {
    let mut work = PlaceWork::new(end.place.clone());
    let sheet = end.sheet;
    work.cautions.push(Caution::Steering);
    work.notes.extend(sheet.note.clone());
    work.notes
        .extend(sheet.passes.iter().filter_map(|p| p.note.clone()));
    let stuck = sheet.part.as_ref().and_then(|p| p.fitted) == Some(Fitted::Stuck);
    work.measured = stuck
        || !sheet.bore.is_empty()
        || sheet.bore_depth.is_some()
        || !sheet.outside.is_empty()
        || sheet.crown_gap.is_some()
        || sheet.coating.is_some();
    work.worked = end.now.worked;
    if stuck {
        left_with_its_part(end, &mut work);
        return (work, None);
    }
    let mut named = named(end, &mut work);
    let row = named.row;
    let integrated = row.is_some_and(|r| r.kind == SeatKind::Integrated);
    head_part::wrong_kind(end, &mut named, &mut work);
    let changes = head_bore::bore(end, &named, &mut work);
    head_depth::depth(end, &named, &mut work);
    head_depth::crown_gap(end, &mut work);
    head_part::fit(end, row, changes, &mut work);
    if integrated {
        head_part::bearings(end, row, &mut work);
        work.leave(String::from(
            "the seat itself: it is neither reamed nor faced here, its angle and depth belong together",
        ));
    }
    // What lies under a coating is read once it is off: the step asks for it.
    let cleans = work
        .steps
        .iter()
        .any(|step| step.operation() == Operation::Clean);
    if cleans && !sheet.bore.is_empty() {
        work.questions.retain(|q| q.answer != end.field("bore"));
    }
    (work, row)
}

/// A part that does not come out: it stays, and its bore and face with it.
fn left_with_its_part(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let name = end.part_name();
    work.leave(format!(
        "{name}: pressed in and does not come out with a reasonable effort; it stays, and its bore and face with it"
    ));
    work.settled(Finding::stated(
        "fitted part",
        format!("{name} stays: forcing it out costs more than it is worth. Mask it, and check that its bearing turns"),
    ));
    for limit in &end.sheet.limits {
        work.settled(unmeasured(limit));
    }
    head_depth::crown_gap(end, work);
}

/// A maker's limit of something that was not measured, or that is not used here.
pub(super) fn unmeasured(limit: &MakerLimit) -> Finding {
    sizes_against(
        format!("maker's limit, {}", limit.what),
        &[],
        &limit.limits,
        &limit.owner,
        None,
        crate::measure::DecisionRule::default(),
    )
}

/// Every maker's limit of one kind, held against readings. Whether one is shown broken.
pub(super) fn heard(
    end: &HeadEnd<'_>,
    what: Limited,
    words: &'static str,
    readings: &[Reading],
    work: &mut PlaceWork,
) -> bool {
    let mut broken = false;
    for limit in end.sheet.limits.iter().filter(|l| l.what == what) {
        let found = sizes_against(
            words,
            readings,
            &limit.limits,
            &limit.owner,
            None,
            end.site.rule,
        );
        broken |= found.outcome == Some(Outcome::NonconformityShown);
        work.settled(found);
    }
    broken
}

/// Which seat it is, and how sure that is.
pub(super) struct Named<'a> {
    pub row: Option<&'a HeadSeat>,
    pub identity: Identity,
    /// Only a label says so.
    pub by_label: bool,
}

impl Named<'_> {
    const OPEN: Self = Self {
        row: None,
        identity: Identity::Open,
        by_label: false,
    };
}

/// A size that misses what was proved by no more may be that, made or left wrong. Common practice: half a millimetre is what
/// a reamer or a coat can account for.
const NEAR_MISS: Length = mm(0.5);

/// Names the seat. What paint may have narrowed names nothing and rules nothing out.
fn named<'a>(end: &HeadEnd<'a>, work: &mut PlaceWork) -> Named<'a> {
    let sheet = end.sheet;
    let tables = end.site.tables;
    let known = |row: &'a HeadSeat| Named {
        row: Some(row),
        identity: Identity::Known,
        by_label: false,
    };
    if let Some(name) = sheet.confirmed.as_deref() {
        return match tables.find::<HeadSeat>(name) {
            Ok(row) => {
                proved(end, row, work);
                known(row)
            }
            Err(error) => {
                identity::refused(work, end.field("confirmed"), &error);
                Named::OPEN
            }
        };
    }
    let believed = match sheet
        .believed
        .as_deref()
        .map(|b| tables.find::<HeadSeat>(b))
    {
        Some(Ok(row)) => Some(row),
        Some(Err(error)) => {
            identity::refused(work, end.field("believed"), &error);
            None
        }
        None => None,
    };
    let not_over_paint = identity::on_metal(&end.now.bore);
    let taken = believed
        .filter(|row| end.now.bore.is_empty() || !end.now.on_metal() && explained(row, end));
    if let Some(row) = taken {
        work.settled(Finding::stated(
            "which standard",
            format!(
                "taken for {}, as it is called: a label proves nothing, and paint narrows a bore, so it is read on metal first",
                row.code
            ),
        ));
        return Named {
            row: Some(row),
            identity: if end.now.bore.is_empty() {
                Identity::Open
            } else {
                Identity::Known
            },
            by_label: true,
        };
    }
    let readings = match (not_over_paint.is_empty(), believed) {
        (false, _) => not_over_paint,
        // So far from what it is called that no coat is why.
        (true, Some(_)) => end.now.readings(),
        (true, None) => Vec::new(),
    };
    let mut seen = identity::observed(Feature::Bore, &readings);
    seen.extend(
        believed
            .and(sheet.believed.as_deref())
            .and_then(|b| identity::belief(Some(b))),
    );
    if seen.is_empty() {
        return Named::OPEN;
    }
    let settled = identity::settle(
        end.site,
        work,
        (&end.place, end.path),
        &seen,
        (sheet.believed.as_deref(), None),
        true,
    );
    match settled {
        Some(settled) => Named {
            row: tables.get::<HeadSeat>(&settled.code),
            identity: settled.identity,
            by_label: false,
        },
        None => Named::OPEN,
    }
}

/// What was proved, told; and held against readings that are of something else.
fn proved(end: &HeadEnd<'_>, row: &HeadSeat, work: &mut PlaceWork) {
    work.settled(Finding::stated(
        "which standard",
        format!("{}, {}: proved by a gauge or its part", row.code, row.name),
    ));
    let (low, high) = (row.bore.lower(), row.bore.upper());
    for reading in identity::on_metal(&end.now.bore) {
        let u = reading.expanded_uncertainty();
        let far = low.is_some_and(|low| settled_below(reading.value() + u + NEAR_MISS, low))
            || high.is_some_and(|high| settled_below(high + NEAR_MISS, reading.value() - u));
        if far {
            work.contradicts(
                format!(
                    "{} was proved there, and a bore of {} is none",
                    row.code,
                    in_mm(reading.value())
                ),
                end.field("confirmed"),
                "its part, and the bore again",
            );
            return;
        }
    }
}

/// Whether what covers the bore, or may cover it, can be why it does not read as this row.
fn explained(row: &HeadSeat, end: &HeadEnd<'_>) -> bool {
    let now = &end.now;
    let (Some(small), Some(large)) = (now.smallest(), now.largest()) else {
        return false;
    };
    let printed = &row.bore;
    let (Some(low), Some(high)) = (
        printed.lower().or(printed.nominal()),
        printed.upper().or(printed.nominal()),
    ) else {
        return false;
    };
    let painted = now.bore.iter().all(|p| p.surface == Surface::OverPaint);
    let narrow = settled_below(small.value(), low);
    // Beyond what a coat can hide, and above the limit by more than a careless reamer, it is another seat.
    (painted || narrow)
        && !settled_below(NEAR_MISS, low - small.value())
        && !settled_below(NEAR_MISS, large.value() - high)
        && (painted || !settled_below(high, large.value()))
}
