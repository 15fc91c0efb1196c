//! Ring faces: what came off, whether paint is left, how deep the next cut must go, and what permits it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::face_now::{self, Now};
use super::facts::{Allowance, CutLimit};
use super::permit::{Identity, Pilot, Request, rule};
use super::sheet::{Coating, Face, FacePoint, Heard, Limited, Marks};
use super::site::{Joint, Site, Wish, covered, take, tool};
use super::work::{Draft, PlaceWork};
use crate::evidence::{Evidence, Text};
use crate::face::{FacingGoal, FacingStep, RingSurvey};
use crate::judge::{Finding, extremes};
use crate::measure::{Limits, Outcome, Reading, settled_below};
use crate::quantity::{Length, in_mm};
use crate::standard::Place;
use crate::thread::Turn;

/// A face to be planned, with what its place knows about it.
pub(super) struct Facing<'a> {
    pub place: Place,
    /// Its path in the sheet.
    pub path: String,
    /// What it is called: `shell, drive side`.
    pub what: String,
    pub face: &'a Face,
    pub joint: Joint<'a>,
    /// The path that states material and consent.
    pub joint_path: &'static str,
    /// What covers it where the face states nothing.
    pub coating: Option<Coating>,
    pub contradicted: bool,
    pub cutter: &'static str,
    pub pilot: Pilot,
    /// What guides the cutter, where it is another thing than the row of the work says.
    pub guided: Option<Text>,
    /// Limit of squareness over the outer diameter, with its owner, where anybody prints one.
    pub square: Option<(Limits, Text, Option<&'a Evidence>)>,
    /// What limits the cut, as it was before any work.
    pub limits: Vec<CutLimit>,
    /// What limits the cut besides, as it is now.
    pub limits_now: Vec<CutLimit>,
    /// So much must come off whatever the face looks like, with why: it is faced to a width.
    pub besides: Option<(Reading, String)>,
    pub changes: Vec<Change>,
}

/// Everything that limits a cut of this face now.
fn allowance(facing: &Facing<'_>, now: &Now<'_>) -> Allowance {
    let mut all = facing.limits.clone();
    all.extend(face_now::written(&facing.face.limits));
    let mut left = face_now::left(all, now.cut, now.deepest().as_ref());
    left.extend(facing.limits_now.iter().cloned());
    Allowance::new(left)
}

/// What is touched half way down: one side cleans long before the other.
fn half_way(probes: &[FacePoint], depth: Length) -> String {
    let heights = || probes.iter().map(|p| p.height.value());
    let top = heights().reduce(|a, b| a.max(b));
    let level = top.map(|top| top - depth / 2.0);
    let touched = level.map_or(0, |level| {
        heights().filter(|h| !settled_below(*h, level)).count()
    });
    format!(
        "half way down {touched} of the {} probed places are touched, which looks wrong and is not",
        probes.len()
    )
}

/// A face with what the sheet says of it: its notes and every limit.
pub(super) fn begin(place: Place, face: &Face) -> PlaceWork {
    let mut work = PlaceWork::new(place);
    work.notes.extend(face.note.clone());
    work.notes
        .extend(face.passes.iter().filter_map(|p| p.note.clone()));
    work.hear(&face.limits);
    work
}

