//! Designations: `M10x1-6H`, `1.370 in x 24 tpi BSC LH`, `1/2-20 UNF-2B`, `36 mm x 24 tpi`.

use core::fmt;

use super::{EngagementGroup, Hand, Member, Series, ThreadForm, ThreadSize, ToleranceClass, usual_class};
use super::{iso965, unified};
use crate::quantity::{Length, Pitch, mm};
use crate::{Error, ErrorKind};

/// Longest text that can be one designation.
const LONGEST: usize = 64;

/// A thread designation: size, and where stated tolerance class, engagement group and hand.
///
/// ```
/// use framegauge::thread::{Designation, Hand};
/// let cup: Designation = "1.370-24 BSC LH".parse().unwrap();
/// assert_eq!(cup.hand, Hand::Left);
/// assert_eq!(cup.to_string(), "1.370 in x 24 tpi BSC LH");
/// let coarse: Designation = "M8".parse().unwrap();
/// assert_eq!(coarse.to_string(), "M8x1.25");
/// // Refused, because a form decides the pitch diameter by more than a fit:
/// assert!("1.370-24".parse::<Designation>().unwrap_err().remedy().contains("BSC"));
/// // Refused, because the fine series has 20 threads per inch at this size:
/// assert!("1/2-13 UNF".parse::<Designation>().unwrap_err().to_string().contains("20"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Designation {
    /// Form, major diameter and pitch.
    pub size: ThreadSize,
    /// The tolerance class, where stated.
    pub class: Option<ToleranceClass>,
    /// The engagement group, where stated.
    pub group: Option<EngagementGroup>,
    /// The hand; right unless stated.
    pub hand: Hand,
}

impl Designation {
    /// A right-hand thread of this size without a stated class.
    #[must_use]
    pub const fn new(size: ThreadSize) -> Self {
        Self {
            size,
            class: None,
            group: None,
            hand: Hand::Right,
        }
    }

    /// The same thread of this hand.
    ///
    /// ```
    /// use framegauge::thread::{Designation, Hand};
    /// let tap: Designation = "M10x1".parse().unwrap();
    /// assert_eq!(tap.with_hand(Hand::Left).to_string(), "M10x1 LH");
    /// ```
    #[must_use]
    pub const fn with_hand(mut self, hand: Hand) -> Self {
        self.hand = hand;
        self
    }

    /// The stated class, or the one that is usually meant for this member.
    ///
    /// # Errors
    /// `Contradiction` when a class is stated for the other member; `Missing` when none is stated and none is usual.
    ///
    /// ```
    /// use framegauge::thread::{Designation, Member};
    /// let hanger: Designation = "M10x1".parse().unwrap();
    /// assert_eq!(hanger.class_for(Member::Internal).unwrap().to_string(), "6H");
    /// ```
    pub fn class_for(&self, member: Member) -> Result<ToleranceClass, Error> {
        match self.class {
            Some(class) if class.member() == member => Ok(class),
            Some(class) => Err(Error::new(
                ErrorKind::Contradiction,
                "tolerance class",
                class,
                match member {
                    Member::Internal => "this class is for screws, and a hole was asked for",
                    Member::External => "this class is for holes, and a screw was asked for",
                },
                "capital letters are holes, small letters screws; 2A is a screw, 2B a hole",
            )),
            None => usual_class(&self.size, member).ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    "tolerance class",
                    self.size,
                    "no class is stated and none is known for this form",
                    "only basic sizes are known for this thread",
                )
            }),
        }
    }
}

impl fmt::Display for Designation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.size.fmt(f)?;
        if let Some(class) = self.class {
            write!(f, "-{class}")?;
        }
        if let Some(group) = self.group {
            write!(f, "-{}", group.letter())?;
        }
        match self.hand {
            Hand::Right => Ok(()),
            Hand::Left => f.write_str(" LH"),
        }
    }
}

#[cold]
fn refuse(
    kind: ErrorKind,
    field: &'static str,
    text: &str,
    problem: &'static str,
    remedy: &'static str,
) -> Error {
    Error::new(kind, field, text, problem, remedy)
}

