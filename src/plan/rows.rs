//! The work of each operation at each kind of place, as rows: tool, pilot, start, turning, passes, checks, proof.
//!
//! Everything here is common practice of the trade: no source prints it.

use super::answer::Operation;
use crate::standard::Place;

/// Kinds of places that are worked in the same way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum PlaceKind {
    SeatTube,
    PressShell,
    ShellThread,
    ShellFace,
    HeadSeat,
    HeadFace,
    CrownSeat,
    Thread,
    Mount,
    Other,
}

impl PlaceKind {
    pub(super) const fn of(place: &Place) -> Self {
        match place {
            Place::SeatTube | Place::Seatpost => Self::SeatTube,
            Place::Shell => Self::PressShell,
            Place::ShellSide(_) => Self::ShellThread,
            Place::ShellFace(_) => Self::ShellFace,
            Place::HeadTube(_) => Self::HeadSeat,
            Place::HeadFace(_) => Self::HeadFace,
            Place::Crown => Self::CrownSeat,
            Place::Axle(_)
            | Place::Hanger(_)
            | Place::Boss(_)
            | Place::Pedal(_)
            | Place::Steerer
            | Place::Thread => Self::Thread,
            Place::Brake(_) => Self::Mount,
            Place::SeatTubeSlot | Place::Dropout(..) | Place::BrakeUnderside(_) | Place::Iscg => {
                Self::Other
            }
        }
    }
}

/// How the work is done.
#[derive(Debug, Clone, Copy)]
pub(super) struct WorkRow {
    pub operation: Operation,
    pub kind: PlaceKind,
    /// What guides the cutter.
    pub pilot: &'static str,
    /// The end at which the tool starts; its turning is told as seen from there.
    pub start: &'static str,
    /// How it is turned on the way.
    pub turning: &'static str,
    pub passes: &'static str,
    pub checks: &'static [&'static str],
    pub proof: &'static str,
}

/// A reamer or facing cutter.
const ONE_WAY: &str =
    "only its own way, on the way out too; tension comes off before the tool does";
/// A tap or chaser.
const BREAK_CHIP: &str =
    "half a turn back after each turn or less, to break the chip; unscrewed to come out";
const ONE_BORE_PASS: &str = "one slow pass the whole depth; another only after measuring";
const ONE_FACE_PASS: &str = "one, of the least depth; a second only after a new survey";
const ONE_THREAD_PASS: &str = "one, cleared as often as it tightens";
const INK_RING: &str = "ink the face: bright all round the flat; paint in a chamfer below may stay";
const HEIGHTS_AGAIN: &str =
    "heights again at the same places and from the same datum, into the sheet as a pass";
const GO: &str = "GO gauge or a known good part: screws through by hand";
const NOT_GO: &str = "NOT GO gauge: stops within two turns from either end";

const fn row(
    operation: Operation,
    kind: PlaceKind,
    (pilot, start): (&'static str, &'static str),
    (turning, passes): (&'static str, &'static str),
    checks: &'static [&'static str],
    proof: &'static str,
) -> WorkRow {
    WorkRow {
        operation,
        kind,
        pilot,
        start,
        turning,
        passes,
        checks,
        proof,
    }
}

