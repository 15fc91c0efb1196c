//! `identify`: which standard a place is.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::rows::walk_row;
use super::said::{named, said_of};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::{Citation, Evidence};
use crate::identify::{Identification, Observation, Options, identify};
use crate::read::{Read, Shape, Tree, form, text};
use crate::standard::{
    Axle, BrakeMount, CrownSeat, HeadSeat, InShop, Place, Seatpost, Shell, Steerer, ThreadUse,
};
use crate::thread::ThreadSize;
use crate::{Error, ErrorKind, Grade};

/// What was observed, by name: `bore`, `pitch`, `hand_drive`, `label`, …; values as `identify::Observation::read` takes
/// them.
///
/// ```
/// use framegauge::{ask::Readings, read::Tree};
/// let tree: Tree = serde_json::from_str(r#"{"bore":"33.9 +/- 0.05 mm","pitch":"24 tpi"}"#).unwrap();
/// assert_eq!(framegauge::read::read_whole::<Readings>(&tree, framegauge::standard::Tables::ours()).unwrap().0.len(), 2);
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
    type Answer = Identification;

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
            answer: found,
            basis: Basis::graded(grade)
                .by("excluded beyond k standard uncertainties, ranked by likelihood")
                .citing(&sources),
        })
    }
}