#[cold]
fn not_a_designation(text: &str) -> Error {
    refuse(
        ErrorKind::Text,
        "thread",
        text,
        "not a thread designation",
        "write e.g. `M10x1-6H`, `1.370 in x 24 tpi BSC`, `9/16-20 UN` or `36 mm x 24 tpi`",
    )
}

/// A cursor over the text of one designation.
struct Cursor<'t> {
    text: &'t str,
    rest: &'t str,
    comma: bool,
    point: bool,
}

impl<'t> Cursor<'t> {
    fn spaces(&mut self) {
        self.rest = self.rest.trim_start();
    }

    fn eat(&mut self, word: &str) -> bool {
        match self.rest.get(..word.len()) {
            Some(front) if front.eq_ignore_ascii_case(word) => {
                self.rest = self.rest.get(word.len()..).unwrap_or_default();
                true
            }
            _ => false,
        }
    }

    /// Whether the next byte is a digit.
    fn digit_next(&self) -> bool {
        self.rest.as_bytes().first().is_some_and(u8::is_ascii_digit)
    }

    fn whole(&mut self) -> Option<u32> {
        let digits = self.rest.bytes().take_while(u8::is_ascii_digit).count();
        if digits == 0 || digits > 6 {
            return None;
        }
        let (front, back) = self.rest.split_at_checked(digits)?;
        self.rest = back;
        Some(front.bytes().fold(0, |n, b| n * 10 + u32::from(b - b'0')))
    }

    /// A decimal number as digits and their scale, so that it is rounded once.
    fn number(&mut self) -> Result<f64, Error> {
        const POWERS: [f64; 10] = [1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
        let mut digits: u64 = 0;
        let mut count = 0;
        let mut after: Option<usize> = None;
        let mut used = 0;
        for b in self.rest.bytes() {
            match b {
                b'0'..=b'9' => {
                    digits = digits * 10 + u64::from(b - b'0');
                    count += 1;
                    if let Some(places) = &mut after {
                        *places += 1;
                    }
                }
                b'.' | b',' if after.is_none() => {
                    after = Some(0);
                    if b == b',' {
                        self.comma = true;
                    } else {
                        self.point = true;
                    }
                }
                b'.' | b',' => return Err(not_a_designation(self.text)),
                _ => break,
            }
            used += 1;
            if count > 9 {
                return Err(refuse(
                    ErrorKind::Text,
                    "thread",
                    self.text,
                    "a number with more than nine digits",
                    "no thread is known that well",
                ));
            }
        }
        if self.comma && self.point {
            return Err(refuse(
                ErrorKind::Text,
                "thread",
                self.text,
                "a decimal comma and a decimal point in one designation",
                "use one decimal mark throughout",
            ));
        }
        let places = after.unwrap_or(0);
        if count == 0 || after == Some(0) {
            return Err(not_a_designation(self.text));
        }
        self.rest = self.rest.get(used..).unwrap_or_default();
        #[expect(clippy::cast_precision_loss, reason = "at most nine digits")]
        let value = digits as f64 / POWERS.get(places).copied().unwrap_or(1.0);
        Ok(value)
    }

    fn times(&mut self) -> bool {
        self.spaces();
        let found = self.eat("x") || self.eat("×") || self.eat("*");
        self.spaces();
        found
    }
}

/// The unit a diameter was given in.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Unit {
    Millimetre,
    Inch,
    None,
}

impl core::str::FromStr for Designation {
    type Err = Error;

    /// Reads a designation. `M8` alone is the coarse pitch. Spaces, `x` or `×`, a decimal point or comma are free;
    /// `in` and `tpi` may be left out where a dash and a form stand (`9/16-20 UN`).
    fn from_str(text: &str) -> Result<Self, Error> {
        if text.len() > LONGEST {
            return Err(refuse(
                ErrorKind::TooLarge,
                "thread",
                text,
                "longer than any thread designation",
                "give one designation",
            ));
        }
        let text = text.trim();
        let mut at = Cursor {
            text,
            rest: text,
            comma: false,
            point: false,
        };
        if at.eat("m") {
            return metric(&mut at);
        }
        if at.rest.is_empty() {
            return Err(not_a_designation(text));
        }
        inch_or_plain(&mut at)
    }
}

