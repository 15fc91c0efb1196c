//! Drawings of the faces of a plan, with the plan's own depth and limits.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Plan;
use super::face_now;
use super::facts::Allowance;
use super::sheet::{Face, FacePoint, FrameSheet, MountPoint};
use super::{mount_now, prepare_with};
use crate::quantity::Length;
use crate::standard::{HeadTubeEnd, Place, Tables};
use crate::thread::Side;

/// A drawing of a face, seen from outside.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// The place.
    pub place: Place,
    /// A name that can be a file name: letters, digits and underscores.
    pub name: String,
    /// The drawing, SVG.
    pub svg: String,
}

/// Draws every face that was surveyed, as it is now and, where work was done, as it was before: heights, first contact, what a
/// cut of the planned depth touches, and the limits that the plan stops at. A face that cannot be surveyed is not drawn; the
/// plan says why.
///
/// ```
/// use framegauge::{plan::{FrameSheet, pictures}, standard::Tables};
/// assert!(pictures(&FrameSheet::default(), Tables::ours()).is_empty());
/// ```
#[must_use]
pub fn pictures(sheet: &FrameSheet, tables: Tables<'_>) -> Vec<Picture> {
    let now = prepare_with(sheet, tables);
    let mut out = Vec::new();
    if now.places.iter().any(|p| p.worked) {
        let first = sheet.before();
        draw(&mut out, &first, &prepare_with(&first, tables), "before");
        draw(&mut out, sheet, &now, "after");
    } else {
        draw(&mut out, sheet, &now, "before");
    }
    out
}

/// Draws the faces of a sheet as its plan sees them.
fn draw(out: &mut Vec<Picture>, sheet: &FrameSheet, plan: &Plan, when: &str) {
    if let Some(shell) = &sheet.shell {
        for (side, here) in [
            (Side::Drive, &shell.drive),
            (Side::NonDrive, &shell.non_drive),
        ] {
            ring(
                out,
                plan,
                (Place::ShellFace(side), when),
                here.face.as_ref(),
            );
        }
    }
    for (end, sheet) in [
        (HeadTubeEnd::Upper, &sheet.head_tube.upper),
        (HeadTubeEnd::Lower, &sheet.head_tube.lower),
    ] {
        let face = sheet.as_ref().and_then(|e| e.face.as_ref());
        ring(out, plan, (Place::HeadFace(end), when), face);
    }
    for brake in &sheet.brake {
        let place = Place::Brake(brake.end);
        let points = mount_now::points_now(&brake.sheet);
        if let Some(picture) = pads(plan, (place, when), points) {
            out.push(picture);
        }
    }
}

/// The depth that the plan cuts at a place, and its limits there.
fn planned(plan: &Plan, place: &Place) -> (Option<Length>, Allowance) {
    let depth = plan
        .steps_at(place)
        .find_map(|s| s.off)
        .map(|off| off.least);
    let limits = plan
        .place(place)
        .map(|p| p.limits.clone())
        .unwrap_or_default();
    (depth, limits)
}

fn named(place: Place, when: &str, svg: String) -> Picture {
    let name = format!("{place}").replace('.', "_");
    Picture {
        name: format!("{name}_{when}"),
        place,
        svg,
    }
}

fn ring(out: &mut Vec<Picture>, plan: &Plan, (place, when): (Place, &str), face: Option<&Face>) {
    let Some(face) = face else { return };
    let probes: &[FacePoint] = face_now::now(face, None).probes;
    let Ok(survey) = face_now::survey(face, probes, "pilot") else {
        return;
    };
    let (depth, limits) = planned(plan, &place);
    let depth = depth.unwrap_or_else(|| survey.clean_up().at_probes);
    if let Ok(svg) = survey.drawing(depth, &limits) {
        out.push(named(place, when, svg));
    }
}

fn pads(plan: &Plan, (place, when): (Place, &str), points: &[MountPoint]) -> Option<Picture> {
    let survey = mount_now::survey(points).ok()?;
    let (depth, limits) = planned(plan, &place);
    let depth = depth.unwrap_or_else(|| survey.range());
    let svg = survey.drawing(depth, &limits).ok()?;
    Some(named(place, when, svg))
}
