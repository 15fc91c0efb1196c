//! What makers' limits leave of a bore: its wall, and how tight or loose the part may sit. One reckoning for every bore.

use alloc::format;
use alloc::vec::Vec;

use super::sheet::{Heard, Limited, MakerLimit, Part};
use crate::face::{CutLimit, LimitKind};
use crate::judge::extremes;
use crate::measure::Reading;

/// Limits on what may come off on diameter at the narrowest place, by the wall, the least interference and the greatest
/// clearance that a maker wrote.
pub(super) fn of(
    limits: &[MakerLimit],
    outside: &[Reading],
    part: Option<&Part>,
    smallest: &Reading,
) -> Vec<CutLimit> {
    let mut caps = Vec::new();
    if let Some(wall) = Heard::of(limits, Limited::Wall)
        && let Some((least, words)) = wall.at_least()
    {
        let what = format!("wall {words}");
        caps.extend(match extremes(outside).first() {
            Some(outside) => {
                let left = outside.less(smallest).shifted(-least * 2.0);
                CutLimit::new(LimitKind::Wall, what, left, wall.limits.grade())
            }
            None => CutLimit::unknown(LimitKind::Wall, what, "measure the outside diameter there"),
        });
    }
    // The bore that a part of this outside may have at most: smaller by its least interference, larger by its greatest clearance.
    let part = part.and_then(least_outside);
    if let Some(press) = Heard::of(limits, Limited::Interference)
        && let Some((least, words)) = press.at_least()
    {
        let what = format!("interference of the part {words}");
        caps.extend(match part {
            Some(part) => {
                let left = part.less(smallest).shifted(-least);
                CutLimit::new(LimitKind::Maker, what, left, press.limits.grade())
            }
            None => CutLimit::unknown(LimitKind::Maker, what, "measure the outside of the part"),
        });
    }
    if let Some(slide) = Heard::of(limits, Limited::Clearance)
        && let Some((most, words)) = slide.at_most()
        && let Some(part) = part
    {
        let what = format!("clearance of the part {words}");
        let left = part.less(smallest).shifted(most);
        caps.extend(CutLimit::new(
            LimitKind::Clearance,
            what,
            left,
            slide.limits.grade(),
        ));
    }
    caps
}

/// The smallest that a part is, by its readings or else by its maker's limits.
fn least_outside(part: &Part) -> Option<Reading> {
    extremes(&part.outside).first().copied().or_else(|| {
        let lower = part.outside_limits?.lower().known()?;
        Reading::exact(lower).ok()
    })
}
