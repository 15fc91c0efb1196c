//! A ring face as the last pass left it, and what limits its next cut.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::facts::CutLimit;
use super::sheet::{Coating, CoatingLeft, Face, FacePoint, Limited, Marks};
use super::site::covered;
use crate::face::{Annulus, Clock, LimitKind, Probe, RingSurvey};
use crate::judge::extremes;
use crate::measure::{Reading, settled_below};
use crate::quantity::{Length, Radius};
use crate::{Error, ErrorKind};

/// The survey of a face from its readings.
pub(super) fn survey(face: &Face, probes: &[FacePoint], datum: &str) -> Result<RingSurvey, Error> {
    let radius = |what: &'static str, length: Option<Length>| {
        length
            .ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    what,
                    "",
                    "is not stated",
                    "measure it on the face",
                )
            })
            .and_then(Radius::new)
    };
    let (inner, outer) = (
        radius("inner_radius", face.inner_radius)?,
        radius("outer_radius", face.outer_radius)?,
    );
    let at = radius("probe_radius", face.probe_radius)?;
    let mut out = Vec::with_capacity(probes.len());
    for point in probes {
        out.push(Probe {
            at: Clock::new(point.at)?,
            radius: at,
            height: point.height,
        });
    }
    RingSurvey::new(Annulus::new(inner, outer)?, String::from(datum), out)
}

/// The passes over a face that were read, the first one under either name.
pub(super) fn passes(face: &Face) -> Vec<(&[FacePoint], Option<CoatingLeft>, Option<Marks>)> {
    let first = (!face.after.is_empty()).then_some((face.after.as_slice(), None, None));
    let more = face
        .passes
        .iter()
        .map(|p| (p.probes.as_slice(), p.coating_left, p.marks));
    first.into_iter().chain(more).collect()
}

/// A face as it is now.
pub(super) struct Now<'a> {
    /// Heights of the last survey.
    pub probes: &'a [FacePoint],
    /// Whether a pass was made.
    pub cut: bool,
    /// What came off at the places that were read at first and at last; `None` where there are none.
    pub removed: Vec<Reading>,
    /// Paint is still where it matters.
    pub covered: bool,
    /// Whether a pass took the paint everywhere, the heights do not show.
    pub unsure: bool,
    pub marks: Option<Marks>,
}

impl Now<'_> {
    /// The most that came off.
    pub(super) fn deepest(&self) -> Option<Reading> {
        extremes(&self.removed).last().copied()
    }

    /// Whether the face stands higher than before somewhere.
    pub(super) fn grew(&self) -> Option<Reading> {
        let ends = extremes(&self.removed);
        let least = *ends.first()?;
        settled_below(least.value(), -least.expanded_uncertainty() * 2.0).then_some(least)
    }
}

/// The face as the last readings show it: points where nothing came off still carry their paint.
pub(super) fn now(face: &Face, coating: Option<Coating>) -> Now<'_> {
    let passes = passes(face);
    let last = passes.iter().rev().find(|(probes, ..)| !probes.is_empty());
    let left = passes.iter().rev().find_map(|(_, left, _)| *left);
    let marks = passes.iter().rev().find_map(|(.., marks)| *marks);
    let probes = last.map_or(face.probes.as_slice(), |(probes, ..)| *probes);
    let removed: Vec<Reading> = if last.is_some() {
        face.probes
            .iter()
            .filter_map(|before| {
                let same = |p: &&FacePoint| (p.at - before.at).abs() < crate::quantity::deg(0.5);
                let after = probes.iter().find(same)?;
                Some(before.height.less(&after.height))
            })
            .collect()
    } else {
        Vec::new()
    };
    let was = covered(coating);
    let untouched = removed
        .iter()
        .any(|off| !settled_below(crate::quantity::mm(0.0), off.value()));
    let unsure = removed.iter().any(|off| !off.sure_sign().is_gt());
    let covered = match (last.is_some() || left.is_some(), left) {
        (false, _) => was,
        (true, Some(CoatingLeft::AllOff | CoatingLeft::Traces)) => false,
        (true, Some(CoatingLeft::Remains)) => true,
        // A pass that touched every place took the paint with it; one that did not, left it there.
        (true, None) => was && untouched,
    };
    Now {
        probes,
        cut: last.is_some(),
        removed,
        covered,
        unsure: was && last.is_some() && left.is_none() && unsure && !untouched,
        marks,
    }
}

/// Limits that the sheet states for a depth of cut.
pub(super) fn written(limits: &[super::sheet::MakerLimit]) -> Vec<CutLimit> {
    limits
        .iter()
        .filter(|l| l.what == Limited::Depth)
        .filter_map(|l| {
            let most = Reading::exact(l.limits.upper().known()?).ok()?;
            let what = format!("depth of cut {} ({})", l.limits, l.owner);
            CutLimit::new(LimitKind::Maker, what, most, l.limits.grade()).ok()
        })
        .collect()
}

/// What is left of the limits after the cuts so far. A cut of unknown depth leaves unknown amounts.
pub(super) fn left(limits: Vec<CutLimit>, cut: bool, off: Option<&Reading>) -> Vec<CutLimit> {
    if !cut {
        return limits;
    }
    limits
        .into_iter()
        .filter_map(|limit| match off {
            Some(off) => Some(limit.after_cutting(off)),
            None => CutLimit::unknown(
                limit.kind(),
                limit.what().clone(),
                "the surveys do not tell what came off: measure what is left",
            )
            .ok(),
        })
        .collect()
}
