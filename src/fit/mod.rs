//! Limits, fits, press fits, clamps, stacks and temperature.
//!
//! Diameters and fits are *on diameter*: interference is shaft less bore, clearance bore less shaft.

mod bearing;
mod class;
mod designation;
mod deviation;
mod tables;

pub use bearing::{
    ClearanceGroup, RingClass, RingSize, RingTolerance, internal_clearance, ring_tolerance,
};
pub use class::{DeviationLetter, Feature, FitClass, ToleranceGrade};
pub use designation::{FitDesignation, SizeClass};
pub use deviation::{
    LimitDeviations, TableSource, iso286_sources, limit_deviations, standard_tolerance,
};
