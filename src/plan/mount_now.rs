//! A brake mount as the last pass left it.

use alloc::vec::Vec;

use super::face_now::CameOff;
use super::sheet::{BrakeSheet, Coating, Marks, MountPoint};
use super::site::{covered, surface};
use crate::face::{PadPoint, PadSurvey, Point};
use crate::measure::{Reading, Surface, settled_below};
use crate::quantity::{Length, mm};

/// A mount now.
pub(super) struct MountNow<'a> {
    /// Heights of the last survey.
    pub points: &'a [MountPoint],
    /// What came off.
    pub off: CameOff,
    /// A pass was made.
    pub worked: bool,
    /// Thickness by the last reading, or what is left of it by the heights.
    pub thickness: Option<Reading>,
    /// Paint is still where it matters.
    pub covered: bool,
    /// Nobody said whether it is covered.
    pub not_said: bool,
    pub marks: Option<Marks>,
}

/// Two places nearer than half a millimetre are one: no probe is set down closer.
fn same_place(a: &MountPoint, b: &MountPoint) -> bool {
    let near = |a: Length, b: Length| settled_below((a - b).abs(), mm(0.5));
    near(a.along, b.along) && near(a.across, b.across)
}

/// The mount by its last readings: places where nothing came off still carry their paint.
pub(super) fn of(sheet: &BrakeSheet) -> MountNow<'_> {
    let points = points_now(sheet);
    let off = CameOff::of(&sheet.points, read_again(sheet), same_place, |p| p.height);
    let left = sheet.passes.iter().rev().find_map(|p| p.coating_left);
    let on = |wanted: Surface| move |p: &MountPoint| surface(p.surface, sheet.coating) == wanted;
    let was = if sheet.points.is_empty() {
        covered(sheet.coating)
    } else {
        sheet.points.iter().any(on(Surface::OverPaint))
    };
    let bare = sheet.coating == Some(Coating::Bare)
        || !points.is_empty() && points.iter().all(on(Surface::OnMetal));
    let covered = off.covered(was, left);
    let shown = bare || covered || off.read && off.surely_everywhere();
    MountNow {
        points,
        worked: !sheet.after.is_empty() || !sheet.passes.is_empty(),
        thickness: thickness(sheet, &off),
        off,
        covered,
        not_said: left.is_none() && !shown,
        marks: sheet.passes.iter().rev().find_map(|p| p.marks),
    }
}

/// The last reading of the thickness; else the first one less what came off since.
fn thickness(sheet: &BrakeSheet, off: &CameOff) -> Option<Reading> {
    let read = sheet.passes.iter().rev().find_map(|p| p.thickness);
    let left = |first: Reading| off.deepest().map_or(first, |off| first.less(&off));
    read.or(sheet.thickness.map(left))
}

/// The heights of the last pass that read them.
fn read_again(sheet: &BrakeSheet) -> Option<&[MountPoint]> {
    let passes = sheet.passes.iter().rev().map(|p| p.points.as_slice());
    let mut all = passes.chain([sheet.after.as_slice()]);
    all.find(|points| !points.is_empty())
}

/// The heights that were read last.
pub(super) fn points_now(sheet: &BrakeSheet) -> &[MountPoint] {
    read_again(sheet).unwrap_or(&sheet.points)
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
