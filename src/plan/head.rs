//! The head tube: bores before faces, a cup that does not come out stays, and the lower end has a crown below it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_now::{self, BoreNow};
use super::facts::{Allowance, CutLimit, HeadAsk, HeadFact};
use super::head_face::Planned;
use super::permit::{Identity, Pilot, Request};
use super::sheet::{Fitted, HeadEndSheet, HeadTubeSheet, Limited, MakerLimit};
use super::site::{Joint, Site, Wish};
use super::steering::{begin, held, row_of, unmeasured};
use super::work::{Draft, PlaceWork};
use super::{head_bore, head_depth, head_face, head_part, identity};
use crate::identify::Feature;
use crate::judge::Instrument;
use crate::measure::{Outcome, Reading, Surface, settled_below};
use crate::quantity::{Length, mm};
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

impl<'a> HeadEnd<'a> {
    pub(super) fn of(
        site: &'a Site<'a>,
        end: HeadTubeEnd,
        sheet: &'a HeadTubeSheet,
    ) -> Option<Self> {
        let (path, here, there) = match end {
            HeadTubeEnd::Upper => ("head_tube.upper", &sheet.upper, &sheet.lower),
            HeadTubeEnd::Lower => ("head_tube.lower", &sheet.lower, &sheet.upper),
        };
        let sheet = here.as_ref()?;
        let passes = sheet.passes.iter().map(Into::into);
        let missing = match (fitted(sheet), there.as_ref().and_then(fitted)) {
            (Some(Fitted::Yes), _) => Some(HeadFact::PartInBore),
            (_, Some(Fitted::Stuck)) => Some(HeadFact::OppositePartStays),
            (_, Some(Fitted::Yes)) => Some(HeadFact::OppositePartIn),
            _ => None,
        };
        Some(Self {
            site,
            end,
            place: Place::HeadTube(end),
            path,
            sheet,
            joint: site.joint(&sheet.common()),
            now: bore_now::of(&sheet.bore, &sheet.after, passes, sheet.coating, true),
            pilot: missing.map_or(Pilot::There, |why| Pilot::Missing(why.into())),
        })
    }

    pub(super) fn field(&self, field: &str) -> String {
        format!("{}.{field}", self.path)
    }

    /// The name of the part, or what it is.
    pub(super) fn part_name(&self) -> String {
        let name = self.sheet.part.as_ref().and_then(|p| p.name.clone());
        name.unwrap_or_else(|| String::from("the cup"))
    }

    pub(super) fn fitted(&self) -> Option<Fitted> {
        fitted(self.sheet)
    }

    /// How far the part goes in.
    pub(super) fn insertion(&self) -> Option<Length> {
        self.sheet.part.as_ref()?.insertion
    }

    /// The makers' limits of one kind.
    pub(super) fn limits(&self, what: Limited) -> impl Iterator<Item = &'a MakerLimit> + Clone {
        self.sheet.limits.iter().filter(move |l| l.what == what)
    }

    /// Every maker's limit of one kind, held against readings. Whether one is shown broken.
    pub(super) fn heard(
        &self,
        what: Limited,
        of: &'static str,
        readings: &[Reading],
        work: &mut PlaceWork,
    ) -> bool {
        let mut broken = false;
        for limit in self.limits(what) {
            let found = held(of, readings, limit, self.site.rule);
            broken |= found.outcome == Some(Outcome::NonconformityShown);
            work.settled(found);
        }
        broken
    }

    /// What a cut of this bore asks for, so much of it needed and so much allowed.
    pub(super) fn request(
        &self,
        operation: Operation,
        needed: (Counted, Reading),
        allowed: Vec<CutLimit>,
        row: Option<&HeadSeat>,
        work: &PlaceWork,
    ) -> Request<'_> {
        Request {
            place: &self.place,
            operation,
            material: self.joint.material,
            bonded: self.joint.bonded,
            consent: self.joint.consent,
            contradicted: !work.contradictions.is_empty(),
            identity: Identity::Known,
            metal_lost: false,
            makers_shape: is_integrated(row),
            pilot: self.pilot.clone(),
            to_size: false,
            needed: Some(needed),
            allowance: Allowance::new(allowed),
            stops: Vec::new(),
            waits: Vec::new(),
            decision: self.site.rule,
        }
    }

    /// What that cut is called, and where its readings stand.
    pub(super) fn wish(&self, operation: Operation, readings: &str) -> Wish<'_> {
        Wish {
            place: &self.place,
            joint: self.path,
            readings: self.field(readings),
            operation,
            only_coating: false,
        }
    }
}

