//! Generated tables; see `data/grids/`. Lengths are in tenths of a micrometre.

use super::TableSource;
use super::bearing::{ClearanceGroup, RingClass, RingSize};

pub(super) mod iso286;
pub(super) mod iso492;
pub(super) mod iso5753;

/// A row of the ring tolerances: the upper limit is 0 throughout.
pub(super) struct RingRow {
    pub(super) quantity: RingSize,
    pub(super) class: RingClass,
    pub(super) over: u8,
    pub(super) up_to: u8,
    pub(super) lower: i16,
    pub(super) from: TableSource,
}

/// A row of the internal clearances.
pub(super) struct ClearanceRow {
    pub(super) group: ClearanceGroup,
    pub(super) over: u8,
    pub(super) up_to: u8,
    pub(super) min: i16,
    pub(super) max: i16,
    pub(super) from: TableSource,
}
