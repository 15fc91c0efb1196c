//! Judging one interface: what was found, held against limits with their owner, in words a person can act on.
//!
//! Every question gives a [`Verdict`]: one of three outcomes, the findings that decide with their numbers and sources, other
//! published figures beside them, what was worked out, what to measure next, and one plain sentence. Where no limit is
//! published it says so, and shows nothing.

mod align;
mod brake;
mod claims;
mod coating;
mod depth;
mod finding;
mod form;
mod joint;
mod mating;
mod mating_cure;
mod mating_felt;
mod mating_measured;
mod mating_said;
mod post_depth;
mod shim;
mod thread_signs;
mod threads;
mod tube;
mod verdict;
mod words;

pub use align::{Dropouts, SpindleBinds};
pub use brake::{CaliperPlace, hub_width, sliding_tab};
pub use claims::{per_inch_rule, post_by_tape, series_pitches, table_row};
pub use coating::{at_temperature, over_coating};
pub use depth::{cup_depth, flat_mount_bolt, spindle_for_width};
pub use finding::{Finding, sizes_against};
pub use form::{mount_square, one_size, parallel_faces};
pub use joint::Joint;
pub use mating::{Felt, FitQuestion};
pub use post_depth::PostDepth;
pub use shim::shim;
pub use thread_signs::{ThreadSigns, gauged_thread, hole_to_tap, loosening};
pub use threads::{pattern_threads, shell_and_part, shell_orientation, thread_pair};
pub use tube::{expected_post, head_tube_from_stock, inside_diameter, reaming, wall_implied};
pub use verdict::{NextStep, Number, Verdict, Worked};

pub(crate) use finding::{extremes, fit_words, from_to, spread};
