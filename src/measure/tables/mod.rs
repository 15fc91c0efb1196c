//! Generated from `data/instruments.toml`.
mod instruments;
pub(crate) use instruments::INSTRUMENTS;
