// @generated from data/brakes.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 4] = [
    Citation::from_table(&SOURCES[134], "IS"),
    Citation::from_table(&SOURCES[135], "IS"),
    Citation::from_table(&SOURCES[136], "IS"),
    Citation::from_table(&SOURCES[137], "IS"),
];
static L1: [Citation; 1] = [Citation::from_table(
    &SOURCES[140],
    "parametric mount formula",
)];
static L2: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(74.2)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "second bolt 81.00 mm - first bolt 6.80 mm",
        &L1,
        "the round numbers at 160 speak for 74.2",
    ),
}];
static L3: [Citation; 4] = [
    Citation::from_table(&SOURCES[134], "post mount"),
    Citation::from_table(&SOURCES[135], "post mount"),
    Citation::from_table(&SOURCES[136], "post mount"),
    Citation::from_table(&SOURCES[142], "post mount"),
];
static L4: [Citation; 2] = [
    Citation::from_table(&SOURCES[142], "post mount"),
    Citation::from_table(&SOURCES[143], "post mount"),
];
static L5: [Citation; 3] = [
    Citation::from_table(&SOURCES[135], "early post mount"),
    Citation::from_table(&SOURCES[136], "early post mount"),
    Citation::from_table(&SOURCES[134], "early post mount"),
];
static L6: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(69.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L5, ""),
}];
static L7: [Citation; 3] = [
    Citation::from_table(&SOURCES[142], "native sizes"),
    Citation::from_table(&SOURCES[135], "native sizes"),
    Citation::from_table(&SOURCES[141], "native sizes"),
];
static L8: [Citation; 1] = [Citation::from_table(&SOURCES[144], "bolts")];
static L9: [Citation; 2] = [
    Citation::from_table(&SOURCES[145], "rear"),
    Citation::from_table(&SOURCES[146], "rear"),
];
static L10: [Citation; 1] = [Citation::from_table(&SOURCES[138], "2004 fit sheet")];
static L11: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(10.16)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::SecondHand,
        Grade::SecondHand,
        "",
        &L10,
        "older sheet of the same maker",
    ),
}];
static L12: [Citation; 1] = [Citation::from_table(
    &SOURCES[138],
    "MY13 technical specification, page 11",
)];
static L13: [Citation; 1] = [Citation::from_table(&SOURCES[138], "fit sheet")];
static L14: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(15.27)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L13, ""),
}];
static L15: [Citation; 1] = [Citation::from_table(&SOURCES[139], "rear hub")];
static L16: [Citation; 1] = [Citation::from_table(
    &SOURCES[138],
    "MY13 technical specification, page 5",
)];
static L17: [Citation; 2] = [
    Citation::from_table(&SOURCES[135], "front versus rear"),
    Citation::from_table(&SOURCES[141], "front versus rear"),
];
static L18: [Citation; 1] = [Citation::from_table(&SOURCES[139], "flat mount")];
static L19: [Citation; 1] = [Citation::from_table(&SOURCES[139], "rear thru-axle hubs")];
static L20: [Citation; 1] = [Citation::from_table(&SOURCES[139], "sockets")];
static L21: [Citation; 3] = [
    Citation::from_table(&SOURCES[145], "bolt length rule"),
    Citation::from_table(&SOURCES[146], "bolt length rule"),
    Citation::from_table(&SOURCES[147], "bolt length rule"),
];
static L22: [Citation; 1] = [Citation::from_table(
    &SOURCES[197],
    "ordering of the mounts",
)];
static L23: [Dissent<Span<Angle>>; 1] = [Dissent {
    value: Span {
        nominal: Some(deg(60.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L1,
        "later formula of the same builder for one maker",
    ),
}];
static L24: [Citation; 1] = [Citation::from_table(&SOURCES[197], "path of the mounts")];
static L25: [Citation; 1] = [Citation::from_table(&SOURCES[148], "rotor adapter")];
static L26: [Citation; 2] = [
    Citation::from_table(&SOURCES[149], "rotor bolts"),
    Citation::from_table(&SOURCES[150], "rotor bolts"),
];
static L27: [Citation; 3] = [
    Citation::from_table(&SOURCES[141], "rotor sizes"),
    Citation::from_table(&SOURCES[142], "rotor sizes"),
    Citation::from_table(&SOURCES[151], "rotor sizes"),
];
static L28: [Citation; 1] = [Citation::from_table(&SOURCES[196], "pad clearance")];
static L29: [Citation; 2] = [
    Citation::from_table(&SOURCES[196], "pad wear"),
    Citation::from_table(&SOURCES[206], "pad wear"),
];
static L30: [Citation; 1] = [Citation::from_table(&SOURCES[156], "page 22")];
static L31: [Citation; 1] = [Citation::from_table(
    &SOURCES[164],
    "4.3.9.1, Table 22, page 82",
)];
static L32: [Citation; 1] = [Citation::from_table(&SOURCES[152], "thickness")];
static L33: [Citation; 3] = [
    Citation::from_table(&SOURCES[154], "minimum thickness"),
    Citation::from_table(&SOURCES[153], "minimum thickness"),
    Citation::from_table(&SOURCES[155], "minimum thickness"),
];
static L34: [Citation; 1] = [Citation::from_table(&SOURCES[154], "minimum thickness")];
static L35: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(1.8)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L32, ""),
}];
static L36: [Citation; 1] = [Citation::from_table(&SOURCES[151], "thickness")];
static L37: [Citation; 2] = [
    Citation::from_table(&SOURCES[154], "minimum thickness"),
    Citation::from_table(&SOURCES[155], "minimum thickness"),
];
static L38: [Citation; 1] = [Citation::from_table(&SOURCES[153], "thickness")];
static L39: [Citation; 2] = [
    Citation::from_table(&SOURCES[151], "thickness"),
    Citation::from_table(&SOURCES[152], "thickness"),
];
static L40: [Citation; 2] = [
    Citation::from_table(&SOURCES[156], "page 22"),
    Citation::from_table(&SOURCES[151], "thickness"),
];
static L41: [Citation; 2] = [
    Citation::from_table(&SOURCES[146], "bolt sizes"),
    Citation::from_table(&SOURCES[147], "bolt sizes"),
];
static L42: [Citation; 1] = [Citation::from_table(&SOURCES[146], "bolt sizes")];
static L43: [Citation; 2] = [
    Citation::from_table(&SOURCES[146], "bolt sizes"),
    Citation::from_table(&SOURCES[145], "bolt sizes"),
];

