//! Squareness of a brake mount: against its makers' limits, and against what the pads can bear.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::mount::{Mount, removed};
use super::sheet::Limited;
use super::work::PlaceWork;
use crate::face::{MountKind, PadSurvey};
use crate::judge::{CaliperTilt, Finding, HeightAt, Verdict, sizes_against};
use crate::measure::{Outcome, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::BrakeSystem;

/// What was found of the squareness.
pub(super) struct Square {
    pub outcome: Outcome,
    found: Vec<Finding>,
    verdict: Option<Verdict>,
}

impl Square {
    /// Writes it down; out with nothing planned leaves the place out.
    pub(super) fn tell(self, work: &mut PlaceWork, out: bool) {
        for finding in self.found {
            work.settled(finding);
        }
        if let Some(verdict) = &self.verdict {
            work.settled(Finding::stated("caliper on its mount", verdict.words()));
            work.found(verdict);
        }
        if out {
            work.out = true;
            work.cure(String::from(
                "facing, within what the frame maker allows; where it allows less, the frame maker: bolts and washers do not set a side slope right",
            ));
        }
    }
}

/// What the survey shows, before it is held against anything.
pub(super) fn told(mount: &Mount<'_>, survey: &PadSurvey, work: &mut PlaceWork) {
    let plane = survey.least_squares();
    // A slope that rounds to nothing has no sign.
    let degrees = |slope: f64| {
        let angle = libm::atan(slope).to_degrees();
        if angle.abs() < 0.005 { 0.0 } else { angle }
    };
    work.settled(Finding::stated(
        if mount.now.cut { "faces after the last pass" } else { "faces as found" },
        format!(
            "{} between the highest and the lowest place; side slope {:.2} deg, along the mount {:.2} deg",
            in_mm(survey.range()),
            degrees(plane.plane().slope_y()),
            degrees(plane.plane().slope_x())
        ),
    ));
    let ends = removed(mount);
    if let (Some(least), Some(most)) = (ends.first(), ends.last()) {
        work.settled(Finding {
            readings: mount.now.removed.clone(),
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
        work.removed = Vec::from([*least, *most]);
    }
}

/// Held against the makers' squareness and the caliper's own clearance; asks for what is missing where it decides.
pub(super) fn judged(mount: &Mount<'_>, survey: &PadSurvey, work: &mut PlaceWork) -> Square {
    let kind = match mount.system {
        BrakeSystem::Is => MountKind::Tab,
        _ => MountKind::Posts,
    };
    let found = makers(mount, survey, kind);
    let verdict = CaliperTilt {
        kind,
        points: mount
            .now
            .points
            .iter()
            .map(|p| HeightAt {
                along: p.along,
                across: p.across,
                height: p.height,
            })
            .collect(),
        pad_length: mount.sheet.pad_length,
        pad_clearance: mount.sheet.pad_clearance,
        rule: Some(mount.site.rule),
    }
    .answer(mount.site.tables)
    .ok();
    let pads = mount.sheet.pad_length.is_some() && mount.sheet.pad_clearance.is_some();
    let by_makers = found.iter().filter_map(|f| f.outcome);
    let by_pads = verdict.iter().filter(|_| pads).map(|v| v.outcome);
    let all: Vec<Outcome> = by_makers.chain(by_pads).collect();
    let outcome = if all.contains(&Outcome::NonconformityShown) {
        Outcome::NonconformityShown
    } else if all.is_empty() || all.contains(&Outcome::Undecided) {
        Outcome::Undecided
    } else {
        Outcome::ConformityShown
    };
    // A mount that is cut anyway is judged after the cut.
    if !mount.now.covered {
        ask(mount, outcome, all.is_empty(), work);
    }
    Square {
        outcome,
        found,
        verdict,
    }
}

fn ask(mount: &Mount<'_>, outcome: Outcome, nothing: bool, work: &mut PlaceWork) {
    if nothing {
        let missing = [
            (
                "pad_clearance",
                mount.sheet.pad_clearance.is_none(),
                "clearance of pad and rotor on each side",
                "feeler, or the brake maker's figure",
            ),
            (
                "pad_length",
                mount.sheet.pad_length.is_none(),
                "length of the pad across the tilt",
                "steel rule",
            ),
        ];
        for (field, _, measure, with) in missing.into_iter().filter(|m| m.1) {
            work.ask_plain(
                mount.field(field),
                measure,
                "no squareness is published for a mount; the caliper's own clearance is the only bound",
                with,
            );
        }
    } else if outcome == Outcome::Undecided {
        work.ask_plain(
            mount.heights(),
            "heights of both faces again, finer, and as far apart as the faces allow",
            "whether the caliper rubs is too close to tell",
            "dial indicator on a bar held by the axle",
        );
    }
}

/// The makers' limits of squareness: how far the faces rise over their own probed length, in the direction that tilts the
/// caliper.
fn makers(mount: &Mount<'_>, survey: &PadSurvey, kind: MountKind) -> Vec<Finding> {
    let across = extent(mount.now.points.iter().map(|p| p.across));
    let along = extent(mount.now.points.iter().map(|p| p.along));
    let over = match kind {
        MountKind::Posts => across,
        MountKind::Tab => across.max(along),
    };
    mount
        .sheet
        .limits
        .iter()
        .filter(|l| l.what == Limited::Squareness)
        .map(|limit| {
            // Twice the clearance is the rise that is allowed; here that is the maker's limit.
            let rise = survey
                .caliper_tilt(kind, over, over / 4.0, mount.site.rule)
                .map(|tilt| tilt.rise);
            match rise {
                Ok(rise) => sizes_against(
                    format!("out of square over {}", in_mm(over)),
                    &[rise],
                    &limit.limits,
                    &limit.owner,
                    None,
                    mount.site.rule,
                ),
                Err(_) => super::head::unmeasured(limit),
            }
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
