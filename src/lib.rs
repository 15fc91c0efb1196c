//! Standards tables for the places on a bicycle frame where a part is pressed, screwed, slid or bolted, and the fit
//! math that decides what to do with them.
#![no_std]
#![cfg_attr(docsrs, feature(doc_cfg))]

extern crate alloc;
#[cfg(feature = "std")]
extern crate std;

mod error;
pub mod evidence;
pub mod face;
pub mod fit;
pub mod identify;
pub mod judge;
pub mod measure;
pub mod prep;
pub mod quantity;
pub mod rescue;
pub mod standard;
pub mod thread;

pub use error::{Error, ErrorKind};
pub use evidence::{
    Citation, Dissent, Evidence, Fact, Figure, Grade, List, Source, SourceKind, Span, Text,
};
pub use quantity::*;
pub use uom;