fn metric(at: &mut Cursor<'_>) -> Result<Designation, Error> {
    if !at.digit_next() {
        return Err(not_a_designation(at.text));
    }
    let major = at.number()?;
    if major > 300.0 {
        return Err(refuse(
            ErrorKind::OutOfRange,
            "major diameter",
            at.text,
            "no frame thread has this diameter",
            "1 mm to 300 mm; check the number",
        ));
    }
    let pitch = if at.times() {
        let pitch = at.number()?;
        at.spaces();
        if at.eat("tpi") {
            return Err(refuse(
                ErrorKind::Contradiction,
                "pitch",
                at.text,
                "an ISO metric thread has its pitch in millimetres",
                "write `36 mm x 24 tpi` for a metric diameter with an inch pitch",
            ));
        }
        at.eat("mm");
        if pitch * 3.0 > major && major >= 1.0 {
            return Err(refuse(
                ErrorKind::OutOfRange,
                "pitch",
                at.text,
                "too coarse for this diameter",
                "read the pitch again; `M10x10` is usually `M10x1`",
            ));
        }
        Pitch::millimetres(pitch)?
    } else {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 300 mm")]
        let um = (major * 1e3 + 0.5) as u32;
        match iso965::coarse_pitch(um) {
            Some(pitch) => Pitch::millimetres(f64::from(pitch) / 1e3)?,
            None => {
                return Err(refuse(
                    ErrorKind::Missing,
                    "pitch",
                    at.text,
                    "no pitch is written, and ISO 965-2 lists no coarse pitch for this diameter",
                    "write the pitch, e.g. `M35x1`",
                ));
            }
        }
    };
    let size = ThreadSize::new(ThreadForm::IsoMetric, mm(major), pitch)?;
    endings(at, Designation::new(size))
}

/// Numerator and denominator of a fraction whose first number was read; `None` when no slash follows.
fn fraction(at: &mut Cursor<'_>, over: u32) -> Result<Option<(u32, u32)>, Error> {
    if !at.eat("/") {
        return Ok(None);
    }
    match at.whole() {
        Some(under) if (1..=1024).contains(&under) && over <= 1024 => Ok(Some((over, under))),
        _ => Err(refuse(
            ErrorKind::Text,
            "major diameter",
            at.text,
            "not an inch fraction",
            "write e.g. `9/16` or `1 3/8`",
        )),
    }
}

/// `1 3/8`, `1-3/8`, `9/16`, `1.370`, `#10`: the diameter as a multiple of its unit, and whether only inches can be meant.
fn diameter(at: &mut Cursor<'_>) -> Result<(f64, bool), Error> {
    if at.eat("#") {
        // ASME B1.1 numbered sizes: 0.060 in and 0.013 in a step.
        return match at.whole() {
            Some(number @ 0..=12) => Ok((f64::from(60 + 13 * number) / 1e3, true)),
            _ => Err(refuse(
                ErrorKind::Text,
                "major diameter",
                at.text,
                "numbered sizes run from #0 to #12",
                "write e.g. `#10-32 UNF`",
            )),
        };
    }
    let start = at.rest;
    if let Some(first) = at.whole() {
        if let Some((over, under)) = fraction(at, first)? {
            return Ok((f64::from(over) / f64::from(under), true));
        }
        let after_first = at.rest;
        at.spaces();
        at.eat("-");
        at.spaces();
        if after_first.starts_with([' ', '-'])
            && let Some(over) = at.whole()
            && let Some((over, under)) = fraction(at, over)?
        {
            return Ok((f64::from(first * under + over) / f64::from(under), true));
        }
    }
    at.rest = start;
    at.number().map(|value| (value, false))
}

