//! The one error type of the crate: what was asked, what was found, what would be accepted.

use alloc::borrow::Cow;
use alloc::boxed::Box;
use alloc::string::{String, ToString};

/// Defects that a list keeps; more are counted. Nobody mends fifty at a time.
///
/// ```
/// assert_eq!(framegauge::read::MOST_DEFECTS, 50);
/// ```
pub const MOST_DEFECTS: usize = 50;

/// What went wrong, without data: the part a program matches on.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr, strum::EnumIter,
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum ErrorKind {
    /// A number is NaN or infinite.
    NotFinite,
    /// A number is finite but outside what the thing can be.
    OutOfRange,
    /// A value carries no unit, or one that does not fit the field.
    Unit,
    /// Text could not be read, or can be read in two ways.
    Text,
    /// A name that no table holds.
    UnknownName,
    /// A name that is already taken.
    NameTaken,
    /// A field that nothing knows.
    UnknownField,
    /// Something needed is not there.
    Missing,
    /// Two statements that cannot both be true.
    Contradiction,
    /// The tables hold no value for this question.
    NotTabulated,
    /// The formula does not apply to this material, form or geometry.
    NotApplicable,
    /// The input is larger than the library will read.
    TooLarge,
}

#[derive(Debug, Clone, PartialEq)]
struct Detail {
    kind: ErrorKind,
    field: Cow<'static, str>,
    value: String,
    problem: Cow<'static, str>,
    remedy: Cow<'static, str>,
    line: Option<usize>,
}

/// A question that makes no sense, with the field, the value found and the remedy.
///
/// "It does not fit" is an answer, never an error.
///
/// ```
/// use framegauge::{BoreDiameter, ErrorKind, mm};
/// let error = BoreDiameter::new(mm(-27.2)).unwrap_err();
/// assert_eq!(error.kind(), ErrorKind::OutOfRange);
/// assert_eq!(error.field(), "bore diameter");
/// assert_eq!(error.value(), "-27.200 mm");
/// assert!(error.to_string().contains("above 0 mm"));
/// ```
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", self.sentence())]
pub struct Error(Box<Detail>);

impl Error {
    /// An error of this kind about this field, with the value found, the problem and the remedy.
    ///
    /// ```
    /// use framegauge::{Error, ErrorKind};
    /// let e = Error::new(ErrorKind::Missing, "pitch", "", "no pitch given", "lay a pitch gauge on the thread");
    /// assert_eq!(e.to_string(), "pitch: no pitch given; lay a pitch gauge on the thread");
    /// ```
    #[must_use]
    pub fn new(
        kind: ErrorKind,
        field: impl Into<Cow<'static, str>>,
        value: impl ToString,
        problem: impl Into<Cow<'static, str>>,
        remedy: impl Into<Cow<'static, str>>,
    ) -> Self {
        Self(Box::new(Detail {
            kind,
            field: field.into(),
            value: value.to_string(),
            problem: problem.into(),
            remedy: remedy.into(),
            line: None,
        }))
    }

    /// The same error, said of the field inside which it happened: `pitch` becomes `shell.drive.pitch`.
    #[must_use]
    pub fn within(mut self, parent: &str) -> Self {
        self.0.field = if self.0.field.is_empty() {
            Cow::Owned(parent.to_string())
        } else {
            Cow::Owned(alloc::format!("{parent}.{}", self.0.field))
        };
        self
    }

    /// The same error, said of another field: whatever name its own room gave it, the asker's field is its name.
    #[must_use]
    pub(crate) fn named(mut self, field: impl Into<Cow<'static, str>>) -> Self {
        self.0.field = field.into();
        self
    }

    /// The same error, with the line of the file it came from (first line is 1).
    ///
    /// ```
    /// use framegauge::{Error, ErrorKind};
    /// let e = Error::new(ErrorKind::Missing, "pitch", "", "no pitch given", "lay a pitch gauge on the thread").at_line(3);
    /// assert_eq!(e.line(), Some(3));
    /// assert!(e.to_string().starts_with("line 3: pitch: "));
    /// ```
    #[must_use]
    pub fn at_line(mut self, line: usize) -> Self {
        self.0.line = Some(line);
        self
    }

    /// The kind, for a program to match on.
    #[must_use]
    pub fn kind(&self) -> ErrorKind {
        self.0.kind
    }
    /// The field, as a path from the outermost thing.
    #[must_use]
    pub fn field(&self) -> &str {
        &self.0.field
    }
    /// The value found, as text; empty when nothing was there.
    #[must_use]
    pub fn value(&self) -> &str {
        &self.0.value
    }
    /// What is wrong with it.
    #[must_use]
    pub fn problem(&self) -> &str {
        &self.0.problem
    }
    /// What would be accepted, or what to do.
    #[must_use]
    pub fn remedy(&self) -> &str {
        &self.0.remedy
    }
    /// The line of the file, where one was read.
    #[must_use]
    pub fn line(&self) -> Option<usize> {
        self.0.line
    }

    /// The last of a list that was cut short: how many more defects there are.
    pub(crate) fn and_more(uncounted: usize) -> Self {
        Self::new(
            ErrorKind::TooLarge,
            "",
            "",
            alloc::format!("and {uncounted} more"),
            "mend these first",
        )
    }

    fn sentence(&self) -> String {
        let detail = &self.0;
        let mut text = String::new();
        if let Some(line) = detail.line {
            text.push_str(&alloc::format!("line {line}: "));
        }
        if !detail.field.is_empty() {
            text.push_str(&detail.field);
            text.push_str(": ");
        }
        text.push_str(&detail.problem);
        if !detail.value.is_empty() {
            text.push_str(&alloc::format!(", got `{}`", clipped(&detail.value)));
        }
        if !detail.remedy.is_empty() {
            text.push_str("; ");
            text.push_str(&detail.remedy);
        }
        text
    }
}

/// A hostile value must not flood the message it is quoted in.
fn clipped(value: &str) -> Cow<'_, str> {
    const LIMIT: usize = 80;
    match value.char_indices().nth(LIMIT) {
        Some((end, _)) => Cow::Owned(alloc::format!("{}…", value.get(..end).unwrap_or_default())),
        None => Cow::Borrowed(value),
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Error {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("Error", 6)?;
        out.serialize_field("kind", <&'static str>::from(self.kind()))?;
        out.serialize_field("field", self.field())?;
        out.serialize_field("value", &clipped(self.value()))?;
        out.serialize_field("message", self.problem())?;
        out.serialize_field("remedy", self.remedy())?;
        out.serialize_field("line", &self.line())?;
        out.end()
    }
}
