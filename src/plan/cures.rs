//! What is left to do for a spoilt place: what `rescue` holds possible, in its order of caution.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::sheet::ThreadState;
use super::thread::Bench;
use crate::rescue::{Damage, Stand, ThreadRescue};
use crate::thread::Designation;

/// Most cures that are told; the rest stays with `rescue`.
const MOST: usize = 6;

/// The cures of a thread that has lost metal.
pub(super) fn of_thread(bench: &Bench<'_>) -> Vec<String> {
    let damage = match bench.now.state {
        Some(ThreadState::Stripped) => Damage::Stripped,
        Some(ThreadState::Crossed) => Damage::CrossCut,
        _ => Damage::Worn,
    };
    let mut rescue = ThreadRescue::new(
        Designation::new(bench.size).with_hand(bench.hand),
        damage,
    );
    rescue.material = bench.joint.material;
    rescue.bore = bench.now.minor.first().map(|p| p.reading);
    let Ok(found) = rescue.options() else {
        return Vec::new();
    };
    found
        .options
        .iter()
        .filter(|option| matches!(option.stand, Stand::Allowed | Stand::NeedsMeasurement))
        .take(MOST)
        .map(|option| format!("{}: {}", option.step.words(), option.why))
        .collect()
}
