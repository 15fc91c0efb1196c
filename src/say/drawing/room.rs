//! Room for labels: each goes to the first spot where it touches no other label and no mark.

use alloc::string::String;
use alloc::vec::Vec;

use super::page::{Page, letters};

/// A point on paper, x to the right and y down, in millimetres.
pub(super) type Spot = (f64, f64);

/// A rectangle on paper.
#[derive(Debug, Clone, Copy)]
pub(super) struct Area {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Area {
    pub(super) const fn around((x, y): Spot, half_width: f64, half_height: f64) -> Self {
        Self {
            left: x - half_width,
            top: y - half_height,
            right: x + half_width,
            bottom: y + half_height,
        }
    }
    fn meets(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }
    fn holds(&self, at: Spot) -> bool {
        self.meets(&Self::around(at, 1e-6, 1e-6))
    }
}

#[derive(Clone)]
struct Label {
    middle: Spot,
    size: f64,
    words: String,
    /// A thin line to the mark, where the label does not stand beside it.
    leader: Option<(Spot, Spot)>,
}

/// The figure of a drawing about its own middle, as far as it is taken.
#[derive(Clone)]
pub(super) struct Room {
    /// Marks, labels and their leaders.
    taken: Vec<Area>,
    /// Lines that a leader may cross and a label may not.
    lines: Vec<Area>,
    labels: Vec<Label>,
    /// What a label must stay within.
    within: Area,
}

/// White about a label.
const GAP: f64 = 0.6;

impl Room {
    pub(super) const fn new(within: Area) -> Self {
        Self {
            taken: Vec::new(),
            lines: Vec::new(),
            labels: Vec::new(),
            within,
        }
    }
    pub(super) fn take(&mut self, area: Area) {
        self.taken.push(area);
    }
    pub(super) fn line(&mut self, area: Area) {
        self.lines.push(area);
    }

    /// What a label takes there, where nothing is in its way.
    fn free(&self, middle: Spot, size: f64, words: &str) -> Option<Area> {
        let area = Area::around(middle, half_width(words, size) + GAP, size / 2.0 + GAP);
        let on_paper = area.left >= self.within.left
            && area.right <= self.within.right
            && area.top >= self.within.top
            && area.bottom <= self.within.bottom;
        let mut others = self.taken.iter().chain(&self.lines);
        (on_paper && !others.any(|other| other.meets(&area))).then_some(area)
    }

    pub(super) fn is_free(&self, middle: Spot, size: f64, words: &str) -> bool {
        self.free(middle, size, words).is_some()
    }

    /// Sets a label at the first of these spots that is free, with a leader where its mark is not beside it. `false` where
    /// none is.
    pub(super) fn label(
        &mut self,
        mark: Option<Spot>,
        mut spots: impl Iterator<Item = Spot>,
        size: f64,
        words: &str,
    ) -> bool {
        let free = |middle: Spot| {
            let area = self.free(middle, size, words)?;
            let leader = mark.and_then(|mark| leader(mark, &area));
            let crossed = |(from, to): (Spot, Spot)| {
                let mut on = steps(from, to);
                on.any(|at| {
                    self.taken
                        .iter()
                        .any(|t| t.holds(at) && !mark.is_some_and(|m| t.holds(m)))
                })
            };
            (!leader.is_some_and(crossed)).then_some((middle, area, leader))
        };
        let Some((middle, area, leader)) = spots.find_map(free) else {
            return false;
        };
        self.taken.push(area);
        if let Some((from, to)) = leader {
            let on = steps(from, to).map(|at| Area::around(at, 0.5, 0.5));
            self.taken.extend(on);
        }
        self.labels.push(Label {
            middle,
            size,
            words: words.into(),
            leader,
        });
        true
    }

    /// The highest and the lowest line of what is taken.
    pub(super) fn reach(&self) -> (f64, f64) {
        let all = self.taken.iter().chain(&self.lines);
        all.fold((0.0, 0.0), |(top, bottom), area| {
            (f64::min(top, area.top), f64::max(bottom, area.bottom))
        })
    }

    pub(super) fn draw(&self, page: &mut Page, (x, y): Spot) {
        for label in &self.labels {
            if let Some((from, to)) = label.leader {
                let style = "stroke=\"black\" stroke-width=\"0.2\"";
                page.line((from.0 + x, from.1 + y), (to.0 + x, to.1 + y), style);
            }
            let base = label.middle.1 + y + 0.3 * label.size;
            page.text(label.middle.0 + x, base, label.size, "middle", &label.words);
        }
    }
}

/// Half the width of a text.
pub(super) fn half_width(words: &str, size: f64) -> f64 {
    letters(words) * 0.3 * size
}

/// From beside the mark to the label, where that is more than a small gap.
fn leader(mark: Spot, label: &Area) -> Option<(Spot, Spot)> {
    const BESIDE: f64 = 2.8;
    let end = (
        mark.0.clamp(label.left, label.right),
        mark.1.clamp(label.top, label.bottom),
    );
    let (dx, dy) = (end.0 - mark.0, end.1 - mark.1);
    let far = libm::hypot(dx, dy);
    let start = (mark.0 + dx / far * BESIDE, mark.1 + dy / far * BESIDE);
    (far > 2.5 * BESIDE).then_some((start, end))
}

/// Points along a line, near enough together that nothing slips between; its end, which lies on the label, left out.
fn steps(from: Spot, to: Spot) -> impl Iterator<Item = Spot> {
    let length = libm::hypot(to.0 - from.0, to.1 - from.1);
    let share = 0.5 / f64::max(length, 0.5);
    (0..400_u16)
        .map(move |step| f64::from(step) * share)
        .take_while(|at| *at < 1.0)
        .map(move |at| (from.0 + (to.0 - from.0) * at, from.1 + (to.1 - from.1) * at))
}
