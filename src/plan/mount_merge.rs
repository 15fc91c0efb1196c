//! Two entries for one mount: one mount where they agree, a contradiction where they do not.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::sheet::{BrakeEntry, BrakeSheet};

/// All entries for one mount as one.
pub(super) struct Merged<'a> {
    pub sheet: BrakeSheet,
    /// The path of the first.
    pub path: &'a str,
    /// Where a later one says something else: its field, and what is said.
    pub apart: Vec<(String, String)>,
}

/// Joins what is said of one mount; `None` where nothing is.
pub(super) fn merge<'a>(entries: &[&'a BrakeEntry]) -> Option<Merged<'a>> {
    let (first, rest) = entries.split_first()?;
    let mut merged = Merged {
        sheet: first.sheet.clone(),
        path: &first.path,
        apart: Vec::new(),
    };
    for entry in rest {
        for field in join(&mut merged.sheet, &entry.sheet) {
            merged.apart.push((
                format!("{}.{field}", entry.path),
                format!(
                    "the sheet speaks of this mount at {} and at {}, and their `{field}` differ",
                    first.path, entry.path
                ),
            ));
        }
    }
    Some(merged)
}

/// Adds what the other says, and names the fields in which the two differ.
fn join(into: &mut BrakeSheet, other: &BrakeSheet) -> Vec<&'static str> {
    let mut apart = Vec::new();
    macro_rules! stated {
        ($($field:ident),*) => {$(
            match (&into.$field, &other.$field) {
                (None, Some(_)) => into.$field.clone_from(&other.$field),
                (Some(here), Some(there)) if here != there => apart.push(stringify!($field)),
                _ => {}
            }
        )*};
    }
    macro_rules! read {
        ($($field:ident),*) => {$(
            if into.$field.is_empty() {
                into.$field.clone_from(&other.$field);
            } else if !other.$field.is_empty() && into.$field != other.$field {
                apart.push(stringify!($field));
            }
        )*};
    }
    stated!(
        material,
        believed,
        confirmed,
        consent,
        coating,
        system,
        thickness,
        bolt,
        pad_clearance,
        pad_length,
        underside
    );
    read!(points, after, passes);
    for limit in &other.limits {
        if !into.limits.contains(limit) {
            into.limits.push(limit.clone());
        }
    }
    into.note = match (into.note.take(), &other.note) {
        (Some(here), Some(there)) if here != *there => Some(format!("{here}; {there}")),
        (here, there) => here.or_else(|| there.clone()),
    };
    apart
}
