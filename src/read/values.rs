//! Values that forms are made of: each is read by one function, wherever it stands.

use alloc::borrow::{Cow, ToOwned};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::context::Context;
use super::shape::Shape;
use super::tree::Tree;
use crate::evidence::Text;
use crate::measure::{DecisionRule, Limits, Placed, Reading, Spot, instrument, says_how_sure};
use crate::quantity::{Angle, Length, Pitch, Pressure, Printed, Torque, parse_length, positive};
use crate::standard::{End, Place};
use crate::{Error, ErrorKind};

/// Longest list in one form: more readings than anybody takes.
pub(crate) const LONGEST_LIST: usize = 2000;

/// Something that is read from a field of a form.
///
/// ```
/// use framegauge::{Length, mm, read::{Context, Read, Tree}, standard::Tables};
/// let mut context = Context::new(Tables::ours());
/// assert_eq!(Length::read(&Tree::Text("27,2 mm".into()), &mut context), Some(mm(27.2)));
/// assert_eq!(Length::read(&Tree::Number(27.2), &mut context), None);
/// ```
pub trait Read: Sized {
    /// What it looks like.
    const SHAPE: Shape;
    /// Whether the field must be there.
    const NEEDED: bool = true;

    /// Reads it. `None`: it could not be read, and the context holds every defect.
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self>;

    /// What a field that is not there means; `None` when it must be there.
    #[must_use]
    fn absent() -> Option<Self> {
        None
    }
}

/// A reader of a type that may be read in several ways, named in the form behind the field.
pub trait ReadBy<T> {
    /// What it looks like.
    const SHAPE: Shape;
    /// Whether the field must be there.
    const NEEDED: bool = true;

    /// Reads it, as [`Read::read`] does.
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<T>;

    /// What a field that is not there means; `None` when it must be there.
    #[must_use]
    fn absent() -> Option<T> {
        None
    }
}

impl<T: Read> Read for Option<T> {
    const SHAPE: Shape = T::SHAPE;
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        match tree {
            Tree::Null => Some(None),
            other => T::read(other, context).map(Some),
        }
    }
    fn absent() -> Option<Self> {
        Some(None)
    }
}

/// The items of a list, each read with its place in the path; the rest of a list that is too long is refused.
fn items<T>(
    items: &[Tree<'_>],
    context: &mut Context<'_>,
    mut read: impl FnMut(&Tree<'_>, &mut Context<'_>) -> Option<T>,
) -> Option<Vec<T>> {
    if items.len() > LONGEST_LIST {
        context.refuse(&Error::new(
            ErrorKind::TooLarge,
            "",
            items.len(),
            "more than anybody measures",
            format!("at most {LONGEST_LIST}"),
        ));
        return None;
    }
    let mut out = Vec::with_capacity(items.len());
    for (index, item) in items.iter().enumerate() {
        out.extend(context.item(index, |context| read(item, context)));
    }
    (out.len() == items.len()).then_some(out)
}

/// A list; one text or one object stands for a list of one.
impl<T: Read> Read for Vec<T> {
    const SHAPE: Shape = Shape::Either(&[T::SHAPE, Shape::List(&T::SHAPE)]);
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        match tree {
            Tree::List(list) => items(list, context, T::read),
            Tree::Text(_) | Tree::Fields(_) => {
                T::read(tree, context).map(|only| Self::from([only]))
            }
            other => context.expected(other, "a list"),
        }
    }
    fn absent() -> Option<Self> {
        Some(Self::new())
    }
}

/// A list of any length, such as the bosses of a frame.
///
/// ```
/// use framegauge::{Length, mm, read::{Context, Listed, ReadBy, Tree}, standard::Tables};
/// let tree = Tree::List(vec![Tree::Text("27.2 mm".into())]);
/// let read: Option<Vec<Length>> = Listed::read(&tree, &mut Context::new(Tables::ours()));
/// assert_eq!(read, Some(vec![mm(27.2)]));
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Listed;

impl<T: Read> ReadBy<Vec<T>> for Listed {
    const SHAPE: Shape = Shape::List(&T::SHAPE);
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<T>> {
        let Tree::List(list) = tree else {
            return context.expected(tree, "a list");
        };
        let mut out = Vec::with_capacity(list.len());
        for (index, item) in list.iter().enumerate() {
            out.extend(context.item(index, |context| T::read(item, context)));
        }
        (out.len() == list.len()).then_some(out)
    }
    fn absent() -> Option<Vec<T>> {
        Some(Vec::new())
    }
}