pub(crate) static BRAKE_MOUNTS: [BrakeMount; 11] = [
    BrakeMount {
        code: Cow::Borrowed("is_front"),
        name: Cow::Borrowed("international standard, front"),
        end: End::Front,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(51.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "plain holes, bolts parallel to the axle",
            ),
            &[],
        )),
        bolt: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "plain hole in the tab; the thread is in the caliper or adapter",
            ),
            &[],
        )),
        plane_height: None,
        first_bolt: None,
        rotor: None,
        note: Cow::Borrowed(
            "Current form since 2000. No slots: a lateral error is shimmed or the tab faced.",
        ),
    },
    BrakeMount {
        code: Cow::Borrowed("is_rear"),
        name: Cow::Borrowed("international standard, rear"),
        end: End::Rear,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(51.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "plain holes, bolts parallel to the axle",
            ),
            &[],
        )),
        bolt: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "plain hole in the tab; the thread is in the caliper or adapter",
            ),
            &[],
        )),
        plane_height: None,
        first_bolt: None,
        rotor: None,
        note: Cow::Borrowed(
            "Current form since 2000. No slots: a lateral error is shimmed or the tab faced.",
        ),
    },
    BrakeMount {
        code: Cow::Borrowed("pm"),
        name: Cow::Borrowed("post mount"),
        end: End::Both,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(74.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L3, ""),
            &L2,
        )),
        bolt: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L4,
                "one glossary allows M5 or M6",
            ),
            &[],
        )),
        plane_height: None,
        first_bolt: None,
        rotor: None,
        note: Cow::Borrowed(
            "Plane and bolt positions by native rotor are in the rows pm_140 to pm_203; they follow one US maker's drawing, another large maker's drawing differs.",
        ),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_early"),
        name: Cow::Borrowed("post mount before 2000"),
        end: End::Both,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L5,
                "the sources differ, 68 or 69",
            ),
            &L6,
        )),
        bolt: None,
        plane_height: None,
        first_bolt: None,
        rotor: None,
        note: Cow::Borrowed(""),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_140"),
        name: Cow::Borrowed("post mount, native 140 mm rotor"),
        end: End::Both,
        bolt_spacing: None,
        bolt: None,
        plane_height: Some(Figure::from_table(
            Span {
                nominal: Some(mm(47.24)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a sin 60 deg + b cos 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 140",
                &L1,
                "",
            ),
            &[],
        )),
        first_bolt: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.80)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a cos 60 deg - b sin 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 140",
                &L1,
                "",
            ),
            &[],
        )),
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(140.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "a smaller rotor cannot be fitted; a larger one by adapter",
            ),
            &[],
        )),
        note: Cow::Borrowed("Bolt spacing and thread as in the row pm."),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_160"),
        name: Cow::Borrowed("post mount, native 160 mm rotor"),
        end: End::Both,
        bolt_spacing: None,
        bolt: None,
        plane_height: Some(Figure::from_table(
            Span {
                nominal: Some(mm(55.90)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a sin 60 deg + b cos 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 160",
                &L1,
                "",
            ),
            &[],
        )),
        first_bolt: Some(Figure::from_table(
            Span {
                nominal: Some(mm(6.80)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a cos 60 deg - b sin 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 160",
                &L1,
                "",
            ),
            &[],
        )),
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(160.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "a smaller rotor cannot be fitted; a larger one by adapter",
            ),
            &[],
        )),
        note: Cow::Borrowed("Bolt spacing and thread as in the row pm."),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_180"),
        name: Cow::Borrowed("post mount, native 180 mm rotor"),
        end: End::Both,
        bolt_spacing: None,
        bolt: None,
        plane_height: Some(Figure::from_table(
            Span {
                nominal: Some(mm(64.56)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a sin 60 deg + b cos 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 180",
                &L1,
                "",
            ),
            &[],
        )),
        first_bolt: Some(Figure::from_table(
            Span {
                nominal: Some(mm(11.80)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a cos 60 deg - b sin 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 180",
                &L1,
                "",
            ),
            &[],
        )),
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(180.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "a smaller rotor cannot be fitted; a larger one by adapter",
            ),
            &[],
        )),
        note: Cow::Borrowed("Bolt spacing and thread as in the row pm."),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_200"),
        name: Cow::Borrowed("post mount, native 200 mm rotor"),
        end: End::Both,
        bolt_spacing: None,
        bolt: None,
        plane_height: Some(Figure::from_table(
            Span {
                nominal: Some(mm(73.22)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a sin 60 deg + b cos 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 200",
                &L1,
                "",
            ),
            &[],
        )),
        first_bolt: Some(Figure::from_table(
            Span {
                nominal: Some(mm(16.80)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a cos 60 deg - b sin 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 200",
                &L1,
                "",
            ),
            &[],
        )),
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(200.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "a smaller rotor cannot be fitted; a larger one by adapter",
            ),
            &[],
        )),
        note: Cow::Borrowed("Bolt spacing and thread as in the row pm."),
    },
    BrakeMount {
        code: Cow::Borrowed("pm_203"),
        name: Cow::Borrowed("post mount, native 203 mm rotor"),
        end: End::Both,
        bolt_spacing: None,
        bolt: None,
        plane_height: Some(Figure::from_table(
            Span {
                nominal: Some(mm(74.52)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a sin 60 deg + b cos 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 203",
                &L1,
                "",
            ),
            &[],
        )),
        first_bolt: Some(Figure::from_table(
            Span {
                nominal: Some(mm(17.55)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a cos 60 deg - b sin 60 deg; a = 51.81082 + (R - 160) / 2, b = 22.06103, R = 203",
                &L1,
                "",
            ),
            &[],
        )),
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(203.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "a smaller rotor cannot be fitted; a larger one by adapter",
            ),
            &[],
        )),
        note: Cow::Borrowed("Bolt spacing and thread as in the row pm."),
    },
    BrakeMount {
        code: Cow::Borrowed("fm_front"),
        name: Cow::Borrowed("flat mount, front"),
        end: End::Front,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(70.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "holes in the fork"),
            &[],
        )),
        bolt: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L8,
                "printed M5; the coarse pitch is taken",
            ),
            &[],
        )),
        plane_height: None,
        first_bolt: None,
        rotor: None,
        note: Cow::Borrowed(
            "The front uses a plate, turned over for 140 or 160; the slots are in the caliper or plate.",
        ),
    },
    BrakeMount {
        code: Cow::Borrowed("fm_rear"),
        name: Cow::Borrowed("flat mount, rear"),
        end: End::Rear,
        bolt_spacing: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        bolt: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L8,
                "printed M5; the coarse pitch is taken",
            ),
            &[],
        )),
        plane_height: None,
        first_bolt: None,
        rotor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(140.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L9,
                "140 direct, 160 with a plate",
            ),
            &[],
        )),
        note: Cow::Borrowed(
            "Bolts pass up through the chainstay into blind threads of the caliper; the slots are in the frame. See flat_mount_bolt for the length.",
        ),
    },
];
pub(crate) static BRAKE_FIGURES: [BrakeFigure; 39] = [
    BrakeFigure {
        code: Cow::Borrowed("is_flange_front"),
        system: BrakeSystem::Is,
        end: End::Front,
        what: Cow::Borrowed("disc flange to hub end face"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L12, ""),
            &L11,
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("is_flange_rear"),
        system: BrakeSystem::Is,
        end: End::Rear,
        what: Cow::Borrowed("disc flange to hub end face, 135 mm hub"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(15.25)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L15, ""),
            &L14,
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("is_tab_front"),
        system: BrakeSystem::Is,
        end: End::Front,
        what: Cow::Borrowed("tab face on the wheel side, outboard of the dropout inner face"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(4.0)),
                lower: Some(mm(3.9)),
                upper: Some(mm(4.1)),
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L16,
                "printed 4.0 +/-0.1",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("The only published tolerance on a mount position."),
    },
    BrakeFigure {
        code: Cow::Borrowed("is_front_rear_step"),
        system: BrakeSystem::Is,
        end: End::Both,
        what: Cow::Borrowed(
            "rotor diameter that a rear caliper and adapter gains when moved to the front",
        ),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L17, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("One shop page states the reverse."),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_second_bolt_140"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("second bolt along the plane from the axle, native 140 mm rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(76.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "first bolt 1.80 mm + 74.2 mm",
                &L1,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_second_bolt_160"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("second bolt along the plane from the axle, native 160 mm rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(81.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "first bolt 6.80 mm + 74.2 mm",
                &L1,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_second_bolt_180"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("second bolt along the plane from the axle, native 180 mm rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(86.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "first bolt 11.80 mm + 74.2 mm",
                &L1,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_second_bolt_200"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("second bolt along the plane from the axle, native 200 mm rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(91.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "first bolt 16.80 mm + 74.2 mm",
                &L1,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_second_bolt_203"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("second bolt along the plane from the axle, native 203 mm rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(91.75)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "first bolt 17.55 mm + 74.2 mm",
                &L1,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pm_bolt_length"),
        system: BrakeSystem::Pm,
        end: End::Both,
        what: Cow::Borrowed("bolt length"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(12.0)),
                upper: Some(mm(16.0)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "a weak answer page prints it: indicative only",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_caliper_spacing_front"),
        system: BrakeSystem::Fm,
        end: End::Front,
        what: Cow::Borrowed("bolt spacing of the caliper on its plate"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_slot_reference"),
        system: BrakeSystem::Fm,
        end: End::Both,
        what: Cow::Borrowed("inner rotor face to the slot reference"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.20)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L18, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("A builder's ordering of the maker prints."),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_rotor_hub_end"),
        system: BrakeSystem::Fm,
        end: End::Rear,
        what: Cow::Borrowed("rotor to hub end, 142 and 148 thru-axle"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(18.75)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "15.25 mm + 3.50 mm",
                &L19,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_socket_rear"),
        system: BrakeSystem::Fm,
        end: End::Rear,
        what: Cow::Borrowed("socket depth of many rear thru-axle dropouts"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(3.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L20, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_socket_front"),
        system: BrakeSystem::Fm,
        end: End::Front,
        what: Cow::Borrowed("socket depth of front thru-axle dropouts"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L20, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("fm_bolt_protrusion"),
        system: BrakeSystem::Fm,
        end: End::Rear,
        what: Cow::Borrowed("bolt length less frame thickness"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(13.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L21, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(
            "Too long a bolt bottoms in the blind hole and feels tight without clamping. The protrusion includes an unthreaded tip: engaged thread is less.",
        ),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_angle_is_rear_pm"),
        system: BrakeSystem::Is,
        end: End::Rear,
        what: Cow::Borrowed("angle between the IS rear and post-mount planes"),
        figure: None,
        angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "One builder's own ordering on a 57 deg path; his later formula uses 60 deg. Do not mix.",
        ),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_angle_fm_rear_pm"),
        system: BrakeSystem::Fm,
        end: End::Rear,
        what: Cow::Borrowed("angle between the flat-mount rear and post-mount planes"),
        figure: None,
        angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(17.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        )),
        note: Cow::Borrowed("As above."),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_angle_fm_front_pm"),
        system: BrakeSystem::Fm,
        end: End::Front,
        what: Cow::Borrowed("angle between the flat-mount front and post-mount planes"),
        figure: None,
        angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(16.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        )),
        note: Cow::Borrowed("As above."),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_angle_is_front_pm"),
        system: BrakeSystem::Is,
        end: End::Front,
        what: Cow::Borrowed("angle between the IS front and post-mount planes"),
        figure: None,
        angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(4.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        )),
        note: Cow::Borrowed("As above."),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_path_angle"),
        system: BrakeSystem::Any,
        end: End::Both,
        what: Cow::Borrowed("angle of the path along which the mounts shift with rotor size"),
        figure: None,
        angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(57.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L24, ""),
            &L23,
        )),
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_squareness"),
        system: BrakeSystem::Any,
        end: End::Both,
        what: Cow::Borrowed("squareness of the mount face to the axle"),
        figure: Some(Figure::unknown_in_table(
            "required without a number; no tolerance is published",
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("mount_thread_depth"),
        system: BrakeSystem::Any,
        end: End::Both,
        what: Cow::Borrowed("minimum thread engagement of the caliper bolts"),
        figure: Some(Figure::unknown_in_table("no number is published", &[])),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_bolt_circle"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("six-bolt circle"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(44.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L25, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_bolt_size"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("size of the six rotor bolts (M5)"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L26,
                "M5, T25 drive; one page names M5x10",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_140"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(140.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_160"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(160.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_180"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(180.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_200"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(200.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_203"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(203.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_diameter_220"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("rotor diameter in use"),
        figure: Some(Figure::from_table(
            Span {
                nominal: Some(mm(220.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_runout"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed("run-out limit of a rotor"),
        figure: Some(Figure::unknown_in_table(
            "no bicycle brake maker prints it; car figures must not be reused",
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rotor_runout_must_rub"),
        system: BrakeSystem::Rotor,
        end: End::Both,
        what: Cow::Borrowed(
            "total indicated run-out above which a rotor rubs at the tight pad setting with the caliper centred",
        ),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.4)),
            },
            Evidence::from_table(Grade::Derived, Grade::Published, "2 x 0.2 mm", &L28, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("A consequence of the pad clearance, not a published limit."),
    },
    BrakeFigure {
        code: Cow::Borrowed("pads_clearance"),
        system: BrakeSystem::Pads,
        end: End::Both,
        what: Cow::Borrowed("clearance on each side of the rotor"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.2)),
                upper: Some(mm(0.4)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L28,
                "mechanical caliper",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pads_free_play"),
        system: BrakeSystem::Pads,
        end: End::Both,
        what: Cow::Borrowed("total free play of the rotor between the pads"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.4)),
                upper: Some(mm(0.8)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "2 x 0.2 mm to 2 x 0.4 mm",
                &L28,
                "",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("pads_friction_minimum"),
        system: BrakeSystem::Pads,
        end: End::Both,
        what: Cow::Borrowed("friction material left, at least"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.5)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L29,
                "two documents of one maker",
            ),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("Not the same datum as the pad and plate figure."),
    },
    BrakeFigure {
        code: Cow::Borrowed("pads_with_plate_minimum"),
        system: BrakeSystem::Pads,
        end: End::Both,
        what: Cow::Borrowed("pad and carrier plate together, at least (a German maker)"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(2.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed(""),
    },
    BrakeFigure {
        code: Cow::Borrowed("rim_runout_general"),
        system: BrakeSystem::Any,
        end: End::Both,
        what: Cow::Borrowed(
            "rim run-out of a rim-brake wheel (city, young adult, mountain), at most",
        ),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.8)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("The rim, not the rotor; full indicator reading."),
    },
    BrakeFigure {
        code: Cow::Borrowed("rim_runout_racing"),
        system: BrakeSystem::Any,
        end: End::Both,
        what: Cow::Borrowed("rim run-out of a rim-brake wheel (racing), at most"),
        figure: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.6)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        )),
        angle: None,
        note: Cow::Borrowed("The rim, not the rotor; full indicator reading."),
    },
];
pub(crate) static ROTORS: [Rotor; 6] = [
    Rotor {
        code: Cow::Borrowed("most_makers"),
        owner: Cow::Borrowed("most makers"),
        new_thickness: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L32, ""),
            &[],
        )),
        minimum_thickness: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L32, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Rotor {
        code: Cow::Borrowed("japanese"),
        owner: Cow::Borrowed("a Japanese maker"),
        new_thickness: None,
        minimum_thickness: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.5)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L33,
                "engraved on the rotor",
            ),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Rotor {
        code: Cow::Borrowed("us_1"),
        owner: Cow::Borrowed("a US maker"),
        new_thickness: None,
        minimum_thickness: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.52)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L34, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Rotor {
        code: Cow::Borrowed("us_2"),
        owner: Cow::Borrowed("another US maker"),
        new_thickness: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.85)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, ""),
            &L35,
        )),
        minimum_thickness: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.55)),
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L37, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "Nearly at another maker's discard limit when new: never carry a limit from maker to maker.",
        ),
    },
    Rotor {
        code: Cow::Borrowed("us_2_220"),
        owner: Cow::Borrowed("another US maker, 220 mm rotor"),
        new_thickness: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L38, ""),
            &[],
        )),
        minimum_thickness: Some(Figure::unknown_in_table("not printed for this rotor", &[])),
        note: Cow::Borrowed(""),
    },
    Rotor {
        code: Cow::Borrowed("german"),
        owner: Cow::Borrowed("a German maker"),
        new_thickness: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L39, ""),
            &[],
        )),
        minimum_thickness: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.8)),
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L40, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static FLAT_MOUNT_BOLTS: [FlatMountBolt; 6] = [
    FlatMountBolt {
        code: Cow::Borrowed("t10"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(23.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        ),
        note: Cow::Borrowed("A frame of about 7 mm needed this bolt and spacers."),
    },
    FlatMountBolt {
        code: Cow::Borrowed("t15"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L42, ""),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(28.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Derived, Grade::Agreeing, "15 mm + 13 mm", &L21, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "The marked size of the bolt is the frame thickness. Facing the mount changes the thickness: check again.",
        ),
    },
    FlatMountBolt {
        code: Cow::Borrowed("t20"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L43, ""),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(33.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L43, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "The marked size of the bolt is the frame thickness. Facing the mount changes the thickness: check again.",
        ),
    },
    FlatMountBolt {
        code: Cow::Borrowed("t25"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(38.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "The marked size of the bolt is the frame thickness. Facing the mount changes the thickness: check again.",
        ),
    },
    FlatMountBolt {
        code: Cow::Borrowed("t30"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L43, ""),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(43.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L43, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "The marked size of the bolt is the frame thickness. Facing the mount changes the thickness: check again.",
        ),
    },
    FlatMountBolt {
        code: Cow::Borrowed("t35"),
        frame_thickness: Figure::from_table(
            Span {
                nominal: Some(mm(35.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "existence of the size not seen",
            ),
            &[],
        ),
        bolt_length: Figure::from_table(
            Span {
                nominal: Some(mm(48.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Memory,
                "35 mm + 13 mm",
                &L21,
                "by the rule; existence of the size not seen",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "The marked size of the bolt is the frame thickness. Facing the mount changes the thickness: check again.",
        ),
    },
];
