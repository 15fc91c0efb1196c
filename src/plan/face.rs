//! Ring faces: what came off, whether paint is left, how deep the next cut must go, and what permits it.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::face_now::{self, Now};
use super::facts::{Allowance, CommonFact, CutLimit};
use super::permit::{Pilot, Request};
use super::sheet::{Coating, Face, Heard, Limited, Marks};
use super::site::{Joint, Site, covered, permitted, tool};
use super::work::{Draft, PlaceWork};
use super::{Fact, Found, MountAsk, MountFact, MountTask};
use crate::evidence::{Evidence, Text};
use crate::face::{FacingGoal, FacingStep, RingSurvey};
use crate::judge::Instrument;
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::Length;
use crate::standard::Place;
use crate::thread::Turn;

/// A face to be planned, with what its place knows about it.
pub(super) struct Facing<'a> {
    pub place: Place,
    pub face: &'a Face,
    pub joint: Joint<'a>,
    /// What covers it where the face states nothing.
    pub coating: Option<Coating>,
    pub contradicted: bool,
    pub cutter: Fact,
    pub pilot: Pilot,
    /// What guides the cutter, where it is another thing than the row of the work says.
    pub guided: Option<Fact>,
    /// Limit of squareness over the outer diameter, with its owner, where anybody prints one.
    pub square: Option<(Limits, Text, Option<&'a Evidence>)>,
    /// What limits the cut, as it was before any work.
    pub limits: Vec<CutLimit>,
    /// What limits the cut besides, as it is now.
    pub limits_now: Vec<CutLimit>,
    /// So much must come off whatever the face looks like, with why: it is faced to a width.
    pub besides: Option<(Reading, Fact)>,
    pub changes: Vec<Change>,
}

impl Facing<'_> {
    fn field(&self, name: &str) -> String {
        format!("{}.{name}", self.place)
    }

    /// What limits a cut of this face now.
    fn allowance(&self, now: &Now<'_>) -> Allowance {
        let mut all = self.limits.clone();
        all.extend(face_now::written(&self.face.limits));
        let mut left = now.off.left(all);
        left.extend(self.limits_now.iter().cloned());
        Allowance::new(left)
    }
}

/// A face with what the sheet says of it: its notes and every limit.
pub(super) fn begin(place: Place, face: &Face) -> PlaceWork {
    let mut work = PlaceWork::new(place);
    work.notes.extend(face.note.clone());
    let notes = face.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    work.hear(&face.limits);
    work
}

/// Whether the last pass tore it: such a face or mount is not faced again.
pub(super) fn torn(work: &mut PlaceWork, place: &Place, what: &str, marks: Option<Marks>) -> bool {
    let torn = marks == Some(Marks::Torn);
    if torn {
        let what = String::from(what);
        work.steps
            .push(Draft::refer(place, MountTask::Torn { what }));
    }
    torn
}

pub(super) fn plan(site: &Site<'_>, facing: Facing<'_>) -> PlaceWork {
    let face = facing.face;
    let mut work = begin(facing.place.clone(), face);
    let coating = face.coating.or(facing.coating);
    let now = face_now::now(face, coating);
    work.measured = !face.probes.is_empty() || face.coating.is_some();
    work.worked = now.off.read || !face.passes.is_empty();
    if face.probes.is_empty() {
        unsurveyed(&mut work, &facing, coating);
        return work;
    }
    let survey = match face_now::survey(face, now.probes, &facing.place.to_string()) {
        Ok(survey) => survey,
        Err(because) => {
            let field = match because.field() {
                radius @ ("inner_radius" | "outer_radius" | "probe_radius") => radius,
                _ => "probes",
            };
            let with = Instrument::DialAtPilot;
            work.ask(facing.field(field), MountAsk::NoSurvey { because, with });
            return work;
        }
    };
    tell(&mut work, &survey, now.off.read);
    now.off
        .tell(&mut work, facing.field("passes"), Instrument::DialAtPilot);
    work.limits = facing.allowance(&now);
    if now.unsure {
        let field = match face.passes.len().checked_sub(1) {
            Some(last) => format!("passes[{last}].coating_left"),
            None => String::from("passes"),
        };
        work.ask(facing.field(&field), MountAsk::PaintLeft);
    } else if let Some((needed, why)) = needed(site, &mut work, &facing, &survey, &now) {
        cut(site, &mut work, facing, &now, needed, Box::new(why));
    }
    work
}

/// A face without heights.
fn unsurveyed(work: &mut PlaceWork, facing: &Facing<'_>, coating: Option<Coating>) {
    let covered = covered(coating);
    let why = facing
        .besides
        .as_ref()
        .map(|(_, why)| Box::new(why.clone()));
    match &facing.pilot {
        // Nothing is surveyed for a cut that nothing guides.
        Pilot::Missing(missing) if covered || why.is_some() => {
            let (at, cut) = (facing.place.clone(), Operation::Face);
            let why = Box::new(missing.clone());
            work.hold(CommonFact::Unguided { at, cut, why });
        }
        _ if covered || why.is_some() => work.ask(facing.field("probes"), MountAsk::Ring { why }),
        _ if coating.is_some() => work.leave(MountFact::BareUnsurveyed),
        _ => work.ask(facing.field("coating"), MountAsk::Coating { worked: false }),
    }
}

