//! The windows that are published for a joint, and fits held against them.

use alloc::string::String;
use alloc::vec::Vec;

use super::Finding;
use crate::evidence::SourceKind;
use crate::fit::{Conformance, Fit, Wanted};
use crate::measure::{Limits, settled_cmp};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{FitWindow, Joint, SpeaksOf, Tables};

/// The published windows that speak of this joint at this size. General machining classes are left out: they are for machined
/// housings, not for tubes.
///
/// ```
/// use framegauge::{judge::windows_of, mm, standard::{Joint, Tables}};
/// assert_eq!(windows_of(Tables::ours(), Joint::DirectBearing, mm(42.0)).count(), 1);
/// assert_eq!(windows_of(Tables::ours(), Joint::DirectBearing, mm(37.0)).count(), 0);
/// ```
pub fn windows_of(
    tables: Tables<'_>,
    joint: Joint,
    near: Length,
) -> impl Iterator<Item = &FitWindow> {
    tables.all::<FitWindow>().filter(move |window| {
        window.joint == joint
            && window.speaks_of == SpeaksOf::Bicycle
            && window
                .sizes
                .as_ref()
                .is_none_or(|sizes| Limits::of_requirement(sizes).admits(near))
    })
}

/// A published window as a wanted one; `None` where it prints a single figure without limits, or nothing.
pub(super) fn wanted(window: &FitWindow) -> Option<Wanted> {
    (window.window.lower().is_some() || window.window.upper().is_some()).then(|| Wanted {
        sense: window.sense,
        limits: Limits::of_requirement(&window.window),
        owner: window.owner.clone(),
    })
}

/// Whether a window rests on a standard or on a maker's own document: such windows decide before opinions.
pub(super) fn from_maker(window: &FitWindow) -> bool {
    window.window.evidence().is_some_and(|e| {
        e.sources().iter().any(|c| {
            matches!(
                c.source().kind,
                SourceKind::Standard | SourceKind::MakerDocument
            )
        })
    })
}

/// The finding of a fit held against a window.
pub(super) fn held(fit: &Fit, what: &str, wanted: &Wanted, held: &Conformance) -> Finding {
    let mut found = Finding::fit(alloc::string::String::from(what), fit, wanted, held, None);
    let worst = [held.tightest, held.loosest]
        .into_iter()
        .filter_map(|d| d.margin)
        .min_by(|a, b| settled_cmp(*a, *b));
    if let Some(margin) = worst
        && settled_cmp(margin, mm(0.0)).is_lt()
    {
        let words = alloc::format!("{found}, {} beyond the limit by the values", in_mm(-margin));
        found.reworded(words);
    }
    found
}

/// Windows that print one figure and no limits are quoted, never applied.
pub(super) fn quoted(what: &str, windows: &[&FitWindow]) -> Vec<Finding> {
    windows
        .iter()
        .filter(|w| wanted(w).is_none())
        .map(|w| {
            let words = w.window.nominal().map_or_else(
                || alloc::format!("no window is published: {}", w.window.reason()),
                |figure| {
                    alloc::format!(
                        "{} prints {} of {}, without limits",
                        w.owner,
                        w.sense,
                        in_mm(figure)
                    )
                },
            );
            Finding::stated(String::from(what), words).resting_on(w.window.evidence())
        })
        .collect()
}
