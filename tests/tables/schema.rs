//! Which fields the rows of each family have. The names and kinds must match the row types in `src/`.

/// The unit of a figure.
#[derive(Clone, Copy, PartialEq)]
pub enum Unit {
    Length,
    Angle,
    Torque,
    Pressure,
    Ratio,
    Expansion,
}

/// What stands in a field.
#[derive(Clone, Copy)]
pub enum Kind {
    /// Plain text.
    Text,
    /// A list of plain texts.
    Texts,
    /// A small whole number.
    Count,
    /// A plain length, no figure.
    Length,
    /// A word of this enum.
    Word(&'static str),
    /// A list of words of this enum.
    Words(&'static str),
    /// A figure.
    Figure(Unit),
    /// A list of figures.
    Figures(Unit),
    /// A fact with a word of this enum.
    Fact(&'static str),
    /// A fact with free text.
    FactText,
    /// A thread.
    Thread,
    /// A list of threads.
    Threads,
    /// A list of nested rows of this type.
    Nested(&'static str, &'static [Field]),
}

/// A field of a row.
pub struct Field {
    pub name: &'static str,
    pub kind: Kind,
    /// Whether the row type holds it as `Option`, or text may be left out.
    pub optional: bool,
}

const fn must(name: &'static str, kind: Kind) -> Field {
    Field {
        name,
        kind,
        optional: false,
    }
}
const fn may(name: &'static str, kind: Kind) -> Field {
    Field {
        name,
        kind,
        optional: true,
    }
}

/// A family: one array of one file, one static table.
pub struct Family {
    pub file: &'static str,
    pub array: &'static str,
    pub row_type: &'static str,
    pub table: &'static str,
    pub fields: &'static [Field],
}

use Kind::{
    Count, Fact, FactText, Figure, Figures, Nested, Text, Texts, Thread, Threads, Word, Words,
};
use Unit::{Angle, Expansion, Length, Pressure, Ratio, Torque};

static CONFUSION: [Field; 2] = [must("code", Text), must("why", Text)];
static HALF_WIDTHS: [Field; 3] = [
    must("width", Kind::Length),
    must("drive", Figure(Length)),
    must("non_drive", Figure(Length)),
];
static ERROR_LIMIT: [Field; 3] = [
    must("over", Kind::Length),
    must("up_to", Kind::Length),
    must("error", Figure(Length)),
];

macro_rules! family {
    ($file:literal, $array:literal, $row:literal, $table:literal, [$($field:expr),* $(,)?]) => {
        Family { file: $file, array: $array, row_type: $row, table: $table, fields: &[must("code", Text), $($field),*, may("note", Text)] }
    };
}

const CONFUSED: Field = may("confused_with", Nested("Confusion", &CONFUSION));

pub static FAMILIES: [Family; 29] = [
    family!(
        "shells",
        "shell",
        "Shell",
        "SHELLS",
        [
            must("name", Text),
            may("aliases", Texts),
            may("thread", Thread),
            may("hand_drive", Fact("Hand")),
            may("hand_non_drive", Fact("Hand")),
            may("pitch_diameter", Figure(Length)),
            may("minor_diameter", Figure(Length)),
            may("bore", Figure(Length)),
            may("bore_depth", Figure(Length)),
            may("widths", Figures(Length)),
            may("half_widths", Nested("HalfWidths", &HALF_WIDTHS)),
            must("located_by", Fact("LocatedBy")),
            may("fit", Fact("Hold")),
            may("spindles", Figures(Length)),
            may("thread_depth", Figure(Length)),
            may("status", Fact("Status")),
            CONFUSED,
        ]
    ),
    family!(
        "shells",
        "shell_window",
        "ShellWindow",
        "SHELL_WINDOWS",
        [
            must("shell", Text),
            must("nominal", Figure(Length)),
            must("window", Figure(Length)),
            must("owner", Text),
        ]
    ),
    family!(
        "shells",
        "bore_window",
        "BoreWindow",
        "BORE_WINDOWS",
        [
            must("shell", Text),
            must("window", Figure(Length)),
            must("owner", Text),
        ]
    ),
    family!(
        "shells",
        "press_part",
        "PressPart",
        "PRESS_PARTS",
        [
            must("joint", Text),
            must("part", Text),
            must("diameter", Figure(Length)),
            must("owner", Text),
        ]
    ),
    family!(
        "shells",
        "spacer_rule",
        "SpacerRule",
        "SPACER_RULES",
        [
            must("shell", Text),
            must("width", Figure(Length)),
            must("stack", Figure(Length)),
            must("spacers", Text),
            must("owner", Text),
        ]
    ),
    family!(
        "head_tube",
        "head_seat",
        "HeadSeat",
        "HEAD_SEATS",
        [
            must("name", Text),
            must("kind", Word("SeatKind")),
            may("fit", Fact("Hold")),
            must("bore", Figure(Length)),
            may("bore_depth", Figure(Length)),
            may("clear_below", Figure(Length)),
            may("outside_diameter", Figure(Length)),
            may("seat_angle", Figure(Angle)),
            may("bearing_outside", Figure(Length)),
            may("cup", Figure(Length)),
            may("same_bore_as", Texts),
            CONFUSED,
        ]
    ),
    family!(
        "head_tube",
        "headset_bearing",
        "HeadsetBearing",
        "HEADSET_BEARINGS",
        [
            must("name", Text),
            must("bore", Figure(Length)),
            must("outside", Figure(Length)),
            must("height", Figure(Length)),
            must("inner_angle", Figure(Angle)),
            must("outer_angle", Figure(Angle)),
            must("seat", Text),
        ]
    ),
    family!(
        "head_tube",
        "facing_rule",
        "FacingRule",
        "FACING_RULES",
        [must("what", Text), must("window", Figure(Length))]
    ),
    family!(
        "head_tube",
        "fit_window",
        "FitWindow",
        "FIT_WINDOWS",
        [
            must("joint", Word("Joint")),
            may("sizes", Figure(Length)),
            must("speaks_of", Word("SpeaksOf")),
            must("owner", Text),
            must("sense", Word("Sense")),
            must("window", Figure(Length)),
        ]
    ),
    family!(
        "crown",
        "crown_seat",
        "CrownSeat",
        "CROWN_SEATS",
        [
            must("shis_code", Text),
            must("name", Text),
            must("seat", Figure(Length)),
            may("race_bore", Figure(Length)),
            may("seat_height", Figure(Length)),
            must("steerer", Text),
        ]
    ),
    family!(
        "crown",
        "steerer",
        "Steerer",
        "STEERERS",
        [
            must("name", Text),
            must("upper_diameter", Figure(Length)),
            may("lower_diameter", Figure(Length)),
            may("inside_diameter", Figure(Length)),
            may("quill", Figure(Length)),
            may("stem_clamp", Figure(Length)),
            may("thread", Thread),
            may("crown_seat", Texts),
        ]
    ),
    family!(
        "crown",
        "steerer_rule",
        "SteererRule",
        "STEERER_RULES",
        [must("what", Text), must("window", Figure(Length))]
    ),
    family!(
        "seatposts",
        "seatpost",
        "Seatpost",
        "SEATPOSTS",
        [must("diameter", Figure(Length))]
    ),
    family!(
        "seatposts",
        "seat_tube",
        "SeatTube",
        "SEAT_TUBES",
        [
            must("outside", Figure(Length)),
            must("wall", Figure(Length)),
            must("post", Figure(Length)),
        ]
    ),
    family!(
        "seatposts",
        "clamp",
        "SeatClamp",
        "SEAT_CLAMPS",
        [
            must("tube_outside", Figure(Length)),
            may("post", Figure(Length))
        ]
    ),
    family!(
        "seatposts",
        "insertion_rule",
        "InsertionRule",
        "INSERTION_RULES",
        [
            must("what", Text),
            must("counts", Word("DepthCounts")),
            may("depth", Figure(Length)),
            may("times_diameter", Figure(Ratio)),
        ]
    ),
    family!(
        "axles",
        "axle",
        "Axle",
        "AXLES",
        [
            must("name", Text),
            must("end", Fact("End")),
            must("over_locknut", Figure(Length)),
            may("inner_faces", Figure(Length)),
            may("axle_diameter", Figure(Length)),
            may("slot", Figure(Length)),
            may("threads", Threads),
            may("thread_length", Figure(Length)),
        ]
    ),
    family!(
        "axles",
        "thread_use",
        "ThreadUse",
        "THREAD_USES",
        [
            must("name", Text),
            must("place", Word("ThreadedPart")),
            must("thread", Thread),
            may("hand", Fact("Hand")),
            may("hand_left", Fact("Hand")),
            may("hand_right", Fact("Hand")),
            may("pitch_diameter", Figure(Length)),
            may("minor_diameter", Figure(Length)),
            may("internal_minor", Figure(Length)),
            may("tolerance_class", FactText),
            CONFUSED,
        ]
    ),
    family!(
        "axles",
        "torque",
        "TorqueFigure",
        "TORQUES",
        [
            must("part", Text),
            must("window", Figure(Torque)),
            must("owner", Text)
        ]
    ),
    family!(
        "brakes",
        "brake_mount",
        "BrakeMount",
        "BRAKE_MOUNTS",
        [
            must("name", Text),
            must("end", Word("End")),
            may("bolt_spacing", Figure(Length)),
            may("bolt", Thread),
            may("plane_height", Figure(Length)),
            may("first_bolt", Figure(Length)),
            may("rotor", Figure(Length)),
        ]
    ),
    family!(
        "brakes",
        "brake_figure",
        "BrakeFigure",
        "BRAKE_FIGURES",
        [
            must("system", Word("BrakeSystem")),
            must("end", Word("End")),
            must("what", Text),
            may("figure", Figure(Length)),
            may("angle", Figure(Angle)),
        ]
    ),
    family!(
        "brakes",
        "rotor",
        "Rotor",
        "ROTORS",
        [
            must("owner", Text),
            may("new_thickness", Figure(Length)),
            may("minimum_thickness", Figure(Length)),
        ]
    ),
    family!(
        "brakes",
        "flat_mount_bolt",
        "FlatMountBolt",
        "FLAT_MOUNT_BOLTS",
        [
            must("frame_thickness", Figure(Length)),
            must("bolt_length", Figure(Length)),
        ]
    ),
    family!(
        "bearings",
        "bearing",
        "Bearing",
        "BEARINGS",
        [
            may("aliases", Texts),
            must("bore", Figure(Length)),
            must("outside", Figure(Length)),
            must("width", Figure(Length)),
        ]
    ),
    family!(
        "materials",
        "material",
        "Material",
        "MATERIALS",
        [
            must("name", Text),
            must("kind", Word("MaterialKind")),
            must("youngs_modulus", Figure(Pressure)),
            may("poisson", Figure(Ratio)),
            must("strength", Figure(Pressure)),
            may("expansion", Figure(Expansion)),
        ]
    ),
    family!(
        "materials",
        "friction",
        "Friction",
        "FRICTIONS",
        [
            must("pair", Text),
            must("condition", Text),
            must("coefficient", Figure(Ratio))
        ]
    ),
    family!(
        "cutting",
        "cutting_rule",
        "CuttingRule",
        "CUTTING_RULES",
        [
            must("about", Word("Cutting")),
            must("what", Text),
            must("window", Figure(Length))
        ]
    ),
    family!(
        "instruments",
        "instrument",
        "Instrument",
        "INSTRUMENTS",
        [
            must("name", Text),
            must("measures", Words("Measures")),
            must("limits", Nested("ErrorLimit", &ERROR_LIMIT)),
            may("resolution", Figure(Length)),
            may("repeatability", Figure(Length)),
            must("cost", Count),
        ]
    ),
    family!(
        "work",
        "work",
        "WorkRow",
        "WORKS",
        [
            must("operation", Word("Operation")),
            must("place", Word("Workplace")),
            may("pilot", Text),
            may("start", Text),
            may("passes", Text),
            must("checks", Texts),
            must("proof", Text),
            must("basis", Word("Grade")),
        ]
    ),
];
