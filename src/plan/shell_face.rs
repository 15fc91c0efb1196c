//! The faces of a shell: what guides the cutter, and what comes off with the width.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Change;
use super::answer::{Operation, State};
use super::face::{self, Facing};
use super::permit::{Identity, Pilot};
use super::sheet::{Coating, Face};
use super::shell::{SIDES, Whole, joint, side_of, side_words};
use super::shell_width::{self, Widths};
use super::site::{Site, covered};
use super::work::PlaceWork;
use crate::evidence::Text;
use crate::standard::{LocatedBy, Place};
use crate::thread::Side;

/// A width that is over its limit is brought back at the faces, or waits for them; where they can do nothing, it is out.
pub(super) fn faced_to_width(shell: &mut PlaceWork, works: &[PlaceWork]) {
    let faces = || {
        works
            .iter()
            .filter(|w| matches!(w.place, Place::ShellFace(_)))
    };
    if faces()
        .flat_map(|w| &w.steps)
        .any(|s| s.operation() == Operation::Face)
    {
        shell.cured_beside = true;
    } else if faces().any(|w| w.state() == State::Open) {
        shell.hold("the width: its faces bring it back, and what they wait for is asked there");
    } else {
        shell.out = true;
        shell.cure(String::from(
            "wider than its unit takes, and nothing is faced: another unit or crank, or the frame maker",
        ));
    }
}

/// Both faces.
pub(super) fn faces(
    site: &Site<'_>,
    whole: &Whole<'_>,
    widths: &Widths,
    threads: &[PlaceWork],
) -> Vec<PlaceWork> {
    let located = whole.row.and_then(|row| row.located_by.value().copied());
    let stays = match located {
        Some(LocatedBy::Groove) => Some(
            "a ring in a groove locates the bearing, so facing moves nothing but the shield gap",
        ),
        Some(LocatedBy::Seat) => {
            Some("a seat inside the bore locates the bearing, so facing moves nothing")
        }
        _ => None,
    };
    let mut works = Vec::new();
    for side in SIDES {
        let here = side_of(whole.sheet, side);
        let coating = here
            .face
            .as_ref()
            .and_then(|f| f.coating)
            .or(here.coating)
            .or(whole.sheet.coating);
        let Some(face) = &here.face else {
            if stays.is_none() && covered(coating) {
                works.push(painted_without_heights(side, &pilot(whole, side, threads)));
            }
            continue;
        };
        if let Some(why) = stays {
            let mut work = face::begin(Place::ShellFace(side), face);
            work.measured = true;
            work.leave(String::from(why));
            works.push(work);
            continue;
        }
        works.push(face::plan(
            site,
            facing(
                site,
                whole,
                widths,
                (side, pilot(whole, side, threads)),
                face,
                coating,
            ),
        ));
    }
    shell_width::parallel(site, whole.sheet, &mut works);
    works
}

/// A painted face of which nothing was read.
fn painted_without_heights(side: Side, pilot: &Pilot) -> PlaceWork {
    let mut work = PlaceWork::new(Place::ShellFace(side));
    // Nothing is surveyed for a cut that nothing guides.
    if let Pilot::Missing(why) = pilot {
        work.hold(format!("the face, for now: {why}"));
        return work;
    }
    work.ask_plain(
        format!("shell.{side}.face.probes"),
        "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
        "the shell is painted and nothing was said of its faces; one side of a face cleans long before the other",
        "dial indicator turned about the pilot",
    );
    work
}

/// What guides the facing tool of a side.
fn pilot(whole: &Whole<'_>, side: Side, threads: &[PlaceWork]) -> Pilot {
    let threaded = whole.size.is_some();
    let left_unsound = |side: Side| {
        threads
            .iter()
            .filter(|w| w.place == Place::ShellSide(side))
            .any(|w| {
                matches!(w.state(), State::Refer | State::Out)
                    || !w.contradictions.is_empty()
                    || w.steps.iter().any(|s| s.operation() == Operation::Refer)
            })
    };
    if threaded && !whole.sides.get(side).guides() {
        Pilot::Missing(
            "the thread that the facing tool pilots on is gone or not cut; its repair comes first",
        )
    } else if threaded && !whole.sides.get(!side).guides() {
        Pilot::Missing(
            "the facing tool is guided through both threads, and the other one is gone or not cut; its repair comes first",
        )
    } else if SIDES.into_iter().any(left_unsound) {
        Pilot::Missing(
            "the facing tool is guided through both threads, and one of them is not made sound here; that is settled first",
        )
    } else {
        Pilot::There
    }
}

fn facing<'a>(
    site: &Site<'a>,
    whole: &Whole<'a>,
    widths: &Widths,
    (side, pilot): (Side, Pilot),
    face: &'a Face,
    coating: Option<Coating>,
) -> Facing<'a> {
    let threaded = whole.size.is_some();
    let moves = match side {
        Side::Drive => "the chainline moves inboard by what comes off",
        Side::NonDrive => "its bearing moves inboard by what comes off; the chainline stays",
    };
    Facing {
        place: Place::ShellFace(side),
        path: format!("shell.{side}.face"),
        what: format!("shell, {}", side_words(side)),
        face,
        joint: joint(site, whole.sheet, side_of(whole.sheet, side)),
        joint_path: "shell",
        coating,
        contradicted: whole.contradicted || whole.identity == Identity::Open,
        cutter: "shell facing cutter, its blades wider than the ring",
        pilot,
        guided: Some(if threaded {
            Text::Owned(format!(
                "the sound thread, {}, held by both sides",
                side_words(side)
            ))
        } else {
            Text::Borrowed("the bore, by a close bush in both sides")
        }),
        square: None,
        limits: widths.first.clone(),
        limits_now: widths.now.clone(),
        besides: widths.excess.clone(),
        changes: Vec::from([
            Change {
                place: Place::Shell,
                what: moves.into(),
                by: None,
            },
            Change {
                place: Place::Shell,
                what:
                    "the shell is narrower: width again, and with it the spacers of the crank maker"
                        .into(),
                by: None,
            },
        ]),
    }
}
