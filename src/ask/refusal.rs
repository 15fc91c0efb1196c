//! Why a question was not answered, as it is told.

use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;

use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

use crate::Error;

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
struct Defect<'a>(&'a Error);

/// Longest value that is quoted in a message.
const QUOTED: usize = 80;

impl Defect<'_> {
    fn message(&self) -> String {
        let value = self.0.value();
        let problem = self.0.problem();
        if value.is_empty() {
            return problem.to_owned();
        }
        let short = match value.char_indices().nth(QUOTED) {
            Some((end, _)) => alloc::format!("{}…", value.get(..end).unwrap_or_default()),
            None => value.to_owned(),
        };
        alloc::format!("{problem}, got `{short}`")
    }

    fn fields<S: SerializeStruct>(&self, out: &mut S) -> Result<(), S::Error> {
        out.serialize_field("kind", <&'static str>::from(self.0.kind()))?;
        out.serialize_field("field", self.0.field())?;
        out.serialize_field("message", &self.message())?;
        out.serialize_field("remedy", self.0.remedy())
    }
}

impl Serialize for Defect<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Error", 4)?;
        self.fields(&mut out)?;
        out.end()
    }
}

impl Serialize for Refusal {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("Refusal", 5)?;
        Defect(&self.first).fields(&mut out)?;
        if !self.also.is_empty() {
            let also: Vec<Defect<'_>> = self.also.iter().map(Defect).collect();
            out.serialize_field("also", &also)?;
        }
        out.end()
    }
}
