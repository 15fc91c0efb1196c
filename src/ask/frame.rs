//! `identify` and `prepare`: which standard a place is, and the plan of a whole frame.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::{Deserialize, Serialize};

use super::from_tree::{At, Refused};
use super::rows::walk_row;
use super::said::{named, said_of, under};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::{Citation, Evidence};
use crate::identify::{Identification, Observation, Options, identify};
use crate::prep::{Plan, WrittenSheet, prepare_with};
use crate::read::{Field, Read, Shape, Tree, form, missing, read_whole, text};
use crate::standard::{
    Axle, BrakeMount, CrownSeat, HeadSeat, InShop, Place, Seatpost, Shell, Steerer, Tables,
    ThreadUse,
};
use crate::thread::ThreadSize;
use crate::{Error, ErrorKind, Grade};

/// What was observed, by name: `bore`, `pitch`, `hand_drive`, `label`, …; values as `identify::Observation::read` takes
/// them.
///
/// ```
/// use framegauge::{ask::Readings, read::Tree};
/// let tree: Tree = serde_json::from_str(r#"{"bore":"33.9 +/- 0.05 mm","pitch":"24 tpi"}"#).unwrap();
/// assert_eq!(framegauge::read::read_whole::<Readings>(\&tree, framegauge::standard::Tables::ours()).unwrap().0.len(), 2);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Readings(pub Vec<(String, String)>);

/// What was observed of one kind: one text or several.
struct Said(Vec<String>);

impl Read for Said {
    const SHAPE: Shape = Shape::List(&Shape::Text { what: "a reading" });

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        if matches!(tree, Tree::List(_)) {
            return Vec::read(tree, context).map(Self);
        }
        let what = "a reading with its unit, such as `33.9 +/- 0.05 mm`";
        text(tree, what, context).map(|line| Self(Vec::from([String::from(line)])))
    }
}

/// More kinds of observation than there are.
const MOST_KINDS: usize = 64;

impl Read for Readings {
    const SHAPE: Shape = Shape::Named(&Shape::Text {
        what: "a reading such as `33.9 +/- 0.05 mm` or `33.9 mm by caliper_digital_inside`, a pitch, a hand, or a word",
    });

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        let Tree::Fields(fields) = tree else {
            return context.expected(tree, "an object with a value for each observation");
        };
        if fields.len() > MOST_KINDS {
            return context.keep(Err(Error::new(
                ErrorKind::TooLarge,
                "",
                fields.len(),
                "more than can be observed at one place",
                format!("at most {MOST_KINDS}"),
            )));
        }
        let said: Vec<(String, Said)> = Vec::read(tree, context)?;
        let each = |(name, Said(lines)): (String, Said)| {
            lines.into_iter().map(move |line| (name.clone(), line))
        };
        Some(Self(said.into_iter().flat_map(each).collect()))
    }
}

form! {
    /// `identify`: which standard is this?
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"identify","place":"shell","readings":{"bore":"33.7 +/- 0.05 mm","width":"68.1 +/- 0.1 mm"}}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["outcome"], "ambiguous");
    /// ```
    Identify {
        /// The place.
        place: Place,
        /// What was observed.
        readings: Readings,
        /// Instruments at hand; all of them unless stated.
        tools: Vec<String>,
        /// A head tube that still has to be reamed.
        unfinished: Option<bool>,
        /// Further threads to be considered.
        also: Vec<ThreadSize>,
    }
}

/// Which standard it is; serializes as the identification itself.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(transparent)]
pub struct IdentifyAnswer(pub Identification);

const TEXT: Shape = Shape::Text { what: "text" };
const OBJECT: Shape = Shape::Report {
    what: "see the type of this name in the documentation",
};

const fn field(name: &'static str, words: &'static str, shape: Shape) -> Field {
    Field {
        name,
        words,
        shape,
        needed: true,
    }
}

