//! Generated tables: see `tests/tables/grid_thread.rs`, `tests/tables/thread_cite.rs` and `data/`.

pub(super) mod cite;
pub(super) mod hands;
pub(super) mod iso965;
pub(super) mod series;