fn fitted(end: &HeadEndSheet) -> Option<Fitted> {
    end.part.as_ref()?.fitted
}

/// A bearing lies in the frame itself.
pub(super) fn is_integrated(row: Option<&HeadSeat>) -> bool {
    row.is_some_and(|r| r.kind == SeatKind::Integrated)
}

pub(super) fn plan(site: &Site<'_>, sheet: &HeadTubeSheet) -> Vec<PlaceWork> {
    let both = head_face::both_surveyed(sheet);
    let mut works = Vec::new();
    let mut planned = Vec::new();
    for end in [HeadTubeEnd::Upper, HeadTubeEnd::Lower] {
        let Some(end) = HeadEnd::of(site, end, sheet) else {
            continue;
        };
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
    let questions = works.iter().flat_map(|w: &PlaceWork| &w.questions);
    let asked: Vec<String> = questions.map(|q| q.answer.clone()).collect();
    works.extend(head_face::plan(site, sheet, &planned, &asked));
    works
}

/// A maker's limit of parallelism that cannot be held against anything yet.
fn parallelism_unknown(end: &HeadEnd<'_>, sheet: &HeadTubeSheet, work: &mut PlaceWork) {
    for limit in end.limits(Limited::Parallelism) {
        work.settled(unmeasured(limit));
        work.hold(HeadFact::ParallelismWaits);
        for (path, end) in [
            ("head_tube.upper.face.probes", &sheet.upper),
            ("head_tube.lower.face.probes", &sheet.lower),
        ] {
            let face = end.as_ref().and_then(|e| e.face.as_ref());
            if face.is_none_or(|f| f.probes.is_empty()) {
                work.ask(path, HeadAsk::FaceHeights);
            }
        }
    }
}

/// The seat of one end, and which row it is.
fn seat<'a>(end: &HeadEnd<'a>) -> (PlaceWork, Option<&'a HeadSeat>) {
    let sheet = end.sheet;
    let mut work = begin(end.place.clone(), sheet.note.as_ref());
    let passes = sheet.passes.iter();
    work.notes.extend(passes.filter_map(|p| p.note.clone()));
    let stuck = end.fitted() == Some(Fitted::Stuck);
    work.measured = stuck
        || !sheet.bore.is_empty()
        || sheet.bore_depth.is_some()
        || !sheet.outside.is_empty()
        || sheet.crown_gap.is_some()
        || sheet.coating.is_some();
    work.worked = end.now.worked;
    if stuck {
        let part = end.part_name();
        work.leave(HeadFact::PartStays { part });
        sheet
            .limits
            .iter()
            .for_each(|l| work.settled(unmeasured(l)));
        head_depth::crown_gap(end, &mut work);
        return (work, None);
    }
    let mut named = named(end, &mut work);
    let row = named.row;
    head_part::wrong_kind(end, &mut named, &mut work);
    let changes = head_bore::bore(end, &named, &mut work);
    head_depth::depth(end, &named, &mut work);
    head_depth::crown_gap(end, &mut work);
    head_part::fit(end, row, changes, &mut work);
    if let Some(row) = row.filter(|r| r.kind == SeatKind::Integrated) {
        head_part::bearings(end, row, &mut work);
        work.leave(HeadFact::IntegratedSeat);
    }
    // What lies under a coating is read once it is off: the step asks for it.
    let mut operations = work.steps.iter().map(Draft::operation);
    if operations.any(|o| o == Operation::Clean) && !sheet.bore.is_empty() {
        work.questions.retain(|q| q.answer != end.field("bore"));
    }
    (work, row)
}

