//! What every row of the tables has in common: a code, a table, figures that can be walked.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::Display;

use crate::evidence::{Evidence, Fact, Figure, List, Text};
use crate::quantity::{Length, Printed};
use crate::{Error, ErrorKind};

/// A figure or fact of any kind, as far as its evidence is concerned.
pub trait Stated: Display {
    /// The evidence; `None` when unknown.
    fn evidence(&self) -> Option<&Evidence>;
    /// How many published values disagree.
    fn disputes(&self) -> usize;
    /// Why it is unknown; empty when known.
    fn reason(&self) -> &str;
}

impl<Q: Printed> Stated for Figure<Q> {
    fn evidence(&self) -> Option<&Evidence> {
        Figure::evidence(self)
    }
    fn disputes(&self) -> usize {
        self.dissent().len()
    }
    fn reason(&self) -> &str {
        Figure::reason(self)
    }
}

impl<V: Clone + Display + 'static> Stated for Fact<V> {
    fn evidence(&self) -> Option<&Evidence> {
        Fact::evidence(self)
    }
    fn disputes(&self) -> usize {
        self.dissent().len()
    }
    fn reason(&self) -> &str {
        Fact::reason(self)
    }
}

/// Something whose figures can be walked, each with the name of its field.
pub trait Walk {
    /// Calls `visit` once for each figure or fact, in the order of the fields.
    fn walk(&self, field: &'static str, visit: &mut dyn FnMut(&'static str, &dyn Stated));
}

impl<Q: Printed> Walk for Figure<Q> {
    fn walk(&self, field: &'static str, visit: &mut dyn FnMut(&'static str, &dyn Stated)) {
        visit(field, self);
    }
}
impl<V: Clone + Display + 'static> Walk for Fact<V> {
    fn walk(&self, field: &'static str, visit: &mut dyn FnMut(&'static str, &dyn Stated)) {
        visit(field, self);
    }
}
impl<T: Walk> Walk for Option<T> {
    fn walk(&self, field: &'static str, visit: &mut dyn FnMut(&'static str, &dyn Stated)) {
        if let Some(inner) = self {
            inner.walk(field, visit);
        }
    }
}
impl<T: Walk + Clone + 'static> Walk for List<T> {
    fn walk(&self, field: &'static str, visit: &mut dyn FnMut(&'static str, &dyn Stated)) {
        for inner in self.iter() {
            inner.walk(field, visit);
        }
    }
}
/// Plain text, lengths and words hold no figure.
macro_rules! no_figure {
    ($($plain:ty),*) => {$(
        impl Walk for $plain {
            fn walk(&self, _: &'static str, _: &mut dyn FnMut(&'static str, &dyn Stated)) {}
        }
    )*};
}
no_figure!(
    Text,
    Length,
    super::ThreadedPart,
    super::End,
    super::BrakeSystem,
    super::SeatKind,
    super::DepthCounts,
    super::Joint,
    super::SpeaksOf,
    super::Cutting,
    super::Sense,
    super::MaterialKind,
    super::Operation,
    super::Workplace,
    crate::evidence::Grade
);

/// A row of a table.
pub trait Row: Walk + Clone + Sized + 'static {
    /// Name of the family, as in `data/`.
    const FAMILY: &'static str;
    /// The rows that are compiled in.
    fn table() -> &'static [Self];
    /// The row's code: unique within the family, kept for ever.
    fn code(&self) -> &str;
    /// Other names by which the row is found.
    fn aliases(&self) -> &[Text] {
        &[]
    }
}

/// Finds a row by code or alias, without regard to letter case. Allocates nothing unless it fails.
///
/// # Errors
/// `UnknownName`, with the nearest names.
///
/// ```
/// use framegauge::standard::{Shell, find};
/// assert_eq!(find::<Shell>("BSA").unwrap().code, "bsc");
/// assert!(find::<Shell>("bsx").unwrap_err().remedy().contains("bsc"));
/// ```
pub fn find<R: Row>(name: &str) -> Result<&'static R, Error> {
    find_in(R::table(), name)
}