pub(super) fn plan(site: &Site<'_>, facing: Facing<'_>) -> PlaceWork {
    let face = facing.face;
    let mut work = begin(facing.place.clone(), face);
    let coating = face.coating.or(facing.coating);
    let now = face_now::now(face, coating);
    work.measured = !face.probes.is_empty() || face.coating.is_some();
    work.worked = now.cut || !face.passes.is_empty();
    if face.probes.is_empty() {
        // Nothing is surveyed for a cut that nothing guides.
        match facing.pilot {
            Pilot::Missing(why) if covered(coating) || facing.besides.is_some() => {
                work.hold(format!("the {}, for now: {why}", facing.what));
            }
            _ => unsurveyed(&mut work, &facing, coating),
        }
        return work;
    }
    let surveyed = match face_now::survey(face, now.probes, &facing.path) {
        Ok(survey) => survey,
        Err(error) => {
            let field = match error.field() {
                radius @ ("inner_radius" | "outer_radius" | "probe_radius") => radius,
                _ => "probes",
            };
            work.ask_plain(
                format!("{}.{field}", facing.path),
                format!("{}: {}", error.problem(), error.remedy()),
                "without it the heights are no survey",
                "dial indicator turned about the pilot, caliper",
            );
            return work;
        }
    };
    tell(&mut work, &surveyed, &now);
    if let Some(least) = now.grew() {
        work.contradicts(
            format!(
                "the face stands {} higher than before in one place: the surveys do not share a datum, or something lies under the indicator",
                in_mm(-least.value())
            ),
            format!("{}.passes", facing.path),
            "dial indicator turned about the pilot",
        );
    } else if now.cut && now.removed.is_empty() {
        work.ask_plain(
            format!("{}.passes", facing.path),
            "heights again at the places of the first survey",
            "the surveys share no places, so nothing can be said of what came off",
            "dial indicator turned about the pilot",
        );
    }
    work.limits = allowance(&facing, &now);
    if now.unsure {
        let field = match face.passes.len().checked_sub(1) {
            Some(last) => format!("{}.passes[{last}].coating_left", facing.path),
            None => format!("{}.passes", facing.path),
        };
        work.ask_plain(
            field,
            "is paint left anywhere on the flat? Ink it, and write what is left of the coating as a pass",
            "in places less came off than the heights can show, so they do not say whether the paint is gone",
            "ink, light",
        );
        return work;
    }
    let over = surveyed.face().outer().length() * 2.0;
    let Some((needed, why)) = needed(site, &mut work, &facing, &surveyed, &now, over) else {
        return work;
    };
    if now.marks == Some(Marks::Torn) {
        work.steps.push(Draft::refer_plain(
            &facing.place,
            format!("Do not face the {}: the last pass tore it", facing.what),
            "a torn face is cut again only with another cutter or another hand",
        ));
        return work;
    }
    let wish = Wish {
        place: &facing.place,
        joint: facing.joint_path,
        readings: format!("{}.probes", facing.path),
        operation: Operation::Face,
        only_coating: now.covered,
    };
    let ruling = rule(Request {
        place: &facing.place,
        operation: Operation::Face,
        material: facing.joint.material,
        bonded: facing.joint.bonded,
        consent: facing.joint.consent,
        contradicted: facing.contradicted || !work.contradictions.is_empty(),
        identity: Identity::Known,
        metal_lost: false,
        makers_shape: false,
        pilot: facing.pilot.clone(),
        to_size: false,
        needed: Some((Counted::Depth, needed)),
        allowance: work.limits.clone(),
        stops: Vec::new(),
        waits: Vec::new(),
        decision: site.rule,
    });
    let Some(permit) = take(&mut work, ruling, &wish) else {
        return work;
    };
    let most = permit.off().map(|off| off.most);
    let why = format!("{why}; {}", half_way(now.probes, needed.value()));
    let mut draft = Draft::cut_plain(permit, format!("Face the {}", facing.what), why)
        .with(tool("facing_cutter", facing.cutter))
        .turned(Turn::Clockwise);
    if let Some(guide) = facing.guided {
        draft = draft.guided(guide);
    }
    for change in facing.changes {
        draft = draft.changing(Change { by: most, ..change });
    }
    work.steps.push(draft);
    work
}

/// A face without heights.
fn unsurveyed(work: &mut PlaceWork, facing: &Facing<'_>, coating: Option<Coating>) {
    if let Some((_, why)) = &facing.besides {
        work.ask_plain(
            format!("{}.probes", facing.path),
            "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
            why.clone(),
            "dial indicator turned about the pilot",
        );
    } else if covered(coating) {
        work.ask_plain(
            format!("{}.probes", facing.path),
            "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
            "one side of a face cleans long before the other; without the heights nobody knows how deep the cut must go. No indicator: ink it and take the lightest cut that shows where it touches first",
            "dial indicator turned about the pilot",
        );
    } else if coating.is_some() {
        work.leave(String::from(
            "bare and not surveyed: no reason to cut it is known",
        ));
    } else {
        work.ask_plain(
            format!("{}.coating", facing.path),
            "what covers the face?",
            "a part that sits on paint sits neither square nor tight",
            "eye, light",
        );
    }
}

