// @generated from data/axles.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 3] = [
    Citation::from_table(&SOURCES[65], "list of hub widths"),
    Citation::from_table(&SOURCES[66], "list of hub standards"),
    Citation::from_table(&SOURCES[67], "list of standards"),
];
static L1: [Citation; 2] = [
    Citation::from_table(&SOURCES[62], "axle-end diameters"),
    Citation::from_table(&SOURCES[64], "list"),
];
static L2: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(9.0), Pitch::from_table_mm(1.0)),
    Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
    &[],
)];
static L3: [Citation; 2] = [
    Citation::from_table(&SOURCES[68], "rear hub widths"),
    Citation::from_table(&SOURCES[65], "list of hub widths"),
];
static L4: [Citation; 2] = [
    Citation::from_table(&SOURCES[69], "French and Japanese rear axles"),
    Citation::from_table(&SOURCES[70], "threads named"),
];
static L5: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(10.0), Pitch::from_table_mm(1.0)),
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L4, ""),
    &[],
)];
static L6: [Citation; 3] = [
    Citation::from_table(&SOURCES[65], "list of hub widths"),
    Citation::from_table(&SOURCES[68], "rear hub widths"),
    Citation::from_table(&SOURCES[67], "list of standards"),
];
static L7: [Citation; 1] = [Citation::from_table(&SOURCES[67], "list of standards")];
static L8: [Citation; 1] = [Citation::from_table(&SOURCES[67], "141 x 9")];
static L9: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(9.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L8, ""),
}];
static L10: [Citation; 1] = [Citation::from_table(&SOURCES[72], "rear frame slots")];
static L11: [Citation; 2] = [
    Citation::from_table(&SOURCES[67], "list of standards"),
    Citation::from_table(&SOURCES[66], "list of hub standards"),
];
static L12: [Citation; 2] = [
    Citation::from_table(&SOURCES[73], "length, pitch and examples"),
    Citation::from_table(&SOURCES[74], "pitches in use"),
];
static L13: [Fact<ThreadSize>; 3] = [
    Fact::from_table(
        ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.0)),
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L12,
            "near-identical text on both pages, one lineage",
        ),
        &[],
    ),
    Fact::from_table(
        ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.5)),
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L12,
            "near-identical text on both pages, one lineage",
        ),
        &[],
    ),
    Fact::from_table(
        ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.75)),
        Evidence::from_table(
            Grade::Published,
            Grade::Published,
            "",
            &L12,
            "near-identical text on both pages, one lineage",
        ),
        &[],
    ),
];
static L14: [Citation; 1] = [Citation::from_table(&SOURCES[81], "axle lengths and pitch")];
static L15: [Citation; 3] = [
    Citation::from_table(&SOURCES[66], "list of hub standards"),
    Citation::from_table(&SOURCES[73], "length, pitch and examples"),
    Citation::from_table(&SOURCES[63], "list of standards"),
];
static L16: [Citation; 1] = [Citation::from_table(&SOURCES[73], "example")];
static L17: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(15.0), Pitch::from_table_mm(1.5)),
    Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L16,
        "one example, length 127 mm",
    ),
    &[],
)];
static L18: [Citation; 2] = [
    Citation::from_table(&SOURCES[63], "list of standards"),
    Citation::from_table(&SOURCES[75], "20 mm axle"),
];
static L19: [Citation; 4] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[66], "list of hub standards"),
    Citation::from_table(&SOURCES[76], "quoted description"),
    Citation::from_table(&SOURCES[67], "list of standards"),
];
static L20: [Citation; 2] = [
    Citation::from_table(&SOURCES[76], "quoted description"),
    Citation::from_table(&SOURCES[77], "frame spacing"),
];
static L21: [Citation; 2] = [
    Citation::from_table(&SOURCES[78], "axle thread"),
    Citation::from_table(&SOURCES[79], "axle thread"),
];
static L22: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.0)),
    Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L21,
        "the two pages share one lineage",
    ),
    &[],
)];
static L23: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.75)),
    Evidence::from_table(Grade::Published, Grade::Published, "", &L14, ""),
    &[],
)];
static L24: [Fact<ThreadSize>; 1] = [Fact::from_table(
    ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.5)),
    Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
    &[],
)];
static L25: [Citation; 1] = [Citation::from_table(&SOURCES[82], "axle length")];
static L26: [Citation; 2] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[67], "list of standards"),
];
static L27: [Citation; 1] = [Citation::from_table(
    &SOURCES[67],
    "the 141 quick-release hub body is the 148 hub body",
)];
static L28: [Citation; 2] = [
    Citation::from_table(&SOURCES[15], "chart of shells"),
    Citation::from_table(&SOURCES[77], "frame spacing"),
];
static L29: [Citation; 1] = [Citation::from_table(&SOURCES[77], "157 = 150 + 7")];
static L30: [Citation; 1] = [Citation::from_table(&SOURCES[97], "clause 4.2 d)")];
static L31: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_9x26"),
    why: Cow::Borrowed("pitch 1.000 against 0.977 mm: starts, then binds; use a pitch gauge"),
}];
static L32: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_m9"),
    why: Cow::Borrowed("pitch 0.977 against 1.000 mm: starts, then binds; use a pitch gauge"),
}];
static L33: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_10x26"),
    why: Cow::Borrowed("pitch 1.000 against 0.977 mm: starts, then binds; use a pitch gauge"),
}];
static L34: [Citation; 1] = [Citation::from_table(&SOURCES[69], "axle threads")];
static L35: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_m10"),
    why: Cow::Borrowed("pitch 0.977 against 1.000 mm: starts in it, then binds; use a pitch gauge"),
}];
static L36: [Citation; 1] = [Citation::from_table(&SOURCES[0], "list of threads")];
static L37: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(
        ThreadForm::Bsc,
        inch_fraction(5, 16),
        Pitch::from_table_tpi(24),
    ),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L36,
        "gives 24 or 26 tpi",
    ),
}];
static L38: [Citation; 4] = [
    Citation::from_table(&SOURCES[8], "row BC 5/16"),
    Citation::from_table(&SOURCES[0], "list of threads"),
    Citation::from_table(&SOURCES[38], "list of cycle threads"),
    Citation::from_table(&SOURCES[7], "row 7,9 x 26"),
];
static L39: [Citation; 2] = [
    Citation::from_table(&SOURCES[7], "row 7,9 x 26"),
    Citation::from_table(&SOURCES[8], "row BC 5/16, 7.42"),
];
static L40: [Citation; 2] = [
    Citation::from_table(&SOURCES[7], "row 7,9 x 26"),
    Citation::from_table(&SOURCES[8], "row BC 5/16, 6.90"),
];
static L41: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 5/16")];
static L42: [Citation; 3] = [
    Citation::from_table(&SOURCES[0], "list of threads"),
    Citation::from_table(&SOURCES[8], "row BC 3/8"),
    Citation::from_table(&SOURCES[7], "row 9,5 x 26"),
];
static L43: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 3/8")];
static L44: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(9.01)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L43,
        "D - 0.5327 P = 9.005",
    ),
}];
static L45: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 9,5 x 26")];
static L46: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(8.49)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
}];
static L47: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 7/16")];
static L48: [Citation; 1] = [Citation::from_table(&SOURCES[71], "gear-hub axles")];
static L49: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Unknown, mm(10.5), Pitch::from_table_tpi(26)),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L48,
        "prints M10.5 and no pitch; the pitch here is that of the national table",
    ),
}];
static L50: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 10,5 x 26")];
static L51: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_10_3"),
    why: Cow::Borrowed("10.5 against 10.3 mm outside"),
}];
static L52: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("axle_10_5"),
    why: Cow::Borrowed("10.3 against 10.5 mm outside"),
}];
static L53: [Citation; 3] = [
    Citation::from_table(&SOURCES[73], "length, pitch and examples"),
    Citation::from_table(&SOURCES[74], "pitches in use"),
    Citation::from_table(&SOURCES[78], "axle thread"),
];
static L54: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_5"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_75"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
];
static L55: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_0"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_75"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
];
static L56: [Citation; 3] = [
    Citation::from_table(&SOURCES[73], "length, pitch and examples"),
    Citation::from_table(&SOURCES[74], "pitches in use"),
    Citation::from_table(&SOURCES[81], "axle lengths and pitch"),
];
static L57: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_0"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("thru_axle_m12_1_5"),
        why: Cow::Borrowed(
            "same diameter, other pitch: count or gauge the pitch before turning it in",
        ),
    },
];
static L58: [Citation; 2] = [
    Citation::from_table(&SOURCES[85], "hanger thread"),
    Citation::from_table(&SOURCES[70], "threads named"),
];
static L59: [Citation; 1] = [Citation::from_table(
    &SOURCES[80],
    "construction of the hanger",
)];
static L60: [Citation; 7] = [
    Citation::from_table(&SOURCES[8], "row BC 9/16"),
    Citation::from_table(&SOURCES[86], "pedal threads"),
    Citation::from_table(&SOURCES[87], "pedal threads"),
    Citation::from_table(&SOURCES[38], "list of cycle threads"),
    Citation::from_table(&SOURCES[88], "list of FG threads"),
    Citation::from_table(&SOURCES[10], "pedal threads"),
    Citation::from_table(&SOURCES[7], "row 14,2 x 20"),
];
static L61: [Citation; 3] = [
    Citation::from_table(&SOURCES[86], "pedal threads"),
    Citation::from_table(&SOURCES[89], "pages 72-73"),
    Citation::from_table(&SOURCES[91], "section 8i.9"),
];
static L62: [Citation; 2] = [
    Citation::from_table(&SOURCES[7], "row 14,2 x 20"),
    Citation::from_table(&SOURCES[8], "row BC 9/16, 13.61"),
];
static L63: [Citation; 2] = [
    Citation::from_table(&SOURCES[7], "row 14,2 x 20"),
    Citation::from_table(&SOURCES[8], "row BC 9/16, 12.93"),
];
static L64: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 9/16")];
static L65: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("pedal_french"),
    why: Cow::Borrowed(
        "14.29 against 14.0 mm and pitch 1.27 against 1.25 mm: starts, then binds; the French part is marked D, G or 14x125",
    ),
}];
static L66: [Citation; 2] = [
    Citation::from_table(&SOURCES[8], "row BC 1/2"),
    Citation::from_table(&SOURCES[10], "pedal threads"),
];
static L67: [Citation; 2] = [
    Citation::from_table(&SOURCES[89], "pages 72-73"),
    Citation::from_table(&SOURCES[91], "section 8i.9"),
];
static L68: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 1/2")];
static L69: [Citation; 4] = [
    Citation::from_table(&SOURCES[92], "French pedals"),
    Citation::from_table(&SOURCES[87], "pedal threads"),
    Citation::from_table(&SOURCES[86], "pedal threads"),
    Citation::from_table(&SOURCES[10], "pedal threads"),
];
static L70: [Citation; 1] = [Citation::from_table(&SOURCES[87], "pedal threads")];
static L71: [Citation; 1] = [Citation::from_table(
    &SOURCES[87],
    "a right-hand M14 x 1.25 spark plug serves as the gauge",
)];
static L72: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("pedal_9_16"),
    why: Cow::Borrowed("14.0 against 14.29 mm and pitch 1.25 against 1.27 mm: starts, then binds"),
}];
static L73: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 7 x 28")];
static L74: [Citation; 1] = [Citation::from_table(
    &SOURCES[7],
    "row 34,9 x 24, starred as ISO 6698",
)];
static L75: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Whitworth, mm(34.900), Pitch::from_table_tpi(24)),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L74,
        "55 degrees; the scope of the sister standard says 60",
    ),
}];
static L76: [Citation; 2] = [
    Citation::from_table(&SOURCES[42], "freewheel threads"),
    Citation::from_table(&SOURCES[94], "hub threads"),
];
static L77: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 34,9 x 24")];
static L78: [Dissent<Span<Length>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mm(34.223)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L77, ""),
}];
static L79: [Citation; 1] = [Citation::from_table(
    &SOURCES[54],
    "pitch and minor diameter of the basic profile",
)];
static L80: [Confusion; 1] = [Confusion {
    code: Cow::Borrowed("freewheel_french"),
    why: Cow::Borrowed(
        "the 34.7 mm x 1 part starts on it, then binds: pitch 1.000 against 1.058 mm",
    ),
}];
static L81: [Citation; 3] = [
    Citation::from_table(&SOURCES[42], "freewheel threads"),
    Citation::from_table(&SOURCES[95], "freewheel threads"),
    Citation::from_table(&SOURCES[7], "row 34,7 x 24"),
];
static L82: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 34,7 x 24")];
static L83: [Citation; 3] = [
    Citation::from_table(&SOURCES[42], "freewheel threads"),
    Citation::from_table(&SOURCES[95], "freewheel threads"),
    Citation::from_table(&SOURCES[94], "hub threads"),
];
static L84: [Citation; 1] = [Citation::from_table(&SOURCES[42], "1.366 in, 34.7 mm x 1")];
static L85: [Confusion; 3] = [
    Confusion {
        code: Cow::Borrowed("freewheel_iso"),
        why: Cow::Borrowed(
            "the French part starts on it, then binds: pitch 1.000 against 1.058 mm",
        ),
    },
    Confusion {
        code: Cow::Borrowed("freewheel_british"),
        why: Cow::Borrowed(
            "the French part starts on it, then binds: pitch 1.000 against 1.058 mm",
        ),
    },
    Confusion {
        code: Cow::Borrowed("freewheel_italian"),
        why: Cow::Borrowed(
            "the French part starts on it, then binds: pitch 1.000 against 1.058 mm",
        ),
    },
];
static L86: [Citation; 1] = [Citation::from_table(&SOURCES[42], "freewheel threads")];
static L87: [Citation; 1] = [Citation::from_table(&SOURCES[90], "pages 88-89")];
static L88: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Unknown, inch(1.29), Pitch::from_table_tpi(29)),
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L87,
        "a misprint: the two pages agree on the diameter, and 24 tpi is printed by the other",
    ),
}];
static L89: [Citation; 2] = [
    Citation::from_table(&SOURCES[94], "hub threads"),
    Citation::from_table(&SOURCES[90], "pages 88-89"),
];
static L90: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("lockring_33_5"),
        why: Cow::Borrowed("both left-hand, 24 tpi: 32.77 against 33.5 mm"),
    },
    Confusion {
        code: Cow::Borrowed("lockring_33"),
        why: Cow::Borrowed("32.77 against 33.0 mm"),
    },
];
static L91: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::Unknown, inch(1.32), Pitch::from_table_tpi(24)),
    evidence: Evidence::from_table(
        Grade::Agreeing,
        Grade::Agreeing,
        "",
        &L89,
        "printed beside 33.5 mm; is 33.53 mm",
    ),
}];
static L92: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("lockring_1_29"),
        why: Cow::Borrowed("both left-hand, 24 tpi: 33.5 against 32.77 mm"),
    },
    Confusion {
        code: Cow::Borrowed("lockring_33"),
        why: Cow::Borrowed("33.5 against 33.0 mm"),
    },
];
static L93: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 33 x 24")];
static L94: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("lockring_1_29"),
        why: Cow::Borrowed("33.0 against 32.77 mm"),
    },
    Confusion {
        code: Cow::Borrowed("lockring_33_5"),
        why: Cow::Borrowed("33.0 against 33.5 mm"),
    },
];
static L95: [Citation; 1] = [Citation::from_table(&SOURCES[34], "extractor sizes")];
static L96: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("crank_extractor_23"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("crank_extractor_23_2"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
];
static L97: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("crank_extractor_22"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("crank_extractor_23_2"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
];
static L98: [Confusion; 2] = [
    Confusion {
        code: Cow::Borrowed("crank_extractor_22"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
    Confusion {
        code: Cow::Borrowed("crank_extractor_23"),
        why: Cow::Borrowed(
            "diameters differ by 1.35 mm or less: measure before turning an extractor in",
        ),
    },
];
static L99: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 3/4")];
static L100: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 11/16")];
static L101: [Citation; 1] = [Citation::from_table(&SOURCES[8], "row BC 5/8")];
static L102: [Citation; 1] = [Citation::from_table(&SOURCES[96], "boss thread")];
static L103: [Citation; 1] = [Citation::from_table(
    &SOURCES[96],
    "same thread as six-bolt rotor bolts",
)];
static L104: [Citation; 2] = [
    Citation::from_table(&SOURCES[0], "list of threads"),
    Citation::from_table(&SOURCES[38], "list of cycle threads"),
];
static L105: [Citation; 1] = [Citation::from_table(&SOURCES[43], "boss bolt")];
static L106: [Dissent<ThreadSize>; 1] = [Dissent {
    value: ThreadSize::from_table(ThreadForm::IsoMetric, mm(10.0), Pitch::from_table_mm(1.0)),
    evidence: Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "on some"),
}];
static L107: [Citation; 2] = [
    Citation::from_table(&SOURCES[38], "3/16 BSW"),
    Citation::from_table(&SOURCES[98], "row 3/16"),
];
static L108: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 2,09 x 56")];
static L109: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 2,29 x 56")];
static L110: [Citation; 1] = [Citation::from_table(&SOURCES[7], "row 2,6 x 56")];
static L111: [Citation; 1] = [Citation::from_table(&SOURCES[22], "35-50 N m")];
static L112: [Citation; 1] = [Citation::from_table(
    &SOURCES[19],
    "shell preparation and torque",
)];
static L113: [Citation; 1] = [Citation::from_table(
    &SOURCES[58],
    "fitting of the external cups",
)];
static L114: [Citation; 1] = [Citation::from_table(&SOURCES[23], "torque list")];
static L115: [Citation; 1] = [Citation::from_table(
    &SOURCES[32],
    "bottom bracket and axles",
)];
static L116: [Citation; 1] = [Citation::from_table(&SOURCES[61], "quoted torques")];
static L117: [Citation; 1] = [Citation::from_table(
    &SOURCES[93],
    "appendix C, torque table",
)];
static L118: [Citation; 1] = [Citation::from_table(&SOURCES[83], "thru-axle torque")];
static L119: [Citation; 1] = [Citation::from_table(&SOURCES[84], "marking on the axle")];
static L120: [Citation; 1] = [Citation::from_table(&SOURCES[196], "caliper fixing bolts")];
static L121: [Citation; 1] = [Citation::from_table(&SOURCES[157], "disc caliper bolts")];
static L122: [Citation; 1] = [Citation::from_table(&SOURCES[157], "adapter bolts")];
static L123: [Citation; 1] = [Citation::from_table(&SOURCES[150], "rotor bolts")];
static L124: [Citation; 1] = [Citation::from_table(&SOURCES[157], "rotor bolts")];
static L125: [Citation; 1] = [Citation::from_table(&SOURCES[157], "lock ring")];
static L126: [Citation; 1] = [Citation::from_table(&SOURCES[172], "seat clamp")];
static L127: [Citation; 1] = [Citation::from_table(&SOURCES[173], "page 25")];

pub(crate) static AXLES: [Axle; 20] = [
    Axle {
        code: Cow::Borrowed("qr_front"),
        name: Cow::Borrowed("Quick release, front"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(100.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(100.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "axle end"),
            &[],
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&L2),
        thread_length: None,
        note: Cow::Borrowed(
            "The skewer rod is 5 mm (two pages agree). The axle thread was not seen in print.",
        ),
    },
    Axle {
        code: Cow::Borrowed("qr_rear_120"),
        name: Cow::Borrowed("Quick release, rear, 120 mm"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(120.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L3, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(120.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "axle end"),
            &[],
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&L5),
        thread_length: None,
        note: Cow::Borrowed("The skewer rod is 5 mm (two pages agree). 5-speed."),
    },
    Axle {
        code: Cow::Borrowed("qr_rear_126"),
        name: Cow::Borrowed("Quick release, rear, 126 mm"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(126.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L3, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(126.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "axle end"),
            &[],
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&L5),
        thread_length: None,
        note: Cow::Borrowed("The skewer rod is 5 mm (two pages agree). 6- and 7-speed."),
    },
    Axle {
        code: Cow::Borrowed("qr_rear_130"),
        name: Cow::Borrowed("Quick release, rear, 130 mm"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(130.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L3, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(130.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "axle end"),
            &[],
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&L5),
        thread_length: None,
        note: Cow::Borrowed("The skewer rod is 5 mm (two pages agree). 8-speed and more."),
    },
    Axle {
        code: Cow::Borrowed("qr_rear_135"),
        name: Cow::Borrowed("Quick release, rear, 135 mm"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L6, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "axle end"),
            &[],
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&L5),
        thread_length: None,
        note: Cow::Borrowed("The skewer rod is 5 mm (two pages agree). Mountain and disc."),
    },
    Axle {
        code: Cow::Borrowed("qr_rear_141"),
        name: Cow::Borrowed("Quick release, rear, 141 mm (Boost)"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(141.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(141.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::CommonPractice,
                Grade::CommonPractice,
                "",
                &[],
                "with a quick release the frame spacing equals the hub width",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, "rear axle end"),
            &L9,
        )),
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "taken from the axle ends that fit the slot; no slot tolerance was found",
            ),
            &[],
        )),
        threads: Cow::Borrowed(&[]),
        thread_length: None,
        note: Cow::Borrowed(
            "The skewer rod is 5 mm (two pages agree). The hub body is that of the 148 mm thru-axle hub.",
        ),
    },
    Axle {
        code: Cow::Borrowed("folding_rear_old"),
        name: Cow::Borrowed("Folding bicycle, rear slot, old"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::unknown_in_table("the sheet gives only the slot", &[]),
        inner_faces: None,
        axle_diameter: None,
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(8.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L10, ""),
            &[],
        )),
        threads: Cow::Borrowed(&[]),
        thread_length: None,
        note: Cow::Borrowed(""),
    },
    Axle {
        code: Cow::Borrowed("folding_rear_2004"),
        name: Cow::Borrowed("Folding bicycle, rear slot, after 2004"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::unknown_in_table("the sheet gives only the slot", &[]),
        inner_faces: None,
        axle_diameter: None,
        slot: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L10, ""),
            &[],
        )),
        threads: Cow::Borrowed(&[]),
        thread_length: None,
        note: Cow::Borrowed(""),
    },
    Axle {
        code: Cow::Borrowed("ta_12x100"),
        name: Cow::Borrowed("Thru-axle, front, 12 x 100"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(100.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L13),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance, nor the spacing of the frame. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x100_aftermarket"),
        name: Cow::Borrowed("Thru-axle, front, 12 x 100, one aftermarket road axle"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(100.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&[]),
        thread_length: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L14, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "Total 119 mm = 107 mm plain and 12 mm of thread; pitch not printed. An example, not a standard.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_15x100"),
        name: Cow::Borrowed("Thru-axle, front, 15 x 100"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(100.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L15, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L15, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L17),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance, nor the spacing of the frame. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_15x110"),
        name: Cow::Borrowed("Thru-axle, front, 15 x 110 (Boost)"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(110.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&[]),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance, nor the spacing of the frame.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_20x110"),
        name: Cow::Borrowed("Thru-axle, front, 20 x 110"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(110.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L18, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L18, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&[]),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance, nor the spacing of the frame.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x110"),
        name: Cow::Borrowed("Thru-axle, front, 12 x 110 (Road Boost)"),
        end: Fact::from_table(
            End::Front,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(110.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        ),
        inner_faces: Some(Figure::unknown_in_table(
            "not found for front thru-axles; take it from the fork maker",
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L13),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance, nor the spacing of the frame. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x142"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 142"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(142.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L20,
                "hub width less 7 mm: 3.5 mm of recess a side; the second page is of low grade",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L13),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x142_udh"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 142, frame with a universal hanger"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(142.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L20,
                "hub width less 7 mm: 3.5 mm of recess a side; the second page is of low grade",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L22),
        thread_length: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.7)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L21,
                "the two pages share one lineage",
            ),
            &[],
        )),
        note: Cow::Borrowed(
            "The axle screws into the hollow hanger bolt, which has a left-hand outside thread. Printed for universal-hanger frames of every hub width.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x142_pitch_1_75"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 142, pitch 1.75, aftermarket"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(142.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L20,
                "hub width less 7 mm: 3.5 mm of recess a side; the second page is of low grade",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L23),
        thread_length: Some(Figure::from_table(
            Span {
                nominal: Some(mm(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L14, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "Total 174 mm = 154 mm plain and 20 mm of thread. An example, not a standard.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x142_pitch_1_5"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 142, pitch 1.5, aftermarket"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(142.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L20,
                "hub width less 7 mm: 3.5 mm of recess a side; the second page is of low grade",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L19, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L24),
        thread_length: Some(Figure::from_table(
            Span {
                nominal: Some(mm(17.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L25, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "Total 171 mm. The pitch was cut off in the page read. An example, not a standard.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x148"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 148 (Boost)"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(148.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L26, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(141.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Derived, Grade::Published, "148 mm - 7 mm", &L27, ""),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L26, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L13),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
    Axle {
        code: Cow::Borrowed("ta_12x157"),
        name: Cow::Borrowed("Thru-axle, rear, 12 x 157 (Super Boost)"),
        end: Fact::from_table(
            End::Rear,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        over_locknut: Figure::from_table(
            Span {
                nominal: Some(mm(157.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L28, ""),
            &[],
        ),
        inner_faces: Some(Figure::from_table(
            Span {
                nominal: Some(mm(150.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L29,
                "a page of low grade; equals the hub width less 7 mm",
            ),
            &[],
        )),
        axle_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L28, ""),
            &[],
        )),
        slot: None,
        threads: Cow::Borrowed(&L13),
        thread_length: None,
        note: Cow::Borrowed(
            "No page prints the bore of the frame or its tolerance. Length and pitch are not standardised: overall length is commonly 20 to 30 mm more than the hub width; read the marking on the axle.",
        ),
    },
];
pub(crate) static THREAD_USES: [ThreadUse; 56] = [
    ThreadUse {
        code: Cow::Borrowed("axle_m9"),
        name: Cow::Borrowed("Hollow front axle, M9 x 1"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(9.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L31),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_9x26"),
        name: Cow::Borrowed("Italian front axle, 9 mm x 26 tpi"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(9.0), Pitch::from_table_tpi(26)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "not seen in print"),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L32),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_m10"),
        name: Cow::Borrowed("Rear axle, M10 x 1"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(10.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L4, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L33),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_10x26"),
        name: Cow::Borrowed("Italian rear axle, 10 mm x 26 tpi"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(10.0), Pitch::from_table_tpi(26)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L34,
                "profile not stated on the pages read",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L35),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_5_16"),
        name: Cow::Borrowed("Solid front axle, 5/16 in x 26 tpi (BC 5/16; 7,9 x 26)"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(5, 16),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L38, ""),
            &L37,
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(7.418)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L39, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(6.897)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L40, ""),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(7.06)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L41, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_3_8"),
        name: Cow::Borrowed("Solid rear axle (and some front), 3/8 in x 26 tpi (BC 3/8; 9,5 x 26)"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(3, 8),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L42,
                "the Japanese table lists it under the front hub, others under the rear",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(9.004)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L45, ""),
            &L44,
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(8.484)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L45, ""),
            &L46,
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(8.65)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L43, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_7_16"),
        name: Cow::Borrowed("Heavy rear axle, 7/16 in x 26 tpi (BC 7/16)"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(7, 16),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L47, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.59)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L47, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(10.07)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L47, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_10_5"),
        name: Cow::Borrowed("German gear-hub axle, 10,5 x 26"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Whitworth, mm(10.550), Pitch::from_table_tpi(26)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L50,
                "55 degrees, not metric",
            ),
            &L49,
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(9.924)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L50, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(9.298)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L50, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L51),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("axle_10_3"),
        name: Cow::Borrowed("English gear-hub axle, 10.3 mm"),
        place: ThreadedPart::Axle,
        thread: Fact::unknown_in_table(
            "a German page gives 10.3 mm for some English axles and no pitch; measure it",
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L52),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("thru_axle_m12_1_0"),
        name: Cow::Borrowed("Thru-axle, M12 x 1.0"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L53,
                "the pages share one lineage",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L54),
        note: Cow::Borrowed(
            "Frames with a universal hanger, and others. One axle shop prints 11.85 to 11.95 mm for the outside thread and 12.05 to 12.15 mm for the inside one; the second is no ISO limit.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("thru_axle_m12_1_5"),
        name: Cow::Borrowed("Thru-axle, M12 x 1.5"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.5)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L12,
                "the pages share one lineage",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L55),
        note: Cow::Borrowed(
            "One axle shop prints 11.85 to 11.95 mm for the outside thread and 12.05 to 12.15 mm for the inside one; the second is no ISO limit.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("thru_axle_m12_1_75"),
        name: Cow::Borrowed("Thru-axle, M12 x 1.75"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.75)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L56,
                "the pages share one lineage",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L57),
        note: Cow::Borrowed(
            "One axle shop prints 11.85 to 11.95 mm for the outside thread and 12.05 to 12.15 mm for the inside one; the second is no ISO limit.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("thru_axle_m15"),
        name: Cow::Borrowed("Thru-axle, M15 x 1.5"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(15.0), Pitch::from_table_mm(1.5)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L16, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("hanger_m10"),
        name: Cow::Borrowed("Rear derailleur hanger, M10 x 1"),
        place: ThreadedPart::Hanger,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(10.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L58, ""),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Thickness of the hanger: not found. Wheel axle to bolt centre measured 26, 28 and 30 mm on three frames.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("udh_hanger_bolt"),
        name: Cow::Borrowed("Universal derailleur hanger, hollow bolt, outside thread"),
        place: ThreadedPart::HangerBolt,
        thread: Fact::unknown_in_table("size not found", &[]),
        hand: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L59, ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "Its inside thread takes the thru-axle. The frame interface has five variants; the hole sizes were not found.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("pedal_9_16"),
        name: Cow::Borrowed("Pedal, 9/16 in x 20 tpi (BC 9/16; FG 14,3; 14,2 x 20)"),
        place: ThreadedPart::Pedal,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(9, 16),
                Pitch::from_table_tpi(20),
            ),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L60, ""),
            &[],
        ),
        hand: None,
        hand_left: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L61, ""),
            &[],
        )),
        hand_right: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L61, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(13.611)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L62, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.934)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L63, ""),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(13.14)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L64, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L65),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("pedal_1_2"),
        name: Cow::Borrowed("Pedal of a one-piece crank, 1/2 in x 20 tpi (BC 1/2)"),
        place: ThreadedPart::Pedal,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(1, 2),
                Pitch::from_table_tpi(20),
            ),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L66, ""),
            &[],
        ),
        hand: None,
        hand_left: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L67, ""),
            &[],
        )),
        hand_right: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L67, ""),
            &[],
        )),
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(12.02)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L68, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(11.34)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L68,
                "D - 1.0654 P = 11.347",
            ),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(11.55)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L68, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("pedal_french"),
        name: Cow::Borrowed("Pedal, old French, M14 x 1.25"),
        place: ThreadedPart::Pedal,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(14.0), Pitch::from_table_mm(1.25)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L69, ""),
            &[],
        ),
        hand: None,
        hand_left: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L70, ""),
            &[],
        )),
        hand_right: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L71, ""),
            &[],
        )),
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L72),
        note: Cow::Borrowed("Marked D (right) and G (left), or 14x125."),
    },
    ThreadUse {
        code: Cow::Borrowed("pedal_1_in"),
        name: Cow::Borrowed("Oversize pedal axle, 1 in x 24 tpi"),
        place: ThreadedPart::Pedal,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, inch(1.0), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "a page confirms that a larger pedal thread existed, not its size",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("pedal_cone"),
        name: Cow::Borrowed("Pedal cone, 7 x 28"),
        place: ThreadedPart::Pedal,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Whitworth, mm(7.000), Pitch::from_table_tpi(28)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L73, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(6.419)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L73, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(5.838)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L73, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_iso"),
        name: Cow::Borrowed("Freewheel or fixed sprocket, ISO, 1.375 in x 24 tpi"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoInch, inch(1.375), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L76,
                "the standard, ISO 6698, was not read",
            ),
            &L75,
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L76, ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.2376)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Agreeing,
                "34.925 mm - 0.649519 x 25.4/24 mm",
                &L79,
                "",
            ),
            &L78,
        )),
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L80),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_34_9"),
        name: Cow::Borrowed("Freewheel hub, 34,9 x 24, 55 degrees"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Whitworth, mm(34.900), Pitch::from_table_tpi(24)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L77, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.223)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L77, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.546)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L77, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "The national table marks it as the ISO thread. Pitch diameters of the three 24 tpi forms lie within 34.223 and 34.238 mm, so the parts assemble.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_british"),
        name: Cow::Borrowed("Freewheel, British, 1.370 in x 24 tpi (34,7 x 24)"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.370), Pitch::from_table_tpi(24)),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L81, ""),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(34.234)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L82, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(33.670)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L82, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L80),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_italian"),
        name: Cow::Borrowed("Freewheel, Italian, 35 mm x 24 tpi"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, inch(1.378), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L83,
                "35 mm; profile not stated on the pages read",
            ),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L80),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_french"),
        name: Cow::Borrowed("Freewheel, French, 34.7 mm x 1"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(34.7), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L84,
                "profile not stated on the pages read",
            ),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L85),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("freewheel_bmx"),
        name: Cow::Borrowed("Freewheel, small BMX, M30 x 1"),
        place: ThreadedPart::Freewheel,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(30.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L86, ""),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("lockring_1_29"),
        name: Cow::Borrowed("Track lockring, 1.29 in x 24 tpi"),
        place: ThreadedPart::Lockring,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, inch(1.29), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L89,
                "32.8 mm; profile not stated on the pages read",
            ),
            &L88,
        ),
        hand: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L89, ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L90),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("lockring_33_5"),
        name: Cow::Borrowed("Track lockring, Italian, 33.5 mm x 24 tpi"),
        place: ThreadedPart::Lockring,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Unknown, mm(33.5), Pitch::from_table_tpi(24)),
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L89,
                "profile not stated on the pages read",
            ),
            &L91,
        ),
        hand: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L89, ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L92),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("lockring_33"),
        name: Cow::Borrowed("Locknut, 33 x 24, 55 degrees"),
        place: ThreadedPart::Lockring,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Whitworth, mm(33.000), Pitch::from_table_tpi(24)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L93, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(32.323)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L93, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(31.646)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L93, ""),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L94),
        note: Cow::Borrowed(
            "A third, older size beside 1.29 in and 33.5 mm; its hand is not given.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("lockring_m33"),
        name: Cow::Borrowed("Track lockring, French, M33 x 1"),
        place: ThreadedPart::Lockring,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(33.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Left,
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("lockring_bb"),
        name: Cow::Borrowed("Bottom-bracket lockring, 1.370 in x 24 tpi"),
        place: ThreadedPart::Lockring,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, inch(1.370), Pitch::from_table_tpi(24)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L87, ""),
            &[],
        ),
        hand: Some(Fact::from_table(
            Hand::Right,
            Evidence::from_table(Grade::Published, Grade::Published, "", &L87, ""),
            &[],
        )),
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("The thread of the cup: why this ring screws on a freewheel hub."),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_extractor_22"),
        name: Cow::Borrowed("Crank extractor, M22 x 1"),
        place: ThreadedPart::Crank,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(22.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L95, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&L96),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_extractor_23"),
        name: Cow::Borrowed("Crank extractor, old French, M23 x 1"),
        place: ThreadedPart::Crank,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(23.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L95, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L97),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_extractor_23_2"),
        name: Cow::Borrowed("Crank extractor, old French, before 1982"),
        place: ThreadedPart::Crank,
        thread: Fact::unknown_in_table(
            "23.15, 23.2 or 23.35 mm: the source calls the size unclear and gives no pitch; measure it",
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&L98),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_bolt_m8"),
        name: Cow::Borrowed("Crank bolt, square taper, M8 x 1"),
        place: ThreadedPart::Crank,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(8.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_bolt_m12"),
        name: Cow::Borrowed("Crank bolt, splined, M12 x 1"),
        place: ThreadedPart::Crank,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(12.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("crank_bolt_m15"),
        name: Cow::Borrowed("Crank bolt, splined, M15 x 1"),
        place: ThreadedPart::Crank,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(15.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("one_piece_crank"),
        name: Cow::Borrowed("One-piece crank, drive-side thread"),
        place: ThreadedPart::Crank,
        thread: Fact::unknown_in_table(
            "24 tpi on most and 28 tpi on some; the diameter was not found",
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed("The pitches come from one page."),
    },
    ThreadUse {
        code: Cow::Borrowed("jis_bc_3_4"),
        name: Cow::Borrowed("Bottom-bracket axle, BC 3/4, 3/4 in x 30 tpi"),
        place: ThreadedPart::Other,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(3, 4),
                Pitch::from_table_tpi(30),
            ),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L99, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(18.60)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L99, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(18.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L99, ""),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(18.29)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L99, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("jis_bc_11_16"),
        name: Cow::Borrowed("Bottom-bracket axle, BC 11/16, 11/16 in x 24 tpi"),
        place: ThreadedPart::Other,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(11, 16),
                Pitch::from_table_tpi(24),
            ),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(16.90)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(16.34)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(16.48)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L100, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(
            "The table lists it for the left side; whether the thread is left-hand was not read.",
        ),
    },
    ThreadUse {
        code: Cow::Borrowed("jis_bc_5_8"),
        name: Cow::Borrowed("Trailer hub, BC 5/8, 5/8 in x 20 tpi"),
        place: ThreadedPart::Axle,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(5, 8),
                Pitch::from_table_tpi(20),
            ),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L101, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(15.20)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L101, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(14.52)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L101, ""),
            &[],
        )),
        internal_minor: Some(Figure::from_table(
            Span {
                nominal: Some(mm(14.73)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L101, ""),
            &[],
        )),
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("bottle_boss"),
        name: Cow::Borrowed("Bottle boss, M5 x 0.8"),
        place: ThreadedPart::BottleBoss,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &L102, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("rotor_bolt"),
        name: Cow::Borrowed("Six-bolt rotor bolt, M5 x 0.8"),
        place: ThreadedPart::RotorBolt,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L103, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("rack_boss_m5"),
        name: Cow::Borrowed("Rack or mudguard eyelet, M5 x 0.8"),
        place: ThreadedPart::RackBoss,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("rack_boss_m6"),
        name: Cow::Borrowed("Rack or mudguard eyelet, M6 x 1"),
        place: ThreadedPart::RackBoss,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("rack_boss_2ba"),
        name: Cow::Borrowed("Old British mudguard eyelet, 2 BA"),
        place: ThreadedPart::RackBoss,
        thread: Fact::unknown_in_table(
            "named 2 BA by a weblog article on cycle threads; its size is not in our sources",
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("seat_binder_m5"),
        name: Cow::Borrowed("Seat binder bolt, M5 x 0.8"),
        place: ThreadedPart::SeatBinder,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(5.0), Pitch::from_table_mm(0.8)),
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("seat_binder_m6"),
        name: Cow::Borrowed("Seat binder bolt, M6 x 1"),
        place: ThreadedPart::SeatBinder,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(Grade::CommonPractice, Grade::CommonPractice, "", &[], ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("seat_binder_5_16"),
        name: Cow::Borrowed("Old seat binder bolt, 5/16 in x 26 tpi"),
        place: ThreadedPart::SeatBinder,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Bsc,
                inch_fraction(5, 16),
                Pitch::from_table_tpi(26),
            ),
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L104, ""),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("brake_boss_pivot"),
        name: Cow::Borrowed("Cantilever boss, pivot bolt, M6 x 1"),
        place: ThreadedPart::BrakeBoss,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(6.0), Pitch::from_table_mm(1.0)),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L105,
                "the page says a 6 mm bolt",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: Some(Fact::from_table(
            Cow::Borrowed("6H/6g"),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L30,
                "6H/6g or better, asked for every metric thread on the bicycle outside the cycle-thread and valve standards",
            ),
            &[],
        )),
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("brake_boss_base"),
        name: Cow::Borrowed("Cantilever boss, screw-in type, frame thread"),
        place: ThreadedPart::BrakeBoss,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::IsoMetric, mm(10.0), Pitch::from_table_mm(1.25)),
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &L106,
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("caliper_bolt"),
        name: Cow::Borrowed("Side-pull caliper centre bolt"),
        place: ThreadedPart::BrakeBolt,
        thread: Fact::unknown_in_table(
            "6 mm or 1/4 in by one page, pitch not printed; measure it",
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("grease_nipple"),
        name: Cow::Borrowed("Old British bottom-bracket grease nipple, 3/16 in BSW"),
        place: ThreadedPart::Other,
        thread: Fact::from_table(
            ThreadSize::from_table(
                ThreadForm::Whitworth,
                inch_fraction(3, 16),
                Pitch::from_table_tpi(24),
            ),
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L107,
                "the article names the size, the chart gives its pitch",
            ),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: None,
        minor_diameter: None,
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("spoke_2_09"),
        name: Cow::Borrowed("Spoke, 2,09 x 56"),
        place: ThreadedPart::Spoke,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, mm(2.096), Pitch::from_table_tpi(56)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L108, "60 degrees"),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.854)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L108, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.613)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L108,
                "agrees with a spoke table after DIN 79012",
            ),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("spoke_2_29"),
        name: Cow::Borrowed("Spoke, 2,29 x 56"),
        place: ThreadedPart::Spoke,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, mm(2.299), Pitch::from_table_tpi(56)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L109, "60 degrees"),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.057)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L109, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(1.816)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L109,
                "agrees with a spoke table after DIN 79012",
            ),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
    ThreadUse {
        code: Cow::Borrowed("spoke_2_6"),
        name: Cow::Borrowed("Spoke, 2,6 x 56"),
        place: ThreadedPart::Spoke,
        thread: Fact::from_table(
            ThreadSize::from_table(ThreadForm::Bsc, mm(2.604), Pitch::from_table_tpi(56)),
            Evidence::from_table(Grade::Published, Grade::Published, "", &L110, "60 degrees"),
            &[],
        ),
        hand: None,
        hand_left: None,
        hand_right: None,
        pitch_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.362)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L110, ""),
            &[],
        )),
        minor_diameter: Some(Figure::from_table(
            Span {
                nominal: Some(mm(2.121)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L110,
                "agrees with a spoke table after DIN 79012",
            ),
            &[],
        )),
        internal_minor: None,
        tolerance_class: None,
        confused_with: Cow::Borrowed(&[]),
        note: Cow::Borrowed(""),
    },
];
pub(crate) static TORQUES: [TorqueFigure; 25] = [
    TorqueFigure {
        code: Cow::Borrowed("cup_external_japanese"),
        part: Cow::Borrowed("external bottom-bracket cup"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(35.0)),
                upper: Some(newton_metre(50.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L111, ""),
            &[],
        ),
        owner: Cow::Borrowed("a Japanese maker's instructions, as quoted on a repair page"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("cup_external_italian"),
        part: Cow::Borrowed("external bottom-bracket cup, half-axle cranks"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(35.0)),
                upper: Some(newton_metre(40.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L112, ""),
            &[],
        ),
        owner: Cow::Borrowed("an Italian maker's cranks, by a mechanic's weblog"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("cup_external_us"),
        part: Cow::Borrowed("external bottom-bracket cup"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(34.0)),
                upper: Some(newton_metre(41.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L113, ""),
            &[],
        ),
        owner: Cow::Borrowed("a US maker's cranks, by a magazine guide"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("cup_cartridge"),
        part: Cow::Borrowed("cartridge bottom bracket"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(35.0)),
                upper: Some(newton_metre(45.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L114, ""),
            &[],
        ),
        owner: Cow::Borrowed("a generic torque list"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("cup_and_cone"),
        part: Cow::Borrowed("cup-and-cone bottom bracket"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(50.0)),
                upper: Some(newton_metre(70.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L114, ""),
            &[],
        ),
        owner: Cow::Borrowed("a generic torque list"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("cup_t47"),
        part: Cow::Borrowed("T47 bottom-bracket cup"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(35.0)),
                upper: Some(newton_metre(45.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L115, ""),
            &[],
        ),
        owner: Cow::Borrowed("an owner's maintenance note"),
        note: Cow::Borrowed("Low grade: the note itself tells the reader to check with the maker."),
    },
    TorqueFigure {
        code: Cow::Borrowed("left_arm_pinch"),
        part: Cow::Borrowed("left crank arm, pinch bolts"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(12.0)),
                upper: Some(newton_metre(14.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L116, ""),
            &[],
        ),
        owner: Cow::Borrowed("a Japanese maker, as quoted in a forum post"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("left_arm_cap"),
        part: Cow::Borrowed("left crank arm, preload cap"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(0.7)),
                upper: Some(newton_metre(1.5)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L116, ""),
            &[],
        ),
        owner: Cow::Borrowed("a Japanese maker, as quoted in a forum post"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("crank_bolt"),
        part: Cow::Borrowed("crank bolt"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(34.5)),
                upper: Some(newton_metre(44.2)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L117, ""),
            &[],
        ),
        owner: Cow::Borrowed("a bicycle maker's owner manual"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("pedal"),
        part: Cow::Borrowed("pedal into crank"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(34.7)),
                upper: Some(newton_metre(39.5)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L117, ""),
            &[],
        ),
        owner: Cow::Borrowed("a bicycle maker's owner manual"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("derailleur_bolt"),
        part: Cow::Borrowed("rear derailleur bolt in the hanger"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(6.0)),
                upper: Some(newton_metre(8.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L114, ""),
            &[],
        ),
        owner: Cow::Borrowed("a generic torque list"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("thru_axle_generic"),
        part: Cow::Borrowed("thru-axle"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(8.0)),
                upper: Some(newton_metre(15.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L118, ""),
            &[],
        ),
        owner: Cow::Borrowed("a generic range on the web"),
        note: Cow::Borrowed("Low grade: follow the marking on the axle."),
    },
    TorqueFigure {
        code: Cow::Borrowed("thru_axle_owner_note"),
        part: Cow::Borrowed("thru-axle"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(12.0)),
                upper: Some(newton_metre(15.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L115, ""),
            &[],
        ),
        owner: Cow::Borrowed("an owner's maintenance note"),
        note: Cow::Borrowed("Low grade: follow the marking on the axle."),
    },
    TorqueFigure {
        code: Cow::Borrowed("fork_axle_marked"),
        part: Cow::Borrowed("fork thru-axle, 6 mm hexagon type"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L119, ""),
            &[],
        ),
        owner: Cow::Borrowed("the marking on one axle"),
        note: Cow::Borrowed("The size of the axle is not stated."),
    },
    TorqueFigure {
        code: Cow::Borrowed("udh_bolt"),
        part: Cow::Borrowed("universal hanger bolt"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        owner: Cow::Borrowed("nobody: not seen in print"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("caliper_bolts_japanese"),
        part: Cow::Borrowed("caliper fixing bolts, mechanical disc"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(6.0)),
                upper: Some(newton_metre(8.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L120, ""),
            &[],
        ),
        owner: Cow::Borrowed("a Japanese maker, service instruction"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("caliper_bolts_shop"),
        part: Cow::Borrowed("caliper mount and adapter bolts, 5 mm hex"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(11.3)),
                upper: Some(newton_metre(12.4)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L121, ""),
            &[],
        ),
        owner: Cow::Borrowed("a shop torque table"),
        note: Cow::Borrowed("Contradicts 6 to 8 N m: follow the maker."),
    },
    TorqueFigure {
        code: Cow::Borrowed("adapter_bolts_shop"),
        part: Cow::Borrowed("adapter bolts, 4 mm hex"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(6.8)),
                upper: Some(newton_metre(7.3)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L122, ""),
            &[],
        ),
        owner: Cow::Borrowed("a shop torque table"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("fm_caliper_bolts"),
        part: Cow::Borrowed("flat-mount caliper bolts"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "a weak answer page prints it",
            ),
            &[],
        ),
        owner: Cow::Borrowed("weak source"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("pm_caliper_bolts"),
        part: Cow::Borrowed("post-mount caliper bolts"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(9.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "a weak answer page prints it",
            ),
            &[],
        ),
        owner: Cow::Borrowed("weak source"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("rotor_bolts_japanese"),
        part: Cow::Borrowed("six rotor bolts"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(2.0)),
                upper: Some(newton_metre(4.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L123, ""),
            &[],
        ),
        owner: Cow::Borrowed("a Japanese maker, service instruction"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("rotor_bolts_shop"),
        part: Cow::Borrowed("six rotor bolts"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(5.0)),
                upper: Some(newton_metre(6.2)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L124, ""),
            &[],
        ),
        owner: Cow::Borrowed("a shop torque table"),
        note: Cow::Borrowed("Contradicts 2 to 4 N m: follow the maker."),
    },
    TorqueFigure {
        code: Cow::Borrowed("centre_lock_ring"),
        part: Cow::Borrowed("centre-lock ring"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(40.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L125,
                "printed 350 lb in (40.2 N m)",
            ),
            &[],
        ),
        owner: Cow::Borrowed("a shop torque table"),
        note: Cow::Borrowed(""),
    },
    TorqueFigure {
        code: Cow::Borrowed("seat_clamp_carbon"),
        part: Cow::Borrowed("seat clamp bolt, carbon frame, typical"),
        window: Figure::from_table(
            Span {
                nominal: Some(newton_metre(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L126, ""),
            &[],
        ),
        owner: Cow::Borrowed("a road-bike forum"),
        note: Cow::Borrowed("Follow the marking on the clamp and the frame maker."),
    },
    TorqueFigure {
        code: Cow::Borrowed("seat_clamp_plain_2002"),
        part: Cow::Borrowed("seat clamp with a plain bolt"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(newton_metre(9.6)),
                upper: Some(newton_metre(14.1)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L127, ""),
            &[],
        ),
        owner: Cow::Borrowed("a US bicycle brand, owner guide 2002"),
        note: Cow::Borrowed("Another era and material: never use it on carbon."),
    },
];
