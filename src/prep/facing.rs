//! Faces: is a cut needed, how deep, and what stops it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::came_off::{compare, left_after};
use super::draft::{Draft, DraftStep, Stage};
use super::plan::{Amount, Consequence, Interface, InterfaceReport, Operation, Stop, Tool};
use super::sheet::{Coating, Face, MakerLimit};
use crate::evidence::{Citation, Grade};
use crate::face::{
    Allowance, Annulus, Clock, CutLimit, FacingGoal, FacingStep, LimitKind, Probe, RingSurvey,
    deepest,
};
use crate::judge::Finding;
use crate::measure::{Limits, Outcome, Reading, decide, settled_below};
use crate::quantity::{Angle, Length, Radius, in_mm, mm};
use crate::thread::Turn;
use crate::{Error, ErrorKind};

/// A face to be planned, with what its interface knows about it.
pub(super) struct Facing<'a> {
    pub interface: Interface,
    pub face: &'a Face,
    /// What the cutter is called.
    pub cutter: String,
    /// What guides it, which is also what the heights were read along.
    pub pilot: String,
    /// Limit of squareness over the outer diameter, with its owner, where anybody prints one.
    pub square: Option<(Limits, String, Vec<Citation>)>,
    /// What limits the cut.
    pub limits: Vec<CutLimit>,
    /// What the cut moves elsewhere: where, what, and whether by what comes off.
    pub moves: Vec<(Interface, &'static str, bool)>,
    /// What proves it.
    pub proof: String,
    /// Sources of the limits, for the stop.
    pub sources: Vec<Citation>,
}

/// The survey of a face from its readings.
pub(super) fn survey(
    face: &Face,
    probes: &[(Angle, Reading)],
    datum: &str,
) -> Result<RingSurvey, Error> {
    let radius = |what: &'static str, length: Option<Length>| {
        length
            .ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    what,
                    "",
                    "not stated",
                    "measure it on the face",
                )
            })
            .and_then(Radius::new)
    };
    let (inner, outer) = (
        radius("inner radius", face.inner_radius)?,
        radius("outer radius", face.outer_radius)?,
    );
    let at = radius("probe radius", face.probe_radius)?;
    let mut out = Vec::with_capacity(probes.len());
    for (angle, height) in probes {
        out.push(Probe {
            at: Clock::new(*angle)?,
            radius: at,
            height: *height,
        });
    }
    RingSurvey::new(Annulus::new(inner, outer)?, datum.to_string(), out)
}

pub(super) fn covered(coating: Coating) -> bool {
    matches!(
        coating,
        Coating::Overspray | Coating::Painted | Coating::PowderCoated
    )
}

/// Turns the limits that the sheet's writer gave for a depth of cut into limits on the cut.
pub(super) fn written_limits(limits: &[MakerLimit]) -> Vec<CutLimit> {
    limits
        .iter()
        .filter(|l| l.what == "depth")
        .filter_map(|l| {
            let most = l.limits.upper().known()?;
            CutLimit::new(
                LimitKind::Maker,
                l.owner.clone(),
                Reading::exact(most).ok()?,
                Grade::Shop,
            )
            .ok()
        })
        .collect()
}

