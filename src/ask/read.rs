//! Reads the fields of a question. Every defect carries the path of its field inside the question.

use alloc::borrow::{Cow, ToOwned};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::from_tree::{missing, twice, unknown_field};
use super::shape::Shape;
use super::tree::Tree;
use crate::measure::{Bound, DecisionRule, GuardFactor, Limits, Reading};
use crate::quantity::{
    Angle, Length, Pitch, Pressure, Printed, Torque, parse_length, parse_toleranced,
};
use crate::{Error, ErrorKind, Grade};

/// Longest list in one question: more readings than anybody takes.
pub(super) const LONGEST_LIST: usize = 2000;

/// Something that is read from a field of a question.
///
/// ```
/// use framegauge::{Length, ask::{Read, Tree}, mm};
/// assert_eq!(Length::read(&Tree::Text("27,2 mm".into())).unwrap(), mm(27.2));
/// assert!(Length::read(&Tree::Number(27.2)).is_err());
/// ```
pub trait Read: Sized {
    /// What it looks like.
    const SHAPE: Shape;
    /// Whether the field must be there.
    const NEEDED: bool = true;

    /// Reads it.
    ///
    /// # Errors
    /// Those of the thing itself; the field of the error is the path below this value, empty for the value itself.
    fn read(tree: &Tree<'_>) -> Result<Self, Error>;

    /// What a field that is not there means; `None` when it must be there.
    #[must_use]
    fn absent() -> Option<Self> {
        None
    }
}

/// The same error, said of another field.
pub(super) fn named(error: &Error, field: impl Into<Cow<'static, str>>) -> Error {
    Error::new(
        error.kind(),
        field,
        error.value(),
        error.problem().to_owned(),
        error.remedy().to_owned(),
    )
}

/// The error of a value by itself: whatever name its own room gave it, the question's field is its name.
pub(super) fn bare(error: &Error) -> Error {
    named(error, "")
}

/// The error of a room, said of the field of the question that it was about: the first name that its own field holds,
/// else `otherwise`.
pub(super) fn said_of(
    error: &Error,
    names: &[(&str, &'static str)],
    otherwise: &'static str,
) -> Error {
    let field = names
        .iter()
        .find(|(theirs, _)| error.field().contains(theirs))
        .map_or(otherwise, |(_, ours)| ours);
    named(error, field)
}

/// The path one level further out; list places stand right behind their list.
pub(super) fn under(error: Error, parent: &str) -> Error {
    if error.field().starts_with('[') {
        let field = format!("{parent}{}", error.field());
        named(&error, field)
    } else {
        error.within(parent)
    }
}

/// The fields of an object, all known and none twice.
pub(super) struct Fields<'t>(&'t [(Cow<'t, str>, Tree<'t>)]);

impl<'t> Fields<'t> {
    pub(super) fn of(tree: &'t Tree<'t>, known: &[&str]) -> Result<Self, Error> {
        let Tree::Fields(fields) = tree else {
            return Err(tree.instead_of("an object with named fields"));
        };
        Self::checked(fields, known)
    }

    pub(super) fn checked(
        fields: &'t [(Cow<'t, str>, Tree<'t>)],
        known: &[&str],
    ) -> Result<Self, Error> {
        for (index, (name, _)) in fields.iter().enumerate() {
            if !known.contains(&name.as_ref()) {
                return Err(unknown_field(name, known));
            }
            // All names so far are known and differ, so this stays short.
            if fields.iter().take(index).any(|(before, _)| before == name) {
                return Err(twice(name));
            }
        }
        Ok(Self(fields))
    }

    pub(super) fn field<T: Read>(&self, name: &'static str) -> Result<T, Error> {
        match self.0.iter().find(|(key, _)| key == name) {
            Some((_, tree)) => T::read(tree).map_err(|e| under(e, name)),
            None => T::absent().ok_or_else(|| missing(name)),
        }
    }
}

impl<T: Read> Read for Option<T> {
    const SHAPE: Shape = T::SHAPE;
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>) -> Result<Self, Error> {
        match tree {
            Tree::Null => Ok(None),
            other => T::read(other).map(Some),
        }
    }
    fn absent() -> Option<Self> {
        Some(None)
    }
}

impl<T: Read> Read for Vec<T> {
    const SHAPE: Shape = Shape::List(&T::SHAPE);
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>) -> Result<Self, Error> {
        let Tree::List(items) = tree else {
            return Err(tree.instead_of("a list"));
        };
        if items.len() > LONGEST_LIST {
            return Err(Error::new(
                ErrorKind::TooLarge,
                "",
                items.len(),
                "more than anybody measures",
                format!("at most {LONGEST_LIST}"),
            ));
        }
        items
            .iter()
            .enumerate()
            .map(|(index, item)| T::read(item).map_err(|e| under(e, &format!("[{index}]"))))
            .collect()
    }
    fn absent() -> Option<Self> {
        Some(Self::new())
    }
}

impl Read for bool {
    const SHAPE: Shape = Shape::YesNo;
    fn read(tree: &Tree<'_>) -> Result<Self, Error> {
        match tree {
            Tree::YesNo(value) => Ok(*value),
            other => Err(other.instead_of("true or false")),
        }
    }
}

impl Read for f64 {
    const SHAPE: Shape = Shape::Number;
    fn read(tree: &Tree<'_>) -> Result<Self, Error> {
        #[expect(
            clippy::cast_precision_loss,
            reason = "a factor or a share, never a long count"
        )]
        match tree {
            Tree::Number(value) => Ok(*value),
            Tree::Whole(value) => Ok(*value as Self),
            other => Err(other.instead_of("a number")),
        }
    }
}

