//! A bore as the last pass left it.

use alloc::vec::Vec;

use super::sheet::{BorePass, Coating, CoatingLeft, Marks, PartDid, ShellPass};
use super::site::{covered, on_surface};
use crate::judge::extremes;
use crate::measure::{Placed, Reading, Surface};

/// A bore as it is now, with what came off.
#[derive(Debug, Clone)]
pub(super) struct BoreNow {
    /// The readings, each with what it lies on.
    pub bore: Vec<Placed>,
    /// Readings were taken after work.
    pub worked: bool,
    /// Paint is still there: stated, or covered and not worked at.
    pub covered: bool,
    /// What is left of the coating was said.
    pub left: Option<CoatingLeft>,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
    /// What came off on diameter at the narrowest place.
    pub removed: Option<Reading>,
}

/// One pass, whatever place it belongs to.
pub(super) struct Pass<'a> {
    pub bore: &'a [Placed],
    pub left: Option<CoatingLeft>,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
}

impl<'a> From<&'a BorePass> for Pass<'a> {
    fn from(pass: &'a BorePass) -> Self {
        Self {
            bore: &pass.bore,
            left: pass.coating_left,
            marks: pass.marks,
            part: pass.part,
        }
    }
}

impl<'a> From<&'a ShellPass> for Pass<'a> {
    fn from(pass: &'a ShellPass) -> Self {
        Self {
            bore: &pass.bore,
            left: pass.coating_left,
            marks: pass.marks,
            part: pass.part,
        }
    }
}

/// The bore now. After a cut every reading lies on metal unless the pass says that paint remains; after work by hand what it
/// lies on is not known unless that is said.
pub(super) fn of<'a>(
    first: &[Placed],
    after: &'a [Placed],
    passes: impl IntoIterator<Item = Pass<'a>>,
    coating: Option<Coating>,
    by_hand: bool,
) -> BoreNow {
    let mut now = BoreNow {
        bore: on_surface(first, coating),
        worked: false,
        covered: covered(coating),
        left: None,
        marks: None,
        part: None,
        removed: None,
    };
    let format_1 = (!after.is_empty()).then_some(Pass {
        bore: after,
        left: None,
        marks: None,
        part: None,
    });
    for pass in format_1.into_iter().chain(passes) {
        now.worked = true;
        now.left = pass.left.or(now.left);
        now.marks = pass.marks.or(now.marks);
        now.part = pass.part.or(now.part);
        let lies_on = match now.left {
            Some(CoatingLeft::AllOff | CoatingLeft::Traces) => Surface::OnMetal,
            Some(CoatingLeft::Remains) => Surface::OverPaint,
            None if by_hand && coating != Some(Coating::Bare) => Surface::NotKnown,
            None => Surface::OnMetal,
        };
        now.covered = lies_on == Surface::OverPaint;
        if !pass.bore.is_empty() {
            now.bore = pass
                .bore
                .iter()
                .map(|placed| Placed {
                    surface: if placed.surface == Surface::NotKnown {
                        lies_on
                    } else {
                        placed.surface
                    },
                    ..*placed
                })
                .collect();
        }
    }
    if now.worked {
        let plain = |readings: &[Placed]| readings.iter().map(|p| p.reading).collect::<Vec<_>>();
        let (old, new) = (extremes(&plain(first)), extremes(&plain(&now.bore)));
        now.removed = match (old.first(), new.first()) {
            (Some(old), Some(new)) => Some(new.less(old)),
            _ => None,
        };
    }
    now
}

impl BoreNow {
    /// Whether every reading lies on metal.
    pub(super) fn on_metal(&self) -> bool {
        !self.bore.is_empty() && self.bore.iter().all(|p| p.surface == Surface::OnMetal)
    }

    /// Whether the readings were taken before the coating came off.
    pub(super) fn outdated(&self) -> bool {
        self.worked && !self.covered && self.bore.iter().any(|p| p.surface == Surface::OverPaint)
    }

    /// The plain readings.
    pub(super) fn readings(&self) -> Vec<Reading> {
        self.bore.iter().map(|p| p.reading).collect()
    }

    /// The narrowest reading.
    pub(super) fn smallest(&self) -> Option<Reading> {
        extremes(&self.readings()).first().copied()
    }

    /// The widest reading.
    pub(super) fn largest(&self) -> Option<Reading> {
        extremes(&self.readings()).last().copied()
    }
}
