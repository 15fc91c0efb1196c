// @generated from data/instruments.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::measure::{ErrorLimit, Instrument, Measures};
use crate::quantity::*;

static L0: [Measures; 2] = [Measures::Length, Measures::Outside];
static L1: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(300.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(500.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::CommonPractice,
            Grade::CommonPractice,
            "",
            &[],
            "half a division",
        ),
        &[],
    ),
}];
static L2: [Measures; 1] = [Measures::Length];
static L3: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(3000.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(1000.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
        &[],
    ),
}];
static L4: [Measures; 1] = [Measures::Pitch];
static L5: [Measures; 1] = [Measures::Outside];
static L6: [Citation; 1] = [Citation::from_table(&SOURCES[236], "calipers")];
static L7: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(300.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(50.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::SecondHand,
            Grade::SecondHand,
            "",
            &L6,
            "row bounds uncertain in the extract; its first row is 50 mm and is taken to cover what lies below",
        ),
        &[],
    ),
}];
static L8: [Measures; 2] = [Measures::Inside, Measures::Depth];
static L9: [Citation; 2] = [
    Citation::from_table(&SOURCES[236], "calipers"),
    Citation::from_table(&SOURCES[237], "inside measurement"),
];
static L10: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(300.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(70.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::SecondHand,
            Grade::SecondHand,
            "",
            &L9,
            "row bounds uncertain in the extract; its first row is 50 mm and is taken to cover what lies below; outside limit + 20 um",
        ),
        &[],
    ),
}];
static L11: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(200.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(20.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::SecondHand,
            Grade::SecondHand,
            "",
            &L6,
            "row bounds uncertain in the extract; its first row is 50 mm and is taken to cover what lies below",
        ),
        &[],
    ),
}];
static L12: [ErrorLimit; 2] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(100.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L6, ""),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(300.0),
        up_to: mm(700.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L6,
                "row bounds uncertain; another page says 0.03 up to 600. From 100 to 300 mm the extracts conflict",
            ),
            &[],
        ),
    },
];
static L13: [Measures; 1] = [Measures::Inside];
static L14: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(100.0),
    error: Figure::from_table(
        Span {
            nominal: Some(um(40.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::SecondHand,
            Grade::SecondHand,
            "",
            &L9,
            "outside limit + 20 um, the addition by two sources",
        ),
        &[],
    ),
}];
static L15: [Measures; 1] = [Measures::Depth];
static L16: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(0.0),
    up_to: mm(100.0),
    error: Figure::from_table(
        Span {
            nominal: None,
            lower: Some(um(10.0)),
            upper: Some(um(20.0)),
        },
        Evidence::from_table(
            Grade::Memory,
            Grade::Memory,
            "",
            &[],
            "skilled hand transfer; the range is that of the micrometers here",
        ),
        &[],
    ),
}];
static L17: [Citation; 1] = [Citation::from_table(&SOURCES[236], "micrometers")];
static L18: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(25.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(4.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L17,
                "faces parallel within 2 um under 10 N",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(25.0),
        up_to: mm(50.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(4.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L17,
                "faces parallel within 2 um under 10 N",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(50.0),
        up_to: mm(75.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L17,
                "faces parallel within 3 um under 10 N",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(75.0),
        up_to: mm(100.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L17,
                "faces parallel within 3 um under 10 N",
            ),
            &[],
        ),
    },
];
static L19: [Measures; 1] = [Measures::Height];
static L20: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range up to 1 mm",
)];
static L21: [ErrorLimit; 3] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L20,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L20,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L20,
                "any one turn",
            ),
            &[],
        ),
    },
];
static L22: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range over 1 up to 3 mm",
)];
static L23: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L22,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L22,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L22,
                "any one turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(1.0),
        up_to: mm(3.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L22,
                "entire range",
            ),
            &[],
        ),
    },
];
static L24: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range over 3 up to 5 mm",
)];
static L25: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L24,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L24,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L24,
                "any one turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(1.0),
        up_to: mm(5.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L24,
                "entire range",
            ),
            &[],
        ),
    },
];
static L26: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range over 5 up to 10 mm",
)];
static L27: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L26,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L26,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L26,
                "any one turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(1.0),
        up_to: mm(10.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L26,
                "entire range",
            ),
            &[],
        ),
    },
];
static L28: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range over 10 up to 20 mm",
)];
static L29: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L28,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L28,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L28,
                "any one turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(1.0),
        up_to: mm(20.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L28,
                "entire range",
            ),
            &[],
        ),
    },
];
static L30: [Citation; 1] = [Citation::from_table(
    &SOURCES[238],
    "0.01 mm indicators, bezel 50 mm and over, measuring range over 20 up to 30 mm",
)];
static L31: [ErrorLimit; 4] = [
    ErrorLimit {
        over: mm(0.0),
        up_to: mm(0.1),
        error: Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L30,
                "any tenth of a turn; one turn taken as 1 mm",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.1),
        up_to: mm(0.5),
        error: Figure::from_table(
            Span {
                nominal: Some(um(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L30,
                "any half turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(0.5),
        up_to: mm(1.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L30,
                "any one turn",
            ),
            &[],
        ),
    },
    ErrorLimit {
        over: mm(1.0),
        up_to: mm(30.0),
        error: Figure::from_table(
            Span {
                nominal: Some(um(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L30,
                "entire range",
            ),
            &[],
        ),
    },
];
static L32: [ErrorLimit; 1] = [ErrorLimit {
    over: mm(20.0),
    up_to: mm(50.0),
    error: Figure::from_table(
        Span {
            nominal: None,
            lower: Some(um(3.0)),
            upper: Some(um(5.0)),
        },
        Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "typical maker limit"),
        &[],
    ),
}];

pub(crate) static INSTRUMENTS: [Instrument; 18] = [
    Instrument {
        code: Cow::Borrowed("steel_rule"),
        name: Cow::Borrowed("steel rule, 1 mm divisions"),
        measures: Cow::Borrowed(&L0),
        limits: Cow::Borrowed(&L1),
        resolution: None,
        repeatability: None,
        cost: 1,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("tape_measure"),
        name: Cow::Borrowed("tape measure"),
        measures: Cow::Borrowed(&L2),
        limits: Cow::Borrowed(&L3),
        resolution: None,
        repeatability: None,
        cost: 1,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("pitch_gauge"),
        name: Cow::Borrowed("thread pitch gauge leaves"),
        measures: Cow::Borrowed(&L4),
        limits: Cow::Borrowed(&[]),
        resolution: None,
        repeatability: None,
        cost: 2,
        note: Cow::Borrowed(
            "A categorical reading: 24 tpi (1.0583 mm) and 1.0 mm differ by 0.058 mm per thread, so count over six threads or more.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("caliper_vernier_outside"),
        name: Cow::Borrowed("vernier or dial caliper, 0.05 or 0.1 mm, outside jaws"),
        measures: Cow::Borrowed(&L5),
        limits: Cow::Borrowed(&L7),
        resolution: None,
        repeatability: None,
        cost: 3,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("caliper_vernier_inside"),
        name: Cow::Borrowed("vernier or dial caliper, 0.05 or 0.1 mm, inside jaws or depth rod"),
        measures: Cow::Borrowed(&L8),
        limits: Cow::Borrowed(&L10),
        resolution: None,
        repeatability: None,
        cost: 3,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("caliper_vernier_fine_outside"),
        name: Cow::Borrowed("vernier caliper, 0.02 mm, outside jaws"),
        measures: Cow::Borrowed(&L5),
        limits: Cow::Borrowed(&L11),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L6,
                "scale value 0.02 mm",
            ),
            &[],
        )),
        repeatability: None,
        cost: 4,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("caliper_digital_outside"),
        name: Cow::Borrowed("digital caliper, 0.01 mm, outside jaws"),
        measures: Cow::Borrowed(&L5),
        limits: Cow::Borrowed(&L12),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L6,
                "digital step 0.01 mm",
            ),
            &[],
        )),
        repeatability: None,
        cost: 3,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("caliper_digital_inside"),
        name: Cow::Borrowed("digital caliper, 0.01 mm, inside jaws"),
        measures: Cow::Borrowed(&L13),
        limits: Cow::Borrowed(&L14),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L6,
                "digital step 0.01 mm",
            ),
            &[],
        )),
        repeatability: None,
        cost: 3,
        note: Cow::Borrowed("Flat jaws read low in a small bore. Cannot prove a 0.05 mm window."),
    },
    Instrument {
        code: Cow::Borrowed("caliper_digital_depth"),
        name: Cow::Borrowed("digital caliper, 0.01 mm, depth rod"),
        measures: Cow::Borrowed(&L15),
        limits: Cow::Borrowed(&L14),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L6,
                "digital step 0.01 mm",
            ),
            &[],
        )),
        repeatability: None,
        cost: 3,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("telescoping_gauge"),
        name: Cow::Borrowed("telescoping gauge read with a micrometer"),
        measures: Cow::Borrowed(&L13),
        limits: Cow::Borrowed(&L16),
        resolution: None,
        repeatability: None,
        cost: 5,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("micrometer_outside"),
        name: Cow::Borrowed("external micrometer"),
        measures: Cow::Borrowed(&L5),
        limits: Cow::Borrowed(&L18),
        resolution: None,
        repeatability: None,
        cost: 6,
        note: Cow::Borrowed(""),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator_1"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range up to 1 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L21),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L20,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L20, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 3 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator_3"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range over 1 up to 3 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L23),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L22,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L22, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 3 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator_5"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range over 3 up to 5 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L25),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L24,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L24, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 3 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range over 5 up to 10 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L27),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L26,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L26, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 3 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator_20"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range over 10 up to 20 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L29),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L28,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(4.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L28, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 5 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("dial_indicator_30"),
        name: Cow::Borrowed("dial indicator 0.01 mm, measuring range over 20 up to 30 mm"),
        measures: Cow::Borrowed(&L19),
        limits: Cow::Borrowed(&L31),
        resolution: Some(Figure::from_table(
            Span {
                nominal: Some(um(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L30,
                "scale value 0.01 mm",
            ),
            &[],
        )),
        repeatability: Some(Figure::from_table(
            Span {
                nominal: Some(um(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L30, ""),
            &[],
        )),
        cost: 6,
        note: Cow::Borrowed(
            "Limits are by travel used. Retrace error 7 um. Extract read as run-together digits; the edition was superseded in 2017.",
        ),
    },
    Instrument {
        code: Cow::Borrowed("three_point_gauge"),
        name: Cow::Borrowed("three-point internal micrometer, 20 to 50 mm"),
        measures: Cow::Borrowed(&L13),
        limits: Cow::Borrowed(&L32),
        resolution: None,
        repeatability: None,
        cost: 9,
        note: Cow::Borrowed(""),
    },
];
