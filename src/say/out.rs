//! How findings and parts of a plan go out: their facts, and beside them their sentences.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::evidence::{Citation, Grade, Text};
use crate::fact::{Bare, BareOf};
use crate::identify::Identification;
use crate::judge::{Doubt, Finding};
use crate::measure::{Decision, Limits, Outcome, Reading};
use crate::plan::{
    After, Allowance, Ask, Caution, Counted, CutLimit, Fact, Found, Off, Photo, PlaceReport,
    Question, State, WeakFigure,
};
use crate::quantity::settled_mm;
use crate::read::{Between, Shape, goes_out, known_words, told};
use crate::standard::Place;

told! {
    Counted => Shape::Word(known_words::<Counted>),
    State => Shape::Word(known_words::<State>),
    Photo => <Photo as crate::read::Read>::SHAPE,
    Allowance => Shape::List(&CutLimit::SHAPE),
}
told! {
    /// kind, what, may_come_off, measure, grade
    CutLimit: Report,
}

goes_out! {
    Off(this) {
        /// what is counted
        of: Counted = this.of,
        /// at least and at most
        mm: Between = Between { min: Some(settled_mm(this.least)), max: Some(settled_mm(this.most)) },
    }
    After(this) {
        /// number of the earlier step
        step: usize = this.step,
        /// why it comes first
        code: &str = this.why.code(),
        /// why it comes first, in words
        why: String = this.why.to_string(),
    }
    Question(this) {
        /// number in the plan
        number: usize = this.number,
        /// where
        place: Place = this.place,
        /// what is asked, as a fact
        ask: BareOf<Ask> = Bare(&this.ask),
        /// what to measure, look at or ask
        measure: String = this.measure(),
        /// with what
        instrument: String = this.instrument(),
        /// the field of the sheet where the answer is written; answering it closes the question
        answer: String = this.answer,
        /// the question in one line
        words: String = this.words(),
        /// why it matters
        why: Text = this.why(),
    }
    PlaceReport(this) {
        /// where
        place: Place = this.place,
        /// what it is called
        name: String = this.name,
        /// where the work stands
        state: State = this.state,
        /// what was found
        facts: Vec<Found> = this.facts,
        /// what contradicts what; nothing is cut there while it stands
        contradictions: Vec<Fact> = this.contradictions,
        /// what is left alone, and why
        leave: Vec<Fact> = this.leave,
        /// what could cure what is out
        cures: Vec<Fact> = this.cures,
        /// what the sheet notes there
        notes: Vec<String> = this.notes,
        /// photographs that the sheet names there
        photos: Vec<Photo> = this.photos,
        /// what came off: least and most
        removed: Vec<Reading> = this.removed,
        /// what limits a cut there now
        limits: Allowance = this.limits,
        /// whether readings were taken after work
        worked: bool = this.worked,
        ? /// which standard it is, where that was asked
        identification: Identification = this.identification,
    }
    WeakFigure(this) {
        /// where
        place: Place = this.place,
        /// which figure
        what: String = this.to_string(),
        /// what it is worth
        grade: Grade = this.grade,
    }
}

/// Its code alone.
struct Code(Caution);

impl serde::Serialize for Code {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

told! {
    Code => Shape::Word(known_words::<Caution>),
    Doubt => Shape::Word(known_words::<Doubt>),
}
told! {
    /// outcome, why, conformance_probability, margin_mm, rule, grade
    Decision: Report,
}

goes_out! {
    Caution(this) {
        /// which caution
        code: Code = Code(*this),
        /// the caution
        words: &str = this.words(),
    }
    Finding<F>(this) {
        /// what was found, as a fact
        fact: BareOf<F> = Bare(&this.fact),
        /// what is shown; null for a plain statement that no limit belongs to
        outcome: Option<Outcome> = this.outcome,
        /// what makes it doubtful
        doubt: Option<Doubt> = this.doubt,
        /// the finding in a sentence
        words: String = this.words(),
        /// the readings that decided: smallest and largest
        readings: Vec<Reading> = this.readings,
        /// the limits
        limits: Option<Limits> = this.limits,
        /// the decision on the worst reading
        decision: Option<Decision> = this.decision,
        /// whose limits they are
        owner: String = this.owner,
        /// what the limits are worth
        grade: Option<Grade> = this.grade,
        /// where the limits were read
        sources: Vec<Citation> = this.sources,
    }
}
