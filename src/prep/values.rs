//! Values of a written sheet: words, lengths, readings with their places. Defects are collected, not thrown.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::str::FromStr;

use super::sheet::PlacedReading;
use super::written::{Line, Lines, WrittenSheet};
use crate::evidence::Grade;
use crate::measure::{Limits, Reading, instrument};
use crate::quantity::{
    Angle, Length, Pitch, Printed, not_negative, parse_length, parse_toleranced, positive,
};
use crate::standard::Tables;
use crate::{Error, ErrorKind};

/// More readings of one thing than anybody takes.
const MOST_READINGS: usize = 2000;

/// What a reading measures, as far as the choice of an instrument goes.
#[derive(Clone, Copy)]
pub(super) enum Kind {
    Inside,
    Outside,
    Depth,
    Height,
}

pub(super) struct Reader<'a> {
    pub(super) written: &'a WrittenSheet,
    pub(super) tables: Tables<'a>,
    pub(super) errors: Vec<Error>,
}

impl Reader<'_> {
    pub(super) fn keep<T>(&mut self, field: &str, result: Result<T, Error>) -> Option<T> {
        match result {
            Ok(value) => Some(value),
            Err(error) => {
                self.errors.push(error.within(field));
                None
            }
        }
    }

    /// A word of a closed list.
    pub(super) fn word<T: FromStr + Default + strum::IntoEnumIterator + ToString>(
        &mut self,
        field: &str,
        word: Option<&str>,
    ) -> T {
        let Some(word) = word else {
            return T::default();
        };
        word.parse().unwrap_or_else(|_| {
            self.errors.push(unknown_word::<T>(field, word));
            T::default()
        })
    }

    pub(super) fn optional_word<T: FromStr + strum::IntoEnumIterator + ToString>(
        &mut self,
        field: &str,
        word: Option<&str>,
    ) -> Option<T> {
        let word = word?;
        match word.parse() {
            Ok(value) => Some(value),
            Err(_) => {
                self.errors.push(unknown_word::<T>(field, word));
                None
            }
        }
    }

    pub(super) fn length(&mut self, field: &str, line: Option<&Line>) -> Option<Length> {
        let line = line?;
        let length = self.keep(field, parse_length(&line.0))?;
        self.keep(field, positive("", length))
    }

    /// A size: a reading that must be above zero.
    pub(super) fn size(&mut self, field: &str, line: Option<&Line>, kind: Kind) -> Option<Reading> {
        let line = line?;
        let reading = self.reading(field, &line.0, kind)?;
        self.keep(field, positive("", reading.value()))?;
        Some(reading)
    }

    pub(super) fn sizes(&mut self, field: &str, lines: &Lines, kind: Kind) -> Vec<Reading> {
        self.placed(field, lines, kind)
            .into_iter()
            .map(|p| p.reading)
            .collect()
    }

    /// Sizes with their places.
    pub(super) fn placed(&mut self, field: &str, lines: &Lines, kind: Kind) -> Vec<PlacedReading> {
        let mut out = Vec::new();
        for (path, line) in self.each(field, lines) {
            let (place, text) = split_place(&line);
            let Some(reading) = self.reading(&path, text, kind) else {
                continue;
            };
            if self.keep(&path, positive("", reading.value())).is_none() {
                continue;
            }
            if let Some(place) = self.keep(&path, PlaceText::read(place)) {
                if place.along.is_some() || place.across.is_some() {
                    self.errors.push(Error::new(
                        ErrorKind::Text,
                        path.clone(),
                        &line,
                        "a diameter has an angle and a depth",
                        "write e.g. `10 mm deep, 90 deg: 27.15 mm`",
                    ));
                }
                out.push(PlacedReading {
                    reading,
                    angle: place.angle,
                    depth: place.depth,
                });
            }
        }
        out
    }

    pub(super) fn each(&mut self, field: &str, lines: &Lines) -> Vec<(String, String)> {
        if lines.0.len() > MOST_READINGS {
            self.errors.push(Error::new(
                ErrorKind::TooLarge,
                field.to_string(),
                lines.0.len(),
                "more readings than anybody takes",
                format!("at most {MOST_READINGS}"),
            ));
            return Vec::new();
        }
        lines
            .0
            .iter()
            .enumerate()
            .map(|(i, line)| (format!("{field}[{i}]"), line.clone()))
            .collect()
    }

    pub(super) fn reading(&mut self, field: &str, text: &str, kind: Kind) -> Option<Reading> {
        // A reading that says itself how sure it is.
        if text.contains(" by ") {
            return self.keep(field, text.parse::<Reading>());
        }
        let (value, tolerance) = self.keep(field, parse_toleranced(text))?;
        if tolerance.is_some() {
            return self.keep(field, text.parse::<Reading>());
        }
        let instruments = &self.written.instruments;
        let (which, default) = match kind {
            Kind::Inside => ("inside", &instruments.inside),
            Kind::Outside => ("outside", &instruments.outside),
            Kind::Depth => ("depth", &instruments.depth),
            Kind::Height => ("height", &instruments.height),
        };
        let Some(name) = default.clone() else {
            self.errors.push(Error::new(
                ErrorKind::Missing,
                field.to_string(),
                text,
                "a reading without an uncertainty and without an instrument",
                format!("write `+/- 0.05 mm` or `by …`, or name `{which}` under [instruments]"),
            ));
            return None;
        };
        let instrument = self.keep(field, instrument(&name))?;
        self.keep(field, instrument.reading(value))
    }

    pub(super) fn pitch(&mut self, field: &str, line: Option<&Line>) -> Option<Pitch> {
        let line = line?;
        self.keep(field, line.0.parse())
    }
}

