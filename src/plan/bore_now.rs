//! A bore as the last pass left it.

use alloc::vec::Vec;

use super::sheet::{BorePass, Coating, CoatingLeft, Marks, PartDid, ShellPass};
use super::site::{covered, on_surface};
use crate::judge::extremes;
use crate::measure::{Placed, Reading, Surface, settled_below, settled_cmp};
use crate::quantity::{Length, deg};

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
    /// By how much a place reads narrower than before the work.
    pub narrower: Option<Length>,
}

/// One pass, whatever place it belongs to.
pub(super) struct Pass<'a> {
    pub bore: &'a [Placed],
    pub left: Option<CoatingLeft>,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
}

macro_rules! passes {
    ($($kind:ty),*) => {$(
        impl<'a> From<&'a $kind> for Pass<'a> {
            fn from(pass: &'a $kind) -> Self {
                let (left, marks, part) = (pass.coating_left, pass.marks, pass.part);
                Self { bore: &pass.bore, left, marks, part }
            }
        }
    )*};
}
passes!(BorePass, ShellPass);

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
        narrower: None,
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
            let surface = |said| {
                if said == Surface::NotKnown {
                    lies_on
                } else {
                    said
                }
            };
            let here = pass.bore.iter();
            now.bore = here
                .map(|p| Placed {
                    surface: surface(p.surface),
                    ..*p
                })
                .collect();
        }
    }
    if now.worked {
        let plain: Vec<Reading> = first.iter().map(|p| p.reading).collect();
        let old = extremes(&plain).first().copied();
        now.removed = old.zip(now.smallest()).map(|(old, new)| new.less(&old));
        now.narrower = narrower(first, &now.bore);
    }
    now
}

/// By how much one place reads narrower than it did. Places that were read only once are not compared, and readings whose
/// uncertainties still meet contradict nothing: of many places one reads a little narrower by chance.
pub(super) fn narrower(before: &[Placed], now: &[Placed]) -> Option<Length> {
    now.iter().find_map(|now| {
        let here = before.iter().filter(|before| same_place(before, now));
        let here: Vec<Reading> = here.map(|p| p.reading).collect();
        let least = extremes(&here).first().copied()?;
        let by = least.value() - now.reading.value();
        let both = least.expanded_uncertainty() + now.reading.expanded_uncertainty();
        settled_below(both, by).then_some(by)
    })
}

/// Whether two readings were taken at one place.
fn same_place(a: &Placed, b: &Placed) -> bool {
    let depth = a.depth.zip(b.depth);
    let angle = a.angle.zip(b.angle);
    (a.depth.is_some(), a.angle.is_some()) == (b.depth.is_some(), b.angle.is_some())
        && depth.is_none_or(|(a, b)| settled_cmp(a, b).is_eq())
        && angle.is_none_or(|(a, b)| (a - b).abs() < deg(0.5))
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