impl IdentifyAnswer {
    pub(super) const FIELDS: &'static [Field] = &[
        field("place", "the place that was asked about", TEXT),
        field(
            "outcome",
            "identified, ambiguous, unlisted or cannot_tell",
            Shape::Word(outcomes),
        ),
        field(
            "code",
            "the standard, when identified",
            Shape::OrNull(&TEXT),
        ),
        field(
            "between",
            "what is left, when ambiguous or identified",
            Shape::List(&TEXT),
        ),
        field("sentence", "the answer in words", TEXT),
        field(
            "decided_by",
            "rule and feature that decided",
            Shape::OrNull(&OBJECT),
        ),
        field(
            "belief",
            "what became of the belief: confirmed, contradicted, not_tested",
            Shape::OrNull(&TEXT),
        ),
        field(
            "interchange",
            "whether all that is left interchanges",
            Shape::YesNo,
        ),
        field(
            "next",
            "what to measure next: measure, instrument, separates, bits, cost",
            Shape::List(&OBJECT),
        ),
        field(
            "inseparable",
            "whether no measurement could separate what is left",
            Shape::YesNo,
        ),
        field("doubts", "readings that look wrong", Shape::List(&OBJECT)),
        field("notes", "what else to know", Shape::List(&TEXT)),
        field(
            "candidates",
            "every candidate: code, name, share, standing, excluded, width_mm, thread, grade",
            Shape::List(&OBJECT),
        ),
    ];
}

fn outcomes() -> Vec<String> {
    ["identified", "ambiguous", "unlisted", "cannot_tell"]
        .map(String::from)
        .to_vec()
}

/// The evidence of the rows that are left.
fn rows_left(
    context: &Context<'_>,
    place: &Place,
    codes: &[crate::evidence::Text],
    visit: &mut dyn FnMut(&Evidence),
) {
    fn of<R: InShop>(
        context: &Context<'_>,
        codes: &[crate::evidence::Text],
        visit: &mut dyn FnMut(&Evidence),
    ) {
        for row in context.tables.all::<R>() {
            if codes.iter().any(|code| code == row.code()) {
                walk_row(row, visit);
            }
        }
    }
    match place.whole() {
        Place::Shell => of::<Shell>(context, codes, visit),
        Place::HeadTube(_) => of::<HeadSeat>(context, codes, visit),
        Place::Crown => of::<CrownSeat>(context, codes, visit),
        Place::Steerer => of::<Steerer>(context, codes, visit),
        Place::SeatTube | Place::Seatpost => of::<Seatpost>(context, codes, visit),
        Place::Brake(_) => of::<BrakeMount>(context, codes, visit),
        Place::Dropout(..) => of::<Axle>(context, codes, visit),
        _ => {
            of::<ThreadUse>(context, codes, visit);
        }
    }
}

impl Ask for Identify {
    type Answer = IdentifyAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let seen = self
            .readings
            .0
            .iter()
            .map(|(key, value)| {
                Observation::read(key, value).map_err(|e| named(&e, format!("readings.{key}")))
            })
            .collect::<Result<Vec<_>, Error>>()?;
        let tools: Vec<&str> = self.tools.iter().map(String::as_str).collect();
        let options = Options {
            shop: context.tables().shop(),
            also: &self.also,
            tools: &tools,
            unfinished: self.unfinished.unwrap_or_default(),
            ..Options::default()
        };
        let found = identify(self.place.clone(), &seen, &options)
            .map_err(|e| said_of(&e, &[("instrument", "tools")], "readings"))?;
        let mut sources: Vec<Citation> = Vec::new();
        rows_left(
            context,
            &self.place,
            found.outcome.left(),
            &mut |evidence| {
                sources.extend(evidence.sources().iter().cloned());
            },
        );
        let grade = found
            .grade()
            .or_else(|| found.candidates.iter().filter_map(|c| c.grade).min())
            .unwrap_or(Grade::Derived);
        Ok(Answered {
            answer: IdentifyAnswer(found),
            basis: Basis::graded(grade)
                .by("excluded beyond k standard uncertainties, ranked by likelihood")
                .citing(&sources),
        })
    }
}

/// A frame sheet as a person writes it.
///
/// ```
/// use framegauge::{ask::Sheet, read::Tree};
/// let tree: Tree = serde_json::from_str(r#"{"format":1,"frame":"invented","shell":{"width":[68]}}"#).unwrap();
/// assert_eq!(framegauge::read::read_whole::<Sheet>(\&tree, framegauge::standard::Tables::ours()).unwrap_err()[0].field(), "shell.width[0]");
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet(pub WrittenSheet);