fn inch_or_plain(at: &mut Cursor<'_>) -> Result<Designation, Error> {
    let (value, must_be_inch) = diameter(at)?;
    at.spaces();
    let unit = if at.eat("mm") {
        Unit::Millimetre
    } else if at.eat("inch") || at.eat("in") || at.eat("\"") || at.eat("″") {
        Unit::Inch
    } else {
        Unit::None
    };
    if unit == Unit::Millimetre && must_be_inch {
        return Err(refuse(
            ErrorKind::Contradiction,
            "major diameter",
            at.text,
            "a fraction of a millimetre",
            "fractions are inches",
        ));
    }
    at.spaces();
    if !(at.times() || at.eat("-")) {
        return Err(not_a_designation(at.text));
    }
    at.spaces();
    let number = at.number()?;
    at.spaces();
    let pitch_in_mm = at.eat("mm");
    let tpi_written = !pitch_in_mm && at.eat("tpi");
    let pitch = if pitch_in_mm {
        Pitch::millimetres(number)?
    } else {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked to be whole and small")]
        let count = number as u16;
        if f64::from(count) != number {
            return Err(refuse(
                ErrorKind::Text,
                "pitch",
                at.text,
                "threads per inch are a whole number",
                "a pitch in millimetres is written `x 1 mm`",
            ));
        }
        Pitch::tpi(count)?
    };
    let (form, stated_series) = form_words(at);
    if unit == Unit::Millimetre && !pitch_in_mm && !tpi_written {
        return Err(refuse(
            ErrorKind::Unit,
            "pitch",
            at.text,
            "a pitch without a unit after a diameter in millimetres",
            "write `x 24 tpi` or `x 1 mm`",
        ));
    }
    let form = match form {
        Some(form) => form,
        // A metric diameter with an inch pitch is how the trade names threads whose form no source settles.
        None if unit == Unit::Millimetre => ThreadForm::Unknown,
        None => {
            return Err(refuse(
                ErrorKind::Missing,
                "thread form",
                at.text,
                "an inch size without its form: between BSC, ISO, UN and Whitworth the pitch diameter differs by 0.1 mm and more",
                "add `BSC`, `ISO`, `UN` or `BSW`, e.g. `1.370 in x 24 tpi BSC`; `unknown form` if nobody knows",
            ));
        }
    };
    let major = if unit == Unit::Millimetre {
        mm(value)
    } else {
        inches(value)
    };
    let size = ThreadSize::new(form, major, pitch)?;
    if let Some(series) = stated_series {
        check_series(at.text, &size, series)?;
    }
    endings(at, Designation::new(size))
}

/// Inches to millimetres with the exact ratio folded in first.
fn inches(value: f64) -> Length {
    mm(value * 254.0 / 10.0)
}

/// The words that name a form, with the series where one is named.
fn form_words(at: &mut Cursor<'_>) -> (Option<ThreadForm>, Option<Series>) {
    at.spaces();
    at.eat("-");
    at.spaces();
    const WORDS: [(&str, ThreadForm, Option<Series>); 18] = [
        ("unknown form", ThreadForm::Unknown, None),
        ("form unknown", ThreadForm::Unknown, None),
        ("UNEF", ThreadForm::Unified, Some(Series::ExtraFine)),
        ("UNC", ThreadForm::Unified, Some(Series::Coarse)),
        ("UNF", ThreadForm::Unified, Some(Series::Fine)),
        ("UNS", ThreadForm::Unified, None),
        ("UN", ThreadForm::Unified, None),
        ("BSC", ThreadForm::Bsc, None),
        ("BSA", ThreadForm::Bsc, None),
        ("CEI", ThreadForm::Bsc, None),
        ("JIS BC", ThreadForm::Bsc, None),
        ("BC", ThreadForm::Bsc, None),
        ("FG", ThreadForm::Bsc, None),
        ("BSW", ThreadForm::Whitworth, None),
        ("BSF", ThreadForm::Whitworth, None),
        ("Whitworth", ThreadForm::Whitworth, None),
        ("ISO", ThreadForm::IsoInch, None),
        ("W", ThreadForm::Whitworth, None),
    ];
    for (word, form, series) in WORDS {
        if at.eat(word) {
            return (Some(form), series);
        }
    }
    (None, None)
}

