//! Figures and how sure they are. A figure cannot exist without its evidence; what is unknown stays unknown.

use alloc::borrow::Cow;

mod figure;
mod grade;
mod harmless;
#[cfg(feature = "serde")]
mod serial;
mod source;
pub(crate) mod tables;

#[cfg(feature = "serde")]
pub(crate) use serial::shop_evidence;

pub use figure::{Dissent, Fact, Figure, Span};
pub use grade::Grade;
pub(crate) use harmless::{escaped, one_line};
pub use source::{Citation, Evidence, Source, SourceKind};

/// Text that is either compiled in or brought by a shop.
pub type Text = Cow<'static, str>;
/// A list that is either compiled in or brought by a shop.
pub type List<T> = Cow<'static, [T]>;
