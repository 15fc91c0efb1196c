//! Generated tables: see `tests/tables/grid_thread.rs` and the files under `data/grids/`.

pub(super) mod hands;
pub(super) mod iso965;
pub(super) mod series;
