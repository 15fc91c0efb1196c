// @generated from data/seatposts.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 1] = [Citation::from_table(
    &SOURCES[122],
    "lower end of the range",
)];
static L1: [Citation; 1] = [Citation::from_table(&SOURCES[202], "seat tubes")];
static L2: [Citation; 1] = [Citation::from_table(&SOURCES[123], "clamp sizes")];
static L3: [Citation; 3] = [
    Citation::from_table(&SOURCES[193], "lower end of the series"),
    Citation::from_table(&SOURCES[195], "range of sizes"),
    Citation::from_table(&SOURCES[124], "1970s aluminium frames"),
];
static L4: [Citation; 1] = [Citation::from_table(
    &SOURCES[193],
    "an example of a fit problem",
)];
static L5: [Citation; 5] = [
    Citation::from_table(&SOURCES[192], "sizes"),
    Citation::from_table(&SOURCES[203], "sizes"),
    Citation::from_table(&SOURCES[123], "clamp sizes"),
    Citation::from_table(&SOURCES[125], "sizes"),
    Citation::from_table(&SOURCES[126], "sizes"),
];
static L6: [Citation; 3] = [
    Citation::from_table(&SOURCES[124], "0.2 mm series"),
    Citation::from_table(&SOURCES[126], "0.2 mm steps"),
    Citation::from_table(&SOURCES[193], "series from 25.0 in 0.2 mm steps"),
];
static L7: [Citation; 1] = [Citation::from_table(&SOURCES[127], "sizes named")];
static L8: [Citation; 1] = [Citation::from_table(&SOURCES[124], "start of the series")];
static L9: [Citation; 2] = [
    Citation::from_table(&SOURCES[204], "sticker and caliper agree"),
    Citation::from_table(&SOURCES[127], "sizes named"),
];
static L10: [Citation; 1] = [Citation::from_table(&SOURCES[128], "post fitted")];
static L11: [Citation; 3] = [
    Citation::from_table(&SOURCES[192], "sizes"),
    Citation::from_table(&SOURCES[125], "sizes"),
    Citation::from_table(&SOURCES[129], "old size"),
];
static L12: [Citation; 3] = [
    Citation::from_table(&SOURCES[124], "sizes"),
    Citation::from_table(&SOURCES[125], "sizes"),
    Citation::from_table(&SOURCES[126], "sizes"),
];
static L13: [Citation; 6] = [
    Citation::from_table(&SOURCES[192], "sizes"),
    Citation::from_table(&SOURCES[193], "current sizes"),
    Citation::from_table(&SOURCES[194], "current sizes"),
    Citation::from_table(&SOURCES[125], "sizes"),
    Citation::from_table(&SOURCES[126], "sizes"),
    Citation::from_table(&SOURCES[130], "seatpost"),
];
static L14: [Citation; 1] = [Citation::from_table(
    &SOURCES[126],
    "oversize mountain-bike size",
)];
static L15: [Citation; 1] = [Citation::from_table(&SOURCES[125], "sizes")];
static L16: [Citation; 1] = [Citation::from_table(&SOURCES[132], "post fitted")];
static L17: [Citation; 4] = [
    Citation::from_table(&SOURCES[193], "current sizes"),
    Citation::from_table(&SOURCES[194], "current sizes"),
    Citation::from_table(&SOURCES[125], "sizes"),
    Citation::from_table(&SOURCES[133], "seatpost"),
];
static L18: [Citation; 4] = [
    Citation::from_table(&SOURCES[193], "current sizes"),
    Citation::from_table(&SOURCES[194], "current sizes"),
    Citation::from_table(&SOURCES[124], "sizes"),
    Citation::from_table(&SOURCES[133], "seat-tube article"),
];
static L19: [Citation; 2] = [
    Citation::from_table(&SOURCES[193], "upper end of the series"),
    Citation::from_table(&SOURCES[195], "range of sizes"),
];
static L20: [Citation; 2] = [
    Citation::from_table(&SOURCES[193], "current sizes"),
    Citation::from_table(&SOURCES[194], "current sizes"),
];
static L21: [Citation; 1] = [Citation::from_table(
    &SOURCES[122],
    "upper end of the range",
)];
static L22: [Citation; 1] = [Citation::from_table(
    &SOURCES[126],
    "tube outside diameters",
)];
static L23: [Citation; 1] = [Citation::from_table(&SOURCES[130], "seat clamp")];
static L24: [Citation; 1] = [Citation::from_table(&SOURCES[130], "seatpost")];
static L25: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(32.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L2,
        "printed beside 31.8",
    ),
}];
static L26: [Citation; 1] = [Citation::from_table(&SOURCES[133], "seat clamp")];
static L27: [Citation; 1] = [Citation::from_table(&SOURCES[133], "seatpost")];
static L28: [Citation; 2] = [
    Citation::from_table(&SOURCES[168], "1512.15(b)"),
    Citation::from_table(&SOURCES[169], "1512.15(b)"),
];
static L29: [Citation; 1] = [Citation::from_table(&SOURCES[170], "page 22")];
static L30: [Citation; 1] = [Citation::from_table(&SOURCES[171], "rule")];
static L31: [Citation; 1] = [Citation::from_table(&SOURCES[192], "minimum insertion")];
static L32: [Citation; 1] = [Citation::from_table(&SOURCES[205], "minimum insertion")];

