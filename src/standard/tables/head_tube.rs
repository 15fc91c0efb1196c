// @generated from data/head_tube.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 2] = [
    Citation::from_table(&SOURCES[101], "how a code is formed"),
    Citation::from_table(&SOURCES[102], "headset types"),
];
static L1: [Citation; 1] = [Citation::from_table(&SOURCES[176], "head tube diameters")];
static L2: [Citation; 5] = [
    Citation::from_table(&SOURCES[107], "JIS size"),
    Citation::from_table(&SOURCES[108], "JIS size"),
    Citation::from_table(&SOURCES[119], "1 in sizes"),
    Citation::from_table(&SOURCES[179], "JIS row"),
    Citation::from_table(&SOURCES[180], "JIS row"),
];
static L3: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(28.8)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L1,
            "about 1 mm under the maker range: a slip, do not use",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L2,
            "printed as head-tube inside diameter; it is the trade name of the size and most likely the cup",
        ),
    },
];
static L4: [Citation; 2] = [
    Citation::from_table(&SOURCES[100], "step 2, head-tube bores, 1 in JIS"),
    Citation::from_table(&SOURCES[182], "1 in JIS line"),
];
static L5: [Citation; 2] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[181], "JIS row"),
];
static L6: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("EC30"),
        why: Cow::Borrowed(
            "0.2 mm apart: an ISO cup forced into this bore has 0.2 mm more interference than intended",
        ),
    },
    Confusion {
        code: Cow::Borrowed("ddr_m26"),
        why: Cow::Borrowed("another 1 in class size"),
    },
];
static L7: [Citation; 2] = [
    Citation::from_table(&SOURCES[176], "head tube diameters"),
    Citation::from_table(&SOURCES[185], "1 in row"),
];
static L8: [Citation; 5] = [
    Citation::from_table(&SOURCES[107], "ISO size"),
    Citation::from_table(&SOURCES[108], "ISO size"),
    Citation::from_table(&SOURCES[119], "1 in sizes"),
    Citation::from_table(&SOURCES[179], "ISO row"),
    Citation::from_table(&SOURCES[180], "ISO row"),
];
static L9: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L7,
            "nominal tables, 0.05 to 0.10 under the maker range; not usable as a limit",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(30.2)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L8,
            "printed as head-tube inside diameter; it is the trade name of the size and most likely the cup. Reaming to 30.2 leaves no grip",
        ),
    },
];
static L10: [Citation; 4] = [
    Citation::from_table(&SOURCES[99], "page 4, press-fit bores"),
    Citation::from_table(&SOURCES[100], "step 2, head-tube bores"),
    Citation::from_table(&SOURCES[182], "1 in ISO line"),
    Citation::from_table(&SOURCES[183], "lower limit"),
];
static L11: [Citation; 1] = [Citation::from_table(
    &SOURCES[99],
    "page 4, press-fit bores",
)];
static L12: [Citation; 4] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[181], "ISO row"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
    Citation::from_table(&SOURCES[167], "cup shoulder"),
];
static L13: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("EC29"),
        why: Cow::Borrowed("0.2 mm apart, same thread: measure the bore, not the part"),
    },
    Confusion {
        code: Cow::Borrowed("italian_1in"),
        why: Cow::Borrowed("same trade name 30.2"),
    },
    Confusion {
        code: Cow::Borrowed("french_1in"),
        why: Cow::Borrowed("same class of size"),
    },
    Confusion {
        code: Cow::Borrowed("ddr_m26"),
        why: Cow::Borrowed("another 1 in class size"),
    },
];
static L14: [Citation; 2] = [
    Citation::from_table(&SOURCES[176], "head tube diameters"),
    Citation::from_table(&SOURCES[185], "1-1/8 in row"),
];
static L15: [Citation; 1] = [Citation::from_table(&SOURCES[199], "1-1/8 in size")];
static L16: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(33.8)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L14,
            "nominal tables, 0.10 to 0.15 under the maker range; not usable as a limit",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(33.9)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L15, "nominal"),
    },
];
static L17: [Citation; 4] = [
    Citation::from_table(&SOURCES[99], "page 4, press-fit bores"),
    Citation::from_table(&SOURCES[182], "1-1/8 in line"),
    Citation::from_table(&SOURCES[183], "lower limit"),
    Citation::from_table(&SOURCES[188], "nominal"),
];
static L18: [Citation; 1] = [Citation::from_table(
    &SOURCES[119],
    "head-tube outside diameters",
)];
static L19: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(36.0)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L18,
            "used by builders",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(37.0)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L18,
            "used by builders",
        ),
    },
];
static L20: [Citation; 1] = [Citation::from_table(&SOURCES[184], "table of dimensions")];
static L21: [Citation; 1] = [Citation::from_table(&SOURCES[100], "cover drawing")];
static L22: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(34.2)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L20, ""),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(34.10)),
            lower: Some(mm(34.10)),
            upper: Some(mm(34.20)),
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L21,
            "cover illustration, tolerance text extracted out of place: low trust",
        ),
    },
];
static L23: [Citation; 1] = [Citation::from_table(
    &SOURCES[177],
    "table of headset types",
)];
static L24: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(36.8)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L1,
        "nominal table, 0.10 under the maker range; not usable as a limit",
    ),
}];
static L25: [Citation; 2] = [
    Citation::from_table(&SOURCES[99], "page 4, press-fit bores"),
    Citation::from_table(&SOURCES[182], "1-1/4 in line"),
];
static L26: [Citation; 2] = [
    Citation::from_table(&SOURCES[177], "table of headset types"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
];
static L27: [Citation; 2] = [
    Citation::from_table(&SOURCES[99], "page 5, press-fit bores, 44.00 row"),
    Citation::from_table(&SOURCES[118], "external lower cup for the 44 mm bore"),
];
static L28: [Text; 1] = [Cow::Borrowed("ZS44")];
static L29: [Citation; 3] = [
    Citation::from_table(&SOURCES[176], "head tube diameters"),
    Citation::from_table(&SOURCES[180], "1-1/2 in row"),
    Citation::from_table(&SOURCES[188], "nominal"),
];
static L30: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(49.6)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Agreeing,
        Grade::Agreeing,
        "",
        &L29,
        "rounded nominal",
    ),
}];
static L31: [Citation; 3] = [
    Citation::from_table(&SOURCES[99], "page 4, press-fit bores"),
    Citation::from_table(&SOURCES[182], "1-1/2 in line"),
    Citation::from_table(&SOURCES[183], "lower limit"),
];
static L32: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(49.65)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L20, ""),
}];
static L33: [Text; 1] = [Cow::Borrowed("ZS49")];
static L34: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("steerer_1_9_16"),
    why: Cow::Borrowed("very close to this size; the press depth differs"),
}];
static L35: [Text; 1] = [Cow::Borrowed("ZS56")];
static L36: [Citation; 4] = [
    Citation::from_table(&SOURCES[99], "page 5, press-fit bores"),
    Citation::from_table(&SOURCES[182], "41.35 line"),
    Citation::from_table(&SOURCES[183], "lower limit"),
    Citation::from_table(&SOURCES[177], "1 in low-profile row"),
];
static L37: [Citation; 2] = [
    Citation::from_table(&SOURCES[99], "page 5, press-fit bores"),
    Citation::from_table(&SOURCES[183], "semi-integrated bores"),
];
static L38: [Citation; 1] = [Citation::from_table(
    &SOURCES[99],
    "page 5, press-fit bores",
)];
static L39: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("IS41"),
        why: Cow::Borrowed(
            "close in diameter, but a pressed cup here and a bearing straight on the frame there",
        ),
    },
    Confusion {
        code: Cow::Borrowed("is_41_6"),
        why: Cow::Borrowed("0.2 mm away"),
    },
];
static L40: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(43.9)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L1,
        "nominal table, 0.05 under the maker range; not usable as a limit",
    ),
}];
static L41: [Citation; 4] = [
    Citation::from_table(&SOURCES[99], "page 5, press-fit bores"),
    Citation::from_table(&SOURCES[182], "start of the 43.95 line"),
    Citation::from_table(&SOURCES[183], "lower limit"),
    Citation::from_table(&SOURCES[188], "nominal"),
];
static L42: [Citation; 1] = [Citation::from_table(
    &SOURCES[100],
    "step 2, typical head tubes",
)];
static L43: [Text; 1] = [Cow::Borrowed("EC44")];
static L44: [Text; 1] = [Cow::Borrowed("EC49")];
static L45: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("ZS56"),
    why: Cow::Borrowed("1 mm apart"),
}];
static L46: [Citation; 3] = [
    Citation::from_table(&SOURCES[99], "page 5, press-fit bores"),
    Citation::from_table(&SOURCES[183], "55.9"),
    Citation::from_table(&SOURCES[188], "55.95"),
];
static L47: [Text; 1] = [Cow::Borrowed("EC56")];
static L48: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("ZS55"),
    why: Cow::Borrowed("1 mm apart"),
}];
static L49: [Citation; 1] = [Citation::from_table(&SOURCES[103], "list of sizes")];
static L50: [Citation; 1] = [Citation::from_table(&SOURCES[183], "1 in integrated size")];
static L51: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(26.35)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L50,
        "impossible, smaller than the bearing: a misprint",
    ),
}];
static L52: [Citation; 1] = [Citation::from_table(&SOURCES[177], "integrated row, 1 in")];
static L53: [Citation; 1] = [Citation::from_table(
    &SOURCES[177],
    "integrated row, 1 in (36x45)",
)];
static L54: [Citation; 3] = [
    Citation::from_table(&SOURCES[176], "head tube diameters, 41.1"),
    Citation::from_table(&SOURCES[183], "1-1/8 in integrated, 41.1"),
    Citation::from_table(&SOURCES[188], "integrated head tubes, 41.2"),
];
static L55: [Citation; 3] = [
    Citation::from_table(&SOURCES[100], "figure of the bearing chamfers"),
    Citation::from_table(&SOURCES[104], "marking of the bearing"),
    Citation::from_table(&SOURCES[176], "integrated families"),
];
static L56: [Citation; 2] = [
    Citation::from_table(&SOURCES[104], "marking of the bearing"),
    Citation::from_table(&SOURCES[189], "1-1/8 in upper bearing"),
];
static L57: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("ZS41"),
        why: Cow::Borrowed("pressed cup against bare bearing"),
    },
    Confusion {
        code: Cow::Borrowed("is_41_6"),
        why: Cow::Borrowed("0.4 to 0.5 mm larger"),
    },
    Confusion {
        code: Cow::Borrowed("IS42"),
        why: Cow::Borrowed(
            "0.8 mm larger bearing; one blog says that the two differ in diameter only, others give a 36 against a 45 deg inner chamfer",
        ),
    },
    Confusion {
        code: Cow::Borrowed("is_36_36"),
        why: Cow::Borrowed("36/36 bearing"),
    },
];
static L58: [Citation; 1] = [Citation::from_table(
    &SOURCES[183],
    "integrated sizes, third 1-1/8 in pattern",
)];
static L59: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("IS41"),
        why: Cow::Borrowed("a bore of 41.5 to 41.7 is neither IS41 nor IS42"),
    },
    Confusion {
        code: Cow::Borrowed("IS42"),
        why: Cow::Borrowed("a bore of 41.5 to 41.7 is neither IS41 nor IS42"),
    },
    Confusion {
        code: Cow::Borrowed("ZS41"),
        why: Cow::Borrowed("0.2 mm away"),
    },
    Confusion {
        code: Cow::Borrowed("is_36_36"),
        why: Cow::Borrowed("may be the same pattern; no page says so"),
    },
];
static L60: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(41.9)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L1,
            "nominal table",
        ),
    },
    Dissent {
        value: Span {
            nominal: None,
            lower: Some(mm(41.95)),
            upper: Some(mm(42.05)),
        },
        evidence: Evidence::from_table(
            Grade::Memory,
            Grade::Memory,
            "",
            &[],
            "limits by memory, not used as limits",
        ),
    },
];
static L61: [Citation; 1] = [Citation::from_table(
    &SOURCES[183],
    "1-1/8 in Italian integrated size",
)];
static L62: [Citation; 2] = [
    Citation::from_table(&SOURCES[105], "45x45 family"),
    Citation::from_table(&SOURCES[176], "integrated families"),
];
static L63: [Citation; 1] = [Citation::from_table(
    &SOURCES[190],
    "size of the 42 bearing",
)];
static L64: [Confusion; 3] = [
    Confusion {
        code: Cow::Borrowed("IS41"),
        why: Cow::Borrowed("0.8 mm smaller bearing, 36 deg at the race"),
    },
    Confusion {
        code: Cow::Borrowed("is_41_6"),
        why: Cow::Borrowed("0.35 mm smaller"),
    },
    Confusion {
        code: Cow::Borrowed("is_36_36"),
        why: Cow::Borrowed("36/36 bearing"),
    },
];
static L65: [Citation; 1] = [Citation::from_table(
    &SOURCES[189],
    "lower bearings compared",
)];
static L66: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("IS52"),
    why: Cow::Borrowed("sold under the same trade name; a 52.0 bearing does not enter this seat"),
}];
static L67: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("is_51_8"),
    why: Cow::Borrowed("sold under the same trade name; a 51.8 bearing is 0.2 mm loose here"),
}];
static L68: [Citation; 1] = [Citation::from_table(&SOURCES[105], "36x36 family")];
static L69: [Confusion; 3] = [
    Confusion {
        code: Cow::Borrowed("IS41"),
        why: Cow::Borrowed("45 deg seat there"),
    },
    Confusion {
        code: Cow::Borrowed("IS42"),
        why: Cow::Borrowed("45 deg seat there"),
    },
    Confusion {
        code: Cow::Borrowed("is_41_6"),
        why: Cow::Borrowed("may be the same pattern; no page says so"),
    },
];
static L70: [Citation; 3] = [
    Citation::from_table(&SOURCES[177], "table of headset types, Italian"),
    Citation::from_table(&SOURCES[181], "ISO and Italian row"),
    Citation::from_table(&SOURCES[184], "table of dimensions"),
];
static L71: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("EC30"),
        why: Cow::Borrowed("same cup size; the thread angle of the steerer differs"),
    },
    Confusion {
        code: Cow::Borrowed("french_1in"),
        why: Cow::Borrowed("same class of size"),
    },
];
static L72: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(30.2)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "by memory"),
}];
static L73: [Citation; 1] = [Citation::from_table(
    &SOURCES[201],
    "text on a box: tube 25, press fit 30",
)];
static L74: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("EC30"),
        why: Cow::Borrowed("cups said to be alike by one article, 30 by a box"),
    },
    Confusion {
        code: Cow::Borrowed("italian_1in"),
        why: Cow::Borrowed("same class of size"),
    },
];
static L75: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("EC29"),
        why: Cow::Borrowed("another 1 in class size"),
    },
    Confusion {
        code: Cow::Borrowed("EC30"),
        why: Cow::Borrowed("another 1 in class size"),
    },
];
static L76: [Citation; 1] = [Citation::from_table(
    &SOURCES[176],
    "head tube diameters, 1 in with one-piece crank",
)];
static L77: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(32.7)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Memory,
        Grade::Memory,
        "",
        &[],
        "trade name of the cup by memory; with a 32.5 bore it gives 0.2 mm",
    ),
}];
static L78: [Citation; 1] = [Citation::from_table(
    &SOURCES[184],
    "table of dimensions, BMX",
)];
static L79: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("EC49"),
    why: Cow::Borrowed("very close in diameter; the press depth differs"),
}];
static L80: [Citation; 1] = [Citation::from_table(
    &SOURCES[189],
    "1-1/8 in upper bearing",
)];
static L81: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(30.2)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L80, "rounded"),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L80,
            "a variant of this bore exists and also fitted that frame",
        ),
    },
];
static L82: [Citation; 1] = [Citation::from_table(
    &SOURCES[104],
    "marking of the bearing",
)];
static L83: [Citation; 1] = [Citation::from_table(&SOURCES[105], "first family")];
static L84: [Dissent<Span<Angle>>; 1] = [Dissent {
    value: Span {
        nominal: Some(deg(35.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L83,
        "35x45 there, taken as a misprint",
    ),
}];
static L85: [Citation; 3] = [
    Citation::from_table(&SOURCES[100], "figure of the bearing chamfers"),
    Citation::from_table(&SOURCES[104], "marking of the bearing"),
    Citation::from_table(&SOURCES[105], "first family"),
];
static L86: [Citation; 1] = [Citation::from_table(&SOURCES[161], "facing the head tube")];
static L87: [Citation; 1] = [Citation::from_table(&SOURCES[166], "shims")];
static L88: [Citation; 1] = [Citation::from_table(
    &SOURCES[167],
    "clearance round the steerer",
)];
static L89: [Citation; 1] = [Citation::from_table(&SOURCES[158], "head-tube walls")];
static L90: [Citation; 1] = [Citation::from_table(
    &SOURCES[109],
    "accuracy of cups and frames",
)];
static L91: [Citation; 1] = [Citation::from_table(&SOURCES[161], "fitting cups")];
static L92: [Citation; 1] = [Citation::from_table(
    &SOURCES[160],
    "rule of 0.0005 in per inch of diameter",
)];
static L93: [Citation; 1] = [Citation::from_table(&SOURCES[110], "handbook quotation")];
static L94: [Citation; 1] = [Citation::from_table(
    &SOURCES[162],
    "interference of a 1 in race",
)];
static L95: [Citation; 1] = [Citation::from_table(&SOURCES[200], "interference used")];
static L96: [Citation; 3] = [
    Citation::from_table(&SOURCES[176], "head tube diameters, 41.1"),
    Citation::from_table(&SOURCES[188], "integrated head tubes, 41.2"),
    Citation::from_table(&SOURCES[104], "marking of the bearing"),
];
static L97: [Citation; 2] = [
    Citation::from_table(&SOURCES[183], "1-1/8 in Italian integrated size"),
    Citation::from_table(&SOURCES[190], "size of the 42 bearing"),
];
static L98: [Citation; 1] = [Citation::from_table(
    &SOURCES[131],
    "+0.021 for a reamed 27.2 hole",
)];
static L99: [Citation; 1] = [Citation::from_table(&SOURCES[191], "diametral clearance")];
static L100: [Citation; 1] = [Citation::from_table(
    &SOURCES[192],
    "tube and post must agree",
)];
static L101: [Citation; 1] = [Citation::from_table(
    &SOURCES[208],
    "gap between drawn inside and outside diameter",
)];
static L102: [Citation; 1] = [Citation::from_table(
    &SOURCES[208],
    "sliding fit asked by a tube-frame builder",
)];
static L103: [Citation; 2] = [
    Citation::from_table(&SOURCES[56], "bore 41.96 +0.025/-0"),
    Citation::from_table(
        &SOURCES[211],
        "Table 8.5.2, Normal class, over 30 up to 50 mm",
    ),
];
static L104: [Citation; 2] = [
    Citation::from_table(&SOURCES[210], "hole deviation tables, over 30 up to 50 mm"),
    Citation::from_table(
        &SOURCES[211],
        "Table 8.5.2, Normal class, over 30 up to 50 mm",
    ),
];

pub(crate) static HEAD_SEATS: [HeadSeat; 28] = [
    HeadSeat {
        code: Cow::Borrowed("EC29"),
        name: Cow::Borrowed("1 in JIS, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(29.85)),
                upper: Some(mm(29.90)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L4,
                "one maker; a reader transcription of the same guide agrees. That code 29 names this bore is by memory",
            ),
            &L3,
        ),
        bore_depth: Some(Figure::unknown_in_table(
            "the table read gives no depth for this size",
            &[],
        )),
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L5,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &[],
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L6),
        note: Cow::Borrowed("Can be opened to EC30 by reaming; the reverse is impossible."),
    },
    HeadSeat {
        code: Cow::Borrowed("EC30"),
        name: Cow::Borrowed("1 in ISO (Professional), external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.10)),
                lower: Some(mm(30.05)),
                upper: Some(mm(30.10)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L10,
                "one maker, two documents; two later pages repeat it. The drawing prints no code: mapped by diameter",
            ),
            &L9,
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(12.5)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "flattened drawing table, 12.5 taken as shared by the first three rows",
            ),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(28.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "appearance only",
            ),
            &[],
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L12,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &[],
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L13),
        note: Cow::Borrowed(
            "Cup 30.2 less bore 30.05-30.10 gives 0.10-0.15 mm, above the 0.10 mm that one headset maker allows.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("EC33"),
        name: Cow::Borrowed("EC33, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::unknown_in_table(
            "no source lists it; supply the limits from the frame maker drawing",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Two searches found no page that prints a bore for this code."),
    },
    HeadSeat {
        code: Cow::Borrowed("EC34"),
        name: Cow::Borrowed("1-1/8 in, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(33.95)),
                lower: Some(mm(33.90)),
                upper: Some(mm(33.95)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L17,
                "one maker; three later pages repeat it or one end of it. The drawing prints no code: mapped by diameter",
            ),
            &L16,
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(12.5)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "flattened drawing table, 12.5 taken as shared by the first three rows",
            ),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(31.5)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(39.45)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "appearance only",
            ),
            &L19,
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L23,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &L22,
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Cup 34.0 gives 0.05-0.10 mm interference; the 34.10-34.20 of a cover drawing would give 0.15-0.30 mm and contradict the 0.10 mm limit.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("EC37"),
        name: Cow::Borrowed("1-1/4 in, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(36.95)),
                lower: Some(mm(36.90)),
                upper: Some(mm(36.95)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L25,
                "one maker; a reader transcription agrees. The drawing prints no code: mapped by diameter",
            ),
            &L24,
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(12.5)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "flattened drawing table, 12.5 taken as shared by the first three rows",
            ),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(35.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(43.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "appearance only",
            ),
            &[],
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L26,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &[],
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("EC44"),
        name: Cow::Borrowed("external cup in a 44 mm bore"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(44.00)),
                lower: Some(mm(43.95)),
                upper: Some(mm(44.00)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L27,
                "the ZS44 bore; a frame maker states that the external cup is designed for it",
            ),
            &[],
        ),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker publishes it for the external cup; the ZS44 row asks for 15.0 mm",
            &[],
        )),
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&L28),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Check the reamed depth against the length of the cup."),
    },
    HeadSeat {
        code: Cow::Borrowed("EC49"),
        name: Cow::Borrowed("1-1/2 in traditional, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(49.61)),
                lower: Some(mm(49.57)),
                upper: Some(mm(49.61)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L31,
                "one maker; tighter than the other seats (+0/-0.04). That code 49 names this bore is by memory",
            ),
            &L30,
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(25.4)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "much deeper than all other seats",
            ),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(47.6)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(57.00)),
                lower: Some(mm(56.90)),
                upper: Some(mm(57.10)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "printed 57.00 +/-0.1",
            ),
            &[],
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(49.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L23,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &L32,
        )),
        same_bore_as: Cow::Borrowed(&L33),
        confused_with: Cow::Borrowed(&L34),
        note: Cow::Borrowed(
            "Cup 49.6 gives -0.01 to 0.03 mm, cup 49.65 gives 0.04 to 0.08 mm: measure the cup. ZS49 shares the bore by memory only.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("EC56"),
        name: Cow::Borrowed("external cup in a 56 mm bore"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(55.95)),
                lower: Some(mm(55.90)),
                upper: Some(mm(55.95)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "assumed to share the ZS56 bore, whose figure is published",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&L35),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS41"),
        name: Cow::Borrowed("1 in semi-integrated, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(41.40)),
                lower: Some(mm(41.35)),
                upper: Some(mm(41.40)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L36,
                "one maker; later pages repeat it. The drawing prints no code: mapped by diameter",
            ),
            &[],
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(15.0)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L37,
                "straight bore at least 15 mm deep, repeated by a later page",
            ),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(36.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L38, ""),
            &[],
        )),
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L39),
        note: Cow::Borrowed(
            "Tables for low-profile sets list 27.15 as crown-race diameter: that is the bearing bore, not the fork seat.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS44"),
        name: Cow::Borrowed("1-1/8 in semi-integrated, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(44.00)),
                lower: Some(mm(43.95)),
                upper: Some(mm(44.00)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L41,
                "one maker; later pages repeat it. The drawing prints no code: mapped by diameter",
            ),
            &L40,
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(15.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L37, ""),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(38.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L38, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(50.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L42,
                "typical, not a requirement",
            ),
            &[],
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&L43),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Tables for low-profile sets list 30.15 as crown-race diameter: that is the bearing bore, not the fork seat.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS49"),
        name: Cow::Borrowed("ZS49, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(49.57)),
                upper: Some(mm(49.61)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "by memory equal to EC49; no page prints it",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&L44),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS55"),
        name: Cow::Borrowed("ZS55, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(54.90)),
                upper: Some(mm(54.95)),
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "no page prints it"),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L45),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS56"),
        name: Cow::Borrowed("1-1/2 in semi-integrated, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(55.95)),
                lower: Some(mm(55.90)),
                upper: Some(mm(55.95)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L46,
                "one maker; two later pages repeat one end each. The drawing prints no code: mapped by diameter",
            ),
            &[],
        ),
        bore_depth: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(15.0)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L37, ""),
            &[],
        )),
        clear_below: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(47.6)),
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L38, ""),
            &[],
        )),
        outside_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(62.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L42,
                "often, not a requirement",
            ),
            &[],
        )),
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&L47),
        confused_with: Cow::Borrowed(&L48),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("ZS62"),
        name: Cow::Borrowed("ZS62, cup pressed in"),
        kind: SeatKind::ZeroStack,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(62.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L49,
                "existence of the size only; limits unknown",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("IS38"),
        name: Cow::Borrowed("1 in integrated (36/45 family)"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(38.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L52,
                "nominal; limits unknown, and the page is cut off at this row",
            ),
            &L51,
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L53, ""),
            &[],
        )),
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(38.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("IS41"),
        name: Cow::Borrowed("1-1/8 in integrated, 41 mm bearing 36/45"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(41.10)),
                upper: Some(mm(41.20)),
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L54,
                "two pages print the lower end, a third the upper; no single page was seen that prints both",
            ),
            &[],
        ),
        bore_depth: Some(Figure::unknown_in_table(
            "no seat depth is published; supply it from the frame maker drawing",
            &[],
        )),
        clear_below: None,
        outside_diameter: None,
        seat_angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L55,
                "the outer chamfer; the inner 36 deg belongs to the crown race and the compression ring",
            ),
            &[],
        )),
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L57),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("is_41_6"),
        name: Cow::Borrowed("third 1-1/8 in integrated pattern, 41.6 mm"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(41.6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L58,
                "printed with the initials of a headset maker; no code of the open system was seen",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L59),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("IS42"),
        name: Cow::Borrowed(
            "1-1/8 in integrated, 41.8 mm bearing 45/45 (Italian hidden-headset pattern)",
        ),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(41.95)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L61,
                "lower limit or nominal, the page does not say; limits unknown",
            ),
            &L60,
        ),
        bore_depth: Some(Figure::unknown_in_table(
            "no seat depth is published; supply it from the frame maker drawing",
            &[],
        )),
        clear_below: None,
        outside_diameter: None,
        seat_angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L62, ""),
            &[],
        )),
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L63, ""),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L64),
        note: Cow::Borrowed(
            "A 36/45 and a 45/45 bearing both sit well in a 45 deg seat and can still be wrong at the race.",
        ),
    },
    HeadSeat {
        code: Cow::Borrowed("IS47"),
        name: Cow::Borrowed("1-1/4 in lower integrated"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(47.05)),
                upper: Some(mm(47.10)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "no page prints limits",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "one bearing was measured 34.2 x 47 x 7, 45/45",
            ),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("IS49"),
        name: Cow::Borrowed("1-3/8 in lower integrated"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(49.10)),
                upper: Some(mm(49.20)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "no page prints limits",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(49.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "one bearing was measured 49 outside",
            ),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("is_51_8"),
        name: Cow::Borrowed("1-1/2 in lower integrated, 51.8 mm bearing"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::unknown_in_table(
            "no page prints it; supply it from the frame maker drawing",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(51.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L66),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("IS52"),
        name: Cow::Borrowed("1-1/2 in lower integrated, 52 mm bearing"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(52.05)),
                upper: Some(mm(52.15)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "no page prints limits",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: Some(Figure::from_table(
            Span {
                nominal: Some(mm(52.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        )),
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L67),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("is_36_36"),
        name: Cow::Borrowed("integrated pattern with a 36/36 bearing"),
        kind: SeatKind::Integrated,
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the bearing drops on a seat made in the frame, no cup",
            ),
            &[],
        )),
        bore: Figure::unknown_in_table(
            "no page prints it; supply it from the frame maker drawing",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: Some(Figure::from_table(
            Span {
                nominal: Some(deg(36.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L68, ""),
            &[],
        )),
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L69),
        note: Cow::Borrowed("Not interchangeable with the other two families."),
    },
    HeadSeat {
        code: Cow::Borrowed("italian_1in"),
        name: Cow::Borrowed("1 in Italian, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::unknown_in_table(
            "trade pages print 30.2, which is the cup; the EC30 bore is likely and not printed for it: measure",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.2)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L70,
                "one table labels the column cup outside diameter; other pages print the same number as head-tube inside diameter, so this supports, and does not prove, that it names the cup",
            ),
            &[],
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L71),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("french_1in"),
        name: Cow::Borrowed("French, external cup, 25.0 steerer"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::unknown_in_table(
            "no page prints it; one workshop article calls French and ISO cups alike: measure",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::SecondHand,
                Grade::SecondHand,
                "",
                &L73,
                "package text typed out by a forum user; unresolved",
            ),
            &L72,
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L74),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("ddr_m26"),
        name: Cow::Borrowed("former DDR and some Austrian, M26 x 1 steerer, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::unknown_in_table("the source leaves the digits blank (30.x): measure", &[]),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L75),
        note: Cow::Borrowed(""),
    },
    HeadSeat {
        code: Cow::Borrowed("bmx_old"),
        name: Cow::Borrowed("old American and BMX, 1 in threaded, external cup"),
        kind: SeatKind::ExternalCup,
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(32.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L76,
                "nominal of a table whose other rows sit 0.05 to 0.15 under the maker ranges: not a limit",
            ),
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: Some(Figure::from_table(
            Span {
                nominal: Some(mm(32.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L78,
                "the same number is printed elsewhere for the bore: unresolved",
            ),
            &L77,
        )),
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Bore and cup are unresolved: measure both before cutting."),
    },
    HeadSeat {
        code: Cow::Borrowed("steerer_1_9_16"),
        name: Cow::Borrowed("1-9/16 in suspension-fork steerer (one US maker)"),
        kind: SeatKind::Other,
        fit: None,
        bore: Figure::unknown_in_table(
            "one article calls it very close to the 1-1/2 in tube, differing only in minimum press depth: take it from the frame maker drawing",
            &[],
        ),
        bore_depth: None,
        clear_below: None,
        outside_diameter: None,
        seat_angle: None,
        bearing_outside: None,
        cup: None,
        same_bore_as: Cow::Borrowed(&[]),
        confused_with: Cow::Borrowed(&L79),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static HEADSET_BEARINGS: [HeadsetBearing; 11] = [
    HeadsetBearing {
        code: Cow::Borrowed("30.15x41x6.5-36/45"),
        name: Cow::Borrowed("1-1/8 in, 41 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L82, ""),
            &L81,
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(6.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(36.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L55, ""),
            &L84,
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L85, ""),
            &[],
        ),
        seat: Cow::Borrowed("IS41"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("27.15x38x6.5-36/45"),
        name: Cow::Borrowed("1 in, 38 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(27.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(38.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(6.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(36.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS38"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("30.15x41.8x6.5-45/45"),
        name: Cow::Borrowed("1-1/8 in, 41.8 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(41.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L63, ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(6.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L62, ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L62, ""),
            &[],
        ),
        seat: Cow::Borrowed("IS42"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("30.15x41.8x8-45/45"),
        name: Cow::Borrowed("1-1/8 in, 41.8 mm, tall"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(41.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS42"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("30.15x41.8x6.5-36/45"),
        name: Cow::Borrowed("1-1/8 in, 41.8 mm, 36 deg race"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(41.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(6.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(36.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS42"),
        note: Cow::Borrowed("Sits in the same seat as the 45/45 bearing and needs another race."),
    },
    HeadsetBearing {
        code: Cow::Borrowed("34.1x46.9x7-45/45"),
        name: Cow::Borrowed("1-1/4 in lower, 46.9 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(34.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(46.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS47"),
        note: Cow::Borrowed("One bearing was measured 34.2 x 47 x 7, 45/45."),
    },
    HeadsetBearing {
        code: Cow::Borrowed("37x49x7-45/45"),
        name: Cow::Borrowed("1-3/8 in lower, 49 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(49.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS49"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("40x51.8x7.5-45/45"),
        name: Cow::Borrowed("1-1/2 in lower, 51.8 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(51.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(7.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("is_51_8"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("40x51.8x8-unknown/45"),
        name: Cow::Borrowed("1-1/2 in lower, 51.8 mm, 8 high"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(51.8)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        inner_angle: Figure::unknown_in_table("the page gives one angle only", &[]),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L65,
                "the page gives one angle; taken as the outer one, as it gives 45 for the 41 mm bearing whose inner angle is 36",
            ),
            &[],
        ),
        seat: Cow::Borrowed("is_51_8"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("40x52x7-36/45"),
        name: Cow::Borrowed("1-1/2 in lower, 52 mm"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(52.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        inner_angle: Figure::from_table(
            Span {
                nominal: Some(deg(36.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        seat: Cow::Borrowed("IS52"),
        note: Cow::Borrowed(""),
    },
    HeadsetBearing {
        code: Cow::Borrowed("40x52x7.5-unknown/45"),
        name: Cow::Borrowed("1-1/2 in lower, 52 mm, 7.5 high"),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(52.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        height: Figure::from_table(
            Span {
                nominal: Some(mm(7.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L65, ""),
            &[],
        ),
        inner_angle: Figure::unknown_in_table("the page gives one angle only", &[]),
        outer_angle: Figure::from_table(
            Span {
                nominal: Some(deg(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L65,
                "the page gives one angle; taken as the outer one, as it gives 45 for the 41 mm bearing whose inner angle is 36",
            ),
            &[],
        ),
        seat: Cow::Borrowed("IS52"),
        note: Cow::Borrowed("Will not enter a seat made for 51.8."),
    },
];
pub(crate) static FACING_RULES: [FacingRule; 13] = [
    FacingRule {
        code: Cow::Borrowed("end_face_parallelism"),
        what: Cow::Borrowed("parallelism of the two head-tube end faces, at most"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.075)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L86,
                "printed 0.075 mm (0.003 in)",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "The same page says that a shop cannot measure it well: ink both faces and cut until the ink is gone all round, pilot centred in the opposite bore.",
        ),
    },
    FacingRule {
        code: Cow::Borrowed("end_face_squareness"),
        what: Cow::Borrowed("squareness of an end face to the axis of the bore"),
        window: Figure::unknown_in_table("no source prints a number", &[]),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("bore_roundness"),
        what: Cow::Borrowed("roundness of a head-tube bore"),
        window: Figure::unknown_in_table("no source prints a limit", &[]),
        note: Cow::Borrowed("Reamed tube springs back; measure two or more diameters."),
    },
    FacingRule {
        code: Cow::Borrowed("entry_chamfer"),
        what: Cow::Borrowed("chamfer at the entry of each bore, 45 deg"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(0.50)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("cup_insertion_drawing"),
        what: Cow::Borrowed("cup insertion at each end in one cover drawing"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(10.00)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L21, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "Reamed depth has to be at least the insertion of the cup in hand, which can be more.",
        ),
    },
    FacingRule {
        code: Cow::Borrowed("cover_gap_shims"),
        what: Cow::Borrowed("total shim thickness normally available under the upper cover"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(1.0)),
                upper: Some(mm(4.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L87, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "Shims of 0.25, 0.50 and 1.25 mm, upper end only; a cover that touches the face is play that cannot be adjusted out.",
        ),
    },
    FacingRule {
        code: Cow::Borrowed("cover_gap"),
        what: Cow::Borrowed("gap between the upper cover and the head-tube face"),
        window: Figure::unknown_in_table(
            "no number is published; the cover must stand clear while the seal still reaches",
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("crown_gap"),
        what: Cow::Borrowed("gap between fork crown and lower head-tube face or seal"),
        window: Figure::unknown_in_table("no number is published", &[]),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("steerer_in_cup"),
        what: Cow::Borrowed("clearance wanted between the steerer and the bore of the cup"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(0.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L88, ""),
            &[],
        ),
        note: Cow::Borrowed("One forum statement."),
    },
    FacingRule {
        code: Cow::Borrowed("head_tube_wall"),
        what: Cow::Borrowed("head-tube wall used by builders"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.9)),
                upper: Some(mm(1.1)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L89, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "Builder practice, not a required minimum. 0.35 mm left after reaming was judged too thin and cured with reinforcing rings 10 to 14 mm long.",
        ),
    },
    FacingRule {
        code: Cow::Borrowed("integrated_seat_depth"),
        what: Cow::Borrowed("depth of an integrated bearing seat or counterbore"),
        window: Figure::unknown_in_table(
            "no source prints it; supply it from the frame maker drawing",
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("cup_body_accuracy"),
        what: Cow::Borrowed("accuracy to which a cup maker says cup bodies are made"),
        window: Figure::from_table(
            Span {
                nominal: Some(inch(0.0005)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L90, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FacingRule {
        code: Cow::Borrowed("head_tube_accuracy"),
        what: Cow::Borrowed("accuracy to which the same paper says builders hold a head tube"),
        window: Figure::from_table(
            Span {
                nominal: Some(inch(0.005)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L90, ""),
            &[],
        ),
        note: Cow::Borrowed("A maker position paper against bearings straight on the frame."),
    },
];
pub(crate) static FIT_WINDOWS: [FitWindow; 22] = [
    FitWindow {
        code: Cow::Borrowed("cup_at_most_0_10"),
        joint: Joint::HeadCup,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("a headset maker, technical page"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.1)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L91,
                "printed 0.1 mm (0.004 in)",
            ),
            &[],
        ),
        note: Cow::Borrowed("The same page says never to file a cup to make it fit."),
    },
    FitWindow {
        code: Cow::Borrowed("cup_0_10_0_20"),
        joint: Joint::HeadCup,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("an encyclopaedia, assumed by its nominal table"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.10)),
                upper: Some(mm(0.20)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("cup_0_10_0_25"),
        joint: Joint::HeadCup,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("the same encyclopaedia, called adequate"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.10)),
                upper: Some(mm(0.25)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("cup_per_inch_rule_44"),
        joint: Joint::HeadCup,
        sizes: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(43.5)),
                upper: Some(mm(44.5)),
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "sizes of the joint that the window is held against",
            ),
            &[],
        )),
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("general machining rule quoted by a builder, 44 mm bore"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: Some(mm(0.022)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::SecondHand,
                "0.0005 x 44 mm",
                &L92,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "The builder adds that thin bicycle tube is elastic and needs more: not a bicycle limit.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("race_0_10"),
        joint: Joint::CrownRace,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed(
            "a trade handbook quoted for one Italian race, seat 26.4 on bore 26.3",
        ),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: Some(mm(0.10)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L93, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("race_0_025_0_05"),
        joint: Joint::CrownRace,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("one owner's opinion, 1 in races"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.025)),
                upper: Some(mm(0.05)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "a quarter to a half of 0.1 mm",
                &L94,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed("He holds 0.1 mm too much because classic races are hard and brittle."),
    },
    FitWindow {
        code: Cow::Borrowed("race_0_10_0_20"),
        joint: Joint::CrownRace,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("another owner's opinion"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.10)),
                upper: Some(mm(0.20)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L95, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("integrated_is41"),
        joint: Joint::IntegratedBearing,
        sizes: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(40.8)),
                upper: Some(mm(41.4)),
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "sizes of the joint that the window is held against",
            ),
            &[],
        )),
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("seat and bearing figures of IS41"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.10)),
                upper: Some(mm(0.20)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::SecondHand,
                "seat 41.10 to 41.20 minus bearing 41.0",
                &L96,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "Integrated bearings are a slip fit: clearance is required, interference is an error.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("integrated_is42"),
        joint: Joint::IntegratedBearing,
        sizes: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(41.65)),
                upper: Some(mm(42.25)),
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "sizes of the joint that the window is held against",
            ),
            &[],
        )),
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("seat and bearing figures of IS42"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: Some(mm(0.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::SecondHand,
                "seat 41.95 minus bearing 41.8",
                &L97,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("seatpost_h7_27_2"),
        joint: Joint::Seatpost,
        sizes: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(26.7)),
                upper: Some(mm(27.7)),
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "sizes of the joint that the window is held against",
            ),
            &[],
        )),
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("one engineer's opinion, reamed 27.2 bore"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.0)),
                upper: Some(mm(0.021)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L98,
                "H7 of ISO 286 for 18 to 30 mm against a post of exact nominal size; not a bicycle standard",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("seatpost_0_20_0_30"),
        joint: Joint::Seatpost,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("one engineer's opinion, folding bicycles"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.20)),
                upper: Some(mm(0.30)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L99, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "On a 0.2 mm series of sizes the next post would fit this gap: an upper acceptability, not a target.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("seatpost_within_0_2"),
        joint: Joint::Seatpost,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("German bicycle pages"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: None,
                upper: Some(mm(0.2)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("seatpost_trade_rule"),
        joint: Joint::Seatpost,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("trade rule by memory"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.05)),
                upper: Some(mm(0.20)),
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("drawn_tube_at_least_0_25"),
        joint: Joint::DrawnTube,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("the tube trade, drawn tube as supplied"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.25)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L101,
                "printed with 0.010 in; not guaranteed to slide",
            ),
            &[],
        ),
        note: Cow::Borrowed("As-drawn tube, not a reamed bore."),
    },
    FitWindow {
        code: Cow::Borrowed("drawn_tube_sliding"),
        joint: Joint::DrawnTube,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("a tube-frame builder, sliding fit"),
        sense: Sense::Clearance,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.2)),
                upper: Some(mm(0.5)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L102, ""),
            &[],
        ),
        note: Cow::Borrowed("As-drawn tube, not a reamed bore."),
    },
    FitWindow {
        code: Cow::Borrowed("shell_press_cup"),
        joint: Joint::PressShell,
        sizes: None,
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("press-fit cup in a bottom-bracket shell"),
        sense: Sense::Interference,
        window: Figure::unknown_in_table(
            "no maker prints an interference window; supply it from the cup and frame maker",
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    FitWindow {
        code: Cow::Borrowed("bb30_bearing"),
        joint: Joint::DirectBearing,
        sizes: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(41.5)),
                upper: Some(mm(42.5)),
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "sizes of the joint that the window is held against",
            ),
            &[],
        )),
        speaks_of: SpeaksOf::Bicycle,
        owner: Cow::Borrowed("BB30 bore against a Normal-class 42 mm bearing"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.004)),
                upper: Some(mm(0.040)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "bearing 41.989 to 42.000 minus bore 41.960 to 41.985",
                &L103,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed("With the bore at 41.96 exactly it is 0.029 to 0.040 mm."),
    },
    FitWindow {
        code: Cow::Borrowed("bearing_od_30_50_n7"),
        joint: Joint::DirectBearing,
        sizes: None,
        speaks_of: SpeaksOf::Machining,
        owner: Cow::Borrowed("general engineering, ISO 286 class"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(um(-3.0)),
                upper: Some(um(33.0)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "bearing outside 0/-11 um minus N7 limits",
                &L104,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "Outside diameters over 30 up to 50 mm, Normal class bearing. Negative values are clearance.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("bearing_od_30_50_p7"),
        joint: Joint::DirectBearing,
        sizes: None,
        speaks_of: SpeaksOf::Machining,
        owner: Cow::Borrowed("general engineering, ISO 286 class"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(um(6.0)),
                upper: Some(um(42.0)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "bearing outside 0/-11 um minus P7 limits",
                &L104,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed("Outside diameters over 30 up to 50 mm, Normal class bearing."),
    },
    FitWindow {
        code: Cow::Borrowed("bearing_od_30_50_m7"),
        joint: Joint::DirectBearing,
        sizes: None,
        speaks_of: SpeaksOf::Machining,
        owner: Cow::Borrowed("general engineering, ISO 286 class"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(um(-11.0)),
                upper: Some(um(25.0)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "bearing outside 0/-11 um minus M7 limits",
                &L104,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "Outside diameters over 30 up to 50 mm, Normal class bearing. Negative values are clearance.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("bearing_od_30_50_k7"),
        joint: Joint::DirectBearing,
        sizes: None,
        speaks_of: SpeaksOf::Machining,
        owner: Cow::Borrowed("general engineering, ISO 286 class"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(um(-18.0)),
                upper: Some(um(18.0)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "bearing outside 0/-11 um minus K7 limits",
                &L104,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "Outside diameters over 30 up to 50 mm, Normal class bearing. Negative values are clearance.",
        ),
    },
    FitWindow {
        code: Cow::Borrowed("bearing_od_30_50_h7"),
        joint: Joint::DirectBearing,
        sizes: None,
        speaks_of: SpeaksOf::Machining,
        owner: Cow::Borrowed("general engineering, ISO 286 class"),
        sense: Sense::Interference,
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(um(-36.0)),
                upper: Some(um(0.0)),
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "bearing outside 0/-11 um minus H7 limits",
                &L104,
                "",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "Outside diameters over 30 up to 50 mm, Normal class bearing. Negative values are clearance.",
        ),
    },
];
