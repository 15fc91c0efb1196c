// @generated from data/crown.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 7] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[178], "1 in ISO"),
    Citation::from_table(&SOURCES[179], "1 in ISO"),
    Citation::from_table(&SOURCES[181], "ISO row"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
    Citation::from_table(&SOURCES[106], "crown-race sizes"),
    Citation::from_table(&SOURCES[107], "ISO size"),
];
static L1: [Citation; 1] = [Citation::from_table(
    &SOURCES[185],
    "1 in row, inside diameter of the race",
)];
static L2: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(26.5)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L1,
        "would be loose on a 26.4 seat",
    ),
}];
static L3: [Citation; 1] = [Citation::from_table(
    &SOURCES[110],
    "handbook quoted for one Italian race",
)];
static L4: [Citation; 7] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[179], "1 in JIS"),
    Citation::from_table(&SOURCES[181], "JIS row"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
    Citation::from_table(&SOURCES[106], "crown-race sizes"),
    Citation::from_table(&SOURCES[107], "JIS size"),
    Citation::from_table(&SOURCES[108], "JIS size"),
];
static L5: [Citation; 6] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[178], "1-1/8 in"),
    Citation::from_table(&SOURCES[179], "1-1/8 in"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
    Citation::from_table(&SOURCES[102], "fork sizes"),
    Citation::from_table(&SOURCES[111], "shoulder at the crown"),
];
static L6: [Citation; 1] = [Citation::from_table(
    &SOURCES[185],
    "1-1/8 in row, inside diameter of the race",
)];
static L7: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(30.1)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L6,
        "would be loose on a 30.0 seat",
    ),
}];
static L8: [Citation; 1] = [Citation::from_table(
    &SOURCES[112],
    "quotation of the headset maker's guide",
)];
static L9: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(33.06)),
        lower: Some(mm(33.03)),
        upper: Some(mm(33.09)),
    },
    evidence: Evidence::from_table(
        Grade::SecondHand,
        Grade::SecondHand,
        "",
        &L8,
        "33.06 +/-0.03; the text does not say seat or race bore, the fit direction makes seat the likely reading",
    ),
}];
static L10: [Citation; 5] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[178], "1-1/4 in"),
    Citation::from_table(&SOURCES[179], "1-1/4 in"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
    Citation::from_table(&SOURCES[112], "nominal quoted in the same thread"),
];
static L11: [Citation; 4] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[178], "1-1/2 in"),
    Citation::from_table(&SOURCES[179], "1-1/2 in"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
];
static L12: [Citation; 3] = [
    Citation::from_table(&SOURCES[106], "steerer sizes"),
    Citation::from_table(&SOURCES[114], "1 in thread"),
    Citation::from_table(&SOURCES[7], "steerer 25,4 x 24"),
];
static L13: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, 1 in",
)];
static L14: [Citation; 3] = [
    Citation::from_table(&SOURCES[106], "quill sizes"),
    Citation::from_table(&SOURCES[115], "quill sizes"),
    Citation::from_table(&SOURCES[117], "quill sizes"),
];
static L15: [Citation; 5] = [
    Citation::from_table(&SOURCES[106], "steerer threads"),
    Citation::from_table(&SOURCES[114], "1 in thread"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
    Citation::from_table(&SOURCES[117], "steerer threads"),
    Citation::from_table(&SOURCES[7], "steerer 25,4 x 24"),
];
static L16: [Text; 1] = [Cow::Borrowed("26.4")];
static L17: [Citation; 2] = [
    Citation::from_table(&SOURCES[107], "JIS size"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
];
static L18: [Citation; 2] = [
    Citation::from_table(&SOURCES[107], "JIS size"),
    Citation::from_table(&SOURCES[115], "quill sizes"),
];
static L19: [Citation; 3] = [
    Citation::from_table(&SOURCES[107], "JIS size"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
    Citation::from_table(&SOURCES[7], "steerer 25,4 x 24"),
];
static L20: [Text; 1] = [Cow::Borrowed("27.0")];
static L21: [Citation; 2] = [
    Citation::from_table(&SOURCES[114], "Italian thread"),
    Citation::from_table(&SOURCES[116], "Italian steerer"),
];
static L22: [Citation; 2] = [
    Citation::from_table(&SOURCES[115], "French steerer"),
    Citation::from_table(&SOURCES[117], "French steerer"),
];
static L23: [Citation; 3] = [
    Citation::from_table(&SOURCES[187], "French fork"),
    Citation::from_table(&SOURCES[115], "quill sizes"),
    Citation::from_table(&SOURCES[117], "quill sizes"),
];
static L24: [Citation; 3] = [
    Citation::from_table(&SOURCES[187], "French fork"),
    Citation::from_table(&SOURCES[115], "French steerer"),
    Citation::from_table(&SOURCES[117], "French steerer"),
];
static L25: [Text; 1] = [Cow::Borrowed("26.5")];
static L26: [Citation; 2] = [
    Citation::from_table(&SOURCES[113], "steerer"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
];
static L27: [Citation; 2] = [
    Citation::from_table(&SOURCES[113], "fork bore"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
];
static L28: [Citation; 2] = [
    Citation::from_table(&SOURCES[113], "thread"),
    Citation::from_table(&SOURCES[115], "steerer threads"),
];
static L29: [Text; 1] = [Cow::Borrowed("ddr_m26")];
static L30: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Bsc, inch(1.0), Pitch::from_table_tpi(26)),
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "60 deg by memory"),
}];
static L31: [Citation; 1] = [Citation::from_table(&SOURCES[187], "fork threads")];
static L32: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, BMX 1 in",
)];
static L33: [Citation; 1] = [Citation::from_table(&SOURCES[159], "BMX quill")];
static L34: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(21.1)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L33, ""),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(21.15)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
    },
];
static L35: [Text; 2] = [Cow::Borrowed("26.4"), Cow::Borrowed("27.0")];
static L36: [Citation; 1] = [Citation::from_table(&SOURCES[106], "steerer sizes")];
static L37: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, 1-1/8 in",
)];
static L38: [Citation; 3] = [
    Citation::from_table(&SOURCES[185], "1-1/8 in row"),
    Citation::from_table(&SOURCES[186], "quill sizes"),
    Citation::from_table(&SOURCES[187], "fork threads"),
];
static L39: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(
        ThreadForm::Bsc,
        inch_fraction(9, 8),
        Pitch::from_table_tpi(26),
    ),
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "60 deg by memory"),
}];
static L40: [Text; 1] = [Cow::Borrowed("30.0")];
static L41: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, 1-1/4 in thread",
)];
static L42: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(31.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L41,
        "wrong: 1-1/4 in is 31.75",
    ),
}];
static L43: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, 1-1/4 in",
)];
static L44: [Citation; 2] = [
    Citation::from_table(&SOURCES[186], "quill sizes"),
    Citation::from_table(&SOURCES[187], "fork threads"),
];
static L45: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(
        ThreadForm::Bsc,
        inch_fraction(5, 4),
        Pitch::from_table_tpi(26),
    ),
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "60 deg by memory"),
}];
static L46: [Text; 1] = [Cow::Borrowed("33.0")];
static L47: [Citation; 3] = [
    Citation::from_table(&SOURCES[106], "steerer sizes"),
    Citation::from_table(&SOURCES[102], "steerer sizes"),
    Citation::from_table(&SOURCES[111], "straight steerer"),
];
static L48: [Citation; 2] = [
    Citation::from_table(&SOURCES[106], "steerer sizes"),
    Citation::from_table(&SOURCES[102], "steerer sizes"),
];
static L49: [Citation; 1] = [Citation::from_table(&SOURCES[102], "upper steerer sizes")];
static L50: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(34.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L49,
        "wrong: 1-1/4 in is 31.75",
    ),
}];
static L51: [Citation; 2] = [
    Citation::from_table(&SOURCES[106], "steerer sizes"),
    Citation::from_table(&SOURCES[120], "steerer diameters"),
];
static L52: [Text; 1] = [Cow::Borrowed("39.8")];
static L53: [Citation; 2] = [
    Citation::from_table(&SOURCES[106], "tapered steerers"),
    Citation::from_table(&SOURCES[120], "steerer diameters"),
];
static L54: [Citation; 1] = [Citation::from_table(&SOURCES[112], "tapered road fork")];
static L55: [Citation; 1] = [Citation::from_table(&SOURCES[121], "sizes")];
static L56: [Citation; 2] = [
    Citation::from_table(&SOURCES[163], "4.7.4"),
    Citation::from_table(&SOURCES[164], "4.3.6.4"),
];
static L57: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: None,
        lower: Some(mm(3.0)),
        upper: Some(mm(5.0)),
    },
    evidence: Evidence::from_table(
        Grade::CommonPractice,
        Grade::CommonPractice,
        "",
        &[],
        "forum practice",
    ),
}];
static L58: [Citation; 2] = [
    Citation::from_table(&SOURCES[165], "cutting the steerer"),
    Citation::from_table(&SOURCES[103], "steerer length"),
];
static L59: [Citation; 1] = [Citation::from_table(
    &SOURCES[198],
    "16 CFR 1512.6 as quoted",
)];
static L60: [Citation; 2] = [
    Citation::from_table(&SOURCES[174], "bicycle rule"),
    Citation::from_table(&SOURCES[175], "insertion mark"),
];
static L61: [Citation; 2] = [
    Citation::from_table(&SOURCES[106], "steerer sizes"),
    Citation::from_table(&SOURCES[115], "quill sizes"),
];
static L62: [Citation; 1] = [Citation::from_table(
    &SOURCES[207],
    "cutting the crown seat",
)];

