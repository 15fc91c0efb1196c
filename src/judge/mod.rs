//! Judging one place: every question about it is a form with the readings, the makers' limits and the decision rule, and one
//! answer, a [`Verdict`]: one of three outcomes, the findings that decide with their numbers and sources, other published
//! figures beside them, what was worked out, what would cure it, what to measure next, and one plain sentence.
//!
//! Nothing else in the crate answers these questions: a plan, a rescue, a script and the examples call them. Where no limit is
//! published the verdict says so, and shows nothing.

mod bolt;
mod bore_fit;
mod caliper_place;
mod caliper_tilt;
mod claims;
mod coating;
mod conform;
mod cup_depth;
mod dropouts;
mod facts;
mod finding;
mod fit;
mod fit_cure;
mod fit_felt;
mod fit_measured;
mod gauging;
mod held;
mod hole_to_tap;
mod hub_width;
mod insertion;
mod joint;
mod loosening;
mod member;
mod one_size;
mod parallel_faces;
mod posts;
mod shim;
mod sliding_tab;
mod spindle;
mod spindle_binds;
mod temperature;
mod threads;
mod tube;
mod verdict;
mod wall;
mod width;

pub use bolt::BoltLength;
pub use bore_fit::BoreFit;
pub use caliper_place::CaliperPlace;
pub use caliper_tilt::{CaliperTilt, HeightAt};
pub use claims::{per_inch_rule, post_by_tape, series_pitches, table_row};
pub use coating::Coating;
pub use conform::{Conform, ThreadDiameter};
pub use cup_depth::CupDepth;
pub use dropouts::Dropouts;
pub(crate) use facts::asks;
pub use facts::{
    Ask, BoreAsk, BoreFact, ClaimAsk, ClaimFact, Contradiction, Doubt, Fact, FitAsk, FitFact,
    Instrument, SizeFact, SquareAsk, SquareFact, ThreadAsk, ThreadFact,
};
pub use finding::{Finding, sizes_against};
pub use fit::{Felt, Fit};
pub use gauging::{Gauging, Passed, ThreadSeen};
pub(crate) use gauging::{MinorHeld, minor_held};
pub(crate) use held::Held;
pub use held::{FigureName, OwnLimits, OwnedLimits};
pub use hole_to_tap::HoleToTap;
pub use hub_width::HubWidth;
pub use insertion::{Insertion, WrittenDepth};
pub use joint::windows_of;
pub use loosening::loosening;
pub use member::MemberOf;
pub use one_size::one_size;
pub use parallel_faces::ParallelFaces;
pub use posts::SeatpostForTube;
pub use shim::Shim;
pub use sliding_tab::sliding_tab;
pub use spindle::SpindleWidth;
pub use spindle_binds::SpindleBinds;
pub use temperature::AtTemperature;
pub use threads::{pattern_threads, shell_and_part, shell_orientation, thread_pair};
pub use tube::{expected_post, head_tube_from_stock, inside_diameter, wall_implied};
pub use verdict::{CuredAt, Curing, NextStep, Number, Remedy, SettledBy, Verdict, Worked};
pub use wall::{Ream, Wall};
pub use width::WidthWindow;

pub(crate) use crate::say::from_to;
pub(crate) use finding::extremes;
pub(crate) use member::sizes;
