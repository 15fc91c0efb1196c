//! Questions that `judge` answers: the question is its form, the answer its verdict.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Grade;
use crate::fit::Out;
use crate::judge::{self, Curing, Finding, NextStep, Remedy, Verdict};
use crate::measure::Outcome;
use crate::read::{Field, Shape, known_words};

const fn field(name: &'static str, words: &'static str, shape: Shape) -> Field {
    Field {
        name,
        words,
        shape,
        needed: true,
    }
}

const TEXT: Shape = Shape::Text { what: "text" };
const OUTCOME: Shape = Shape::Word(known_words::<Outcome>);
const GRADE: Shape = Shape::Word(known_words::<Grade>);

static FINDING: [Field; 9] = [
    field("what", "what was looked at", TEXT),
    field(
        "outcome",
        "what is shown; null for a plain statement that no limit belongs to",
        Shape::OrNull(&OUTCOME),
    ),
    field("words", "the finding in a sentence", TEXT),
    field(
        "readings",
        "the readings that decided: smallest and largest",
        Shape::List(&<crate::measure::Reading as super::Told>::SHAPE),
    ),
    field(
        "limits",
        "the limits",
        Shape::OrNull(&<crate::measure::Limits as super::Told>::SHAPE),
    ),
    field(
        "decision",
        "the decision on the worst reading",
        Shape::OrNull(&<crate::measure::Decision as super::Told>::SHAPE),
    ),
    field("owner", "whose limits they are", TEXT),
    field("grade", "what the limits are worth", Shape::OrNull(&GRADE)),
    field("sources", "where the limits were read", Shape::List(&TEXT)),
];
static CURING: [Field; 3] = [
    field("by", "by what", Shape::Word(known_words::<Remedy>)),
    field(
        "size_mm",
        "size of the part or tool that it takes, or the size that results",
        Shape::OrNull(&Shape::Number),
    ),
    field(
        "at",
        "which part of the place it cures; empty for all of it",
        TEXT,
    ),
];
static NEXT: [Field; 3] = [
    field("measure", "what to measure or do", TEXT),
    field("why", "what it decides", TEXT),
    field("with", "the tool", TEXT),
];

told! {
    Finding => Shape::Fields(&FINDING),
    Curing => Shape::Fields(&CURING),
    NextStep => Shape::Fields(&NEXT),
}

impl Verdict {
    pub(super) const FIELDS: &'static [Field] = &[
        field("place", "what was judged", TEXT),
        field("outcome", "what is shown", OUTCOME),
        field("words", "the verdict in a sentence", TEXT),
        field(
            "findings",
            "the findings that decide",
            Shape::List(&<Finding as super::Told>::SHAPE),
        ),
        field(
            "beside",
            "findings against other published figures, shown beside and not deciding",
            Shape::List(&<Finding as super::Told>::SHAPE),
        ),
        field(
            "numbers",
            "numbers worked out, each under its name with its unit, such as `shim_wall_mm`",
            Shape::Named(&Shape::Number),
        ),
        field(
            "out",
            "of two members, which one is off",
            <Option<Out> as super::Told>::SHAPE,
        ),
        field(
            "cures",
            "what would cure it, the most cautious first",
            Shape::List(&<Curing as super::Told>::SHAPE),
        ),
        field(
            "next",
            "what to measure next, the most telling first",
            Shape::List(&<NextStep as super::Told>::SHAPE),
        ),
        field("cautions", "what to mind", Shape::List(&TEXT)),
        field(
            "weakest",
            "the weakest evidence of the findings that decide",
            Shape::OrNull(&GRADE),
        ),
    ];
}

/// What a verdict rests on: its findings with their sources, and how its numbers were worked out.
fn basis(said: &Verdict) -> Basis {
    let formula: Vec<String> = said
        .worked
        .iter()
        .filter(|w| !w.formula.is_empty())
        .map(|w| format!("{}: {}", w.what, w.formula))
        .collect();
    Basis::graded(said.weakest.unwrap_or(Grade::Shop))
        .by(formula.join("; "))
        .citing(
            said.findings
                .iter()
                .chain(&said.beside)
                .flat_map(|f| &f.sources),
        )
}

macro_rules! judged {
    ($( $kind:ident ),* $(,)?) => {$(
        impl Ask for judge::$kind {
            type Answer = Verdict;

            fn answer(&self, context: &Context<'_>) -> Result<Answered<Verdict>, Refusal> {
                let said = judge::$kind::answer(self, context.tables())?;
                Ok(Answered { basis: basis(&said), answer: said })
            }

            fn verdict(said: &Verdict) -> Option<&Verdict> {
                Some(said)
            }
        }
    )*};
}

judged! {
    AtTemperature, CaliperPlace, Coating, Conform, Dropouts, HubWidth, ParallelFaces, SpindleBinds,
    BoltLength, BoreFit, CaliperTilt, CupDepth, Fit, Gauging, HoleToTap, Insertion, Ream, SeatpostForTube, Shim, SpindleWidth,
    Wall, WidthWindow,
}
