//! The faces of a head tube, each by itself and both together: how parallel they are.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Operation;
use super::face::{self, Facing};
use super::face_now;
use super::facts::{CommonFact, CutLimit, HeadAsk, HeadFact, MountFact};
use super::head::{HeadEnd, is_integrated};
use super::head_depth::{as_good, changes, gap_limit, too_shallow};
use super::permit::Pilot;
use super::sheet::{Face, Fitted, HeadTubeSheet, Heard, Limited};
use super::site::Site;
use super::steering::held;
use super::work::PlaceWork;
use crate::evidence::{Grade, Text};
use crate::face::{LimitKind, RingSurvey, Tilt};
use crate::judge::{Finding, Verdict, sizes_against};
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
const OWNER: &str = "a headset maker";

/// What is printed for both end faces together.
fn published<'a>(site: &Site<'a>) -> Option<(Limits, &'a FacingRule)> {
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
fn surveyed(face: &Face) -> Option<RingSurvey> {
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
    let square =
        published(site).map(|(limits, row)| (limits, Text::Borrowed(OWNER), row.window.evidence()));
    let besides = out_of_parallel.then(|| (Reading::zero(), HeadFact::OutOfParallel.into()));
    let facing = Facing {
        place: Place::HeadFace(end.end),
        face,
        joint: end.joint,
        coating: end.sheet.coating,
        contradicted: planned.contradicted,
        cutter: MountFact::HeadCutter.into(),
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
        let (at, cut) = (work.place.clone(), Operation::Face);
        work.leave(CommonFact::Waits { at, cut });
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
    let mut limits: Vec<CutLimit> = gap_limit(end).into_iter().collect();
    if end.end == HeadTubeEnd::Lower && limits.is_empty() {
        let (kind, what) = (LimitKind::Clearance, HeadFact::HalfCrownGap);
        limits.extend(CutLimit::unknown(kind, what, HeadAsk::CrownGap));
    }
    let (kind, what, depth) = (
        LimitKind::SeatDepth,
        HeadFact::DepthForCup,
        end.sheet.bore_depth,
    );
    let both = depth.zip(end.insertion()).filter(|_| !too_shallow(end));
    limits.extend(match both {
        Some((depth, insertion)) => as_good(insertion, &depth)
            .and_then(|length| CutLimit::new(kind, what, depth.less(&length), Grade::Shop).ok()),
        None => CutLimit::unknown(kind, what, HeadAsk::BoreDepth).ok(),
    });
    if let Some(heard) = Heard::of(&end.sheet.limits, Limited::BoreDepth)
        && let Some(((least, what), depth)) = heard.least().zip(depth)
    {
        let grade = heard.limits.grade();
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

/// The verdict on both faces, where it belongs: at each of them.
fn together(ends: &[Planned<'_>], parallel: &Verdict, works: &mut [PlaceWork]) {
    let deals = |w: &PlaceWork| !w.steps.is_empty() || !w.questions.is_empty();
    let dealt = works.iter().any(deals);
    let mut steps = works.iter().flat_map(|w| &w.steps);
    let will_change = steps.any(|s| s.operation().cuts());
    for work in works {
        let here = deals(work);
        for finding in &parallel.findings {
            let out = finding.outcome == Some(Outcome::NonconformityShown);
            if here || dealt {
                // What is done at the other face cures both.
                work.settled(Finding {
                    outcome: finding.outcome.filter(|_| here || !out),
                    ..finding.clone()
                });
                continue;
            }
            work.fact(finding.clone());
            if out {
                work.cure(HeadFact::FaceBothEnds);
            }
        }
        if parallel.outcome == Outcome::Undecided && !will_change {
            work.ask(heights_field(ends, &work.place), HeadAsk::FacesFiner);
        }
    }
}

/// Where new heights of a face are written.
fn heights_field(ends: &[Planned<'_>], place: &Place) -> String {
    let planned = ends.iter().find(|p| Place::HeadFace(p.end.end) == *place);
    let face = planned.and_then(|p| p.end.sheet.face.as_ref());
    let worked = face.is_some_and(|face| !face_now::passes(face).is_empty());
    let path = planned.map_or("head_tube.lower", |p| p.end.path);
    format!("{path}.face.{}", if worked { "passes" } else { "probes" })
}

/// Both faces against every limit of parallelism, the makers' first.
fn parallel(site: &Site<'_>, sheet: &HeadTubeSheet, clamped: bool) -> Option<Verdict> {
    let (upper, lower) = (sheet.upper.as_ref()?, sheet.lower.as_ref()?);
    let here = surveyed(upper.face.as_ref()?)?;
    let there = surveyed(lower.face.as_ref()?)?;
    let [one, other] = [&here, &there].map(|s| s.face().outer().length());
    let measured = here.parallelism(&there, one.max(other) * 2.0).ok()?.run_out;
    let makers = upper.limits.iter().chain(&lower.limits);
    let mut found: Vec<Finding> = makers
        .filter(|l| l.what == Limited::Parallelism)
        .map(|l| held("parallelism", &[measured], l, site.rule))
        .collect();
    // What is printed is printed for cups that are clamped against both faces.
    if let Some((limits, row)) = published(site).filter(|_| clamped) {
        let evidence = row.window.evidence();
        let of = row.what.clone();
        let printed = sizes_against(of, &[measured], &limits, OWNER, evidence, site.rule);
        // A maker's own figure decides; this one is shown beside it.
        let decides = found.is_empty();
        found.push(Finding {
            outcome: printed.outcome.filter(|_| decides),
            ..printed
        });
    }
    (!found.is_empty()).then(|| Verdict::from_findings("head_tube", found))
}
