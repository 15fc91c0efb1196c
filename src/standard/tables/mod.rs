//! Generated from `data/`, one file each.
mod axles;
mod bearings;
mod brakes;
mod crown;
mod cutting;
mod grids;
mod head_tube;
mod materials;
mod seatposts;
mod shells;
mod work;

pub(super) use axles::*;
pub(super) use bearings::*;
pub(super) use brakes::*;
pub(super) use crown::*;
pub(super) use cutting::*;
pub(super) use grids::*;
pub(super) use head_tube::*;
pub(super) use materials::*;
pub(super) use seatposts::*;
pub(super) use shells::*;
pub(super) use work::*;
