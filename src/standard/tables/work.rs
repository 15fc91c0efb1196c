// @generated from data/work.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Text; 2] = [
    Cow::Borrowed("bore again at two depths, two directions"),
    Cow::Borrowed("round entry and slot ends by hand, chips out"),
];
static L1: [Text; 2] = [
    Cow::Borrowed("bore again at two depths, two directions"),
    Cow::Borrowed("the post enters by hand, without force"),
];
static L2: [Text; 1] = [Cow::Borrowed("bore again in two directions at both ends")];
static L3: [Text; 1] = [Cow::Borrowed("bore again in two directions at each end")];
static L4: [Text; 2] = [
    Cow::Borrowed("GO or a known good part screws through by hand"),
    Cow::Borrowed("NOT GO stops within two turns from either end"),
];
static L5: [Text; 2] = [
    Cow::Borrowed("ink: bright all round the flat, paint in the chamfer may stay"),
    Cow::Borrowed("heights again at the same places, same datum"),
];
static L6: [Text; 2] = [
    Cow::Borrowed("bore again in two directions; a reamed tube springs back oval"),
    Cow::Borrowed("entry chamfered lightly, chips and oil out"),
];
static L7: [Text; 1] = [Cow::Borrowed(
    "depth again all round; the cup's insertion again",
)];
static L8: [Text; 1] = [Cow::Borrowed("bore again in two directions")];
static L9: [Text; 2] = [
    Cow::Borrowed("diameter of the seat again in two directions, bare"),
    Cow::Borrowed("bore of the race"),
];
static L10: [Text; 1] = [Cow::Borrowed("the hole again, before the tap goes in")];
static L11: [Text; 2] = [
    Cow::Borrowed("ink: bright at both ends of each face; heights again"),
    Cow::Borrowed("caliper at 90 degrees to the rotor, pads even"),
];