#[cfg(feature = "json")]
impl Sheet {
    /// Reads a sheet from its JSON text, for a program that plans frames of its own accord: the same reader as a question
    /// has, so that a program with both carries one.
    ///
    /// # Errors
    /// `TooLarge` above [`LONGEST_LINE`](super::LONGEST_LINE) bytes; `Text` with the line, where it is no JSON; else what
    /// is wrong with a field, with its path.
    ///
    /// ```
    /// use framegauge::ask::Sheet;
    /// use framegauge::prep::prepare;
    /// let sheet = Sheet::from_json(r#"{"format":1,"frame":"invented","shell":{"width":["68.2 +/- 0.1 mm"]}}"#).unwrap();
    /// assert!(!prepare(&sheet.0.read().unwrap()).questions.is_empty());
    /// let error = Sheet::from_json(r#"{"format":1,"frame":"invented","shell":["68 mm"]}"#).unwrap_err();
    /// assert_eq!(error.field(), "shell");
    /// assert_eq!(Sheet::from_json("{\n\"format\": 1,}").unwrap_err().line(), Some(2));
    /// ```
    pub fn from_json(text: &str) -> Result<Self, Error> {
        if text.len() > super::LONGEST_LINE {
            return Err(Error::new(
                ErrorKind::TooLarge,
                "sheet",
                text.len(),
                format!("more than {} bytes", super::LONGEST_LINE),
                "one frame a sheet",
            ));
        }
        let tree: Tree<'_> = serde_json::from_str(text).map_err(|e| {
            let told = format!("{e}");
            let what = told.split(" at line ").next().unwrap_or(&told);
            let error = Error::new(
                ErrorKind::Text,
                "sheet",
                "",
                format!("not JSON: {what}, column {}", e.column()),
                "write the sheet as one JSON object",
            );
            error.at_line(e.line())
        })?;
        read_whole::<Self>(&tree, Tables::ours()).map_err(|errors| {
            errors
                .into_iter()
                .next()
                .unwrap_or_else(|| missing("sheet"))
        })
    }
}

impl Read for Sheet {
    const SHAPE: Shape = Shape::Report {
        what: "a frame sheet, format 1, as in examples/frames, in JSON",
    };

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        if !matches!(tree, Tree::Fields(_)) {
            return context.expected(tree, "an object: a frame sheet");
        }
        match WrittenSheet::deserialize(At(tree)) {
            Ok(sheet) => Some(Self(sheet)),
            Err(Refused(e)) => context.under(e.field(), |context| context.keep(Err(e.clone()))),
        }
    }
}

form! {
    /// `prepare`: the whole frame: sheet in, plan out.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"prepare","sheet":{"format":1,"frame":"invented","invented":true}}"#).unwrap();
    /// assert!(question.answer(&Context::default()).is_ok());
    /// ```
    Prepare {
        /// The sheet.
        sheet: Sheet,
    }
}

/// The plan; serializes as the plan itself.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(transparent)]
pub struct PrepareAnswer(pub Plan);

impl PrepareAnswer {
    pub(super) const FIELDS: &'static [Field] = &[
        field("frame", "the frame", TEXT),
        field("invented", "whether the sheet is invented", Shape::YesNo),
        field(
            "questions",
            "what to measure or ask first",
            Shape::List(&OBJECT),
        ),
        field("steps", "the steps, in order", Shape::List(&OBJECT)),
        field(
            "order",
            "which step waits for which, and why",
            Shape::List(&OBJECT),
        ),
        field(
            "interfaces",
            "identification and findings of each place",
            Shape::List(&OBJECT),
        ),
        field("cautions", "warnings", Shape::List(&TEXT)),
        field(
            "weak_figures",
            "figures from memory or common practice that the plan rests on",
            Shape::List(&OBJECT),
        ),
    ];
}

impl Ask for Prepare {
    type Answer = PrepareAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let sheet = self.sheet.0.read().map_err(|errors| {
            let errors = errors.into_iter().map(|e| under(e, "sheet")).collect();
            Refusal::all(errors).unwrap_or_else(|| crate::read::missing("sheet").into())
        })?;
        let plan = prepare_with(&sheet, context.tables());
        let findings = || plan.interfaces.iter().flat_map(|i| &i.findings);
        let stops = || plan.steps.iter().filter_map(|step| step.stop.as_ref());
        let grade = findings()
            .filter_map(|f| f.grade)
            .chain(stops().filter_map(|s| s.grade))
            .chain(plan.weak_figures.iter().map(|w| w.grade))
            .min();
        let basis = Basis::graded(grade.unwrap_or(Grade::Shop))
            .noting("the weakest figure of the plan; the frame and component makers' written limits go first")
            .citing(findings().flat_map(|f| &f.sources).chain(stops().flat_map(|s| &s.sources)));
        Ok(Answered {
            answer: PrepareAnswer(plan),
            basis,
        })
    }
}