/// A named series must be the series of the size; otherwise one of the two was copied wrong.
fn check_series(text: &str, size: &ThreadSize, stated: Series) -> Result<(), Error> {
    let found = super::series(size);
    if found == Some(stated) {
        return Ok(());
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "below 300 mm")]
    let key = (crate::quantity::to_mm(size.major()) / 25.4 * 1e4 + 0.5) as u32;
    let remedy = match unified::tpi_in(stated, key) {
        Some(tpi) => alloc::format!("{stated} has {tpi} threads per inch at this diameter"),
        None => alloc::string::String::from("write `UN` for a size outside the named series"),
    };
    Err(Error::new(
        ErrorKind::Contradiction,
        "thread series",
        text,
        match found {
            Some(Series::Coarse) => "this size is UNC",
            Some(Series::Fine) => "this size is UNF",
            Some(Series::ExtraFine) => "this size is UNEF",
            _ => "this size is not in that series",
        },
        remedy,
    ))
}

/// What may follow a size: class, engagement group, hand, in any order, divided by dashes or spaces.
fn endings(at: &mut Cursor<'_>, mut designation: Designation) -> Result<Designation, Error> {
    let mut hand_given = false;
    loop {
        at.rest = at.rest.trim_start_matches([' ', '-', ',']);
        let end = at.rest.find([' ', '-', ',']).unwrap_or(at.rest.len());
        let word = at.rest.get(..end).unwrap_or_default();
        at.rest = at.rest.get(end..).unwrap_or_default();
        let once = |taken: bool, field: &'static str| {
            if taken {
                Err(refuse(
                    ErrorKind::Contradiction,
                    field,
                    at.text,
                    "given twice",
                    "give it once",
                ))
            } else {
                Ok(())
            }
        };
        match word {
            "" => return Ok(designation),
            "LH" | "lh" | "left" | "RH" | "rh" | "right" => {
                once(hand_given, "hand")?;
                hand_given = true;
                designation.hand = if word.starts_with(['L', 'l']) {
                    Hand::Left
                } else {
                    Hand::Right
                };
            }
            "S" | "N" | "L" => {
                once(designation.group.is_some(), "engagement group")?;
                designation.group = Some(match word {
                    "S" => EngagementGroup::Short,
                    "L" => EngagementGroup::Long,
                    _ => EngagementGroup::Normal,
                });
            }
            _ if word.starts_with(|c: char| c.is_ascii_digit()) => {
                once(designation.class.is_some(), "tolerance class")?;
                let class: ToleranceClass = word.parse()?;
                let fits = matches!(
                    (designation.size.form(), class),
                    (ThreadForm::IsoMetric | ThreadForm::IsoInch, ToleranceClass::Iso(_))
                        | (ThreadForm::Unified, ToleranceClass::Unified(_))
                );
                if !fits {
                    return Err(refuse(
                        ErrorKind::NotApplicable,
                        "tolerance class",
                        at.text,
                        "this class does not belong to this form",
                        "6H and 6g belong to ISO threads, 2A and 2B to Unified ones; BSC and Whitworth have no class here",
                    ));
                }
                designation.class = Some(class);
            }
            _ => {
                return Err(refuse(
                    ErrorKind::Text,
                    "thread",
                    at.text,
                    "a word that belongs to no designation",
                    "after the size come a class (`6H`), a group (`S`, `N`, `L`) and a hand (`LH`)",
                ));
            }
        }
    }
}

impl core::str::FromStr for ThreadSize {
    type Err = Error;

    /// Reads a size; a class or a left hand is refused here, because a size cannot keep it.
    fn from_str(text: &str) -> Result<Self, Error> {
        let read: Designation = text.parse()?;
        if read.class.is_some() || read.group.is_some() || read.hand == Hand::Left {
            return Err(refuse(
                ErrorKind::Text,
                "thread size",
                text,
                "more than a size",
                "leave class and hand out here",
            ));
        }
        Ok(read.size)
    }
}

#[cfg(feature = "serde")]
mod serial {
    use super::{Designation, ThreadSize};
    use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

    macro_rules! as_text {
        ($name:ident) => {
            impl Serialize for $name {
                fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                    serializer.collect_str(self)
                }
            }
            impl<'de> Deserialize<'de> for $name {
                fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                    alloc::string::String::deserialize(deserializer)?
                        .parse()
                        .map_err(de::Error::custom)
                }
            }
        };
    }
    as_text!(ThreadSize);
    as_text!(Designation);
}
