//! What makers' limits leave of a bore: its wall, and how tight or loose the part may sit. One reckoning for every bore.

use alloc::vec::Vec;

use super::facts::{CommonAsk, CommonFact, CutLimit};
use super::sheet::{Heard, Limited, MakerLimit, Part};
use crate::face::LimitKind;
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
    let mut cap =
        |kind, what: CommonFact, left: Option<Reading>, unknown: CommonAsk, heard: &Heard| {
            caps.extend(match left {
                Some(left) => CutLimit::new(kind, what, left.less(smallest), heard.limits.grade()),
                None => CutLimit::unknown(kind, what, unknown),
            });
        };
    if let Some(wall) = Heard::of(limits, Limited::Wall)
        && let Some((least, what)) = wall.least()
    {
        let left = extremes(outside).first().map(|o| o.shifted(-least * 2.0));
        cap(LimitKind::Wall, what, left, CommonAsk::Outside, &wall);
    }
    // The bore that a part of this outside may have at most: smaller by its least interference, larger by its greatest clearance.
    let part = part.and_then(least_outside);
    if let Some(press) = Heard::of(limits, Limited::Interference)
        && let Some((least, what)) = press.least()
    {
        let left = part.map(|part| part.shifted(-least));
        cap(LimitKind::Maker, what, left, CommonAsk::PartOutside, &press);
    }
    if let Some(slide) = Heard::of(limits, Limited::Clearance)
        && let (Some((most, what)), Some(part)) = (slide.most(), part)
    {
        let (left, unknown) = (Some(part.shifted(most)), CommonAsk::PartOutside);
        cap(LimitKind::Clearance, what, left, unknown, &slide);
    }
    caps
}

/// The smallest that a part is, by its readings or else by its maker's limits.
fn least_outside(part: &Part) -> Option<Reading> {
    let limit = || Reading::exact(part.outside_limits?.lower().known()?).ok();
    extremes(&part.outside).first().copied().or_else(limit)
}
