//! The faces of a sheet that can be surveyed, as its last readings show them.

use alloc::vec::Vec;

use super::sheet::{Face, FrameSheet};
use super::{face_now, mount_now};
use crate::face::{PadSurvey, RingSurvey};
use crate::standard::{HeadTubeEnd, Place};
use crate::thread::Side;

/// The survey of a face.
pub(crate) enum Surveyed {
    Ring(RingSurvey),
    Mount(PadSurvey),
}

/// Every face of a sheet with enough readings; why another cannot be surveyed, the plan says.
pub(crate) fn surveys(sheet: &FrameSheet) -> Vec<(Place, Surveyed)> {
    let mut out = Vec::new();
    let mut ring = |place, face: Option<&Face>| {
        let survey = |face| face_now::survey(face, face_now::now(face, None).probes, "pilot").ok();
        out.extend(
            face.and_then(survey)
                .map(|ring| (place, Surveyed::Ring(ring))),
        );
    };
    if let Some(shell) = &sheet.shell {
        ring(Place::ShellFace(Side::Drive), shell.drive.face.as_ref());
        let other = Place::ShellFace(Side::NonDrive);
        ring(other, shell.non_drive.face.as_ref());
    }
    let ends = [
        (HeadTubeEnd::Upper, &sheet.head_tube.upper),
        (HeadTubeEnd::Lower, &sheet.head_tube.lower),
    ];
    for (end, sheet) in ends {
        let face = sheet.as_ref().and_then(|end| end.face.as_ref());
        ring(Place::HeadFace(end), face);
    }
    for brake in &sheet.brake {
        let survey = mount_now::survey(mount_now::points_now(&brake.sheet));
        out.extend(
            survey
                .ok()
                .map(|mount| (Place::Brake(brake.end), Surveyed::Mount(mount))),
        );
    }
    out
}