/// What the survey shows.
fn tell(work: &mut PlaceWork, survey: &RingSurvey, cut: bool) {
    for of in survey.warnings() {
        work.settled(MountFact::SurveyWarns { of });
    }
    let over = survey.face().outer().length() * 2.0;
    if let Ok(tilt) = survey.tilt(over) {
        work.settled(Found {
            readings: Vec::from([tilt.run_out]),
            ..Found::of(MountFact::FaceLies {
                cut,
                run_out: tilt.run_out,
                over,
                high_at: tilt.high_at,
                clean_up: survey.clean_up().at_outer_edge,
            })
        });
    }
}

/// How much must come off, and why; `None` where nothing must, or where that is not shown yet.
fn needed(
    site: &Site<'_>,
    work: &mut PlaceWork,
    facing: &Facing<'_>,
    survey: &RingSurvey,
    now: &Now<'_>,
) -> Option<(Reading, Fact)> {
    let clean_up = survey.clean_up();
    let to_clean = Reading::new(clean_up.at_outer_edge, clean_up.standard_uncertainty).ok()?;
    if let Some((amount, why)) = &facing.besides {
        // A face that is cut to a width is cut all round: by the width, or by what cleans it, whichever is more.
        let less = settled_below(amount.value(), to_clean.value());
        return Some((if less { to_clean } else { *amount }, why.clone()));
    }
    if now.covered {
        let why = if now.off.read {
            MountFact::PaintLeft
        } else {
            MountFact::PaintAllRound
        };
        return Some((to_clean, why.into()));
    }
    let left = match squareness(site, work, facing, survey) {
        Some((_, Outcome::NonconformityShown)) => {
            return Some((to_clean, MountFact::OutOfSquare.into()));
        }
        Some((FacingStep::Undecided { measure: how }, _)) => {
            work.ask(facing.field("probes"), MountAsk::FaceAgain { how });
            return None;
        }
        Some(_) => MountFact::SquareEnough,
        None => {
            work.settled(MountFact::NoSquareness);
            MountFact::NothingShown
        }
    };
    if !now.off.read {
        work.leave(left);
    }
    None
}

/// Squareness against its limit: the maker's, else what is printed; `None` where there is none.
fn squareness(
    site: &Site<'_>,
    work: &mut PlaceWork,
    facing: &Facing<'_>,
    survey: &RingSurvey,
) -> Option<(FacingStep, Outcome)> {
    let own = Heard::of(&facing.face.limits, Limited::Squareness);
    let own = own.map(|heard| (heard.limits, Text::Owned(heard.owner()), None));
    let (limits, owner, evidence) = own.or_else(|| facing.square.clone())?;
    let over: Length = survey.face().outer().length() * 2.0;
    let most = limits.upper().known()?;
    let goal = FacingGoal::square_within(most, over, limits.grade()).ok()?;
    let report = survey.decide_facing(&goal, &crate::face::Allowance::default(), site.rule);
    let report = report.ok()?;
    let outcome = report.square.outcome;
    let by = owner.into_owned();
    let found = Found {
        outcome: Some(outcome),
        limits: Some(limits),
        decision: Some(report.square),
        owner: by.clone(),
        ..Found::of(MountFact::SquareWithin {
            most,
            over,
            by,
            outcome,
        })
    };
    work.settled(found.resting_on(evidence));
    Some((report.step, outcome))
}

/// Asks for the permit to take so much off.
fn cut(
    site: &Site<'_>,
    work: &mut PlaceWork,
    facing: Facing<'_>,
    now: &Now<'_>,
    needed: Reading,
    why: Box<Fact>,
) {
    let what = String::from(facing.place.words());
    if torn(work, &facing.place, &what, now.marks) {
        return;
    }
    let request = Request {
        contradicted: facing.contradicted || !work.contradictions.is_empty(),
        pilot: facing.pilot.clone(),
        needed: Some((Counted::Depth, needed)),
        allowance: work.limits.clone(),
        ..facing
            .joint
            .request(&facing.place, Operation::Face, site.rule)
    };
    let joint = facing.place.whole().to_string();
    let Some(permit) = permitted(work, request, &joint, facing.field("probes"), now.covered) else {
        return;
    };
    let by = permit.off().map(|off| off.most);
    // Half way down one side is touched long before the other.
    let heights = || now.probes.iter().map(|p| p.height.value());
    let level = heights().reduce(Length::max).unwrap_or_default() - needed.value() / 2.0;
    let task = MountTask::Face {
        place: facing.place.clone(),
        why,
        touched: heights().filter(|h| !settled_below(*h, level)).count(),
        probed: now.probes.len(),
    };
    let mut draft = Draft::cut(permit, task)
        .with(tool("facing_cutter", facing.cutter))
        .turned(Turn::Clockwise);
    draft.pilot = facing.guided;
    let changes = facing.changes.into_iter();
    draft
        .changes
        .extend(changes.map(|change| Change { by, ..change }));
    work.steps.push(draft);
}
