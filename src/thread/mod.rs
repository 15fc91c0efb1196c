//! Screw threads: the profile travels with the size.
//!
//! Designations are read and printed, limits of size come from embedded tables, and the everyday questions have an
//! answer: which way to turn, whether two threads mate, what a worn thread still holds, what a retap leaves.

mod basic;
mod cite;
mod class;
mod designation;
mod form;
mod hand;
mod iso965;
mod limits;
mod pattern;
mod size;
mod tables;
mod unified;

pub use basic::BasicDiameters;
pub use class::{IsoClass, Member, Position, ToleranceClass, UnifiedClass};
pub use designation::Designation;
pub use form::ThreadForm;
pub use hand::{Hand, Side, Turn};
pub use limits::{
    Engagement, EngagementGroup, ThreadLimits, engagement_group, limits_of_size, series,
    usual_class,
};
pub use pattern::{HandPattern, hand_pattern, hand_patterns};
pub use size::ThreadSize;
pub use unified::Series;