/// Which seat it is, and how sure that is.
pub(super) struct Named<'a> {
    pub row: Option<&'a HeadSeat>,
    pub identity: Identity,
    /// Only a label says so.
    pub by_label: bool,
}

/// A size that misses what was proved by no more may be that, made or left wrong. Common practice: half a millimetre is what
/// a reamer or a coat can account for.
const NEAR_MISS: Length = mm(0.5);

/// Names the seat. What paint may have narrowed names nothing and rules nothing out.
fn named<'a>(end: &HeadEnd<'a>, work: &mut PlaceWork) -> Named<'a> {
    let (sheet, now) = (end.sheet, &end.now);
    let named = |row: Option<&'a HeadSeat>, sure: bool, by_label: bool| Named {
        row,
        identity: if sure {
            Identity::Known
        } else {
            Identity::Open
        },
        by_label,
    };
    let confirmed = sheet.confirmed.as_deref();
    if confirmed.is_some() {
        let row = row_of(end.site, work, confirmed, end.field("confirmed"));
        row.into_iter().for_each(|row| proved(end, row, work));
        return named(row, row.is_some(), false);
    }
    let believed = row_of::<HeadSeat>(
        end.site,
        work,
        sheet.believed.as_deref(),
        end.field("believed"),
    );
    if let Some(row) =
        believed.filter(|row| now.bore.is_empty() || !now.on_metal() && explained(row, end))
    {
        let seat = row.code.clone();
        work.settled(HeadFact::TakenFor { seat });
        return named(Some(row), !now.bore.is_empty(), true);
    }
    let mut readings = identity::on_metal(&now.bore);
    if readings.is_empty() && believed.is_some() {
        // So far from what it is called that no coat is why.
        readings = now.readings();
    }
    let name = sheet.believed.as_deref();
    let mut seen = identity::observed(Feature::Bore, &readings);
    seen.extend(believed.and_then(|_| identity::belief(name)));
    if seen.is_empty() {
        return named(None, false, false);
    }
    let place = (&end.place, end.path);
    match identity::settle(end.site, work, place, &seen, (name, None), true) {
        Some(settled) => Named {
            row: end.site.tables.get(&settled.code),
            identity: settled.identity,
            by_label: false,
        },
        None => named(None, false, false),
    }
}

/// What was proved, told; and held against readings that are of something else.
fn proved(end: &HeadEnd<'_>, row: &HeadSeat, work: &mut PlaceWork) {
    let seat = || row.code.clone();
    work.settled(HeadFact::Proved { seat: seat() });
    let far = |reading: &Reading| {
        let (size, u) = (reading.value(), reading.expanded_uncertainty());
        let (low, high) = (row.bore.lower(), row.bore.upper());
        low.is_some_and(|low| settled_below(size + u + NEAR_MISS, low))
            || high.is_some_and(|high| settled_below(high + NEAR_MISS, size - u))
    };
    if let Some(reading) = identity::on_metal(&end.now.bore).into_iter().find(far) {
        let elsewhere = HeadFact::ProvedElsewhere {
            seat: seat(),
            bore: reading.value(),
        };
        work.contradicts(elsewhere, end.field("confirmed"), Instrument::Part);
    }
}

/// Whether what covers the bore, or may cover it, can be why it does not read as this row.
fn explained(row: &HeadSeat, end: &HeadEnd<'_>) -> bool {
    let (now, printed) = (&end.now, &row.bore);
    let ends = || {
        let low = printed.lower().or(printed.nominal())?;
        let high = printed.upper().or(printed.nominal())?;
        Some((now.smallest()?.value(), now.largest()?.value(), low, high))
    };
    let Some((small, large, low, high)) = ends() else {
        return false;
    };
    let mut surfaces = now.bore.iter().map(|p| p.surface);
    let painted = surfaces.all(|s| s == Surface::OverPaint);
    let narrow = settled_below(small, low);
    // Beyond what a coat can hide, and above the limit by more than a careless reamer, it is another seat.
    (painted || narrow)
        && !settled_below(NEAR_MISS, low - small)
        && !settled_below(NEAR_MISS, large - high)
        && (painted || !settled_below(high, large))
}
