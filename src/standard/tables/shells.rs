// @generated from data/shells.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Text; 11] = [
    Cow::Borrowed("BSA"),
    Cow::Borrowed("BSC"),
    Cow::Borrowed("English"),
    Cow::Borrowed("CEI"),
    Cow::Borrowed("BC 1.37"),
    Cow::Borrowed("BC 1.37 x 24"),
    Cow::Borrowed("FG 34,8"),
    Cow::Borrowed("34,7 x 24"),
    Cow::Borrowed("1.370 x 24"),
    Cow::Borrowed("euro_bmx"),
    Cow::Borrowed("Euro BMX"),
];
static L1: [Citation; 7] = [
    Citation::from_table(&SOURCES[0], "list of threads"),
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[2], "entry BSA bearing"),
    Citation::from_table(&SOURCES[3], "table of shell standards"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[6], "series on shell threads"),
    Citation::from_table(&SOURCES[7], "row 34,7 x 24"),
];
static L2: [Citation; 6] = [
    Citation::from_table(&SOURCES[2], "entry BSA bearing"),
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[14], "scope"),
];
static L3: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 34,7 x 24")];
static L4: [Citation; 1] = [Citation::from_table(&SOURCES[11], "core diameter column")];
static L5: [Citation; 1] = [Citation::from_table(
    &SOURCES[8],
    "row BC 11/16, D - D1' = 0.98 mm",
)];
static L6: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(inch(1.326)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L4,
            "33.68 mm; the major diameter on the same row is a misprint",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(33.82)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "34.80 mm - 0.98 mm",
            &L5,
            "truncated minor of the internal thread, carried over from the other 24 tpi row of the Japanese table; not the basic minor",
        ),
    },
];
static L7: [Citation; 2] = [
    Citation::from_table(&SOURCES[7], "row 34,7 x 24"),
    Citation::from_table(&SOURCES[9], "core diameter 33.67"),
];
static L8: [Citation; 4] = [
    Citation::from_table(&SOURCES[3], "table of shell standards"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[17], "list of shells"),
];
static L9: [Figure<Length>; 4] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L8, "road"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L8,
            "mountain and oversize",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(83.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L8, "downhill"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(100.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L8, "fat bicycle"),
        &[],
    ),
];
static L10: [Citation; 2] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[22], "quoted crank instructions"),
];
static L11: [Citation; 2] = [
    Citation::from_table(&SOURCES[15], "BSA rows"),
    Citation::from_table(&SOURCES[24], "spindle diameter"),
];
static L12: [Citation; 1] = [Citation::from_table(&SOURCES[26], "spacer chart")];
static L13: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L10, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L11,
            "the chart shows that it fits, the guides print the diameter",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L12, ""),
        &[],
    ),
];
static L14: [Citation; 2] = [
    Citation::from_table(&SOURCES[3], "table of shell standards"),
    Citation::from_table(&SOURCES[27], "description of the standard"),
];
static L15: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("iso_6696"),
        why: Cow::Borrowed(
            "nominal diameters 0.127 mm apart, pitch diameters 0.004 mm apart: one thread in practice, the parts interchange",
        ),
    },
    Confusion {
        code: Cow::Borrowed("french"),
        why: Cow::Borrowed(
            "cup readings 34.6 to 34.7 and 34.8 mm overlap within caliper error and both shells are 68 wide; what separates them is the pitch: ten turns advance 10.58 mm here and 10.00 mm there, and the French drive side is right-hand",
        ),
    },
    Confusion {
        code: Cow::Borrowed("swiss"),
        why: Cow::Borrowed(
            "cup readings 34.6 to 34.7 and 34.8 mm overlap within caliper error and both shells are 68 wide; what separates them is the pitch: ten turns advance 10.58 mm here and 10.00 mm there",
        ),
    },
    Confusion {
        code: Cow::Borrowed("raleigh_26"),
        why: Cow::Borrowed(
            "same diameter class; ten turns advance 10.58 mm here and 9.77 mm there, and that shell is 71 or 76 wide",
        ),
    },
];
static L16: [Text; 3] = [
    Cow::Borrowed("ISO 6696"),
    Cow::Borrowed("ISO 1.375 x 24"),
    Cow::Borrowed("1.375 x 24"),
];
static L17: [Citation; 1] = [Citation::from_table(
    &SOURCES[7],
    "row 34,7 x 24, starred as ISO 6696",
)];
static L18: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Bsc, mm(34.798), Pitch::from_table_tpi(24)),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L17,
        "the national table equates ISO 6696 with 34.798 mm",
    ),
}];
static L19: [Citation; 3] = [
    Citation::from_table(&SOURCES[3], "ISO row, 34.925 mm"),
    Citation::from_table(&SOURCES[9], "table after DIN 79012"),
    Citation::from_table(&SOURCES[42], "1.375 in x 24 tpi"),
];
static L20: [Citation; 1] = [Citation::from_table(&SOURCES[14], "scope")];
static L21: [Citation; 1] = [Citation::from_table(&SOURCES[9], "core diameter, ISO row")];
static L22: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(33.67)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L21,
        "the value of the 1.370 in row, repeated",
    ),
}];
static L23: [Citation; 1] = [Citation::from_table(
    &SOURCES[3],
    "table of shell standards",
)];
static L24: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L23, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L23, ""),
        &[],
    ),
];
static L25: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("bsc"),
    why: Cow::Borrowed(
        "nominal diameters 0.127 mm apart, pitch diameters 0.004 mm apart: one thread in practice, the parts interchange",
    ),
}];
static L26: [Text; 3] = [
    Cow::Borrowed("ITA"),
    Cow::Borrowed("Italian"),
    Cow::Borrowed("36 x 24"),
];
static L27: [Citation; 7] = [
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[35], "table of shells"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[36], "list of formats"),
];
static L28: [Citation; 6] = [
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[35], "table of shells"),
    Citation::from_table(&SOURCES[2], "entry BSA bearing"),
];
static L29: [Citation; 5] = [
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[35], "table of shells"),
];
static L30: [Citation; 1] = [Citation::from_table(
    &SOURCES[54],
    "pitch and minor diameter of the basic profile",
)];
static L31: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(35.313)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "36 mm - 0.649519 x 25.4/24 mm",
        &L30,
        "if of the ISO profile",
    ),
}];
static L32: [Citation; 1] = [Citation::from_table(&SOURCES[9], "core diameter 34.87")];
static L33: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(34.854)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "36 mm - 1.082532 x 25.4/24 mm",
        &L30,
        "if of the ISO profile",
    ),
}];
static L34: [Citation; 1] = [Citation::from_table(&SOURCES[9], "core diameter")];
static L35: [Citation; 5] = [
    Citation::from_table(&SOURCES[1], "bottom-bracket threads"),
    Citation::from_table(&SOURCES[4], "entry bottom-bracket shell"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[36], "list of formats"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L36: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(70.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L35, ""),
    &[],
)];
static L37: [Citation; 2] = [
    Citation::from_table(&SOURCES[6], "series on shell threads"),
    Citation::from_table(&SOURCES[16], "overview of standards"),
];
static L38: [Text; 3] = [
    Cow::Borrowed("French"),
    Cow::Borrowed("FRA"),
    Cow::Borrowed("35 x 1 French"),
];
static L39: [Citation; 4] = [
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[6], "series on shell threads"),
    Citation::from_table(&SOURCES[9], "table after DIN 79012"),
];
static L40: [Citation; 4] = [
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[2], "entry BSA bearing"),
    Citation::from_table(&SOURCES[37], "list of threads"),
];
static L41: [Citation; 2] = [
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
];
static L42: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(34.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L34, "rounded"),
}];
static L43: [Citation; 1] = [Citation::from_table(&SOURCES[13], "table of dimensions")];
static L44: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(68.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
    &[],
)];
static L45: [Citation; 2] = [
    Citation::from_table(&SOURCES[6], "series on shell threads"),
    Citation::from_table(&SOURCES[12], "list of shell threads"),
];
static L46: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("swiss"),
        why: Cow::Borrowed("identical thread and width; only the hand of the drive side differs"),
    },
    Confusion {
        code: Cow::Borrowed("bsc"),
        why: Cow::Borrowed(
            "cup readings 34.8 and 34.6 to 34.7 mm overlap within caliper error and both shells are 68 wide; what separates them is the pitch: ten turns advance 10.00 mm here and 10.58 mm there, and the drive side is right-hand here",
        ),
    },
];
static L47: [Text; 2] = [Cow::Borrowed("Swiss"), Cow::Borrowed("35 x 1 Swiss")];
static L48: [Citation; 4] = [
    Citation::from_table(&SOURCES[12], "list of shell threads"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[6], "series on shell threads"),
    Citation::from_table(&SOURCES[37], "list of threads"),
];
static L49: [Citation; 1] = [Citation::from_table(&SOURCES[55], "Swiss shells")];
static L50: [Dissent<Hand>; 1] = [Dissent {
    value: Hand::Right,
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L49,
        "says right-hand on both sides",
    ),
}];
static L51: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("french"),
        why: Cow::Borrowed("identical thread and width; only the hand of the drive side differs"),
    },
    Confusion {
        code: Cow::Borrowed("bsc"),
        why: Cow::Borrowed(
            "cup readings 34.8 and 34.6 to 34.7 mm overlap within caliper error and both shells are 68 wide; what separates them is the pitch: ten turns advance 10.00 mm here and 10.58 mm there",
        ),
    },
];
static L52: [Text; 3] = [
    Cow::Borrowed("Raleigh"),
    Cow::Borrowed("Nottingham"),
    Cow::Borrowed("Raleigh 26 tpi"),
];
static L53: [Citation; 1] = [Citation::from_table(&SOURCES[9], "26 tpi row")];
static L54: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Unknown, mm(34.8), Pitch::from_table_tpi(26)),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L53,
        "prints 34.8 mm; another page says that only the pitch differs from the 1.370 in thread: 34.8 against 34.925 is unresolved",
    ),
}];
static L55: [Citation; 4] = [
    Citation::from_table(&SOURCES[38], "list of cycle threads"),
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[9], "26 tpi row"),
    Citation::from_table(&SOURCES[0], "list of threads"),
];
static L56: [Citation; 2] = [
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[38], "list of cycle threads"),
];
static L57: [Citation; 1] = [Citation::from_table(&SOURCES[38], "list of cycle threads")];
static L58: [Citation; 1] = [Citation::from_table(
    &SOURCES[9],
    "core diameter, 26 tpi row",
)];
static L59: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(33.67)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L58,
        "cannot be right at 26 tpi; the value of the 1.370 in row, repeated",
    ),
}];
static L60: [Citation; 2] = [
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[39], "shell width"),
];
static L61: [Citation; 2] = [
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[40], "table of shells"),
];
static L62: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(71.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L60, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(76.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L61, ""),
        &[],
    ),
];
static L63: [Citation; 2] = [
    Citation::from_table(&SOURCES[0], "list of threads"),
    Citation::from_table(&SOURCES[41], "page on 26 tpi parts"),
];
static L64: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("bsc"),
    why: Cow::Borrowed(
        "same diameter class; ten turns advance 9.77 mm here and 10.58 mm there, and that shell is 68 or 73 wide",
    ),
}];
static L65: [Text; 3] = [
    Cow::Borrowed("T47"),
    Cow::Borrowed("M47 x 1"),
    Cow::Borrowed("T47-77"),
];
static L66: [Citation; 4] = [
    Citation::from_table(&SOURCES[27], "description of the standard"),
    Citation::from_table(&SOURCES[28], "description of T47"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[29], "table of shell widths"),
];
static L67: [Citation; 1] = [Citation::from_table(
    &SOURCES[32],
    "bottom bracket and axles",
)];
static L68: [Citation; 2] = [
    Citation::from_table(&SOURCES[27], "description of the standard"),
    Citation::from_table(&SOURCES[28], "description of T47"),
];
static L69: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(46.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Agreeing,
        Grade::Agreeing,
        "",
        &L68,
        "bore before tapping, the bore of a PF30 shell; not the basic minor",
    ),
}];
static L70: [Citation; 2] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[29], "table of shell widths"),
];
static L71: [Citation; 1] = [Citation::from_table(
    &SOURCES[31],
    "description of the shell",
)];
static L72: [Dissent<Span<Length>>; 2] = [
    Dissent {
        value: Span {
            nominal: Some(mm(76.75)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "34 mm + 42.75 mm",
            &L71,
            "",
        ),
    },
    Dissent {
        value: Span {
            nominal: Some(mm(77.25)),
            lower: None,
            upper: None,
        },
        evidence: Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "34 mm + 43.25 mm",
            &L71,
            "if taken from the 86.5 mm shell",
        ),
    },
];
static L73: [Citation; 2] = [
    Citation::from_table(&SOURCES[31], "description of the shell"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L74: [Citation; 2] = [
    Citation::from_table(&SOURCES[30], "posts on 85.5 and 86.5 mm"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L75: [Citation; 4] = [
    Citation::from_table(&SOURCES[30], "posts on 85.5 and 86.5 mm"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[29], "table of shell widths"),
    Citation::from_table(&SOURCES[31], "description of the shell"),
];
static L76: [Citation; 1] = [Citation::from_table(&SOURCES[29], "table of shell widths")];
static L77: [Figure<Length>; 7] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L70,
            "external bearings",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L70,
            "one page gives it external bearings, a crank maker pairs it with an internal part: this width does not fix where the bearings sit",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(77.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L73,
            "asymmetric; the halves sum to 76.75 mm",
        ),
        &L72,
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(85.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L74,
            "internal road, since about 2019; a chart lists it and 86.5 mm as separate frames",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(86.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L75,
            "internal road, the original width; still on frames",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(89.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L76,
            "internal, mountain",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(92.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L76,
            "internal, mountain",
        ),
        &[],
    ),
];
static L78: [Citation; 2] = [
    Citation::from_table(&SOURCES[31], "external cup on the drive side"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L79: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(43.25)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "86.5 mm / 2",
        &L71,
        "if taken from the 86.5 mm shell",
    ),
}];
static L80: [Citation; 2] = [
    Citation::from_table(&SOURCES[31], "internal cup on the non-drive side"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L81: [HalfWidths; 1] = [HalfWidths {
    width: mm(77.0),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "68 mm / 2",
            &L78,
            "a spacer chart gives 43.75 - 9.5 = 34.25 mm within its 0.5 mm steps",
        ),
        &[],
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(42.75)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "85.5 mm / 2",
            &L80,
            "a spacer chart gives 43.25 - 1 = 42.25 mm within its 0.5 mm steps",
        ),
        &L79,
    ),
}];
static L82: [Citation; 2] = [
    Citation::from_table(&SOURCES[27], "description of the standard"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
];
static L83: [Citation; 1] = [Citation::from_table(&SOURCES[32], "title")];
static L84: [Citation; 1] = [Citation::from_table(
    &SOURCES[27],
    "description of the standard",
)];
static L85: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L82, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L83,
            "one owner's note of low grade",
        ),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L84, ""),
        &[],
    ),
];
static L86: [Citation; 2] = [
    Citation::from_table(&SOURCES[28], "description of T47"),
    Citation::from_table(&SOURCES[30], "posts on 85.5 and 86.5 mm"),
];
static L87: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("isis_overdrive"),
        why: Cow::Borrowed(
            "M47 x 1 here and M48 x 1.5 there: close to the eye, never interchange; the pitch separates them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("pf30"),
        why: Cow::Borrowed(
            "a 46.0 mm plain bore against a minor diameter near 45.92: the thread is there or it is not",
        ),
    },
];
static L88: [Text; 2] = [Cow::Borrowed("ISIS Overdrive"), Cow::Borrowed("M48 x 1.5")];
static L89: [Citation; 2] = [
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[9], "table after DIN 79012"),
];
static L90: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(46.53)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L34,
        "does not fit the ISO profile",
    ),
}];
static L91: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(100.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
        &[],
    ),
];
static L92: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("t47"),
    why: Cow::Borrowed(
        "M48 x 1.5 here and M47 x 1 there: close to the eye, never interchange; the pitch separates them",
    ),
}];
static L93: [Text; 1] = [Cow::Borrowed("Fauber threaded")];
static L94: [Citation; 1] = [Citation::from_table(&SOURCES[9], "table after DIN 79012")];
static L95: [Text; 1] = [Cow::Borrowed("Chater-Lea")];
static L96: [Text; 3] = [
    Cow::Borrowed("BB30"),
    Cow::Borrowed("BB30-68"),
    Cow::Borrowed("BB30-73"),
];
static L97: [Citation; 3] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[56], "bore of the shell"),
];
static L98: [Citation; 4] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[35], "table of shells"),
];
static L99: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L98, "road"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L98, "mountain"),
        &[],
    ),
];
static L100: [Citation; 1] = [Citation::from_table(&SOURCES[33], "list of standards")];
static L101: [HalfWidths; 1] = [HalfWidths {
    width: mm(68.0),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::CommonPractice,
            "68 mm / 2",
            &L100,
            "",
        ),
        &[],
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::CommonPractice,
            "68 mm / 2",
            &L100,
            "",
        ),
        &[],
    ),
}];
static L102: [Citation; 3] = [
    Citation::from_table(&SOURCES[5], "entry BB30 shell"),
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[45], "comparison of BB30 and PF30"),
];
static L103: [Citation; 2] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[45], "comparison of BB30 and PF30"),
];
static L104: [Citation; 1] = [Citation::from_table(&SOURCES[25], "spacer chart")];
static L105: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L103, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L104,
            "with adapters",
        ),
        &[],
    ),
];
static L106: [Confusion; 3] = [
    Confusion {
        code: Cow::Borrowed("bb86"),
        why: Cow::Borrowed(
            "bore 41.96 here and 41.0 there: a bore gauge tells; this shell has grooves for retaining rings",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bb92"),
        why: Cow::Borrowed(
            "bore 41.96 here and 41.0 there: a bore gauge tells; this shell has grooves for retaining rings",
        ),
    },
    Confusion {
        code: Cow::Borrowed("pf41_wide"),
        why: Cow::Borrowed(
            "bore 41.96 here and 41.0 there: a bore gauge tells; this shell has grooves for retaining rings",
        ),
    },
];
static L107: [Text; 3] = [
    Cow::Borrowed("BB30A"),
    Cow::Borrowed("BB30-83"),
    Cow::Borrowed("BB30 Ai"),
];
static L108: [Citation; 4] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[44], "half widths"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
];
static L109: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L108, "road"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(83.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L108, "mountain"),
        &[],
    ),
];
static L110: [Citation; 1] = [Citation::from_table(&SOURCES[44], "half widths")];
static L111: [HalfWidths; 1] = [HalfWidths {
    width: mm(73.0),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L110, ""),
        &[],
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(39.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L110, ""),
        &[],
    ),
}];
static L112: [Citation; 1] = [Citation::from_table(&SOURCES[33], "circlips")];
static L113: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(30.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
    &[],
)];
static L114: [Text; 1] = [Cow::Borrowed("BBright direct fit")];
static L115: [Citation; 1] = [Citation::from_table(&SOURCES[16], "overview of standards")];
static L116: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(79.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L115, ""),
    &[],
)];
static L117: [Citation; 2] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[47], "comparison of shells"),
];
static L118: [HalfWidths; 1] = [HalfWidths {
    width: mm(79.0),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Derived, Grade::Published, "68 mm / 2", &L117, ""),
        &[],
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(45.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Derived, Grade::Published, "79 mm - 34 mm", &L117, ""),
        &[],
    ),
}];
static L119: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(30.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L115, ""),
    &[],
)];
static L120: [Text; 2] = [Cow::Borrowed("PF30"), Cow::Borrowed("PressFit 30")];
static L121: [Citation; 5] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[35], "table of shells"),
    Citation::from_table(&SOURCES[45], "comparison of BB30 and PF30"),
];
static L122: [Citation; 3] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[35], "table of shells"),
];
static L123: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L122, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L122, ""),
        &[],
    ),
];
static L124: [Citation; 1] = [Citation::from_table(&SOURCES[25], "spacer columns")];
static L125: [HalfWidths; 2] = [
    HalfWidths {
        width: mm(68.0),
        drive: Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::CommonPractice,
                "68 mm / 2",
                &L104,
                "",
            ),
            &[],
        ),
        non_drive: Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::CommonPractice,
                "68 mm / 2",
                &L104,
                "",
            ),
            &[],
        ),
    },
    HalfWidths {
        width: mm(73.0),
        drive: Figure::from_table(
            Span {
                nominal: Some(mm(36.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "45.0 mm - 8.5 mm",
                &L124,
                "",
            ),
            &[],
        ),
        non_drive: Figure::from_table(
            Span {
                nominal: Some(mm(36.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "45.0 mm - 8.5 mm",
                &L124,
                "",
            ),
            &[],
        ),
    },
];
static L126: [Citation; 1] = [Citation::from_table(
    &SOURCES[45],
    "comparison of BB30 and PF30",
)];
static L127: [Citation; 2] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[24], "spindle diameter"),
];
static L128: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L127, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L12, ""),
        &[],
    ),
];
static L129: [Confusion; 5] = [
    Confusion {
        code: Cow::Borrowed("pf30a"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 68 or 73 wide, symmetric, that one is 73 or 83 wide, extra on the non-drive side: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("osbb61"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 68 or 73 wide, symmetric, that one is 61 wide: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bbright_pf"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 68 or 73 wide, symmetric, that one is 79 wide, 34 from the centre on the drive side and 45 on the other: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bb386"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 68 or 73 wide, symmetric, that one is 86.5 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("t47"),
        why: Cow::Borrowed(
            "a plain 46.0 mm bore against a minor diameter near 45.92: the thread is there or it is not",
        ),
    },
];
static L130: [Text; 3] = [
    Cow::Borrowed("PF30A"),
    Cow::Borrowed("PF30-83"),
    Cow::Borrowed("PF30 Ai"),
];
static L131: [Citation; 3] = [
    Citation::from_table(&SOURCES[44], "half widths"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
];
static L132: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(73.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L131, "road"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(83.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L131, "mountain"),
        &[],
    ),
];
static L133: [HalfWidths; 2] = [
    HalfWidths {
        width: mm(73.0),
        drive: Figure::from_table(
            Span {
                nominal: Some(mm(34.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L110,
                "a crank maker's spacer chart gives the same: 45.0 - 11 mm",
            ),
            &[],
        ),
        non_drive: Figure::from_table(
            Span {
                nominal: Some(mm(39.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L110,
                "a crank maker's spacer chart gives the same: 45.0 - 6 mm",
            ),
            &[],
        ),
    },
    HalfWidths {
        width: mm(83.0),
        drive: Figure::from_table(
            Span {
                nominal: Some(mm(39.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "45.0 mm - 6 mm",
                &L124,
                "the order of the chart rows was read from extracted text; the sum 39 + 44 = 83 supports it",
            ),
            &[],
        ),
        non_drive: Figure::from_table(
            Span {
                nominal: Some(mm(44.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "45.0 mm - 1 mm",
                &L124,
                "",
            ),
            &[],
        ),
    },
];
static L134: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L127, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
        &[],
    ),
];
static L135: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("pf30"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 73 or 83 wide, extra on the non-drive side, that one is 68 or 73 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("osbb61"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 73 or 83 wide, extra on the non-drive side, that one is 61 wide: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bbright_pf"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 73 or 83 wide, extra on the non-drive side, that one is 79 wide, 34 from the centre on the drive side and 45 on the other: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bb386"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 73 or 83 wide, extra on the non-drive side, that one is 86.5 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
];
static L136: [Text; 2] = [Cow::Borrowed("OSBB"), Cow::Borrowed("OSBB 61")];
static L137: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(61.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(84.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Memory,
            Grade::Memory,
            "",
            &[],
            "a mountain width; not seen",
        ),
        &[],
    ),
];
static L138: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
        &[],
    ),
];
static L139: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("pf30"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 61 wide, that one is 68 or 73 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("pf30a"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 61 wide, that one is 73 or 83 wide, extra on the non-drive side: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bbright_pf"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 61 wide, that one is 79 wide, 34 from the centre on the drive side and 45 on the other: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bb386"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 61 wide, that one is 86.5 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
];
static L140: [Text; 2] = [Cow::Borrowed("BBright"), Cow::Borrowed("BBright press fit")];
static L141: [Citation; 3] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
];
static L142: [Citation; 4] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
    Citation::from_table(&SOURCES[46], "shell width"),
];
static L143: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(79.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L142, ""),
    &[],
)];
static L144: [Citation; 3] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[47], "comparison of shells"),
    Citation::from_table(&SOURCES[25], "spacer columns"),
];
static L145: [Citation; 3] = [
    Citation::from_table(&SOURCES[16], "non-drive bearing 11 mm further out"),
    Citation::from_table(&SOURCES[47], "comparison of shells"),
    Citation::from_table(&SOURCES[25], "spacer columns"),
];
static L146: [HalfWidths; 1] = [HalfWidths {
    width: mm(79.0),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(34.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "68 mm / 2",
            &L144,
            "the extra width is on the non-drive side only; a crank maker's spacer chart gives the same: 45.0 - 11 mm",
        ),
        &[],
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(45.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "79 mm - 34 mm",
            &L145,
            "a crank maker's spacer chart gives the same: 45.0 - 0 mm",
        ),
        &[],
    ),
}];
static L147: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L12, ""),
        &[],
    ),
];
static L148: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("pf30"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 79 wide, 34 from the centre on the drive side and 45 on the other, that one is 68 or 73 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("pf30a"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 79 wide, 34 from the centre on the drive side and 45 on the other, that one is 73 or 83 wide, extra on the non-drive side: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("osbb61"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 79 wide, 34 from the centre on the drive side and 45 on the other, that one is 61 wide: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bb386"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 79 wide, 34 from the centre on the drive side and 45 on the other, that one is 86.5 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
];
static L149: [Text; 2] = [Cow::Borrowed("BB386"), Cow::Borrowed("BB386EVO")];
static L150: [Citation; 3] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
    Citation::from_table(&SOURCES[33], "list of standards"),
];
static L151: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(86.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L12, "rounded"),
}];
static L152: [Citation; 2] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[33], "list of standards"),
];
static L153: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(86.5)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L152, ""),
    &L151,
)];
static L154: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(43.5)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "45.0 mm - 1.5 mm",
        &L124,
        "shims come in 0.5 mm steps",
    ),
}];
static L155: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(43.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "45.0 mm - 2 mm",
        &L124,
        "shims come in 0.5 mm steps",
    ),
}];
static L156: [HalfWidths; 1] = [HalfWidths {
    width: mm(86.5),
    drive: Figure::from_table(
        Span {
            nominal: Some(mm(43.25)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "86.5 mm / 2",
            &L104,
            "symmetric",
        ),
        &L154,
    ),
    non_drive: Figure::from_table(
        Span {
            nominal: Some(mm(43.25)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Derived,
            Grade::Published,
            "86.5 mm / 2",
            &L104,
            "symmetric",
        ),
        &L155,
    ),
}];
static L157: [Confusion; 4] = [
    Confusion {
        code: Cow::Borrowed("pf30"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 86.5 wide, symmetric, that one is 68 or 73 wide, symmetric: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("pf30a"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 86.5 wide, symmetric, that one is 73 or 83 wide, extra on the non-drive side: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("osbb61"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 86.5 wide, symmetric, that one is 61 wide: width and the side that carries the extra separate them",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bbright_pf"),
        why: Cow::Borrowed(
            "both bores are 46 mm; this one is 86.5 wide, symmetric, that one is 79 wide, 34 from the centre on the drive side and 45 on the other: width and the side that carries the extra separate them",
        ),
    },
];
static L158: [Text; 2] = [Cow::Borrowed("BB86"), Cow::Borrowed("PF86")];
static L159: [Citation; 5] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
    Citation::from_table(&SOURCES[24], "guide to BB86 and BB92"),
];
static L160: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(86.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L104, "rounded"),
}];
static L161: [Citation; 5] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[24], "guide to BB86 and BB92"),
    Citation::from_table(&SOURCES[48], "list of systems"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
];
static L162: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(86.5)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L161, ""),
    &L160,
)];
static L163: [Citation; 2] = [
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[16], "overview of standards"),
];
static L164: [Citation; 1] = [Citation::from_table(&SOURCES[24], "guide to BB86 and BB92")];
static L165: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L163, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L164, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L12, "thin bearing"),
        &[],
    ),
];
static L166: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("bb30"),
        why: Cow::Borrowed(
            "bore 41.0 here and 41.96 there: a bore gauge tells; that shell has grooves for retaining rings",
        ),
    },
    Confusion {
        code: Cow::Borrowed("bbright_df"),
        why: Cow::Borrowed(
            "bore 41.0 here and 41.96 there: a bore gauge tells; that shell has grooves for retaining rings",
        ),
    },
];
static L167: [Text; 2] = [Cow::Borrowed("BB92"), Cow::Borrowed("BB89.5")];
static L168: [Citation; 4] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[49], "description of shells"),
];
static L169: [Citation; 2] = [
    Citation::from_table(&SOURCES[24], "guide to BB86 and BB92"),
    Citation::from_table(&SOURCES[51], "list of shells"),
];
static L170: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(91.5)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L169, ""),
}];
static L171: [Citation; 4] = [
    Citation::from_table(&SOURCES[16], "overview of standards"),
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[48], "list of systems"),
    Citation::from_table(&SOURCES[49], "description of shells"),
];
static L172: [Citation; 3] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[48], "list of systems"),
    Citation::from_table(&SOURCES[49], "description of shells"),
];
static L173: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(92.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L171,
            "the same shells as 91.5, other rounding",
        ),
        &L170,
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(89.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Agreeing,
            Grade::Agreeing,
            "",
            &L172,
            "narrow variant",
        ),
        &[],
    ),
];
static L174: [Citation; 1] = [Citation::from_table(&SOURCES[48], "list of systems")];
static L175: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L174, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(28.99)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L127, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(30.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L174,
            "thin bearing",
        ),
        &[],
    ),
];
static L176: [Text; 4] = [
    Cow::Borrowed("BB104.5"),
    Cow::Borrowed("BB107"),
    Cow::Borrowed("BB121"),
    Cow::Borrowed("BB132"),
];
static L177: [Citation; 2] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[50], "list of shells"),
];
static L178: [Citation; 1] = [Citation::from_table(&SOURCES[15], "chart of shells")];
static L179: [Figure<Length>; 4] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(104.5)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L178, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(107.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L178, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(121.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L177, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(132.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "not seen"),
        &[],
    ),
];
static L180: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(28.99)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L127, ""),
    &[],
)];
static L181: [Text; 2] = [Cow::Borrowed("BB90"), Cow::Borrowed("BB95")];
static L182: [Citation; 3] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
];
static L183: [Citation; 4] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[25], "spacer chart"),
    Citation::from_table(&SOURCES[26], "spacer chart"),
    Citation::from_table(&SOURCES[49], "description of shells"),
];
static L184: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(90.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L183, "road"),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(95.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L100, "mountain"),
        &[],
    ),
];
static L185: [Citation; 1] = [Citation::from_table(&SOURCES[49], "description of shells")];
static L186: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(24.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L185, ""),
    &[],
)];
static L187: [Text; 4] = [
    Cow::Borrowed("OPC"),
    Cow::Borrowed("Ashtabula"),
    Cow::Borrowed("Fauber"),
    Cow::Borrowed("one-piece"),
];
static L188: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(51.4)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
}];
static L189: [Citation; 2] = [
    Citation::from_table(&SOURCES[33], "list of standards"),
    Citation::from_table(&SOURCES[13], "51.3 mm (2.02 in), approximate"),
];
static L190: [Citation; 2] = [
    Citation::from_table(&SOURCES[13], "table of dimensions"),
    Citation::from_table(&SOURCES[33], "list of standards"),
];
static L191: [Figure<Length>; 2] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L190, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(65.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
        &[],
    ),
];
static L192: [Text; 1] = [Cow::Borrowed("Mid")];
static L193: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(41.2)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
}];
static L194: [Citation; 2] = [
    Citation::from_table(&SOURCES[52], "list of BMX shells"),
    Citation::from_table(&SOURCES[53], "list of BMX shells"),
];
static L195: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(68.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
    &[],
)];
static L196: [Citation; 1] = [Citation::from_table(&SOURCES[52], "list of BMX shells")];
static L197: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(19.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L196, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(22.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L196, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(24.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L196, ""),
        &[],
    ),
];
static L198: [Text; 1] = [Cow::Borrowed("Spanish")];
static L199: [Text; 1] = [Cow::Borrowed("Thompson")];
static L200: [Citation; 1] = [Citation::from_table(&SOURCES[40], "Thompson")];
static L201: [Figure<Length>; 3] = [
    Figure::from_table(
        Span {
            nominal: Some(mm(65.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(68.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
        &[],
    ),
    Figure::from_table(
        Span {
            nominal: Some(mm(70.0)),
            lower: None,
            upper: None,
        },
        Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
        &[],
    ),
];
static L202: [Text; 1] = [Cow::Borrowed("Thompson 30")];
static L203: [Text; 1] = [Cow::Borrowed("Thompson 33")];
static L204: [Text; 1] = [Cow::Borrowed("Thompson 35")];
static L205: [Text; 1] = [Cow::Borrowed("Thompson 38")];
static L206: [Text; 1] = [Cow::Borrowed("Thompson 40")];
static L207: [Text; 1] = [Cow::Borrowed("Thompson 45")];
static L208: [Text; 1] = [Cow::Borrowed("Merlin")];
static L209: [Citation; 1] = [Citation::from_table(&SOURCES[40], "Merlin")];
static L210: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: Some(mm(68.0)),
        lower: None,
        upper: None,
    },
    Evidence::from_table(Grade::Published, Grade::Published, "", &L209, ""),
    &[],
)];
static L211: [Citation; 1] = [Citation::from_table(&SOURCES[40], "bevelled shells")];
static L212: [Figure<Length>; 1] = [Figure::from_table(
    Span {
        nominal: None,
        lower: Some(mm(65.0)),
        upper: Some(mm(73.0)),
    },
    Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L211,
        "range of shell widths that it takes",
    ),
    &[],
)];
static L213: [Citation; 2] = [
    Citation::from_table(&SOURCES[18], "quoted shell width window"),
    Citation::from_table(&SOURCES[19], "shell preparation and torque"),
];
static L214: [Citation; 2] = [
    Citation::from_table(&SOURCES[18], "quoted shell width window"),
    Citation::from_table(&SOURCES[19], "68 +/- 0.8 mm"),
];
static L215: [Citation; 2] = [
    Citation::from_table(&SOURCES[18], "quoted shell width window"),
    Citation::from_table(&SOURCES[19], "70 +/- 0.8 mm"),
];
static L216: [Citation; 1] = [Citation::from_table(
    &SOURCES[20],
    "BSA shell width, quoted",
)];
static L217: [Citation; 1] = [Citation::from_table(&SOURCES[20], "68 +/- 0.5 mm")];
static L218: [Citation; 1] = [Citation::from_table(
    &SOURCES[21],
    "width as supplied, quoted",
)];
static L219: [Citation; 1] = [Citation::from_table(
    &SOURCES[30],
    "posts on 85.5 and 86.5 mm",
)];
static L220: [Citation; 1] = [Citation::from_table(&SOURCES[56], "bore of the shell")];
static L221: [Citation; 1] = [Citation::from_table(
    &SOURCES[57],
    "bore of the shell and metal cup",
)];
static L222: [Citation; 3] = [
    Citation::from_table(&SOURCES[22], "quoted crank instructions"),
    Citation::from_table(&SOURCES[59], "spacers under external cups"),
    Citation::from_table(&SOURCES[60], "spacers under external cups"),
];
static L223: [Citation; 1] = [Citation::from_table(
    &SOURCES[22],
    "quoted crank instructions",
)];
static L224: [Citation; 1] = [Citation::from_table(
    &SOURCES[58],
    "fitting of the external cups",
)];
static L225: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(87.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Derived,
        Grade::Published,
        "43.75 mm + 43.25 mm",
        &L124,
        "what the other internal T47 rows of the chart sum to; shims come in 0.5 mm steps",
    ),
}];

