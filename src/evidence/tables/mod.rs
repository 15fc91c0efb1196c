//! Generated from `data/sources.toml`.
mod sources;
pub(crate) use sources::SOURCES;