pub(super) fn plan(draft: &mut Draft<'_>, facing: Facing<'_>, report: &mut InterfaceReport) {
    let face = facing.face;
    let painted = covered(face.coating);
    if face.probes.is_empty() {
        if painted {
            let question = draft.ask(
                facing.interface,
                format!("{}: heights of the face at 5, 7 or 9 places all round, and its inner, outer and probe radius", facing.interface),
                "one side of a face cleans long before the other; without the heights nobody knows how deep the cut must go",
                "dial indicator turned about the pilot",
            );
            let mut step = face_step(
                &facing,
                "the face carries paint; only the flat matters, a chamfer below may keep it",
            );
            step.waits_for.push(question);
            draft.step(step);
        } else {
            report.leave.push(String::from(
                "the face: bare and not surveyed, no reason to cut it is known",
            ));
        }
        return;
    }
    let cut_before = !face.after.is_empty();
    let now = if cut_before {
        &face.after
    } else {
        &face.probes
    };
    let surveyed = match survey(face, now, &facing.pilot) {
        Ok(survey) => survey,
        Err(error) => {
            report
                .findings
                .push(Finding::stated("face", format!("no survey: {error}")));
            draft.ask(
                facing.interface,
                format!("{}: {}", facing.interface, error.remedy()),
                error.problem().to_string(),
                "dial indicator, caliper",
            );
            return;
        }
    };
    for warning in surveyed.warnings() {
        report
            .findings
            .push(Finding::stated("survey", warning.to_string()));
    }
    let over = surveyed.face().outer().length() * 2.0;
    let Ok(tilt) = surveyed.tilt(over) else {
        return;
    };
    let clean_up = surveyed.clean_up();
    let high = tilt
        .high_at
        .map_or(String::new(), |clock| format!(", high at {clock}"));
    report.findings.push(Finding {
        readings: Vec::from([tilt.run_out]),
        ..Finding::stated(
            if cut_before {
                format!("face after the pass, {}", facing.interface)
            } else {
                format!("face as found, {}", facing.interface)
            },
            format!(
                "{} ± {} out of square over {}{high}; {} to clean up out to its edge",
                in_mm(tilt.run_out.value()),
                in_mm(tilt.run_out.expanded_uncertainty()),
                in_mm(over),
                in_mm(clean_up.at_outer_edge)
            ),
        )
    });
    let mut limits = facing.limits.clone();
    limits.extend(written_limits(&face.limits));
    if cut_before {
        let before = survey(face, &face.probes, surveyed.datum()).ok();
        let off = before.and_then(|before| compare(&before, &surveyed, report));
        limits = left_after(limits, off, report);
    }
    let allowance = Allowance::new(limits);
    let own_square = face
        .limits
        .iter()
        .find(|l| l.what == "squareness")
        .map(|l| (l.limits, l.owner.clone(), Vec::new()));
    let square = own_square.or_else(|| facing.square.clone());
    let needed = Reading::new(clean_up.at_outer_edge, clean_up.standard_uncertainty).ok();
    let step = if painted && !cut_before {
        needed.map(|n| paint_step(&surveyed, &allowance, &n, draft))
    } else {
        square.as_ref().and_then(|(limits, owner, sources)| {
            let limit = limits.upper().known()?;
            let goal = FacingGoal::square_within(limit, over, limits.grade()).ok()?;
            let found = surveyed.decide_facing(&goal, &allowance, draft.rule).ok()?;
            report.findings.push(Finding {
                outcome: Some(found.square.outcome),
                limits: Some(*limits),
                decision: Some(found.square),
                owner: owner.clone(),
                grade: Some(limits.grade()),
                sources: sources.clone(),
                ..Finding::stated(
                    "squareness",
                    format!(
                        "limit {} over {} ({owner}): {}",
                        in_mm(limit),
                        in_mm(over),
                        found.square.outcome.words()
                    ),
                )
            });
            Some(found.step)
        })
    };
    let Some(step) = step else {
        report.findings.push(Finding::stated(
            "squareness",
            "no limit is published for this face; give the frame or component maker's, or judge by the mating part: a cup in its seat must not rock",
        ));
        report
            .leave
            .push(String::from("the face: nothing shows that it must be cut"));
        return;
    };
    outcome(draft, &facing, step, &surveyed, report);
}

/// What to do about paint on a face: the least that cleans it all round, if that may come off.
fn paint_step(
    survey: &RingSurvey,
    allowance: &Allowance,
    needed: &Reading,
    draft: &Draft<'_>,
) -> FacingStep {
    if let Some(unknown) = allowance.first_unknown() {
        return FacingStep::Undecided {
            measure: format!("{}: {}", unknown.what(), unknown.measure()).into(),
        };
    }
    let Some((limit, left)) = allowance
        .nearest()
        .and_then(|l| Some((l, *l.may_come_off()?)))
    else {
        return FacingStep::Undecided {
            measure: "what may come off: the width window of the crank or frame maker".into(),
        };
    };
    let Ok(zero) = Limits::at_least(mm(0.0), limit.grade()) else {
        return FacingStep::Stop {
            limit: limit.clone(),
        };
    };
    if decide(&left, &zero, draft.rule).outcome != Outcome::ConformityShown
        || !settled_below(mm(0.0), left.value())
    {
        return FacingStep::Stop {
            limit: limit.clone(),
        };
    }
    match decide(&left.less(needed), &zero, draft.rule).outcome {
        Outcome::ConformityShown => FacingStep::OnePass {
            depth: needed.value(),
            up_to: deepest(needed, &left),
            limit: limit.clone(),
        },
        Outcome::NonconformityShown => {
            let depth = (left.value() - left.expanded_uncertainty()).max(mm(0.0));
            FacingStep::CannotCleanUp { depth, share_reachable: survey.touched_area(depth).unwrap_or(0.0), limit: limit.clone() }
        }
        Outcome::Undecided => FacingStep::Undecided {
            measure: format!(
                "{} needed and {} left before {} are too close: measure both finer, or cut half of it and survey again",
                in_mm(needed.value()),
                in_mm(left.value()),
                limit.what()
            )
            .into(),
        },
    }
}