pub(crate) static SEATPOSTS: [Seatpost; 53] = [
    Seatpost {
        code: Cow::Borrowed("21.15"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(21.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L0, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("21.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(21.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("22.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(22.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L1, "unicycles"),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("22.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(22.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, "BMX"),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("23.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(23.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("23.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(23.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("24.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(24.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("24.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(24.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("24.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(24.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("24.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(24.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("24.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(24.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("25.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L3, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("25.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L4, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("25.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L5, "BMX and older"),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("25.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "25.0 mm + 3 x 0.2 mm",
                &L6,
                "member of the series; this value was not seen singly",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("25.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(25.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("26.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L8, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("26.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "25.0 mm + 6 x 0.2 mm",
                &L6,
                "member of the series; this value was not seen singly",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("26.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L9, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("26.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L10, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("26.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(26.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("27.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(27.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L12, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("27.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(27.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L13,
                "most common; current",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("27.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(27.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L14, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("27.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(27.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "25.0 mm + 13 x 0.2 mm",
                &L6,
                "member of the series; this value was not seen singly",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("27.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(27.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "25.0 mm + 14 x 0.2 mm",
                &L6,
                "member of the series; this value was not seen singly",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("28.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("28.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("28.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("28.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(28.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("29.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(29.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("29.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(29.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("29.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(29.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("29.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(29.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("29.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(29.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L15, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L16, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.7"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.7)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("30.9"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(30.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L17, "current"),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("31.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("31.2"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("31.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("31.6"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L18,
                "current; common dropper size",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("31.8"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "one trade notice prints it where others list 31.6: likely a slip",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("32.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(32.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("32.4"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(32.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("33.9"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(33.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("34.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "not seen in any source text",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("34.9"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(34.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L20, "current"),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Seatpost {
        code: Cow::Borrowed("35.0"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(35.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L21, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static SEAT_TUBES: [SeatTube; 5] = [
    SeatTube {
        code: Cow::Borrowed("28.6x0.9"),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        ),
        wall: Figure::from_table(
            Span {
                nominal: Some(mm(0.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "an example of usual walls",
            ),
            &[],
        ),
        post: Figure::from_table(
            Span {
                nominal: Some(mm(26.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::CommonPractice,
                "28.6 mm - 2 x 0.9 mm",
                &L22,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed("British and Italian outside diameter."),
    },
    SeatTube {
        code: Cow::Borrowed("28.6x0.7"),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        ),
        wall: Figure::from_table(
            Span {
                nominal: Some(mm(0.7)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "an example of usual walls",
            ),
            &[],
        ),
        post: Figure::from_table(
            Span {
                nominal: Some(mm(27.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::CommonPractice,
                "28.6 mm - 2 x 0.7 mm",
                &L22,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    SeatTube {
        code: Cow::Borrowed("28.6x0.6"),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        ),
        wall: Figure::from_table(
            Span {
                nominal: Some(mm(0.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "an example of usual walls",
            ),
            &[],
        ),
        post: Figure::from_table(
            Span {
                nominal: Some(mm(27.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "inside 27.4: take the next 0.2 mm size that is not larger than the finished, reamed bore",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    SeatTube {
        code: Cow::Borrowed("28.0"),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        ),
        wall: Figure::unknown_in_table("not printed", &[]),
        post: Figure::unknown_in_table("outside diameter less two walls, reamed: measure", &[]),
        note: Cow::Borrowed("French outside diameter."),
    },
    SeatTube {
        code: Cow::Borrowed("25.4"),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L22, ""),
            &[],
        ),
        wall: Figure::unknown_in_table("not printed", &[]),
        post: Figure::unknown_in_table("outside diameter less two walls, reamed: measure", &[]),
        note: Cow::Borrowed("Old American and BMX outside diameter."),
    },
];
pub(crate) static SEAT_CLAMPS: [SeatClamp; 5] = [
    SeatClamp {
        code: Cow::Borrowed("25.4"),
        tube_outside: Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        ),
        post: Some(Figure::from_table(
            Span {
                nominal: Some(mm(22.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        )),
        note: Cow::Borrowed("The clamp follows the tube, never infer it from the post."),
    },
    SeatClamp {
        code: Cow::Borrowed("28.6"),
        tube_outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        ),
        post: Some(Figure::from_table(
            Span {
                nominal: Some(mm(25.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        )),
        note: Cow::Borrowed("The clamp follows the tube, never infer it from the post."),
    },
    SeatClamp {
        code: Cow::Borrowed("30.0"),
        tube_outside: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L23, ""),
            &[],
        ),
        post: Some(Figure::from_table(
            Span {
                nominal: Some(mm(27.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L24, ""),
            &[],
        )),
        note: Cow::Borrowed("One steel frame brand."),
    },
    SeatClamp {
        code: Cow::Borrowed("31.8"),
        tube_outside: Figure::from_table(
            Span {
                nominal: Some(mm(31.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &L25,
        ),
        post: Some(Figure::from_table(
            Span {
                nominal: Some(mm(27.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        )),
        note: Cow::Borrowed("The clamp follows the tube, never infer it from the post."),
    },
    SeatClamp {
        code: Cow::Borrowed("34.9"),
        tube_outside: Figure::from_table(
            Span {
                nominal: Some(mm(34.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        post: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L27, ""),
            &[],
        )),
        note: Cow::Borrowed("The clamp follows the tube, never infer it from the post."),
    },
];
pub(crate) static INSERTION_RULES: [InsertionRule; 13] = [
    InsertionRule {
        code: Cow::Borrowed("mark_two_diameters"),
        what: Cow::Borrowed("insertion mark of the post from its lower end, at least"),
        counts: DepthCounts::InAll,
        depth: None,
        times_diameter: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(2.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L28, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "27.2 gives 54.4 mm. Cutting a post moves the mark: it must be marked again. A frame may demand more than the mark.",
        ),
    },
    InsertionRule {
        code: Cow::Borrowed("strength_below_mark"),
        what: Cow::Borrowed("full strength of the post kept below the mark, at least"),
        counts: DepthCounts::NoDepth,
        depth: None,
        times_diameter: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(1.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L28, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("bicycle_maker_2_5_diameters"),
        what: Cow::Borrowed("insertion asked by a bicycle maker, at least"),
        counts: DepthCounts::InAll,
        depth: None,
        times_diameter: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(2.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L29, ""),
            &[],
        )),
        note: Cow::Borrowed("30 mm post gives 75 mm."),
    },
    InsertionRule {
        code: Cow::Borrowed("below_junction"),
        what: Cow::Borrowed(
            "where the seat tube stands above the top tube the post must reach below the top-tube and seat-stay junction; can mean this much or more",
        ),
        counts: DepthCounts::InAll,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(100.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L29, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("below_top_tube_weld"),
        what: Cow::Borrowed(
            "below the lower edge of the top-tube weld, at least, together with a total of 90 mm",
        ),
        counts: DepthCounts::BelowWeld,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(25.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("total_with_weld_rule"),
        what: Cow::Borrowed(
            "total insertion where the post also reaches 25 mm below the top-tube weld, at least",
        ),
        counts: DepthCounts::WithWeld,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(90.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("total_otherwise"),
        what: Cow::Borrowed("total insertion where the weld rule cannot be shown, at least"),
        counts: DepthCounts::WithoutWeld,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(150.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("general_60"),
        what: Cow::Borrowed("general minimum of German bicycle pages"),
        counts: DepthCounts::InAll,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(60.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("general_100"),
        what: Cow::Borrowed("general minimum of a retailer"),
        counts: DepthCounts::InAll,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(100.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L32, ""),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("general_70_100"),
        what: Cow::Borrowed("general minimum, weak source"),
        counts: DepthCounts::InAll,
        depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(70.0)),
                upper: Some(mm(100.0)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "one weak page prints it",
            ),
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("frame_demand"),
        what: Cow::Borrowed("insertion that the frame maker demands beyond the mark of the post"),
        counts: DepthCounts::InAll,
        depth: Some(Figure::unknown_in_table(
            "read the frame maker's manual: the post mark must then not be relied on",
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("iso_4210_2_mark"),
        what: Cow::Borrowed(
            "insertion mark of ISO 4210-2 clause 4.16.2 (EN 14766:2005 clause 4.14.3)",
        ),
        counts: DepthCounts::InAll,
        depth: Some(Figure::unknown_in_table(
            "the clause was not readable; read the standard",
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
    InsertionRule {
        code: Cow::Borrowed("shim_length"),
        what: Cow::Borrowed("length of a shim: at least the insertion of the post, slots aligned"),
        counts: DepthCounts::NoDepth,
        depth: Some(Figure::unknown_in_table(
            "no number; common practice is the insertion itself",
            &[],
        )),
        times_diameter: None,
        note: Cow::Borrowed(""),
    },
];
