// @generated from data/bearings.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Text; 1] = [Cow::Borrowed("6802")];
static L1: [Citation; 1] = [Citation::from_table(&SOURCES[214], "deep-groove list")];
static L2: [Text; 1] = [Cow::Borrowed("6803")];
static L3: [Text; 1] = [Cow::Borrowed("6804")];
static L4: [Text; 1] = [Cow::Borrowed("6805")];
static L5: [Text; 1] = [Cow::Borrowed("6806")];
static L6: [Citation; 3] = [
    Citation::from_table(&SOURCES[214], "deep-groove list"),
    Citation::from_table(&SOURCES[33], "BB30 bearing"),
    Citation::from_table(&SOURCES[45], "BB30 bearing"),
];
static L7: [Text; 1] = [Cow::Borrowed("6900")];
static L8: [Text; 1] = [Cow::Borrowed("6901")];
static L9: [Text; 1] = [Cow::Borrowed("6902")];
static L10: [Text; 1] = [Cow::Borrowed("6903")];
static L11: [Citation; 3] = [
    Citation::from_table(&SOURCES[215], "6000 row"),
    Citation::from_table(&SOURCES[216], "6000 row"),
    Citation::from_table(&SOURCES[217], "6000"),
];
static L12: [Citation; 2] = [
    Citation::from_table(&SOURCES[215], "6001 row"),
    Citation::from_table(&SOURCES[216], "6001 row"),
];
static L13: [Citation; 2] = [
    Citation::from_table(&SOURCES[215], "6002 row"),
    Citation::from_table(&SOURCES[216], "6002 row"),
];
static L14: [Citation; 2] = [
    Citation::from_table(&SOURCES[215], "6003 row"),
    Citation::from_table(&SOURCES[216], "6003 row"),
];
static L15: [Citation; 2] = [
    Citation::from_table(&SOURCES[216], "608 row"),
    Citation::from_table(&SOURCES[217], "608"),
];

pub(crate) static BEARINGS: [Bearing; 14] = [
    Bearing {
        code: Cow::Borrowed("61802"),
        aliases: Cow::Borrowed(&L0),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(24.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Pivots and hubs."),
    },
    Bearing {
        code: Cow::Borrowed("61803"),
        aliases: Cow::Borrowed(&L2),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(17.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(26.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(5.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Pivots and hubs."),
    },
    Bearing {
        code: Cow::Borrowed("61804"),
        aliases: Cow::Borrowed(&L3),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(20.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(32.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs."),
    },
    Bearing {
        code: Cow::Borrowed("61805"),
        aliases: Cow::Borrowed(&L4),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(25.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(37.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Shells with 37 mm seats; other variants exist."),
    },
    Bearing {
        code: Cow::Borrowed("61806"),
        aliases: Cow::Borrowed(&L5),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L6, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(42.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L6, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L6, ""),
            &[],
        ),
        note: Cow::Borrowed("30 mm spindles, 42 mm seats."),
    },
    Bearing {
        code: Cow::Borrowed("61900"),
        aliases: Cow::Borrowed(&L7),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(22.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(6.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Pivots."),
    },
    Bearing {
        code: Cow::Borrowed("61901"),
        aliases: Cow::Borrowed(&L8),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(24.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(6.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Pivots and hubs."),
    },
    Bearing {
        code: Cow::Borrowed("61902"),
        aliases: Cow::Borrowed(&L9),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs and pivots."),
    },
    Bearing {
        code: Cow::Borrowed("61903"),
        aliases: Cow::Borrowed(&L10),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(17.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(30.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::SecondHand, Grade::SecondHand, "", &L1, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs."),
    },
    Bearing {
        code: Cow::Borrowed("6000"),
        aliases: Cow::Borrowed(&[]),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(26.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L11, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs."),
    },
    Bearing {
        code: Cow::Borrowed("6001"),
        aliases: Cow::Borrowed(&[]),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(12.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L12, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(28.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L12, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L12, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs."),
    },
    Bearing {
        code: Cow::Borrowed("6002"),
        aliases: Cow::Borrowed(&[]),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(15.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L13, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(32.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L13, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(9.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L13, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Bearing {
        code: Cow::Borrowed("6003"),
        aliases: Cow::Borrowed(&[]),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(17.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L14, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(35.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L14, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(10.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L14, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Bearing {
        code: Cow::Borrowed("608"),
        aliases: Cow::Borrowed(&[]),
        bore: Figure::from_table(
            Span {
                nominal: Some(mm(8.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L15, ""),
            &[],
        ),
        outside: Figure::from_table(
            Span {
                nominal: Some(mm(22.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L15, ""),
            &[],
        ),
        width: Figure::from_table(
            Span {
                nominal: Some(mm(7.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L15, ""),
            &[],
        ),
        note: Cow::Borrowed("Hubs and pedals."),
    },
];