/// What the cut changes elsewhere, by at most this depth.
fn consequences(facing: &Facing<'_>, depth: Option<Length>) -> Vec<Consequence> {
    let consequence = |(on, words, by): &(Interface, &'static str, bool)| Consequence {
        on: *on,
        words: String::from(*words),
        by: depth.filter(|_| *by),
    };
    facing.moves.iter().map(consequence).collect()
}

fn face_step(facing: &Facing<'_>, why: &str) -> DraftStep {
    let mut step = DraftStep::new(
        facing.interface,
        Stage::Face,
        Operation::Face,
        format!("Face the {}", facing.interface),
        why,
    );
    step.tool = Some(Tool {
        cutter: facing.cutter.clone(),
        hand: None,
        turn: Turn::Clockwise,
        pilot: facing.pilot.clone(),
    });
    step.checks = Vec::from([
        String::from("ink the face: bright all round the flat; paint in a chamfer below may stay"),
        String::from("heights again at the same places, written into the sheet as `after`"),
    ]);
    step.consequences = consequences(facing, None);
    step.proof = facing.proof.clone();
    step
}

fn outcome(
    draft: &mut Draft<'_>,
    facing: &Facing<'_>,
    decided: FacingStep,
    survey: &RingSurvey,
    report: &mut InterfaceReport,
) {
    match decided {
        FacingStep::Done => report
            .leave
            .push(String::from("the face: square enough as it is")),
        FacingStep::OnePass {
            depth,
            up_to,
            limit,
        } => {
            let half = survey.touched_area(depth / 2.0).unwrap_or(0.0);
            let mut step = face_step(
                facing,
                &format!(
                    "the least that cleans it all round; at half the depth only {:.0} % of the ring is touched, which looks wrong and is not",
                    half * 100.0
                ),
            );
            step.consequences = consequences(facing, Some(up_to));
            step.amount = Some(Amount {
                least: depth,
                most: up_to,
                counted: "of depth after first touch",
            });
            draft.weak_figure(
                format!("{}: {}", facing.interface, limit.what()),
                limit.grade(),
            );
            step.stop = Some(Stop {
                limit: limit.what().to_string(),
                left: limit.may_come_off().map(Reading::value),
                grade: Some(limit.grade()),
                sources: facing.sources.clone(),
            });
            draft.step(step);
        }
        FacingStep::Stop { limit } => report.leave.push(format!(
            "the face: nothing more may come off because of {}",
            limit.what()
        )),
        FacingStep::CannotCleanUp {
            depth,
            share_reachable,
            limit,
        } => {
            let mut step = DraftStep::new(
                facing.interface,
                Stage::Face,
                Operation::Refer,
                format!(
                    "Do not face the {}: it cannot be cleaned up",
                    facing.interface
                ),
                format!(
                    "{} allows {}, which touches {:.0} % of the face",
                    limit.what(),
                    in_mm(depth),
                    share_reachable * 100.0
                ),
            );
            step.checks.push(String::from("ask the frame maker whether so much of the face is enough for the part that sits on it"));
            draft.step(step);
        }
        FacingStep::Undecided { measure } => {
            let question = draft.ask(
                facing.interface,
                format!("{}: {measure}", facing.interface),
                "whether and how deep to face depends on it",
                "as named",
            );
            let mut step = face_step(facing, "waits for the answer");
            let clean_up = survey.clean_up();
            step.amount = Some(Amount {
                least: clean_up.at_outer_edge,
                most: clean_up.upper,
                counted: "of depth after first touch, to clean up",
            });
            step.waits_for.push(question);
            draft.step(step);
        }
    }
}