/// As [`find`], in any list of rows.
///
/// # Errors
/// `UnknownName`, with the nearest names.
///
/// ```
/// use framegauge::standard::{Row, Seatpost, find_in};
/// assert_eq!(find_in(Seatpost::table(), " 27.2 ").unwrap().code, "27.2");
/// assert!(find_in::<Seatpost>(&[], "27.2").is_err());
/// ```
pub fn find_in<'a, R: Row>(rows: &'a [R], name: &str) -> Result<&'a R, Error> {
    get_in(rows, name).ok_or_else(|| unknown_name(R::FAMILY, name, &mut rows.iter().map(Row::code)))
}

/// The row of that code or alias; the nearest names are not looked for where there is none.
pub(super) fn get_in<'a, R: Row>(rows: &'a [R], name: &str) -> Option<&'a R> {
    let wanted = name.trim();
    rows.iter()
        .find(|row| row.code().eq_ignore_ascii_case(wanted))
        .or_else(|| {
            rows.iter().find(|row| {
                row.aliases()
                    .iter()
                    .any(|alias| alias.eq_ignore_ascii_case(wanted))
            })
        })
}

/// Not generic, so that a program carries it once and not for every family.
fn unknown_name(family: &'static str, name: &str, codes: &mut dyn Iterator<Item = &str>) -> Error {
    let near = nearest(codes, name.trim());
    Error::new(
        ErrorKind::UnknownName,
        family,
        name,
        format!("no {} of this name", family.replace('_', " ")),
        if near.is_empty() {
            String::from("look the names up with `coverage`")
        } else {
            format!("nearest: {}", near.join(", "))
        },
    )
}

/// The five codes that differ least from a name.
pub(crate) fn nearest<'a>(codes: &mut dyn Iterator<Item = &'a str>, wanted: &str) -> Vec<&'a str> {
    // A hostile name must not cost more than a real one.
    let wanted: String = wanted.chars().take(40).collect::<String>().to_lowercase();
    let mut scored: Vec<(usize, &str)> = codes
        .map(|code| (distance(&wanted, &code.to_lowercase()), code))
        .collect();
    scored.sort_unstable();
    scored.into_iter().take(5).map(|(_, code)| code).collect()
}

/// Edit distance between two short names.
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, ca) in a.chars().enumerate() {
        let mut diagonal = i;
        let mut left = i + 1;
        for (slot, cb) in row.iter_mut().skip(1).zip(&b) {
            let up = *slot;
            left = (diagonal + usize::from(ca != *cb))
                .min(up + 1)
                .min(left + 1);
            diagonal = up;
            *slot = left;
        }
        if let Some(first) = row.first_mut() {
            *first = i + 1;
        }
    }
    row.last().copied().unwrap_or(a.len())
}

/// Declares row types: the struct, its walk and, for families, its table.
macro_rules! rows {
    ($(
        $(#[$doc:meta])*
        $name:ident $(($family:literal, $table:ident $(, $aliases:ident)?))? {
            $( $(#[$field_doc:meta])* $field:ident : $kind:ty, )*
        }
    )*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(deny_unknown_fields))]
        pub struct $name {
            $( $(#[$field_doc])* pub $field: $kind, )*
        }

        impl $crate::standard::Walk for $name {
            fn walk(
                &self,
                _: &'static str,
                visit: &mut dyn FnMut(&'static str, &dyn $crate::standard::Stated),
            ) {
                $( $crate::standard::Walk::walk(&self.$field, stringify!($field), visit); )*
            }
        }

        $(
            impl $crate::standard::Row for $name {
                const FAMILY: &'static str = $family;
                fn table() -> &'static [Self] {
                    &$crate::standard::tables::$table
                }
                fn code(&self) -> &str {
                    &self.code
                }
                $( fn aliases(&self) -> &[$crate::evidence::Text] { &self.$aliases } )?
            }
        )?
    )*};
}
pub(super) use rows;

#[cfg(test)]
mod tests {
    use super::distance;

    /// `kitten` to `sitting` takes three edits (the textbook pair); from or to nothing it takes as many as there are letters.
    #[test]
    fn distances() {
        for (a, b, edits) in [
            ("kitten", "sitting", 3),
            ("sitting", "kitten", 3),
            ("bsc", "", 3),
            ("", "bsc", 3),
            ("bsc", "xbsc", 1),
            ("xbsc", "bsc", 1),
            ("bsc", "bsc", 0),
        ] {
            assert_eq!(distance(a, b), edits, "{a} {b}");
        }
    }
}
