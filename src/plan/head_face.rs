//! The faces of a head tube, each by itself and both together.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Change;
use super::face::{self, Facing};
use super::face_now;
use super::facts::CutLimit;
use super::head::HeadEnd;
use super::head_depth::{as_good, gap_limit, too_shallow};
use super::head_parallel::{parallel, together};
use super::permit::Pilot;
use super::sheet::{Face, Fitted, HeadTubeSheet, Heard, Limited};
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::{Evidence, Grade, Text};
use crate::face::{LimitKind, RingSurvey};
use crate::judge::sizes_against;
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::mm;
use crate::standard::{FacingRule, HeadSeat, HeadTubeEnd, Place, SeatKind};

/// An end as its face is planned.
pub(super) struct Planned<'a> {
    pub end: HeadEnd<'a>,
    pub row: Option<&'a HeadSeat>,
    /// Statements about the seat contradict each other.
    pub contradicted: bool,
}

impl Planned<'_> {
    fn is_integrated(&self) -> bool {
        self.row.is_some_and(|r| r.kind == SeatKind::Integrated)
    }

    /// A cup is or will be clamped against this face.
    fn is_clamped(&self) -> bool {
        let fitted = self.end.sheet.part.as_ref().and_then(|p| p.fitted);
        !self.is_integrated() && fitted != Some(Fitted::Stuck)
    }
}

/// What is printed for both end faces together.
pub(super) fn published<'a>(site: &Site<'a>) -> Option<(Limits, Option<&'a Evidence>)> {
    let row = site.tables.get::<FacingRule>("end_face_parallelism")?;
    let limits = Limits::of_requirement(&row.window);
    limits.upper().known()?;
    Some((limits, row.window.evidence()))
}

pub(super) const PUBLISHED: &str = "a headset maker's ceiling for both end faces together";