impl Read for String {
    const SHAPE: Shape = Shape::Text { what: "text" };
    fn read(tree: &Tree<'_>) -> Result<Self, Error> {
        text(tree, "a text").map(ToOwned::to_owned)
    }
}

pub(super) fn text<'t>(tree: &'t Tree<'_>, expected: &str) -> Result<&'t str, Error> {
    match tree {
        Tree::Text(text) => Ok(text),
        other => Err(other.instead_of(expected)),
    }
}

/// Types that are read from text by their own parser.
macro_rules! from_text {
    ($( $kind:ty, $what:literal, $parse:expr; )*) => {$(
        impl Read for $kind {
            const SHAPE: Shape = Shape::Text { what: $what };
            fn read(tree: &Tree<'_>) -> Result<Self, Error> {
                let parse: fn(&str) -> Result<Self, Error> = $parse;
                parse(text(tree, $what)?).map_err(|e| bare(&e))
            }
        }
    )*};
}

from_text! {
    Length, "a length with its unit, such as `27.2 mm` or `1 3/8 in`", |text| parse_length(text);
    Angle, "an angle with its unit, such as `90 deg`", |text| Self::parse(text);
    Torque, "a torque with its unit, such as `5 N m`", |text| Self::parse(text);
    Pressure, "a stress with its unit, such as `276 MPa`", |text| Self::parse(text);
    Pitch, "a pitch with its unit, such as `1 mm` or `24 tpi`", |text| text.parse();
    Reading, "a reading with its unit and its uncertainty (k = 2) or instrument, such as `33.9 +/- 0.05 mm` or `33.9 mm by caliper_digital_inside`", |text| text.parse();
    Limits, "limits with their unit, such as `43.95 mm to 44.00 mm`, `at most 0.10 mm` or `at least 68 mm`", limits;
    DecisionRule, "a decision rule: `2017` (default), `1998`, `simple` or `guard 0.5`", rule;
    crate::thread::Designation, "a thread, such as `M10x1-6H` or `1.370 in x 24 tpi BSC LH`", |text| text.parse();
    crate::thread::ThreadSize, "a thread size, such as `M10x1`", |text| text.parse();
    crate::thread::ToleranceClass, "a thread class, such as `6H`, `6g` or `2B`", |text| text.parse();
    crate::fit::FitClass, "a tolerance class, such as `N7` or `h6`", |text| text.parse();
    crate::fit::SizeClass, "a size with its class, such as `42 N7`", |text| text.parse();
    crate::fit::RingClass, "a bearing class: `Normal`, `6` or `5`", |text| text.parse();
    crate::standard::Place, "a place, such as `shell`, `head_tube.lower` or `seat_tube`", |text| text.parse();
}

fn limits(text: &str) -> Result<Limits, Error> {
    let text = text.trim();
    if let Some((low, high)) = text.split_once(" to ") {
        let at = |text| parse_length(text).map(Bound::At);
        return Limits::new(at(low)?, at(high)?, Grade::Shop);
    }
    if let Some(high) = text.strip_prefix("at most") {
        return Limits::at_most(parse_length(high)?, Grade::Shop);
    }
    if let Some(low) = text.strip_prefix("at least") {
        return Limits::at_least(parse_length(low)?, Grade::Shop);
    }
    match parse_toleranced(text)? {
        (nominal, Some(t)) => Limits::between(nominal + t.lower, nominal + t.upper, Grade::Shop),
        (_, None) => Err(Error::new(
            ErrorKind::Text,
            "limits",
            text,
            "one length is no pair of limits",
            "write `43.95 mm to 44.00 mm`, `at most 0.10 mm` or `at least 68 mm`",
        )),
    }
}

fn rule(text: &str) -> Result<DecisionRule, Error> {
    match text.trim() {
        "2017" => Ok(DecisionRule::Iso14253Of2017),
        "1998" => Ok(DecisionRule::Iso14253Of1998),
        "simple" => Ok(DecisionRule::SimpleAcceptance),
        other => match other.strip_prefix("guard ") {
            Some(factor) => {
                GuardFactor::new(crate::decimal(factor.trim())?).map(DecisionRule::GuardBand)
            }
            None => Err(Error::new(
                ErrorKind::UnknownName,
                "rule",
                other,
                "no such rule",
                "one of 2017, 1998, simple, guard 0.5",
            )),
        },
    }
}

/// Types that are one of a closed list of words.
macro_rules! words {
    ($($kind:ty),* $(,)?) => {$(
        impl Read for $kind {
            const SHAPE: Shape = Shape::Word(known_words::<$kind>);
            fn read(tree: &Tree<'_>) -> Result<Self, Error> {
                word(tree)
            }
        }
    )*};
}
pub(super) use words;

words!(
    crate::thread::Side,
    crate::thread::PercentConvention,
    crate::face::Gauge,
    crate::face::LimitKind,
    crate::measure::Measures,
    crate::fit::MaterialKind,
);

pub(super) fn known_words<T: strum::IntoEnumIterator + ToString>() -> Vec<String> {
    T::iter().map(|word| word.to_string()).collect()
}

pub(super) fn word<T: core::str::FromStr + strum::IntoEnumIterator + ToString>(
    tree: &Tree<'_>,
) -> Result<T, Error> {
    let said = text(tree, "a word of the list")?;
    said.trim().parse().map_err(|_| {
        Error::new(
            ErrorKind::UnknownName,
            "",
            said,
            "no such word",
            format!("one of {}", known_words::<T>().join(", ")),
        )
    })
}