impl Read for bool {
    const SHAPE: Shape = Shape::YesNo;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        match tree {
            Tree::YesNo(value) => Some(*value),
            other => context.expected(other, "true or false"),
        }
    }
}

/// A field that may be left out; left out it means what the default of its type means.
///
/// ```
/// use framegauge::read::{Given, ReadBy};
/// assert_eq!(<Given as ReadBy<bool>>::absent(), Some(false));
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Given;

impl<T: Read + Default> ReadBy<T> for Given {
    const SHAPE: Shape = T::SHAPE;
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<T> {
        match tree {
            Tree::Null => Some(T::default()),
            other => T::read(other, context),
        }
    }
    fn absent() -> Option<T> {
        Some(T::default())
    }
}

impl Read for f64 {
    const SHAPE: Shape = Shape::Number;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        #[expect(
            clippy::cast_precision_loss,
            reason = "a factor or a share, never a long count"
        )]
        match tree {
            Tree::Number(value) => Some(*value),
            Tree::Whole(value) => Some(*value as Self),
            other => context.expected(other, "a number"),
        }
    }
}

impl Read for u32 {
    const SHAPE: Shape = Shape::Count;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        match tree {
            Tree::Whole(value) => match Self::try_from(*value) {
                Ok(count) => Some(count),
                Err(_) => context.expected(tree, "a whole number of at least 0"),
            },
            other => context.expected(other, "a whole number of at least 0"),
        }
    }
}

impl Read for String {
    const SHAPE: Shape = Shape::Text { what: "text" };
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        text(tree, "a text", context).map(ToOwned::to_owned)
    }
}

/// The text that stands here.
pub(crate) fn text<'t>(
    tree: &'t Tree<'_>,
    expected: &str,
    context: &mut Context<'_>,
) -> Option<&'t str> {
    match tree {
        Tree::Text(text) => Some(text),
        other => context.expected(other, expected),
    }
}

