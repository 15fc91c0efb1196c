//! The windows that are published for a joint, and fits held against them.

use alloc::vec::Vec;

use super::{Finding, FitFact};
use crate::evidence::{SourceKind, Text};
use crate::fit::Wanted;
use crate::measure::Limits;
use crate::quantity::Length;
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
    let makers = [SourceKind::Standard, SourceKind::MakerDocument];
    let cited = window.window.evidence().map_or(&[][..], |e| e.sources());
    cited.iter().any(|c| makers.contains(&c.source().kind))
}

/// Windows that print one figure and no limits are quoted, never applied.
pub(super) fn quoted(joint: Joint, windows: &[&FitWindow]) -> Vec<Finding> {
    let none = windows.iter().filter(|w| wanted(w).is_none());
    none.map(|w| {
        let fact = match w.window.nominal() {
            Some(figure) => FitFact::Quoted {
                joint,
                by: w.owner.clone(),
                wanted: w.sense,
                figure,
            },
            None => FitFact::NoWindow {
                joint,
                reason: Text::Owned(w.window.reason().into()),
            },
        };
        Finding::of(fact).resting_on(w.window.evidence())
    })
    .collect()
}
