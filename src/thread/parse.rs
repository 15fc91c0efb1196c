//! The reader of designations.

use super::cursor::{Cursor, not_a_designation, refuse};
use super::{
    Designation, EngagementGroup, Hand, Series, ThreadForm, ThreadSize, ToleranceClass, iso965,
    pitch_in_series,
};
use crate::quantity::{Length, Pitch, mm};
use crate::{Error, ErrorKind};

/// Longest text that can be one designation.
const LONGEST: usize = 64;

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
        let mut at = Cursor::new(text);
        if at.eat("m") {
            at.spaces();
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
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "0 to 300 mm"
        )]
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
            "a fraction or a numbered size in millimetres",
            "fractions and numbered sizes are inches",
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
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "checked to be whole and small"
        )]
        let count = number as u16;
        if f64::from(count) != number {
            return Err(refuse(
                ErrorKind::Text,
                "pitch",
                at.text,
                "threads per inch are a whole number from 4 to 127",
                "count the threads along one inch; a pitch in millimetres is written `x 1 mm`",
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
    at.rest = at.rest.trim_start_matches([' ', '-', ',']);
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
    let found = super::series(size).unwrap_or(Series::Other);
    if found == stated {
        return Ok(());
    }
    let remedy = match pitch_in_series(size.major(), stated) {
        Some(pitch) => alloc::format!("{stated} has {pitch} at this diameter"),
        // `UN` for a size outside the named series.
        None => alloc::format!("check the size, or write `{found}`"),
    };
    Err(Error::new(
        ErrorKind::Contradiction,
        "thread series",
        text,
        match found {
            Series::Coarse => "this size is UNC",
            Series::Fine => "this size is UNF",
            Series::ExtraFine => "this size is UNEF",
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
        let among = |all: [&str; 2]| all.iter().any(|hand| hand.eq_ignore_ascii_case(word));
        let left = among(["LH", "left"]);
        if left || among(["RH", "right"]) {
            once(hand_given, "hand")?;
            hand_given = true;
            designation.hand = if left { Hand::Left } else { Hand::Right };
            continue;
        }
        match word {
            "" => return Ok(designation),
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
                    (
                        ThreadForm::IsoMetric | ThreadForm::IsoInch,
                        ToleranceClass::Iso(_)
                    ) | (ThreadForm::Unified, ToleranceClass::Unified(_))
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
