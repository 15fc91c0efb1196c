//! What a person should know besides the outcome.

use alloc::vec::Vec;

use super::Feature;
use super::answer::{Belief, Identification, Note, Standing};
use super::assume::{PAINT, POST_UNDER};
use super::gather::Seen;
use super::kind::Kind;
use crate::measure::settled_cmp;
use crate::quantity::{mm, to_mm};
use crate::standard::{Row, SeatTube};

/// The notes to an answer that holds everything else.
pub(super) fn notes(
    kind: Kind,
    seen: &Seen<'_>,
    answer: &Identification,
    hand_open: bool,
) -> Vec<Note> {
    let mut notes = Vec::new();
    if hand_open {
        notes.push(Note::HandOpen);
    }
    if answer.believed.len() > 1 {
        let rows = answer
            .believed
            .iter()
            .filter_map(|code| answer.candidate(code));
        let (codes, names) = rows.map(|c| (c.code.clone(), c.name.clone())).unzip();
        notes.push(Note::NameOfSeveral { codes, names });
    }
    for size in seen.sizes().filter(|s| s.derived) {
        notes.push(Note::WorkedOut {
            of: size.feature,
            size: mm(size.x),
            to_ream: kind == Kind::HeadTube && size.feature == Feature::Bore,
        });
    }
    match kind {
        Kind::SeatTube => seat_tube(seen, answer, &mut notes),
        Kind::Seatpost => notes.extend(stamped_low(seen, answer)),
        _ => {}
    }
    notes
}

/// What the outside of a seat tube says: paint, and the wall that a believed post would leave.
fn seat_tube(seen: &Seen<'_>, answer: &Identification, notes: &mut Vec<Note>) {
    let Some(out) = seen.size(Feature::OutsideDiameter) else {
        return;
    };
    let bare = SeatTube::table()
        .iter()
        .filter_map(|row| row.outside.nominal().map(to_mm))
        .filter(|d| {
            let more = out.x - d;
            settled_cmp(mm(more), mm(2.0 * out.u)).is_gt() && more <= PAINT
        })
        .reduce(libm::fmax);
    if let Some(tube) = bare {
        let (outside, bare) = (mm(out.x), mm(tube));
        notes.push(Note::PaintOnTube { outside, bare });
    }
    if answer.belief == Some(Belief::Contradicted)
        && let Some(wall) = seen.size(Feature::Wall)
    {
        let posts = answer.believed.iter().map(|code| crate::decimal(code));
        notes.extend(posts.flatten().map(|post| Note::WallLeft {
            post: mm(post),
            wall: mm((out.x - post) / 2.0),
            read: mm(wall.x),
        }));
    }
}

/// Stamped posts read low.
fn stamped_low(seen: &Seen<'_>, answer: &Identification) -> Option<Note> {
    let size = seen.size(Feature::OutsideDiameter)?;
    answer.outcome.identified()?;
    let larger = answer.candidates.iter().find(|c| {
        matches!(c.standing, Standing::Excluded(_))
            && crate::decimal(&c.code).is_ok_and(|d| (0.0..=POST_UNDER).contains(&(d - size.x)))
    })?;
    let code = larger.code.clone();
    Some(Note::StampedLow { code })
}
