//! The bolts of a flat mount follow its thickness, as it is now.

use alloc::format;
use alloc::vec::Vec;

use super::mount::Mount;
use super::work::PlaceWork;
use crate::judge::{BoltLength, Finding};
use crate::measure::Outcome;
use crate::quantity::{in_mm, settled_mm};
use crate::standard::{BrakeSystem, End};

pub(super) fn bolt(mount: &Mount<'_>, work: &mut PlaceWork) {
    let at_hand = mount.sheet.bolt;
    let flat_rear = mount.system == BrakeSystem::Fm && mount.end != End::Front;
    if !flat_rear {
        if let Some(bolt) = at_hand {
            work.settled(Finding::stated(
                "bolt at hand",
                format!(
                    "{} long: not judged, bolts are listed for rear flat mounts only; the caliper maker's length counts",
                    in_mm(bolt)
                ),
            ));
        }
        if let Some(thickness) = mount
            .now
            .thickness
            .filter(|_| mount.sheet.limits.is_empty())
        {
            work.settled(Finding {
                readings: Vec::from([thickness]),
                ..Finding::stated("thickness", format!("{thickness}"))
            });
        }
        return;
    }
    let Some(thickness) = mount.now.thickness else {
        work.ask_plain(
            mount.field("thickness"),
            "thickness of the flat mount, bolt head to caliper face",
            "the bolt is chosen by it, and too long a bolt bottoms in the blind hole and feels tight without clamping",
            "outside caliper",
        );
        return;
    };
    let verdict = BoltLength {
        thickness,
        bolt: at_hand,
        bolts: Vec::new(),
        engaged: None,
        rule: Some(mount.site.rule),
    }
    .answer(mount.site.tables);
    let verdict = match verdict {
        Ok(verdict) => verdict,
        Err(error) => {
            work.settled(Finding::stated("bolt", format!("{error}")));
            return;
        }
    };
    work.settled(Finding {
        readings: Vec::from([thickness]),
        ..Finding::stated("bolt", verdict.words())
    });
    // What the list gives for the nearest thickness is as near as anybody prints.
    let listed = verdict.millimetres("bolt length");
    if at_hand.is_some_and(|bolt| Some(settled_mm(bolt)) != listed)
        && verdict.outcome == Outcome::Undecided
    {
        work.ask_plain(
            mount.field("bolt"),
            "which length does the caliper maker want for this thickness?",
            "the one at hand is not what the tables print, and no tolerance is published; too long a bolt bottoms and clamps nothing",
            "caliper maker's sheet",
        );
    }
    work.verdict(&verdict);
}
