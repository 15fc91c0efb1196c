//! What is left to do for a spoilt place: what `rescue` holds possible, in its order of caution.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::thread::Bench;
use crate::judge::{Remedy, ThreadSeen, Verdict};
use crate::quantity::in_mm;
use crate::rescue::{Damage, Stand, ThreadRescue};
use crate::standard::Tables;
use crate::thread::Designation;

/// Most cures that are told; the rest stays with `rescue`.
const MOST: usize = 6;

/// The cures of a thread that has lost metal.
pub(super) fn of_thread(tables: Tables<'_>, bench: &Bench<'_>) -> Vec<String> {
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
        .iter()
        .filter(|option| matches!(option.stand, Stand::Allowed | Stand::NeedsMeasurement))
        .take(MOST)
        .map(|option| option.as_cure().to_string())
        .collect()
}

/// What a verdict holds could cure what is out, in its order of caution; its own sentence where it names nothing.
pub(super) fn of_verdict(verdict: &Verdict) -> Vec<String> {
    if verdict.cures.is_empty() {
        return Vec::from([verdict.words()]);
    }
    verdict
        .cures
        .iter()
        .take(MOST)
        .map(|cure| {
            let by = match cure.by {
                Remedy::Clean => "clean it down to the metal",
                Remedy::RoundOut => "bring it round again, without cutting",
                Remedy::Ream => "ream it",
                Remedy::Deepen => "deepen it",
                Remedy::Face => "face it, with the frame maker's word on how much",
                Remedy::Spacer => "a spacer",
                Remedy::Chase => "chase it with the same thread",
                Remedy::OtherPart => "another part",
                Remedy::Shim => "a shim",
                Remedy::Sleeve => "a sleeve or insert, by a builder",
                Remedy::Refer => "the frame maker or a qualified builder",
            };
            let size = cure
                .size
                .map_or(String::new(), |size| format!(", {}", in_mm(size)));
            let at = if cure.at.is_empty() {
                String::new()
            } else {
                format!(", {}", cure.at)
            };
            format!("{by}{size}{at}")
        })
        .collect()
}
