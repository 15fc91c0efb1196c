//! Screw threads: the profile travels with the size.
//!
//! Designations are read and printed, limits of size come from embedded tables, and the everyday questions have an
//! answer: which way to turn, whether two threads mate, what a worn thread still holds, what a retap leaves.

mod basic;
mod cite;
mod class;
mod designation;
mod drift;
mod form;
mod hand;
mod iso965;
mod limits;
mod mate;
mod pattern;
#[cfg(feature = "serde")]
mod round;
mod shell;
mod size;
mod tables;
mod tell;
mod turning;
mod unified;

pub use basic::BasicDiameters;
pub use class::{IsoClass, Member, Position, ToleranceClass, UnifiedClass};
pub use designation::Designation;
pub use drift::{PitchDrift, VISIBLE_DRIFT};
pub use form::ThreadForm;
pub use hand::{Hand, Side, Turn};
pub use limits::{
    Engagement, EngagementGroup, ThreadLimits, engagement_group, limits_of_size, series,
    usual_class,
};
pub use mate::{Grounds, Mates, Mismatch, mismatch};
pub use pattern::{HandPattern, hand_pattern, hand_patterns};
pub use shell::{ShellComparison, ShellThreads, SideFinding};
pub use size::ThreadSize;
pub use tell::{BoreCandidates, CaliperShows, caliper_shows, candidates_by_bore};
pub use turning::{Reason, Turning, turning};
pub use unified::Series;
