//! The bolts of a flat mount follow its thickness, as it is now.

use alloc::vec::Vec;

use super::mount::Mount;
use super::work::PlaceWork;
use super::{MountAsk, MountFact, identity};
use crate::judge::BoltLength;
use crate::measure::Outcome;
use crate::quantity::{mm, settled_mm};

pub(super) fn bolt(mount: &Mount<'_>, work: &mut PlaceWork) {
    let bolt = mount.sheet.bolt;
    let thickness = mount.now.thickness;
    if !mount.takes_bolts() {
        if let Some(bolt) = bolt {
            work.settled(MountFact::BoltNotJudged { bolt });
        }
        if let Some(is) = thickness.filter(|_| mount.sheet.limits.is_empty()) {
            work.settled(MountFact::Thickness { is });
        }
        return;
    }
    let Some(thickness) = thickness else {
        let for_bolt = true;
        return work.ask(mount.field("thickness"), MountAsk::Thickness { for_bolt });
    };
    let asked = BoltLength {
        thickness,
        bolt,
        bolts: Vec::new(),
        engaged: None,
        rule: Some(mount.site.rule),
    };
    let verdict = match asked.answer(mount.site.tables) {
        Ok(verdict) => verdict,
        Err(error) => return identity::refused(work, mount.field("bolt"), &error),
    };
    // What the list gives for the nearest thickness is as near as anybody prints.
    let listed = verdict.millimetres("bolt length");
    work.settled(MountFact::BoltListed {
        thickness,
        bolt: listed.map(mm),
    });
    let other = bolt.is_some_and(|bolt| Some(settled_mm(bolt)) != listed);
    if other && verdict.outcome == Outcome::Undecided {
        work.ask(mount.field("bolt"), MountAsk::Bolt);
    }
    work.verdict(&verdict);
}