pub(crate) static CROWN_SEATS: [CrownSeat; 8] = [
    CrownSeat {
        code: Cow::Borrowed("26.4"),
        shis_code: Cow::Borrowed("26"),
        name: Cow::Borrowed("1 in ISO (Professional)"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(26.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, "limits unknown"),
            &[],
        ),
        race_bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(26.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L3, ""),
            &L2,
        )),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("25.4 (1 in)"),
        note: Cow::Borrowed(
            "The fork number is by memory. BMX 1 in forks are printed with 26.4 or 27.0: measure. A race of an ISO set was measured 26.26; a chromed seat measured 26.53 was judged to need reducing.",
        ),
    },
    CrownSeat {
        code: Cow::Borrowed("26.5"),
        shis_code: Cow::Borrowed(""),
        name: Cow::Borrowed("1 in Italian or French as often tabulated"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(26.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "one page prints 26.5, as race bore of the ordinary 1 in size",
            ),
            &[],
        ),
        race_bore: Some(Figure::unknown_in_table("not printed for this seat", &[])),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("25.4 or 25.0"),
        note: Cow::Borrowed(""),
    },
    CrownSeat {
        code: Cow::Borrowed("27.0"),
        shis_code: Cow::Borrowed("27"),
        name: Cow::Borrowed("1 in JIS"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(27.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L4,
                "limits unknown; some pages call 27.0 the race bore. Two seats were measured 27.05 and 27.08",
            ),
            &[],
        ),
        race_bore: Some(Figure::unknown_in_table(
            "not printed apart from the seat",
            &[],
        )),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("25.4 (1 in)"),
        note: Cow::Borrowed("BMX 1 in forks are printed with 26.4 or 27.0: measure."),
    },
    CrownSeat {
        code: Cow::Borrowed("30.0"),
        shis_code: Cow::Borrowed("30"),
        name: Cow::Borrowed("1-1/8 in"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L5, "limits unknown"),
            &[],
        ),
        race_bore: Some(Figure::unknown_in_table(
            "measured races read 29.9 to 29.92, and no maker prints it: measure",
            &L7,
        )),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("28.6 (1-1/8 in)"),
        note: Cow::Borrowed(
            "A straight 1-1/8 in fork has a 30.0 shoulder at the crown, so the race grips only over its last few millimetres.",
        ),
    },
    CrownSeat {
        code: Cow::Borrowed("33.0"),
        shis_code: Cow::Borrowed("33"),
        name: Cow::Borrowed("1-1/4 in"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(33.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L10,
                "limits not settled",
            ),
            &L9,
        ),
        race_bore: Some(Figure::unknown_in_table("not printed", &[])),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("31.8 (1-1/4 in)"),
        note: Cow::Borrowed(""),
    },
    CrownSeat {
        code: Cow::Borrowed("39.8"),
        shis_code: Cow::Borrowed("40"),
        name: Cow::Borrowed("1-1/2 in"),
        seat: Figure::from_table(
            Span {
                nominal: Some(mm(39.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L11,
                "the fork number is 40, the seat is 39.8; limits unknown",
            ),
            &[],
        ),
        race_bore: Some(Figure::unknown_in_table("not printed", &[])),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("38.1 (1-1/2 in), also the lower end of tapered steerers"),
        note: Cow::Borrowed(""),
    },
    CrownSeat {
        code: Cow::Borrowed("ddr_m26"),
        shis_code: Cow::Borrowed(""),
        name: Cow::Borrowed("former DDR, M26 x 1 steerer"),
        seat: Figure::unknown_in_table("the source leaves it blank: measure", &[]),
        race_bore: Some(Figure::unknown_in_table(
            "the source leaves the cone bore blank: measure",
            &[],
        )),
        seat_height: Some(Figure::unknown_in_table("no seat height is published", &[])),
        steerer: Cow::Borrowed("26"),
        note: Cow::Borrowed(""),
    },
    CrownSeat {
        code: Cow::Borrowed("moulded_45"),
        shis_code: Cow::Borrowed(""),
        name: Cow::Borrowed("bearing straight on a moulded shoulder of a carbon fork"),
        seat: Figure::unknown_in_table(
            "there is no separate race: a 45 deg shoulder carries the bearing, as one forum page describes",
            &[],
        ),
        race_bore: None,
        seat_height: None,
        steerer: Cow::Borrowed("any"),
        note: Cow::Borrowed("The crown-race seat check does not apply."),
    },
];
pub(crate) static STEERERS: [Steerer; 17] = [
    Steerer {
        code: Cow::Borrowed("1in_iso_threaded"),
        name: Cow::Borrowed("1 in threaded, ISO and BSC"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L12, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L13, ""),
            &[],
        )),
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L14, ""),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L15,
                "major 25.400, pitch 24.836, minor 24.272 mm in the national table",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L16),
        note: Cow::Borrowed(
            "ISO 8488 governs the thread; its limits were not read. Butted steerers can stop a quill: one stopped 70 mm down.",
        ),
    },
    Steerer {
        code: Cow::Borrowed("1in_jis_threaded"),
        name: Cow::Borrowed("1 in threaded, JIS"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L17, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L13, ""),
            &[],
        )),
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L18, ""),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L19,
                "major 25.400, pitch 24.836, minor 24.272 mm in the national table",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L20),
        note: Cow::Borrowed("Thread as ISO; crown seat and head-tube bore differ."),
    },
    Steerer {
        code: Cow::Borrowed("1in_italian_threaded"),
        name: Cow::Borrowed("1 in threaded, Italian"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L21, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L21, ""),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Whitworth, mm(25.4), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L21,
                "55 deg; size and pitch as BSC, and repeated swaps reshape the thread",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L16),
        note: Cow::Borrowed("26.5 for the crown seat is memory only."),
    },
    Steerer {
        code: Cow::Borrowed("french_threaded"),
        name: Cow::Borrowed("French metric threaded"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L22, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L23,
                "a 22.2 quill cannot enter safely",
            ),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(25.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L24,
                "flank angle 60 deg by memory",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L25),
        note: Cow::Borrowed("Usually a flat instead of a keyway. The crown seat is memory only."),
    },
    Steerer {
        code: Cow::Borrowed("ddr_m26_threaded"),
        name: Cow::Borrowed("former DDR and some Austrian, metric threaded"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L26, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L27, ""),
            &[],
        )),
        quill: None,
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(26.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L28,
                "printed M26x1; flank angle not stated",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L29),
        note: Cow::Borrowed(""),
    },
    Steerer {
        code: Cow::Borrowed("1in_26tpi_threaded"),
        name: Cow::Borrowed("1 in x 26 tpi threaded (one British maker)"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, inch(1.0), Pitch::from_table_tpi(26)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L31,
                "the page gives size and pitch, not the flank angle",
            ),
            &L30,
        )),
        crown_seat: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Crown seat not printed."),
    },
    Steerer {
        code: Cow::Borrowed("bmx_1in_threaded"),
        name: Cow::Borrowed("BMX and some old mountain bikes, 1 in threaded"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(inch(1.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(21.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L32,
                "below the quill size: rounded, treat as nominal",
            ),
            &[],
        )),
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(21.17)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, "5/6 in"),
            &L34,
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L31,
                "equal to the ordinary 1 in thread",
            ),
            &[],
        )),
        crown_seat: Cow::Borrowed(&L35),
        note: Cow::Borrowed("Both crown seats occur: measure."),
    },
    Steerer {
        code: Cow::Borrowed("1_1_8_threaded"),
        name: Cow::Borrowed("1-1/8 in threaded"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L36,
                "1-1/8 in, 28.575",
            ),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(25.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L37, ""),
            &[],
        )),
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L38, ""),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Unknown,
                inch_fraction(9, 8),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L31,
                "the page gives size and pitch, not the flank angle",
            ),
            &L39,
        )),
        crown_seat: Cow::Borrowed(&L40),
        note: Cow::Borrowed(""),
    },
    Steerer {
        code: Cow::Borrowed("1_1_4_threaded"),
        name: Cow::Borrowed("1-1/4 in threaded"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L36,
                "1-1/4 in, 31.75",
            ),
            &L42,
        ),
        lower_diameter: None,
        inside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(28.7)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
            &[],
        )),
        quill: Some(Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L44, ""),
            &[],
        )),
        stem_clamp: None,
        thread: Some(Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Unknown,
                inch_fraction(5, 4),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L31,
                "the page gives size and pitch, not the flank angle",
            ),
            &L45,
        )),
        crown_seat: Cow::Borrowed(&L46),
        note: Cow::Borrowed(""),
    },
    Steerer {
        code: Cow::Borrowed("1in_threadless"),
        name: Cow::Borrowed("1 in threadless"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L35),
        note: Cow::Borrowed(""),
    },
    Steerer {
        code: Cow::Borrowed("1_1_8_threadless"),
        name: Cow::Borrowed("1-1/8 in threadless"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L47, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L48, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L40),
        note: Cow::Borrowed("1-1/8 in is 28.575."),
    },
    Steerer {
        code: Cow::Borrowed("1_1_4_threadless"),
        name: Cow::Borrowed("1-1/4 in threadless"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L51, ""),
            &L50,
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L51, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L46),
        note: Cow::Borrowed("1-1/4 in is 31.75."),
    },
    Steerer {
        code: Cow::Borrowed("1_1_2_threadless"),
        name: Cow::Borrowed("1-1/2 in threadless"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(38.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, ""),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(38.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L52),
        note: Cow::Borrowed(""),
    },
    Steerer {
        code: Cow::Borrowed("tapered_1_1_8_1_1_2"),
        name: Cow::Borrowed("tapered 1-1/8 to 1-1/2 in"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L53, ""),
            &[],
        ),
        lower_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(38.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L53, ""),
            &[],
        )),
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L53, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L52),
        note: Cow::Borrowed("In use from 2009."),
    },
    Steerer {
        code: Cow::Borrowed("tapered_1_1_8_1_1_4"),
        name: Cow::Borrowed("tapered 1-1/8 to 1-1/4 in"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L54, ""),
            &[],
        ),
        lower_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L54, ""),
            &[],
        )),
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L54, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L46),
        note: Cow::Borrowed("Road forks."),
    },
    Steerer {
        code: Cow::Borrowed("tapered_1_1_4_1_1_2"),
        name: Cow::Borrowed("tapered 1-1/4 to 1-1/2 in"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L55, ""),
            &[],
        ),
        lower_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(38.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L55, ""),
            &[],
        )),
        inside_diameter: None,
        quill: None,
        stem_clamp: Some(Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L55, ""),
            &[],
        )),
        thread: None,
        crown_seat: Cow::Borrowed(&L52),
        note: Cow::Borrowed(
            "Needs its own stem, spacers and upper headset; the head-tube bore is unchanged.",
        ),
    },
    Steerer {
        code: Cow::Borrowed("1_9_16_suspension"),
        name: Cow::Borrowed("1-9/16 in suspension-fork steerer (one US maker)"),
        upper_diameter: Figure::from_table(
            Span {
                nominal: Some(mm(39.69)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L36, "39.6875"),
            &[],
        ),
        lower_diameter: None,
        inside_diameter: None,
        quill: None,
        stem_clamp: None,
        thread: None,
        crown_seat: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static STEERER_RULES: [SteererRule; 8] = [
    SteererRule {
        code: Cow::Borrowed("stem_above_steerer"),
        what: Cow::Borrowed("stem top above the steerer top, at most"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(5.0)),
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        ),
        note: Cow::Borrowed("The clamped part of the steerer must not be threaded."),
    },
    SteererRule {
        code: Cow::Borrowed("steerer_below_stack"),
        what: Cow::Borrowed(
            "steerer top below the top of the stem and spacer stack before preload",
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L58, ""),
            &L57,
        ),
        note: Cow::Borrowed(""),
    },
    SteererRule {
        code: Cow::Borrowed("quill_mark_22_2"),
        what: Cow::Borrowed(
            "insertion mark of a 22.2 quill from its lower end, at least (2.5 diameters)",
        ),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(55.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Derived, Grade::SecondHand, "2.5 x 22.2 mm", &L59, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "The quill clause of ISO 4210-2 (4.7.3) was not readable; 2.5 diameters there is memory.",
        ),
    },
    SteererRule {
        code: Cow::Borrowed("quill_strength_22_2"),
        what: Cow::Borrowed(
            "full strength kept below the mark of a 22.2 quill, at least (1 diameter)",
        ),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(22.2)),
                upper: None,
            },
            Evidence::from_table(Grade::Derived, Grade::SecondHand, "1 x 22.2 mm", &L59, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    SteererRule {
        code: Cow::Borrowed("quill_mark_din"),
        what: Cow::Borrowed("quill mark of the German bicycle rule"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(65.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L60, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    SteererRule {
        code: Cow::Borrowed("wall_for_22_2_quill"),
        what: Cow::Borrowed("steerer wall that a 22.2 quill allows in a 25.4 steerer, at most"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(1.6)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "(25.4 mm - 22.2 mm) / 2",
                &L61,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed("Butted steerers are thicker below: check the free depth of the bore."),
    },
    SteererRule {
        code: Cow::Borrowed("wall_minimum"),
        what: Cow::Borrowed("minimum wall of a steerer"),
        window: Figure::unknown_in_table("no source prints a required minimum", &[]),
        note: Cow::Borrowed(""),
    },
    SteererRule {
        code: Cow::Borrowed("crown_roughing_1in"),
        what: Cow::Borrowed("roughing diameter of a 1 in crown seat before the final cut"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(27.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L62, ""),
            &[],
        ),
        note: Cow::Borrowed("First pass cutter only; the finishing cutter is smaller."),
    },
];
