//! Errors of other rooms, said of the fields of a question.

use alloc::format;

use crate::{Error, ErrorKind};

/// What another room answers: its error becomes one of the question's own field.
pub(super) trait Said<T> {
    /// Said of this field.
    fn said(self, field: &'static str) -> Result<T, Error>;

    /// Said of the field that is paired with the first name that its own field holds, else of `otherwise`.
    fn said_by(self, names: &[(&str, &'static str)], otherwise: &'static str) -> Result<T, Error>;

    /// The path one level further out; list places stand right behind their list.
    fn under(self, parent: &str) -> Result<T, Error>;
}

impl<T> Said<T> for Result<T, Error> {
    fn said(self, field: &'static str) -> Result<T, Error> {
        self.map_err(|e| e.named(field))
    }

    fn said_by(self, names: &[(&str, &'static str)], otherwise: &'static str) -> Result<T, Error> {
        self.map_err(|e| {
            let found = names.iter().find(|(theirs, _)| e.field().contains(theirs));
            e.named(found.map_or(otherwise, |(_, ours)| ours))
        })
    }

    fn under(self, parent: &str) -> Result<T, Error> {
        self.map_err(|e| match e.field().starts_with('[') {
            true => {
                let field = format!("{parent}{}", e.field());
                e.named(field)
            }
            false => e.within(parent),
        })
    }
}

/// What to do about two questions in one.
pub(super) const ONE: &str = "state one of them";

/// Two fields that are two questions, or two statements of one.
pub(super) fn second(field: &'static str, problem: &'static str, remedy: &'static str) -> Error {
    Error::new(ErrorKind::Contradiction, field, "", problem, remedy)
}
