//! Squareness of a brake mount: against its makers' limits, and against what the pads can bear.

use alloc::vec::Vec;

use super::mount::Mount;
use super::sheet::{Limited, MountPoint};
use super::work::PlaceWork;
use super::{Found, MountAsk, MountFact};
use crate::face::{MountKind, PadSurvey};
use crate::judge::{CaliperTilt, HeightAt, sizes_against};
use crate::measure::{Outcome, settled_below, settled_cmp};
use crate::quantity::{Length, deg, mm};
use crate::standard::BrakeSystem;

/// What the survey shows, before it is held against anything.
pub(super) fn told(mount: &Mount<'_>, survey: &PadSurvey, work: &mut PlaceWork) {
    let plane = survey.least_squares();
    let angle = |slope: f64| deg(libm::atan(slope).to_degrees());
    work.settled(MountFact::MountLies {
        cut: mount.now.off.read,
        range: survey.range(),
        side_slope: angle(plane.plane().slope_y()),
        along: angle(plane.plane().slope_x()),
    });
}

/// Held against the makers' squareness and the caliper's own clearance; asks for what is missing where it decides.
pub(super) fn judged(mount: &Mount<'_>, survey: &PadSurvey, work: &mut PlaceWork) -> Outcome {
    let kind = match mount.system {
        BrakeSystem::Is => MountKind::Tab,
        _ => MountKind::Posts,
    };
    let (pad_length, pad_clearance) = (mount.sheet.pad_length, mount.sheet.pad_clearance);
    let height = |p: &MountPoint| HeightAt {
        along: p.along,
        across: p.across,
        height: p.height,
    };
    let asked = CaliperTilt {
        kind,
        points: mount.now.points.iter().map(height).collect(),
        pad_length,
        pad_clearance,
        rule: Some(mount.site.rule),
    };
    let pads = pad_length.is_some() && pad_clearance.is_some();
    let mut outcomes: Vec<Outcome> = Vec::new();
    for found in makers(mount, survey, kind) {
        outcomes.extend(found.outcome);
        work.settled(found);
    }
    if let Ok(verdict) = asked.answer(mount.site.tables) {
        outcomes.extend(pads.then_some(verdict.outcome));
        work.found(&verdict);
    }
    let outcome = if outcomes.contains(&Outcome::NonconformityShown) {
        Outcome::NonconformityShown
    } else if outcomes.is_empty() || outcomes.contains(&Outcome::Undecided) {
        Outcome::Undecided
    } else {
        Outcome::ConformityShown
    };
    // A mount that is cut anyway is judged after the cut.
    if mount.now.covered {
        return outcome;
    }
    if outcomes.is_empty() && pad_clearance.is_none() {
        work.ask(mount.field("pad_clearance"), MountAsk::PadClearance);
    }
    if outcomes.is_empty() && pad_length.is_none() {
        work.ask(mount.field("pad_length"), MountAsk::PadLength);
    }
    if outcomes.contains(&Outcome::Undecided) && outcome == Outcome::Undecided {
        work.ask(mount.heights(), MountAsk::Finer);
    }
    outcome
}

/// The makers' limits of squareness: how far the faces rise over their own probed length, in the direction that tilts the
/// caliper.
fn makers(mount: &Mount<'_>, survey: &PadSurvey, kind: MountKind) -> Vec<Found> {
    let points = mount.now.points;
    let across = extent(points.iter().map(|p| p.across));
    let along = extent(points.iter().map(|p| p.along));
    let over = match kind {
        MountKind::Posts => across,
        MountKind::Tab => across.max(along),
    };
    let rule = mount.site.rule;
    // Twice the clearance is the rise that is allowed; here that is the maker's limit.
    let tilt = survey.caliper_tilt(kind, over, over / 4.0, rule);
    let limits = mount.sheet.limits.iter();
    limits
        .filter(|limit| limit.what == Limited::Squareness)
        .map(|limit| match &tilt {
            Ok(tilt) => sizes_against("", &[tilt.rise], &limit.limits, &limit.owner, None, rule)
                .with_fact(|_| MountFact::RisesOver { over }.into()),
            Err(_) => super::steering::unmeasured(limit).into(),
        })
        .collect()
}

fn extent(places: impl Iterator<Item = Length> + Clone) -> Length {
    let low = places.clone().min_by(|a, b| settled_cmp(*a, *b));
    let high = places.max_by(|a, b| settled_cmp(*a, *b));
    match (low, high) {
        (Some(low), Some(high)) if settled_below(low, high) => high - low,
        _ => mm(0.0),
    }
}
