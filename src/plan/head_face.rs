//! The faces of a head tube, each by itself and both together.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::face::{self, Facing};
use super::face_now;
use super::facts::{HeadAsk, HeadFact};
use super::head::{HeadEnd, is_integrated};
use super::head_depth::{as_good, changes, gap_limit, too_shallow};
use super::head_parallel::{parallel, together};
use super::permit::Pilot;
use super::sheet::{Face, Fitted, HeadTubeSheet, Heard, Limited};
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::{Grade, Text};
use crate::face::{CutLimit, LimitKind, RingSurvey, Tilt};
use crate::judge::sizes_against;
use crate::measure::{Limits, Outcome, Reading};
use crate::standard::{FacingRule, HeadSeat, HeadTubeEnd, Place};

/// An end as its face is planned.
pub(super) struct Planned<'a> {
    pub end: HeadEnd<'a>,
    pub row: Option<&'a HeadSeat>,
    /// Statements about the seat contradict each other.
    pub contradicted: bool,
}

impl Planned<'_> {
    /// Why its face is left as it is: nothing is or will be clamped against it, or a part stays on it.
    fn left(&self) -> Option<HeadFact> {
        if self.end.fitted() == Some(Fitted::Stuck) {
            let part = self.end.part_name();
            return Some(HeadFact::FaceUnderPart { part });
        }
        is_integrated(self.row).then_some(HeadFact::IntegratedFace)
    }

    /// What guides a cutter on this face.
    fn pilot(&self) -> Pilot {
        if self.row.is_none() {
            Pilot::Missing(HeadFact::SeatNotNamed.into())
        } else if self.end.pilot == Pilot::There && too_shallow(&self.end) {
            Pilot::Missing(HeadFact::TooShallowToFace.into())
        } else {
            self.end.pilot.clone()
        }
    }
}

/// Whose what is published for both end faces together.
pub(super) const OWNER: &str = "a headset maker";

/// What is printed for both end faces together.
pub(super) fn published<'a>(site: &Site<'a>) -> Option<(Limits, &'a FacingRule)> {
    let row = site.tables.get::<FacingRule>("end_face_parallelism")?;
    let limits = Limits::of_requirement(&row.window);
    limits.upper().known()?;
    Some((limits, row))
}