/// What the survey shows.
fn tell(work: &mut PlaceWork, survey: &RingSurvey, now: &Now<'_>) {
    for warning in survey.warnings() {
        work.settled(Finding::stated("survey", format!("{warning}")));
    }
    let over = survey.face().outer().length() * 2.0;
    if let Ok(tilt) = survey.tilt(over) {
        let high = tilt
            .high_at
            .map_or(String::new(), |clock| format!(", high at {clock}"));
        work.settled(Finding {
            readings: Vec::from([tilt.run_out]),
            ..Finding::stated(
                if now.cut {
                    "face after the last pass"
                } else {
                    "face as found"
                },
                format!(
                    "{} ± {} out of square over {}{high}; {} to clean up out to its edge",
                    in_mm(tilt.run_out.value()),
                    in_mm(tilt.run_out.expanded_uncertainty()),
                    in_mm(over),
                    in_mm(survey.clean_up().at_outer_edge)
                ),
            )
        });
    }
    if let (Some(least), Some(most)) = (
        extremes(&now.removed).first().copied(),
        extremes(&now.removed).last().copied(),
    ) {
        work.settled(Finding {
            readings: now.removed.clone(),
            ..Finding::stated(
                "what came off",
                format!(
                    "{} to {} ± {}",
                    in_mm(least.value()),
                    in_mm(most.value()),
                    in_mm(most.expanded_uncertainty())
                ),
            )
        });
        work.removed = Vec::from([least, most]);
    }
}

/// How much must come off, and why; `None` where nothing must, or where that is not shown yet.
fn needed(
    site: &Site<'_>,
    work: &mut PlaceWork,
    facing: &Facing<'_>,
    survey: &RingSurvey,
    now: &Now<'_>,
    over: Length,
) -> Option<(Reading, String)> {
    let clean_up = survey.clean_up();
    let to_clean = Reading::new(clean_up.at_outer_edge, clean_up.standard_uncertainty).ok()?;
    let besides = facing.besides.as_ref().map(|(amount, why)| {
        // A face that is cut to a width is cut all round: by the width, or by what cleans it, whichever is more.
        let more = if settled_below(amount.value(), to_clean.value()) {
            to_clean
        } else {
            *amount
        };
        (more, why.clone())
    });
    if now.covered {
        if let Some((more, why)) = besides {
            return Some((more, why));
        }
        let why = if now.cut {
            "places where nothing came off still carry paint: the least that cleans it all round"
        } else {
            "the least that cleans it all round; only the flat matters, a chamfer below may keep paint"
        };
        return Some((to_clean, String::from(why)));
    }
    if besides.is_some() {
        return besides;
    }
    let own = Heard::of(&facing.face.limits, Limited::Squareness);
    let square = match &own {
        Some(heard) => Some((heard.limits, Text::Owned(heard.owner()), None)),
        None => facing.square.clone(),
    };
    let decided = square.as_ref().and_then(|(limits, owner, evidence)| {
        let limit = limits.upper().known()?;
        let goal = FacingGoal::square_within(limit, over, limits.grade()).ok()?;
        let found = survey
            .decide_facing(&goal, &crate::face::Allowance::default(), site.rule)
            .ok()?;
        work.settled(
            Finding {
                outcome: Some(found.square.outcome),
                limits: Some(*limits),
                decision: Some(found.square),
                owner: String::from(owner.as_ref()),
                ..Finding::stated(
                    "squareness",
                    format!(
                        "limit {} over {} ({owner}): {}",
                        in_mm(limit),
                        in_mm(over),
                        found.square.outcome.words()
                    ),
                )
            }
            .resting_on(*evidence),
        );
        Some((found.step, found.square.outcome))
    });
    match decided {
        None => {
            work.settled(Finding::stated(
                "squareness",
                "no limit is published for this face; give the frame or component maker's, or judge by the mating part: a cup in its seat must not rock",
            ));
            if !now.cut {
                work.leave(String::from("nothing shows that it must be cut"));
            }
            None
        }
        Some((FacingStep::Done, _)) => {
            if !now.cut {
                work.leave(String::from("square enough as it is"));
            }
            None
        }
        Some((_, Outcome::NonconformityShown)) => Some((
            to_clean,
            String::from("it is out of square by more than its limit"),
        )),
        Some((step, _)) => {
            let measure = match step {
                FacingStep::Undecided { measure } => measure,
                _ => Text::Borrowed("the face again, finer"),
            };
            work.ask_plain(
                format!("{}.probes", facing.path),
                format!("{measure}"),
                "whether the face is square enough is not shown either way",
                "dial indicator turned about the pilot",
            );
            None
        }
    }
}
