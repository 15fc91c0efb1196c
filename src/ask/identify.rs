//! `identify`: which standard a place is.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::rows::rows_named;
use super::said::Said;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Citation;
use crate::identify::{Identification, Observation, Options, identify};
use crate::read::{Read, Shape, Told, Tree, form, text, told};
use crate::say::reckoned;
use crate::standard::{
    Axle, BrakeMount, CrownSeat, HeadSeat, Place, Row, Seatpost, Shell, Steerer, ThreadUse,
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

struct Observed;
told! {
    /// a reading such as `33.9 +/- 0.05 mm` or `33.9 mm by caliper_digital_inside`, a pitch, a hand, or a word
    Observed: Text,
}

/// What was observed of one kind: one text or several.
struct Lines(Vec<String>);

impl Read for Lines {
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
    const SHAPE: Shape = Shape::Named(&Observed::SHAPE);

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        let Tree::Fields(fields) = tree else {
            return context.expected(tree, "an object with a value for each observation");
        };
        if fields.len() > MOST_KINDS {
            let problem = "more than can be observed at one place";
            let (kind, most) = (ErrorKind::TooLarge, format!("at most {MOST_KINDS}"));
            return context.keep(Err(Error::new(kind, "", fields.len(), problem, most)));
        }
        let said: Vec<(String, Lines)> = Vec::read(tree, context)?;
        let each = |(name, Lines(lines)): (String, Lines)| {
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

/// The family of the rows that a place is identified among.
fn family(place: &Place) -> &'static str {
    match place.whole() {
        Place::Shell => Shell::FAMILY,
        Place::HeadTube(_) => HeadSeat::FAMILY,
        Place::Crown => CrownSeat::FAMILY,
        Place::Steerer => Steerer::FAMILY,
        Place::SeatTube | Place::Seatpost => Seatpost::FAMILY,
        Place::Brake(_) => BrakeMount::FAMILY,
        Place::Dropout(..) => Axle::FAMILY,
        _ => ThreadUse::FAMILY,
    }
}

impl Ask for Identify {
    type Answer = Identification;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let seen = self.readings.0.iter().map(|(key, value)| {
            Observation::read(key, value).map_err(|e| e.named(format!("readings.{key}")))
        });
        let seen = seen.collect::<Result<Vec<_>, Error>>()?;
        let tools: Vec<&str> = self.tools.iter().map(String::as_str).collect();
        let options = Options {
            shop: context.tables().shop(),
            also: &self.also,
            tools: &tools,
            unfinished: self.unfinished.unwrap_or_default(),
            ..Options::default()
        };
        let found = identify(self.place.clone(), &seen, &options);
        let found = found.said_by(&[("instrument", "tools")], "readings")?;
        let mut sources: Vec<Citation> = Vec::new();
        for code in found.outcome.left() {
            for (_, row) in rows_named(context, Some(family(&self.place)), code) {
                row.walk(&mut |evidence| sources.extend(evidence.sources().iter().cloned()));
            }
        }
        let compared = || found.candidates.iter().filter_map(|c| c.grade).min();
        let grade = found.grade().or_else(compared).unwrap_or(Grade::Derived);
        let basis = Basis::graded(grade).by(reckoned::IDENTIFY).citing(&sources);
        Ok(Answered {
            answer: found,
            basis,
        })
    }
}