/// Every row. A row for an operation that is not in the list below is a row without anything to say.
static ROWS: &[WorkRow] = &[
    row(
        Operation::Ream,
        PlaceKind::SeatTube,
        (
            "the bore itself: a reamer follows the hole, it does not straighten it",
            "the top of the tube",
        ),
        (ONE_WAY, ONE_BORE_PASS),
        &[
            "bore again at two depths and two directions, into the sheet as a pass",
            "entry and slot ends rounded by hand, all chips out",
        ],
        "the post slides in by hand with a light drag over the whole insertion and does not rock",
    ),
    row(
        Operation::Clean,
        PlaceKind::SeatTube,
        ("", ""),
        ("", ""),
        &[
            "bore again at two depths and two directions, into the sheet as a pass",
            "the post enters by hand, without force",
        ],
        "the post slides to its minimum mark by hand",
    ),
    row(
        Operation::Ream,
        PlaceKind::PressShell,
        (
            "both bores in one set-up, so that they stay in line",
            "the drive side",
        ),
        (ONE_WAY, ONE_BORE_PASS),
        &["bore again in two directions at both ends, into the sheet as a pass"],
        "the cup goes in square with steady force and the bearing still turns freely",
    ),
    row(
        Operation::Clean,
        PlaceKind::PressShell,
        ("", ""),
        ("", ""),
        &["bore again in two directions at each end, into the sheet as a pass"],
        "the part goes in square and the bearing turns freely and does not rock",
    ),
    row(
        Operation::Chase,
        PlaceKind::ShellThread,
        (
            "the thread itself, started by hand from its good end",
            "outside of this side",
        ),
        (BREAK_CHIP, ONE_THREAD_PASS),
        &[GO, NOT_GO],
        "a cup screws in by hand to its shoulder and does not rock",
    ),
    row(
        Operation::Face,
        PlaceKind::ShellFace,
        ("", "outside of this side"),
        (ONE_WAY, ONE_FACE_PASS),
        &[INK_RING, HEIGHTS_AGAIN],
        "the cup sits on metal all round and does not rock",
    ),
    row(
        Operation::Ream,
        PlaceKind::HeadSeat,
        (
            "the opposite bore, in which it is centred, so that both stay in line",
            "the open end",
        ),
        (ONE_WAY, ONE_BORE_PASS),
        &[
            "bore again in two directions, into the sheet as a pass: a reamed tube springs back oval",
            "entry chamfered lightly, chips and oil out",
        ],
        "the cup presses in square with steady force and sits on its shoulder all round",
    ),
    row(
        Operation::Deepen,
        PlaceKind::HeadSeat,
        ("the bore itself", "the open end"),
        (ONE_WAY, ONE_BORE_PASS),
        &["depth again all round; the cup's insertion again"],
        "the cup sits on its shoulder all round",
    ),
    row(
        Operation::Clean,
        PlaceKind::HeadSeat,
        ("", ""),
        ("", ""),
        &["bore again in two directions, into the sheet as a pass"],
        "the part goes in square and does not rock under a finger on any side",
    ),
    row(
        Operation::Face,
        PlaceKind::HeadFace,
        (
            "the bore just finished, with the pilot centred in the opposite bore",
            "the open end",
        ),
        (ONE_WAY, ONE_FACE_PASS),
        &[INK_RING, HEIGHTS_AGAIN],
        "the cup sits on its shoulder all round, no light under it",
    ),
    row(
        Operation::Clean,
        PlaceKind::CrownSeat,
        ("", ""),
        ("", ""),
        &[
            "diameter of the seat again in two directions, bare, into the sheet",
            "bore of the race",
        ],
        "the race seats on its shoulder all round with the setting tool",
    ),
    row(
        Operation::Chase,
        PlaceKind::Thread,
        (
            "the thread itself, started by hand from its good end",
            "its good end",
        ),
        (BREAK_CHIP, ONE_THREAD_PASS),
        &[GO, NOT_GO],
        "its screw goes in by hand over the whole thread",
    ),
    row(
        Operation::Ream,
        PlaceKind::Thread,
        (
            "the hole itself, square to its face",
            "the end at which the part enters",
        ),
        (ONE_WAY, ONE_BORE_PASS),
        &["the hole again, into the sheet as a pass, before the tap goes in"],
        "a plug of the least hole goes through, one of the greatest does not enter",
    ),
    row(
        Operation::Ream,
        PlaceKind::ShellThread,
        (
            "both bores in one set-up, so that both threads stay in line",
            "outside of this side",
        ),
        (ONE_WAY, ONE_BORE_PASS),
        &["the hole again, into the sheet as a pass, before the tap goes in"],
        "a plug of the least hole goes through, one of the greatest does not enter",
    ),
    row(
        Operation::Tap,
        PlaceKind::ShellThread,
        (
            "both bores in one set-up, so that both threads stay in line",
            "outside of this side",
        ),
        (BREAK_CHIP, ONE_THREAD_PASS),
        &[GO, NOT_GO],
        "a cup screws in by hand to its shoulder and does not rock",
    ),
    row(
        Operation::Tap,
        PlaceKind::Thread,
        (
            "the hole, square to its face",
            "the end at which the part enters",
        ),
        (BREAK_CHIP, ONE_THREAD_PASS),
        &[GO, NOT_GO],
        "its screw goes in by hand over the whole thread",
    ),
    row(
        Operation::Face,
        PlaceKind::Mount,
        (
            "the axle, in its sound thread or hole, clamped as it will be ridden",
            "the outer face of the mount",
        ),
        (ONE_WAY, ONE_FACE_PASS),
        &[
            "ink the faces: bright at both ends of each; heights again into the sheet as a pass",
            "caliper at 90 degrees to the rotor, pads even",
        ],
        "the caliper bolts down without rocking, the wheel turns free, the brake holds at walking pace",
    ),
];

/// How an operation is done at a place; `None` where nothing is to be said of it.
pub(super) fn find(operation: Operation, place: &Place) -> Option<&'static WorkRow> {
    let kind = PlaceKind::of(place);
    let at = |kind: PlaceKind| {
        ROWS.iter()
            .find(move |row| row.operation == operation && row.kind == kind)
    };
    at(kind)
}
