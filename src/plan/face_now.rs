//! A ring face as the last pass left it, and what limits its next cut.

use alloc::string::String;
use alloc::vec::Vec;

use super::facts::{CommonFact, CutLimit};
use super::sheet::{Coating, CoatingLeft, Face, FacePoint, Limited, MakerLimit, Marks};
use super::site::covered;
use super::work::PlaceWork;
use super::{Found, MountAsk, MountFact};
use crate::face::{Annulus, Clock, LimitKind, Probe, RingSurvey};
use crate::judge::{Instrument, extremes};
use crate::measure::{Reading, settled_below};
use crate::quantity::{Length, Radius, deg, mm};
use crate::{Error, ErrorKind};

/// The survey of a face from its readings.
pub(super) fn survey(face: &Face, probes: &[FacePoint], datum: &str) -> Result<RingSurvey, Error> {
    let radius = |what: &'static str, length: Option<Length>| {
        let missing = |about, remedy| Error::new(ErrorKind::Missing, what, "", about, remedy);
        Radius::new(length.ok_or_else(|| missing("is not stated", "measure it on the face"))?)
    };
    let ring = Annulus::new(
        radius("inner_radius", face.inner_radius)?,
        radius("outer_radius", face.outer_radius)?,
    );
    let radius = radius("probe_radius", face.probe_radius)?;
    let probe = |point: &FacePoint| {
        let (at, height) = (Clock::new(point.at)?, point.height);
        Ok(Probe { at, radius, height })
    };
    let probes: Result<Vec<Probe>, Error> = probes.iter().map(probe).collect();
    RingSurvey::new(ring?, String::from(datum), probes?)
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

/// What came off at the places that were read at first and at last.
pub(super) struct CameOff {
    /// Heights were taken after a pass.
    pub read: bool,
    at: Vec<Reading>,
}

impl CameOff {
    pub(super) fn of<P>(
        first: &[P],
        last: Option<&[P]>,
        same_place: impl Fn(&P, &P) -> bool,
        height: impl Fn(&P) -> Reading,
    ) -> Self {
        let off = |before: &P| {
            let after = last?.iter().find(|after| same_place(before, after))?;
            Some(height(before).less(&height(after)))
        };
        Self {
            read: last.is_some(),
            at: first.iter().filter_map(off).collect(),
        }
    }

    /// The most that came off.
    pub(super) fn deepest(&self) -> Option<Reading> {
        extremes(&self.at).last().copied()
    }

    /// Whether more than nothing came off for sure wherever it was read.
    pub(super) fn surely_everywhere(&self) -> bool {
        !self.at.is_empty() && self.at.iter().all(|off| off.sure_sign().is_gt())
    }

    /// Whether nothing came off somewhere.
    fn untouched(&self) -> bool {
        let nothing = |off: &Reading| !settled_below(mm(0.0), off.value());
        self.at.iter().any(nothing)
    }

    /// Whether paint is still there: a pass that touched every place took it along; one that did not, left it there.
    pub(super) fn covered(&self, was: bool, left: Option<CoatingLeft>) -> bool {
        match left {
            Some(left) => left == CoatingLeft::Remains,
            None => was && (!self.read || self.untouched()),
        }
    }

    /// Tells it, and asks anew where the surveys do not belong together.
    pub(super) fn tell(&self, work: &mut PlaceWork, passes: String, with: Instrument) {
        let ends = extremes(&self.at);
        let (Some(&least), Some(&most)) = (ends.first(), ends.last()) else {
            if self.read {
                work.ask(passes, MountAsk::SamePlaces { with });
            }
            return;
        };
        work.settled(Found {
            readings: self.at.clone(),
            ..Found::of(MountFact::CameOff { least, most })
        });
        work.removed = Vec::from([least, most]);
        if settled_below(least.value(), -least.expanded_uncertainty() * 2.0) {
            let by = -least.value();
            work.contradicts(MountFact::Grew { by }, passes, with);
        }
    }

    /// What is left of the limits. A cut of unknown depth leaves unknown amounts.
    pub(super) fn left(&self, limits: Vec<CutLimit>) -> Vec<CutLimit> {
        if !self.read {
            return limits;
        }
        let deepest = self.deepest();
        let left = |limit: CutLimit| match &deepest {
            Some(off) => Ok(limit.after_cutting(off)),
            None => CutLimit::unknown(limit.kind(), limit.into_name().0, MountAsk::WhatIsLeft),
        };
        limits
            .into_iter()
            .filter_map(|limit| left(limit).ok())
            .collect()
    }
}

/// A face as it is now.
pub(super) struct Now<'a> {
    /// Heights of the last survey.
    pub probes: &'a [FacePoint],
    /// What came off.
    pub off: CameOff,
    /// Paint is still where it matters.
    pub covered: bool,
    /// Whether a pass took the paint everywhere, the heights do not show.
    pub unsure: bool,
    pub marks: Option<Marks>,
}

/// The face as the last readings show it: points where nothing came off still carry their paint.
pub(super) fn now(face: &Face, coating: Option<Coating>) -> Now<'_> {
    let passes = passes(face);
    let last = passes.iter().rev().find(|(probes, ..)| !probes.is_empty());
    let last = last.map(|(probes, ..)| *probes);
    let left = passes.iter().rev().find_map(|(_, left, _)| *left);
    let same = |a: &FacePoint, b: &FacePoint| (a.at - b.at).abs() < deg(0.5);
    let off = CameOff::of(&face.probes, last, same, |p| p.height);
    let was = covered(coating);
    let covered = off.covered(was, left);
    let sure = covered || off.at.is_empty() || off.surely_everywhere();
    Now {
        probes: last.unwrap_or(&face.probes),
        covered,
        unsure: was && off.read && left.is_none() && !sure,
        off,
        marks: passes.iter().rev().find_map(|(.., marks)| *marks),
    }
}

/// Limits that the sheet states for a depth of cut.
pub(super) fn written(limits: &[MakerLimit]) -> Vec<CutLimit> {
    let depths = limits.iter().filter(|l| l.what == Limited::Depth);
    depths
        .filter_map(|limit| {
            let (on, most) = (limit.what, limit.limits.upper().known()?);
            let by = limit.owner.clone();
            let name = CommonFact::AtMost { on, most, by };
            let left = Reading::exact(most).ok()?;
            CutLimit::new(LimitKind::Maker, name, left, limit.limits.grade()).ok()
        })
        .collect()
}
