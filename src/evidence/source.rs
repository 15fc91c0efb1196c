//! The texts that figures were read in, and what a figure rests on.

use alloc::borrow::Cow;
use alloc::boxed::Box;
use core::fmt;

use super::{Grade, List, Text};

/// What kind of text a source is.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum SourceKind {
    /// A national or international standard, or a transcription or preview of one.
    Standard,
    /// A handbook or textbook.
    Handbook,
    /// A component or frame maker's own document.
    MakerDocument,
    /// An open data set.
    DataSet,
    /// A general-purpose software library used as a reference.
    Library,
    /// The trade press.
    TradePress,
    /// A workshop's, builder's or retailer's page.
    TradePage,
    /// A discussion between practitioners.
    Forum,
    /// A shop's own notes.
    Shop,
}

/// A text that figures were read in.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Source {
    /// Short name, unique.
    pub id: Text,
    /// Title or description.
    pub title: Text,
    /// Edition or date; empty when undated.
    pub edition: Text,
    /// What kind of text it is.
    pub kind: SourceKind,
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.title)?;
        if !self.edition.is_empty() {
            write!(f, " ({})", self.edition)?;
        }
        Ok(())
    }
}

/// A place in a source.
#[derive(Debug, Clone, PartialEq)]
pub struct Citation {
    source: Held,
    at: Text,
}

/// A `Cow` would keep room for a whole source in each of a thousand citations of the tables.
#[derive(Debug, Clone)]
enum Held {
    Table(&'static Source),
    Shop(Box<Source>),
}

impl Held {
    fn get(&self) -> &Source {
        match self {
            Self::Table(source) => source,
            Self::Shop(source) => source,
        }
    }
}

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        self.get() == other.get()
    }
}

impl Citation {
    /// For generated tables.
    pub(crate) const fn from_table(source: &'static Source, at: &'static str) -> Self {
        Self {
            source: Held::Table(source),
            at: Cow::Borrowed(at),
        }
    }

    /// A citation of a shop's own source.
    ///
    /// ```
    /// use framegauge::{Citation, Source, SourceKind};
    /// let drawing = Source { id: "drawing-12".into(), title: "frame drawing 12".into(), edition: "2026".into(), kind: SourceKind::Shop };
    /// assert_eq!(Citation::new(drawing, "title block").to_string(), "frame drawing 12 (2026), title block");
    /// ```
    #[must_use]
    pub fn new(source: Source, at: impl Into<Text>) -> Self {
        Self {
            source: Held::Shop(Box::new(source)),
            at: at.into(),
        }
    }

    /// The source.
    #[must_use]
    pub fn source(&self) -> &Source {
        self.source.get()
    }
    /// The place in it: table, clause, page or part of the page.
    #[must_use]
    pub fn at(&self) -> &str {
        &self.at
    }
}

impl fmt::Display for Citation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.source())?;
        if !self.at.is_empty() {
            write!(f, ", {}", self.at)?;
        }
        Ok(())
    }
}

/// Grade, citations and, for derived figures, the formula and the weakest grade it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Evidence {
    grade: Grade,
    basis: Grade,
    formula: Text,
    sources: List<Citation>,
    note: Text,
}

impl Evidence {
    /// For generated tables.
    pub(crate) const fn from_table(
        grade: Grade,
        basis: Grade,
        formula: &'static str,
        sources: &'static [Citation],
        note: &'static str,
    ) -> Self {
        Self {
            grade,
            basis,
            formula: Cow::Borrowed(formula),
            sources: Cow::Borrowed(sources),
            note: Cow::Borrowed(note),
        }
    }

    /// Evidence of a shop's own figure.
    ///
    /// ```
    /// use framegauge::{Evidence, Grade};
    /// assert_eq!(Evidence::shop("measured on our master gauge").grade(), Grade::Shop);
    /// ```
    #[must_use]
    pub fn shop(note: impl Into<Text>) -> Self {
        Self {
            grade: Grade::Shop,
            basis: Grade::Shop,
            formula: Cow::Borrowed(""),
            sources: Cow::Borrowed(&[]),
            note: note.into(),
        }
    }

    /// The same evidence with these citations.
    ///
    /// ```
    /// use framegauge::{Citation, Evidence, Source, SourceKind};
    /// let drawing = Source { id: "drawing".into(), title: "Our own drawing".into(), edition: "".into(), kind: SourceKind::Shop };
    /// let evidence = Evidence::shop("").citing(vec![Citation::new(drawing, "sheet 1")]);
    /// assert_eq!(evidence.sources()[0].at(), "sheet 1");
    /// ```
    #[must_use]
    pub fn citing(mut self, sources: impl Into<List<Citation>>) -> Self {
        self.sources = sources.into();
        self
    }

    /// The grade as the table states it.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }

    /// What the figure is worth: a derived figure is worth no more than the weakest figure it was derived from.
    #[must_use]
    pub fn worth(&self) -> Grade {
        if self.grade == Grade::Derived {
            self.grade.weaker(self.basis)
        } else {
            self.grade
        }
    }

    /// The formula of a derived figure, else empty.
    #[must_use]
    pub fn formula(&self) -> &str {
        &self.formula
    }
    /// Where it was read.
    #[must_use]
    pub fn sources(&self) -> &[Citation] {
        &self.sources
    }
    /// What a reader should know besides.
    #[must_use]
    pub fn note(&self) -> &str {
        &self.note
    }
}