pub(super) fn plan(
    site: &Site<'_>,
    sheet: &HeadTubeSheet,
    ends: &[Planned<'_>],
    asked: &[String],
) -> Vec<PlaceWork> {
    let clamped = ends.iter().all(|p| p.left().is_none());
    let parallel = parallel(site, sheet, clamped);
    let verdict = parallel.as_ref();
    let out = verdict.is_some_and(|p| p.outcome == Outcome::NonconformityShown);
    let tilted = |face: &Face| tilt(face).is_some_and(|t| t.run_out.sure_sign().is_gt());
    let faces = || {
        let faced = ends.iter();
        faced.filter_map(|p| Some((p, p.end.sheet.face.as_ref()?)))
    };
    let any_tilted = faces().any(|(_, face)| tilted(face));
    let mut works: Vec<PlaceWork> = faces()
        .map(|(planned, face)| {
            let mut work = match planned.left() {
                Some(why) => left(site, planned, face, why),
                None => one(site, planned, face, out && (!any_tilted || tilted(face))),
            };
            waits_for_seats(&mut work, asked);
            work
        })
        .collect();
    if let Some(parallel) = parallel {
        together(ends, &parallel, &mut works);
    }
    works
}

/// A face as it is now, about the axis of the head tube.
pub(super) fn surveyed(face: &Face) -> Option<RingSurvey> {
    let now = face_now::now(face, face.coating);
    face_now::survey(face, now.probes, "head tube axis").ok()
}

/// How far it is out of square, over its diameter.
fn tilt(face: &Face) -> Option<Tilt> {
    let survey = surveyed(face)?;
    survey.tilt(survey.face().outer().length() * 2.0).ok()
}

/// Whether both faces are surveyed, so that something can be said of both together.
pub(super) fn both_surveyed(sheet: &HeadTubeSheet) -> bool {
    let mut ends = [&sheet.upper, &sheet.lower].into_iter();
    ends.all(|end| {
        let face = end.as_ref().and_then(|end| end.face.as_ref());
        face.and_then(surveyed).is_some()
    })
}

/// One face.
fn one(site: &Site<'_>, planned: &Planned<'_>, face: &Face, out_of_parallel: bool) -> PlaceWork {
    let end = &planned.end;
    let place = Place::HeadFace(end.end);
    let square =
        published(site).map(|(limits, row)| (limits, Text::Borrowed(OWNER), row.window.evidence()));
    let besides = out_of_parallel.then(|| (Reading::zero(), HeadFact::OutOfParallel.to_string()));
    let facing = Facing {
        path: format!("{}.face", end.path),
        what: place.words().into_owned(),
        place,
        face,
        joint: end.joint,
        joint_path: end.path,
        coating: end.sheet.coating,
        contradicted: planned.contradicted,
        cutter: "head-tube facing cutter",
        pilot: planned.pilot(),
        guided: None,
        square,
        limits: limits(end),
        limits_now: Vec::new(),
        besides,
        changes: changes(end, None),
    };
    let mut work = face::plan(site, facing);
    what_is_unknown(end, &mut work);
    work
}

/// A face that only waits for what the seats ask for says so: each question stands once in a plan.
fn waits_for_seats(work: &mut PlaceWork, asked: &[String]) {
    let mut questions = work.questions.iter();
    let waits = !work.questions.is_empty() && questions.all(|q| asked.contains(&q.answer));
    if waits && work.steps.is_empty() {
        work.leave(HeadFact::FaceWaits);
    }
}

/// A face that is left as it is. Its limits and what is known of it are told all the same.
fn left(site: &Site<'_>, planned: &Planned<'_>, face: &Face, why: HeadFact) -> PlaceWork {
    let mut work = face::begin(Place::HeadFace(planned.end.end), face);
    work.measured = true;
    work.leave(why);
    if let (Some(heard), Some(tilt)) = (Heard::of(&face.limits, Limited::Squareness), tilt(face)) {
        let (limits, owner) = (&heard.limits, &heard.owner());
        let of = "squareness";
        let found = sizes_against(of, &[tilt.run_out], limits, owner, None, site.rule);
        work.fact(found);
    }
    work
}

/// What limits a cut of a face, as it was before any work.
fn limits(end: &HeadEnd<'_>) -> Vec<CutLimit> {
    let unknown = |kind, what, ask: HeadAsk| CutLimit::unknown(kind, what, ask.to_string());
    let mut limits: Vec<CutLimit> = gap_limit(end).into_iter().collect();
    if end.end == HeadTubeEnd::Lower && limits.is_empty() {
        limits.extend(unknown(
            LimitKind::Clearance,
            "crown gap",
            HeadAsk::CrownGap,
        ));
    }
    let (kind, depth) = (LimitKind::SeatDepth, end.sheet.bore_depth);
    let both = depth.zip(end.insertion()).filter(|_| !too_shallow(end));
    match both {
        Some((depth, insertion)) => limits.extend(as_good(insertion, &depth).and_then(|length| {
            let what = HeadFact::DepthForCup.to_string();
            CutLimit::new(kind, what, depth.less(&length), Grade::Shop).ok()
        })),
        None => limits.extend(unknown(kind, "bore depth", HeadAsk::BoreDepth)),
    }
    if let Some(heard) = Heard::of(&end.sheet.limits, Limited::BoreDepth)
        && let Some(((least, words), depth)) = heard.at_least().zip(depth)
    {
        let (what, grade) = (format!("bore depth {words}"), heard.limits.grade());
        limits.extend(CutLimit::leaving(kind, what, &depth, least, grade));
    }
    limits
}

/// Where a limit of the cut is not known, its own field is asked for and not a limit in general.
fn what_is_unknown(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let (general, before) = (end.field("limits"), work.questions.len());
    work.questions.retain(|q| q.answer != general);
    if work.questions.len() == before {
        return;
    }
    let lower = end.end == HeadTubeEnd::Lower;
    if lower && end.sheet.crown_gap.is_none() {
        work.ask(end.field("crown_gap"), HeadAsk::CrownGap);
    }
    if end.sheet.bore_depth.is_none() {
        work.ask(end.field("bore_depth"), HeadAsk::BoreDepth);
    }
    if end.insertion().is_none() {
        work.ask(end.field("part.insertion"), HeadAsk::Insertion);
    }
}
