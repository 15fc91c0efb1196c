//! The facing of a brake mount: what guides it, what limits it, what it takes along.

use alloc::boxed::Box;
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::facts::{Allowance, CutLimit};
use super::mount::Mount;
use super::permit::{Pilot, Request};
use super::sheet::{Heard, Limited};
use super::site::{permitted, tool};
use super::work::{ByHand, Draft, PlaceWork};
use super::{Caution, MountAsk, MountFact, MountTask, face, face_now, thread_now};
use crate::face::LimitKind;
use crate::measure::Reading;
use crate::standard::{BrakeSystem, Place};
use crate::thread::Turn;

/// Asks for the permit to face the mount. Whether it is planned.
pub(super) fn cut(mount: &Mount<'_>, needed: Reading, work: &mut PlaceWork) -> bool {
    let now = &mount.now;
    if face::torn(work, &mount.place, &mount.what, now.marks) {
        return false;
    }
    let mut waits = Vec::new();
    if now.not_said && !now.covered {
        waits.push(mount.ask_coating(work));
    }
    if now.thickness.is_none() && mount.limited(Limited::Thickness) {
        let for_bolt = false;
        work.ask(mount.field("thickness"), MountAsk::Thickness { for_bolt });
    }
    let request = Request {
        contradicted: !work.contradictions.is_empty(),
        pilot: pilot(mount),
        needed: Some((Counted::Depth, needed)),
        allowance: allowance(mount),
        waits,
        ..mount
            .joint
            .request(&mount.place, Operation::Face, mount.site.rule)
    };
    let before = (work.questions.len(), work.steps.len());
    let Some(permit) = permitted(work, request, mount.path, mount.heights(), now.covered) else {
        // It must be cut, and for now nothing here can.
        work.out |=
            before == (work.questions.len(), work.steps.len()) && work.contradictions.is_empty();
        return false;
    };
    let why = match (now.covered, now.off.read) {
        (true, true) => MountFact::PaintLeft,
        (true, false) => MountFact::PaintTilts,
        (false, _) => MountFact::TiltsCaliper,
    };
    let why = Box::new(why.into());
    let by = permit.off().map(|off| off.most);
    let what = mount.what.clone();
    let mut draft = Draft::cut(permit, MountTask::FaceMount { what, why })
        .with(tool("facing_cutter", MountFact::MountCutter))
        .turned(Turn::Clockwise)
        .minding(Caution::Brakes);
    if mount.system == BrakeSystem::Fm {
        let thinner = Change {
            place: mount.place.clone(),
            what: MountFact::Thinner.into(),
            by,
        };
        draft = draft.checking(MountFact::ThicknessAgain).changing(thinner);
    }
    work.steps.push(draft);
    if mount.takes_bolts() {
        let what = mount.what.clone();
        let task = MountTask::ChooseBolts { what };
        let choose = Draft::by_hand(&mount.place, ByHand::Check, task);
        work.steps.push(choose.minding(Caution::Brakes));
    }
    true
}

/// What limits the cut, now.
pub(super) fn allowance(mount: &Mount<'_>) -> Allowance {
    let limits = &mount.sheet.limits;
    let mut left = mount.now.off.left(face_now::written(limits));
    if let Some(heard) = Heard::of(limits, Limited::Thickness)
        && let Some((least, limit)) = heard.least()
    {
        let (kind, grade) = (LimitKind::MountThickness, heard.limits.grade());
        let for_bolt = false;
        left.extend(match &mount.now.thickness {
            Some(now) => CutLimit::leaving(kind, limit, now, least, grade),
            None => CutLimit::unknown(kind, limit, MountAsk::Thickness { for_bolt }),
        });
    }
    Allowance::new(left)
}

/// The axle guides the cutter: its thread must not be torn, loose or crossed.
fn pilot(mount: &Mount<'_>) -> Pilot {
    let threads = mount.site.sheet.threads();
    let mut axle = threads.iter().filter(|t| t.place == Place::Axle(mount.end));
    if axle.all(|t| thread_now::of(t.sheet).guides()) {
        return Pilot::There;
    }
    Pilot::Missing(MountFact::AxleCannotGuide.into())
}