pub(super) fn plan(
    site: &Site<'_>,
    sheet: &HeadTubeSheet,
    ends: &[Planned<'_>],
    asked: &[String],
) -> Vec<PlaceWork> {
    let clamped = ends.iter().all(Planned::is_clamped);
    let parallel = parallel(site, sheet, clamped);
    let out = parallel
        .as_ref()
        .is_some_and(|p| p.worst == Outcome::NonconformityShown);
    let tilted = |face: &Face| {
        surveyed(face)
            .and_then(|s| s.tilt(s.face().outer().length() * 2.0).ok())
            .is_some_and(|tilt| tilt.run_out.sure_sign().is_gt())
    };
    let faces = || ends.iter().filter_map(|p| p.end.sheet.face.as_ref());
    let any_tilted = faces().any(tilted);
    let mut works: Vec<PlaceWork> = Vec::new();
    for planned in ends {
        let Some(face) = &planned.end.sheet.face else {
            continue;
        };
        let cut = out && (!any_tilted || tilted(face));
        let mut work = one(site, planned, face, cut);
        waits_for_seats(&mut work, asked);
        works.push(work);
    }
    if let Some(parallel) = parallel {
        together(ends, &parallel, &mut works);
    }
    works
}

/// A face as it is now, about the axis of the head tube.
pub(super) fn surveyed(face: &Face) -> Option<RingSurvey> {
    let now = face_now::now(face, face.coating);
    face_now::survey(face, now.probes, "axis of the head tube").ok()
}

/// Whether both faces are surveyed, so that something can be said of both together.
pub(super) fn both_surveyed(sheet: &HeadTubeSheet) -> bool {
    [&sheet.upper, &sheet.lower].into_iter().all(|end| {
        end.as_ref()
            .and_then(|e| e.face.as_ref())
            .is_some_and(|f| surveyed(f).is_some())
    })
}

/// One face.
fn one(site: &Site<'_>, planned: &Planned<'_>, face: &Face, out_of_parallel: bool) -> PlaceWork {
    let end = &planned.end;
    let place = Place::HeadFace(end.end);
    let fitted = end.sheet.part.as_ref().and_then(|p| p.fitted);
    if fitted == Some(Fitted::Stuck) {
        return left(
            site,
            &place,
            face,
            format!(
                "the face: {} stays in, and nothing reaches the face under it",
                end.part_name()
            ),
        );
    }
    if planned.is_integrated() {
        return left(
            site,
            &place,
            face,
            String::from(
                "the face: nothing is clamped against it, the cover only passes it; cutting it eats the gap of the cover",
            ),
        );
    }
    let square =
        published(site).map(|(limits, evidence)| (limits, Text::Borrowed(PUBLISHED), evidence));
    let mut changes = Vec::from([Change {
        place: Place::Steerer,
        what: "the stack is lower by what comes off: steerer length and spacers again".into(),
        by: None,
    }]);
    if end.end == HeadTubeEnd::Lower {
        changes.push(Change {
            place: Place::Crown,
            what: "the crown comes closer by what comes off: gap again".into(),
            by: None,
        });
    }
    let pilot = if planned.row.is_none() {
        Pilot::Missing("the seat is not named yet, and where a bearing lies in the frame itself the face is not cut".into())
    } else if end.pilot == Pilot::There && too_shallow(end) {
        Pilot::Missing("the bore is too shallow for its part, and facing makes it shallower; that is settled first".into())
    } else {
        end.pilot.clone()
    };
    let besides = out_of_parallel.then(|| {
        (
            Reading::zero(),
            "the two faces are out of parallel by more than their limit".into(),
        )
    });
    let mut work = face::plan(
        site,
        Facing {
            place,
            face,
            joint: end.joint,
            coating: end.sheet.coating,
            contradicted: planned.contradicted,
            cutter: super::MountFact::HeadCutter.into(),
            pilot,
            guided: None,
            square,
            limits: limits(end),
            limits_now: Vec::new(),
            besides,
            changes,
        },
    );
    what_is_unknown(end, &mut work);
    work
}

/// A face that only waits for what the seats ask for says so: each question stands once in a plan.
fn waits_for_seats(work: &mut PlaceWork, asked: &[String]) {
    if work.steps.is_empty()
        && !work.questions.is_empty()
        && work.questions.iter().all(|q| asked.contains(&q.answer))
    {
        work.leave(String::from(
            "the face, for now: what it waits for is asked at the seats",
        ));
    }
}

/// A face that is left as it is. Its limits and what is known of it are told all the same.
fn left(site: &Site<'_>, place: &Place, face: &Face, why: String) -> PlaceWork {
    let mut work = super::face::begin(place.clone(), face);
    work.measured = true;
    work.leave(why);
    let tilt = surveyed(face).and_then(|s| s.tilt(s.face().outer().length() * 2.0).ok());
    if let (Some(heard), Some(tilt)) = (Heard::of(&face.limits, Limited::Squareness), tilt) {
        work.fact(sizes_against(
            "squareness",
            &[tilt.run_out],
            &heard.limits,
            &heard.owner(),
            None,
            site.rule,
        ));
    }
    work
}

/// What limits a cut of a face, as it was before any work.
fn limits(end: &HeadEnd<'_>) -> Vec<CutLimit> {
    let mut limits = Vec::new();
    if end.end == HeadTubeEnd::Lower {
        limits.extend(gap_limit(end).or_else(|| {
            CutLimit::unknown(
                LimitKind::Clearance,
                "gap between crown and lower face",
                "fit the fork and measure the gap with a feeler or caliper",
            )
            .ok()
        }));
    }
    let insertion = end.sheet.part.as_ref().and_then(|p| p.insertion);
    limits.extend(match (end.sheet.bore_depth, insertion) {
        (Some(depth), Some(insertion)) if !too_shallow(end) => {
            as_good(insertion, &depth).and_then(|length| {
                CutLimit::new(
                    LimitKind::SeatDepth,
                    "depth of the bore left for the cup",
                    depth.less(&length),
                    Grade::Shop,
                )
                .ok()
            })
        }
        _ => CutLimit::unknown(
            LimitKind::SeatDepth,
            "depth of the bore against the cup's insertion",
            "measure the depth of the bore and how long the cup goes in",
        )
        .ok(),
    });
    if let Some(heard) = Heard::of(&end.sheet.limits, Limited::BoreDepth)
        && let Some((least, words)) = heard.at_least()
        && let Some(depth) = end.sheet.bore_depth
        && !settled_below(depth.value(), mm(0.0))
    {
        limits.extend(
            CutLimit::leaving(
                LimitKind::SeatDepth,
                format!("depth of the bore {words}"),
                &depth,
                least,
                heard.limits.grade(),
            )
            .ok(),
        );
    }
    limits
}

/// Where a limit of the cut is not known, its own field is asked for and not a limit in general.
fn what_is_unknown(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let general = end.field("limits");
    if !work.questions.iter().any(|q| q.answer == general) {
        return;
    }
    work.questions.retain(|q| q.answer != general);
    let why = "facing takes it away; while it is unknown no cut is shown to be allowed";
    if end.end == HeadTubeEnd::Lower && end.sheet.crown_gap.is_none() {
        work.ask_plain(
            end.field("crown_gap"),
            "gap between fork crown and head tube, fork fitted",
            why,
            "feeler or caliper",
        );
    }
    if end.sheet.bore_depth.is_none() {
        work.ask_plain(
            end.field("bore_depth"),
            "depth of the bore to its shoulder",
            why,
            "depth rod",
        );
    }
    if end.sheet.part.as_ref().and_then(|p| p.insertion).is_none() {
        work.ask_plain(
            end.field("part.insertion"),
            "how far the cup goes in, below its flange",
            why,
            "depth caliper",
        );
    }
}