pub(crate) static WORKS: [WorkRow; 17] = [
    WorkRow {
        code: Cow::Borrowed("ream_seat_tube"),
        operation: Operation::Ream,
        place: Workplace::SeatTube,
        pilot: Cow::Borrowed(
            "the bore itself: a reamer follows the hole, it does not straighten it",
        ),
        start: Cow::Borrowed("the top of the tube"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L0),
        proof: Cow::Borrowed("the post slides in by hand with a light drag and does not rock"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("clean_seat_tube"),
        operation: Operation::Clean,
        place: Workplace::SeatTube,
        pilot: Cow::Borrowed(""),
        start: Cow::Borrowed(""),
        passes: Cow::Borrowed(""),
        checks: Cow::Borrowed(&L1),
        proof: Cow::Borrowed("the post slides to its minimum mark by hand"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("ream_press_shell"),
        operation: Operation::Ream,
        place: Workplace::PressShell,
        pilot: Cow::Borrowed("both bores in one set-up, so that they stay in line"),
        start: Cow::Borrowed("the drive side"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L2),
        proof: Cow::Borrowed(
            "the cup goes in square with steady force and the bearing still turns freely",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("clean_press_shell"),
        operation: Operation::Clean,
        place: Workplace::PressShell,
        pilot: Cow::Borrowed(""),
        start: Cow::Borrowed(""),
        passes: Cow::Borrowed(""),
        checks: Cow::Borrowed(&L3),
        proof: Cow::Borrowed(
            "the part goes in square and the bearing turns freely and does not rock",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("chase_shell_thread"),
        operation: Operation::Chase,
        place: Workplace::ShellThread,
        pilot: Cow::Borrowed("the thread itself, started by hand from its good end"),
        start: Cow::Borrowed("this side"),
        passes: Cow::Borrowed("one pass, cleared as often as it tightens"),
        checks: Cow::Borrowed(&L4),
        proof: Cow::Borrowed("a cup screws in by hand to its shoulder and does not rock"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("face_shell_face"),
        operation: Operation::Face,
        place: Workplace::ShellFace,
        pilot: Cow::Borrowed(""),
        start: Cow::Borrowed("this side"),
        passes: Cow::Borrowed("one pass from first touch; another only after new heights"),
        checks: Cow::Borrowed(&L5),
        proof: Cow::Borrowed("the cup sits on metal all round and does not rock"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("ream_head_seat"),
        operation: Operation::Ream,
        place: Workplace::HeadSeat,
        pilot: Cow::Borrowed(
            "the opposite bore, in which it is centred, so that both stay in line",
        ),
        start: Cow::Borrowed("the open end"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L6),
        proof: Cow::Borrowed(
            "the cup presses in square with steady force and sits on its shoulder all round",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("deepen_head_seat"),
        operation: Operation::Deepen,
        place: Workplace::HeadSeat,
        pilot: Cow::Borrowed("the bore itself"),
        start: Cow::Borrowed("the open end"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L7),
        proof: Cow::Borrowed("the cup sits on its shoulder all round"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("clean_head_seat"),
        operation: Operation::Clean,
        place: Workplace::HeadSeat,
        pilot: Cow::Borrowed(""),
        start: Cow::Borrowed(""),
        passes: Cow::Borrowed(""),
        checks: Cow::Borrowed(&L8),
        proof: Cow::Borrowed("the part goes in square and does not rock under a finger"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("face_head_face"),
        operation: Operation::Face,
        place: Workplace::HeadFace,
        pilot: Cow::Borrowed("the bore just finished, with the pilot centred in the opposite bore"),
        start: Cow::Borrowed("the open end"),
        passes: Cow::Borrowed("one pass from first touch; another only after new heights"),
        checks: Cow::Borrowed(&L5),
        proof: Cow::Borrowed("the cup sits on its shoulder all round, no light under it"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("clean_crown_seat"),
        operation: Operation::Clean,
        place: Workplace::CrownSeat,
        pilot: Cow::Borrowed(""),
        start: Cow::Borrowed(""),
        passes: Cow::Borrowed(""),
        checks: Cow::Borrowed(&L9),
        proof: Cow::Borrowed("the race seats on its shoulder all round with the setting tool"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("chase_thread"),
        operation: Operation::Chase,
        place: Workplace::Thread,
        pilot: Cow::Borrowed("the thread itself, started by hand from its good end"),
        start: Cow::Borrowed("its good end"),
        passes: Cow::Borrowed("one pass, cleared as often as it tightens"),
        checks: Cow::Borrowed(&L4),
        proof: Cow::Borrowed("its screw goes in by hand over the whole thread"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("ream_thread"),
        operation: Operation::Ream,
        place: Workplace::Thread,
        pilot: Cow::Borrowed("the hole itself, square to its face"),
        start: Cow::Borrowed("the end at which the part enters"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L10),
        proof: Cow::Borrowed(
            "a plug of the least hole goes through, one of the greatest does not enter",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("ream_shell_thread"),
        operation: Operation::Ream,
        place: Workplace::ShellThread,
        pilot: Cow::Borrowed("both bores in one set-up, so that both threads stay in line"),
        start: Cow::Borrowed("this side"),
        passes: Cow::Borrowed("one slow pass; another only after measuring"),
        checks: Cow::Borrowed(&L10),
        proof: Cow::Borrowed(
            "a plug of the least hole goes through, one of the greatest does not enter",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("tap_shell_thread"),
        operation: Operation::Tap,
        place: Workplace::ShellThread,
        pilot: Cow::Borrowed("both bores in one set-up, so that both threads stay in line"),
        start: Cow::Borrowed("this side"),
        passes: Cow::Borrowed("one pass, cleared as often as it tightens"),
        checks: Cow::Borrowed(&L4),
        proof: Cow::Borrowed("a cup screws in by hand to its shoulder and does not rock"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("tap_thread"),
        operation: Operation::Tap,
        place: Workplace::Thread,
        pilot: Cow::Borrowed("the hole, square to its face"),
        start: Cow::Borrowed("the end at which the part enters"),
        passes: Cow::Borrowed("one pass, cleared as often as it tightens"),
        checks: Cow::Borrowed(&L4),
        proof: Cow::Borrowed("its screw goes in by hand over the whole thread"),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
    WorkRow {
        code: Cow::Borrowed("face_mount"),
        operation: Operation::Face,
        place: Workplace::Mount,
        pilot: Cow::Borrowed("the axle, in its sound thread or hole, clamped as it will be ridden"),
        start: Cow::Borrowed("the outer face of the mount"),
        passes: Cow::Borrowed("one pass from first touch; another only after new heights"),
        checks: Cow::Borrowed(&L11),
        proof: Cow::Borrowed(
            "the caliper bolts down without rocking, wheel free, brake holds at walking pace",
        ),
        basis: Grade::CommonPractice,
        note: Cow::Borrowed(""),
    },
];
