//! A brake mount as the last pass left it.

use alloc::vec::Vec;

use super::sheet::{BrakeSheet, Coating, CoatingLeft, Marks, MountPoint};
use super::site::{covered, surface};
use crate::face::{PadPoint, PadSurvey, Point};
use crate::judge::extremes;
use crate::measure::{Reading, Surface, settled_below};
use crate::quantity::{Length, mm};

/// A mount now.
pub(super) struct MountNow<'a> {
    /// Heights of the last survey.
    pub points: &'a [MountPoint],
    /// Heights were taken after a cut.
    pub cut: bool,
    /// A pass was made.
    pub worked: bool,
    /// What came off at the places that were read at first and at last.
    pub removed: Vec<Reading>,
    /// Thickness by the last reading, or what is left of it by the heights.
    pub thickness: Option<Reading>,
    /// Paint is still where it matters.
    pub covered: bool,
    /// Nobody said whether it is covered.
    pub not_said: bool,
    pub marks: Option<Marks>,
}

impl MountNow<'_> {
    /// The most that came off.
    pub(super) fn deepest(&self) -> Option<Reading> {
        extremes(&self.removed).last().copied()
    }

    /// Whether the mount stands higher than before somewhere.
    pub(super) fn grew(&self) -> Option<Reading> {
        let least = extremes(&self.removed).first().copied()?;
        settled_below(least.value(), -least.expanded_uncertainty() * 2.0).then_some(least)
    }
}

/// Two places nearer than half a millimetre are one: no probe is set down closer.
fn same_place(a: &MountPoint, b: &MountPoint) -> bool {
    let near = |a: Length, b: Length| settled_below((a - b).abs(), mm(0.5));
    near(a.along, b.along) && near(a.across, b.across)
}

/// The mount by its last readings: places where nothing came off still carry their paint.
pub(super) fn of(sheet: &BrakeSheet) -> MountNow<'_> {
    let passes = sheet.passes.iter();
    let points = points_now(sheet);
    let read_again = !sheet.after.is_empty() || sheet.passes.iter().any(|p| !p.points.is_empty());
    let last = read_again.then_some(points);
    let removed: Vec<Reading> = match last {
        Some(last) => sheet
            .points
            .iter()
            .filter_map(|before| {
                let after = last.iter().find(|p| same_place(p, before))?;
                Some(before.height.less(&after.height))
            })
            .collect(),
        None => Vec::new(),
    };
    let left = passes.clone().rev().find_map(|p| p.coating_left);
    let on = |wanted: Surface| move |p: &MountPoint| surface(p.surface, sheet.coating) == wanted;
    let was = if sheet.points.is_empty() {
        covered(sheet.coating)
    } else {
        sheet.points.iter().any(on(Surface::OverPaint))
    };
    let bare = sheet.coating == Some(Coating::Bare)
        || !points.is_empty() && points.iter().all(on(Surface::OnMetal));
    let untouched = removed.is_empty() || removed.iter().any(|off| !off.sure_sign().is_gt());
    let (covered, not_said) = match (left, last.is_some()) {
        (Some(CoatingLeft::AllOff | CoatingLeft::Traces), _) => (false, false),
        (Some(CoatingLeft::Remains), _) => (true, false),
        (None, false) => (was, !was && !bare),
        // A pass that touched every place took the paint with it; one that did not, left it there.
        (None, true) => (was && untouched, untouched && !was && !bare),
    };
    MountNow {
        points,
        cut: last.is_some(),
        worked: !sheet.after.is_empty() || !sheet.passes.is_empty(),
        thickness: thickness(sheet, &removed),
        removed,
        covered,
        not_said,
        marks: passes.rev().find_map(|p| p.marks),
    }
}

/// The last reading of the thickness; else the first one less what came off since.
fn thickness(sheet: &BrakeSheet, removed: &[Reading]) -> Option<Reading> {
    let read = sheet.passes.iter().rev().find_map(|p| p.thickness);
    read.or_else(|| {
        let first = sheet.thickness?;
        Some(match extremes(removed).last() {
            Some(off) => first.less(off),
            None => first,
        })
    })
}

/// The heights of the last pass that read them.
pub(super) fn points_now(sheet: &BrakeSheet) -> &[MountPoint] {
    sheet
        .passes
        .iter()
        .rev()
        .map(|p| p.points.as_slice())
        .chain([sheet.after.as_slice(), sheet.points.as_slice()])
        .find(|points| !points.is_empty())
        .unwrap_or_default()
}

/// The heights as the face math takes them.
pub(super) fn survey(points: &[MountPoint]) -> Result<PadSurvey, crate::Error> {
    let mut pads = Vec::with_capacity(points.len());
    let mut worst = mm(0.0);
    for point in points {
        worst = worst.max(point.height.standard_uncertainty());
        pads.push(PadPoint {
            pad: "mount".into(),
            point: Point::new(point.along, point.across, point.height.value())?,
        });
    }
    PadSurvey::new("wheel axle", pads, worst)
}
