//! What an answer rests on.

use alloc::borrow::Cow;
use alloc::vec::Vec;

use serde::Serialize;

use crate::evidence::{Citation, Evidence, Grade, List, Text};
use crate::fit::TableSource;
use crate::read::goes_out;

/// What an answer rests on: the weakest grade, how it was derived, and what a reader should know.
///
/// ```
/// use framegauge::{Grade, ask::Basis};
/// let basis = Basis::reckoned("D2 = D - 3H/4");
/// assert_eq!(basis.grade, Grade::Derived);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Basis {
    /// The weakest grade that the answer rests on. `shop` where the limits are the asker's own.
    pub grade: Grade,
    /// The formula, where the answer was reckoned.
    pub formula: Text,
    /// What a reader should know besides.
    pub note: Text,
    /// Where the figures were read.
    pub sources: List<Citation>,
}

/// Here `shop` is said of the asker's own readings and limits as well as of a shop's rows.
const fn words(grade: Grade) -> &'static str {
    match grade {
        Grade::Shop => "your own figures",
        other => other.words(),
    }
}

fn stated(text: &Text) -> Option<&Text> {
    Some(text).filter(|text| !text.is_empty())
}

/// What an answer tells of its basis.
struct Worth(Basis);

goes_out! {
    Worth(this) {
        /// the weakest grade, strongest first: standard, agreeing, published, second_hand, derived, common_practice, memory, shop
        grade: Grade = this.0.grade,
        /// the grade in words
        words: &str = words(this.0.grade),
        ? /// how it was derived
        formula: Text = stated(&this.0.formula),
        ? /// what a reader should know besides
        note: Text = stated(&this.0.note),
    }
    Basis(this) {
        /// what the answer rests on
        evidence: Worth = Worth(this.clone()),
        /// titles of the sources, with the place in them
        sources: Vec<Citation> = this.sources,
    }
}

impl Basis {
    /// Figures of this worth, read nowhere that is named: the asker's own limits and readings.
    #[must_use]
    pub const fn graded(grade: Grade) -> Self {
        Self {
            grade,
            formula: Cow::Borrowed(""),
            note: Cow::Borrowed(""),
            sources: Cow::Borrowed(&[]),
        }
    }

    /// A formula on what the asker gave.
    #[must_use]
    pub fn reckoned(formula: impl Into<Text>) -> Self {
        Self {
            formula: formula.into(),
            ..Self::graded(Grade::Derived)
        }
    }

    /// The same, with the formula.
    #[must_use]
    pub fn by(mut self, formula: impl Into<Text>) -> Self {
        self.formula = formula.into();
        self
    }

    /// The same, with a note.
    ///
    /// ```
    /// use framegauge::{Grade, ask::Basis};
    /// let basis = Basis::graded(Grade::Derived).by("half the difference").noting("on diameter");
    /// assert_eq!((&*basis.formula, &*basis.note), ("half the difference", "on diameter"));
    /// ```
    #[must_use]
    pub fn noting(mut self, note: impl Into<Text>) -> Self {
        self.note = note.into();
        self
    }

    pub(super) fn of(evidence: &'static Evidence) -> Self {
        Self {
            formula: Cow::Borrowed(evidence.formula()),
            note: Cow::Borrowed(evidence.note()),
            sources: Cow::Borrowed(evidence.sources()),
            ..Self::graded(evidence.worth())
        }
    }

    /// The same, no better than this.
    pub(super) fn at_best(mut self, grade: Option<Grade>) -> Self {
        if let Some(grade) = grade {
            self.grade = self.grade.weaker(grade);
        }
        self
    }

    /// The same, with further sources, each named once.
    pub(super) fn citing<'c>(mut self, sources: impl IntoIterator<Item = &'c Citation>) -> Self {
        let all = self.sources.to_mut();
        for citation in sources {
            if !all.contains(citation) {
                all.push(citation.clone());
            }
        }
        self
    }

    /// The same, with the tables of a room.
    pub(super) fn with_tables(self, tables: &[TableSource]) -> Self {
        tables.iter().fold(self, |basis, table| {
            basis.at_best(Some(table.grade)).citing(&table.citation())
        })
    }
}

/// An answer with what it rests on: the fields of the answer, then `evidence` and `sources`.
///
/// ```
/// use framegauge::ask::{Answered, Basis};
/// use serde::Serialize;
/// #[derive(Serialize)]
/// struct Turns { turns: u32 }
/// let answered = Answered { answer: Turns { turns: 7 }, basis: Basis::reckoned("length / pitch") };
/// assert_eq!(
///     serde_json::to_string(&answered).unwrap(),
///     r#"{"turns":7,"evidence":{"grade":"derived","words":"derived","formula":"length / pitch"},"sources":[]}"#
/// );
/// ```
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Answered<A> {
    /// The answer.
    #[serde(flatten)]
    pub answer: A,
    /// What it rests on.
    #[serde(flatten)]
    pub basis: Basis,
}