fn unknown_word<T: strum::IntoEnumIterator + ToString>(field: &str, word: &str) -> Error {
    let known: Vec<String> = T::iter().map(|w| w.to_string()).collect();
    Error::new(
        ErrorKind::UnknownName,
        field.to_string(),
        word,
        "no such word",
        format!("one of {}", known.join(", ")),
    )
}

/// `10 mm deep, 90 deg: 27.15 mm` into place and reading.
pub(super) fn split_place(line: &str) -> (&str, &str) {
    line.rsplit_once(':')
        .map_or(("", line), |(place, reading)| {
            (place.trim(), reading.trim())
        })
}

#[derive(Default)]
pub(super) struct PlaceText {
    pub(super) angle: Option<Angle>,
    pub(super) depth: Option<Length>,
    pub(super) along: Option<Length>,
    pub(super) across: Option<Length>,
}

impl PlaceText {
    pub(super) fn read(place: &str) -> Result<Self, Error> {
        let mut out = Self::default();
        // `, ` parts the words of a place; a bare comma may be a decimal comma.
        for part in place.split(", ").map(str::trim).filter(|p| !p.is_empty()) {
            if part.ends_with("deg") || part.ends_with('°') {
                out.angle = Some(Angle::parse(part)?);
            } else if let Some(depth) = part.strip_suffix("deep") {
                out.depth = Some(not_negative("depth", parse_length(depth)?)?);
            } else if let Some(along) = part.strip_suffix("along") {
                out.along = Some(parse_length(along)?);
            } else if let Some(across) = part.strip_suffix("across") {
                out.across = Some(parse_length(across)?);
            } else {
                return Err(Error::new(
                    ErrorKind::Text,
                    "place",
                    part,
                    "no place that can be read",
                    "write `90 deg`, `10 mm deep`, `10 mm along` or `5 mm across`",
                ));
            }
        }
        Ok(out)
    }
}

/// `46.00 mm to 46.05 mm`, `46.00 to 46.05 mm` or `46 +0.05/-0 mm`.
pub(super) fn limits_text(text: &str) -> Result<Limits, Error> {
    if let Some((low, high)) = text.split_once(" to ") {
        let upper = parse_length(high)?;
        let lower = if low.trim().ends_with(|c: char| c.is_ascii_digit()) {
            parse_length(&format!("{} mm", low.trim()))?
        } else {
            parse_length(low)?
        };
        return Limits::between(lower, upper, Grade::Shop);
    }
    match parse_toleranced(text)? {
        (nominal, Some(t)) => Limits::between(nominal + t.lower, nominal + t.upper, Grade::Shop),
        (_, None) => Err(Error::new(
            ErrorKind::Text,
            "limits",
            text,
            "one length is no pair of limits",
            "write `46.00 mm to 46.05 mm`",
        )),
    }
}
