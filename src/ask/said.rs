//! Errors of other rooms, said of the fields of a question.

use alloc::borrow::{Cow, ToOwned};
use alloc::format;

use crate::Error;

/// The same error, said of another field.
pub(super) fn named(error: &Error, field: impl Into<Cow<'static, str>>) -> Error {
    Error::new(
        error.kind(),
        field,
        error.value(),
        error.problem().to_owned(),
        error.remedy().to_owned(),
    )
}

/// The error of a value by itself: whatever name its own room gave it, the question's field is its name.
pub(super) fn bare(error: &Error) -> Error {
    named(error, "")
}

/// The error of a room, said of the field of the question that it was about: the first name that its own field holds,
/// else `otherwise`.
pub(super) fn said_of(
    error: &Error,
    names: &[(&str, &'static str)],
    otherwise: &'static str,
) -> Error {
    let field = names
        .iter()
        .find(|(theirs, _)| error.field().contains(theirs))
        .map_or(otherwise, |(_, ours)| ours);
    named(error, field)
}

/// The path one level further out; list places stand right behind their list.
pub(super) fn under(error: Error, parent: &str) -> Error {
    if error.field().starts_with('[') {
        let field = format!("{parent}{}", error.field());
        named(&error, field)
    } else {
        error.within(parent)
    }
}
