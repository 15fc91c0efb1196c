//! The faces of a shell: what guides the cutter, and what comes off with the width.

use alloc::vec::Vec;

use super::answer::{Operation, State};
use super::face::{self, Facing};
use super::permit::{Identity, Pilot};
use super::sheet::Face;
use super::shell::{SIDES, Whole, joint, side_of};
use super::shell_width::{self, Widths};
use super::site::{Site, covered};
use super::work::PlaceWork;
use super::{Change, MountFact};
use crate::standard::{LocatedBy, Place};
use crate::thread::Side;

/// A width that is over its limit is brought back at the faces, or waits for them; where they can do nothing, it is out.
pub(super) fn faced_to_width(shell: &mut PlaceWork, works: &[PlaceWork]) {
    let is_face = |w: &&PlaceWork| matches!(w.place, Place::ShellFace(_));
    let mut faces = works.iter().filter(is_face);
    let cuts = |w: &PlaceWork| w.steps.iter().any(|s| s.operation() == Operation::Face);
    if faces.clone().any(cuts) {
        shell.cured_beside = true;
    } else if faces.any(|w| w.state() == State::Open) {
        shell.hold(MountFact::WidthAtFaces);
    } else {
        shell.out = true;
        shell.cure(MountFact::TooWide);
    }
}

/// Both faces.
pub(super) fn faces(
    site: &Site<'_>,
    whole: &Whole<'_>,
    widths: &Widths,
    threads: &[PlaceWork],
) -> Vec<PlaceWork> {
    let face = |side| one(site, whole, widths, threads, side);
    let mut works: Vec<PlaceWork> = SIDES.into_iter().filter_map(face).collect();
    shell_width::parallel(site, whole.sheet, &mut works);
    works
}

/// One face; a painted one of which nothing was read is asked for.
fn one(
    site: &Site<'_>,
    whole: &Whole<'_>,
    widths: &Widths,
    threads: &[PlaceWork],
    side: Side,
) -> Option<PlaceWork> {
    let here = side_of(whole.sheet, side);
    let place = Place::ShellFace(side);
    let stays = match whole.row.and_then(|row| row.located_by.value()) {
        Some(LocatedBy::Groove) => Some(MountFact::GrooveLocates),
        Some(LocatedBy::Seat) => Some(MountFact::SeatLocates),
        _ => None,
    };
    if let Some(why) = stays {
        let mut work = face::begin(place, here.face.as_ref()?);
        work.measured = true;
        work.leave(why);
        return Some(work);
    }
    let coating = here.coating.or(whole.sheet.coating);
    let unread = covered(coating).then(Face::default);
    let moves = match side {
        Side::Drive => MountFact::ChainlineMoves,
        Side::NonDrive => MountFact::BearingMoves,
    };
    let guided = match whole.size {
        Some(_) => MountFact::GuidedByThread { side },
        None => MountFact::GuidedByBore,
    };
    let change = |what: MountFact| Change {
        place: Place::Shell,
        what: what.into(),
        by: None,
    };
    let facing = Facing {
        place,
        face: here.face.as_ref().or(unread.as_ref())?,
        joint: joint(site, whole.sheet, here),
        coating,
        contradicted: whole.contradicted || whole.identity == Identity::Open,
        cutter: MountFact::ShellCutter.into(),
        pilot: pilot(whole, side, threads),
        guided: Some(guided.into()),
        square: None,
        limits: widths.first.clone(),
        limits_now: widths.now.clone(),
        besides: widths.excess.clone(),
        changes: Vec::from([moves, MountFact::Narrower].map(change)),
    };
    Some(face::plan(site, facing))
}

/// What guides the facing tool of a side.
fn pilot(whole: &Whole<'_>, side: Side, threads: &[PlaceWork]) -> Pilot {
    let threaded = whole.size.is_some();
    let refers = |w: &PlaceWork| w.steps.iter().any(|s| s.operation() == Operation::Refer);
    let unsound = |w: &PlaceWork| {
        matches!(w.place, Place::ShellSide(_))
            && (matches!(w.state(), State::Refer | State::Out)
                || !w.contradictions.is_empty()
                || refers(w))
    };
    let why = if threaded && !whole.sides.get(side).guides() {
        MountFact::ThreadGone { other: false }
    } else if threaded && !whole.sides.get(!side).guides() {
        MountFact::ThreadGone { other: true }
    } else if threads.iter().any(unsound) {
        MountFact::ThreadNotSound
    } else {
        return Pilot::There;
    };
    Pilot::Missing(why.into())
}
