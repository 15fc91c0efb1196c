//! The facing of a brake mount: what guides it, what limits it, what it takes along.

use alloc::format;
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::caution::Caution;
use super::face_now;
use super::facts::{Allowance, CutLimit};
use super::mount::{Mount, ask_coating};
use super::permit::{Identity, Pilot, Request, rule};
use super::sheet::{Heard, Limited, Marks};
use super::site::{Wish, take, tool};
use super::thread_now;
use super::work::{ByHand, Draft, PlaceWork};
use crate::face::LimitKind;
use crate::measure::Reading;
use crate::standard::{BrakeSystem, End, Place};
use crate::thread::Turn;

/// Asks for the permit to face the mount. Whether it is planned.
pub(super) fn cut(mount: &Mount<'_>, needed: Reading, out: bool, work: &mut PlaceWork) -> bool {
    let now = &mount.now;
    if now.marks == Some(Marks::Torn) {
        work.steps.push(Draft::refer_plain(
            &mount.place,
            format!("Do not face the {}: the last pass tore it", mount.what),
            "a torn face is cut again only with another cutter or another hand",
        ));
        return false;
    }
    let mut waits = Vec::new();
    if now.not_said && !now.covered {
        ask_coating(mount, work);
        waits.push(mount.field(if now.worked { "passes" } else { "coating" }));
    }
    if now.thickness.is_none()
        && mount
            .sheet
            .limits
            .iter()
            .any(|l| l.what == Limited::Thickness)
    {
        work.ask_plain(
            mount.field("thickness"),
            "thickness of the mount, bolt head to caliper face",
            "its maker limits it, and facing makes it thinner",
            "outside caliper",
        );
    }
    let ruling = rule(Request {
        place: &mount.place,
        operation: Operation::Face,
        material: mount.joint.material,
        bonded: mount.joint.bonded,
        consent: mount.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: Identity::Known,
        metal_lost: false,
        makers_shape: false,
        pilot: pilot(mount),
        needed: Some((Counted::Depth, needed)),
        allowance: allowance(mount),
        stops: Vec::new(),
        to_size: false,
        waits,
        decision: mount.site.rule,
    });
    let wish = Wish {
        place: &mount.place,
        joint: mount.path,
        readings: mount.heights(),
        operation: Operation::Face,
        only_coating: now.covered,
    };
    let (asked, steps) = (work.questions.len(), work.steps.len());
    let Some(permit) = take(work, ruling, &wish) else {
        if work.questions.len() == asked
            && work.steps.len() == steps
            && work.contradictions.is_empty()
        {
            // It must be cut, and for now nothing here can.
            work.out = true;
        }
        return false;
    };
    let why = match (now.covered, now.cut, out) {
        (true, true, _) => {
            "places where nothing came off still carry paint: the least that gives full contact"
        }
        (true, false, _) => {
            "paint and build-up tilt the caliper; a hollow in the middle may keep paint as long as both ends of each face are bright"
        }
        (false, ..) => {
            "it is out of square by more than the caliper can bear, and no bolt sets that right"
        }
    };
    let by = permit.off().map(|off| off.most);
    let mut draft = Draft::cut_plain(
        permit,
        format!("Face the {}, the least that gives full contact", mount.what),
        why,
    )
    .with(tool("facing_cutter", "brake-mount facing cutter"))
    .turned(Turn::Clockwise)
    .minding(Caution::Brakes);
    let bolts = mount.system == BrakeSystem::Fm && mount.end != End::Front;
    if mount.system == BrakeSystem::Fm {
        draft = draft
            .checking("thickness of the mount again, and with it the bolt: facing makes the mount thinner")
            .changing(Change {
                place: mount.place.clone(),
                what: "the mount is thinner by what comes off: a bolt chosen before is that much too long".into(),
                by,
            });
    }
    work.steps.push(draft);
    if bolts {
        work.steps.push(
            Draft::by_hand_plain(
                &mount.place,
                ByHand::Check,
                format!(
                    "Choose the bolts of the {} anew by the thickness that is left",
                    mount.what
                ),
                "a bolt that bottoms feels tight and clamps nothing",
            )
            .minding(Caution::Brakes),
        );
    }
    true
}

/// What limits the cut, now.
fn allowance(mount: &Mount<'_>) -> Allowance {
    let now = &mount.now;
    let limits = &mount.sheet.limits;
    let deepest = now.deepest();
    let mut left = face_now::left(face_now::written(limits), now.cut, deepest.as_ref());
    if let Some(heard) = Heard::of(limits, Limited::Thickness)
        && let Some((least, words)) = heard.at_least()
    {
        let what = format!("thickness {words}");
        left.extend(match &now.thickness {
            Some(thickness) => CutLimit::leaving(
                LimitKind::MountThickness,
                what,
                thickness,
                least,
                heard.limits.grade(),
            ),
            None => CutLimit::unknown(LimitKind::MountThickness, what, "measure the mount"),
        });
    }
    Allowance::new(left)
}

/// The axle guides the cutter: its thread must not be torn, loose or crossed.
fn pilot(mount: &Mount<'_>) -> Pilot {
    let torn = mount
        .site
        .sheet
        .threads()
        .iter()
        .filter(|t| t.place == Place::Axle(mount.end))
        .any(|t| !thread_now::of(t.sheet).guides());
    if torn {
        Pilot::Missing("the axle thread of this end, which guides the cutter, is torn, loose, crossed or not cut yet; that comes first".into())
    } else {
        Pilot::There
    }
}