/// Types that are read from text by their own parser.
macro_rules! from_text {
    ($( $(#[doc = $what:literal])+ $kind:ty, $parse:expr; )*) => {$(
        impl $crate::read::Read for $kind {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Text { what: concat!($($what),+).trim_ascii() };
            fn read(
                tree: &$crate::read::Tree<'_>,
                context: &mut $crate::read::Context<'_>,
            ) -> Option<Self> {
                let parse: fn(&str) -> Result<Self, $crate::Error> = $parse;
                let text = $crate::read::text(tree, concat!($($what),+).trim_ascii(), context)?;
                context.keep(parse(text))
            }
        }
    )*};
}
pub(crate) use from_text;

from_text! {
    /// a length with its unit, such as `27.2 mm` or `1 3/8 in`
    Length, |text| parse_length(text);
    /// an angle with its unit, such as `90 deg`
    Angle, |text| Self::parse(text);
    /// a torque with its unit, such as `5 N m`
    Torque, |text| Self::parse(text);
    /// a stress with its unit, such as `276 MPa`
    Pressure, |text| Self::parse(text);
    /// a pitch with its unit, such as `1 mm` or `24 tpi`
    Pitch, |text| text.parse();
    /// a reading with its unit and its uncertainty (k = 2) or instrument, such as `33.9 +/- 0.05 mm` or `33.9 mm by caliper_digital_inside`
    Reading, |text| text.parse();
    /// a reading with its unit and its uncertainty (k = 2) or instrument, its place before a colon where that was noted, such as `10 mm deep, 90 deg: 27.15 +/- 0.02 mm`
    Placed, |text| text.parse();
    /// limits with their unit, such as `43.95 to 44.00 mm`, `at most 0.10 mm` or `at least 68 mm`
    Limits, |text| text.parse();
    /// a decision rule: `2017` (default), `1998`, `simple` or `guard 0.5`
    DecisionRule, |text| text.parse();
    /// a place, such as `shell.drive`, `head_tube.lower`, `seat_tube` or `boss.NAME`
    Place, |text| text.parse();
    /// a thread, such as `M10x1-6H` or `1.370 in x 24 tpi BSC LH`
    crate::thread::Designation, |text| text.parse();
    /// a thread size, such as `M10x1`
    crate::thread::ThreadSize, |text| text.parse();
    /// a thread class, such as `6H`, `6g` or `2B`
    crate::thread::ToleranceClass, |text| text.parse();
    /// a tolerance class, such as `N7` or `h6`
    crate::fit::FitClass, |text| text.parse();
    /// a size with its class, such as `42 N7`
    crate::fit::SizeClass, |text| text.parse();
    /// a bearing class: `Normal`, `6` or `5`
    crate::fit::RingClass, |text| text.parse();
}

/// Types that are one of a closed list of words.
macro_rules! words {
    ($($kind:ty),* $(,)?) => {$(
        impl $crate::read::Read for $kind {
            const SHAPE: $crate::read::Shape = $crate::read::Shape::Word($crate::read::known_words::<$kind>);
            fn read(
                tree: &$crate::read::Tree<'_>,
                context: &mut $crate::read::Context<'_>,
            ) -> Option<Self> {
                $crate::read::word(tree, context)
            }
        }
    )*};
}
pub(crate) use words;

words!(
    End,
    crate::thread::Hand,
    crate::thread::Side,
    crate::thread::PercentConvention,
    crate::face::Gauge,
    crate::face::LimitKind,
    crate::face::MountKind,
    crate::fit::Feature,
    crate::measure::Measures,
    crate::fit::MaterialKind,
    crate::standard::BrakeSystem,
    crate::standard::Hold,
    crate::standard::Joint,
    crate::standard::ThreadedPart,
    crate::standard::LeftRight,
);

pub(crate) fn known_words<T: strum::IntoEnumIterator + ToString>() -> Vec<String> {
    T::iter().map(|word| word.to_string()).collect()
}

/// A word of a closed list, in any case; blanks and hyphens count as underscores.
pub(crate) fn word<T: core::str::FromStr + strum::IntoEnumIterator + ToString>(
    tree: &Tree<'_>,
    context: &mut Context<'_>,
) -> Option<T> {
    let said = text(tree, "a word of the list", context)?;
    let plain = said.trim();
    plain
        .parse()
        .or_else(|_| plain.to_ascii_lowercase().replace([' ', '-'], "_").parse())
        .map_or_else(
            |_| {
                context.refuse(&Error::new(
                    ErrorKind::UnknownName,
                    "",
                    said,
                    "no such word",
                    format!("one of {}", known_words::<T>().join(", ")),
                ));
                None
            },
            Some,
        )
}

/// What a reading measures, as far as the choice of an instrument goes.
trait Kind {
    const NAME: &'static str;
    fn named(context: &Context<'_>) -> Option<Text>;
}

macro_rules! kinds {
    ($( $(#[$doc:meta])* $name:ident, $field:ident; )*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy)]
        pub struct $name;

        impl Kind for $name {
            const NAME: &'static str = stringify!($field);
            fn named(context: &Context<'_>) -> Option<Text> {
                context.instruments.$field.clone()
            }
        }

        impl ReadBy<Placed> for $name {
            const SHAPE: Shape = <Placed as Read>::SHAPE;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Placed> {
                placed::<Self>(tree, context)
            }
        }
        impl ReadBy<Vec<Placed>> for $name {
            const SHAPE: Shape = <Vec<Placed> as Read>::SHAPE;
            const NEEDED: bool = false;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<Placed>> {
                match tree {
                    Tree::List(list) => items(list, context, placed::<Self>),
                    _ => placed::<Self>(tree, context).map(|only| Vec::from([only])),
                }
            }
            fn absent() -> Option<Vec<Placed>> {
                Some(Vec::new())
            }
        }
        impl ReadBy<Vec<Reading>> for $name {
            const SHAPE: Shape = <Vec<Placed> as Read>::SHAPE;
            const NEEDED: bool = false;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<Reading>> {
                let placed: Vec<Placed> = Self::read(tree, context)?;
                Some(placed.into_iter().map(|p| p.reading).collect())
            }
            fn absent() -> Option<Vec<Reading>> {
                Some(Vec::new())
            }
        }
        impl ReadBy<Reading> for $name {
            const SHAPE: Shape = <Placed as Read>::SHAPE;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Reading> {
                placed::<Self>(tree, context).map(|p| p.reading)
            }
        }
        impl ReadBy<Option<Reading>> for $name {
            const SHAPE: Shape = <Placed as Read>::SHAPE;
            const NEEDED: bool = false;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Option<Reading>> {
                match tree {
                    Tree::Null => Some(None),
                    _ => placed::<Self>(tree, context).map(|p| Some(p.reading)),
                }
            }
            fn absent() -> Option<Option<Reading>> {
                Some(None)
            }
        }
    )*};
}

kinds! {
    /// Readings of bores; the form's instrument for them stands for one that names none.
    Inside, inside;
    /// Readings of posts, cups, tubes and widths.
    Outside, outside;
    /// Readings of depths.
    Deep, depth;
}

/// A size with its place: a reading that must be above zero.
fn placed<K: Kind>(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Placed> {
    let line = text(
        tree,
        "a text with a unit, such as \"27.2 mm +/- 0.05 mm\"",
        context,
    )?;
    let (spot, size) = context.keep(Spot::before(line))?;
    let reading = reading(size, K::NAME, K::named(context), context)?;
    context.keep(positive("", reading.value()))?;
    context.keep(Placed::at(spot, reading))
}

/// A reading with its own uncertainty, or with that of the instrument that the form names for its kind.
pub(crate) fn reading(
    size: &str,
    kind: &'static str,
    named: Option<Text>,
    context: &mut Context<'_>,
) -> Option<Reading> {
    if says_how_sure(size) {
        return context.keep(size.parse());
    }
    let value = context.keep(parse_length(size))?;
    let Some(named) = named else {
        if !context.instruments_spoilt {
            context.refuse(&Error::new(
                ErrorKind::Missing,
                "",
                size,
                "a reading without an uncertainty and without an instrument",
                format!("write `+/- 0.05 mm` or `by …`, or name `{kind}` under [instruments]"),
            ));
        }
        return None;
    };
    let tool = context.keep(instrument(&named))?;
    context.keep(tool.reading(value))
}

impl Read for super::Instruments {
    const SHAPE: Shape = Shape::Named(&Shape::Text {
        what: "the code of an instrument, such as `caliper_digital_outside`",
    });

    /// Reads the instruments and hands them along: readings that stand behind them rely on them.
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        let before = context.met();
        // Unless all goes well below, no reading is blamed for its instrument.
        context.instruments_spoilt = true;
        let names = ["inside", "outside", "depth", "height"];
        let fields = super::Fields::of(tree, &names, context)?;
        let mut read = |name: &'static str| -> Option<Text> {
            let said: String = fields.field::<Option<String>>(name, context)??;
            context.under(name, |context| {
                context
                    .keep(instrument(&said))
                    .map(|tool| tool.code.clone())
            })
        };
        let instruments = Self {
            inside: read("inside"),
            outside: read("outside"),
            depth: read("depth"),
            height: read("height"),
        };
        context.instruments_spoilt = context.met() > before;
        context.instruments = instruments.clone();
        (context.met() == before).then_some(instruments)
    }
    fn absent() -> Option<Self> {
        Some(Self::default())
    }
    const NEEDED: bool = false;
}

/// Named fields, each with such a value: in the order in which they were written.
impl<T: Read> Read for Vec<(String, T)> {
    const SHAPE: Shape = Shape::Named(&T::SHAPE);
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        let Tree::Fields(fields) = tree else {
            return context.expected(tree, "an object with a value for each name");
        };
        let mut names: Vec<&str> = fields.iter().map(|(name, _)| name.as_ref()).collect();
        names.sort_unstable();
        for pair in names.windows(2) {
            if let [one, other] = pair
                && one == other
            {
                context.under(one, |c| c.refuse(&super::twice("")));
            }
        }
        let mut out = Self::with_capacity(fields.len());
        for (name, value) in fields {
            let value = context.under(name, |context| T::read(value, context));
            out.extend(value.map(|value| (name.to_string(), value)));
        }
        (out.len() == fields.len()).then_some(out)
    }
    fn absent() -> Option<Self> {
        Some(Self::new())
    }
}

impl Read for Cow<'static, str> {
    const SHAPE: Shape = Shape::Text { what: "text" };
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        String::read(tree, context).map(Cow::Owned)
    }
}
