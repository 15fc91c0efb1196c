//! The one reader: a small tree into forms, every defect told with its path and remedy; no rule of the trade.
//!
//! Questions, frame sheets and whatever else a person or a script writes is declared once, as a form: the declaration makes
//! the struct, its reader and its schema. Reading goes on after a defect, so that all of them are told at once.

mod context;
mod fields;
mod form;
#[cfg(feature = "serde")]
mod grow;
mod shape;
#[cfg(feature = "serde")]
mod told;
mod tree;
mod values;

pub use context::{Context, Instruments, MOST_DEFECTS};
pub(crate) use context::{missing, twice};
pub(crate) use fields::Fields;
pub(crate) use form::form;
pub(crate) use shape::text_shape;
pub use shape::{FactForm, Field, Form, Shape, ValueForm};
#[cfg(feature = "serde")]
pub use told::{Between, Told};
#[cfg(feature = "serde")]
pub(crate) use told::{answer, goes_out, told};
pub use tree::Tree;
pub use values::{Deep, Given, Inside, Listed, Outside, Read, ReadBy};
pub(crate) use values::{from_text, known_words, reading, text, word, words};

use alloc::vec::Vec;

use crate::Error;
use crate::standard::Tables;

/// Reads a form as a whole.
///
/// # Errors
/// Every defect, each with its path and remedy.
///
/// ```
/// use framegauge::{Length, read::{Tree, read_whole}, standard::Tables};
/// let errors = read_whole::<Vec<Length>>(&Tree::List(vec![Tree::Number(1.0), Tree::Null]), Tables::ours()).unwrap_err();
/// assert_eq!((errors.len(), errors[1].field()), (2, "[1]"));
/// ```
pub fn read_whole<T: Read>(tree: &Tree<'_>, tables: Tables<'_>) -> Result<T, Vec<Error>> {
    let mut context = Context::new(tables);
    match T::read(tree, &mut context) {
        Some(whole) if context.met() == 0 => Ok(whole),
        _ => Err(context.into_defects()),
    }
}
