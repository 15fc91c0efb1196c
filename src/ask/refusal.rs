//! Why a question was not answered, as it is told.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::read::{Shape, goes_out, known_words, told};
use crate::{Error, ErrorKind};

/// Why a question was not answered: its defect, or all of them where a sheet has several.
///
/// ```
/// use framegauge::{Error, ErrorKind, ask::Refusal};
/// let refusal = Refusal::from(Error::new(ErrorKind::Missing, "thread", "", "is missing", "state it"));
/// assert_eq!(
///     serde_json::to_string(&refusal).unwrap(),
///     r#"{"kind":"missing","field":"thread","message":"is missing","remedy":"state it"}"#
/// );
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Refusal {
    first: Error,
    also: Vec<Error>,
}

impl Refusal {
    /// The first defect.
    #[must_use]
    pub const fn first(&self) -> &Error {
        &self.first
    }
    /// The other defects.
    #[must_use]
    pub fn also(&self) -> &[Error] {
        &self.also
    }
    fn others(&self) -> Option<Vec<Defect>> {
        let others = self.also.iter().cloned().map(Defect);
        (!self.also.is_empty()).then(|| others.collect())
    }
    /// All of these; `None` when there is none.
    pub(super) fn all(errors: Vec<Error>) -> Option<Self> {
        let mut errors = errors.into_iter();
        errors.next().map(|first| Self {
            first,
            also: errors.collect(),
        })
    }
}

impl From<Error> for Refusal {
    fn from(first: Error) -> Self {
        Self {
            first,
            also: Vec::new(),
        }
    }
}

impl core::fmt::Display for Refusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        self.first.fmt(f)?;
        self.also.iter().try_for_each(|e| write!(f, "\n{e}"))
    }
}

/// One defect as it is told.
struct Defect(Error);

/// Longest value that is quoted in a message.
const QUOTED: usize = 80;

fn message(error: &Error) -> String {
    let (value, problem) = (error.value(), error.problem());
    match value.char_indices().nth(QUOTED) {
        _ if value.is_empty() => problem.into(),
        None => format!("{problem}, got `{value}`"),
        Some((end, _)) => format!("{problem}, got `{}…`", value.get(..end).unwrap_or_default()),
    }
}

told! { ErrorKind => Shape::Word(known_words::<ErrorKind>) }

goes_out! {
    Defect(this) {
        /// what kind of defect
        kind: ErrorKind = <&str>::from(this.0.kind()),
        /// path inside the question; `line` for the line itself
        field: &str = this.0.field(),
        /// what is wrong
        message: String = message(&this.0),
        /// what to do
        remedy: &str = this.0.remedy(),
    }
    Refusal(this) {
        /// what kind of defect
        kind: ErrorKind = <&str>::from(this.first.kind()),
        /// path inside the question; `line` for the line itself
        field: &str = this.first.field(),
        /// what is wrong
        message: String = message(&this.first),
        /// what to do
        remedy: &str = this.first.remedy(),
        ? /// further defects of a sheet
        also: Vec<Defect> = this.others(),
    }
}
