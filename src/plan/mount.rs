//! Disc-brake mounts.

use super::sheet::{BrakeSheet, MountPoint};
use crate::Error;
use crate::face::{PadPoint, PadSurvey, Point};
use crate::quantity::mm;

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

/// The survey of a mount from its heights.
pub(super) fn survey(points: &[MountPoint]) -> Result<PadSurvey, Error> {
    let mut pads = alloc::vec::Vec::with_capacity(points.len());
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
