//! What is left to do for a spoilt place: what `rescue` holds possible, in its order of caution.

use alloc::vec::Vec;

use super::facts::{CommonFact, Fact};
use super::thread::Bench;
use crate::judge::{CuredAt, Remedy, ThreadSeen, Verdict};
use crate::rescue::{Damage, Stand, ThreadRescue};
use crate::standard::Tables;
use crate::thread::Designation;

/// Most cures that are told; the rest stays with `rescue`.
const MOST: usize = 6;

/// The cures of a thread that has lost metal.
pub(super) fn of_thread(tables: Tables<'_>, bench: &Bench<'_>) -> Vec<Fact> {
    let damage = match bench.now.state {
        Some(ThreadSeen::Stripped) => Damage::Stripped,
        Some(ThreadSeen::Crossed) => Damage::CrossCut,
        _ => Damage::Worn,
    };
    let mut rescue = ThreadRescue::new(Designation::new(bench.size).with_hand(bench.hand), damage);
    rescue.material = bench.joint.material;
    rescue.bore = bench.now.minor.first().map(|p| p.reading);
    rescue.outside = bench.outside;
    rescue.shell = bench.shell;
    let Ok(found) = rescue.options(tables) else {
        return Vec::new();
    };
    found
        .options
        .into_iter()
        .filter(|option| matches!(option.stand, Stand::Allowed | Stand::NeedsMeasurement))
        .take(MOST)
        .map(|option| Fact::from(option.as_cure()))
        .collect()
}

/// What a verdict holds could cure what is out, in its order of caution; a builder's word where it names nothing.
pub(super) fn of_verdict(verdict: &Verdict) -> Vec<Fact> {
    let cure = |by, size, at| Fact::from(CommonFact::Cure { by, size, at });
    if verdict.cures.is_empty() {
        return Vec::from([cure(Remedy::Refer, None, CuredAt::All)]);
    }
    let cures = verdict.cures.iter().take(MOST);
    cures.map(|c| cure(c.by, c.size, c.at.clone())).collect()
}