pub(crate) static SHELLS: [Shell; 34] = [
    Shell {
        code: Cow::Borrowed("bsc"),
        name: Cow::Borrowed("BSA / BSC / English, 1.370 in x 24 tpi"),
        aliases: Cow::Borrowed(&L0),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.370), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "1.370 in is 34.798 mm exactly; many pages round to 34.8 mm. The pages largely copy one another; the national table prints 34.798 mm on its own",
            ),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L2, ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L2, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.234)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L3,
                "equals D - 0.5327 P",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.670)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L7,
                "basic minor, equals D - 1.0654 P",
            ),
            &L6,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L9),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L13),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Current,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L14, ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&L15),
        note: Cow::Borrowed(
            "Internal bearings take square taper and other cartridge spindles. A male thread of about 1 mm pitch reads about 0.2 mm under nominal on a caliper, the female minor about 0.8 mm under. BMX retailers call a 68 mm shell with this thread \"Euro\" or \"35 mm threaded\". A glossary that ties 1.375 in to the 73 mm width and 1.37 in to 68 mm is followed by nobody else.",
        ),
    },
    Shell {
        code: Cow::Borrowed("iso_6696"),
        name: Cow::Borrowed("ISO 6696, 1.375 in x 24 tpi"),
        aliases: Cow::Borrowed(&L16),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoInch, inch(1.375), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L19,
                "ISO basic profile at an inch pitch according to the scope of the standard; the standard itself was not read",
            ),
            &L18,
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L20,
                "fixed cup left-hand",
            ),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L20,
                "adjustable cup right-hand",
            ),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.2376)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "34.925 mm - 0.649519 x 25.4/24 mm",
                &L20,
                "",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.779)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "34.925 mm - 1.082532 x 25.4/24 mm",
                &L20,
                "",
            ),
            &L22,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L24),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Current,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L20,
                "listed active",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L25),
        note: Cow::Borrowed(
            "Interchange with the 1.370 in thread is the stated aim of the standard and two trade pages agree. Its limits of size and tolerance class were not seen.",
        ),
    },
    Shell {
        code: Cow::Borrowed("italian"),
        name: Cow::Borrowed("Italian, 36 mm x 24 tpi"),
        aliases: Cow::Borrowed(&L26),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(36.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L27,
                "flank angle not settled: one core diameter fits the 60 degree rounded form, 55 degree cycle threads also existed, and the national table does not list it",
            ),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L28, ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L29, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(35.436)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "36 mm - 0.5327 x 25.4/24 mm",
                &L32,
                "if of the 60 degree rounded form",
            ),
            &L31,
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.87)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L34,
                "fits the 60 degree rounded form, 34.872",
            ),
            &L33,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L36),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Declining,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L37, ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "A stripped 1.370 in, French or Swiss shell can be recut to this thread (one published page); its width then falls short of 70 mm.",
        ),
    },
    Shell {
        code: Cow::Borrowed("french"),
        name: Cow::Borrowed("French, M35 x 1"),
        aliases: Cow::Borrowed(&L38),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(35.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L39, ""),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L40, ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.350)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "35 mm - 0.649519 x 1 mm",
                &L30,
                "",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.917)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "35 mm - 1.082532 x 1 mm",
                &L30,
                "",
            ),
            &L42,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L44),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L45,
                "in use into the 1980s",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L46),
        note: Cow::Borrowed("No published limits or tolerance class were found."),
    },
    Shell {
        code: Cow::Borrowed("swiss"),
        name: Cow::Borrowed("Swiss, M35 x 1 with left-hand drive side"),
        aliases: Cow::Borrowed(&L47),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(35.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L48, ""),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L41,
                "disputed: check the shell itself",
            ),
            &L50,
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L41, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.350)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "35 mm - 0.649519 x 1 mm",
                &L30,
                "",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.917)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "35 mm - 1.082532 x 1 mm",
                &L30,
                "",
            ),
            &[],
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L44),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L45, "rare"),
            &[],
        )),
        confused_with: Cow::Borrowed(&L51),
        note: Cow::Borrowed("No published limits or tolerance class were found."),
    },
    Shell {
        code: Cow::Borrowed("raleigh_26"),
        name: Cow::Borrowed("Raleigh (Nottingham) 1 3/8 in x 26 tpi"),
        aliases: Cow::Borrowed(&L52),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Unknown,
                inch_fraction(11, 8),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L55,
                "flank angle not settled: 60 degrees by family, 55 by the name \"Whitworth\" that it is sometimes given",
            ),
            &L54,
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L56, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.405)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Memory,
                "34.925 mm - 0.5327 x 25.4/26 mm",
                &L57,
                "if of the 60 degree rounded form, which is an assumption",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.884)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Memory,
                "34.925 mm - 1.0654 x 25.4/26 mm",
                &L57,
                "if of the 60 degree rounded form, which is an assumption",
            ),
            &L59,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L62),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L63, ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&L64),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("t47"),
        name: Cow::Borrowed("T47, M47 x 1, internal or external bearings"),
        aliases: Cow::Borrowed(&L65),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(47.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L66, ""),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L67,
                "one owner's note of low grade; one other page says right-hand on both sides but has demonstrable errors and is not used; confirm on the cup maker's sheet before cutting or forcing anything",
            ),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "confirm on the cup maker's sheet",
            ),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.350)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "47 mm - 0.649519 x 1 mm",
                &L30,
                "",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(45.917)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "47 mm - 1.082532 x 1 mm",
                &L30,
                "",
            ),
            &L69,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L77),
        half_widths: Cow::Borrowed(&L81),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L85),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Current,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L86, ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&L87),
        note: Cow::Borrowed(
            "Introduced in 2015. The 77 mm variant has an external cup on the drive side and an internal cup on the non-drive side. No maker publishes a tolerance class.",
        ),
    },
    Shell {
        code: Cow::Borrowed("isis_overdrive"),
        name: Cow::Borrowed("ISIS Overdrive, M48 x 1.5"),
        aliases: Cow::Borrowed(&L88),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(48.0), Pitch::from_table_mm(1.5)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L89, ""),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(47.026)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "48 mm - 0.649519 x 1.5 mm",
                &L30,
                "",
            ),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.376)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "48 mm - 1.082532 x 1.5 mm",
                &L30,
                "",
            ),
            &L90,
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L91),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "for cups with a flange or shoulder against the face; a cup without one, or the plain cup of a cartridge, is located by its thread, and facing then moves nothing on that side",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&L92),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("fauber_threaded"),
        name: Cow::Borrowed("Fauber threaded cup, 46 mm x 24 tpi"),
        aliases: Cow::Borrowed(&L93),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(46.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L94,
                "profile not named; the printed core diameter fits the 60 degree rounded form",
            ),
            &[],
        )),
        hand_drive: Some(Fact::unknown_in_table("not found", &[])),
        hand_non_drive: Some(Fact::unknown_in_table("not found", &[])),
        pitch_diameter: None,
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(44.87)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L34, ""),
            &[],
        )),
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&[]),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table("no page read describes the cup", &[]),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("chater_lea"),
        name: Cow::Borrowed("Chater-Lea, 1.450 in x 26 tpi"),
        aliases: Cow::Borrowed(&L95),
        thread: Some(Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, inch(1.450), Pitch::from_table_tpi(26)),
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "profile not found; two pages confirm that the standard exists, none prints its size",
            ),
            &[],
        )),
        hand_drive: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        hand_non_drive: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        pitch_diameter: None,
        minor_diameter: None,
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&[]),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table("no page read describes the cup", &[]),
        fit: Some(Fact::from_table(
            Hold::Screw,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: Some(Figure::unknown_in_table(
            "no open page prints the usable thread depth or the least engagement of the cup; take it from the frame and component maker",
            &[],
        )),
        status: Some(Fact::from_table(
            Status::Obsolete,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bb30"),
        name: Cow::Borrowed("BB30 direct fit"),
        aliases: Cow::Borrowed(&L96),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.96)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L97,
                "the trade calls it 42 after the outside of the bearing; limits belong to whoever prints them: see the bore windows",
            ),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L99),
        half_widths: Cow::Borrowed(&L101),
        located_by: Fact::from_table(
            LocatedBy::Groove,
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L102,
                "retaining ring in a groove, not the face: facing does not move the bearings, it only changes the gap at the shield",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L105),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L106),
        note: Cow::Borrowed(
            "Bearing 6806, 30 x 42 x 7 mm. One glossary gives the ring groove as 44 mm diameter and 1.0 mm wide; the spacing of the grooves, roundness and coaxiality limits were not found.",
        ),
    },
    Shell {
        code: Cow::Borrowed("bb30a"),
        name: Cow::Borrowed("BB30A / BB30-83, asymmetric direct fit"),
        aliases: Cow::Borrowed(&L107),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.96)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L109),
        half_widths: Cow::Borrowed(&L111),
        located_by: Fact::from_table(
            LocatedBy::Groove,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L112, ""),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L113),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("The half widths of the 83 mm shell were not found for this bore."),
    },
    Shell {
        code: Cow::Borrowed("bbright_df"),
        name: Cow::Borrowed("BBright direct fit"),
        aliases: Cow::Borrowed(&L114),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.96)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L115, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L116),
        half_widths: Cow::Borrowed(&L118),
        located_by: Fact::from_table(
            LocatedBy::Groove,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L119),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L106),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("pf30"),
        name: Cow::Borrowed("PF30 (PressFit 30)"),
        aliases: Cow::Borrowed(&L120),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L121,
                "limits belong to whoever prints them: see the bore windows",
            ),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L123),
        half_widths: Cow::Borrowed(&L125),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L126,
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L128),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L129),
        note: Cow::Borrowed(
            "A metal 46.0 mm shell leaves 92 % of the basic thread height if it is tapped M47 x 1.",
        ),
    },
    Shell {
        code: Cow::Borrowed("pf30a"),
        name: Cow::Borrowed("PF30A / PF30-83, asymmetric"),
        aliases: Cow::Borrowed(&L130),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L131, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L132),
        half_widths: Cow::Borrowed(&L133),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L134),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L135),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("osbb61"),
        name: Cow::Borrowed("OSBB, 61 mm carbon road shell"),
        aliases: Cow::Borrowed(&L136),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L137),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L138),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L139),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bbright_pf"),
        name: Cow::Borrowed("BBright press fit"),
        aliases: Cow::Borrowed(&L140),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L141, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L143),
        half_widths: Cow::Borrowed(&L146),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L147),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L148),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bb386"),
        name: Cow::Borrowed("BB386EVO"),
        aliases: Cow::Borrowed(&L149),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(46.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L150, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L153),
        half_widths: Cow::Borrowed(&L156),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L147),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L157),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bb86"),
        name: Cow::Borrowed("BB86 (PF41, road)"),
        aliases: Cow::Borrowed(&L158),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L159,
                "the maker of the cups publishes no frame bore; builders work back from the cup",
            ),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L162),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L165),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L166),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bb92"),
        name: Cow::Borrowed("BB89.5 / BB92 (PF41, mountain)"),
        aliases: Cow::Borrowed(&L167),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L168, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L173),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L175),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L166),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("pf41_wide"),
        name: Cow::Borrowed("BB104.5 / BB107 / BB121 / BB132 (PF41, wide)"),
        aliases: Cow::Borrowed(&L176),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L177, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L179),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "cup flange against the shell face: facing moves the bearing",
            ),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L180),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&L166),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bb90"),
        name: Cow::Borrowed("BB90 / BB95, moulded seats"),
        aliases: Cow::Borrowed(&L181),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L182,
                "bearing seat; the frame maker declined to publish its limits",
            ),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L184),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Seat,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L185, ""),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Slip,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L185, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L186),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Carbon shell with moulded seats: not a place to cut. Ask the frame maker.",
        ),
    },
    Shell {
        code: Cow::Borrowed("opc"),
        name: Cow::Borrowed("American one-piece"),
        aliases: Cow::Borrowed(&L187),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(51.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L189,
                "some retailers print 51 or 51.5 mm",
            ),
            &L188,
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L191),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Face,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "pressed cups"),
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "A child's variant measured on one bicycle had a bore of about 43 mm and was 65 mm wide.",
        ),
    },
    Shell {
        code: Cow::Borrowed("mid"),
        name: Cow::Borrowed("Mid BMX"),
        aliases: Cow::Borrowed(&L192),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(41.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L194,
                "as retailers print it",
            ),
            &L193,
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L195),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the pages read say only that the bearings sit directly in the shell",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L197),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("spanish"),
        name: Cow::Borrowed("Spanish BMX"),
        aliases: Cow::Borrowed(&L198),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L194, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L195),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the pages read say only that the bearings sit directly in the shell",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        spindles: Cow::Borrowed(&L197),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("thompson"),
        name: Cow::Borrowed("Thompson press-in, bore not yet measured"),
        aliases: Cow::Borrowed(&L199),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::unknown_in_table(
            "made in six bores, 30 to 45 mm: measure it and take the row of that bore",
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Loose tolerances, no shoulder. The rows thompson_30 to thompson_45 hold one bore each.",
        ),
    },
    Shell {
        code: Cow::Borrowed("thompson_30"),
        name: Cow::Borrowed("Thompson press-in, 30 mm"),
        aliases: Cow::Borrowed(&L202),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("thompson_33"),
        name: Cow::Borrowed("Thompson press-in, 33 mm"),
        aliases: Cow::Borrowed(&L203),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("thompson_35"),
        name: Cow::Borrowed("Thompson press-in, 35 mm"),
        aliases: Cow::Borrowed(&L204),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(35.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("thompson_38"),
        name: Cow::Borrowed("Thompson press-in, 38 mm"),
        aliases: Cow::Borrowed(&L205),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(38.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("thompson_40"),
        name: Cow::Borrowed("Thompson press-in, 40 mm"),
        aliases: Cow::Borrowed(&L206),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("thompson_45"),
        name: Cow::Borrowed("Thompson press-in, 45 mm"),
        aliases: Cow::Borrowed(&L207),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(45.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L201),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table(
            "the page read says that the shell has no shoulder; what stops the cup is not described",
            &[],
        ),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L200, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("Loose tolerances, no shoulder."),
    },
    Shell {
        code: Cow::Borrowed("merlin"),
        name: Cow::Borrowed("Merlin press-in"),
        aliases: Cow::Borrowed(&L208),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: Some(Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L209, ""),
            &[],
        )),
        bore_depth: Some(Figure::unknown_in_table(
            "no maker page read prints a least bore depth; take it from the frame maker's drawing",
            &[],
        )),
        widths: Cow::Borrowed(&L210),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::unknown_in_table("not described on the page read", &[]),
        fit: Some(Fact::from_table(
            Hold::Press,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L209, ""),
            &[],
        )),
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    Shell {
        code: Cow::Borrowed("bevel_45"),
        name: Cow::Borrowed("Bevelled shell for a threadless bottom bracket"),
        aliases: Cow::Borrowed(&[]),
        thread: None,
        hand_drive: None,
        hand_non_drive: None,
        pitch_diameter: None,
        minor_diameter: None,
        bore: None,
        bore_depth: None,
        widths: Cow::Borrowed(&L212),
        half_widths: Cow::Borrowed(&[]),
        located_by: Fact::from_table(
            LocatedBy::Seat,
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L211,
                "45 degree internal chamfer on both faces of the shell",
            ),
            &[],
        ),
        fit: None,
        spindles: Cow::Borrowed(&[]),
        thread_depth: None,
        status: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Not a thread of its own: a 1.370 in, ISO, French or 26 tpi shell with a 45 degree internal chamfer cut on both faces.",
        ),
    },
];
pub(crate) static SHELL_WINDOWS: [ShellWindow; 5] = [
    ShellWindow {
        code: Cow::Borrowed("bsc_half_axle_68"),
        shell: Cow::Borrowed("bsc"),
        nominal: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L213, ""),
            &[],
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: Some(mm(67.2)),
                upper: Some(mm(68.8)),
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L214, ""),
            &[],
        ),
        owner: Cow::Borrowed("an Italian crank maker's instructions, half-axle cranks"),
        note: Cow::Borrowed("the window belongs to the crank maker, not to the thread"),
    },
    ShellWindow {
        code: Cow::Borrowed("italian_half_axle_70"),
        shell: Cow::Borrowed("italian"),
        nominal: Figure::from_table(
            Span {
                nominal: Some(mm(70.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L213, ""),
            &[],
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(70.0)),
                lower: Some(mm(69.2)),
                upper: Some(mm(70.8)),
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L215, ""),
            &[],
        ),
        owner: Cow::Borrowed("an Italian crank maker's instructions, half-axle cranks"),
        note: Cow::Borrowed("both print 70 +/- 0.8 mm; the limits written out are the sum"),
    },
    ShellWindow {
        code: Cow::Borrowed("bsc_road_68"),
        shell: Cow::Borrowed("bsc"),
        nominal: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L216, ""),
            &[],
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: Some(mm(67.5)),
                upper: Some(mm(68.5)),
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L217, ""),
            &[],
        ),
        owner: Cow::Borrowed("a US component maker's road frame fit specification, 2024"),
        note: Cow::Borrowed(
            "narrower than the half-axle window: the window belongs to the crank maker",
        ),
    },
    ShellWindow {
        code: Cow::Borrowed("bsc_raw_68"),
        shell: Cow::Borrowed("bsc"),
        nominal: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L8, ""),
            &[],
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(68.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L218, ""),
            &[],
        ),
        owner: Cow::Borrowed("a framebuilder supplier's drawing, shell as supplied"),
        note: Cow::Borrowed(
            "raw width before facing, 0.25 mm a side left for it; not a limit on a finished shell",
        ),
    },
    ShellWindow {
        code: Cow::Borrowed("t47_raw_internal"),
        shell: Cow::Borrowed("t47"),
        nominal: Figure::from_table(
            Span {
                nominal: Some(mm(85.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L74, ""),
            &[],
        ),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(87.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L219, ""),
            &[],
        ),
        owner: Cow::Borrowed("a frame builders' forum, internal shell as supplied"),
        note: Cow::Borrowed(
            "raw width; about 87 mm after clean-up, faced to 85.5 mm (1.0 mm a side) or 86.5 mm (0.5 mm a side); not a limit on a finished shell",
        ),
    },
];
pub(crate) static BORE_WINDOWS: [BoreWindow; 10] = [
    BoreWindow {
        code: Cow::Borrowed("bb30_workshop"),
        shell: Cow::Borrowed("bb30"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(41.96)),
                lower: Some(mm(41.960)),
                upper: Some(mm(41.985)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L220, ""),
            &[],
        ),
        owner: Cow::Borrowed("a workshop article quoting the shell specification"),
        note: Cow::Borrowed("printed as 41.96 +0.025/-0"),
    },
    BoreWindow {
        code: Cow::Borrowed("pf30_workshop"),
        shell: Cow::Borrowed("pf30"),
        window: Figure::from_table(
            Span {
                nominal: Some(mm(46.00)),
                lower: Some(mm(45.95)),
                upper: Some(mm(46.00)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L221, ""),
            &[],
        ),
        owner: Cow::Borrowed("a workshop article on a 46 mm press shell"),
        note: Cow::Borrowed("printed as 46.00 +0/-0.05"),
    },
    BoreWindow {
        code: Cow::Borrowed("bb386_unpublished"),
        shell: Cow::Borrowed("bb386"),
        window: Figure::unknown_in_table(
            "official limits are said to exist; the numbers were not in the part of the article that could be read",
            &[],
        ),
        owner: Cow::Borrowed("the originator of the shell"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("bbright_pf_unpublished"),
        shell: Cow::Borrowed("bbright_pf"),
        window: Figure::unknown_in_table(
            "official limits are said to exist; the numbers were not in the part of the article that could be read",
            &[],
        ),
        owner: Cow::Borrowed("the originator of the shell"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("bb86_unpublished"),
        shell: Cow::Borrowed("bb86"),
        window: Figure::unknown_in_table(
            "the maker publishes no frame bore; builders work back from the cup",
            &[],
        ),
        owner: Cow::Borrowed("the maker of the cups"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("bb92_unpublished"),
        shell: Cow::Borrowed("bb92"),
        window: Figure::unknown_in_table(
            "the maker publishes no frame bore; builders work back from the cup",
            &[],
        ),
        owner: Cow::Borrowed("the maker of the cups"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("bb90_unpublished"),
        shell: Cow::Borrowed("bb90"),
        window: Figure::unknown_in_table("the frame maker declined to publish bore limits", &[]),
        owner: Cow::Borrowed("the frame maker"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("opc_unpublished"),
        shell: Cow::Borrowed("opc"),
        window: Figure::unknown_in_table("looked for and not found", &[]),
        owner: Cow::Borrowed("any frame or part maker"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("mid_unpublished"),
        shell: Cow::Borrowed("mid"),
        window: Figure::unknown_in_table("looked for and not found", &[]),
        owner: Cow::Borrowed("any frame or part maker"),
        note: Cow::Borrowed(""),
    },
    BoreWindow {
        code: Cow::Borrowed("spanish_unpublished"),
        shell: Cow::Borrowed("spanish"),
        window: Figure::unknown_in_table("looked for and not found", &[]),
        owner: Cow::Borrowed("any frame or part maker"),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static PRESS_PARTS: [PressPart; 3] = [
    PressPart {
        code: Cow::Borrowed("metal_cup_46"),
        joint: Cow::Borrowed("pf30"),
        part: Cow::Borrowed("metal cup"),
        diameter: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(46.00)),
                upper: Some(mm(46.05)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L221, ""),
            &[],
        ),
        owner: Cow::Borrowed("a workshop article on a 46 mm press shell"),
        note: Cow::Borrowed(""),
    },
    PressPart {
        code: Cow::Borrowed("bearing_6806_bb30"),
        joint: Cow::Borrowed("bb30"),
        part: Cow::Borrowed("bearing 6806, 30 x 42 x 7 mm"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(42.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L103,
                "nominal; its limits are those of the bearing tolerance class",
            ),
            &[],
        ),
        owner: Cow::Borrowed("nominal outside diameter of the bearing"),
        note: Cow::Borrowed(""),
    },
    PressPart {
        code: Cow::Borrowed("bearing_37_bb90"),
        joint: Cow::Borrowed("bb90"),
        part: Cow::Borrowed("bearing, 37 mm outside"),
        diameter: Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L182, "nominal"),
            &[],
        ),
        owner: Cow::Borrowed("nominal outside diameter of the bearing"),
        note: Cow::Borrowed("slip fit in a moulded seat"),
    },
];
pub(crate) static SPACER_RULES: [SpacerRule; 12] = [
    SpacerRule {
        code: Cow::Borrowed("mtb24_68"),
        shell: Cow::Borrowed("bsc"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L222, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(75.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L222, ""),
            &[],
        ),
        spacers: Cow::Borrowed(
            "3 x 2.5 mm; with a band-clamp front mech 2 on the drive side and 1 on the non-drive side",
        ),
        owner: Cow::Borrowed("a Japanese maker's 24 mm mountain cranks"),
        note: Cow::Borrowed(
            "the rule belongs to the crank system, not to the shell; the split comes from one page",
        ),
    },
    SpacerRule {
        code: Cow::Borrowed("mtb24_73"),
        shell: Cow::Borrowed("bsc"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L222, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(75.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L222, ""),
            &[],
        ),
        spacers: Cow::Borrowed("1 x 2.5 mm"),
        owner: Cow::Borrowed("a Japanese maker's 24 mm mountain cranks"),
        note: Cow::Borrowed(""),
    },
    SpacerRule {
        code: Cow::Borrowed("road24_68"),
        shell: Cow::Borrowed("bsc"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L223, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L223, ""),
            &[],
        ),
        spacers: Cow::Borrowed("none"),
        owner: Cow::Borrowed("a Japanese maker's 24 mm road cranks"),
        note: Cow::Borrowed(""),
    },
    SpacerRule {
        code: Cow::Borrowed("mtb_us_68"),
        shell: Cow::Borrowed("bsc"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(68.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L224, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "68 mm + 2 x (73 mm - 68 mm) / 2",
                &L224,
                "the page gives one spacer a side; its thickness follows from the bare 73 mm shell",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("one on each side"),
        owner: Cow::Borrowed("a US maker's two-piece mountain cranks"),
        note: Cow::Borrowed(
            "contradicts the 75.5 mm stack of the other system: the rule belongs to the crank system",
        ),
    },
    SpacerRule {
        code: Cow::Borrowed("mtb_us_73"),
        shell: Cow::Borrowed("bsc"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L224, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L224, ""),
            &[],
        ),
        spacers: Cow::Borrowed("none"),
        owner: Cow::Borrowed("a US maker's two-piece mountain cranks"),
        note: Cow::Borrowed(""),
    },
    SpacerRule {
        code: Cow::Borrowed("bb92_89_5"),
        shell: Cow::Borrowed("bb92"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(89.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L174, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(92.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L174, ""),
            &[],
        ),
        spacers: Cow::Borrowed("shims"),
        owner: Cow::Borrowed("a bicycle maker's support article"),
        note: Cow::Borrowed("a 89.5 mm shell may be shimmed to 92 mm"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_bbright_79"),
        shell: Cow::Borrowed("bbright_pf"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(79.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(90.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "79 mm + 11 mm + 0 mm",
                &L124,
                "",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("11 mm drive, 0 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, widest 46 mm cup"),
        note: Cow::Borrowed("spacer and half width sum to 45.0 mm on each side"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_pf30a_73"),
        shell: Cow::Borrowed("pf30a"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(90.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "73 mm + 11 mm + 6 mm",
                &L124,
                "",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("11 mm drive, 6 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, widest 46 mm cup"),
        note: Cow::Borrowed("spacer and half width sum to 45.0 mm on each side"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_pf30a_83"),
        shell: Cow::Borrowed("pf30a"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(83.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(90.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "83 mm + 6 mm + 1 mm",
                &L124,
                "",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("6 mm drive, 1 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, widest 46 mm cup"),
        note: Cow::Borrowed("spacer and half width sum to 45.0 mm on each side"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_pf30_73"),
        shell: Cow::Borrowed("pf30"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(73.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(90.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "73 mm + 8.5 mm + 8.5 mm",
                &L124,
                "",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("8.5 mm drive, 8.5 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, widest 46 mm cup"),
        note: Cow::Borrowed("spacer and half width sum to 45.0 mm on each side"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_bb386_86_5"),
        shell: Cow::Borrowed("bb386"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(86.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(90.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "86.5 mm + 1.5 mm + 2 mm",
                &L124,
                "",
            ),
            &[],
        ),
        spacers: Cow::Borrowed("1.5 mm drive, 2 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, widest 46 mm cup"),
        note: Cow::Borrowed("spacer and half width sum to 45.0 mm on each side"),
    },
    SpacerRule {
        code: Cow::Borrowed("spacers24_t47_77"),
        shell: Cow::Borrowed("t47"),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(77.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L104, ""),
            &[],
        ),
        stack: Figure::from_table(
            Span {
                nominal: Some(mm(87.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "77 mm + 9.5 mm + 1 mm",
                &L124,
                "",
            ),
            &L225,
        ),
        spacers: Cow::Borrowed("9.5 mm drive, 1 mm non-drive"),
        owner: Cow::Borrowed("a crank maker's spacer chart, 24 mm axles, 2023, internal T47 cups"),
        note: Cow::Borrowed(""),
    },
];
