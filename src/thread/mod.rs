//! Screw threads: the profile travels with the size.
//!
//! Designations are read and printed, limits of size come from embedded tables, and the everyday questions have an
//! answer: which way to turn, whether two threads mate, what a worn thread still holds, what a retap leaves.

mod basic;
mod class;
mod cursor;
mod designation;
mod drift;
mod engage;
mod form;
mod formula;
mod gauge;
mod group;
mod hand;
mod iso965;
mod limits;
mod mate;
mod parse;
mod pattern;
mod rescue;
#[cfg(feature = "serde")]
mod round;
mod shell;
mod size;
mod strength;
mod stress;
mod strip;
mod tables;
mod tell;
mod turning;
mod unified;
mod wire;

pub use basic::BasicDiameters;
pub(crate) use basic::minor_span;
pub use class::{IsoClass, Member, Position, ToleranceClass, UnifiedClass};
pub use designation::Designation;
pub use drift::{PitchDrift, VISIBLE_DRIFT};
pub use engage::{
    FlankEngagement, PercentConvention, bore_for_percent, flank_engagement, thread_percent,
};
pub use form::ThreadForm;
pub use gauge::{
    Chasing, Gauge, GaugeMeaning, Gauging, GaugingVerdict, NOT_GO_TURNS, chasing, judge_gauging,
};
pub use group::{Engagement, EngagementGroup, engagement_group};
pub use hand::{Hand, Side, Turn};
pub(crate) use limits::pitch_in_series;
pub use limits::{ThreadLimits, limits_of_size, series, usual_class};
pub use mate::{Grounds, Mates, Mismatch, mismatch};
pub use pattern::{HandPattern, Holds, SideHand, hand_pattern, hand_patterns};
pub use rescue::{InsertSizes, Retap, insert_sizes, retap};
pub use shell::{ShellComparison, ShellThreads, SideFinding};
pub use size::ThreadSize;
pub use strength::{MinimumMaterial, rough_shear_areas};
pub use stress::{StressAreaRule, high_strength_stress_area, stress_area};
pub use strip::{EqualStrength, ShearAreas, Stripping};
pub use tell::{BoreCandidates, CaliperShows, caliper_shows, candidates_by_bore};
pub use turning::{Reason, Turning, turning};
pub use unified::Series;
pub use wire::ThreeWire;
