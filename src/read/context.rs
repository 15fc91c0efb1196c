//! What is handed along while a form is read: tables, instruments, the path, and every defect that was met.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::tree::Tree;
use crate::evidence::Text;
use crate::standard::{Tables, nearest};
use crate::{Error, ErrorKind};

pub use crate::error::MOST_DEFECTS;

/// Which instrument took the readings that name none, by what it measures.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Instruments {
    /// Bores.
    pub inside: Option<Text>,
    /// Posts, cups, tubes, widths.
    pub outside: Option<Text>,
    /// Depths.
    pub depth: Option<Text>,
    /// Heights of faces.
    pub height: Option<Text>,
}

/// What is handed along while a form is read.
///
/// ```
/// use framegauge::{Length, read::{Context, Read, Tree}, standard::Tables};
/// let mut context = Context::new(Tables::ours());
/// assert!(Length::read(&Tree::Number(27.2), &mut context).is_none());
/// assert_eq!(context.into_defects()[0].problem(), "a bare number has no unit");
/// ```
#[derive(Debug, Clone)]
pub struct Context<'a> {
    tables: Tables<'a>,
    /// Instruments of readings that name none.
    pub(crate) instruments: Instruments,
    /// An instrument of the form was not understood, so that a reading which relies on it is not complained of as well.
    pub(crate) instruments_spoilt: bool,
    path: String,
    defects: Vec<Error>,
    uncounted: usize,
}

impl<'a> Context<'a> {
    /// A context with nothing read yet.
    #[must_use]
    pub fn new(tables: Tables<'a>) -> Self {
        Self {
            tables,
            instruments: Instruments::default(),
            instruments_spoilt: false,
            path: String::new(),
            defects: Vec::new(),
            uncounted: 0,
        }
    }

    /// The tables, with a shop's own rows.
    #[must_use]
    pub const fn tables(&self) -> Tables<'a> {
        self.tables
    }

    /// Reads one level further in, under this name.
    pub(crate) fn under<T>(&mut self, name: &str, read: impl FnOnce(&mut Self) -> T) -> T {
        let before = self.path.len();
        if before > 0 && !name.starts_with('[') {
            self.path.push('.');
        }
        // A hostile name must not become a hostile path.
        self.path.extend(name.chars().take(60));
        let out = read(self);
        self.path.truncate(before);
        out
    }

    /// Reads one item of a list.
    pub(crate) fn item<T>(&mut self, index: usize, read: impl FnOnce(&mut Self) -> T) -> T {
        self.under(&format!("[{index}]"), read)
    }

    /// Notes a defect of the value that is being read. Whatever field the error names itself, here it is the path.
    pub(crate) fn refuse(&mut self, error: &Error) {
        if self.is_full() {
            self.uncounted += 1;
            return;
        }
        let here = Error::new(
            error.kind(),
            self.path.clone(),
            error.value(),
            error.problem().to_string(),
            error.remedy().to_string(),
        );
        self.defects.push(here);
    }

    /// The value, or its defect noted.
    pub(crate) fn keep<T>(&mut self, result: Result<T, Error>) -> Option<T> {
        match result {
            Ok(value) => Some(value),
            Err(error) => {
                self.refuse(&error);
                None
            }
        }
    }

    /// Notes a defect of this field: its kind and value, the problem, the remedy.
    pub(crate) fn not_accepted(
        &mut self,
        (field, kind, value): (&str, ErrorKind, &dyn ToString),
        problem: impl Into<Cow<'static, str>>,
        remedy: impl Into<Cow<'static, str>>,
    ) {
        let error = Error::new(kind, "", value.to_string(), problem, remedy);
        if field.is_empty() {
            return self.refuse(&error);
        }
        self.under(field, |context| context.refuse(&error));
    }

    /// Notes that something else was expected here.
    pub(crate) fn expected<T>(&mut self, tree: &Tree<'_>, what: &str) -> Option<T> {
        self.refuse(&tree.instead_of(what));
        None
    }

    /// How many defects were met so far.
    pub(crate) const fn met(&self) -> usize {
        self.defects.len() + self.uncounted
    }

    fn is_full(&self) -> bool {
        self.defects.len() >= MOST_DEFECTS
    }

    /// Every defect, in the order in which it was met; after [`MOST_DEFECTS`] one that says how many more there are.
    #[must_use]
    pub fn into_defects(self) -> Vec<Error> {
        let mut defects = self.defects;
        if self.uncounted > 0 {
            defects.push(Error::and_more(self.uncounted));
        }
        defects
    }

    /// Notes an unknown field, with the names nearest to it.
    pub(super) fn unknown_field(&mut self, name: &str, known: &[&str]) {
        if self.is_full() {
            self.uncounted += 1;
            return;
        }
        let mut near = nearest(&mut known.iter().copied(), name);
        near.truncate(3);
        let error = Error::new(
            ErrorKind::UnknownField,
            "",
            "",
            "no such field",
            if known.len() <= 6 {
                format!("known here: {}", known.join(", "))
            } else {
                format!("nearest: {}", near.join(", "))
            },
        );
        self.under(name, |context| context.refuse(&error));
    }
}

/// A field that must be there and is not.
pub(crate) fn missing(field: impl Into<Text>) -> Error {
    Error::new(
        ErrorKind::Missing,
        field,
        "",
        "is missing",
        "state it; see the schema of the question",
    )
}

/// A field that stands twice.
pub(crate) fn twice(field: &str) -> Error {
    Error::new(
        ErrorKind::Contradiction,
        field.to_string(),
        "",
        "is stated twice",
        "state it once",
    )
}
