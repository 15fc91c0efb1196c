//! Standards tables for the places on a bicycle frame where a part is pressed, screwed, slid or bolted, and the fit math
//! that decides what to do with them.
//!
//! The job: a workshop mechanic prepares a painted frame. Each interface is identified by measuring, checked before cutting,
//! then reamed, chased, faced or left alone, in the right order and with a stop before width, thread, wall or clearance runs
//! out. [`plan::prepare`] does it for a whole frame; the rooms below it answer one question each.
//!
//! ```
//! use framegauge::{fit::{HoleMember, ShaftMember, fit_between}, measure::DecisionRule, standard::{HeadSeat, find}};
//!
//! // A bore with its evidence, and a cup that was measured.
//! let seat = find::<HeadSeat>("EC34").unwrap();
//! assert_eq!(seat.bore.to_string(), "33.9 to 33.95 mm");
//! println!("{:#}", seat.bore); // … (published once: a headset maker's guide, page …)
//! let cup = ShaftMember::of_reading("34.02 +/- 0.01 mm".parse().unwrap()).unwrap();
//! let fit = fit_between(&HoleMember::of_figure(&seat.bore).unwrap(), &cup, DecisionRule::default()).unwrap();
//! assert_eq!(framegauge::in_mm(-fit.tightest().value()).to_string(), "0.120 mm");
//! ```
//!
//! | if you want to … | use … |
//! |---|---|
//! | plan a whole frame | [`plan::prepare`] |
//! | write what was done, and see what is left | [`plan::record()`], [`say::pictures`], [`say`] |
//! | name a standard from readings | [`identify::identify`] |
//! | judge one interface, and know what to measure next | [`judge`] |
//! | see what can be done for a damaged thread or bore | [`rescue`] |
//! | look a standard up | [`standard::find`] |
//! | know what a thread may measure, which way it turns, whether two mate | [`thread`] |
//! | know how two parts fit, what a press does | [`fit`] |
//! | know how square a face is and how deep to cut | [`face`] |
//! | hold a reading against limits | [`measure::decide`] |
//! | know how sure a figure is | [`Evidence`], [`Grade`] |
//! | bring a shop's own rows | [`standard::ShopRows`] |
//! | answer scripts, one line in and one line out | `ask` (feature `serde`; lines of JSON: `json`) |
//! | add a standard, embed the crate, ask from a script, read a verdict | [`guide`] |
//!
//! Quantities are uom's (`uom::si::f64`), re-exported as [`uom`]; short constructors are [`mm`], [`um`], [`inch`], [`deg`]. A
//! clearance is bore less shaft, an interference shaft less bore, both on diameter. Heights of faces are positive outwards.
//! Turns are stated as seen facing that side of the frame from outside.
//!
//! Features: `std`, `serde` and `json`, all on by default. Without `std` the crate is `no_std` with `alloc`; answers are the same bit
//! for bit. Minimum Rust: 1.88.
//!
//! Brakes, steering, seatposts and carbon can hurt people when they fail: the frame and component maker's written limits,
//! local rules and qualified practice come before any answer of this library.
#![no_std]
// In unit tests a panic is the right answer.
#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::indexing_slicing,
        clippy::panic
    )
)]
#![cfg_attr(docsrs, feature(doc_cfg))]

extern crate alloc;
#[cfg(feature = "std")]
extern crate std;

#[cfg(feature = "serde")]
pub mod ask;
mod error;
pub mod evidence;
pub mod face;
pub mod fact;
pub mod fit;
pub mod guide;
pub mod identify;
pub mod judge;
pub mod measure;
pub mod plan;
pub mod quantity;
pub mod read;
pub mod rescue;
pub mod say;
pub mod standard;
pub mod thread;

pub use error::{Error, ErrorKind};
pub use evidence::{
    Citation, Dissent, Evidence, Fact, Figure, Grade, List, Source, SourceKind, Span, Text,
};
pub use quantity::*;
pub use uom;
